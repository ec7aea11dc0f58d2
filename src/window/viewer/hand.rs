//! What pointer, wheel, fingers and keys do to the picture.

use egui::{EventFilter, Key, Modifiers, Rect, Response, Ui};

use super::{Act, Placed, Viewer};

/// How far the arrows move the picture, as a share of the window.
const KEY_STEP: f32 = 0.2;

/// How many points of the wheel bring a picture nearer by a factor of e.
const WHEEL: f32 = 400.0;

impl Viewer {
    /// What the pointer, the wheel and two fingers do. `other` is where a second picture stands.
    pub(super) fn hand(&mut self, ui: &Ui, response: &Response, placed: &Placed, other: Rect) {
        if std::mem::take(&mut self.wants_keys) {
            response.request_focus();
        }
        // Both pictures are moved by the same hand: a place on the second stands for the one that lies under it.
        let on_shown = |at: egui::Pos2| {
            if placed.area.contains(at) { at } else { at - (other.center() - placed.area.center()) }
        };
        let is_matching = self.compare.as_ref().is_some_and(|compare| compare.is_matching);
        if response.dragged() {
            self.look.drag(response.drag_delta(), placed);
        }
        if response.double_clicked()
            && !is_matching
            && let Some(at) = response.interact_pointer_pos()
        {
            if self.look.zoom.is_some() { self.look.fit() } else { self.look.zoom_to(1.0, on_shown(at), placed) }
        }
        let pointer = ui.input(|input| input.pointer.hover_pos()).filter(|at| response.rect.contains(*at));
        let Some(pointer) = pointer.filter(|_| ui.ui_contains_pointer()) else { return };
        let (wheel, pinch) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
        let factor = (wheel / WHEEL).exp() * pinch;
        if factor != 1.0 {
            self.look.zoom_by(factor, on_shown(pointer), placed);
        }
    }

    /// What keys do that nothing on the picture has taken.
    pub(super) fn keys(&mut self, ui: &Ui, response: &Response, placed: &Placed) {
        if ui.ctx().text_edit_focused() || egui::Popup::is_any_open(ui.ctx()) {
            return;
        }
        let focused = ui.memory(egui::Memory::focused);
        if focused.is_none_or(|focused| focused == response.id) {
            let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: true, tab: false };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
            self.arrows(ui, placed);
        }
        self.given.extend(Act::pressed(ui.ctx()));
    }

    /// Nearer, the arrows move the picture; while the whole of it is seen they go on to the next.
    fn arrows(&mut self, ui: &Ui, placed: &Placed) {
        let moves = [
            (Key::ArrowRight, 1.0, 0.0),
            (Key::ArrowLeft, -1.0, 0.0),
            (Key::ArrowDown, 0.0, 1.0),
            (Key::ArrowUp, 0.0, -1.0),
        ];
        for (key, right, down) in moves {
            if !ui.input_mut(|input| input.consume_key(Modifiers::NONE, key)) {
                continue;
            }
            if self.look.zoom.is_some() {
                self.look.step(KEY_STEP * right, KEY_STEP * down, placed);
            } else if self.compare.is_none() {
                self.given.push(if right + down > 0.0 { Act::Next } else { Act::Previous });
            }
        }
    }
}
