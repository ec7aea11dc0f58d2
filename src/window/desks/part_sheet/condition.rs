//! The part's condition: its findings, the last survey and what it changed, and a look again.

use std::sync::Arc;

use egui::Ui;

use super::about::{About, day_text, wrong_ui};
use super::finding::FindingList;
use crate::assess::findings::{Turn, TurnKind, what_changed};
use crate::counted;
use crate::record::{
    Change, Entry, Finding, FindingFile, FindingId, FindingSource, FindingState, Given, Look, Moment, PartFile,
    Severity, Survey, When, Word,
};
use crate::rules::Rules;
use crate::store::Store;
use crate::text;
use crate::text::say;
use crate::window::forms::past_date;
use crate::window::outbox::Outbox;
use crate::window::rounds::SurveyRound;
use crate::window::theme::GRID;
use crate::window::widgets::{body, choice_ui, field_ui, link_ui, press_ui, remark, severity_ui, strong};

/// What is open and half typed.
#[derive(Default)]
pub struct Condition {
    findings: FindingList,
    round: Option<Round>,
    by_hand: Option<ByHand>,
    shows_answers: bool,
    turns: Option<(Arc<PartFile>, Vec<Turn>)>,
}

struct Round {
    questions: SurveyRound,
    on: String,
    who: String,
    why: String,
    is_correction: bool,
}

struct ByHand {
    what: String,
    place: String,
    severity: Severity,
}

impl Condition {
    /// Opens a finding.
    pub fn open(&mut self, finding: FindingId, about: &About<'_>) {
        self.findings.open(finding, about);
    }

    /// Opens a new round of questions.
    pub fn survey(&mut self) {
        if self.round.is_none() {
            self.round = Some(Round {
                questions: SurveyRound::default(),
                on: String::new(),
                who: String::new(),
                why: String::new(),
                is_correction: false,
            });
        }
    }

    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        self.findings.ui(ui, about, outbox);
        self.by_hand_ui(ui, about, outbox);
        ui.add_space(2.0 * GRID);
        if self.round.is_some() {
            self.round_ui(ui, about, outbox);
        } else {
            self.last_survey_ui(ui, about);
        }
    }

    fn last_survey_ui(&mut self, ui: &mut Ui, about: &About<'_>) {
        let surveys: Vec<&Survey> = about.file.surveys_now().collect();
        let Some(last) = surveys.last().copied() else {
            ui.label(body(text!("Never surveyed: what state it is in is not known.")));
            if press_ui(ui, text!("Survey it…"), "", None).clicked() {
                self.survey();
            }
            return;
        };
        let looked = last.answers.iter().filter(|answer| answer.given != Given::NotLooked).count();
        let mut words = vec![text!("Last surveyed {day}", day = day_text(last.looked.on))];
        words.extend([&last.who, &last.why].into_iter().filter(|word| !word.is_empty()).cloned());
        words.push(text!("{looked} of {all} looked at", looked = looked, all = last.answers.len()));
        ui.label(body(words.join(" · ")));
        if !last.note.is_empty() {
            ui.label(body(&last.note));
        }
        if surveys.len() > 1 {
            self.changed_ui(ui, about, last);
        }
        ui.horizontal_wrapped(|ui| {
            if press_ui(ui, text!("Survey again…"), "", None).clicked() {
                self.survey();
            }
            let word = if self.shows_answers { text!("Fold the answers") } else { text!("Show the answers") };
            if link_ui(ui, word).clicked() {
                self.shows_answers = !self.shows_answers;
            }
            if link_ui(ui, text!("Correct the last survey…")).clicked() {
                self.round = Some(Round {
                    questions: SurveyRound::correcting(last),
                    on: last.looked.on.to_string(),
                    who: last.who.clone(),
                    why: last.why.clone(),
                    is_correction: true,
                });
            }
        });
        if self.shows_answers {
            answers_ui(ui, last, about.view.rules);
        }
    }

    fn changed_ui(&mut self, ui: &mut Ui, about: &About<'_>, last: &Survey) {
        if self.turns.as_ref().is_none_or(|(file, _)| !Arc::ptr_eq(file, about.file)) {
            self.turns = Some((Arc::clone(about.file), turns(about.file, last)));
        }
        let Some((_, turns)) = &self.turns else { return };
        let turns: Vec<&Turn> = turns.iter().filter(|turn| turn.turn != TurnKind::Same).collect();
        if turns.is_empty() {
            ui.label(remark(ui, text!("Against the survey before: unchanged.")));
            return;
        }
        ui.label(remark(ui, text!("Against the survey before:")));
        for turn in turns {
            ui.horizontal_wrapped(|ui| {
                severity_ui(ui, turn.severity);
                let name = about.view.rules.finding(&turn.what).map_or(&*turn.what, |rule| say(&rule.say));
                ui.label(body(format!("{name}: {}", turn.turn.label().to_lowercase())));
            });
        }
    }

    fn round_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(open) = &mut self.round else { return };
        if open.on.is_empty() {
            open.on = about.view.today.to_string();
            open.who = about.keeper();
        }
        let Round { questions: round, on, who, why, is_correction } = open;
        ui.label(strong(if *is_correction { text!("The last survey, corrected") } else { text!("A new survey") }));
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Looked on"), on, Some(28.0 * GRID));
            field_ui(ui, text!("Who looked"), who, Some(40.0 * GRID));
            field_ui(ui, text!("Why: before fitting, yearly look"), why, Some(60.0 * GRID));
        });
        round.ui(ui, about.view.rules, about.part().kind);
        let day = past_date(on, about.view);
        let fault = day.as_ref().err().cloned().or_else(|| round.fault(about.view.rules, about.part().kind));
        let (mut keep, mut away) = (false, false);
        ui.add_space(2.0 * GRID);
        ui.horizontal_wrapped(|ui| {
            let keep_word = text!("Keep the survey");
            keep = ui.add_enabled_ui(fault.is_none(), |ui| press_ui(ui, keep_word, "", None)).inner.clicked();
            away = press_ui(ui, text!("Put the survey away"), "", None).clicked();
        });
        if let Some(fault) = &fault {
            wrong_ui(ui, fault);
        }
        if keep && let Ok(day) = day {
            let entries = round.entries(about.file, about.view.rules, day, who.trim(), why.trim());
            if entries.is_empty() {
                outbox.say(text!("Nothing was looked at yet, so there is nothing to keep."));
            } else {
                let mut change = Change::new(if *is_correction {
                    text!("Correct the last survey of {tag}", tag = about.tag())
                } else {
                    text!("Survey {tag}", tag = about.tag())
                });
                change.put_all(entries);
                outbox.change(change);
                self.round = None;
            }
        } else if away {
            self.round = None;
        }
    }

    fn by_hand_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(by_hand) = &mut self.by_hand else {
            if link_ui(ui, text!("Note a finding of your own…")).clicked() {
                self.by_hand = Some(ByHand { what: String::new(), place: String::new(), severity: Severity::Plain });
            }
            return;
        };
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("What is wrong"), &mut by_hand.what, Some(90.0 * GRID));
            field_ui(ui, text!("Where on the part"), &mut by_hand.place, Some(50.0 * GRID));
            let severities: Vec<(Severity, &str)> = Severity::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("How bad"), &mut by_hand.severity, &severities, 30.0 * GRID);
        });
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the finding"), "", None).clicked();
            away = press_ui(ui, text!("Put the finding away"), "", None).clicked();
        });
        let what = by_hand.what.trim();
        if keep && what.is_empty() {
            wrong_ui(ui, text!("Say what is wrong."));
        } else if keep {
            outbox.change(found(about, what, by_hand.place.trim(), by_hand.severity));
            self.by_hand = None;
        } else if away {
            self.by_hand = None;
        }
    }
}

/// A finding in the restorer's own words.
fn found(about: &About<'_>, what: &str, place: &str, severity: Severity) -> Change {
    let finding = Finding {
        id: Store::new_id(),
        part: about.part().id,
        what: "".into(),
        place_on_part: place.to_owned(),
        source: FindingSource::Hand,
        question: "".into(),
        note: what.to_owned(),
    };
    let look = Look {
        id: Store::new_id(),
        finding: finding.id,
        looked: Moment::on(about.view.today),
        state: FindingState::Open,
        severity,
        share_percent: None,
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
        who: about.keeper(),
    };
    let mut change = Change::new(text!("Note on {tag}: {finding}", tag = about.tag(), finding = what));
    change.put(finding).put(look);
    change
}

/// What the last survey's looks say beside what was known before it.
fn turns(file: &PartFile, last: &Survey) -> Vec<Turn> {
    let mut before = file.clone();
    let mut entries = Vec::new();
    before.findings = file
        .findings
        .iter()
        .filter_map(|known| {
            let (news, olds): (Vec<&Look>, Vec<&Look>) =
                known.looks.iter().partition(|look| look.survey == Some(last.id));
            entries.extend(news.into_iter().cloned().map(Entry::from));
            if olds.is_empty() {
                entries.push(known.finding.clone().into());
                return None;
            }
            Some(FindingFile { finding: known.finding.clone(), looks: olds.into_iter().cloned().collect() })
        })
        .collect();
    what_changed(&before, &entries)
}

fn answers_ui(ui: &mut Ui, survey: &Survey, rules: &Rules) {
    for answer in &survey.answers {
        let Some(question) = rules.question(&answer.question) else { continue };
        let given = match &answer.given {
            Given::NotLooked => continue,
            Given::CouldNotTell => text!("Could not tell"),
            Given::DoesNotApply => text!("Does not apply"),
            Given::Is(name) => {
                question.answers.iter().find(|row| row.name == *name).map_or(name.as_str(), |row| say(&row.say))
            }
        };
        let mut words = vec![given.to_owned()];
        if let (Some(figure), Some(rule)) = (answer.figure, &question.figure) {
            words.push(format!("{figure} {}", say(&rule.unit)));
        }
        words.extend([&answer.place_on_part, &answer.note].into_iter().filter(|word| !word.is_empty()).cloned());
        ui.horizontal_wrapped(|ui| {
            ui.label(remark(ui, say(&question.ask)));
            ui.label(body(words.join(", ")));
        });
    }
    let skipped = survey.answers.iter().filter(|answer| answer.given == Given::NotLooked).count();
    if skipped > 0 {
        let words = counted!("{count} question was not looked at", "{count} questions were not looked at", skipped);
        ui.label(remark(ui, words));
    }
}
