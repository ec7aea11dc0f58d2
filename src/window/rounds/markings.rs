//! Markings as read: the text as printed, where it is, and what it says as it is typed.

use chrono::NaiveDate;
use egui::{Button, RichText, Ui, vec2};
use serde::{Deserialize, Serialize};

use super::{days_text, new_uuid};
use crate::assess::making;
use crate::counted;
use crate::record::{
    Design, Entry, FromFactory, Id, Marking, MarkingId, Moment, PartFile, PartId, Surface, When, Word as _,
};
use crate::text;
use crate::trade::date_code::{Joint, Kept, NotBeforeCause, OutlierCause, Reading, Scheme};
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{
    body, choice_ui, field_ui, link_ui, mark_button, mark_ui, press_ui, remark, section_ui, strong, years_text,
};

/// Markings that are being read.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct MarkingsRound {
    typed: Vec<Typed>,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
struct Typed {
    text: String,
    surface: Surface,
    place: String,
    from_factory: FromFactory,
    /// The settled scheme's stored name; empty when open.
    scheme: String,
    note: String,
    supersedes: Option<MarkingId>,
}

impl Typed {
    fn on(surface: Surface) -> Self {
        Self {
            text: String::new(),
            surface,
            place: String::new(),
            from_factory: FromFactory::Unknown,
            scheme: String::new(),
            note: String::new(),
            supersedes: None,
        }
    }

    fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }

    fn marking(&self, part: PartId, on: When) -> Marking {
        Marking {
            id: Id::from_uuid(new_uuid()),
            part,
            read: Moment { on, sequence: 0 },
            surface: self.surface,
            place_on_part: self.place.trim().to_owned(),
            text: self.text.trim().to_owned(),
            from_factory: self.from_factory,
            scheme: self.scheme.clone(),
            supersedes: self.supersedes,
            note: self.note.trim().to_owned(),
        }
    }
}

impl MarkingsRound {
    /// A round that reads an earlier marking better; what was read then is filled in.
    pub fn correcting(marking: &Marking) -> Self {
        let Marking { surface, place_on_part, text, from_factory, scheme, note, .. } = marking.clone();
        let supersedes = Some(marking.id);
        Self { typed: vec![Typed { text, surface, place: place_on_part, from_factory, scheme, note, supersedes }] }
    }

    /// How many markings are typed.
    pub fn count(&self) -> usize {
        self.typed.iter().filter(|typed| !typed.is_blank()).count()
    }

    /// The markings as records.
    pub fn entries(&self, part: PartId, on: impl Into<When>) -> Vec<Entry> {
        let on = on.into();
        self.typed.iter().filter(|typed| !typed.is_blank()).map(|typed| typed.marking(part, on).into()).collect()
    }

    /// Draws the round for a part whose file holds what was read before.
    pub fn ui(&mut self, ui: &mut Ui, file: &PartFile, design: Option<&Design>, today: NaiveDate) {
        if self.typed.is_empty() {
            self.typed.push(Typed::on(Surface::Board));
        }
        let joint = self.joint(file, design, today);
        // What is on the part already comes first in the joint reading.
        let mut readings = joint.markings.iter().skip(joint.markings.len() - self.count());
        let mut away = None;
        for (at, typed) in self.typed.iter_mut().enumerate() {
            ui.push_id(at, |ui| {
                if typed_ui(ui, at, typed) {
                    away = Some(at);
                }
                if !typed.is_blank()
                    && let Some(kept) = readings.next()
                {
                    reading_ui(ui, typed, kept);
                }
                ui.add_space(2.0 * GRID);
            });
        }
        if let Some(at) = away {
            self.typed.remove(at);
        }
        let last = self.typed.last().map_or(Surface::Board, |typed| typed.surface);
        if self.typed.last().is_none_or(|typed| !typed.is_blank())
            && press_ui(
                ui,
                text!("Another marking"),
                text!("Chips, stickers and capacitors each carry their own"),
                None,
            )
            .clicked()
        {
            let next = if last == Surface::Board { Surface::Chip } else { last };
            self.typed.push(Typed::on(next));
        }
        joint_ui(ui, &joint, &self.texts(file));
    }

    /// All markings read together: those that the file holds, less the ones corrected here, then the typed ones.
    fn joint(&self, file: &PartFile, design: Option<&Design>, today: NaiveDate) -> Joint {
        let mut beside = PartFile::new(file.part.clone());
        let corrected = |marking: &&Marking| self.typed.iter().all(|typed| typed.supersedes != Some(marking.id));
        beside.markings.extend(file.markings_now().filter(corrected).cloned());
        let typed = self.typed.iter().filter(|typed| !typed.is_blank());
        beside
            .markings
            .extend(typed.map(|typed| Marking { supersedes: None, ..typed.marking(file.part.id, today.into()) }));
        making::read(&beside, design)
    }

    /// The texts in the order of the joint reading.
    fn texts(&self, file: &PartFile) -> Vec<String> {
        let corrected = |marking: &&Marking| self.typed.iter().all(|typed| typed.supersedes != Some(marking.id));
        let known = file.markings_now().filter(corrected).map(|marking| marking.text.clone());
        known.chain(self.typed.iter().filter(|typed| !typed.is_blank()).map(|typed| typed.text.clone())).collect()
    }
}

/// One marking's fields; `true` when it was taken out.
fn typed_ui(ui: &mut Ui, at: usize, typed: &mut Typed) -> bool {
    let mut away = false;
    ui.horizontal_wrapped(|ui| {
        let before = typed.text.clone();
        let field = field_ui(ui, text!("As printed"), &mut typed.text, Some(46.0 * GRID));
        ui.ctx().accesskit_node_builder(field.id, |node| {
            node.set_label(text!("Marking {number} as printed", number = at + 1));
        });
        if typed.text != before {
            // A settled scheme belongs to the text that it was settled for.
            typed.scheme.clear();
        }
        let surfaces: Vec<(Surface, &str)> = Surface::ALL.iter().map(|word| (*word, word.label())).collect();
        choice_ui(ui, text!("On"), &mut typed.surface, &surfaces, 28.0 * GRID);
        field_ui(ui, text!("Where on the part"), &mut typed.place, Some(40.0 * GRID));
        let origins: Vec<(FromFactory, &str)> = FromFactory::ALL.iter().map(|word| (*word, word.label())).collect();
        choice_ui(ui, text!("There from the start?"), &mut typed.from_factory, &origins, 44.0 * GRID);
        if !typed.is_blank() {
            let name = text!("Take marking {text} out", text = typed.text);
            away = mark_button(ui, Mark::Away, &name).clicked();
        }
    });
    away
}

/// What the marking says: the reading that agrees best, then the others, each to be picked.
fn reading_ui(ui: &mut Ui, typed: &mut Typed, kept: &Kept) {
    let tokens = ui.tokens();
    if let Some(unreadable) = &kept.unreadable {
        ui.label(remark(ui, text!("No date in it: {reason}", reason = unreadable)));
        return;
    }
    let Some(best) = kept.chosen() else { return };
    let settled = !typed.scheme.is_empty();
    ui.horizontal_wrapped(|ui| {
        ui.label(strong(days_text(best.span)));
        ui.label(body(best.scheme.to_string()));
        let source = text!("Source: {source}", source = best.scheme.source().said());
        ui.label(remark(ui, best.why.to_string()));
        ui.label(remark(ui, source));
        if settled {
            mark_ui(ui, Mark::Done, tokens.gate_passed);
            ui.label(body(text!("settled by you")));
            if link_ui(ui, text!("Leave it open")).clicked() {
                typed.scheme.clear();
            }
        }
    });
    let others = one_a_scheme(&kept.readings, best);
    if settled || others.is_empty() {
        return;
    }
    ui.horizontal_wrapped(|ui| {
        ui.label(remark(ui, if kept.is_ambiguous() { text!("It may also be") } else { text!("Less likely") }));
        for other in others.iter().take(4) {
            reading_button(ui, typed, other);
        }
        ui.label(remark(ui, text!("or settle on the first:")));
        reading_button(ui, typed, best);
    });
}

/// The best reading of every scheme but the best's own.
fn one_a_scheme(readings: &[Reading], best: &Reading) -> Vec<Reading> {
    let mut schemes: Vec<Scheme> = vec![best.scheme];
    let mut one = Vec::new();
    for reading in readings {
        if !schemes.contains(&reading.scheme) {
            schemes.push(reading.scheme);
            one.push(*reading);
        }
    }
    one
}

fn reading_button(ui: &mut Ui, typed: &mut Typed, reading: &Reading) {
    let words = format!("{}: {}", years_text(reading.span), reading.scheme);
    let button = Button::new(RichText::new(&words).font(TextRole::Small.font())).min_size(vec2(0.0, 7.0 * GRID));
    let name = text!("Settle {text} as {reading}", text = typed.text.trim(), reading = words);
    let hint = format!("{}. {}", reading.why, text!("Source: {source}", source = reading.scheme.source().said()));
    if ui.add(button).on_hover_text(hint).accessible_name(name).clicked() {
        typed.scheme = stored(reading.scheme);
    }
}

/// The name under which a scheme is kept with a marking.
fn stored(scheme: Scheme) -> String {
    serde_json::to_value(scheme).ok().and_then(|name| name.as_str().map(str::to_owned)).unwrap_or_default()
}

/// What all markings say together.
fn joint_ui(ui: &mut Ui, joint: &Joint, texts: &[String]) {
    if joint.markings.is_empty() {
        ui.label(remark(ui, text!("Type what is printed, sign by sign: the date in it is read as you type.")));
        return;
    }
    section_ui(ui, text!("Together"));
    let tokens = ui.tokens();
    match joint.likely {
        Some(span) if joint.is_conflict => {
            let said = text!("Conflict with its design’s years; as the markings say: {span}", span = years_text(span));
            ui.label(strong(said));
        }
        Some(span) => {
            ui.horizontal_wrapped(|ui| {
                ui.label(body(text!("Probably finished")));
                ui.label(RichText::new(years_text(span)).font(TextRole::Title.font()).color(tokens.span_part));
            });
        }
        None => drop(ui.label(body(text!("They do not say when it was made.")))),
    }
    joint_notes_ui(ui, joint, |at| texts.get(at).map_or("", String::as_str));
}

/// What follows from markings that are read together: the day before which it cannot have been made, how far they can
/// be trusted, those that contradict the design's years, and those later than the rest; `printed` tells a marking's text.
pub fn joint_notes_ui<'a>(ui: &mut Ui, joint: &Joint, printed: impl Fn(usize) -> &'a str) {
    let tokens = ui.tokens();
    if let Some(bound) = joint.not_before {
        let by = match bound.cause {
            NotBeforeCause::Marking(at) => text!("by “{text}”", text = printed(at)),
            NotBeforeCause::Design => text!("by its design’s introduction").to_owned(),
        };
        ui.label(body(text!("Not before {day}, {by}", day = bound.day, by = by)));
    }
    if !joint.markings.is_empty() {
        ui.label(remark(ui, text!("Trust: {confidence}", confidence = joint.confidence)));
    }
    for conflict in &joint.conflicts {
        ui.horizontal_wrapped(|ui| {
            mark_ui(ui, Mark::Heed, tokens.hold_power);
            ui.label(body(conflict.sentence(printed(conflict.marking), joint.design)));
        });
    }
    // What is later than the design's years is told by its conflict.
    for outlier in joint.outliers.iter().filter(|outlier| outlier.cause != OutlierCause::AfterDesign) {
        let weeks = counted!("{count} week", "{count} weeks", usize::try_from(outlier.weeks).unwrap_or(0));
        ui.horizontal_wrapped(|ui| {
            let colour = if outlier.cause == OutlierCause::Replaced { tokens.ink_weak } else { tokens.hold_power };
            mark_ui(ui, Mark::Heed, colour);
            ui.label(body(text!(
                "“{text}” is {weeks} later than the rest: {cause}",
                text = printed(outlier.marking),
                weeks = weeks,
                cause = outlier.cause
            )));
        });
    }
}
