//! How long all answers take for a large logbook, and those of the next revision after one edit.
//!
//! `cargo bench --bench assess` prints each figure with its target: an invented logbook of 10,000 parts, the shipped
//! tables. Medians of several rounds, plain wall clock.
#![allow(clippy::unwrap_used, clippy::assigning_clones)]

mod median;

use std::hint::black_box;
use std::sync::Arc;

use benchwright::assess::Answers;
use benchwright::assess::outstanding::materials;
use benchwright::record::{Logbook, PartFile};
use benchwright::rules::Rules;
use benchwright::store::invent;
use chrono::NaiveDate;
use median::{median_ms, show};

const PARTS: u32 = 10_000;

fn main() {
    let rules = Rules::shipped();
    let today: NaiveDate = "2026-06-01".parse().unwrap();
    let folder = tempfile::tempdir().unwrap();
    let logbook = invent::create(&folder.path().join("bench.logbook"), today, PARTS, 1).unwrap().logbook();
    let logbook: &Logbook = &logbook;
    let count = |of: fn(&PartFile) -> usize| logbook.parts.iter().map(|file| of(file)).sum::<usize>();
    println!(
        "{} parts, {} findings, {} capacitor positions, {} machines",
        logbook.parts.len(),
        count(|file| file.findings.len()),
        count(|file| file.capacitors.len()),
        logbook.machines.len()
    );
    let answers = Answers::of(logbook, &rules, today);
    let totals = answers.totals();
    let reasons: usize = answers.machines.iter().flat_map(|m| &m.readiness.gates).map(|gate| gate.reasons.len()).sum();
    println!("{} tasks, {} of them doable now; {reasons} reasons of the machines", totals.tasks, totals.doable);

    show(
        "all outstanding work and readiness",
        median_ms(|| drop(black_box(Answers::of(logbook, &rules, today)))),
        100.0,
    );
    show("materials of all tasks", median_ms(|| drop(black_box(materials(answers.tasks(), &[])))), 10.0);

    let edit = |at: usize| {
        let mut next = logbook.clone();
        let mut file = (*next.parts[at]).clone();
        file.part.note = "edited".to_owned();
        next.parts[at] = Arc::new(file);
        next
    };
    let fitted = logbook.machines[3].fitted().next().unwrap().part;
    let fitted = logbook.parts.iter().position(|file| file.part.id == fitted).unwrap();
    for (what, at) in [("a part on the shelf", PARTS as usize - 1), ("a part of a machine", fitted)] {
        let next = edit(at);
        show(
            &format!("answers after an edit: {what}"),
            median_ms(|| drop(black_box(answers.next(&next, &rules, today)))),
            3.0,
        );
    }
    let mut next = logbook.clone();
    let mut machine = (*next.machines[7]).clone();
    machine.machine.note = "edited".to_owned();
    next.machines[7] = Arc::new(machine);
    show("answers after an edit: a machine", median_ms(|| drop(black_box(answers.next(&next, &rules, today)))), 3.0);
}
