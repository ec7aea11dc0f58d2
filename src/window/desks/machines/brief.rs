//! A machine's brief as a form: for a new machine, or to change one.

use egui::Ui;

use crate::record::{Machine, MachineId, NAME_MOST, NoDate, Standing, When, Word};
use crate::store::Store;
use crate::text;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{choice_ui, field_ui, notes_ui, press_ui, short_field_ui, small};

/// What is typed so far.
#[derive(Clone, Debug, PartialEq)]
pub struct Brief {
    machine: Option<MachineId>,
    name: String,
    purpose: String,
    from: String,
    to: String,
    standing: Standing,
    priority: String,
    note: String,
}

/// What a person did with the form.
#[derive(Debug)]
pub enum BriefAct {
    Keep(Machine),
    PutAway,
}

impl Brief {
    /// An empty form for a new machine.
    pub fn new() -> Self {
        Self {
            machine: None,
            name: String::new(),
            purpose: String::new(),
            from: String::new(),
            to: String::new(),
            standing: Standing::Typical,
            priority: String::new(),
            note: String::new(),
        }
    }

    /// The form filled with a machine's brief.
    pub fn of(machine: &Machine) -> Self {
        Self {
            machine: Some(machine.id),
            name: machine.name.clone(),
            purpose: machine.purpose.clone(),
            from: machine.window_from.to_string(),
            to: machine.window_to.to_string(),
            standing: machine.standing,
            priority: if machine.priority == 0 { String::new() } else { machine.priority.to_string() },
            note: machine.note.clone(),
        }
    }

    /// The brief as typed, or what is wrong with it. `taken` tells whether another machine has the name.
    fn read(&self, taken: impl Fn(&str) -> bool) -> Result<Machine, String> {
        let name = self.name.trim();
        if name.is_empty() {
            return Err(text!("Give the machine a name.").to_owned());
        }
        if taken(name) {
            return Err(text!("There is a machine called {name} already.", name = name));
        }
        let date = |field: &str, text: &str| -> Result<When, String> {
            text.parse().map_err(|error: NoDate| format!("{field}: {error}"))
        };
        let window_from = date(text!("Parts from"), &self.from)?;
        let window_to = date(text!("Parts to"), &self.to)?;
        if let (Some(from), Some(to)) = (window_from.span(), window_to.span())
            && from.first > to.last
        {
            return Err(text!("The window ends before it begins: {from} to {to}.", from = window_from, to = window_to));
        }
        let priority = match self.priority.trim() {
            "" => 0,
            typed => typed.parse().map_err(|_| {
                text!("“{typed}” is no rank: write 1 for the most urgent, 2 for the next.", typed = typed)
            })?,
        };
        Ok(Machine {
            id: self.machine.unwrap_or_else(Store::new_id),
            name: name.to_owned(),
            purpose: self.purpose.trim().to_owned(),
            window_from,
            window_to,
            standing: self.standing,
            priority,
            note: self.note.trim().to_owned(),
        })
    }

    /// Draws the form. `taken` tells whether another machine has a name.
    pub fn ui(&mut self, ui: &mut Ui, taken: impl Fn(&str) -> bool) -> Option<BriefAct> {
        let mut act = None;
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        ui.horizontal_wrapped(|ui| {
            short_field_ui(ui, text!("Name"), &mut self.name, Some(70.0 * GRID), NAME_MOST);
            field_ui(ui, text!("Rank, 1 is the most urgent"), &mut self.priority, Some(40.0 * GRID));
        });
        field_ui(ui, text!("What it is for"), &mut self.purpose, None);
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Parts from"), &mut self.from, Some(30.0 * GRID));
            field_ui(ui, text!("Parts to"), &mut self.to, Some(30.0 * GRID));
            let choices = Standing::ALL.iter().map(|word| (*word, word.label())).collect::<Vec<_>>();
            choice_ui(ui, text!("What it should be"), &mut self.standing, &choices, 60.0 * GRID);
        });
        notes_ui(ui, text!("Remarks"), &mut self.note, 2);
        let read = self.read(taken);
        ui.add_space(GRID);
        ui.horizontal_wrapped(|ui| {
            let word = if self.machine.is_some() { text!("Keep the brief") } else { text!("Start the machine") };
            let keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, word, "", None)).inner;
            if let Ok(machine) = &read
                && keep.clicked()
            {
                act = Some(BriefAct::Keep(machine.clone()));
            }
            if press_ui(ui, text!("Put the form away"), "", None).clicked() {
                act = Some(BriefAct::PutAway);
            }
            // An empty form is not wrong yet.
            if let Err(wrong) = &read
                && *self != Self::new()
            {
                ui.label(small(wrong).color(ui.tokens().power_unknown));
            }
        });
        act
    }
}
