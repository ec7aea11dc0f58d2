//! The median of several rounds, plain wall clock.
#![allow(dead_code)] // each bench takes what it needs

use std::time::Instant;

const ROUNDS: usize = 15;

/// Milliseconds that a call takes.
pub fn median_ms(mut call: impl FnMut()) -> f64 {
    let mut rounds: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            call();
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    rounds.sort_unstable_by(f64::total_cmp);
    rounds[ROUNDS / 2]
}

/// Prints a figure in milliseconds beside its target.
pub fn show(what: &str, figure: f64, target: f64) {
    let verdict = if figure < target { "within" } else { "OVER" };
    println!("{what:<64} {figure:>9.3} ms  {verdict} {target} ms");
}
