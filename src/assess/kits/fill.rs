//! From demands to the lines of a kit.

use super::InStock;
use super::allowed::fits;
use super::candidates::{Candidate, candidates};
use super::cover::{Cover, cover};
use super::demand::{Demand, Spec, value_to_buy, volts_to_buy};
use super::scope::{LeftOut, Position, Positions, Why};
use super::shrink::standing_for_all;
use crate::record::MaterialId;
use crate::rules::{OrderRule, Rules};

/// One line of a kit to be.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    pub spec: Spec,
    /// What of the stock it is.
    pub material: Option<MaterialId>,
    /// Pieces taken from stock.
    pub from_stock: u32,
    /// Pieces to buy for positions.
    pub to_buy: u32,
    /// Pieces to buy beyond that.
    pub spares: u32,
    /// Places in the proposal's list of the positions that it serves, ascending.
    pub positions: Vec<u32>,
}

/// A kit as it would be.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    pub positions: Vec<Position>,
    pub demands: Vec<Demand>,
    pub lines: Vec<Line>,
    pub left_out: Vec<LeftOut>,
    /// No kit serves these positions with fewer lines; equal to their number where they are known to be the fewest.
    pub least_lines: u32,
    /// How many of the lines were chosen because they are in stock, and the most that a kit of so few lines may have.
    pub in_stock: u32,
    /// Whether no better kit exists.
    pub is_best: bool,
}

impl Line {
    /// Pieces for positions.
    pub fn pieces(&self) -> u32 {
        self.positions.len() as u32
    }
}

/// A line weighs this and one more where it has to be bought: fewest lines first, then most of them in stock.
fn weight(lines: usize) -> u64 {
    lines as u64 + 1
}

/// What is to be covered by which lines, with what each of them weighs.
pub struct Problem {
    pub candidates: Vec<Candidate>,
    /// Places of the demands that stand for all.
    pub standing: Vec<u32>,
    /// Of each candidate, the places in `standing` of what it serves.
    pub sets: Vec<Vec<u32>>,
    pub weights: Vec<u64>,
}

impl Problem {
    /// The cover to be found for these demands.
    pub fn of(demands: &[Demand], stock: &[InStock], order: &OrderRule) -> Self {
        let standing = standing_for_all(demands);
        let hard: Vec<Demand> = standing.iter().map(|at| demands[*at as usize].clone()).collect();
        let candidates = candidates(&hard, stock, order);
        let weight = weight(hard.len());
        let weights = candidates.iter().map(|one| weight + u64::from(one.stock.is_none())).collect();
        let sets = candidates.iter().map(|one| one.serves.clone()).collect();
        Self { candidates, standing, sets, weights }
    }

    /// The cover, as [`cover`].
    pub fn solve(&self, patience: u64) -> Cover {
        cover(&self.sets, &self.weights, self.standing.len(), patience)
    }
}

/// The kit of these positions.
pub fn fill(
    gathered: Positions,
    mut left_out: Vec<LeftOut>,
    stock: &[InStock],
    rules: &Rules,
    patience: u64,
) -> Proposal {
    let Positions { mut positions, mut demands } = gathered;
    let nothing = Proposal {
        positions: Vec::new(),
        demands: Vec::new(),
        lines: Vec::new(),
        left_out: Vec::new(),
        least_lines: 0,
        in_stock: 0,
        is_best: true,
    };
    let Some(order) = rules.orders.first().filter(|_| !positions.is_empty()) else {
        return Proposal { left_out, ..nothing };
    };
    let mut problem = Problem::of(&demands, stock, order);
    let hopeless = unserved(&demands, stock, &problem, order);
    if !hopeless.is_empty() {
        let is_hopeless = |position: &Position| hopeless.binary_search(&position.demand).is_ok();
        let none = positions.iter().filter(|position| is_hopeless(position));
        left_out.extend(none.map(|one| LeftOut { part: one.part, capacitor: one.capacitor, why: Why::NothingMade }));
        positions.retain(|position| !is_hopeless(position));
        (positions, demands) = renumbered(positions, &demands);
        problem = Problem::of(&demands, stock, order);
    }
    let found = problem.solve(patience);
    let chosen: Vec<&Candidate> = found.chosen.iter().map(|at| &problem.candidates[*at as usize]).collect();
    let nearest: Vec<usize> = demands.iter().map(|demand| nearest(demand, &chosen)).collect();
    let mut of_line: Vec<Vec<u32>> = vec![Vec::new(); chosen.len()];
    for (at, position) in positions.iter().enumerate() {
        of_line[nearest[position.demand as usize]].push(at as u32);
    }
    let mut lines: Vec<Line> = chosen
        .iter()
        .zip(of_line)
        // A line that others have made needless would not be in a least cover.
        .filter(|(_, own)| !own.is_empty())
        .map(|(candidate, own)| line(candidate, own, &positions, &demands, stock, order))
        .collect();
    lines.sort_by(|a, b| {
        let key = |line: &Line| (line.spec.dielectric, line.spec.mounting);
        let order = |x: f64, y: f64| x.total_cmp(&y);
        key(a).cmp(&key(b)).then(order(b.spec.uf, a.spec.uf)).then(order(a.spec.volts, b.spec.volts))
    });
    let heavy = weight(problem.standing.len());
    let in_stock = chosen.iter().filter(|one| one.stock.is_some()).count() as u32;
    // Every line weighs at most one more than `heavy`.
    let least_lines = found.bound.div_ceil(heavy + 1) as u32;
    Proposal { positions, demands, lines, left_out, least_lines, in_stock, is_best: found.weight == found.bound }
}

/// Places of demands that no line serves, ascending.
fn unserved(demands: &[Demand], stock: &[InStock], problem: &Problem, order: &OrderRule) -> Vec<u32> {
    let mut served = vec![false; problem.standing.len()];
    for set in &problem.sets {
        for at in set {
            served[*at as usize] = true;
        }
    }
    if served.iter().all(|served| *served) {
        return Vec::new();
    }
    // One that asks for less than an unserved one may be served all the same: each is asked by itself.
    (0..demands.len() as u32)
        .filter(|at| candidates(std::slice::from_ref(&demands[*at as usize]), stock, order).is_empty())
        .collect()
}

fn renumbered(mut positions: Vec<Position>, demands: &[Demand]) -> (Vec<Position>, Vec<Demand>) {
    let mut place = vec![None; demands.len()];
    let mut kept = Vec::new();
    for position in &mut positions {
        let at = position.demand as usize;
        position.demand = *place[at].get_or_insert_with(|| {
            kept.push(demands[at].clone());
            kept.len() as u32 - 1
        });
    }
    (positions, kept)
}

/// The chosen line nearest to what sat there: in capacitance, then in voltage, then one that is in stock.
fn nearest(demand: &Demand, chosen: &[&Candidate]) -> usize {
    let fitting = chosen.iter().enumerate().filter(|(_, one)| fits(demand, &one.spec));
    let near =
        |(_, one): &(usize, &&Candidate)| (one.spec.uf, one.spec.volts, if one.stock.is_some() { 0.0 } else { 1.0 });
    fitting
        .min_by(|a, b| {
            let (a, b) = (near(a), near(b));
            a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)).then(f64::total_cmp(&a.2, &b.2))
        })
        .map_or(0, |(at, _)| at)
}

fn line(
    candidate: &Candidate,
    own: Vec<u32>,
    positions: &[Position],
    demands: &[Demand],
    stock: &[InStock],
    order: &OrderRule,
) -> Line {
    let demand = |at: &u32| &demands[positions[*at as usize].demand as usize];
    let pieces = own.len() as u32;
    let (spec, material, free) = if let Some(place) = candidate.stock {
        (candidate.spec.clone(), Some(stock[place].material), stock[place].free)
    } else {
        let spec = narrowed(&candidate.spec, own.iter().map(demand), order);
        // What was there before and is used up is bought again under its name.
        let again = stock.iter().find(|one| {
            one.free == 0
                && (one.spec.uf, one.spec.volts) == (spec.uf, spec.volts)
                && own.iter().all(|at| fits(demand(at), &one.spec))
        });
        (again.map_or(spec, |one| one.spec.clone()), again.map(|one| one.material), 0)
    };
    let from_stock = free.min(pieces);
    let to_buy = pieces - from_stock;
    Line { spec, material, from_stock, to_buy, spares: spares(to_buy, order), positions: own }
}

/// Spares for so many pieces to be bought; none where none is bought.
pub fn spares(to_buy: u32, order: &OrderRule) -> u32 {
    if to_buy == 0 {
        return 0;
    }
    let share = (f64::from(to_buy) * order.spare_percent / 100.0 - super::demand::SAME).ceil() as u32;
    share.max(order.spare_least)
}

/// A line to be bought, no better than the positions that it serves ask for.
fn narrowed<'d>(wide: &Spec, own: impl Iterator<Item = &'d Demand> + Clone, order: &OrderRule) -> Spec {
    let most = |of: &dyn Fn(&Spec) -> Option<f64>| own.clone().filter_map(|one| of(&one.was)).max_by(f64::total_cmp);
    let least = |of: &dyn Fn(&Spec) -> Option<f64>| own.clone().filter_map(|one| of(&one.was)).min_by(f64::total_cmp);
    let uf = most(&|was| Some(was.uf)).and_then(|uf| value_to_buy(order, uf));
    let asked = own.clone().filter_map(|one| one.room(wide.dielectric)).map(|room| room.least_volts);
    let volts = asked.max_by(f64::total_cmp).and_then(|volts| volts_to_buy(order, volts));
    let narrow = Spec {
        uf: uf.unwrap_or(wide.uf),
        volts: volts.unwrap_or(wide.volts),
        celsius: most(&|was| was.celsius),
        diameter_mm: least(&|was| was.diameter_mm),
        height_mm: least(&|was| was.height_mm),
        pitch_mm: own.clone().find_map(|one| one.was.pitch_mm),
        low_esr: own.clone().any(|one| one.was.low_esr),
        ..wide.clone()
    };
    // As the head of `candidates` argues, what is narrowed like this still serves them all.
    debug_assert!(own.clone().all(|one| fits(one, &narrow)), "{narrow:?}");
    narrow
}
