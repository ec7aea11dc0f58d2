//! A span of dates drawn against a window of dates, on a line of years.

use chrono::{Datelike, NaiveDate};
use egui::{Rect, Response, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use crate::text;
use crate::trade::Span;
use crate::window::theme::{GRID, TextRole, Themed};

/// A line of years that several bars can share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpanBar {
    /// The years that the line runs over.
    pub axis: Span,
    /// The dates that a machine is true to.
    pub window: Option<Span>,
}

/// A span in few characters: "1996", "1994–1997", "1996-03", "1996-03-12".
pub fn years_text(span: Span) -> String {
    let Span { first, last } = span;
    if first == last {
        first.to_string()
    } else if first.year() != last.year() {
        format!("{}–{}", first.year(), last.year())
    } else if first.month() == last.month() {
        first.format("%Y-%m").to_string()
    } else if (first.ordinal(), last.month(), last.day()) == (1, 12, 31) {
        first.year().to_string()
    } else {
        format!("{}–{}", first.format("%Y-%m"), last.format("%m"))
    }
}

impl SpanBar {
    /// A line wide enough for all given spans, to whole years with one to spare; `None` without any.
    pub fn around(spans: impl IntoIterator<Item = Span>, window: Option<Span>) -> Option<Self> {
        let all = spans
            .into_iter()
            .chain(window)
            .reduce(|one, other| Span { first: one.first.min(other.first), last: one.last.max(other.last) })?;
        let axis = Span {
            first: NaiveDate::from_ymd_opt(all.first.year() - 1, 1, 1)?,
            last: NaiveDate::from_ymd_opt(all.last.year() + 1, 12, 31)?,
        };
        Some(Self { axis, window })
    }

    fn x(&self, rect: Rect, day: NaiveDate) -> f32 {
        let days = (self.axis.last - self.axis.first).num_days().max(1) as f32;
        rect.left() + rect.width() * (day - self.axis.first).num_days() as f32 / days
    }

    /// One span on the line; `name` is whose it is.
    pub fn ui(&self, ui: &mut Ui, name: &str, span: Option<Span>, width: f32) -> Response {
        let (rect, response) = ui.allocate_exact_size(vec2(width, 5.0 * GRID), Sense::hover());
        self.paint(ui, rect, span);
        response.widget_info(|| WidgetInfo::labeled(Role::Label, true, self.said(name, span)));
        response
    }

    fn said(&self, name: &str, span: Option<Span>) -> String {
        match (span, self.window) {
            (None, _) => text!("{name}: no date known", name = name),
            (Some(span), Some(window)) if span.overlap(window).is_none() => {
                let weeks = span.weeks_from(window).unsigned_abs();
                text!(
                    "{name}: {span}, {weeks} weeks outside the window",
                    name = name,
                    span = years_text(span),
                    weeks = weeks
                )
            }
            (Some(span), _) => format!("{name}: {}", years_text(span)),
        }
    }

    /// Paints one span into a rectangle.
    pub fn paint(&self, ui: &Ui, rect: Rect, span: Option<Span>) {
        let tokens = ui.tokens();
        let painter = ui.painter();
        if let Some(window) = self.window {
            let (from, to) = (self.x(rect, window.first), self.x(rect, window.last));
            painter.rect_filled(Rect::from_x_y_ranges(from..=to, rect.y_range()), 0.0, tokens.span_window);
        }
        painter.hline(rect.x_range(), rect.center().y, Stroke::new(1.0, tokens.hairline));
        let Some(span) = span else { return };
        let is_outside = self.window.is_some_and(|window| span.overlap(window).is_none());
        let colour = if is_outside { tokens.span_outside } else { tokens.span_part };
        let from = self.x(rect, span.first);
        let to = self.x(rect, span.last).max(from + GRID);
        let bar = Rect::from_x_y_ranges(from..=to, rect.center().y - GRID..=rect.center().y + GRID);
        if is_outside {
            // Outside the window it is an empty box: the shape tells as much as the hue.
            painter.rect_stroke(bar, 1.0, Stroke::new(1.5, colour), egui::StrokeKind::Inside);
        } else {
            painter.rect_filled(bar, 1.0, colour);
        }
    }

    /// The years under the line, as many as there is room for.
    pub fn years_ui(&self, ui: &mut Ui, width: f32) {
        let (rect, _) = ui.allocate_exact_size(vec2(width, 4.0 * GRID), Sense::hover());
        let tokens = ui.tokens();
        let (first, last) = (self.axis.first.year(), self.axis.last.year());
        let room = (width / (12.0 * GRID)).max(1.0) as i32;
        let step = ((last - first) / room + 1).max(1);
        for year in (first..=last).filter(|year| (year - first) % step == 0) {
            if let Some(day) = NaiveDate::from_ymd_opt(year, 1, 1) {
                let at = pos2(self.x(rect, day), rect.top());
                ui.painter().text(at, egui::Align2::LEFT_TOP, year, TextRole::Small.font(), tokens.ink_weak);
            }
        }
    }
}
