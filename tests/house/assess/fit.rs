//! Whether parts fit: matching of connectors, roles, windows.

use benchwright::assess::fit::matching::{Item, seat};
use benchwright::assess::{Answers, Gate, GateState, Reason};
use benchwright::record::*;

use super::support::*;

fn item(part: u16, connector: &str, count: u32) -> Item {
    Item { part, connector: rules().connectors.place(connector).unwrap(), count }
}

fn unmet(needs: &[Item], offers: &[Item]) -> Vec<u32> {
    let table = rules().connectors;
    seat(needs, offers, |offer, need| table.takes(offer.connector, need.connector)).unmet
}

#[test]
fn an_8_bit_card_leaves_the_16_bit_slot_to_the_card_that_needs_it() {
    // An 8-bit card goes into a 16-bit slot, never the reverse. Taken greedily, the 8-bit card placed first takes the
    // only 16-bit slot.
    let offers = [item(0, "isa-16", 1), item(0, "isa-8", 1)];
    let needs = [item(1, "isa-8", 1), item(2, "isa-16", 1)];
    assert_eq!(unmet(&needs, &offers), [0, 0]);
    // Two 16-bit cards: one is left over, and the counts alone (two slots, two cards) would have said that it fits.
    let needs = [item(1, "isa-16", 1), item(2, "isa-16", 1)];
    assert_eq!(unmet(&needs, &offers), [0, 1]);
}

#[test]
fn a_pair_of_slots_with_one_bracket_takes_one_card_of_either_bus() {
    let offers = [item(0, "pci-5v", 1), item(0, "isa-16", 1), item(0, "isa-16-or-pci", 1)];
    let cards = |kinds: &[&str]| -> Vec<Item> {
        kinds.iter().zip(1..).map(|(connector, part)| item(part, connector, 1)).collect()
    };
    assert_eq!(unmet(&cards(&["pci-5v", "pci-universal", "isa-16"]), &offers), [0, 0, 0]);
    assert_eq!(unmet(&cards(&["pci-5v", "isa-8", "isa-16"]), &offers), [0, 0, 0]);
    // Each bus has a slot for each of its two cards, but the third bracket is one.
    assert_eq!(unmet(&cards(&["pci-5v", "pci-5v", "isa-16", "isa-16"]), &offers), [0, 0, 0, 1]);
}

#[test]
fn a_chain_of_moves_makes_room() {
    let accepts = |offer: &Item, need: &Item| offer.connector <= need.connector;
    let plain = |part, connector| Item { part, connector, count: 1 };
    let offers = [plain(0, 1), plain(0, 2), plain(0, 3)];
    let needs = [plain(1, 3), plain(2, 2), plain(3, 1)];
    assert_eq!(seat(&needs, &offers, accepts).unmet, [0, 0, 0]);
}

#[test]
fn counts_are_kept_and_no_part_plugs_into_itself() {
    assert_eq!(unmet(&[item(1, "isa-8", 3)], &[item(0, "isa-8", 2)]), [1]);
    // An adapter needs one and offers another of the same.
    assert_eq!(unmet(&[item(0, "isa-8", 1)], &[item(0, "isa-8", 1)]), [1]);
    let needs = [item(0, "isa-8", 1), item(2, "isa-8", 1)];
    let offers = [item(0, "isa-8", 1), item(1, "isa-8", 1)];
    assert_eq!(unmet(&needs, &offers), [0, 0], "the card has to take the adapter's offer");
    // A slip of the keyboard in a count neither hangs nor overflows.
    assert_eq!(unmet(&[item(1, "isa-8", u32::MAX)], &[item(0, "isa-8", 2)]), [u32::MAX - 2]);
    assert_eq!(unmet(&[item(1, "isa-8", u32::MAX)], &[item(0, "isa-8", u32::MAX)]), [0]);
}

fn board() -> (PartFile, DesignFile) {
    let connectors = [(Side::Offers, "isa-16", 1), (Side::Offers, "isa-8", 1)];
    let design = design(301, Kind::Mainboard, ("1990", "1992"), &connectors);
    let mut board = part(1, "0001", Kind::Mainboard);
    board.part.design = Some(design.design.id);
    (board, design)
}

fn card(number: u128, kind: Kind, need: &str) -> (PartFile, DesignFile) {
    let design = design(300 + number, kind, ("1990", "1992"), &[(Side::Needs, need, 1)]);
    let mut card = part(number, &format!("000{number}"), kind);
    card.part.design = Some(design.design.id);
    (card, design)
}

fn fits(parts: Vec<(PartFile, Option<DesignFile>)>) -> (GateState, Vec<Reason>) {
    let roles = [(401, Kind::Mainboard), (402, Kind::VideoCard), (403, Kind::SoundCard)];
    let mut machine = machine(400, "Orla", ("1990", "1993"), &roles);
    for (file, _) in &parts {
        let role = machine.roles.iter().find(|role| role.kind == file.part.kind).unwrap().id.uuid().as_u128();
        let number = file.part.id.uuid().as_u128();
        fit(&mut machine, 410 + number, role, number, at("2026-05-01", 10));
    }
    let (parts, designs): (Vec<_>, Vec<_>) = parts.into_iter().unzip();
    let designs = designs.into_iter().flatten().collect();
    let answers = Answers::of(&logbook(parts, designs, vec![machine]), &rules(), day("2026-06-01"));
    let gate = answers.machines[0].readiness.gate(Gate::PartsFit).unwrap();
    (gate.state, gate.holding().cloned().collect())
}

#[test]
fn a_machines_cards_are_matched_to_its_boards_slots() {
    let ((board, of_board), (video, of_video), (sound, of_sound)) =
        (board(), card(2, Kind::VideoCard, "isa-8"), card(3, Kind::SoundCard, "isa-16"));
    let parts = vec![(board, Some(of_board)), (video, Some(of_video)), (sound, Some(of_sound))];
    let (state, reasons) = fits(parts);
    assert_eq!(state, GateState::Passed, "{reasons:?}");
}

#[test]
fn a_need_that_nothing_meets_is_named() {
    let ((board, of_board), (video, of_video), (sound, of_sound)) =
        (board(), card(2, Kind::VideoCard, "isa-16"), card(3, Kind::SoundCard, "isa-16"));
    let (state, reasons) = fits(vec![(board, Some(of_board)), (video, Some(of_video)), (sound, Some(of_sound))]);
    assert_eq!(state, GateState::Held);
    let [Reason::NeedUnmet { connector, missing: 1, is_certain: true, .. }] = &reasons[..] else {
        panic!("{reasons:?}")
    };
    assert_eq!(&**connector, "isa-16");
}

#[test]
fn a_part_without_a_design_is_not_known_and_so_is_what_it_might_meet() {
    let ((board, _), (video, of_video)) = (board(), card(2, Kind::VideoCard, "isa-8"));
    let board = PartFile::new(Part { design: None, ..board.part });
    let (state, reasons) = fits(vec![(board, None), (video, Some(of_video))]);
    assert_eq!(state, GateState::NotKnown);
    assert!(reasons.iter().any(|reason| matches!(reason, Reason::ConnectorsUnknown { part } if *part == id(1))));
    assert!(reasons.iter().any(|reason| matches!(reason, Reason::NeedUnmet { is_certain: false, .. })));
}

#[test]
fn a_part_of_another_time_holds_unless_it_is_openly_modern() {
    let ((board, of_board), (mut video, of_video)) = (board(), card(2, Kind::VideoCard, "isa-8"));
    let late = Design {
        introduced: "2004".parse().unwrap(),
        discontinued: "2006".parse().unwrap(),
        ..of_video.design.clone()
    };
    let of_video = DesignFile { design: late, ..of_video };
    let parts = vec![(board.clone(), Some(of_board.clone())), (video.clone(), Some(of_video.clone()))];
    let (state, reasons) = fits(parts);
    assert_eq!(state, GateState::Held);
    assert!(matches!(reasons[..], [Reason::Window { part, .. }] if part == id(2)));
    video.part.originality = Originality::ModernReplacement;
    assert_eq!(fits(vec![(board, Some(of_board)), (video, Some(of_video))]).0, GateState::Passed);
}
