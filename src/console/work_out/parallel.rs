//! `work-out parallel 1000:30 1000:30`: capacitors side by side, microfarads and milliohm each.
//!
//! JSON: `{"capacitance_uf": 2000.0, "esr_mohm": 15.0}`.

use anyhow::{Context as _, anyhow};
use clap::Args;
use serde::Serialize;

use super::capacitor::short;
use super::figure;
use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::esr::{Member, parallel};

#[derive(Args)]
pub struct Parallel {
    #[arg(value_name = "UF:MOHM", required = true, help = text!("Capacitance and series resistance of each"))]
    members: Vec<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    capacitance_uf: f64,
    esr_mohm: f64,
}

impl Parallel {
    pub fn answer(&self, json: bool) -> Answer {
        let members = self.members.iter().map(|typed| member(typed)).collect::<anyhow::Result<Vec<_>>>()?;
        let Member { capacitance_uf, esr_mohm } =
            parallel(&members).context(text!("capacitance and resistance must be above 0"))?;
        if json {
            return as_json(&Form { capacitance_uf, esr_mohm });
        }
        Ok(text!("{uf} µF, {mohm} mΩ", uf = short(capacitance_uf), mohm = short(esr_mohm)))
    }
}

fn member(typed: &str) -> anyhow::Result<Member> {
    let (uf, mohm) = typed
        .split_once(':')
        .ok_or_else(|| anyhow!(text!("“{text}” is not microfarads:milliohm, such as 1000:30", text = typed)))?;
    Ok(Member { capacitance_uf: figure(uf)?, esr_mohm: figure(mohm)? })
}
