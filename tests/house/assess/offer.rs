//! An offered part: have I one, which machine lacks it, what would it improve and by how much.

use benchwright::assess::Answers;
use benchwright::assess::fit::Verdict;
use benchwright::assess::offer::{Gain, Offer, Offered};
use benchwright::record::*;

use super::support::*;
use crate::fitting::figure_of;

/// A machine with a board that takes two bus clocks' worth of settings, a processor of 100 MHz in it, and an empty role
/// for a sound card.
fn shop() -> Logbook {
    let roles = [(401, Kind::Mainboard), (402, Kind::Processor), (403, Kind::SoundCard)];
    let mut machine = machine(400, "Orla", ("1995", "1998"), &roles);
    let ports = [(Side::Offers, "socket-7", 1), (Side::Offers, "isa-16", 1)];
    let mut board = design(301, Kind::Mainboard, ("1995", "1998"), &ports);
    let mut slow = design(302, Kind::Processor, ("1995", "1998"), &[(Side::Needs, "socket-7", 1)]);
    let figures = |id, rows: &[(Figure, f64)]| -> Vec<DesignFigure> {
        rows.iter().map(|(figure, value)| figure_of(id, *figure, *value)).collect()
    };
    board.figures = figures(
        board.design.id,
        &[
            (Figure::BusClockMhz, 66.0),
            (Figure::Multiplier, 1.5),
            (Figure::Multiplier, 2.0),
            (Figure::CoreVoltageV, 3.3),
        ],
    );
    slow.figures = figures(
        slow.design.id,
        &[(Figure::BusClockMhz, 66.0), (Figure::CoreClockMhz, 100.0), (Figure::CoreVoltageV, 3.3)],
    );
    let mut parts = Vec::new();
    for (number, file) in [(1, &board), (2, &slow)] {
        let mut part = part(number, &format!("000{number}"), file.design.kind);
        part.part.design = Some(file.design.id);
        parts.push(part);
        fit(&mut machine, 410 + number, 400 + number, number, at("2026-05-01", 10));
    }
    logbook(parts, vec![board, slow], vec![machine])
}

fn offer(kind: &str, connectors: &[&str], figures: &[&str]) -> Offer {
    let (logbook, rules) = (shop(), rules());
    let owned = |words: &[&str]| words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>();
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    let offered = Offered::read(kind, &owned(connectors), &owned(figures), "", &rules.connectors).unwrap();
    offered.answer(&logbook, &answers, &rules)
}

#[test]
fn a_machine_lacks_it_and_nobody_has_one() {
    // An 8-bit card works in a 16-bit slot: PC Guide, ISA bus.
    let offer = offer("Sound card", &["isa-8"], &[]);
    assert!(offer.have.is_empty() && offer.improves.is_empty());
    let [lacking] = &offer.lacking[..] else { panic!("{:?}", offer.lacking) };
    assert_eq!((lacking.machine, lacking.replaces, lacking.is_required), (id(400), None, true));
    assert!(lacking.gains.iter().any(|gain| matches!(gain, Gain::Gate { .. })), "the first gate is passed");
    assert!(lacking.verdict < Verdict::No);
    assert!(offer.summary().starts_with("You have none; 1 machine lacks one;"), "{}", offer.summary());
}

#[test]
fn a_card_for_a_slot_that_is_not_there_is_said_not_to_fit() {
    let offer = offer("sound_card", &["pci-5v"], &[]);
    let [lacking] = &offer.lacking[..] else { panic!("{:?}", offer.lacking) };
    assert_eq!(lacking.verdict, Verdict::No);
    let why = lacking.because[0].sentence(&offer.logbook, &rules());
    assert_eq!(why, "offered (Sound card) needs 1 × PCI, 5 V, 32-bit, and nothing in the machine has it free.");
}

#[test]
fn how_many_of_a_connector_and_which_side_are_as_told() {
    let verdict = |connector: &str| offer("sound_card", &[connector], &[]).lacking[0].verdict;
    // The board has one slot: one card of one slot goes in, one that takes two does not.
    assert!(verdict("needs:isa-16=1") < Verdict::No);
    assert_eq!(verdict("isa-16=2"), Verdict::No);
    // What a card has for others asks nothing of the board.
    assert!(verdict("offers:isa-16=2") < Verdict::No);
}

#[test]
fn a_faster_processor_improves_by_so_many_megahertz_and_a_wrong_one_by_nothing() {
    let figures = ["bus_clock_mhz=66", "core_clock_mhz=133", "core_voltage_v=3.3"];
    let better = offer("processor", &["socket-7"], &figures);
    // 66⅔ MHz × 1.5 is 100 MHz, × 2 is 133⅓ MHz.
    let [improves] = &better.improves[..] else { panic!("{:?}", better.improves) };
    let core = improves.gains.iter().find_map(|gain| match gain {
        Gain::Core { from_mhz, to_mhz } => Some((*from_mhz, *to_mhz)),
        _ => None,
    });
    let (from, to) = core.unwrap();
    assert!((from - 100.0).abs() < 0.01 && (to - 400.0 / 3.0).abs() < 0.01, "{from} to {to}");
    assert_eq!((improves.replaces, better.have.len()), (Some(id(2)), 0), "the slower one is no such part");
    // 2.2 V where the board gives 3.3 V: it would be destroyed, and is no improvement however fast.
    let wrong = ["bus_clock_mhz=66", "core_clock_mhz=133", "core_voltage_v=2.2"];
    assert!(offer("processor", &["socket-7"], &wrong).improves.is_empty());
}

#[test]
fn what_is_there_already_is_found_by_kind_connector_and_figure() {
    assert_eq!(offer("processor", &[], &[]).have.len(), 1);
    assert_eq!(offer("processor", &["socket-7"], &["core_clock_mhz=100"]).have.len(), 1);
    assert!(offer("processor", &["slot-1"], &[]).have.is_empty());
}

#[test]
fn what_cannot_be_read_is_named_with_what_is_near() {
    let table = &rules().connectors;
    let read = |kind: &str, connectors: &[&str], figures: &[&str], made: &str| {
        let owned = |words: &[&str]| words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>();
        Offered::read(kind, &owned(connectors), &owned(figures), made, table).unwrap_err()
    };
    let says = |error: String, words: [&str; 2]| assert!(words.iter().all(|word| error.contains(word)), "{error}");
    says(read("sound", &[], &[], ""), ["“sound” is no kind of part", "sound_card"]);
    says(read("processor", &["socket-77"], &[], ""), ["“socket-77” is no connector", "socket-7"]);
    says(read("mainboard", &["simm-72=0"], &[], ""), ["“simm-72=0” has no whole number", "from 1 to 99"]);
    says(read("processor", &[], &["core_clock=133"], ""), ["“core_clock” is no figure", "core_clock_mhz"]);
    says(read("processor", &[], &["core_clock_mhz"], ""), ["“core_clock_mhz” is no figure", "NAME=VALUE"]);
    says(read("processor", &[], &["core_clock_mhz=fast"], ""), ["core_clock_mhz=fast", "0 or more"]);
    assert!(!read("processor", &[], &[], "next spring").is_empty());
}
