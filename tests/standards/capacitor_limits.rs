//! Limits, verdicts, life and re-forming of electrolytics against makers' sheets and worked examples.

use benchwright::trade::Sureness;
use benchwright::trade::capacitor::codes::Tolerance;
use benchwright::trade::capacitor::esr::{Member, esr_mohm, parallel, tan_delta};
use benchwright::trade::capacitor::life::{LifeFault, Stretch, life};
use benchwright::trade::capacitor::reform::{Need, cautions, need, practices, steps};
use benchwright::trade::capacitor::series::{Series, leakage_limit_ua, tan_delta_limit};
use benchwright::trade::capacitor::verdict::{Grade, Measured, Quantity, Rated, verdict};

fn near(one: f64, other: f64, share: f64) -> bool {
    (one - other).abs() <= other.abs() * share
}

/// Panasonic SU series (dtsheet 1530872), tan δ at 120 Hz and 20 °C.
#[test]
fn loss_limits_by_voltage() {
    let rows = [
        (6.3, 0.22),
        (10.0, 0.19),
        (16.0, 0.16),
        (25.0, 0.14),
        (35.0, 0.12),
        (50.0, 0.10),
        (63.0, 0.09),
        (100.0, 0.08),
    ];
    for (volts, limit) in rows {
        let found = tan_delta_limit(100.0, volts);
        assert!(near(found.value, limit, 1e-9), "{volts} V");
        assert_eq!(found.source.sureness, Sureness::Published);
    }
    // The same sheet: 0.02 more for each 1000 µF from 1000 µF on.
    for (uf, volts, limit) in [(1000.0, 16.0, 0.18), (2200.0, 10.0, 0.23), (4700.0, 6.3, 0.30)] {
        assert!(near(tan_delta_limit(uf, volts).value, limit, 1e-9), "{uf} µF");
    }
    assert_eq!(tan_delta_limit(10.0, 400.0).source.sureness, Sureness::Memory, "beyond the sheet");
}

/// Panasonic SU series: 0.01 CV or 3 µA, the greater, after 2 minutes; 0.06 CV + 10 µA from 160 V.
#[test]
fn leakage_limits() {
    let rows = [
        (10.0, 16.0, 3.0),
        (47.0, 25.0, 11.75),
        (100.0, 16.0, 16.0),
        (1000.0, 6.3, 63.0),
        (2200.0, 10.0, 220.0),
        (1.0, 50.0, 3.0),
        (10.0, 160.0, 106.0),
    ];
    for (uf, volts, limit) in rows {
        assert!(near(leakage_limit_ua(uf, volts).value, limit, 1e-9), "{uf} µF {volts} V");
    }
}

/// Computed from tan δ = 2π f C ESR (docslides; vbatpower): µF, tan δ, Hz, mΩ.
#[test]
fn resistance_from_loss_and_back() {
    let rows = [
        (1000.0, 0.16, 120.0, 212.207),
        (1000.0, 0.12, 120.0, 159.155),
        (1500.0, 0.22, 120.0, 194.523),
        (100.0, 0.14, 120.0, 1856.81),
        (10.0, 0.20, 120.0, 26_525.8),
        (470.0, 0.14, 120.0, 395.066),
        (2200.0, 0.24, 120.0, 144.686),
        (47.0, 0.12, 100.0, 4063.53),
    ];
    for (uf, loss, hz, mohm) in rows {
        assert!(near(esr_mohm(loss, uf, hz), mohm, 5e-6), "{uf} µF {loss}");
        assert!(near(tan_delta(mohm, uf, hz), loss, 5e-6), "{uf} µF {mohm} mΩ");
        // calculator.academy divides where it must multiply.
        let wrong = mohm / 1000.0 / (std::f64::consts::TAU * hz * uf / 1e6);
        assert!(!near(tan_delta(mohm, uf, hz), wrong, 0.1));
    }
    // calculatorultra.com: ESR 0.05 Ω at a reactance of 2 Ω is 0.025; at 120 Hz that reactance is 663.146 µF.
    assert!(near(tan_delta(50.0, 663.146, 120.0), 0.025, 1e-5));
}

/// Capacitances add (DOE ES-03, p. 14); equal resistances divide by their number.
#[test]
fn capacitors_side_by_side() {
    let one = Member { capacitance_uf: 1000.0, esr_mohm: 30.0 };
    let group = parallel(&[one; 3]).unwrap();
    assert!(near(group.capacitance_uf, 3000.0, 1e-12) && near(group.esr_mohm, 10.0, 1e-12));
    assert_eq!(parallel(&[]), None);
    assert_eq!(parallel(&[Member { esr_mohm: 0.0, ..one }]), None);
}

/// 2000 h and 5000 h parts by the ten-degree rule (TDK power supplies FAQ), computed from its formula.
#[test]
fn life_at_one_temperature() {
    let rows = [
        (1000.0, 105.0, 45.0, 64_000.0), // Cosel Q&A a0057, with the next two
        (1000.0, 105.0, 55.0, 32_000.0),
        (1000.0, 105.0, 65.0, 16_000.0),
        (2000.0, 85.0, 45.0, 32_000.0),
        (2000.0, 105.0, 65.0, 32_000.0),
        (1000.0, 85.0, 40.0, 22_627.4),
        (2000.0, 105.0, 60.0, 45_254.8),
    ];
    for (hours, rated, celsius, expected) in rows {
        let found = life(hours, rated, &[Stretch { celsius, hours: 24.0 }]).unwrap();
        assert!(near(found.hours, expected, 1e-6), "{hours} h {rated} °C at {celsius} °C: {}", found.hours);
        assert!(near(found.equivalent_celsius, celsius, 1e-9) && !found.is_capped());
    }
    assert!(near(life(2000.0, 85.0, &[Stretch { celsius: 45.0, hours: 1.0 }]).unwrap().years(), 3.653, 2e-4));
}

/// Cosel Q&A a0057: a 105 °C 1000 h part, eight hours a day each at 45, 55 and 65 °C.
#[test]
fn life_at_several_temperatures() {
    let stretches = [45.0, 55.0, 65.0].map(|celsius| Stretch { celsius, hours: 8.0 });
    let found = life(1000.0, 105.0, &stretches).unwrap();
    assert!(near(found.hours, 27_428.57, 1e-6), "{}", found.hours);
    assert!(near(found.equivalent_celsius, 57.224, 1e-4), "{}", found.equivalent_celsius);
}

/// Nichicon's life calculator follows the rule from 40 °C up and claims no more than fifteen years.
#[test]
fn life_is_never_claimed_past_fifteen_years() {
    let found = life(5000.0, 105.0, &[Stretch { celsius: 40.0, hours: 1.0 }]).unwrap();
    assert!(near(found.rule_hours, 452_548.0, 1e-6) && found.is_capped());
    assert!(near(found.years(), 15.0, 1e-12) && near(found.hours, 131_400.0, 1e-12));
    let cold = life(5000.0, 105.0, &[Stretch { celsius: 20.0, hours: 1.0 }]).unwrap();
    assert!(cold.is_floored && near(cold.rule_hours, found.rule_hours, 1e-12));
    assert_eq!(
        life(1000.0, 85.0, &[Stretch { celsius: 90.0, hours: 1.0 }]),
        Err(LifeFault::AboveRated { celsius: 90.0, rated_celsius: 85.0 })
    );
    assert_eq!(life(1000.0, 85.0, &[]), Err(LifeFault::NoHours));
    assert_eq!(life(f64::NAN, 85.0, &[Stretch { celsius: 50.0, hours: 1.0 }]), Err(LifeFault::NotAFigure));
}

fn rated(uf: f64, volts: f64, series: Series) -> Rated {
    Rated { capacitance_uf: uf, volts, tolerance: None, series, esr_100khz_mohm: None }
}

fn grade(rated: &Rated, measured: Measured) -> Grade {
    verdict(rated, &measured).grade
}

fn capacitance(uf: f64) -> Measured {
    Measured { capacitance_uf: Some(uf), ..Measured::default() }
}

fn loss(figure: f64) -> Measured {
    Measured { tan_delta: Some(figure), ..Measured::default() }
}

/// End of life by series: change of capacitance and multiple of the new loss, as each maker's sheet gives it.
#[test]
fn ends_of_life_by_series() {
    let rows = [
        // Panasonic SU: ±20 %, 150 %
        (Series::Leads85, 16.0, 20.0, 20.0, 1.5),
        // VEJ (en.eeworld.com): up to 6.3 mm ±25 %, 300 %; from 8 mm ±20 %, 200 %
        (Series::SurfaceSmall, 16.0, 25.0, 25.0, 3.0),
        (Series::SurfaceLarge, 16.0, 20.0, 20.0, 2.0),
        // Vishay 030/031 (28327, p. 186), useful life: ±45 %, +45/−50 % up to 6.3 V, three times
        (Series::AxialUseful, 16.0, 45.0, 45.0, 3.0),
        (Series::AxialUseful, 6.3, 50.0, 45.0, 3.0),
        // Vishay 158 PUL-SI (28375, p. 98): ±20 %, three times
        (Series::LongLife105, 16.0, 20.0, 20.0, 3.0),
    ];
    for (series, volts, minus, plus, factor) in rows {
        let part = rated(100.0, volts, series);
        let limit = if volts < 10.0 { 0.22 } else { 0.16 };
        assert_ne!(grade(&part, capacitance(100.0 - minus + 0.1)), Grade::OutOfLimits, "{series}");
        assert_eq!(grade(&part, capacitance(100.0 - minus - 0.1)), Grade::OutOfLimits, "{series}");
        assert_ne!(grade(&part, capacitance(100.0 + plus - 0.1)), Grade::OutOfLimits, "{series}");
        assert_eq!(grade(&part, capacitance(100.0 + plus + 0.1)), Grade::OutOfLimits, "{series}");
        assert_eq!(grade(&part, loss(limit - 0.001)), Grade::Sound, "{series}");
        assert_eq!(grade(&part, loss(limit * factor - 0.001)), Grade::Worn, "{series}");
        assert_eq!(grade(&part, loss(limit * factor + 0.001)), Grade::OutOfLimits, "{series}");
        assert_eq!(verdict(&part, &capacitance(100.0)).checks[0].source.sureness, Sureness::Published);
    }
}

#[test]
fn a_limit_itself_still_passes() {
    let part = rated(1000.0, 16.0, Series::General);
    assert_eq!(grade(&part, capacitance(800.0)), Grade::Sound);
    assert_eq!(grade(&part, capacitance(1200.0)), Grade::Sound);
    // 0.16, and 0.02 more at 1000 µF; resistance at 120 Hz computed from 0.18: 238.732 mΩ.
    assert_eq!(grade(&part, loss(0.18)), Grade::Sound);
    let esr = |mohm| Measured { esr_mohm: Some(mohm), ..Measured::default() };
    assert_eq!(grade(&part, esr(238.7)), Grade::Sound);
    assert_eq!(grade(&part, esr(238.8)), Grade::Worn);
    assert_eq!(grade(&part, esr(477.5)), Grade::OutOfLimits);
    let leakage = |ua| Measured { leakage_ua: Some(ua), ..Measured::default() };
    assert_eq!(grade(&part, leakage(160.0)), Grade::Sound);
    assert_eq!(grade(&part, leakage(160.1)), Grade::OutOfLimits);
}

/// A tighter print asks more of a new part (10 %, letter K); an older, lopsided one allows more (T: −10/+50 %).
#[test]
fn the_printed_tolerance_counts() {
    let tight = Rated { tolerance: Some(Tolerance::percent(10.0)), ..rated(100.0, 16.0, Series::General) };
    assert_eq!(grade(&tight, capacitance(91.0)), Grade::Sound);
    assert_eq!(grade(&tight, capacitance(85.0)), Grade::Worn);
    let lopsided = benchwright::trade::capacitor::codes::tolerance(b'T', 100e6);
    let old = Rated { tolerance: lopsided, ..rated(100.0, 16.0, Series::General) };
    assert_eq!(grade(&old, capacitance(149.0)), Grade::Sound);
    assert_eq!(grade(&old, capacitance(151.0)), Grade::OutOfLimits);
}

/// isolution.pro: a loss factor at 120 Hz used at 100 kHz gives nonsense. Such a reading can condemn, not acquit.
#[test]
fn a_reading_at_high_frequency_is_not_held_against_120_hz() {
    let part = rated(1000.0, 16.0, Series::General);
    let at_100khz = |mohm| Measured { esr_mohm: Some(mohm), esr_hz: Some(100_000.0), ..Measured::default() };
    assert_eq!(grade(&part, at_100khz(60.0)), Grade::Undecided);
    assert_eq!(grade(&part, at_100khz(500.0)), Grade::OutOfLimits);
    let with_sheet = Rated { esr_100khz_mohm: Some(40.0), ..part };
    assert_eq!(grade(&with_sheet, at_100khz(39.0)), Grade::Sound);
    assert_eq!(grade(&with_sheet, at_100khz(60.0)), Grade::Worn);
    assert_eq!(grade(&with_sheet, at_100khz(81.0)), Grade::OutOfLimits);
}

#[test]
fn the_worst_check_is_the_verdict() {
    let part = rated(1000.0, 16.0, Series::General);
    assert_eq!(grade(&part, Measured::default()), Grade::Undecided);
    let measured = Measured { is_swollen: true, ..capacitance(1000.0) };
    let found = verdict(&part, &measured);
    assert_eq!(found.grade, Grade::OutOfLimits);
    let graded: Vec<_> = found.checks.iter().map(|check| (check.quantity, check.grade)).collect();
    assert_eq!(graded, [(Quantity::CapacitanceUf, Grade::Sound), (Quantity::Looks, Grade::OutOfLimits)]);
}

/// CDE, October 1993 (wa4bpj.com copy); EPCOS and Nichicon, two years (itecnotes.com).
#[test]
fn years_on_the_shelf() {
    let rows = [
        (0.0, Need::Nothing),
        (1.0, Need::Nothing),
        (2.0, Need::Nothing),
        (3.0, Need::Test),
        (4.0, Need::Reform),
        (5.0, Need::Reform),
        (10.0, Need::Reform),
        (25.0, Need::PastShelfLife),
    ];
    for (years, expected) in rows {
        assert_eq!(need(years), expected, "{years} years");
    }
}

/// CDE: 10 kΩ to 75 V, 100 kΩ above, four hours. Chemi-Con FAQ 29BDH9T: 1 kΩ, 30 to 60 minutes. EIA-815: 100 Ω to
/// 100 V, 1000 Ω above, one hour.
#[test]
fn published_ways_to_re_form() {
    let rows = [
        (16.0, [10_000.0, 1000.0, 100.0]),
        (75.0, [10_000.0, 1000.0, 100.0]),
        (100.0, [100_000.0, 1000.0, 100.0]),
        (400.0, [100_000.0, 1000.0, 1000.0]),
    ];
    for (volts, resistors) in rows {
        let found = practices(volts);
        assert_eq!(found.clone().map(|practice| practice.resistor_ohm), resistors, "{volts} V");
        assert_eq!(found.map(|practice| practice.minutes), [240, 60, 60]);
    }
    let said = steps(16.0).join(" ");
    assert!(said.contains("10000 Ω") && said.contains("240 minutes"), "{said}");
    assert!(said.contains("16 Ω"), "EIA-815: an ohm a volt: {said}");
    assert!(cautions(400.0).iter().any(|caution| caution.contains("kill")));
    assert!(!cautions(16.0).iter().any(|caution| caution.contains("kill")));
}
