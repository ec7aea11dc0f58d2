//! How long it takes to say which spare goes where, over random shelves, beside general-purpose solvers.
//!
//! `cargo bench --bench placement [SEEDS]` prints each figure with its target; 50 seeds where none is told. The solvers are
//! HiGHS and CP-SAT, where `tests/referee/run` has installed them, over every choice and no cut, with models of the same
//! rows; as ours, each works in one thread.
//!
//! Measured on a machine of two cores: of 50 seeds 49 proven within 2 s, median 0.27 s, the other one within 0.002 % of
//! the bound; 10,000 spares within 0.001 % of it in 10 s. Uncut, neither HiGHS nor CP-SAT was done with 2,000 spares in a
//! minute, where ours took 0.2 and 0.3 s.
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
/// So many shelves are asked of the other solvers too.
const COMPARED: u64 = 3;
/// So long each of them may take.
const LIMIT: Duration = Duration::from_mins(1);

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

/// What each solver's answer to one question is worth, none where it was not done in time, and how long it took: the
/// solving alone, not telling it the rows.
const REFEREE: &str = r"
import json, sys, time
exec(compile(open(sys.argv[1]).read().removesuffix('main()\n'), sys.argv[1], 'exec'))
limit, took = float(sys.argv[2]), []
def timed(call):
    def wrapped(*told, **named):
        begin = time.perf_counter()
        given = call(*told, **named)
        took.append(time.perf_counter() - begin)
        return given
    return wrapped
def in_time(solver, model, solve=cp_model.CpSolver.solve):
    solver.parameters.max_time_in_seconds = limit
    return solve(solver, model)
def by_milp(options, solve=milp, **named):
    return solve(options=options | {'time_limit': limit}, **named)
def worth(by, **named):
    try:
        return by(question, **named)
    except SystemExit:
        return None
milp, cp_model.CpSolver.solve = timed(by_milp), timed(in_time)
question = json.load(sys.stdin)
worths = worth(by_highs, presolve=True), worth(by_cp_sat)
print(json.dumps(list(zip(('HiGHS', 'CP-SAT'), worths, took))))
";

/// Of each solver: its name, what its answer is worth, and the seconds it took.
fn referees(question: &Question) -> Option<Vec<(String, Option<i64>, f64)>> {
    let root = env!("CARGO_MANIFEST_DIR");
    let (python, source) = (format!("{root}/target/referee/bin/python"), format!("{root}/tests/referee/placement.py"));
    let mut child = Command::new(python)
        .args(["-c", REFEREE, &source, &LIMIT.as_secs().to_string()])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .ok()?;
    child.stdin.take()?.write_all(serde_json::to_string(question).ok()?.as_bytes()).ok()?;
    let output = child.wait_with_output().ok().filter(|output| output.status.success())?;
    serde_json::from_slice(&output.stdout).ok()
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
        print!("seed {seed}: {} in {took:.2} s", given.worth);
        let Some(others) = referees(&question) else {
            println!("; the other solvers are not installed, run tests/referee/run once");
            continue;
        };
        for (name, worth, theirs) in others {
            let worth = worth.map_or("not done".to_owned(), |worth| worth.to_string());
            print!("; {name}: {worth} in {theirs:.2} s, {:.1} × as long", theirs / took);
        }
        println!(" (target: at least 1 × as long)");
    }
    let folder = tempfile::tempdir().unwrap();
    let today = "2026-06-01".parse().unwrap();
    let store: Store = sample::create(&folder.path().join("sample"), today, |_| Vec::new()).unwrap();
    let (logbook, rules) = (store.logbook(), Rules::shipped());
    let answers = Answers::of(&logbook, &rules, today);
    let base = ask(&logbook, &answers, &rules, Ask::default()).unwrap();
    let (best, took) = timed(|| propose(&base, &|| TARGET));
    let part = logbook.part_tagged("0034").unwrap().part.id;
    let machine = logbook.machine_named("The schoolroom, 1991").unwrap().machine.id;
    let (_, what) = timed(|| what_if((&base, &best), part, machine, &|| TARGET).unwrap());
    println!("the sample: {:.0} ms; a what-if {:.0} ms (target {WHAT_IF_TARGET:?})", took * 1e3, what * 1e3);
}
