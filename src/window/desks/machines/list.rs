//! All machines, one below the other: where each stands, whether power may be applied, and its next step.

use egui::{Align, Layout, ScrollArea, Ui};

use super::gates::{gate_marks, power_word, step_ui};
use crate::assess::outstanding::hours_text;
use crate::assess::{Gate, MachineAnswers, Readiness, Totals};
use crate::record::{MachineFile, When, Word};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{body, gate_strip_ui, power_badge_ui, remark};

/// Machines in the order of their rank (unranked last), then by name.
pub fn in_order<'a>(view: &View<'a>) -> Vec<&'a MachineAnswers> {
    let mut machines: Vec<&MachineAnswers> = view.answers.machines.iter().map(|answers| &**answers).collect();
    machines.sort_by_key(|answers| {
        let machine = &answers.file.machine;
        (machine.priority == 0, machine.priority, machine.name.to_lowercase())
    });
    machines
}

/// How the whole exhibit stands, in one sentence.
pub fn summary(machines: &[&MachineAnswers]) -> String {
    let ready = machines.iter().filter(|answers| answers.readiness.at == Gate::Ready).count();
    let may = machines.iter().filter(|answers| answers.readiness.power.may_be_applied()).count();
    text!("{ready} of {all} ready; power may be applied to {may}", ready = ready, all = machines.len(), may = may)
}

/// One machine below the other.
pub fn list_ui(ui: &mut Ui, machines: &[&MachineAnswers], view: &View<'_>, outbox: &mut Outbox) {
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        for answers in machines {
            ui.push_id(answers.machine, |ui| machine_ui(ui, answers, view, outbox));
            ui.add_space(6.0 * GRID);
        }
    });
}

/// "1994 to 1996", "from 1994", or nothing.
pub fn window_text(file: &MachineFile) -> String {
    match (file.machine.window_from, file.machine.window_to) {
        (When::Unknown, When::Unknown) => String::new(),
        (from, When::Unknown) => text!("from {from}", from = from),
        (When::Unknown, to) => text!("to {to}", to = to),
        (from, to) => text!("{from} to {to}", from = from, to = to),
    }
}

fn machine_ui(ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
    let MachineAnswers { file, readiness, .. } = answers;
    ui.horizontal(|ui| {
        let name = egui::RichText::new(&file.machine.name).font(TextRole::Title.font()).color(ui.tokens().press);
        let response = ui.add(egui::Button::new(name).frame(false));
        if response.on_hover_text(text!("Opens the machine’s sheet")).clicked() {
            outbox.go(Page::Machine(file.machine.id));
        }
        ui.label(remark(ui, window_text(file)));
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            power_badge_ui(ui, power_word(readiness.power.verdict));
        });
    });
    ui.add(egui::Label::new(remark(ui, format!("{} {}", file.machine.purpose, standing_text(file)))).truncate());
    ui.add_space(GRID);
    gate_strip_ui(ui, &gate_marks(readiness));
    ui.horizontal_wrapped(|ui| {
        let Some(next) = &readiness.next else {
            ui.label(body(text!("Nothing left to do.")));
            return;
        };
        ui.label(remark(ui, text!("Next")));
        step_ui(ui, next, view, outbox, body);
        ui.label(remark(ui, left_text(readiness)));
    });
}

fn standing_text(file: &MachineFile) -> String {
    format!("({})", file.machine.standing.label().to_lowercase())
}

/// Hours still needed: at the bench, of waiting, and of proofs; empty when nothing is left.
pub fn left_text(readiness: &Readiness) -> String {
    let Totals { minutes, wait_hours, .. } = readiness.left;
    let mut words = Vec::new();
    if minutes > 0 {
        words.push(text!("{time} at the bench", time = hours_text(minutes)));
    }
    if wait_hours > 0 {
        words.push(text!("{hours} h of drying and running", hours = wait_hours));
    }
    if readiness.proof_minutes > 0 {
        words.push(text!("{time} of proofs", time = hours_text(readiness.proof_minutes)));
    }
    words.join(", ")
}
