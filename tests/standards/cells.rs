//! Cells against published cut-offs, and what neutralises a leak.

use benchwright::trade::cell::{CellError, CellState, Chemistry, Leak, judge};
use proptest::prelude::*;

fn state(chemistry: Chemistry, cells: u8, open_v: f64) -> CellState {
    judge(chemistry, cells, Some(open_v), None).unwrap().state
}

/// Wikipedia, CR2032 battery (and Energizer's lithium coin handbook, rated "to 2 V"): CR 3.0 V, cut-off 2.0 V; BR 2.8 V,
/// cut-off 2.25 V.
#[test]
fn coin_cells_are_spent_below_the_published_cut_off() {
    for (chemistry, nominal, cut_off) in
        [(Chemistry::LithiumManganese, 3.0, 2.0), (Chemistry::LithiumFluoride, 2.8, 2.25)]
    {
        let facts = chemistry.facts();
        assert_eq!((facts.nominal_v, facts.spent_v), (nominal, cut_off), "{chemistry:?}");
        assert_eq!(state(chemistry, 1, cut_off - 0.01), CellState::Spent, "{chemistry:?}");
        assert_eq!(state(chemistry, 1, cut_off), CellState::Low, "{chemistry:?}: settings may go before the cut-off");
        assert_eq!(state(chemistry, 1, nominal), CellState::Good, "{chemistry:?}");
        assert!(!facts.rechargeable);
    }
}

/// Common practice, no source: a rechargeable barrel of three cells holds 3.6 V, and is empty at 3.0 V.
#[test]
fn a_barrel_of_three_cells() {
    let of = |volts| state(Chemistry::NickelCadmium, 3, volts);
    assert_eq!(
        [of(3.7), of(3.6), of(3.3), of(2.9), of(-0.4)],
        [CellState::Good, CellState::Good, CellState::Low, CellState::Spent, CellState::Spent]
    );
    let verdict = judge(Chemistry::NickelCadmium, 3, Some(3.7), None).unwrap();
    assert!(verdict.remarks.iter().any(|remark| remark.contains("before the board is stored")));
}

/// A load shows what the open voltage hides.
#[test]
fn the_worse_of_both_readings_counts() {
    let judged = |open, loaded| judge(Chemistry::LithiumManganese, 1, open, loaded).unwrap().state;
    assert_eq!(judged(Some(3.0), Some(2.9)), CellState::Good);
    assert_eq!(judged(Some(3.0), Some(2.3)), CellState::Low);
    assert_eq!(judged(Some(3.0), Some(1.2)), CellState::Spent);
    assert_eq!(judged(Some(2.4), Some(2.9)), CellState::Low);
}

/// NiMH cell safety data sheet, p. 2: the electrolyte is potassium hydroxide. Wikipedia, Battery leakage: neutralise alkali
/// with a weak acid (vinegar, lemon juice). Pages that say baking soda for nickel-cadmium put a base on a base; it is
/// for acid, of lead-acid and zinc-carbon cells.
#[test]
fn alkali_wants_acid_and_acid_wants_soda() {
    for chemistry in [Chemistry::NickelCadmium, Chemistry::NickelMetalHydride, Chemistry::Alkaline] {
        let leak = chemistry.facts().leaks;
        assert_eq!(leak, Leak::Alkaline, "{chemistry:?}");
        assert!(leak.neutralised_by().contains("vinegar") && leak.neutralised_by().contains("Never baking soda"));
    }
    for chemistry in [Chemistry::LeadAcid, Chemistry::ZincCarbon] {
        let leak = chemistry.facts().leaks;
        assert_eq!(leak, Leak::Acid, "{chemistry:?}");
        assert!(leak.neutralised_by().contains("with baking soda") && leak.neutralised_by().contains("Never vinegar"));
    }
}

#[test]
fn what_no_cell_can_show_is_refused() {
    let judged = |cells, open| judge(Chemistry::LithiumManganese, cells, open, None);
    // 4.08 V is a reading of a board that charges, or of a wrong scale.
    assert_eq!(judged(1, Some(4.08)), Err(CellError::Impossible));
    assert_eq!(judged(1, Some(f64::NAN)), Err(CellError::Impossible));
    assert_eq!(judged(0, Some(3.0)), Err(CellError::NoCells));
    assert_eq!(judged(1, None), Err(CellError::NothingMeasured));
}

proptest! {
    /// More volts never make it worse.
    #[test]
    fn more_volts_are_never_worse(which in 0usize..8, cells in 1u8..7, volts in -2.0..4.0f64, more in 0.0..2.0f64) {
        let judged = |volts| judge(Chemistry::ALL[which], cells, Some(volts), None).map(|verdict| verdict.state);
        if let (Ok(less), Ok(other)) = (judged(volts), judged(volts + more)) {
            prop_assert!(other <= less);
        }
    }
}
