//! The layer of marks over a photograph: drawn, chosen, changed, and told beside the picture.

mod asks;
mod copy_out;
mod draw;
mod edit;
mod list;
mod panel;
mod place;
mod record;
mod write;

use std::borrow::Cow;
use std::collections::HashMap;
use std::sync::Arc;

use egui::{Pos2, Rect, Sense, Ui, Vec2, WidgetInfo};

use self::asks::Asks;
use self::draw::Drawing;
use self::edit::Handles;
use self::panel::Tying;
use self::place::Placing;
use super::{Placed, Tool};
use crate::photo::measure::Measured;
use crate::record::{PartFile, PhotoFile, PhotoId, PhotoMark, PhotoMarkId};
use crate::window::background::Background;
use crate::window::marked::{self, Tie, Tied, around, from_large_to_small, hits, mark_name, tied};
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::{Photograph, Subject};
use crate::window::theme::Themed;
use crate::window::widgets::Edit;

/// From so many marks on, what they measure is worked out beside the window.
const MANY: usize = 24;

/// What a photograph is opened for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// One of its marks.
    Mark(PhotoMarkId),
    /// A mark that is to be set, tied to this.
    Pin(Tie),
    /// The capacitor positions that are to be placed.
    PlaceCapacitors,
}

/// The marks of the photograph on show, with what is half done to them.
#[derive(Default)]
pub struct Marking {
    drawing: Option<Drawing>,
    asks: Option<Asks>,
    /// What the next mark is tied to.
    tie: Tie,
    placing: Option<Placing>,
    selected: Option<PhotoMarkId>,
    /// Set when the line of the chosen mark is to come into sight.
    shows_line: bool,
    handles: Handles,
    /// How high the lines of the list were, points.
    heights: HashMap<PhotoMarkId, f32>,
    /// Marks on their way to the disk.
    pending: Vec<PhotoMark>,
    refusals: u32,
    edit: Edit,
    tying: Option<Tying>,
    aim: Option<Aim>,
    told: Option<Told>,
    measured: Background<(u64, PhotoId), Measured>,
    /// Where a marked copy is to be written, as far as it is typed.
    copy_to: Option<String>,
}

/// What the marks are tied to as of a revision.
struct Told {
    of: (u64, PhotoId),
    tied: Arc<[Tied]>,
}

/// The part that a photograph shows.
fn part_of(photograph: &Photograph) -> Option<&Arc<PartFile>> {
    match &photograph.of {
        Subject::Part(file) => Some(file),
        Subject::Machine(_) | Subject::Lot(_) => None,
    }
}

impl Marking {
    /// What the photograph is opened for; carried out when it is next drawn.
    pub fn aim(&mut self, aim: Aim) {
        self.aim = Some(aim);
    }

    /// Takes a tool up, or puts it down again.
    pub fn take(&mut self, tool: Tool) {
        self.asks = None;
        self.placing = None;
        self.handles = Handles::default();
        self.drawing = (tool != Tool::Hand).then(|| Drawing::new(tool));
    }

    /// Puts one thing away: what is half drawn, the tool, the choice. `false` when there is nothing.
    pub fn put_away(&mut self) -> bool {
        if self.asks.take().is_some() || self.drawing.as_mut().is_some_and(Drawing::give_up) {
            return true;
        }
        self.placing = None;
        if self.drawing.take().is_some() || self.tying.take().is_some() {
            self.tie = Tie::Nothing;
            return true;
        }
        self.handles = Handles::default();
        self.selected.take().is_some()
    }

    /// The tool in hand.
    pub fn tool(&self) -> Tool {
        self.drawing.as_ref().map_or(Tool::Hand, |drawing| drawing.tool)
    }

    /// Whether Escape gives a fact back.
    pub fn is_editing(&self) -> bool {
        self.edit.is_editing()
    }

    fn select(&mut self, mark: Option<PhotoMarkId>) {
        if self.selected != mark {
            self.handles = Handles::default();
            self.tying = None;
        }
        self.selected = mark;
        self.shows_line = true;
    }

    /// Draws the marks; says by how much the picture is to be moved, points.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        placed: &Placed,
        photograph: &Photograph,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Vec2 {
        self.carry_aim_out(photograph);
        self.settle(photograph.file(), view);
        let told = self.told(photograph, view);
        let marks = self.shown(photograph.file());
        let mut pressed = None;
        for at in from_large_to_small(placed, &marks) {
            let mark = &marks[at];
            let tied = told_of(&told, at, view, photograph, mark);
            let is_chosen = self.selected == Some(mark.id);
            pressed = mark_ui(ui, placed, mark, &tied, at + 1, is_chosen, self.drawing.is_none()).or(pressed);
        }
        if let Some(asks) = &self.asks {
            let tied = tied(view, None, asks.mark());
            let painter = ui.painter().with_clip_rect(placed.area);
            marked::paint(&painter, &ui.tokens(), placed, asks.mark(), &tied, marks.len() + 1, true);
        }
        let marks: Vec<PhotoMark> = marks.into_iter().map(Cow::into_owned).collect();
        match pressed {
            Some(press) => self.pressed(ui, placed, photograph, &marks, &press, outbox),
            None => self.handles_ui(ui, placed, photograph, view, &marks, outbox),
        }
        self.drawing_ui(ui, placed, photograph, view, outbox)
    }

    /// Chooses what was pressed; a second press goes to what it is tied to.
    fn pressed(
        &mut self,
        ui: &Ui,
        placed: &Placed,
        photograph: &Photograph,
        marks: &[PhotoMark],
        press: &Press,
        outbox: &mut Outbox,
    ) {
        let Press { mark, at, is_twice } = *press;
        let best = at.map(|at| marked::nearest(placed, marks, at));
        let chosen = best.unwrap_or(Some(mark));
        let is_again = is_twice || (at.is_none() && self.selected == chosen);
        self.select(chosen);
        if let Some(mark) = marks.iter().find(|mark| is_again && chosen == Some(mark.id)) {
            go_to(photograph, mark, outbox);
        }
        // Its points stand over it from the next frame on.
        ui.ctx().request_repaint();
    }

    fn handles_ui(
        &mut self,
        ui: &Ui,
        placed: &Placed,
        photograph: &Photograph,
        view: &View<'_>,
        marks: &[PhotoMark],
        outbox: &mut Outbox,
    ) {
        if self.drawing.is_some() {
            return;
        }
        let Some(at) = marks.iter().position(|mark| self.selected == Some(mark.id)) else { return };
        // What is being moved is compared with what is on record, or on its way there.
        let is_it = |mark: &&PhotoMark| mark.id == marks[at].id;
        let known = self.pending.iter().find(is_it).or_else(|| photograph.file().marks.iter().find(is_it));
        let known = known.unwrap_or(&marks[at]).clone();
        if let Some(points) = self.handles.ui(ui, placed, &known, at + 1) {
            self.reshape(photograph, view, &known, points, outbox);
        }
    }

    fn drawing_ui(
        &mut self,
        ui: &Ui,
        placed: &Placed,
        photograph: &Photograph,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Vec2 {
        let Some(drawing) = self.drawing.as_mut().filter(|_| self.asks.is_none()) else { return Vec2::ZERO };
        let drawn = drawing.ui(ui, placed);
        if let Some(points) = drawn.points {
            self.finish(points, photograph, view, outbox);
            ui.ctx().request_repaint();
        }
        drawn.pan
    }

    fn carry_aim_out(&mut self, photograph: &Photograph) {
        match self.aim.take() {
            None => {}
            Some(Aim::Mark(mark)) => self.select(Some(mark)),
            Some(Aim::Pin(tie)) => {
                self.take(Tool::Pin);
                self.tie = tie;
            }
            Some(Aim::PlaceCapacitors) => self.place_capacitors(photograph),
        }
    }

    fn place_capacitors(&mut self, photograph: &Photograph) {
        let Some(part) = part_of(photograph) else { return };
        if let Some(placing) = Placing::of(marked::unplaced(part)) {
            self.take(Tool::Pin);
            self.placing = Some(placing);
        }
    }

    /// Lets go of marks that have arrived, and of those that were refused.
    fn settle(&mut self, file: &PhotoFile, view: &View<'_>) {
        let is_refused = std::mem::replace(&mut self.refusals, view.refusals) != view.refusals;
        let has_arrived =
            |mark: &PhotoMark| file.marks.iter().any(|known| known.id == mark.id && known.points == mark.points);
        self.pending.retain(|mark| !is_refused && mark.photo == file.photo.id && !has_arrived(mark));
    }

    /// The marks as a hand has them now: those on record, with what is being moved and what is on its way.
    fn shown<'a>(&self, file: &'a PhotoFile) -> Vec<Cow<'a, PhotoMark>> {
        let mut marks: Vec<Cow<'a, PhotoMark>> = file.marks.iter().map(Cow::Borrowed).collect();
        for pending in &self.pending {
            match marks.iter_mut().find(|mark| mark.id == pending.id) {
                Some(mark) => *mark = Cow::Owned(pending.clone()),
                None => marks.push(Cow::Owned(pending.clone())),
            }
        }
        if let Some(moved) = &self.handles.moved
            && let Some(mark) = marks.iter_mut().find(|mark| mark.id == moved.mark)
        {
            mark.to_mut().points.clone_from(&moved.points);
        }
        marks
    }

    fn told(&mut self, photograph: &Photograph, view: &View<'_>) -> Arc<[Tied]> {
        let of = (view.logbook.revision, photograph.photo().id);
        match &self.told {
            Some(told) if told.of == of => Arc::clone(&told.tied),
            _ => {
                let part = part_of(photograph).map(Arc::as_ref);
                let tied: Arc<[Tied]> = photograph.file().marks.iter().map(|mark| tied(view, part, mark)).collect();
                self.told = Some(Told { of, tied: Arc::clone(&tied) });
                tied
            }
        }
    }

    /// What the marks measure; worked out beside the window where there are many.
    fn measured(&mut self, ctx: &egui::Context, photograph: &Photograph, view: &View<'_>) -> Option<Arc<Measured>> {
        let key = (view.logbook.revision, photograph.photo().id);
        let photograph = photograph.clone();
        let is_small = photograph.file().marks.len() < MANY;
        self.measured
            .get(key, ctx, is_small, move || Measured::of(photograph.file(), part_of(&photograph).map(Arc::as_ref)))
    }
}

/// What a mark is tied to: from what was told of those on record, asked for one that is on its way.
fn told_of<'a>(
    told: &'a [Tied],
    at: usize,
    view: &View<'_>,
    photograph: &Photograph,
    mark: &PhotoMark,
) -> Cow<'a, Tied> {
    match told.get(at) {
        Some(tied) => Cow::Borrowed(tied),
        None => Cow::Owned(tied(view, part_of(photograph).map(Arc::as_ref), mark)),
    }
}

/// A press on a mark; `at` is where, for a press of the pointer.
struct Press {
    mark: PhotoMarkId,
    at: Option<Pos2>,
    is_twice: bool,
}

/// One mark on the picture; a press on it, unless something is drawn now.
fn mark_ui(
    ui: &Ui,
    placed: &Placed,
    mark: &PhotoMark,
    tied: &Tied,
    number: usize,
    is_chosen: bool,
    can_press: bool,
) -> Option<Press> {
    let seen: Rect = around(placed, mark)?.intersect(placed.area);
    if !seen.is_positive() {
        return None;
    }
    let sense = if can_press { Sense::click() } else { Sense::hover() };
    let response = ui.interact(seen, ui.scope_id().with(("mark", mark.id)), sense);
    let is_held = is_chosen || response.has_focus();
    marked::paint(&ui.painter().with_clip_rect(placed.area), &ui.tokens(), placed, mark, tied, number, is_held);
    let name = mark_name(mark, tied, number);
    let role = if can_press { egui::Role::Button } else { egui::Role::Label };
    response.widget_info(|| WidgetInfo::labeled(role, true, &name));
    let press = response.clicked().then(|| Press {
        mark: mark.id,
        at: response.interact_pointer_pos(),
        is_twice: response.double_clicked(),
    });
    let at = response.hover_pos();
    if at.is_some_and(|at| hits(placed, mark, at).is_some()) {
        response.on_hover_text(name);
    }
    press
}

/// Goes to what a mark is tied to, on its part's sheet.
fn go_to(photograph: &Photograph, mark: &PhotoMark, outbox: &mut Outbox) {
    if let Some(part) = part_of(photograph)
        && let Some(spot) = Tie::of(mark).spot()
    {
        outbox.show(part.part.id, Some(spot));
    }
}
