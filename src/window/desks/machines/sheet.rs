//! One machine's sheet: may power be applied, the next step, its gates with reasons, its parts on one time line.

use egui::{ScrollArea, Ui};

use super::acts;
use super::brief::{Brief, BriefAct};
use super::fit::HowItFits;
use super::gates::{gate_marks, gates_ui, next_ui, power_answer_ui};
use super::list::{left_text, window_text};
use super::power_on::PowerOnForm;
use super::roles::Roles;
use crate::assess::{MachineAnswers, Readiness, Standing};
use crate::record::{Change, MachineFile, MachineId, Word};
use crate::text;
use crate::window::command::Command;
use crate::window::forms::{Faults, Faulty, Owner, ProofAct, ProofForm};
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::photographs::strip_ui;
use crate::window::taking_in::Ways;
use crate::window::theme::GRID;
use crate::window::widgets::{body, first_ui, gate_strip_ui, link_ui, press_ui, remark, section_ui, strong};

/// From this width on, points, the answer about power and the gates stand side by side.
const TWO_COLUMNS: f32 = 180.0 * GRID;

/// What the sheet keeps.
pub struct Sheet {
    machine: MachineId,
    brief: Option<Brief>,
    fit: HowItFits,
    roles: Roles,
    power_on: Option<PowerOnForm>,
    proof: Option<ProofForm>,
    faults: Faults,
    ways: Ways,
}

impl Sheet {
    /// The sheet of a machine, nothing typed yet.
    pub fn new(machine: MachineId) -> Self {
        Self {
            machine,
            brief: None,
            fit: HowItFits::default(),
            roles: Roles::default(),
            power_on: None,
            proof: None,
            faults: Faults::default(),
            ways: Ways::default(),
        }
    }

    /// Whose sheet it is.
    pub fn machine(&self) -> MachineId {
        self.machine
    }

    /// Whether files that come in belong to the proof that is filled in.
    pub fn takes_files(&self) -> bool {
        self.proof.is_some()
    }

    /// Whether a file of this content goes with the proof that is filled in.
    pub fn holds(&self, content: &str) -> bool {
        self.proof.as_ref().is_some_and(|form| form.holds(content))
    }

    /// Takes files that were copied into the logbook for the proof that is filled in.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        if let Some(form) = &mut self.proof {
            form.kept(files);
        }
    }

    /// Draws the sheet.
    pub fn ui(&mut self, ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
        let MachineAnswers { file, readiness, .. } = answers;
        ScrollArea::vertical().id_salt(("machine", self.machine)).auto_shrink(false).show(ui, |ui| {
            ui.horizontal(|ui| {
                if link_ui(ui, text!("All machines")).clicked() {
                    outbox.give(Command::Go(Page::Machines));
                }
            });
            self.head_ui(ui, file, view, outbox);
            ui.add_space(3.0 * GRID);
            gate_strip_ui(ui, &gate_marks(readiness));
            ui.add_space(2.0 * GRID);
            if ui.available_width() < TWO_COLUMNS {
                power_answer_ui(ui, &readiness.power, view, outbox);
                ui.add_space(2.0 * GRID);
                way_ui(ui, readiness, view, outbox);
            } else {
                ui.columns(2, |columns| {
                    power_answer_ui(&mut columns[0], &readiness.power, view, outbox);
                    way_ui(&mut columns[1], readiness, view, outbox);
                });
            }
            self.fit.ui(ui, answers, view, outbox);
            section_ui(ui, text!("Photographs"));
            strip_ui(ui, view, &file.photos, outbox);
            self.ways.ui(ui, Page::Machine(self.machine), view, outbox);
            section_ui(ui, text!("Parts, and when they were made"));
            self.roles.ui(ui, answers, view, outbox);
            self.proofs_ui(ui, answers, view, outbox);
            self.power_ons_ui(ui, answers, view, outbox);
            section_ui(ui, text!("Faults looked for"));
            let of = Faulty { part: None, machine: Some(self.machine), name: &file.machine.name, cases: &file.cases };
            self.faults.ui(ui, of, view, outbox);
            ui.add_space(8.0 * GRID);
        });
    }

    fn head_ui(&mut self, ui: &mut Ui, file: &MachineFile, view: &View<'_>, outbox: &mut Outbox) {
        let machine = &file.machine;
        if let Some(brief) = &mut self.brief {
            let taken =
                |name: &str| view.logbook.machine_named(name).is_some_and(|other| other.machine.id != machine.id);
            match brief.ui(ui, taken) {
                Some(BriefAct::Keep(changed)) => {
                    if changed != *machine {
                        outbox.change(acts::change_brief(changed));
                    }
                    self.brief = None;
                }
                Some(BriefAct::PutAway) => self.brief = None,
                None => {}
            }
            return;
        }
        ui.horizontal_wrapped(|ui| {
            first_ui(ui, &machine.name);
            if link_ui(ui, text!("Change the brief…")).clicked() {
                self.brief = Some(Brief::of(machine));
            }
        });
        if !machine.purpose.is_empty() {
            ui.label(body(&machine.purpose));
        }
        let mut facts = vec![machine.standing.label().to_owned()];
        let window = window_text(file);
        if !window.is_empty() {
            facts.insert(0, text!("Parts {window}", window = window));
        }
        if machine.priority > 0 {
            facts.push(text!("rank {rank}", rank = machine.priority));
        }
        ui.label(remark(ui, facts.join(" · ")));
        if !machine.note.is_empty() {
            ui.label(remark(ui, &machine.note));
        }
    }

    fn proofs_ui(&mut self, ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
        let MachineAnswers { file, readiness, .. } = answers;
        section_ui(ui, text!("Proofs of the whole machine"));
        for proof in &readiness.proofs {
            let title = crate::text::say(&proof.rule.say);
            ui.horizontal_wrapped(|ui| {
                ui.label(body(title));
                ui.label(remark(ui, standing_text(proof.standing)));
                let name = text!("Record {proof}", proof = title);
                let record = link_ui(ui, text!("Record it…"));
                record.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
                if record.clicked() {
                    self.proof = Some(ProofForm::new(&proof.rule, Owner::machine(file.machine.id), view));
                }
            });
        }
        let Some(form) = &mut self.proof else { return };
        match form.ui(ui, Owner::machine(file.machine.id), view, outbox) {
            Some(ProofAct::Keep(proof, beside)) => {
                let mut change = Change::new(text!("Prove {machine}", machine = file.machine.name));
                change.put(*proof).put_all(beside);
                outbox.change(change);
                self.proof = None;
            }
            Some(ProofAct::PutAway) => self.proof = None,
            None => {}
        }
    }

    fn power_ons_ui(&mut self, ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
        let MachineAnswers { file, readiness, .. } = answers;
        section_ui(ui, text!("Power-ons"));
        if file.power_ons.is_empty() {
            ui.label(remark(ui, text!("Power was never applied, as far as the log says.")));
        }
        for event in file.power_ons.iter().rev() {
            ui.horizontal_wrapped(|ui| {
                ui.label(strong(event.switched.on.to_string()));
                ui.label(body(event.result.label()));
                ui.label(body(&event.happened));
                ui.label(remark(ui, &event.who));
            });
        }
        match &mut self.power_on {
            Some(form) => {
                if form.ui(ui, file, readiness.power.verdict, view, outbox) {
                    self.power_on = None;
                }
            }
            None => {
                if press_ui(ui, text!("Note a power-on…"), "", None).clicked() {
                    self.power_on = Some(PowerOnForm::new(file, view));
                }
            }
        }
    }
}

/// The next step, what is left, and the gates with their reasons.
fn way_ui(ui: &mut Ui, readiness: &Readiness, view: &View<'_>, outbox: &mut Outbox) {
    next_ui(ui, readiness, view, outbox);
    ui.label(remark(ui, left_text(readiness)));
    ui.add_space(2.0 * GRID);
    gates_ui(ui, readiness, view, outbox);
}

/// How a proof stands, in a few words.
pub fn standing_text(standing: Standing) -> String {
    match standing {
        Standing::NeverRun => text!("never run").to_owned(),
        Standing::Undecided => text!("undecided").to_owned(),
        Standing::Failed => text!("failed").to_owned(),
        Standing::OutOfBounds { .. } => text!("a figure is out of its limits").to_owned(),
        Standing::InFuture => text!("dated after today").to_owned(),
        Standing::Voided { .. } => text!("voided by later work").to_owned(),
        Standing::Repaired { .. } => text!("failed, worked on since").to_owned(),
        Standing::Changed { .. } => text!("parts were changed since").to_owned(),
        Standing::Stale { since: Some(day) } => text!("too old since {day}", day = day),
        Standing::Stale { since: None } => text!("too old").to_owned(),
        Standing::Good { until: Some(day) } => text!("good until {day}", day = day),
        Standing::Good { until: None } => text!("good").to_owned(),
    }
}
