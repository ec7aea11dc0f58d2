//! Whatever is done, done and undone: memory equals a fresh load.

use benchwright::record::{Change, Entry, EntryKey, FindingState, Logbook, PartFile};
use benchwright::rules::Rules;
use benchwright::store::{Area, Store};
use proptest::prelude::*;

use crate::invent::Chance;
use crate::support::{assert_same, fresh, look};

/// Removes a part with all that hangs on it. What else refers to it stands in the way, and the store says so.
fn removal(file: &PartFile) -> Change {
    let mut keys: Vec<EntryKey> = Vec::new();
    keys.extend(file.photos.iter().flat_map(|file| &file.marks).map(|mark| EntryKey::from(mark.id)));
    keys.extend(file.photos.iter().map(|file| EntryKey::from(file.photo.id)));
    keys.extend(file.attachments.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.findings.iter().flat_map(|file| &file.looks).map(|look| EntryKey::from(look.id)));
    keys.extend(file.findings.iter().map(|file| EntryKey::from(file.finding.id)));
    keys.extend(file.capacitors.iter().flat_map(|file| &file.looks).map(|look| EntryKey::from(look.id)));
    keys.extend(file.capacitors.iter().map(|file| EntryKey::from(file.position.id)));
    keys.extend(file.cases.iter().flat_map(|file| &file.trials).map(|trial| EntryKey::from(trial.id)));
    keys.extend(file.cases.iter().map(|file| EntryKey::from(file.case.id)));
    keys.extend(file.markings.iter().rev().map(|one| EntryKey::from(one.id)));
    keys.extend(file.surveys.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.work.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.readings.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.settings.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.proofs.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.custody.iter().map(|one| EntryKey::from(one.id)));
    keys.extend(file.valuations.iter().map(|one| EntryKey::from(one.id)));
    keys.push(file.part.id.into());
    let mut change = Change::new("Remove");
    for key in keys {
        change.remove(key);
    }
    change
}

/// Something that a person might do next; nothing where there is nothing to do it to.
fn next(chance: &mut Chance, logbook: &Logbook, number: usize) -> Option<Change> {
    let mut change = Change::new("Change");
    let any = |chance: &mut Chance| (!logbook.parts.is_empty()).then(|| chance.pick(&logbook.parts));
    match chance.below(8) {
        0 | 1 => drop(change.put_all(chance.part(&format!("tag {number}")))),
        2 => {
            let part = any(chance)?.part.id;
            change.put_all(chance.machine(&format!("machine {number}"), part));
        }
        3 => return Some(removal(any(chance)?.as_ref())),
        4 => {
            let mut part = any(chance)?.part.clone();
            part.serial = number.to_string();
            part.place = None;
            part.inside = any(chance).map(|file| file.part.id);
            change.put(part);
        }
        5 => {
            let file = any(chance)?;
            let state = chance.pick(&[FindingState::Cured, FindingState::Watched, FindingState::Returned]);
            change.put(look(file.findings.first()?.finding.id, "2021", state));
        }
        6 => {
            // A finding is found to be another part's.
            let (from, to) = (any(chance)?, any(chance)?);
            let mut finding = from.findings.first()?.finding.clone();
            finding.part = to.part.id;
            change.put(finding);
        }
        _ => {
            let mut place = logbook.places.first()?.as_ref().clone();
            place.within = logbook.places.last().map(|place| place.id);
            change.put(place).put(Entry::from(logbook.lots.first()?.lot.clone()));
        }
    }
    Some(change)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(
        std::env::var("BENCHWRIGHT_CASES").ok().and_then(|count| count.parse().ok()).unwrap_or(16)
    ))]

    #[test]
    fn memory_equals_a_fresh_load_after_any_changes_undone_and_redone(
        seed in any::<u64>(),
        acts in proptest::collection::vec(0..10_u8, 1..24),
    ) {
        let (_folder, store) = fresh();
        let mut chance = Chance(seed);
        for (number, act) in acts.into_iter().enumerate() {
            let before = store.logbook();
            let outcome = match act {
                0 | 1 => store.undo_now(),
                2 => store.redo_now(),
                _ => match next(&mut chance, &before, number) {
                    Some(change) => store.write(change),
                    None => continue,
                },
            };
            match outcome {
                Ok(after) => prop_assert!(after.revision >= before.revision),
                Err(error) => {
                    prop_assert!(error.is_refusal(), "{error}");
                    assert_same(&store.logbook(), &before);
                }
            }
            let loaded = Store::open_reading(store.folder()).unwrap().logbook();
            assert_same(&store.logbook(), &loaded);
            prop_assert_eq!(store.logbook().revision, loaded.revision);
        }
        // All the way back, and all the way forth again.
        let end = store.logbook();
        let mut steps = 0;
        while store.undo_name().is_some() {
            store.undo_now().unwrap();
            steps += 1;
        }
        prop_assert!(store.logbook().parts.is_empty() && store.logbook().machines.is_empty());
        for _ in 0..steps {
            store.redo_now().unwrap();
        }
        assert_same(&store.logbook(), &end);
        let report = benchwright::store::check(store.folder(), &Rules::of(&[]).unwrap()).unwrap();
        // Chance draws its names and facts from no table, and keeps no files.
        let is_whole = |area| matches!(area, Area::Database | Area::Records);
        let troubles: Vec<_> = report.troubles.iter().filter(|trouble| is_whole(trouble.area)).collect();
        prop_assert!(troubles.is_empty(), "{troubles:#?}");
    }
}
