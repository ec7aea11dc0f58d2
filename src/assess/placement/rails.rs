//! What a supply's label limits, as figures to be summed: each rail, and what several carry together.

use crate::assess::fit::{Piece, draws as amps};
use crate::text;
use crate::trade::supply::Rail;

/// Rails that a label tells one by one.
const RAILS: [Rail; 6] = [Rail::Plus12, Rail::Plus5, Rail::Plus3v3, Rail::Minus5, Rail::Minus12, Rail::Standby];
/// A supply whose label says nothing of a rail: nothing speaks against it.
const UNTOLD: i64 = 1_000_000_000;

/// What is limited, in the order of [`draws`] and [`gives`].
pub fn names() -> Vec<String> {
    let rails = RAILS.map(|rail| text!("{rail}, in A", rail = rail.label()));
    let together = [text!("+3.3 V and +5 V together, in W"), text!("all rails together, in W")];
    rails.into_iter().chain(together.map(str::to_owned)).collect()
}

/// Thousandths, rounded.
fn thousandths(value: f64) -> i64 {
    (value * 1000.0).round() as i64
}

/// What a part draws, in thousandths of an ampere or watt; empty for nothing.
pub fn draws(piece: &Piece) -> Vec<i64> {
    let drawn = amps(std::slice::from_ref(piece));
    let of = |rail: Rail| drawn.iter().find(|(known, _)| *known == rail).map_or(0.0, |(_, amps)| *amps);
    let watts = |rails: &[Rail]| rails.iter().map(|rail| of(*rail) * rail.nominal_v().abs()).sum::<f64>();
    let together = [watts(&[Rail::Plus3v3, Rail::Plus5]), watts(&RAILS)];
    let all: Vec<i64> = RAILS.map(of).into_iter().chain(together).map(thousandths).collect();
    if all.iter().all(|drawn| *drawn == 0) { Vec::new() } else { all }
}

/// What a supply gives, in thousandths of an ampere or watt; empty where no label is known.
pub fn gives(piece: &Piece) -> Vec<i64> {
    let Some(label) = &piece.model.label else { return Vec::new() };
    let of = |rail: Rail| {
        label.rails.iter().find(|known| known.rail == rail).map_or(UNTOLD, |rating| thousandths(rating.most_a))
    };
    let combined = |is_it: &dyn Fn(&[Rail]) -> bool| {
        label.combined.iter().find(|limit| is_it(&limit.rails)).map_or(UNTOLD, |limit| thousandths(limit.most_w))
    };
    let pair = combined(&|rails| !rails.is_empty());
    let all = combined(&|rails| rails.is_empty());
    RAILS.map(of).into_iter().chain([pair, all]).collect()
}
