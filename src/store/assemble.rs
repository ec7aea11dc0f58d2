//! Rows → files: what hangs on a part, a machine, a lot or a design is filed with it, in the order of its moments.

use std::collections::HashMap;
use std::hash::Hash;
use std::sync::Arc;

use super::rows::Records;
use crate::record::{
    CapacitorFile, Design, DesignFile, FaultCaseFile, FindingFile, Id, Lot, LotFile, Machine, MachineFile, Material,
    Moment, Part, PartFile, PhotoFile, Place, Workshop,
};

/// Files of every kind, each list in the order of its keys.
pub struct Files {
    pub workshops: Vec<Arc<Workshop>>,
    pub places: Vec<Arc<Place>>,
    pub lots: Vec<Arc<LotFile>>,
    pub designs: Vec<Arc<DesignFile>>,
    pub parts: Vec<Arc<PartFile>>,
    pub machines: Vec<Arc<MachineFile>>,
    pub materials: Vec<Arc<Material>>,
}

/// Children by their parent's key, in the order they came.
fn by_parent<K: Hash + Eq, T>(children: Vec<T>, parent: impl Fn(&T) -> K) -> HashMap<K, Vec<T>> {
    let mut groups: HashMap<K, Vec<T>> = HashMap::new();
    for child in children {
        groups.entry(parent(&child)).or_default().push(child);
    }
    groups
}

/// Puts each child into the list of its owner; what names no known owner is left out.
fn file<T, O, F>(
    children: Vec<T>,
    files: &mut [F],
    index: &HashMap<Id<O>, usize>,
    owner: impl Fn(&T) -> Option<Id<O>>,
    list: impl Fn(&mut F) -> &mut Vec<T>,
) {
    for child in children {
        if let Some(at) = owner(&child).and_then(|id| index.get(&id)) {
            list(&mut files[*at]).push(child);
        }
    }
}

fn index<F, O>(files: &[F], key: impl Fn(&F) -> Id<O>) -> HashMap<Id<O>, usize> {
    files.iter().enumerate().map(|(at, file)| (key(file), at)).collect()
}

/// Sorts by moment, oldest first; the key settles what no moment tells. Tens of thousands of lists hold one record or
/// two: each gives back the room it grew into.
fn sort<T>(list: &mut Vec<T>, moment: impl Fn(&T) -> Moment, id: impl Fn(&T) -> uuid::Uuid) {
    list.shrink_to_fit();
    if list.len() > 1 {
        list.sort_by_key(|record| (moment(record).order(), id(record)));
    }
}

/// Children of one list split by which of their owners is told: those of parts, machines and lots.
macro_rules! split {
    ($children:expr, $record:ident => $($owner:expr),+) => {{
        let children = $children;
        let mut groups = [$({ let _ = stringify!($owner); Vec::new() }),+];
        for $record in children {
            let owners = [$($owner),+];
            if let Some(at) = owners.iter().position(|owned| *owned) {
                groups[at].push($record);
            }
        }
        groups
    }};
}

impl Records {
    /// Files all records with their owners.
    pub fn assemble(self) -> Files {
        let Self { workshop, mut place, lot, design, mut material, part, machine, .. } = self;
        let Self { design_connector, design_figure, role, placement, fitting, power_on, .. } = self;
        let Self { marking, survey, finding, work, look, capacitor, capacitor_look, reading, setting, .. } = self;
        let Self { proof, fault_case, trial, custody_event, valuation, photo, photo_mark, attachment, .. } = self;

        let mut looks = by_parent(look, |look| look.finding);
        let findings = finding.into_iter().map(|finding| {
            let mut looks = looks.remove(&finding.id).unwrap_or_default();
            sort(&mut looks, |look| look.looked, |look| look.id.uuid());
            FindingFile { finding, looks }
        });
        let mut capacitor_looks = by_parent(capacitor_look, |look| look.capacitor);
        let capacitors = capacitor.into_iter().map(|position| {
            let mut looks = capacitor_looks.remove(&position.id).unwrap_or_default();
            sort(&mut looks, |look| look.looked, |look| look.id.uuid());
            CapacitorFile { position, looks }
        });
        let mut trials = by_parent(trial, |trial| trial.case);
        let cases = fault_case.into_iter().map(|case| {
            let mut trials = trials.remove(&case.id).unwrap_or_default();
            sort(&mut trials, |trial| trial.tried, |trial| trial.id.uuid());
            FaultCaseFile { case, trials }
        });
        let mut marks = by_parent(photo_mark, |mark| mark.photo);
        let photos = photo.into_iter().map(|photo| {
            let mut marks = marks.remove(&photo.id).unwrap_or_default();
            marks.sort_by_key(|mark| mark.id);
            PhotoFile { photo, marks }
        });
        let [part_photos, machine_photos, lot_photos] = split!(
            photos, file => file.photo.part.is_some(), file.photo.machine.is_some(), file.photo.lot.is_some());
        let [part_files, machine_files, lot_files] = split!(
            attachment, file => file.part.is_some(), file.machine.is_some(), file.lot.is_some());
        let [part_readings, machine_readings] = split!(reading, one => one.part.is_some(), one.machine.is_some());
        let [part_proofs, machine_proofs] = split!(proof, one => one.part.is_some(), one.machine.is_some());
        let [part_cases, machine_cases] = split!(cases, file => file.case.part.is_some(), file.case.machine.is_some());

        let mut parts = sorted(part, |part: &Part| part.id, PartFile::new);
        let at = index(&parts, |file| file.part.id);
        file(marking, &mut parts, &at, |one| Some(one.part), |file| &mut file.markings);
        file(survey, &mut parts, &at, |one| Some(one.part), |file| &mut file.surveys);
        file(findings.collect(), &mut parts, &at, |one| Some(one.finding.part), |file| &mut file.findings);
        file(capacitors.collect(), &mut parts, &at, |one| Some(one.position.part), |file| &mut file.capacitors);
        file(part_readings, &mut parts, &at, |one| one.part, |file| &mut file.readings);
        file(setting, &mut parts, &at, |one| Some(one.part), |file| &mut file.settings);
        file(work, &mut parts, &at, |one| Some(one.part), |file| &mut file.work);
        file(part_proofs, &mut parts, &at, |one| one.part, |file| &mut file.proofs);
        file(part_cases, &mut parts, &at, |one| one.case.part, |file| &mut file.cases);
        file(custody_event, &mut parts, &at, |one| Some(one.part), |file| &mut file.custody);
        file(valuation, &mut parts, &at, |one| Some(one.part), |file| &mut file.valuations);
        file(part_photos, &mut parts, &at, |one| one.photo.part, |file| &mut file.photos);
        file(part_files, &mut parts, &at, |one| one.part, |file| &mut file.attachments);
        parts.iter_mut().for_each(sort_part);

        let mut machines = sorted(machine, |machine: &Machine| machine.id, MachineFile::new);
        let at = index(&machines, |file| file.machine.id);
        file(role, &mut machines, &at, |one| Some(one.machine), |file| &mut file.roles);
        file(placement, &mut machines, &at, |one| Some(one.machine), |file| &mut file.placements);
        file(fitting, &mut machines, &at, |one| Some(one.machine), |file| &mut file.fittings);
        file(power_on, &mut machines, &at, |one| Some(one.machine), |file| &mut file.power_ons);
        file(machine_proofs, &mut machines, &at, |one| one.machine, |file| &mut file.proofs);
        file(machine_readings, &mut machines, &at, |one| one.machine, |file| &mut file.readings);
        file(machine_cases, &mut machines, &at, |one| one.case.machine, |file| &mut file.cases);
        file(machine_photos, &mut machines, &at, |one| one.photo.machine, |file| &mut file.photos);
        file(machine_files, &mut machines, &at, |one| one.machine, |file| &mut file.attachments);
        machines.iter_mut().for_each(sort_machine);

        let mut lots =
            sorted(lot, |lot: &Lot| lot.id, |lot| LotFile { lot, photos: Vec::new(), attachments: Vec::new() });
        let at = index(&lots, |file| file.lot.id);
        file(lot_photos, &mut lots, &at, |one| one.photo.lot, |file| &mut file.photos);
        file(lot_files, &mut lots, &at, |one| one.lot, |file| &mut file.attachments);
        for file in &mut lots {
            sort(&mut file.photos, |one| one.photo.added, |one| one.photo.id.uuid());
            sort(&mut file.attachments, |one| one.added, |one| one.id.uuid());
        }

        let mut designs = sorted(design, |design: &Design| design.id, DesignFile::new);
        let at = index(&designs, |file| file.design.id);
        file(design_connector, &mut designs, &at, |one| Some(one.design), |file| &mut file.connectors);
        file(design_figure, &mut designs, &at, |one| Some(one.design), |file| &mut file.figures);
        for file in &mut designs {
            file.connectors.sort_by_key(|one| one.id);
            file.figures.sort_by_key(|one| one.id);
        }

        place.sort_by_key(|place| place.id);
        material.sort_by_key(|material| material.id);
        Files {
            workshops: shared(workshop),
            places: shared(place),
            lots: shared(lots),
            designs: shared(designs),
            parts: shared(parts),
            machines: shared(machines),
            materials: shared(material),
        }
    }
}

fn shared<T>(list: Vec<T>) -> Vec<Arc<T>> {
    list.into_iter().map(Arc::new).collect()
}

fn sorted<T, F, K: Ord>(mut list: Vec<T>, key: impl Fn(&T) -> K, open: impl Fn(T) -> F) -> Vec<F> {
    list.sort_by_key(key);
    list.into_iter().map(open).collect()
}

fn sort_part(file: &mut PartFile) {
    sort(&mut file.markings, |one| one.read, |one| one.id.uuid());
    sort(&mut file.surveys, |one| one.looked, |one| one.id.uuid());
    file.findings.sort_by_key(|one| one.finding.id);
    sort(&mut file.capacitors, |one| one.position.logged, |one| one.position.id.uuid());
    sort(&mut file.readings, |one| one.measured, |one| one.id.uuid());
    sort(&mut file.settings, |one| one.found, |one| one.id.uuid());
    sort(&mut file.work, |one| one.changed, |one| one.id.uuid());
    sort(&mut file.proofs, |one| one.run, |one| one.id.uuid());
    sort(&mut file.cases, |one| one.case.opened, |one| one.case.id.uuid());
    sort(&mut file.custody, |one| one.happened, |one| one.id.uuid());
    file.valuations.sort_by_key(|one| (one.on.span().map(|span| span.last), one.id));
    sort(&mut file.photos, |one| one.photo.added, |one| one.photo.id.uuid());
    sort(&mut file.attachments, |one| one.added, |one| one.id.uuid());
}

fn sort_machine(file: &mut MachineFile) {
    file.roles.sort_by_key(|one| one.id);
    sort(&mut file.placements, |one| one.planned, |one| one.id.uuid());
    sort(&mut file.fittings, |one| one.fitted, |one| one.id.uuid());
    sort(&mut file.power_ons, |one| one.switched, |one| one.id.uuid());
    sort(&mut file.proofs, |one| one.run, |one| one.id.uuid());
    sort(&mut file.readings, |one| one.measured, |one| one.id.uuid());
    sort(&mut file.cases, |one| one.case.opened, |one| one.case.id.uuid());
    sort(&mut file.photos, |one| one.photo.added, |one| one.photo.id.uuid());
    sort(&mut file.attachments, |one| one.added, |one| one.id.uuid());
}
