//! A part's file as it would be once something is written, to show what would follow.

use crate::record::{CapacitorFile, Entry, FindingFile, PartFile, PhotoFile};

/// Adds records to a part's file as the store would; records of other things are passed over.
pub fn add_entries(file: &mut PartFile, entries: &[Entry]) {
    for entry in entries.iter().cloned() {
        match entry {
            Entry::Part(part) => file.part = part,
            Entry::Marking(marking) => file.markings.push(marking),
            Entry::Survey(survey) => file.surveys.push(survey),
            Entry::Finding(finding) => file.findings.push(FindingFile { finding, looks: Vec::new() }),
            Entry::Look(look) => {
                if let Some(known) = file.findings.iter_mut().find(|known| known.finding.id == look.finding) {
                    known.looks.push(look);
                }
            }
            Entry::Capacitor(position) => file.capacitors.push(CapacitorFile { position, looks: Vec::new() }),
            Entry::Photo(photo) => file.photos.push(PhotoFile { photo, marks: Vec::new() }),
            _ => {}
        }
    }
}
