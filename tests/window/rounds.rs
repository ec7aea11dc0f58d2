//! The rounds that part sheets share with Intake, for a part that is in the logbook already.

use benchwright::assess::findings::after_survey;
use benchwright::record::{
    Answer, CapacitorState, Dielectric, Entry, FindingState, Given, Kind, Moment, PartFile, Severity, Survey, When,
};
use benchwright::rules::Rules;
use benchwright::window::rounds::{CapacitorsRound, MarkingsRound, SurveyRound};
use benchwright::window::theme;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use uuid::Uuid;

use crate::hand::{marking, part};
use crate::records;

const DAY: &str = "2026-03-14";

fn day() -> When {
    DAY.parse().unwrap()
}

/// A round drawn by itself.
fn drawn<S: 'static>(round: S, mut ui: impl FnMut(&mut egui::Ui, &mut S) + 'static) -> Harness<'static, S> {
    let mut is_dressed = false;
    let mut window = Harness::builder().with_size([900.0, 700.0]).build_ui_state(
        move |egui, round| {
            if !std::mem::replace(&mut is_dressed, true) {
                theme::apply(egui.ctx());
                return;
            }
            ui(egui, round);
        },
        round,
    );
    window.run();
    window
}

fn press<S>(window: &mut Harness<'static, S>, name: &str) {
    window.get_by_role_and_label(Role::Button, name).click();
    window.run();
}

fn fill<S>(window: &mut Harness<'static, S>, field: &str, text: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    window.run();
}

/// A mainboard with a survey that saw a leaking cell, and what followed.
fn surveyed(rules: &Rules) -> (PartFile, Survey) {
    let mut file = PartFile::new(part("0042", Kind::Mainboard, ""));
    let mut survey = SurveyRound::default().survey(file.part.id, rules, Kind::Mainboard, day(), "", "");
    assert_eq!(survey, None, "a round in which nothing was looked at is no survey");
    let answer =
        Answer { place_on_part: "top left".to_owned(), ..records::answer("clock-supply", Given::Is("leaking".into())) };
    let looked = Moment { on: day(), sequence: 1 };
    let survey = survey.get_or_insert(records::survey(file.part.id, looked, vec![answer]));
    let mut ids = Uuid::now_v7;
    let follows = after_survey(&file, survey, rules, &mut ids);
    let survey = survey.clone();
    file.hang_all(&[survey.clone().into()]);
    file.hang_all(&follows);
    (file, survey)
}

#[test]
fn a_corrected_survey_takes_back_what_the_slip_found() {
    let rules = Rules::shipped();
    let (mut file, slip) = surveyed(&rules);
    assert_eq!(file.findings[0].state(), FindingState::Open);
    let shown = rules.clone();
    let mut window = drawn(SurveyRound::correcting(&slip), move |ui, round| round.ui(ui, &shown, Kind::Mainboard));
    press(&mut window, "What feeds the clock and settings? Leaking cell");
    press(&mut window, "What feeds the clock and settings? Coin cell in a holder");
    let entries = window.state().entries(&file, &rules, day(), "", "");
    let Some(Entry::Survey(corrected)) = entries.first() else { panic!("no survey in {entries:?}") };
    assert_eq!(corrected.supersedes, Some(slip.id));
    assert_eq!(corrected.answer("clock-supply").unwrap().given, Given::Is("coin".into()));
    file.hang_all(&entries);
    assert!(!file.findings[0].state().calls_for_work());
    assert_eq!(file.surveys.len(), 2, "the slip stays on record");
}

#[test]
fn a_later_survey_finds_the_cell_gone() {
    let rules = Rules::shipped();
    let (mut file, _) = surveyed(&rules);
    let shown = rules.clone();
    let mut window = drawn(SurveyRound::default(), move |ui, round| round.ui(ui, &shown, Kind::Mainboard));
    press(&mut window, "What feeds the clock and settings? Not looked at");
    press(&mut window, "What feeds the clock and settings? Coin cell in a holder");
    let entries = window.state().entries(&file, &rules, day(), "", "");
    file.hang_all(&entries);
    assert_eq!(file.findings[0].state(), FindingState::Confirmed);
}

#[test]
fn a_figure_that_cannot_be_meant_is_told_and_kept_out() {
    let rules = Rules::shipped();
    let shown = rules.clone();
    let mut window = drawn(SurveyRound::default(), move |ui, round| round.ui(ui, &shown, Kind::Mainboard));
    press(&mut window, "Coin cell: holds its voltage? Not looked at");
    press(&mut window, "Coin cell: holds its voltage? Good");
    fill(&mut window, "Cell voltage (V)", "29");
    let fault = window.state().fault(&rules, Kind::Mainboard).unwrap();
    assert!(fault.contains("29") && fault.contains("4.5"), "{fault}");
    assert!(window.query_by_label_contains("cannot be meant").is_some());
    let file = PartFile::new(part("0042", Kind::Mainboard, ""));
    let survey = window.state().survey(file.part.id, &rules, Kind::Mainboard, day(), "", "").unwrap();
    assert_eq!(survey.answer("coin-cell").unwrap().figure, None);
}

#[test]
fn a_spent_cell_is_found_by_its_voltage_alone() {
    let rules = Rules::shipped();
    let shown = rules.clone();
    let mut window = drawn(SurveyRound::default(), move |ui, round| round.ui(ui, &shown, Kind::Mainboard));
    press(&mut window, "Coin cell: holds its voltage? Not looked at");
    press(&mut window, "Coin cell: holds its voltage? Good");
    // Lithium coin cells are rated to 2.0 V (Energizer, Lithium Coin handbook).
    fill(&mut window, "Cell voltage (V)", "1,4 V");
    let mut file = PartFile::new(part("0042", Kind::Mainboard, ""));
    let entries = window.state().entries(&file, &rules, day(), "", "");
    file.hang_all(&entries);
    assert_eq!(file.findings[0].finding.what, "coin-cell-spent");
}

#[test]
fn a_reading_is_settled_by_a_press_and_read_better_later() {
    let file = PartFile::new(part("0042", Kind::Mainboard, ""));
    let mut window = drawn(MarkingsRound::default(), {
        let file = file.clone();
        move |ui, round| round.ui(ui, &file, None, chrono::NaiveDate::from_ymd_opt(2026, 7, 1).unwrap())
    });
    // Week 12 of 1994, or week 94 of 2012, which is none: but year 1994, month 12 as well.
    fill(&mut window, "Marking 1 as printed", "9412");
    let settle = window.query_all_by_label_contains("Settle 9412 as").map(|node| {
        use egui_kittest::kittest::NodeT;
        node.accesskit_node().label().unwrap_or_default()
    });
    let month = settle.into_iter().find(|name| name.contains("YYMM")).expect("year and month is offered");
    press(&mut window, &month);
    let entries = window.state().entries(file.part.id, day());
    let [Entry::Marking(settled)] = &entries[..] else { panic!("{entries:?}") };
    assert_eq!((settled.text.as_str(), settled.scheme.as_str()), ("9412", "year_month"));
    assert!(window.query_by_label_contains("settled by you").is_some());

    // Another reading of the same marking supersedes it and starts from it.
    let known = marking(file.part.id, "94I2");
    let mut better = file.clone();
    better.markings.push(known.clone());
    let mut window = drawn(MarkingsRound::correcting(&known), move |ui, round| {
        round.ui(ui, &better, None, chrono::NaiveDate::from_ymd_opt(2026, 7, 1).unwrap());
    });
    fill(&mut window, "Marking 1 as printed", " WK 12 94");
    let entries = window.state().entries(file.part.id, day());
    let [Entry::Marking(read)] = &entries[..] else { panic!("{entries:?}") };
    assert_eq!((read.text.as_str(), read.supersedes), ("94I2 WK 12 94", Some(known.id)));
}

#[test]
fn a_group_is_given_field_by_field_too() {
    let rules = Rules::shipped();
    let mut window = drawn(CapacitorsRound::default(), |ui, round| round.ui(ui));
    press(&mut window, "Or field by field");
    fill(&mut window, "Value (µF)", "10");
    fill(&mut window, "Voltage (V)", "90000");
    assert!(window.query_by_label_contains("90000 V cannot be").is_some());
    assert!(window.state().fault().is_some());
    press(&mut window, "Put the fields away");
    press(&mut window, "Or field by field");
    fill(&mut window, "Designators (C1–C6)", "C3-C5");
    fill(&mut window, "Value (µF)", "10");
    fill(&mut window, "Voltage (V)", "16");
    press(&mut window, "Add the group");
    fill(&mut window, "Capacitors in plain words", "two tantalum 22 µF 16 V burst near the slots");
    let mut file = PartFile::new(part("0042", Kind::SoundCard, ""));
    let entries = window.state().entries(&file, &rules, day());
    file.hang_all(&entries);
    let names: Vec<&str> = file.capacitors.iter().map(|file| file.position.designator.as_str()).collect();
    assert_eq!(names, ["C3", "C4", "C5", "", ""]);
    assert_eq!(
        (file.capacitors[0].position.voltage_v, file.capacitors[0].state()),
        (Some(16.0), CapacitorState::NotLooked)
    );
    assert_eq!(file.capacitors[4].position.dielectric, Dielectric::Tantalum);
    // Positions that were not looked at find nothing; the burst ones do.
    let found: Vec<(&str, Severity)> =
        file.findings.iter().map(|known| (known.finding.what.as_str(), known.severity())).collect();
    assert_eq!(found.iter().map(|(what, _)| *what).collect::<Vec<_>>(), ["tantalum-burst"]);
}
