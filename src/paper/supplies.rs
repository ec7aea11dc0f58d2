//! Stock and shopping list as CSV, for shops and spreadsheets; the stock can be read back as it was written.

use csv::Writer;

use crate::assess::Answers;
use crate::assess::supplies::{ToBuy, to_buy};
use crate::record::{Logbook, MATERIAL_COLUMNS, Material, MaterialColumn, Word};
use crate::rules::Rules;
use crate::text;

/// A list that can be had as a table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SuppliesTable {
    Stock,
    ToBuy,
}

impl SuppliesTable {
    /// The list as CSV.
    pub fn csv(self, logbook: &Logbook, answers: &Answers, rules: &Rules) -> String {
        match self {
            Self::Stock => stock_csv(logbook),
            Self::ToBuy => shopping_csv(&to_buy(logbook, answers, rules), logbook),
        }
    }
}

/// All that is in stock.
pub fn stock_csv(logbook: &Logbook) -> String {
    let mut out = Writer::from_writer(Vec::new());
    let headings = MATERIAL_COLUMNS.iter().map(|column| column.names[0]);
    write(&mut out, headings.map(str::to_owned).collect());
    for material in &logbook.materials {
        write(&mut out, MATERIAL_COLUMNS.iter().map(|column| cell(column.kind, material, logbook)).collect());
    }
    finished(out)
}

/// What is to be bought.
pub fn shopping_csv(list: &[ToBuy], logbook: &Logbook) -> String {
    let mut out = Writer::from_writer(Vec::new());
    let headings = [text!("what"), text!("amount"), text!("unit"), text!("price"), text!("supplier"), text!("for")];
    write(&mut out, headings.map(str::to_owned).into());
    for one in list {
        let reasons: Vec<String> = one.reasons.iter().map(|reason| reason.sentence(logbook)).collect();
        let row = vec![
            one.said(),
            one.amount.map(|amount| amount.to_string()).unwrap_or_default(),
            one.unit.clone(),
            one.price_cents.map(price).unwrap_or_default(),
            one.supplier.clone(),
            reasons.join("; "),
        ];
        write(&mut out, row);
    }
    finished(out)
}

fn price(cents: i64) -> String {
    format!("{}.{:02}", cents / 100, cents % 100)
}

fn cell(column: MaterialColumn, material: &Material, logbook: &Logbook) -> String {
    use MaterialColumn as M;
    let figure = |figure: Option<f64>| figure.map(|figure| figure.to_string()).unwrap_or_default();
    match column {
        M::Name => material.name.clone(),
        M::Stock => material.stock.to_string(),
        M::Unit => material.unit.clone(),
        M::Minimum => material.minimum.to_string(),
        M::OnOrder => material.on_order.to_string(),
        M::Price => material.price_cents.map(price).unwrap_or_default(),
        M::Supplier => material.supplier.clone(),
        M::Place => material.place.map(|place| logbook.place_path(place)).unwrap_or_default(),
        M::Note => material.note.clone(),
        M::Value => figure(material.capacitance_uf),
        M::Voltage => figure(material.voltage_v),
        M::Temperature => figure(material.temperature_c),
        M::Diameter => figure(material.diameter_mm),
        M::Height => figure(material.height_mm),
        M::Pitch => figure(material.pitch_mm),
        M::Dielectric => material.dielectric.map_or("", Word::label).to_owned(),
        M::Mounting => material.mounting.map_or("", Word::label).to_owned(),
        M::LowEsr => material.low_esr.map_or("", |is_low| if is_low { "yes" } else { "no" }).to_owned(),
    }
}

fn write(out: &mut Writer<Vec<u8>>, row: Vec<String>) {
    // Writing into memory cannot fail, and every row is as long as the headings.
    let _ = out.write_record(row);
}

fn finished(out: Writer<Vec<u8>>) -> String {
    out.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}
