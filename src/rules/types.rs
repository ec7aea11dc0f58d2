//! The rows of the tables.

use std::sync::Arc;

use serde::Deserialize;

use super::lookup::Index;
use super::{CautionRule, Cautions, Connectors, PowerEffect};
use crate::record::{
    CapacitorState, CapacitorUse, Competence, Dielectric, Hold, Kind, Mounting, Name, Nature, Severity,
};
use crate::trade::capacitor::preferred::ESeries;

/// All tables, checked against each other.
#[derive(Clone, Debug, Default)]
pub struct Rules {
    /// A hash of all that was loaded: answers computed under another version are stale.
    pub version: u64,
    /// In the order they are asked.
    pub questions: Vec<Arc<Question>>,
    pub findings: Vec<Arc<FindingRule>>,
    /// In an order in which every piece comes after all that it needs done first.
    pub work: Vec<Arc<WorkRule>>,
    pub sittings: Vec<Arc<Sitting>>,
    pub templates: Vec<Arc<Template>>,
    pub proofs: Vec<Arc<ProofRule>>,
    pub kinds: Vec<Arc<KindRule>>,
    pub inspections: Vec<Arc<InspectionRule>>,
    /// What may take a capacitor's place.
    pub substitutions: Vec<Arc<SubstitutionRule>>,
    pub low_esr: Vec<Arc<LowEsrRule>>,
    /// How lines of a kit are made; the first row counts.
    pub orders: Vec<Arc<OrderRule>>,
    pub cautions: Vec<Arc<CautionRule>>,
    /// What is to be told of the user's own tables, though they can be used.
    pub remarks: Vec<String>,
    /// Which mechanism holds what sits in a board.
    pub retention: Vec<Arc<RetentionRule>>,
    /// Which connector takes which.
    pub connectors: Arc<Connectors>,
    pub(super) index: Arc<Index>,
}

/// What a survey asks some kinds of part.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Its name, in kebab case; never changes.
    pub name: Name,
    /// The kinds it is asked of.
    pub kinds: Vec<Kind>,
    /// The question as asked.
    pub ask: String,
    /// What to look for, or why it matters; may be empty.
    #[serde(default)]
    pub hint: String,
    /// The topic it belongs to ("cells", "capacitors", "corrosion"): findings of logged capacitor positions replace
    /// the answers of topic "capacitors".
    pub topic: String,
    /// Shown beside the question where looking can hurt.
    #[serde(default)]
    pub cautions: Cautions,
    /// What it does to the answer on power while nobody has answered: `not_known` for anything that could hurt.
    pub power: PowerEffect,
    /// Kinds on which not knowing it hurts nothing all the same: their few milliamperes come over a fused lead.
    #[serde(default)]
    pub harmless_on: Vec<Kind>,
    /// Kinds that always have what is asked about: *does not apply* is refused there.
    #[serde(default)]
    pub always_on: Vec<Kind>,
    /// The test that answers it as well, by name. Work that touches the part's circuits makes both unknown again.
    #[serde(default)]
    pub shown_by: Option<String>,
    /// Work after which the answer says nothing any more, by name: what was set anew is to be read anew.
    #[serde(default)]
    pub void_after: Vec<String>,
    /// A question to another part of the same machine whose answer must be of the same name: the board's plug and the
    /// supply's.
    #[serde(default)]
    pub agrees_with: Option<String>,
    #[serde(rename = "answer")]
    pub answers: Vec<AnswerRule>,
    /// A figure that may go with the answer.
    #[serde(default)]
    pub figure: Option<FigureRule>,
    /// Where the question comes from: a published source, or "common practice, no source".
    pub source: String,
}

impl Question {
    /// What it does to the answer on power while nobody has answered it for a part of this kind.
    pub fn power_on(&self, kind: Kind) -> PowerEffect {
        if self.harmless_on.contains(&kind) { PowerEffect::Nothing } else { self.power }
    }
}

/// One answer that can be given.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AnswerRule {
    pub name: Name,
    pub say: String,
    /// The finding that it raises; none for an answer that says "sound" here.
    #[serde(default)]
    pub finding: Option<String>,
    /// How bad that finding then is; the finding's own severity when left out.
    #[serde(default)]
    pub severity: Option<Severity>,
    /// What the answer does to the answer on power, while no finding that follows it up says otherwise.
    pub power: PowerEffect,
}

/// A figure asked along with a question.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FigureRule {
    /// What is measured: "Cell voltage".
    pub say: String,
    /// V, %, mm, ohm.
    pub unit: String,
    /// Least figure that can be meant.
    pub least: f64,
    /// Largest figure that can be meant.
    pub most: f64,
    /// Bounds that raise a finding, whatever the answer.
    #[serde(default, rename = "bound")]
    pub bounds: Vec<FigureBound>,
}

/// A bound on a figure: below or above it, a finding is raised. Of several on one side the furthest that is broken
/// counts.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FigureBound {
    #[serde(default)]
    pub below: Option<f64>,
    /// In place of `below`: below the bound of every figure of this test.
    #[serde(default)]
    pub below_all_of: Option<String>,
    /// In place of `below`: below the bound of some figure of this test.
    #[serde(default)]
    pub below_some_of: Option<String>,
    #[serde(default)]
    pub above: Option<f64>,
    pub finding: String,
    #[serde(default)]
    pub severity: Option<Severity>,
}

/// Something that can be wrong with a part.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FindingRule {
    pub name: String,
    /// What it is called: "Leaked cell".
    pub say: String,
    /// What it means for the part; may be empty.
    #[serde(default)]
    pub means: String,
    pub severity: Severity,
    /// What it does to the answer on power while it is open.
    pub power: PowerEffect,
    /// What it does instead when it is grave.
    #[serde(default)]
    pub power_when_grave: Option<PowerEffect>,
    /// States of logged capacitor positions that raise it; empty for a finding that surveys raise.
    #[serde(default)]
    pub capacitor_states: Vec<CapacitorState>,
    /// Only for these dielectrics; empty for all.
    #[serde(default)]
    pub dielectrics: Vec<Dielectric>,
    /// Shown with the finding.
    #[serde(default)]
    pub cautions: Cautions,
    /// Whether it leaves a connector that can still be used, with the eye in place of the key.
    #[serde(default)]
    pub by_eye: bool,
}

impl FindingRule {
    /// What it does to the answer on power, open and of this severity.
    pub fn power_at(&self, severity: Severity) -> PowerEffect {
        match self.power_when_grave {
            Some(effect) if severity == Severity::Grave => effect,
            _ => self.power,
        }
    }
}

/// A piece of work that findings call for.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkRule {
    pub name: String,
    /// What to do, as an imperative: "Cut the cell out".
    pub say: String,
    /// How, in a sentence or two; may be empty.
    #[serde(default)]
    pub how: String,
    /// The findings that call for it.
    pub findings: Vec<String>,
    /// Only on these kinds; empty for all.
    #[serde(default)]
    pub kinds: Vec<Kind>,
    /// Only from this severity up.
    #[serde(default)]
    pub from_severity: Option<Severity>,
    /// Work on the same part that must be done before, where it is outstanding too.
    #[serde(default)]
    pub after: Vec<String>,
    /// Hands-on minutes it usually takes.
    pub minutes: u32,
    /// Hours of drying, curing or running that need nobody.
    #[serde(default)]
    pub wait_hours: u32,
    #[serde(default)]
    pub materials: Vec<String>,
    #[serde(default)]
    pub tools: Vec<String>,
    /// Its own, and those of its sitting.
    #[serde(default)]
    pub cautions: Cautions,
    /// Whether it opens a power supply or a monitor; asked of every row that is for one of the two.
    #[serde(default)]
    pub cover: Option<Cover>,
    pub nature: Nature,
    pub hold: Hold,
    /// What it holds up instead when the finding is grave.
    #[serde(default)]
    pub hold_when_grave: Option<Hold>,
    /// What it does to the answer on power while it is to be done.
    pub power: PowerEffect,
    /// What it does instead when the finding is grave.
    #[serde(default)]
    pub power_when_grave: Option<PowerEffect>,
    pub who: Competence,
    /// The set-up it wants, by name: work of one sitting is done together.
    pub sitting: String,
    /// The proof that shows it done; may be empty where a look is enough.
    #[serde(default)]
    pub proven_by: Vec<String>,
    /// Proofs that count no longer once it is done.
    #[serde(default)]
    pub voids: Vec<String>,
    /// Whether it cures the finding when done; a preparing piece (photograph, inspect) does not.
    #[serde(default = "yes")]
    pub cures: bool,
    pub source: String,
}

fn yes() -> bool {
    true
}

impl WorkRule {
    /// What it holds up for a finding of this severity.
    pub fn hold_at(&self, severity: Severity) -> Hold {
        match self.hold_when_grave {
            Some(hold) if severity == Severity::Grave => hold,
            _ => self.hold,
        }
    }

    /// What it does to the answer on power for a finding of this severity.
    pub fn power_at(&self, severity: Severity) -> PowerEffect {
        match self.power_when_grave {
            Some(effect) if severity == Severity::Grave => effect,
            _ => self.power,
        }
    }
}

/// What a job does with the cover of a power supply or a monitor.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum Cover {
    /// It stays on: the part is worked on from outside.
    On,
    /// It comes off, and mains and high voltage can be touched.
    Off,
    /// The part itself is not touched.
    None,
}

/// A set-up on the bench that several pieces of work want.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sitting {
    pub name: String,
    /// "Soldering", "Wet cleaning".
    pub say: String,
    /// Minutes it takes to lay out the tools, and to put them away.
    #[serde(default)]
    pub set_up_minutes: u32,
    /// What holds for all work of it.
    #[serde(default)]
    pub cautions: Cautions,
}

/// A whole overhaul: pieces of work that follow one another on one part.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Template {
    pub name: String,
    /// What it is called: "Overhaul of a supply".
    pub say: String,
    /// What it is for, and what to mind, in a sentence or two.
    pub how: String,
    /// The kinds it is meant for.
    pub kinds: Vec<Kind>,
    /// Pieces of work by name, in their order; one that a kind cannot have is left out there.
    pub work: Vec<String>,
    pub source: String,
}

/// A test that shows a part works.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProofRule {
    pub name: String,
    pub say: String,
    /// The kinds it is run on; empty for a proof of a whole machine.
    #[serde(default)]
    pub kinds: Vec<Kind>,
    /// Whether a part of these kinds counts as proven only with it.
    pub required: bool,
    /// What it does to the answer on a machine's power while it does not hold: `not_known` for a supply's load test.
    pub power: PowerEffect,
    /// What it does when it failed, if that is more.
    #[serde(default)]
    pub power_when_failed: Option<PowerEffect>,
    /// The rig it is run on.
    pub rig: String,
    /// How long it is run, minutes.
    pub minutes: u32,
    /// What has to hold for a pass.
    pub criterion: String,
    /// Days it stays good; `None` for ever.
    #[serde(default)]
    pub good_for_days: Option<u32>,
    /// Whether every rail is measured under load, as on a supply.
    #[serde(default)]
    pub rails: bool,
    /// Figures that are noted with a run.
    #[serde(default, rename = "figure")]
    pub figures: Vec<ProofFigure>,
    #[serde(default)]
    pub cautions: Cautions,
    pub source: String,
}

impl ProofRule {
    /// Whether the answer on power hangs on it: while it does not hold, or once it failed.
    pub fn decides_power(&self) -> bool {
        self.power > PowerEffect::Nothing || self.power_when_failed == Some(PowerEffect::No)
    }
}

/// A figure that is noted when a test is run.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProofFigure {
    /// What is measured: "Errors".
    pub say: String,
    /// V, °C, ohm; empty for a count.
    #[serde(default)]
    pub unit: String,
    /// Below this nothing has passed.
    #[serde(default)]
    pub fails_below: Option<f64>,
    /// Above this nothing has passed.
    #[serde(default)]
    pub fails_above: Option<f64>,
}

/// What else is asked of a kind.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KindRule {
    pub kind: Kind,
    /// Whether power can reach it: parts without current hold no power up by being unsurveyed.
    pub electrical: bool,
    /// Papers that a machine's last gate asks of a part of this kind.
    #[serde(default)]
    pub papers: Vec<Paper>,
    /// Months after which it should be looked at again.
    pub look_again_months: u32,
    /// Said where such a part is carried to another place.
    #[serde(default)]
    pub cautions: Cautions,
}

/// What makes a part be looked at again sooner than its kind is by itself. It applies to a part of its kinds that any
/// of the rest holds for; to all of its kinds where nothing else is named.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InspectionRule {
    pub name: String,
    /// Why, as a clause: "A coin cell is still in it".
    pub say: String,
    /// Only on these kinds; empty for all.
    #[serde(default)]
    pub kinds: Vec<Kind>,
    /// Findings that are still there: open, watched or accepted.
    #[serde(default)]
    pub findings: Vec<String>,
    /// Whether those count too that work has cured, until a later look confirms it.
    #[serde(default)]
    pub after_cure: bool,
    /// Answers when last looked at, as "question/answer".
    #[serde(default)]
    pub answers: Vec<String>,
    /// Words in the name of its place, or of what that stands in; small letters.
    #[serde(default)]
    pub places: Vec<String>,
    /// Months after a survey.
    pub months: u32,
    pub source: String,
}

/// What may take the place of a capacitor.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SubstitutionRule {
    pub name: String,
    /// What sits there.
    pub dielectrics: Vec<Dielectric>,
    /// Only where it does one of these; empty for any use, told or not.
    #[serde(default)]
    pub functions: Vec<CapacitorUse>,
    /// Only from this capacitance up.
    #[serde(default)]
    pub from_uf: Option<f64>,
    /// Only up to this rated voltage.
    #[serde(default)]
    pub to_volts: Option<f64>,
    /// What may take its place.
    pub with: Dielectric,
    /// Rated for so many times the rail that it sits on, where that is named; else for the next voltage that is made.
    #[serde(default)]
    pub times_rail: Option<f64>,
    /// The capacitance may go up to the next preferred value of this series …
    pub series: ESeries,
    /// … and no further above the original.
    pub most_above_percent: f64,
    /// Microfarads times volts for a cubic millimetre of its body, of the densest that is made; `None` for no limit.
    #[serde(default)]
    pub most_uf_v_per_mm3: Option<f64>,
    pub source: String,
}

/// Where a capacitor is taken to be of low series resistance when nobody has told.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LowEsrRule {
    pub name: String,
    #[serde(default)]
    pub functions: Vec<CapacitorUse>,
    /// Words in its place on the part; small letters.
    #[serde(default)]
    pub places: Vec<String>,
    pub source: String,
}

/// How lines of a kit are made.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OrderRule {
    pub name: String,
    /// Values that can be bought.
    pub series: ESeries,
    /// Rated voltages that can be bought, ascending.
    pub volts: Vec<f64>,
    /// Lead pitches that are made, ascending.
    pub pitches_mm: Vec<f64>,
    /// What is taken where nobody has told how a capacitor sits.
    pub mounting: Mounting,
    /// Materials of work that mean the capacitors of a kit, as the work's rows call them.
    pub called: Vec<String>,
    /// Bought beyond what positions ask for.
    pub spare_percent: f64,
    /// … but no fewer than this.
    pub spare_least: u32,
    pub source: String,
}

/// Which mechanism holds what sits in a slot or on the lugs of a board.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RetentionRule {
    pub name: String,
    /// Connectors by which a board offers the place for it: any of them.
    pub board: Vec<String>,
    /// The connector by which retention hardware is told, on whichever side of its design.
    pub mechanism: String,
    /// What a survey of the hardware says of it, as "question/answer"; for hardware of no known design.
    #[serde(default)]
    pub answers: Vec<String>,
    /// What a survey of a board says where it has its own, as "question/answer".
    #[serde(default)]
    pub posts: Vec<String>,
    /// Materials of work that mean it, as the work's rows call them.
    pub called: Vec<String>,
    pub source: String,
}

crate::words! {
    /// What the last gate wants on file for a part.
    Paper {
        Photograph = "photograph", "Photograph";
        Settings = "settings", "Settings as found";
        FirmwareImage = "firmware_image", "Firmware saved";
    }
}
