//! Reasons of fit, worst first; each shows its rule and source when it is pressed, and leads to the figure it lacks.

use egui::{Button, Role, Ui, WidgetInfo};

use super::gathered::{Shown, Told, mark_of};
use crate::counted;
use crate::record::Word;
use crate::text;
use crate::window::desks::part_sheet::Spot;
use crate::window::outbox::Outbox;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, link_ui, mark_ui, press_ui, remark};

/// How many reasons are shown before the rest is folded away.
const SHOWN: usize = 6;
/// The room for the way to a figure beside its reason, points.
const ENTER: f32 = 26.0 * GRID;

/// What is unfolded.
#[derive(Debug, Default)]
pub struct Reasons {
    /// The reason that shows what it rests on.
    open: Option<usize>,
    shows_all: bool,
    shows_fitting: bool,
}

impl Reasons {
    /// Draws what speaks against it, and in one line what fits.
    pub fn ui(&mut self, ui: &mut Ui, shown: &Shown, outbox: &mut Outbox) {
        let most = if self.shows_all { shown.against.len() } else { SHOWN };
        for (at, told) in shown.against.iter().enumerate().take(most) {
            ui.push_id(("reason", at), |ui| {
                if told_ui(ui, told, self.open == Some(at), outbox) {
                    self.open = if self.open == Some(at) { None } else { Some(at) };
                }
            });
        }
        let folded = shown.against.len().saturating_sub(SHOWN);
        if folded > 0 {
            let word = if self.shows_all {
                text!("Fold them").to_owned()
            } else {
                counted!("and {count} more reason", "and {count} more reasons", folded)
            };
            self.shows_all ^= link_ui(ui, &word).clicked();
        }
        self.fitting_ui(ui, shown);
    }

    fn fitting_ui(&mut self, ui: &mut Ui, shown: &Shown) {
        if shown.fitting.is_empty() {
            return;
        }
        let mut names: Vec<&str> = shown.fitting.iter().map(|told| told.constraint.label()).collect();
        names.dedup();
        let line = text!("What fits: {constraints}", constraints = names.join(", ").to_lowercase());
        ui.horizontal_wrapped(|ui| {
            let (mark, colour) = mark_of(crate::assess::fit::Verdict::Fits, &ui.tokens());
            mark_ui(ui, mark, colour);
            let button = Button::new(remark(ui, &line)).frame(false).wrap();
            self.shows_fitting ^= ui.add(button).on_hover_text(text!("Shows each with what it rests on")).clicked();
        });
        if self.shows_fitting {
            for told in &shown.fitting {
                ui.label(body(&told.sentence));
                ui.label(remark(ui, told.rests_on()));
            }
        }
    }
}

/// One reason; `true` when it was pressed.
pub fn told_ui(ui: &mut Ui, told: &Told, is_open: bool, outbox: &mut Outbox) -> bool {
    let tokens = ui.tokens();
    let (mark, colour) = mark_of(told.verdict, &tokens);
    let mut is_pressed = false;
    ui.horizontal_top(|ui| {
        mark_ui(ui, mark, colour);
        let beside = if told.missing.is_some() { ENTER } else { GRID };
        let widest = ui.available_width() - beside;
        ui.vertical(|ui| {
            ui.set_max_width(widest);
            let button = Button::new(body(&told.sentence).color(tokens.ink)).frame(false).wrap();
            let response = ui.add(button).on_hover_text(told.rests_on());
            let name = format!("{}: {}", told.verdict.label(), told.sentence);
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
            is_pressed = response.clicked();
        });
        if let Some((part, figure)) = told.missing {
            let enter = press_ui(ui, text!("Enter it"), text!("Opens the figure on the part’s sheet"), None);
            let name = text!("Enter it: {sentence}", sentence = told.sentence);
            enter.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
            if enter.clicked() {
                outbox.show(part, Some(Spot::Figure(figure)));
            }
        }
    });
    if is_open {
        ui.horizontal_wrapped(|ui| {
            ui.add_space(6.0 * GRID);
            ui.label(remark(ui, format!("{}. {}", told.verdict.label(), told.rests_on())));
            if let Some(part) = told.part
                && link_ui(ui, text!("Open the part")).clicked()
            {
                outbox.show(part, Some(told.missing.map_or(Spot::Design, |(_, figure)| Spot::Figure(figure))));
            }
        });
    }
    is_pressed
}
