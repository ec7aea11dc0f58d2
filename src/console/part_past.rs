//! What `part` says of a part's past: where it came from, how it was found set, what was done to it.
//!
//! JSON: `"acquired"` (as remembered, its own or its lot's), `"price_cents"`, `"lot": {"name", "source", "price_cents"}`
//! (from whom or where; null without one), `"settings": [{"name", "value", "source", "found"}]`, `"modifications":
//! [{"what", "nature", "on", "who", "reversible", "note"}]` (finished work that changed something; reversible is null
//! where nobody said), `"work_done": [{"what", "on", "who", "minutes", "used", "note"}]`.

use serde::Serialize;

use super::opened::Opened;
use crate::record::{Nature, PartFile, When, Word as _, Work, WorkState, money_text};
use crate::text;

/// The JSON form.
#[derive(Serialize)]
pub struct PastForm {
    acquired: When,
    price_cents: Option<i64>,
    lot: Option<LotForm>,
    settings: Vec<SettingForm>,
    modifications: Vec<ModificationForm>,
    work_done: Vec<DoneForm>,
}

#[derive(Serialize)]
struct LotForm {
    name: String,
    source: String,
    price_cents: Option<i64>,
}

#[derive(Serialize)]
struct SettingForm {
    name: String,
    value: String,
    source: String,
    found: When,
}

#[derive(Serialize)]
struct ModificationForm {
    what: String,
    nature: Nature,
    on: When,
    who: String,
    reversible: Option<bool>,
    note: String,
}

#[derive(Serialize)]
struct DoneForm {
    what: String,
    on: When,
    who: String,
    minutes: Option<u32>,
    used: String,
    note: String,
}

/// A part's past.
pub fn form(file: &PartFile, opened: &Opened) -> PastForm {
    let lot = file.part.lot.and_then(|id| opened.logbook.lot(id)).map(|file| &file.lot);
    let acquired = lot.filter(|_| !file.part.acquired.is_known()).map_or(file.part.acquired, |lot| lot.acquired);
    let holds = |at: usize| file.settings[at + 1..].iter().all(|later| later.name != file.settings[at].name);
    let settings = file.settings.iter().enumerate().filter(|(at, _)| holds(*at)).map(|(_, setting)| SettingForm {
        name: setting.name.clone(),
        value: setting.value.clone(),
        source: setting.source.clone(),
        found: setting.found.on,
    });
    let what = |work: &Work| match opened.rules.work(&work.rule) {
        Some(rule) => text::say(&rule.say).to_owned(),
        None if work.title.is_empty() => work.rule.clone(),
        None => work.title.clone(),
    };
    let nature = |work: &Work| opened.rules.work(&work.rule).map_or(work.nature, |rule| rule.nature);
    let done = || file.work.iter().filter(|work| work.state == WorkState::Done);
    let modifications = done().filter(|work| nature(work) != Nature::Care).map(|work| ModificationForm {
        what: what(work),
        nature: nature(work),
        on: work.changed.on,
        who: work.who.clone(),
        reversible: work.reversible,
        note: work.note.clone(),
    });
    let work_done = done().map(|work| DoneForm {
        what: what(work),
        on: work.changed.on,
        who: work.who.clone(),
        minutes: work.minutes,
        used: work.used.clone(),
        note: work.note.clone(),
    });
    PastForm {
        acquired,
        price_cents: file.part.price_cents,
        lot: lot.map(|lot| LotForm {
            name: lot.name.clone(),
            source: lot.source.clone(),
            price_cents: lot.price_cents,
        }),
        settings: settings.collect(),
        modifications: modifications.collect(),
        work_done: work_done.collect(),
    }
}

/// What is not empty, parted by commas.
fn listed<'a>(words: impl IntoIterator<Item = &'a str>) -> String {
    words.into_iter().filter(|word| !word.is_empty()).collect::<Vec<_>>().join(", ")
}

impl PastForm {
    /// Where it came from and how it was found set, as lines with their depth.
    pub fn found_in_words(&self, currency: &str) -> Vec<(usize, String)> {
        let mut lines = Vec::new();
        let day = self.acquired.to_string();
        let price = |cents: Option<i64>| cents.map(|cents| money_text(cents, currency)).unwrap_or_default();
        let own = listed([day.as_str(), &price(self.price_cents)]);
        if !own.is_empty() {
            lines.push((1, text!("Acquired: {what}", what = own)));
        }
        if let Some(lot) = &self.lot {
            let of_all =
                lot.price_cents.map(|cents| text!("{price} for all of it", price = money_text(cents, currency)));
            let said = listed([lot.name.as_str(), &lot.source, &of_all.unwrap_or_default()]);
            lines.push((1, text!("Lot: {what}", what = said)));
        }
        if !self.settings.is_empty() {
            lines.push((1, text!("Settings as found").to_owned()));
        }
        for setting in &self.settings {
            let found = setting.found.to_string();
            let more = listed([setting.source.as_str(), &found]);
            let more = if more.is_empty() { String::new() } else { format!(" ({more})") };
            lines.push((2, format!("{}: {}{more}", setting.name, setting.value)));
        }
        lines
    }

    /// What was done to it, as lines with their depth.
    pub fn done_in_words(&self) -> Vec<(usize, String)> {
        let mut lines = Vec::new();
        if !self.modifications.is_empty() {
            lines.push((1, text!("Modifications and repairs").to_owned()));
        }
        for one in &self.modifications {
            let day = one.on.to_string();
            let reversible = match one.reversible {
                Some(true) => text!("can be undone"),
                Some(false) => text!("cannot be undone"),
                None => text!("nobody said whether it can be undone"),
            };
            let more = listed([one.nature.label(), &day, &one.who, reversible, &one.note]);
            lines.push((2, format!("{}: {more}", one.what)));
        }
        if !self.work_done.is_empty() {
            lines.push((1, text!("Work done").to_owned()));
        }
        for one in &self.work_done {
            let day = one.on.to_string();
            let minutes = one.minutes.map(|minutes| text!("{minutes} min", minutes = minutes)).unwrap_or_default();
            let more = listed([day.as_str(), &one.who, &minutes, &one.used, &one.note]);
            lines.push((2, if more.is_empty() { one.what.clone() } else { format!("{}: {more}", one.what) }));
        }
        lines
    }
}
