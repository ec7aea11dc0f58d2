//! Materials from a table: what is in stock, one a line, known ones by their name.

use super::capacitor_table::{CELSIUS, MM, UF, VOLTS};
use super::capacitor_words::{dielectric_of, mounting_of};
use super::table::{BadLine, BadTable, Cells, Column, Table};
use super::{Id, Material};
use crate::text;

/// The columns of a table of materials, as it is written and read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MaterialColumn {
    Name,
    Stock,
    Unit,
    Minimum,
    OnOrder,
    Price,
    Supplier,
    Place,
    Note,
    Value,
    Voltage,
    Temperature,
    Diameter,
    Height,
    Pitch,
    Dielectric,
    Mounting,
    LowEsr,
}

/// Every column, with the words that may head it; the first is the one that is written.
pub const MATERIAL_COLUMNS: [Column<MaterialColumn>; 18] = [
    Column { kind: MaterialColumn::Name, names: &["name", "material"] },
    Column { kind: MaterialColumn::Stock, names: &["stock", "in stock", "amount"] },
    Column { kind: MaterialColumn::Unit, names: &["unit"] },
    Column { kind: MaterialColumn::Minimum, names: &["minimum", "least"] },
    Column { kind: MaterialColumn::Price, names: &["price", "price each"] },
    Column { kind: MaterialColumn::Supplier, names: &["supplier", "shop"] },
    Column { kind: MaterialColumn::Place, names: &["place", "where"] },
    Column { kind: MaterialColumn::Note, names: &["note", "remark"] },
    Column { kind: MaterialColumn::OnOrder, names: &["on order", "ordered"] },
    Column { kind: MaterialColumn::Value, names: &["value", "uf", "µf"] },
    Column { kind: MaterialColumn::Voltage, names: &["voltage", "volts"] },
    Column { kind: MaterialColumn::Temperature, names: &["temperature", "celsius", "°c"] },
    Column { kind: MaterialColumn::Diameter, names: &["diameter", "across", "ø"] },
    Column { kind: MaterialColumn::Height, names: &["height"] },
    Column { kind: MaterialColumn::Pitch, names: &["pitch"] },
    Column { kind: MaterialColumn::Dielectric, names: &["type", "dielectric"] },
    Column { kind: MaterialColumn::Mounting, names: &["mounting"] },
    Column { kind: MaterialColumn::LowEsr, names: &["low esr", "low resistance"] },
];

/// The most that can be in stock of anything, in its own unit.
const MOST: f64 = 1e6;

/// One line of a table of materials.
#[derive(Clone, Debug, PartialEq)]
pub struct TableMaterial {
    pub line: u64,
    /// The material; one that is known already keeps its key, its place, and all that the table has no column for.
    pub material: Material,
    /// Where it lies, as the table has it; `None` where the table has no such column.
    pub place: Option<String>,
}

/// Reads a table of materials: each line by itself. `known` finds a material by its name, `new_id` makes a key.
///
/// # Errors
/// What is wrong with the headings.
pub fn read_materials<'k>(
    text: &str,
    known: impl Fn(&str) -> Option<&'k Material>,
    new_id: &mut dyn FnMut() -> uuid::Uuid,
) -> Result<Vec<Result<TableMaterial, BadLine>>, BadTable> {
    let table = Table::read(text, &MATERIAL_COLUMNS, MaterialColumn::Name)?;
    let mut seen: Vec<String> = Vec::new();
    let mut read = Vec::new();
    for line in &table.lines {
        let taken = table.cells(line).and_then(|cells| {
            let name = cells.text(MaterialColumn::Name).to_lowercase();
            if name.is_empty() {
                return Err(text!("it has no name").to_owned());
            }
            if seen.contains(&name) {
                return Err(text!("{name} stands in the table twice", name = cells.text(MaterialColumn::Name)));
            }
            seen.push(name);
            material(&cells, known(cells.text(MaterialColumn::Name)), new_id)
        });
        read.push(match taken {
            Ok((material, place)) => Ok(TableMaterial { line: line.number, material, place }),
            Err(wrong) => Err(BadLine { line: line.number, wrong }),
        });
    }
    Ok(read)
}

fn material(
    cells: &Cells<'_, MaterialColumn>,
    known: Option<&Material>,
    new_id: &mut dyn FnMut() -> uuid::Uuid,
) -> Result<(Material, Option<String>), String> {
    use MaterialColumn as M;
    let mut one = match known {
        Some(known) => known.clone(),
        None => Material::new(Id::from_uuid(new_id()), cells.text(M::Name)),
    };
    let amount = |column, what| cells.figure(column, what, "", 0.0, MOST);
    let figure = |column, what, unit, (least, most)| cells.figure(column, what, unit, least, most);
    if let Some(stock) = amount(M::Stock, text!("Stock"))? {
        one.stock = stock;
    }
    if let Some(minimum) = amount(M::Minimum, text!("Minimum"))? {
        one.minimum = minimum;
    }
    if let Some(on_order) = amount(M::OnOrder, text!("On order"))? {
        one.on_order = on_order;
    }
    if let Some(price) = amount(M::Price, text!("Price"))? {
        one.price_cents = Some((price * 100.0).round() as i64);
    }
    for (column, field) in [(M::Unit, &mut one.unit), (M::Supplier, &mut one.supplier), (M::Note, &mut one.note)] {
        if cells.has(column) {
            cells.text(column).clone_into(field);
        }
    }
    for (column, what, unit, bounds, field) in [
        (M::Value, text!("Value"), "µF", UF, &mut one.capacitance_uf),
        (M::Voltage, text!("Voltage"), "V", VOLTS, &mut one.voltage_v),
        (M::Temperature, text!("Temperature"), "°C", CELSIUS, &mut one.temperature_c),
        (M::Diameter, text!("Diameter"), "mm", MM, &mut one.diameter_mm),
        (M::Height, text!("Height"), "mm", MM, &mut one.height_mm),
        (M::Pitch, text!("Pitch"), "mm", MM, &mut one.pitch_mm),
    ] {
        if cells.has(column) {
            *field = figure(column, what, unit, bounds)?;
        }
    }
    if cells.has(M::Dielectric) {
        one.dielectric = cells.word(M::Dielectric, text!("Type"), dielectric_of)?;
    }
    if cells.has(M::Mounting) {
        one.mounting = cells.word(M::Mounting, text!("Mounting"), mounting_of)?;
    }
    if cells.has(M::LowEsr) {
        one.low_esr = cells.yes(M::LowEsr, text!("Low resistance"))?;
    }
    let place = cells.has(M::Place).then(|| cells.text(M::Place).to_owned());
    Ok((one, place))
}
