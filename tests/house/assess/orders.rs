//! Work that the restorer puts in order by hand, on one part or over several, and whole overhauls.

use std::sync::Arc;

use benchwright::assess::Answers;
use benchwright::assess::outstanding::{Shown, shown};
use benchwright::assess::schedule::{Ground, Item, Terms, schedule};
use benchwright::assess::templates;
use benchwright::assess::tonight::{Evening, PATIENCE, tonight};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::*;

const TODAY: &str = "2026-06-01";

/// Work in own words.
fn own(number: u128, part: &PartFile, title: &str) -> Work {
    Work { title: title.to_owned(), ..work(number, part, "", WorkState::Open, at("2026-01-02", number as u32)) }
}

fn after(number: u128, part: u128, later: u128, first: u128) -> WorkAfter {
    WorkAfter { id: id(number), part: id(part), work: id(later), after: id(first) }
}

fn titles(answers: &Answers, tag: &str) -> Vec<String> {
    let part = answers.parts.iter().find(|part| part.file.part.tag == tag).unwrap();
    part.tasks.iter().map(|task| format!("{}{}", if task.doable { "> " } else { "" }, task.title())).collect()
}

/// A board that waits for a test card to be mended, and for its own paint to dry.
fn two_parts() -> Vec<PartFile> {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.work.extend([own(100, &board, "Try it with the card"), own(101, &board, "Find the manual")]);
    board.work_after.push(after(110, 1, 100, 101));
    let mut card = part(2, "0002", Kind::VideoCard);
    card.work.push(own(200, &card, "Mend the card"));
    board.work_after.push(after(111, 1, 100, 200));
    vec![board, card]
}

fn done(file: &PartFile, work: u128) -> PartFile {
    let mut file = file.clone();
    let work = file.work.iter_mut().find(|known| known.id == id(work)).unwrap();
    work.state = WorkState::Done;
    file
}

#[test]
fn what_is_put_behind_another_piece_waits_for_it_on_its_part_and_elsewhere() {
    let rules = rules();
    let parts = two_parts();
    let book = |parts: &[PartFile]| logbook(parts.to_vec(), vec![], vec![]);
    let answers = Answers::of(&book(&parts), &rules, day(TODAY));
    assert_eq!(
        titles(&answers, "0001"),
        ["> Find the manual", "Try it with the card"],
        "what comes first stands first"
    );
    let (board, task) = (&answers.parts[0], &answers.parts[0].tasks[1]);
    assert_eq!(answers.firsts(board, task), ["Find the manual", "Mend the card (0002)"]);
    assert_eq!(board.totals.doable, 1);

    let manual_found = vec![done(&parts[0], 101), parts[1].clone()];
    let answers = Answers::of(&book(&manual_found), &rules, day(TODAY));
    assert_eq!(titles(&answers, "0001"), ["Try it with the card"], "the card is still to be mended");
    let both_done = vec![manual_found[0].clone(), done(&parts[1], 200)];
    let answers = Answers::of(&book(&both_done), &rules, day(TODAY));
    assert_eq!(titles(&answers, "0001"), ["> Try it with the card"]);
}

#[test]
fn a_change_on_the_first_part_reaches_the_part_that_waits() {
    let rules = rules();
    let parts = two_parts();
    let mut book = logbook(vec![done(&parts[0], 101), parts[1].clone()], vec![], vec![]);
    let answers = Answers::of(&book, &rules, day(TODAY));
    assert_eq!(titles(&answers, "0001"), ["Try it with the card"]);
    // Only the other part's file is a new one, as after a change.
    book.parts[1] = Arc::new(done(&parts[1], 200));
    book.revision += 1;
    let next = answers.next(&book, &rules, day(TODAY));
    assert_eq!(titles(&next, "0001"), ["> Try it with the card"]);
    book.parts[1] = Arc::new(parts[1].clone());
    book.revision += 1;
    assert_eq!(titles(&next.next(&book, &rules, day(TODAY)), "0001"), ["Try it with the card"], "and back");
}

#[test]
fn what_would_go_in_a_circle_is_told_before_it_is_written() {
    let rules = rules();
    let answers = Answers::of(&logbook(two_parts(), vec![], vec![]), &rules, day(TODAY));
    let (board, card) = (id(1), id(2));
    // “Try it” comes after “Mend the card”: the card cannot wait for the trial.
    let way = answers.way_back((card, 0), (board, 1)).unwrap();
    assert_eq!(way, [(card, 0), (board, 1)]);
    assert_eq!(answers.way_back((board, 0), (card, 0)), None, "the manual may wait for the card");
    assert!(answers.way_back((board, 0), (board, 0)).is_some(), "nothing waits for itself");
}

#[test]
fn where_an_order_by_hand_speaks_against_the_tables_the_tables_hold() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "leaked-cell", at("2026-01-05", 5), Severity::Grave));
    for (number, rule) in [(100, "cut-out"), (101, "neutralise")] {
        let work = work(number, &board, rule, WorkState::Open, at("2026-01-06", number as u32));
        board.work.push(Work { finding: Some(id(50)), ..work });
    }
    // Neutralising comes after the cutting (trade: remove cell → neutralise); here by hand the other way round.
    board.work_after.push(after(110, 1, 100, 101));
    let answers = Answers::of(&logbook(vec![board], vec![], vec![]), &rules(), day(TODAY));
    let names: Vec<&str> = answers.parts[0].tasks.iter().map(|task| task.rule().unwrap().name.as_str()).collect();
    assert_eq!(names, ["cut-out", "neutralise", "rinse", "look-under"]);
    assert!(answers.parts[0].tasks[0].doable);
}

#[test]
fn tonight_and_the_schedule_keep_an_order_over_two_parts() {
    let rules = rules();
    let mut machine = machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard)]);
    fit(&mut machine, 40, 30, 1, at("2026-02-01", 20));
    let logbook = logbook(two_parts(), vec![], vec![machine]);
    let answers = Answers::of(&logbook, &rules, day(TODAY));
    let plan = tonight(&answers, &logbook, &rules, Evening { minutes: 600, help: false }, PATIENCE);
    let chosen: Vec<&str> =
        plan.chosen.iter().map(|chosen| answers.parts[chosen.part_at].tasks[chosen.task].title()).collect();
    let place = |title: &str| chosen.iter().position(|known| *known == title).unwrap();
    assert!(place("Mend the card") < place("Try it with the card"), "{chosen:?}");
    assert!(place("Find the manual") < place("Try it with the card"), "{chosen:?}");

    // The card is in no machine, but Orla is not ready before it is mended.
    let made =
        schedule(&answers, &Ground::of(&logbook, &rules), Terms { minutes_per_week: 60, delivery_days: 14 }).unwrap();
    let item = |title: &str| {
        let is_it = |item: &Item| item.title(&answers) == title;
        made.planned.iter().position(|planned| is_it(&planned.item)).unwrap()
    };
    let (mend, try_it) = (item("Mend the card"), item("Try it with the card"));
    assert!(made.planned[try_it].slot.start >= made.planned[mend].slot.over);
    assert!(made.machines[0].needs.contains(&mend));
}

#[test]
fn an_overhaul_adds_what_is_lacking_in_its_order_and_takes_up_what_is_outstanding() {
    let rules = Rules::shipped();
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "tracks-eaten", at("2026-01-05", 5), Severity::Grave));
    let answers = Answers::of(&logbook(vec![board.clone()], vec![], vec![]), &rules, day(TODAY));
    let template = rules.templates.iter().find(|template| template.name == "leaked-cell").unwrap();
    let pieces = templates::pieces(template, &answers.parts[0], &rules);
    let stand: Vec<(&str, bool)> =
        pieces.iter().map(|piece| (piece.rule.name.as_str(), piece.outstanding.is_some())).collect();
    assert!(stand.contains(&("mend-eaten-tracks", true)) && stand.contains(&("cut-leaking-cell", false)), "{stand:?}");

    let mut ids = Ids::from(1000);
    let change = templates::apply(template, &answers.parts[0], &rules, day(TODAY), &mut || ids.next());
    let entries = change.steps.into_iter().filter_map(|step| match step {
        Step::Put(entry) => Some(entry),
        Step::Remove(_) => None,
    });
    write(&mut board, entries.collect(), 100);
    let answers = Answers::of(&logbook(vec![board], vec![], vec![]), &rules, day(TODAY));
    let names: Vec<&str> = answers.parts[0].tasks.iter().map(|task| task.rule().unwrap().name.as_str()).collect();
    // The order of the trade: remove cell → neutralise → clean → inspect tracks → mend tracks → first power on the bench.
    let wanted = [
        "photograph",
        "cut-leaking-cell",
        "neutralise",
        "rinse-and-dry",
        "look-under",
        "mend-eaten-tracks",
        "measure-rails",
        "bench-start",
        "fit-clock-supply",
    ];
    assert_eq!(names, wanted);
    let doable: Vec<&str> =
        answers.parts[0].tasks.iter().filter(|task| task.doable).map(benchwright::assess::Task::title).collect();
    assert_eq!(doable.len(), 1, "one after the other: {doable:?}");
    let again = templates::apply(template, &answers.parts[0], &rules, day(TODAY), &mut || ids.next());
    assert!(!templates::adds(&again), "added once, it adds nothing again");
}

#[test]
fn every_named_overhaul_is_there_for_its_kinds() {
    let rules = Rules::shipped();
    let has = |kind: Kind, name: &str| rules.templates_for(kind).any(|template| template.name == name);
    let named = [
        (Kind::Mainboard, "leaked-cell"),
        (Kind::Mainboard, "full-recap"),
        (Kind::PowerSupply, "supply-overhaul"),
        (Kind::Retention, "retention-replacement"),
        (Kind::FloppyDrive, "floppy-service"),
        (Kind::OpticalDrive, "optical-service"),
        (Kind::HardDisk, "disk-service"),
        (Kind::SoundCard, "card-clean"),
    ];
    for (kind, name) in named {
        assert!(has(kind, name), "{name} for {kind:?}");
    }
}

#[test]
fn done_work_is_proven_by_a_later_test_alone() {
    let mut board = part(1, "0001", Kind::Mainboard);
    let recap = work(100, &board, "recap", WorkState::Done, at("2026-03-01", 30));
    board.work.push(recap.clone());
    board.proofs.push(proof(300, "rails-to-ground", at("2026-02-01", 20), ProofResult::Passed));
    let rules = Rules::shipped();
    let stand = |board: &PartFile| {
        let answers = Answers::of(&logbook(vec![board.clone()], vec![], vec![]), &rules, day("2026-03-10"));
        shown(&recap, &answers.parts[0], &rules).unwrap()
    };
    assert!(matches!(stand(&board), Shown::Unproven(_)), "measured before the work, it shows nothing of it");
    board.proofs.push(proof(301, "rails-to-ground", at("2026-03-02", 31), ProofResult::Passed));
    assert!(matches!(stand(&board), Shown::Proven));
}
