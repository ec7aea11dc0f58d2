//! Critical path and three-point estimates against published worked examples.

use benchwright::assess::schedule::network::{Activity, Circle, network};
use benchwright::assess::schedule::pace::{Spread, Z_80};

/// Name, hours, what it comes after; earliest start and finish, latest start and finish; slack.
type Row = (&'static str, f64, &'static [&'static str], [f64; 4], f64);

/// "Example 1: Draw the network for the events in Table 1" (studylib.net 8378728): durations and predecessors of its
/// table 1, and all times and slacks of its table 2. *seen*
#[test]
fn the_worked_example_of_seven_activities_has_its_published_times() {
    let table: [Row; 7] = [
        ("A", 6.0, &[], [0.0, 6.0, 0.0, 6.0], 0.0),
        ("B", 2.0, &["A"], [6.0, 8.0, 6.0, 8.0], 0.0),
        ("C", 2.0, &["A"], [6.0, 8.0, 7.0, 9.0], 1.0),
        ("D", 3.0, &["B"], [8.0, 11.0, 8.0, 11.0], 0.0),
        ("F", 2.0, &["C"], [8.0, 10.0, 9.0, 11.0], 1.0),
        ("E", 4.0, &["D", "F"], [11.0, 15.0, 11.0, 15.0], 0.0),
        ("G", 1.0, &["E"], [15.0, 16.0, 15.0, 16.0], 0.0),
    ];
    let place = |name: &&str| table.iter().position(|row| row.0 == *name).unwrap();
    let activity = |row: &Row| Activity { duration: row.1, wait: 0.0, after: row.2.iter().map(place).collect() };
    let activities: Vec<Activity> = table.iter().map(activity).collect();
    let network = network(&activities).unwrap();
    for (row, times) in table.iter().zip(&network.times) {
        let own = [times.earliest_start, times.earliest_finish, times.latest_start, times.latest_finish];
        assert_eq!((own, times.float()), (row.3, row.4), "{}", row.0);
    }
    let path: Vec<&str> = network.path.iter().map(|at| table[*at].0).collect();
    assert_eq!((path.concat().as_str(), network.end), ("ABDEG", 16.0));
}

/// Seven activities with three estimates each, critical path 1–3–5–7, 24 weeks, variance 5, and 0.9633 for 28 weeks or
/// fewer (flylib.com 3.287.1.117, a worked example of a textbook of management science). *seen*; the path's
/// predecessors follow from it.
#[test]
fn three_point_estimates_add_up_as_published() {
    let critical = [(5.0, 8.0, 17.0), (3.0, 5.0, 7.0), (4.0, 6.0, 8.0), (3.0, 4.0, 5.0)];
    let spreads = critical.map(Spread::three_point);
    assert_eq!(spreads.map(|spread| spread.mean), [9.0, 5.0, 6.0, 4.0]);
    assert!((spreads.iter().map(|spread| spread.mean).sum::<f64>() - 24.0).abs() < 1e-12);
    let variance: f64 = spreads.iter().map(|spread| spread.deviation.powi(2)).sum();
    assert!((variance - 5.0).abs() < 1e-2, "{variance}");
    // 0.9633 belongs to z = 1.79 in the normal table.
    assert_eq!(format!("{:.2}", (28.0 - 24.0) / variance.sqrt()), "1.79");
}

/// Nine tenths of the normal distribution lie below 1.28 (NIST/SEMATECH e-Handbook, 1.3.6.7.1: 0.8997 at 1.28, 0.9015
/// at 1.29; *memory*); to more places scipy.stats.norm.ppf(0.9) = 1.2815515655446004. *computed*
#[test]
fn four_chances_in_five_lie_between_the_quantiles_of_the_normal_distribution() {
    assert!((Z_80 - 1.2815515655446004).abs() < 1e-15);
}

/// 600, 470, 170, 430 and 300 mm: mean 394, sample standard deviation 164.7 (the dogs of mathsisfun.com, *memory*);
/// statistics.stdev of Python gives 164.7118696390761. *computed*
#[test]
fn mean_and_sample_deviation_are_those_of_the_textbook() {
    let spread = Spread::of(&[600.0, 470.0, 170.0, 430.0, 300.0]).unwrap();
    assert_eq!((spread.mean, spread.samples), (394.0, 5));
    assert!((spread.deviation - 164.7118696390761).abs() < 1e-9, "{}", spread.deviation);
    assert_eq!(Spread::of(&[1.0]), None);
}

#[test]
fn a_circle_is_named_and_not_gone_round_for_ever() {
    let activity = |after: &[usize]| Activity { duration: 1.0, wait: 0.0, after: after.to_vec() };
    let Circle(mut circle) =
        network(&[activity(&[]), activity(&[0, 3]), activity(&[1]), activity(&[2]), activity(&[3])]).unwrap_err();
    circle.sort_unstable();
    assert_eq!(circle, [1, 2, 3]);
}
