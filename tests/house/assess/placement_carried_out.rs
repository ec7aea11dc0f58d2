//! A proposal carried out: pins that were tried, adapters between parts, what today's machines want, and every ground
//! that speaks against a place.

use std::sync::Arc;

use benchwright::assess::Answers;
use benchwright::assess::fit::{Because, Models, Piece};
use benchwright::assess::placement::{Ask, Lack, Move, Wanted, change, instead, lacks_in, left_of, what_if};
use benchwright::assess::supplies::to_buy;
use benchwright::record::*;
use benchwright::rules::Rules;

use super::placement::{LONG, of, proposed};
use super::support::*;
use crate::fitting::figure_of;

/// The logbook after the proposal was carried out, as the store would have it.
fn carried_out(logbook: &Logbook, asked: Ask) -> Logbook {
    let pins = asked.pins.clone();
    let change = proposed(logbook, asked, |_, proposal| {
        let mut ids = Ids::from(900);
        change(proposal, logbook, &pins, at("2026-06-01", 0), &mut || ids.next())
    });
    let mut machines: Vec<MachineFile> = logbook.machines.iter().map(|file| (**file).clone()).collect();
    for step in change.steps {
        match step {
            Step::Put(Entry::Role(role)) => {
                machines.iter_mut().find(|file| file.machine.id == role.machine).unwrap().roles.push(role);
            }
            Step::Put(Entry::Placement(plan)) => {
                let file = machines.iter_mut().find(|file| file.machine.id == plan.machine).unwrap();
                file.placements.retain(|known| known.id != plan.id);
                file.placements.push(plan);
            }
            Step::Remove(key) => {
                for file in &mut machines {
                    file.placements.retain(|known| known.id.uuid() != key.uuid);
                }
            }
            Step::Put(other) => panic!("{other:?} is no plan"),
        }
    }
    Logbook { machines: machines.into_iter().map(Arc::new).collect(), revision: 2, ..logbook.clone() }
}

fn plans(logbook: &Logbook) -> Vec<(&str, bool)> {
    let plans = logbook.machines.iter().flat_map(|file| &file.placements);
    plans.map(|plan| (logbook.part(plan.part).unwrap().part.tag.as_str(), plan.pinned)).collect()
}

/// A board of the window and one of years before, for one place.
fn two_boards() -> Logbook {
    let offers = [(Side::Offers, "isa-16", 4)];
    let designs = vec![
        design(100, Kind::Mainboard, ("1995", "1997"), &offers),
        design(101, Kind::Mainboard, ("1990", "1991"), &offers),
    ];
    let parts = vec![of(1, "0001", Kind::Mainboard, 100), of(2, "0002", Kind::Mainboard, 101)];
    logbook(parts, designs, vec![machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard)])])
}

#[test]
fn what_was_tried_by_a_pin_is_planned_with_it_and_kept_by_the_next_proposal() {
    let before = two_boards();
    let pinned = Ask { pins: vec![(id(2), id(20))], ..Ask::default() };
    let after = carried_out(&before, pinned);
    assert_eq!(plans(&after), [("0002", true)]);
    proposed(&after, Ask::default(), |_, proposal| {
        assert_eq!((proposal.placed[0].part, proposal.placed[0].pinned), (id(2), true));
        assert_eq!(proposal.moves, []);
    });
    // Without a pin nothing is pinned.
    assert_eq!(plans(&carried_out(&before, Ask::default())), [("0001", false)]);
}

#[test]
fn a_pin_on_what_is_there_already_is_a_move_and_is_written() {
    let mut of = two_boards();
    let file = Arc::make_mut(&mut of.machines[0]);
    plan(file, 40, 30, 2);
    let pinned = || Ask { pins: vec![(id(2), id(20))], ..Ask::default() };
    let told = proposed(&of, pinned(), |_, proposal| proposal.moves.clone());
    assert_eq!(told, [Move::Pin { part: id(2), to: (id(20), Some(id(30))) }]);
    let after = carried_out(&of, pinned());
    assert_eq!(plans(&after), [("0002", true)]);
    assert_eq!(after.machines[0].placements[0].id, id(40), "the plan stays the one it was");
    // Fitted, it is kept there too.
    let mut of = two_boards();
    fit(Arc::make_mut(&mut of.machines[0]), 41, 30, 2, at("2026-02-01", 9));
    let after = carried_out(&of, pinned());
    assert_eq!(plans(&after), [("0002", true)]);
    proposed(&after, Ask::default(), |_, proposal| {
        assert_eq!((proposal.placed[0].part, proposal.moves.len()), (id(2), 0));
    });
}

/// A processor for a socket that only a slot card offers (the trade's own case: Socket 370 in Slot 1).
#[test]
fn an_adapter_that_is_proposed_gets_an_optional_role_of_its_own() {
    let designs = vec![
        design(100, Kind::Mainboard, ("1998", "2000"), &[(Side::Offers, "slot-1", 1)]),
        design(101, Kind::Processor, ("1998", "2000"), &[(Side::Needs, "socket-370", 1)]),
        design(
            102,
            Kind::ProcessorAdapter,
            ("1998", "2000"),
            &[(Side::Needs, "slot-1", 1), (Side::Offers, "socket-370", 1)],
        ),
    ];
    let parts = vec![
        of(1, "0001", Kind::Mainboard, 100),
        of(2, "0002", Kind::Processor, 101),
        of(3, "0003", Kind::ProcessorAdapter, 102),
    ];
    let roles = [(30, Kind::Mainboard), (31, Kind::Processor)];
    let before = logbook(parts, designs, vec![machine(20, "Orla", ("1998", "2000"), &roles)]);
    let said = proposed(&before, Ask::default(), |_, proposal| {
        proposal.moves.iter().map(|one| (one.is_for_bench(&before), one.sentence(&before))).collect::<Vec<_>>()
    });
    assert_eq!(said.len(), 3, "{said:?}");
    assert!(said.iter().all(|(is_for_bench, _)| !is_for_bench), "{said:?}");
    assert!(said[2].1.contains("0003") && said[2].1.contains("between other parts"), "{said:?}");
    let after = carried_out(&before, Ask::default());
    assert_eq!(plans(&after), [("0001", false), ("0002", false), ("0003", false)]);
    let own = after.machines[0].roles.last().unwrap();
    assert_eq!((own.kind, own.required, own.count), (Kind::ProcessorAdapter, false, 1));
    proposed(&after, Ask::default(), |_, proposal| {
        assert_eq!((proposal.placed.len(), &proposal.moves[..]), (3, &[][..]));
    });
}

/// Beside a processor for the board's own slot, one that goes in by an adapter (the trade's own case: Socket 370 in
/// Slot 1).
#[test]
fn what_if_a_part_goes_where_it_needs_an_adapter_takes_the_adapter_along() {
    let ports = |kind, ports: &[(Side, &str, u32)], number| design(number, kind, ("1998", "2000"), ports);
    let designs = vec![
        ports(Kind::Mainboard, &[(Side::Offers, "slot-1", 1)], 100),
        ports(Kind::Processor, &[(Side::Needs, "socket-370", 1)], 101),
        ports(Kind::ProcessorAdapter, &[(Side::Needs, "slot-1", 1), (Side::Offers, "socket-370", 1)], 102),
        ports(Kind::Processor, &[(Side::Needs, "slot-1", 1)], 103),
    ];
    let parts = vec![
        of(1, "0001", Kind::Mainboard, 100),
        of(2, "0002", Kind::Processor, 101),
        of(3, "0003", Kind::ProcessorAdapter, 102),
        of(4, "0004", Kind::Processor, 103),
    ];
    let roles = [(30, Kind::Mainboard), (31, Kind::Processor)];
    let of = logbook(parts, designs, vec![machine(20, "Orla", ("1998", "2000"), &roles)]);
    proposed(&of, Ask::default(), |asked, proposal| {
        let placed = |part: u128| {
            let (_, tried) = what_if((asked, proposal), id(part), id(20), &LONG).unwrap();
            let mut placed: Vec<PartId> = tried.placed.iter().map(|seated| seated.part).collect();
            placed.sort();
            placed
        };
        assert_eq!(placed(2), [id(1), id(2), id(3)]);
        assert_eq!(placed(4), [id(1), id(4)]);
    });
}

/// What the machines of a logbook want as they are, said of each empty role.
fn wanted_today(logbook: &Logbook, rules: &Rules) -> Vec<String> {
    let answers = Answers::of(logbook, rules, day("2026-06-01"));
    let list = to_buy(logbook, &answers, rules);
    list.iter().map(benchwright::assess::supplies::ToBuy::said).collect()
}

/// Without one processor in the logbook the board alone says what must plug into it: its socket, voltages and clocks
/// are those that the test writes.
#[test]
fn what_a_machine_lacks_today_says_socket_voltage_clock_and_dates() {
    let rules = rules();
    let mut board = design(
        100,
        Kind::Mainboard,
        ("1995", "1997"),
        &[(Side::Offers, "socket-7", 1), (Side::Offers, "voltage-module-socket-7", 1), (Side::Needs, "at-p8p9", 1)],
    );
    board.figures = [
        (Figure::CoreVoltageLeastV, 2.1),
        (Figure::CoreVoltageMostV, 3.5),
        (Figure::BusClockMhz, 60.0),
        (Figure::BusClockMhz, 50.0),
    ]
    .map(|(figure, value)| figure_of(id(100), figure, value))
    .to_vec();
    let roles = [(30, Kind::Mainboard), (31, Kind::Processor), (32, Kind::PowerSupply)];
    let mut orla = machine(20, "Orla", ("1995", "1997"), &roles);
    plan(&mut orla, 40, 30, 1);
    let of = logbook(vec![of(1, "0001", Kind::Mainboard, 100)], vec![board], vec![orla]);
    let expected = [
        "Processor, for Socket 7, core at 2.1 to 3.5 V, bus at 50 or 60 MHz, made 1995-01 to 1997-12",
        "Power supply, giving AT board plugs P8 and P9, made 1995-01 to 1997-12",
    ];
    assert_eq!(wanted_today(&of, &rules), expected);
    // The same as a proposal that leaves the board where it is.
    let proposal: Vec<String> = proposed(&of, Ask::default(), |asked, proposal| {
        proposal.wishes.iter().map(|wish| wish.line(asked.logbook, asked.rules)).collect()
    });
    assert_eq!(proposal, expected);
}

/// A card plugs into one bus or another, and a disk into a cable, a plug and a bay; what is held is not free.
#[test]
fn only_what_is_free_is_told_and_of_each_family_one_is_meant() {
    let rules = rules();
    let designs = vec![
        design(
            100,
            Kind::Mainboard,
            ("1995", "1997"),
            &[(Side::Offers, "isa-16", 1), (Side::Offers, "pci-5v", 2), (Side::Offers, "ide-40", 1)],
        ),
        design(101, Kind::SoundCard, ("1995", "1997"), &[(Side::Needs, "isa-16", 1)]),
        design(102, Kind::NetworkCard, ("1995", "1997"), &[(Side::Needs, "pci-5v", 1)]),
        design(103, Kind::Case, ("1995", "1997"), &[(Side::Offers, "bay-3.5-hidden", 1)]),
    ];
    let parts =
        vec![of(1, "0001", Kind::Mainboard, 100), of(2, "0002", Kind::SoundCard, 101), of(3, "0003", Kind::Case, 103)];
    let roles =
        [(30, Kind::Mainboard), (31, Kind::SoundCard), (32, Kind::Case), (33, Kind::NetworkCard), (34, Kind::HardDisk)];
    let of = logbook(parts, designs, vec![machine(20, "Orla", ("", ""), &roles)]);
    let answers = Answers::of(&of, &rules, day("2026-06-01"));
    let mut models = Models::new(&rules);
    let mut said = |parts: &[u128]| -> Vec<String> {
        let pieces: Vec<Piece> =
            parts.iter().map(|part| models.piece(answers.part(id(*part)).unwrap(), false)).collect();
        let kinds: Vec<Kind> = pieces.iter().map(Piece::kind).collect();
        let pieces: Vec<&Piece> = pieces.iter().collect();
        let file = &of.machines[0];
        let filled = |role: RoleId| {
            let role = file.roles.iter().find(|known| known.id == role).unwrap();
            kinds.iter().filter(|kind| **kind == role.kind).count() as u32
        };
        let wishes = Wanted::of(&of, &rules).in_machine(file, &pieces, filled);
        wishes.iter().map(|wish| wish.what(&of, &rules)).collect()
    };
    assert_eq!(
        said(&[1, 3]),
        [
            "Sound card, for ISA, 16-bit",
            "Network card, for PCI, 5 V, 32-bit",
            "Hard disk, for IDE (ATA), 40-pin and 3.5-inch bay, inside"
        ]
    );
    // The one slot for it is taken now; nobody has said of what kinds of card the logbook knows no more.
    assert_eq!(said(&[1, 2, 3])[0], "Network card, for PCI, 5 V, 32-bit");
    assert_eq!(said(&[3])[1], "Sound card");
}

/// Too long for the case, for a slot that is not there, and of other years: three grounds, three words.
#[test]
fn every_ground_against_a_place_is_named() {
    let mut case = design(100, Kind::Case, ("1995", "1997"), &[(Side::Offers, "bay-3.5", 1)]);
    case.figures.push(figure_of(id(100), Figure::CardRoomMm, 200.0));
    let mut card = design(101, Kind::SoundCard, ("1985", "1986"), &[(Side::Needs, "isa-16", 1)]);
    card.figures.push(figure_of(id(101), Figure::LengthMm, 340.0));
    let board = design(102, Kind::Mainboard, ("1995", "1997"), &[(Side::Offers, "pci-5v", 3)]);
    let parts =
        vec![of(1, "0001", Kind::Case, 100), of(2, "0002", Kind::SoundCard, 101), of(3, "0003", Kind::Mainboard, 102)];
    let roles = [(30, Kind::Case), (31, Kind::SoundCard), (32, Kind::Mainboard)];
    let of = logbook(parts, vec![case, card, board], vec![machine(20, "Orla", ("1995", "1997"), &roles)]);
    proposed(&of, Ask::default(), |asked, proposal| {
        let spare = asked.parts.iter().position(|part| *part == id(2)).unwrap();
        let left = left_of(asked, proposal, spare).unwrap();
        assert_eq!(left.lacks, lacks_in(asked, proposal, spare, id(20)));
        let [Lack::Connectors(open), Lack::Fit(Because::NoRoom { mm, room_mm, .. }), Lack::Dates(_)] = &left.lacks[..]
        else {
            panic!("{:?}", left.lacks)
        };
        assert_eq!((&open[..], *mm, *room_mm), (&[("isa-16".to_owned(), 1)][..], 340.0, 200.0));
        let said = Lack::all(&left.lacks, asked);
        for ground in ["1 × ISA, 16-bit", "takes 340 mm", "before the window"] {
            assert!(said.contains(ground), "{said}");
        }
    });
}

#[test]
fn a_rival_in_the_place_of_a_part_costs_as_much_as_pinning_it_there() {
    let of = two_boards();
    proposed(&of, Ask::default(), |asked, proposal| {
        let (_, other) = instead((asked, proposal), id(2), (id(1), id(20)), &LONG).unwrap();
        assert_eq!(other.placed.iter().map(|seated| seated.part).collect::<Vec<PartId>>(), [id(2)]);
        let (_, pinned) = what_if((asked, proposal), id(2), id(20), &LONG).unwrap();
        assert_eq!(other.worth, pinned.worth);
        assert!(other.worth < proposal.worth && other.is_proven());
    });
    // Of a part that is itself held there by a try, the try gives way.
    let tried = Ask { pins: vec![(id(2), id(20))], ..Ask::default() };
    proposed(&of, tried, |asked, proposal| {
        let spare = asked.parts.iter().position(|part| *part == id(1)).unwrap();
        let left = left_of(asked, proposal, spare).unwrap();
        assert_eq!(left.lacks, [Lack::Pinned { part: id(2) }], "worth more, but another is held there");
        let (_, other) = instead((asked, proposal), id(1), (id(2), id(20)), &LONG).unwrap();
        assert_eq!(other.placed.iter().map(|seated| seated.part).collect::<Vec<PartId>>(), [id(1)]);
    });
}
