//! Beside the drawing: why a part is where it is and what it would cost elsewhere.

use egui::{ScrollArea, Ui};

use super::about::Said;
use super::found::{Found, Slip, Standing, seat_text};
use super::priced::Priced;
use crate::record::{Change, MachineId, PartId, Placement};
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
    /// A rival is to have its place.
    Rival(PartId, MachineId),
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
            if slip.standing == Standing::Pinned {
                let word = text!("Pin {tag} no longer", tag = slip.tag);
                if press_ui(ui, &word, text!("It may then go where it does best"), None).clicked() {
                    outbox.change(unpinned(found, slip));
                }
            } else {
                let word = text!("Leave {tag} out", tag = slip.tag);
                if press_ui(ui, &word, text!("Asks again without it"), None).clicked() {
                    act = Some(PanelAct::LeaveOut);
                }
            }
        });
        why_ui(ui, slip);
        for said in about {
            if let Said::NextBest(text) | Said::LeftOver(text) = said {
                ui.add_space(2.0 * GRID);
                ui.label(body(text));
            }
        }
        let rivals = about.iter().filter_map(|said| if let Said::Rival(rival) = said { Some(rival) } else { None });
        let rivals = priced_ui(ui, found, text!("What if a spare took its place"), rivals);
        act = act.or(rivals.map(|rival| PanelAct::Rival(rival.part, rival.machine)));
        let places = about.iter().filter_map(|said| if let Said::Elsewhere(there) = said { Some(there) } else { None });
        let place = priced_ui(ui, found, text!("What if it went there instead"), places);
        act = act.or(place.map(|there| PanelAct::PutIn(there.machine)));
        if !about.contains(&Said::All) {
            ui.label(remark(ui, text!("Working out what it costs elsewhere…")));
        }
    });
    act
}

/// Other arrangements with what they cost; the one that is to be tried.
fn priced_ui<'a>(ui: &mut Ui, found: &Found, title: &str, all: impl Iterator<Item = &'a Priced>) -> Option<&'a Priced> {
    let mut chosen = None;
    for (number, one) in all.enumerate() {
        if number == 0 {
            section_ui(ui, title);
        }
        ui.push_id((one.part, one.machine), |ui| {
            ui.label(body(one.sentence()));
            if one.cost.is_some() {
                let tag = found.slip(one.part).map_or("", |slip| &slip.tag);
                let machine = crate::assess::reason::machine_name(&found.logbook, one.machine);
                let word = text!("Put {tag} in {machine}", tag = tag, machine = machine);
                if press_ui(ui, &word, text!("Asks again with it pinned there"), None).clicked() {
                    chosen = Some(one);
                }
            }
            ui.add_space(2.0 * GRID);
        });
    }
    chosen
}

/// Takes a pin of the logbook off: a plan stays one, and that of a part which is fitted already has done its work.
fn unpinned(found: &Found, slip: &Slip) -> Change {
    let mut change = Change::new(text!("Pin {tag} no longer", tag = slip.tag));
    let is_fitted = found.logbook.fitted_in(slip.part).map(|(file, _)| file.machine.id);
    let plans = found.logbook.machines.iter().flat_map(|file| &file.placements);
    for plan in plans.filter(|plan| plan.part == slip.part && plan.pinned) {
        if is_fitted == Some(plan.machine) {
            change.remove(plan.id);
        } else {
            change.put(Placement { pinned: false, ..plan.clone() });
        }
    }
    change
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
