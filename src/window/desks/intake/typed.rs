//! What is typed at Intake so far: all of it, so that it can be written into a draft and offered again.

use serde::{Deserialize, Serialize};

use crate::record::{DesignId, Kind, LotId, Originality, PartId, Side, Word as _};
use crate::window::rounds::{CapacitorsRound, MarkingsRound, PhotosRound, SettingsRound, SurveyRound};
use crate::window::widgets::Picker;

crate::words! {
    /// The steps of the whole round, in the order of the trade. Each may be passed over.
    Step {
        Tag = "tag", "Tag and kind";
        What = "what", "What it is";
        From = "from", "Where from";
        Markings = "markings", "Markings";
        Survey = "survey", "Survey";
        Capacitors = "capacitors", "Capacitors";
        Photos = "photos", "Photographs";
    }
}

impl Step {
    /// The step so many after this one, or before.
    pub fn moved(self, by: isize) -> Self {
        let now = Self::ALL.iter().position(|step| *step == self).unwrap_or(0);
        Self::ALL[now.saturating_add_signed(by).min(Self::ALL.len() - 1)]
    }
}

/// What is typed so far.
#[derive(Serialize, Deserialize)]
#[serde(default)]
pub struct Typed {
    pub step: Step,
    pub tag: String,
    pub kind: Option<Kind>,
    /// The letters that the kind was picked by.
    pub kind_letters: String,
    pub what: What,
    pub from: From,
    pub markings: MarkingsRound,
    pub settings: SettingsRound,
    pub survey: SurveyRound,
    pub capacitors: CapacitorsRound,
    pub photos: PhotosRound,
}

impl Default for Typed {
    fn default() -> Self {
        Self {
            step: Step::Tag,
            tag: String::new(),
            kind: None,
            kind_letters: String::new(),
            what: What::default(),
            from: From::default(),
            markings: MarkingsRound::default(),
            settings: SettingsRound::default(),
            survey: SurveyRound::default(),
            capacitors: CapacitorsRound::default(),
            photos: PhotosRound::default(),
        }
    }
}

impl Typed {
    /// The next part of a box: kind, lot and place are kept.
    pub fn next(&self, tag: String, lot: Option<LotId>) -> Self {
        let from = From { lot, place: self.from.place.clone(), ..From::default() };
        Self { tag, kind: self.kind, kind_letters: self.kind_letters.clone(), from, ..Self::default() }
    }

    /// Picks a kind.
    pub fn pick_kind(&mut self, kind: Kind) {
        self.kind = Some(kind);
        kind.label().clone_into(&mut self.kind_letters);
    }
}

/// What the part is.
#[derive(Serialize, Deserialize)]
#[serde(default)]
pub struct What {
    /// The letters that designs are searched by.
    pub search: Picker<DesignId>,
    /// The design of which this is another example.
    pub design: Option<DesignId>,
    /// A design that is not in the logbook yet; taken when maker or model is told.
    pub new: NewDesign,
    /// In the restorer's own words.
    pub name: String,
    pub serial: String,
    pub originality: Originality,
    pub note: String,
}

impl Default for What {
    fn default() -> Self {
        Self {
            search: Picker::default(),
            design: None,
            new: NewDesign::default(),
            name: String::new(),
            serial: String::new(),
            originality: Originality::Unstated,
            note: String::new(),
        }
    }
}

/// A design that is to be made.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
pub struct NewDesign {
    pub maker: String,
    pub model: String,
    pub revision: String,
    pub introduced: String,
    pub discontinued: String,
    /// The letters that connectors are searched by: offered, needed.
    pub offers_typed: Picker<String>,
    pub needs_typed: Picker<String>,
    pub connectors: Vec<Connector>,
}

/// A connector that the new design offers or needs.
#[derive(Serialize, Deserialize)]
pub struct Connector {
    pub side: Side,
    /// Its name in the connector table.
    pub name: String,
    pub count: u32,
}

impl NewDesign {
    /// Whether there is anything to make a design of.
    pub fn is_told(&self) -> bool {
        !self.maker.trim().is_empty() || !self.model.trim().is_empty()
    }
}

/// Where the part is from and where it goes.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
pub struct From {
    /// The letters that lots are searched by.
    pub search: Picker<LotId>,
    pub lot: Option<LotId>,
    pub new_lot: NewLot,
    /// Its own price, or its share of the lot's.
    pub price: String,
    /// When it came, where it has no lot.
    pub acquired: String,
    /// A path of places: "Cellar / Shelf 2 / Box 4".
    pub place: String,
    /// Whether the part that it sits in is being told.
    pub asks_inside: bool,
    pub inside_search: Picker<PartId>,
    /// The part that it sits in.
    pub inside: Option<PartId>,
    /// Whether it is to be kept apart.
    pub keeps_apart: bool,
    /// Why it is kept apart.
    pub quarantine: String,
}

/// A lot that is to be made; taken when it has a name or a source.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
pub struct NewLot {
    pub name: String,
    pub source: String,
    pub acquired: String,
    pub price: String,
}

impl NewLot {
    /// Whether there is anything to make a lot of.
    pub fn is_told(&self) -> bool {
        !self.name.trim().is_empty() || !self.source.trim().is_empty()
    }
}

/// The kind that letters stand for: the label begins with them, or one of its words does, or they stand in it.
/// Kinds logged of late come first.
pub fn kind_of(letters: &str, of_late: &[Kind]) -> Option<Kind> {
    let letters = letters.trim().to_lowercase();
    if letters.is_empty() {
        return None;
    }
    let rank = |kind: &Kind| {
        let label = kind.label().to_lowercase();
        let words = || label.split([' ', '-', '/']);
        if label == letters {
            Some(0)
        } else if label.starts_with(&letters) {
            Some(1)
        } else if words().any(|word| word.starts_with(&letters)) {
            Some(2)
        } else {
            label.contains(&letters).then_some(3)
        }
    };
    let ranked = of_late.iter().chain(Kind::ALL).filter_map(|kind| Some((rank(kind)?, *kind)));
    // The first of equals: those of late, then the list's order.
    ranked.min_by_key(|(rank, _)| *rank).map(|(_, kind)| kind)
}

/// The tag after the one that was given last, with its figures counted up until it is free; "0001" to begin with.
pub fn next_tag<'a>(last: Option<&str>, is_taken: impl Fn(&str) -> bool + 'a) -> String {
    let last = last.unwrap_or("0000");
    let figures = last.len() - last.bytes().rev().take_while(u8::is_ascii_digit).count();
    let (letters, figures) = last.split_at(figures);
    let mut number: u64 = figures.parse().unwrap_or(0);
    let width = figures.len();
    loop {
        number += 1;
        let tag = format!("{letters}{number:0>width$}");
        if !is_taken(&tag) {
            return tag;
        }
    }
}

/// Money as typed, in hundredths; `None` when nothing is typed.
pub fn cents(typed: &str) -> Result<Option<i64>, ()> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let (whole, rest) = typed.split_once(['.', ',']).unwrap_or((typed, ""));
    let is_figures = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if whole.len() > 9 || rest.len() > 2 || !is_figures(whole) || !is_figures(rest) || whole.len() + rest.len() == 0 {
        return Err(());
    }
    let hundredths = format!("{rest:0<2}");
    let whole: i64 = if whole.is_empty() { 0 } else { whole.parse().map_err(|_| ())? };
    Ok(Some(whole * 100 + hundredths.parse::<i64>().map_err(|_| ())?))
}
