//! Readings of one quantity over time: points on a line of days, over the band that the trade allows.

use chrono::NaiveDate;
use egui::{Rect, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use crate::record::Reading;
use crate::text;
use crate::text::say;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{small, strong};

/// Figures of one quantity in one unit, by day.
#[derive(Debug)]
pub struct OverTime<'a> {
    quantity: &'a str,
    unit: &'a str,
    points: Vec<(NaiveDate, f64)>,
}

/// Every quantity that was read on more than one day, each with its figures, oldest first.
pub fn series<'a>(readings: impl Iterator<Item = &'a Reading>) -> Vec<OverTime<'a>> {
    let mut all: Vec<OverTime<'a>> = Vec::new();
    for reading in readings {
        // A day that nobody remembers has no place on the line.
        let Some(span) = reading.measured.on.span() else { continue };
        let point = (span.first, reading.value);
        match all.iter_mut().find(|known| (known.quantity, known.unit) == (&reading.quantity, &reading.unit)) {
            Some(known) => known.points.push(point),
            None => all.push(OverTime { quantity: &reading.quantity, unit: &reading.unit, points: vec![point] }),
        }
    }
    for one in &mut all {
        one.points.sort_by_key(|(day, _)| *day);
    }
    all.retain(|one| one.points.first().map(|point| point.0) != one.points.last().map(|point| point.0));
    all
}

impl OverTime<'_> {
    /// What was read.
    pub fn quantity(&self) -> &str {
        self.quantity
    }

    /// What a screen reader says: every figure with its day.
    fn said(&self, band: Option<(f64, f64)>) -> String {
        let figures: Vec<String> =
            self.points.iter().map(|(day, value)| format!("{day}: {value} {}", self.unit).trim().to_owned()).collect();
        let said =
            text!("{quantity} over time: {figures}", quantity = say(self.quantity), figures = figures.join("; "));
        match band {
            Some((least, most)) => {
                format!(
                    "{said}. {}",
                    text!("Allowed: {least} to {most} {unit}", least = least, most = most, unit = self.unit)
                )
            }
            None => said,
        }
    }

    /// Draws the line; `band` is what is allowed.
    pub fn ui(&self, ui: &mut Ui, band: Option<(f64, f64)>) {
        ui.label(strong(say(self.quantity)));
        let size = vec2(ui.available_width().min(160.0 * GRID), 32.0 * GRID);
        let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
        let said = self.said(band);
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &said));
        self.paint(ui, rect, band);
        if let Some((day, value)) = self.points.last() {
            ui.label(small(text!("last {value} {unit} on {day}", value = value, unit = self.unit, day = day)));
        }
    }

    fn paint(&self, ui: &Ui, whole: Rect, band: Option<(f64, f64)>) {
        let tokens = ui.tokens();
        let painter = ui.painter();
        let (Some((first, _)), Some((last, _))) = (self.points.first(), self.points.last()) else { return };
        let values = self.points.iter().map(|(_, value)| *value).chain(band.iter().flat_map(|(a, b)| [*a, *b]));
        let (least, most) =
            values.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), value| (a.min(value), b.max(value)));
        // A little room above and below, also where all figures are the same.
        let room = ((most - least) * 0.1).max(most.abs() * 0.01).max(1e-9);
        let (least, most) = (least - room, most + room);
        let rect = Rect::from_min_max(whole.min + vec2(18.0 * GRID, GRID), whole.max - vec2(2.0 * GRID, 5.0 * GRID));
        let days = (*last - *first).num_days().max(1) as f32;
        let x = |day: NaiveDate| rect.left() + rect.width() * (day - *first).num_days() as f32 / days;
        let y = |value: f64| rect.bottom() - rect.height() * ((value - least) / (most - least)) as f32;
        if let Some((weak, strong)) = band {
            let allowed = Rect::from_x_y_ranges(rect.x_range(), y(weak.max(strong))..=y(weak.min(strong)));
            painter.rect_filled(allowed, 0.0, tokens.power_yes_wash);
        }
        painter.hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, tokens.ink_weak));
        painter.vline(rect.left(), rect.y_range(), Stroke::new(1.0, tokens.ink_weak));
        let font = TextRole::Small.font();
        for value in [least + room, most - room] {
            let at = pos2(rect.left() - GRID, y(value));
            let figure = format!("{value:.4}");
            let figure = figure.trim_end_matches('0').trim_end_matches('.');
            painter.text(at, egui::Align2::RIGHT_CENTER, figure, font.clone(), tokens.ink_weak);
        }
        for (day, align) in [(*first, egui::Align2::LEFT_TOP), (*last, egui::Align2::RIGHT_TOP)] {
            painter.text(pos2(x(day), rect.bottom() + 2.0), align, day.to_string(), font.clone(), tokens.ink_weak);
        }
        let line: Vec<_> = self.points.iter().map(|(day, value)| pos2(x(*day), y(*value))).collect();
        painter.line(line, Stroke::new(1.0, tokens.ink_weak));
        for (day, value) in &self.points {
            let at = pos2(x(*day), y(*value));
            let is_outside = band.is_some_and(|(a, b)| *value < a.min(b) || *value > a.max(b));
            if is_outside {
                // Outside the band it is an empty square: the shape tells as much as the hue.
                let square = Rect::from_center_size(at, vec2(2.0 * GRID, 2.0 * GRID));
                painter.rect_stroke(square, 0.0, Stroke::new(2.0, tokens.power_no), egui::StrokeKind::Middle);
            } else {
                painter.circle_filled(at, 0.75 * GRID, tokens.span_part);
            }
        }
    }
}
