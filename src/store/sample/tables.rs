//! The sample workshop's tables, as they are written in `resources/sample/`.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::date::Told;
use super::subject::Subject;
use crate::record::{
    AttachmentKind, CapacitorState, CapacitorUse, CaseState, CustodyAct, Dielectric, FindingState, FromFactory, Kind,
    MarkUse, Mounting, Originality, PhotoView, PowerOnResult, ProofResult, Standing, Surface, Touches, TrialResult,
    WorkState,
};

/// Everything that one file may hold; all files together are the sample.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Tables {
    pub workshop: Option<WorkshopRow>,
    pub place: Vec<PlaceRow>,
    pub lot: Vec<LotRow>,
    pub material: Vec<MaterialRow>,
    pub design: Vec<DesignRow>,
    pub part: Vec<PartRow>,
    pub machine: Vec<MachineRow>,
    #[serde(default)]
    pub order: Vec<OrderRow>,
    pub kit: Vec<KitRow>,
}

/// A kit over the bad positions of a part.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KitRow {
    pub name: String,
    /// The part's tag.
    pub part: String,
    pub gathered: Told,
    pub frozen: Option<Told>,
    pub ordered: Option<Told>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkshopRow {
    pub name: String,
    pub keeper: String,
    pub currency: String,
    pub note: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlaceRow {
    pub name: String,
    pub within: Option<String>,
    #[serde(default)]
    pub note: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LotRow {
    pub key: String,
    pub name: String,
    pub acquired: Told,
    pub source: String,
    pub price: Option<i64>,
    #[serde(default)]
    pub note: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MaterialRow {
    pub name: String,
    pub unit: String,
    pub stock: f64,
    pub minimum: f64,
    pub price: Option<i64>,
    pub place: Option<String>,
    #[serde(default)]
    pub supplier: String,
    #[serde(default)]
    pub note: String,
    pub uf: Option<f64>,
    pub volts: Option<f64>,
    pub celsius: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Option<Dielectric>,
    pub mounting: Option<Mounting>,
    pub low_esr: Option<bool>,
    /// Ordered by hand and not yet here.
    #[serde(default)]
    pub on_order: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DesignRow {
    pub key: String,
    pub kind: Kind,
    pub maker: String,
    pub model: String,
    #[serde(default)]
    pub revision: String,
    #[serde(default)]
    pub introduced: Told,
    #[serde(default)]
    pub discontinued: Told,
    #[serde(default)]
    pub offers: BTreeMap<String, u32>,
    #[serde(default)]
    pub needs: BTreeMap<String, u32>,
    #[serde(default)]
    pub figures: BTreeMap<String, Figures>,
    #[serde(default)]
    pub note: String,
    /// What its parts look like, where they say nothing themselves.
    #[serde(default)]
    pub picture: Option<Subject>,
}

/// A figure, or every one that can be set.
#[derive(Clone, Debug, Deserialize)]
#[serde(untagged)]
pub enum Figures {
    One(f64),
    Several(Vec<f64>),
}

impl Figures {
    pub fn values(&self) -> &[f64] {
        match self {
            Self::One(value) => std::slice::from_ref(value),
            Self::Several(values) => values,
        }
    }
}

/// One part, or several of a kind that differ only by their tags.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PartRow {
    pub tag: Option<String>,
    #[serde(default)]
    pub tags: Vec<String>,
    pub design: Option<String>,
    pub kind: Option<Kind>,
    #[serde(default)]
    pub name: String,
    #[serde(default)]
    pub serial: String,
    pub originality: Option<Originality>,
    pub lot: Option<String>,
    pub price: Option<i64>,
    #[serde(default)]
    pub acquired: Told,
    pub place: Option<String>,
    pub inside: Option<String>,
    #[serde(default)]
    pub quarantine: String,
    #[serde(default)]
    pub quarantined: Told,
    #[serde(default)]
    pub note: String,
    /// [surface, where, characters as printed, from the factory or not].
    #[serde(default)]
    pub markings: Vec<(Surface, String, String, FromFactory)>,
    /// A survey on arrival in which every question got its first answer, but for those in `but`.
    pub sound: Option<Told>,
    #[serde(default)]
    pub but: BTreeMap<String, AnswerRow>,
    /// Every test of the kind passed on this day, after all else.
    pub proven: Option<Told>,
    /// [name, value, how its meaning is known], as found at the first survey.
    #[serde(default)]
    pub settings: Vec<(String, String, String)>,
    /// Whether the first picture is there; by the kind's papers when not told.
    pub photo: Option<bool>,
    pub picture: Option<Subject>,
    #[serde(default)]
    pub photos: Vec<PhotoRow>,
    /// [x, y, finding] on the first picture.
    #[serde(default)]
    pub marks: Vec<(f32, f32, String)>,
    /// Further marks on the first picture.
    #[serde(default)]
    pub drawn: Vec<MarkRow>,
    /// Whether the first picture is the part's map.
    #[serde(default)]
    pub map: bool,
    #[serde(default)]
    pub files: Vec<FileRow>,
    #[serde(default)]
    pub survey: Vec<SurveyRow>,
    #[serde(default)]
    pub capacitors: Vec<CapacitorRow>,
    #[serde(default)]
    pub work: Vec<WorkRow>,
    #[serde(default)]
    pub decision: Vec<DecisionRow>,
    #[serde(default)]
    pub proof: Vec<ProofRow>,
    #[serde(default)]
    pub reading: Vec<ReadingRow>,
    #[serde(default)]
    pub custody: Vec<CustodyRow>,
    #[serde(default)]
    pub valuation: Vec<ValuationRow>,
    #[serde(default)]
    pub case: Vec<CaseRow>,
}

/// An answer's name, or the whole of it.
#[derive(Clone, Debug, Deserialize)]
#[serde(untagged)]
pub enum AnswerRow {
    Name(String),
    Whole(WholeAnswer),
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WholeAnswer {
    pub is: String,
    #[serde(default, rename = "where")]
    pub place_on_part: String,
    #[serde(default)]
    pub note: String,
    pub figure: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SurveyRow {
    pub on: Told,
    #[serde(default)]
    pub why: String,
    pub who: Option<String>,
    #[serde(default)]
    pub note: String,
    /// Whether questions that `answers` leaves out got their first answer, or were not looked at.
    #[serde(default)]
    pub rest_sound: bool,
    #[serde(default)]
    pub answers: BTreeMap<String, AnswerRow>,
}

/// Positions alike.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CapacitorRow {
    pub on: Told,
    /// "C12 C13 C14"; as many positions as names.
    pub names: String,
    #[serde(default, rename = "where")]
    pub place_on_part: String,
    pub uf: f64,
    pub volts: f64,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    #[serde(default)]
    pub series: String,
    pub dielectric: Option<Dielectric>,
    pub mounting: Option<Mounting>,
    #[serde(default)]
    pub polarity: String,
    pub function: Option<CapacitorUse>,
    pub low_esr: Option<bool>,
    pub state: CapacitorState,
    /// A later look at all of them.
    pub later: Option<CapacitorLater>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CapacitorLater {
    pub on: Told,
    pub state: CapacitorState,
    #[serde(default)]
    pub replaced_by: String,
    pub esr_mohm: Option<f64>,
    pub measured_uf: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkRow {
    /// Its name in the rules, or empty for work in one's own words.
    #[serde(default)]
    pub rule: String,
    #[serde(default)]
    pub title: String,
    pub hold: Option<crate::record::Hold>,
    pub nature: Option<crate::record::Nature>,
    pub state: WorkState,
    pub on: Told,
    pub who: Option<String>,
    pub minutes: Option<u32>,
    #[serde(default)]
    pub used: String,
    /// Materials of the stock, with how much of each went into it; the stock is told as it stands after that.
    #[serde(default)]
    pub takes: BTreeMap<String, f64>,
    #[serde(default)]
    pub reason: String,
    #[serde(default)]
    pub note: String,
    /// What work in one's own words touched.
    #[serde(default)]
    pub touches: Touches,
}

/// What somebody decided about a finding of the part.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DecisionRow {
    pub finding: String,
    pub on: Told,
    pub state: FindingState,
    pub who: Option<String>,
    pub reason: String,
}

/// Work that comes after other work by hand; each piece by its part's tag and its rule or title.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct OrderRow {
    pub part: String,
    pub work: String,
    pub after_part: String,
    pub after: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProofRow {
    pub test: String,
    pub on: Told,
    pub result: ProofResult,
    pub who: Option<String>,
    #[serde(default)]
    pub note: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReadingRow {
    pub on: Told,
    pub quantity: String,
    pub value: f64,
    pub unit: String,
    #[serde(default)]
    pub condition: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CustodyRow {
    pub on: Told,
    pub act: CustodyAct,
    pub party: String,
    #[serde(default)]
    pub until: Told,
    pub price: Option<i64>,
    #[serde(default)]
    pub condition: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ValuationRow {
    pub on: Told,
    pub amount: i64,
    pub basis: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CaseRow {
    pub on: Told,
    pub symptom: String,
    pub state: CaseState,
    #[serde(default)]
    pub outcome: String,
    pub trial: Vec<TrialRow>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TrialRow {
    pub on: Told,
    pub configuration: String,
    pub step: String,
    pub suspect: Option<String>,
    pub known_good: Option<String>,
    pub result: TrialResult,
    /// Codes heard or seen.
    #[serde(default)]
    pub codes: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PhotoRow {
    pub on: Told,
    pub view: PhotoView,
    #[serde(default)]
    pub caption: String,
    pub picture: Subject,
}

/// A mark on a picture, tied by what names a finding, a capacitor or a marking of the part.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MarkRow {
    #[serde(default)]
    pub role: MarkUse,
    pub at: Vec<[f32; 2]>,
    pub finding: Option<String>,
    pub capacitor: Option<String>,
    pub marking: Option<String>,
    pub length_mm: Option<f64>,
    /// Of a patch, as it is in the drawing: "E8E4D9".
    pub colour: Option<String>,
    #[serde(default)]
    pub note: String,
}

/// A file that goes with a part: its text stands here.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FileRow {
    pub kind: AttachmentKind,
    pub name: String,
    pub text: String,
    #[serde(default)]
    pub note: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MachineRow {
    pub name: String,
    pub purpose: String,
    pub from: Told,
    pub to: Told,
    pub standing: Standing,
    pub priority: u32,
    #[serde(default)]
    pub note: String,
    /// When its parts were fitted, and planned for it.
    pub put_together: Told,
    pub role: Vec<RoleRow>,
    #[serde(default)]
    pub power_on: Vec<PowerOnRow>,
    #[serde(default)]
    pub proof: Vec<ProofRow>,
    #[serde(default)]
    pub reading: Vec<ReadingRow>,
    #[serde(default)]
    pub case: Vec<CaseRow>,
    pub picture: Option<Subject>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoleRow {
    pub kind: Kind,
    #[serde(default)]
    pub name: String,
    #[serde(default = "one")]
    pub count: u32,
    #[serde(default)]
    pub optional: bool,
    #[serde(default)]
    pub note: String,
    #[serde(default)]
    pub fitted: Vec<String>,
    #[serde(default)]
    pub planned: Vec<String>,
    /// Why it was planned.
    #[serde(default)]
    pub reason: String,
    #[serde(default)]
    pub pinned: bool,
}

fn one() -> u32 {
    1
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PowerOnRow {
    pub on: Told,
    #[serde(default)]
    pub configuration: String,
    #[serde(default)]
    pub settings: String,
    #[serde(default)]
    pub steps: String,
    pub result: PowerOnResult,
    #[serde(default)]
    pub happened: String,
}
