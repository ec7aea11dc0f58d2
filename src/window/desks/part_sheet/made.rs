//! When the part was made: its markings as printed, what each says, and what they say together.

use std::sync::Arc;

use egui::Ui;

use super::about::{About, act_ui, put};
use super::map::shown_ui;
use crate::assess::making;
use crate::counted;
use crate::record::{Change, DesignFile, FromFactory, Marking, PartFile, Word};
use crate::store::Store;
use crate::text;
use crate::trade::Span;
use crate::trade::date_code::{Joint, Kept, Reading, Scheme};
use crate::window::marked::Tie;
use crate::window::outbox::Outbox;
use crate::window::rounds::{MarkingsRound, days_text, joint_notes_ui};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{SpanBar, body, link_ui, marking, press_ui, remark, strong, title_ui, years_text};

/// Further readings of a marking shown for choosing.
const OTHERS: usize = 4;

/// What is open and half typed.
#[derive(Default)]
pub struct Made {
    round: Option<MarkingsRound>,
    shows_earlier: bool,
    read: Option<Read>,
}

/// The markings read together, and what they were read from.
struct Read {
    file: Arc<PartFile>,
    design: Option<Arc<DesignFile>>,
    joint: Joint,
}

impl Read {
    fn is_of(&self, about: &About<'_>) -> bool {
        let same_design = match (&self.design, &about.answers.design) {
            (Some(mine), Some(theirs)) => Arc::ptr_eq(mine, theirs),
            (None, None) => true,
            _ => false,
        };
        same_design && Arc::ptr_eq(&self.file, about.file)
    }
}

impl Made {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        if !self.read.as_ref().is_some_and(|read| read.is_of(about)) {
            let design = about.answers.design.clone();
            let joint = making::read(about.file, design.as_ref().map(|file| &file.design));
            self.read = Some(Read { file: Arc::clone(about.file), design, joint });
        }
        let Some(read) = &self.read else { return };
        let markings: Vec<&Marking> = about.file.markings_now().collect();
        together_ui(ui, about, &read.joint, &markings);
        let mut correct = None;
        for (marking, kept) in markings.iter().zip(&read.joint.markings) {
            ui.push_id(marking.id, |ui| {
                if marking_ui(ui, about, marking, kept, outbox) {
                    correct = Some(MarkingsRound::correcting(marking));
                }
            });
        }
        if let Some(round) = correct {
            self.round = Some(round);
        }
        self.round_ui(ui, about, outbox);
        self.earlier_ui(ui, about);
    }

    fn round_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(round) = &mut self.round else {
            if press_ui(ui, text!("Read another marking…"), "", None).clicked() {
                self.round = Some(MarkingsRound::default());
            }
            return;
        };
        round.ui(ui, about.file, about.answers.design.as_ref().map(|file| &file.design), about.view.today);
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the markings"), "", None).clicked();
            away = press_ui(ui, text!("Put the markings away"), "", None).clicked();
        });
        if keep && round.count() > 0 {
            let mut change = Change::new(text!("Read markings on {tag}", tag = about.tag()));
            change.put_all(round.entries(about.part().id, crate::record::When::Day(about.view.today)));
            outbox.change(change);
            self.round = None;
        } else if keep {
            outbox.say(text!("No marking was typed, so there is nothing to keep."));
        } else if away {
            self.round = None;
        }
    }

    fn earlier_ui(&mut self, ui: &mut Ui, about: &About<'_>) {
        let now: Vec<_> = about.file.markings_now().map(|marking| marking.id).collect();
        let earlier: Vec<&Marking> = about.file.markings.iter().filter(|marking| !now.contains(&marking.id)).collect();
        if earlier.is_empty() {
            return;
        }
        let word = if self.shows_earlier {
            text!("Fold earlier readings").to_owned()
        } else {
            counted!("Show {count} earlier reading", "Show {count} earlier readings", earlier.len())
        };
        if act_ui(ui, &word, &word) {
            self.shows_earlier = !self.shows_earlier;
        }
        if self.shows_earlier {
            for old in earlier {
                ui.horizontal_wrapped(|ui| {
                    ui.label(marking(&old.text).color(ui.tokens().ink_weak).strikethrough());
                    ui.label(remark(ui, text!("read {day}, corrected since", day = old.read.on)));
                });
            }
        }
    }
}

/// The span that all markings give, on a line of years against the design's.
fn together_ui(ui: &mut Ui, about: &About<'_>, joint: &Joint, markings: &[&Marking]) {
    let making = &about.answers.making;
    match making.span {
        Some(span) if making.is_conflict => {
            title_ui(
                ui,
                text!("Conflict with its design’s years; as the markings say: {span}", span = years_text(span)),
            );
        }
        Some(span) if making.is_marked => {
            title_ui(ui, text!("Probably finished {span}", span = years_text(span)));
        }
        Some(span) => {
            title_ui(ui, text!("By its design: {span}", span = years_text(span)));
            ui.label(remark(ui, text!("No marking on the part itself says when.")));
        }
        None => {
            drop(ui.label(body(text!("Nothing says yet when it was made. Date codes stand on chips and stickers."))));
        }
    }
    if let Some(span) = making.span {
        bar_ui(ui, about, span);
    }
    joint_notes_ui(ui, joint, |at| markings.get(at).map_or("", |marking| marking.text.as_str()));
}

fn bar_ui(ui: &mut Ui, about: &About<'_>, span: Span) {
    let years = about.answers.making.design_years;
    let Some(bar) = SpanBar::around([span], years) else { return };
    let width = ui.available_width().min(140.0 * GRID);
    bar.ui(ui, about.tag(), Some(span), width);
    bar.years_ui(ui, width);
    if let Some(years) = years {
        let said = text!("Shaded: the years of its design, {years}", years = years_text(years));
        ui.label(remark(ui, said));
    }
}

/// One marking with its reading; `true` when it is to be corrected.
fn marking_ui(ui: &mut Ui, about: &About<'_>, read: &Marking, kept: &Kept, outbox: &mut Outbox) -> bool {
    let mut correct = false;
    ui.add_space(2.0 * GRID);
    ui.horizontal_wrapped(|ui| {
        ui.label(marking(&read.text));
        if let Some(best) = kept.chosen() {
            ui.label(strong(days_text(best.span)));
        }
        let mut words = vec![read.surface.label().to_owned()];
        if !read.place_on_part.is_empty() {
            words.push(read.place_on_part.clone());
        }
        if read.from_factory != FromFactory::Unknown {
            words.push(read.from_factory.label().to_lowercase());
        }
        ui.label(remark(ui, words.join(" · ")));
    });
    ui.horizontal_wrapped(|ui| {
        match (&kept.unreadable, kept.chosen()) {
            (Some(unreadable), _) => {
                ui.label(remark(ui, text!("No date in it: {reason}", reason = unreadable)));
            }
            (None, Some(best)) => {
                ui.label(remark(ui, format!("{}, {}", best.scheme, best.why)));
            }
            (None, None) => {}
        }
        if !read.scheme.is_empty() {
            ui.label(remark(ui, text!("settled by you")));
            if act_ui(ui, text!("Leave it open"), &text!("Leave {text} open", text = read.text)) {
                outbox.change(again(about, read, |marking| marking.scheme.clear()));
            }
        }
        correct =
            act_ui(ui, text!("Correct this reading…"), &text!("Correct the reading of {text}…", text = read.text));
        shown_ui(ui, about, Tie::Marking(read.id), &read.text, outbox);
        if read.from_factory != FromFactory::No
            && act_ui(ui, text!("It came later"), &text!("{text} was added later", text = read.text))
        {
            outbox.change(again(about, read, |marking| marking.from_factory = FromFactory::No));
        }
        if read.from_factory != FromFactory::Yes
            && act_ui(ui, text!("It is from the factory"), &text!("{text} is from the factory", text = read.text))
        {
            outbox.change(again(about, read, |marking| marking.from_factory = FromFactory::Yes));
        }
    });
    let contradicts = about.answers.making.conflicts.iter().any(|(id, _)| *id == read.id);
    if (kept.is_ambiguous() || (contradicts && kept.readings.len() > 1)) && read.scheme.is_empty() {
        settle_ui(ui, about, read, &one_a_scheme(&kept.readings), outbox);
    }
    if !read.note.is_empty() {
        ui.label(remark(ui, &read.note));
    }
    correct
}

/// The readings that a marking leaves open, each to be settled on.
fn settle_ui(ui: &mut Ui, about: &About<'_>, read: &Marking, readings: &[Reading], outbox: &mut Outbox) {
    ui.horizontal_wrapped(|ui| {
        ui.label(remark(ui, text!("It can be read in more than one way. Settle on:")));
        for reading in readings.iter().take(OTHERS) {
            let words = format!("{}: {}", years_text(reading.span), reading.scheme);
            let response = link_ui(ui, &words).on_hover_text(reading.why.to_string());
            let name = text!("Settle {text} as {reading}", text = read.text, reading = words);
            response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            if response.clicked() {
                outbox.change(again(about, read, |marking| marking.scheme = stored(reading.scheme)));
            }
        }
    });
}

/// The marking read once more, superseding the earlier reading.
fn again(about: &About<'_>, read: &Marking, set: impl FnOnce(&mut Marking)) -> Change {
    let mut marking = Marking { id: Store::new_id(), read: about.now(), supersedes: Some(read.id), ..read.clone() };
    set(&mut marking);
    put(text!("Read “{text}” on {tag} again", text = read.text, tag = about.tag()), marking)
}

/// The best reading of every scheme.
fn one_a_scheme(readings: &[Reading]) -> Vec<Reading> {
    let mut one: Vec<Reading> = Vec::new();
    for reading in readings {
        if one.iter().all(|known| known.scheme != reading.scheme) {
            one.push(*reading);
        }
    }
    one
}

/// The name under which a scheme is kept with a marking.
fn stored(scheme: Scheme) -> String {
    serde_json::to_value(scheme).ok().and_then(|name| name.as_str().map(str::to_owned)).unwrap_or_default()
}
