//! What a hand did to the marks, as changes.

use super::asks::Asks;
use super::{Marking, part_of};
use crate::record::{Change, MarkUse, PhotoMark};
use crate::store::Store;
use crate::text;
use crate::window::marked::{Tie, tied};
use crate::window::outbox::{Outbox, ToSample, View};
use crate::window::photographs::Photograph;
use crate::window::viewer::Tool;
use crate::window::viewer::marking::panel::Tying;

impl Marking {
    /// A mark whose points are all set.
    pub(super) fn finish(
        &mut self,
        points: Vec<[f32; 2]>,
        photograph: &Photograph,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) {
        let Some(role) = self.tool().role() else { return };
        let mark = PhotoMark::new(Store::new_id(), photograph.photo().id, role, points);
        if let Some(placing) = &mut self.placing {
            let tie = placing.next().map_or(Tie::Nothing, Tie::Capacitor);
            placing.go_on();
            if placing.left() == 0 {
                self.placing = None;
                self.drawing = None;
                outbox.say(text!("Every capacitor position is placed."));
            }
            self.add(tie.on(mark), photograph, view, outbox);
            return;
        }
        match role {
            MarkUse::Rectangle if !mark.is_convex() => {
                outbox.say(text!(
                    "The four corners cross or lie in one line: press them one after the other, going round."
                ));
            }
            MarkUse::Scale | MarkUse::Rectangle => self.asks = Some(Asks::new(mark)),
            _ => {
                let id = mark.id;
                let mark = self.tie.on(mark);
                let is_tied = Tie::of(&mark) != Tie::Nothing;
                self.add(mark, photograph, view, outbox);
                // Of these there are often several; after any other the hand is bare again.
                if matches!(role, MarkUse::Damage | MarkUse::Length) {
                    self.drawing.iter_mut().for_each(super::Drawing::take_keys);
                    return;
                }
                self.take(Tool::Hand);
                self.tie = Tie::Nothing;
                self.select(Some(id));
                if role == MarkUse::Place && !is_tied && part_of(photograph).is_some() {
                    self.tying = Some(Tying::of_mark(id));
                }
            }
        }
    }

    /// Writes a new mark.
    pub(super) fn add(&mut self, mark: PhotoMark, photograph: &Photograph, view: &View<'_>, outbox: &mut Outbox) {
        let what = tied(view, part_of(photograph).map(AsRef::as_ref), &mark).name;
        let name = text!("Mark on a photograph of {tag}: {what}", tag = photograph.of.name(), what = what);
        self.write(name, mark, photograph, outbox);
    }

    /// Writes a mark's new points; a patch is sampled again.
    pub(super) fn reshape(
        &mut self,
        photograph: &Photograph,
        view: &View<'_>,
        mark: &PhotoMark,
        points: Vec<[f32; 2]>,
        outbox: &mut Outbox,
    ) {
        let mark = PhotoMark { points, red: None, green: None, blue: None, clipped_percent: None, ..mark.clone() };
        if mark.role == MarkUse::Rectangle && !mark.is_convex() {
            outbox.say(text!("The four corners would cross or lie in one line, so the mark stays as it was."));
            return;
        }
        let what = tied(view, part_of(photograph).map(AsRef::as_ref), &mark).name;
        let name = text!("Move a mark on a photograph of {tag}: {what}", tag = photograph.of.name(), what = what);
        self.write(name, mark, photograph, outbox);
    }

    /// Writes a mark as it is now.
    pub(super) fn write(&mut self, name: String, mark: PhotoMark, photograph: &Photograph, outbox: &mut Outbox) {
        self.pending.retain(|other| other.id != mark.id);
        self.pending.push(mark.clone());
        if mark.role.is_patch() && mark.colour().is_none() {
            outbox.sample(ToSample { name, photo: photograph.photo().clone(), mark });
            return;
        }
        let mut change = Change::new(name);
        change.put(mark);
        outbox.change(change);
    }

    /// Takes a mark off the picture.
    pub(super) fn take_off(&mut self, photograph: &Photograph, view: &View<'_>, mark: &PhotoMark, outbox: &mut Outbox) {
        let what = tied(view, part_of(photograph).map(AsRef::as_ref), mark).name;
        let mut change = Change::new(text!(
            "Take a mark off a photograph of {tag}: {what}",
            tag = photograph.of.name(),
            what = what
        ));
        change.remove(mark.id);
        outbox.change(change);
        self.select(None);
    }
}
