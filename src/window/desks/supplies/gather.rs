//! Gathering a kit: over what, which positions, and what it would be, before anything is written.

use std::sync::Arc;

use egui::{ScrollArea, Ui};

use crate::assess::kits::acts::draft;
use crate::assess::kits::{self, LeftOut, PATIENCE, Proposal, Scope, Which};
use crate::record::{Change, Entry, KitId, Logbook, MachineId, Moment, PartId};
use crate::window::background::Background;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Asking, Pick, Picker, body, field_ui, press_if_ui, press_ui, remark, section_ui, small};
use crate::{counted, text};

/// The parts that the kit is gathered over.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Over {
    #[default]
    Everything,
    Machine(MachineId),
    Part(PartId),
}

/// Which positions are meant.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Meant {
    #[default]
    Bad,
    Wet,
    All,
    Series,
}

/// What came of gathering.
#[derive(Clone, Copy, Debug)]
pub enum Gathered {
    Kept(KitId),
    PutAway,
}

/// What is asked for.
#[derive(Default)]
pub struct Gather {
    over: Over,
    picking: Picker<Over>,
    meant: Meant,
    series: String,
    proposal: Background<(u64, u64, Over, Which), Proposal>,
}

/// Up to this many parts, a kit is worked out between two frames.
const AT_ONCE: usize = 300;

impl Gather {
    fn scope(&self) -> Scope {
        match self.over {
            Over::Everything => Scope::All,
            Over::Machine(machine) => Scope::Machine(machine),
            Over::Part(part) => Scope::Part(part),
        }
    }

    fn which(&self) -> Which {
        match self.meant {
            Meant::Bad => Which::Bad,
            Meant::Wet => Which::Wet,
            Meant::All => Which::All,
            Meant::Series => Which::Series(self.series.trim().to_owned()),
        }
    }

    /// Draws the form; what was done with it.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) -> Option<Gathered> {
        let (mut keep, mut away) = (false, false);
        section_ui(ui, text!("Gather a kit"));
        self.asked_ui(ui, view);
        let (scope, which) = (self.scope(), self.which());
        let key = (view.logbook.revision, view.rules.version, self.over, which.clone());
        let (logbook, rules) = (Arc::clone(view.logbook), Arc::clone(view.rules));
        let is_small = !matches!(scope, Scope::All) || view.logbook.parts.len() <= AT_ONCE;
        let asked = scope.clone();
        let proposal = self.proposal.get(key, ui.ctx(), is_small, {
            let which = which.clone();
            move || kits::gather(&logbook, &rules, &asked, &which, PATIENCE)
        });
        let Some(proposal) = proposal else {
            ui.label(body(text!("Gathering…")));
            return None;
        };
        ui.add_space(GRID);
        ui.horizontal(|ui| {
            let tooltip = text!("Writes the kit as a draft; nothing is reserved yet");
            keep = press_if_ui(ui, !proposal.lines.is_empty(), text!("Keep it as a draft"), tooltip, None).clicked();
            away = press_ui(ui, text!("Put it away"), "", None).clicked();
        });
        proposal_ui(ui, &proposal, view.logbook);
        if keep {
            let said = format!("{}, {}", scope.said(view.logbook), which.said());
            let name = text!("Kit for {scope}", scope = scope.said(view.logbook));
            let (change, kit) = kept(&proposal, view, name, &said);
            outbox.change(change);
            return Some(Gathered::Kept(kit));
        }
        away.then_some(Gathered::PutAway)
    }

    fn asked_ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        let said = match self.over {
            Over::Everything => text!("everything").to_owned(),
            _ => self.scope().said(view.logbook),
        };
        ui.label(body(text!("Over: {scope}", scope = said)));
        let choices = || {
            let machines =
                view.logbook.machines.iter().map(|of| (Over::Machine(of.machine.id), of.machine.name.clone()));
            let parts = view.index.rows.iter().filter(|row| !row.answers().file.capacitors.is_empty());
            let parts = parts.map(|row| (Over::Part(row.id), format!("{}  {}", row.tag, row.what)));
            std::iter::once((Over::Everything, text!("Everything").to_owned())).chain(machines).chain(parts)
        };
        let asking = Asking { label: text!("Over which part or machine"), new_word: None, shows_all: false };
        if let Some(Pick::One(over)) = self.picking.ui(ui, asking, view.logbook.revision, choices) {
            self.over = over;
        }
        ui.horizontal_wrapped(|ui| {
            for (meant, label) in [
                (Meant::Bad, text!("Those to be replaced")),
                (Meant::Wet, text!("All wet aluminium")),
                (Meant::Series, text!("One series")),
                (Meant::All, text!("All that are as logged")),
            ] {
                ui.selectable_value(&mut self.meant, meant, label);
            }
        });
        if self.meant == Meant::Series {
            field_ui(ui, text!("Series as printed"), &mut self.series, Some(40.0 * GRID));
        }
    }
}

/// The change that keeps a proposal as a draft, and the kit's key.
pub fn kept(proposal: &Proposal, view: &View<'_>, name: String, scope: &str) -> (Change, KitId) {
    let at = Moment::on(view.today);
    let entries = draft(proposal, view.logbook, &name, scope, at, &mut uuid::Uuid::now_v7);
    let kit = entries.iter().find_map(|entry| match entry {
        Entry::Kit(kit) => Some(kit.id),
        _ => None,
    });
    let mut change = Change::new(text!("Gather kit {name}", name = name));
    change.put_all(entries);
    (change, kit.unwrap_or_else(|| KitId::from_uuid(uuid::Uuid::nil())))
}

/// What a kit would be.
fn proposal_ui(ui: &mut Ui, proposal: &Proposal, logbook: &Logbook) {
    let positions = counted!("{count} position", "{count} positions", proposal.positions.len());
    let lines = counted!("{count} line", "{count} lines", proposal.lines.len());
    let mut said = text!("{lines} for {positions}", lines = lines, positions = positions);
    if proposal.is_best && !proposal.lines.is_empty() {
        said += text!("; fewer are not possible");
    } else if !proposal.is_best {
        said += &text!("; no kit has fewer than {least}", least = proposal.least_lines);
    }
    ui.label(body(said));
    ScrollArea::vertical().id_salt("proposal").auto_shrink(false).show(ui, |ui| {
        for line in &proposal.lines {
            let mut words = text!("{count} × {what}", count = line.pieces(), what = line.spec.said());
            if line.from_stock > 0 {
                words += &text!("; {count} of them in stock", count = line.from_stock);
            }
            ui.label(body(words));
        }
        left_out_ui(ui, &proposal.left_out, logbook);
    });
}

fn left_out_ui(ui: &mut Ui, left_out: &[LeftOut], logbook: &Logbook) {
    if left_out.is_empty() {
        return;
    }
    let mut reasons: Vec<(String, usize)> = Vec::new();
    for one in left_out {
        let said = one.why.sentence(logbook);
        match reasons.iter_mut().find(|(known, _)| *known == said) {
            Some((_, count)) => *count += 1,
            None => reasons.push((said, 1)),
        }
    }
    ui.add_space(GRID);
    for (why, count) in reasons {
        let positions = counted!("{count} position", "{count} positions", count);
        let line = text!("Left out, {positions}: {why}", positions = positions, why = why);
        ui.label(small(line).color(ui.tokens().power_unknown));
    }
    ui.label(remark(ui, text!("The console’s `kit` names each of them.")));
}
