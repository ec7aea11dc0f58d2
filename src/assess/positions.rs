//! Capacitor positions of a design: what a part that is logged adds to them, and what they tell of the next part.

use std::collections::HashSet;

use uuid::Uuid;

use crate::record::{
    Capacitor, CapacitorGroup, CapacitorState, DesignCapacitor, DesignFile, DesignId, Entry, Id, Logbook, PartFile,
    PartId,
};

/// What these positions of a part tell of its design: one more position for each designator that it does not know.
pub fn grown(
    design: DesignId,
    known: &[DesignCapacitor],
    logged: &[Capacitor],
    ids: &mut dyn FnMut() -> Uuid,
) -> Vec<DesignCapacitor> {
    let mut names: HashSet<&str> = known.iter().map(|one| one.designator.as_str()).collect();
    let new = logged.iter().filter(|one| !one.designator.is_empty() && names.insert(&one.designator));
    new.map(|one| DesignCapacitor::of(one, design, Id::from_uuid(ids()))).collect()
}

/// As [`grown`], by the positions among entries that are about to be written.
pub fn grown_by(entries: &[Entry], design: &DesignFile, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let logged: Vec<Capacitor> = entries
        .iter()
        .filter_map(|entry| if let Entry::Capacitor(one) = entry { Some(one.clone()) } else { None })
        .collect();
    grown(design.design.id, &design.capacitors, &logged, ids).into_iter().map(Entry::from).collect()
}

/// Where positions can be copied from for a part: its design, and other parts of the same design with more positions
/// than it has; the latter by tag.
pub fn sources<'l>(logbook: &'l Logbook, part: &PartFile) -> (Option<&'l DesignFile>, Vec<&'l PartFile>) {
    let Some(design) = part.part.design else { return (None, Vec::new()) };
    let of_design = logbook.design(design).map(|file| &**file).filter(|file| !missing(part, &of(file)).is_empty());
    let others = logbook.parts.iter().map(|file| &**file);
    let mut others: Vec<&PartFile> = others
        .filter(|file| file.part.design == Some(design) && file.part.id != part.part.id)
        .filter(|file| !missing(part, &of_part(file)).is_empty())
        .collect();
    others.sort_by(|a, b| a.part.tag.cmp(&b.part.tag));
    (of_design, others)
}

/// A design's positions, each as a group of one that nobody has looked at.
pub fn of(design: &DesignFile) -> Vec<CapacitorGroup> {
    let part = PartId::from_uuid(Uuid::nil());
    design.capacitors.iter().map(|one| as_group(&one.on(part))).collect()
}

/// A part's positions as they were logged, each as a group of one that nobody has looked at.
pub fn of_part(file: &PartFile) -> Vec<CapacitorGroup> {
    file.capacitors.iter().map(|one| as_group(&one.position)).collect()
}

/// Those of the groups whose designator the part does not have yet.
pub fn missing(part: &PartFile, groups: &[CapacitorGroup]) -> Vec<CapacitorGroup> {
    let has = |name: &String| part.capacitors.iter().any(|one| one.position.designator == *name);
    groups.iter().filter(|group| group.designators.first().is_some_and(|name| !has(name))).cloned().collect()
}

fn as_group(position: &Capacitor) -> CapacitorGroup {
    let Capacitor { capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, .. } = *position;
    let Capacitor { dielectric, mounting, function, low_esr, .. } = *position;
    let named = !position.designator.is_empty();
    CapacitorGroup {
        count: 1,
        designators: if named { vec![position.designator.clone()] } else { Vec::new() },
        capacitance_uf,
        voltage_v,
        temperature_c,
        diameter_mm,
        height_mm,
        pitch_mm,
        dielectric,
        mounting,
        series: position.series.clone(),
        place_on_part: position.place_on_part.clone(),
        polarity: position.polarity.clone(),
        function,
        low_esr,
        // The next board's own is still to be looked at.
        state: CapacitorState::NotLooked,
    }
}
