//! Which needs find an offer: a largest matching, since counting is not enough where one offer takes several kinds.

/// Something offered or needed a number of times by one of several parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Item<'a> {
    /// The part's place in the list of parts.
    pub part: usize,
    pub connector: &'a str,
    pub count: u32,
}

/// How many of each need stay unmet when as many as possible are met; earlier needs are met before later ones where
/// both cannot be. `accepts(offer, need)` says whether one takes the other; no part plugs into itself.
pub fn unmet(needs: &[Item], offers: &[Item], accepts: impl Fn(&str, &str) -> bool) -> Vec<u32> {
    let takes: Vec<Vec<usize>> = needs
        .iter()
        .map(|need| {
            let fits = |offer: &Item| offer.part != need.part && accepts(offer.connector, need.connector);
            (0..offers.len()).filter(|at| fits(&offers[*at])).collect()
        })
        .collect();
    // For each offer, the needs that hold its places.
    let mut held: Vec<Vec<usize>> = vec![Vec::new(); offers.len()];
    let mut missing = vec![0; needs.len()];
    for (at, need) in needs.iter().enumerate() {
        for _ in 0..need.count {
            let mut tried = vec![false; offers.len()];
            if !place(at, &takes, offers, &mut held, &mut tried) {
                missing[at] += 1;
            }
        }
    }
    missing
}

/// Finds one place for a need, moving others to their other offers where that frees one.
fn place(need: usize, takes: &[Vec<usize>], offers: &[Item], held: &mut [Vec<usize>], tried: &mut [bool]) -> bool {
    for offer in takes[need].iter().copied() {
        if std::mem::replace(&mut tried[offer], true) {
            continue;
        }
        if held[offer].len() < offers[offer].count as usize {
            held[offer].push(need);
            return true;
        }
        for slot in 0..held[offer].len() {
            let other = held[offer][slot];
            if place(other, takes, offers, held, tried) {
                held[offer][slot] = need;
                return true;
            }
        }
    }
    false
}
