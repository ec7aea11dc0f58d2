//! A part offered at the fair: have I one, which machine lacks it, what would it improve; answered as it is typed.

use chrono::NaiveDate;
use egui::{Role, ScrollArea, Ui, WidgetInfo};

use super::machines::{Told, mark_of, told_ui};
use crate::assess::Answers;
use crate::assess::fit::Because;
use crate::assess::offer::{Offer, Offered, Use, usual_side};
use crate::record::{Figure, Kind, Logbook, Side, Word};
use crate::rules::{Connectors, Rules};
use crate::text;
use crate::window::background::Background;
use crate::window::forms::{all_connectors, connector_row_ui};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    Asking, Pick, Picker, badge_ui, body, choice_ui, field_ui, first_ui, link_ui, remark, section_ui, title_ui,
};

/// How many parts that are there already are listed.
const SHOWN: usize = 8;

/// A logbook of so many parts is answered within the frame.
const SMALL_PARTS: usize = 500;

/// What is told of the offered part so far.
#[derive(Clone, Debug, PartialEq)]
struct Asked {
    kind: Kind,
    connectors: Vec<Plug>,
    figures: String,
    made: String,
}

/// A connector that it is told to have.
#[derive(Clone, Debug, PartialEq)]
struct Plug {
    id: String,
    count: u32,
    /// `None` for the usual one of the kind.
    side: Option<Side>,
}

/// What the page keeps.
pub struct OfferDesk {
    asked: Asked,
    adding: Picker<String>,
    answer: Background<(u64, u64, NaiveDate, Asked), Result<Shown, String>>,
}

/// An answer with its reasons in words.
struct Shown {
    offer: Offer,
    lacking: Vec<Vec<Told>>,
    improves: Vec<Vec<Told>>,
}

impl Default for OfferDesk {
    fn default() -> Self {
        let asked =
            Asked { kind: Kind::SoundCard, connectors: Vec::new(), figures: String::new(), made: String::new() };
        Self { asked, adding: Picker::default(), answer: Background::default() }
    }
}

impl Plug {
    fn side(&self, kind: Kind, table: &Connectors) -> Side {
        let usual = || table.get(&self.id).map_or(Side::Needs, |row| usual_side(kind, row.family));
        self.side.unwrap_or_else(usual)
    }

    /// As the console takes it; one alone may be any number.
    fn typed(&self, kind: Kind, table: &Connectors) -> String {
        let side = self.side(kind, table).name();
        if self.count > 1 { format!("{side}:{}={}", self.id, self.count) } else { format!("{side}:{}", self.id) }
    }

    /// Whether it needs or offers it, and how many: each to be changed; whether it is taken out.
    fn ui(&mut self, ui: &mut Ui, kind: Kind, table: &Connectors) -> bool {
        let side = self.side(kind, table);
        let label = table.label(&self.id);
        let (word, other, turned) = match side {
            Side::Needs => (text!("needs"), Side::Offers, text!("It offers {name}, and needs none", name = label)),
            Side::Offers => (text!("offers"), Side::Needs, text!("It needs {name}, and offers none", name = label)),
        };
        let mut wanted = None;
        ui.horizontal(|ui| {
            let link = link_ui(ui, word);
            link.widget_info(|| WidgetInfo::labeled(Role::Button, true, &turned));
            if link.on_hover_text(&turned).clicked() {
                self.side = Some(other);
            }
            wanted = connector_row_ui(ui, label, self.count);
        });
        self.count = wanted.unwrap_or(self.count);
        wanted == Some(0)
    }
}

impl Asked {
    fn answer(&self, logbook: &Logbook, answers: &Answers, rules: &Rules) -> Result<Shown, String> {
        let figures: Vec<String> =
            self.figures.split(';').map(str::trim).filter(|typed| !typed.is_empty()).map(str::to_owned).collect();
        let table = &rules.connectors;
        let connectors: Vec<String> = self.connectors.iter().map(|plug| plug.typed(self.kind, table)).collect();
        let offered = Offered::read(self.kind.name(), &connectors, &figures, &self.made, table)?;
        let offer = offered.answer(logbook, answers, rules);
        // Sentences name the offered part too.
        let told_of = |because: &Because| Told::of(because, &offer.logbook, rules);
        let told = |uses: &[Use]| -> Vec<Vec<Told>> {
            uses.iter().map(|one| one.because.iter().map(told_of).collect()).collect()
        };
        let (lacking, improves) = (told(&offer.lacking), told(&offer.improves));
        Ok(Shown { offer, lacking, improves })
    }
}

impl OfferDesk {
    /// Draws the page.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let scroll = ScrollArea::vertical().id_salt("offer").auto_shrink(false);
        scroll.show(ui, |ui| self.page_ui(ui, view, outbox));
    }

    fn page_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Offered a part"));
        self.asked_ui(ui, view);
        let key = (view.answers.revision, view.rules.version, view.today, self.asked.clone());
        let (logbook, answers, rules) = (view.logbook.clone(), view.answers.clone(), view.rules.clone());
        let (asked, is_small) = (self.asked.clone(), logbook.parts.len() <= SMALL_PARTS);
        let answer = self.answer.get(key, ui.ctx(), is_small, move || asked.answer(&logbook, &answers, &rules));
        let Some(answer) = answer else { return };
        ui.add_space(3.0 * GRID);
        match &*answer {
            Err(wrong) => {
                ui.label(body(wrong).color(ui.tokens().power_unknown));
            }
            Ok(shown) => {
                first_ui(ui, shown.offer.summary());
                shown.ui(ui, outbox);
            }
        }
    }

    fn asked_ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        let Self { asked, adding, .. } = self;
        ui.horizontal_wrapped(|ui| {
            let kinds: Vec<(Kind, &str)> = Kind::ALL.iter().map(|kind| (*kind, kind.label())).collect();
            choice_ui(ui, text!("What it is"), &mut asked.kind, &kinds, 50.0 * GRID);
            field_ui(ui, text!("Year on it"), &mut asked.made, Some(24.0 * GRID));
            field_ui(ui, text!("Figures, with semicolons between"), &mut asked.figures, Some(80.0 * GRID));
        });
        ui.horizontal_wrapped(|ui| {
            ui.label(remark(ui, text!("Figures of this kind:")));
            for figure in Figure::asked_of(asked.kind) {
                if link_ui(ui, figure.label()).clicked() {
                    if !asked.figures.trim().is_empty() {
                        asked.figures += "; ";
                    }
                    asked.figures += figure.label();
                    asked.figures += "=";
                }
            }
        });
        let kind = asked.kind;
        asked.connectors.retain_mut(|plug| {
            let id = plug.id.clone();
            !ui.push_id(id, |ui| plug.ui(ui, kind, &view.rules.connectors)).inner
        });
        let asking = Asking { label: text!("A connector that it has"), new_word: None, shows_all: false };
        if let Some(Pick::One(id)) = adding.ui(ui, asking, (), || all_connectors(view.rules))
            && !asked.connectors.iter().any(|plug| plug.id == id)
        {
            asked.connectors.push(Plug { id, count: 1, side: None });
        }
    }
}

impl Shown {
    fn ui(&self, ui: &mut Ui, outbox: &mut Outbox) {
        let Self { offer, lacking, improves } = self;
        let lists = [
            (text!("Which machine lacks it"), &offer.lacking, lacking),
            (text!("What it would improve"), &offer.improves, improves),
        ];
        for (title, uses, told) in lists {
            if uses.is_empty() {
                continue;
            }
            section_ui(ui, title);
            for (at, (one, told)) in uses.iter().zip(told).enumerate() {
                ui.push_id((title, at), |ui| use_ui(ui, one, told, offer, outbox));
            }
        }
        if !offer.have.is_empty() {
            section_ui(ui, text!("What you have"));
            for have in offer.have.iter().take(SHOWN) {
                if link_ui(ui, &have.said(&offer.logbook)).clicked() {
                    outbox.go(Page::Part(have.part));
                }
            }
            let folded = offer.have.len().saturating_sub(SHOWN);
            if folded > 0 {
                ui.label(remark(ui, crate::counted!("and {count} more", "and {count} more", folded)));
            }
        }
    }
}

fn use_ui(ui: &mut Ui, one: &Use, told: &[Told], offer: &Offer, outbox: &mut Outbox) {
    ui.horizontal_wrapped(|ui| {
        if link_ui(ui, &one.said(&offer.logbook)).clicked() {
            outbox.go(Page::Machine(one.machine));
        }
        let (mark, colour) = mark_of(one.verdict, &ui.tokens());
        badge_ui(ui, mark, one.verdict.label(), one.verdict.label(), colour);
    });
    ui.indent("why", |ui| {
        for (at, told) in told.iter().enumerate() {
            ui.push_id(at, |ui| told_ui(ui, &told.without_ways(), false, outbox));
        }
    });
}
