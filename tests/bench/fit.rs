//! How long fit takes: a whole machine, the exchange of one part in it, all candidates of one role, an offered part.
//!
//! `cargo bench --bench fit` prints each figure with its target: an invented logbook of 10,000 parts, the shipped
//! tables. Medians of several rounds, plain wall clock. Of the exchanges each place of the machine is told, and of the
//! roles each kind: the targets are for the slowest.
#![allow(clippy::unwrap_used)]

use std::hint::black_box;
use std::time::Instant;

use benchwright::assess::Answers;
use benchwright::assess::fit::candidates::Candidates;
use benchwright::assess::fit::{Build, Models, Piece};
use benchwright::assess::offer::Offered;
use benchwright::record::Word;
use benchwright::rules::Rules;
use benchwright::store::invent;
use chrono::NaiveDate;

const ROUNDS: usize = 101;
const PARTS: u32 = 10_000;

/// The median of one call in µs; each round makes so many calls.
fn median_us(calls: usize, mut call: impl FnMut()) -> f64 {
    let mut rounds: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            (0..calls).for_each(|_| call());
            start.elapsed().as_secs_f64() * 1e6 / calls as f64
        })
        .collect();
    rounds.sort_unstable_by(f64::total_cmp);
    rounds[ROUNDS / 2]
}

fn show(what: &str, figure_us: f64, target_us: f64) {
    let verdict = if figure_us < target_us { "within" } else { "OVER" };
    println!("{what:<60} {figure_us:>10.1} µs  {verdict} {target_us} µs");
}

fn main() {
    let rules = Rules::shipped();
    let today: NaiveDate = "2026-06-01".parse().unwrap();
    let folder = tempfile::tempdir().unwrap();
    let logbook = invent::create(&folder.path().join("bench.logbook"), today, PARTS, 1).unwrap().logbook();
    let answers = Answers::of(&logbook, &rules, today);
    let mut models = Models::new(&rules);
    // The largest machine, and of those the one with most settings.
    let machine = answers.machines.iter().max_by_key(|known| {
        let settings = answers.build(known.machine, &mut models, None).map_or(0, |build| build.settings().len());
        (known.members.len(), settings)
    });
    let machine = machine.unwrap();
    let mut build = answers.build(machine.machine, &mut models, None).unwrap();
    let reasons = build.because().count();
    let settings = build.settings().len();
    println!("{} parts, {reasons} reasons, {settings} settings: {:?}", build.pieces().len(), build.tally());

    show(
        "a whole machine, from its records",
        median_us(20, || drop(black_box(answers.build(machine.machine, &mut Models::new(&rules), None)))),
        200.0,
    );
    let (pieces, asked) = (build.pieces().to_vec(), build.asked().clone());
    show(
        "a whole machine, designs gathered before",
        median_us(20, || drop(black_box(Build::new(&rules, pieces.clone(), asked.clone())))),
        200.0,
    );

    for (place, piece) in pieces.iter().enumerate() {
        let kind = piece.kind();
        // Parts of the kind of other designs, taken in turn.
        let others = answers.parts.iter().filter(|part| part.file.part.kind == kind && part.design.is_some());
        let others: Vec<Piece> = others.step_by(7).take(40).map(|part| models.piece(part, false)).collect();
        let mut turn = 0;
        let figure = median_us(20, || {
            turn = (turn + 1) % others.len();
            black_box(build.swap(place, others[turn].clone()));
        });
        show(&format!("one part exchanged: {}", kind.label().to_lowercase()), figure, 20.0);
        build.swap(place, piece.clone());
    }

    for role in &machine.file.roles {
        let count = || Candidates::of(&answers, &rules, machine.machine, role.id, None).unwrap();
        let figure = median_us(1, || drop(black_box(count())));
        let what = format!("{} candidates: {}", count().ranked.len(), role.kind.label().to_lowercase());
        show(&what, figure, 20_000.0);
    }

    for (kind, connector) in [("sound_card", "isa-16"), ("memory_module", "simm-72")] {
        let offered = Offered::read(kind, &[connector.to_owned()], &[], "1994", &rules.connectors).unwrap();
        let figure = median_us(1, || drop(black_box(offered.answer(&logbook, &answers, &rules))));
        show(&format!("offered for {} machines: {kind}", answers.machines.len()), figure, 100_000.0);
    }
}
