//! The sample's title page, places, lots, materials and designs.

use super::super::authoring::{Ids, key};
use super::tables::{DesignRow, Tables, WorkshopRow};
use super::{Book, Fault};
use crate::record::{Change, Design, DesignConnector, DesignFigure, Lot, Material, Place, Side, Workshop};
use crate::text;

/// The title page of the sample.
pub fn title_page(row: &WorkshopRow) -> Workshop {
    Workshop {
        id: super::Store::new_id(),
        name: row.name.clone(),
        keeper: row.keeper.clone(),
        currency: row.currency.clone(),
        note: row.note.clone(),
    }
}

/// Everything that parts refer to.
pub fn change(tables: &Tables, book: &mut Book, ids: &mut Ids) -> Result<Change, Fault> {
    let mut change = Change::new(text!("Set the workshop up"));
    for row in &tables.place {
        let within = match &row.within {
            Some(name) => Some(place(book, name, &row.name)?),
            None => None,
        };
        let id = key(ids);
        book.places.insert(row.name.clone(), id);
        change.put(Place { id, within, name: row.name.clone(), note: row.note.clone() });
    }
    for row in &tables.lot {
        let id = key(ids);
        book.lots.insert(row.key.clone(), id);
        change.put(Lot {
            id,
            name: row.name.clone(),
            acquired: row.acquired.when(book.today),
            source: row.source.clone(),
            price_cents: row.price,
            note: row.note.clone(),
        });
    }
    for row in &tables.material {
        let place = match &row.place {
            Some(name) => Some(place(book, name, &row.name)?),
            None => None,
        };
        let id = key(ids);
        book.materials.insert(row.name.clone(), id);
        change.put(Material {
            id,
            name: row.name.clone(),
            unit: row.unit.clone(),
            stock: row.stock,
            minimum: row.minimum,
            place,
            price_cents: row.price,
            supplier: row.supplier.clone(),
            note: row.note.clone(),
            capacitance_uf: row.uf,
            voltage_v: row.volts,
            temperature_c: row.celsius,
            diameter_mm: row.diameter_mm,
            height_mm: row.height_mm,
            pitch_mm: row.pitch_mm,
            dielectric: row.dielectric,
            mounting: row.mounting,
            low_esr: row.low_esr,
            on_order: row.on_order,
        });
    }
    for row in &tables.design {
        design(row, book, &mut change, ids);
    }
    Ok(change)
}

fn place(book: &Book, name: &str, at: &str) -> Result<crate::record::PlaceId, Fault> {
    let fault = || Fault { at: at.to_owned(), fault: format!("no place “{name}” stands before it") };
    book.places.get(name).copied().ok_or_else(fault)
}

fn design(row: &DesignRow, book: &mut Book, change: &mut Change, ids: &mut Ids) {
    let design = Design {
        id: key(ids),
        kind: row.kind,
        maker: row.maker.clone(),
        model: row.model.clone(),
        revision: row.revision.clone(),
        introduced: row.introduced.when(book.today),
        discontinued: row.discontinued.when(book.today),
        note: row.note.clone(),
    };
    let id = design.id;
    book.designs.insert(row.key.clone(), (id, row.kind));
    book.looks.insert(row.key.clone(), (format!("{} {}", row.maker, row.model), row.picture.clone()));
    change.put(design);
    for (side, connectors) in [(Side::Offers, &row.offers), (Side::Needs, &row.needs)] {
        for (connector, count) in connectors {
            change.put(DesignConnector {
                id: key(ids),
                design: id,
                side,
                connector: connector.clone(),
                count: *count,
                note: String::new(),
            });
        }
    }
    for (figure, values) in &row.figures {
        for value in values.values() {
            let source = text!("Label and print on the part").to_owned();
            change.put(DesignFigure {
                id: key(ids),
                design: id,
                figure: figure.clone(),
                value: *value,
                source,
                at_bus_mhz: None,
            });
        }
    }
}
