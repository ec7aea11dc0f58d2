//! `work-out colour RRGGBB [--against RRGGBB] [--reference RRGGBB [--reflectance SHARE]]`.
//!
//! JSON: `sample` (after correction), `xyz`, `lab`, `yellowness` (null for black), `reference_warning`, and
//! `against` with `delta_e_2000` where asked for.

use anyhow::{anyhow, ensure};
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::colour::{
    Correction, Lab, ReferenceWarning, Srgb, Xyz, Yellowness, delta_e_2000, lab, xyz, yellowness,
};

#[derive(Args)]
pub struct Colour {
    #[arg(value_name = "RRGGBB", help = text!("A sample from a photograph, sRGB, six hexadecimal digits"))]
    sample: String,
    #[arg(long, value_name = "RRGGBB", help = text!("Another sample of the same photograph to compare with"))]
    against: Option<String>,
    #[arg(long, value_name = "RRGGBB", help = text!("The neutral patch in the photograph"))]
    reference: Option<String>,
    #[arg(long, value_name = "SHARE", requires = "reference", help = text!("Reflectance of the neutral patch, such as 0.18"))]
    reflectance: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    sample: String,
    xyz: Xyz,
    lab: Lab,
    yellowness: Option<Yellowness>,
    reference_warning: Option<ReferenceWarning>,
    #[serde(skip_serializing_if = "Option::is_none")]
    against: Option<Against>,
}

#[derive(Serialize)]
struct Against {
    sample: String,
    lab: Lab,
    delta_e_2000: f64,
}

impl Colour {
    pub fn answer(&self, json: bool) -> Answer {
        let form = self.form()?;
        if json { as_json(&form) } else { Ok(form.said()) }
    }

    fn form(&self) -> anyhow::Result<Form> {
        let read = |typed: &str| Srgb::parse(typed).map_err(|reason| anyhow!(reason));
        let correction = match &self.reference {
            None => Correction::NONE,
            Some(typed) => Correction::by(read(typed)?, self.reflectance()?),
        };
        let sample = correction.of(read(&self.sample)?);
        let colour = lab(xyz(sample));
        let against = match &self.against {
            None => None,
            Some(typed) => {
                let other = correction.of(read(typed)?);
                let lab = lab(xyz(other));
                Some(Against { sample: other.to_string(), lab, delta_e_2000: delta_e_2000(colour, lab) })
            }
        };
        Ok(Form {
            sample: sample.to_string(),
            xyz: xyz(sample),
            lab: colour,
            yellowness: yellowness(sample),
            reference_warning: correction.warning,
            against,
        })
    }

    fn reflectance(&self) -> anyhow::Result<Option<f64>> {
        let Some(typed) = &self.reflectance else { return Ok(None) };
        let share = super::figure(typed)?;
        ensure!(
            share > 0.0 && share <= 1.0,
            text!("a reflectance of {share} does not lie between 0 and 1", share = share)
        );
        Ok(Some(share))
    }
}

impl Form {
    fn said(&self) -> String {
        let Lab { l, a, b } = self.lab;
        let mut lines = vec![format!(
            "{}: L* {}, a* {}, b* {}",
            self.sample,
            text::figure(l, 1),
            text::figure(a, 1),
            text::figure(b, 1)
        )];
        if let Some(Yellowness { index, remarks }) = &self.yellowness {
            lines.push(text!("Yellowness {index} (ASTM E313, D65, 2°)", index = text::figure(*index, 1)));
            lines.extend(remarks.iter().cloned());
        }
        if let Some(Against { sample, delta_e_2000, .. }) = &self.against {
            let difference = format!("{delta_e_2000:.2}");
            lines.push(text!(
                "Difference to {sample}: {difference} (CIEDE2000)",
                sample = sample,
                difference = difference
            ));
        }
        lines.extend(self.reference_warning.map(|warning| warning.said().to_owned()));
        lines.join("\n")
    }
}
