//! How long readings take: one unambiguous, the worst, and the markings of 10,000 parts read jointly.
//!
//! `cargo bench --bench readings` prints each figure with its target. Medians of several rounds, plain wall clock.

use std::hint::black_box;
use std::time::Instant;

use benchwright::trade::Span;
use benchwright::trade::capacitor::{self, Body};
use benchwright::trade::date_code::{Context, MarkingText, Surface, joint, read};

const ROUNDS: usize = 15;
const READINGS: usize = 20_000;
const PARTS: usize = 10_000;

/// The median of several rounds, in nanoseconds for one of `count` calls.
fn median_ns(count: usize, mut call: impl FnMut(usize)) -> f64 {
    let mut rounds: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            (0..count).for_each(&mut call);
            start.elapsed().as_secs_f64() * 1e9 / count as f64
        })
        .collect();
    rounds.sort_unstable_by(f64::total_cmp);
    rounds[ROUNDS / 2]
}

fn show(what: &str, figure: f64, target: f64, unit: &str) {
    let verdict = if figure < target { "within" } else { "OVER" };
    println!("{what:<52} {figure:>9.1} {unit}  {verdict} {target} {unit}");
}

fn date_codes(what: &str, codes: &[&str], context: &Context, target_ns: f64) {
    for code in codes {
        let ns = median_ns(READINGS, |_| {
            let _ = black_box(read(black_box(code), context));
        });
        show(&format!("date code, {what}: {code}"), ns, target_ns, "ns");
    }
}

fn capacitor_marks(what: &str, marks: &[&str], target_ns: f64) {
    for mark in marks {
        let ns = median_ns(READINGS, |_| {
            let _ = black_box(capacitor::read(black_box(mark), Body::Unknown));
        });
        show(&format!("capacitor, {what}: {mark}"), ns, target_ns, "ns");
    }
}

fn joint_ms() -> f64 {
    // Four markings of one year and one of any, by a fixed rule, so that every run reads the same.
    let texts: Vec<[String; 5]> = (0..PARTS)
        .map(|part| {
            let (year, week) = (88 + part % 20, 1 + part * 7 % 48);
            let code = |later: usize| format!("{:02}{:02}", year % 100, week + later);
            let board = format!("{:02}{:02}", week + 4, year % 100);
            [code(0), code(2), board, code(3), format!("{:03}", part * 37 % 1000)]
        })
        .collect();
    let surfaces = [Surface::Chip, Surface::Chip, Surface::Board, Surface::Capacitor, Surface::Chip];
    let design = Span::year(1995);
    let read_all = |part: usize| {
        let marking =
            |at: usize| MarkingText { text: &texts[part][at], surface: surfaces[at], ..MarkingText::default() };
        black_box(joint(&[0, 1, 2, 3, 4].map(marking), design.filter(|_| part.is_multiple_of(2))));
    };
    median_ns(PARTS, read_all) * PARTS as f64 / 1e6
}

fn main() {
    let plain = Context { surface: Surface::Chip, ..Context::default() };
    date_codes("one reading", &["1997-03-12", "MAR 97", "9432", "4598", "W12 97"], &plain, 1000.0);
    let others: Vec<Span> = (1994..1999).filter_map(Span::year).collect();
    let full = Context {
        surface: Surface::Chip,
        design_years: Span::year(1996),
        years: Span::year(1900).zip(Span::year(2099)).map(|(first, last)| Span::new(first.first, last.last)),
        others: &others,
    };
    date_codes("worst", &["0203", "1112", "203", "53", "D9", "MC1488 8432 KOREA", "8253"], &full, 5000.0);
    capacitor_marks("one reading", &["2A474J", "4n7", "1000µF 6.3V"], 1000.0);
    capacitor_marks("worst", &["476J", "470 16V", "0.047 K 250 VDC ±10%"], 5000.0);
    show("joint reading, 10,000 parts of five markings", joint_ms(), 150.0, "ms");
}
