//! `part LOGBOOK TAG`: everything that the logbook says about one part, and what follows.
//!
//! JSON: the row of `parts`, and with it `"serial"`, `"kept_apart"` (why; null when it is not), `"power"` (as in
//! `readiness`; null where no current reaches it), `"markings": [{"text", "surface", "place", "from", "to",
//! "readings", "weeks_late", "conflict"}]` (the span of the best reading, how many are left, by how many weeks it stands
//! out, and the sentence that says how it contradicts the design's years; null where it does not),
//! `"findings": [{"what", "say", "place", "state", "severity", "since", "decided_on", "who", "until", "reason"}]` (the
//! last four of how it stands: when and by whom it was accepted, watched, cured or confirmed, watched until when, and
//! why; empty where nobody said), `"proofs": [{"proof", "required", "good",
//! "standing"}]`, `"work"` (as in `outstanding`), `"posts": [{"mechanism", "wanted", "suits": [tags]}]` (of a board: what
//! holds its card or cooler, and what on the shelf suits), `"suits_boards": [tags]` (of retention hardware), and its past
//! as `part_past` has it.

use std::fmt::Write as _;

use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which, months, totals_in_words};
use super::outstanding::{self, TaskForm};
use super::part_past::{self, PastForm};
use super::parts::{self, PartForm};
use super::readiness::PowerForm;
use super::{Answer, as_json};
use crate::assess::findings::stand_said;
use crate::assess::reason::finding_said;
use crate::assess::retention::{self, Posts};
use crate::assess::{PartAnswers, making};
use crate::record::{FindingState, Logbook, PartId, Severity, Surface, When, Word as _};
use crate::text;
use crate::trade::date_code::OutlierCause;

#[derive(Args)]
pub struct Part {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("The part's tag"))]
    tag: String,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    #[serde(flatten)]
    part: PartForm,
    serial: String,
    kept_apart: Option<String>,
    power: Option<PowerForm>,
    markings: Vec<MarkingForm>,
    findings: Vec<FindingForm>,
    proofs: Vec<ProofForm>,
    work: Vec<TaskForm>,
    posts: Vec<PostsForm>,
    suits_boards: Vec<String>,
    #[serde(flatten)]
    past: PastForm,
}

#[derive(Serialize)]
struct PostsForm {
    mechanism: String,
    wanted: bool,
    suits: Vec<String>,
    #[serde(skip)]
    said: String,
}

#[derive(Serialize)]
struct MarkingForm {
    text: String,
    surface: Surface,
    place: String,
    from: Option<NaiveDate>,
    to: Option<NaiveDate>,
    readings: usize,
    weeks_late: Option<i64>,
    conflict: Option<String>,
    /// What it is later than is its design's last year; the conflict says so.
    #[serde(skip)]
    is_after_design: bool,
    #[serde(skip)]
    said: String,
}

#[derive(Serialize)]
struct FindingForm {
    what: String,
    say: String,
    place: String,
    state: FindingState,
    severity: Severity,
    since: When,
    decided_on: When,
    who: String,
    until: When,
    reason: String,
    #[serde(skip)]
    stand: String,
}

#[derive(Serialize)]
struct ProofForm {
    proof: String,
    required: bool,
    good: bool,
    standing: String,
    #[serde(skip)]
    say: String,
}

impl Part {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let file = opened.part(&self.tag)?;
        let answers = opened.answers.part(file.part.id).expect("every part of the logbook is answered");
        let (logbook, rules) = (&opened.logbook, &opened.rules);
        let joint = making::read(file, answers.design.as_ref().map(|design| &design.design));
        let markings = file.markings_now().zip(&joint.markings).enumerate().map(|(at, (marking, kept))| {
            let best = kept.chosen();
            let outlier = joint.outliers.iter().find(|outlier| outlier.marking == at);
            MarkingForm {
                text: marking.text.clone(),
                surface: marking.surface,
                place: marking.place_on_part.clone(),
                from: best.map(|reading| reading.span.first),
                to: best.map(|reading| reading.span.last),
                readings: kept.kept_count,
                weeks_late: outlier.map(|outlier| outlier.weeks),
                is_after_design: outlier.is_some_and(|outlier| outlier.cause == OutlierCause::AfterDesign),
                conflict: answers.making.conflict_of(marking),
                said: kept.kept().iter().map(|reading| months(reading.span)).collect::<Vec<_>>().join(text!(" or ")),
            }
        });
        let findings = file.findings.iter().map(|finding| FindingForm {
            decided_on: finding.decided().map(|look| look.looked.on).unwrap_or_default(),
            who: finding.decided().map(|look| look.who.clone()).unwrap_or_default(),
            until: finding.last().map(|look| look.again_by).unwrap_or_default(),
            reason: finding.last().map(|look| look.reason.clone()).unwrap_or_default(),
            stand: stand_said(finding),
            what: finding.finding.what.to_string(),
            say: finding_said(&finding.finding, rules),
            place: finding.finding.place_on_part.clone(),
            state: finding.state(),
            severity: finding.severity(),
            since: finding.since(),
        });
        let proofs = answers.proofs.iter().map(|proof| ProofForm {
            proof: proof.rule.name.clone(),
            required: proof.rule.required,
            good: proof.standing.is_good(),
            standing: proof.standing.said(logbook),
            say: text::say(&proof.rule.say).to_owned(),
        });
        let form = Form {
            serial: file.part.serial.clone(),
            kept_apart: file.part.is_quarantined().then(|| file.part.quarantine.clone()),
            power: opened.answers.power_of_part(file.part.id).map(|power| PowerForm::of(&power, &opened)),
            markings: markings.collect(),
            findings: findings.collect(),
            proofs: proofs.collect(),
            work: outstanding::forms(&answers.tasks, &opened),
            posts: posts(answers, &opened),
            suits_boards: tags(retention::boards_of(answers, &opened.answers, rules), logbook),
            past: part_past::form(file, &opened),
            part: parts::form(&opened, answers),
        };
        if json { as_json(&form) } else { Ok(in_words(&form, answers, &logbook.workshop.currency)) }
    }
}

fn tags(parts: impl IntoIterator<Item = PartId>, logbook: &Logbook) -> Vec<String> {
    parts.into_iter().filter_map(|part| Some(logbook.part(part)?.part.tag.clone())).collect()
}

fn posts(answers: &PartAnswers, opened: &Opened) -> Vec<PostsForm> {
    let (logbook, rules) = (&opened.logbook, &opened.rules);
    let posts = retention::of_board(answers, &opened.answers, logbook, rules);
    let form = |posts: &Posts| PostsForm {
        mechanism: rules.connectors.label(&posts.rule.mechanism).to_owned(),
        wanted: posts.is_wanted,
        suits: tags(posts.suiting.iter().map(|one| one.part), logbook),
        said: posts.sentence(logbook, rules),
    };
    posts.iter().map(form).collect()
}

fn in_words(form: &Form, answers: &PartAnswers, currency: &str) -> String {
    let PartForm { tag, title, kind, state, .. } = &form.part;
    let mut lines = format!("{tag}  {title} ({}): {}", kind.label(), state.label());
    let mut line = |depth: usize, text: String| {
        let _ = write!(lines, "\n{:1$}{text}", "", depth * 2);
    };
    if let Some(why) = &form.kept_apart {
        line(1, text!("Kept apart: {why}", why = why));
    }
    if let Some(span) = answers.making.span {
        let span = months(span);
        line(
            1,
            if answers.making.is_conflict {
                text!("Made: conflict with its design’s years; as the markings say: {span}", span = span)
            } else {
                text!("Made: {span}", span = span)
            },
        );
    }
    for marking in &form.markings {
        let mut said = if marking.said.is_empty() { text!("no date").to_owned() } else { marking.said.clone() };
        if let Some(weeks) = marking.weeks_late.filter(|_| !marking.is_after_design) {
            said += &text!(", {weeks} weeks later than the rest", weeks = weeks);
        }
        line(
            2,
            text!("{text} ({surface}): {said}", text = marking.text, surface = marking.surface.label(), said = said),
        );
        if let Some(conflict) = &marking.conflict {
            line(3, conflict.clone());
        }
    }
    form.past.found_in_words(currency).into_iter().for_each(|(depth, text)| line(depth, text));
    if let Some(power) = &form.power {
        line(1, text!("May power be applied on the bench? {verdict}", verdict = power.verdict.label()));
        for reason in power.sentences() {
            line(2, reason.to_owned());
        }
    }
    if !form.findings.is_empty() {
        line(1, text!("Findings").to_owned());
    }
    for finding in &form.findings {
        let FindingForm { say, place, severity, state, stand, since, .. } = finding;
        let place = if place.is_empty() { String::new() } else { format!(", {place}") };
        let severity = severity.label();
        if state.calls_for_work() {
            line(2, format!("{say}{place}: {severity}, {} ({since})", state.label()));
        } else {
            let found = if since.is_known() { text!(" (found {day})", day = since) } else { String::new() };
            line(2, format!("{say}{place}: {severity}, {stand}{found}"));
        }
    }
    if !form.proofs.is_empty() {
        line(1, text!("Proofs").to_owned());
    }
    for proof in &form.proofs {
        line(2, format!("{} {}", proof.say, proof.standing));
    }
    if !form.work.is_empty() {
        line(1, totals_in_words(answers.totals));
    }
    for task in &form.work {
        line(2, task.in_words());
    }
    form.past.done_in_words().into_iter().for_each(|(depth, text)| line(depth, text));
    for posts in &form.posts {
        line(1, posts.said.clone());
    }
    if !form.suits_boards.is_empty() {
        line(1, text!("It suits the posts of: {boards}", boards = form.suits_boards.join(", ")));
    }
    lines
}
