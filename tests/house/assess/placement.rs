//! Which spare goes into which machine, as a restorer asks it of a logbook.

use std::time::Duration;

use benchwright::assess::Answers;
use benchwright::assess::placement::{
    Ask, Contradiction, Lack, Move, Proposal, Term, ask, change, left_over, next_best, propose, what_if,
};
use benchwright::record::*;

use super::support::*;
use crate::records;

pub const LONG: fn() -> Duration = || Duration::from_mins(10);

/// A part of a design.
pub fn of(number: u128, tag: &str, kind: Kind, design: u128) -> PartFile {
    let mut file = part(number, tag, kind);
    file.part.design = Some(id(design));
    file
}

/// Boards with two sockets, of two ages, processors for each, and a machine of the nineties with both roles.
fn workshop() -> (Vec<PartFile>, Vec<DesignFile>, Vec<MachineFile>) {
    let offers = |socket| [(Side::Offers, socket, 1)];
    let needs = |socket| [(Side::Needs, socket, 1)];
    let designs = vec![
        design(100, Kind::Mainboard, ("1992", "1994"), &offers("socket-3")),
        design(101, Kind::Mainboard, ("1995", "1997"), &offers("socket-7")),
        design(102, Kind::Processor, ("1992", "1994"), &needs("socket-3")),
        design(103, Kind::Processor, ("1995", "1997"), &needs("socket-7")),
    ];
    let parts = vec![
        of(1, "0001", Kind::Mainboard, 100),
        of(2, "0002", Kind::Mainboard, 101),
        of(3, "0003", Kind::Processor, 102),
        of(4, "0004", Kind::Processor, 103),
    ];
    let machine = machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard), (31, Kind::Processor)]);
    (parts, designs, vec![machine])
}

/// Tells of the proven best proposal.
pub fn proposed<R>(
    logbook: &Logbook,
    asked: Ask,
    tell: impl FnOnce(&benchwright::assess::placement::Asked, &Proposal) -> R,
) -> R {
    let rules = rules();
    let answers = Answers::of(logbook, &rules, day("2026-06-01"));
    let asked = ask(logbook, &answers, &rules, asked).unwrap();
    let proposal = propose(&asked, &LONG);
    assert!(proposal.is_proven(), "{proposal:?}");
    tell(&asked, &proposal)
}

fn refused(logbook: &Logbook, asked: Ask) -> Contradiction {
    let rules = rules();
    let answers = Answers::of(logbook, &rules, day("2026-06-01"));
    ask(logbook, &answers, &rules, asked).err().unwrap()
}

/// Tags by machine and place.
fn tags(logbook: &Logbook, proposal: &Proposal) -> Vec<String> {
    proposal.placed.iter().map(|seated| logbook.part(seated.part).unwrap().part.tag.clone()).collect()
}

#[test]
fn of_two_that_fit_the_one_of_the_window_is_proposed_with_what_it_plugs_into() {
    let (parts, designs, machines) = workshop();
    let logbook = logbook(parts, designs, machines);
    proposed(&logbook, Ask::default(), |asked, proposal| {
        assert_eq!(tags(&logbook, proposal), ["0002", "0004"]);
        let why: Vec<Term> = proposal.placed[0].why.iter().map(|(term, _)| *term).collect();
        assert!(why.contains(&Term::Required), "{why:?}");
        let sum: i64 = proposal.placed[0].why.iter().map(|(_, points)| points).sum();
        assert_eq!(sum, proposal.placed[0].worth, "its grounds make up its worth");
        // The other board would bring the other processor with it.
        let next = next_best(asked, proposal, id(2), &LONG).unwrap();
        assert_eq!(next.part, Some(id(1)));
        assert!(next.is_proven && next.cost > 0, "{next:?}");
        assert_eq!(proposal.wishes, []);
        let left = left_over(asked, proposal);
        assert!(
            left.iter().any(|left| left.part == id(3)
                && matches!(&left.lacks[0], Lack::Connectors(lacks) if *lacks == [("socket-3".to_owned(), 1)])),
            "{left:?}"
        );
    });
}

#[test]
fn a_pin_is_kept_and_what_hangs_on_it_follows() {
    let (parts, designs, machines) = workshop();
    let logbook = logbook(parts, designs, machines);
    let pinned = Ask { pins: vec![(id(1), id(20))], ..Ask::default() };
    let best = proposed(&logbook, Ask::default(), |_, proposal| proposal.worth);
    proposed(&logbook, pinned, |_, proposal| {
        assert_eq!(tags(&logbook, proposal), ["0001", "0003"]);
        assert!(proposal.placed[0].pinned && proposal.worth < best);
    });
    // The same as asked on top of the best proposal.
    proposed(&logbook, Ask::default(), |asked, proposal| {
        let (_, other) = what_if((asked, proposal), id(1), id(20), &LONG).unwrap();
        assert_eq!(tags(&logbook, &other), ["0001", "0003"]);
        assert!(other.is_proven() && other.worth < proposal.worth);
    });
    let left_out = Ask { left_out: vec![(id(2), None)], ..Ask::default() };
    proposed(&logbook, left_out, |_, proposal| assert_eq!(tags(&logbook, proposal), ["0001", "0003"]));
}

#[test]
fn what_is_away_or_kept_apart_is_not_proposed() {
    let (mut parts, designs, machines) = workshop();
    parts[1].custody.push(records::custody(id(2), at("2026-02-01", 5), CustodyAct::Lent));
    parts[3].part.quarantine = "leaks".to_owned();
    let logbook = logbook(parts, designs, machines);
    proposed(&logbook, Ask::default(), |_, proposal| assert_eq!(tags(&logbook, proposal), ["0001", "0003"]));
    let told = refused(&logbook, Ask { pins: vec![(id(2), id(20))], ..Ask::default() }).to_string();
    assert!(told.contains("0002") && told.contains("Orla") && told.contains("Lent out"), "{told}");
}

#[test]
fn an_empty_place_is_told_as_a_wish_with_what_it_must_plug_into_and_when_made() {
    let (mut parts, designs, machines) = workshop();
    parts.retain(|file| file.part.kind == Kind::Mainboard);
    let logbook = logbook(parts, designs, machines);
    proposed(&logbook, Ask::default(), |asked, proposal| {
        let [wish] = &proposal.wishes[..] else { panic!("{:?}", proposal.wishes) };
        assert_eq!((wish.kind, wish.plugs_into.clone()), (Some(Kind::Processor), vec!["socket-7".to_owned()]));
        let line = wish.line(&logbook, asked.rules);
        assert!(line.contains("Socket 7") && line.contains("1995-01") && line.contains("1997-12"), "{line}");
    });
}

#[test]
fn contradictory_pins_are_named() {
    let (parts, designs, mut machines) = workshop();
    machines.push(machine(21, "Brand", ("1995", "1997"), &[(33, Kind::Mainboard)]));
    plan(&mut machines[0], 40, 30, 1);
    plan(&mut machines[1], 41, 33, 1);
    machines[0].placements[0].pinned = true;
    machines[1].placements[0].pinned = true;
    let logbook_of = |machines: &[MachineFile]| logbook(parts.clone(), designs.clone(), machines.to_vec());
    let told = refused(&logbook_of(&machines), Ask::default()).to_string();
    assert!(["0001", "Orla", "Brand"].iter().all(|name| told.contains(name)), "{told}");
    // Two boards for one place.
    machines[1].placements.clear();
    let told = refused(&logbook_of(&machines), Ask { pins: vec![(id(2), id(20))], ..Ask::default() }).to_string();
    assert!(["0001", "0002", "Orla"].iter().all(|name| told.contains(name)), "{told}");
    // No role of its kind.
    let told = refused(&logbook_of(&machines), Ask { pins: vec![(id(4), id(21))], ..Ask::default() }).to_string();
    assert!(["0004", "Brand"].iter().all(|name| told.contains(name)), "{told}");
}

#[test]
fn a_proposal_is_carried_out_by_one_change_that_leaves_what_is_fitted_or_pinned() {
    let (parts, designs, mut machines) = workshop();
    plan(&mut machines[0], 40, 30, 1);
    plan(&mut machines[0], 41, 31, 3);
    let logbook = logbook(parts, designs, machines);
    proposed(&logbook, Ask::default(), |_, proposal| {
        assert_eq!(tags(&logbook, proposal), ["0002", "0004"]);
        let mut ids = Ids::from(900);
        let written = change(proposal, &logbook, &[], at("2026-06-01", 0), &mut || ids.next());
        let removed = written.steps.iter().filter(|step| matches!(step, Step::Remove(_))).count();
        let put: Vec<PartId> = written
            .steps
            .iter()
            .filter_map(|step| match step {
                Step::Put(Entry::Placement(plan)) => Some(plan.part),
                _ => None,
            })
            .collect();
        assert_eq!((removed, put), (2, vec![id(2), id(4)]));
        let dropped = proposal.moves.iter().filter(|one| matches!(one, Move::Drop { .. })).count();
        assert_eq!((dropped, proposal.moves.len()), (2, 4));
    });
}

#[test]
fn a_logbook_that_is_already_as_proposed_asks_for_nothing() {
    let (parts, designs, mut machines) = workshop();
    plan(&mut machines[0], 40, 30, 2);
    fit(&mut machines[0], 41, 31, 4, at("2026-02-01", 9));
    let logbook = logbook(parts, designs, machines);
    proposed(&logbook, Ask::default(), |_, proposal| {
        assert_eq!(proposal.moves, []);
        let mut ids = Ids::from(900);
        assert!(change(proposal, &logbook, &[], at("2026-06-01", 0), &mut || ids.next()).is_empty());
    });
}

#[test]
fn no_parts_no_roles_and_no_figures_give_an_empty_answer_or_one_that_says_so() {
    let (parts, designs, machines) = workshop();
    proposed(&logbook(vec![], designs.clone(), machines.clone()), Ask::default(), |_, proposal| {
        assert_eq!((proposal.worth, proposal.placed.len(), proposal.wishes.len()), (0, 0, 2));
    });
    let bare = machine(20, "Orla", ("1995", "1997"), &[]);
    proposed(&logbook(parts, designs, vec![bare]), Ask::default(), |_, proposal| {
        assert_eq!((proposal.worth, proposal.placed.len(), proposal.wishes.len()), (0, 0, 0));
    });
    // A board and a processor of which nobody has said what they need.
    let unknown = vec![part(1, "0001", Kind::Mainboard), part(3, "0003", Kind::Processor)];
    proposed(&logbook(unknown, vec![], machines), Ask::default(), |_, proposal| {
        assert_eq!(proposal.placed.len(), 2);
        assert!(
            proposal.placed.iter().all(|seated| seated.why.iter().any(|(term, _)| *term == Term::ConnectorsUnknown))
        );
    });
}
