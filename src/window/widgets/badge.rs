//! Mark, word and hue together: holds, severities, and whether power may be applied.

use egui::{Color32, FontId, Response, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use crate::assess::fit::Verdict;
use crate::record::{Hold, Severity, Word};
use crate::text;
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed, Tokens};
use crate::window::widgets::body;

/// Whether power may be applied, in the window's words; "not known" is shown as "do not".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PowerWord {
    No,
    Unknown,
    Yes,
}

impl PowerWord {
    /// What it says.
    pub fn label(self) -> &'static str {
        match self {
            Self::No => text!("Do not apply power"),
            Self::Unknown => text!("Not known: do not apply power"),
            Self::Yes => text!("Power may be applied"),
        }
    }

    fn mark(self) -> Mark {
        match self {
            Self::No => Mark::PowerNo,
            Self::Unknown => Mark::PowerUnknown,
            Self::Yes => Mark::PowerYes,
        }
    }

    fn colours(self, tokens: &Tokens) -> (Color32, Color32) {
        match self {
            Self::No => (tokens.power_no, tokens.power_no_wash),
            Self::Unknown => (tokens.power_unknown, tokens.power_unknown_wash),
            Self::Yes => (tokens.power_yes, tokens.power_yes_wash),
        }
    }
}

/// The hue of a hold.
fn hold_colour(tokens: &Tokens, hold: Hold) -> Color32 {
    match hold {
        Hold::Storage => tokens.hold_storage,
        Hold::Power => tokens.hold_power,
        Hold::Fitting => tokens.hold_fitting,
        Hold::Ready => tokens.hold_ready,
        Hold::Looks => tokens.hold_looks,
    }
}

fn severity_colour(tokens: &Tokens, severity: Severity) -> Color32 {
    match severity {
        Severity::Slight => tokens.severity_slight,
        Severity::Plain => tokens.severity_plain,
        Severity::Grave => tokens.severity_grave,
    }
}

/// A mark and a word in one hue; `name` is what a screen reader says.
pub fn badge_ui(ui: &mut Ui, mark: Mark, word: &str, name: &str, colour: Color32) -> Response {
    line_ui(ui, mark, word, name, colour, TextRole::Body.font(), 4.0 * GRID)
}

/// What a piece of work holds up.
pub fn hold_ui(ui: &mut Ui, hold: Hold) -> Response {
    let colour = hold_colour(&ui.tokens(), hold);
    let name = text!("Holds up: {hold}", hold = hold.label());
    badge_ui(ui, Mark::of_hold(hold), hold.label(), &name, colour)
}

/// How bad a finding is.
pub fn severity_ui(ui: &mut Ui, severity: Severity) -> Response {
    let colour = severity_colour(&ui.tokens(), severity);
    let name = text!("Severity: {severity}", severity = severity.label());
    badge_ui(ui, Mark::of_severity(severity), severity.label(), &name, colour)
}

/// Whether power may be applied, large, on its own wash.
pub fn power_ui(ui: &mut Ui, word: PowerWord) -> Response {
    let (colour, wash) = word.colours(&ui.tokens());
    egui::Frame::new()
        .fill(wash)
        .inner_margin(egui::Margin::symmetric(12, 8))
        .corner_radius(3)
        .show(ui, |ui| line_ui(ui, word.mark(), word.label(), word.label(), colour, TextRole::Title.font(), 6.0 * GRID))
        .inner
}

/// Whether power may be applied, in a line among others.
pub fn power_badge_ui(ui: &mut Ui, word: PowerWord) -> Response {
    let (colour, _) = word.colours(&ui.tokens());
    badge_ui(ui, word.mark(), word.label(), word.label(), colour)
}

/// A mark alone, beside a word that says the same.
pub fn mark_ui(ui: &mut Ui, mark: Mark, colour: Color32) {
    let side = 4.0 * GRID;
    let (rect, _) = ui.allocate_exact_size(vec2(side, side), Sense::hover());
    marks::draw(ui.painter(), rect, mark, colour);
}

fn line_ui(ui: &mut Ui, mark: Mark, word: &str, name: &str, colour: Color32, font: FontId, side: f32) -> Response {
    let galley = ui.painter().layout_no_wrap(word.to_owned(), font, colour);
    let gap = 1.5 * GRID;
    let size = vec2(side + gap + galley.size().x, side.max(galley.size().y));
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    if ui.is_rect_visible(rect) {
        let mark_rect = egui::Rect::from_center_size(pos2(rect.left() + side / 2.0, rect.center().y), vec2(side, side));
        marks::draw(ui.painter(), mark_rect, mark, colour);
        let at = pos2(rect.left() + side + gap, rect.center().y - galley.size().y / 2.0);
        ui.painter().galley(at, galley, colour);
    }
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, name));
    response
}

impl Tokens {
    /// The hue of a hold.
    pub fn hold(&self, hold: Hold) -> Color32 {
        hold_colour(self, hold)
    }

    /// The hue of a verdict of fit.
    pub fn fit(&self, verdict: Verdict) -> Color32 {
        match verdict {
            Verdict::Fits => self.fit_well,
            Verdict::Caveat => self.fit_caveat,
            Verdict::NotKnown => self.fit_unknown,
            Verdict::No => self.fit_not,
        }
    }

    /// The hue of a severity.
    pub fn severity(&self, severity: Severity) -> Color32 {
        severity_colour(self, severity)
    }
}

/// A caution: mark, word and hue.
pub fn caution_ui(ui: &mut Ui, caution: &str) {
    ui.horizontal_top(|ui| {
        mark_ui(ui, Mark::Heed, ui.tokens().hold_power);
        ui.add_space(-GRID);
        ui.vertical(|ui| ui.label(body(caution).color(ui.tokens().hold_power)));
    });
}
