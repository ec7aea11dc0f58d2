//! Demands that another one stands for: whatever serves that one serves them too.

use std::collections::HashMap;

use super::demand::{Demand, Room};
use crate::record::{Dielectric, Mounting};

type Bucket = (Mounting, Vec<(Dielectric, u64, u64)>);

/// Places of the demands that stand for all: every other one is served by whatever serves one of these.
///
/// Only demands with the same mounting and the same capacitances allowed are held against each other, so that the
/// pairs stay few.
pub fn standing_for_all(demands: &[Demand]) -> Vec<u32> {
    let mut buckets: HashMap<Bucket, Vec<u32>> = HashMap::new();
    for (at, demand) in demands.iter().enumerate() {
        let rooms = demand.rooms.iter().map(|room| (room.with, room.least_uf.to_bits(), room.most_uf.to_bits()));
        buckets.entry((demand.was.mounting, rooms.collect())).or_default().push(at as u32);
    }
    let mut kept = Vec::new();
    for mut bucket in buckets.into_values() {
        // What asks for much comes first, so that what asks for less is soon found to be stood for.
        bucket.sort_by(|a, b| {
            let (a, b) = (&demands[*a as usize].was, &demands[*b as usize].was);
            b.volts
                .total_cmp(&a.volts)
                .then(a.diameter_mm.unwrap_or(f64::MAX).total_cmp(&b.diameter_mm.unwrap_or(f64::MAX)))
        });
        let mut standing: Vec<u32> = Vec::new();
        for at in bucket {
            let demand = &demands[at as usize];
            if standing.iter().any(|other| stands_for(&demands[*other as usize], demand)) {
                continue;
            }
            standing.retain(|other| !stands_for(demand, &demands[*other as usize]));
            standing.push(at);
        }
        kept.extend(standing);
    }
    kept.sort_unstable();
    kept
}

/// Whether whatever serves `harder` serves `easier` too. Both allow the same capacitances.
fn stands_for(harder: &Demand, easier: &Demand) -> bool {
    let (hard, easy) = (&harder.was, &easier.was);
    let no_less = |hard: Option<f64>, easy: Option<f64>| easy.is_none_or(|easy| hard.is_some_and(|hard| hard >= easy));
    let no_more = |hard: Option<f64>, easy: Option<f64>| easy.is_none_or(|easy| hard.is_some_and(|hard| hard <= easy));
    let asks_more = |hard: &Room, easy: &Room| {
        hard.least_volts >= easy.least_volts && no_more(hard.most_uf_v_per_mm3, easy.most_uf_v_per_mm3)
    };
    no_less(hard.celsius, easy.celsius)
        && no_more(hard.diameter_mm, easy.diameter_mm)
        && no_more(hard.height_mm, easy.height_mm)
        && (easy.pitch_mm.is_none() || hard.pitch_mm == easy.pitch_mm)
        && (hard.low_esr || !easy.low_esr)
        && harder.rooms.iter().zip(&easier.rooms).all(|(hard, easy)| asks_more(hard, easy))
}
