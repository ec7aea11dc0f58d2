//! What fit asks of a design, gathered once: connectors by number, figures in fixed places, clocks and label ready.

use std::collections::HashMap;
use std::sync::Arc;

use crate::assess::{PartAnswers, retention};
use crate::record::{
    DesignFile, DesignId, Figure, FindingFile, FindingId, FindingState, Kind, PartFile, PartId, Side, Word,
};
use crate::rules::connectors::Family;
use crate::rules::{Connectors, RetentionRule, Rules};
use crate::trade::clock::{Board, Processor, Ratio, real_mhz};
use crate::trade::drive::{Firmware, firmwares};
use crate::trade::setting::Setting;
use crate::trade::supply::{Combined, Label, Rail, RailRating};
use crate::trade::{Source, Sureness};

const FIGURES: usize = Figure::ALL.len();

/// A connector that a design offers or needs.
#[derive(Clone, Debug, PartialEq)]
pub struct Port {
    pub id: Arc<str>,
    /// The connector's short name, see [`Models`].
    pub number: u16,
    pub count: u32,
    /// `None` where the table does not know it.
    pub family: Option<Family>,
    pub width_bits: Option<u16>,
    /// The voltage that it is used at, where there is only one.
    pub only_v: Option<f64>,
    /// Whether +3.3 V is among its voltages.
    pub has_3v3: bool,
    /// Where that stands.
    pub source: Source,
}

/// Core voltages that a board, adapter or module gives.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Volts {
    pub each: Vec<f64>,
    pub range: Option<(f64, f64)>,
}

impl Volts {
    pub fn is_known(&self) -> bool {
        !self.each.is_empty() || self.range.is_some()
    }

    /// What is nearest to a voltage among those that can be given.
    pub fn nearest(&self, asks_v: f64) -> Option<f64> {
        let ranged = self.range.map(|(least, most)| asks_v.clamp(least, most));
        self.each.iter().copied().chain(ranged).min_by(|one, other| {
            let off = |volts: &f64| (volts - asks_v).abs();
            off(one).total_cmp(&off(other))
        })
    }
}

/// A design as fit sees it; all of it unknown for a part that has none.
#[derive(Clone, Debug, Default)]
pub struct Model {
    pub design: Option<DesignId>,
    pub needs: Vec<Port>,
    pub offers: Vec<Port>,
    figures: Figures,
    pub volts: Volts,
    /// What can be set, where it is a board.
    pub board: Board,
    /// What is obeyed, where it is a processor.
    pub processor: Processor,
    /// What a supply gives on the rails whose rating is known; `None` where none is.
    pub label: Option<Label>,
    /// By the largest drive that it reaches.
    pub firmware: Option<Firmware>,
    /// Figures that cannot be, negative or no number: they count as not told.
    pub nonsense: Vec<(Figure, f64)>,
}

#[derive(Clone, Debug)]
struct Figures([f64; FIGURES]);

impl Default for Figures {
    fn default() -> Self {
        Self([f64::NAN; FIGURES])
    }
}

impl Model {
    /// A figure; of several rows the largest.
    pub fn figure(&self, figure: Figure) -> Option<f64> {
        Some(self.figures.0[figure as usize]).filter(|value| !value.is_nan())
    }

    /// Whether it needs and offers the same.
    pub fn plugs_alike(&self, other: &Self) -> bool {
        self.needs == other.needs && self.offers == other.offers
    }

    fn of(file: &DesignFile, names: &mut Names) -> Self {
        let mut model = Self { design: Some(file.design.id), ..Self::default() };
        for row in &file.connectors {
            let list = if row.side == Side::Offers { &mut model.offers } else { &mut model.needs };
            list.push(names.port(&row.connector, row.count));
        }
        for row in &file.figures {
            let Some(figure) = Figure::named(&row.figure) else { continue };
            if row.value.is_finite() && row.value >= 0.0 {
                let place = &mut model.figures.0[figure as usize];
                // What is not known yet is not a number, which is never the larger one.
                *place = place.max(row.value);
            } else {
                model.nonsense.push((figure, row.value));
            }
        }
        let several = |figure: Figure| {
            let rows = file.figures.iter().filter(move |row| row.figure == figure.name());
            rows.map(|row| row.value).filter(|value| value.is_finite() && *value > 0.0)
        };
        let dividers = |figure: Figure| {
            let rows = file.figures.iter().filter(move |row| row.figure == figure.name());
            rows.filter_map(|row| Some((row.at_bus_mhz.filter(|mhz| mhz.is_finite() && *mhz > 0.0), ratio(row.value)?)))
        };
        let always = |figure| dividers(figure).filter(|(at, _)| at.is_none()).map(|(_, ratio)| ratio).collect();
        let at_bus = |figure| dividers(figure).filter_map(|(at, ratio)| Some((real_mhz(at?), ratio))).collect();
        let multipliers: Vec<f64> = several(Figure::Multiplier).collect();
        let positive = |figure| model.figure(figure).filter(|value| *value > 0.0);
        let mhz = |figure| positive(figure).map(real_mhz);
        let offers_to = |card: &str| model.offers.iter().any(|port| names.takes(port.number, card));
        let board = Board {
            has_vlb: offers_to("vlb"),
            // A card that goes into every slot of its bus.
            has_pci: offers_to("pci-universal"),
            has_agp: offers_to("agp-3.0-universal"),
            isa: None,
            specified_bus_mhz: mhz(Figure::BusClockMostMhz),
            pci: always(Figure::PciDivider),
            agp: always(Figure::AgpDivider),
            pci_at: at_bus(Figure::PciDivider),
            agp_at: at_bus(Figure::AgpDivider),
            buses_mhz: several(Figure::BusClockMhz).map(real_mhz).collect(),
            multipliers: multipliers.clone(),
        };
        let bus_mhz = mhz(Figure::BusClockMhz);
        // Without a core clock as sold, one bus clock and one multiplier make it.
        let made = bus_mhz.zip(<[f64; 1]>::try_from(&multipliers[..]).ok()).map(|(bus, [by])| bus * by);
        let processor = Processor {
            core_mhz: mhz(Figure::CoreClockMhz).or(made),
            bus_mhz,
            multipliers,
            cache: positive(Figure::CacheDivider).and_then(ratio),
            cache_mhz: mhz(Figure::CacheClockMostMhz),
        };
        let range = positive(Figure::CoreVoltageLeastV).zip(positive(Figure::CoreVoltageMostV));
        let range = range.filter(|(least, most)| least <= most);
        let volts = Volts { each: several(Figure::CoreVoltageV).collect(), range };
        let (label, firmware) = (label(&model), positive(Figure::DiskMostMb).map(firmware));
        Self { volts, board, processor, label, firmware, ..model }
    }
}

/// "2" is one half of a clock, "1.5" two thirds of it.
pub(super) fn ratio(divider: f64) -> Option<Ratio> {
    let halves = (divider * 2.0).round();
    let is_exact = (divider * 2.0 - halves).abs() < 1e-6 && (1.0..=32.0).contains(&halves);
    let halves = halves as u8;
    let whole = halves.is_multiple_of(2);
    is_exact.then_some(if whole { Ratio { times: 1, by: halves / 2 } } else { Ratio { times: 2, by: halves } })
}

/// Amperes that a supply gives, and least loads, by rail.
const RATINGS: [(Rail, Figure, Option<Figure>); 6] = [
    (Rail::Plus12, Figure::Rating12vA, Some(Figure::Least12vA)),
    (Rail::Plus5, Figure::Rating5vA, Some(Figure::Least5vA)),
    (Rail::Plus3v3, Figure::Rating3v3A, Some(Figure::Least3v3A)),
    (Rail::Minus5, Figure::RatingMinus5vA, None),
    (Rail::Minus12, Figure::RatingMinus12vA, None),
    (Rail::Standby, Figure::RatingStandbyA, None),
];

/// The figure that a rail's rating is told by.
pub fn rating_figure(rail: Rail) -> Figure {
    RATINGS.iter().find(|(known, ..)| *known == rail).map_or(Figure::PowerW, |(_, figure, _)| *figure)
}

fn label(model: &Model) -> Option<Label> {
    let rating = |(rail, most, least): &(Rail, Figure, Option<Figure>)| {
        let most_a = model.figure(*most).filter(|most| *most > 0.0)?;
        let least_a = least.and_then(|least| model.figure(least)).unwrap_or_default();
        Some(RailRating { rail: *rail, least_a, most_a })
    };
    let rails: Vec<RailRating> = RATINGS.iter().filter_map(rating).collect();
    let together = |figure, rails| model.figure(figure).map(|most_w| Combined { rails, most_w });
    let combined =
        [together(Figure::Combined3v3And5vW, vec![Rail::Plus3v3, Rail::Plus5]), together(Figure::PowerW, Vec::new())];
    let source = Source { text: "".into(), sureness: Sureness::Published };
    let (id, name) = (String::new(), String::new());
    (!rails.is_empty()).then(|| Label { id, name, rails, combined: combined.into_iter().flatten().collect(), source })
}

/// The class of firmware that reaches so much; one that clips where none is known for it.
fn firmware(most_mib: f64) -> Firmware {
    let most_bytes = most_mib * f64::from(1 << 20);
    let mut all = firmwares();
    let is_near = |class: &Firmware| class.most_bytes.is_some_and(|most| (most_bytes / most as f64 - 1.0).abs() < 0.01);
    let at = all.iter().position(is_near);
    let plain = all.iter().position(|class| class.id == "assisted");
    let class = all.swap_remove(at.or(plain).unwrap_or_default());
    if at.is_some() { class } else { Firmware { most_bytes: Some(most_bytes as u64), ..class } }
}

/// Short names of connectors: the table's places, and beyond them those that no table knows.
#[derive(Debug)]
struct Names<'r> {
    table: &'r Connectors,
    known: u16,
    own: Vec<Arc<str>>,
}

impl Names<'_> {
    fn port(&mut self, id: &str, count: u32) -> Port {
        let row = self.table.get(id);
        let number = self.table.place(id).unwrap_or_else(|| {
            let at = self.own.iter().position(|own| **own == *id).unwrap_or_else(|| {
                self.own.push(id.into());
                self.own.len() - 1
            });
            self.known.saturating_add(at as u16)
        });
        Port {
            id: id.into(),
            number,
            count,
            family: row.map(|row| row.family),
            width_bits: row.and_then(|row| row.width_bits),
            only_v: row.and_then(|row| <[f64; 1]>::try_from(&row.volts[..]).ok()).map(|[volts]| volts),
            has_3v3: row.is_some_and(|row| row.volts.contains(&3.3)),
            source: row.map_or(Source::practice(""), |row| row.source.clone()),
        }
    }

    fn takes(&self, offer: u16, card: &str) -> bool {
        self.table.place(card).is_some_and(|card| self.table.takes(offer, card))
    }
}

/// Models by design, each made when it is first asked for. Models of one maker alone can be held against each other.
#[derive(Debug)]
pub struct Models<'r> {
    rules: &'r Rules,
    names: Names<'r>,
    by_design: HashMap<DesignId, Arc<Model>>,
    /// Boards that have their own posts, see [`Models::with_posts`].
    with_posts: HashMap<DesignId, Arc<Model>>,
    unknown: Arc<Model>,
}

impl<'r> Models<'r> {
    pub fn new(rules: &'r Rules) -> Self {
        let table = &rules.connectors;
        let known = table.all().count() as u16;
        let names = Names { table, known, own: Vec::new() };
        Self { rules, names, by_design: HashMap::new(), with_posts: HashMap::new(), unknown: Arc::default() }
    }

    pub fn rules(&self) -> &'r Rules {
        self.rules
    }

    /// The part as a piece of a machine.
    pub fn piece(&mut self, answers: &Arc<PartAnswers>, is_inside: bool) -> Piece {
        let model = match &answers.design {
            None => &self.unknown,
            Some(file) => {
                self.by_design.entry(file.design.id).or_insert_with(|| Arc::new(Model::of(file, &mut self.names)))
            }
        };
        let model = Arc::clone(model);
        let has_posts = |rule: &Arc<RetentionRule>| retention::has_own(&answers.file, rule);
        let is_posted = answers.file.part.kind == Kind::Mainboard && self.rules.retention.iter().any(has_posts);
        let model = if is_posted { self.with_posts(&model, answers) } else { model };
        let by_eye = |file: &&FindingFile| {
            !matches!(file.state(), FindingState::Cured | FindingState::Confirmed)
                && self.rules.finding(&file.finding.what).is_some_and(|rule| rule.by_eye)
        };
        let by_eye = answers.file.findings.iter().filter(by_eye).map(|file| file.finding.id).collect();
        Piece { answers: Arc::clone(answers), model, is_inside, by_eye, noted: Noted::all(&answers.file) }
    }
}

impl Models<'_> {
    /// A board whose survey says that the posts, lugs or frame for what sits in it are there: they count as offered.
    fn with_posts(&mut self, model: &Arc<Model>, answers: &PartAnswers) -> Arc<Model> {
        let Some(design) = model.design else { return Arc::clone(model) };
        if let Some(known) = self.with_posts.get(&design) {
            return Arc::clone(known);
        }
        let mut posted = Model::clone(model);
        for rule in self.rules.retention.iter().filter(|rule| retention::has_own(&answers.file, rule)) {
            let places = model.offers.iter().filter(|port| rule.board.iter().any(|board| **board == *port.id));
            let count = places.map(|port| port.count).max().unwrap_or_default();
            if count > 0 && posted.offers.iter().all(|port| *port.id != *rule.mechanism) {
                posted.offers.push(self.names.port(&rule.mechanism, count));
            }
        }
        let posted = Arc::new(posted);
        self.with_posts.insert(design, Arc::clone(&posted));
        posted
    }
}

/// A setting as it was found on a board, adapter or voltage module.
#[derive(Clone, Debug, PartialEq)]
pub struct Noted {
    pub setting: Setting,
    /// `None` for what cannot be read as a number.
    pub value: Option<f64>,
    /// As it was written.
    pub said: Arc<str>,
}

impl Noted {
    /// The latest note of each setting that fit judges by.
    fn all(file: &PartFile) -> Vec<Self> {
        let mut noted: Vec<Self> = Vec::new();
        if matches!(file.part.kind, Kind::Mainboard | Kind::ProcessorAdapter | Kind::VoltageModule) {
            for row in &file.settings {
                let Some(setting) = Setting::of_name(&row.name) else { continue };
                noted.retain(|older| older.setting != setting);
                noted.push(Self { setting, value: setting.read(&row.value), said: row.value.as_str().into() });
            }
        }
        noted
    }
}

/// A part of a machine, or one that could be.
#[derive(Clone, Debug)]
pub struct Piece {
    pub answers: Arc<PartAnswers>,
    pub model: Arc<Model>,
    /// Inside another part, and plugged in there.
    pub is_inside: bool,
    /// Findings by which a connector of it is usable with care alone.
    pub by_eye: Vec<FindingId>,
    /// Its settings as they were found.
    pub noted: Vec<Noted>,
}

impl Piece {
    pub fn part(&self) -> PartId {
        self.answers.part
    }

    pub fn kind(&self) -> Kind {
        self.answers.file.part.kind
    }

    pub fn figure(&self, figure: Figure) -> Option<f64> {
        self.model.figure(figure)
    }

    pub fn noted(&self, setting: Setting) -> Option<&Noted> {
        self.noted.iter().find(|noted| noted.setting == setting)
    }
}
