//! Connectors that a part's design offers and needs, each step up or down one change.

use egui::Ui;

use super::about::{About, act_ui, put};
use crate::record::{Change, DesignConnector, DesignFile, Side};
use crate::store::Store;
use crate::text;
use crate::window::forms::{all_connectors, connector_row_ui};
use crate::window::outbox::Outbox;
use crate::window::widgets::{Asking, Pick, Picker, body, remark, row_ui};

/// The side that a connector is being added to.
#[derive(Debug, Default)]
pub struct DesignConnectors {
    adding: Option<(Side, Picker<String>)>,
}

impl DesignConnectors {
    /// Draws both sides.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &DesignFile, outbox: &mut Outbox) {
        for (side, label) in [(Side::Offers, text!("Offers")), (Side::Needs, text!("Needs"))] {
            row_ui(ui, label, |ui| ui.push_id(side, |ui| self.side_ui(ui, about, file, side, outbox)));
        }
    }

    fn side_ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &DesignFile, side: Side, outbox: &mut Outbox) {
        let rows = file.connectors.iter().filter(|row| row.side == side);
        let title = file.design.title();
        for row in rows {
            let name = about.view.rules.connectors.label(&row.connector);
            let wanted = connector_row_ui(ui, name, row.count);
            if !row.note.is_empty() {
                ui.label(remark(ui, &row.note));
            }
            match wanted {
                Some(0) => {
                    let mut change =
                        Change::new(text!("Take {connector} out of {design}", connector = name, design = title));
                    change.remove(row.id);
                    outbox.change(change);
                }
                Some(count) => outbox.change(counted(name, &title, DesignConnector { count, ..row.clone() })),
                None => {}
            }
        }
        let Some((_, picker)) = self.adding.as_mut().filter(|(adding, _)| *adding == side) else {
            if file.connectors.iter().all(|row| row.side != side) {
                ui.label(body(text!("Nothing is told.")));
            }
            let (word, name) = match side {
                Side::Offers => (text!("Add one…"), text!("Add a connector that it offers…")),
                Side::Needs => (text!("Add one…"), text!("Add a connector that it needs…")),
            };
            if act_ui(ui, word, name) {
                self.adding = Some((side, Picker::ready()));
            }
            return;
        };
        let label = match side {
            Side::Offers => text!("A connector that it offers"),
            Side::Needs => text!("A connector that it needs"),
        };
        match picker.ui(ui, Asking::one(label), (), || all_connectors(about.view.rules)) {
            Some(Pick::One(connector)) => {
                let name = about.view.rules.connectors.label(&connector).to_owned();
                let known = file.connectors.iter().find(|row| row.side == side && row.connector == connector);
                let row = match known {
                    Some(row) => DesignConnector { count: row.count + 1, ..row.clone() },
                    None => DesignConnector {
                        id: Store::new_id(),
                        design: file.design.id,
                        side,
                        connector,
                        count: 1,
                        note: String::new(),
                    },
                };
                outbox.change(counted(&name, &title, row));
                // The next one of a list is added at once.
                self.adding = Some((side, Picker::ready()));
            }
            Some(_) => self.adding = None,
            None => {
                if act_ui(ui, text!("That is all"), text!("That is all")) {
                    self.adding = None;
                }
            }
        }
    }
}

/// A connector of a design with its count, as one change.
fn counted(name: &str, design: &str, row: DesignConnector) -> Change {
    let name = match row.side {
        Side::Offers => {
            text!("{design} offers {count} × {connector}", design = design, count = row.count, connector = name)
        }
        Side::Needs => {
            text!("{design} needs {count} × {connector}", design = design, count = row.count, connector = name)
        }
    };
    put(name, row)
}
