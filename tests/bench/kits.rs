//! How long the kit of 100,000 capacitor positions takes, beside a general-purpose solver.
//!
//! `cargo bench --bench kits` prints each figure with its target. Medians of several rounds, plain wall clock. The
//! solver is HiGHS, where `tests/referee/run` has installed it: the cover alone, as it is after demands that another
//! one stands for are out; ours is measured from the logbook to the lines.
#![allow(clippy::unwrap_used)]

mod median;

use std::hint::black_box;
use std::io::Write as _;
use std::process::{Command, Stdio};

use benchwright::assess::kits::fill::Problem;
use benchwright::assess::kits::{PATIENCE, Scope, Which, gather, in_stock};
use benchwright::rules::Rules;
use benchwright::store::invent;
use median::median_ms;

const TARGET_MS: f64 = 1_000.0;
/// About nine positions a part.
const PARTS: u32 = 11_500;

/// The solver's time for one cover, and the lines that it found.
const REFEREE: &str = r"
import json, sys, time, numpy, scipy
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csc_matrix
sets, weights, elements = json.load(sys.stdin)
rows = [at for one in sets for at in one]
columns = [at for at, one in enumerate(sets) for _ in one]
matrix = csc_matrix((numpy.ones(len(rows)), (rows, columns)), (elements, len(sets)))
begin = time.perf_counter()
solved = milp(weights, constraints=LinearConstraint(matrix, lb=1), integrality=numpy.ones(len(sets)),
              bounds=Bounds(0, 1), options={'mip_rel_gap': 0, 'time_limit': 120})
took = (time.perf_counter() - begin) * 1000
print(round(took, 1), 'ms,', round(solved.fun), 'in weight, scipy', scipy.__version__)
";

fn referee(problem: &Problem) -> Option<String> {
    let python = concat!(env!("CARGO_MANIFEST_DIR"), "/target/referee/bin/python");
    let mut child =
        Command::new(python).args(["-c", REFEREE]).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().ok()?;
    let asked = serde_json::to_string(&(&problem.sets, &problem.weights, problem.standing.len())).unwrap();
    child.stdin.take()?.write_all(asked.as_bytes()).ok()?;
    let output = child.wait_with_output().ok()?;
    output.status.success().then(|| String::from_utf8(output.stdout).unwrap())
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let today = "2026-06-01".parse().unwrap();
    let store = invent::create(&folder.path().join("large"), today, PARTS, 1).unwrap();
    let (logbook, rules) = (store.logbook(), Rules::shipped());
    for which in [Which::All, Which::Bad] {
        let make = || gather(&logbook, &rules, &Scope::All, &which, PATIENCE);
        let made = make();
        let ms = median_ms(|| drop(black_box(make())));
        let verdict = if ms < TARGET_MS { "within" } else { "OVER" };
        let proven = if made.is_best { "proven the fewest" } else { "not proven" };
        println!(
            "{}: {} positions, {} demands, {} lines, {proven}: {ms:.1} ms  {verdict} {TARGET_MS} ms",
            which.said(),
            made.positions.len(),
            made.demands.len(),
            made.lines.len()
        );
        let problem = Problem::of(&made.demands, &in_stock(&logbook), rules.orders.first().unwrap());
        let own = median_ms(|| drop(black_box(problem.solve(PATIENCE))));
        let (sets, elements) = (problem.sets.len(), problem.standing.len());
        let weight = problem.solve(PATIENCE).weight;
        println!("  the cover alone, {elements} demands by {sets} lines: {own:.1} ms, {weight} in weight");
        match referee(&problem) {
            Some(told) => println!("  HiGHS: {}", told.trim()),
            None => println!("  HiGHS: not installed, run tests/referee/run once"),
        }
    }
}
