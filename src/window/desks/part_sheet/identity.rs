//! What the part is: design, serial, origin, price, place. Each fact is changed where it stands, as one change.

use egui::Ui;

use super::about::{About, act_ui, put};
use super::design::{self, DesignFacts};
use crate::record::{Change, DesignId, Kind, Lot, LotId, Originality, Part, PartId, PlaceId, When, Word};
use crate::store::Store;
use crate::text;
use crate::window::forms::{LotFacts, PlaceFacts, money_text, past_date, place_names, place_of, places, read_money};
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{Asking, Edit, Fact, Pick, Picker, caution_ui, choice_ui, pressable_ui, remark, row_ui};

/// What is being chosen, and facts of the design that are being changed.
#[derive(Debug, Default)]
pub struct Identity {
    choosing: Option<Choosing>,
    design: DesignFacts,
    shows_lot: bool,
    shows_place: bool,
    place: PlaceFacts,
    /// Asked to be struck out, and what that was answered.
    strike: Option<Vec<String>>,
}

#[derive(Debug)]
enum Choosing {
    Kind,
    Originality,
    Design(Picker<DesignId>),
    Lot(Picker<LotId>),
    Place(Picker<PlaceId>),
    Inside(Picker<PartId>),
}

impl Identity {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let part = about.part();
        edit.gather_untold();
        self.kind_ui(ui, about, outbox);
        self.design_ui(ui, about, edit, outbox);
        self.design.ui(ui, about, edit, outbox);
        text_fact_ui(
            ui,
            about,
            edit,
            outbox,
            &TextFact {
                fact: Fact::line("name", text!("In own words")),
                value: &part.name,
                set: |part, typed| part.name = typed,
            },
        );
        let serial = Fact { is_printed: true, ..Fact::line("serial", text!("Serial number")) };
        let set = |part: &mut Part, typed| part.serial = typed;
        text_fact_ui(ui, about, edit, outbox, &TextFact { fact: serial, value: &part.serial, set });
        self.originality_ui(ui, about, edit, outbox);
        self.lot_ui(ui, about, edit, outbox);
        acquired_ui(ui, about, edit, outbox);
        price_ui(ui, about, edit, outbox);
        self.place_ui(ui, about, edit, outbox);
        self.inside_ui(ui, about, edit, outbox);
        quarantine_ui(ui, about, edit, outbox);
        text_fact_ui(
            ui,
            about,
            edit,
            outbox,
            &TextFact {
                fact: Fact { rows: 3, ..Fact::line("note", text!("Note")) },
                value: &part.note,
                set: |part, typed| part.note = typed,
            },
        );
        tag_ui(ui, about, edit, outbox);
        edit.untold_ui(ui, text!("Not told yet:"));
        self.strike_ui(ui, about, outbox);
    }

    /// Puts the design's facts on show; a part without a design is asked for one first.
    pub fn show_design(&mut self, about: &About<'_>) {
        self.design.open();
        if about.part().design.is_none() {
            self.choosing = Some(Choosing::Design(Picker::ready()));
        }
    }

    fn kind_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let mut kind = about.part().kind;
        if !matches!(self.choosing, Some(Choosing::Kind)) {
            if row_ui(ui, text!("Kind"), |ui| pressable_ui(ui, text!("Kind"), kind.label())).clicked() {
                self.choosing = Some(Choosing::Kind);
            }
            return;
        }
        let kinds: Vec<(Kind, &str)> = Kind::ALL.iter().map(|kind| (*kind, kind.label())).collect();
        if choice_ui(ui, text!("Kind"), &mut kind, &kinds, 50.0 * GRID) {
            self.choosing = None;
            outbox.change(changed(about, text!("Kind"), |part| part.kind = kind));
        }
        self.away_ui(ui);
    }

    fn originality_ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let mut now = about.part().originality;
        if !matches!(self.choosing, Some(Choosing::Originality)) {
            let label = text!("Originality");
            let value = if now == Originality::Unstated { "" } else { now.label() };
            if edit.pressed_ui(ui, label, value) {
                self.choosing = Some(Choosing::Originality);
            }
            return;
        }
        let words: Vec<(Originality, &str)> = Originality::ALL.iter().map(|word| (*word, word.label())).collect();
        if choice_ui(ui, text!("Originality"), &mut now, &words, 50.0 * GRID) {
            self.choosing = None;
            outbox.change(changed(about, text!("Originality"), |part| part.originality = now));
        }
        self.away_ui(ui);
    }

    fn away_ui(&mut self, ui: &mut Ui) {
        if act_ui(ui, text!("Leave it as it is"), text!("Leave it as it is")) {
            self.choosing = None;
        }
    }

    fn design_ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let logbook = about.view.logbook;
        let label = text!("Design");
        if let Some(Choosing::Design(picker)) = &mut self.choosing {
            let asking =
                Asking { new_word: Some(text!("A new design:")), ..Asking::one(text!("Maker, model or revision")) };
            let kind = about.part().kind;
            let picked = picker.ui(ui, asking, (logbook.revision, kind), || {
                // Designs of the part's kind come first.
                let mut designs: Vec<_> = logbook.designs.iter().map(|file| &file.design).collect();
                designs.sort_by_key(|design| (design.kind != kind, design.title().to_lowercase()));
                designs.into_iter().map(|design| (design.id, format!("{} ({})", design.title(), design.kind.label())))
            });
            match picked {
                Some(Pick::One(design)) => {
                    self.choosing = None;
                    outbox.change(changed(about, label, |part| part.design = Some(design)));
                }
                Some(Pick::New(name)) => {
                    self.choosing = None;
                    outbox.change(design::new(about, &name));
                }
                Some(Pick::Away) => self.choosing = None,
                None => {}
            }
            if about.part().design.is_some() && act_ui(ui, text!("No design"), text!("No design")) {
                self.choosing = None;
                outbox.change(changed(about, label, |part| part.design = None));
            }
            return;
        }
        let title = logbook.design_of(about.file).map(|design| design.design.title()).unwrap_or_default();
        if edit.pressed_ui(ui, label, &title) {
            self.choosing = Some(Choosing::Design(Picker::ready()));
        }
    }

    fn lot_ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let logbook = about.view.logbook;
        let label = text!("Came with");
        if let Some(Choosing::Lot(picker)) = &mut self.choosing {
            let asking =
                Asking { new_word: Some(text!("A new lot:")), ..Asking::one(text!("Lot: its name, or from whom")) };
            let picked = picker.ui(ui, asking, logbook.revision, || {
                // The lots of late first: what is unpacked came in last.
                logbook.lots.iter().rev().map(|file| (file.lot.id, lot_text(&file.lot)))
            });
            match picked {
                Some(Pick::One(lot)) => {
                    self.choosing = None;
                    outbox.change(changed(about, label, |part| part.lot = Some(lot)));
                }
                Some(Pick::New(name)) => {
                    self.choosing = None;
                    let lot = Lot {
                        id: Store::new_id(),
                        name,
                        acquired: about.part().acquired,
                        source: String::new(),
                        price_cents: None,
                        note: String::new(),
                    };
                    let id = lot.id;
                    let mut change = put(text!("New lot {name} for {tag}", name = lot.name, tag = about.tag()), lot);
                    change.steps.extend(changed(about, label, |part| part.lot = Some(id)).steps);
                    outbox.change(change);
                }
                Some(Pick::Away) => self.choosing = None,
                None => {}
            }
            return;
        }
        let lot = about.part().lot.and_then(|lot| logbook.lot(lot));
        let value = lot.map(|file| lot_text(&file.lot)).unwrap_or_default();
        if edit.pressed_ui(ui, label, &value) {
            self.choosing = Some(Choosing::Lot(Picker::ready()));
        }
        let Some(lot) = lot else { return };
        row_ui(ui, "", |ui| {
            let (word, name) = if self.shows_lot {
                (text!("Fold the lot"), text!("Fold the lot"))
            } else {
                (text!("Change the lot…"), text!("Change the lot…"))
            };
            if act_ui(ui, word, name) {
                self.shows_lot = !self.shows_lot;
            }
        });
        if self.shows_lot {
            LotFacts(lot.lot.id).ui(ui, edit, about.view, outbox);
        }
    }

    fn place_ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let logbook = about.view.logbook;
        let label = text!("Kept at");
        if let Some(Choosing::Place(picker)) = &mut self.choosing {
            let kind = about.view.rules.kind(about.part().kind);
            for caution in kind.iter().flat_map(|kind| kind.cautions.rows()) {
                caution_ui(ui, text::say(&caution.say));
            }
            let label_of = text!("Place: room, shelf or box");
            let asking = Asking { new_word: Some(text!("A new place:")), ..Asking::one(label_of) };
            let picked = picker.ui(ui, asking, logbook.revision, || places(logbook));
            ui.label(remark(ui, text!("From the outside in, with strokes between: Cellar / Shelf 2 / Box 4")));
            match picked {
                Some(Pick::One(place)) => {
                    self.choosing = None;
                    let name = text!("Keep {tag} at {place}", tag = about.tag(), place = logbook.place_path(place));
                    outbox.change(put(name, Part { place: Some(place), ..about.part().clone() }));
                }
                Some(Pick::New(path)) => {
                    self.choosing = None;
                    let mut before = Vec::new();
                    if let Some(id) = place_of(&path, logbook, &mut before) {
                        let path = place_names(&path).join(" / ");
                        let mut change = Change::new(text!("Keep {tag} at {place}", tag = about.tag(), place = path));
                        change.put_all(before).put(Part { place: Some(id), ..about.part().clone() });
                        outbox.change(change);
                    }
                }
                Some(Pick::Away) => self.choosing = None,
                None => {}
            }
            return;
        }
        let value = about.part().place.map(|place| logbook.place_path(place)).unwrap_or_default();
        if edit.pressed_ui(ui, label, &value) {
            self.choosing = Some(Choosing::Place(Picker::ready()));
        }
        let Some(place) = about.part().place else { return };
        row_ui(ui, "", |ui| {
            let word = if self.shows_place { text!("Fold the place") } else { text!("Change the place itself…") };
            if act_ui(ui, word, word) {
                self.shows_place = !self.shows_place;
            }
        });
        if self.shows_place {
            self.place.ui(ui, place, edit, about.view, outbox);
        }
    }

    fn inside_ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let logbook = about.view.logbook;
        let label = text!("Sits in");
        if let Some(Choosing::Inside(picker)) = &mut self.choosing {
            let own = about.part().id;
            let within = about.view.answers.inside(own);
            let picked = picker.ui(ui, Asking::one(text!("The part that it sits in")), logbook.revision, || {
                let others = logbook.parts.iter().filter(|file| file.part.id != own && !within.contains(&file.part.id));
                others.map(|file| (file.part.id, format!("{}  {}", file.part.tag, logbook.title_of(file))))
            });
            match picked {
                Some(Pick::One(outer)) => {
                    self.choosing = None;
                    outbox.change(changed(about, label, |part| part.inside = Some(outer)));
                }
                Some(Pick::Away) => self.choosing = None,
                Some(Pick::New(_)) | None => {}
            }
            if about.part().inside.is_some() && act_ui(ui, text!("Taken out"), text!("Taken out of that part")) {
                self.choosing = None;
                outbox.change(changed(about, label, |part| part.inside = None));
            }
            return;
        }
        let said = |id: PartId| {
            logbook.part(id).map(|file| format!("{}  {}", file.part.tag, logbook.title_of(file))).unwrap_or_default()
        };
        let value = about.part().inside.map(said).unwrap_or_default();
        if edit.pressed_ui(ui, label, &value) {
            self.choosing = Some(Choosing::Inside(Picker::ready()));
        }
        let within: Vec<PartId> = about.view.answers.inside(about.part().id);
        if !within.is_empty() {
            row_ui(ui, text!("Inside it"), |ui| {
                for inner in within {
                    let words = said(inner);
                    if act_ui(ui, &words, &words) {
                        outbox.go(crate::window::page::Page::Part(inner));
                    }
                }
            });
        }
    }

    /// Striking the part out of the logbook: only one that nothing hangs on.
    fn strike_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        ui.add_space(2.0 * GRID);
        let name = text!("Strike {tag} from the logbook", tag = about.tag());
        if act_ui(ui, text!("Strike it from the logbook"), &name) {
            let hangs = super::strike::what_hangs_on(about);
            if hangs.is_empty() {
                let mut change = Change::new(name);
                change.remove(about.part().id);
                outbox.change(change);
                outbox.go(crate::window::page::Page::Shelf);
                outbox.say(text!("{tag} was struck out. Undo brings it back.", tag = about.tag()));
            } else {
                self.strike = Some(hangs);
            }
        }
        if let Some(hangs) = &self.strike {
            let said = text!(
                "It stays: {hangs} would be lost. A part that is gone is scrapped or sold under “Whose it is”, so \
                 that its record remains.",
                hangs = hangs.join(", ")
            );
            super::about::wrong_ui(ui, &said);
        }
    }
}

/// A lot in a line.
fn lot_text(lot: &Lot) -> String {
    let words = [lot.name.clone(), lot.source.clone(), lot.acquired.to_string()];
    words.into_iter().filter(|word| !word.is_empty()).collect::<Vec<_>>().join(", ")
}

/// A change of one fact of the part.
fn changed(about: &About<'_>, what: &str, set: impl FnOnce(&mut Part)) -> Change {
    let mut part = about.part().clone();
    set(&mut part);
    put(text!("Change “{what}” of {tag}", what = what, tag = about.tag()), part)
}

/// A fact that is a text.
struct TextFact<'a, F: Fn(&mut Part, String)> {
    fact: Fact<'a>,
    value: &'a str,
    set: F,
}

fn text_fact_ui<F: Fn(&mut Part, String)>(
    ui: &mut Ui,
    about: &About<'_>,
    edit: &mut Edit,
    outbox: &mut Outbox,
    what: &TextFact<'_, F>,
) {
    if let Some(typed) = edit.fact_ui(ui, what.fact, what.value) {
        outbox.change(changed(about, what.fact.label, |part| (what.set)(part, typed)));
    }
}

fn acquired_ui(ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let fact = Fact::line("acquired", text!("Came on"));
    let own = about.part().acquired;
    let Some(typed) = edit.fact_ui(ui, fact, &own.to_string()) else { return };
    match past_date(&typed, about.view) {
        Ok(on) => outbox.change(changed(about, fact.label, |part| part.acquired = on)),
        Err(wrong) => edit.refuse(fact.key, &typed, wrong),
    }
}

fn price_ui(ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let currency = &about.view.logbook.workshop.currency;
    let fact = Fact::line("price", text!("Price"));
    let value = about.part().price_cents.map(|cents| money_text(cents, currency)).unwrap_or_default();
    let Some(typed) = edit.fact_ui(ui, fact, &value) else { return };
    match read_money(&typed, currency) {
        Ok(cents) => outbox.change(changed(about, fact.label, |part| part.price_cents = cents)),
        Err(wrong) => edit.refuse(fact.key, &typed, wrong),
    }
}

fn quarantine_ui(ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let fact = Fact::line("quarantine", text!("Kept apart because"));
    let part = about.part();
    if let Some(typed) = edit.fact_ui(ui, fact, &part.quarantine) {
        let name = match (part.quarantine.is_empty(), typed.is_empty()) {
            (true, _) => text!("Keep {tag} apart", tag = about.tag()),
            (_, true) => text!("Keep {tag} apart no longer", tag = about.tag()),
            _ => text!("Change “{what}” of {tag}", what = fact.label, tag = about.tag()),
        };
        let since = if typed.is_empty() {
            When::Unknown
        } else if part.quarantine.is_empty() {
            When::Day(about.view.today)
        } else {
            part.quarantined
        };
        outbox.change(put(name, Part { quarantine: typed, quarantined: since, ..part.clone() }));
    }
    if part.quarantined.is_known() {
        row_ui(ui, "", |ui| ui.label(remark(ui, text!("since {day}", day = part.quarantined))));
    }
}

fn tag_ui(ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let fact = Fact { is_printed: true, ..Fact::line("tag", text!("Tag")) };
    let Some(typed) = edit.fact_ui(ui, fact, about.tag()) else { return };
    if typed.is_empty() {
        edit.refuse(fact.key, &typed, text!("A part keeps a tag for life: write the number on its label."));
    } else if about.view.logbook.part_tagged(&typed).is_some_and(|other| other.part.id != about.part().id) {
        edit.refuse(fact.key, &typed, text!("Tag {tag} is taken; choose another.", tag = typed));
    } else {
        outbox.change(changed(about, fact.label, |part| part.tag = typed));
    }
}
