//! The same in a narrow window: lanes, their machines and what is proposed for them, as an indented list.

use egui::{EventFilter, Key, Modifiers, Rect, Role, ScrollArea, Sense, Ui, WidgetInfo, pos2, vec2};

use super::drawing::{Done, Drawing};
use super::found::{Found, Lane};
use super::slip::{gap_ui, slip_ui};
use crate::record::Word;
use crate::text;
use crate::window::theme::{GRID, TextRole, Themed};

/// One line is as high as a slip with the room below it.
const LINE: f32 = 11.0 * GRID;

enum Line<'a> {
    Lane(&'a Lane),
    /// A machine's name, or the shelf's.
    At(&'a str),
    Slip(usize),
    Gap(&'a super::found::Gap, (usize, usize, usize)),
}

/// Draws the list.
pub fn list_ui(ui: &mut Ui, drawing: &Drawing) -> Option<Done> {
    let found = drawing.found;
    let lines = lines(found, drawing.shows_settled);
    let body = ui.available_rect_before_wrap();
    let id = ui.scope_id().with("list");
    let response = ui.interact(body, id, Sense::focusable_noninteractive());
    response.widget_info(|| WidgetInfo::labeled(Role::ListBox, true, text!("Proposal, lane by lane")));
    let mut done = None;
    if response.has_focus() {
        let filter = EventFilter { vertical_arrows: true, ..EventFilter::default() };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
        for key in [Key::ArrowUp, Key::ArrowDown] {
            if ui.input_mut(|input| input.consume_key(Modifiers::NONE, key)) {
                done = next(drawing, &lines, key).map(Done::Choose);
            }
        }
    }
    let scroll = ScrollArea::vertical().id_salt("lines").auto_shrink(false);
    scroll.show_viewport(ui, |ui, viewport| {
        ui.set_height(LINE * lines.len() as f32);
        let whole = ui.max_rect();
        let line = |row: usize| {
            let top = whole.top() + row as f32 * LINE;
            Rect::from_x_y_ranges(whole.x_range(), top..=top + LINE - GRID)
        };
        let is_chosen =
            |line: &Line<'_>| matches!(line, Line::Slip(slip) if drawing.chosen == Some(found.slips[*slip].part));
        if let Some(row) = lines.iter().position(is_chosen).filter(|_| drawing.follow) {
            ui.scroll_to_rect(line(row), None);
        }
        let first = (viewport.min.y / LINE).floor().max(0.0) as usize;
        let last = ((viewport.max.y / LINE).ceil().max(0.0) as usize).min(lines.len());
        for (row, shown) in lines.iter().enumerate().take(last).skip(first) {
            let rect = line(row);
            let indented = Rect::from_min_max(rect.min + vec2(6.0 * GRID, 0.0), rect.max);
            match shown {
                Line::Lane(lane) => word_ui(ui, rect, row, lane.kind.label(), TextRole::Section),
                Line::At(name) => {
                    word_ui(ui, rect.with_min_x(rect.left() + 3.0 * GRID), row, name, TextRole::Strong);
                }
                Line::Slip(slip) => {
                    let slip = &found.slips[*slip];
                    let is_chosen = drawing.chosen == Some(slip.part);
                    if slip_ui(ui, indented, slip, is_chosen, response.has_focus()).clicked() {
                        done = Some(Done::Choose(slip.part));
                    }
                }
                Line::Gap(gap, at) => gap_ui(ui, indented, gap, ui.scope_id().with(("gap", at))),
            }
        }
    });
    done
}

fn word_ui(ui: &Ui, rect: Rect, row: usize, word: &str, role: TextRole) {
    let at = pos2(rect.left(), rect.bottom() - 3.0 * GRID);
    ui.painter().text(at, egui::Align2::LEFT_CENTER, word, role.font(), ui.tokens().ink);
    let response = ui.interact(rect, ui.scope_id().with(("line", row)), Sense::HOVER);
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, word));
}

fn lines(found: &Found, all: bool) -> Vec<Line<'_>> {
    let mut lines = Vec::new();
    for (place, lane) in found.lanes.iter().enumerate().filter(|(_, lane)| all || lane.is_contested) {
        lines.push(Line::Lane(lane));
        for (column, cell) in lane.cells.iter().enumerate() {
            if cell.slips.is_empty() && cell.gaps.is_empty() {
                continue;
            }
            lines.push(Line::At(&found.columns[column].name));
            lines.extend(cell.slips.iter().map(|slip| Line::Slip(*slip)));
            lines.extend(cell.gaps.iter().enumerate().map(|(row, gap)| Line::Gap(gap, (place, column, row))));
        }
        if !lane.shelf.is_empty() {
            lines.push(Line::At(text!("Left over")));
            lines.extend(lane.shelf.iter().map(|slip| Line::Slip(*slip)));
        }
    }
    lines
}

fn next(drawing: &Drawing, lines: &[Line<'_>], key: Key) -> Option<crate::record::PartId> {
    let slips = lines.iter().filter_map(|line| match line {
        Line::Slip(slip) => Some(drawing.found.slips[*slip].part),
        _ => None,
    });
    let slips: Vec<_> = slips.collect();
    let at = slips.iter().position(|part| drawing.chosen == Some(*part));
    let to = match (at, key) {
        (None, _) => 0,
        (Some(at), Key::ArrowUp) => at.saturating_sub(1),
        (Some(at), _) => at + 1,
    };
    slips.get(to).copied()
}
