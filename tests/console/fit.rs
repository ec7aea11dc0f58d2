//! `fit`, `candidates` and `offer` about the sample workshop, and about a machine of nothing.

use benchwright::record::Change;
use benchwright::store::Store;
use serde_json::Value;

use crate::sample::closed as sample;
use crate::{benchwright, json, list, reason, records, text};

fn constraint<'a>(answer: &'a Value, name: &str) -> &'a Value {
    list(answer, "constraints").iter().find(|one| one["constraint"] == name).unwrap()
}

fn candidate<'a>(answer: &'a Value, tag: &str) -> &'a Value {
    let found = list(answer, "candidates").iter().find(|one| one["part"] == tag);
    found.unwrap_or_else(|| panic!("{tag} is no candidate"))
}

fn place(answer: &Value, tag: &str) -> usize {
    list(answer, "candidates").iter().position(|one| one["part"] == tag).unwrap()
}

#[test]
fn the_studio_lacks_its_posts_and_would_run_as_sold() {
    let (_folder, logbook) = sample();
    let answer = json(&["fit", &logbook, "The studio, 1999"]);
    assert_eq!(answer["verdict"], "no");
    let unmet = list(constraint(&answer, "connectors"), "because");
    let said: Vec<&str> = unmet.iter().map(|one| one["say"].as_str().unwrap()).collect();
    assert!(said.iter().all(|say| say.starts_with("0059 ")), "{said:?}");
    assert_eq!(said.len(), 2, "posts and support: {said:?}");
    // 4.5 × 100 = 450 MHz, PCI at a third, AGP at two thirds of the bus (henriknielsen.dk, sharkyextreme).
    let setting = &answer["setting"];
    assert_eq!((&setting["bus_mhz"], &setting["core_mhz"]), (&100.0.into(), &450.0.into()));
    assert!((setting["pci_mhz"].as_f64().unwrap() - 33.333).abs() < 0.001);
    assert!((setting["agp_mhz"].as_f64().unwrap() - 66.667).abs() < 0.001);
    assert_eq!(constraint(&answer, "clocks")["verdict"], "fits");
    for name in ["voltage", "memory", "drives", "power", "space"] {
        assert_eq!(constraint(&answer, name)["verdict"], "fits", "{name}");
    }
    // The video card sits in the one AGP slot of the board.
    let in_slot = |one: &&Value| one["part"] == "0062";
    let link = list(&answer, "plugged").iter().find(in_slot).unwrap();
    assert_eq!((&link["into"], &link["offer"]), (&"0058".into(), &"agp-3.3v".into()));
    let words = text(&["fit", &logbook, "The studio, 1999"]);
    assert!(words.contains("Core voltage: Fits") && words.contains("or 4.5 × 66.7 = 300 MHz"), "{words}");
}

#[test]
fn the_studio_is_judged_as_it_is_set_and_every_setting_can_be_told() {
    let (_folder, logbook) = sample();
    let machine = "The studio, 1999";
    let words = text(&["fit", &logbook, machine]);
    assert!(words.contains("As set: 0059") && words.contains("4.5 × 100 MHz = 450 MHz"), "{words}");
    // 4.5 × 112 = 504 MHz is 12 % beyond 450 MHz, and 112 beyond the 100 that board, processor and memory are made for.
    assert!(words.contains("core beyond (12 % over), bus beyond (12 % over), memory beyond (12 % over)"), "{words}");
    let answer = json(&["fit", &logbook, machine]);
    let beyond = list(&answer, "settings").iter().find(|one| one["core_mhz"].as_f64().unwrap() > 500.0).unwrap();
    assert_eq!(list(beyond, "beyond").len(), 3, "{beyond}");
    let all = list(&answer, "settings").len();
    let told = text(&["fit", &logbook, machine, "--all"]);
    assert_eq!(told.matches("\n      or ").count(), all - 1, "{told}");
}

#[test]
fn every_reason_says_what_it_rests_on() {
    let (_folder, logbook) = sample();
    for machine in ["The front desk, 1989", "The family computer, 1996", "The schoolroom, 1991", "The net café, 2001"]
    {
        let answer = json(&["fit", &logbook, machine]);
        for one in list(&answer, "constraints").iter().flat_map(|one| list(one, "because")) {
            assert!(!one["source"].as_str().unwrap().is_empty() && !one["say"].as_str().unwrap().is_empty(), "{one}");
        }
    }
}

#[test]
fn two_boards_compete_for_the_schoolroom_and_either_would_do() {
    let (_folder, logbook) = sample();
    let fit = json(&["fit", &logbook, "The schoolroom, 1991"]);
    assert_eq!(fit["competing"], serde_json::json!(["0035"]));
    let answer = json(&["candidates", &logbook, "The schoolroom, 1991", "mainboard"]);
    for tag in ["0034", "0035"] {
        let board = candidate(&answer, tag);
        assert_eq!(board["here"], true);
        // Case and supply are to come, so that what they would offer is not known; nothing speaks against the board.
        assert_eq!(board["verdict"], "not_known", "{board}");
        let said = list(board, "because").iter().filter(|one| one["verdict"] == "not_known");
        assert!(said.clone().count() > 0);
        for one in said {
            assert!(one["say"].as_str().unwrap().ends_with("still to come."), "{one}");
        }
        let runs = |one: &Value| one["say"].as_str().unwrap().contains("1 × 40 MHz and runs at 40 MHz");
        assert!(list(board, "because").iter().any(runs), "{board}");
    }
    // A 486 board has no socket for the 386, and the front desk would lose its only one.
    assert_eq!(candidate(&answer, "0013")["verdict"], "no");
    let losses = list(candidate(&answer, "0001"), "losses");
    let wanted = serde_json::json!({
        "machine": "The front desk, 1989", "role": "Mainboard", "fitted": true, "empties": true, "stand_ins": 0
    });
    assert_eq!(losses, [wanted]);
    let first = &list(&answer, "candidates")[0]["part"];
    assert!(["0034", "0035"].contains(&first.as_str().unwrap()), "{first} comes first");
}

#[test]
fn a_processor_with_a_fixed_multiplier_is_held_to_the_bus_it_is_made_for() {
    let (_folder, logbook) = sample();
    let answer = json(&["candidates", &logbook, "The studio, 1999", "Processor"]);
    let says = |tag: &str, what: &str| {
        list(candidate(&answer, tag), "because").iter().any(|one| one["say"].as_str().unwrap().contains(what))
    };
    // 4.5 × 66⅔ = 300, not 4.5 × 100 = 450; 4.5 × 100 for the one made for it.
    assert!(says("0115", "4.5 × 66.67 MHz and runs at 300 MHz"));
    assert!(says("0059", "4.5 × 100 MHz and runs at 450 MHz"));
    // The heavy cooler needs the support besides the posts.
    assert!(place(&answer, "0115") < place(&answer, "0059"));
    // A 5 V processor of the 486 class finds no socket here.
    assert!(says("0014", "Socket 1"));
}

#[test]
fn a_drive_beyond_the_firmware_is_clipped_and_one_of_another_machine_would_be_missed() {
    let (_folder, logbook) = sample();
    let answer = json(&["candidates", &logbook, "The net café, 2001", "hard_disk"]);
    let large = candidate(&answer, "0098");
    let clipped = list(large, "because").iter().find(|one| one["verdict"] == "caveat" && one["part"] == "0098");
    // 28 bits of address: 137.44 GB (PC Magazine encyclopedia).
    assert!(clipped.unwrap()["say"].as_str().unwrap().contains("137.44 GB"), "{large}");
    let losses = list(candidate(&answer, "0065"), "losses");
    assert_eq!((&losses[0]["machine"], &losses[0]["empties"]), (&"The studio, 1999".into(), &true.into()));
    let words = text(&["candidates", &logbook, "The net café, 2001", "Hard disk"]);
    assert!(words.contains("The studio, 1999 would lose it from “Hard disk”, which it must fill"), "{words}");
}

#[test]
fn disks_are_judged_with_a_file_system_too() {
    let (_folder, logbook) = sample();
    let fit = |system: &[&str]| {
        let answer = json(&[&["fit", &logbook, "The net café, 2001"], system].concat());
        list(constraint(&answer, "drives"), "because")[0].clone()
    };
    assert_eq!(fit(&[])["verdict"], "fits");
    let clipped = fit(&["--file-system", "fat16-dos-4.0"]);
    // 1024 × 255 × 63 sectors through firmware calls: 8.42 GB (Large Disk HOWTO).
    assert_eq!(clipped["verdict"], "caveat");
    assert!(clipped["say"].as_str().unwrap().contains("8.42 GB"), "{clipped}");
    let output = benchwright(&["fit", &logbook, "The net café, 2001", "--file-system", "fat99"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&output.stderr).contains("ext2"));
}

#[test]
fn what_is_not_there_is_named() {
    let (_folder, logbook) = sample();
    assert!(reason(&["fit", &logbook, "The attic"]).contains("no machine is called “The attic”"));
    assert!(reason(&["candidates", &logbook, "The attic", "Mainboard"]).contains("no machine is called “The attic”"));
    let said = reason(&["candidates", &logbook, "The studio, 1999", "Sails"]);
    assert!(said.contains("has no role “Sails”: Mainboard, Processor, Memory"), "{said}");
}

#[test]
fn a_machine_without_roles_or_parts_is_answered() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.logbook");
    let store = Store::create(&path, records::workshop("Attic")).unwrap();
    let mut change = Change::new("Plan a machine");
    change.put(records::machine("Orla"));
    store.write(change).unwrap();
    drop(store);
    let path = path.to_str().unwrap();
    let answer = json(&["fit", path, "Orla"]);
    assert!(answer["verdict"].is_null(), "there is nothing to judge");
    assert!(text(&["fit", path, "Orla"]).contains("there is nothing to judge"));
    assert!(list(&answer, "constraints").iter().all(|one| one["verdict"].is_null() && list(one, "because").is_empty()));
    assert_eq!((&answer["setting"], list(&answer, "settings").len()), (&Value::Null, 0));
    assert!(reason(&["candidates", path, "Orla", "Mainboard"]).contains("Orla has no roles"));
}

#[test]
fn an_offered_card_is_what_the_schoolroom_lacks_and_a_wrong_word_is_named() {
    let (_folder, logbook) = sample();
    // The schoolroom's role is empty, as the sample says.
    let answer = json(&["offer", &logbook, "multi_io_card", "--connector", "isa-16", "--made", "1991"]);
    let lacking = list(&answer, "lacking");
    let of = |name: &str| lacking.iter().find(|one| one["machine"] == name);
    let schoolroom = of("The schoolroom, 1991").unwrap();
    assert_eq!((&schoolroom["role"], &schoolroom["required"]), (&"Multi-I/O card".into(), &true.into()));
    assert_ne!(schoolroom["verdict"], "no", "{schoolroom:#}");
    assert!(list(schoolroom, "gains").is_empty(), "other roles stay empty, and its gate with them: {schoolroom:#}");
    let words = text(&["offer", &logbook, "Multi-I/O card", "--connector", "isa-16"]);
    assert!(words.contains("The schoolroom, 1991 lacks it: Multi-I/O card"), "{words}");
    let wrong = reason(&["offer", &logbook, "mainboard", "--connector", "simm-72=many"]);
    assert!(wrong.contains("“simm-72=many” has no whole number from 1 to 99 after ="), "{wrong}");
    let wrong = reason(&["offer", &logbook, "processor", "--connector", "socket-77"]);
    assert!(wrong.contains("“socket-77” is no connector") && wrong.contains("socket-7"), "{wrong}");
}
