//! The part that the sheet is about, with what follows for it; and small things that all sections draw.

use std::sync::Arc;

use egui::{Ui, WidgetInfo};

use crate::assess::PartAnswers;
use crate::record::{Change, Entry, Moment, Part, PartFile, When};
use crate::text;
pub use crate::window::forms::figure;
use crate::window::outbox::View;
use crate::window::page::Page;
use crate::window::theme::Themed;
use crate::window::widgets::{link_ui, small};

/// The part with all that hangs on it.
#[derive(Clone, Copy)]
pub struct About<'a> {
    pub view: &'a View<'a>,
    pub file: &'a Arc<PartFile>,
    pub answers: &'a PartAnswers,
}

impl About<'_> {
    /// The part itself.
    pub fn part(&self) -> &Part {
        &self.file.part
    }

    pub fn tag(&self) -> &str {
        &self.file.part.tag
    }

    pub fn page(&self) -> Page {
        Page::Part(self.file.part.id)
    }

    /// Today's next event.
    pub fn now(&self) -> Moment {
        Moment::on(self.view.today)
    }

    /// Who usually writes.
    pub fn keeper(&self) -> String {
        self.view.logbook.workshop.keeper.clone()
    }
}

/// A change that writes one record.
pub fn put(name: String, entry: impl Into<Entry>) -> Change {
    let mut change = Change::new(name);
    change.put(entry);
    change
}

/// A word to press that is told apart from its like by its name.
pub fn act_ui(ui: &mut Ui, word: &str, name: &str) -> bool {
    let response = link_ui(ui, word);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, name));
    response.clicked()
}

/// What is wrong, beside its field.
pub fn wrong_ui(ui: &mut Ui, wrong: &str) {
    ui.label(small(wrong).color(ui.tokens().power_unknown));
}

/// A date for a person: the day, month or year, or that nobody knows.
pub fn day_text(on: When) -> String {
    if on.is_known() { on.to_string() } else { text!("no date").to_owned() }
}
