//! The records that what is typed stands for: the part and all that hangs on it, as one change.

use std::sync::Arc;

use super::typed::{From, NewDesign, Step, Typed, cents};
use crate::assess::positions::grown_by;
use crate::record::{
    Change, Design, DesignConnector, DesignFile, Entry, Id, Kind, Lot, LotId, Part, PartFile, PartId, When, Word as _,
};
use crate::text;
use crate::window::forms::{place_names, place_of};
use crate::window::outbox::View;
use crate::window::rounds::{has_settings, new_uuid};

/// Everything that would be written.
pub struct Records {
    /// Places, lot and design that the part needs and that are not there yet.
    before: Vec<Entry>,
    entries: Vec<Entry>,
    /// The part's file as it would be.
    pub file: PartFile,
    pub design: Option<Arc<DesignFile>>,
    pub lot: Option<LotId>,
}

/// Something typed that cannot be written, and the step where it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    pub step: Step,
    pub say: String,
    /// Whether it is only not told yet.
    pub is_missing: bool,
}

/// All that is wrong with what is typed, in the order of the steps.
pub fn faults(typed: &Typed, view: &View<'_>) -> Vec<Fault> {
    let mut faults = Vec::new();
    let tag = typed.tag.trim();
    if tag.is_empty() {
        let say = text!("A part needs a tag: write the number that its label will carry.").to_owned();
        faults.push(Fault { step: Step::Tag, say, is_missing: true });
    }
    if typed.kind.is_none() && typed.kind_letters.trim().is_empty() {
        let say = text!("Choose a kind: type its first letters.").to_owned();
        faults.push(Fault { step: Step::Tag, say, is_missing: true });
    }
    let mut add = |step: Step, say: String| faults.push(Fault { step, say, is_missing: false });
    if tag.chars().any(char::is_control) || tag.chars().count() > 40 {
        add(Step::Tag, text!("A tag is at most 40 plain characters.").to_owned());
    } else if let Some(other) = view.logbook.part_tagged(tag) {
        let what = view.logbook.title_of(other);
        add(Step::Tag, text!("Tag {tag} is on another part already: {what}. Choose another.", tag = tag, what = what));
    }
    let letters = typed.kind_letters.trim();
    if typed.kind.is_none() && !letters.is_empty() {
        add(Step::Tag, text!("No kind is called “{letters}”.", letters = letters));
    }
    if typed.what.design.is_none() {
        let NewDesign { introduced, discontinued, .. } = &typed.what.new;
        let (from, to) = (introduced.parse::<When>(), discontinued.parse::<When>());
        for bad in [&from, &to].into_iter().filter_map(|when| when.as_ref().err()) {
            add(Step::What, bad.to_string());
        }
        let spans = from.ok().and_then(When::span).zip(to.ok().and_then(When::span));
        if spans.is_some_and(|(from, to)| to.last < from.first) {
            add(Step::What, text!("The design’s last year lies before its first.").to_owned());
        }
    }
    for (date, price) in dates_and_prices(&typed.from) {
        if let Some(bad) = date.and_then(|date| date.parse::<When>().err()) {
            add(Step::From, bad.to_string());
        }
        if cents(price).is_err() {
            add(Step::From, text!("“{price}” is no price: write 12 or 12.50", price = price.trim()));
        }
    }
    let kind = typed.kind.unwrap_or(Kind::Other);
    if let Some(fault) = typed.settings.fault().filter(|_| has_settings(kind)) {
        add(Step::Markings, fault);
    }
    if let Some(fault) = typed.survey.fault(view.rules, kind) {
        add(Step::Survey, fault);
    }
    if let Some(fault) = typed.capacitors.fault() {
        add(Step::Capacitors, fault);
    }
    faults
}

fn dates_and_prices(from: &From) -> [(Option<&str>, &str); 2] {
    let own = (Some(from.acquired.as_str()), from.price.as_str());
    let lot = (Some(from.new_lot.acquired.as_str()), from.new_lot.price.as_str());
    let is_new = from.lot.is_none() && from.new_lot.is_told();
    match (from.lot, is_new) {
        (None, true) => [(None, own.1), lot],
        (None, false) => [own, (None, "")],
        (Some(_), _) => [(None, own.1), (None, "")],
    }
}

/// What would be written. What cannot be read is left out; ask [`faults`] first.
pub fn records(typed: &Typed, view: &View<'_>, id: PartId) -> Records {
    let today = When::Day(view.today);
    let who = &view.logbook.workshop.keeper;
    let kind = typed.kind.unwrap_or(Kind::Other);
    let mut before = Vec::new();
    let place = place_of(&typed.from.place, view.logbook, &mut before);
    let lot = lot(&typed.from, view, &mut before);
    let (design, file) = design(typed, view, kind, &mut before);
    let acquired = if lot.is_some() { When::Unknown } else { typed.from.acquired.parse().unwrap_or_default() };
    let quarantine = if typed.from.keeps_apart { typed.from.quarantine.trim().to_owned() } else { String::new() };
    let part = Part {
        id,
        tag: typed.tag.trim().to_owned(),
        kind,
        design,
        name: typed.what.name.trim().to_owned(),
        serial: typed.what.serial.trim().to_owned(),
        originality: typed.what.originality,
        lot,
        price_cents: cents(&typed.from.price).ok().flatten(),
        acquired,
        place,
        inside: typed.from.inside.filter(|outer| view.logbook.part(*outer).is_some()),
        quarantined: if quarantine.is_empty() { When::Unknown } else { today },
        quarantine,
        note: typed.what.note.trim().to_owned(),
    };
    let mut would_be = PartFile::new(part.clone());
    let mut entries: Vec<Entry> = vec![part.into()];
    let mut add = |would_be: &mut PartFile, more: Vec<Entry>| {
        would_be.hang_all(&more);
        entries.extend(more);
    };
    add(&mut would_be, typed.markings.entries(id, today));
    if has_settings(kind) {
        add(&mut would_be, typed.settings.entries(id, today));
    }
    // The survey comes before the positions: what it saw and they do not tell stays open.
    let why = text!("On arrival");
    let survey = typed.survey.entries(&would_be, view.rules, today, who, why);
    add(&mut would_be, survey);
    let capacitors = typed.capacitors.entries(&would_be, view.rules, today);
    add(&mut would_be, capacitors);
    add(&mut would_be, typed.photos.entries(id, today));
    Records { before, entries, file: would_be, design: file, lot }
}

impl Records {
    /// All of it under one name.
    pub fn change(self) -> Change {
        let Self { before, entries, file, design, .. } = self;
        let mut change = Change::new(text!("Log part {tag}", tag = file.part.tag));
        // What the design did not know of its positions yet.
        let more = design.map(|design| grown_by(&entries, &design, &mut new_uuid));
        change.put_all(before).put_all(entries).put_all(more.unwrap_or_default());
        change
    }
}

fn lot(from: &From, view: &View<'_>, before: &mut Vec<Entry>) -> Option<LotId> {
    let known = from.lot.and_then(|id| view.logbook.lot(id)).map(|file| file.lot.id);
    if known.is_some() || !from.new_lot.is_told() {
        return known;
    }
    let new = &from.new_lot;
    let name = if new.name.trim().is_empty() { &new.source } else { &new.name };
    let lot = Lot {
        id: Id::from_uuid(new_uuid()),
        name: name.trim().to_owned(),
        acquired: new.acquired.parse().unwrap_or_default(),
        source: new.source.trim().to_owned(),
        price_cents: cents(&new.price).ok().flatten(),
        note: String::new(),
    };
    let id = lot.id;
    before.push(lot.into());
    Some(id)
}

fn design(
    typed: &Typed,
    view: &View<'_>,
    kind: Kind,
    before: &mut Vec<Entry>,
) -> (Option<crate::record::DesignId>, Option<Arc<DesignFile>>) {
    // One that was undone meanwhile is as good as not chosen.
    if let Some(known) = typed.what.design.and_then(|id| view.logbook.design(id)) {
        return (Some(known.design.id), Some(Arc::clone(known)));
    }
    let new = &typed.what.new;
    if !new.is_told() {
        return (None, None);
    }
    let design = Design {
        id: Id::from_uuid(new_uuid()),
        kind,
        maker: new.maker.trim().to_owned(),
        model: new.model.trim().to_owned(),
        revision: new.revision.trim().to_owned(),
        introduced: new.introduced.parse().unwrap_or_default(),
        discontinued: new.discontinued.parse().unwrap_or_default(),
        note: String::new(),
    };
    let connectors: Vec<DesignConnector> = new
        .connectors
        .iter()
        .map(|row| DesignConnector {
            id: Id::from_uuid(new_uuid()),
            design: design.id,
            side: row.side,
            connector: row.name.clone(),
            count: row.count.max(1),
            note: String::new(),
        })
        .collect();
    before.push(design.clone().into());
    before.extend(connectors.iter().cloned().map(Entry::from));
    let id = design.id;
    (Some(id), Some(Arc::new(DesignFile { connectors, ..DesignFile::new(design) })))
}

/// What each step says so far, in a few words; empty when nothing.
pub fn said(step: Step, typed: &Typed, view: &View<'_>, file: &PartFile) -> String {
    use crate::counted;
    match step {
        Step::Tag => {
            let kind = typed.kind.filter(|_| !typed.tag.trim().is_empty());
            kind.map(|kind| format!("{}, {}", typed.tag.trim(), kind.label())).unwrap_or_default()
        }
        Step::What => {
            let what = &typed.what;
            let known = what.design.and_then(|id| view.logbook.design(id)).map(|file| file.design.title());
            let new = [&what.new.maker, &what.new.model, &what.new.revision];
            let new = || new.into_iter().filter(|word| !word.is_empty()).cloned().collect::<Vec<_>>().join(" ");
            let title = known.unwrap_or_else(new);
            if title.is_empty() { what.name.trim().to_owned() } else { title }
        }
        Step::From => {
            let lot = match typed.from.lot.and_then(|id| view.logbook.lot(id)) {
                Some(lot) => lot.lot.name.clone(),
                None if typed.from.new_lot.name.is_empty() => typed.from.new_lot.source.clone(),
                None => typed.from.new_lot.name.clone(),
            };
            let place = place_names(&typed.from.place).join(" / ");
            [lot, place].into_iter().filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" · ")
        }
        Step::Markings => {
            let (markings, settings) = (typed.markings.count(), typed.settings.count());
            let words = [
                (markings, counted!("{count} marking", "{count} markings", markings)),
                (settings, counted!("{count} setting", "{count} settings", settings)),
            ];
            let words = words.into_iter().filter(|(count, _)| *count > 0).map(|(_, said)| said);
            words.collect::<Vec<_>>().join(" · ")
        }
        Step::Survey => {
            let all = view.rules.questions_for(file.part.kind).len();
            match typed.survey.looked_at(view.rules, file.part.kind) {
                0 => String::new(),
                looked => text!("{looked} of {all} looked at", looked = looked, all = all),
            }
        }
        Step::Capacitors => match typed.capacitors.positions() {
            0 => String::new(),
            count => counted!("{count} position", "{count} positions", count),
        },
        Step::Photos => match typed.photos.count() {
            0 => String::new(),
            count => counted!("{count} photograph", "{count} photographs", count),
        },
    }
}
