//! `kit LOGBOOK [--part TAG | --machine NAME | --all] [--bad-only | --wet | --series S]`: capacitor positions gathered
//! into as few order lines as the rules of substitution allow.
//!
//! How lines are chosen stands at the head of `assess::kits`. Nothing is written. Positions that an unfinished kit
//! serves already are left out.
//!
//! JSON: `{"scope": "0042", "which": "bad ones", "lines": [{"uf": 1000, "volts": 16, "celsius": 105, "diameter_mm": 8,
//! "height_mm": 12, "pitch_mm": null, "dielectric": "wet_aluminium", "mounting": "radial", "low_esr": true, "material":
//! null, "from_stock": 0, "to_buy": 7, "spares": 1, "positions": [{"id": "…", "part": "0042", "designator": "C12"},
//! …], "why": [{"positions": ["0042 C12", …], "reasons": ["…", …]}, …]}, …], "least_lines": 3, "in_stock": 1, "best":
//! true, "left_out": [{"id": "…", "part": "0042", "designator": "C3", "why": "…"}, …]}`. `material` names what of the
//! stock a line is; `least_lines` is what no kit of these positions goes below; `in_stock` counts lines that are in
//! stock already; `best` says that no kit has fewer lines, and none of so few has more of them in stock.

use std::collections::HashMap;
use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which as Logbook};
use super::{Answer, as_json};
use crate::assess::kits::{self, Line, PATIENCE, Proposal, Scope, Which, allowed};
use crate::record::{CapacitorId, Dielectric, Mounting, PartId};
use crate::{counted, text};

#[derive(Args)]
pub struct Kit {
    #[command(flatten)]
    logbook: Logbook,
    #[arg(long, value_name = "TAG", conflicts_with = "machine", help = text!("Only positions of this part"))]
    part: Option<String>,
    #[arg(long, value_name = "NAME", help = text!("Only positions of this machine’s parts"))]
    machine: Option<String>,
    #[arg(long, conflicts_with_all = ["part", "machine"], help = text!("Every part; what is done when none is named"))]
    all: bool,
    #[arg(long, conflicts_with_all = ["wet", "series"], help = text!("Only positions that have to be replaced"))]
    bad_only: bool,
    #[arg(long, conflicts_with = "series", help = text!("Only wet aluminium that is still as logged"))]
    wet: bool,
    #[arg(long, value_name = "SERIES", help = text!("Only this series as printed"))]
    series: Option<String>,
}

#[derive(Serialize)]
struct Form {
    scope: String,
    which: String,
    lines: Vec<LineForm>,
    least_lines: u32,
    in_stock: u32,
    best: bool,
    left_out: Vec<LeftOutForm>,
}

#[derive(Serialize)]
struct LineForm {
    uf: f64,
    volts: f64,
    celsius: Option<f64>,
    diameter_mm: Option<f64>,
    height_mm: Option<f64>,
    pitch_mm: Option<f64>,
    dielectric: Dielectric,
    mounting: Mounting,
    low_esr: bool,
    material: Option<String>,
    from_stock: u32,
    to_buy: u32,
    spares: u32,
    positions: Vec<PositionForm>,
    why: Vec<WhyForm>,
}

#[derive(Serialize)]
struct PositionForm {
    id: CapacitorId,
    part: String,
    designator: String,
}

#[derive(Serialize)]
struct WhyForm {
    positions: Vec<String>,
    reasons: Vec<String>,
}

#[derive(Serialize)]
struct LeftOutForm {
    id: CapacitorId,
    part: String,
    designator: String,
    why: String,
}

impl Kit {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.logbook.open()?;
        let scope = match (&self.part, &self.machine) {
            (Some(tag), _) => Scope::Part(opened.part(tag)?.part.id),
            (_, Some(name)) => Scope::Machine(opened.machine(name)?),
            _ => Scope::All,
        };
        let which = match &self.series {
            Some(series) => Which::Series(series.clone()),
            None if self.bad_only => Which::Bad,
            None if self.wet => Which::Wet,
            None => Which::All,
        };
        let proposal = kits::gather(&opened.logbook, &opened.rules, &scope, &which, PATIENCE);
        let told = Told::of(&opened);
        let form = told.form(&proposal, scope.said(&opened.logbook), which.said());
        if json { as_json(&form) } else { Ok(in_words(&form, &proposal)) }
    }
}

/// What positions are called.
struct Told<'o> {
    opened: &'o Opened,
    designators: HashMap<CapacitorId, &'o str>,
}

impl<'o> Told<'o> {
    fn of(opened: &'o Opened) -> Self {
        let all = opened.logbook.parts.iter().flat_map(|file| &file.capacitors);
        Self { opened, designators: all.map(|one| (one.position.id, one.position.designator.as_str())).collect() }
    }

    fn position(&self, part: PartId, id: CapacitorId) -> PositionForm {
        let part = self.opened.logbook.part(part).map_or_else(String::new, |file| file.part.tag.clone());
        let designator = self.designators.get(&id).map_or_else(String::new, |name| (*name).to_owned());
        PositionForm { id, part, designator }
    }

    fn form(&self, proposal: &Proposal, scope: String, which: String) -> Form {
        let left_out = proposal.left_out.iter().map(|one| {
            let PositionForm { id, part, designator } = self.position(one.part, one.capacitor);
            LeftOutForm { id, part, designator, why: one.why.sentence(&self.opened.logbook) }
        });
        Form {
            scope,
            which,
            lines: proposal.lines.iter().map(|line| self.line(line, proposal)).collect(),
            least_lines: proposal.least_lines,
            in_stock: proposal.in_stock,
            best: proposal.is_best,
            left_out: left_out.collect(),
        }
    }

    fn line(&self, line: &Line, proposal: &Proposal) -> LineForm {
        let Line { spec, material, from_stock, to_buy, spares, positions } = line;
        let known = material.and_then(|id| self.opened.logbook.material(id));
        let mut why: Vec<(u32, WhyForm)> = Vec::new();
        let mut forms = Vec::new();
        for position in positions.iter().map(|at| &proposal.positions[*at as usize]) {
            let form = self.position(position.part, position.capacitor);
            let name = format!("{} {}", form.part, form.designator);
            forms.push(form);
            if let Some((_, known)) = why.iter_mut().find(|(demand, _)| *demand == position.demand) {
                known.positions.push(name);
            } else {
                let reasons = allowed(&proposal.demands[position.demand as usize], spec).unwrap_or_default();
                let reasons = reasons.iter().map(|reason| reason.sentence(&self.opened.rules)).collect();
                why.push((position.demand, WhyForm { positions: vec![name], reasons }));
            }
        }
        LineForm {
            uf: spec.uf,
            volts: spec.volts,
            celsius: spec.celsius,
            diameter_mm: spec.diameter_mm,
            height_mm: spec.height_mm,
            pitch_mm: spec.pitch_mm,
            dielectric: spec.dielectric,
            mounting: spec.mounting,
            low_esr: spec.low_esr,
            material: known.map(|known| known.name.clone()),
            from_stock: *from_stock,
            to_buy: *to_buy,
            spares: *spares,
            positions: forms,
            why: why.into_iter().map(|(_, why)| why).collect(),
        }
    }
}

fn in_words(form: &Form, proposal: &Proposal) -> String {
    let mut lines = if form.lines.is_empty() {
        text!("No position asks for a kit.").to_owned()
    } else {
        let served = counted!("{count} position", "{count} positions", proposal.positions.len());
        counted!("{count} line", "{count} lines", form.lines.len()) + &text!(" for {positions}:", positions = served)
    };
    if !form.best {
        let more = text!(
            "Looking was broken off: {lines} lines were found, and no kit has fewer than {least}.",
            lines = form.lines.len(),
            least = form.least_lines
        );
        let _ = write!(lines, "\n{more}");
    }
    for (line, told) in proposal.lines.iter().zip(&form.lines) {
        let _ = write!(lines, "\n{} × {}", line.pieces(), line.spec.said());
        if let Some(material) = told.material.as_ref().filter(|_| line.from_stock > 0) {
            let _ = write!(
                lines,
                "\n    {}",
                text!("{count} from stock: {material}", count = line.from_stock, material = material)
            );
        }
        if line.to_buy > 0 {
            let said = text!("{count} to buy, and {spares} to spare", count = line.to_buy, spares = line.spares);
            let _ = write!(lines, "\n    {said}");
        }
        for why in &told.why {
            let _ = write!(lines, "\n    {}: {}", why.positions.join(", "), why.reasons.join("; "));
        }
    }
    if !form.left_out.is_empty() {
        let _ = write!(lines, "\n{}", text!("Left out:"));
    }
    for LeftOutForm { part, designator, why, .. } in &form.left_out {
        let _ = write!(lines, "\n  {part} {designator}: {why}");
    }
    lines
}
