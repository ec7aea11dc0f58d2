//! `parts`, `part`, `outstanding` and `readiness` about a workshop with one board, one supply, one machine.

use benchwright::record::*;
use benchwright::store::Store;
use serde_json::json;

use crate::records::{self, moment, part, place, role, when};
use crate::{json, reason, text};

const ON: &[&str] = &["--on", "2026-06-01"];

/// A board with a leaked cell, dated by a sticker, planned for a machine with a supply's role still empty.
fn workshop() -> (tempfile::TempDir, String) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("attic.logbook");
    let store = Store::create(&path, records::workshop("Attic")).unwrap();
    let mut change = Change::new("Log part 0042");
    let shelf = place("Shelf 2", None);
    let board = Part { place: Some(shelf.id), ..part("0042", Kind::Mainboard, "Nordkamp NB-4") };
    let badge = part("0043", Kind::Case, "Nordkamp case");
    let finding =
        Finding { place_on_part: "by the keyboard port".to_owned(), ..records::finding(board.id, "cell-leaked") };
    let seen = moment("2026-05-01");
    let look = records::look(finding.id, seen, FindingState::Open, Severity::Grave);
    let marking =
        Marking { from_factory: FromFactory::Yes, ..records::marking(board.id, seen, Surface::Sticker, "1998-03-06") };
    let machine =
        Machine { window_from: when("1997"), window_to: when("1999"), priority: 1, ..records::machine("Orla") };
    let of_board = role(machine.id, Kind::Mainboard);
    let of_supply = role(machine.id, Kind::PowerSupply);
    let plan = records::placement(machine.id, of_board.id, board.id, moment("2026-05-02"));
    change.put(shelf).put(board).put(badge).put(machine).put(of_board).put(of_supply);
    change.put(plan).put(marking).put(finding).put(look);
    store.write(change).unwrap();
    let path = path.to_str().unwrap().to_owned();
    (folder, path)
}

#[test]
fn parts_tell_tag_what_state_span_work_and_where() {
    let (_folder, logbook) = workshop();
    let answer = json(&[&["parts", &logbook], ON].concat());
    let board = &answer["parts"][0];
    assert_eq!(board["tag"], "0042");
    assert_eq!((&board["kind"], &board["state"]), (&json!("mainboard"), &json!("held_storage")));
    assert_eq!((&board["not_before"], &board["place"]), (&json!("1998-03-06"), &json!("Shelf 2")));
    assert_eq!((&board["machine"], &board["fitted"]), (&json!("Orla"), &json!(false)));
    assert_eq!((&board["hold"], &board["doable"]), (&json!("storage"), &json!(1)));
    assert_eq!(answer["parts"][1]["state"], "unsurveyed");
    let said = text(&[&["parts", &logbook], ON].concat());
    assert!(said.contains("0042  Nordkamp NB-4") && said.contains("Work before storage"), "{said}");
    assert!(said.contains("Shelf 2 (planned for Orla)"), "{said}");
}

#[test]
fn a_part_tells_its_markings_findings_work_and_whether_power_may_be_applied() {
    let (_folder, logbook) = workshop();
    let answer = json(&[&["part", &logbook, "0042"], ON].concat());
    assert_eq!(answer["power"]["verdict"], "no");
    assert_eq!(answer["markings"][0]["from"], "1998-03-06");
    assert_eq!(answer["findings"][0]["say"], "Leaked cell");
    assert_eq!(answer["findings"][0]["since"], "2026-05-01");
    let said = text(&[&["part", &logbook, "0042"], ON].concat());
    assert!(said.contains("May power be applied on the bench? No"), "{said}");
    assert!(said.contains("Leaked cell, by the keyboard port: Grave, Open (2026-05-01)"), "{said}");
    let reason = reason(&["part", &logbook, "4711"]);
    assert!(reason.contains("no part has the tag “4711”"), "{reason}");
}

#[test]
fn outstanding_work_comes_in_working_order_with_cautions_and_materials() {
    let (_folder, logbook) = workshop();
    let answer = json(&["outstanding", &logbook, "--part", "0042"]);
    let work = answer["work"].as_array().unwrap();
    let titles: Vec<&str> = work.iter().map(|task| task["title"].as_str().unwrap()).collect();
    let place = |rule: &str| work.iter().position(|task| task["rule"] == rule).unwrap_or_else(|| panic!("{titles:?}"));
    assert!(place("cut-leaking-cell") < place("neutralise"));
    assert!(place("neutralise") < place("rinse-and-dry") && place("rinse-and-dry") < place("look-under"));
    assert_eq!(answer["totals"]["tasks"], work.len());
    let minutes: u64 = work.iter().map(|task| task["minutes"].as_u64().unwrap()).sum();
    assert_eq!(answer["totals"]["minutes"], minutes);
    for task in work {
        assert_eq!(task["doable"], task["after"].as_array().unwrap().is_empty(), "{task}");
    }
    let vinegar =
        answer["materials"].as_array().unwrap().iter().any(|need| need["name"].as_str().unwrap().contains("vinegar"));
    assert!(vinegar, "{}", answer["materials"]);

    assert_eq!(json(&["outstanding", &logbook, "--machine", "orla"])["totals"], answer["totals"]);
    assert_eq!(json(&["outstanding", &logbook])["totals"], answer["totals"]);
    assert_eq!(json(&["outstanding", &logbook, "--part", "0043"])["totals"]["tasks"], 0);
    assert!(text(&["outstanding", &logbook, "--part", "0043"]).contains("Nothing is outstanding."));
    assert!(text(&["outstanding", &logbook]).contains("! "), "cautions stand with the work");
    assert!(reason(&["outstanding", &logbook, "--machine", "Brand"]).contains("no machine is called “Brand”"));
}

#[test]
fn readiness_tells_gate_reasons_power_and_what_is_next() {
    let (_folder, logbook) = workshop();
    let answer = json(&["readiness", &logbook]);
    let orla = &answer["machines"][0];
    assert_eq!((&orla["machine"], &orla["gate"]), (&json!("Orla"), &json!("roles_filled")));
    assert_eq!(orla["power"]["verdict"], "no");
    let first = &orla["power"]["reasons"][0];
    assert_eq!((&first["weight"], &first["part"]), (&json!("holds"), &json!("0042")));
    let gates: Vec<_> = orla["gates"].as_array().unwrap().iter().map(|gate| gate["gate"].as_str().unwrap()).collect();
    assert_eq!(gates, ["roles_filled", "parts_fit", "safe_to_switch_on", "work_done", "proven", "papers_complete"]);
    assert_eq!(orla["next"]["act"], "work", "a leaking cell does not wait for a supply to turn up");
    let said = text(&["readiness", &logbook, "Orla"]);
    assert!(said.contains("May power be applied? No"), "{said}");
    assert!(said.contains("Nothing fills the role Power supply yet."), "{said}");
    assert!(reason(&["readiness", &logbook, "Brand"]).contains("no machine is called “Brand”"));
}

#[test]
fn answering_leaves_the_logbook_as_it_is() {
    let (folder, logbook) = workshop();
    let file = folder.path().join("attic.logbook/logbook.sqlite");
    let before = std::fs::read(&file).unwrap();
    for command in ["parts", "outstanding", "readiness"] {
        text(&[command, &logbook]);
    }
    assert_eq!(std::fs::read(&file).unwrap(), before);
}

#[test]
fn part_tells_a_conflict_of_its_label_and_who_accepted_a_finding_when() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("attic.logbook");
    let store = Store::create(&path, records::workshop("Attic")).unwrap();
    let mut change = Change::new("Log part 0042");
    let years = Design {
        introduced: when("1998-09"),
        discontinued: when("2000"),
        ..records::design(Kind::HardDisk, "Tessaly", "T9")
    };
    let disk = Part { design: Some(years.id), ..part("0042", Kind::HardDisk, "") };
    let label = records::marking(disk.id, moment("2026-05-01"), Surface::DriveLabel, "92-14");
    let finding = Finding { note: "Lid scratched".to_owned(), ..records::finding(disk.id, "") };
    let found = records::look(finding.id, moment("2026-05-01"), FindingState::Open, Severity::Slight);
    let accepted = Look {
        reason: "Only the lid".to_owned(),
        who: "Mira".to_owned(),
        ..records::look(finding.id, moment("2026-05-02"), FindingState::Accepted, Severity::Slight)
    };
    change.put(years).put(disk).put(label).put(finding).put(found).put(accepted);
    store.write(change).unwrap();
    drop(store);
    let path = path.to_str().unwrap();
    let answer = json(&[&["part", path, "0042"], ON].concat());
    assert_eq!((&answer["dated_by"], &answer["from"]), (&json!("conflict"), &json!("1992-03-23")), "kept as read");
    let marking = &answer["markings"][0];
    assert_eq!((&marking["from"], &marking["readings"]), (&json!("1992-03-23"), &json!(1)));
    let sentence = marking["conflict"].as_str().unwrap();
    assert!(sentence.contains("“92-14”") && sentence.contains("1998-09-01 to 2000-12-31"), "{sentence}");
    let finding = &answer["findings"][0];
    assert_eq!((&finding["decided_on"], &finding["who"]), (&json!("2026-05-02"), &json!("Mira")));
    assert_eq!((&finding["reason"], &finding["until"]), (&json!("Only the lid"), &json!("")));
    let said = text(&[&["part", path, "0042"], ON].concat());
    assert!(said.contains(sentence) && said.contains("Made: conflict with its design’s years"), "{said}");
    assert!(said.contains("accepted on 2026-05-02 by Mira: Only the lid"), "{said}");
    assert!(text(&[&["parts", path], ON].concat()).contains("(conflict)"));
}
