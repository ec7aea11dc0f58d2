//! What stands around every desk: the rail of desks, the status line, the notices, and the leaf itself.

use egui::{Align, Color32, Frame, Layout, Margin, Panel, Rect, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::command::{Command, Situation};
use super::outbox::Outbox;
use super::page::Page;
use super::session::Session;
use super::theme::marks::{self, Mark};
use super::theme::{GRID, TextRole, Themed};
use super::widgets::{body, link_ui, mark_button, mark_ui, press_ui, small};
use crate::text;

const RAIL: f32 = 30.0 * GRID;
/// The room at the rail's end for the finder and the menu, points.
const BELOW: f32 = 20.0 * GRID;
/// How much of a step's name is shown at the foot of the window, characters.
const STEP: usize = 48;

/// The rail at the left: the desks, and below them the finder and everything else.
pub fn rail_ui(ui: &mut Ui, page: Page, situation: Situation, outbox: &mut Outbox) {
    let tokens = ui.tokens();
    let frame = Frame::new().fill(tokens.rail).inner_margin(Margin::symmetric(0, 16));
    Panel::left("rail").exact_size(RAIL).resizable(false).show_separator_line(false).frame(frame).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        // In a low window the desks stand closer, so that the finder below them keeps its place.
        let rest = ui.available_height() - BELOW - 3.0 * GRID;
        let height = (rest / Page::DESKS.len() as f32).clamp(8.0 * GRID, 11.0 * GRID);
        for desk in Page::DESKS {
            let command = Command::Go(desk);
            let is_here = page.desk() == desk;
            ui.add_enabled_ui(command.applies(situation), |ui| {
                if desk_ui(ui, desk, &command, is_here, height) {
                    outbox.give(command.clone());
                }
            });
            if desk == Page::Welcome {
                ui.add_space(3.0 * GRID);
            }
        }
        ui.with_layout(Layout::bottom_up(Align::Min), |ui| {
            ui.spacing_mut().item_spacing.y = GRID;
            Frame::new().inner_margin(Margin::symmetric(12, 0)).show(ui, |ui| {
                more_ui(ui, situation, outbox);
                let tooltip = Command::Find.tooltip();
                if press_ui(ui, text!("Find…"), tooltip, Command::Find.shortcut()).clicked() {
                    outbox.give(Command::Find);
                }
            });
        });
    });
}

fn desk_ui(ui: &mut Ui, desk: Page, command: &Command, is_here: bool, height: f32) -> bool {
    let tokens = ui.tokens();
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::click());
    let is_enabled = ui.is_enabled();
    let ground = match (is_here, response.hovered() && is_enabled) {
        (true, _) => tokens.page,
        (false, true) => tokens.hover,
        (false, false) => Color32::TRANSPARENT,
    };
    let colour = match (is_here, is_enabled) {
        (true, _) => tokens.ink,
        (false, true) => tokens.press,
        (false, false) => tokens.ink_weak,
    };
    ui.painter().rect_filled(rect, 0.0, ground);
    if is_here {
        let bar = Rect::from_min_size(rect.min, vec2(GRID, rect.height()));
        ui.painter().rect_filled(bar, 0.0, tokens.press);
    }
    if response.has_focus() {
        ui.painter().rect_stroke(rect.shrink(1.0), 2.0, Stroke::new(2.0, tokens.press), egui::StrokeKind::Inside);
    }
    let side = 5.0 * GRID;
    let mark = Rect::from_min_size(pos2(rect.left() + 4.0 * GRID, rect.center().y - side / 2.0), vec2(side, side));
    marks::draw(ui.painter(), mark, desk.mark(), colour);
    let role = if is_here { TextRole::Strong } else { TextRole::Body };
    let at = pos2(mark.right() + 2.0 * GRID, rect.center().y);
    ui.painter().text(at, egui::Align2::LEFT_CENTER, desk.label(), role.font(), colour);
    response.widget_info(|| WidgetInfo::selected(Role::Tab, is_enabled, is_here, desk.label()));
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_selected(is_here));
    let tooltip = match command.shortcut() {
        Some(keys) => format!("{} ({})", desk.tooltip(), ui.ctx().format_shortcut(&keys)),
        None => desk.tooltip().to_owned(),
    };
    response.on_hover_text(tooltip).clicked()
}

fn more_ui(ui: &mut Ui, situation: Situation, outbox: &mut Outbox) {
    ui.menu_button(body(text!("More…")), |ui| {
        // Over a photograph there is no rail, and elsewhere nothing to do to one.
        let listed = Command::LISTED.into_iter().filter(|command| !matches!(command, Command::Look(_)));
        for command in listed.chain([Command::Quit]) {
            let mut button = egui::Button::new(body(command.label()));
            if let Some(keys) = command.shortcut() {
                button = button.shortcut_text(small(ui.ctx().format_shortcut(&keys)));
            }
            let response = ui.add_enabled(command.applies(situation), button).on_hover_text(command.tooltip());
            if response.clicked() {
                outbox.give(command);
                ui.close();
            }
        }
    });
}

/// The line at the bottom: which logbook, that it is saved, and what undo and redo would do.
pub fn status_ui(ui: &mut Ui, session: Option<&Session>, situation: Situation, outbox: &mut Outbox) {
    let tokens = ui.tokens();
    let frame = Frame::new().fill(tokens.rail).inner_margin(Margin::symmetric(16, 4));
    Panel::bottom("status").resizable(false).show_separator_line(false).frame(frame).show(ui, |ui| {
        let Some(session) = session else {
            ui.label(small(text!("No logbook is open")));
            return;
        };
        let stands = |ui: &mut Ui| {
            ui.label(small(session.name()));
            let saved = if session.is_saving() { text!("Saving…") } else { text!("Saved") };
            if !session.is_saving() {
                mark_ui(ui, Mark::Done, tokens.ink_weak);
            }
            ui.label(small(saved).color(tokens.ink_weak));
            // Last, since it is cut off where there is no room for all of it.
            ui.label(small(session.folder.display().to_string()).color(tokens.ink_weak));
        };
        let steps = |ui: &mut Ui| {
            let mut step = |command: Command, name: Option<String>| {
                if let Some(name) = name.filter(|_| command.applies(situation)) {
                    let word = text!("{act}: {name}", act = command.label(), name = name);
                    let response = link_ui(ui, &cut(&word)).on_hover_text(format!("{word}\n{}", command.tooltip()));
                    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &word));
                    if response.clicked() {
                        outbox.give(command);
                    }
                }
            };
            step(Command::Redo, session.redo_name());
            step(Command::Undo, session.undo_name());
        };
        egui::Sides::new().height(6.0 * GRID).shrink_left().truncate().show(ui, stands, steps);
    });
}

/// A step's name as far as there is room for two of them.
fn cut(word: &str) -> String {
    if word.chars().count() <= STEP {
        return word.to_owned();
    }
    let kept: String = word.chars().take(STEP - 1).collect();
    format!("{}…", kept.trim_end())
}

/// Quiet notices above the desk: what went wrong and what to do; each can be put away.
pub fn notices_ui(ui: &mut Ui, notices: &mut Vec<String>) {
    if notices.is_empty() {
        return;
    }
    let tokens = ui.tokens();
    let frame = Frame::new().fill(tokens.notice).inner_margin(Margin::symmetric(16, 8));
    Panel::top("notices").resizable(false).show_separator_line(false).frame(frame).show(ui, |ui| {
        let mut away = None;
        for (index, notice) in notices.iter().enumerate() {
            ui.horizontal_top(|ui| {
                mark_ui(ui, Mark::Heed, tokens.notice_ink);
                let room = ui.available_width() - 10.0 * GRID;
                ui.allocate_ui(vec2(room, 0.0), |ui| {
                    ui.set_width(room);
                    ui.label(body(notice).color(tokens.notice_ink));
                });
                if mark_button(ui, Mark::Away, text!("Put the notice away")).clicked() {
                    away = Some(index);
                }
            });
        }
        if let Some(index) = away {
            notices.remove(index);
        }
    });
}

/// The leaf that a desk is written on: the margin rule of a log page at its left, room around.
pub fn leaf_ui<R>(ui: &mut Ui, inside: impl FnOnce(&mut Ui) -> R) -> R {
    let tokens = ui.tokens();
    let whole = ui.max_rect();
    ui.painter().rect_filled(whole, 0.0, tokens.page);
    ui.painter().vline(whole.left() + 5.0 * GRID, whole.y_range(), Stroke::new(1.0, tokens.hairline));
    Frame::new().inner_margin(Margin { left: 36, right: 24, top: 20, bottom: 8 }).show(ui, inside).inner
}
