//! What a mark is tied to: its name, the state that it is in, and where it stands on the part's sheet.

use crate::assess::reason::finding_name;
use crate::record::{
    CapacitorFile, CapacitorId, CapacitorState, FindingId, FindingState, MarkUse, Marking, MarkingId, PartFile,
    PhotoMark, Severity, Word as _, Work, WorkId,
};
use crate::rules::Rules;
use crate::text;
use crate::text::say;
use crate::window::desks::part_sheet::{Section, Spot};
use crate::window::outbox::View;

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

    /// Where it stands on its part's sheet.
    pub fn spot(self) -> Option<Spot> {
        Some(match self {
            Self::Nothing => return None,
            Self::Finding(id) => Spot::Finding(id),
            Self::Capacitor(id) => Spot::Capacitor(id),
            Self::Marking(_) => Spot::Section(Section::Made),
            Self::Work(id) => Spot::Work(id),
        })
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
}

/// What a mark is tied to, as it is now; `file` is the part that its photograph shows.
pub fn tied(view: &View<'_>, file: Option<&PartFile>, mark: &PhotoMark) -> Tied {
    let bare = || Tied {
        tie: Tie::Nothing,
        form: Form::Bare,
        stand: Stand::Plain,
        name: if mark.note.is_empty() { use_name(mark) } else { mark.note.clone() },
        state: String::new(),
    };
    let Some(file) = file else { return bare() };
    of_tie(view, file, Tie::of(mark)).unwrap_or_else(bare)
}

fn use_name(mark: &PhotoMark) -> String {
    match (mark.role, mark.points.len()) {
        (MarkUse::Place, 0 | 1) => text!("Pin").to_owned(),
        (MarkUse::Place, _) => text!("Outline").to_owned(),
        (role, _) => role.label().to_owned(),
    }
}

fn of_tie(view: &View<'_>, file: &PartFile, tie: Tie) -> Option<Tied> {
    let (form, stand, name, state) = match tie {
        Tie::Nothing => return None,
        Tie::Finding(id) => {
            let finding = file.finding(id)?;
            let mut name = finding_name(view.logbook, view.rules, file.part.id, id);
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
            (Form::Work, stand, work_name(work, view.rules), work.state.label())
        }
    };
    Some(Tied { tie, form, stand, name, state: state.to_lowercase() })
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

/// Everything of a part that a mark can be tied to, what is open first.
pub fn choices(view: &View<'_>, file: &PartFile) -> Vec<(Tie, String)> {
    let findings = file.findings.iter().map(|one| Tie::Finding(one.finding.id));
    let capacitors = file.capacitors.iter().map(|one| Tie::Capacitor(one.position.id));
    let markings = file.markings_now().map(|one| Tie::Marking(one.id));
    let work = file.work.iter().map(|one| Tie::Work(one.id));
    let all = findings.chain(work).chain(capacitors).chain(markings);
    let mut all: Vec<Tied> = all.filter_map(|tie| of_tie(view, file, tie)).collect();
    all.sort_by_key(|tied| tied.stand == Stand::Settled);
    let kind = |form| match form {
        Form::Finding => text!("Finding"),
        Form::Capacitor => text!("Capacitor"),
        Form::Marking => text!("Marking"),
        Form::Work | Form::Bare => text!("Work"),
    };
    all.into_iter().map(|tied| (tied.tie, format!("{}: {}", kind(tied.form), tied.said()))).collect()
}

/// The part's capacitor positions that no map shows yet, in the order they were logged.
pub fn unplaced(file: &PartFile) -> Vec<CapacitorId> {
    let maps = file.photos.iter().filter(|photo| photo.photo.is_map);
    let placed: std::collections::HashSet<_> =
        maps.flat_map(|photo| &photo.marks).filter_map(|mark| mark.capacitor).collect();
    file.capacitors.iter().map(|one| one.position.id).filter(|id| !placed.contains(id)).collect()
}

/// What a position is called.
pub fn position_name(view: &View<'_>, file: &PartFile, id: CapacitorId) -> String {
    of_tie(view, file, Tie::Capacitor(id)).map_or_else(String::new, |tied| tied.name)
}
