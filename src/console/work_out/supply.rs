//! `work-out supply --atx 5=4.93 12=11.8 | --at … [--load …] [--ripple …] [--label ID] [--power-good MS] [--pins]`.
//!
//! JSON: `standard`, `verdict` (the worst of all), `rails`, `foreign` (rails that the standard does not have),
//! `power_good`, `load_faults` against a label, and `pins` where asked for. A negative rail is typed `minus12=-11.9`,
//! since an argument that starts with a hyphen is an option.

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::supply::{
    LoadFault, PlugPin, PowerGood, PowerGoodVerdict, Rail, RailReading, RailVerdict, Signal, Standard, Verdict,
    at_pinout, atx_pinout, judge, judge_power_good, labels, load_faults, parse_pairs,
};

#[derive(Args)]
pub struct Supply {
    #[arg(long, value_name = "RAIL=VOLTS", num_args = 1.., required_unless_present_any = ["at", "pins"], conflicts_with = "at", help = text!("Readings of an ATX supply, such as 5=4.93 12=11.8 minus12=-11.9"))]
    atx: Vec<String>,
    #[arg(long, value_name = "RAIL=VOLTS", num_args = 1.., help = text!("Readings of an AT supply"))]
    at: Vec<String>,
    #[arg(long, value_name = "RAIL=AMPERES", num_args = 1.., help = text!("The load that the readings were taken at"))]
    load: Vec<String>,
    #[arg(long, value_name = "RAIL=MILLIVOLTS", num_args = 1.., help = text!("Ripple, peak to peak"))]
    ripple: Vec<String>,
    #[arg(long, value_name = "ID", requires = "load", help = text!("A published label to hold the load against"))]
    label: Option<String>,
    #[arg(long, value_name = "MS", help = text!("Delay of power-good in ms"))]
    power_good: Option<String>,
    #[arg(long, value_name = "PLUG", num_args = 0..=1, default_missing_value = "atx", help = text!("Print the board plug's contacts: atx or at"))]
    pins: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    standard: Standard,
    #[serde(skip_serializing_if = "Option::is_none")]
    verdict: Option<Verdict>,
    rails: Vec<RailVerdict>,
    foreign: Vec<Rail>,
    power_good: Vec<PowerGoodVerdict>,
    load_faults: Vec<LoadFault>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pins: Vec<PlugPin>,
}

impl Supply {
    pub fn answer(&self, json: bool) -> Answer {
        let form = self.form()?;
        if json { as_json(&form) } else { Ok(form.said()) }
    }

    fn form(&self) -> anyhow::Result<Form> {
        let load = pairs(&self.load)?;
        let ripple = pairs(&self.ripple)?;
        let on = |list: &[(Rail, f64)], rail| list.iter().find(|(key, _)| *key == rail).map(|(_, value)| *value);
        let typed = if self.at.is_empty() { &self.atx } else { &self.at };
        let readings: Vec<RailReading> = pairs(typed)?
            .into_iter()
            .map(|(rail, volts)| RailReading { rail, volts, ripple_mvpp: on(&ripple, rail), load_a: on(&load, rail) })
            .collect();
        let pins = match self.pins.as_deref() {
            None => Vec::new(),
            Some("atx") => atx_pinout(),
            Some("at") => at_pinout(),
            Some(other) => return Err(anyhow!(text!("\"{plug}\" is no plug: atx or at", plug = other))),
        };
        let is_at = !self.at.is_empty() || self.pins.as_deref() == Some("at");
        let standard = if is_at { Standard::At } else { Standard::Atx };
        let (rails, foreign) = judge(standard, &readings);
        let delay_ms = self.power_good.as_deref().map(super::figure).transpose()?;
        let power_good = judge_power_good(&PowerGood { delay_ms, ..PowerGood::default() });
        let verdicts = rails.iter().map(|rail| rail.verdict).chain(power_good.iter().map(|row| row.verdict));
        Ok(Form {
            standard,
            verdict: verdicts.max(),
            load_faults: self.load_faults(&load)?,
            rails,
            foreign,
            power_good,
            pins,
        })
    }

    fn load_faults(&self, load: &[(Rail, f64)]) -> anyhow::Result<Vec<LoadFault>> {
        let Some(id) = &self.label else { return Ok(Vec::new()) };
        let known = labels();
        let Some(label) = known.iter().find(|label| label.id == *id) else {
            let ids = known.iter().map(|label| label.id.as_str()).collect::<Vec<_>>().join(", ");
            return Err(anyhow!(text!("\"{id}\" is not known; there are {known}", id = id, known = ids)));
        };
        Ok(load_faults(label, load))
    }
}

fn pairs(typed: &[String]) -> anyhow::Result<Vec<(Rail, f64)>> {
    if typed.is_empty() { Ok(Vec::new()) } else { parse_pairs(&typed.join(" ")).map_err(|reason| anyhow!(reason)) }
}

impl Form {
    fn said(&self) -> String {
        let mut lines = Vec::new();
        for RailVerdict { reading, verdict, margin_percent, limits, remarks, .. } in &self.rails {
            let margin = format!("{:.1}", margin_percent.abs());
            let margin = if *margin_percent < 0.0 {
                text!("{margin} % beyond the limit", margin = margin)
            } else {
                text!("{margin} % inside the limit", margin = margin)
            };
            lines.push(text!(
                "{rail}: {volts} V, {verdict}, {margin} ({weakest} to {strongest} V)",
                rail = reading.rail.label(),
                volts = reading.volts,
                verdict = verdict.said(),
                margin = margin,
                weakest = limits.weakest_v,
                strongest = limits.strongest_v
            ));
            lines.extend(remarks.iter().map(|remark| format!("  {remark}")));
            lines.push(text!("  Source: {source}", source = limits.source.said()));
        }
        for rail in &self.foreign {
            lines.push(text!("{rail}: supplies of this kind do not have it", rail = rail.label()));
        }
        for row in &self.power_good {
            let (what, seen, verdict) = (&row.what, row.seen, row.verdict.said());
            lines.push(text!(
                "{what}: {seen}, {verdict} ({limit})",
                what = what,
                seen = seen,
                verdict = verdict,
                limit = row.limit
            ));
        }
        lines.extend(self.load_faults.iter().map(LoadFault::said));
        for PlugPin { plug, pin, signal, wire } in &self.pins {
            let signal = match signal {
                Signal::Rail(rail) => rail.label(),
                Signal::Ground => text!("ground"),
                Signal::PowerGood => text!("power-good"),
                Signal::PowerOn => text!("power-on"),
                Signal::Unused => text!("unused"),
            };
            lines.push(format!("{plug} {pin}: {signal}, {wire}").trim_start().to_owned());
        }
        lines.join("\n")
    }
}
