//! The lines of the calendar: each machine, and below it the pieces it is the most urgent for.

use std::collections::{HashMap, HashSet};
use std::sync::Arc;

use egui::{Id, Rect, Ui};

use super::calendar::Calendar;
use crate::assess::Answers;
use crate::assess::reason::{machine_name, part_name};
use crate::assess::schedule::{Ground, MachinePlan, Planned, Schedule, Terms, Undated, circle_sentence, schedule};
use crate::record::Logbook;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Cells, Column, Width};
use crate::{counted, text};

/// What is asked of the lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    pub terms: Terms,
    /// Only pieces on the longest path of their machine.
    pub only_longest: bool,
}

/// One line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// A place among the schedule's machines.
    Machine(usize),
    /// A place among the planned.
    Piece(usize),
}

/// The schedule with what it was made of, and its lines.
pub struct Plan {
    pub answers: Arc<Answers>,
    pub logbook: Arc<Logbook>,
    pub made: Schedule,
    pub lines: Vec<Line>,
    /// Places among the planned that are on a machine's longest path.
    critical: HashSet<usize>,
    /// When all is over, the late ends of machines included, in minutes of the calendar from today on.
    pub end_minutes: f64,
}

impl Plan {
    /// The schedule and its lines.
    ///
    /// # Errors
    /// Says which pieces come after each other in a circle.
    pub fn of(answers: Arc<Answers>, logbook: Arc<Logbook>, ground: &Ground, wanted: Wanted) -> Result<Self, String> {
        let made = schedule(&answers, ground, wanted.terms).map_err(|circle| circle_sentence(&circle, &answers))?;
        let critical: HashSet<usize> = made.machines.iter().flat_map(|machine| &machine.critical).copied().collect();
        let mut of_machine: HashMap<_, Vec<usize>> = HashMap::new();
        for (at, planned) in made.planned.iter().enumerate() {
            if !wanted.only_longest || critical.contains(&at) {
                of_machine.entry(planned.machine).or_default().push(at);
            }
        }
        let mut lines = Vec::new();
        for (at, machine) in made.machines.iter().enumerate() {
            lines.push(Line::Machine(at));
            lines.extend(of_machine.remove(&machine.machine).unwrap_or_default().into_iter().map(Line::Piece));
        }
        let last = made.machines.iter().filter_map(|machine| machine.late).chain([made.end]).max();
        let days = last.map_or(0, |last| (last - answers.today).num_days() + 1);
        Ok(Self { answers, logbook, made, lines, critical, end_minutes: days as f64 * 24.0 * 60.0 })
    }

    /// How far everything is from ready, in a sentence.
    pub fn summary(&self) -> String {
        let dated = self.made.machines.iter().filter(|machine| machine.ready.is_some());
        let dated = match dated.max_by_key(|machine| machine.ready) {
            Some(last) if !self.made.planned.is_empty() => text!(
                "The last machine about {day}: {machine}",
                day = last.ready.unwrap_or(self.made.end),
                machine = machine_name(&self.logbook, last.machine)
            ),
            _ => text!("No work and no proof is left that can be dated.").to_owned(),
        };
        let is_empty = |machine: &&MachinePlan| matches!(machine.undated, Some(Undated::RolesEmpty { .. }));
        match self.made.machines.iter().filter(is_empty).count() {
            0 => dated,
            empty => {
                let wait = counted!(
                    "{count} machine has no date until its roles are filled.",
                    "{count} machines have no date until their roles are filled.",
                    empty
                );
                format!("{dated} · {wait}")
            }
        }
    }

    /// What a piece is on: its part, or its whole machine.
    pub fn on(&self, planned: &Planned) -> String {
        planned.part.map_or_else(|| machine_name(&self.logbook, planned.machine), |part| part_name(&self.logbook, part))
    }
}

/// "2026-03-12", or "2026-03-12 to 2026-03-14".
pub fn dates_text(planned: &Planned) -> String {
    if planned.start == planned.over {
        planned.start.to_string()
    } else {
        text!("{first} to {last}", first = planned.start, last = planned.over)
    }
}

const WHAT: usize = 0;
const PART: usize = 1;
const WHEN: usize = 2;
const PATH: usize = 3;
const BARS: usize = 4;

/// The columns, in the reader's language. The bars have what the others leave.
pub fn columns(ui: &Ui) -> [Column<'static>; 5] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    // Dates stand in figures of one width: two of them and the word between.
    let dates =
        ui.painter().layout_no_wrap("0000-00-00 to 0000-00-00".to_owned(), TextRole::Body.font(), ui.tokens().ink);
    [
        column(text!("What to do"), Width::Share(2.6), 0.0),
        column(text!("On"), Width::Share(1.2), 220.0 * GRID),
        column(text!("When"), Width::Points(dates.size().x + 4.0 * GRID), 0.0),
        column(text!("Longest path"), Width::Points(28.0 * GRID), 190.0 * GRID),
        column("", Width::Share(3.2), 130.0 * GRID),
    ]
}

/// The lines on a calendar.
pub struct Rows<'a> {
    pub plan: &'a Plan,
    pub calendar: Calendar,
}

impl Rows<'_> {
    fn machine(&self, at: usize) -> (&MachinePlan, String) {
        let machine = &self.plan.made.machines[at];
        (machine, machine_name(&self.plan.logbook, machine.machine))
    }
}

impl crate::window::widgets::Rows for Rows<'_> {
    fn count(&self) -> usize {
        self.plan.lines.len()
    }

    fn key(&self, row: usize) -> Id {
        match self.plan.lines[row] {
            Line::Machine(at) => Id::unique(("machine", self.plan.made.machines[at].machine)),
            Line::Piece(at) => {
                let planned = &self.plan.made.planned[at];
                Id::unique((planned.part, planned.machine, planned.item.title(&self.plan.answers)))
            }
        }
    }

    fn name(&self, row: usize) -> String {
        match self.plan.lines[row] {
            Line::Machine(at) => {
                let (machine, name) = self.machine(at);
                machine.sentence(&name)
            }
            Line::Piece(at) => {
                let planned = &self.plan.made.planned[at];
                let mut name = text!(
                    "{what}, {part}, {when}",
                    what = planned.item.title(&self.plan.answers),
                    part = self.plan.on(planned),
                    when = dates_text(planned)
                );
                if self.plan.critical.contains(&at) {
                    name.push_str(text!(", on the longest path"));
                }
                if planned.lacks_material {
                    name.push_str(text!(", once its materials have come"));
                }
                name
            }
        }
    }

    fn heading(&self, column: usize, ui: &Ui, cell: Rect) {
        if column == BARS {
            self.calendar.heading_ui(ui, cell);
        }
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let tokens = cells.canvas().tokens();
        match self.plan.lines[row] {
            Line::Machine(at) => {
                let (machine, name) = self.machine(at);
                cells.text_in(WHAT, &name, TextRole::Section, tokens.ink);
                match (machine.ready, machine.early, machine.late) {
                    (Some(_), ..) if machine.needs.is_empty() => cells.remark(WHEN, text!("nothing left")),
                    (Some(ready), Some(early), Some(late)) => {
                        cells.text_in(WHEN, &ready.to_string(), TextRole::Strong, tokens.ink);
                        let bars = cells.rect(BARS);
                        if bars.width() > 0.0 {
                            self.calendar.ready_ui(cells.canvas(), bars, [early, ready, late]);
                        }
                    }
                    _ => cells.remark(WHEN, machine.undated.map_or("", Undated::said)),
                }
            }
            Line::Piece(at) => {
                let planned = &self.plan.made.planned[at];
                let is_critical = self.plan.critical.contains(&at);
                cells.text(WHAT, &planned.item.title(&self.plan.answers));
                cells.remark(PART, &self.plan.on(planned));
                cells.remark(WHEN, &dates_text(planned));
                match (is_critical, planned.lacks_material) {
                    (true, _) => cells.mark(PATH, Mark::Heed, text!("on it"), tokens.gate_here),
                    (false, true) => cells.remark(PATH, text!("materials")),
                    (false, false) => {}
                }
                let bars = cells.rect(BARS);
                if bars.width() > 0.0 {
                    self.calendar.piece_ui(cells.canvas(), bars, planned.slot, is_critical);
                }
            }
        }
    }
}
