//! `new`, `import`, `export`, `check` and `schema`, with their exit codes.

use serde_json::Value;

use crate::{benchwright, json, reason, text};

#[test]
fn a_new_logbook_is_sound_and_bears_its_folders_name() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("attic.logbook");
    let path = path.to_str().unwrap();
    let made = json(&["new", path, "--keeper", "Ida Lund"]);
    assert_eq!((&made["workshop"], &made["keeper"]), (&Value::from("attic"), &Value::from("Ida Lund")));
    let report = json(&["check", path]);
    assert_eq!((&report["records"], &report["troubles"]), (&Value::from(1), &Value::from(Vec::<Value>::new())));
    assert!(text(&["check", path]).contains("nothing is wrong"));
    assert!(reason(&["new", path]).contains("attic.logbook"), "what is there already is left alone");
}

#[test]
fn a_logbook_goes_out_and_comes_in_again() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let (one, other, file, back) = (at("one.logbook"), at("other.logbook"), at("one.json"), at("back.json"));
    text(&["new", &one, "--name", "Old school"]);
    text(&["new", &other]);
    assert_eq!(json(&["export", &one, &file])["parts"], 0);
    // A part as the schema describes it, written by hand.
    let mut document: Value = serde_json::from_str(&std::fs::read_to_string(&file).unwrap()).unwrap();
    document["part"] = serde_json::json!([{
        "id": "0190163d-8694-739b-aea5-966c26f8ad91", "tag": "0042", "kind": "mainboard", "design": null,
        "name": "Nordkamp NB-4", "serial": "", "originality": "original", "lot": null, "price_cents": 1250,
        "acquired": "2024-03", "place": null, "inside": null, "quarantine": "", "quarantined": "", "note": ""
    }]);
    std::fs::write(&file, document.to_string()).unwrap();
    assert_eq!(json(&["import", &other, &file])["parts"], 1);
    text(&["export", &other, &back]);
    let back: Value = serde_json::from_str(&std::fs::read_to_string(&back).unwrap()).unwrap();
    assert_eq!(back, document);

    document["part"][0]["kind"] = "mainbord".into();
    std::fs::write(&file, document.to_string()).unwrap();
    let reason = reason(&["import", &other, &file]);
    assert!(
        reason.contains("part 0042, kind: one of mainboard,") && reason.contains("the text “mainbord” stands here"),
        "{reason}"
    );
    assert_eq!(json(&["export", &other, &at("again.json")])["revision"], 2);
}

#[test]
fn check_fails_with_its_report_when_a_photograph_is_missing_or_changed() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.logbook");
    let logbook = path.to_str().unwrap();
    text(&["new", logbook]);
    let file = folder.path().join("w.json");
    text(&["export", logbook, file.to_str().unwrap()]);
    let mut document: Value = serde_json::from_str(&std::fs::read_to_string(&file).unwrap()).unwrap();
    let lot = "0190163d-8694-739b-aea5-966c26f8ad92";
    document["lot"] = serde_json::json!([{
        "id": lot, "name": "Attic", "acquired": "", "source": "", "price_cents": null, "note": ""
    }]);
    // SHA-256 of "abc". Source: FIPS 180-4 example.
    let content = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    document["photo"] = serde_json::json!([{
        "id": "0190163d-8694-739b-aea5-966c26f8ad93", "part": null, "machine": null, "lot": lot, "content": content,
        "extension": "png", "width_px": 1, "height_px": 1, "added": {"on": "", "sequence": 0}, "taken": "",
        "view": "overview", "caption": ""
    }]);
    std::fs::write(&file, document.to_string()).unwrap();
    text(&["import", logbook, file.to_str().unwrap()]);

    let troubled = |word: &str| {
        let output = benchwright(&["check", logbook, "--json"]);
        assert_eq!(output.status.code(), Some(1));
        let report: Value = serde_json::from_slice(&output.stdout).unwrap();
        assert_eq!(report["troubles"].as_array().unwrap().len(), 1, "{report}");
        assert_eq!(report["troubles"][0]["area"], "files");
        let text = report["troubles"][0]["text"].as_str().unwrap();
        assert!(text.contains(word) && text.ends_with(&format!("{content}.png")), "{text}");
    };
    troubled("missing");
    let photo = path.join("photos").join(format!("{content}.png"));
    std::fs::write(&photo, "abd").unwrap();
    troubled("not what it was");
    std::fs::write(&photo, "abc").unwrap();
    assert_eq!(json(&["check", logbook])["files"], 1);
    std::fs::write(path.join("photos").join("stray.png"), "x").unwrap();
    assert!(text(&["check", logbook]).contains("stray.png"), "told, but no trouble");
}

#[test]
fn the_schema_is_printed_as_it_ships() {
    let printed: Value = serde_json::from_str(&text(&["schema"])).unwrap();
    let shipped: Value = serde_json::from_str(include_str!("../../resources/exchange.schema.json")).unwrap();
    assert_eq!(printed, shipped);
}

#[test]
fn wrong_usage_is_told_apart_from_failure() {
    assert_eq!(benchwright(&["check"]).status.code(), Some(2));
    assert_eq!(benchwright(&["import", "one"]).status.code(), Some(2));
    let folder = tempfile::tempdir().unwrap();
    let gone = folder.path().join("gone.logbook");
    assert!(reason(&["check", gone.to_str().unwrap()]).contains("gone.logbook"));
    assert!(reason(&["export", gone.to_str().unwrap(), "-"]).contains("gone.logbook"));
}
