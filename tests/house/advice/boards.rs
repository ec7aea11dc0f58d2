//! Boards and cards: glue, washing, donors, firmware, contacts, voltages and plugs.

use benchwright::record::{Kind, Severity};
use benchwright::rules::{PowerEffect, Rules};

use super::work;

fn called(rules: &Rules, finding: &str, kind: Kind) -> Vec<String> {
    rules.work_for(finding, kind, Severity::Plain).map(|row| row.name.clone()).collect()
}

/// Decayed glue, repairfaq.cis.upenn.edu/samnew/tvfaq/tvdglue.htm: white and inert at first, brown, conductive and
/// corrosive with age.
#[test]
fn glue_gone_dark_is_a_fault_of_its_own() {
    let rules = Rules::shipped();
    for (question, kind, job) in [
        ("electrolytics", Kind::Mainboard, "clear-glue"),
        ("supply-electrolytics", Kind::PowerSupply, "clear-glue-mains"),
    ] {
        let question = rules.question(question).unwrap();
        let answer = question.answers.iter().find(|row| row.name == "dark-glue").unwrap();
        assert_eq!((answer.finding.as_deref(), answer.power), (Some("glue-dark"), PowerEffect::No));
        assert!(called(&rules, "glue-dark", kind).contains(&job.to_owned()));
        assert!(!question.hint.contains("harmless glue"));
    }
}

#[test]
fn nothing_is_desoldered_for_a_wash_and_water_stays_out_of_what_holds_it() {
    let how = &work(&Rules::shipped(), "wash-board").how.clone();
    let (off, kept_dry) = how.split_once("off first").unwrap();
    for part in ["Batteries", "socketed chips", "buzzers", "labels"] {
        assert!(off.contains(part), "{part}");
    }
    for part in ["switches", "relays", "trimmers", "transformers"] {
        assert!(!off.contains(part) && kept_dry.contains(part), "{part}");
    }
}

#[test]
fn a_cracked_module_or_disk_board_is_replaced_from_a_donor() {
    let rules = Rules::shipped();
    for kind in [Kind::MemoryModule, Kind::CacheModule, Kind::HardDisk] {
        assert_eq!(called(&rules, "board-cracked", kind), ["photograph", "replace-cracked-board"], "{kind:?}");
    }
    assert!(called(&rules, "board-cracked", Kind::Mainboard).contains(&"mend-board".to_owned()));
    assert!(work(&rules, "mend-board").how.contains("donor first"));
}

#[test]
fn a_socketed_eprom_is_read_out_before_the_first_start() {
    let rules = Rules::shipped();
    let answers = &rules.question("firmware").unwrap().answers;
    let finding = |name: &str| answers.iter().find(|row| row.name == name).unwrap().finding.clone().unwrap();
    assert_eq!(called(&rules, &finding("unsaved-socketed"), Kind::Mainboard), ["dump-eprom"]);
    assert_eq!(called(&rules, &finding("unsaved"), Kind::Mainboard), ["copy-firmware"]);
    assert!(rules.is_before("dump-eprom", "bench-start") && rules.is_before("bench-start", "copy-firmware"));
}

/// IPC-2221, as told in cctalk 2015-February/004289: 0.8 micron of gold on edge contacts.
#[test]
fn the_gold_of_edge_contacts_is_less_than_a_micron() {
    assert!(work(&Rules::shipped(), "clean-contacts").how.contains("less than one micron"));
}

#[test]
fn core_voltage_is_never_metered_in_the_socket() {
    let how = &work(&Rules::shipped(), "read-voltage").how.clone();
    assert!(how.contains("regulator\u{2019}s output") && how.contains("Never in the socket"), "{how}");
    assert!(how.contains("VID"), "{how}");
}

#[test]
fn every_rail_of_an_unknown_plug_is_checked_and_not_the_grounds_alone() {
    let how = &work(&Rules::shipped(), "look-up-pinout").how.clone();
    assert!(how.contains("every rail to its slot contacts") && how.contains("3.3 V"), "{how}");
}

#[test]
fn capacitors_are_measured_in_circuit_before_a_leg_is_lifted() {
    let rules = Rules::shipped();
    let row = work(&rules, "measure-capacitors");
    assert!(row.how.starts_with("ESR in circuit first"), "{}", row.how);
    assert!(row.how.contains("never an SMD can") && row.how.contains("multilayer"), "{}", row.how);
    for kind in [Kind::Cable, Kind::Media, Kind::Retention] {
        assert!(!row.kinds.contains(&kind), "{kind:?}");
    }
}
