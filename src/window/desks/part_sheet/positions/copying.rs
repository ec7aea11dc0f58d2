//! Positions copied from the design, or from another part of the same design; nobody has looked at them here yet.

use egui::Ui;

use super::super::about::About;
use super::logged;
use crate::assess::positions::{missing, of, of_part, sources};
use crate::record::{CapacitorGroup, Moment};
use crate::window::outbox::Outbox;
use crate::window::widgets::{body, press_ui};
use crate::{counted, text};

/// Draws what can be copied from; `true` when it was copied or put away.
pub fn copying_ui(ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) -> bool {
    let (design, others) = sources(about.view.logbook, about.file);
    let mut taken: Option<Vec<CapacitorGroup>> = None;
    let mut away = false;
    if design.is_none() && others.is_empty() {
        ui.label(body(text!(
            "Neither the design nor another part of it knows positions that this part does not have."
        )));
    }
    ui.horizontal_wrapped(|ui| {
        if let Some(design) = design {
            let new = missing(about.file, &of(design));
            let count = counted!("{count} position", "{count} positions", new.len());
            let word = text!("{positions} from the design {name}", positions = count, name = design.design.title());
            if press_ui(ui, &word, text!("To be looked at one by one afterwards"), None).clicked() {
                taken = Some(new);
            }
        }
        for other in others {
            let new = missing(about.file, &of_part(other));
            let count = counted!("{count} position", "{count} positions", new.len());
            let word = text!("{positions} from {tag}", positions = count, tag = other.part.tag);
            if press_ui(ui, &word, text!("To be looked at one by one afterwards"), None).clicked() {
                taken = Some(new);
            }
        }
        away = press_ui(ui, text!("Put the copies away"), "", None).clicked();
    });
    if let Some(groups) = &taken {
        let at = Moment::on(about.view.today);
        let positions: Vec<_> =
            groups.iter().flat_map(|group| group.positions(about.file.part.id, at, &mut uuid::Uuid::now_v7)).collect();
        outbox.change(logged(about, &positions));
    }
    away || taken.is_some()
}
