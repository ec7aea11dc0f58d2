//! Bounds and figures: batteries, rails to ground, core voltages, coolers.

use std::sync::Arc;

use benchwright::assess::findings::after_survey;
use benchwright::assess::fit::{Constraint, Verdict};
use benchwright::assess::{PartAnswers, Reason};
use benchwright::record::*;
use benchwright::rules::{PowerEffect, Rules};
use benchwright::trade::cell::Chemistry;

use crate::fitting::Fitting;
use crate::records;

/// The findings that one answer with its figure raises on a new board.
fn found(rules: &Rules, question: &str, given: &str, figure: f64) -> Vec<String> {
    let board = PartFile::new(records::part("0042", Kind::Mainboard, "Velmar board"));
    let answer = Answer { figure: Some(figure), ..records::answer(question, Given::Is(given.into())) };
    let survey = records::survey(board.part.id, records::moment("2026-01-01"), vec![answer]);
    let entries = after_survey(&board, &survey, rules, &mut uuid::Uuid::now_v7);
    let what = |entry: &Entry| match entry {
        Entry::Finding(finding) => Some(finding.what.to_string()),
        _ => None,
    };
    entries.iter().filter_map(what).collect()
}

/// Energizer Lithium Coin handbook: rated to 2.0 V. Common practice, no source: below 2.8 V little is left, since the
/// voltage stays near 3 V almost to the end.
#[test]
fn a_coin_cell_of_2_4_volts_is_found_low_and_one_below_2_volts_spent() {
    let rules = Rules::shipped();
    let of = |volts| found(&rules, "coin-cell", "good", volts);
    assert_eq!(of(3.0), [""; 0]);
    assert_eq!(of(2.8), [""; 0]);
    assert_eq!(of(2.4), ["coin-cell-low"]);
    assert_eq!(of(2.0), ["coin-cell-low"]);
    assert_eq!(of(1.9), ["coin-cell-spent"]);
    for finding in ["coin-cell-low", "coin-cell-spent"] {
        let jobs: Vec<&str> =
            rules.work_for(finding, Kind::Mainboard, Severity::Slight).map(|row| row.name.as_str()).collect();
        assert_eq!(jobs, ["fit-coin-cell"], "{finding}");
    }
}

/// One home for a limit: what the survey asks is what the console tells of such a battery.
#[test]
fn the_survey_and_the_table_of_batteries_draw_the_same_lines() {
    let rules = Rules::shipped();
    let figure = rules.question("coin-cell").unwrap().figure.clone().unwrap();
    let below = |finding: &str| figure.bounds.iter().find(|bound| bound.finding == finding).unwrap().below.unwrap();
    let facts = Chemistry::LithiumManganese.facts();
    assert_eq!((below("coin-cell-low"), below("coin-cell-spent")), (facts.good_v, facts.spent_v));
}

/// At 5 ohm a rail of 12 V carries 2.4 A with nothing in it, and −12 V supplies give 0.3 A (ATX12V 2.0).
#[test]
fn a_few_ohms_are_a_fault_on_12_volts_and_none_on_5() {
    let rules = Rules::shipped();
    let out = |rail: &str, ohm: f64| {
        let mut board = PartFile::new(records::part("0042", Kind::Mainboard, "Velmar board"));
        let quantity = format!("{rail} V to ground, unpowered");
        let measured = records::moment("2026-01-01");
        board.readings.push(records::reading(board.part.id, measured, &quantity, ohm, "ohm"));
        let today = chrono::NaiveDate::from_ymd_opt(2026, 2, 1).unwrap();
        let answers = PartAnswers::of(&Arc::new(board), None, &rules, today);
        answers.power.iter().any(|reason| matches!(reason, Reason::ReadingOut { effect: PowerEffect::No, .. }))
    };
    for rail in ["+12", "-12", "-5"] {
        assert!(out(rail, 5.0), "{rail}");
        assert!(!out(rail, 50.0), "{rail}");
    }
    for rail in ["+5", "+3.3"] {
        assert!(!out(rail, 5.0), "{rail}");
        assert!(out(rail, 0.5), "{rail}");
    }
}

#[test]
fn the_lowest_rail_of_a_survey_is_held_against_the_limits_of_the_test() {
    let rules = Rules::shipped();
    assert_eq!(found(&rules, "rails", "clear", 0.4), ["rail-shorted"]);
    assert_eq!(found(&rules, "rails", "clear", 5.0), ["rail-low"], "which rail, nobody noted");
    assert_eq!(found(&rules, "rails", "clear", 140.0), [""; 0]);
    let low = rules.finding("rail-low").unwrap();
    assert_eq!(low.power, PowerEffect::NotKnown);
    let job = rules.work_for("rail-low", Kind::SoundCard, Severity::Plain).next().unwrap();
    assert_eq!(job.proven_by, ["rails-to-ground"], "the job leads to the form with a limit for each rail");
    // Who sets other limits in a table of his own sets them for both.
    let own = "[[proof]]\nname = \"rails-to-ground\"\nsay = \"Rails\"\nkinds = [\"mainboard\"]\nrequired = false\n\
        power = \"nothing\"\nrig = \"Meter\"\nminutes = 5\ncriterion = \"No short.\"\nsource = \"common practice, no source\"\n\
        figure = [{ say = \"+5 V to ground\", unit = \"ohm\", fails_below = 3 }, { say = \"+12 V to ground\", unit = \"ohm\", fails_below = 40 }]\n";
    let rules = Rules::with_own(&[("mine.toml".to_owned(), own.to_owned())]).unwrap();
    assert_eq!(found(&rules, "rails", "clear", 2.0), ["rail-shorted"]);
    assert_eq!(found(&rules, "rails", "clear", 30.0), ["rail-low"]);
    assert_eq!(found(&rules, "rails", "clear", 41.0), [""; 0]);
}

#[test]
fn a_bound_that_names_a_test_without_limits_is_refused() {
    let own = "[[question]]\nname = \"mine\"\nkinds = [\"mainboard\"]\nask = \"?\"\ntopic = \"rails\"\npower = \"nothing\"\n\
        source = \"common practice, no source\"\nanswer = [{ name = \"a\", say = \"A\", power = \"nothing\" }, { name = \"b\", say = \"B\", power = \"nothing\" }]\n\
        [question.figure]\nsay = \"Rail\"\nunit = \"ohm\"\nleast = 0.0\nmost = 10.0\n\
        bound = [{ below_all_of = \"boot\", finding = \"rail-shorted\" }]\n";
    let wrong = Rules::with_own(&[("mine.toml".to_owned(), own.to_owned())]).unwrap_err().to_string();
    assert!(wrong.contains("mine.toml") && wrong.contains("`boot` has no figure with a bound"), "{wrong}");
}

/// From memory of the data sheets: split-voltage processors of 2.8 V allow 2.7 to 2.9 V, those of 2.2 V 2.1 to 2.3 V;
/// single-voltage ones of 3.3 V 5 %.
#[test]
fn a_split_voltage_processor_stands_a_tenth_of_a_volt_and_no_more() {
    let rules = Rules::shipped();
    let power = |asks: f64, gives: f64| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::Mainboard, &[], &[("socket-7", 1)], &[(Figure::CoreVoltageV, gives)]);
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, asks)]);
        let build = fitting.build();
        let told = crate::fitting::because(&build, Constraint::Voltage);
        told[0].power_effect()
    };
    for (asks, gives, effect) in [
        (2.8, 2.8, PowerEffect::Nothing),
        (2.8, 2.9, PowerEffect::Remark),
        (2.8, 2.7, PowerEffect::Remark),
        (2.8, 2.93, PowerEffect::No),
        (2.2, 2.31, PowerEffect::No),
        (3.3, 3.45, PowerEffect::Remark),
        (3.3, 3.5, PowerEffect::No),
    ] {
        assert_eq!(power(asks, gives), effect, "{asks} V asked, {gives} V given");
    }
    let criterion = &rules.proof("voltage-right").unwrap().criterion;
    assert!(criterion.contains("0.1 V") && criterion.contains("3.6 %") && criterion.contains("5 % from 3 V up"));
}

/// coolerxtreme.tripod.com, CPU cooler installation: a cooler made for a larger contact tilts on a flip-chip, presses on
/// its edge and grinds it off; Wikipedia, Socket A, gives the load that the bare die stands.
#[test]
fn a_cooler_of_another_socket_is_never_silently_right() {
    let rules = Rules::shipped();
    let cooled = |socket: &str, lugs: &str, cooler: &str| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::Mainboard, &[], &[(socket, 1), (lugs, 1)], &[]);
        let processor = if socket == "socket-370-fcpga" { "socket-370" } else { socket };
        fitting.add(Kind::Processor, &[(processor, 1)], &[], &[]);
        fitting.add(Kind::Cooler, &[(cooler, 1)], &[], &[]);
        let build = fitting.build();
        let told = crate::fitting::because(&build, Constraint::Cooling);
        (told[0].verdict(), told[0].power_effect())
    };
    for (socket, lugs) in [
        ("socket-5", "cooler-socket-7"),
        ("socket-7", "cooler-socket-7"),
        ("super-7", "cooler-socket-7"),
        ("socket-370-fcpga", "cooler-socket-370"),
        ("socket-a", "cooler-socket-a"),
    ] {
        assert_eq!(cooled(socket, lugs, lugs), (Verdict::Fits, PowerEffect::Nothing), "{socket}");
    }
    for cooler in ["cooler-socket-370", "cooler-socket-a"] {
        assert_eq!(cooled("socket-7", "cooler-socket-7", cooler), (Verdict::Caveat, PowerEffect::Remark), "{cooler}");
    }
    // One for less power, and a board that is told with the lugs of another.
    for (socket, lugs) in
        [("socket-370-fcpga", "cooler-socket-370"), ("socket-a", "cooler-socket-a"), ("socket-a", "cooler-socket-7")]
    {
        assert_eq!(cooled(socket, lugs, "cooler-socket-7"), (Verdict::NotKnown, PowerEffect::NotKnown), "{socket}");
    }
    assert_eq!(cooled("socket-a", "cooler-socket-a", "cooler-socket-370").1, PowerEffect::NotKnown);
}

/// Upgrading and Repairing PCs: Socket 7 is Socket 5 with one additional key hole. Its processors need not have a pin
/// there, and a single 3.3 V supply is too much for a split-voltage one.
#[test]
fn a_socket_7_processor_in_a_socket_5_board_is_no_and_the_supply_is_named_as_the_danger() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("socket-5", 1)], &[]);
    fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, 2.8)]);
    assert_eq!(crate::fitting::verdict(&fitting.build(), Constraint::Connectors), Some(Verdict::No));
    let note = &rules.connectors.get("socket-5").unwrap().note;
    assert!(note.contains("go in here all the same") && note.contains("single 3.3 V supply"), "{note}");
}
