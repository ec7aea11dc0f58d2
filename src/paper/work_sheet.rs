//! The sheet that lies on the bench: work in its order, with what to beware of before what to do.

use serde::Serialize;

use super::html::{element, page};
use crate::assess::cautions::{self, JobCautions};
use crate::assess::outstanding::hours_text;
use crate::assess::tonight::{Evening, Tonight};
use crate::assess::{Answers, PartAnswers, Task};
use crate::record::Logbook;
use crate::rules::Rules;
use crate::text;
use crate::text::say;

/// A sheet of work.
#[derive(Clone, Debug, Serialize)]
pub struct WorkSheet {
    pub title: String,
    /// What is said of all of it.
    pub remark: String,
    pub groups: Vec<Group>,
}

/// Pieces that are done in one sitting.
#[derive(Clone, Debug, Serialize)]
pub struct Group {
    pub title: String,
    /// What to beware of in all of them.
    pub cautions: Vec<String>,
    pub pieces: Vec<Piece>,
}

/// One piece with all that is needed at the bench.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    pub what: String,
    /// The part's tag and what it is.
    pub part: String,
    /// What to beware of before the first step; the worst first.
    pub cautions: Vec<String>,
    /// What else to beware of.
    pub more_cautions: Vec<String>,
    /// What must be done before it.
    pub first: Vec<String>,
    pub how: String,
    pub materials: Vec<String>,
    pub tools: Vec<String>,
    /// Hands-on minutes; 0 when nobody said.
    pub minutes: u32,
    /// Hours that it dries or runs by itself afterwards.
    pub wait_hours: u32,
}

impl WorkSheet {
    /// The sheet of an evening's plan.
    pub fn of_evening(plan: &Tonight, evening: Evening, answers: &Answers, logbook: &Logbook, rules: &Rules) -> Self {
        let mut groups: Vec<(String, Group)> = Vec::new();
        for chosen in &plan.chosen {
            let part = &answers.parts[chosen.part_at];
            let task = &part.tasks[chosen.task];
            let piece = piece(part, task, answers, logbook);
            if groups.last().is_none_or(|(name, _)| name != task.sitting()) {
                let tasks = plan.chosen.iter().map(|chosen| &answers.parts[chosen.part_at].tasks[chosen.task]);
                let cautions = cautions::of_sitting(tasks.filter(|other| other.sitting() == task.sitting()));
                let group = Group { title: sitting(task.sitting(), rules), cautions, pieces: Vec::new() };
                groups.push((task.sitting().to_owned(), group));
            }
            if let Some((_, group)) = groups.last_mut() {
                group.pieces.push(piece);
            }
        }
        Self {
            title: text!("Work of an evening, {day}", day = answers.today),
            remark: text!(
                "{time} of {evening}, setting up included",
                time = hours_text(plan.minutes),
                evening = hours_text(evening.minutes)
            ),
            groups: groups.into_iter().map(|(_, group)| group).collect(),
        }
    }

    /// The sheet of one part: all its outstanding work.
    pub fn of_part(part: &PartAnswers, answers: &Answers, logbook: &Logbook) -> Self {
        let pieces: Vec<Piece> = part.tasks.iter().map(|task| piece(part, task, answers, logbook)).collect();
        let name = named(part, logbook);
        Self {
            title: text!("Work on {part}, {day}", part = name, day = answers.today),
            remark: text!("{minutes} min at the bench", minutes = part.totals.minutes),
            groups: if pieces.is_empty() {
                Vec::new()
            } else {
                let cautions = cautions::of_sitting(part.tasks.iter());
                vec![Group { title: text!("In working order").to_owned(), cautions, pieces }]
            },
        }
    }

    /// As a page to be printed.
    pub fn to_html(&self) -> String {
        let mut body = element("h1", "", &self.title) + &element("p", "", &self.remark);
        for group in &self.groups {
            body += &element("h2", "", &group.title);
            body += &beware(&group.cautions);
            for piece in &group.pieces {
                body += &piece.to_html();
            }
        }
        if self.groups.is_empty() {
            body += &element("p", "", text!("Nothing is to be done."));
        }
        body += &element(
            "p",
            "aside",
            text!("The logbook cannot see the part. Local codes, and people licensed for the work, come first."),
        );
        page(&self.title, &body)
    }
}

impl Piece {
    fn to_html(&self) -> String {
        let mut html = String::from("<div class=\"piece\"><span class=\"tick\"></span>\n");
        html += &element("p", "what", &self.what);
        html += &element("p", "", &self.part);
        html += &beware(&self.cautions);
        let list = |words: &[String]| words.join(", ");
        let mut lines = Vec::new();
        if !self.first.is_empty() {
            lines.push(text!("First: {work}", work = self.first.join("; ")));
        }
        if !self.how.is_empty() {
            lines.push(self.how.clone());
        }
        lines.extend(self.more_cautions.iter().map(|caution| text!("Beware: {caution}", caution = caution)));
        if !self.materials.is_empty() {
            lines.push(text!("Materials: {materials}", materials = list(&self.materials)));
        }
        if !self.tools.is_empty() {
            lines.push(text!("Tools: {tools}", tools = list(&self.tools)));
        }
        for line in lines {
            html += &element("p", "", &line);
        }
        let mut aside = Vec::new();
        if self.minutes > 0 {
            aside.push(text!("{minutes} min", minutes = self.minutes));
        }
        if self.wait_hours > 0 {
            aside.push(text!("then {hours} h that need nobody", hours = self.wait_hours));
        }
        aside.push(text!("done on ………… minutes ………… used …………………………").to_owned());
        html += &element("p", "aside", &aside.join(" · "));
        html + "</div>\n"
    }
}

/// Cautions as lines.
fn beware(cautions: &[String]) -> String {
    cautions.iter().map(|caution| element("p", "beware", &text!("Beware: {caution}", caution = caution))).collect()
}

fn named(part: &PartAnswers, logbook: &Logbook) -> String {
    format!("{}  {}", part.file.part.tag, logbook.title_of(&part.file))
}

fn sitting(name: &str, rules: &Rules) -> String {
    let known = rules.sittings.iter().find(|sitting| sitting.name == name);
    known.map_or_else(|| text!("Work of its own").to_owned(), |sitting| say(&sitting.say).to_owned())
}

fn piece(part: &PartAnswers, task: &Task, answers: &Answers, logbook: &Logbook) -> Piece {
    let said = |words: &[String]| words.iter().map(|word| say(word).to_owned()).collect::<Vec<_>>();
    let JobCautions { first: cautions, later: more_cautions } = JobCautions::listed(task);
    Piece {
        what: task.title().to_owned(),
        part: named(part, logbook),
        cautions,
        more_cautions,
        first: answers.firsts(part, task),
        how: task.how().to_owned(),
        materials: said(task.materials()),
        tools: said(task.tools()),
        minutes: task.minutes(),
        wait_hours: task.wait_hours(),
    }
}
