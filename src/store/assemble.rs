//! Rows → files: what hangs on a part, a machine, a lot or a design is filed with it, in the order of its moments.

use std::sync::Arc;
use std::vec::IntoIter;

use super::rows::Records;
use crate::record::{
    Attachment, CapacitorFile, DesignFile, FaultCaseFile, FindingFile, Id, KitFile, KitLineFile, LotFile, MachineFile,
    Material, PartFile, PhotoFile, Place, Proof, Reading, Workshop,
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
    pub kits: Vec<Arc<KitFile>>,
}

/// Records in the order of their owners, and of each owner in the order of their moments: to be handed out owner by
/// owner, each list with just the room that it needs.
struct Piles<T, O> {
    records: IntoIter<T>,
    owner: fn(&T) -> Option<Id<O>>,
}

impl<T, O> Piles<T, O> {
    fn new<K: Ord>(mut records: Vec<T>, owner: fn(&T) -> Option<Id<O>>, order: impl Fn(&T) -> K) -> Self {
        records.sort_unstable_by_key(|record| (owner(record), order(record)));
        Self { records: records.into_iter(), owner }
    }

    /// What hangs on one owner; to be asked for in the order of the owners' keys. What hangs on none is passed over.
    fn of(&mut self, owner: Id<O>) -> Vec<T> {
        let Self { records, owner: of } = self;
        let lost = records.as_slice().iter().take_while(|record| of(record) < Some(owner)).count();
        let own = records.as_slice()[lost..].iter().take_while(|record| of(record) == Some(owner)).count();
        let mut pile = Vec::with_capacity(own);
        pile.extend(records.by_ref().skip(lost).take(own));
        pile
    }

    /// Hands all out to their files, which stand in the order of their keys. The room that they took is free again
    /// before the next records are sorted: a large logbook is never held twice.
    fn file<F>(mut self, files: &mut [F], key: impl Fn(&F) -> Id<O>, list: impl Fn(&mut F) -> &mut Vec<T>) {
        for file in files {
            *list(file) = self.of(key(file));
        }
    }
}

/// Records that happened, oldest first; the key settles what no moment tells.
macro_rules! piles {
    ($records:expr, $owner:expr, $($moment:ident).+, $($id:ident).+) => {
        Piles::new($records, $owner, |one| (one.$($moment).+.order(), one.$($id).+))
    };
}

fn sorted<T, K: Ord>(mut list: Vec<T>, key: impl Fn(&T) -> K) -> impl Iterator<Item = T> {
    list.sort_unstable_by_key(key);
    list.into_iter()
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
        let Self { workshop, place, lot, design, material, part, machine, .. } = self;
        let Self {
            design_connector,
            design_figure,
            design_capacitor,
            kit,
            kit_line,
            kit_position,
            role,
            placement,
            fitting,
            power_on,
            ..
        } = self;
        let Self { marking, survey, finding, work, look, capacitor, capacitor_look, reading, setting, .. } = self;
        let Self {
            work_after,
            material_use,
            proof,
            fault_case,
            trial,
            custody_event,
            valuation,
            photo,
            photo_mark,
            attachment,
            ..
        } = self;

        let mut looks = piles!(look, |one| Some(one.finding), looked, id);
        let findings = sorted(finding, |finding| finding.id)
            .map(|finding| FindingFile { looks: looks.of(finding.id), finding })
            .collect();
        let mut looks = piles!(capacitor_look, |one| Some(one.capacitor), looked, id);
        let capacitors = sorted(capacitor, |position| position.id)
            .map(|position| CapacitorFile { looks: looks.of(position.id), position })
            .collect();
        let mut trials = piles!(trial, |one| Some(one.case), tried, id);
        let cases = sorted(fault_case, |case| case.id).map(|case| FaultCaseFile { trials: trials.of(case.id), case });
        let mut marks = Piles::new(photo_mark, |one| Some(one.photo), |one| one.id);
        let photos = sorted(photo, |photo| photo.id).map(|photo| PhotoFile { marks: marks.of(photo.id), photo });
        let [part_photos, machine_photos, lot_photos] = split!(
            photos, file => file.photo.part.is_some(), file.photo.machine.is_some(), file.photo.lot.is_some());
        let [part_files, machine_files, lot_files] = split!(
            attachment, file => file.part.is_some(), file.machine.is_some(), file.lot.is_some());
        let [part_readings, machine_readings] = split!(reading, one => one.part.is_some(), one.machine.is_some());
        let [part_proofs, machine_proofs] = split!(proof, one => one.part.is_some(), one.machine.is_some());
        let [part_cases, machine_cases] = split!(cases, file => file.case.part.is_some(), file.case.machine.is_some());

        let mut parts: Vec<PartFile> = sorted(part, |part| part.id).map(PartFile::new).collect();
        let key = |file: &PartFile| file.part.id;
        piles!(marking, |one| Some(one.part), read, id).file(&mut parts, key, |file| &mut file.markings);
        piles!(survey, |one| Some(one.part), looked, id).file(&mut parts, key, |file| &mut file.surveys);
        Piles::new(findings, |one: &FindingFile| Some(one.finding.part), |one| one.finding.id).file(
            &mut parts,
            key,
            |file| &mut file.findings,
        );
        piles!(capacitors, |one: &CapacitorFile| Some(one.position.part), position.logged, position.id).file(
            &mut parts,
            key,
            |file| &mut file.capacitors,
        );
        piles!(part_readings, |one: &Reading| one.part, measured, id).file(&mut parts, key, |file| &mut file.readings);
        piles!(setting, |one| Some(one.part), found, id).file(&mut parts, key, |file| &mut file.settings);
        piles!(work, |one| Some(one.part), changed, id).file(&mut parts, key, |file| &mut file.work);
        Piles::new(work_after, |one| Some(one.part), |one| one.id).file(&mut parts, key, |file| &mut file.work_after);
        Piles::new(material_use, |one| Some(one.part), |one| one.id).file(&mut parts, key, |file| &mut file.uses);
        piles!(part_proofs, |one: &Proof| one.part, run, id).file(&mut parts, key, |file| &mut file.proofs);
        piles!(part_cases, |one: &FaultCaseFile| one.case.part, case.opened, case.id)
            .file(&mut parts, key, |file| &mut file.cases);
        piles!(custody_event, |one| Some(one.part), happened, id).file(&mut parts, key, |file| &mut file.custody);
        Piles::new(valuation, |one| Some(one.part), |one| (one.on.span().map(|span| span.last), one.id)).file(
            &mut parts,
            key,
            |file| &mut file.valuations,
        );
        piles!(part_photos, |one: &PhotoFile| one.photo.part, photo.added, photo.id)
            .file(&mut parts, key, |file| &mut file.photos);
        piles!(part_files, |one: &Attachment| one.part, added, id).file(&mut parts, key, |file| &mut file.attachments);

        let mut machines: Vec<MachineFile> = sorted(machine, |machine| machine.id).map(MachineFile::new).collect();
        let key = |file: &MachineFile| file.machine.id;
        Piles::new(role, |one| Some(one.machine), |one| one.id).file(&mut machines, key, |file| &mut file.roles);
        piles!(placement, |one| Some(one.machine), planned, id).file(&mut machines, key, |file| &mut file.placements);
        piles!(fitting, |one| Some(one.machine), fitted, id).file(&mut machines, key, |file| &mut file.fittings);
        piles!(power_on, |one| Some(one.machine), switched, id).file(&mut machines, key, |file| &mut file.power_ons);
        piles!(machine_proofs, |one: &Proof| one.machine, run, id).file(&mut machines, key, |file| &mut file.proofs);
        piles!(machine_readings, |one: &Reading| one.machine, measured, id)
            .file(&mut machines, key, |file| &mut file.readings);
        piles!(machine_cases, |one: &FaultCaseFile| one.case.machine, case.opened, case.id).file(
            &mut machines,
            key,
            |file| &mut file.cases,
        );
        piles!(machine_photos, |one: &PhotoFile| one.photo.machine, photo.added, photo.id).file(
            &mut machines,
            key,
            |file| &mut file.photos,
        );
        piles!(machine_files, |one: &Attachment| one.machine, added, id)
            .file(&mut machines, key, |file| &mut file.attachments);

        let mut photos = piles!(lot_photos, |one: &PhotoFile| one.photo.lot, photo.added, photo.id);
        let mut attachments = piles!(lot_files, |one: &Attachment| one.lot, added, id);
        let lots = sorted(lot, |lot| lot.id).map(|lot| LotFile {
            photos: photos.of(lot.id),
            attachments: attachments.of(lot.id),
            lot,
        });

        let mut connectors = Piles::new(design_connector, |one| Some(one.design), |one| one.id);
        let mut figures = Piles::new(design_figure, |one| Some(one.design), |one| one.id);
        let mut positions = Piles::new(design_capacitor, |one| Some(one.design), |one| one.id);
        let designs = sorted(design, |design| design.id).map(|design| DesignFile {
            connectors: connectors.of(design.id),
            figures: figures.of(design.id),
            capacitors: positions.of(design.id),
            design,
        });

        let mut positions = Piles::new(kit_position, |one| Some(one.line), |one| one.id);
        let lines: Vec<KitLineFile> = sorted(kit_line, |line| line.id)
            .map(|line| KitLineFile { positions: positions.of(line.id), line })
            .collect();
        let mut lines = Piles::new(lines, |one: &KitLineFile| Some(one.line.kit), |one| one.line.id);
        let kits = sorted(kit, |kit| kit.id).map(|kit| KitFile { lines: lines.of(kit.id), kit });

        Files {
            workshops: shared(workshop.into_iter()),
            places: shared(sorted(place, |place| place.id)),
            lots: shared(lots),
            designs: shared(designs),
            parts: shared(parts.into_iter()),
            machines: shared(machines.into_iter()),
            materials: shared(sorted(material, |material| material.id)),
            kits: shared(kits),
        }
    }
}

fn shared<T>(list: impl Iterator<Item = T>) -> Vec<Arc<T>> {
    list.map(Arc::new).collect()
}
