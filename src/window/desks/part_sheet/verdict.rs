//! What the trade says about a figure as it is typed: rails, cells, capacities, capacitors.

use egui::Ui;

use super::capacitors::Figures;
use crate::record::{Capacitor, Dielectric, Kind};
use crate::text;
use crate::trade::capacitor::series::Series;
use crate::trade::capacitor::verdict::{Grade, Measured, Rated};
use crate::trade::cell::{self, CellState};
use crate::trade::drive::{Capacity, crossed, parse_capacity};
use crate::trade::supply::{Rail, RailReading, Standard, Verdict, limits};
use crate::window::theme::Themed;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{body, mark_ui, remark};

/// How good a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stand {
    Good,
    Doubtful,
    Bad,
    /// Only said, not judged.
    Told,
}

/// What the trade says about a figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    pub stand: Stand,
    pub words: String,
    pub remarks: Vec<String>,
    pub source: String,
}

/// Draws a verdict: mark, word and hue, then what to know, then the source.
pub fn ui(ui: &mut Ui, said: &Said) {
    let tokens = ui.tokens();
    let (mark, colour) = match said.stand {
        Stand::Good => (Mark::Done, tokens.power_yes),
        Stand::Doubtful => (Mark::Heed, tokens.power_unknown),
        Stand::Bad => (Mark::SeverityGrave, tokens.power_no),
        Stand::Told => (Mark::Part, tokens.ink_weak),
    };
    ui.horizontal_wrapped(|ui| {
        mark_ui(ui, mark, colour);
        ui.label(body(&said.words).color(colour));
    });
    for words in &said.remarks {
        ui.label(remark(ui, words));
    }
    if !said.source.is_empty() {
        ui.label(remark(ui, text!("Source: {source}", source = said.source)));
    }
}

/// What was measured, and how.
#[derive(Clone, Copy, Debug)]
pub struct Figure<'a> {
    /// "+5 V", "cell", "capacity".
    pub quantity: &'a str,
    pub value: f64,
    pub unit: &'a str,
    /// Under what load or condition: "8 A".
    pub condition: &'a str,
}

/// A reading of a part: `None` where the trade has nothing to say. `standard` is a supply's, where it is known.
pub fn of_reading(kind: Kind, standard: Option<Standard>, figure: Figure<'_>) -> Option<Said> {
    let Figure { quantity, value, unit, condition } = figure;
    let lower = quantity.to_lowercase();
    let volts = match unit.trim() {
        "V" | "v" | "volt" | "volts" => Some(value),
        "mV" => Some(value / 1000.0),
        _ => None,
    };
    if let Some(volts) = volts {
        // "+5 V to ground, unpowered" is no rail under load.
        if kind == Kind::PowerSupply && !lower.contains("unpowered") {
            return rail(&lower, volts, load_a(condition), standard);
        }
        if let Some(said) = cell(&lower, volts) {
            return Some(said);
        }
    }
    if matches!(kind, Kind::HardDisk | Kind::FlashAdapter) && lower.contains("capacity") {
        return capacity(&format!("{value} {unit}"));
    }
    None
}

/// The rail that a quantity names, and the family whose limits count: where nobody says which, the older ones'
/// stricter, but for rails that only the newer ones have.
fn rail_of(quantity: &str, standard: Option<Standard>) -> Option<(Rail, Standard)> {
    // "+5 V rail", "+5 V under load", "+5 V, warm": the rail comes first.
    let ends = [" rail", " under", " at ", " with", " loaded", ","];
    let end = ends.iter().filter_map(|end| quantity.find(end)).min().unwrap_or(quantity.len());
    let rail = Rail::parse(quantity[..end].trim())?;
    let newer = matches!(rail, Rail::Plus3v3 | Rail::Standby);
    Some((rail, if newer { Standard::Atx } else { standard.unwrap_or(Standard::At) }))
}

/// A supply's rail at its plug.
fn rail(quantity: &str, volts: f64, load_a: Option<f64>, standard: Option<Standard>) -> Option<Said> {
    let (rail, standard) = rail_of(quantity, standard)?;
    let reading = RailReading { rail, volts, ripple_mvpp: None, load_a };
    let (judged, _) = crate::trade::supply::judge(standard, &[reading]);
    let verdict = judged.into_iter().next()?;
    let limits = &verdict.limits;
    let words = text!(
        "{verdict}: {least} to {most} V allowed on {rail}",
        verdict = verdict.verdict.said(),
        least = limits.weakest_v,
        most = limits.strongest_v,
        rail = rail.label()
    );
    let stand = match verdict.verdict {
        Verdict::Pass => Stand::Good,
        Verdict::Marginal => Stand::Doubtful,
        Verdict::Fail => Stand::Bad,
    };
    Some(Said { stand, words, source: verdict.source().said(), remarks: verdict.remarks })
}

/// What the trade allows of a quantity on a part, in volts; `None` where it has no limits for it.
pub fn allowed(kind: Kind, standard: Option<Standard>, quantity: &str) -> Option<(f64, f64)> {
    let lower = quantity.to_lowercase();
    if kind != Kind::PowerSupply || lower.contains("unpowered") || lower.contains("ripple") {
        return None;
    }
    let (rail, standard) = rail_of(&lower, standard)?;
    let limits = limits(standard).into_iter().find(|limits| limits.rail == rail)?;
    Some((limits.weakest_v, limits.strongest_v))
}

/// The amperes that a condition names: "8 A", "load 2.5 A".
fn load_a(condition: &str) -> Option<f64> {
    let before = condition.split(" A").next().filter(|before| before.len() < condition.len())?;
    before.rsplit(' ').next()?.replace(',', ".").parse().ok()
}

/// A cell by its voltage.
fn cell(quantity: &str, volts: f64) -> Option<Said> {
    let (chemistry, cells) = cell::named_in(quantity)?;
    Some(match cell::judge(chemistry, cells, Some(volts), None) {
        Ok(verdict) => {
            let stand = match verdict.state {
                CellState::Good => Stand::Good,
                CellState::Low => Stand::Doubtful,
                CellState::Spent => Stand::Bad,
            };
            let words =
                text!("{state}, taken for {chemistry}", state = verdict.state.said(), chemistry = chemistry.said());
            Said { stand, words, source: verdict.facts.source.said(), remarks: verdict.remarks }
        }
        Err(error) => Said { stand: Stand::Bad, words: error.to_string(), remarks: Vec::new(), source: String::new() },
    })
}

/// A drive's capacity in both countings, with the barriers that it lies beyond.
fn capacity(typed: &str) -> Option<Said> {
    let bytes = parse_capacity(typed).ok()?;
    let beyond = crossed(bytes);
    let remarks = beyond
        .iter()
        .rev()
        .take(3)
        .map(|barrier| text!("Beyond the barrier of {name}: {cause}", name = barrier.name, cause = barrier.cause));
    let source = beyond.last().map(|barrier| barrier.source.said()).unwrap_or_default();
    Some(Said { stand: Stand::Told, words: Capacity::of(bytes).said(), remarks: remarks.collect(), source })
}

/// A measured electrolytic beside what is printed on it.
pub fn of_capacitor(position: &Capacitor, (capacitance_uf, esr_mohm, leakage_ua): Figures) -> Option<Said> {
    // A bipolar one leaks more than the limits of polar ones say.
    let leakage_ua = leakage_ua.filter(|_| position.made_of() == Dielectric::WetAluminium);
    if !position.made_of().is_wet() || (capacitance_uf, esr_mohm, leakage_ua) == (None, None, None) {
        return None;
    }
    let rated = Rated {
        capacitance_uf: position.capacitance_uf?,
        volts: position.voltage_v?,
        tolerance: None,
        series: Series::default(),
        esr_100khz_mohm: None,
    };
    let measured = Measured { capacitance_uf, esr_mohm, leakage_ua, ..Measured::default() };
    let verdict = crate::trade::capacitor::verdict(&rated, &measured);
    let stand = match verdict.grade {
        Grade::Sound => Stand::Good,
        Grade::Worn => Stand::Doubtful,
        Grade::OutOfLimits => Stand::Bad,
        Grade::Undecided => Stand::Told,
    };
    let remarks = verdict.checks.iter().map(|check| {
        text!(
            "{quantity}: {least} to {most} for a new one",
            quantity = check.quantity,
            least = rounded(check.sound.0),
            most = rounded(check.sound.1)
        )
    });
    let source = verdict.checks.first().map(|check| check.source.said()).unwrap_or_default();
    Some(Said { stand, words: verdict.grade.to_string(), remarks: remarks.collect(), source })
}

/// Three figures are enough for a limit.
fn rounded(value: f64) -> String {
    if value.abs() >= 100.0 { format!("{value:.0}") } else { format!("{value:.2}") }
}
