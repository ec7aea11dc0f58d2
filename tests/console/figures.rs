//! `work-out`: the figures of the trade as the console gives them. Expected values as in tests/standards.

use super::{benchwright, json, reason, text};

#[test]
fn a_drive_at_the_8_5_gb_barrier() {
    let answer = json(&["work-out", "drive", "--bytes", "8455716864"]);
    assert_eq!(answer["capacity"]["gib"], 7.875);
    assert_eq!(answer["assisted"], serde_json::json!({"cylinders": 1024, "heads": 255, "sectors": 63}));
    let of = |id: &str| answer["on"].as_array().unwrap().iter().find(|on| on["firmware"]["id"] == id).unwrap().clone();
    // Large Disk HOWTO 2.2x: assisted translation ends at 8 422 686 720, no translation at 528 482 304 bytes.
    assert_eq!(
        (of("assisted")["outcome"].as_str(), of("assisted")["bytes"].as_u64()),
        (Some("clipped-to"), Some(8_422_686_720))
    );
    assert_eq!(of("untranslated")["bytes"], 528_482_304_u64);
    assert_eq!(of("heads-doubled")["outcome"], "not-usable");
    assert_eq!(of("lba-28")["outcome"], "seen-whole");
    // It lies on the 8.5 GB barrier, not beyond it.
    let last = answer["barriers"].as_array().unwrap().last().unwrap()["name"].clone();
    assert_eq!(last, "8.4 GB, reported geometry");
}

#[test]
fn a_drive_by_geometry_and_a_sector_by_both_names() {
    let answer = json(&["work-out", "drive", "--chs", "1024/16/63", "--lba", "1032191", "--firmware", "untranslated"]);
    assert_eq!(answer["capacity"]["bytes"], 528_482_304_u64);
    assert_eq!(answer["address"]["position"], serde_json::json!({"cylinder": 1023, "head": 15, "sector": 63}));
    let back = json(&["work-out", "drive", "--chs", "1024/16/63", "--position", "1023/15/63"]);
    assert_eq!(back["address"]["lba"], 1_032_191);
    let said = text(&["work-out", "drive", "--bytes", "40 GB", "--firmware", "cylinders-16-bit"]);
    let dos =
        text(&["work-out", "drive", "--bytes", "800 MB", "--firmware", "assisted", "--file-system", "fat16-dos-4.0"]);
    // Microsoft Q69912: 16 KB from 512 to 1023 MB.
    assert!(dos.contains("at least 1 partition,") && dos.contains("clusters of 16 KiB"), "{dos}");
    assert!(said.contains("not usable") && said.contains("clip jumper") && said.contains("Source"), "{said}");
}

#[test]
fn a_supply_with_one_rail_and_with_several() {
    let answer = json(&["work-out", "supply", "--atx", "5=4.93"]);
    assert_eq!(answer["verdict"], "pass");
    let margin = answer["rails"][0]["margin_percent"].as_f64().unwrap();
    assert!((margin - 3.6).abs() < 1e-9);
    assert_eq!(answer["rails"][0]["limits"]["source"]["sureness"], "published");
    let several =
        ["work-out", "supply", "--at", "5=4.76", "minus12=-11.9", "--load", "5=8", "12=1", "--power-good", "90"];
    let answer = json(&several);
    assert_eq!(answer["verdict"], "fail");
    assert_eq!((&answer["rails"][0]["verdict"], &answer["rails"][1]["verdict"]), (&"fail".into(), &"pass".into()));
    assert_eq!(answer["power_good"][0]["verdict"], "fail");
    let load = json(&["work-out", "supply", "--atx", "5=5", "--load", "5=1", "--label", "desktop-145"]);
    assert_eq!(load["load_faults"][0]["fault"], "too-little");
    assert_eq!(json(&["work-out", "supply", "--pins", "at"])["pins"].as_array().unwrap().len(), 12);
}

#[test]
fn clocks_of_one_setting_and_a_table() {
    let one = ["work-out", "clock", "--bus", "66", "--multiplier", "4.5", "--pci", "usual", "--core", "300"];
    let answer = json(&one);
    assert!((answer["clocks"]["core_mhz"].as_f64().unwrap() - 300.0).abs() < 1e-9);
    assert_eq!(answer["reach"], "within");
    let table = json(&["work-out", "clock", "--bus", "66,100", "--multiplier", "4.5", "--core", "300"]);
    let cores: Vec<f64> =
        table.as_array().unwrap().iter().map(|row| row["clocks"]["core_mhz"].as_f64().unwrap()).collect();
    assert!((cores[0] - 300.0).abs() < 1e-9 && (cores[1] - 450.0).abs() < 1e-9);
    assert_eq!(table[1]["reach"], "far");
}

#[test]
fn rust_and_colour() {
    let rust = json(&["work-out", "corrosion", "--share", "8", "--on", "2025-01-01", "--before", "2024-01-01=1"]);
    assert_eq!((&rust["ri"], &rust["d610"], &rust["at_reference"]), (&4.into(), &4.into(), &true.into()));
    assert_eq!((&rust["change"]["days"], &rust["change"]["grade_worse"]), (&366.into(), &true.into()));
    assert!(text(&["work-out", "corrosion", "--share", "1", "--distribution", "g"]).contains("grade 6-G"));
    let colour = json(&["work-out", "colour", "D9D2BE"]);
    assert!((colour["yellowness"]["index"].as_f64().unwrap() - 20.83095).abs() < 1e-4);
    let clipped = text(&["work-out", "colour", "D9D2BE", "--reference", "FFFFFF"]);
    assert!(clipped.contains("overexposed"), "{clipped}");
}

#[test]
fn a_cell_by_its_voltages() {
    let cell = json(&["work-out", "cell", "cr", "--open", "3.0", "--loaded", "2.3"]);
    assert_eq!((&cell["state"], &cell["facts"]["leaks"]), (&"low".into(), &"solvent".into()));
    let barrel = text(&["work-out", "cell", "nicd", "--cells", "3", "--open", "2,9"]);
    assert!(barrel.contains("spent") && barrel.contains("Never baking soda"), "{barrel}");
}

/// Wikipedia (de), Sockel 7: takes Socket 5 processors, not the reverse.
#[test]
fn connectors_and_which_takes_which() {
    let takes = |offer, need| json(&["work-out", "connector", offer, "--takes", need])["takes"].clone();
    assert_eq!((takes("socket-7", "socket-5"), takes("socket-5", "socket-7")), (true.into(), false.into()));
    assert_eq!(json(&["work-out", "connector", "socket-7"])[0]["contacts"], 321);
    assert!(json(&["work-out", "connector"]).as_array().unwrap().len() > 140);
    let said = text(&["work-out", "connector", "slot-1"]);
    assert!(said.contains("Slot A turned round") && said.contains("Source: "), "{said}");
}

#[test]
fn floppy_formats() {
    let one = json(&["work-out", "floppy", "1.44m"]);
    assert_eq!((&one[0]["total_sectors"], &one[0]["capacity"]["bytes"]), (&2880.into(), &1_474_560.into()));
    assert_eq!(text(&["work-out", "floppy"]).lines().count(), 8);
}

#[test]
fn what_cannot_be_read_gives_the_reason() {
    let unreadable: [(&[&str], &str); 17] = [
        (&["drive", "--bytes", "8.4 Gx"], "no unit"),
        (&["drive", "--bytes", "0"], "zero"),
        (&["drive", "--chs", "1024/16"], "not CYLINDERS"),
        (&["drive", "--bytes", "1 GB", "--firmware", "newest"], "there are untranslated"),
        (&["drive", "--bytes", "1 GB", "--file-system", "fat"], "there are fat16"),
        (&["drive", "--chs", "1024/16/63", "--position", "1024/0/1"], "outside 1024/16/63"),
        (&["supply", "--atx", "5=five"], "no number"),
        (&["supply", "--atx", "6=5"], "no rail"),
        (&["clock", "--bus", "fast", "--multiplier", "2"], "no number"),
        (&["clock", "--bus", "66", "--multiplier", "2", "--pci", "1/0"], "no ratio"),
        (&["corrosion", "--share", "120"], "between 0 and 100"),
        (&["cell", "cr", "--open", "9"], "no such cell"),
        (&["cell", "zamboni", "--open", "3"], "is not known"),
        (&["connector", "slot-9"], "there are retention-slot-1"),
        (&["connector", "socket-7", "--takes", "zzz"], "is no connector"),
        (&["floppy", "1.6M"], "there are 160K"),
        (&["colour", "beige"], "six hexadecimal digits"),
    ];
    for (arguments, expected) in unreadable {
        let said = reason(&[&["work-out"], arguments].concat());
        assert!(said.contains(expected), "{arguments:?}: {said}");
    }
    assert_eq!(benchwright(&["work-out", "drive"]).status.code(), Some(2));
}

#[test]
fn a_figure_that_rounds_to_nothing_has_no_sign() {
    // The index of an ideal grey is 0 by ASTM E313; what is left of the sums is below what is printed.
    for grey in ["808080", "ffffff"] {
        let said = text(&["work-out", "colour", grey]);
        assert!(said.contains("Yellowness 0.0") && !said.contains("-0"), "{said}");
    }
    assert!(text(&["work-out", "supply", "--atx", "5=-0"]).contains("+5 V: 0 V"));
}
