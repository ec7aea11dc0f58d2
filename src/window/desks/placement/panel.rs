//! Beside the drawing: why a part is where it is and what it would cost elsewhere.

use egui::{ScrollArea, Ui};

use super::about::{Elsewhere, Said};
use super::found::{Found, Slip, Standing, seat_text};
use crate::record::MachineId;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{body, link_ui, mark_button, press_ui, remark, section_ui, strong};

/// What a person did with the chosen part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PanelAct {
    PutAway,
    PutIn(MachineId),
    LeaveOut,
}

/// Draws it.
pub fn panel_ui(ui: &mut Ui, found: &Found, slip: &Slip, about: &[Said], outbox: &mut Outbox) -> Option<PanelAct> {
    let mut act = None;
    ui.horizontal_wrapped(|ui| {
        if mark_button(ui, Mark::Away, text!("Put the part away")).clicked() {
            act = Some(PanelAct::PutAway);
        }
        if link_ui(ui, &format!("{}  {}", slip.tag, slip.title)).clicked() {
            outbox.go(Page::Part(slip.part));
        }
    });
    ScrollArea::vertical().id_salt("part").auto_shrink(false).show(ui, |ui| {
        ui.label(strong(stands(found, slip)));
        ui.label(remark(ui, slip.state));
        ui.horizontal_wrapped(|ui| {
            if !matches!(slip.standing, Standing::Pinned) {
                let word = text!("Leave {tag} out", tag = slip.tag);
                if press_ui(ui, &word, text!("Asks again without it"), None).clicked() {
                    act = Some(PanelAct::LeaveOut);
                }
            }
        });
        why_ui(ui, slip);
        for said in about {
            match said {
                Said::NextBest(text) | Said::LeftOver(text) => {
                    ui.add_space(2.0 * GRID);
                    ui.label(body(text));
                }
                Said::Elsewhere(_) | Said::All => {}
            }
        }
        let all: Vec<&Elsewhere> = about
            .iter()
            .filter_map(|said| if let Said::Elsewhere(there) = said { Some(there) } else { None })
            .collect();
        if !all.is_empty() {
            section_ui(ui, text!("What if it went there instead"));
        }
        for there in all {
            ui.push_id(there.machine, |ui| {
                ui.label(body(there.sentence()));
                if there.cost.is_some() {
                    let word = text!("Put {tag} in {machine}", tag = slip.tag, machine = there.name);
                    let tooltip = text!("Asks again with it pinned there");
                    if press_ui(ui, &word, tooltip, None).clicked() {
                        act = Some(PanelAct::PutIn(there.machine));
                    }
                }
                ui.add_space(2.0 * GRID);
            });
        }
        if !about.contains(&Said::All) {
            ui.label(remark(ui, text!("Working out what it costs elsewhere…")));
        }
    });
    act
}

fn stands(found: &Found, slip: &Slip) -> String {
    let seated = found.proposal.seat_of(slip.part);
    let Some(seated) = seated else { return text!("Left over").to_owned() };
    let logbook = &found.logbook;
    text!(
        "{machine}: {role} ({standing})",
        machine = crate::assess::reason::machine_name(logbook, seated.machine),
        role = seat_text(logbook, seated.machine, seated.role, slip.kind),
        standing = slip.standing.word()
    )
}

fn why_ui(ui: &mut Ui, slip: &Slip) {
    if slip.why.is_empty() {
        return;
    }
    section_ui(ui, text!("Why"));
    for (said, points) in &slip.why {
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(signed(*points)));
            ui.label(body(said));
        });
    }
}

/// Points with their sign: "+30", "−12".
fn signed(points: i64) -> String {
    if points < 0 { format!("−{}", -points) } else { format!("+{points}") }
}
