//! The Bench: what to do next, tonight, in the weeks ahead, and what to look at again.

mod due;
mod order;
mod outstanding;
mod panel;
mod rows;
mod tonight;
mod weeks;

use egui::Ui;

use self::due::DueList;
use self::outstanding::Outstanding;
use self::panel::Beside;
use self::tonight::TonightView;
use self::weeks::Weeks;
use crate::assess::touched::unstated;
use crate::record::{PartId, Word};
use crate::text;
use crate::window::desks::touched::unstated_text;
use crate::window::forms::WorkForm;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, link_ui, mark_ui, title_ui};

crate::words! {
    /// What the Bench looks at.
    Outlook {
        Outstanding = "outstanding", "Outstanding";
        Tonight = "tonight", "Tonight";
        Weeks = "weeks", "Weeks ahead";
        Due = "due", "Look again";
    }
}

/// What the desk keeps.
pub struct Bench {
    outlook: Outlook,
    outstanding: Outstanding,
    tonight: TonightView,
    weeks: Weeks,
    due: DueList,
    /// How many pieces of own work do not say what they touched, of a revision.
    unstated: (u64, usize),
}

impl Default for Bench {
    fn default() -> Self {
        Self {
            outlook: Outlook::Outstanding,
            outstanding: Outstanding::default(),
            tonight: TonightView::default(),
            weeks: Weeks::default(),
            due: DueList::default(),
            unstated: (0, 0),
        }
    }
}

impl Bench {
    fn beside(&self) -> Option<&Beside> {
        match self.outlook {
            Outlook::Outstanding => Some(&self.outstanding.beside),
            Outlook::Tonight => Some(&self.tonight.beside),
            Outlook::Weeks => Some(&self.weeks.beside),
            Outlook::Due => None,
        }
    }

    /// Whether a form that is open in any view of the Bench keeps a photograph of this content.
    pub fn holds(&mut self, content: &str) -> bool {
        let Self { outstanding, tonight, weeks, .. } = self;
        [outstanding.beside.form(), tonight.beside.form(), weeks.beside.form()]
            .into_iter()
            .flatten()
            .any(|form| form.holds(content))
    }

    /// The part of the piece of work on show.
    pub fn part_in_view(&self) -> Option<PartId> {
        self.beside()?.part()
    }

    /// The form that is open for the piece of work on show.
    pub fn form(&mut self) -> Option<&mut WorkForm> {
        match self.outlook {
            Outlook::Outstanding => self.outstanding.beside.form(),
            Outlook::Tonight => self.tonight.beside.form(),
            Outlook::Weeks => self.weeks.beside.form(),
            Outlook::Due => None,
        }
    }

    /// The way to the list on which it is said what own work touched, while some does not say so.
    fn unstated_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        if self.unstated.0 != view.logbook.revision {
            self.unstated = (view.logbook.revision, unstated(view.logbook).len());
        }
        let (_, count) = self.unstated;
        if count == 0 {
            return;
        }
        ui.horizontal_wrapped(|ui| {
            mark_ui(ui, Mark::PowerUnknown, ui.tokens().power_unknown);
            ui.label(body(unstated_text(count)));
            if link_ui(ui, text!("State it…")).clicked() {
                outbox.go(Page::Touched);
            }
        });
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        ui.horizontal_wrapped(|ui| {
            title_ui(ui, text!("Bench"));
            ui.add_space(4.0 * GRID);
            for outlook in Outlook::ALL {
                ui.selectable_value(&mut self.outlook, *outlook, outlook.label());
            }
        });
        self.unstated_ui(ui, view, outbox);
        match self.outlook {
            Outlook::Outstanding => self.outstanding.ui(ui, view, outbox),
            Outlook::Tonight => self.tonight.ui(ui, view, outbox),
            Outlook::Weeks => self.weeks.ui(ui, view, outbox),
            Outlook::Due => self.due.ui(ui, view, outbox),
        }
    }
}
