//! Readings of marks, and capacitors' figures, on the console.

use crate::{benchwright, json, reason, text};

#[test]
fn an_ambiguous_code_gives_both_readings() {
    let found = json(&["read", "date-code", "0203", "--from", "1994", "--to", "2005"]);
    let reading = |scheme: &str| {
        let all = found["readings"].as_array().unwrap();
        all.iter().find(|reading| reading["scheme"] == scheme).unwrap().clone()
    };
    // Weeks by isoweek 1.3.3 (14 to 20 January 2002; 6 to 12 January 2003), a week more on both sides.
    assert_eq!(reading("year_week")["first"], "2002-01-07");
    assert_eq!(reading("year_week")["last"], "2002-01-27");
    assert_eq!(reading("week_year")["first"], "2002-12-30");
    assert_eq!(reading("week_year")["last"], "2003-01-19");
    let board = json(&["read", "date-code", "0203", "--surface", "board"]);
    assert_eq!(board["readings"][0]["scheme"], "week_year");
    assert_eq!(board["readings"][0]["why"], "usual on boards");
}

#[test]
fn what_cannot_be_read_says_why() {
    assert!(reason(&["read", "date-code", "G4"]).contains("G is no year letter"));
    assert!(reason(&["read", "date-code", "9432", "--from", "2001", "--to", "1999"]).contains("after the last"));
    assert!(reason(&["read", "capacitor", "477", "--body", "ceramic"]).contains("third figure 7"));
    assert!(reason(&["work-out", "capacitor", "--uf", "0", "--volts", "16"]).contains("--uf"));
    assert!(reason(&["work-out", "life", "--hours", "1000", "--rated", "85", "--at", "95"]).contains("hotter"));
    assert!(reason(&["work-out", "parallel", "1000"]).contains("1000:30"));
    assert_eq!(benchwright(&["read", "date-code"]).status.code(), Some(2));
}

#[test]
fn a_capacitor_mark_gives_value_voltage_and_tolerance() {
    // oriedza.blogspot.com: 100 V, 0.47 µF, ±5 %.
    let found = json(&["read", "capacitor", "2A474J"]);
    let reading = &found["readings"][0];
    assert_eq!(reading["capacitance_uf"], 0.47);
    assert_eq!(reading["volts"], 100.0);
    assert_eq!(reading["tolerance"]["plus"], 5.0);
    assert_eq!(found["readings"].as_array().unwrap().len(), 1);
    assert!(text(&["read", "capacitor", "2A474J"]).contains("470 nF (0.47 µF), 100 V, ±5 %"));
}

#[test]
fn a_measured_capacitor_is_judged() {
    let worn = ["work-out", "capacitor", "--uf", "1000", "--volts", "16", "--measured-uf", "790", "--esr-mohm", "300"];
    let found = json(&worn);
    assert_eq!(found["grade"], "out_of_limits");
    let grades: Vec<&str> =
        found["checks"].as_array().unwrap().iter().map(|check| check["grade"].as_str().unwrap()).collect();
    assert_eq!(grades, ["out_of_limits", "worn"]);
    assert_eq!(found["limits"]["leakage_ua"], 160.0);
}

#[test]
fn life_and_groups_and_re_forming() {
    // Cosel Q&A a0057.
    let found = json(&[
        "work-out", "life", "--hours", "1000", "--rated", "105", "--at", "45:8", "--at", "55:8", "--at", "65:8",
    ]);
    assert!((found["hours"].as_f64().unwrap() - 27_428.57).abs() < 0.01);
    assert_eq!(json(&["work-out", "parallel", "1000:30", "1000:30", "1000:30"])["esr_mohm"], 10.0);
    let old = text(&["work-out", "reform", "--years", "25", "--volts", "400"]);
    assert!(old.contains("past its shelf life") && old.contains("can kill"), "{old}");
    assert_eq!(json(&["work-out", "reform", "--years", "1", "--volts", "16"])["need"], "nothing");
}

#[test]
fn a_parts_markings_are_read_together() {
    // Weeks 20, 26 and 31 of 1994, and 22 of 1999; 1994-W31 begins on 1 August (isoweek 1.3.3).
    let markings = ["read", "markings", "chip=9420", "chip=9426", "board=3194", "chip=9922"];
    let found = json(&markings);
    assert_eq!(found["not_before"]["day"], "1994-07-25");
    assert_eq!(found["not_before"]["marking"], 2);
    assert_eq!(found["outliers"][0]["marking"], 3);
    assert_eq!(found["confidence"]["grade"], "fair");
    let said = text(&markings);
    assert!(said.contains("not before 1994-07-25: 3194") && said.contains("9922 lies"), "{said}");
    let designed = json(&["read", "markings", "chip=9420", "--design", "1995-1996"]);
    assert_eq!(designed["not_before"]["day"], "1995-01-01");
    assert!(designed["not_before"]["marking"].is_null());
    // 1999-W21, and no fiscal day of July 1998, before the design was there; a design's end alone is no beginning.
    let label = json(&["read", "markings", "drive-label=9921", "--design", "1998-09.."]);
    assert_eq!((&label["markings"][0]["kept"][0]["first"], &label["conflict"]), (&"1999-05-17".into(), &false.into()));
    assert_eq!(label["markings"][0]["kept"].as_array().unwrap().len(), 1);
    let contradicted = json(&["read", "markings", "drive-label=92-14", "--design", "1998-09..2000"]);
    assert_eq!((&contradicted["conflict"], &contradicted["conflicts"][0]["weeks"]), (&true.into(), &(-334).into()));
    let said = text(&["read", "markings", "drive-label=92-14", "--design", "1998-09..2000"]);
    assert!(said.contains("334 weeks before its design’s years (1998-09-01 to 2000-12-31)"), "{said}");
    assert!(reason(&["read", "markings", "chip=9420", "--design", "2000..1998"]).contains("after its last"));
    assert!(reason(&["read", "markings", "lid=9420"]).contains("lid"));
    assert!(reason(&["read", "markings", "chip=9420", "--design", "soon"]).contains("soon"));
}
