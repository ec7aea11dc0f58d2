//! One group: its photographs, whose they may be, and how it is joined, split and left out.

use std::sync::Arc;

use egui::{Align, Rect, Sense, Stroke, Ui, WidgetInfo, vec2};

use super::groups::{Fate, Group, Item};
use super::{Sorting, ToIntake};
use crate::record::{Logbook, PhotoId};
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::thumbnail_ui;
use crate::window::pictures::{LARGE_PX, Shown, paint_fitting};
use crate::window::taking_in::{Target, put_photos};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Asking, Pick, body, link_ui, press_ui, remark, strong};
use crate::{counted, text};

/// So many small pictures of a group that is not open are shown.
const GLANCE: usize = 10;

/// What a person did with a group.
#[derive(Debug)]
pub enum Act {
    Open(usize),
    Give(usize, Target),
    /// A new part is logged with them, of this tag where one was typed.
    New(usize, Option<String>),
    Join(usize, usize),
    Split(usize, PhotoId),
    Move(usize, PhotoId, usize),
    LeaveOut(usize),
    LeaveOneOut(usize, PhotoId),
    TakeUp(usize),
}

impl Sorting {
    /// A group of which is said what it is of.
    pub(super) fn open_group_ui(
        &mut self,
        ui: &mut Ui,
        at: usize,
        stands: &[Fate],
        view: &View<'_>,
        logged: Option<&str>,
    ) -> Option<Act> {
        ui.add_space(4.0 * GRID);
        let said = ui.label(strong(heading(&self.groups.list[at])));
        if std::mem::take(&mut self.follow) {
            said.scroll_to_me(Some(Align::TOP));
        }
        let asking = Asking {
            label: text!("Whose are they? Tag or name of a part, a machine or a lot"),
            new_word: Some(text!("Log a new part with the tag")),
            shows_all: false,
        };
        let logbook = Arc::clone(view.logbook);
        let mut act = match self.whose.ui(ui, asking, logbook.revision, || targets(&logbook)) {
            Some(Pick::One(target)) => Some(Act::Give(at, target)),
            Some(Pick::New(tag)) => Some(Act::New(at, Some(tag))),
            Some(Pick::Away) | None => None,
        };
        let (before, next) = neighbours(at, stands);
        ui.horizontal_wrapped(|ui| {
            let word = match logged {
                Some(tag) => text!("Put them with {tag}, which is being logged", tag = tag),
                None => text!("Log a new part with them").to_owned(),
            };
            if press_ui(ui, &word, text!("Goes to Intake; the photographs go with you"), None).clicked() {
                act = Some(Act::New(at, None));
            }
            if let Some(before) = before
                && link_ui(ui, text!("Join with the group before")).clicked()
            {
                act = Some(Act::Join(before, at));
            }
            if let Some(next) = next
                && link_ui(ui, text!("Join with the next group")).clicked()
            {
                act = Some(Act::Join(at, next));
            }
            if link_ui(ui, text!("Leave them out")).clicked() {
                act = Some(Act::LeaveOut(at));
            }
        });
        let mut chosen = self.chosen;
        let items = &self.groups.list[at].items;
        ui.horizontal_wrapped(|ui| {
            for (number, item) in items.iter().enumerate() {
                let is_chosen = chosen == Some(item.photo.id);
                if item_ui(ui, view, item, (number, items.len()), is_chosen) {
                    chosen = (!is_chosen).then_some(item.photo.id);
                }
            }
        });
        self.chosen = chosen;
        let act = self.chosen_ui(ui, at, stands, view).or(act);
        ui.add_space(2.0 * GRID);
        act
    }

    /// The photograph that was pressed, larger, with what can be done with it alone.
    fn chosen_ui(&self, ui: &mut Ui, at: usize, stands: &[Fate], view: &View<'_>) -> Option<Act> {
        let place = self.groups.place(at, self.chosen?)?;
        let Item { photo, name, time, .. } = &self.groups.list[at].items[place];
        let mut act = None;
        let (before, next) = neighbours(at, stands);
        ui.add_space(GRID);
        let size = vec2(120.0 * GRID, 90.0 * GRID).min(ui.available_size_before_wrap().max(vec2(120.0, 90.0)));
        let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
        let said = text!("{name}, larger", name = name);
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &said));
        larger_ui(ui, view, rect, photo);
        let time = time.map(|time| time.format("%Y-%m-%d %H:%M:%S").to_string()).unwrap_or_default();
        ui.label(remark(ui, [name.clone(), time].join("  ")));
        ui.horizontal_wrapped(|ui| {
            if place > 0 && link_ui(ui, text!("Part the group before it")).clicked() {
                act = Some(Act::Split(at, photo.id));
            }
            if let Some(before) = before
                && link_ui(ui, text!("To the group before")).clicked()
            {
                act = Some(Act::Move(at, photo.id, before));
            }
            if let Some(next) = next
                && link_ui(ui, text!("To the next group")).clicked()
            {
                act = Some(Act::Move(at, photo.id, next));
            }
            if link_ui(ui, text!("Leave it out")).clicked() {
                act = Some(Act::LeaveOneOut(at, photo.id));
            }
        });
        act
    }

    /// A group that waits for its turn, at a glance; whether it was asked for.
    pub(super) fn closed_group_ui(&self, ui: &mut Ui, at: usize, view: &View<'_>) -> bool {
        let group = &self.groups.list[at];
        let mut is_asked = false;
        ui.add_space(3.0 * GRID);
        ui.horizontal_wrapped(|ui| {
            ui.label(body(heading(group)));
            let open = link_ui(ui, text!("Say whose"));
            let name = text!("Say whose: {group}", group = heading(group));
            open.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
            is_asked |= open.clicked();
        });
        ui.horizontal_wrapped(|ui| {
            for (number, item) in group.items.iter().take(GLANCE).enumerate() {
                is_asked |= item_ui(ui, view, item, (number, group.items.len()), false);
            }
            if group.items.len() > GLANCE {
                ui.label(remark(ui, text!("and {count} more", count = group.items.len() - GLANCE)));
            }
        });
        is_asked
    }

    /// Does what was asked for.
    pub(super) fn carry_out(
        &mut self,
        act: Act,
        stands: &[Fate],
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Option<ToIntake> {
        let place = |groups: &super::Groups, group, photo| groups.place(group, photo).unwrap_or(0);
        match act {
            Act::Open(group) => self.open(group),
            Act::Give(group, target) => self.give(group, target, view, outbox),
            Act::New(group, tag) => {
                let group = self.groups.list.remove(group);
                self.open = None;
                let photos = group.items.into_iter().map(|item| (item.name, item.photo)).collect();
                return Some(ToIntake { photos, tag });
            }
            Act::Join(group, with) => {
                self.groups.join(group, with);
                self.open(group);
            }
            Act::Split(group, photo) => {
                let at = place(&self.groups, group, photo);
                self.groups.split(group, at);
                self.open(group);
            }
            Act::Move(group, photo, to) => {
                let at = place(&self.groups, group, photo);
                self.groups.move_to(group, at, to);
                self.chosen = None;
            }
            Act::LeaveOut(group) => {
                self.groups.list[group].fate = Fate::LeftOut;
                self.chosen = None;
            }
            Act::LeaveOneOut(group, photo) => {
                let at = place(&self.groups, group, photo);
                self.groups.leave_out(group, at);
                self.chosen = None;
            }
            Act::TakeUp(group) => {
                self.groups.list[group].fate = Fate::Open;
                if !stands.contains(&Fate::Open) {
                    self.open(group);
                }
            }
        }
        None
    }

    fn give(&mut self, group: usize, target: Target, view: &View<'_>, outbox: &mut Outbox) {
        let photos = self.groups.list[group].items.iter().map(|item| item.photo.clone()).collect();
        let (change, already) = put_photos(target, photos, view.logbook);
        if already > 0 {
            outbox.say(counted!(
                "{count} was there already: kept once",
                "{count} were there already: kept once",
                already
            ));
        }
        outbox.change(change);
        let group = &mut self.groups.list[group];
        group.fate = Fate::Given(target);
        group.given_at = Some((view.logbook.revision, view.refusals));
        self.chosen = None;
    }
}

/// The open groups before and after one.
fn neighbours(at: usize, stands: &[Fate]) -> (Option<usize>, Option<usize>) {
    let is_open = |at: &usize| stands[*at] == Fate::Open;
    ((0..at).rev().find(is_open), (at + 1..stands.len()).find(is_open))
}

/// "These 9 belong together: 2026-05-03, 14:02 to 14:05".
fn heading(group: &Group) -> String {
    let count = counted!("{count} photograph", "These {count} belong together", group.items.len());
    let Some((first, last)) = group.times() else {
        return text!("{photographs}: no time is noted in them", photographs = count);
    };
    let (day, time) = ("%Y-%m-%d", "%H:%M");
    let times = if first.format(time).to_string() == last.format(time).to_string() && first.date() == last.date() {
        first.format("%Y-%m-%d, %H:%M").to_string()
    } else if first.date() == last.date() {
        let (from, to) = (first.format(time), last.format(time));
        text!("{day}, {from} to {to}", day = first.format(day), from = from, to = to)
    } else {
        text!("{first} to {last}", first = first.format("%Y-%m-%d %H:%M"), last = last.format("%Y-%m-%d %H:%M"))
    };
    format!("{count}: {times}")
}

/// One small photograph; whether it was pressed.
fn item_ui(ui: &mut Ui, view: &View<'_>, item: &Item, (number, count): (usize, usize), is_chosen: bool) -> bool {
    let name = text!("{name}, {number} of {count}", name = item.name, number = number + 1, count = count);
    let response = thumbnail_ui(ui, view, &item.photo, vec2(32.0, 24.0) * GRID, &name);
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_selected(is_chosen));
    if is_chosen {
        let stroke = Stroke::new(3.0, ui.tokens().press);
        ui.painter().rect_stroke(response.rect, 2.0, stroke, egui::StrokeKind::Outside);
    }
    response.on_hover_text(&item.name).clicked()
}

fn larger_ui(ui: &Ui, view: &View<'_>, rect: Rect, photo: &crate::record::Photo) {
    ui.painter().rect_filled(rect, 2.0, ui.tokens().rail);
    if ui.is_rect_visible(rect)
        && let Shown::Ready(texture) = view.pictures.get(view.store, photo, LARGE_PX)
    {
        paint_fitting(ui, rect, &texture);
    }
}

/// Everything that photographs may be of, as it is called.
fn targets(logbook: &Logbook) -> Vec<(Target, String)> {
    let parts = logbook.parts.iter().map(|file| Target::Part(file.part.id));
    let machines = logbook.machines.iter().map(|file| Target::Machine(file.machine.id));
    let lots = logbook.lots.iter().map(|file| Target::Lot(file.lot.id));
    let all = parts.chain(machines).chain(lots);
    all.filter_map(|target| Some((target, target.title(logbook)?))).collect()
}
