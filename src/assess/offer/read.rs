//! An offered part as it is typed: kind, connectors and figures by their names or labels.

use super::{Offered, Plug};
use crate::record::{Figure, Kind, NoDate, Side, When, Word};
use crate::rules::Connectors;
use crate::rules::connectors::Family;
use crate::text;

/// How many near ones are told where a word is not known.
const NEAR: usize = 6;

/// No part has more of one connector.
const MOST_OF_ONE: u32 = 99;

impl Offered {
    /// Reads what is told of a part. What cannot be read is named, with those that are near.
    pub fn read(
        kind: &str,
        connectors: &[String],
        figures: &[String],
        made: &str,
        table: &Connectors,
    ) -> Result<Self, String> {
        let kind = read_kind(kind)?;
        let connectors = connectors.iter().map(|typed| connector(kind, typed, table)).collect::<Result<_, _>>()?;
        let figures = figures.iter().map(|typed| figure(typed)).collect::<Result<_, _>>()?;
        let made: When = made.trim().parse().map_err(|error: NoDate| error.to_string())?;
        Ok(Self { kind, connectors, figures, made })
    }
}

fn is_called(typed: &str, name: &str, label: &str) -> bool {
    let typed = typed.trim();
    typed.eq_ignore_ascii_case(name) || typed.to_lowercase() == label.to_lowercase()
}

fn read_kind(typed: &str) -> Result<Kind, String> {
    let found = Kind::ALL.iter().copied().find(|kind| is_called(typed, kind.name(), kind.label()));
    found.ok_or_else(|| {
        let near = near(typed, Kind::ALL.iter().map(|kind| (kind.name(), kind.label())));
        text!("“{typed}” is no kind of part; there are {near}", typed = typed, near = near)
    })
}

/// `simm-72`, `simm-72=4`, `offers:pga-132`: the side is the usual one of the kind where it is not told.
fn connector(kind: Kind, typed: &str, table: &Connectors) -> Result<Plug, String> {
    let told = typed.split_once(':').and_then(|(word, rest)| Some((Side::named(word.trim())?, rest)));
    let (side, rest) = told.map_or((None, typed), |(side, rest)| (Some(side), rest));
    let (name, count) = rest.split_once('=').map_or((rest, None), |(name, count)| (name, Some(count)));
    let found = table.all().find(|row| is_called(name, &row.id, table.label(&row.id)));
    let found = found.ok_or_else(|| {
        let near = near(name, table.all().map(|row| (row.id.as_str(), table.label(&row.id))));
        text!("“{typed}” is no connector; there are {near}", typed = name, near = near)
    })?;
    let read = |count: &str| {
        let count = count.trim().parse::<u32>().ok().filter(|count| (1..=MOST_OF_ONE).contains(count));
        count.ok_or_else(|| {
            text!("“{typed}” has no whole number from 1 to {most} after =", typed = typed, most = MOST_OF_ONE)
        })
    };
    let side = side.unwrap_or_else(|| usual_side(kind, found.family));
    Ok(Plug { side, connector: found.id.clone(), count: count.map(read).transpose()? })
}

fn figure(typed: &str) -> Result<(Figure, f64), String> {
    let Some((name, value)) = typed.split_once('=') else {
        return Err(text!("“{typed}” is no figure: write NAME=VALUE, as bus_clock_mhz=66", typed = typed));
    };
    let found = Figure::ALL.iter().copied().find(|figure| is_called(name, figure.name(), figure.label()));
    let figure = found.ok_or_else(|| {
        let near = near(name, Figure::ALL.iter().map(|figure| (figure.name(), figure.label())));
        text!("“{typed}” is no figure; there are {near}", typed = name, near = near)
    })?;
    let value = value.trim().replace(',', ".").parse::<f64>().ok();
    let value = value.filter(|value| value.is_finite() && *value >= 0.0);
    let value = value.ok_or_else(|| text!("“{typed}” has no figure of 0 or more after =", typed = typed))?;
    Ok((figure, value))
}

/// Names whose name or label holds what was typed, or its first letters; all of them where none does.
fn near<'a>(typed: &str, all: impl Iterator<Item = (&'a str, &'a str)>) -> String {
    let all: Vec<(&str, &str)> = all.collect();
    let typed = typed.trim().to_lowercase();
    let holds = |letters: usize| {
        let wanted: String = typed.chars().take(letters).collect();
        let has = |text: &str| !wanted.is_empty() && text.to_lowercase().contains(&wanted);
        let found = all.iter().filter(|(name, label)| has(name) || has(label)).map(|(name, _)| *name);
        found.collect::<Vec<_>>()
    };
    let by_letters = [typed.chars().count(), 4, 3, 2].into_iter().map(holds);
    let found = by_letters.into_iter().find(|found| !found.is_empty());
    let found = found.unwrap_or_else(|| all.iter().map(|(name, _)| *name).collect());
    let more = if found.len() > NEAR { ", …" } else { "" };
    format!("{}{more}", found.iter().take(NEAR).copied().collect::<Vec<_>>().join(", "))
}

/// Whether a kind of part offers a connector or needs it. Common practice, no source.
pub fn usual_side(kind: Kind, family: Family) -> Side {
    use Family::{BoardPower, Disk, DrivePower, Floppy, Mounting, Outline, Port, Video};
    let offers = match kind {
        Kind::Mainboard => !matches!(family, BoardPower | Outline),
        Kind::PowerSupply => matches!(family, BoardPower | DrivePower),
        Kind::Case => matches!(family, Outline | Mounting),
        Kind::VideoCard => matches!(family, Video),
        Kind::ControllerCard | Kind::MultiIoCard | Kind::SoundCard => matches!(family, Disk | Floppy | Port),
        Kind::Riser | Kind::Retention => true,
        _ => false,
    };
    if offers { Side::Offers } else { Side::Needs }
}
