//! `what-if LOGBOOK TAG MACHINE`: the best proposal with this part in this machine, beside the best there is.
//!
//! Takes the same goals, pins and so on as `place`. JSON: `{"cost": 24, "proven": true, "proposal": {…}, "other_moves":
//! ["…", …]}`: what it costs against the best proposal, whether both are proven the best of their kind (else the cost
//! is that of the best found), the proposal with the part there as `place` tells it, and of its moves those that the
//! best proposal does not ask for.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::Which;
use super::place::{Form, Told, Wanted, left_until, standing};
use super::{Answer, as_json};
use crate::assess::placement::{ask, propose, what_if};
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
    other_moves: Vec<String>,
}

impl WhatIf {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let (part, machine) = (opened.part(&self.tag)?.part.id, opened.machine(&self.machine)?);
        let base = ask(&opened.logbook, &opened.answers, &opened.rules, self.wanted.ask(&opened)?)?;
        let end = self.wanted.end();
        let best = propose(&base, &left_until(end));
        let (asked, proposal) = what_if(&base, part, machine, &left_until(end))?;
        let cost = best.worth - proposal.worth;
        let proven = best.is_proven() && proposal.is_proven();
        let other: Vec<String> = proposal
            .moves
            .iter()
            .filter(|one| !best.moves.contains(one))
            .map(|one| one.sentence(&opened.logbook))
            .collect();
        if json {
            // What is next best is asked of `place`: here it would only keep waiting.
            let told = Told::of(&asked, proposal, std::time::Instant::now());
            return as_json(&WhatIfForm { cost, proven, proposal: told.form(&opened.logbook), other_moves: other });
        }
        let (part, machine) = (part_name(&opened.logbook, part), machine_name(&opened.logbook, machine));
        let mut lines = if proven {
            text!("{part} in {machine}: {cost} less than the best.", part = part, machine = machine, cost = cost)
        } else {
            let found = text!(
                "{part} in {machine}: {cost} less than the best found.",
                part = part,
                machine = machine,
                cost = cost
            );
            format!("{found}\n{}", standing(&proposal))
        };
        if other.is_empty() {
            let _ = write!(lines, "\n{}", text!("Nothing else has to be moved."));
        } else {
            let _ = write!(lines, "\n{}", text!("What would be moved otherwise:"));
            for one in other {
                let _ = write!(lines, "\n  - {one}");
            }
        }
        Ok(lines)
    }
}
