//! How a part goes into the logbook: what is wrong stops it, photographs are waited for, and a refusal costs nothing.

use super::records::{faults, records};
use super::typed::{Step, next_tag};
use super::{Intake, Stage, json};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::taking_in::Target;

impl Intake {
    /// Begins to log the part: what is wrong is said; else photographs are copied first.
    pub(super) fn log(&mut self, ctx: &egui::Context, view: &View<'_>) {
        if self.stage != Stage::Typing {
            return;
        }
        self.typed.photos.add_typed();
        if let Some(fault) = faults(&self.typed, view).into_iter().next() {
            self.typed.step = fault.step;
            self.say(fault.say);
            return;
        }
        self.says = None;
        self.told = self.typed.photos.refused().count();
        self.stage = Stage::Keeping;
        ctx.request_repaint();
    }

    pub(super) fn say(&mut self, says: String) {
        self.says = Some((says, json(&self.typed)));
    }

    /// Goes on with a part that is being logged.
    pub(super) fn go_on(&mut self, view: &View<'_>, outbox: &mut Outbox) {
        let Some(part) = self.part else { return };
        match self.stage {
            Stage::Typing => {}
            Stage::Keeping => {
                if self.typed.photos.has_wanted() || view.taking_in.is_under_way(Target::Intake) {
                    return;
                }
                let refused: Vec<&str> = self.typed.photos.refused().collect();
                // What was told beside its path before is left out; what is news stops the part.
                if refused.len() > self.told {
                    let why = refused.join("; ");
                    let says = text!(
                        "Not logged yet: {why}. Mend the path, or log again without it; everything else goes in.",
                        why = why
                    );
                    self.stage = Stage::Typing;
                    self.typed.step = Step::Photos;
                    self.say(says);
                    return;
                }
                let records = records(&self.typed, view, part);
                self.stage = Stage::Writing { refusals: view.refusals, lot: records.lot };
                outbox.change(records.change());
            }
            Stage::Writing { refusals, lot } => {
                if let Some(file) = view.logbook.part(part) {
                    let tag = file.part.tag.clone();
                    let next = next_tag(Some(&tag), |tag| view.logbook.part_tagged(tag).is_some());
                    self.left_out = self.typed.photos.refused().map(str::to_owned).collect();
                    let typed = self.typed.next(next, lot);
                    self.start(typed);
                    self.logged = Some((part, tag));
                } else if view.refusals != refusals {
                    // The notice says why; all that was typed stays.
                    self.stage = Stage::Typing;
                    self.say(text!("Not logged: see the notice above. Nothing that you typed is lost.").to_owned());
                }
            }
        }
    }
}
