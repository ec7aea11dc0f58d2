//! Tag, kind and photograph: enough to make a part.

use egui::text::{CCursor, CCursorRange};
use egui::{Key, Response, TextEdit, Ui};

use super::typed::{Typed, kind_of};
use crate::record::{Kind, TAG_MOST, Word as _};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, field_ui, remark, short_field_ui, target_ui};

/// Which field is to be ready for typing next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ready {
    Tag,
    Kind,
}

/// Draws the step; `ready` names the field that takes the keys.
pub fn first_ui(
    ui: &mut Ui,
    typed: &mut Typed,
    of_late: &[Kind],
    says: &[String],
    ready: &mut Option<Ready>,
    view: &View<'_>,
    outbox: &mut Outbox,
) {
    ui.horizontal_wrapped(|ui| {
        let tag = short_field_ui(ui, text!("Tag"), &mut typed.tag, Some(40.0 * GRID), TAG_MOST);
        if *ready == Some(Ready::Tag) {
            take_keys(ui, &tag, typed.tag.chars().count());
            *ready = None;
        } else if entered(&tag) {
            // A scanner ends with Enter.
            *ready = Some(Ready::Kind);
        }
        let kind = field_ui(ui, text!("Kind"), &mut typed.kind_letters, Some(60.0 * GRID));
        if kind.changed() {
            typed.kind = kind_of(&typed.kind_letters, of_late);
        }
        if *ready == Some(Ready::Kind) {
            take_keys(ui, &kind, typed.kind_letters.chars().count());
            *ready = None;
        } else if entered(&kind) {
            kind.request_focus();
        }
        if kind.lost_focus()
            && let Some(picked) = typed.kind
        {
            typed.pick_kind(picked);
        }
    });
    // What comes and goes above a field stands in a frame of its own, so that the field keeps the keys.
    ui.vertical(|ui| tag_says_ui(ui, typed, says));
    ui.add_space(2.0 * GRID);
    ui.vertical(|ui| typed.photos.ui(ui, Page::Intake, view, outbox));
    ui.add_space(3.0 * GRID);
    if !of_late.is_empty() {
        ui.label(remark(ui, text!("Logged of late")));
        kinds_ui(ui, typed, of_late);
        ui.add_space(2.0 * GRID);
        ui.label(remark(ui, text!("All others")));
    }
    let others: Vec<Kind> = Kind::ALL.iter().copied().filter(|kind| !of_late.contains(kind)).collect();
    kinds_ui(ui, typed, &others);
}

/// What is wrong with tag or kind is told as it is typed; else which kind the letters stand for.
fn tag_says_ui(ui: &mut Ui, typed: &Typed, says: &[String]) {
    for says in says {
        ui.label(body(says).color(ui.tokens().severity_grave));
    }
    if let Some(kind) = typed.kind
        && !kind.label().eq_ignore_ascii_case(typed.kind_letters.trim())
    {
        ui.label(body(kind.label()));
    }
}

fn kinds_ui(ui: &mut Ui, typed: &mut Typed, kinds: &[Kind]) {
    ui.horizontal_wrapped(|ui| {
        for kind in kinds {
            if target_ui(ui, kind.label(), typed.kind == Some(*kind)).clicked() {
                typed.pick_kind(*kind);
            }
        }
    });
}

fn entered(field: &Response) -> bool {
    field.lost_focus() && field.ctx.input(|input| input.key_pressed(Key::Enter) && !input.modifiers.any())
}

/// Gives a field the keys, with all that stands in it marked, so that a scan or typing replaces it.
fn take_keys(ui: &Ui, field: &Response, length: usize) {
    field.request_focus();
    let mut state = TextEdit::load_state(ui.ctx(), field.id).unwrap_or_default();
    state.cursor.set_char_range(Some(CCursorRange::two(CCursor::new(0), CCursor::new(length))));
    TextEdit::store_state(ui.ctx(), field.id, state);
}
