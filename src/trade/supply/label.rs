//! A supply's label: least and most amperes of each rail, combined limits; a load held against it.

use serde::{Deserialize, Serialize};

use super::rail::Rail;
use crate::text;
use crate::trade::Source;

/// What one rail is rated for.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct RailRating {
    /// Which rail.
    pub rail: Rail,
    /// Load in amperes it needs to regulate; 0 when it needs none.
    pub least_a: f64,
    /// Most amperes it gives for long.
    pub most_a: f64,
}

/// A limit on several rails together.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Combined {
    /// Which rails; all of the label when empty.
    pub rails: Vec<Rail>,
    /// Most watts together.
    pub most_w: f64,
}

/// A label as printed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Label {
    /// Key on the console.
    pub id: String,
    /// What it is the label of.
    pub name: String,
    /// Rails with their ratings.
    pub rails: Vec<RailRating>,
    /// Limits over several rails.
    pub combined: Vec<Combined>,
    /// Where it stands.
    pub source: Source,
}

/// What is wrong between a load and a label.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "fault", rename_all = "kebab-case")]
pub enum LoadFault {
    /// Less than the rail needs to regulate: readings prove nothing, and some supplies shut down or rise.
    TooLittle { rail: Rail, load_a: f64, least_a: f64 },
    /// More than the rail gives.
    TooMuch { rail: Rail, load_a: f64, most_a: f64 },
    /// Several rails together draw more than allowed.
    TooMuchTogether { rails: Vec<Rail>, load_w: f64, most_w: f64 },
    /// The label has no such rail.
    NoSuchRail { rail: Rail, load_a: f64 },
}

impl LoadFault {
    /// Whether another is the same fault on the same rails, however far it goes.
    pub fn is_like(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::TooLittle { rail, .. }, Self::TooLittle { rail: of, .. })
            | (Self::TooMuch { rail, .. }, Self::TooMuch { rail: of, .. })
            | (Self::NoSuchRail { rail, .. }, Self::NoSuchRail { rail: of, .. }) => rail == of,
            (Self::TooMuchTogether { rails, .. }, Self::TooMuchTogether { rails: of, .. }) => rails == of,
            _ => false,
        }
    }

    /// In a sentence.
    pub fn said(&self) -> String {
        match self {
            Self::TooLittle { rail, load_a, least_a } => {
                text!(
                    "{rail} carries {load} A and needs at least {least} A",
                    rail = rail.label(),
                    load = load_a,
                    least = least_a
                )
            }
            Self::TooMuch { rail, load_a, most_a } => {
                text!(
                    "{rail} carries {load} A and gives at most {most} A",
                    rail = rail.label(),
                    load = load_a,
                    most = most_a
                )
            }
            Self::TooMuchTogether { rails, load_w, most_w } => {
                let names = rails.iter().map(|rail| rail.label()).collect::<Vec<_>>().join(", ");
                text!(
                    "{rails} together carry {load} W and give at most {most} W",
                    rails = names,
                    load = format!("{load_w:.1}"),
                    most = most_w
                )
            }
            Self::NoSuchRail { rail, load_a } => {
                text!("{load} A wanted from {rail}, which the label does not have", load = load_a, rail = rail.label())
            }
        }
    }
}

/// Holds a load in amperes a rail against a label. A rail left out of the load carries nothing; watts count each
/// rail at its nominal voltage.
pub fn load_faults(label: &Label, load: &[(Rail, f64)]) -> Vec<LoadFault> {
    let carried = |rail: Rail| load.iter().filter(|(on, _)| *on == rail).map(|(_, amps)| amps.max(0.0)).sum::<f64>();
    let mut faults = Vec::new();
    for RailRating { rail, least_a, most_a } in &label.rails {
        let load_a = carried(*rail);
        if load_a < *least_a {
            faults.push(LoadFault::TooLittle { rail: *rail, load_a, least_a: *least_a });
        } else if load_a > *most_a {
            faults.push(LoadFault::TooMuch { rail: *rail, load_a, most_a: *most_a });
        }
    }
    for Combined { rails, most_w } in &label.combined {
        let rails =
            if rails.is_empty() { label.rails.iter().map(|rating| rating.rail).collect() } else { rails.clone() };
        let load_w = rails.iter().map(|rail| carried(*rail) * rail.nominal_v().abs()).sum::<f64>();
        if load_w > *most_w {
            faults.push(LoadFault::TooMuchTogether { rails, load_w, most_w: *most_w });
        }
    }
    for (rail, load_a) in load {
        if *load_a > 0.0 && label.rails.iter().all(|rating| rating.rail != *rail) {
            faults.push(LoadFault::NoSuchRail { rail: *rail, load_a: *load_a });
        }
    }
    faults
}

/// Labels that are published, to compare an unlabelled supply of the same class with.
///
/// Of the ATX12V classes the two +12 V outputs are added up (the first one's least load counts); the guide's
/// combined limit of +3.3 and +5 V is not given, since the copy at hand is garbled there.
pub fn labels() -> Vec<Label> {
    const ATX12V: Source = Source::published("ATX12V power supply design guide 2.0");
    let rating = |rail, least_a, most_a| RailRating { rail, least_a, most_a };
    let class = |watts: f64, v12_a, v5_a, v3_a| Label {
        id: format!("atx12v-{watts}"),
        name: text!("ATX12V, {watts} W class", watts = watts),
        rails: vec![
            rating(Rail::Plus12, 2.0, v12_a),
            rating(Rail::Plus5, 0.3, v5_a),
            rating(Rail::Plus3v3, 0.5, v3_a),
            rating(Rail::Minus12, 0.0, 0.3),
            rating(Rail::Standby, 0.0, 2.0),
        ],
        combined: vec![Combined { rails: Vec::new(), most_w: watts }],
        source: ATX12V,
    };
    vec![
        Label {
            id: "desktop-145".to_owned(),
            name: text!("145 W desktop supply, about 1998").to_owned(),
            rails: vec![
                rating(Rail::Plus5, 1.5, 18.0),
                rating(Rail::Plus12, 0.02, 4.2),
                rating(Rail::Plus3v3, 0.0, 10.0),
                rating(Rail::Standby, 0.0, 0.72),
            ],
            combined: vec![
                Combined { rails: vec![Rail::Plus3v3, Rail::Plus5], most_w: 100.0 },
                Combined { rails: Vec::new(), most_w: 145.0 },
            ],
            source: Source::published("hardware maintenance manual of a 1998 desktop series, p. 32"),
        },
        class(250.0, 22.0, 18.0, 17.0),
        class(300.0, 22.0, 20.0, 20.0),
        class(400.0, 29.0, 28.0, 30.0),
    ]
}
