//! What kits hold of the stock and bring to it, and which positions and parts wait for a kit.

use std::collections::{BTreeMap, HashMap, HashSet};

use crate::record::{CapacitorId, KitFile, KitId, KitState, Logbook, MaterialId, PartId};

/// What of each material is reserved, and for which kits.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reserved {
    by_material: HashMap<MaterialId, Vec<(KitId, f64)>>,
}

impl Reserved {
    /// So much of it is reserved, in its own unit.
    pub fn of(&self, material: MaterialId) -> f64 {
        self.held(material).iter().map(|(_, amount)| amount).sum()
    }

    /// For which kits how much of it is reserved.
    pub fn held(&self, material: MaterialId) -> &[(KitId, f64)] {
        self.by_material.get(&material).map_or(&[], Vec::as_slice)
    }
}

/// What kits have reserved: from stock once they are frozen, and what was bought for their positions once received.
/// Spares are nobody's.
pub fn reserved(logbook: &Logbook) -> Reserved {
    let mut reserved = Reserved::default();
    for file in &logbook.kits {
        let is_held = matches!(file.kit.state, KitState::Frozen | KitState::Ordered | KitState::Received);
        for line in file.lines.iter().map(|line| &line.line).filter(|_| is_held) {
            let bought = if file.kit.state == KitState::Received { line.to_buy } else { 0 };
            let amount = f64::from(line.from_stock + bought);
            if let Some(material) = line.material.filter(|_| amount > 0.0) {
                let held = reserved.by_material.entry(material).or_default();
                match held.iter_mut().find(|(kit, _)| *kit == file.kit.id) {
                    Some((_, sum)) => *sum += amount,
                    None => held.push((file.kit.id, amount)),
                }
            }
        }
    }
    reserved
}

/// What ordered kits bring of each material beyond what their positions take, with the kit.
pub fn on_order(logbook: &Logbook) -> HashMap<MaterialId, Vec<(KitId, f64)>> {
    let mut coming: HashMap<MaterialId, Vec<(KitId, f64)>> = HashMap::new();
    for file in logbook.kits.iter().filter(|file| file.kit.state == KitState::Ordered) {
        for line in file.lines.iter().map(|line| &line.line).filter(|line| line.spares > 0) {
            let Some(material) = line.material else { continue };
            let held = coming.entry(material).or_default();
            match held.iter_mut().find(|(kit, _)| *kit == file.kit.id) {
                Some((_, sum)) => *sum += f64::from(line.spares),
                None => held.push((file.kit.id, f64::from(line.spares))),
            }
        }
    }
    coming
}

/// The positions that an unfinished kit serves, each with its kit.
pub fn served(logbook: &Logbook) -> HashMap<CapacitorId, KitId> {
    let unfinished = logbook.kits.iter().filter(|file| file.kit.state.is_unfinished());
    unfinished.flat_map(|file| file.positions().map(|one| (one.capacitor, file.kit.id))).collect()
}

/// What a part's recap waits for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Waiting<'l> {
    pub kit: &'l KitFile,
    /// How many of the part's positions the kit serves.
    pub positions: usize,
}

impl Waiting<'_> {
    /// Whether everything for the work is there.
    pub fn is_at_hand(&self) -> bool {
        let lines = || self.kit.lines.iter().map(|line| &line.line);
        match self.kit.kit.state {
            KitState::Received => true,
            KitState::Frozen => lines().all(|line| line.to_buy == 0),
            _ => false,
        }
    }
}

/// The unfinished kits that serve positions of parts, by part.
pub fn waiting(logbook: &Logbook) -> BTreeMap<PartId, Vec<Waiting<'_>>> {
    let mut waiting: BTreeMap<PartId, Vec<Waiting<'_>>> = BTreeMap::new();
    let unfinished = || logbook.kits.iter().filter(|file| file.kit.state.is_unfinished());
    let served: HashSet<CapacitorId> =
        unfinished().flat_map(|file| file.positions().map(|one| one.capacitor)).collect();
    if served.is_empty() {
        return waiting;
    }
    let mut of: HashMap<CapacitorId, PartId> = HashMap::with_capacity(served.len());
    for file in &logbook.parts {
        let own = file.capacitors.iter().map(|one| one.position.id).filter(|id| served.contains(id));
        of.extend(own.map(|id| (id, file.part.id)));
    }
    for file in unfinished() {
        let mut counts: BTreeMap<PartId, usize> = BTreeMap::new();
        for part in file.positions().filter_map(|one| of.get(&one.capacitor)) {
            *counts.entry(*part).or_default() += 1;
        }
        for (part, positions) in counts {
            waiting.entry(part).or_default().push(Waiting { kit: file, positions });
        }
    }
    waiting
}
