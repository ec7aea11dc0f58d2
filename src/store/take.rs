//! Files → rows: what of a part or a machine a change did not touch is taken over from the last revision.

use std::collections::BTreeSet;

use super::rows::Records;
use crate::record::{Attachment, EntryKind, FaultCaseFile, MachineFile, PartFile, PhotoFile, Proof, Reading};

impl Records {
    /// Takes over everything of a part but the kinds that are to be read again.
    pub fn take_part(&mut self, file: &PartFile, stale: &BTreeSet<EntryKind>) {
        let PartFile {
            part, markings, surveys, findings, capacitors, readings, settings, work, work_after, uses, ..
        } = file;
        let PartFile { proofs, cases, custody, valuations, photos, attachments, .. } = file;
        let keeps = |kind| !stale.contains(&kind);
        let mut take = Take { records: self, stale };
        take.tests(readings, proofs, cases);
        take.files(photos, attachments);
        if keeps(EntryKind::Part) {
            self.part.push(part.clone());
        }
        if keeps(EntryKind::Marking) {
            self.marking.extend_from_slice(markings);
        }
        if keeps(EntryKind::Survey) {
            self.survey.extend_from_slice(surveys);
        }
        if keeps(EntryKind::Finding) {
            self.finding.extend(findings.iter().map(|file| file.finding.clone()));
        }
        if keeps(EntryKind::Look) {
            self.look.extend(findings.iter().flat_map(|file| file.looks.iter().cloned()));
        }
        if keeps(EntryKind::Capacitor) {
            self.capacitor.extend(capacitors.iter().map(|file| file.position.clone()));
        }
        if keeps(EntryKind::CapacitorLook) {
            self.capacitor_look.extend(capacitors.iter().flat_map(|file| file.looks.iter().cloned()));
        }
        if keeps(EntryKind::Setting) {
            self.setting.extend_from_slice(settings);
        }
        if keeps(EntryKind::Work) {
            self.work.extend_from_slice(work);
        }
        if keeps(EntryKind::WorkAfter) {
            self.work_after.extend_from_slice(work_after);
        }
        if keeps(EntryKind::MaterialUse) {
            self.material_use.extend_from_slice(uses);
        }
        if keeps(EntryKind::CustodyEvent) {
            self.custody_event.extend_from_slice(custody);
        }
        if keeps(EntryKind::Valuation) {
            self.valuation.extend_from_slice(valuations);
        }
    }

    /// Takes over everything of a machine but the kinds that are to be read again.
    pub fn take_machine(&mut self, file: &MachineFile, stale: &BTreeSet<EntryKind>) {
        let MachineFile { machine, roles, placements, fittings, power_ons, .. } = file;
        let MachineFile { proofs, readings, cases, photos, attachments, .. } = file;
        let keeps = |kind| !stale.contains(&kind);
        let mut take = Take { records: self, stale };
        take.tests(readings, proofs, cases);
        take.files(photos, attachments);
        if keeps(EntryKind::Machine) {
            self.machine.push(machine.clone());
        }
        if keeps(EntryKind::Role) {
            self.role.extend_from_slice(roles);
        }
        if keeps(EntryKind::Placement) {
            self.placement.extend_from_slice(placements);
        }
        if keeps(EntryKind::Fitting) {
            self.fitting.extend_from_slice(fittings);
        }
        if keeps(EntryKind::PowerOn) {
            self.power_on.extend_from_slice(power_ons);
        }
    }
}

/// What parts and machines have alike.
struct Take<'a> {
    records: &'a mut Records,
    stale: &'a BTreeSet<EntryKind>,
}

impl Take<'_> {
    fn keeps(&self, kind: EntryKind) -> bool {
        !self.stale.contains(&kind)
    }

    fn tests(&mut self, readings: &[Reading], proofs: &[Proof], cases: &[FaultCaseFile]) {
        if self.keeps(EntryKind::Reading) {
            self.records.reading.extend_from_slice(readings);
        }
        if self.keeps(EntryKind::Proof) {
            self.records.proof.extend_from_slice(proofs);
        }
        if self.keeps(EntryKind::FaultCase) {
            self.records.fault_case.extend(cases.iter().map(|file| file.case.clone()));
        }
        if self.keeps(EntryKind::Trial) {
            self.records.trial.extend(cases.iter().flat_map(|file| file.trials.iter().cloned()));
        }
    }

    fn files(&mut self, photos: &[PhotoFile], attachments: &[Attachment]) {
        if self.keeps(EntryKind::Photo) {
            self.records.photo.extend(photos.iter().map(|file| file.photo.clone()));
        }
        if self.keeps(EntryKind::PhotoMark) {
            self.records.photo_mark.extend(photos.iter().flat_map(|file| file.marks.iter().cloned()));
        }
        if self.keeps(EntryKind::Attachment) {
            self.records.attachment.extend_from_slice(attachments);
        }
    }
}
