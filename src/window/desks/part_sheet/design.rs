//! Facts that every example of the part's design shares.

use egui::Ui;

use super::about::{About, act_ui, put};
use super::design_connectors::DesignConnectors;
use super::design_figures::figures_ui;
use crate::counted;
use crate::record::{Change, Design, NoDate, Part, When};
use crate::store::Store;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::widgets::{Edit, Fact, remark, row_ui};

/// Whether the design's facts are on show, and what is being added to it.
#[derive(Debug, Default)]
pub struct DesignFacts {
    is_open: bool,
    connectors: DesignConnectors,
}

/// A design of this name for the part: the first word is taken for the maker, the rest for the model.
pub fn new(about: &About<'_>, name: &str) -> Change {
    let (maker, model) = name.split_once(' ').unwrap_or(("", name));
    let design = Design {
        id: Store::new_id(),
        kind: about.part().kind,
        maker: maker.to_owned(),
        model: model.trim().to_owned(),
        revision: String::new(),
        introduced: When::Unknown,
        discontinued: When::Unknown,
        note: String::new(),
    };
    let part = Part { design: Some(design.id), ..about.part().clone() };
    let mut change = Change::new(text!("New design {name} for {tag}", name = name, tag = about.tag()));
    change.put(design).put(part);
    change
}

impl DesignFacts {
    /// Puts the facts on show, now or once the part has a design.
    pub fn open(&mut self) {
        self.is_open = true;
    }

    /// Draws the facts, folded to one line until they are asked for.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let Some(file) = about.view.logbook.design_of(about.file) else { return };
        let design = &file.design;
        if !self.is_open {
            row_ui(ui, "", |ui| {
                ui.horizontal_wrapped(|ui| {
                    let words = match (design.introduced.is_known(), design.discontinued.is_known()) {
                        (true, true) => {
                            text!("made {from} to {to}", from = design.introduced, to = design.discontinued)
                        }
                        (true, false) => text!("made from {from}", from = design.introduced),
                        (false, true) => text!("made until {to}", to = design.discontinued),
                        (false, false) => text!("its years are not known").to_owned(),
                    };
                    ui.label(remark(ui, words));
                    self.is_open |= act_ui(ui, text!("Change the design…"), text!("Change the design…"));
                });
            });
            return;
        }
        edit.gather_untold();
        let examples = about.view.logbook.parts.iter().filter(|part| part.part.design == Some(design.id)).count();
        let shared = counted!("Shared by {count} part", "Shared by {count} parts", examples);
        ui.label(remark(ui, shared));
        let mut text_fact = |ui: &mut Ui, key, label, value: &str, set: fn(&mut Design, String)| {
            if let Some(typed) = edit.fact_ui(ui, Fact::line(key, label), value) {
                let mut design = design.clone();
                set(&mut design, typed);
                outbox.change(put(text!("Change “{what}” of {design}", what = label, design = design.title()), design));
            }
        };
        text_fact(ui, "design maker", text!("Maker"), &design.maker, |design, typed| design.maker = typed);
        text_fact(ui, "design model", text!("Model"), &design.model, |design, typed| design.model = typed);
        text_fact(ui, "design revision", text!("Revision"), &design.revision, |design, typed| design.revision = typed);
        text_fact(ui, "design note", text!("Note on the design"), &design.note, |design, typed| design.note = typed);
        let mut date_fact = |ui: &mut Ui, key, label, value: When, set: fn(&mut Design, When)| {
            let Some(typed) = edit.fact_ui(ui, Fact::line(key, label), &value.to_string()) else { return };
            match typed.parse::<When>() {
                Ok(on) => {
                    let mut design = design.clone();
                    set(&mut design, on);
                    let title = design.title();
                    outbox.change(put(text!("Change “{what}” of {design}", what = label, design = title), design));
                }
                Err(error) => edit.refuse(key, &typed, NoDate::to_string(&error)),
            }
        };
        let introduced = text!("First sold");
        date_fact(ui, "design introduced", introduced, design.introduced, |design, on| design.introduced = on);
        let discontinued = text!("Made until");
        date_fact(ui, "design discontinued", discontinued, design.discontinued, |design, on| design.discontinued = on);
        self.connectors.ui(ui, about, file, outbox);
        figures_ui(ui, file, edit, outbox);
        edit.untold_ui(ui, text!("Not told yet of the design:"));
        if act_ui(ui, text!("Fold the design"), text!("Fold the design")) {
            self.is_open = false;
        }
    }
}
