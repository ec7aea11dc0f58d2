//! Capacitors' marks against published tables, and preferred values against IEC 60063.

use benchwright::trade::Sureness;
use benchwright::trade::capacitor::codes::{
    Tolerance, ToleranceUnit, tolerance, value_letter, voltage_code, voltage_letter,
};
use benchwright::trade::capacitor::preferred::{ESeries, neighbours};
use benchwright::trade::capacitor::{Body, Mark, Polarity, Unreadable, capacitance_words, read};
use proptest::prelude::*;

use crate::chance::Chance;
use crate::fuzz::rounds;

/// Same within what decimal fractions lose as floats.
fn same(one: f64, other: f64) -> bool {
    (one - other).abs() <= other.abs() * 1e-9
}

fn first(text: &str, body: Body) -> Mark {
    read(text, body).unwrap_or_else(|reason| panic!("{text}: {reason}"))[0]
}

/// Mark and picofarads, on a ceramic or film part.
#[test]
fn values_as_published() {
    let marks = [
        // primidi.com; pedalprojects.co.uk; oriedza.blogspot.com
        ("103", 10e3),
        ("105", 1e6),
        ("473", 47e3),
        ("104", 100e3),
        ("470", 47.0),
        ("471", 470.0),
        ("472", 4.7e3),
        ("474", 470e3),
        ("475", 4.7e6),
        ("476", 47e6),
        ("478", 0.47),
        ("479", 4.7),
        // pedalprojects.co.uk; oriedza.blogspot.com
        ("1R5", 1.5),
        ("0R5", 0.5),
        ("3R9", 3.9),
        // primidi.com; eestudenthelp.blogspot.com (IEC 60062)
        ("u47", 0.47e6),
        ("4u7", 4.7e6),
        ("47u", 47e6),
        ("µ47", 0.47e6),
        ("4µ7", 4.7e6),
        ("47µ", 47e6),
        ("2n2", 2.2e3),
        // A component tester's wiki page on marks: 104K, 223, 105
        ("104K", 100e3),
        ("223", 22e3),
        // gfaelectronics.com (EIA-198)
        ("A1", 10.0),
        ("S3", 4.7e3),
        ("J5", 0.22e6),
        // marsport.org.uk, with a maker's letter before
        ("KA2", 100.0),
    ];
    for (text, picofarads) in marks {
        let mark = first(text, Body::Film);
        assert!(same(mark.capacitance_pf, picofarads), "{text}: {} pF, not {picofarads}", mark.capacitance_pf);
    }
    // IEC 60062's own letters for other powers (memory).
    for (text, picofarads) in
        [("p33", 0.33), ("3p3", 3.3), ("33p", 33.0), ("n33", 330.0), ("33n", 33e3), ("3m3", 3.3e9)]
    {
        assert!(same(first(text, Body::Film).capacitance_pf, picofarads), "{text}");
    }
}

/// Capital letters' mantissas, marsport.org.uk; small ones from the same table.
#[test]
fn letter_values_as_published() {
    let letters = [
        ('A', 1.0),
        ('B', 1.1),
        ('C', 1.2),
        ('D', 1.3),
        ('E', 1.5),
        ('F', 1.6),
        ('G', 1.8),
        ('H', 2.0),
        ('J', 2.2),
        ('K', 2.4),
        ('L', 2.7),
        ('M', 3.0),
        ('N', 3.3),
        ('P', 3.6),
        ('Q', 3.9),
        ('R', 4.3),
        ('S', 4.7),
        ('T', 5.1),
        ('U', 5.6),
        ('V', 6.2),
        ('W', 6.8),
        ('X', 7.5),
        ('Y', 8.2),
        ('Z', 9.1),
        ('a', 2.5),
        ('b', 3.5),
        ('d', 4.0),
        ('e', 4.5),
        ('f', 5.0),
        ('m', 6.0),
        ('n', 7.0),
        ('t', 8.0),
        ('y', 9.0),
    ];
    for (letter, mantissa) in letters {
        assert_eq!(value_letter(letter as u8), Some(mantissa), "{letter}");
    }
    assert_eq!(value_letter(b'I'), None);
    assert_eq!(value_letter(b'O'), None);
}

/// oriedza.blogspot.com, table 2; a maker's part-number chart (pdf.jiepei.com) agrees where it has them; 0E, 1D, 1V, 1G
/// from pedalprojects.co.uk.
const VOLTAGE_CODES: [(&str, f64); 27] = [
    ("0E", 2.5),
    ("0G", 4.0),
    ("0L", 5.5),
    ("0J", 6.3),
    ("1A", 10.0),
    ("1C", 16.0),
    ("1D", 20.0),
    ("1E", 25.0),
    ("1V", 35.0),
    ("1G", 40.0),
    ("1H", 50.0),
    ("1J", 63.0),
    ("1K", 80.0),
    ("2A", 100.0),
    ("2B", 125.0),
    ("2C", 160.0),
    ("2Z", 180.0),
    ("2D", 200.0),
    ("2P", 220.0),
    ("2E", 250.0),
    ("2F", 315.0),
    ("2V", 350.0),
    ("2G", 400.0),
    ("2W", 450.0),
    ("2H", 500.0),
    ("2J", 630.0),
    ("3A", 1000.0),
];

#[test]
fn voltage_codes_alone_and_before_a_value() {
    for (code, volts) in VOLTAGE_CODES {
        let signs = code.as_bytes();
        assert_eq!(voltage_code(signs[0], signs[1]), Some(volts), "{code}");
        let mark = first(&format!("{code}104K"), Body::Film);
        assert_eq!((mark.volts, mark.capacitance_pf), (Some(volts), 100e3), "{code}104K");
    }
    // One page prints the zero of 0J as the letter O; no code begins with a letter.
    assert_eq!(read("OJ106", Body::Unknown), Err(Unreadable::LetterForZero));
    assert_eq!(read("1X104", Body::Film), Err(Unreadable::NoVoltageCode('1', 'X')));
    assert_eq!(voltage_code(b'4', b'A'), None);
}

#[test]
fn combined_marks_as_published() {
    // oriedza.blogspot.com: 100 V, 0.47 µF, 5 %; jestineyong.com: 100 V, 1 nF, 10 %
    for (text, picofarads, volts, percent) in [("2A474J", 470e3, 100.0, 5.0), ("2A102K", 1e3, 100.0, 10.0)] {
        for body in [Body::Unknown, Body::Film] {
            let readings = read(text, body).unwrap();
            assert_eq!(readings.len(), 1, "{text}: {readings:?}");
            let mark = readings[0];
            assert_eq!((mark.capacitance_pf, mark.volts), (picofarads, Some(volts)), "{text}");
            assert_eq!(mark.tolerance, Some(Tolerance::percent(percent)), "{text}");
        }
    }
}

/// dummies.com; a television maker's parts chart, p. 41; electro-tech-online.com (S); signalpro.biz (F, G below 10 pF);
/// Q from memory.
#[test]
fn tolerance_letters() {
    use ToleranceUnit::{Percent, Picofarad};
    let letters = [
        ('B', 100.0, 0.1, 0.1, Picofarad),
        ('C', 100.0, 0.25, 0.25, Picofarad),
        ('D', 100.0, 0.5, 0.5, Picofarad),
        ('F', 100.0, 1.0, 1.0, Percent),
        ('G', 100.0, 2.0, 2.0, Percent),
        ('F', 4.7, 1.0, 1.0, Picofarad),
        ('G', 4.7, 2.0, 2.0, Picofarad),
        ('J', 100.0, 5.0, 5.0, Percent),
        ('K', 100.0, 10.0, 10.0, Percent),
        ('M', 100.0, 20.0, 20.0, Percent),
        ('N', 100.0, 30.0, 30.0, Percent),
        ('P', 100.0, 0.0, 100.0, Percent),
        ('Q', 100.0, 10.0, 30.0, Percent),
        ('S', 100.0, 20.0, 50.0, Percent),
        ('T', 100.0, 10.0, 50.0, Percent),
        ('Z', 100.0, 20.0, 80.0, Percent),
    ];
    for (letter, picofarads, minus, plus, unit) in letters {
        assert_eq!(tolerance(letter as u8, picofarads), Some(Tolerance { minus, plus, unit }), "{letter}");
    }
    assert_eq!(tolerance(b'X', 100.0), None);
    assert_eq!(first("104Z", Body::Ceramic).tolerance.unwrap().to_string(), "−20/+80 %");
}

/// G to V: a maker's tantalum chip data sheet (mmic.net.cn copy); T and e: memory.
#[test]
fn tantalum_chip_letters() {
    let letters = [
        ('G', 4.0),
        ('J', 6.3),
        ('A', 10.0),
        ('C', 16.0),
        ('D', 20.0),
        ('E', 25.0),
        ('V', 35.0),
        ('T', 50.0),
        ('e', 2.5),
    ];
    for (letter, volts) in letters {
        assert_eq!(voltage_letter(letter as u8), Some(volts));
        for text in [format!("{letter}475"), format!("475{letter}")] {
            let mark = first(&text, Body::TantalumChip);
            assert_eq!((mark.capacitance_pf, mark.volts), (4.7e6, Some(volts)), "{text}");
        }
    }
    assert_eq!(first("T475", Body::TantalumChip).source().sureness, Sureness::Memory);
    assert_eq!(first("V475", Body::TantalumChip).source().sureness, Sureness::Published);
    // The same data sheet: 474 and 475.
    assert_eq!(first("474", Body::TantalumChip).capacitance_pf, 470e3);
    // A magazine's page on marks: a tantalum marked 227 is 220 µF.
    assert_eq!(first("227", Body::TantalumChip).capacitance_pf, 220e6);
    // Two pages give these letters wrongly.
    for (letter, wrong) in [('B', 16.0), ('C', 20.0), ('D', 25.0), ('E', 35.0)] {
        assert_ne!(voltage_letter(letter as u8), Some(wrong), "{letter}");
    }
}

/// A third figure 7 is unused on ceramic and film parts (primidi.com); no mark may be read as if it were.
#[test]
fn marks_that_do_not_exist() {
    for body in [Body::Ceramic, Body::Film] {
        assert_eq!(read("477", body), Err(Unreadable::UnusedPower));
    }
    let faults = [
        ("", Unreadable::Empty),
        ("10?", Unreadable::Sign('?')),
        ("HELLO", Unreadable::NoForm),
        ("104X", Unreadable::Remainder),
        ("0", Unreadable::Beyond),
        ("1.2.3", Unreadable::NoForm),
        ("1234567890123456", Unreadable::TooLong),
    ];
    for (text, fault) in faults {
        assert_eq!(read(text, Body::Unknown), Err(fault), "{text}");
        assert!(!fault.to_string().is_empty());
    }
}

/// Marks as they stand on cans, beads and film parts. Common practice, no source.
#[test]
fn marks_with_units_and_volts() {
    let marks = [
        ("1000µF 6.3V", Body::AluminiumCan, 1000e6, Some(6.3)),
        ("1000uF6.3V", Body::Unknown, 1000e6, Some(6.3)),
        ("47u16V", Body::Unknown, 47e6, Some(16.0)),
        ("470 MFD 50 WV", Body::AluminiumCan, 470e6, Some(50.0)),
        ("220 16V", Body::AluminiumCan, 220e6, Some(16.0)),
        ("100 6V3", Body::AluminiumChip, 100e6, Some(6.3)),
        ("10/16+", Body::TantalumBead, 10e6, Some(16.0)),
        ("4R7 50V", Body::AluminiumChip, 4.7e6, Some(50.0)),
        ("226 16V", Body::TantalumChip, 22e6, Some(16.0)),
        ("0.1K250", Body::Film, 0.1e6, Some(250.0)),
        (".047 100V", Body::Film, 0.047e6, Some(100.0)),
        ("104K100", Body::Film, 100e3, Some(100.0)),
        ("4n7 ±5% 63V", Body::Film, 4.7e3, Some(63.0)),
        ("16V 1000µF", Body::AluminiumCan, 1000e6, Some(16.0)),
        ("6V3 470µF M 105°C", Body::AluminiumCan, 470e6, Some(6.3)),
        ("0.1µF 250V~ X2", Body::Film, 0.1e6, Some(250.0)),
        ("47", Body::Ceramic, 47.0, None),
        ("2200", Body::AluminiumCan, 2200e6, None),
    ];
    for (text, body, picofarads, volts) in marks {
        let mark = first(text, body);
        assert!(same(mark.capacitance_pf, picofarads), "{text}: {mark:?}");
        assert_eq!(mark.volts, volts, "{text}");
    }
    // On a can 470 is microfarads, on a ceramic 47 pF; where nobody says which, volts beside it mean a can.
    assert_eq!(first("470", Body::AluminiumCan).capacitance_pf, 470e6);
    let both: Vec<f64> = read("470 16V", Body::Unknown).unwrap().iter().map(|mark| mark.capacitance_pf).collect();
    assert_eq!(both, [470e6, 47.0]);
    // 476J: five per cent, or 6.3 V on a tantalum chip.
    let both = read("476J", Body::Unknown).unwrap();
    assert_eq!((both[0].tolerance, both[1].volts), (Some(Tolerance::percent(5.0)), Some(6.3)));
}

/// The bar marks plus on a tantalum (a maker's data sheet, mmic.net.cn copy), minus on a can (common practice).
#[test]
fn the_bar_means_opposite_things() {
    assert_eq!(first("475C", Body::TantalumChip).polarity, Polarity::BarIsPlus);
    assert_eq!(first("100 16V", Body::AluminiumChip).polarity, Polarity::BarIsMinus);
    assert_eq!(first("104", Body::Ceramic).polarity, Polarity::None);
    assert_eq!(first("4n7 Y2", Body::Unknown).suppression, Some(('Y', 2)));
    assert_eq!(first("4n7", Body::Unknown).polarity, Polarity::None, "no electrolytic is that small");
    let reminder = first("100uF", Body::Unknown).polarity.to_string();
    assert!(reminder.contains("plus on a tantalum") && reminder.contains("minus on an aluminium can"), "{reminder}");
}

#[test]
fn capacitance_is_said_as_people_say_it() {
    let said =
        [(47.0, "47 pF"), (4.7e3, "4.7 nF"), (470e3, "470 nF (0.47 µF)"), (1000e6, "1000 µF"), (0.47, "0.47 pF")];
    for (picofarads, words) in said {
        assert_eq!(capacitance_words(picofarads), words);
    }
}

/// IEC 60063, as eseries 1.2.1 gives it.
#[test]
fn preferred_values() {
    let series = [
        (ESeries::E3, vec![10, 22, 47]),
        (ESeries::E6, vec![10, 15, 22, 33, 47, 68]),
        (ESeries::E12, vec![10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]),
        (
            ESeries::E24,
            vec![10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91],
        ),
    ];
    for (series, decade) in series {
        for (at, figure) in decade.iter().enumerate() {
            let figure = f64::from(*figure);
            let next = decade.get(at + 1).map_or(100.0, |next| f64::from(*next));
            let exact = neighbours(figure, series).unwrap();
            assert!(exact.is_exact() && exact.down == figure, "{series} {figure}");
            let between = neighbours(figure + 0.5, series).unwrap();
            assert_eq!((between.down, between.up), (figure, next), "{series} {figure}");
        }
    }
    let found = neighbours(0.00046, ESeries::E12).unwrap();
    assert_eq!((found.down, found.up), (0.00039, 0.00047));
    assert!(neighbours(0.0, ESeries::E3).is_none() && neighbours(f64::NAN, ESeries::E3).is_none());
}

/// Holds for any text: finite, positive values within what is made, or a reason in words.
fn check_any(text: &str, body: Body) {
    match read(text, body) {
        Ok(marks) => {
            assert!(!marks.is_empty(), "{text:?}");
            for mark in marks {
                assert!((0.01..=1e13).contains(&mark.capacitance_pf), "{text:?}: {mark:?}");
                assert!(mark.volts.is_none_or(|volts| (1.0..=10_000.0).contains(&volts)), "{text:?}: {mark:?}");
                assert!(!capacitance_words(mark.capacitance_pf).is_empty());
            }
        }
        Err(reason) => assert!(!reason.to_string().is_empty(), "{text:?}"),
    }
}

#[test]
fn fuzz_capacitor_marks() {
    let alphabet: Vec<char> = "0011223344567899.,RKMJFpnuµABCDEGHVZ %±/+- V".chars().collect();
    let mut chance = Chance(0xCA9A_C170);
    for _ in 0..rounds() {
        let longest = if chance.below(4) == 0 { 40 } else { 9 };
        let text = chance.text(&alphabet, longest);
        let body = Body::ALL[chance.below(Body::ALL.len())];
        check_any(&text, body);
    }
}

proptest! {
    #[test]
    fn any_text_reads_or_says_why(text in "\\PC{0,40}") {
        check_any(&text, Body::Unknown);
    }

    /// The three-figure code by its definition, two figures and a power of ten (IEC 60062).
    #[test]
    fn three_figures_by_definition(figures in 10u32..100, power in 0u32..7) {
        let mark = first(&format!("{figures}{power}"), Body::Ceramic);
        prop_assert!(same(mark.capacitance_pf, f64::from(figures * 10u32.pow(power))));
    }
}
