//! How long it takes to say which spare goes where, over random shelves, beside a general-purpose solver.
//!
//! `cargo bench --bench placement [SEEDS]` prints each figure with its target; 50 seeds where none is told. The solver is
//! HiGHS, where `tests/referee/run` has installed it, over every choice and no cut, with a model of the same rows.
#![allow(clippy::unwrap_used)]

use std::io::Write as _;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use benchwright::assess::Answers;
use benchwright::assess::placement::question::Question;
use benchwright::assess::placement::solve::{Answer, Misfits, solve};
use benchwright::assess::placement::{Ask, ask, propose, what_if};
use benchwright::rules::Rules;
use benchwright::store::{Store, sample};
use shelves::shelf;

#[path = "../support/chance.rs"]
mod chance;
#[path = "../support/shelves.rs"]
mod shelves;

const TARGET: Duration = Duration::from_secs(2);
const LARGE_TARGET: Duration = Duration::from_secs(10);
const WHAT_IF_TARGET: Duration = Duration::from_millis(200);
/// So many shelves are asked of the other solver too.
const COMPARED: u64 = 3;

fn timed<R>(call: impl FnOnce() -> R) -> (R, f64) {
    let start = Instant::now();
    let given = call();
    (given, start.elapsed().as_secs_f64())
}

fn answer(question: &Question, patience: Duration) -> (Answer, f64) {
    let end = Instant::now() + patience;
    timed(|| solve(question, &|_, _| Misfits::default(), &|| end.saturating_duration_since(Instant::now())))
}

/// By how much an answer may fall short of the best, in hundredths.
fn gap(given: &Answer) -> f64 {
    (given.bound - given.worth) as f64 / given.bound.max(1) as f64 * 100.0
}

/// The solver's time for one question, and what its answer is worth.
const REFEREE: &str = r"
import importlib.util, json, sys, time
spec = importlib.util.spec_from_file_location('placement', sys.argv[1])
source = open(sys.argv[1]).read().removesuffix('main()\n')
exec(compile(source, sys.argv[1], 'exec'))
question = json.load(sys.stdin)
begin = time.perf_counter()
worth = by_highs(question)
print(worth, time.perf_counter() - begin)
";

fn referee(question: &Question) -> Option<(i64, f64)> {
    let root = env!("CARGO_MANIFEST_DIR");
    let (python, source) = (format!("{root}/target/referee/bin/python"), format!("{root}/tests/referee/placement.py"));
    let mut child = Command::new(python)
        .args(["-c", REFEREE, &source])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .ok()?;
    child.stdin.take()?.write_all(serde_json::to_string(question).ok()?.as_bytes()).ok()?;
    let output = child.wait_with_output().ok().filter(|output| output.status.success())?;
    let told = String::from_utf8(output.stdout).ok()?;
    let (worth, took) = told.trim().split_once(' ')?;
    Some((worth.parse().ok()?, took.parse().ok()?))
}

fn main() {
    let seeds = std::env::args().find_map(|told| told.parse::<u64>().ok()).unwrap_or(50);
    let mut times = Vec::new();
    let (mut in_time, mut widest) = (0, 0.0_f64);
    for seed in 0..seeds {
        let (given, took) = answer(&shelf(seed, 2000, 20), TARGET);
        in_time += u64::from(given.is_proven());
        widest = widest.max(gap(&given));
        times.push(took);
    }
    times.sort_unstable_by(f64::total_cmp);
    let median = times.get(times.len() / 2).copied().unwrap_or_default();
    println!(
        "2,000 spares, 20 machines, {seeds} seeds: {in_time} proven within {TARGET:?} (target 95 %), median {median:.2} s, \
         the rest within {widest:.3} % of the bound (target 1 %)"
    );
    for seed in 0..seeds.min(3) {
        let (given, took) = answer(&shelf(seed, 10_000, 40), LARGE_TARGET);
        let (gap, target) = (gap(&given), LARGE_TARGET);
        println!(
            "10,000 spares, 40 machines, seed {seed}: {gap:.3} % of the bound in {took:.1} s (target 1 % in {target:?})"
        );
    }
    for seed in 0..seeds.min(COMPARED) {
        let question = shelf(seed, 2000, 20);
        let (given, took) = answer(&question, Duration::from_mins(1));
        match referee(&question) {
            Some((worth, theirs)) => {
                let ratio = theirs / took;
                println!(
                    "seed {seed}: {} in {took:.2} s; HiGHS uncut: {worth} in {theirs:.2} s, {ratio:.1} × as long",
                    given.worth
                );
            }
            None => println!("seed {seed}: {took:.2} s; HiGHS: not installed, run tests/referee/run once"),
        }
    }
    let folder = tempfile::tempdir().unwrap();
    let today = "2026-06-01".parse().unwrap();
    let store: Store = sample::create(&folder.path().join("sample"), today, |_| Vec::new()).unwrap();
    let (logbook, rules) = (store.logbook(), Rules::shipped());
    let answers = Answers::of(&logbook, &rules, today);
    let base = ask(&logbook, &answers, &rules, Ask::default()).unwrap();
    let (_, took) = timed(|| propose(&base, &|| TARGET));
    let part = logbook.part_tagged("0034").unwrap().part.id;
    let machine = logbook.machine_named("The schoolroom, 1991").unwrap().machine.id;
    let (_, what) = timed(|| what_if(&base, part, machine, &|| TARGET).unwrap());
    println!("the sample: {:.0} ms; a what-if {:.0} ms (target {WHAT_IF_TARGET:?})", took * 1e3, what * 1e3);
}
