//! What to do tonight, as a restorer meets it.

use std::sync::Arc;

use benchwright::assess::tonight::{Evening, PATIENCE, Tonight, Why, tonight};
use benchwright::assess::{Answers, Gate};
use benchwright::record::*;

use super::support::*;
use crate::records;

fn choose(logbook: &Logbook, minutes: u32, help: bool) -> (Tonight, Vec<String>) {
    let rules = rules();
    let answers = Answers::of(logbook, &rules, day("2026-06-01"));
    let plan = tonight(&answers, logbook, &rules, Evening { minutes, help }, PATIENCE);
    let names = plan.chosen.iter().map(|chosen| {
        let part = &answers.parts[chosen.part_at];
        let name = part.tasks[chosen.task].rule().map_or("own", |rule| &rule.name);
        format!("{} {name}", part.file.part.tag)
    });
    let names = names.collect();
    (plan, names)
}

fn board(number: u128, tag: &str, what: &str, severity: Severity) -> PartFile {
    let mut board = part(number, tag, Kind::Mainboard);
    board.findings.push(finding(number + 50, &board, what, at("2026-01-05", number as u32), severity));
    board
}

#[test]
fn a_piece_follows_on_the_same_evening_but_not_over_a_drying_time() {
    let logbook = logbook(vec![board(1, "0001", "leaked-cell", Severity::Grave)], vec![], vec![]);
    let (plan, names) = choose(&logbook, 600, false);
    assert_eq!(names, ["0001 cut-out", "0001 neutralise", "0001 rinse"], "looking under wants two days of drying");
    assert_eq!(plan.minutes, 60);
    let (_, names) = choose(&logbook, 45, false);
    assert_eq!(names, ["0001 cut-out", "0001 neutralise"]);
    assert!(choose(&logbook, 9, false).1.is_empty());
}

#[test]
fn hours_of_drying_take_none_of_the_evening() {
    let logbook = logbook(vec![board(1, "0001", "residue", Severity::Grave)], vec![], vec![]);
    let rules = rules();
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    let plan = tonight(&answers, &logbook, &rules, Evening { minutes: 50, help: false }, PATIENCE);
    assert_eq!((plan.minutes, plan.wait_hours(&answers)), (50, 48));
}

#[test]
fn of_two_alike_the_more_urgent_machines_goes_first() {
    let boards = vec![board(1, "0001", "flat-cell", Severity::Slight), board(2, "0002", "flat-cell", Severity::Slight)];
    let mut machines = vec![
        machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard)]),
        machine(21, "Brand", ("1995", "1997"), &[(31, Kind::Mainboard)]),
    ];
    fit(&mut machines[0], 40, 30, 1, at("2026-02-01", 20));
    fit(&mut machines[1], 41, 31, 2, at("2026-02-01", 21));
    machines[0].machine.priority = 3;
    machines[1].machine.priority = 1;
    let (plan, names) = choose(&logbook(boards.clone(), vec![], machines.clone()), 5, false);
    assert_eq!(names, ["0002 fit-cell"]);
    assert!(plan.chosen[0].why.contains(&Why::Holds { hold: Hold::Ready, machine: Some(id(21)) }));
    assert_eq!((plan.missed[0].part, plan.missed[0].short), (id(1), 5));
    machines[0].machine.priority = 1;
    machines[1].machine.priority = 2;
    assert_eq!(choose(&logbook(boards, vec![], machines), 5, false).1, ["0001 fit-cell"]);
}

/// The board's post holds fitting: 4 for that, times 2 for a machine without priority. Where the post is all that holds
/// the machine at its gate, opening it counts 8 times 2 more, and outdoes a shelf board's 8 for power.
#[test]
fn work_that_opens_a_gate_is_worth_more() {
    let mut own = board(1, "0001", "post-lost", Severity::Plain);
    own.part.design = Some(id(70));
    let shelf = board(2, "0002", "residue", Severity::Plain);
    let mut orla = machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard)]);
    fit(&mut orla, 40, 30, 1, at("2026-02-01", 20));
    let known = design(70, Kind::Mainboard, ("1995", "1996"), &[(Side::Offers, "isa-16", 2)]);
    let opens = Why::OpensGate { machine: id(20), gate: Gate::PartsFit };

    let alone = logbook(vec![own.clone(), shelf.clone()], vec![known], vec![orla.clone()]);
    let (plan, names) = choose(&alone, 30, false);
    assert_eq!((names, plan.worth), (vec!["0001 find-post".to_owned()], 24));
    assert!(plan.chosen[0].why.contains(&opens));

    // Nobody knows what the board plugs into: the post is not all that holds the machine.
    own.part.design = None;
    let (plan, _) = choose(&logbook(vec![own, shelf], vec![], vec![orla]), 30, false);
    assert_eq!(plan.worth, 8);
    assert!(plan.chosen.iter().all(|chosen| !chosen.why.contains(&opens)));
}

#[test]
fn what_cannot_be_done_tonight_is_left_out() {
    let bulged = || board(1, "0001", "bulged", Severity::Plain);
    let film = board(2, "0002", "cracked-film", Severity::Plain);
    let stock = |amount: f64| {
        let material = Material { id: id(95), unit: "g".to_owned(), stock: amount, ..records::material("solder") };
        vec![Arc::new(material)]
    };
    let mut both = logbook(vec![bulged(), film], vec![], vec![]);
    assert_eq!(choose(&both, 600, true).1, ["0001 recap", "0002 replace-film"]);
    assert_eq!(choose(&both, 600, false).1, ["0001 recap"], "film wants somebody there");
    both.materials = stock(0.0);
    assert!(choose(&both, 600, false).1.is_empty(), "solder is listed and used up");
    both.materials = stock(20.0);
    assert_eq!(choose(&both, 600, false).1, ["0001 recap"]);

    let mut waiting = bulged();
    let piece = work(30, &waiting, "recap", WorkState::Waiting, at("2026-02-01", 20));
    waiting.work.push(Work { finding: Some(id(51)), ..piece });
    assert!(choose(&logbook(vec![waiting], vec![], vec![]), 600, true).1.is_empty(), "it waits for materials");

    let mut lent = bulged();
    lent.custody
        .push(CustodyEvent { id: id(90), ..crate::records::custody(id(1), at("2026-02-01", 21), CustodyAct::Lent) });
    assert!(choose(&logbook(vec![lent], vec![], vec![]), 600, true).1.is_empty(), "it is not here");
}

#[test]
fn setting_up_is_counted_once_for_each_kind_of_work() {
    let tables = TABLES.replace("name = \"wet\"\n", "name = \"wet\"\nset_up_minutes = 20\n");
    let rules = rules_of(&tables);
    let badges = [1, 2, 3].map(|number| board(number, &format!("000{number}"), "badge-lost", Severity::Slight));
    let logbook = logbook(badges.to_vec(), vec![], vec![]);
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    let minutes = |minutes| {
        let plan = tonight(&answers, &logbook, &rules, Evening { minutes, help: false }, PATIENCE);
        (plan.chosen.len(), plan.minutes)
    };
    assert_eq!(minutes(24), (0, 0), "five minutes of glue do not fit behind twenty of laying out");
    assert_eq!(minutes(25), (1, 25));
    assert_eq!(minutes(60), (3, 35));
}
