//! A machine's roles and parts on one time line: who fills what, when it was made, and what can be done about it.

use std::collections::HashMap;

use egui::{Ui, vec2};

use super::acts;
use super::candidates::{CandidateAct, CandidateList};
use super::room::{Room, RoomAct};
use crate::assess::{MachineAnswers, TrueTo};
use crate::record::{Kind, MachineFile, PartFile, PartId, Role, RoleId, Word};
use crate::text;
use crate::trade::Span;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Asking, Pick, Picker, SpanBar, body, choice_ui, link_ui, press_ui, remark};

/// What the time line keeps: the role that a part is being chosen for.
#[derive(Default)]
pub struct Roles {
    candidates: Option<CandidateList>,
    choosing: Option<(RoleId, Picker<PartId>)>,
    /// A part that wants a role without room for it.
    room: Option<Room>,
    new_role: Option<Kind>,
}

const NAME: f32 = 34.0 * GRID;
const PART: f32 = 68.0 * GRID;
/// Where there is no room for the time line, the acts have some of the part's.
const NARROW_PART: f32 = 48.0 * GRID;
const STAND: f32 = 20.0 * GRID;
const ACTS: f32 = 104.0 * GRID;

impl Roles {
    /// Draws the time line with its acts.
    pub fn ui(&mut self, ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
        let machine = &*answers.file;
        let spans: HashMap<PartId, Span> =
            answers.members.iter().filter_map(|part| Some((*part, view.answers.part(*part)?.making.span?))).collect();
        let bar = SpanBar::around(spans.values().copied(), machine.machine.window());
        let width = ui.available_width() - NAME - PART - STAND - ACTS;
        let bar = bar.filter(|_| width >= 30.0 * GRID);
        let part_width = if bar.is_some() { PART } else { NARROW_PART };
        if let Some(bar) = &bar {
            ui.horizontal(|ui| {
                ui.add_space(NAME + PART + STAND + 6.0 * GRID);
                bar.years_ui(ui, width);
            });
        }
        for fill in &answers.readiness.roles {
            let Some(role) = machine.roles.iter().find(|role| role.id == fill.role) else { continue };
            let parts =
                fill.fitted.iter().map(|part| (*part, true)).chain(fill.planned.iter().map(|part| (*part, false)));
            let mut first = true;
            for (part, is_fitted) in parts {
                let Some(file) = view.logbook.part(part) else { continue };
                let filled = Filled { machine, role, file, is_fitted, part_width };
                ui.push_id(part, |ui| {
                    ui.horizontal_wrapped(|ui| {
                        cell_ui(ui, NAME, |ui| {
                            if first {
                                role_name_ui(ui, role);
                            }
                        });
                        filled.part_ui(ui, view, outbox);
                        if let Some(bar) = &bar {
                            bar.ui(ui, &file.part.tag, spans.get(&part).copied(), width);
                        }
                        match filled.acts_ui(ui, first, view, outbox) {
                            Some(FilledAct::Room(room)) => self.room = Some(room),
                            Some(FilledAct::Another) => self.choose(role.id),
                            Some(FilledAct::Candidates) => self.show_candidates(role.id),
                            None => {}
                        }
                    });
                });
                first = false;
            }
            let filled = fill.fitted.len() + fill.planned.len();
            if filled < role.count.max(1) as usize {
                ui.push_id(role.id, |ui| {
                    ui.horizontal_wrapped(|ui| {
                        cell_ui(ui, NAME, |ui| {
                            if first {
                                role_name_ui(ui, role);
                            }
                        });
                        cell_ui(ui, part_width, |ui| nothing_ui(ui, role, filled == 0));
                        self.empty_ui(ui, machine, role, filled == 0, outbox);
                    });
                });
            }
            self.candidates_ui(ui, machine, role, view, outbox);
            if self.choosing.as_ref().is_some_and(|(choosing, _)| *choosing == role.id) {
                self.choose_ui(ui, machine, role, view, outbox);
            }
            if self.room.is_some_and(|room| room.role == role.id) {
                self.room_ui(ui, view, outbox);
            }
        }
        self.new_role_ui(ui, machine, outbox);
    }

    fn empty_ui(&mut self, ui: &mut Ui, machine: &MachineFile, role: &Role, is_empty: bool, outbox: &mut Outbox) {
        let name = text!("Choose for {role}…", role = acts::role_title(role));
        if named_link_ui(ui, text!("Choose a part…"), &name) {
            self.choose(role.id);
        }
        if candidates_link_ui(ui, role) {
            self.show_candidates(role.id);
        }
        if is_empty {
            let name = text!("Strike the role {role}", role = acts::role_title(role));
            if named_link_ui(ui, text!("Strike the role"), &name) {
                outbox.change(acts::drop_role(machine, role));
            }
            let word = if role.required { text!("May stay empty") } else { text!("Must be filled") };
            if link_ui(ui, word).clicked() {
                outbox.change(acts::change_role(machine, Role { required: !role.required, ..role.clone() }));
            }
        }
    }

    /// Shows the candidates of a role, or puts them away again.
    fn show_candidates(&mut self, role: RoleId) {
        self.choosing = None;
        let is_open = self.candidates.as_ref().is_some_and(|list| list.role == role);
        self.candidates = (!is_open).then(|| CandidateList::new(role));
    }

    /// Opens the choice of a part for a role, or puts it away again.
    fn choose(&mut self, role: RoleId) {
        self.room = None;
        self.candidates = None;
        self.choosing = match self.choosing.take() {
            Some((choosing, _)) if choosing == role => None,
            _ => Some((role, Picker::ready())),
        };
    }

    fn choose_ui(&mut self, ui: &mut Ui, machine: &MachineFile, role: &Role, view: &View<'_>, outbox: &mut Outbox) {
        let Some((_, picker)) = &mut self.choosing else { return };
        let picked = ui.horizontal_top(|ui| {
            ui.add_space(NAME);
            let asking = Asking::one(text!("Search the parts for this role"));
            ui.vertical(|ui| {
                ui.label(remark(ui, text!("Parts of this kind that are at hand; free ones first")));
                picker.ui(ui, asking, (view.logbook.revision, role.id), || candidates(machine, role, view))
            })
        });
        match picked.inner.inner {
            Some(Pick::One(part)) => {
                self.choosing = None;
                self.plan(machine, role, part, view, outbox);
            }
            Some(_) => self.choosing = None,
            None => {}
        }
    }

    /// Means a part for a role, or asks what is to make room for it.
    fn plan(&mut self, machine: &MachineFile, role: &Role, part: PartId, view: &View<'_>, outbox: &mut Outbox) {
        let room = Room { machine: machine.machine.id, role: role.id, part, is_plan: true };
        if room.is_short(view) {
            self.room = Some(room);
        } else if let Some(file) = view.logbook.part(part) {
            outbox.change(acts::plan(machine, role.id, file, view.today));
        }
    }

    /// The way to the candidates of a role, and once they are asked for, the candidates.
    fn candidates_ui(&mut self, ui: &mut Ui, machine: &MachineFile, role: &Role, view: &View<'_>, outbox: &mut Outbox) {
        let Some(list) = self.candidates.as_mut().filter(|list| list.role == role.id) else { return };
        let act = ui.horizontal_top(|ui| {
            ui.add_space(NAME);
            ui.vertical(|ui| list.ui(ui, machine, role, view, outbox)).inner
        });
        ui.add_space(4.0 * GRID);
        let act = act.inner;
        if let Some(act) = act {
            self.candidates = None;
            if let CandidateAct::Plan(part) = act {
                self.plan(machine, role, part, view, outbox);
            }
        }
    }

    fn room_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Some(room) = &self.room else { return };
        let act = ui.horizontal_top(|ui| {
            ui.add_space(NAME);
            ui.vertical(|ui| room.ui(ui, view)).inner
        });
        if let Some(act) = act.inner {
            if let RoomAct::Exchange(change) = act {
                outbox.change(change);
            }
            self.room = None;
        }
    }

    fn new_role_ui(&mut self, ui: &mut Ui, machine: &MachineFile, outbox: &mut Outbox) {
        ui.add_space(2.0 * GRID);
        ui.horizontal(|ui| {
            let mut kind = self.new_role.unwrap_or(Kind::SoundCard);
            let choices: Vec<(Kind, &str)> = Kind::ALL.iter().map(|kind| (*kind, kind.label())).collect();
            choice_ui(ui, text!("A further role"), &mut kind, &choices, 50.0 * GRID);
            self.new_role = Some(kind);
            if press_ui(ui, text!("Add the role"), "", None).clicked() {
                outbox.change(acts::add_role(machine, kind));
            }
        });
    }
}

fn cell_ui(ui: &mut Ui, width: f32, inside: impl FnOnce(&mut Ui)) {
    let height = 7.0 * GRID;
    let layout = egui::Layout::left_to_right(egui::Align::Center);
    ui.allocate_ui_with_layout(vec2(width, height), layout, |ui| {
        ui.set_width(width);
        inside(ui);
    });
}

fn role_name_ui(ui: &mut Ui, role: &Role) {
    let title = acts::role_title(role);
    let name = if role.count > 1 { format!("{} × {title}", role.count) } else { title };
    ui.add(egui::Label::new(body(name)).truncate());
}

/// What is said where no part, or no further one, fills a role.
fn nothing_ui(ui: &mut Ui, role: &Role, is_empty: bool) {
    let word = match (is_empty, role.required) {
        (true, true) => text!("nothing yet"),
        (true, false) => text!("nothing; it may stay empty"),
        (false, _) => text!("room for one more"),
    };
    let colour = if is_empty && role.required { ui.tokens().power_unknown } else { ui.tokens().ink_weak };
    ui.label(body(word).color(colour));
}

/// A part in a role.
struct Filled<'a> {
    machine: &'a MachineFile,
    role: &'a Role,
    file: &'a PartFile,
    is_fitted: bool,
    part_width: f32,
}

impl Filled<'_> {
    fn part_ui(&self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Self { machine, role, file, is_fitted, part_width } = self;
        cell_ui(ui, *part_width, |ui| {
            let line = format!("{}  {}", file.part.tag, view.logbook.title_of(file));
            let button = egui::Button::new(body(line).color(ui.tokens().press)).frame(false).truncate();
            if ui.add(button).on_hover_text(true_to_text(machine, file.part.id, view)).clicked() {
                outbox.go(Page::Part(file.part.id));
            }
        });
        cell_ui(ui, STAND, |ui| {
            let word = if *is_fitted { text!("fitted") } else { text!("planned") };
            let word = if role.kind == file.part.kind { word } else { text!("wrong kind") };
            ui.label(remark(ui, word));
        });
    }

    fn acts_ui(&self, ui: &mut Ui, is_first: bool, view: &View<'_>, outbox: &mut Outbox) -> Option<FilledAct> {
        let Self { machine, role, file, is_fitted, .. } = self;
        let tag = &file.part.tag;
        let another = |ui: &mut Ui| {
            let name = text!("Choose another than {tag}…", tag = tag);
            let another = named_link_ui(ui, text!("Another…"), &name).then_some(FilledAct::Another);
            // One way to the candidates is enough for a role of several parts.
            let candidates = is_first && candidates_link_ui(ui, role);
            another.or(candidates.then_some(FilledAct::Candidates))
        };
        if *is_fitted {
            // A part that sits inside another is taken out with it.
            let is_own = machine.fitted().any(|fitting| fitting.part == file.part.id);
            if is_own && named_link_ui(ui, text!("Take out"), &text!("Take out {tag}", tag = tag)) {
                outbox.change(acts::take_out(machine, file, view.today));
            }
            return if is_own { another(ui) } else { None };
        }
        let mut act = None;
        if named_link_ui(ui, text!("Fitted now"), &text!("{tag} is fitted now", tag = tag)) {
            let room = Room { machine: machine.machine.id, role: role.id, part: file.part.id, is_plan: false };
            if room.is_short(view) {
                act = Some(FilledAct::Room(room));
            } else {
                outbox.change(acts::fit(machine, Some(role.id), file, view.today));
            }
        }
        if named_link_ui(ui, text!("Not this one"), &text!("Plan {tag} no longer", tag = tag)) {
            outbox.change(acts::unplan(machine, file));
        }
        act.or(another(ui))
    }
}

/// What a part in a role leads to.
enum FilledAct {
    /// It wants room that is not there.
    Room(Room),
    /// Another is to be chosen.
    Another,
    /// All candidates are to be shown.
    Candidates,
}

/// The way to the candidates of a role.
fn candidates_link_ui(ui: &mut Ui, role: &Role) -> bool {
    let name = text!("Candidates for {role}…", role = acts::role_title(role));
    named_link_ui(ui, text!("Candidates…"), &name)
}

/// A short word to press whose accessible name says what it is about.
fn named_link_ui(ui: &mut Ui, word: &str, name: &str) -> bool {
    let response = link_ui(ui, word);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, name));
    response.clicked()
}

fn true_to_text(machine: &MachineFile, part: PartId, view: &View<'_>) -> String {
    let window = crate::assess::making::window(&machine.machine);
    match (window, view.answers.part(part)) {
        (Some(window), Some(answers)) => answers.making.true_to(window).said(),
        _ => text!("The machine has no window of dates.").to_owned(),
    }
}

/// Parts of the role's kind that are at hand and not in this machine: free ones first, then by how true they are to
/// the window, then by state.
fn candidates(machine: &MachineFile, role: &Role, view: &View<'_>) -> Vec<(PartId, String)> {
    let window = crate::assess::making::window(&machine.machine);
    let here: Vec<PartId> = machine.parts().into_iter().map(|(part, ..)| part).collect();
    let elsewhere: HashMap<PartId, &str> = view
        .logbook
        .machines
        .iter()
        .flat_map(|file| file.parts().into_iter().map(|(part, ..)| (part, file.machine.name.as_str())))
        .collect();
    let is_candidate = |file: &&std::sync::Arc<PartFile>| {
        file.part.kind == role.kind && file.custody_now().is_at_hand() && !here.contains(&file.part.id)
    };
    let mut found: Vec<_> = view
        .logbook
        .parts
        .iter()
        .filter(is_candidate)
        .filter_map(|file| Some((file, view.answers.part(file.part.id)?)))
        .map(|(file, answers)| {
            let true_to = window.map(|window| answers.making.true_to(window));
            let rank = match true_to {
                Some(TrueTo::Comfortable) | None => 0,
                Some(TrueTo::ByDesign { .. }) => 1,
                Some(TrueTo::NotKnown | TrueTo::Conflict) => 2,
                Some(TrueTo::Apart { weeks }) => 3 + weeks.unsigned_abs(),
            };
            let user = elsewhere.get(&file.part.id).copied();
            let mut words = vec![view.logbook.title_of(file), answers.state.label().to_lowercase()];
            words.extend(true_to.map(TrueTo::said));
            words.extend(user.map(|machine| text!("now in {machine}", machine = machine)));
            let line = format!("{}  {}", file.part.tag, words.join(", "));
            let order = (user.is_some(), rank, answers.state, file.part.tag.clone());
            (order, (file.part.id, line))
        })
        .collect();
    found.sort_by(|one, other| one.0.cmp(&other.0));
    found.into_iter().map(|(_, candidate)| candidate).collect()
}
