//! `work-out cell CHEMISTRY [--cells N] [--open VOLTS] [--loaded VOLTS]`.
//!
//! JSON: `state`, `volts_per_cell`, `facts`, `remarks`, `neutralised_by`, `caution`.

use anyhow::Context as _;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::cell::{CellVerdict, Chemistry, judge};

#[derive(Args)]
pub struct Cell {
    #[arg(value_name = "CHEMISTRY", help = text!("What the cell is made of: cr, br, thionyl, nicd, nimh, alkaline, zinc-carbon or lead-acid"))]
    chemistry: String,
    #[arg(long, value_name = "N", default_value_t = 1, help = text!("Cells in series; a 3.6 V barrel has three"))]
    cells: u8,
    #[arg(long, value_name = "VOLTS", help = text!("Voltage without a load"))]
    open: Option<String>,
    #[arg(long, value_name = "VOLTS", help = text!("Voltage under a load of 1 kΩ"))]
    loaded: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    #[serde(flatten)]
    verdict: CellVerdict,
    neutralised_by: &'static str,
    caution: &'static str,
}

impl Cell {
    pub fn answer(&self, json: bool) -> Answer {
        let chemistry = chemistry(&self.chemistry).with_context(|| {
            text!(
                "\"{text}\" is not known: cr, br, thionyl, nicd, nimh, alkaline, zinc-carbon or lead-acid",
                text = self.chemistry
            )
        })?;
        let figure = |typed: &Option<String>| typed.as_deref().map(super::figure).transpose();
        let verdict = judge(chemistry, self.cells, figure(&self.open)?, figure(&self.loaded)?)?;
        let leaks = verdict.facts.leaks;
        let form = Form { neutralised_by: leaks.neutralised_by(), caution: leaks.caution(), verdict };
        if json {
            return as_json(&form);
        }
        let Form { verdict: CellVerdict { state, volts_per_cell, facts, remarks }, neutralised_by, caution } = form;
        let volts = format!("{volts_per_cell:.2}");
        let mut lines = vec![text!(
            "{chemistry}: {volts} V a cell, {state} (good from {good} V, spent below {spent} V)",
            chemistry = chemistry.said(),
            volts = volts,
            state = state.said(),
            good = facts.good_v,
            spent = facts.spent_v
        )];
        lines.extend(remarks);
        lines.push(text!("If it leaks: {how} {caution}", how = neutralised_by, caution = caution));
        lines.push(text!("Source: {source}", source = facts.source.said()));
        Ok(lines.join("\n"))
    }
}

fn chemistry(typed: &str) -> Option<Chemistry> {
    Some(match typed.trim().to_ascii_lowercase().as_str() {
        "cr" => Chemistry::LithiumManganese,
        "br" => Chemistry::LithiumFluoride,
        "thionyl" => Chemistry::LithiumThionyl,
        "nicd" => Chemistry::NickelCadmium,
        "nimh" => Chemistry::NickelMetalHydride,
        "alkaline" => Chemistry::Alkaline,
        "zinc-carbon" => Chemistry::ZincCarbon,
        "lead-acid" => Chemistry::LeadAcid,
        _ => return None,
    })
}
