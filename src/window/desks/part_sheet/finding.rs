//! The part's findings: how bad, since when, where, the life of each, and what can be decided about it.

use egui::Ui;

use super::about::{About, act_ui, day_text, put, wrong_ui};
use super::map::shown_or_marked_ui;
use crate::assess::findings::stand_said;
use crate::assess::reason::finding_name;
use crate::counted;
use crate::record::{FindingFile, FindingId, FindingState, Hold, Look, Nature, When, Word};
use crate::store::Store;
use crate::text;
use crate::text::say;
use crate::trade::corrosion::{change, grades};
use crate::window::forms::work::add_by_hand;
use crate::window::marked::Tie;
use crate::window::outbox::Outbox;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, caution_ui, field_ui, press_ui, remark, severity_ui, strong};

/// What is open and half typed.
#[derive(Default)]
pub struct FindingList {
    open: Option<FindingId>,
    deciding: Option<Deciding>,
    shows_settled: bool,
}

/// What is being decided about the open finding.
struct Deciding {
    to: To,
    again_by: String,
    words: String,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum To {
    Watch,
    Accept,
    Work,
}

impl FindingList {
    /// Opens a finding, unfolding the settled ones where it is among them.
    pub fn open(&mut self, finding: FindingId, about: &About<'_>) {
        self.open = Some(finding);
        self.deciding = None;
        let state = about.file.finding(finding).map(FindingFile::state);
        self.shows_settled |= state.is_some_and(|state| !state.calls_for_work() && state != FindingState::Watched);
    }

    /// Draws the findings: what is open first, the worst on top; settled ones folded.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let rank = |finding: &FindingFile| match finding.state() {
            FindingState::Open | FindingState::Returned => 0,
            FindingState::Watched => 1,
            _ => 2,
        };
        let mut findings: Vec<&FindingFile> = about.file.findings.iter().collect();
        findings.sort_by_key(|finding| (rank(finding), std::cmp::Reverse(finding.severity())));
        let settled = findings.iter().filter(|finding| rank(finding) == 2).count();
        if findings.len() == settled {
            ui.label(body(text!("No finding is open.")));
        }
        for finding in
            findings.iter().filter(|finding| rank(finding) < 2 || self.shows_settled).copied().collect::<Vec<_>>()
        {
            ui.push_id(finding.finding.id, |ui| self.finding_ui(ui, about, finding, outbox));
        }
        if settled > 0 {
            let word = if self.shows_settled {
                text!("Fold the settled findings").to_owned()
            } else {
                counted!("Show {count} settled finding", "Show {count} settled findings", settled)
            };
            if act_ui(ui, &word, &word) {
                self.shows_settled = !self.shows_settled;
            }
        }
    }

    fn finding_ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &FindingFile, outbox: &mut Outbox) {
        let id = file.finding.id;
        let name = finding_name(about.view.logbook, about.view.rules, about.part().id, id);
        let is_open = self.open == Some(id);
        ui.horizontal_wrapped(|ui| {
            severity_ui(ui, file.severity());
            let words = if is_open { strong(&name) } else { body(&name) };
            let response = ui.add(egui::Button::new(words.color(ui.tokens().ink)).frame(false).wrap());
            let said = text!("Finding: {finding}, {state}", finding = name, state = stand_said(file));
            response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &said));
            if response.clicked() {
                self.open = if is_open { None } else { Some(id) };
                self.deciding = None;
            }
            ui.label(remark(ui, stand_text(file)));
        });
        if !is_open {
            return;
        }
        ui.indent("open finding", |ui| {
            if let Some(rule) = about.view.rules.finding(&file.finding.what) {
                for caution in rule.cautions.rows() {
                    caution_ui(ui, say(&caution.say));
                }
                if !rule.means.is_empty() {
                    ui.label(body(say(&rule.means)));
                }
                if !file.finding.note.is_empty() {
                    ui.label(body(&file.finding.note));
                }
            }
            if about.answers.undecided.contains(&id) {
                let undecided = text!("No work is decided for it yet: watch it, accept it, or say what is to be done.");
                ui.label(body(undecided).color(ui.tokens().power_unknown));
            }
            for look in &file.looks {
                ui.label(remark(ui, look_text(look)));
            }
            ui.horizontal_wrapped(|ui| shown_or_marked_ui(ui, about, Tie::Finding(id), &name, outbox));
            self.acts_ui(ui, about, file, &name, outbox);
        });
    }

    fn acts_ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &FindingFile, name: &str, outbox: &mut Outbox) {
        let state = file.state();
        ui.horizontal_wrapped(|ui| {
            if state.may_become(FindingState::Watched) && press_ui(ui, text!("Watch it…"), "", None).clicked() {
                let in_half_a_year = about.view.today + chrono::Days::new(182);
                let again_by = in_half_a_year.to_string();
                self.deciding = Some(Deciding { to: To::Watch, again_by, words: String::new() });
            }
            if state != FindingState::Accepted
                && state.may_become(FindingState::Accepted)
                && press_ui(ui, text!("Accept it…"), "", None).clicked()
            {
                self.deciding = Some(Deciding { to: To::Accept, again_by: String::new(), words: String::new() });
            }
            if state == FindingState::Watched && press_ui(ui, text!("Watch it no longer"), "", None).clicked() {
                let look = Look { who: about.keeper(), ..next_look(about, file, FindingState::Open) };
                outbox
                    .change(put(text!("Watch no longer on {tag}: {finding}", tag = about.tag(), finding = name), look));
            }
            if state.calls_for_work() && press_ui(ui, text!("Say what is to be done…"), "", None).clicked() {
                self.deciding = Some(Deciding { to: To::Work, again_by: String::new(), words: String::new() });
            }
        });
        let Some(deciding) = &mut self.deciding else { return };
        let Deciding { to, again_by, words } = deciding;
        ui.horizontal_wrapped(|ui| {
            if *to == To::Watch {
                field_ui(ui, text!("Look again by"), again_by, Some(28.0 * GRID));
            }
            let label = if *to == To::Work { text!("What is to be done") } else { text!("Reason") };
            field_ui(ui, label, words, Some(90.0 * GRID));
        });
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            let word = match to {
                To::Watch => text!("Keep: it is watched"),
                To::Accept => text!("Keep: it is accepted"),
                To::Work => text!("Keep: this is to be done"),
            };
            keep = press_ui(ui, word, "", None).clicked();
            away = press_ui(ui, text!("Decide nothing"), "", None).clicked();
        });
        let reason = words.trim();
        let by = again_by.parse::<When>();
        let wrong = match to {
            To::Watch => match &by {
                Err(error) => Some(error.to_string()),
                Ok(When::Unknown) => Some(text!("Say by when it is looked at again.").to_owned()),
                Ok(by) if by.span().is_some_and(|span| span.last < about.view.today) => {
                    Some(text!("{day} is past.", day = by))
                }
                Ok(_) => None,
            },
            To::Accept if reason.is_empty() => Some(text!("Say why it may stay as it is.").to_owned()),
            To::Work if reason.is_empty() => Some(text!("Say what is to be done.").to_owned()),
            _ => None,
        };
        if let Some(wrong) = &wrong {
            wrong_ui(ui, wrong);
        } else if keep {
            outbox.change(match to {
                To::Watch => {
                    let again_by = by.unwrap_or_default();
                    let (reason, who) = (reason.to_owned(), about.keeper());
                    let look = Look { again_by, reason, who, ..next_look(about, file, FindingState::Watched) };
                    put(text!("Watch on {tag}: {finding}", tag = about.tag(), finding = name), look)
                }
                To::Accept => {
                    let (reason, who) = (reason.to_owned(), about.keeper());
                    let look = Look { reason, who, ..next_look(about, file, FindingState::Accepted) };
                    put(text!("Accept on {tag}: {finding}", tag = about.tag(), finding = name), look)
                }
                To::Work => {
                    let id = Some(file.finding.id);
                    add_by_hand(about.file, id, reason, Hold::Ready, Nature::Repair, about.view.today)
                }
            });
            away = true;
        }
        if away {
            self.deciding = None;
        }
    }
}

/// A look that changes a finding's state today and keeps what is known of it.
fn next_look(about: &About<'_>, file: &FindingFile, state: FindingState) -> Look {
    file.next_look(Store::new_id(), about.now(), state)
}

fn stand_text(file: &FindingFile) -> String {
    let mut words = Vec::new();
    if !file.finding.place_on_part.is_empty() {
        words.push(file.finding.place_on_part.clone());
    }
    words.push(stand_said(file));
    if let Some(share) = file.last().and_then(|last| last.share_percent) {
        words.push(text!("{share} % of the surface", share = percent(share)));
        words.extend(grade_text(share));
        words.extend(spread_text(file));
    }
    if file.since().is_known() {
        words.push(text!("found {day}", day = file.since()));
    }
    words.join(" · ")
}

/// A share as far as a hand can measure it.
fn percent(share: f64) -> f64 {
    (share * 100.0).round() / 100.0
}

/// Both grades of a share.
fn grade_text(share: f64) -> Option<String> {
    let grades = grades(share).ok()?;
    Some(text!("ISO 4628-3 Ri {ri}, ASTM D610 grade {d610}", ri = grades.ri, d610 = grades.d610))
}

/// How the last share that was told differs from the one before, and how fast that is.
fn spread_text(file: &FindingFile) -> Option<String> {
    let told = file.looks.iter().filter_map(|look| Some((look.looked.on, look.share_percent?)));
    // A look that says nothing new of the share carries the last one on.
    let mut told: Vec<(When, f64)> = told.collect();
    told.dedup_by_key(|(_, share)| *share);
    let [.., (before, first), (now, second)] = told[..] else { return None };
    let points = format!("{:+.2}", second - first);
    let day = |when: When| when.span().map(|span| span.first);
    let spread = day(before).zip(day(now)).and_then(|(from, to)| change((from, first), (to, second)).ok());
    Some(match spread {
        None => text!("{points} points since {on}", points = points, on = day_text(before)),
        Some(spread) => {
            let rate = format!("{:+.2}", spread.points_per_year);
            text!("{points} points since {on}, {rate} a year", points = points, on = before, rate = rate)
        }
    })
}

/// One step of a finding's life.
pub fn look_text(look: &Look) -> String {
    let mut words =
        vec![day_text(look.looked.on), look.state.label().to_lowercase(), look.severity.label().to_lowercase()];
    if let Some(share) = look.share_percent {
        words.push(format!("{} %", percent(share)));
    }
    if look.again_by.is_known() {
        words.push(text!("look again by {day}", day = look.again_by));
    }
    words.extend([&look.who, &look.reason].into_iter().filter(|word| !word.is_empty()).cloned());
    words.join(" · ")
}
