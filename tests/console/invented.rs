//! Invented logbooks: as many as asked for, the same for the same seed, and wrong usage refused.

use benchwright::assess::{Answers, Gate};
use benchwright::record::{Kind, KitState, Logbook, Word};
use benchwright::rules::Rules;
use benchwright::store::{Store, StoreError, invent};
use chrono::NaiveDate;

use crate::{benchwright as run, json};

fn invented(parts: u32, seed: u64) -> std::sync::Arc<Logbook> {
    let folder = tempfile::tempdir().unwrap();
    let today = NaiveDate::from_ymd_opt(2026, 11, 24).unwrap();
    invent::create(&folder.path().join("i.logbook"), today, parts, seed).unwrap().logbook()
}

/// All that the logbook says, in words that can be compared.
fn said(logbook: &Logbook) -> String {
    let supplies = format!("{:?}{:?}", logbook.materials, logbook.kits);
    format!("{:?}{:?}{:?}{:?}{supplies}", logbook.parts, logbook.machines, logbook.designs, logbook.places)
}

#[test]
fn the_same_seed_invents_the_same_and_another_does_not() {
    let first = said(&invented(60, 7));
    assert_eq!(first, said(&invented(60, 7)));
    assert_ne!(first, said(&invented(60, 8)));
}

#[test]
fn as_much_hangs_on_parts_as_a_workshop_of_ten_thousand_would_have() {
    let logbook = invented(1000, 1);
    assert_eq!(logbook.parts.len(), 1000);
    // Of ten thousand: sixty thousand findings, a hundred thousand positions, forty machines; a tenth of that here.
    let findings: usize = logbook.parts.iter().map(|file| file.findings.len()).sum();
    let positions: usize = logbook.parts.iter().map(|file| file.capacitors.len()).sum();
    let surveys: usize = logbook.parts.iter().map(|file| file.surveys.len()).sum();
    assert!((5000..7000).contains(&findings), "{findings} findings");
    assert!((9000..11_000).contains(&positions), "{positions} positions");
    assert!(surveys >= 1000, "{surveys} surveys");
    assert_eq!(logbook.machines.len(), 4);
    let fitted: usize = logbook.machines.iter().map(|file| file.fittings.len()).sum();
    assert!(fitted > 16, "{fitted} fittings");
    let common = [Kind::Mainboard, Kind::VideoCard, Kind::MemoryModule, Kind::HardDisk, Kind::PowerSupply, Kind::Case];
    for kind in common {
        assert!(logbook.parts.iter().any(|file| file.part.kind == kind), "no {}", kind.label());
    }
}

#[test]
fn supplies_are_in_proportion_and_kits_stand_in_every_state() {
    let logbook = invented(3000, 1);
    let states: Vec<KitState> = logbook.kits.iter().map(|kit| kit.kit.state).collect();
    assert_eq!(states.len(), 6, "one for five hundred parts");
    assert!(KitState::ALL.iter().all(|state| states.contains(state)), "{states:?}");
    assert!(logbook.kits.iter().all(|kit| kit.positions().count() > 2));
    let uses: usize = logbook.parts.iter().map(|file| file.uses.len()).sum();
    let orders: usize = logbook.parts.iter().map(|file| file.work_after.len()).sum();
    assert!(uses > 300 && orders > 10, "{uses} uses, {orders} orders by hand");
    assert!(logbook.materials.len() > 100 && logbook.materials.iter().any(|one| one.on_order > 0.0));
    // An order by hand that went in a circle would keep both pieces from ever being begun.
    let answers = Answers::of(&logbook, &Rules::shipped(), NaiveDate::from_ymd_opt(2026, 11, 24).unwrap());
    for part in &answers.parts {
        for (at, task) in part.tasks.iter().enumerate() {
            for first in &task.elsewhere {
                assert_eq!(answers.way_back((part.part, at as u16), *first), None);
            }
        }
    }
}

#[test]
fn machines_stand_at_every_gate_before_ready_and_nothing_can_be_undone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("i.logbook");
    let today = NaiveDate::from_ymd_opt(2026, 11, 24).unwrap();
    let store = invent::create(&path, today, 3000, 1).unwrap();
    assert_eq!(store.undo_name(), None);
    assert!(matches!(store.undo_now(), Err(StoreError::NothingToUndo)));
    let answers = Answers::of(&store.logbook(), &Rules::shipped(), today);
    for gate in Gate::ALL.iter().filter(|gate| **gate != Gate::Ready) {
        let here = answers.machines.iter().filter(|machine| machine.readiness.at == *gate).count();
        assert_eq!(here, 2, "machines at “{}”", gate.label());
    }
    drop(store);
    assert_eq!(Store::open(&path).unwrap().undo_name(), None);
}

#[test]
fn the_program_invents_and_refuses_wrong_usage() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("i.logbook");
    let path = path.to_str().unwrap();
    for wrong in [&["--invent", "0"][..], &["--invent", "many"], &["--seed", "3"], &["--sample", "--invent", "5"]] {
        let output = run(&[&["new", path], wrong].concat());
        assert_eq!(output.status.code(), Some(2), "{wrong:?}");
        assert!(!output.stderr.is_empty() && !std::path::Path::new(path).exists());
    }
    let made = json(&["new", path, "--invent", "20", "--seed", "3", "--photographs", "30"]);
    assert_eq!((&made["parts"], &made["machines"]), (&20.into(), &1.into()));
    let logbook = Store::open(std::path::Path::new(path)).unwrap().logbook();
    assert_eq!(logbook.parts.iter().map(|file| file.photos.len()).sum::<usize>(), 30);
    let files: Vec<_> = std::fs::read_dir(std::path::Path::new(path).join("photos")).unwrap().collect();
    assert_eq!(files.len(), 30, "each photograph is another picture");
}

#[test]
fn it_goes_out_and_comes_back_the_same() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let (first, second, document, again) = (at("a.logbook"), at("b.logbook"), at("a.json"), at("b.json"));
    assert!(run(&["new", &first, "--invent", "40"]).status.success());
    assert!(run(&["export", &first, &document]).status.success());
    assert!(run(&["new", &second]).status.success());
    let import = run(&["import", &second, &document]);
    assert!(import.status.success(), "{}", String::from_utf8_lossy(&import.stderr));
    assert!(run(&["export", &second, &again]).status.success());
    let read = |path: &str| serde_json::from_slice::<serde_json::Value>(&std::fs::read(path).unwrap()).unwrap();
    let (was, is) = (read(&document), read(&again));
    for list in ["part", "finding", "look", "capacitor", "survey", "work", "machine", "fitting", "design"] {
        assert!(!was[list].is_null(), "the document has no list “{list}”");
        assert_eq!(was[list], is[list], "{list}");
    }
}
