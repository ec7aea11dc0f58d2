//! One machine of the calendar: when it is ready, how urgent it is, and its longest path.

use egui::{ScrollArea, Ui};

use super::lines::{Plan, dates_text};
use crate::assess::schedule::MachinePlan;
use crate::record::{Machine, MachineFile};
use crate::text;
use crate::window::desks::machines::acts;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{Edit, Fact, body, link_ui, mark_button, press_if_ui, remark, section_ui};

/// What is half typed.
#[derive(Default)]
pub struct MachinePanel {
    edit: Edit,
}

impl MachinePanel {
    /// Draws it; `true` when it was put away.
    pub fn ui(&mut self, ui: &mut Ui, file: &MachineFile, own: &MachinePlan, plan: &Plan, outbox: &mut Outbox) -> bool {
        let mut is_away = false;
        ui.horizontal(|ui| {
            is_away = mark_button(ui, Mark::Away, text!("Put the machine away")).clicked();
            if link_ui(ui, &file.machine.name).clicked() {
                outbox.go(Page::Machine(file.machine.id));
            }
        });
        ScrollArea::vertical().id_salt("machine").auto_shrink(false).show(ui, |ui| {
            ui.label(body(own.sentence(&file.machine.name)));
            if own.beside > 0 {
                ui.label(remark(
                    ui,
                    text!("{count} more reasons hold it that no schedule can date.", count = own.beside),
                ));
            }
            self.rank_ui(ui, &file.machine, plan, outbox);
            if !own.critical.is_empty() {
                section_ui(ui, text!("Its longest path"));
                if let Some(day) = own.alone {
                    ui.label(remark(ui, text!("Were it alone and had all hands: {day} at the earliest.", day = day)));
                }
            }
            for planned in own.critical.iter().map(|at| &plan.made.planned[*at]) {
                ui.add_space(GRID);
                ui.label(body(planned.item.title(&plan.answers)));
                ui.label(remark(ui, format!("{} · {}", dates_text(planned), plan.on(planned))));
            }
        });
        is_away
    }

    /// The machine's rank, changed where it stands.
    fn rank_ui(&mut self, ui: &mut Ui, machine: &Machine, plan: &Plan, outbox: &mut Outbox) {
        let mut rank = |priority: u32| outbox.change(acts::change_brief(Machine { priority, ..machine.clone() }));
        let fact = Fact::line("rank", text!("Rank, 1 is the most urgent"));
        let said = if machine.priority == 0 { String::new() } else { machine.priority.to_string() };
        if let Some(typed) = self.edit.fact_ui(ui, fact, &said) {
            let told = if typed.is_empty() { Ok(0) } else { typed.parse() };
            if let Ok(priority) = told {
                rank(priority);
            } else {
                let wrong = text!("“{typed}” is no rank: write 1 for the most urgent, 2 for the next.", typed = typed);
                self.edit.refuse(fact.key, &typed, wrong);
            }
        }
        ui.horizontal_wrapped(|ui| {
            let is_ranked = machine.priority > 0;
            if press_if_ui(ui, machine.priority != 1, text!("More urgent"), "", None).clicked() {
                // One that was not ranked goes behind those that are.
                let behind = || plan.logbook.machines.iter().map(|file| file.machine.priority).max().unwrap_or(0) + 1;
                rank(if is_ranked { machine.priority - 1 } else { behind() });
            }
            if press_if_ui(ui, is_ranked, text!("Less urgent"), "", None).clicked() {
                rank(machine.priority + 1);
            }
        });
    }
}
