//! Fields with their label above, in the order a hand fills them.

use std::path::PathBuf;

use egui::{Align, ComboBox, Key, Layout, Response, RichText, TextEdit, Ui, vec2};

use super::words::remark;
use crate::record::TEXT_MOST;
use crate::text;
use crate::window::theme::{GRID, TextRole, Themed};

/// One line of text under its label. `width` in points; the rest of the line when `None`.
pub fn field_ui(ui: &mut Ui, label: &str, value: &mut String, width: Option<f32>) -> Response {
    short_field_ui(ui, label, value, width, TEXT_MOST)
}

/// One line of text that takes so many characters at most: a tag, a name.
pub fn short_field_ui(ui: &mut Ui, label: &str, value: &mut String, width: Option<f32>, most: usize) -> Response {
    let width = width.unwrap_or_else(|| ui.available_width());
    labelled(ui, label, width, |ui| {
        ui.add(
            TextEdit::singleline(value)
                .char_limit(most)
                .desired_width(width)
                .min_size(vec2(0.0, 8.0 * GRID))
                .align(egui::Align2::LEFT_CENTER)
                .font(TextRole::Body.font())
                .text_color(ui.tokens().ink),
        )
    })
}

/// Several lines of text under their label.
pub fn notes_ui(ui: &mut Ui, label: &str, value: &mut String, rows: usize) -> Response {
    let width = ui.available_width();
    labelled(ui, label, width, |ui| {
        let ink = ui.tokens().ink;
        ui.add(TextEdit::multiline(value).desired_width(ui.available_width()).desired_rows(rows).text_color(ink))
    })
}

/// One of several words under their label; `true` when another was chosen.
pub fn choice_ui<T: PartialEq + Copy>(
    ui: &mut Ui,
    label: &str,
    chosen: &mut T,
    choices: &[(T, &str)],
    width: f32,
) -> bool {
    let before = *chosen;
    let said = choices.iter().find(|(choice, _)| choice == chosen).map_or("", |(_, said)| *said);
    labelled(ui, label, width, |ui| {
        ComboBox::from_id_salt(label)
            .width(width)
            .height(140.0 * GRID)
            .selected_text(RichText::new(said).color(ui.tokens().ink))
            .show_ui(ui, |ui| {
                for (choice, said) in choices {
                    ui.selectable_value(chosen, *choice, *said);
                }
            })
            .response
    });
    before != *chosen
}

/// A path to be typed, with a button that asks the desktop's dialog. The path once Enter or the word is pressed;
/// `ask` is set when the dialog is wanted.
pub fn path_field_ui(ui: &mut Ui, label: &str, typed: &mut String, press: &str, ask: &mut bool) -> Option<PathBuf> {
    let mut given = false;
    let response = field_ui(ui, label, typed, None);
    given |= response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    ui.horizontal(|ui| {
        given |= super::press_ui(ui, press, "", None).clicked();
        *ask |= super::press_ui(ui, text!("Look for it…"), text!("Asks the desktop’s file dialog"), None).clicked();
    });
    let path = typed.trim();
    (given && !path.is_empty()).then(|| expanded(path))
}

/// A typed path with a leading `~` replaced by the home folder.
pub fn expanded(path: &str) -> PathBuf {
    match path.strip_prefix("~/").zip(directories::BaseDirs::new()) {
        Some((rest, folders)) => folders.home_dir().join(rest),
        None => PathBuf::from(path),
    }
}

/// A widget of a known width under its label, so that a line of them knows where to wrap.
fn labelled(ui: &mut Ui, label: &str, width: f32, widget: impl FnOnce(&mut Ui) -> Response) -> Response {
    let size = vec2(width, 13.0 * GRID);
    ui.allocate_ui_with_layout(size, Layout::top_down(Align::Min), |ui| {
        ui.set_width(width);
        ui.spacing_mut().item_spacing.y = 2.0;
        let said = ui.label(remark(ui, label));
        ui.label_inputs_by(said.id, widget)
    })
    .inner
}
