//! The lines of the Bench's table: headings of groups, and pieces of work.

use egui::Id;

use super::order::{Line, Order};
use crate::assess::outstanding::hours_text;
use crate::assess::{PartAnswers, Task};
use crate::record::{Competence, Word, WorkState};
use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Cells, Column, Rows, Width};

const WHAT: usize = 0;
const PART: usize = 1;
const HOLDS: usize = 2;
const MINUTES: usize = 3;
const STAND: usize = 4;

/// The columns, in the reader's language.
pub fn columns() -> [Column<'static>; 5] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("What to do"), Width::Share(3.0), 0.0),
        column(text!("Part"), Width::Share(2.0), 0.0),
        column(text!("Holds up"), Width::Points(30.0 * GRID), 0.0),
        column(text!("Takes"), Width::Points(20.0 * GRID), 160.0 * GRID),
        column(text!("Stands"), Width::Points(32.0 * GRID), 140.0 * GRID),
    ]
}

/// The lines of an order.
pub struct Lines<'a> {
    pub order: &'a Order,
}

impl Lines<'_> {
    fn task(&self, row: usize) -> Option<(&PartAnswers, &Task)> {
        match self.order.lines.get(row)? {
            Line::Group(_) => None,
            Line::Task { part, task } => self.order.task(*part, *task),
        }
    }
}

/// How a task stands, in a word or two.
pub fn stand_text(task: &Task) -> &'static str {
    match task.state {
        WorkState::Doing => text!("under way"),
        WorkState::Waiting => text!("wants material"),
        WorkState::Failed => text!("failed"),
        _ if task.doable => text!("can start"),
        _ => text!("waits"),
    }
}

/// What it takes: hands-on time, and the hours that need nobody.
pub fn takes_text(task: &Task) -> String {
    match (task.minutes(), task.wait_hours()) {
        (0, 0) => String::new(),
        (minutes, 0) => hours_text(minutes),
        (minutes, hours) => text!("{hands} + {hours} h", hands = hours_text(minutes), hours = hours),
    }
}

impl Rows for Lines<'_> {
    fn count(&self) -> usize {
        self.order.lines.len()
    }

    fn key(&self, row: usize) -> Id {
        match self.task(row) {
            Some((part, task)) => Id::unique((part.part, task.key())),
            None => Id::unique(("group", row)),
        }
    }

    fn name(&self, row: usize) -> String {
        if let Some((part, task)) = self.task(row) {
            let title = self.order.logbook.title_of(&part.file);
            return text!(
                "{what}, {tag} {title}, holds up {hold}, {stand}",
                what = task.title(),
                tag = part.file.part.tag,
                title = title,
                hold = task.hold.label().to_lowercase(),
                stand = stand_text(task)
            );
        }
        match self.order.lines.get(row) {
            Some(Line::Group(group)) => self.order.groups[*group as usize].title.clone(),
            _ => String::new(),
        }
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let tokens = cells.canvas().tokens();
        if let Some((part, task)) = self.task(row) {
            let colour = if task.doable { tokens.ink } else { tokens.ink_weak };
            cells.text_in(WHAT, task.title(), TextRole::Body, colour);
            let title = self.order.logbook.title_of(&part.file);
            cells.remark(PART, &format!("{}  {title}", part.file.part.tag));
            cells.mark(HOLDS, Mark::of_hold(task.hold), task.hold.label(), tokens.hold(task.hold));
            cells.remark(MINUTES, &takes_text(task));
            let stand = match task.who() {
                Competence::Oneself => stand_text(task).to_owned(),
                other => format!("{}, {}", stand_text(task), other.label().to_lowercase()),
            };
            cells.text_in(STAND, &stand, TextRole::Body, colour);
            return;
        }
        if let Some(Line::Group(group)) = self.order.lines.get(row) {
            let group = &self.order.groups[*group as usize];
            cells.text_in(WHAT, &group.title, TextRole::Section, tokens.ink);
            cells.remark(MINUTES, &hours_text(group.totals.minutes));
            cells.remark(
                STAND,
                &text!("{doable} of {all} can start", doable = group.totals.doable, all = group.totals.tasks),
            );
        }
    }
}
