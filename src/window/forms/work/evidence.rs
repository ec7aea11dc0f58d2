//! What shows that work was done, beside photographs: material with its amounts, and a reading.

use egui::Ui;

use crate::assess::Task;
use crate::record::{Change, Material, MaterialId, MaterialUse, Moment, PartId, Reading, When, Work};
use crate::store::Store;
use crate::text;
use crate::window::forms::figure;
use crate::window::outbox::View;
use crate::window::theme::GRID;
use crate::window::widgets::{Asking, Pick, Picker, field_ui, link_ui, remark};

/// The evidence that is typed so far.
#[derive(Debug, Default)]
pub struct Evidence {
    uses: Vec<Use>,
    /// Open while another material is looked for.
    picker: Option<Picker<MaterialId>>,
    reading: Option<Measured>,
}

/// A material with the amount that went into the work, as typed.
#[derive(Debug)]
struct Use {
    material: MaterialId,
    amount: String,
}

/// A figure measured after the work, as typed.
#[derive(Debug, Default)]
struct Measured {
    quantity: String,
    value: String,
    unit: String,
}

impl Evidence {
    /// Asks for the materials that the work usually takes, as far as the logbook lists them.
    pub fn new(task: &Task, view: &View<'_>) -> Self {
        let usual: Vec<String> = task.materials().iter().map(|name| name.to_lowercase()).collect();
        let listed = view.logbook.materials.iter().filter(|material| usual.contains(&material.name.to_lowercase()));
        let uses = listed.map(|material| Use { material: material.id, amount: String::new() }).collect();
        Self { uses, ..Self::default() }
    }

    /// Materials of which an amount is typed.
    pub fn materials(&self) -> impl Iterator<Item = MaterialId> + '_ {
        self.uses.iter().filter(|used| !used.amount.trim().is_empty()).map(|used| used.material)
    }

    /// Draws the fields.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        let Self { uses, picker, reading } = self;
        ui.horizontal_wrapped(|ui| {
            for used in uses.iter_mut() {
                if let Some(material) = material(view, used.material) {
                    let label = text!("{material}, {unit}", material = material.name, unit = material.unit);
                    field_ui(ui, &label, &mut used.amount, Some(50.0 * GRID));
                }
            }
        });
        if let Some(asked) = picker {
            let choices = || {
                let free =
                    view.logbook.materials.iter().filter(|known| uses.iter().all(|used| used.material != known.id));
                let said = |material: &Material| {
                    text!(
                        "{name}, {stock} {unit} in stock",
                        name = material.name,
                        stock = material.stock,
                        unit = material.unit
                    )
                };
                free.map(|material| (material.id, said(material))).collect::<Vec<_>>()
            };
            match asked.ui(ui, Asking::one(text!("Another material")), (view.logbook.revision, uses.len()), choices) {
                Some(Pick::One(material)) => {
                    uses.push(Use { material, amount: String::new() });
                    *picker = None;
                }
                Some(_) => *picker = None,
                None => {}
            }
        } else if view.logbook.materials.is_empty() {
            ui.label(remark(ui, text!("The logbook lists no materials yet.")));
        } else if link_ui(ui, text!("Material from the list…")).clicked() {
            *picker = Some(Picker::ready());
        }
        match reading {
            None => {
                if link_ui(ui, text!("A reading that shows it…")).clicked() {
                    *reading = Some(Measured::default());
                }
            }
            Some(Measured { quantity, value, unit }) => {
                ui.horizontal_wrapped(|ui| {
                    field_ui(ui, text!("Measured after the work"), quantity, Some(60.0 * GRID));
                    field_ui(ui, text!("Its figure"), value, Some(24.0 * GRID));
                    field_ui(ui, text!("Its unit"), unit, Some(16.0 * GRID));
                });
            }
        }
    }

    /// Puts what was used, with the stock that it leaves, and what was measured.
    ///
    /// # Errors
    /// Says which figure cannot be read.
    pub fn write(&self, change: &mut Change, work: &Work, view: &View<'_>) -> Result<(), String> {
        for Use { material: id, amount } in &self.uses {
            let Some(material) = material(view, *id) else { continue };
            let Some(amount) = figure(amount)? else { continue };
            if amount <= 0.0 {
                return Err(text!("What was used of {material} is above 0.", material = material.name));
            }
            change.put(MaterialUse { id: Store::new_id(), part: work.part, work: work.id, material: *id, amount });
            // More than the list knew of is used up: the list was wrong, not the work.
            change.put(Material { stock: (material.stock - amount).max(0.0), ..material.clone() });
        }
        if let Some(measured) = &self.reading
            && let Some(reading) = measured.read(work.part, work.changed.on)?
        {
            change.put(Reading { who: work.who.clone(), work: Some(work.id), ..reading });
        }
        Ok(())
    }
}

impl Measured {
    /// The reading; `None` while nothing is typed.
    fn read(&self, part: PartId, on: When) -> Result<Option<Reading>, String> {
        let quantity = self.quantity.trim();
        let value = figure(&self.value)?;
        match value {
            None if quantity.is_empty() => Ok(None),
            None => Err(text!("Write the figure that was read.").to_owned()),
            Some(_) if quantity.is_empty() => Err(text!("Say what was measured: “+5 V rail”, “cell”.").to_owned()),
            Some(value) => Ok(Some(Reading {
                id: Store::new_id(),
                part: Some(part),
                machine: None,
                measured: Moment { on, sequence: 0 },
                quantity: quantity.to_owned(),
                value,
                unit: self.unit.trim().to_owned(),
                condition: text!("after the work").to_owned(),
                who: String::new(),
                supersedes: None,
                note: String::new(),
                proof: None,
                work: None,
            })),
        }
    }
}

fn material<'a>(view: &View<'a>, id: MaterialId) -> Option<&'a Material> {
    view.logbook.materials.iter().find(|material| material.id == id).map(|material| &**material)
}
