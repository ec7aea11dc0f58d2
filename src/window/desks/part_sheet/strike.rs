//! What would be lost if a part were struck from the logbook.

use super::about::About;
use crate::counted;

/// Each kind of record that hangs on the part or names it, with how many; nothing for a slip of the pen.
pub fn what_hangs_on(about: &About<'_>) -> Vec<String> {
    let file = about.file;
    let logbook = about.view.logbook;
    let id = file.part.id;
    let machines = || logbook.machines.iter();
    let inside = logbook.parts.iter().filter(|other| other.part.inside == Some(id)).count();
    let fitted = machines().flat_map(|machine| &machine.fittings).filter(|fitting| fitting.part == id).count();
    let planned = machines().flat_map(|machine| &machine.placements).filter(|plan| plan.part == id).count();
    let trials = logbook
        .parts
        .iter()
        .flat_map(|other| &other.cases)
        .chain(machines().flat_map(|machine| &machine.cases))
        .flat_map(|case| &case.trials)
        .filter(|trial| trial.suspect == Some(id) || trial.known_good == Some(id))
        .count();
    [
        (file.surveys.len(), counted!("{count} survey", "{count} surveys", file.surveys.len())),
        (file.findings.len(), counted!("{count} finding", "{count} findings", file.findings.len())),
        (file.markings.len(), counted!("{count} marking", "{count} markings", file.markings.len())),
        (file.capacitors.len(), counted!("{count} capacitor", "{count} capacitors", file.capacitors.len())),
        (file.readings.len(), counted!("{count} reading", "{count} readings", file.readings.len())),
        (file.settings.len(), counted!("{count} setting", "{count} settings", file.settings.len())),
        (file.work.len(), counted!("{count} piece of work", "{count} pieces of work", file.work.len())),
        (file.proofs.len(), counted!("{count} proof", "{count} proofs", file.proofs.len())),
        (file.cases.len(), counted!("{count} fault", "{count} faults", file.cases.len())),
        (file.custody.len(), counted!("{count} change of hands", "{count} changes of hands", file.custody.len())),
        (file.valuations.len(), counted!("{count} valuation", "{count} valuations", file.valuations.len())),
        (file.photos.len(), counted!("{count} photograph", "{count} photographs", file.photos.len())),
        (file.attachments.len(), counted!("{count} file", "{count} files", file.attachments.len())),
        (inside, counted!("{count} part inside it", "{count} parts inside it", inside)),
        (fitted, counted!("{count} fitting in a machine", "{count} fittings in machines", fitted)),
        (planned, counted!("{count} plan for a machine", "{count} plans for machines", planned)),
        (trials, counted!("{count} trial with it", "{count} trials with it", trials)),
    ]
    .into_iter()
    .filter(|(count, _)| *count > 0)
    .map(|(_, said)| said)
    .collect()
}
