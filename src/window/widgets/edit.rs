//! Facts that are read as text and turn into a field when they are pressed.

use egui::{Button, Key, Response, RichText, TextEdit, Ui, WidgetInfo, vec2};

use super::words::{body, remark, small};
use crate::window::theme::{GRID, TextRole, Themed};

/// The width of the labels before the facts, points.
const LABEL: f32 = 32.0 * GRID;

/// Which fact is a field now, and what is typed in it. One fact is open at a time.
#[derive(Debug, Default)]
pub struct Edit {
    open: Option<Open>,
    /// While gathered, the innermost gathering last: label and key of facts that nobody has told yet. A fact that is
    /// chosen has no key.
    untold: Vec<Vec<(String, Option<String>)>>,
    /// The fact whose choice was asked for among the untold ones.
    asked: Option<String>,
}

#[derive(Debug)]
struct Open {
    key: String,
    typed: String,
    /// What is wrong with what was typed.
    wrong: String,
    /// Not yet focused.
    is_fresh: bool,
}

/// A fact's label, how many lines its field has, and how it is shown.
#[derive(Clone, Copy, Debug)]
pub struct Fact<'a> {
    /// Tells it from all others of the desk.
    pub key: &'a str,
    pub label: &'a str,
    /// More than one for a note.
    pub rows: usize,
    /// Characters as printed on a part.
    pub is_printed: bool,
    /// Stands behind the figure; empty where it is no figure.
    pub unit: &'a str,
}

impl<'a> Fact<'a> {
    /// A fact of one line.
    pub fn line(key: &'a str, label: &'a str) -> Self {
        Self { key, label, rows: 1, is_printed: false, unit: "" }
    }
}

impl Edit {
    /// Whether this fact is a field now.
    pub fn is_open(&self, key: &str) -> bool {
        self.open.as_ref().is_some_and(|open| open.key == key)
    }

    /// Whether any fact is a field now.
    pub fn is_editing(&self) -> bool {
        self.open.is_some()
    }

    /// Turns a fact into a field.
    pub fn open(&mut self, key: &str, typed: &str) {
        self.open = Some(Open { key: key.to_owned(), typed: typed.to_owned(), wrong: String::new(), is_fresh: true });
    }

    /// Keeps the field open and says beside it what is wrong.
    pub fn refuse(&mut self, key: &str, typed: &str, wrong: impl Into<String>) {
        self.open(key, typed);
        if let Some(open) = &mut self.open {
            open.wrong = wrong.into();
        }
    }

    /// A fact after its label. Gives what was typed, once: when Enter or leaving the field ends it and it says
    /// something else than before. Esc gives the fact back as it was.
    pub fn fact_ui(&mut self, ui: &mut Ui, fact: Fact<'_>, value: &str) -> Option<String> {
        if value.is_empty() && !self.is_open(fact.key) && self.is_gathered(fact.label, Some(fact.key)) {
            return None;
        }
        row_ui(ui, fact.label, |ui| self.value_ui(ui, fact, value))
    }

    /// A fact without its label before it; else as [`Edit::fact_ui`].
    pub fn value_ui(&mut self, ui: &mut Ui, fact: Fact<'_>, value: &str) -> Option<String> {
        let mut typed = None;
        if self.is_open(fact.key) {
            ui.horizontal_top(|ui| {
                typed = self.field_ui(ui, fact);
                if !fact.unit.is_empty() {
                    ui.label(body(fact.unit));
                }
            });
        } else if shown_ui(ui, fact, value).clicked() {
            self.open(fact.key, value);
        }
        typed.filter(|typed| typed != value)
    }

    /// A fact without its label before it, for a line of several; the label stands in for what is not told yet.
    pub fn inline_ui(&mut self, ui: &mut Ui, fact: Fact<'_>, value: &str) -> Option<String> {
        if self.is_open(fact.key) {
            return self.field_ui(ui, fact).filter(|typed| typed != value);
        }
        let untold = format!("{}…", fact.label);
        let response = shown_ui(ui, fact, if value.is_empty() { &untold } else { value });
        let name = if value.is_empty() { format!("{}: –", fact.label) } else { format!("{}: {value}", fact.label) };
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
        if response.clicked() {
            self.open(fact.key, value);
        }
        None
    }

    /// A fact that is chosen, not typed; `true` when it was pressed.
    pub fn pressed_ui(&mut self, ui: &mut Ui, label: &str, value: &str) -> bool {
        if self.asked.take_if(|asked| asked == label).is_some() {
            return true;
        }
        if value.is_empty() && self.is_gathered(label, None) {
            return false;
        }
        row_ui(ui, label, |ui| pressable_ui(ui, label, value)).clicked()
    }

    /// From here on facts that nobody has told yet are gathered, to stand in the line of the next
    /// [`Edit::untold_ui`].
    pub fn gather_untold(&mut self) {
        self.untold.push(Vec::new());
    }

    /// Whether a fact that nobody has told, and that is no field now, stands in the line of the untold ones.
    fn is_gathered(&mut self, label: &str, key: Option<&str>) -> bool {
        let Some(untold) = self.untold.last_mut() else { return false };
        untold.push((label.to_owned(), key.map(str::to_owned)));
        true
    }

    /// The line of the facts that were gathered; a press turns one into a field.
    pub fn untold_ui(&mut self, ui: &mut Ui, before: &str) {
        let untold = self.untold.pop().unwrap_or_default();
        if untold.is_empty() {
            return;
        }
        ui.horizontal_wrapped(|ui| {
            ui.label(remark(ui, before));
            for (label, key) in untold {
                let response = super::link_ui(ui, &label);
                let name = format!("{label}: –");
                response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
                if response.clicked() {
                    match key {
                        Some(key) => self.open(&key, ""),
                        None => self.asked = Some(label),
                    }
                    // The field stands further up the page.
                    ui.ctx().request_repaint();
                }
            }
        });
    }

    /// The field alone, without the label.
    fn field_ui(&mut self, ui: &mut Ui, fact: Fact<'_>) -> Option<String> {
        let open = self.open.as_mut()?;
        let role = if fact.is_printed { TextRole::Marking } else { TextRole::Body };
        let field = if fact.rows > 1 {
            TextEdit::multiline(&mut open.typed).desired_rows(fact.rows)
        } else {
            TextEdit::singleline(&mut open.typed)
        };
        let response = ui
            .vertical(|ui| {
                let ink = ui.tokens().ink;
                let widest = if fact.unit.is_empty() { 100.0 * GRID } else { 28.0 * GRID };
                let width = ui.available_width().min(widest);
                let response = ui.add(field.desired_width(width).font(role.font()).text_color(ink));
                if !open.wrong.is_empty() {
                    ui.label(small(&open.wrong).color(ui.tokens().power_unknown));
                }
                response
            })
            .inner;
        ui.ctx().accesskit_node_builder(response.id, |node| node.set_label(fact.label));
        if std::mem::take(&mut open.is_fresh) {
            response.request_focus();
            response.scroll_to_me(None);
            return None;
        }
        if !response.lost_focus() {
            return None;
        }
        let is_given_up = ui.input(|input| input.key_pressed(Key::Escape));
        self.open.take().map(|open| open.typed.trim().to_owned()).filter(|_| !is_given_up)
    }
}

/// A label with something after it, facts of a desk standing in line.
pub fn row_ui<R>(ui: &mut Ui, label: &str, inside: impl FnOnce(&mut Ui) -> R) -> R {
    ui.horizontal_top(|ui| {
        ui.allocate_ui(vec2(LABEL, 5.0 * GRID), |ui| {
            ui.set_width(LABEL);
            ui.add(egui::Label::new(remark(ui, label)).wrap());
        });
        ui.vertical(|ui| inside(ui)).inner
    })
    .inner
}

/// A fact as text that can be pressed; its name is label and value.
pub fn pressable_ui(ui: &mut Ui, label: &str, value: &str) -> Response {
    shown_ui(ui, Fact::line("", label), value)
}

fn shown_ui(ui: &mut Ui, fact: Fact<'_>, value: &str) -> Response {
    let tokens = ui.tokens();
    let (words, colour) = match (value, fact.unit) {
        ("", _) => ("–".to_owned(), tokens.ink_weak),
        (value, "") => (value.to_owned(), tokens.ink),
        (figure, unit) => (format!("{figure} {unit}"), tokens.ink),
    };
    let text = if fact.is_printed { RichText::new(&words).font(TextRole::Marking.font()) } else { body(&words) };
    let response = ui
        .scope(|ui| {
            ui.spacing_mut().button_padding = vec2(0.0, 0.0);
            ui.spacing_mut().interact_size.y = 5.0 * GRID;
            ui.add(Button::new(text.color(colour)).frame(false).wrap())
        })
        .inner;
    if response.hovered() || response.has_focus() {
        let line = egui::Stroke::new(1.0, tokens.press);
        ui.painter().hline(response.rect.x_range(), response.rect.bottom(), line);
    }
    let name = format!("{}: {words}", fact.label);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
    response
}
