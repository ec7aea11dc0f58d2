//! The next trial that tells most.

use super::{CaseAnswer, ENOUGH, RAILS, Suspect, Suspicion, is_known_good};
use crate::assess::reason::part_name;
use crate::assess::{Answers, PartAnswers};
use crate::record::{CaseState, FaultCaseFile, Kind, Logbook, PartId, Word as _};
use crate::rules::Rules;
use crate::text;

/// What to do next in a case.
#[derive(Clone, Debug, PartialEq)]
pub enum Proposal {
    /// Measure the rails' resistance to ground, unpowered, on this part.
    MeasureRails { part: PartId },
    /// Exchange one suspect for a known-good part; `bits` is how much that is expected to tell.
    Exchange { suspect: PartId, known_good: PartId, bits: f64 },
    /// Run without one suspect.
    TakeOut { suspect: PartId, bits: f64 },
    /// Prove a part of this kind, or borrow one that is proven, to exchange this suspect for.
    FindKnownGood { suspect: PartId, kind: Kind },
    /// Nearly all suspicion lies on this part: settle the case with a finding on it.
    Settle { part: PartId },
    /// The parts are as good as cleared: look at contacts, cables, settings, programs.
    LookElsewhere,
}

impl Proposal {
    /// What it is, by name, for the console's JSON form.
    pub fn name(&self) -> &'static str {
        match self {
            Self::MeasureRails { .. } => "measure_rails",
            Self::Exchange { .. } => "exchange",
            Self::TakeOut { .. } => "take_out",
            Self::FindKnownGood { .. } => "find_known_good",
            Self::Settle { .. } => "settle",
            Self::LookElsewhere => "look_elsewhere",
        }
    }

    /// The part that it is about: for an exchange, the suspect.
    pub fn part(&self) -> Option<PartId> {
        match self {
            Self::MeasureRails { part } | Self::Settle { part } => Some(*part),
            Self::Exchange { suspect, .. } | Self::TakeOut { suspect, .. } | Self::FindKnownGood { suspect, .. } => {
                Some(*suspect)
            }
            Self::LookElsewhere => None,
        }
    }

    /// As a sentence.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        let named = self.part().map(|part| part_name(logbook, part)).unwrap_or_default();
        match self {
            Self::MeasureRails { .. } => text!(
                "Power off and unplugged: measure each rail of {part} to ground before anything is exchanged.",
                part = named
            ),
            Self::Exchange { known_good, .. } => text!(
                "Power off: exchange {part} for {good}, and nothing else.",
                part = named,
                good = part_name(logbook, *known_good)
            ),
            Self::TakeOut { .. } => text!("Power off: take {part} out, and nothing else.", part = named),
            Self::FindKnownGood { kind, .. } => text!(
                "Find a proven part ({kind}) to exchange {part} for: none is at hand and free.",
                kind = kind.label().to_lowercase(),
                part = named
            ),
            Self::Settle { .. } => {
                text!("Settle the case: nearly all suspicion lies on {part}.", part = named)
            }
            Self::LookElsewhere => {
                text!("The parts are as good as cleared: reseat contacts and cables, look at settings and programs.")
                    .to_owned()
            }
        }
    }
}

impl Proposal {
    /// By which rule it is proposed, as a sentence.
    pub fn rule(&self) -> String {
        match self {
            Self::MeasureRails { .. } => {
                text!("Rule: the rails' resistance to ground comes before any exchange.").to_owned()
            }
            Self::Exchange { bits, .. } | Self::TakeOut { bits, .. } => text!(
                "Rule: of what can be tried, the one whose outcome is least certain tells most, here {bits} bit.",
                bits = format!("{bits:.2}")
            ),
            Self::FindKnownGood { .. } => {
                text!("Rule: one swap at a time, with a part that has passed its proofs.").to_owned()
            }
            Self::Settle { .. } => text!("Rule: four fifths of all suspicion on one part are enough.").to_owned(),
            Self::LookElsewhere => {
                text!("Rule: what is no part comes once the parts hold less than a fifth of the suspicion.").to_owned()
            }
        }
    }
}

/// Bits that a trial tells whose outcome has this chance of two.
fn bits(chance: f64) -> f64 {
    let part = |chance: f64| if chance <= 0.0 { 0.0 } else { -chance * chance.log2() };
    part(chance) + part(1.0 - chance)
}

/// Kinds that the rest of a machine starts without.
fn starts_without(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::SoundCard
            | Kind::NetworkCard
            | Kind::Modem
            | Kind::OpticalDrive
            | Kind::TapeDrive
            | Kind::FloppyDrive
            | Kind::HardDisk
            | Kind::FlashAdapter
            | Kind::PointingDevice
    )
}

pub(super) fn next(file: &FaultCaseFile, answer: &CaseAnswer, answers: &Answers, rules: &Rules) -> Option<Proposal> {
    if file.case.state != CaseState::Open {
        return None;
    }
    let suspects = || answer.suspects.iter().filter_map(|suspect| Some((suspect, &**answers.part(suspect.part)?)));
    if !answer.rails_measured
        && let Some(part) = rails_of(suspects().map(|(_, part)| part), rules)
    {
        return Some(Proposal::MeasureRails { part });
    }
    let first = answer.suspects.first();
    if let Some(first) = first.filter(|first| first.share >= ENOUGH) {
        return Some(Proposal::Settle { part: first.part });
    }
    if answer.elsewhere >= ENOUGH || first.is_none() {
        return Some(Proposal::LookElsewhere);
    }
    // What has been told once is not asked again while another can be asked.
    let open = |suspect: &Suspect| suspect.suspicion == Suspicion::Suspected;
    let trial = suspects()
        .filter(|(suspect, _)| open(suspect))
        .filter_map(|(suspect, part)| {
            let bits = bits(suspect.share);
            let good = known_good(part, answer, answers);
            let exchange = good.map(|known_good| Proposal::Exchange { suspect: suspect.part, known_good, bits });
            let out = || {
                let can = starts_without(part.file.part.kind) && file.case.part != Some(suspect.part);
                can.then_some(Proposal::TakeOut { suspect: suspect.part, bits })
            };
            Some((bits, exchange.or_else(out)?))
        })
        .reduce(|best, other| if other.0 > best.0 { other } else { best });
    let lacking = || {
        let (suspect, part) = suspects().find(|(suspect, _)| open(suspect))?;
        Some(Proposal::FindKnownGood { suspect: suspect.part, kind: part.file.part.kind })
    };
    let settle = || {
        let accused = |suspect: &&Suspect| matches!(suspect.suspicion, Suspicion::Accused { .. });
        answer.suspects.iter().find(accused).map(|suspect| Proposal::Settle { part: suspect.part })
    };
    trial.map(|(_, trial)| trial).or_else(settle).or_else(lacking).or(Some(Proposal::LookElsewhere))
}

/// The part to measure rails on: a board before a card, the more suspected first.
fn rails_of<'a>(suspects: impl Iterator<Item = &'a PartAnswers>, rules: &Rules) -> Option<PartId> {
    let kinds = rules.proof(RAILS).map_or(&[][..], |rule| &rule.kinds);
    let with_rails = suspects.filter(|part| kinds.contains(&part.file.part.kind));
    let best = with_rails.min_by_key(|part| part.file.part.kind != Kind::Mainboard)?;
    Some(best.part)
}

/// A proven part of the same kind, here and not a suspect itself: of the same design before any other, one that no
/// machine has fitted before one that does.
fn known_good(of: &PartAnswers, answer: &CaseAnswer, answers: &Answers) -> Option<PartId> {
    let is_fitted =
        |part: PartId| answers.machines.iter().any(|machine| machine.file.fitted().any(|fitting| fitting.part == part));
    answers
        .parts
        .iter()
        .filter(|part| part.file.part.kind == of.file.part.kind && is_known_good(part))
        .filter(|part| part.file.custody_now().is_at_hand())
        .filter(|part| answer.suspects.iter().all(|suspect| suspect.part != part.part))
        .min_by_key(|part| {
            let same = part.file.part.design.is_some() && part.file.part.design == of.file.part.design;
            (!same, is_fitted(part.part), part.file.part.tag.clone())
        })
        .map(|part| part.part)
}
