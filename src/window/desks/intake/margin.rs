//! What the answers call for, beside them while they are given: the next step first.

use egui::{RichText, Ui};

use crate::assess::cautions::JobCautions;
use crate::assess::{PartAnswers, Task};
use crate::counted;
use crate::record::Hold;
use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{body, hold_ui, mark_ui, remark, section_ui, small};

/// Until when a piece of work may wait, in words.
fn before(hold: Hold) -> &'static str {
    match hold {
        Hold::Storage => text!("before it goes on the shelf"),
        Hold::Power => text!("before power is applied"),
        Hold::Fitting => text!("before it goes into a machine"),
        Hold::Ready => text!("before its machine is ready"),
        Hold::Looks => text!("whenever you like"),
    }
}

/// The margin: the next step large, then the rest in working order.
pub fn margin_ui(ui: &mut Ui, answers: &PartAnswers) {
    ui.label(RichText::new(text!("What this calls for")).font(TextRole::Section.font()));
    ui.add_space(GRID);
    // What holds up most meets the eye first, though something may have to be done before it.
    let Some(first) = answers.tasks.iter().min_by_key(|task| task.hold) else {
        let undecided = answers.undecided.len();
        ui.label(remark(
            ui,
            match undecided {
                0 => text!("Nothing so far. An answer that finds something shows here at once what to do about it.")
                    .to_owned(),
                count => counted!(
                    "{count} finding that no rule knows work for: decide on its sheet",
                    "{count} findings that no rule knows work for: decide on its sheet",
                    count
                ),
            },
        ));
        return;
    };
    let waits_for = first.waits_for.iter().filter_map(|at| answers.tasks.get(usize::from(*at)));
    first_ui(ui, first, waits_for.map(Task::title));
    if answers.tasks.len() > 1 {
        section_ui(ui, text!("In this order"));
        for task in &answers.tasks {
            ui.horizontal(|ui| {
                let tokens = ui.tokens();
                mark_ui(ui, Mark::of_hold(task.hold), tokens.hold(task.hold));
                let spoken = text!("{title}, {before}", title = task.title(), before = before(task.hold));
                let label = ui.add(egui::Label::new(body(task.title())).wrap());
                ui.ctx().accesskit_node_builder(label.id, |node| node.set_label(spoken));
            });
        }
    }
    ui.add_space(2.0 * GRID);
    let pieces = counted!("{count} piece of work", "{count} pieces of work", answers.tasks.len());
    ui.label(remark(ui, text!("{pieces}, about {time}", pieces = pieces, time = time(&answers.tasks))));
}

fn first_ui<'a>(ui: &mut Ui, task: &Task, waits_for: impl Iterator<Item = &'a str>) {
    let tokens = ui.tokens();
    let title = ui.add(egui::Label::new(RichText::new(task.title()).font(TextRole::Title.font())).wrap());
    ui.ctx().accesskit_node_builder(title.id, |node| {
        node.set_label(text!("First: {title}, {before}", title = task.title(), before = before(task.hold)));
    });
    ui.horizontal_wrapped(|ui| {
        hold_ui(ui, task.hold);
        ui.label(body(before(task.hold)).color(tokens.hold(task.hold)));
    });
    let waits_for: Vec<&str> = waits_for.collect();
    if !waits_for.is_empty() {
        ui.label(small(text!("Before that: {tasks}", tasks = waits_for.join("; "))));
    }
    for caution in JobCautions::alone(task).first {
        ui.horizontal_top(|ui| {
            mark_ui(ui, Mark::Heed, tokens.hold_power);
            ui.add(egui::Label::new(small(caution).color(tokens.hold_power)).wrap());
        });
    }
    if !task.how().is_empty() {
        ui.label(small(task.how()));
    }
}

/// Hands-on time in hours and minutes.
fn time(tasks: &[Task]) -> String {
    let minutes: u32 = tasks.iter().map(Task::minutes).sum();
    match (minutes / 60, minutes % 60) {
        (0, minutes) => text!("{minutes} min", minutes = minutes),
        (hours, 0) => text!("{hours} h", hours = hours),
        (hours, minutes) => text!("{hours} h {minutes} min", hours = hours, minutes = minutes),
    }
}
