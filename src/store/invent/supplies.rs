//! Invented supplies, once parts and machines are there: materials, what work used of them, orders by hand, and kits in
//! every state of their life.

use std::collections::HashMap;

use super::super::authoring::{key, moment};
use super::super::{Store, StoreError};
use super::Ground;
use super::chance::Chance;
use crate::assess::kits::acts::{draft, step};
use crate::assess::kits::{PATIENCE, Scope, Which, gather};
use crate::record::{
    Change, Dielectric, Entry, KitId, KitState, Logbook, Material, MaterialId, MaterialUse, Mounting, PartFile, PartId,
    Word as _, Work, WorkAfter, WorkState,
};
use crate::text;

/// Parts for one kit.
const PARTS_A_KIT: u32 = 500;
/// A part with so many bad positions is worth a kit.
const BAD_POSITIONS: usize = 3;

/// Materials by their names in small letters.
type Materials = HashMap<String, MaterialId>;

/// Invents what `parts` parts take.
pub fn invent(store: &Store, ground: &Ground, parts: u32, chance: &mut Chance) -> Result<(), StoreError> {
    let logbook = store.logbook();
    let mut change = Change::new(text!("Invent supplies"));
    let materials = materials(ground, chance, &mut change);
    uses(&logbook, &materials, ground, chance, &mut change);
    orders(&logbook, chance, &mut change);
    store.found(change)?;
    kits(store, ground, parts.div_ceil(PARTS_A_KIT), chance)
}

/// What the tables' work asks for, and the commonest capacitors.
fn materials(ground: &Ground, chance: &mut Chance, change: &mut Change) -> Materials {
    let called = ground.rules.orders.iter().flat_map(|order| &order.called).collect::<Vec<_>>();
    let mut known = Materials::new();
    for name in ground.rules.work.iter().flat_map(|work| &work.materials).filter(|name| !called.contains(name)) {
        let lower = name.to_lowercase();
        if known.contains_key(&lower) {
            continue;
        }
        let id = key(&mut || chance.id());
        known.insert(lower, id);
        change.put(Material { id, ..stocked(name, ground, chance) });
    }
    for uf in [10.0, 47.0, 100.0, 470.0, 1000.0, 2200.0] {
        for volts in [16.0, 25.0] {
            let name = text!("Capacitor {uf} µF {volts} V", uf = uf, volts = volts);
            change.put(Material {
                id: key(&mut || chance.id()),
                capacitance_uf: Some(uf),
                voltage_v: Some(volts),
                temperature_c: Some(105.0),
                diameter_mm: Some(5.0),
                height_mm: Some(7.0),
                dielectric: Some(Dielectric::WetAluminium),
                mounting: Some(Mounting::Radial),
                low_esr: Some(true),
                ..stocked(&name, ground, chance)
            });
        }
    }
    known
}

fn stocked(name: &str, ground: &Ground, chance: &mut Chance) -> Material {
    let is_used_up = chance.percent(5);
    Material {
        stock: if is_used_up { 0.0 } else { f64::from(chance.between(1, 60)) },
        minimum: f64::from(chance.between(0, 12)),
        place: Some(*chance.of(&ground.boxes)),
        price_cents: chance.percent(80).then(|| i64::from(chance.between(5, 900))),
        supplier: (*chance.of(&["Parts by post", "Shop at the corner", ""])).to_owned(),
        on_order: if chance.percent(10) { f64::from(chance.between(1, 20)) } else { 0.0 },
        // The key is given by the caller.
        ..Material::new(MaterialId::from_uuid(uuid::Uuid::nil()), name)
    }
}

/// Half of the work that is done tells what it took of the stock.
fn uses(logbook: &Logbook, materials: &Materials, ground: &Ground, chance: &mut Chance, change: &mut Change) {
    let done = logbook.parts.iter().flat_map(|file| &file.work).filter(|work| work.state == WorkState::Done);
    for work in done {
        let asked = ground.rules.work(&work.rule).map_or(&[][..], |rule| &rule.materials);
        for material in asked.iter().filter_map(|name| materials.get(&name.to_lowercase())) {
            if chance.percent(50) {
                let amount = f64::from(chance.between(1, 5));
                let id = key(&mut || chance.id());
                change.put(MaterialUse { id, part: work.part, work: work.id, material: *material, amount });
            }
        }
    }
}

/// Of the pieces that somebody has touched and that are outstanding, a tenth comes after one on a part logged before, so
/// that nothing goes in a circle.
fn orders(logbook: &Logbook, chance: &mut Chance, change: &mut Change) {
    let mut before: Option<&Work> = None;
    for work in logbook.parts.iter().flat_map(|file| &file.work).filter(|work| work.state.is_outstanding()) {
        if let Some(first) = before.filter(|first| first.part != work.part)
            && chance.percent(10)
        {
            let id = key(&mut || chance.id());
            change.put(WorkAfter { id, part: work.part, work: work.id, after: first.id });
        }
        before = Some(work);
    }
}

/// Kits over parts that are spread over all, in turn in each state of their life.
fn kits(store: &Store, ground: &Ground, count: u32, chance: &mut Chance) -> Result<(), StoreError> {
    let is_bad = |file: &PartFile| {
        file.custody_now().is_at_hand()
            && file.capacitors.iter().filter(|one| one.state().is_bad()).count() >= BAD_POSITIONS
    };
    let bad: Vec<PartId> = store.logbook().parts.iter().filter(|file| is_bad(file)).map(|file| file.part.id).collect();
    let apart = (bad.len() / count as usize).max(1);
    for (number, part) in bad.into_iter().step_by(apart).take(count as usize).enumerate() {
        kit(store, ground, part, number % KitState::ALL.len(), chance)?;
    }
    Ok(())
}

fn kit(store: &Store, ground: &Ground, part: PartId, steps: usize, chance: &mut Chance) -> Result<(), StoreError> {
    let logbook = store.logbook();
    let at = moment(chance.day_before(ground.today, 5, 200));
    let proposal = gather(&logbook, &ground.rules, &Scope::Part(part), &Which::Bad, PATIENCE);
    let tag = logbook.part(part).map_or("", |file| &file.part.tag);
    let name = text!("Recap of {tag}", tag = tag);
    let entries = draft(&proposal, &logbook, &name, &format!("{tag}, {}", Which::Bad.said()), at, &mut || chance.id());
    let Some(kit) = entries.iter().find_map(key_of).filter(|_| !proposal.lines.is_empty()) else { return Ok(()) };
    found(store, &name, entries)?;
    for to in [KitState::Frozen, KitState::Ordered, KitState::Received, KitState::Used].into_iter().take(steps) {
        let logbook = store.logbook();
        let Some(file) = logbook.kit(kit) else { return Ok(()) };
        match step(file, to, &logbook, &ground.rules, at, &mut || chance.id()) {
            Ok(entries) => found(store, &name, entries)?,
            // What another kit has reserved meanwhile leaves this one where it is.
            Err(_) => return Ok(()),
        }
    }
    Ok(())
}

fn key_of(entry: &Entry) -> Option<KitId> {
    if let Entry::Kit(kit) = entry { Some(kit.id) } else { None }
}

fn found(store: &Store, name: &str, entries: Vec<Entry>) -> Result<(), StoreError> {
    let mut change = Change::new(text!("Gather kit {name}", name = name));
    change.put_all(entries);
    store.found(change).map(drop)
}
