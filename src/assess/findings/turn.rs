//! What new looks say beside the old ones: found, grown worse, returned, confirmed.

use crate::record::{Entry, FindingId, FindingState, Look, Name, PartFile, Severity};

use super::is_worse;

crate::words! {
    /// The turn that a finding took.
    TurnKind {
        Found = "found", "Found";
        Worse = "worse", "Grown worse";
        Returned = "returned", "Returned";
        Better = "better", "Grown better";
        Same = "same", "Unchanged";
        Cured = "cured", "Cured";
        Confirmed = "confirmed", "Confirmed sound";
        SetAside = "set_aside", "Set aside";
    }
}

/// One finding's turn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turn {
    pub finding: FindingId,
    /// The finding's name in the rules; empty for one in the restorer's own words.
    pub what: Name,
    pub turn: TurnKind,
    pub severity: Severity,
}

/// What the looks among new records say beside a part's record as it stood before, in their order.
pub fn what_changed(before: &PartFile, entries: &[Entry]) -> Vec<Turn> {
    let new_finding = |id: FindingId| {
        entries.iter().find_map(|entry| match entry {
            Entry::Finding(finding) if finding.id == id => Some(finding),
            _ => None,
        })
    };
    let looks = entries.iter().filter_map(|entry| match entry {
        Entry::Look(look) => Some(look),
        _ => None,
    });
    looks
        .filter_map(|look| {
            let old = before.finding(look.finding);
            let finding = old.map(|file| &file.finding).or_else(|| new_finding(look.finding))?;
            Some(Turn {
                finding: look.finding,
                what: finding.what,
                turn: turn(old.and_then(|file| file.last()), look),
                severity: look.severity,
            })
        })
        .collect()
}

fn turn(before: Option<&Look>, look: &Look) -> TurnKind {
    let Some(before) = before else { return TurnKind::Found };
    match look.state {
        FindingState::Confirmed => TurnKind::Confirmed,
        FindingState::Cured => TurnKind::Cured,
        FindingState::Returned if before.state != FindingState::Returned => TurnKind::Returned,
        FindingState::Watched | FindingState::Accepted if before.state != look.state => TurnKind::SetAside,
        _ if is_worse(look.severity, look.share_percent, before) => TurnKind::Worse,
        _ if look.severity < before.severity => TurnKind::Better,
        _ => TurnKind::Same,
    }
}
