//! `rules [LOGBOOK] [SECTION]`: the names that records may carry, with what they mean, from the tables in force.
//!
//! `--kind mainboard` leaves only what is for that kind; SECTION is one of questions, findings, work, proofs, figures,
//! connectors, schemes. With a logbook, the names in it that no table has are listed too. JSON: an object with a list a
//! section, each row with `"name"`, `"say"`, `"kinds"` (empty: any kind); questions with `"answers": [{"name", "say",
//! "finding"}]` and `"always_on"` (kinds to which *does not apply* is refused), work with `"findings"`, figures with
//! `"unit"`; and of a logbook `"unknown": ["part 0042: no finding is named …"]`.

use std::fmt::Write as _;
use std::path::PathBuf;
use std::sync::Arc;

use clap::{Args, ValueEnum};
use serde::Serialize;

use super::opened::rules_in_force;
use super::{Answer, as_json};
use crate::assess::unknown_names::scheme_name;
use crate::record::{Figure, Kind, Word as _, figure_unit};
use crate::rules::{FindingRule, ProofRule, Question, Rules, WorkRule};
use crate::store::{Store, unknown_in_words};
use crate::text;
use crate::text::say;
use crate::trade::date_code::Scheme;

#[derive(Args)]
pub struct ListRules {
    #[arg(value_name = "LOGBOOK, SECTION", num_args = 0..=2, help = text!("A logbook, whose unknown names are listed too, and one of questions, findings, work, proofs, figures, connectors, schemes"))]
    words: Vec<String>,
    #[arg(long, value_name = "KIND", help = text!("Only what is for this kind of part: mainboard"))]
    kind: Option<String>,
}

/// What is listed by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum Section {
    Questions,
    Findings,
    Work,
    Proofs,
    Figures,
    Connectors,
    Schemes,
}

/// The JSON form.
#[derive(Default, Serialize)]
struct Form {
    #[serde(skip_serializing_if = "Option::is_none")]
    questions: Option<Vec<QuestionForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    findings: Option<Vec<RowForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    work: Option<Vec<WorkForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    proofs: Option<Vec<RowForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    figures: Option<Vec<FigureForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    connectors: Option<Vec<RowForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    schemes: Option<Vec<RowForm>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    unknown: Option<Vec<String>>,
}

/// A name with what it means.
#[derive(Serialize)]
struct RowForm {
    name: String,
    say: String,
    kinds: Vec<Kind>,
}

#[derive(Serialize)]
struct QuestionForm {
    #[serde(flatten)]
    row: RowForm,
    always_on: Vec<Kind>,
    answers: Vec<AnswerForm>,
}

#[derive(Serialize)]
struct AnswerForm {
    name: String,
    say: String,
    finding: Option<String>,
}

#[derive(Serialize)]
struct WorkForm {
    #[serde(flatten)]
    row: RowForm,
    findings: Vec<String>,
}

#[derive(Serialize)]
struct FigureForm {
    #[serde(flatten)]
    row: RowForm,
    unit: &'static str,
}

impl ListRules {
    pub fn answer(&self, json: bool) -> Answer {
        let rules = rules_in_force()?;
        let kind = self.kind.as_deref().map(known_kind).transpose()?;
        let (mut section, mut logbook) = (None, None);
        for word in &self.words {
            match Section::from_str(word, false) {
                Ok(named) if section.is_none() => section = Some(named),
                _ if logbook.is_none() => logbook = Some(PathBuf::from(word)),
                _ => anyhow::bail!(text!(
                    "“{word}” is no section; there are questions, findings, work, proofs, figures, connectors, schemes",
                    word = word
                )),
            }
        }
        let mut form = listed(&rules, section, kind);
        if let Some(path) = logbook {
            form.unknown = Some(unknown_in_words(&Store::open_reading(&path)?.logbook(), &rules));
        }
        if json { as_json(&form) } else { Ok(in_words(&form)) }
    }
}

fn known_kind(name: &str) -> anyhow::Result<Kind> {
    let known = Kind::ALL.iter().map(|kind| kind.name()).collect::<Vec<_>>().join(", ");
    Kind::named(name).ok_or_else(|| {
        anyhow::anyhow!(text!("“{name}” is no kind of part; there are {known}", name = name, known = known))
    })
}

fn listed(rules: &Rules, section: Option<Section>, kind: Option<Kind>) -> Form {
    let wants = |one: Section| section.is_none_or(|section| section == one);
    let is_for = |row: &RowForm| kind.is_none_or(|kind| row.kinds.is_empty() || row.kinds.contains(&kind));
    let row = |name: &str, words: &str, kinds: Vec<Kind>| RowForm {
        name: name.to_owned(),
        say: say(words).to_owned(),
        kinds,
    };
    let questions = || {
        let form = |rule: &Arc<Question>| QuestionForm {
            row: row(&rule.name, &rule.ask, rule.kinds.clone()),
            always_on: rule.always_on.clone(),
            answers: rule
                .answers
                .iter()
                .map(|answer| AnswerForm {
                    name: answer.name.to_string(),
                    say: say(&answer.say).to_owned(),
                    finding: answer.finding.clone(),
                })
                .collect(),
        };
        rules.questions.iter().map(form).filter(|form| is_for(&form.row)).collect()
    };
    let findings = || {
        let form = |rule: &Arc<FindingRule>| row(&rule.name, &rule.say, kinds_of_finding(&rule.name, rules));
        rules.findings.iter().map(form).filter(is_for).collect()
    };
    let work = || {
        let form = |rule: &Arc<WorkRule>| WorkForm {
            row: row(&rule.name, &rule.say, kinds_of_work(rule, rules)),
            findings: rule.findings.clone(),
        };
        rules.work.iter().map(form).filter(|form| is_for(&form.row)).collect()
    };
    let proofs = || {
        let form = |rule: &Arc<ProofRule>| row(&rule.name, &rule.say, rule.kinds.clone());
        rules.proofs.iter().map(form).filter(is_for).collect()
    };
    let figures = || {
        let asked =
            |figure: Figure| Kind::ALL.iter().copied().filter(move |kind| Figure::asked_of(*kind).contains(&figure));
        let form = |figure: &Figure| FigureForm {
            row: RowForm {
                name: figure.name().to_owned(),
                say: figure.label().to_owned(),
                kinds: asked(*figure).collect(),
            },
            unit: figure_unit(figure.name()),
        };
        Figure::ALL.iter().map(form).filter(|form| is_for(&form.row)).collect()
    };
    let connectors = || rules.connectors.all().map(|one| row(&one.id, &one.label, Vec::new())).collect();
    let schemes = || {
        let form = |scheme: Scheme| RowForm { name: scheme_name(scheme), say: scheme.to_string(), kinds: Vec::new() };
        Scheme::ALL.into_iter().map(form).collect()
    };
    Form {
        questions: wants(Section::Questions).then(questions),
        findings: wants(Section::Findings).then(findings),
        work: wants(Section::Work).then(work),
        proofs: wants(Section::Proofs).then(proofs),
        figures: wants(Section::Figures).then(figures),
        connectors: wants(Section::Connectors).then(connectors),
        schemes: wants(Section::Schemes).then(schemes),
        unknown: None,
    }
}

/// The kinds whose questions raise a finding; none, for any kind, where capacitor positions raise it or nothing does.
fn kinds_of_finding(name: &str, rules: &Rules) -> Vec<Kind> {
    if rules.finding(name).is_some_and(|rule| !rule.capacitor_states.is_empty()) {
        return Vec::new();
    }
    let raises = |question: &&Arc<Question>| {
        question.answers.iter().any(|answer| answer.finding.as_deref() == Some(name))
            || question.figure.iter().flat_map(|figure| &figure.bounds).any(|bound| bound.finding == name)
    };
    let asked: Vec<Kind> = rules.questions.iter().filter(raises).flat_map(|row| row.kinds.iter().copied()).collect();
    Kind::ALL.iter().copied().filter(|kind| asked.contains(kind)).collect()
}

/// The kinds that a piece of work is done on: its own, else those of the findings that call for it; none for any kind.
fn kinds_of_work(rule: &WorkRule, rules: &Rules) -> Vec<Kind> {
    if !rule.kinds.is_empty() {
        return rule.kinds.clone();
    }
    let of_findings: Vec<Vec<Kind>> = rule.findings.iter().map(|name| kinds_of_finding(name, rules)).collect();
    if of_findings.iter().any(Vec::is_empty) {
        return Vec::new();
    }
    Kind::ALL.iter().copied().filter(|kind| of_findings.iter().any(|kinds| kinds.contains(kind))).collect()
}

fn in_words(form: &Form) -> String {
    let mut lines = String::new();
    let mut section = |title: &str, rows: Vec<String>| {
        let _ = writeln!(lines, "{title}");
        for row in rows {
            let _ = writeln!(lines, "{row}");
        }
    };
    if let Some(questions) = &form.questions {
        section(text!("Questions, with their answers"), questions.iter().map(question_in_words).collect());
    }
    if let Some(rows) = &form.findings {
        section(text!("Findings"), rows.iter().map(|row| row_in_words(row, "")).collect());
    }
    if let Some(rows) = &form.work {
        section(text!("Work"), rows.iter().map(|form| row_in_words(&form.row, "")).collect());
    }
    if let Some(rows) = &form.proofs {
        section(text!("Proofs"), rows.iter().map(|row| row_in_words(row, "")).collect());
    }
    if let Some(rows) = &form.figures {
        section(text!("Figures"), rows.iter().map(|form| row_in_words(&form.row, form.unit)).collect());
    }
    if let Some(rows) = &form.connectors {
        section(text!("Connectors"), rows.iter().map(|row| row_in_words(row, "")).collect());
    }
    if let Some(rows) = &form.schemes {
        section(text!("Date schemes"), rows.iter().map(|row| row_in_words(row, "")).collect());
    }
    if let Some(names) = form.unknown.as_ref().filter(|names| !names.is_empty()) {
        section(
            text!("Names in the logbook that no table has"),
            names.iter().map(|name| format!("  {name}")).collect(),
        );
    }
    lines
}

fn row_in_words(row: &RowForm, unit: &str) -> String {
    let kinds = row.kinds.iter().map(|kind| kind.name()).collect::<Vec<_>>().join(", ");
    let unit = if unit.is_empty() { String::new() } else { format!(" ({unit})") };
    let kinds = if kinds.is_empty() { kinds } else { format!("  [{kinds}]") };
    format!("  {}: {}{unit}{kinds}", row.name, row.say)
}

fn question_in_words(form: &QuestionForm) -> String {
    let mut lines = row_in_words(&form.row, "");
    for answer in &form.answers {
        let raises = answer.finding.as_ref().map(|finding| format!(" → {finding}")).unwrap_or_default();
        let _ = write!(lines, "\n    {}: {}{raises}", answer.name, answer.say);
    }
    if !form.always_on.is_empty() {
        let kinds = form.always_on.iter().map(|kind| kind.name()).collect::<Vec<_>>().join(", ");
        let _ = write!(lines, "\n    {}", text!("always applies to {kinds}", kinds = kinds));
    }
    lines
}
