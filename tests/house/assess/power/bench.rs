//! A part alone on the bench: somebody must have told what it takes or gives.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::{ALL_WELL, Scene, board, supply};

/// A part alone, surveyed where its kind is asked anything, of a design with these figures.
fn alone(kind: Kind, figures: &[(Figure, f64)]) -> (Verdict, Vec<Reason>) {
    let mut design = design(303, kind, ("", ""), &[]);
    tell(&mut design, figures);
    let alone = match kind {
        Kind::Mainboard => board(&ALL_WELL),
        Kind::PowerSupply => supply(false),
        kind => part(1, "0001", kind),
    };
    let number = if kind == Kind::PowerSupply { 2 } else { 1 };
    let mut scene = Scene::of(vec![made_to(alone, &design)]);
    scene.designs.push(design);
    let power = scene.of_part(number).unwrap();
    (power.verdict, power.reasons)
}

#[test]
fn a_part_alone_whose_figures_nobody_told_is_not_known() {
    // Of a processor the voltage is asked before what it draws: the wrong one destroys it.
    let cases: [(Kind, &[(Figure, f64)]); 5] = [
        (Kind::Mainboard, &[(Figure::Current5vA, 2.0)]),
        (Kind::VideoCard, &[(Figure::Current3v3A, 1.5)]),
        (Kind::HardDisk, &[(Figure::Current12vA, 0.6)]),
        (Kind::Processor, &[(Figure::CoreVoltageV, 3.3), (Figure::Current5vA, 2.6)]),
        (Kind::PowerSupply, &[(Figure::Rating12vA, 8.0)]),
    ];
    for (kind, figures) in cases {
        for told in 0..figures.len() {
            let (verdict, reasons) = alone(kind, &figures[..told]);
            assert_eq!(verdict, Verdict::NotKnown, "{}", kind.label());
            assert!(matches!(reasons[..], [Reason::FigureUntold { .. }]), "{}: {reasons:?}", kind.label());
        }
        let (verdict, reasons) = alone(kind, figures);
        assert_eq!(verdict, Verdict::Yes, "{}: {reasons:?}", kind.label());
    }
    let (verdict, _) = alone(Kind::Mainboard, &[(Figure::Current5vA, f64::NAN)]);
    assert_eq!(verdict, Verdict::NotKnown, "no number is no figure");
}

#[test]
fn a_part_without_a_design_says_which_figure_is_missing() {
    let mut scene = Scene::sound();
    scene.board().part.design = None;
    let power = scene.of_part(1).unwrap();
    let logbook = scene.logbook();
    let said: Vec<String> = power.reasons.iter().map(|reason| reason.sentence(&logbook, &scene.rules)).collect();
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert_eq!(said, ["0001 (Velmar mainboard): its design does not say: draws from +5 V."]);
}
