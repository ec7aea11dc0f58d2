//! A lot's own facts, changed where its parts show.

use egui::Ui;

use super::{money_text, past_date, read_money};
use crate::counted;
use crate::record::{Change, Lot, LotId};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::widgets::{Edit, Fact, remark};

/// Draws a lot's facts; each is changed where it stands, for all parts that came with it.
#[derive(Debug)]
pub struct LotFacts(pub LotId);

impl LotFacts {
    /// Draws the facts.
    pub fn ui(&self, ui: &mut Ui, edit: &mut Edit, view: &View<'_>, outbox: &mut Outbox) {
        let Some(file) = view.logbook.lot(self.0) else { return };
        let lot = &file.lot;
        let parts = view.logbook.parts.iter().filter(|part| part.part.lot == Some(lot.id)).count();
        ui.label(remark(ui, counted!("{count} part came with it", "{count} parts came with it", parts)));
        edit.gather_untold();
        let mut keep = |what: &str, lot: Lot| {
            let mut change = Change::new(text!("Change “{what}” of the lot {lot}", what = what, lot = lot.name));
            change.put(lot);
            outbox.change(change);
        };
        let name = Fact::line("lot name", text!("What the lot is called"));
        match edit.fact_ui(ui, name, &lot.name) {
            Some(typed) if typed.is_empty() => edit.refuse(name.key, &typed, text!("Give the lot a name.")),
            Some(typed) => keep(name.label, Lot { name: typed, ..lot.clone() }),
            None => {}
        }
        let source = Fact::line("lot source", text!("From whom or where"));
        if let Some(typed) = edit.fact_ui(ui, source, &lot.source) {
            keep(source.label, Lot { source: typed, ..lot.clone() });
        }
        let acquired = Fact::line("lot acquired", text!("The lot came on"));
        if let Some(typed) = edit.fact_ui(ui, acquired, &lot.acquired.to_string()) {
            match past_date(&typed, view) {
                Ok(on) => keep(acquired.label, Lot { acquired: on, ..lot.clone() }),
                Err(wrong) => edit.refuse(acquired.key, &typed, wrong),
            }
        }
        let currency = &view.logbook.workshop.currency;
        let price = Fact::line("lot price", text!("Price of the lot"));
        let told = lot.price_cents.map(|cents| money_text(cents, currency)).unwrap_or_default();
        if let Some(typed) = edit.fact_ui(ui, price, &told) {
            match read_money(&typed, currency) {
                Ok(price_cents) => keep(price.label, Lot { price_cents, ..lot.clone() }),
                Err(wrong) => edit.refuse(price.key, &typed, wrong),
            }
        }
        let note = Fact { rows: 2, ..Fact::line("lot note", text!("Note on the lot")) };
        if let Some(typed) = edit.fact_ui(ui, note, &lot.note) {
            keep(note.label, Lot { note: typed, ..lot.clone() });
        }
        edit.untold_ui(ui, text!("Not told yet of the lot:"));
    }
}
