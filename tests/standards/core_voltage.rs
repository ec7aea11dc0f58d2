//! Core voltages against the ranges of processor data sheets (from memory: 2.7 to 2.9 V at 2.8 V, 2.1 to 2.3 V at 2.2 V).

use benchwright::trade::core_voltage::{Nearness, nearness};
use proptest::prelude::*;

#[test]
fn the_ends_of_a_data_sheets_range_are_in_and_the_next_step_out() {
    for (asked, least, most) in [(2.8, 2.7, 2.9), (2.2, 2.1, 2.3), (3.3, 3.135, 3.465), (5.0, 4.75, 5.25)] {
        for end in [least, most] {
            assert_eq!(nearness(asked, end), Nearness::Near, "{end} V for {asked} V");
        }
        for beyond in [least - 0.01, most + 0.01] {
            assert_eq!(nearness(asked, beyond), Nearness::Other, "{beyond} V for {asked} V");
        }
        assert_eq!(nearness(asked, asked), Nearness::Same);
    }
    // The 5 % of older tables would let a processor of 2.8 V have 2.94 V.
    assert_eq!(nearness(2.8, 2.94), Nearness::Other);
    assert_eq!(nearness(2.8, f64::NAN), Nearness::Other);
}

proptest! {
    /// Further off is never nearer.
    #[test]
    fn further_off_is_never_nearer(asked in 1.0..6.0f64, off in 0.0..1.0f64, more in 0.0..1.0f64) {
        let rank = |off: f64| match nearness(asked, asked + off) {
            Nearness::Same => 0,
            Nearness::Near => 1,
            Nearness::Other => 2,
        };
        prop_assert!(rank(off) <= rank(off + more));
    }
}
