//! The logbook's title page: whose it is, who usually writes, in which money.

use egui::Ui;

use crate::record::{Change, Workshop};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::widgets::{Edit, Fact};

/// Draws the title page; each fact is changed where it stands.
pub fn workshop_ui(ui: &mut Ui, edit: &mut Edit, view: &View<'_>, outbox: &mut Outbox) {
    let workshop = &view.logbook.workshop;
    let mut keep = |what: &str, workshop: Workshop| {
        let mut change = Change::new(text!("Change “{what}” on the title page", what = what));
        change.put(workshop);
        outbox.change(change);
    };
    let name = Fact::line("workshop name", text!("Workshop"));
    match edit.fact_ui(ui, name, &workshop.name) {
        Some(typed) if typed.is_empty() => edit.refuse(name.key, &typed, text!("Give the workshop a name.")),
        Some(typed) => keep(name.label, Workshop { name: typed, ..Workshop::clone(workshop) }),
        None => {}
    }
    let keeper = Fact::line("workshop keeper", text!("Who usually writes"));
    if let Some(typed) = edit.fact_ui(ui, keeper, &workshop.keeper) {
        keep(keeper.label, Workshop { keeper: typed, ..Workshop::clone(workshop) });
    }
    let currency = Fact::line("workshop currency", text!("Money"));
    if let Some(typed) = edit.fact_ui(ui, currency, &workshop.currency) {
        let code = typed.to_uppercase();
        // ISO 4217: three letters.
        if code.len() == 3 && code.bytes().all(|byte| byte.is_ascii_uppercase()) {
            keep(currency.label, Workshop { currency: code, ..Workshop::clone(workshop) });
        } else {
            edit.refuse(currency.key, &typed, text!("Write the three letters of a currency: EUR, USD, CHF."));
        }
    }
    let note = Fact { rows: 2, ..Fact::line("workshop note", text!("Note on the workshop")) };
    if let Some(typed) = edit.fact_ui(ui, note, &workshop.note) {
        keep(note.label, Workshop { note: typed, ..Workshop::clone(workshop) });
    }
}
