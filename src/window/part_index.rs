//! What the Shelf and the finder look parts up in: one row a part, made again only for parts that changed.

use std::collections::HashMap;
use std::fmt::Write as _;
use std::sync::Arc;

use crate::assess::{Answers, PartAnswers, PartState};
use crate::record::{Hold, Kind, Logbook, PartId, Place, PlaceId, Word};
use crate::trade::Span;

/// One part as a table shows it.
#[derive(Clone, Debug)]
pub struct IndexRow {
    pub id: PartId,
    pub kind: Kind,
    pub tag: String,
    /// What it is called.
    pub what: String,
    /// When it was made, as far as is known.
    pub span: Option<Span>,
    /// Where it is: its place, or the machine it is fitted in.
    pub place: String,
    pub place_id: Option<PlaceId>,
    /// Tag with its numbers made equally long, to sort by.
    pub tag_order: String,
    pub state: PartState,
    /// The strictest hold of its outstanding work.
    pub hold: Option<Hold>,
    /// How many pieces of work are outstanding.
    pub open_work: usize,
    what_order: String,
    /// Everything that can be searched for, in lower case.
    haystack: String,
    answers: Arc<PartAnswers>,
}

/// All parts, in the order of the logbook.
#[derive(Clone, Debug, Default)]
pub struct PartIndex {
    pub revision: u64,
    pub rows: Vec<Arc<IndexRow>>,
    context: Option<Context>,
}

/// What else a row is made of; while it stays, only changed parts get new rows.
#[derive(Clone, Debug, Default, PartialEq)]
struct Context {
    places: Vec<Arc<Place>>,
    fitted: HashMap<PartId, String>,
}

impl Context {
    fn of(logbook: &Logbook) -> Self {
        let fittings = logbook
            .machines
            .iter()
            .flat_map(|machine| machine.fitted().map(|fitting| (fitting.part, machine.machine.name.clone())));
        Self { places: logbook.places.clone(), fitted: fittings.collect() }
    }
}

impl IndexRow {
    /// What follows for the part, and its file.
    pub fn answers(&self) -> &Arc<PartAnswers> {
        &self.answers
    }

    /// What it is called, in lower case, to sort by.
    pub fn what_order(&self) -> &str {
        &self.what_order
    }

    /// Whether every word occurs somewhere; words are in lower case.
    pub fn holds(&self, words: &[String]) -> bool {
        words.iter().all(|word| self.haystack.contains(word.as_str()))
    }
}

impl PartIndex {
    /// The index of a revision; rows of parts for which nothing changed are taken from the one before.
    #[must_use]
    pub fn next(&self, logbook: &Logbook, answers: &Answers) -> Self {
        let context = Context::of(logbook);
        let is_same_around = self.context.as_ref() == Some(&context);
        let mut before = self.rows.iter().peekable();
        let rows = answers
            .parts
            .iter()
            .map(|part| {
                // Both lists stand in the order of their keys.
                while before.next_if(|row| row.id < part.part).is_some() {}
                match before.peek() {
                    Some(row) if is_same_around && Arc::ptr_eq(&row.answers, part) => Arc::clone(row),
                    _ => Arc::new(row(logbook, part, context.fitted.get(&part.part).map(String::as_str))),
                }
            })
            .collect();
        Self { revision: logbook.revision, rows, context: Some(context) }
    }

    /// Parts that hold every word of a text, those whose tag is the text first.
    pub fn found(&self, text: &str, most: usize) -> Vec<Arc<IndexRow>> {
        let words = words_of(text);
        if words.is_empty() {
            return Vec::new();
        }
        let tag = text.trim();
        let exact = self.rows.iter().filter(|row| row.tag.eq_ignore_ascii_case(tag));
        let others = self.rows.iter().filter(|row| !row.tag.eq_ignore_ascii_case(tag) && row.holds(&words));
        exact.chain(others).take(most).cloned().collect()
    }
}

/// The words of a search text, in lower case.
pub fn words_of(text: &str) -> Vec<String> {
    text.split_whitespace().map(str::to_lowercase).collect()
}

fn row(logbook: &Logbook, answers: &Arc<PartAnswers>, fitted_in: Option<&str>) -> IndexRow {
    let file = &answers.file;
    let part = &file.part;
    let what = logbook.title_of(file);
    let kept = part.place.map(|place| logbook.place_path(place)).unwrap_or_default();
    let place = fitted_in.map_or(kept, str::to_owned);
    let mut haystack = String::with_capacity(160);
    let words = [part.tag.as_str(), &what, part.kind.label(), &part.serial, &part.name, &part.note, &place]
        .into_iter()
        .chain(answers.design.iter().flat_map(|design| [design.design.maker.as_str(), design.design.model.as_str()]))
        .chain(file.markings.iter().map(|marking| marking.text.as_str()));
    for word in words.filter(|word| !word.is_empty()) {
        haystack.push_str(word);
        haystack.push('\n');
    }
    IndexRow {
        id: part.id,
        kind: part.kind,
        tag: part.tag.clone(),
        tag_order: tag_order(&part.tag),
        span: answers.making.span,
        state: answers.state,
        hold: answers.hold,
        open_work: answers.tasks.len(),
        what_order: what.to_lowercase(),
        what,
        place,
        place_id: part.place,
        haystack: haystack.to_lowercase(),
        answers: Arc::clone(answers),
    }
}

/// A tag with each of its numbers written in ten digits, so that 9 comes before 10.
fn tag_order(tag: &str) -> String {
    let mut order = String::with_capacity(tag.len() + 10);
    let mut digits = String::new();
    for letter in tag.to_lowercase().chars().chain(['\u{0}']) {
        if letter.is_ascii_digit() {
            digits.push(letter);
        } else {
            if !digits.is_empty() {
                // Writing into a string cannot fail.
                let _ = write!(order, "{:0>10}", digits.trim_start_matches('0'));
                digits.clear();
            }
            order.push(letter);
        }
    }
    order
}
