//! How a finding stands, in words: since when, by whom decided, until when and why.

use crate::record::{FindingFile, FindingState, Look, Word as _};
use crate::text;

/// "accepted on 2026-03-01 by Ines Marlow: dry since"; as a clause, without the finding's name.
pub fn stand_said(file: &FindingFile) -> String {
    let state = file.state();
    let Some(look) = file.decided() else { return state.label().to_lowercase() };
    let day = look.looked.on.is_known().then_some(look.looked.on);
    let said = match (state, day) {
        (FindingState::Open | FindingState::Returned, _) => return state.label().to_lowercase(),
        (FindingState::Watched, Some(day)) => text!("watched since {day}", day = day),
        (FindingState::Watched, None) => text!("watched, nobody noted since when").to_owned(),
        (FindingState::Accepted, Some(day)) => text!("accepted on {day}", day = day),
        (FindingState::Accepted, None) => text!("accepted, nobody noted when").to_owned(),
        (FindingState::Cured, Some(day)) if look.work.is_some() => text!("cured by work on {day}", day = day),
        (FindingState::Cured, Some(day)) => text!("cured on {day}", day = day),
        (FindingState::Cured, None) => text!("cured, nobody noted when").to_owned(),
        (FindingState::Confirmed, Some(day)) => text!("confirmed sound on {day}", day = day),
        (FindingState::Confirmed, None) => text!("confirmed sound, nobody noted when").to_owned(),
    };
    decided_said(said, look)
}

/// Who decided it, until when, and why, where that is on record.
fn decided_said(mut said: String, look: &Look) -> String {
    if !look.who.is_empty() {
        said = text!("{done} by {who}", done = said, who = look.who);
    }
    if look.again_by.is_known() {
        said = text!("{done}, until {day}", done = said, day = look.again_by);
    }
    if !look.reason.is_empty() {
        said = format!("{said}: {}", look.reason.trim_end_matches('.'));
    }
    said
}
