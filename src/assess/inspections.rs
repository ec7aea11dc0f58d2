//! What should be looked at again, and when; which proofs lapse, and when.
//!
//! A part is due so many months after its last survey as its kind's row says, or the shortest of the inspection rows
//! that apply to it (a cell left in, a damp place); where nobody can date the survey to a day, the earliest day it may
//! have been counts. A watched finding is due on its own date. A proof is due on the day up to which it holds.

use std::sync::Arc;

use chrono::{Months, NaiveDate};

use super::findings::stand_said;
use super::reason::{finding_said, machine_name, part_name};
use super::{Answers, PartAnswers, ProofStanding, Standing};
use crate::record::{Custody, FindingFile, FindingId, FindingState, Given, Logbook, MachineId, PartFile, PartId};
use crate::rules::{InspectionRule, ProofRule, Rules};
use crate::text;

/// What is due.
#[derive(Clone, Debug)]
pub enum DueWhat {
    /// A survey of a part: `months` after the last one by this row, or by the kind's own where there is none.
    /// `finding` is the one that the row applies for, if it does for one.
    Survey { rule: Option<Arc<InspectionRule>>, finding: Option<FindingId>, months: u32 },
    /// The first survey of a part.
    FirstSurvey,
    /// A look at a watched finding.
    Watched { finding: FindingId },
    /// A proof that lapses, or has.
    Proof { rule: Arc<ProofRule> },
}

/// Something due, on a part or a machine.
#[derive(Clone, Debug)]
pub struct Due {
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    pub what: DueWhat,
    /// The day by which; today for what was never done or cannot be dated.
    pub on: NaiveDate,
}

impl Due {
    /// What it is, by name, for the console's JSON form.
    pub fn name(&self) -> &'static str {
        match self.what {
            DueWhat::Survey { .. } => "survey",
            DueWhat::FirstSurvey => "first_survey",
            DueWhat::Watched { .. } => "watched",
            DueWhat::Proof { .. } => "proof",
        }
    }

    /// As a sentence.
    pub fn sentence(&self, logbook: &Logbook, rules: &Rules) -> String {
        let named = match (self.part, self.machine) {
            (Some(part), _) => part_name(logbook, part),
            (None, Some(machine)) => machine_name(logbook, machine),
            (None, None) => String::new(),
        };
        match &self.what {
            DueWhat::Survey { rule: None, months, .. } => {
                text!("Look {part} over again: {months} months are up for its kind.", part = named, months = months)
            }
            DueWhat::Survey { rule: Some(rule), finding, months } => {
                let why = lower_first(text::say(&rule.say));
                let due = text!(
                    "Look {part} over again after {months} months: {why}.",
                    part = named,
                    months = months,
                    why = why
                );
                match finding.and_then(|finding| self.stand_of(finding, logbook, rules)) {
                    Some(stand) => format!("{due} {stand}"),
                    None => due,
                }
            }
            DueWhat::FirstSurvey => text!("Look {part} over: nobody has yet.", part = named),
            DueWhat::Watched { finding } => text!(
                "{part}: look at what is watched: {finding}",
                part = named,
                finding = self.stand_of(*finding, logbook, rules).unwrap_or_default()
            ),
            DueWhat::Proof { rule } => {
                text!("{part}: run again: {proof}.", part = named, proof = text::say(&rule.say))
            }
        }
    }

    /// The finding by name and how it stands: "Residue of a leaked cell: accepted on 2026-03-01 by Ines Marlow."
    fn stand_of(&self, finding: FindingId, logbook: &Logbook, rules: &Rules) -> Option<String> {
        let file = logbook.part(self.part?)?.finding(finding)?;
        let stand = if file.state().calls_for_work() {
            text!("neither treated nor accepted yet").to_owned()
        } else {
            stand_said(file)
        };
        Some(format!("{}: {stand}.", finding_said(&file.finding, rules)))
    }
}

fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

/// All that is due by a day, first what was due longest ago.
pub fn due(answers: &Answers, logbook: &Logbook, rules: &Rules, by: NaiveDate) -> Vec<Due> {
    let today = answers.today;
    let mut due = Vec::new();
    for part in &answers.parts {
        let custody = part.file.custody_now();
        if matches!(custody, Custody::GivenBack | Custody::Sold | Custody::Scrapped | Custody::LentOut) {
            continue;
        }
        let id = Some(part.part);
        let (what, on) = survey(part, logbook, rules, today);
        due.push(Due { part: id, machine: None, what, on });
        for finding in part.file.findings.iter().filter(|finding| finding.state() == FindingState::Watched) {
            let again = finding.last().and_then(|look| look.again_by.span()).map_or(today, |span| span.first);
            due.push(Due {
                part: id,
                machine: None,
                what: DueWhat::Watched { finding: finding.finding.id },
                on: again,
            });
        }
        due.extend(part.proofs.iter().filter_map(|proof| lapses(proof, today)).map(|(what, on)| Due {
            part: id,
            machine: None,
            what,
            on,
        }));
    }
    for machine in &answers.machines {
        due.extend(machine.readiness.proofs.iter().filter_map(|proof| lapses(proof, today)).map(|(what, on)| Due {
            part: None,
            machine: Some(machine.machine),
            what,
            on,
        }));
    }
    due.retain(|due| due.on <= by);
    due.sort_by_key(|due| (due.on, due.part, due.machine));
    due
}

/// The day on which a proof that was run lapses, or lapsed.
fn lapses(proof: &ProofStanding, today: NaiveDate) -> Option<(DueWhat, NaiveDate)> {
    let on = match proof.standing {
        Standing::Good { until } => until?,
        Standing::Stale { since } => since.unwrap_or(today),
        _ => return None,
    };
    Some((DueWhat::Proof { rule: Arc::clone(&proof.rule) }, on))
}

fn survey(part: &PartAnswers, logbook: &Logbook, rules: &Rules, today: NaiveDate) -> (DueWhat, NaiveDate) {
    let Some(last) = part.file.surveys_now().next_back() else { return (DueWhat::FirstSurvey, today) };
    let own = rules.kind(part.file.part.kind).map_or(12, |rule| rule.look_again_months);
    let sooner = rules.inspections.iter().filter(|rule| rule.months < own);
    let rule = sooner.filter(|rule| applies(rule, part, logbook)).min_by_key(|rule| rule.months).cloned();
    let finding = rule.as_ref().and_then(|rule| still_there(rule, &part.file)).map(|found| found.finding.id);
    let months = rule.as_ref().map_or(own, |rule| rule.months);
    let on = last.looked.on.span().and_then(|span| span.first.checked_add_months(Months::new(months)));
    (DueWhat::Survey { rule, finding, months }, on.unwrap_or(today))
}

/// The finding that an inspection row applies for.
fn still_there<'a>(rule: &InspectionRule, file: &'a PartFile) -> Option<&'a FindingFile> {
    let counts = |finding: &&FindingFile| match finding.state() {
        FindingState::Open | FindingState::Returned | FindingState::Watched | FindingState::Accepted => true,
        FindingState::Cured => rule.after_cure,
        FindingState::Confirmed => false,
    };
    let named = |finding: &&FindingFile| rule.findings.iter().any(|name| finding.finding.what == *name);
    // What nobody has touched yet speaks before what was set aside, and that before what was cured.
    let order = |finding: &&FindingFile| (finding.state() == FindingState::Cured, !finding.state().calls_for_work());
    file.findings.iter().filter(named).filter(counts).min_by_key(order)
}

/// Whether an inspection row says anything of a part: by its kind, and by any of what else the row names.
fn applies(rule: &InspectionRule, part: &PartAnswers, logbook: &Logbook) -> bool {
    let file = &part.file;
    if !rule.kinds.is_empty() && !rule.kinds.contains(&file.part.kind) {
        return false;
    }
    if rule.findings.is_empty() && rule.answers.is_empty() && rule.places.is_empty() {
        return true;
    }
    let answered = |answer: &String| {
        let Some((question, name)) = answer.split_once('/') else { return false };
        let mut answers = file.surveys_now().rev().filter_map(|survey| survey.answer(question)).map(|one| &one.given);
        answers.find(|given| **given != Given::NotLooked).is_some_and(|given| *given == Given::Is(name.into()))
    };
    let stands_in = || {
        let path = file.part.place.map(|place| logbook.place_path(place).to_lowercase()).unwrap_or_default();
        rule.places.iter().any(|word| path.split(|letter: char| !letter.is_alphanumeric()).any(|part| part == word))
    };
    still_there(rule, file).is_some() || rule.answers.iter().any(answered) || stands_in()
}
