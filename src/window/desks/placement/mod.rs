//! Placement: which spare goes into which machine, drawn, explained, tried out and planned.

mod about;
mod act;
mod asking;
mod drawing;
mod found;
mod grid;
mod leaves;
mod lines;
mod list;
mod panel;
mod pins;
mod priced;
mod slip;
mod touch;

use std::collections::HashMap;
use std::sync::Arc;

use egui::{Rect, Ui, UiBuilder};

use self::about::Said;
use self::asking::{Asking, Key, News, Of};
use self::drawing::{Done, Drawing};
use self::found::Found;
use self::leaves::{Leaf, Weights, missing_ui, moves_ui, soonest_ui};
use self::panel::{PanelAct, panel_ui};
use self::pins::Pins;
use self::touch::touch_ui;
use crate::assess::placement::{Ask, Goals, change};
use crate::record::{Kind, Moment, PartId, Word};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, first_ui, press_if_ui, title_ui};

pub use self::act::{PlaceAct, Placing};

/// From this width on, points, the drawing has room for something beside it.
const BESIDE: f32 = 190.0 * GRID;
/// How wide that then is, points.
const PANEL: f32 = 80.0 * GRID;
/// So many more spares of a shelf are drawn when more are asked for.
const MORE: usize = 20;

/// What the desk keeps.
pub struct Placement {
    goals: Goals,
    pins: Pins,
    asking: Option<Asking>,
    /// A new question waits for the thread of the old one: there is never more than one.
    waits: bool,
    found: Option<Arc<Found>>,
    /// What the best proposal without pins is worth, and whether that is proven.
    free: Option<(i64, bool)>,
    trouble: Option<String>,
    chosen: Option<PartId>,
    about: Vec<Said>,
    /// The chosen slip is to be brought into view.
    follow: bool,
    leaf: Leaf,
    weights: Weights,
    shows_settled: bool,
    more: HashMap<Kind, usize>,
    /// The moves are to be planned when next drawn.
    plans: bool,
}

impl Default for Placement {
    fn default() -> Self {
        Self {
            goals: Goals::default(),
            pins: Pins::default(),
            asking: None,
            waits: false,
            found: None,
            free: None,
            trouble: None,
            chosen: None,
            about: Vec::new(),
            follow: false,
            leaf: Leaf::Moves,
            weights: Weights::default(),
            shows_settled: false,
            more: HashMap::new(),
            plans: false,
        }
    }
}

impl Placement {
    /// What can be done with the proposal on show.
    pub fn placing(&self) -> Placing {
        let is_running = self.waits || self.asking.as_ref().is_some_and(Asking::is_proposing);
        let has_moves = self.found.as_ref().is_some_and(|found| !found.to_plan.is_empty());
        Placing {
            can_plan: has_moves && !is_running && self.trouble.is_none(),
            is_running,
            has_pins: !self.pins.is_empty(),
        }
    }

    /// Does something with the proposal on show.
    pub fn act(&mut self, act: PlaceAct) {
        match act {
            PlaceAct::Plan => self.plans = true,
            PlaceAct::Stop => {
                if let Some(asking) = &self.asking {
                    asking.stop();
                }
            }
            PlaceAct::PinsOff => self.pins = Pins::default(),
        }
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Placement"));
        if let Some(nothing) = nothing_to_ask(view) {
            ui.label(body(nothing));
            return;
        }
        self.ask(ui, view);
        self.take_news();
        if std::mem::take(&mut self.plans) && self.placing().can_plan {
            self.plan(view, outbox);
        }
        self.head_ui(ui, view, outbox);
        let Some(found) = self.found.clone() else { return };
        let room = ui.available_rect_before_wrap();
        if room.width() >= BESIDE {
            let (drawing, beside) = room.split_left_right_at_x(room.right() - PANEL);
            scope_ui(ui, drawing, "drawing", |ui| self.drawing_ui(ui, &found, false));
            let beside = beside.with_min_x(beside.left() + 6.0 * GRID);
            scope_ui(ui, beside, "beside", |ui| self.beside_ui(ui, &found, false, view, outbox));
        } else {
            scope_ui(ui, room, "beside", |ui| self.beside_ui(ui, &found, true, view, outbox));
        }
    }

    /// Asks anew where the logbook, or what is wanted, has changed.
    fn ask(&mut self, ui: &Ui, view: &View<'_>) {
        self.pins.let_go_of_written(view.logbook);
        let touch = &view.settings.touch;
        let ask = Ask {
            goals: self.goals,
            pins: self.pins.put.clone(),
            left_out: self.pins.left_out(),
            may_touch: touch.machines.clone(),
            may_touch_all: touch.all,
        };
        let key = Key { revision: view.answers.revision, rules: view.rules.version, ask };
        let is_asked = self.asking.as_ref().is_some_and(|asking| asking.key == key);
        if is_asked && !self.waits {
            return;
        }
        self.about.clear();
        self.free = None;
        self.waits = self.asking.as_mut().is_some_and(|asking| !asking.let_go());
        if self.waits {
            return;
        }
        let (logbook, answers, rules) = (view.logbook.clone(), view.answers.clone(), view.rules.clone());
        let of = Of { logbook, answers, rules, ask: key.ask.clone() };
        self.asking = Some(Asking::start(key, of, ui.ctx()));
    }

    fn take_news(&mut self) {
        let Some(asking) = self.asking.as_mut().filter(|_| !self.waits) else { return };
        for news in asking.take_news() {
            match news {
                News::Proposed(Ok(found)) => {
                    self.trouble = None;
                    self.found = Some(Arc::from(found));
                }
                News::Proposed(Err(contradiction)) => self.trouble = Some(contradiction.to_string()),
                News::Free(worth, is_proven) => self.free = Some((worth, is_proven)),
                News::About(part, said) if self.chosen == Some(part) => self.about.push(said),
                News::About(..) => {}
                News::Failed => {
                    let failed = text!("No proposal could be worked out. Change what counts, or take the pins off.");
                    self.trouble = Some(failed.to_owned());
                }
            }
        }
        let is_known = |part: &PartId| self.found.as_ref().is_some_and(|found| found.slip(*part).is_some());
        self.chosen = self.chosen.filter(is_known);
        if let Some(part) = self.chosen.filter(|_| self.trouble.is_none()) {
            asking.ask_about(part);
        }
    }

    /// Hands the moves over as one change.
    fn plan(&self, view: &View<'_>, outbox: &mut Outbox) {
        if let Some(found) = &self.found {
            let at = Moment::on(view.today);
            let pins = &self.pins.put;
            outbox.change(change(&found.proposal, &found.logbook, pins, at, &mut uuid::Uuid::now_v7));
        }
    }

    fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let placing = self.placing();
        match (&self.trouble, &self.found) {
            (Some(trouble), _) => {
                ui.label(body(trouble).color(ui.tokens().power_unknown));
            }
            (None, Some(found)) => {
                first_ui(ui, found.sentence());
            }
            (None, None) => {
                first_ui(ui, text!("Weighing every spare for every machine…"));
            }
        }
        ui.horizontal_wrapped(|ui| {
            let mut acts = vec![PlaceAct::Plan];
            if placing.is_running {
                acts.push(PlaceAct::Stop);
            }
            if placing.has_pins {
                acts.push(PlaceAct::PinsOff);
            }
            for act in acts {
                let shortcut = Some(act.shortcut());
                if press_if_ui(ui, placing.allows(act), act.label(), act.tooltip(), shortcut).clicked() {
                    outbox.give(crate::window::command::Command::Place(act));
                }
            }
            ui.checkbox(&mut self.shows_settled, text!("Settled roles too"));
            if placing.is_running && self.found.is_some() {
                ui.label(body(text!("Looking for the best…")));
            }
        });
        let worth = self.found.as_ref().map(|found| (found.proposal.worth, found.proposal.is_proven()));
        let cost = worth.zip(self.free).filter(|_| !placing.is_running);
        self.pins.ui(ui, view.logbook, cost);
    }

    fn drawing_ui(&mut self, ui: &mut Ui, found: &Found, is_list: bool) {
        let drawing = Drawing {
            found,
            about: &self.about,
            chosen: self.chosen,
            follow: std::mem::take(&mut self.follow),
            shows_settled: self.shows_settled,
        };
        let more = |kind: Kind| self.more.get(&kind).copied().unwrap_or_default();
        let done = if is_list { list::list_ui(ui, &drawing) } else { drawing.ui(ui, more) };
        match done {
            Some(Done::Choose(part)) => self.choose(Some(part)),
            Some(Done::Put(part, machine)) => {
                self.choose(Some(part));
                self.pins.put(part, machine);
            }
            Some(Done::LeaveOut(part)) => self.pins.leave_out(part),
            Some(Done::More(kind)) => *self.more.entry(kind).or_default() += MORE,
            None => return,
        }
        ui.ctx().request_repaint();
    }

    fn choose(&mut self, part: Option<PartId>) {
        if self.chosen != part {
            (self.chosen, self.follow) = (part, true);
            self.about.clear();
        }
    }

    fn beside_ui(&mut self, ui: &mut Ui, found: &Found, is_narrow: bool, view: &View<'_>, outbox: &mut Outbox) {
        if let Some(slip) = self.chosen.and_then(|part| found.slip(part)) {
            let part = slip.part;
            match panel_ui(ui, found, slip, &self.about, outbox) {
                Some(PanelAct::PutAway) => self.choose(None),
                Some(PanelAct::PutIn(machine)) => self.pins.put(part, machine),
                Some(PanelAct::Rival(rival, machine)) => self.pins.put_instead(rival, machine, part),
                Some(PanelAct::LeaveOut) => self.pins.leave_out(part),
                None => return,
            }
            ui.ctx().request_repaint();
            return;
        }
        ui.horizontal_wrapped(|ui| {
            for leaf in Leaf::ALL.iter().filter(|leaf| is_narrow || **leaf != Leaf::Places) {
                ui.selectable_value(&mut self.leaf, *leaf, leaf.label());
            }
        });
        ui.add_space(2.0 * GRID);
        let goals = match self.leaf {
            Leaf::Places if is_narrow => {
                self.drawing_ui(ui, found, true);
                None
            }
            Leaf::Places | Leaf::Moves => {
                moves_ui(ui, found);
                None
            }
            Leaf::Missing => {
                missing_ui(ui, found);
                None
            }
            Leaf::Tested => {
                if let Some(touch) = touch_ui(ui, view.answers, view.logbook, &view.settings.touch) {
                    outbox.touch = Some(touch);
                }
                None
            }
            Leaf::Weights => self.weights.ui(ui, self.goals),
            Leaf::Soonest => soonest_ui(ui, found, self.goals),
        };
        if let Some(goals) = goals {
            self.goals = goals;
            ui.ctx().request_repaint();
        }
    }
}

/// Why there is nothing to be asked; `None` where there is.
fn nothing_to_ask(view: &View<'_>) -> Option<&'static str> {
    let logbook = view.logbook;
    if logbook.machines.is_empty() {
        return Some(text!("No machine yet. Start one on Machines with its brief: then its spares are found here."));
    }
    if logbook.machines.iter().all(|file| file.roles.is_empty()) {
        return Some(text!("No machine has a role to fill. Say on a machine’s sheet which parts it is made of."));
    }
    logbook.parts.is_empty().then_some(text!("No part is logged yet: there is nothing to place."))
}

fn scope_ui(ui: &mut Ui, rect: Rect, salt: &str, draw: impl FnOnce(&mut Ui)) {
    ui.scope_builder(UiBuilder::new().max_rect(rect).id_salt(salt), draw);
}
