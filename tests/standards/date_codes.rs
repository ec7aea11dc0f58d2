//! Date codes against the sources of each scheme.

use benchwright::trade::Span;
use benchwright::trade::date_code::{Context, Reading, Scheme, Surface, Unreadable, explain, read};
use chrono::{Days, NaiveDate};
use proptest::prelude::*;

use crate::chance::Chance;
use crate::fuzz::rounds;

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn years(from: i32, to: i32) -> Span {
    Span::new(Span::year(from).unwrap().first, Span::year(to).unwrap().last)
}

/// The spans of one scheme in a reading, earliest first; empty where there are none.
fn spans(text: &str, scheme: Scheme, context: &Context) -> Vec<Span> {
    let mut spans: Vec<Span> = read(text, context)
        .unwrap_or_default()
        .iter()
        .filter(|reading| reading.scheme == scheme)
        .map(|reading| reading.span)
        .collect();
    spans.sort_unstable();
    spans
}

fn usual(text: &str, scheme: Scheme) -> Vec<Span> {
    spans(text, scheme, &Context::default())
}

/// A week from its Monday, as makers' weeks are kept: seven days more on both sides.
fn about_week(monday: &str) -> Span {
    let monday = day(monday);
    Span { first: monday - Days::new(7), last: monday + Days::new(13) }
}

/// IEC 60062, twenty-year cycle. R–X: primidi.com "Ceramic Capacitor – Imprinted Markings"; E–M: newtoncbraga.com.br
/// "Código de datas de componentes"; N, P: the two letters left between M and R; A–D: memory.
const YEAR_LETTERS: [(char, i32); 20] = [
    ('R', 2003),
    ('S', 2004),
    ('T', 2005),
    ('U', 2006),
    ('V', 2007),
    ('W', 2008),
    ('X', 2009),
    ('E', 1994),
    ('F', 1995),
    ('H', 1996),
    ('J', 1997),
    ('K', 1998),
    ('L', 1999),
    ('M', 2000),
    ('N', 2001),
    ('P', 2002),
    ('A', 2010),
    ('B', 2011),
    ('C', 2012),
    ('D', 2013),
];

#[test]
fn iec_year_letters() {
    for (letter, year) in YEAR_LETTERS {
        let found = spans(
            &format!("{letter}3"),
            Scheme::LetterMonth,
            &Context { years: Some(years(1970, 2029)), ..Context::default() },
        );
        for year in [year - 20, year, year + 20].into_iter().filter(|year| (1970..2030).contains(year)) {
            assert!(found.contains(&Span::month(year, 3).unwrap()), "{letter}3 in {year}");
        }
        assert_eq!(found.len(), 3, "{letter} comes round every twenty years (IEC 60062:2004 summary, normadoc.com)");
    }
}

/// primidi.com and newtoncbraga.com.br.
#[test]
fn iec_month_signs() {
    let signs = [
        ('1', 1),
        ('2', 2),
        ('3', 3),
        ('4', 4),
        ('5', 5),
        ('6', 6),
        ('7', 7),
        ('8', 8),
        ('9', 9),
        ('O', 10),
        ('N', 11),
        ('D', 12),
    ];
    for (sign, month) in signs {
        assert_eq!(
            usual(&format!("S{sign}"), Scheme::LetterMonth),
            [Span::month(1984, month).unwrap(), Span::month(2004, month).unwrap()]
        );
    }
}

/// Worked from both tables above; both years lie within one collection, so both must be given.
#[test]
fn iec_codes_keep_every_cycle() {
    let codes = [
        ("K9", 9, [1978, 1998]),
        ("MO", 10, [1980, 2000]),
        ("ND", 12, [1981, 2001]),
        ("T1", 1, [1985, 2005]),
        ("H5", 5, [1976, 1996]),
    ];
    for (code, month, in_years) in codes {
        assert_eq!(usual(code, Scheme::LetterMonth), in_years.map(|year| Span::month(year, month).unwrap()), "{code}");
    }
}

/// Letters that IEC 60062 leaves out (memory; agrees with every letter seen), month 0, a letter that is no month.
#[test]
fn iec_codes_that_do_not_exist() {
    for code in ["G4", "I2", "O1", "Q7", "Y1", "Z1", "A0", "M0", "KA"] {
        let Err(Unreadable::Impossible(faults)) = read(code, &Context::default()) else { panic!("{code} was read") };
        assert_eq!(faults[0].0, Scheme::LetterMonth);
    }
    let reason = read("M0", &Context::default()).unwrap_err().to_string();
    assert!(reason.contains("the letter O"), "{reason}");
}

/// The second row of newtoncbraga.com.br is a year late: it contradicts primidi.com, and 2001 would have no letter.
#[test]
fn iec_letters_a_year_late_are_not_followed() {
    let wrong = [('N', 2002), ('P', 2003), ('R', 2004), ('S', 2005), ('T', 2006), ('U', 2007), ('V', 2008)];
    for (letter, year) in wrong {
        assert!(
            !usual(&format!("{letter}1"), Scheme::LetterMonth).contains(&Span::month(year, 1).unwrap()),
            "{letter}"
        );
    }
    // "Processo B" of the same page (A, B, C for October to December) is a makers' habit, not IEC's month code.
    assert!(read("7A", &Context::default()).is_err());
}

/// IEC 60062, ten-year cycle: digit and month sign. Memory.
#[test]
fn iec_ten_year_codes() {
    assert_eq!(usual("8N", Scheme::DigitMonth), [1978, 1988, 1998, 2008].map(|y| Span::month(y, 11).unwrap()));
    assert_eq!(usual("53", Scheme::DigitMonth), [1975, 1985, 1995, 2005].map(|y| Span::month(y, 3).unwrap()));
}

/// Code, scheme, the Monday of the week that the source names (Mondays computed with isoweek 1.3.3).
#[test]
fn weeks_as_published() {
    let codes = [
        // primidi.com: 2012, week 8
        ("1208", Scheme::YearWeek, "2012-02-20"),
        // instructables.com, How to read date codes on IC chips: 1983, week 32
        ("8332", Scheme::YearWeek, "1983-08-08"),
        // "How to read the date code on a relay" (12/2007): week 51 of 2004, twice; week 31 of 2004
        ("0451", Scheme::YearWeek, "2004-12-13"),
        ("451", Scheme::DigitWeek, "2004-12-13"),
        ("431", Scheme::DigitWeek, "2004-07-26"),
        // pcbdesignschool.com 2011-11-05: commercial boards week and year, military ones year and week
        ("0199", Scheme::WeekYear, "1999-01-04"),
        ("0152", Scheme::YearWeek, "2001-12-24"),
        // An electronics magazine's page on old parts: year and week, like 8634
        ("8634", Scheme::YearWeek, "1986-08-18"),
    ];
    for (code, scheme, monday) in codes {
        assert!(usual(code, scheme).contains(&about_week(monday)), "{code}: {:?}", usual(code, scheme));
    }
}

/// "How to read the date code on a relay" (12/2007): last digit of the year, month, day.
#[test]
fn digit_month_day_as_published() {
    for (code, date) in [("41201", "2004-12-01"), ("70313", "2007-03-13"), ("40113", "2004-01-13")] {
        assert!(usual(code, Scheme::DigitMonthDay).contains(&Span::day(day(date))), "{code}");
    }
}

/// First and last days computed with isoweek 1.3.3 and Python's datetime, which agree.
const ISO_WEEKS: [(i32, u32, &str, &str); 20] = [
    (1981, 1, "1980-12-29", "1981-01-04"),
    (1984, 52, "1984-12-24", "1984-12-30"),
    (1985, 1, "1984-12-31", "1985-01-06"),
    (1987, 53, "1987-12-28", "1988-01-03"),
    (1988, 1, "1988-01-04", "1988-01-10"),
    (1989, 40, "1989-10-02", "1989-10-08"),
    (1991, 7, "1991-02-11", "1991-02-17"),
    (1992, 53, "1992-12-28", "1993-01-03"),
    (1994, 26, "1994-06-27", "1994-07-03"),
    (1996, 1, "1996-01-01", "1996-01-07"),
    (1997, 1, "1996-12-30", "1997-01-05"),
    (1998, 53, "1998-12-28", "1999-01-03"),
    (1999, 1, "1999-01-04", "1999-01-10"),
    (1999, 52, "1999-12-27", "2000-01-02"),
    (2000, 1, "2000-01-03", "2000-01-09"),
    (2001, 36, "2001-09-03", "2001-09-09"),
    (2004, 53, "2004-12-27", "2005-01-02"),
    (2005, 1, "2005-01-03", "2005-01-09"),
    (1994, 32, "1994-08-08", "1994-08-14"),
    (1998, 45, "1998-11-02", "1998-11-08"),
];

#[test]
fn iso_weeks_in_both_orders() {
    for (year, week, monday, sunday) in ISO_WEEKS {
        let span = Span::new(day(monday), day(sunday)).widened(7);
        let year = year % 100;
        assert_eq!(usual(&format!("{year:02}{week:02}"), Scheme::YearWeek), [span], "{year:02}{week:02}");
        assert_eq!(usual(&format!("{week:02}{year:02}"), Scheme::WeekYear), [span], "{week:02}{year:02}");
    }
}

/// Years with 53 weeks from 1976 to 2010: isoweek and datetime agree; the rule is on kampuspedia.com (ISO week date).
#[test]
fn only_seven_years_have_a_week_53() {
    let long = [1976, 1981, 1987, 1992, 1998, 2004, 2009];
    for year in 1976..=2010 {
        let found = usual(&format!("{:02}53", year % 100), Scheme::YearWeek);
        assert_eq!(!found.is_empty(), long.contains(&year), "{year}");
    }
}

/// Days of ISO weeks. kampuspedia.com: 2024-12-20; ISO8601 group, message 201: 2005-01-01, 2005-01-03, 2006-01-01;
/// ISO 8601's own example day, 12 April 1985, in each of its forms (memory; recomputed with datetime).
#[test]
fn iso_8601_forms() {
    let days = [
        ("2024-W51-5", "2024-12-20"),
        ("2004-W53-6", "2005-01-01"),
        ("2005-W01-1", "2005-01-03"),
        ("2005-W52-7", "2006-01-01"),
        ("1985-04-12", "1985-04-12"),
        ("19850412", "1985-04-12"),
        ("1985-W15-5", "1985-04-12"),
        ("1985W155", "1985-04-12"),
    ];
    for (text, date) in days {
        let context = Context { years: Some(years(1975, 2029)), ..Context::default() };
        assert_eq!(spans(text, Scheme::WrittenDay, &context), [Span::day(day(date))], "{text}");
    }
    for text in ["1985102", "1985-102"] {
        assert_eq!(usual(text, Scheme::YearOrdinal), [Span::day(day("1985-04-12"))], "{text}");
    }
    assert_eq!(usual("1985-W15", Scheme::WrittenWeek), [about_week("1985-04-08")]);
    assert_eq!(usual("1985W15", Scheme::WrittenWeek), [about_week("1985-04-08")]);
}

/// e-sg.ru, "Proper dating format": one day in its many forms, two of which can also mean another.
#[test]
fn written_days() {
    let fourth = Span::day(day("1995-02-04"));
    for text in ["04-FEB-1995", "4-February-1995", "Feb 4, 1995", "1995-02-04"] {
        assert_eq!(usual(text, Scheme::WrittenDay), [fourth], "{text}");
    }
    assert_eq!(usual("4.2.1995", Scheme::DayMonthYear), [fourth]);
    for (text, scheme) in
        [("4/2/95", Scheme::DayMonthYear), ("2/4/95", Scheme::MonthDayYear), ("95/02/04", Scheme::YearMonthDay)]
    {
        assert_eq!(usual(text, scheme), [fourth], "{text}");
    }
    assert_eq!(usual("2/4/95", Scheme::DayMonthYear), [Span::day(day("1995-04-02"))]);
    // EDIFACT D96A, element 2379 (stedi.com): codes 2 DDMMYY, 3 MMDDYY; 101 YYMMDD.
    let plain = [("040295", Scheme::DayMonthYear), ("020495", Scheme::MonthDayYear), ("950204", Scheme::YearMonthDay)];
    for (text, scheme) in plain {
        assert_eq!(usual(text, scheme), [fourth], "{text}");
    }
}

#[test]
fn written_months_and_years() {
    let march = Span::month(1997, 3).unwrap();
    for text in ["MAR 97", "March 1997", "1997 mar", "97-MARCH"] {
        assert_eq!(usual(text, Scheme::WrittenMonth), [march], "{text}");
    }
    assert_eq!(usual("Sept 1994", Scheme::WrittenMonth), [Span::month(1994, 9).unwrap()]);
    assert_eq!(usual("'96", Scheme::Year), [Span::year(1996).unwrap()]);
    for text in ["© 1996", "(C)1996", "(c) 1994-96", "Copyright 1994, 1996"] {
        assert_eq!(usual(text, Scheme::Copyright), [Span::year(1996).unwrap()], "{text}");
    }
}

/// Days of the year computed with Python's datetime.
#[test]
fn ordinal_days() {
    let codes = [
        ("84060", "1984-02-29"),
        ("00060", "2000-02-29"),
        ("01060", "2001-03-01"),
        ("97245", "1997-09-02"),
        ("95001", "1995-01-01"),
        ("88366", "1988-12-31"),
        ("00366", "2000-12-31"),
        ("03365", "2003-12-31"),
    ];
    for (code, date) in codes {
        assert_eq!(usual(code, Scheme::YearOrdinal), [Span::day(day(date))], "{code}");
    }
    for code in ["89366", "00000", "97367"] {
        assert!(usual(code, Scheme::YearOrdinal).is_empty(), "{code}");
    }
    let leap_or_not = ["1984-02-29", "1994-03-01", "2004-02-29", "2014-03-01"].map(|date| Span::day(day(date)));
    assert_eq!(usual("4060", Scheme::DigitOrdinal), leap_or_not);
}

/// Both orders are possible when both halves are weeks and years of the scope.
#[test]
fn four_figures_that_read_both_ways() {
    let context = Context { years: Some(years(1981, 2005)), ..Context::default() };
    // Mondays computed with isoweek 1.3.3.
    let ambiguous = [
        ("0102", "2001-01-08", "2001-12-31"),
        ("0203", "2002-01-14", "2003-01-06"),
        ("0504", "2005-01-24", "2004-01-26"),
        ("0105", "2001-01-29", "2005-01-03"),
        ("0503", "2005-01-17", "2003-01-27"),
        ("0404", "2004-01-19", "2004-01-19"),
    ];
    for (code, year_first, week_first) in ambiguous {
        assert_eq!(spans(code, Scheme::YearWeek, &context), [about_week(year_first)], "{code}");
        assert_eq!(spans(code, Scheme::WeekYear, &context), [about_week(week_first)], "{code}");
    }
    let plain = [
        ("3294", Scheme::WeekYear, "1994-08-08"),
        ("9432", Scheme::YearWeek, "1994-08-08"),
        ("4598", Scheme::WeekYear, "1998-11-02"),
        ("9845", Scheme::YearWeek, "1998-11-02"),
        ("5304", Scheme::WeekYear, "2004-12-27"),
        ("0453", Scheme::YearWeek, "2004-12-27"),
        ("8153", Scheme::YearWeek, "1981-12-28"),
    ];
    for (code, scheme, monday) in plain {
        assert_eq!(spans(code, scheme, &context), [about_week(monday)], "{code}");
        let other = if scheme == Scheme::YearWeek { Scheme::WeekYear } else { Scheme::YearWeek };
        assert!(spans(code, other, &context).is_empty(), "{code} reads one way only");
    }
    assert!(spans("8253", Scheme::YearWeek, &context).is_empty(), "1982 has 52 weeks");
    let faults = explain("8253", &context).unwrap().faults;
    let (_, reason) = faults.iter().find(|(scheme, _)| *scheme == Scheme::YearWeek).unwrap();
    assert_eq!(reason.to_string(), "1982 has no week 53");
}

/// A drive maker's fiscal code. Days published by bugaco.com, johnlane.ie, dmares.com for the same code differ by up
/// to eight; the last three computed by the first Saturday of July rule.
#[test]
fn fiscal_days_hold_every_published_reading() {
    let published = [
        ("07441", "2007-04-28"),
        ("14431", "2014-04-26"),
        ("14431", "2014-04-19"),
        ("0051", "1999-07-31"),
        ("06212", "2005-11-20"),
        ("06212", "2005-11-28"),
        ("96143", "1995-10-02"),
        ("99352", "1999-02-28"),
        ("01127", "2000-09-22"),
    ];
    for (code, date) in published {
        let found = usual(code, Scheme::FiscalDay);
        assert_eq!(found.len(), 1, "{code}");
        assert!(found[0].overlap(Span::day(day(date))).is_some(), "{code} on {date}: {:?}", found[0]);
        assert!((found[0].last - found[0].first).num_days() <= 17, "{code} is no looser than its sources");
    }
    // Read as YYDDD by an answer on experts-exchange: not what such a label says first.
    let label = Context { surface: Surface::DriveLabel, ..Context::default() };
    assert_eq!(read("96143", &label).unwrap()[0].scheme, Scheme::FiscalDay);
}

fn order(code: &str, context: &Context) -> Vec<Scheme> {
    read(code, context).unwrap().iter().map(|reading| reading.scheme).collect()
}

/// Boards are mostly week and year (pcbdesignschool.com, blog.epectec.com), chips year and week (primidi.com).
#[test]
fn the_surface_ranks_the_orders() {
    let on = |surface| Context { surface, ..Context::default() };
    assert_eq!(order("0203", &on(Surface::Board))[0], Scheme::WeekYear);
    assert_eq!(order("0203", &on(Surface::Chip))[0], Scheme::YearWeek);
    assert_eq!(order("0203", &on(Surface::Capacitor))[0], Scheme::YearWeek);
    let why = read("0203", &on(Surface::Board)).unwrap()[0].why.to_string();
    assert_eq!(why, "usual on boards");
}

#[test]
fn design_years_and_other_markings_outrank_habit() {
    let late = Context { surface: Surface::Chip, design_years: Some(years(2010, 2011)), ..Context::default() };
    // 0310: week 10 of 2003, or week 3 of 2010.
    assert_eq!(order("0310", &late)[0], Scheme::WeekYear);
    let beside = [Span::month(2010, 2).unwrap()];
    let context = Context { surface: Surface::Chip, others: &beside, ..Context::default() };
    let best = read("0310", &context).unwrap()[0];
    assert_eq!(best.scheme, Scheme::WeekYear);
    assert_eq!(best.why.to_string(), "seen on chips; 1 week from another marking");
}

/// Monday of 1984-W32 computed with isoweek 1.3.3.
#[test]
fn codes_among_other_text() {
    for text in ["SN74LS04N 8432", "8432 KOREA", "A8432", "8432-B", "D/C 8432", "date code: 8432"] {
        assert_eq!(usual(text, Scheme::YearWeek), [about_week("1984-08-06")], "{text}");
    }
    let among = read("8432 KOREA", &Context::default()).unwrap()[0];
    assert!(among.why.to_string().contains("among other text"));
}

#[test]
fn what_cannot_be_read_says_why() {
    let reasons = [
        ("", "there is nothing to read"),
        ("   ", "there is nothing to read"),
        ("97+", "no date code has “+” in it"),
        ("KOREA", "no date code is written like this"),
        ("997", "no week 97"),
        ("31.02.97", "month 2 of 1997 has no day 31"),
        ("1997-13-01", "there is no month 13"),
        ("1234567890123", "no date code is written like this"),
    ];
    for (text, expected) in reasons {
        let reason = read(text, &Context::default()).unwrap_err().to_string();
        assert!(reason.contains(expected), "{text}: {reason}");
    }
    let outside = Context { years: Some(years(1990, 1995)), ..Context::default() };
    assert!(read("Mar 97", &outside).unwrap_err().to_string().contains("outside the years in question"));
}

/// Holds for any text: readings in order and within the scope, or a reason in words.
fn check_any(text: &str, context: &Context) {
    match read(text, context) {
        Ok(readings) => {
            assert!(!readings.is_empty(), "{text:?}");
            assert!(readings.is_sorted_by_key(|reading: &Reading| reading.cost), "{text:?}");
            let scope = context.scope().widened(8);
            for Reading { span, why, scheme, .. } in readings {
                assert!(span.first <= span.last && span.overlap(scope).is_some(), "{text:?}: {span:?}");
                assert!(!why.to_string().is_empty() && !scheme.to_string().is_empty());
            }
        }
        Err(reason) => assert!(!reason.to_string().is_empty(), "{text:?}"),
    }
}

#[test]
fn fuzz_date_codes() {
    let alphabet: Vec<char> = "00112233445566778899ABCDEHJKMNORSTVWXYZabc -/.:'()©".chars().collect();
    let mut chance = Chance(0x0DA7_EC0D);
    for _ in 0..rounds() {
        let longest = if chance.below(4) == 0 { 60 } else { 8 };
        let text = chance.text(&alphabet, longest);
        let surface = Surface::ALL[chance.below(Surface::ALL.len())];
        let from = 1960 + chance.below(50) as i32;
        let scope = (chance.below(3) == 0).then(|| years(from, from + chance.below(40) as i32));
        let design = (chance.below(3) == 0).then(|| years(from, from + 3));
        check_any(&text, &Context { surface, years: scope, design_years: design, others: &[] });
    }
}

proptest! {
    #[test]
    fn any_text_reads_or_says_why(text in "\\PC{0,60}") {
        check_any(&text, &Context::default());
    }

    #[test]
    fn any_code_reads_or_says_why(text in "[0-9A-Zc /.-]{1,10}") {
        check_any(&text, &Context::default());
    }

    /// chrono writes the week (its own formatting, not our reading), the reading must hold that very day.
    #[test]
    fn a_week_written_by_a_calendar_is_read_back(days in 0u64..12_000, lower in any::<bool>()) {
        let date = day("1977-01-01") + Days::new(days);
        for (form, scheme) in [("%g%V", Scheme::YearWeek), ("%V%g", Scheme::WeekYear), ("%G-W%V", Scheme::WrittenWeek)] {
            let text = date.format(form).to_string();
            let text = if lower { text.to_lowercase() } else { format!(" {text} ") };
            let found = usual(&text, scheme);
            prop_assert!(found.iter().any(|span| span.overlap(Span::day(date)).is_some()), "{text}: {found:?}");
        }
    }

    #[test]
    fn a_day_written_by_a_calendar_is_read_back(days in 0u64..12_000) {
        let date = day("1977-01-01") + Days::new(days);
        let forms = [
            ("%Y-%m-%d", Scheme::WrittenDay), ("%d %b %Y", Scheme::WrittenDay), ("%B %-d, %Y", Scheme::WrittenDay),
            ("%y%m%d", Scheme::YearMonthDay), ("%y%j", Scheme::YearOrdinal), ("%d.%m.%y", Scheme::DayMonthYear),
        ];
        for (form, scheme) in forms {
            let text = date.format(form).to_string();
            prop_assert!(usual(&text, scheme).contains(&Span::day(date)), "{text}");
        }
    }
}
