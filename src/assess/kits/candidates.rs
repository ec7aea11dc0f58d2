//! The lines that a kit may be made of.
//!
//! Of lines to be bought there are endlessly many, but a least cover can always be made of a few of them. Take any
//! line of some dielectric, mounting and pitch, and the positions that it serves. Lower its capacitance to the
//! smallest value that can be bought and is not below the greatest of theirs, and its voltage likewise; widen its
//! diameter and height to the least room of theirs, or leave them open where none tells; raise its temperature to the
//! hottest and let it be of low resistance. It still serves each of them: capacitance stays within every range, since
//! the line's own was a value that can be bought and not below; less capacitance and voltage in a larger body is no
//! denser; temperature and resistance are only ever asked to be no worse. So the values, voltages, diameters, heights
//! and pitches that occur, rounded up to what can be bought, are enough, together with what is in stock.

use super::InStock;
use super::allowed::fits;
use super::demand::{Demand, Spec, value_to_buy, volts_to_buy};
use crate::record::{Dielectric, Mounting, Word as _};
use crate::rules::OrderRule;

/// A line that a kit may have.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    pub spec: Spec,
    /// The place in the stock that it is, where pieces are there.
    pub stock: Option<usize>,
    /// Places of the demands that it serves, ascending.
    pub serves: Vec<u32>,
}

/// All lines that are worth a thought for these demands.
pub fn candidates(demands: &[Demand], stock: &[InStock], order: &OrderRule) -> Vec<Candidate> {
    let mut found = Vec::new();
    for (place, one) in stock.iter().enumerate().filter(|(_, one)| one.free > 0) {
        let serves: Vec<u32> = (0..demands.len() as u32).filter(|at| fits(&demands[*at as usize], &one.spec)).collect();
        if !serves.is_empty() {
            found.push(Candidate { spec: one.spec.clone(), stock: Some(place), serves });
        }
    }
    for with in Dielectric::ALL {
        for mounting in Mounting::ALL {
            let is_of = |demand: &Demand| demand.was.mounting == *mounting && demand.room(*with).is_some();
            let of: Vec<u32> = (0..demands.len() as u32).filter(|at| is_of(&demands[*at as usize])).collect();
            if !of.is_empty() {
                to_buy(demands, &of, *with, order, &mut found);
            }
        }
    }
    found
}

/// The lines of one dielectric and mounting for the demands at these places.
fn to_buy(demands: &[Demand], of: &[u32], with: Dielectric, order: &OrderRule, found: &mut Vec<Candidate>) {
    let was = |at: u32| &demands[at as usize].was;
    let celsius = of.iter().filter_map(|at| was(*at).celsius).max_by(f64::total_cmp);
    let mut pitches = distinct(of.iter().map(|at| was(*at).pitch_mm));
    if pitches.len() > 1 {
        // Who tells no pitch is served by any.
        pitches.retain(Option::is_some);
    }
    for uf in distinct(of.iter().map(|at| value_to_buy(order, was(*at).uf))).into_iter().flatten() {
        let near: Vec<u32> = of
            .iter()
            .copied()
            .filter(|at| {
                let room = demands[*at as usize].room(with);
                room.is_some_and(|room| room.least_uf <= uf * 1.001 && uf <= room.most_uf * 1.001)
            })
            .collect();
        let least_volts = |at: u32| demands[at as usize].room(with).map(|room| room.least_volts);
        let volts = distinct(near.iter().map(|at| volts_to_buy(order, least_volts(*at)?)));
        let diameters = distinct(near.iter().map(|at| was(*at).diameter_mm));
        let heights = distinct(near.iter().map(|at| was(*at).height_mm));
        let Some(first) = near.first() else { continue };
        let mut spec = Spec {
            uf,
            celsius,
            dielectric: with,
            mounting: was(*first).mounting,
            low_esr: true,
            ..was(*first).clone()
        };
        for volts in volts.into_iter().flatten() {
            spec.volts = volts;
            for diameter in &diameters {
                for height in &heights {
                    (spec.diameter_mm, spec.height_mm) = (*diameter, *height);
                    for pitch in &pitches {
                        spec.pitch_mm = *pitch;
                        let serves: Vec<u32> =
                            near.iter().copied().filter(|at| fits(&demands[*at as usize], &spec)).collect();
                        if !serves.is_empty() {
                            found.push(Candidate { spec: spec.clone(), stock: None, serves });
                        }
                    }
                }
            }
        }
    }
}

fn distinct(figures: impl Iterator<Item = Option<f64>>) -> Vec<Option<f64>> {
    let mut figures: Vec<Option<f64>> = figures.collect();
    figures.sort_by(|a, b| a.unwrap_or(-1.0).total_cmp(&b.unwrap_or(-1.0)));
    figures.dedup();
    figures
}
