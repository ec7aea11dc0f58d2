//! What a mark on a photograph is tied to: its name, and the state that it is in.

use super::reason::finding_said;
use crate::record::{
    CapacitorFile, CapacitorId, CapacitorState, FindingId, FindingState, MarkUse, Marking, MarkingId, PartFile,
    PhotoMark, Severity, Word as _, Work, WorkId,
};
use crate::rules::Rules;
use crate::text;
use crate::text::say;

/// What a mark is tied to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Tie {
    #[default]
    Nothing,
    Finding(FindingId),
    Capacitor(CapacitorId),
    Marking(MarkingId),
    Work(WorkId),
}

impl Tie {
    /// What a mark is tied to.
    pub fn of(mark: &PhotoMark) -> Self {
        let PhotoMark { finding, capacitor, marking, work, .. } = mark;
        finding
            .map(Self::Finding)
            .or(capacitor.map(Self::Capacitor))
            .or(marking.map(Self::Marking))
            .or(work.map(Self::Work))
            .unwrap_or_default()
    }

    /// A mark tied to this and nothing else.
    pub fn on(self, mark: PhotoMark) -> PhotoMark {
        let mut mark = PhotoMark { finding: None, capacitor: None, marking: None, work: None, ..mark };
        match self {
            Self::Nothing => {}
            Self::Finding(id) => mark.finding = Some(id),
            Self::Capacitor(id) => mark.capacitor = Some(id),
            Self::Marking(id) => mark.marking = Some(id),
            Self::Work(id) => mark.work = Some(id),
        }
        mark
    }
}

/// What kind of thing it is: the shape of a pin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    Finding,
    Capacitor,
    Marking,
    Work,
    /// Tied to nothing.
    Bare,
}

/// The state it is in: hue and inside of a pin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stand {
    /// It asks for something: an open finding, a bad capacitor, work outstanding.
    Asks(Severity),
    Watched,
    /// Cured, sound, done.
    Settled,
    Replaced,
    /// Nobody has looked yet.
    Unseen,
    /// Without a state.
    Plain,
}

/// What a mark is tied to, as it is now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tied {
    pub tie: Tie,
    pub form: Form,
    pub stand: Stand,
    /// What it is called: "Rust, by the keyboard socket".
    pub name: String,
    /// Its state in a word; empty where it has none.
    pub state: String,
}

impl Tied {
    /// Its name and its state.
    pub fn said(&self) -> String {
        if self.state.is_empty() { self.name.clone() } else { format!("{}: {}", self.name, self.state) }
    }

    /// What a mark is tied to, as it is now; `file` is the part that its photograph shows.
    pub fn of(mark: &PhotoMark, file: Option<&PartFile>, rules: &Rules) -> Self {
        let tied = file.and_then(|file| Self::to(Tie::of(mark), file, rules));
        tied.unwrap_or_else(|| Self {
            tie: Tie::Nothing,
            form: Form::Bare,
            stand: Stand::Plain,
            name: if mark.note.is_empty() { use_name(mark) } else { mark.note.clone() },
            state: String::new(),
        })
    }

    /// What a tie leads to on a part; `None` where it leads nowhere.
    pub fn to(tie: Tie, file: &PartFile, rules: &Rules) -> Option<Self> {
        let (form, stand, name, state) = match tie {
            Tie::Nothing => return None,
            Tie::Finding(id) => {
                let finding = file.finding(id)?;
                let mut name = finding_said(&finding.finding, rules);
                if !finding.finding.place_on_part.is_empty() {
                    name = format!("{name}, {}", finding.finding.place_on_part);
                }
                let stand = match finding.state() {
                    FindingState::Open | FindingState::Returned => Stand::Asks(finding.severity()),
                    FindingState::Watched => Stand::Watched,
                    FindingState::Cured | FindingState::Confirmed | FindingState::Accepted => Stand::Settled,
                };
                (Form::Finding, stand, name, finding.state().label())
            }
            Tie::Capacitor(id) => {
                let capacitor = file.capacitors.iter().find(|one| one.position.id == id)?;
                let state = capacitor.state();
                let stand = match state {
                    CapacitorState::NotLooked => Stand::Unseen,
                    CapacitorState::Sound if capacitor.is_replaced() => Stand::Replaced,
                    CapacitorState::Sound => Stand::Settled,
                    CapacitorState::Bulged | CapacitorState::OutOfLimits => Stand::Asks(Severity::Plain),
                    _ => Stand::Asks(Severity::Grave),
                };
                let word = if stand == Stand::Replaced { text!("Replaced") } else { state.label() };
                (Form::Capacitor, stand, capacitor_name(file, capacitor), word)
            }
            Tie::Marking(id) => (Form::Marking, Stand::Plain, now_of(file, id)?.text.clone(), ""),
            Tie::Work(id) => {
                let work = file.work.iter().find(|work| work.id == id)?;
                let stand = if work.state.is_outstanding() { Stand::Asks(Severity::Slight) } else { Stand::Settled };
                (Form::Work, stand, work_name(work, rules), work.state.label())
            }
        };
        Some(Tied { tie, form, stand, name, state: state.to_lowercase() })
    }
}

fn use_name(mark: &PhotoMark) -> String {
    match (mark.role, mark.points.len()) {
        (MarkUse::Place, 0 | 1) => text!("Pin").to_owned(),
        (MarkUse::Place, _) => text!("Outline").to_owned(),
        (role, _) => role.label().to_owned(),
    }
}

/// The reading of a marking that holds now: a correction supersedes the one that was tied.
fn now_of(file: &PartFile, id: MarkingId) -> Option<&Marking> {
    let mut read = file.markings.iter().find(|marking| marking.id == id)?;
    // As many steps as there are readings: records from elsewhere may go in a circle.
    for _ in &file.markings {
        let Some(again) = file.markings.iter().find(|again| again.supersedes == Some(read.id)) else { break };
        read = again;
    }
    Some(read)
}

fn work_name(work: &Work, rules: &Rules) -> String {
    match rules.work(&work.rule) {
        Some(rule) => say(&rule.say).to_owned(),
        None if work.title.is_empty() => work.rule.clone(),
        None => work.title.clone(),
    }
}

/// A position by what is printed beside it, or by its place among those that were logged.
fn capacitor_name(file: &PartFile, capacitor: &CapacitorFile) -> String {
    let position = &capacitor.position;
    let mut words = vec![if position.designator.is_empty() {
        let at = file.capacitors.iter().position(|one| one.position.id == position.id).unwrap_or(0);
        text!("Capacitor {number}", number = at + 1)
    } else {
        position.designator.clone()
    }];
    words.extend(position.capacitance_uf.map(|uf| format!("{uf} µF")));
    words.extend(position.voltage_v.map(|volts| format!("{volts} V")));
    let mut name = words.join(" ");
    if !position.place_on_part.is_empty() {
        name = format!("{name}, {}", position.place_on_part);
    }
    name
}

/// What a mark is called: "Mark 3: Damage, Rust on port shells: open".
pub fn mark_name(mark: &PhotoMark, tied: &Tied, number: usize) -> String {
    let said = tied.said();
    let what = match mark.role {
        MarkUse::Place => said,
        role if tied.tie == Tie::Nothing && mark.note.is_empty() => role.label().to_owned(),
        role => format!("{}, {said}", role.label()),
    };
    text!("Mark {number}: {what}", number = number, what = what)
}
