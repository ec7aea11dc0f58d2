//! `offer LOGBOOK KIND [--connector [needs:|offers:]ID[=COUNT]]… [--figure NAME=VALUE]… [--made DATE]`: have I one,
//! which machine lacks it, and what would it improve, by how much.
//!
//! JSON: `{"kind": "sound_card", "have": [{"part": "0042", "state": "sound", "machine": null}, …], "lacking": [use, …],
//! "improves": [use, …]}`. A use is `{"machine": "Orla", "role": "Sound card", "replaces": "0017", "with": null, "required": true,
//! "verdict": "fits", "gains": ["runs at 133.3 MHz instead of 100 MHz"], "because": [because, …]}`, with `because` as in
//! `fit`, of those reasons that speak against it; `replaces` is null where the role has room; `with` is
//! the adapter on the shelf that it needs to plug in.

use std::fmt::Write as _;

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use super::fit::{BecauseForm, mark};
use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::PartState;
use crate::assess::fit::Verdict;
use crate::assess::offer::{Offer, Offered, Use};
use crate::assess::reason::{machine_name, role_name};
use crate::record::{Kind, PartId};
use crate::text;

#[derive(Args)]
pub struct OfPart {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("What is offered: sound_card, “Sound card”"))]
    kind: String,
    #[arg(long, value_name = "ID", help = text!("A connector that it has, as `work-out connector` lists them: simm-72, simm-72=4, offers:pga-132"))]
    connector: Vec<String>,
    #[arg(long, value_name = "NAME=VALUE", help = text!("A figure that is told of it: core_clock_mhz=133"))]
    figure: Vec<String>,
    #[arg(long, value_name = "YEAR", default_value = "", help = text!("When it was made"))]
    made: String,
}

#[derive(Serialize)]
struct Form {
    kind: Kind,
    have: Vec<HaveForm>,
    lacking: Vec<UseForm>,
    improves: Vec<UseForm>,
}

#[derive(Serialize)]
struct HaveForm {
    part: String,
    state: PartState,
    machine: Option<String>,
}

#[derive(Serialize)]
struct UseForm {
    machine: String,
    role: String,
    replaces: Option<String>,
    with: Option<String>,
    required: bool,
    verdict: Verdict,
    gains: Vec<String>,
    because: Vec<BecauseForm>,
}

impl OfPart {
    pub fn answer(&self, json: bool) -> Answer {
        let mut opened = self.which.open()?;
        let read = Offered::read(&self.kind, &self.connector, &self.figure, &self.made, &opened.rules.connectors);
        let offered = read.map_err(|wrong| anyhow!(wrong))?;
        let offer = offered.answer(&opened.logbook, &opened.answers, &opened.rules);
        // Sentences name the offered part too.
        opened.logbook = offer.logbook.clone();
        if json { as_json(&form(&offered, &offer, &opened)) } else { Ok(in_words(&offer, &opened)) }
    }
}

fn tag(part: PartId, opened: &Opened) -> String {
    opened.logbook.part(part).map_or_else(String::new, |file| file.part.tag.clone())
}

fn form(offered: &Offered, offer: &Offer, opened: &Opened) -> Form {
    let of_use = |one: &Use| UseForm {
        machine: machine_name(&opened.logbook, one.machine),
        role: role_name(&opened.logbook, one.machine, one.role),
        replaces: one.replaces.map(|part| tag(part, opened)),
        with: one.with.map(|part| tag(part, opened)),
        required: one.is_required,
        verdict: one.verdict,
        gains: one.gains.iter().map(|gain| gain.said()).collect(),
        because: one.because.iter().map(|because| BecauseForm::of(because, opened)).collect(),
    };
    let have = offer.have.iter().map(|have| HaveForm {
        part: tag(have.part, opened),
        state: have.state,
        machine: have.machine.map(|machine| machine_name(&opened.logbook, machine)),
    });
    Form {
        kind: offered.kind,
        have: have.collect(),
        lacking: offer.lacking.iter().map(of_use).collect(),
        improves: offer.improves.iter().map(of_use).collect(),
    }
}

fn in_words(offer: &Offer, opened: &Opened) -> String {
    let mut lines = offer.summary();
    for have in &offer.have {
        let _ = write!(lines, "\n  {}", have.said(&opened.logbook));
    }
    for one in offer.lacking.iter().chain(&offer.improves) {
        let _ = write!(lines, "\n{}", one.said(&opened.logbook));
        for because in &one.because {
            let sentence = because.sentence(&opened.logbook, &opened.rules);
            let _ = write!(lines, "\n  {} {sentence}", mark(because.verdict()));
        }
    }
    lines
}
