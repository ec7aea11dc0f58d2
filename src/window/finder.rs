//! The finder: a few letters lead to a command, a part or a machine.

use egui::{Align2, Area, Frame, Id, Key, Margin, Modal, Modifiers, Role, Sense, Ui, WidgetInfo, vec2};

use super::command::{Command, Situation};
use super::outbox::View;
use super::page::Page;
use super::part_index::words_of;
use super::theme::marks::{self, Mark};
use super::theme::{GRID, TextRole, Themed};
use super::widgets::field_ui;
use crate::text;

const MOST: usize = 12;

/// What was typed and which line is chosen, while the finder is open.
#[derive(Debug, Default)]
pub struct Finder {
    pub is_open: bool,
    typed: String,
    at: usize,
}

/// One line that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Find {
    pub mark: Option<Mark>,
    pub say: String,
    pub keys: Option<egui::KeyboardShortcut>,
    pub command: Command,
}

/// What a text leads to, best first: a part of exactly this tag, commands, machines, parts.
pub fn finds(text: &str, situation: Situation, view: Option<&View<'_>>) -> Vec<Find> {
    let words = words_of(text);
    let fits = |say: &str| {
        let say = say.to_lowercase();
        words.iter().all(|word| say.split_whitespace().any(|said| said.starts_with(word.as_str())))
    };
    let mut commands: Vec<Find> = Command::LISTED
        .into_iter()
        .filter(|command| *command != Command::Find && command.applies(situation))
        .map(|command| Find { mark: command.mark(), say: command.label(), keys: command.shortcut(), command })
        .filter(|find| fits(&find.say))
        .collect();
    // Those that begin with what was typed come first; otherwise the order of the menu stays.
    commands.sort_by_key(|find| words.first().is_some_and(|word| !find.say.to_lowercase().starts_with(word.as_str())));
    let Some(view) = view.filter(|_| !words.is_empty()) else {
        commands.truncate(MOST);
        return commands;
    };
    let machines =
        view.logbook.machines.iter().map(|file| &file.machine).filter(|machine| fits(&machine.name)).map(|machine| {
            Find {
                mark: Some(Mark::Machines),
                say: machine.name.clone(),
                keys: None,
                command: Command::Go(Page::Machine(machine.id)),
            }
        });
    let (exact, others): (Vec<_>, Vec<_>) = view
        .index
        .found(text, MOST)
        .into_iter()
        .map(|row| {
            let find = Find {
                mark: Some(Mark::Part),
                say: format!("{}  {}", row.tag, row.what),
                keys: None,
                command: Command::Go(Page::Part(row.id)),
            };
            (row.tag.eq_ignore_ascii_case(text.trim()), find)
        })
        .partition(|(is_exact, _)| *is_exact);
    exact
        .into_iter()
        .map(|(_, find)| find)
        .chain(commands)
        .chain(machines)
        .chain(others.into_iter().map(|(_, find)| find))
        .take(MOST)
        .collect()
}

impl Finder {
    /// Opens it empty.
    pub fn open(&mut self) {
        *self = Self { is_open: true, ..Self::default() };
    }

    /// Draws it while open; the command that was chosen.
    pub fn ui(&mut self, ctx: &egui::Context, situation: Situation, view: Option<&View<'_>>) -> Option<Command> {
        if !self.is_open {
            return None;
        }
        let id = Id::unique("finder");
        let area = Area::new(id).anchor(Align2::CENTER_TOP, vec2(0.0, 16.0 * GRID)).order(egui::Order::Foreground);
        let frame = Frame::new()
            .fill(ctx.tokens().page)
            .stroke(egui::Stroke::new(1.0, ctx.tokens().ink_weak))
            .corner_radius(3)
            .inner_margin(Margin::same(16));
        let mut chosen = None;
        let response =
            Modal::new(id).area(area).frame(frame).show(ctx, |ui| chosen = self.inside_ui(ui, situation, view));
        if response.should_close() || chosen.is_some() {
            self.is_open = false;
        }
        chosen
    }

    fn inside_ui(&mut self, ui: &mut Ui, situation: Situation, view: Option<&View<'_>>) -> Option<Command> {
        ui.set_width((ui.ctx().content_rect().width() - 16.0 * GRID).min(150.0 * GRID));
        let consume = |ui: &mut Ui, key| ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
        let (up, down, enter) = (consume(ui, Key::ArrowUp), consume(ui, Key::ArrowDown), consume(ui, Key::Enter));
        let field = field_ui(ui, text!("Find a command, a part or a machine"), &mut self.typed, None);
        field.request_focus();
        if field.changed() {
            self.at = 0;
        }
        let found = finds(&self.typed, situation, view);
        let last = found.len().saturating_sub(1);
        if down {
            self.at = (self.at + 1).min(last);
        }
        if up {
            self.at = self.at.saturating_sub(1);
        }
        self.at = self.at.min(last);
        let mut chosen = None;
        ui.add_space(GRID);
        ui.spacing_mut().item_spacing.y = 0.0;
        for (index, find) in found.iter().enumerate() {
            if line_ui(ui, find, index, index == self.at) || (enter && index == self.at) {
                chosen = Some(find.command.clone());
            }
        }
        if found.is_empty() {
            ui.label(text!("Nothing of that name. Tags, names, markings and places are searched."));
        }
        chosen
    }
}

fn line_ui(ui: &mut Ui, find: &Find, index: usize, is_chosen: bool) -> bool {
    let tokens = ui.tokens();
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), 8.0 * GRID), Sense::CLICK);
    let ground = match (is_chosen, response.hovered()) {
        (true, _) => tokens.selected,
        (false, true) => tokens.hover,
        (false, false) => egui::Color32::TRANSPARENT,
    };
    ui.painter().rect_filled(rect, 3.0, ground);
    let side = 4.0 * GRID;
    if let Some(mark) = find.mark {
        let at = egui::pos2(rect.left() + 4.0 * GRID, rect.center().y);
        marks::draw(ui.painter(), egui::Rect::from_center_size(at, vec2(side, side)), mark, tokens.press);
    }
    let left = egui::pos2(rect.left() + 8.0 * GRID, rect.center().y);
    ui.painter().text(left, Align2::LEFT_CENTER, &find.say, TextRole::Body.font(), tokens.ink);
    if let Some(keys) = find.keys {
        let right = egui::pos2(rect.right() - 2.0 * GRID, rect.center().y);
        let keys = ui.ctx().format_shortcut(&keys);
        ui.painter().text(right, Align2::RIGHT_CENTER, keys, TextRole::Small.font(), tokens.ink_weak);
    }
    response.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, is_chosen, &find.say));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_selected(is_chosen);
        node.set_position_in_set(index + 1);
    });
    response.clicked()
}
