//! The survey as one quick round: a question with its answers at a time, the others in one line each.

use std::collections::BTreeMap;
use std::sync::Arc;

use egui::{Align, Key, Sense, Ui, vec2};
use serde::{Deserialize, Serialize};

use super::new_uuid;
use crate::assess::findings::after_survey;
use crate::record::{Answer, Entry, Given, Id, Kind, Moment, PartFile, PartId, Survey, SurveyId, When, Word as _};
use crate::rules::{Question, Rules};
use crate::text;
use crate::text::say;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    AnswerChoice, answer_row_ui, body, caution_ui, field_ui, press_ui, remark, severity_ui, small,
};

const NUMBERS: [Key; 9] =
    [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7, Key::Num8, Key::Num9];

/// What is answered so far. A question that nobody answered was not looked at.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct SurveyRound {
    answers: BTreeMap<String, Typed>,
    /// A remark on the whole look.
    pub note: String,
    /// The place of the question that is being asked.
    asked: usize,
    supersedes: Option<SurveyId>,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
struct Typed {
    given: Given,
    #[serde(default)]
    figure: String,
    #[serde(default)]
    place: String,
    #[serde(default)]
    note: String,
}

impl Default for Typed {
    fn default() -> Self {
        Self { given: Given::NotLooked, figure: String::new(), place: String::new(), note: String::new() }
    }
}

impl Typed {
    /// What is wrong with an answer that says that the question does not apply.
    fn reason_fault(&self, question: &Question, kind: Kind) -> Option<String> {
        if self.given != Given::DoesNotApply {
            return None;
        }
        let ask = say(&question.ask);
        if question.always_on.contains(&kind) {
            return Some(text!(
                "“{question}” always applies to this kind: {kind}. Answer what you see, or that you could not tell.",
                question = ask,
                kind = kind.label()
            ));
        }
        self.note.trim().is_empty().then(|| text!("“{question}”: say why it does not apply.", question = ask))
    }

    /// The figure as a number; `Err` says what is wrong with it.
    fn figure(&self, question: &Question) -> Result<Option<f64>, String> {
        let Some(rule) = &question.figure else { return Ok(None) };
        let typed = self.figure.trim().trim_end_matches(&*rule.unit).trim();
        if typed.is_empty() {
            return Ok(None);
        }
        match typed.replace(',', ".").parse::<f64>() {
            Ok(figure) if (rule.least..=rule.most).contains(&figure) => Ok(Some(figure)),
            _ => Err(text!(
                "“{typed}” cannot be meant: {what} lies between {least} and {most} {unit}",
                typed = typed,
                what = say(&rule.say),
                least = rule.least,
                most = rule.most,
                unit = say(&rule.unit)
            )),
        }
    }
}

impl SurveyRound {
    /// A round that corrects an earlier survey (a slip of the pen), with that one's answers filled in.
    pub fn correcting(survey: &Survey) -> Self {
        let answers = survey.answers.iter().map(|answer| {
            let Answer { question, given, place_on_part, note, figure } = answer.clone();
            let figure = figure.map(|figure| figure.to_string()).unwrap_or_default();
            (question.to_string(), Typed { given, figure, place: place_on_part, note })
        });
        Self { answers: answers.collect(), note: survey.note.clone(), asked: 0, supersedes: Some(survey.id) }
    }

    /// How many of a kind's questions were looked at, whatever came of it.
    pub fn looked_at(&self, rules: &Rules, kind: Kind) -> usize {
        rules.questions_for(kind).iter().filter(|question| self.given(question) != &Given::NotLooked).count()
    }

    fn given(&self, question: &Question) -> &Given {
        self.answers.get(question.name.as_str()).map_or(&Given::NotLooked, |typed| &typed.given)
    }

    /// The first thing typed that cannot be meant, or that wants a reason.
    pub fn fault(&self, rules: &Rules, kind: Kind) -> Option<String> {
        let mut questions = rules.questions_for(kind).iter();
        questions.find_map(|question| {
            let typed = self.answers.get(question.name.as_str())?;
            typed.figure(question).err().or_else(|| typed.reason_fault(question, kind))
        })
    }

    /// The survey as a record; `None` when nothing was looked at and nothing remarked.
    pub fn survey(&self, part: PartId, rules: &Rules, kind: Kind, on: When, who: &str, why: &str) -> Option<Survey> {
        if self.looked_at(rules, kind) == 0 && self.note.trim().is_empty() {
            return None;
        }
        let answer = |question: &Arc<Question>| {
            let typed = self.answers.get(question.name.as_str()).cloned().unwrap_or_default();
            let is_answer = typed.given != Given::NotLooked;
            Answer {
                question: question.name,
                figure: typed.figure(question).ok().flatten().filter(|_| is_answer),
                place_on_part: typed.place.trim().to_owned(),
                note: typed.note.trim().to_owned(),
                given: typed.given,
            }
        };
        Some(Survey {
            id: Id::from_uuid(new_uuid()),
            part,
            looked: Moment { on, sequence: 0 },
            who: who.to_owned(),
            why: why.to_owned(),
            supersedes: self.supersedes,
            note: self.note.trim().to_owned(),
            answers: rules.questions_for(kind).iter().map(answer).collect(),
        })
    }

    /// The survey and what follows from it for the findings of a part as its file stands; nothing for an empty round.
    pub fn entries(&self, file: &PartFile, rules: &Rules, on: When, who: &str, why: &str) -> Vec<Entry> {
        let Some(survey) = self.survey(file.part.id, rules, file.part.kind, on, who, why) else { return Vec::new() };
        let follows = after_survey(file, &survey, rules, &mut new_uuid);
        std::iter::once(survey.into()).chain(follows).collect()
    }

    /// Draws the round for a kind. Number keys answer the question that is asked, left and right change the answer,
    /// up and down go from question to question.
    pub fn ui(&mut self, ui: &mut Ui, rules: &Rules, kind: Kind) {
        let questions = rules.questions_for(kind);
        if questions.is_empty() {
            ui.label(body(text!("Nothing is asked of this kind.")));
            return;
        }
        self.asked = self.asked.min(questions.len() - 1);
        self.progress_ui(ui, rules, kind);
        ui.add_space(2.0 * GRID);
        let before = self.asked;
        self.keys(ui, questions, kind);
        let moved = before != self.asked;
        // An answer goes on to the next question, which is not to hear the same key.
        let asked = self.asked;
        for (at, question) in questions.iter().enumerate() {
            if at == asked {
                let drawn = ui.scope(|ui| self.asked_ui(ui, rules, kind, question)).response;
                if moved {
                    ui.scroll_to_rect(drawn.rect.expand(6.0 * GRID), Some(Align::Center));
                }
            } else if self.line_ui(ui, question) {
                self.asked = at;
            }
        }
        ui.add_space(2.0 * GRID);
        field_ui(ui, text!("Remark on the whole look"), &mut self.note, None);
    }

    fn progress_ui(&self, ui: &mut Ui, rules: &Rules, kind: Kind) {
        let (looked, all) = (self.looked_at(rules, kind), rules.questions_for(kind).len());
        ui.label(small(text!("{looked} of {all} looked at", looked = looked, all = all)));
        ui.add_space(0.5 * GRID);
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width().min(120.0 * GRID), GRID), Sense::hover());
        let tokens = ui.tokens();
        ui.painter().rect_filled(rect, 2.0, tokens.hover);
        let done = egui::Rect::from_min_size(rect.min, vec2(rect.width() * looked as f32 / all as f32, GRID));
        ui.painter().rect_filled(done, 2.0, tokens.gate_passed);
    }

    fn keys(&mut self, ui: &Ui, questions: &[Arc<Question>], kind: Kind) {
        if ui.ctx().text_edit_focused() {
            return;
        }
        let nothing_focused = ui.memory(|memory| memory.focused().is_none());
        let (mut by, mut turn) = (0, 0);
        ui.input(|input| {
            if input.modifiers.any() {
                return;
            }
            by += isize::from(input.key_pressed(Key::ArrowDown)) - isize::from(input.key_pressed(Key::ArrowUp));
            by += isize::from(nothing_focused && input.key_pressed(Key::Enter));
            turn += isize::from(input.key_pressed(Key::ArrowRight)) - isize::from(input.key_pressed(Key::ArrowLeft));
        });
        let last = questions.len() - 1;
        self.asked = self.asked.saturating_add_signed(by).min(last);
        if turn != 0 {
            let question = &questions[self.asked];
            let choices = choices(question, kind);
            let now =
                choices.iter().position(|choice| choice.given == *self.given(question)).unwrap_or(choices.len() - 1);
            let next = (now as isize + turn).rem_euclid(choices.len() as isize) as usize;
            self.answer(question, choices[next].given.clone());
        }
    }

    fn answer(&mut self, question: &Question, given: Given) {
        self.answers.entry(question.name.to_string()).or_default().given = given;
    }

    /// The question that is asked, with its answers, and where, how much and what else.
    fn asked_ui(&mut self, ui: &mut Ui, rules: &Rules, kind: Kind, question: &Arc<Question>) {
        let last = rules.questions_for(kind).len() - 1;
        ui.add_space(2.0 * GRID);
        let ask = say(&question.ask);
        let all = choices(question, kind);
        let choices: Vec<AnswerChoice> =
            all.iter().map(|choice| AnswerChoice { key: choice.key, say: choice.say }).collect();
        let chosen = all.iter().position(|choice| choice.given == *self.given(question));
        for caution in question.cautions.rows() {
            caution_ui(ui, say(&caution.say));
        }
        if let Some(place) = answer_row_ui(ui, ask, &choices, chosen, true) {
            self.answer(question, all[place].given.clone());
            // An answer that finds something waits for where, one that does not apply for why; any other goes on.
            let wants_why = self.given(question) == &Given::DoesNotApply;
            let waits = question.figure.is_some() || self.raises(question).is_some() || wants_why;
            if !waits && self.asked < last {
                self.asked += 1;
            }
        }
        if !question.hint.is_empty() {
            ui.label(remark(ui, say(&question.hint)));
        }
        if self.given(question) == &Given::NotLooked {
            ui.add_space(2.0 * GRID);
            return;
        }
        if let Some((what, severity)) = self.raises(question) {
            let rule = rules.finding(what);
            ui.horizontal_wrapped(|ui| {
                severity_ui(ui, severity.or(rule.map(|rule| rule.severity)).unwrap_or(crate::record::Severity::Plain));
                if let Some(rule) = rule {
                    ui.label(body(say(&rule.say)));
                    ui.label(remark(ui, say(&rule.means)));
                }
            });
            for caution in rule.iter().flat_map(|rule| rule.cautions.rows()) {
                caution_ui(ui, say(&caution.say));
            }
        }
        let mut go_on = self.details_ui(ui, question, kind);
        if self.asked < last {
            go_on |= press_ui(ui, text!("Next question"), text!("Down or Enter"), None).clicked();
            if go_on {
                self.asked += 1;
            }
        }
        ui.add_space(2.0 * GRID);
    }

    /// Where, how much, what else; `true` when Enter ended one of them.
    fn details_ui(&mut self, ui: &mut Ui, question: &Question, kind: Kind) -> bool {
        let typed = self.answers.entry(question.name.to_string()).or_default();
        let mut entered = false;
        ui.horizontal_wrapped(|ui| {
            let mut ended = |response: egui::Response| {
                entered |= response.lost_focus() && response.ctx.input(|input| input.key_pressed(Key::Enter));
            };
            if typed.given == Given::DoesNotApply {
                ended(field_ui(ui, text!("Why it does not apply"), &mut typed.note, Some(50.0 * GRID)));
                return;
            }
            if let Some(rule) = &question.figure {
                let label = format!("{} ({})", say(&rule.say), say(&rule.unit));
                ended(field_ui(ui, &label, &mut typed.figure, Some(30.0 * GRID)));
            }
            ended(field_ui(ui, text!("Where on the part"), &mut typed.place, Some(50.0 * GRID)));
            ended(field_ui(ui, text!("Note"), &mut typed.note, Some(50.0 * GRID)));
        });
        if let Some(fault) = typed.figure(question).err().or_else(|| typed.reason_fault(question, kind)) {
            ui.label(body(fault).color(ui.tokens().severity_grave));
        }
        entered
    }

    fn raises<'a>(&self, question: &'a Question) -> Option<(&'a str, Option<crate::record::Severity>)> {
        let Given::Is(name) = self.given(question) else { return None };
        let row = question.answers.iter().find(|row| row.name == *name)?;
        Some((row.finding.as_deref()?, row.severity))
    }

    /// A question that is not being asked, in one line; `true` when it was pressed.
    fn line_ui(&self, ui: &mut Ui, question: &Question) -> bool {
        let tokens = ui.tokens();
        let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), 7.0 * GRID), Sense::click());
        if response.hovered() || response.has_focus() {
            ui.painter().rect_filled(rect, 2.0, tokens.press_wash);
        }
        let given = self.given(question);
        let answer = match given {
            Given::NotLooked => text!("Not looked at"),
            Given::CouldNotTell => text!("Could not tell"),
            Given::DoesNotApply => text!("Does not apply"),
            Given::Is(name) => question.answers.iter().find(|row| row.name == *name).map_or("", |row| say(&row.say)),
        };
        let ask = say(&question.ask);
        let (ask_colour, answer_colour) = match (given, self.raises(question)) {
            (Given::NotLooked, _) => (tokens.ink_weak, tokens.ink_weak),
            (_, Some(_)) => (tokens.ink, tokens.severity_grave),
            _ => (tokens.ink, tokens.ink),
        };
        let font = crate::window::theme::TextRole::Body.font();
        let half = (rect.width() * 0.55).max(rect.width() - 90.0 * GRID);
        let put = |left: f32, width: f32, words: &str, colour| {
            let mut job = egui::text::LayoutJob::simple_singleline(words.to_owned(), font.clone(), colour);
            job.wrap = egui::text::TextWrapping::truncate_at_width(width);
            let galley = ui.painter().layout_job(job);
            let at = egui::pos2(left, rect.center().y - galley.size().y / 2.0);
            ui.painter().galley(at, galley, colour);
        };
        put(rect.left(), half - 2.0 * GRID, ask, ask_colour);
        put(rect.left() + half, rect.width() - half, answer, answer_colour);
        response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, format!("{ask} {answer}")));
        response.clicked()
    }
}

/// An answer that can be chosen.
struct Choice<'a> {
    key: Option<Key>,
    say: &'a str,
    given: Given,
}

/// The answers to a question of a part of this kind: the question's own, then those that say nothing of the part.
/// *Does not apply* is none where the kind always has what is asked about.
fn choices(question: &Question, kind: Kind) -> Vec<Choice<'_>> {
    let own = question.answers.iter().enumerate().map(|(at, row)| Choice {
        key: NUMBERS.get(at).copied(),
        say: say(&row.say),
        given: Given::Is(row.name),
    });
    let others = [
        (Key::C, text!("Could not tell"), Given::CouldNotTell),
        (Key::X, text!("Does not apply"), Given::DoesNotApply),
        (Key::Num0, text!("Not looked at"), Given::NotLooked),
    ];
    let others = others.into_iter().map(|(key, say, given)| Choice { key: Some(key), say, given });
    let applies = question.always_on.contains(&kind);
    own.chain(others.filter(|choice| !applies || choice.given != Given::DoesNotApply)).collect()
}
