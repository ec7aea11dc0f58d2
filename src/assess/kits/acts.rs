//! What is written when a kit is made, and at each step of its life.

use uuid::Uuid;

use super::used::{sums, used};
use super::{Proposal, Spec};
use crate::assess::supplies;
use crate::record::{
    Entry, Id, Kit, KitFile, KitLine, KitPosition, KitState, Logbook, Material, MaterialId, Moment, When,
};
use crate::rules::Rules;
use crate::text;

/// Why a kit cannot take a step.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Hindrance {
    #[error("{}", text!("A kit that is “{from}” cannot become “{to}”.", from = crate::record::Word::label(*.from), to = crate::record::Word::label(*.to)))]
    Step { from: KitState, to: KitState },
    #[error("{}", text!("{asked} of {material} are asked for, {free} are free: gather the kit again, or mend the stock.", asked = .asked, material = .material, free = .free))]
    Short { material: String, asked: f64, free: f64 },
}

/// A kit with the lines of a proposal, as a draft.
pub fn draft(
    proposal: &Proposal,
    logbook: &Logbook,
    name: &str,
    scope: &str,
    at: Moment,
    ids: &mut dyn FnMut() -> Uuid,
) -> Vec<Entry> {
    let kit = Kit {
        id: Id::from_uuid(ids()),
        name: name.to_owned(),
        scope: scope.to_owned(),
        state: KitState::Draft,
        changed: at,
        frozen: When::Unknown,
        ordered: When::Unknown,
        received: When::Unknown,
        used: When::Unknown,
        note: String::new(),
    };
    let mut entries = vec![Entry::from(kit.clone())];
    for line in &proposal.lines {
        let known = line.material.and_then(|id| logbook.material(id));
        let spec = &line.spec;
        let written = KitLine {
            id: Id::from_uuid(ids()),
            kit: kit.id,
            material: line.material,
            capacitance_uf: spec.uf,
            voltage_v: spec.volts,
            temperature_c: spec.celsius,
            diameter_mm: spec.diameter_mm,
            height_mm: spec.height_mm,
            pitch_mm: spec.pitch_mm,
            dielectric: spec.dielectric,
            mounting: spec.mounting,
            low_esr: spec.low_esr,
            from_stock: line.from_stock,
            to_buy: line.to_buy,
            spares: line.spares,
            price_cents: known.and_then(|known| known.price_cents),
            supplier: known.map_or_else(String::new, |known| known.supplier.clone()),
            note: String::new(),
        };
        let served = line.positions.iter().map(|at| KitPosition {
            id: Id::from_uuid(ids()),
            line: written.id,
            capacitor: proposal.positions[*at as usize].capacitor,
        });
        let served: Vec<Entry> = served.map(Entry::from).collect();
        entries.push(written.into());
        entries.extend(served);
    }
    entries
}

/// What a step of a kit's life writes: the kit itself, the stock that it raises or lowers, and what it tells of the
/// positions that it served.
///
/// # Errors
/// The life does not allow the step, or the stock does not.
pub fn step(
    file: &KitFile,
    to: KitState,
    logbook: &Logbook,
    rules: &Rules,
    at: Moment,
    ids: &mut dyn FnMut() -> Uuid,
) -> Result<Vec<Entry>, Hindrance> {
    let from = file.kit.state;
    if !from.may_become(to) {
        return Err(Hindrance::Step { from, to });
    }
    let mut kit = Kit { state: to, changed: at, ..file.kit.clone() };
    let mut entries = Vec::new();
    match to {
        KitState::Draft => kit.frozen = When::Unknown,
        KitState::Frozen if from == KitState::Draft => {
            kit.frozen = at.on;
            is_free(file, logbook)?;
        }
        KitState::Frozen => kit.ordered = When::Unknown,
        KitState::Ordered => kit.ordered = at.on,
        KitState::Received => {
            kit.received = at.on;
            entries = received(file, logbook, ids);
        }
        KitState::Used => {
            kit.used = at.on;
            entries = used(file, logbook, rules, at, ids)?;
        }
    }
    entries.insert(0, kit.into());
    Ok(entries)
}

/// Whether what the kit takes from stock is there and nobody else's.
fn is_free(file: &KitFile, logbook: &Logbook) -> Result<(), Hindrance> {
    let reserved = supplies::reserved(logbook);
    for (material, asked) in sums(std::slice::from_ref(file), |line| line.from_stock) {
        let Some(known) = logbook.material(material) else { continue };
        let free = known.stock - reserved.of(material);
        if asked > free {
            return Err(Hindrance::Short { material: known.name.clone(), asked, free: free.max(0.0) });
        }
    }
    Ok(())
}

/// What was bought goes into stock; a line that is nothing of the stock yet becomes a material of its own.
fn received(file: &KitFile, logbook: &Logbook, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let mut stock: Vec<Material> = Vec::new();
    let mut lines = Vec::new();
    for line in file.lines.iter().map(|line| &line.line).filter(|line| line.to_buy + line.spares > 0) {
        let bought = f64::from(line.to_buy + line.spares);
        let known = line.material.and_then(|id| logbook.material(id));
        if let Some(known) = known {
            match stock.iter_mut().find(|one| one.id == known.id) {
                Some(one) => one.stock += bought,
                None => stock.push(Material { stock: known.stock + bought, ..Material::clone(known) }),
            }
            continue;
        }
        let new = Material { stock: bought, ..material_of(line, Id::from_uuid(ids())) };
        lines.push(Entry::from(KitLine { material: Some(new.id), ..line.clone() }));
        stock.push(new);
    }
    stock.into_iter().map(Entry::from).chain(lines).collect()
}

/// What a line is once it lies in stock. Its sizes are those that were asked for, until somebody measures.
fn material_of(line: &KitLine, id: MaterialId) -> Material {
    let spec = Spec::of_line(line);
    Material {
        price_cents: line.price_cents,
        supplier: line.supplier.clone(),
        capacitance_uf: Some(spec.uf),
        voltage_v: Some(spec.volts),
        temperature_c: spec.celsius,
        diameter_mm: spec.diameter_mm,
        height_mm: spec.height_mm,
        pitch_mm: spec.pitch_mm,
        dielectric: Some(spec.dielectric),
        mounting: Some(spec.mounting),
        low_esr: Some(spec.low_esr),
        ..Material::new(id, &spec.name())
    }
}
