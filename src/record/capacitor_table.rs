//! Capacitor positions from a table: one a line, a designator each, what was not told left open.

use super::capacitor_words::{dielectric_of, mounting_of, state_of};
use super::table::{BadLine, BadTable, Cells, Column, Table};
use super::{CapacitorGroup, CapacitorState, CapacitorUse, Dielectric, Mounting};
use crate::text;

/// The columns that a table of positions may have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PositionColumn {
    Designator,
    Value,
    Voltage,
    Temperature,
    Diameter,
    Height,
    Pitch,
    Dielectric,
    Mounting,
    Series,
    Place,
    Polarity,
    Function,
    LowEsr,
    State,
}

/// Every column, with the words that may head it; the first is the one that is shown.
pub const POSITION_COLUMNS: [Column<PositionColumn>; 15] = [
    Column { kind: PositionColumn::Designator, names: &["designator", "position", "ref", "reference", "name"] },
    Column {
        kind: PositionColumn::Value,
        names: &["value", "capacitance", "uf", "µf", "value (uf)", "value (µf)", "capacitance_uf"],
    },
    Column { kind: PositionColumn::Voltage, names: &["voltage", "volts", "v", "voltage_v"] },
    Column { kind: PositionColumn::Temperature, names: &["temperature", "celsius", "°c", "temperature_c"] },
    Column { kind: PositionColumn::Diameter, names: &["diameter", "across", "ø", "d", "diameter_mm"] },
    Column { kind: PositionColumn::Height, names: &["height", "h", "length", "height_mm"] },
    Column { kind: PositionColumn::Pitch, names: &["pitch", "lead pitch", "lead spacing", "pitch_mm"] },
    Column { kind: PositionColumn::Dielectric, names: &["type", "dielectric", "made of"] },
    Column { kind: PositionColumn::Mounting, names: &["mounting", "mount"] },
    Column { kind: PositionColumn::Series, names: &["series"] },
    Column { kind: PositionColumn::Place, names: &["place", "where", "place_on_part"] },
    Column { kind: PositionColumn::Polarity, names: &["polarity"] },
    Column { kind: PositionColumn::Function, names: &["function", "use", "for"] },
    Column { kind: PositionColumn::LowEsr, names: &["low esr", "low resistance", "low_esr"] },
    Column { kind: PositionColumn::State, names: &["state", "condition"] },
];

/// Bounds of what a capacitor can be, the widest that they are made; from memory.
pub(super) const UF: (f64, f64) = (1e-6, 1e7);
pub(super) const VOLTS: (f64, f64) = (1.0, 10_000.0);
pub(super) const MM: (f64, f64) = (1.0, 200.0);
pub(super) const CELSIUS: (f64, f64) = (40.0, 200.0);

/// One line of a table of positions.
#[derive(Clone, Debug, PartialEq)]
pub struct TablePosition {
    pub line: u64,
    /// One position, named.
    pub position: CapacitorGroup,
}

/// Reads a table of positions: each line by itself, so that all that is wrong is told at once.
///
/// # Errors
/// What is wrong with the headings.
pub fn read_positions(text: &str) -> Result<Vec<Result<TablePosition, BadLine>>, BadTable> {
    let table = Table::read(text, &POSITION_COLUMNS, PositionColumn::Designator)?;
    let mut seen: Vec<String> = Vec::new();
    Ok(table
        .lines
        .iter()
        .map(|line| {
            let read = table.cells(line).and_then(|cells| position(&cells)).and_then(|position| {
                let name = position.designators[0].clone();
                if seen.contains(&name) {
                    return Err(text!("{name} stands in the table twice", name = name));
                }
                seen.push(name);
                Ok(position)
            });
            match read {
                Ok(position) => Ok(TablePosition { line: line.number, position }),
                Err(wrong) => Err(BadLine { line: line.number, wrong }),
            }
        })
        .collect())
}

fn position(cells: &Cells<'_, PositionColumn>) -> Result<CapacitorGroup, String> {
    use PositionColumn as P;
    let designator = cells.text(P::Designator);
    if designator.is_empty() {
        return Err(text!("it has no designator").to_owned());
    }
    let figure = |column, what, unit, (least, most)| cells.figure(column, what, unit, least, most);
    Ok(CapacitorGroup {
        count: 1,
        designators: vec![designator.to_owned()],
        capacitance_uf: figure(P::Value, text!("Value"), "µF", UF)?,
        voltage_v: figure(P::Voltage, text!("Voltage"), "V", VOLTS)?,
        temperature_c: figure(P::Temperature, text!("Temperature"), "°C", CELSIUS)?,
        diameter_mm: figure(P::Diameter, text!("Diameter"), "mm", MM)?,
        height_mm: figure(P::Height, text!("Height"), "mm", MM)?,
        pitch_mm: figure(P::Pitch, text!("Pitch"), "mm", MM)?,
        dielectric: cells.word(P::Dielectric, text!("Type"), dielectric_of)?.unwrap_or(Dielectric::Unknown),
        mounting: cells.word(P::Mounting, text!("Mounting"), mounting_of)?.unwrap_or(Mounting::Unknown),
        series: cells.text(P::Series).to_owned(),
        place_on_part: cells.text(P::Place).to_owned(),
        polarity: cells.text(P::Polarity).to_owned(),
        function: cells.word::<CapacitorUse>(P::Function, text!("Function"), |_| None)?,
        low_esr: cells.yes(P::LowEsr, text!("Low resistance"))?,
        state: cells.word(P::State, text!("State"), state_of)?.unwrap_or(CapacitorState::NotLooked),
    })
}
