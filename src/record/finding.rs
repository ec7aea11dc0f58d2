//! Something wrong with a part, and its life.

use serde::{Deserialize, Serialize};

use super::{Id, Moment, Name, PartId, SurveyId, When, WorkId};

/// The key of a [`Finding`].
pub type FindingId = Id<Finding>;

crate::words! {
    /// How bad a finding is.
    Severity {
        Slight = "slight", "Slight";
        Plain = "plain", "Plain";
        Grave = "grave", "Grave";
    }
}

crate::words! {
    /// Where a finding stands in its life.
    ///
    /// | from | to | by |
    /// |---|---|---|
    /// | – | open | a survey, capacitor positions, a failed piece of work, or by hand |
    /// | – | watched | a survey that found what the eye can stand in for |
    /// | open, returned | watched | the restorer: looked at again by a date, holds nothing |
    /// | open, returned, watched | cured | work done |
    /// | open, returned, watched, cured | confirmed | a later look that answers "sound" |
    /// | open, returned, watched | accepted | the restorer, with a reason |
    /// | watched | open | the restorer, or a look that finds it worse |
    /// | cured, confirmed, accepted | returned | a later look that finds it again (accepted: only when worse) |
    FindingState {
        Open = "open", "Open";
        Watched = "watched", "Watched";
        Cured = "cured", "Cured";
        Confirmed = "confirmed", "Confirmed sound";
        Accepted = "accepted", "Accepted";
        Returned = "returned", "Returned";
    }
}

impl FindingState {
    /// Whether work follows from a finding in this state.
    pub fn calls_for_work(self) -> bool {
        matches!(self, Self::Open | Self::Returned)
    }

    /// Whether the life allows the step from this state to `next` (the same state again is a further look).
    pub fn may_become(self, next: Self) -> bool {
        use FindingState::{Accepted, Confirmed, Cured, Open, Returned, Watched};
        match (self, next) {
            (Open | Returned | Watched, Watched | Cured | Confirmed | Accepted)
            | (Watched, Open)
            | (Cured, Confirmed)
            | (Cured | Confirmed | Accepted, Returned) => true,
            (same, again) => same == again,
        }
    }
}

crate::words! {
    /// What a finding was raised by.
    FindingSource {
        Survey = "survey", "Survey";
        Capacitors = "capacitors", "Capacitor positions";
        Work = "work", "Failed work";
        Hand = "hand", "By hand";
    }
}

/// Something wrong with a part. Its state, severity and extent are those of its last [`Look`].
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Finding {
    pub id: FindingId,
    pub part: PartId,
    /// The finding's name in `resources/rules/findings.toml`; empty for one in the restorer's own words.
    pub what: Name,
    /// Where on the part, in words.
    pub place_on_part: String,
    pub source: FindingSource,
    /// The survey question that raised it; empty otherwise. A later answer to the same question follows it up.
    pub question: Name,
    /// The finding in the restorer's own words, or a remark on it.
    pub note: String,
}

/// The key of a [`Look`].
pub type LookId = Id<Look>;

/// One dated step in a finding's life.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Look {
    pub id: LookId,
    pub finding: FindingId,
    pub looked: Moment,
    pub state: FindingState,
    pub severity: Severity,
    /// Share of the surface, per cent 0–100; `None` when not measured.
    pub share_percent: Option<f64>,
    /// When watched: to be looked at again by this date.
    pub again_by: When,
    /// Why it was accepted or watched.
    pub reason: String,
    /// The survey that saw it, if one did.
    pub survey: Option<SurveyId>,
    /// The work that cured it or the failed work that raised it.
    pub work: Option<WorkId>,
    /// Who looked or decided; empty when nobody said.
    #[serde(default)]
    pub who: String,
}

/// A finding with its life so far, oldest look first; there is always at least one look.
#[derive(Clone, Debug, PartialEq)]
pub struct FindingFile {
    pub finding: Finding,
    pub looks: Vec<Look>,
}

impl FindingFile {
    /// The look that holds now; `None` only for a damaged record without any.
    pub fn last(&self) -> Option<&Look> {
        self.looks.last()
    }

    /// The state that holds now.
    pub fn state(&self) -> FindingState {
        self.last().map_or(FindingState::Open, |look| look.state)
    }

    /// The severity that holds now.
    pub fn severity(&self) -> Severity {
        self.last().map_or(Severity::Plain, |look| look.severity)
    }

    /// The look with which the present state was decided or first seen: later ones that only carry it on are passed
    /// over. `None` only for a damaged record without any look.
    pub fn decided(&self) -> Option<&Look> {
        let last = self.last()?;
        let carries_on = |look: &&Look| {
            (look.state, look.again_by, &look.reason, &look.who) == (last.state, last.again_by, &last.reason, &last.who)
        };
        self.looks.iter().rev().take_while(carries_on).last()
    }

    /// A look that keeps what is known but for its state, and, where that stays, why, by whom and until when.
    pub fn next_look(&self, id: LookId, looked: Moment, state: FindingState) -> Look {
        let kept = self.last().filter(|last| last.state == state);
        Look {
            id,
            finding: self.finding.id,
            looked,
            state,
            severity: self.severity(),
            share_percent: self.last().and_then(|last| last.share_percent),
            again_by: kept.map_or(When::Unknown, |last| last.again_by),
            reason: kept.map(|last| last.reason.clone()).unwrap_or_default(),
            survey: None,
            work: None,
            who: kept.map(|last| last.who.clone()).unwrap_or_default(),
        }
    }

    /// When it was first seen.
    pub fn since(&self) -> When {
        self.looks.first().map_or(When::Unknown, |look| look.looked.on)
    }
}
