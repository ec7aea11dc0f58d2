//! When each machine will be ready, with so many hours a week.
//!
//! One pair of hands takes one piece after the other: of what can be begun, the most urgent machine's (priority 1
//! first, untold last), and of that what holds up most. Hands-on minutes are the rule's times the pace of this logbook
//! (see [`Pace`]), spread evenly over the week; drying, curing and running go on by themselves. Setting up is not
//! counted of its own: it is in the minutes that work really took. Work that waits for materials is begun when they
//! are taken to have come; work that is sent out is taken to be away as long. Each lacking proof follows the work of
//! its part; what is only planned for a machine is fitted once nothing on it keeps it from that; a machine's own proofs
//! follow all work on its parts and all fitting. A proof that outstanding work takes away counts as lacking. A test takes
//! [`PROOF_HANDS_ON`] minutes of hands and runs by itself for the rest.
//!
//! A machine's date has its spread from the deviation of all hands-on minutes up to it, taken as normally distributed:
//! between `early` and `late` lie 80 %. What is neither work nor proof (a role that is empty, a survey, a fault that
//! is looked for) cannot be dated; [`MachinePlan::beside`] counts it. A machine with an empty required role has no date
//! at all: nobody knows what its part will ask for.

mod gather;
pub mod hands;
pub mod network;
pub mod pace;
mod said;

use chrono::{Duration, NaiveDate};

pub use hands::{Held, Slot};
pub use pace::{Pace, PaceSource, Spread};
pub use said::circle_sentence;

use super::outstanding::Stock;
use super::{Answers, Reason};
use crate::record::{Logbook, MachineId, PartId};
use crate::rules::Rules;
use hands::slots;
use network::{Activity, Circle};
use pace::{SumOfPieces, Z_80};

/// Hands-on minutes of a test; it runs by itself for the rest (our own rule).
pub const PROOF_HANDS_ON: u32 = 15;

/// Minutes of a week.
const WEEK: f64 = 7.0 * 24.0 * 60.0;
const DAY: f64 = 24.0 * 60.0;

/// What a schedule is made under.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Terms {
    /// Hands-on minutes of a week, 1 or more.
    pub minutes_per_week: u32,
    /// Days until materials that are missing are taken to have come.
    pub delivery_days: u32,
}

/// What every schedule of one logbook goes by, whatever its terms: read once, for as many terms as are tried.
#[derive(Clone, Debug)]
pub struct Ground {
    pace: Pace,
    stock: Stock,
}

impl Ground {
    pub fn of(logbook: &Logbook, rules: &Rules) -> Self {
        Self { pace: Pace::of(logbook, rules), stock: Stock::of(logbook, rules) }
    }
}

/// What is to be done: a piece of work, or a test to be run.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Item {
    /// The place of a part in the answers, and of a task in its list.
    Work { part: usize, task: usize },
    /// The place of a part in the answers, and of a proof in its list.
    PartProof { part: usize, proof: usize },
    /// A part that is planned for a machine is fitted there: their places in the answers.
    Fit { machine: usize, part: usize },
    /// The place of a machine in the answers, and of a proof in its list.
    MachineProof { machine: usize, proof: usize },
}

/// An item with its place on the calendar.
#[derive(Clone, Debug)]
pub struct Planned {
    pub item: Item,
    /// The most urgent machine that it is for.
    pub machine: MachineId,
    /// The part that it is on; `None` for a test of a whole machine.
    pub part: Option<PartId>,
    /// Hands-on minutes by the rules.
    pub rule_minutes: f64,
    /// The same at this logbook's pace.
    pub minutes: f64,
    /// From its start to its end, in minutes of the calendar from the first minute of today on; what its start hangs
    /// on is a place among the planned.
    pub slot: Slot,
    pub start: NaiveDate,
    /// The day on which it is over, waits included.
    pub over: NaiveDate,
    /// Places among the planned that it comes after.
    pub after: Vec<usize>,
    /// Whether it waits for materials.
    pub lacks_material: bool,
}

/// Why a machine has no date.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Undated {
    /// So many places of required roles are empty.
    RolesEmpty { missing: u32 },
    /// So many pieces are on parts that are not here, or come after such.
    NotHere { pieces: usize },
}

/// When a machine is ready.
#[derive(Clone, Debug)]
pub struct MachinePlan {
    pub machine: MachineId,
    /// Places among the planned of all that it needs.
    pub needs: Vec<usize>,
    /// Places of the longest path through what it needs, were it alone.
    pub critical: Vec<usize>,
    /// When it would be ready, were it alone and had all hands at once: no date before it can be kept. `None`
    /// while required roles are empty.
    pub alone: Option<NaiveDate>,
    /// The same in days from the first minute of today on.
    pub alone_days: f64,
    /// The expected day of the last work and proof known today; `None` where it has no date.
    pub ready: Option<NaiveDate>,
    /// With nine chances of ten not before this day.
    pub early: Option<NaiveDate>,
    /// With nine chances of ten not after this day.
    pub late: Option<NaiveDate>,
    /// Standard deviation of the expected day, in days.
    pub deviation_days: f64,
    /// Why it has no date.
    pub undated: Option<Undated>,
    /// Pieces that cannot be planned: on parts that are not here, and what comes after them.
    pub unplanned: usize,
    /// Reasons that hold its gates and are neither work nor proof.
    pub beside: usize,
}

/// The schedule.
#[derive(Clone, Debug)]
pub struct Schedule {
    pub terms: Terms,
    pub pace: Pace,
    /// In the order in which the hands take them.
    pub planned: Vec<Planned>,
    /// Most urgent first.
    pub machines: Vec<MachinePlan>,
    /// The day on which the last piece is over.
    pub end: NaiveDate,
}

/// The schedule of all outstanding work and lacking proofs of all machines.
///
/// # Errors
/// Items that come after themselves, by their places in the answers.
pub fn schedule(answers: &Answers, ground: &Ground, terms: Terms) -> Result<Schedule, Vec<Item>> {
    let pace = &ground.pace;
    let stretch = WEEK / f64::from(terms.minutes_per_week.max(1));
    let gathered = gather::gather(answers, ground, terms, stretch);
    let named = |circle: Circle| circle.0.into_iter().map(|at| gathered.items[at].item.clone()).collect::<Vec<_>>();
    let (slots, taken) = slots(&gathered.pieces).map_err(named)?;
    let day = |minutes: f64| answers.today + Duration::days((minutes / DAY).floor() as i64);

    let mut place = vec![usize::MAX; taken.len()];
    taken.iter().enumerate().for_each(|(position, at)| place[*at] = position);
    let held = |held: Held| match held {
        Held::After(at) => Held::After(place[at]),
        Held::Hands(at) => Held::Hands(place[at]),
        other => other,
    };
    let planned: Vec<Planned> = taken
        .iter()
        .map(|at| {
            let (item, slot) = (&gathered.items[*at], slots[*at]);
            Planned {
                item: item.item.clone(),
                machine: answers.machines[item.machine].machine,
                part: item.part,
                rule_minutes: item.rule_minutes,
                minutes: item.minutes,
                slot: Slot { held: held(slot.held), ..slot },
                start: day(slot.start),
                over: day(slot.over),
                after: gathered.pieces[*at].after.iter().map(|first| place[*first]).collect(),
                lacks_material: item.lacks_material,
            }
        })
        .collect();

    // The deviation of all hands-on minutes up to each piece, in the order of the hands.
    let mut sum = SumOfPieces::default();
    let mut deviations = Vec::with_capacity(taken.len());
    for at in &taken {
        let item = &gathered.items[*at];
        if let Some(sitting) = &item.sitting {
            sum.add(item.rule_minutes, sitting, pace);
        }
        deviations.push(sum.deviation());
    }

    let machines = gathered.machines.iter().map(|own| {
        let mut needs: Vec<usize> = own.needs.iter().map(|at| place[*at]).collect();
        needs.sort_unstable();
        let last = needs.iter().copied().max_by(|one, other| {
            let over = |position: &usize| slots[taken[*position]].over;
            over(one).total_cmp(&over(other)).then(other.cmp(one))
        });
        let over = last.map_or(0.0, |last| slots[taken[last]].over);
        // Hands that are late delay all that the last piece waited for, up to it.
        let deviation = last.map_or(0.0, |last| deviations[last]) * stretch;
        let span = deviation * Z_80;
        let (critical, alone) = critical(&needs, &taken, &gathered.pieces);
        let undated = match (own.empty, own.unplanned) {
            (0, 0) => None,
            (0, pieces) => Some(Undated::NotHere { pieces }),
            (missing, _) => Some(Undated::RolesEmpty { missing }),
        };
        let is_whole = undated.is_none();
        MachinePlan {
            machine: answers.machines[own.machine].machine,
            critical,
            alone: (own.empty == 0).then(|| day(alone)),
            alone_days: alone / DAY,
            deviation_days: deviation / DAY,
            ready: is_whole.then(|| day(over)),
            early: is_whole.then(|| day((over - span).max(0.0))),
            late: is_whole.then(|| day(over + span)),
            undated,
            needs,
            unplanned: own.unplanned,
            beside: beside(&answers.machines[own.machine].readiness),
        }
    });
    let end = slots.iter().map(|slot| slot.over).fold(0.0, f64::max);
    Ok(Schedule { terms, machines: machines.collect(), pace: pace.clone(), planned, end: day(end) })
}

/// The longest path through what one machine needs, and when it is over; places among the planned.
fn critical(needs: &[usize], taken: &[usize], pieces: &[hands::Piece]) -> (Vec<usize>, f64) {
    let mut own_place = std::collections::HashMap::with_capacity(needs.len());
    needs.iter().enumerate().for_each(|(own, position)| {
        own_place.insert(taken[*position], own);
    });
    let mut activities: Vec<Activity> = Vec::with_capacity(needs.len());
    let mut deliveries = Vec::new();
    for position in needs {
        let piece = &pieces[taken[*position]];
        let mut after: Vec<usize> = piece.after.iter().filter_map(|first| own_place.get(first).copied()).collect();
        if piece.not_before > 0.0 {
            after.push(needs.len() + deliveries.len());
            deliveries.push(Activity { duration: piece.not_before, ..Activity::default() });
        }
        activities.push(Activity { duration: piece.hands, wait: piece.wait, after });
    }
    activities.extend(deliveries);
    // The hands took them, so there is no circle.
    network::network(&activities).map_or((Vec::new(), 0.0), |network| {
        (network.path.iter().filter_map(|own| needs.get(*own).copied()).collect(), network.end)
    })
}

/// Reasons that no schedule can date.
fn beside(readiness: &super::Readiness) -> usize {
    let reasons = readiness.gates.iter().flat_map(super::GateAnswer::holding);
    let dated = |reason: &&Reason| {
        matches!(
            reason,
            Reason::Work { .. } | Reason::PartProof { .. } | Reason::MachineProof { .. } | Reason::PlannedOnly { .. }
        )
    };
    reasons.filter(|reason| !dated(reason)).count()
}
