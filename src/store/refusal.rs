//! Why a change is not written: what about it does not hold, and of which record.

use crate::record::{CustodyAct, EntryKind, FindingState, KitState, MarkUse, Word as _, WorkState};
use crate::text;

/// A change that does not hold; nothing of it was written. `at` names the record: "part 0042, finding …".
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Refusal {
    #[error("{}", text!("The tag “{tag}” is already on another part; give this one a tag of its own", tag = .tag))]
    DoubledTag { tag: String },

    #[error("{}", text!("There is already a machine called “{name}”; choose another name", name = .name))]
    DoubledMachine { name: String },

    #[error("{}", text!("{at}: “{field}” must not be empty", at = .at, field = .field))]
    Empty { at: String, field: &'static str },

    #[error("{}", text!("{at}: “{field}” is {value}, but must be {bounds}", at = .at, field = .field, value = .value, bounds = .bounds))]
    Figure { at: String, field: String, value: String, bounds: &'static str },

    #[error("{}", text!("{at}: a mark for “{role}” has {count} points, but needs {wanted}", at = .at, role = .role.label(), count = .count, wanted = .wanted))]
    Points { at: String, role: MarkUse, count: usize, wanted: String },

    #[error("{}", text!("{at}: “{field}” holds a character that no text can carry", at = .at, field = .field))]
    BadText { at: String, field: String },

    #[error("{}", text!("{at}: “{field}” must name exactly one of {choices}", at = .at, field = .field, choices = .choices))]
    OneOwner { at: String, field: &'static str, choices: &'static str },

    #[error("{}", text!("{at}: “{field}” names a {kind} that is not in the logbook", at = .at, field = .field, kind = kind_label(*.kind)))]
    Unknown { at: String, field: String, kind: EntryKind },

    #[error("{}", text!("{at} cannot be removed while {by} refers to it", at = .at, by = .by))]
    StillUsed { at: String, by: String },

    #[error("{}", text!("{at} would stand inside itself", at = .at))]
    InsideItself { at: String },

    #[error("{}", text!("{at} is fitted in “{machine}” already; remove it there first", at = .at, machine = .machine))]
    FittedTwice { at: String, machine: String },

    #[error("{}", text!("{at}: removed before it was fitted"  , at = .at))]
    RemovedBeforeFitted { at: String },

    #[error("{}", text!("{at}: the role belongs to another machine", at = .at))]
    RoleOfAnother { at: String },

    #[error("{}", text!("{at}: the window of dates ends before it begins", at = .at))]
    WindowReversed { at: String },

    #[error("{}", text!("{at}: a finding begins as “{open}” or “{watched}”, with a look that says so", at = .at, open = FindingState::Open.label(), watched = FindingState::Watched.label()))]
    FindingUnborn { at: String },

    #[error("{}", text!("{at}: a finding that is “{from}” cannot become “{to}”", at = .at, from = .from.label(), to = .to.label()))]
    FindingStep { at: String, from: FindingState, to: FindingState },

    #[error("{}", text!("{at}: work that is “{from}” cannot become “{to}”", at = .at, from = .from.label(), to = .to.label()))]
    WorkStep { at: String, from: WorkState, to: WorkState },

    #[error("{}", text!("These pieces of work would come after each other in a circle: {work}", work = .work))]
    WorkCircle { work: String },

    #[error("{}", text!("{at}: the piece of work is on another part", at = .at))]
    WorkOfAnother { at: String },
    #[error("{}", text!("{at}: a kit that is “{from}” cannot become “{to}”", at = .at, from = .from.label(), to = .to.label()))]
    KitStep { at: String, from: KitState, to: KitState },

    #[error("{}", text!("{at}: “{act}” is not possible as the part is “{custody}” then", at = .at, act = .act.label(), custody = .custody))]
    CustodyStep { at: String, act: CustodyAct, custody: String },

    #[error("{}", text!("A logbook has exactly one title page (workshop)"))]
    OneWorkshop,

    #[error("{}", text!("The logbook's own rules forbid this: {reason}", reason = .reason))]
    Constraint { reason: String },
}

/// A kind of record in words: "capacitor look".
pub fn kind_label(kind: EntryKind) -> String {
    kind.name().replace('_', " ")
}
