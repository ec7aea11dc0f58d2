//! What a mark on a photograph is tied to, in words, and how that stands now.

use super::reason::finding_said;
use crate::record::{
    CapacitorId, CapacitorState, FindingId, FindingState, MarkingId, PartFile, PhotoMark, Word as _, WorkId, WorkState,
};
use crate::rules::Rules;
use crate::text;

/// What a mark is tied to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TiedTo {
    Finding(FindingId),
    Capacitor(CapacitorId),
    Marking(MarkingId),
    Work(WorkId),
}

/// How what a mark is tied to stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stand {
    /// Something is wrong, or still to be done.
    Wrong,
    /// It is looked at again some day.
    Watched,
    /// Sound, cured, done, or accepted.
    Settled,
    /// Nobody looked, or it cannot be wrong.
    Plain,
}

/// What a mark is tied to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tie {
    pub to: TiedTo,
    pub name: String,
    /// How it stands, in a word; empty for a marking.
    pub state: &'static str,
    pub stand: Stand,
}

impl Tie {
    /// The first thing that a mark of a part's photograph is tied to and that is there: finding, capacitor, marking, work.
    pub fn of(mark: &PhotoMark, part: &PartFile, rules: &Rules) -> Option<Self> {
        finding(mark.finding, part, rules)
            .or_else(|| capacitor(mark.capacitor, part))
            .or_else(|| marking(mark.marking, part))
            .or_else(|| work(mark.work, part, rules))
    }
}

fn finding(id: Option<FindingId>, part: &PartFile, rules: &Rules) -> Option<Tie> {
    let file = part.finding(id?)?;
    let named = finding_said(&file.finding, rules);
    let place = &file.finding.place_on_part;
    let name = if place.is_empty() { named } else { format!("{named}, {place}") };
    let state = file.state();
    let stand = match state {
        FindingState::Open | FindingState::Returned => Stand::Wrong,
        FindingState::Watched => Stand::Watched,
        FindingState::Cured | FindingState::Confirmed | FindingState::Accepted => Stand::Settled,
    };
    Some(Tie { to: TiedTo::Finding(file.finding.id), name, state: state.label(), stand })
}

fn capacitor(id: Option<CapacitorId>, part: &PartFile) -> Option<Tie> {
    let id = id?;
    let file = part.capacitors.iter().find(|file| file.position.id == id)?;
    let called = [&file.position.designator, &file.position.place_on_part].into_iter().find(|name| !name.is_empty());
    let name = called
        .map_or_else(|| text!("Capacitor").to_owned(), |called| text!("Capacitor {designator}", designator = called));
    let state = file.state();
    let stand = match state {
        CapacitorState::NotLooked => Stand::Plain,
        state if state.is_bad() => Stand::Wrong,
        _ => Stand::Settled,
    };
    Some(Tie { to: TiedTo::Capacitor(id), name, state: state.label(), stand })
}

fn marking(id: Option<MarkingId>, part: &PartFile) -> Option<Tie> {
    let marking = part.markings.iter().find(|marking| Some(marking.id) == id)?;
    let name = text!("Marking “{text}”", text = marking.text);
    Some(Tie { to: TiedTo::Marking(marking.id), name, state: "", stand: Stand::Plain })
}

fn work(id: Option<WorkId>, part: &PartFile, rules: &Rules) -> Option<Tie> {
    let work = part.work.iter().find(|work| Some(work.id) == id)?;
    let name = rules.work(&work.rule).map_or(work.title.as_str(), |rule| text::say(&rule.say)).to_owned();
    let stand = match work.state {
        WorkState::Open | WorkState::Waiting | WorkState::Doing | WorkState::Failed => Stand::Wrong,
        WorkState::Done | WorkState::Waived => Stand::Settled,
    };
    Some(Tie { to: TiedTo::Work(work.id), name, state: work.state.label(), stand })
}
