//! Photographs to sort: what came in without a part in view, in groups by time, each to be given to something.

mod group;
mod groups;
mod watched;

use chrono::NaiveDate;
use egui::{Id, ScrollArea, Ui, UiBuilder};

use self::groups::Groups;
use crate::photo::TakenIn;
use crate::record::{Logbook, Photo, PhotoId};
use crate::store::{Kept, Store};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::taking_in::{Target, Ways};
use crate::window::theme::GRID;
use crate::window::widgets::{Picker, body, first_ui, link_ui, press_ui, remark, section_ui};
use crate::{counted, text};

/// The name under which the store keeps what is not sorted yet.
const DRAFT: &str = "sorting";
/// On a large screen the groups keep together, points.
const WIDEST: f32 = 260.0 * GRID;

/// The page.
#[derive(Default)]
pub struct Sorting {
    groups: Groups,
    /// The group that is being given.
    open: Option<usize>,
    /// Set when it is to come into view.
    follow: bool,
    /// The photograph that was pressed.
    chosen: Option<PhotoId>,
    whose: Picker<Target>,
    ways: Ways,
    watched: watched::WatchedUi,
}

/// Photographs that go to Intake, for a new part.
#[derive(Debug)]
pub struct ToIntake {
    /// Each with what its file was called.
    pub photos: Vec<(String, Photo)>,
    /// The new part's tag, where it was typed.
    pub tag: Option<String>,
}

impl Sorting {
    /// Looks for what was left unsorted in a logbook that was opened; `false` when it cannot be read.
    pub fn opened(&mut self, store: &Store) -> bool {
        let Some(draft) = store.draft(DRAFT) else { return true };
        match serde_json::from_str(&draft) {
            Ok(groups) => {
                self.groups = groups;
                true
            }
            Err(_) => false,
        }
    }

    /// Adds photographs that came in together; how many were there already.
    pub fn add(&mut self, taken_in: &[TakenIn], store: &Store, today: NaiveDate) -> usize {
        let already = self.groups.add(taken_in, today);
        store.save_draft(DRAFT, &self.json());
        already
    }

    /// How many photographs wait to be sorted.
    pub fn count(&self, logbook: &Logbook, refusals: u32) -> usize {
        self.groups.open_count(logbook, refusals)
    }

    /// Whether it holds a photograph of this content.
    pub fn holds(&self, content: &str) -> bool {
        self.groups.items().any(|item| item.photo.content == content)
    }

    fn json(&self) -> String {
        // Plain values only: nothing in them can fail to be written.
        serde_json::to_string(&self.groups).unwrap_or_default()
    }

    fn save(&self, outbox: &mut Outbox) {
        if self.groups.list.is_empty() {
            outbox.drop_draft(DRAFT);
        } else {
            outbox.save_draft(DRAFT, self.json());
        }
    }

    /// Draws the page. `logged` is the tag of a part that is half typed at Intake; what is to go there is given back.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, logged: Option<&str>, outbox: &mut Outbox) -> Option<ToIntake> {
        let mut to_intake = None;
        ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
            ui.set_max_width(ui.available_width().min(WIDEST));
            let open = self.count(view.logbook, view.refusals);
            first_ui(
                ui,
                match (open, self.groups.list.is_empty()) {
                    (0, true) => text!("No photographs to sort").to_owned(),
                    (0, false) => text!("Every photograph is sorted").to_owned(),
                    _ => counted!("{count} photograph to sort", "{count} photographs to sort", open),
                },
            );
            if open > 0 {
                ui.label(body(text!(
                    "Gaps between the times they were taken part them. Say of each group what it is of."
                )));
            } else if self.groups.list.is_empty() {
                ui.label(body(text!(
                    "Photographs that come in while no part is in view wait here, grouped by the time they were taken."
                )));
            }
            to_intake = self.groups_ui(ui, view, logged, outbox);
            if open == 0 && !self.groups.list.is_empty() {
                ui.add_space(2.0 * GRID);
                let what = text!("What was given stays where it is; what was left out is forgotten");
                if press_ui(ui, text!("Put the list away"), what, None).clicked() {
                    self.put_away(outbox);
                }
            }
            // Of their own name, so that these fields are never taken for one of the groups that come and go above.
            ui.scope_builder(UiBuilder::new().scope_id(Id::unique("ways in")), |ui| {
                section_ui(ui, text!("Take more in"));
                self.ways.open_ui(ui, Page::Sorting, view, outbox);
                section_ui(ui, text!("Watched folder"));
                self.watched.ui(ui, view, outbox);
                ui.add_space(6.0 * GRID);
            });
        });
        to_intake
    }

    /// Forgets the list, and the files of what was left out.
    fn put_away(&mut self, outbox: &mut Outbox) {
        let groups = std::mem::take(&mut self.groups);
        let left_out = groups.list.into_iter().filter(|group| group.fate == groups::Fate::LeftOut);
        let forgotten = left_out.flat_map(|group| group.items).filter(|item| item.is_new).map(|item| Kept {
            content: item.photo.content,
            bytes: 0,
            extension: item.photo.extension,
            is_new: true,
        });
        outbox.forget.extend(forgotten);
        self.chosen = None;
        self.save(outbox);
    }

    fn groups_ui(
        &mut self,
        ui: &mut Ui,
        view: &View<'_>,
        logged: Option<&str>,
        outbox: &mut Outbox,
    ) -> Option<ToIntake> {
        use groups::Fate;
        let stands: Vec<Fate> =
            self.groups.list.iter().map(|group| group.stands(view.logbook, view.refusals)).collect();
        if self.open.and_then(|open| stands.get(open)) != Some(&Fate::Open)
            && let Some(next) = next_open(&stands, self.open.unwrap_or(0))
        {
            self.open(next);
        }
        let mut act = None;
        for (at, stand) in stands.iter().enumerate() {
            ui.push_id(at, |ui| match stand {
                Fate::Open if self.open == Some(at) => {
                    act = self.open_group_ui(ui, at, &stands, view, logged).or(act.take());
                }
                Fate::Open => {
                    if self.closed_group_ui(ui, at, view) {
                        act = Some(group::Act::Open(at));
                    }
                }
                Fate::Given(target) => {
                    ui.add_space(GRID);
                    ui.horizontal_wrapped(|ui| {
                        let count = self.groups.list[at].items.len();
                        let whose = target.title(view.logbook).unwrap_or_default();
                        let count = counted!("{count} photograph", "{count} photographs", count);
                        ui.label(remark(ui, text!("{photographs}: of {whose}", photographs = count, whose = whose)));
                    });
                }
                Fate::LeftOut => {
                    ui.add_space(GRID);
                    ui.horizontal_wrapped(|ui| {
                        let count = self.groups.list[at].items.len();
                        let said = counted!("{count} photograph left out", "{count} photographs left out", count);
                        ui.label(remark(ui, said));
                        if link_ui(ui, text!("Take up again")).clicked() {
                            act = Some(group::Act::TakeUp(at));
                        }
                    });
                }
            });
        }
        let act = act?;
        let to_intake = self.carry_out(act, &stands, view, outbox);
        self.save(outbox);
        ui.ctx().request_repaint();
        to_intake
    }

    /// Has a group be the one that is given, its field ready for typing.
    fn open(&mut self, group: usize) {
        self.open = Some(group);
        self.chosen = None;
        self.whose = Picker::ready();
        self.follow = true;
    }
}

/// The first open group from `from` on, else from the first.
fn next_open(stands: &[groups::Fate], from: usize) -> Option<usize> {
    let is_open = |at: &usize| stands[*at] == groups::Fate::Open;
    (from.min(stands.len())..stands.len()).find(is_open).or_else(|| (0..stands.len()).find(is_open))
}
