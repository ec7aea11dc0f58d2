//! Names of the tables: `rules`, unknown names at `import` and `check`, facts without their findings; and a part's past.

use serde_json::{Value, json};

use crate::{benchwright, json as answer, list, reason, text};

const PART: &str = "0190163d-8694-739b-aea5-966c26f8ad91";

fn key(number: u32) -> String {
    format!("0190163d-8694-739b-aea5-{number:012x}")
}

struct Books {
    folder: tempfile::TempDir,
}

impl Books {
    fn new() -> Self {
        Self { folder: tempfile::tempdir().unwrap() }
    }

    fn at(&self, name: &str) -> String {
        self.folder.path().join(name).to_str().unwrap().to_owned()
    }

    /// A new logbook, and a document with a mainboard, a leaking cell in its survey, and what `more` adds.
    fn with(&self, name: &str, more: fn(&mut Value)) -> (String, String) {
        let (logbook, file) = (self.at(&format!("{name}.logbook")), self.at(&format!("{name}.json")));
        text(&["new", &logbook, "--name", "Old school"]);
        text(&["export", &logbook, &file]);
        let mut document: Value = serde_json::from_str(&std::fs::read_to_string(&file).unwrap()).unwrap();
        document["part"] = json!([{
            "id": PART, "tag": "0042", "kind": "mainboard", "design": null, "name": "Nordkamp NB-4", "serial": "",
            "originality": "original", "lot": null, "price_cents": 1250, "acquired": "2024-03", "place": null,
            "inside": null, "quarantine": "", "quarantined": "", "note": ""
        }]);
        document["survey"] = json!([{
            "id": key(1), "part": PART, "looked": {"on": "2024-05", "sequence": 0}, "who": "Ida Lund", "why": "",
            "supersedes": null, "note": "", "answers": [{"question": "clock-supply", "given": {"is": "leaking"}}]
        }]);
        more(&mut document);
        std::fs::write(&file, document.to_string()).unwrap();
        (logbook, file)
    }
}

#[test]
fn an_imported_leaking_cell_has_its_finding() {
    let books = Books::new();
    let (logbook, file) = books.with("cell", |_| ());
    text(&["import", &logbook, &file]);
    let part = answer(&["part", &logbook, "0042"]);
    let [finding] = list(&part, "findings") else { panic!("{part}") };
    assert_eq!((&finding["what"], &finding["state"]), (&json!("cell-leaked"), &json!("open")));
    assert_eq!(part["power"]["verdict"], "no");
    assert!(text(&["check", &logbook]).contains("nothing is wrong"));
    let revision = answer(&["export", &logbook, &books.at("again.json")])["revision"].clone();
    assert_eq!(answer(&["import", &logbook, &file])["revision"].as_u64(), revision.as_u64().map(|it| it + 1));
    assert_eq!(list(&answer(&["part", &logbook, "0042"]), "findings").len(), 1);
}

#[test]
fn unknown_names_are_refused_kept_and_told() {
    let books = Books::new();
    let (logbook, file) = books.with("names", |it| {
        it["survey"][0]["answers"] = json!([{"question": "clock-suply", "given": {"is": "leaking"}}]);
        it["proof"] = json!([{
            "id": key(2), "part": PART, "machine": null, "test": "smell-test", "run": {"on": "2024", "sequence": 0},
            "rig": "", "minutes": null, "criterion": "", "result": "passed", "who": "", "note": ""
        }]);
    });
    let told = reason(&["import", &logbook, &file]);
    assert!(told.contains("2 names stand in no table") && told.contains("--keep-unknown"), "{told}");
    assert!(told.contains("part 0042: no question is named “clock-suply”; “clock-supply” is known"), "{told}");
    assert!(told.contains("part 0042: no test is named “smell-test”"), "{told}");
    assert_eq!(answer(&["import", &logbook, &file, "--keep-unknown"])["parts"], 1);

    let output = benchwright(&["check", &logbook, "--json"]);
    assert_eq!(output.status.code(), Some(1));
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert!(list(&report, "troubles").iter().all(|trouble| trouble["area"] == "names"), "{report}");
    assert_eq!(list(&report, "troubles").len(), 2);
    let said = String::from_utf8(benchwright(&["check", &logbook]).stdout).unwrap();
    assert!(said.contains("2 troubles") && said.contains("Names that no table has"), "{said}");
    let unknown = answer(&["rules", &logbook, "schemes"]);
    assert_eq!(list(&unknown, "unknown").len(), 2);
}

#[test]
fn check_adds_the_findings_that_older_facts_lack() {
    let books = Books::new();
    let (logbook, file) = books.with("old", |it| it["survey"] = json!([]));
    text(&["import", &logbook, &file]);
    // As a program that knew no such rule wrote it.
    let database = rusqlite::Connection::open(std::path::Path::new(&logbook).join("logbook.sqlite")).unwrap();
    let answers = r#"[{"question":"clock-supply","given":{"is":"leaking"}}]"#;
    let part = uuid_bytes(PART);
    database
        .execute(
            "INSERT INTO survey (id, part, looked_on, looked_sequence, who, why, note, answers)
             VALUES (?1, ?2, '2024-05', 1, '', '', '', ?3)",
            rusqlite::params![uuid_bytes(&key(1)), part, answers],
        )
        .unwrap();
    drop(database);
    let output = benchwright(&["check", &logbook]);
    let said = String::from_utf8(output.stdout).unwrap();
    assert_eq!(output.status.code(), Some(1));
    assert!(said.contains("part 0042: Leaked cell (clock-supply)") && said.contains("--add-findings"), "{said}");
    let added = answer(&["check", &logbook, "--add-findings"]);
    assert_eq!(added["added"], json!([{"part": "0042", "finding": "cell-leaked"}]));
    assert_eq!((list(&added, "troubles").len(), &added["remarks"]), (0, &json!([])));
    assert!(text(&["check", &logbook, "--add-findings"]).contains("No finding was missing; nothing was added."));
    assert_eq!(list(&answer(&["part", &logbook, "0042"]), "findings").len(), 1);
}

fn uuid_bytes(key: &str) -> Vec<u8> {
    let digits: String = key.chars().filter(char::is_ascii_hexdigit).collect();
    (0..16).map(|at| u8::from_str_radix(&digits[2 * at..2 * at + 2], 16).unwrap()).collect()
}

#[test]
fn rules_lists_names_kinds_and_words_and_leaves_out_what_is_for_others() {
    let all = answer(&["rules"]);
    for section in ["questions", "findings", "work", "proofs", "figures", "connectors", "schemes"] {
        assert!(list(&all, section).len() > 10, "{section}");
        for row in list(&all, section) {
            assert!(row["name"].is_string() && row["say"].is_string() && row["kinds"].is_array(), "{row}");
        }
        let alone = answer(&["rules", section]);
        assert_eq!(alone.as_object().unwrap().keys().collect::<Vec<_>>(), [section]);
        assert_eq!(alone[section], all[section]);
    }
    let of = |answer: &Value, section: &str, name: &str| -> Option<Value> {
        list(answer, section).iter().find(|row| row["name"] == name).cloned()
    };
    let question = of(&all, "questions", "clock-supply").unwrap();
    let leaking = json!({"name": "leaking", "say": "Leaking cell", "finding": "cell-leaked"});
    assert!(list(&question, "answers").contains(&leaking), "{question}");
    assert!(list(&of(&all, "questions", "rails").unwrap(), "always_on").contains(&json!("mainboard")));
    assert_eq!(of(&all, "figures", "bus_clock_mhz").unwrap()["unit"], "MHz");
    assert!(of(&all, "schemes", "year_week").is_some() && of(&all, "connectors", "isa-16").is_some());

    let boards = answer(&["rules", "--kind", "mainboard"]);
    let monitors = answer(&["rules", "--kind", "monitor"]);
    assert!(of(&boards, "questions", "clock-supply").is_some() && of(&monitors, "questions", "clock-supply").is_none());
    assert!(of(&boards, "findings", "cell-leaked").is_some() && of(&monitors, "findings", "cell-leaked").is_none());
    assert!(of(&boards, "figures", "multiplier").is_some() && of(&monitors, "figures", "multiplier").is_none());

    let said = text(&["rules", "questions", "--kind", "mainboard"]);
    assert!(said.contains("  clock-supply: ") && said.contains("    leaking: Leaking cell → cell-leaked"), "{said}");
    assert!(reason(&["rules", "--kind", "mainbord"]).contains("mainboard"));
}

#[test]
fn a_part_tells_where_it_came_from_how_it_was_set_and_what_was_done() {
    let books = Books::new();
    let (logbook, file) = books.with("past", |it| {
        it["lot"] = json!([{
            "id": key(3), "name": "Attic clearance", "acquired": "2024-02", "source": "a neighbour", "price_cents": 5000,
            "note": ""
        }]);
        it["part"][0]["lot"] = json!(key(3));
        it["setting"] = json!([
            {"id": key(4), "part": PART, "found": {"on": "2024-03", "sequence": 0}, "name": "JP12", "value": "1–2",
             "source": "manual"},
            {"id": key(5), "part": PART, "found": {"on": "2024-04", "sequence": 0}, "name": "JP12", "value": "2–3",
             "source": "print on the board"},
        ]);
        let work = |number: u32, title: &str, nature: &str, state: &str, reversible: Value| {
            json!({"id": key(number), "part": PART, "finding": null, "rule": "", "title": title, "hold": "ready",
                "nature": nature, "state": state, "changed": {"on": "2024-06-01", "sequence": 0}, "who": "Ida Lund",
                "minutes": 25, "used": "wire", "reason": "", "reversible": reversible, "note": ""})
        };
        it["work"] = json!([
            work(6, "Wire the second cooler", "modification", "done", json!(true)),
            work(7, "Wipe it", "care", "done", Value::Null),
            work(8, "Paint it", "modification", "open", json!(false)),
        ]);
    });
    text(&["import", &logbook, &file]);
    let part = answer(&["part", &logbook, "0042"]);
    assert_eq!(part["lot"], json!({"name": "Attic clearance", "source": "a neighbour", "price_cents": 5000}));
    assert_eq!((&part["acquired"], &part["price_cents"]), (&json!("2024-03"), &json!(1250)));
    assert_eq!(
        part["settings"],
        json!([{"name": "JP12", "value": "2–3", "source": "print on the board", "found": "2024-04"}])
    );
    assert_eq!(
        part["modifications"],
        json!([{"what": "Wire the second cooler", "nature": "modification", "on": "2024-06-01", "who": "Ida Lund",
            "reversible": true, "note": ""}])
    );
    let done: Vec<&Value> = list(&part, "work_done").iter().map(|work| &work["what"]).collect();
    assert_eq!(done, ["Wire the second cooler", "Wipe it"]);
    let said = text(&["part", &logbook, "0042"]);
    for words in [
        "Acquired: 2024-03, 12.50 EUR",
        "Lot: Attic clearance, a neighbour, 50.00 EUR for all of it",
        "JP12: 2–3 (print on the board, 2024-04)",
        "Wire the second cooler: Modification, 2024-06-01, Ida Lund, can be undone",
        "Wipe it: 2024-06-01, Ida Lund, 25 min, wire",
    ] {
        assert!(said.contains(words), "“{words}” is missing: {said}");
    }
}

#[test]
fn a_byte_order_mark_before_a_document_or_a_table_is_read() {
    let books = Books::new();
    let (logbook, file) = books.with("mark", |_| ());
    let document = std::fs::read_to_string(&file).unwrap();
    std::fs::write(&file, format!("\u{feff}{document}")).unwrap();
    assert_eq!(answer(&["import", &logbook, &file])["parts"], 1);
    let table = books.at("stock.csv");
    std::fs::write(&table, "\u{feff}name,unit,stock\nSolder,g,250\n").unwrap();
    text(&["supplies", &logbook, "--take", &table]);
    assert_eq!(list(&answer(&["supplies", &logbook]), "stock")[0]["name"], "Solder");
}
