//! `what-if LOGBOOK TAG MACHINE`: the best proposal with this part in this machine, beside the best there is.
//!
//! Takes the same goals, pins and so on as `place`; what is pinned may touch a machine past its tests. JSON: `{"cost": 24,
//! "proven": true, "proposal": {…}, "other_moves": […], "anyhow": […], "no_longer": […]}`: what it costs against the best
//! proposal, whether both are proven the best of their kind (else the cost is that of the best found), the proposal with
//! the part there as `place` tells it, and of its moves, told as `place` does, those that follow from it alone, those that
//! the best proposal makes anyhow, and those of the best proposal that are no longer made.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::Which;
use super::place::{Form, MoveForm, Told, Wanted, left_until, standing};
use super::{Answer, as_json};
use crate::assess::placement::{Consequences, Move, ask, propose, what_if};
use crate::assess::reason::{machine_name, part_name};
use crate::text;

#[derive(Args)]
pub struct WhatIf {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("The part's tag"))]
    tag: String,
    #[arg(help = text!("The machine's name"))]
    machine: String,
    #[command(flatten)]
    wanted: Wanted,
}

#[derive(Serialize)]
struct WhatIfForm {
    cost: i64,
    proven: bool,
    proposal: Form,
    other_moves: Vec<MoveForm>,
    anyhow: Vec<MoveForm>,
    no_longer: Vec<MoveForm>,
}

impl WhatIf {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let (part, machine) = (opened.part(&self.tag)?.part.id, opened.machine(&self.machine)?);
        let base = ask(&opened.logbook, &opened.answers, &opened.rules, self.wanted.ask(&opened)?)?;
        let end = self.wanted.end();
        let best = propose(&base, &left_until(end));
        let (asked, proposal) = what_if((&base, &best), part, machine, &left_until(end))?;
        let cost = best.worth - proposal.worth;
        let proven = best.is_proven() && proposal.is_proven();
        let Consequences { only, anyhow, no_longer } = Consequences::of(&proposal, &best);
        if json {
            let forms = |moves: &[Move]| moves.iter().map(|one| MoveForm::of(one, &asked)).collect();
            let (other_moves, anyhow, no_longer) = (forms(&only), forms(&anyhow), forms(&no_longer));
            // What is next best is asked of `place`: here it would only keep waiting.
            let proposal = Told::of(&asked, proposal, std::time::Instant::now()).form(&opened.logbook);
            return as_json(&WhatIfForm { cost, proven, proposal, other_moves, anyhow, no_longer });
        }
        let (part, machine) = (part_name(&opened.logbook, part), machine_name(&opened.logbook, machine));
        let mut lines = match (proven, cost) {
            (true, cost) if cost < 0 => {
                text!("{part} in {machine}: {more} more than the best.", part = part, machine = machine, more = -cost)
            }
            (true, cost) => {
                text!("{part} in {machine}: {cost} less than the best.", part = part, machine = machine, cost = cost)
            }
            (false, cost) => {
                let found = text!(
                    "{part} in {machine}: {cost} less than the best found.",
                    part = part,
                    machine = machine,
                    cost = cost
                );
                format!("{found}\n{}", standing(&proposal))
            }
        };
        if only.is_empty() && no_longer.is_empty() {
            let _ = write!(lines, "\n{}", text!("Nothing else has to be moved."));
        }
        let mut section = |title: &str, moves: &[Move]| {
            if !moves.is_empty() {
                let _ = write!(lines, "\n{title}");
            }
            for one in moves {
                let _ = write!(lines, "\n  - {}", one.told(&asked));
            }
        };
        section(text!("What would be moved otherwise:"), &only);
        section(text!("What would no longer be moved:"), &no_longer);
        Ok(lines)
    }
}
