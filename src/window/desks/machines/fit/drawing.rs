//! The drawing: parts as blocks, connectors as lines, what is free as open ends. Each can be pressed and has a name.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Align2, Color32, Pos2, Rect, Response, Role, Sense, Shape, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2};

use super::gathered::{Shown, mark_of};
use super::layout::{Item, Layout, Wire};
use super::tree::{Branch, What};
use crate::record::Word;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::theme::marks;
use crate::window::theme::{GRID, TextRole, Themed};

/// Draws everything; the line that was pressed.
pub fn drawing_ui(
    ui: &mut Ui,
    shown: &Shown,
    branches: &[Branch],
    chosen: Option<usize>,
    outbox: &mut Outbox,
) -> Option<usize> {
    let layout = Layout::of(shown, branches, ui.available_width());
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), layout.height), Sense::hover());
    let mut drawing = Drawing { shown, corner: rect.min, chosen, pressed: None };
    for item in &layout.items {
        drawing.item_ui(ui, item, outbox);
    }
    drawing.pressed
}

struct Drawing<'a> {
    shown: &'a Shown,
    corner: Pos2,
    chosen: Option<usize>,
    pressed: Option<usize>,
}

impl Drawing<'_> {
    fn at(&self, point: Pos2) -> Pos2 {
        self.corner + point.to_vec2()
    }

    fn rect(&self, rect: Rect) -> Rect {
        rect.translate(self.corner.to_vec2())
    }

    fn item_ui(&mut self, ui: &Ui, item: &Item, outbox: &mut Outbox) {
        let tokens = ui.tokens();
        let rect = self.rect(item.rect);
        for wire in &item.wires {
            match (wire.line, item.what) {
                (None, What::Unmet(unmet)) => {
                    self.open_end(ui, wire, tokens.fit(self.shown.unmet[unmet].verdict), true);
                }
                (None, _) => self.open_end(ui, wire, tokens.ink_weak, false),
                (Some(line), _) => self.line_ui(ui, wire, line),
            }
        }
        match item.what {
            What::Block(at) => self.block_ui(ui, at, rect, outbox),
            What::Again(at) => {
                let block = &self.shown.blocks[at];
                let (name, words) = (text!("{part}, at the end of the line", part = block.name()), block.name());
                let response = pressable(ui, rect, (item.what, item.wires.first().and_then(|wire| wire.line)), &name);
                let from = item.wires.first().map_or(rect.left(), |wire| self.at(end(wire)).x);
                let align = if from > rect.center().x { Align2::RIGHT_CENTER } else { Align2::LEFT_CENTER };
                put(ui, rect, &words, TextRole::Body, tokens.press, align);
                if response.clicked() {
                    outbox.go(Page::Part(block.part));
                }
            }
            What::Open(open) => {
                let open = &self.shown.open[open];
                let name = text!(
                    "Free on {part}: {connector}",
                    part = self.shown.blocks[open.host].name(),
                    connector = open.label
                );
                self.words_ui(ui, item, &name, &open.label, tokens.ink_weak);
            }
            What::Unmet(unmet) => {
                let unmet = &self.shown.unmet[unmet];
                let name = format!("{} {}", self.shown.blocks[unmet.part].name(), unmet.label);
                self.words_ui(ui, item, &name, &unmet.label, tokens.fit(unmet.verdict));
            }
        }
    }

    fn block_ui(&self, ui: &Ui, at: usize, rect: Rect, outbox: &mut Outbox) {
        let block = &self.shown.blocks[at];
        let tokens = ui.tokens();
        let (mark, colour) = mark_of(block.verdict, &tokens);
        let name = format!("{}: {}", block.name(), block.verdict.label());
        let response = pressable(ui, rect, What::Block(at), &name);
        let is_pointed = response.hovered() || response.has_focus();
        let edge = if is_pointed { tokens.press } else { tokens.ink_weak };
        let fill = if is_pointed { tokens.press_wash } else { tokens.field };
        ui.painter().rect(rect, 3.0, fill, Stroke::new(1.0, edge), StrokeKind::Inside);
        let inner = rect.shrink2(vec2(2.0 * GRID, 1.5 * GRID));
        let half = inner.height().min(9.0 * GRID) / 2.0;
        let top = if rect.height() > 20.0 * GRID { inner.top() } else { inner.center().y - half };
        let words = Rect::from_min_size(pos2(inner.left(), top), vec2(inner.width(), half));
        put(ui, words, &block.name(), TextRole::Body, tokens.ink, Align2::LEFT_CENTER);
        let side = 3.5 * GRID;
        let below = words.translate(vec2(0.0, half));
        let mark_rect = Rect::from_min_size(pos2(below.left(), below.center().y - side / 2.0), vec2(side, side));
        marks::draw(ui.painter(), mark_rect, mark, colour);
        let rest = Rect::from_min_max(pos2(below.left() + side + GRID, below.top()), below.max);
        put(ui, rest, block.verdict.label(), TextRole::Small, colour, Align2::LEFT_CENTER);
        if response.on_hover_text(block.name()).clicked() {
            outbox.go(Page::Part(block.part));
        }
    }

    fn line_ui(&mut self, ui: &Ui, wire: &Wire, line: usize) {
        let tokens = ui.tokens();
        let of = &self.shown.lines[line];
        let points: Vec<Pos2> = wire.points.iter().map(|point| self.at(*point)).collect();
        let label = wire.label.map(|label| self.rect(label));
        let (Some(from), Some(to)) = (points.first().copied(), points.last().copied()) else { return };
        let last = points[points.len() - 2];
        let level = Rect::from_two_pos(last, to).expand2(vec2(0.0, 1.5 * GRID));
        let name = text!(
            "{part} in {host}: {connector}",
            part = self.shown.blocks[of.part].name(),
            host = self.shown.blocks[of.host].name(),
            connector = of.label
        );
        let rect = label.map_or(level, |label| label.union(level));
        let response = pressable(ui, rect, ("line", line), &name).on_hover_text(&of.sentence);
        let is_pointed = self.chosen == Some(line) || response.hovered() || response.has_focus();
        let colour = if is_pointed { tokens.press } else { tokens.ink_weak };
        let stroke = Stroke::new(if is_pointed { 2.5 } else { 1.5 }, colour);
        ui.painter().add(Shape::line(points, stroke));
        for end in [from, to] {
            ui.painter().rect_filled(Rect::from_center_size(end, vec2(GRID, 1.5 * GRID)), 0.0, colour);
        }
        if let Some(label) = label {
            put(
                ui,
                label,
                &of.label,
                TextRole::Small,
                if is_pointed { tokens.press } else { tokens.ink },
                Align2::CENTER_CENTER,
            );
        }
        if response.clicked() {
            self.pressed = Some(line);
        }
    }

    /// A line that ends in a ring: nothing is plugged in there.
    fn open_end(&self, ui: &Ui, wire: &Wire, colour: Color32, is_dashed: bool) {
        let mut points: Vec<Pos2> = wire.points.iter().map(|point| self.at(*point)).collect();
        let stroke = Stroke::new(1.5, colour);
        let Some(end) = points.last_mut() else { return };
        let ring = *end;
        let radius = 0.75 * GRID;
        end.x += if wire.points[0].x < wire.points[wire.points.len() - 1].x { -radius } else { radius };
        if is_dashed {
            ui.painter().extend(Shape::dashed_line(&points, stroke, GRID, GRID));
        } else {
            ui.painter().add(Shape::line(points, stroke));
        }
        ui.painter().circle_stroke(ring, radius, stroke);
    }

    /// Words at an open end, read but not pressed.
    fn words_ui(&self, ui: &Ui, item: &Item, name: &str, words: &str, colour: Color32) {
        let rect = self.rect(item.rect);
        let is_left = item.wires.first().is_some_and(|wire| self.at(end(wire)).x > rect.center().x);
        let align = if is_left { Align2::RIGHT_CENTER } else { Align2::LEFT_CENTER };
        put(ui, rect, words, TextRole::Small, colour, align);
        let response = ui.interact(rect, ui.scope_id().with(("open", name)), Sense::hover());
        response.widget_info(|| WidgetInfo::labeled(Role::Label, true, name));
        response.on_hover_text(name);
    }
}

fn end(wire: &Wire) -> Pos2 {
    wire.points[wire.points.len() - 1]
}

fn pressable(ui: &Ui, rect: Rect, key: impl std::hash::Hash + std::fmt::Debug, name: &str) -> Response {
    let response = ui.interact(rect, ui.scope_id().with(key), Sense::click());
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, name));
    response
}

/// Words in a rectangle, cut where it ends.
fn put(ui: &Ui, rect: Rect, words: &str, role: TextRole, colour: Color32, align: Align2) {
    let mut job = LayoutJob::simple_singleline(words.to_owned(), role.font(), colour);
    job.wrap = TextWrapping::truncate_at_width(rect.width().max(0.0));
    let galley = ui.painter().layout_job(job);
    let at = align.align_size_within_rect(galley.size(), rect);
    ui.painter().galley(at.min, galley, colour);
}
