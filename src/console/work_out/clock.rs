//! `work-out clock --bus MHZ --multiplier X [--pci R] [--agp R] [--isa R] [--cache R] [--vlb]`, judged against `--core`,
//! `--rated-bus`, `--rated-cache`, `--memory`; with `--buses` or `--multipliers` a table of all settings.
//!
//! JSON: `settings`, `clocks`, `verdicts`, `reach`; the table is an array of these, the safest first.

use anyhow::{Context as _, anyhow};
use clap::Args;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::clock::{Board, Processor, Ratio, Row, real_mhz, table};

#[derive(Args)]
pub struct Clock {
    #[arg(long, value_name = "MHZ", num_args = 1.., value_delimiter = ',', required = true, help = text!("Bus clock in MHz; several make a table. 66 stands for 66⅔"))]
    bus: Vec<String>,
    #[arg(long, value_name = "X", num_args = 1.., value_delimiter = ',', required = true, help = text!("Multiplier; several make a table"))]
    multiplier: Vec<String>,
    #[arg(long, value_name = "RATIO", num_args = 1.., value_delimiter = ',', help = text!("PCI by bus, such as 1/2, or \"usual\""))]
    pci: Vec<String>,
    #[arg(long, value_name = "RATIO", num_args = 1.., value_delimiter = ',', help = text!("AGP by bus, such as 2/3, or \"usual\""))]
    agp: Vec<String>,
    #[arg(long, value_name = "RATIO", help = text!("ISA by PCI, or by the bus where there is no PCI"))]
    isa: Option<String>,
    #[arg(long, value_name = "RATIO", help = text!("Cache by core, such as 1/2"))]
    cache: Option<String>,
    #[arg(long, help = text!("The board has a VL-Bus"))]
    vlb: bool,
    #[arg(long, value_name = "MHZ", help = text!("Core clock printed on the processor"))]
    core: Option<String>,
    #[arg(long, value_name = "MHZ", help = text!("Highest bus clock that board and processor are made for"))]
    rated_bus: Option<String>,
    #[arg(long, value_name = "MHZ", help = text!("Highest clock of the cache chips"))]
    rated_cache: Option<String>,
    #[arg(long, value_name = "MHZ", help = text!("Clock of the slowest memory module"))]
    memory: Option<String>,
}

impl Clock {
    pub fn answer(&self, json: bool) -> Answer {
        let rows = self.rows()?;
        match rows.as_slice() {
            [only] if json => as_json(only),
            rows if json => as_json(&rows),
            rows => Ok(rows.iter().map(said).collect::<Vec<_>>().join("\n")),
        }
    }

    fn rows(&self) -> anyhow::Result<Vec<Row>> {
        let mhz = |typed: &String| super::figure(typed).and_then(positive).map(real_mhz);
        let one = |typed: &Option<String>| typed.as_ref().map(mhz).transpose();
        let ratio = |typed: &Option<String>| typed.as_deref().map(parsed_ratio).transpose();
        let buses_mhz = self.bus.iter().map(mhz).collect::<anyhow::Result<Vec<_>>>()?;
        let multipliers = self
            .multiplier
            .iter()
            .map(|typed| super::figure(typed).and_then(positive))
            .collect::<anyhow::Result<Vec<_>>>()?;
        let board = Board {
            buses_mhz,
            multipliers,
            has_vlb: self.vlb,
            has_pci: !self.pci.is_empty(),
            pci: ratios(&self.pci)?,
            has_agp: !self.agp.is_empty(),
            agp: ratios(&self.agp)?,
            isa: ratio(&self.isa)?,
            specified_bus_mhz: one(&self.rated_bus)?,
            ..Board::default()
        };
        let processor = Processor {
            core_mhz: one(&self.core)?,
            cache: ratio(&self.cache)?,
            cache_mhz: one(&self.rated_cache)?,
            ..Processor::default()
        };
        Ok(table(&board, &processor, one(&self.memory)?))
    }
}

fn positive(figure: f64) -> anyhow::Result<f64> {
    if figure > 0.0 { Ok(figure) } else { Err(anyhow!(text!("{figure} is not above zero", figure = figure))) }
}

fn parsed_ratio(typed: &str) -> anyhow::Result<Ratio> {
    Ratio::parse(typed).with_context(|| text!("\"{text}\" is no ratio, such as 1/2 or 2/3", text = typed))
}

/// Empty for "usual": the board picks by itself.
fn ratios(typed: &[String]) -> anyhow::Result<Vec<Ratio>> {
    typed.iter().filter(|text| text.trim() != "usual").map(|text| parsed_ratio(text)).collect()
}

fn said(row: &Row) -> String {
    let clocks = &row.clocks;
    let mhz = |clock: f64| format!("{clock:.1}");
    let mut line = text!(
        "{bus} × {multiplier} = {core} MHz: {reach}",
        bus = mhz(clocks.bus_mhz),
        multiplier = row.settings.multiplier,
        core = mhz(clocks.core_mhz),
        reach = row.reach.said()
    );
    for verdict in &row.verdicts {
        let (clock, beyond) = (&verdict.clock, format!("{:+.1}", verdict.beyond_percent));
        line.push_str("\n  ");
        line.push_str(&text!(
            "{clock} {mhz} of {specified} MHz ({beyond} %, {reach})",
            clock = clock,
            mhz = mhz(verdict.mhz),
            specified = mhz(verdict.specified_mhz),
            beyond = beyond,
            reach = verdict.reach.said()
        ));
    }
    line
}
