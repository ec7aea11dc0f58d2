//! Figures judged on the part sheet as they are typed, against published limits.

use benchwright::record::{CapacitorState, Change, Kind, Part};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::part_sheet::{press, replace, sheet};
use crate::records::{capacitor, moment};

/// A sheet with the form for a reading open.
fn measuring(part: &Part) -> Hand {
    let mut hand = sheet(part, Change::new("Log a part"));
    hand.press("Add a reading…");
    hand
}

fn says(hand: &Hand, words: &str) -> bool {
    hand.window.query_all_by_label_contains(words).next().is_some()
}

/// Everything on show that a restorer can read.
fn shown(hand: &Hand) -> String {
    let labels = hand.window.query_all_by_role(egui::accesskit::Role::Label);
    labels.filter_map(|label| label.accesskit_node().value()).collect::<Vec<_>>().join("\n")
}

/// Large Disk HOWTO 2.2x, history of BIOS and IDE limits: 1024 cylinders, 16 heads and 63 sectors make 528 482 304
/// bytes, which is 504 MiB; the next barrier, at 4092 cylinders, is 2 111 864 832 bytes.
#[test]
fn a_drives_capacity_is_told_in_both_countings_with_the_barriers_it_lies_beyond() {
    let mut hand = measuring(&part("0060", Kind::HardDisk, "Halm drive"));
    hand.press("Measured: Capacity");
    hand.fill("Figure", "528482304");
    assert!(says(&hand, "528.5 MB as sold, 504.0 MiB as programs count"), "{}", shown(&hand));
    assert!(!says(&hand, "Beyond the barrier of 528 MB"), "exactly at the barrier is not beyond it");
    replace(&mut hand, "Figure", "540");
    replace(&mut hand, "Unit", "MB");
    assert!(says(&hand, "540.0 MB as sold"), "{}", shown(&hand));
    assert!(says(&hand, "Beyond the barrier of 528 MB") && !says(&hand, "Beyond the barrier of 2.1 GB"));
    assert!(says(&hand, "Source: Large Disk HOWTO"), "{}", shown(&hand));
    replace(&mut hand, "Figure", "2,2");
    replace(&mut hand, "Unit", "GB");
    assert!(says(&hand, "Beyond the barrier of 2.1 GB"), "{}", shown(&hand));
    // What cannot be a capacity is no reason to say anything.
    replace(&mut hand, "Unit", "rpm");
    assert!(!says(&hand, "as sold"), "{}", shown(&hand));
}

/// Wikipedia, CR2032 battery: 3.0 V nominal, spent at 2.0 V. A barrel of three nickel-cadmium cells: 3.6 V nominal,
/// empty at 3.0 V (common practice, no source).
#[test]
fn a_cell_is_judged_by_its_voltage_and_its_chemistry() {
    let mut hand = measuring(&part("0042", Kind::Mainboard, "Veltrane board"));
    hand.press("Measured: Cell");
    for (figure, verdict) in [("3.0", "good, taken for lithium"), ("2.4", "low: "), ("1.9", "spent, taken for lithium")]
    {
        replace(&mut hand, "Figure", figure);
        assert!(says(&hand, verdict), "{figure} V: {}", shown(&hand));
    }
    replace(&mut hand, "Unit", "mV");
    replace(&mut hand, "Figure", "2950");
    assert!(says(&hand, "good, taken for lithium"), "{}", shown(&hand));
    replace(&mut hand, "What was measured", "NiCd barrel cell");
    replace(&mut hand, "Unit", "V");
    for (figure, verdict) in [("3.7", "good, taken for nickel-cadmium"), ("2.9", "spent, taken for nickel-cadmium")] {
        replace(&mut hand, "Figure", figure);
        assert!(says(&hand, verdict), "{figure} V: {}", shown(&hand));
    }
    assert!(says(&hand, "it leaks with age"), "a pack is to come off whatever its voltage: {}", shown(&hand));
}

/// Panasonic SU series (dtsheet 1530872), a 1000 µF 6.3 V can: within 20 % when new and after 2000 h at 85 °C; leakage
/// at most 0.01 CV, which is 63 µA; tan δ at most 0.24, so 318 mΩ at 120 Hz. VEJ series (en.eeworld.com): twice that,
/// 637 mΩ, at its end.
#[test]
fn a_capacitor_is_judged_by_each_of_its_figures() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    change.put(capacitor(board.id, "C12", moment("2026-03-01"), CapacitorState::NotLooked));
    let mut hand = sheet(&board, change);
    hand.press("Capacitors: 1 × 1000 µF 6.3 V wet aluminium: not looked at");
    press(&mut hand, "Choose all of them");
    hand.press("Looked at or measured…");
    for (measured_uf, verdict) in [("820", "sound"), ("1190", "sound"), ("700", "out of limits, replace it")] {
        replace(&mut hand, "Measured (µF)", measured_uf);
        assert!(says(&hand, verdict), "{measured_uf} µF: {}", shown(&hand));
    }
    replace(&mut hand, "Measured (µF)", "980");
    for (esr_mohm, verdict) in [("315", "sound"), ("630", "worn, watch it"), ("640", "out of limits, replace it")] {
        replace(&mut hand, "Series resistance (mΩ)", esr_mohm);
        assert!(says(&hand, verdict), "{esr_mohm} mΩ: {}", shown(&hand));
    }
    replace(&mut hand, "Series resistance (mΩ)", "100");
    for (leakage_ua, verdict) in [("62", "sound"), ("64", "out of limits, replace it")] {
        replace(&mut hand, "Leakage (µA)", leakage_ua);
        assert!(says(&hand, verdict), "{leakage_ua} µA: {}", shown(&hand));
    }
    replace(&mut hand, "Leakage (µA)", "-1");
    assert!(says(&hand, "“-1” cannot be: it is 0 or more."), "{}", shown(&hand));
}
