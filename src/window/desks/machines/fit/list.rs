//! The drawing as an indented list, where there is too little room for it.

use egui::{Role, Ui, WidgetInfo};

use super::gathered::{Shown, mark_of};
use super::tree::{Branch, What};
use crate::record::Word;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{badge_ui, body, link_ui, remark, small};

/// Draws everything; the line that was pressed.
pub fn list_ui(ui: &mut Ui, shown: &Shown, branches: &[Branch], outbox: &mut Outbox) -> Option<usize> {
    let mut pressed = None;
    for branch in branches {
        branch_ui(ui, shown, branch, 0, &mut pressed, outbox);
    }
    pressed
}

fn branch_ui(
    ui: &mut Ui,
    shown: &Shown,
    branch: &Branch,
    depth: usize,
    pressed: &mut Option<usize>,
    outbox: &mut Outbox,
) {
    ui.horizontal_wrapped(|ui| {
        ui.add_space(depth as f32 * 5.0 * GRID);
        for line in &branch.lines {
            let of = &shown.lines[*line];
            let link = ui.add(egui::Button::new(small(&of.label).color(ui.tokens().press)).frame(false));
            let name = text!(
                "{part} in {host}: {connector}",
                part = shown.blocks[of.part].name(),
                host = shown.blocks[of.host].name(),
                connector = of.label
            );
            link.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
            if link.clicked() {
                *pressed = Some(*line);
            }
        }
        match branch.what {
            What::Block(at) | What::Again(at) => {
                let block = &shown.blocks[at];
                let is_own = matches!(branch.what, What::Block(_));
                let link = link_ui(ui, &block.name());
                let name = if is_own {
                    format!("{}: {}", block.name(), block.verdict.label())
                } else {
                    text!("{part}, at the end of the line", part = block.name())
                };
                link.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
                if link.clicked() {
                    outbox.go(Page::Part(block.part));
                }
                if is_own {
                    let (mark, colour) = mark_of(block.verdict, &ui.tokens());
                    badge_ui(ui, mark, block.verdict.label(), block.verdict.label(), colour);
                }
            }
            What::Open(_) => {}
            What::Unmet(unmet) => {
                let unmet = &shown.unmet[unmet];
                ui.label(body(&unmet.label).color(ui.tokens().fit(unmet.verdict)));
            }
        }
    });
    let (open, beneath): (Vec<&Branch>, Vec<&Branch>) =
        branch.beneath.iter().partition(|inner| matches!(inner.what, What::Open(_)));
    let free = open.iter().filter_map(|inner| match inner.what {
        What::Open(open) => Some(shown.open[open].label.as_str()),
        _ => None,
    });
    let free = free.collect::<Vec<_>>().join("; ");
    for inner in beneath {
        branch_ui(ui, shown, inner, depth + 1, pressed, outbox);
    }
    if !free.is_empty() {
        ui.horizontal_top(|ui| {
            ui.add_space((depth + 1) as f32 * 5.0 * GRID);
            ui.add(egui::Label::new(remark(ui, text!("free: {connectors}", connectors = free))).wrap());
        });
    }
}
