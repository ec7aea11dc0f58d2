//! Kits: what may take a capacitor's place, the fewest lines, and what each step of a kit's life writes.

use std::collections::HashSet;
use std::sync::Arc;

use benchwright::assess::kits::acts::{Hindrance, draft, step};
use benchwright::assess::kits::cover::cover;
use benchwright::assess::kits::{PATIENCE, Proposal, Scope, Which, Why, gather};
use benchwright::assess::supplies::{part_costs, reserved, waiting};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::*;
use crate::chance::Chance;
use crate::records;

/// A board whose positions are all bulged: (microfarads, volts, diameter, height).
fn board(cans: &[(f64, f64, f64, f64)]) -> PartFile {
    let mut board = part(1, "0042", Kind::Mainboard);
    for (at, (uf, volts, across, high)) in cans.iter().enumerate() {
        let mut can = capacitor(70 + at as u128, &board, &format!("C{}", at + 1), CapacitorState::Bulged);
        can.position.place_on_part = String::new();
        can.position.capacitance_uf = Some(*uf);
        can.position.voltage_v = Some(*volts);
        can.position.diameter_mm = Some(*across);
        can.position.height_mm = Some(*high);
        board.capacitors.push(can);
    }
    board
}

fn stock(number: u128, uf: f64, volts: f64, pieces: f64) -> Arc<Material> {
    Arc::new(Material {
        id: id(number),
        stock: pieces,
        capacitance_uf: Some(uf),
        voltage_v: Some(volts),
        temperature_c: Some(105.0),
        diameter_mm: Some(5.0),
        height_mm: Some(11.0),
        dielectric: Some(Dielectric::WetAluminium),
        mounting: Some(Mounting::Radial),
        ..records::material(&format!("{uf} µF {volts} V"))
    })
}

fn kit_of(book: &Logbook) -> Proposal {
    gather(book, &Rules::shipped(), &Scope::All, &Which::Bad, PATIENCE)
}

/// (microfarads, volts, pieces) of each line.
fn lines(proposal: &Proposal) -> Vec<(f64, f64, u32)> {
    let mut lines: Vec<_> = proposal.lines.iter().map(|line| (line.spec.uf, line.spec.volts, line.pieces())).collect();
    lines.sort_by(|a, b| a.partial_cmp(b).unwrap());
    lines
}

#[test]
fn capacitance_goes_up_to_the_next_preferred_value_and_voltage_never_down() {
    // E6 of IEC 60063: 10 15 22 33 47 68. So 100 µF may become 150 µF but not 220 µF; 25 V serves 16 V, not the reverse.
    let book = |cans: &[_]| logbook(vec![board(cans)], vec![], vec![]);
    let roomy = |uf, volts| (uf, volts, 10.0, 20.0);
    assert_eq!(lines(&kit_of(&book(&[roomy(100.0, 25.0), roomy(150.0, 16.0)]))), [(150.0, 25.0, 2)]);
    let apart = kit_of(&book(&[roomy(100.0, 25.0), roomy(220.0, 16.0)]));
    assert_eq!(lines(&apart), [(100.0, 25.0, 1), (220.0, 16.0, 1)]);
    assert!(apart.is_best);
    // 110 µF is no preferred value of E12 (10 12 15 18 22 27 33 39 47 56 68 82): what is made next is 120 µF.
    assert_eq!(lines(&kit_of(&book(&[roomy(110.0, 16.0)]))), [(120.0, 16.0, 1)]);
}

#[test]
fn a_line_fits_the_smallest_room_and_is_no_denser_than_is_made() {
    let two = kit_of(&logbook(vec![board(&[(100.0, 16.0, 8.0, 12.0), (100.0, 16.0, 6.3, 15.0)])], vec![], vec![]));
    assert_eq!(lines(&two), [(100.0, 16.0, 2)]);
    assert_eq!((two.lines[0].spec.diameter_mm, two.lines[0].spec.height_mm), (Some(6.3), Some(12.0)));
    // 1000 µF of 16 V in Ø 8 × 11 mm would be 29 µF·V/mm³; from memory nothing denser than 16 is made.
    let dense = [(1000.0, 6.3, 8.0, 11.0), (1000.0, 16.0, 10.0, 20.0)];
    assert_eq!(lines(&kit_of(&logbook(vec![board(&dense)], vec![], vec![]))).len(), 2);
}

#[test]
fn what_is_in_stock_is_taken_first_and_the_rest_bought_with_spares() {
    let mut book = logbook(vec![board(&[(100.0, 16.0, 8.0, 12.0); 14])], vec![], vec![]);
    book.materials = vec![stock(200, 100.0, 25.0, 3.0), stock(201, 47.0, 25.0, 50.0)];
    let kit = kit_of(&book);
    let line = &kit.lines[0];
    assert_eq!((kit.lines.len(), kit.in_stock, line.material), (1, 1, Some(id(200))));
    // 11 to buy: a tenth is 1.1, and spares are whole.
    assert_eq!((line.from_stock, line.to_buy, line.spares), (3, 11, 2));
}

#[test]
fn low_resistance_and_temperature_are_kept_and_polymer_only_beside_a_processor() {
    let mut one = board(&[(100.0, 6.3, 8.0, 12.0), (100.0, 6.3, 8.0, 12.0)]);
    one.capacitors[0].position.place_on_part = "near the Processor".to_owned();
    one.capacitors[1].position.temperature_c = Some(105.0);
    let kit = kit_of(&logbook(vec![one.clone()], vec![], vec![]));
    assert_eq!(kit.lines.len(), 1, "what is better serves both");
    assert!(kit.lines[0].spec.low_esr && kit.lines[0].spec.celsius == Some(105.0));

    let polymer = Material { dielectric: Some(Dielectric::Polymer), ..(*stock(200, 100.0, 6.3, 9.0)).clone() };
    one.capacitors.truncate(1);
    let mut book = logbook(vec![one.clone()], vec![], vec![]);
    book.materials = vec![Arc::new(polymer)];
    assert_eq!(kit_of(&book).in_stock, 0, "a place in words is not enough");
    one.capacitors[0].position.function = Some(CapacitorUse::ProcessorSupply);
    book.parts = vec![Arc::new(one)];
    assert_eq!(kit_of(&book).in_stock, 1);
}

#[test]
fn what_cannot_be_in_a_kit_is_told_with_its_reason() {
    let mut one = board(&[(100.0, 16.0, 8.0, 12.0); 3]);
    one.capacitors[0].position.capacitance_uf = None;
    one.capacitors[1].position.dielectric = Dielectric::Suppression;
    one.capacitors[2].position.voltage_v = Some(900.0);
    let kit = kit_of(&logbook(vec![one], vec![], vec![]));
    let why: Vec<Why> = kit.left_out.iter().map(|one| one.why).collect();
    assert_eq!(why, [Why::NoValue, Why::NoRule(Dielectric::Suppression), Why::NothingMade]);
    assert!(kit.lines.is_empty());
}

/// The lightest cover by trying every choice of sets.
fn by_trying_all(sets: &[Vec<u32>], weights: &[u64], elements: usize) -> u64 {
    let full = (1u32 << elements) - 1;
    let held: Vec<u32> = sets.iter().map(|set| set.iter().fold(0, |bits, element| bits | 1 << element)).collect();
    (0u32..1 << sets.len())
        .filter(|choice| {
            let of = |at: &usize| choice >> at & 1 == 1;
            (0..sets.len()).filter(of).fold(0, |bits, at| bits | held[at]) == full
        })
        .map(|choice| (0..sets.len()).filter(|at| choice >> at & 1 == 1).map(|at| weights[at]).sum())
        .min()
        .unwrap()
}

#[test]
fn a_cover_is_as_light_as_the_lightest_of_all() {
    for seed in 0..300 {
        let mut chance = Chance(seed);
        let elements = 4 + chance.below(9);
        let mut sets: Vec<Vec<u32>> =
            (0..4 + chance.below(8)).map(|_| (0..elements as u32).filter(|_| chance.below(3) == 0).collect()).collect();
        // Each element is in some set.
        sets.push((0..elements as u32).filter(|_| chance.below(2) == 0).collect());
        let rest = (0..elements as u32).filter(|one| sets.iter().all(|set| !set.contains(one))).collect();
        sets.push(rest);
        let weights: Vec<u64> = sets.iter().map(|_| 20 + chance.below(2) as u64).collect();
        let found = cover(&sets, &weights, elements, PATIENCE);
        assert_eq!((found.weight, found.bound), (by_trying_all(&sets, &weights, elements), found.weight), "{seed}");
        let covered: HashSet<u32> = found.chosen.iter().flat_map(|set| sets[*set as usize].clone()).collect();
        assert_eq!(covered.len(), elements, "{seed}");
        assert_eq!(found.chosen.iter().map(|set| weights[*set as usize]).sum::<u64>(), found.weight);
    }
}

#[test]
fn without_patience_a_whole_kit_is_given_with_a_bound_that_holds() {
    // Each element in the next two sets of five: any two sets leave one out, but prices of a half each sum to 2.5.
    let sets: Vec<Vec<u32>> = (0..5).map(|at| vec![at, (at + 1) % 5]).collect();
    let found = cover(&sets, &[1; 5], 5, 1);
    assert!(found.bound <= 3 && found.weight >= 3, "{found:?}");
    assert_eq!(cover(&sets, &[1; 5], 5, PATIENCE).weight, 3);
}

/// Writes entries into a logbook as the store would.
fn write_all(book: &mut Logbook, entries: Vec<Entry>) {
    for entry in entries {
        match entry {
            Entry::Kit(kit) => match book.kits.iter_mut().find(|file| file.kit.id == kit.id) {
                Some(file) => Arc::make_mut(file).kit = kit,
                None => book.kits.push(Arc::new(KitFile { kit, lines: Vec::new() })),
            },
            Entry::KitLine(line) => {
                let file = Arc::make_mut(book.kits.iter_mut().find(|file| file.kit.id == line.kit).unwrap());
                match file.lines.iter_mut().find(|known| known.line.id == line.id) {
                    Some(known) => known.line = line,
                    None => file.lines.push(KitLineFile { line, positions: Vec::new() }),
                }
            }
            Entry::KitPosition(one) => {
                let lines = book.kits.iter_mut().flat_map(|file| Arc::make_mut(file).lines.iter_mut());
                lines.filter(|line| line.line.id == one.line).for_each(|line| line.positions.push(one.clone()));
            }
            Entry::Material(material) => {
                book.materials.retain(|known| known.id != material.id);
                book.materials.push(Arc::new(material));
                book.materials.sort_by_key(|material| material.id);
            }
            other => {
                for part in &mut book.parts {
                    Arc::make_mut(part).hang(other.clone());
                }
            }
        }
    }
}

fn go(book: &mut Logbook, to: KitState, sequence: u32) -> Result<(), Hindrance> {
    let mut ids = Ids::from(u128::from(sequence) * 1000);
    let entries =
        step(&book.kits[0].clone(), to, book, &Rules::shipped(), at("2026-03-01", sequence), &mut || ids.next())?;
    write_all(book, entries);
    Ok(())
}

#[test]
fn a_kit_reserves_is_received_and_used_up_at_its_positions() {
    let mut book = logbook(vec![board(&[(100.0, 16.0, 8.0, 12.0), (470.0, 16.0, 10.0, 16.0)])], vec![], vec![]);
    book.materials = vec![stock(200, 100.0, 25.0, 4.0)];
    let mut ids = Ids::from(50_000);
    let made = draft(&kit_of(&book), &book, "Recap of 0042", "0042", at("2026-02-01", 5), &mut || ids.next());
    write_all(&mut book, made);
    assert_eq!(reserved(&book).of(id(200)), 0.0, "a draft holds nothing");
    assert!(kit_of(&book).left_out.iter().all(|one| one.why == Why::InKit(book.kits[0].kit.id)));

    go(&mut book, KitState::Frozen, 10).unwrap();
    assert_eq!(reserved(&book).of(id(200)), 1.0);
    assert!(!waiting(&book)[&id(1)][0].is_at_hand(), "one line is still to be bought");
    assert_eq!(
        go(&mut book, KitState::Used, 11).unwrap_err(),
        Hindrance::Step { from: KitState::Frozen, to: KitState::Used }
    );
    go(&mut book, KitState::Ordered, 12).unwrap();
    go(&mut book, KitState::Received, 13).unwrap();
    assert!(waiting(&book)[&id(1)][0].is_at_hand());
    // One for its position and one spare came; the line is of the stock from now on.
    let bought = book.materials.iter().find(|one| one.capacitance_uf == Some(470.0)).unwrap().clone();
    assert_eq!((bought.stock, reserved(&book).of(bought.id)), (2.0, 1.0));

    go(&mut book, KitState::Used, 20).unwrap();
    assert_eq!(book.material(bought.id).unwrap().stock, 1.0, "the spare stays");
    assert_eq!(book.material(id(200)).unwrap().stock, 3.0);
    for one in &book.parts[0].capacitors {
        assert!(one.is_replaced() && one.state() == CapacitorState::Sound);
        assert!(one.looks[0].replaced_by.contains("µF"), "{}", one.looks[0].replaced_by);
    }
    assert!(waiting(&book).is_empty() && kit_of(&book).lines.is_empty());
}

#[test]
fn a_kit_is_not_frozen_on_what_another_has_reserved() {
    let mut book = logbook(vec![board(&[(100.0, 16.0, 8.0, 12.0); 3])], vec![], vec![]);
    book.materials = vec![stock(200, 100.0, 25.0, 3.0)];
    let mut ids = Ids::from(50_000);
    let made = draft(&kit_of(&book), &book, "Recap", "0042", at("2026-02-01", 5), &mut || ids.next());
    write_all(&mut book, made);
    let mut material = (*book.materials[0]).clone();
    material.stock = 2.0;
    book.materials = vec![Arc::new(material)];
    let short = go(&mut book, KitState::Frozen, 10).unwrap_err();
    assert_eq!(short, Hindrance::Short { material: "100 µF 25 V".to_owned(), asked: 3.0, free: 2.0 });
    assert_eq!(book.kits[0].kit.state, KitState::Draft, "nothing was written");
}

#[test]
fn a_lot_is_shared_out_over_its_parts_without_a_price() {
    let lot = Lot { id: id(300), price_cents: Some(1000), ..records::lot("Attic") };
    let one = |number, price_cents| {
        let mut file = part(number, &format!("000{number}"), Kind::SoundCard);
        file.part.lot = Some(lot.id);
        file.part.price_cents = price_cents;
        file
    };
    let mut card = one(2, None);
    card.work.push(Work { minutes: Some(45), ..work(60, &card, "", WorkState::Done, at("2026-02-01", 3)) });
    card.work.push(Work { minutes: Some(30), ..work(61, &card, "", WorkState::Open, at("2026-02-01", 4)) });
    let mut book = logbook(vec![one(1, Some(400)), card, one(3, None)], vec![], vec![]);
    book.lots = vec![Arc::new(LotFile { lot: lot.clone(), photos: Vec::new(), attachments: Vec::new() })];
    let costs = part_costs(&book);
    // 10.00 less 4.00, over two.
    assert_eq!((costs[&id(1)].bought_cents, costs[&id(2)].bought_cents, costs[&id(3)].bought_cents), (400, 300, 300));
    assert_eq!((costs[&id(2)].minutes, costs[&id(2)].unpriced_parts), (45, 0), "only what is done counts");
}
