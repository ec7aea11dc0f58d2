//! How long the schedule of 5,000 pieces and the choice for an evening take, beside a general graph library.
//!
//! `cargo bench --bench schedule` prints each figure with its target. Medians of several rounds, plain wall clock. The
//! library is networkx, where `tests/referee/run` has installed it: one longest path over the same pieces.
#![allow(clippy::unwrap_used)]

mod median;

use std::hint::black_box;
use std::io::Write as _;
use std::process::{Command, Stdio};

use benchwright::assess::Answers;
use benchwright::assess::schedule::{Ground, Schedule, Terms, schedule};
use benchwright::assess::tonight::{Evening, PATIENCE, tonight};
use benchwright::rules::Rules;
use benchwright::store::invent;
use median::{median_ms, show};

/// Enough that machines ask for 5,000 pieces of work and proofs.
const PARTS: u32 = 46_000;
const SCHEDULE_MS: f64 = 50.0;
const EVENING_MS: f64 = 1_000.0;

/// The library's time for one longest path, and what it found.
const REFEREE: &str = r"
import json, sys, time, networkx
edges = json.load(sys.stdin)
def once():
    graph = networkx.DiGraph()
    graph.add_weighted_edges_from(edges)
    begin = time.perf_counter()
    length = networkx.dag_longest_path_length(graph)
    return (time.perf_counter() - begin) * 1000, length
rounds = sorted(once() for _ in range(5))
print(rounds[2][0], networkx.__version__)
";

fn referee(made: &Schedule) -> Option<String> {
    let python = concat!(env!("CARGO_MANIFEST_DIR"), "/target/referee/bin/python");
    let mut edges: Vec<(i64, i64, f64)> = Vec::new();
    for (at, planned) in made.planned.iter().enumerate() {
        edges.push((-1, at as i64, 0.0));
        for first in &planned.after {
            let before = made.planned[*first].slot;
            edges.push((*first as i64, at as i64, before.over - before.start));
        }
    }
    let mut child =
        Command::new(python).args(["-c", REFEREE]).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().ok()?;
    child.stdin.take()?.write_all(serde_json::to_string(&edges).unwrap().as_bytes()).ok()?;
    let output = child.wait_with_output().ok()?;
    output.status.success().then(|| String::from_utf8(output.stdout).unwrap())
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let today = "2026-06-01".parse().unwrap();
    let store = invent::create(&folder.path().join("large"), today, PARTS, 1).unwrap();
    let (logbook, rules) = (store.logbook(), Rules::shipped());
    let answers = Answers::of(&logbook, &rules, today);
    let terms = Terms { minutes_per_week: 360, delivery_days: 14 };
    let ground = Ground::of(&logbook, &rules);
    let make = |ground: &Ground| schedule(&answers, ground, terms).unwrap();
    let made = make(&ground);
    let (pieces, machines) = (made.planned.len(), made.machines.len());
    let ms = median_ms(|| drop(black_box(make(&ground))));
    show(&format!("schedule of {pieces} pieces for {machines} machines, other terms"), ms, SCHEDULE_MS);
    let ms = median_ms(|| drop(black_box(make(&Ground::of(&logbook, &rules)))));
    show("the same after an edit", ms, SCHEDULE_MS);
    match referee(&made) {
        Some(told) => println!("  networkx, one longest path over the same pieces: {} (ms, version)", told.trim()),
        None => println!("  networkx: not installed, run tests/referee/run once"),
    }
    for minutes in [60, 150, 360] {
        let evening = Evening { minutes, help: false };
        let choose = || tonight(&answers, &logbook, &rules, evening, PATIENCE);
        let plan = choose();
        let found = if plan.is_best() { "the best" } else { "not settled" };
        let ms = median_ms(|| drop(black_box(choose())));
        show(&format!("choice of {} for {minutes} min, {found}", plan.items.len()), ms, EVENING_MS);
    }
}
