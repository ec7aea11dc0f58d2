//! Memory tests: what an error tells, and with which cache they run.

use benchwright::rules::Rules;

use super::work;

/// PC memory error, comp.sys.ibm.pc, 20 May 1987: the failing bit names the chip, the address its bank.
#[test]
fn the_data_bit_tells_the_chip_and_the_address_the_bank() {
    let how = &work(&Rules::shipped(), "sort-memory").how.clone();
    assert!(how.contains("data bit tells the chip") && how.contains("address the module or bank"), "{how}");
    assert!(!how.contains("cache off"), "{how}");
}

/// Burst cycles are what fails: common practice, no source.
#[test]
fn the_long_memory_test_runs_with_the_cache_on() {
    let rules = Rules::shipped();
    for text in [&rules.proof("memory-test").unwrap().rig, &rules.question("memory-result").unwrap().hint] {
        assert!(text.to_lowercase().contains("cache on") || text.contains("cache switched on"), "{text}");
        assert!(text.contains("off only to tell memory from cache"), "{text}");
    }
}
