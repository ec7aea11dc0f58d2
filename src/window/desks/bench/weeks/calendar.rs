//! Days on a line: from today to as far as is looked ahead.

use chrono::{Datelike, Duration, NaiveDate};
use egui::{Rect, Shape, Stroke, Ui, pos2, vec2};

use crate::assess::schedule::Slot;
use crate::window::theme::{GRID, TextRole, Themed};

crate::words! {
    /// How far ahead is looked.
    Horizon {
        Month = "month", "4 weeks";
        Quarter = "quarter", "13 weeks";
        Year = "year", "A year";
        All = "all", "All of it";
    }
}

const DAY: f64 = 24.0 * 60.0;

/// A line of days that rows share.
#[derive(Clone, Copy, Debug)]
pub struct Calendar {
    today: NaiveDate,
    /// Minutes of the calendar that the line is long.
    minutes: f64,
}

impl Calendar {
    /// The line from today on; `end_minutes` after its first minute all is over.
    pub fn new(today: NaiveDate, horizon: Horizon, end_minutes: f64) -> Self {
        let days = match horizon {
            Horizon::Month => 28.0,
            Horizon::Quarter => 91.0,
            Horizon::Year => 365.0,
            Horizon::All => (end_minutes / DAY).ceil().max(7.0),
        };
        Self { today, minutes: days * DAY }
    }

    fn x(&self, rect: Rect, minutes: f64) -> f32 {
        rect.left() + rect.width() * (minutes / self.minutes).clamp(0.0, 1.0) as f32
    }

    fn x_of_day(&self, rect: Rect, day: NaiveDate) -> f32 {
        self.x(rect, (day - self.today).num_days() as f64 * DAY)
    }

    /// The days that are written over the line: Mondays, or the first of months where weeks stand too close.
    fn marks(&self, width: f32) -> Vec<NaiveDate> {
        let days = (self.minutes / DAY) as i64;
        let room = ((width / (20.0 * GRID)) as i64).max(1);
        let all = (0..days).map(|ahead| self.today + Duration::days(ahead));
        if days / 7 <= room {
            return all.filter(|day| day.weekday() == chrono::Weekday::Mon).collect();
        }
        // Every so many months, so that their names do not run into each other.
        let step = [1, 2, 3, 6, 12, 24, 60, 120].into_iter().find(|step| days / 30 / step <= room).unwrap_or(240);
        let is_mark = |day: &NaiveDate| day.day() == 1 && (day.year() * 12 + day.month0() as i32) % step as i32 == 0;
        all.filter(is_mark).collect()
    }

    /// The dates, over the column of the bars.
    pub fn heading_ui(&self, ui: &Ui, rect: Rect) {
        let tokens = ui.tokens();
        let painter = ui.painter().with_clip_rect(rect);
        for day in self.marks(rect.width()) {
            let x = self.x_of_day(rect, day);
            painter.vline(x, rect.bottom() - GRID..=rect.bottom(), Stroke::new(1.0, tokens.ink_weak));
            let said = if day.day() == 1 && self.minutes / DAY > 180.0 {
                day.format("%Y-%m").to_string()
            } else {
                day.format("%m-%d").to_string()
            };
            let at = pos2(x + 2.0, rect.center().y);
            painter.text(at, egui::Align2::LEFT_CENTER, said, TextRole::Small.font(), tokens.ink_weak);
        }
    }

    fn ground(&self, ui: &Ui, rect: Rect) {
        let hairline = ui.tokens().hairline;
        for day in self.marks(rect.width()) {
            ui.painter().vline(self.x_of_day(rect, day), rect.y_range(), Stroke::new(1.0, hairline));
        }
    }

    /// A piece: a full bar for the hands, a line for what runs by itself. On a longest path the bar is tall and has a
    /// stem; an arrow says that it lies behind the end of the line.
    pub fn piece_ui(&self, ui: &Ui, rect: Rect, slot: Slot, is_critical: bool) {
        self.ground(ui, rect);
        let tokens = ui.tokens();
        let painter = ui.painter();
        let colour = if is_critical { tokens.gate_here } else { tokens.span_part };
        let middle = rect.center().y;
        if slot.start >= self.minutes {
            let tip = pos2(rect.right() - 1.0, middle);
            let tail = [tip, tip - vec2(1.5 * GRID, GRID), tip - vec2(1.5 * GRID, -GRID)];
            painter.add(Shape::convex_polygon(tail.to_vec(), colour, Stroke::NONE));
            return;
        }
        let (from, free, over) = (self.x(rect, slot.start), self.x(rect, slot.hands_free), self.x(rect, slot.over));
        let half = if is_critical { 2.0 * GRID } else { GRID };
        let bar = Rect::from_x_y_ranges(from..=free.max(from + 2.0), middle - half..=middle + half);
        painter.rect_filled(bar, 1.0, colour);
        if is_critical {
            painter.vline(from, rect.top() + 2.0..=rect.bottom() - 2.0, Stroke::new(1.5, colour));
        }
        if over > bar.right() {
            painter.hline(bar.right()..=over, middle, Stroke::new(1.5, colour));
            painter.vline(over, middle - GRID..=middle + GRID, Stroke::new(1.5, colour));
        }
    }

    /// When a machine is ready: a box from the early to the late day, a filled mark on the expected one.
    pub fn ready_ui(&self, ui: &Ui, rect: Rect, [early, ready, late]: [NaiveDate; 3]) {
        self.ground(ui, rect);
        let tokens = ui.tokens();
        let painter = ui.painter();
        let middle = rect.center().y;
        // Up to the end of a day it is that day.
        let end = |day: NaiveDate| self.x_of_day(rect, day + Duration::days(1));
        let span = Rect::from_x_y_ranges(
            self.x_of_day(rect, early)..=end(late).max(self.x_of_day(rect, early) + 2.0),
            middle - 1.5 * GRID..=middle + 1.5 * GRID,
        );
        painter.rect_filled(span, 1.0, tokens.span_window);
        painter.rect_stroke(span, 1.0, Stroke::new(1.0, tokens.gate_passed), egui::StrokeKind::Inside);
        let at = pos2(f32::midpoint(self.x_of_day(rect, ready), end(ready)), middle);
        let side = 1.5 * GRID;
        let corners = [vec2(0.0, -side), vec2(side, 0.0), vec2(0.0, side), vec2(-side, 0.0)];
        let diamond = corners.iter().map(|corner| at + *corner).collect();
        painter.add(Shape::convex_polygon(diamond, tokens.gate_passed, Stroke::NONE));
    }
}
