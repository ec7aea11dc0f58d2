//! Supplies: what is in stock, kits of capacitors, what to buy, and what it all cost.

mod buying;
mod costs;
mod files;
mod gather;
mod kit;
mod kits;
mod recaps;
mod stock;

use std::sync::Arc;

use egui::Ui;

use crate::assess::supplies::{self, Reserved, ToBuy};
use crate::record::{Change, KitId};
use crate::text;
use crate::window::background::Background;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::GRID;
use crate::window::widgets::{body, title_ui};

/// What the desk shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Leaf {
    #[default]
    ToBuy,
    Stock,
    Kits,
    Costs,
}

/// Everything that follows from one revision.
struct Books {
    reserved: Reserved,
    to_buy: Vec<ToBuy>,
    costs: Vec<costs::Row>,
}

/// What the desk keeps.
#[derive(Default)]
pub struct Supplies {
    leaf: Leaf,
    books: Background<(u64, u64), Books>,
    stock: stock::Stock,
    kits: kits::Kits,
    buying: buying::Buying,
    costs: costs::CostsLeaf,
}

/// Up to this many parts, what follows is worked out between two frames.
const AT_ONCE: usize = 1_000;
/// From this width on, points, what was chosen stands beside the list.
const BESIDE: f32 = 200.0 * GRID;
/// How wide it then is, points.
const PANEL: f32 = 110.0 * GRID;

impl Supplies {
    /// Shows a kit.
    pub fn show(&mut self, kit: KitId) {
        self.leaf = Leaf::Kits;
        self.kits.show(kit);
    }

    /// Takes a table of materials that was read from a file: it stands there to be looked at before it is taken in.
    pub fn take_table(&mut self, table: String) {
        self.leaf = Leaf::Stock;
        self.stock.take_table(table);
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Supplies"));
        let key = (view.answers.revision, view.rules.version);
        let (logbook, answers, rules) = (Arc::clone(view.logbook), Arc::clone(view.answers), Arc::clone(view.rules));
        let is_small = view.logbook.parts.len() <= AT_ONCE;
        let books = self.books.get(key, ui.ctx(), is_small, move || Books {
            reserved: supplies::reserved(&logbook),
            to_buy: supplies::to_buy(&logbook, &answers, &rules),
            costs: costs::rows(&logbook, &answers),
        });
        ui.horizontal_wrapped(|ui| {
            for (leaf, label) in [
                (Leaf::ToBuy, text!("To buy")),
                (Leaf::Stock, text!("In stock")),
                (Leaf::Kits, text!("Kits")),
                (Leaf::Costs, text!("What it cost")),
            ] {
                ui.selectable_value(&mut self.leaf, leaf, label);
            }
        });
        ui.add_space(2.0 * GRID);
        let Some(books) = books else {
            ui.label(body(text!("Adding up…")));
            return;
        };
        match self.leaf {
            Leaf::ToBuy => self.buying.ui(ui, &books, view, outbox),
            Leaf::Stock => self.stock.ui(ui, &books, view, outbox),
            Leaf::Kits => self.kits.ui(ui, view, outbox),
            Leaf::Costs => self.costs.ui(ui, &books, view, outbox),
        }
    }
}

/// A change that writes one record.
fn put(name: String, entry: impl Into<crate::record::Entry>) -> Change {
    let mut change = Change::new(name);
    change.put(entry);
    change
}

/// An amount, as short as it can be, with its unit.
fn amount_text(amount: f64, unit: &str) -> String {
    // Adding and taking away leaves its traces far behind the point.
    let rounded = (amount * 1000.0).round() / 1000.0;
    format!("{rounded} {unit}").trim_end().to_owned()
}
