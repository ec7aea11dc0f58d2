//! Cells that keep a clock or settings: good, low or spent by their voltage; what leaks from them, what neutralises it.

use serde::{Deserialize, Serialize};

use crate::text;
use crate::trade::Source;

/// What a cell is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Chemistry {
    /// Lithium manganese dioxide: CR coin cells.
    LithiumManganese,
    /// Lithium carbon monofluoride: BR coin cells.
    LithiumFluoride,
    /// Lithium thionyl chloride: cylindrical 3.6 V cells.
    LithiumThionyl,
    /// Nickel-cadmium: rechargeable barrels and packs.
    NickelCadmium,
    /// Nickel-metal hydride: rechargeable barrels and packs.
    NickelMetalHydride,
    /// Alkaline manganese: cylindrical cells in holders.
    Alkaline,
    /// Zinc-carbon: cheap cylindrical cells.
    ZincCarbon,
    /// Sealed lead-acid: packs of uninterruptible supplies.
    LeadAcid,
}

/// What a chemistry is like, per cell.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CellFacts {
    /// Which chemistry.
    pub chemistry: Chemistry,
    /// Nominal voltage of one cell in volts.
    pub nominal_v: f64,
    /// Open-circuit voltage of one cell from which it counts as good, in volts.
    pub good_v: f64,
    /// Voltage of one cell below which it is spent, in volts.
    pub spent_v: f64,
    /// Whether it can be charged; charging any other bursts it.
    pub rechargeable: bool,
    /// What comes out of it.
    pub leaks: Leak,
    /// Where the voltages come from.
    pub source: Source,
}

/// What leaks, as far as cleaning goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Leak {
    /// Potassium hydroxide: a strong alkali that eats tracks, tin, zinc, aluminium and skin.
    Alkaline,
    /// Ammonium or zinc chloride, or sulphuric acid.
    Acid,
    /// Organic solvents with a lithium salt; seldom and little.
    Solvent,
    /// Thionyl chloride, which makes acids with moisture.
    Caustic,
}

impl Leak {
    /// What neutralises it, in a sentence; alkali and acid want opposite things.
    ///
    /// Source for alkali: safety data sheet of a NiMH cell (potassium hydroxide), Wikipedia, Battery leakage (weak acid,
    /// rinse, dry). Baking soda is a base itself and does nothing there.
    pub fn neutralised_by(self) -> &'static str {
        match self {
            Self::Alkaline => text!(
                "Neutralise with a weak acid (white vinegar, citric acid), rinse with deionised water, dry. Never baking soda: it is alkaline too."
            ),
            Self::Acid => {
                text!("Neutralise with baking soda in water, rinse with deionised water, dry. Never vinegar.")
            }
            Self::Solvent => text!("Wipe with alcohol; there is nothing to neutralise."),
            Self::Caustic => {
                text!(
                    "Do not open and do not wipe by hand: air the room, wear gloves and goggles, pack it dry for hazardous waste."
                )
            }
        }
    }

    /// What to wear and mind.
    pub fn caution(self) -> &'static str {
        match self {
            Self::Alkaline | Self::Acid => text!("Gloves and goggles: it burns skin and eyes."),
            Self::Solvent => text!("Keep coin cells from children: a swallowed one burns through within hours."),
            Self::Caustic => text!("Poisonous and corrosive; never charge, heat or short it."),
        }
    }
}

impl Chemistry {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::LithiumManganese,
        Self::LithiumFluoride,
        Self::LithiumThionyl,
        Self::NickelCadmium,
        Self::NickelMetalHydride,
        Self::Alkaline,
        Self::ZincCarbon,
        Self::LeadAcid,
    ];

    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::LithiumManganese => text!("lithium manganese dioxide (CR)"),
            Self::LithiumFluoride => text!("lithium carbon monofluoride (BR)"),
            Self::LithiumThionyl => text!("lithium thionyl chloride (3.6 V)"),
            Self::NickelCadmium => text!("nickel-cadmium"),
            Self::NickelMetalHydride => text!("nickel-metal hydride"),
            Self::Alkaline => text!("alkaline manganese"),
            Self::ZincCarbon => text!("zinc-carbon"),
            Self::LeadAcid => text!("lead-acid"),
        }
    }

    /// Voltages and leakage of this chemistry.
    ///
    /// Cut-off of CR (2.0 V) and BR (2.25 V) coins: Wikipedia, CR2032 battery. "Good" from 2.8 V of an open CR cell, since
    /// its voltage stays flat near 3 V almost to the end, and all other bounds are common practice or from memory.
    pub fn facts(self) -> CellFacts {
        const COIN: Source = Source::published(
            "Wikipedia, CR2032 battery: nominal and cut-off voltages; bound of good: common practice",
        );
        const PRACTICE: Source = Source::practice("");
        const DATA: Source = Source::memory("cell makers' data sheets");
        let facts = |nominal_v, good_v, spent_v, rechargeable, leaks, source| CellFacts {
            chemistry: self,
            nominal_v,
            good_v,
            spent_v,
            rechargeable,
            leaks,
            source,
        };
        match self {
            Self::LithiumManganese => facts(3.0, 2.8, 2.0, false, Leak::Solvent, COIN),
            Self::LithiumFluoride => facts(2.8, 2.7, 2.25, false, Leak::Solvent, COIN),
            Self::LithiumThionyl => facts(3.6, 3.5, 3.0, false, Leak::Caustic, DATA),
            Self::NickelCadmium | Self::NickelMetalHydride => facts(1.2, 1.2, 1.0, true, Leak::Alkaline, PRACTICE),
            Self::Alkaline => facts(1.5, 1.4, 1.0, false, Leak::Alkaline, PRACTICE),
            Self::ZincCarbon => facts(1.5, 1.4, 1.0, false, Leak::Acid, PRACTICE),
            Self::LeadAcid => facts(2.0, 2.1, 1.75, true, Leak::Acid, DATA),
        }
    }
}

/// How a cell stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CellState {
    /// Keeps its settings.
    Good,
    /// Above the maker's cut-off, but settings may be lost already: note them down, replace or charge it.
    Low,
    /// Below the cut-off.
    Spent,
}

impl CellState {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Good => text!("good"),
            Self::Low => text!("low: settings may be lost already"),
            Self::Spent => text!("spent"),
        }
    }
}

/// A cell or pack judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CellVerdict {
    /// The worse of both readings.
    pub state: CellState,
    /// Volts per cell that decided.
    pub volts_per_cell: f64,
    /// What was judged against.
    pub facts: CellFacts,
    /// What to know and do.
    pub remarks: Vec<String>,
}

/// Why nothing can be said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CellError {
    /// No voltage given.
    #[error("{}", text!("no voltage given"))]
    NothingMeasured,
    /// Zero cells in the pack.
    #[error("{}", text!("a pack has one cell at least"))]
    NoCells,
    /// Not a number, or beyond what such a pack can show.
    #[error("{}", text!("no such cell shows this voltage: wrong chemistry, wrong count, or it is being charged"))]
    Impossible,
}

/// A load that shows a weak coin cell, in ohms: common practice, about 3 mA.
pub const TEST_LOAD_OHM: f64 = 1000.0;

/// The chemistry and the number of cells of a cell named in a phrase ("Cell", "barrel battery"): a lithium coin cell
/// unless the phrase says otherwise. `None` for a phrase that names no cell. Rechargeable barrels on boards are packs
/// of three.
pub fn named_in(phrase: &str) -> Option<(Chemistry, u8)> {
    let lower = phrase.to_lowercase();
    if !lower.contains("cell") && !lower.contains("battery") {
        return None;
    }
    // A lithium barrel looks like a rechargeable one.
    if lower.contains("lithium") && ["barrel", "3.6", "½aa", "1/2aa", "thionyl"].iter().any(|word| lower.contains(word))
    {
        return Some((Chemistry::LithiumThionyl, 1));
    }
    let words = [
        ("nicd", Chemistry::NickelCadmium),
        ("nickel", Chemistry::NickelCadmium),
        ("barrel", Chemistry::NickelCadmium),
        ("nimh", Chemistry::NickelMetalHydride),
        ("alkaline", Chemistry::Alkaline),
        ("3.6", Chemistry::LithiumThionyl),
        ("thionyl", Chemistry::LithiumThionyl),
    ];
    let named = words.into_iter().find(|(word, _)| lower.contains(word)).map(|(_, chemistry)| chemistry);
    let chemistry = named.unwrap_or(Chemistry::LithiumManganese);
    Some((chemistry, if chemistry.facts().rechargeable { 3 } else { 1 }))
}

/// Judges a pack of `cells` cells in series by its open-circuit voltage, by its voltage under [`TEST_LOAD_OHM`], or
/// both, in volts. Under load a good cell may sag by a tenth of its nominal voltage. A reversed reading counts as spent.
///
/// # Errors
/// [`CellError`]: nothing measured, no cells, or more than a third above nominal.
pub fn judge(
    chemistry: Chemistry,
    cells: u8,
    open_v: Option<f64>,
    loaded_v: Option<f64>,
) -> Result<CellVerdict, CellError> {
    if cells == 0 {
        return Err(CellError::NoCells);
    }
    let facts = chemistry.facts();
    let mut worst: Option<(CellState, f64)> = None;
    for (volts, sag) in [(open_v, 0.0), (loaded_v, 0.1 * facts.nominal_v)] {
        let Some(volts) = volts else { continue };
        let each = volts / f64::from(cells);
        if each.is_nan() || each > 1.34 * facts.nominal_v {
            return Err(CellError::Impossible);
        }
        // Meters show two decimals; a hair is given to binary rounding.
        let reaches = |bound: f64| each >= bound - 1e-9;
        let state = if reaches(facts.good_v - sag) {
            CellState::Good
        } else if reaches(facts.spent_v) {
            CellState::Low
        } else {
            CellState::Spent
        };
        if worst.is_none_or(|(known, _)| state >= known) {
            worst = Some((state, each));
        }
    }
    let (state, volts_per_cell) = worst.ok_or(CellError::NothingMeasured)?;
    let remarks = remarks(&facts, state, loaded_v.is_none());
    Ok(CellVerdict { state, volts_per_cell, facts, remarks })
}

fn remarks(facts: &CellFacts, state: CellState, open_only: bool) -> Vec<String> {
    let mut remarks = Vec::new();
    if open_only && state == CellState::Good && !facts.rechargeable {
        remarks.push(text!("Open-circuit voltage stays up to the end: measure under a load of 1 kΩ too.").to_owned());
    }
    if facts.leaks == Leak::Alkaline {
        let text = text!("Whatever its voltage: it leaks with age. Take it off the board before the board is stored.");
        remarks.push(text.to_owned());
    }
    if state != CellState::Good && !facts.rechargeable {
        remarks.push(text!("Note the settings down before it comes out. Never charge it.").to_owned());
    }
    remarks
}
