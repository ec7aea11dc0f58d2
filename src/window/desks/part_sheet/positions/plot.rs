//! Figures measured over time: points on a line, and the band that they should keep to.

use egui::{Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::super::about::day_text;
use crate::record::When;
use crate::text;
use crate::window::theme::{GRID, TextRole, Themed};

/// One figure of a day.
#[derive(Clone, Copy, Debug)]
pub struct Point {
    pub on: When,
    pub value: f64,
}

const HEIGHT: f32 = 30.0 * GRID;

/// Draws two or more points in the order of their days; its name says them all. Nothing for fewer.
pub fn plot_ui(ui: &mut Ui, label: &str, unit: &str, points: &[Point], band: Option<(f64, f64)>) {
    let days: Vec<(i64, f64)> = points
        .iter()
        .filter_map(|point| Some((i64::from(chrono::Datelike::num_days_from_ce(&point.on.span()?.last)), point.value)))
        .collect();
    if days.len() < 2 {
        return;
    }
    let tokens = ui.tokens();
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width().min(100.0 * GRID), HEIGHT), Sense::hover());
    let told: Vec<String> =
        points.iter().map(|point| format!("{} {} {unit}", day_text(point.on), point.value)).collect();
    let name = text!("{label}: {points}", label = label, points = told.join("; "));
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
    let ends = band.map_or(Vec::new(), |(least, most)| vec![least, most]);
    let figures = || days.iter().map(|(_, value)| *value).chain(ends.iter().copied());
    let (least, most) = (figures().fold(f64::MAX, f64::min).min(0.0), figures().fold(f64::MIN, f64::max));
    let (first, last) = (days.iter().map(|day| day.0).min(), days.iter().map(|day| day.0).max());
    let (Some(first), Some(last)) = (first, last) else { return };
    let plot = rect.shrink2(vec2(2.0 * GRID, 4.0 * GRID)).with_min_x(rect.left() + 16.0 * GRID);
    let x = |day: i64| plot.left() + (day - first) as f32 / (last - first).max(1) as f32 * plot.width();
    let y =
        |value: f64| plot.bottom() - ((value - least) / (most - least).max(f64::MIN_POSITIVE)) as f32 * plot.height();
    let painter = ui.painter();
    if let Some((low, high)) = band {
        let within = egui::Rect::from_x_y_ranges(plot.x_range(), y(high)..=y(low));
        painter.rect_filled(within, 0.0, tokens.span_window);
    }
    painter.hline(plot.x_range(), plot.bottom(), Stroke::new(1.0, tokens.ink_weak));
    for value in [least, most] {
        let at = pos2(plot.left() - GRID, y(value));
        let said = format!("{} {unit}", rounded(value));
        painter.text(at, egui::Align2::RIGHT_CENTER, said, TextRole::Small.font(), tokens.ink_weak);
    }
    for (at, day, side) in [
        (plot.left(), points[0].on, egui::Align2::LEFT_TOP),
        (plot.right(), points[points.len() - 1].on, egui::Align2::RIGHT_TOP),
    ] {
        painter.text(pos2(at, plot.bottom()), side, day_text(day), TextRole::Small.font(), tokens.ink_weak);
    }
    let marks: Vec<egui::Pos2> = days.iter().map(|(day, value)| pos2(x(*day), y(*value))).collect();
    painter.line(marks.clone(), Stroke::new(1.5, tokens.ink));
    for at in marks {
        painter.circle_filled(at, 3.0, tokens.ink);
    }
    let at = pos2(plot.left(), rect.top());
    painter.text(at, egui::Align2::LEFT_TOP, label, TextRole::Small.font(), tokens.ink);
}

/// Three figures are enough on an axis.
fn rounded(value: f64) -> String {
    if value.abs() >= 100.0 || value == 0.0 { format!("{value:.0}") } else { format!("{value:.2}") }
}
