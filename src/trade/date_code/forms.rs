//! Which schemes a marking is written like, by its runs of digits and letters.

use super::code::{Code, Part};
use super::found::{Found, Year};
use super::{Scheme, fiscal, letters, weeks};
use Part::{Digits, Letters};

/// Gathers every reading of the marking as a whole; where it is no date's form, of the codes in it.
pub(super) fn gather(code: &Code, found: &mut Found) {
    let from = code.label_runs();
    whole(code, from, found);
    if found.readings.is_empty() && found.faults.is_empty() && code.count() > 1 {
        among_text(code, found);
    }
}

/// The marking as one date, its runs read from `from` on.
fn whole(code: &Code, from: usize, found: &mut Found) {
    let part = |nth: usize| code.part(from + nth);
    // A run too long for a number leaves a gap, and nothing is read over it.
    match (part(0), part(1), part(2), part(3), code.count() - from) {
        (Some(Letters(b"COPYRIGHT")), ..) => copyright(code, from, found),
        // "C 96", "(C)1996"; joined to a figure or two it is a year letter.
        (Some(Letters(b"C")), Some(Digits(2 | 4, _)), ..) if !code.is_joined(from + 1) => {
            copyright(code, from, found);
        }
        (Some(Digits(..)), ..) if code.copyright => copyright(code, from, found),
        (Some(Digits(digits, number)), None, .., 1) => figures(digits, number, found),
        (Some(Letters(&[letter, sign])), None, .., 1) => letters::letter_month(letter, sign, found),
        (Some(Letters(word)), Some(Digits(digits, number)), None, None, 2) => {
            word_and_figures(word, digits, number, code.is_joined(from + 1), found);
        }
        (Some(Digits(digits, number)), Some(Letters(word)), None, None, 2) => {
            figures_and_word(digits, number, word, code.is_joined(from + 1), found);
        }
        (Some(Digits(front, one)), Some(Digits(back, two)), None, None, 2) => {
            two_figures((front, one), (back, two), found);
        }
        (Some(Digits(first, one)), Some(Digits(second, two)), Some(Digits(third, three)), None, 3) => {
            three_figures((first, one), (second, two), (third, three), found);
        }
        (Some(Digits(digits, number)), Some(Letters(word)), Some(Digits(last, rest)), None, 3) => {
            figures_around(word, (digits, number), (last, rest), found);
        }
        (Some(Letters(word)), Some(Digits(digits, number)), Some(Digits(last, year)), None, 3) => {
            if let (Some(month), Some(year)) = (month_name(word), Year::written(last, year)) {
                found.day(Scheme::WrittenDay, year, month, number);
            } else if let (true, true, Some(year)) = (is_week(word), digits <= 2, Year::written(last, year)) {
                weeks::week(Scheme::WrittenWeek, year, number, found);
            }
        }
        (Some(Digits(digits, year)), Some(Letters(word)), Some(Digits(_, week)), Some(Digits(1, day)), 4)
            if is_week(word) =>
        {
            if let Some(year) = Year::written(digits, year) {
                weeks::weekday(year, week, day, found);
            }
        }
        _ => {}
    }
}

/// Digits alone.
fn figures(digits: usize, number: u32, found: &mut Found) {
    let (front, back) = (number / 100, number % 100);
    match digits {
        2 => {
            found.year(Scheme::Year, Year::Rest(number as i32, 100));
            letters::digit_month(number / 10, b'0' + (number % 10) as u8, found);
        }
        3 => weeks::week(Scheme::DigitWeek, Year::Rest(front as i32, 10), back, found),
        4 => {
            weeks::halves(front, back, found);
            found.month(Scheme::YearMonth, Year::Rest(front as i32, 100), back);
            found.month(Scheme::MonthYear, Year::Rest(back as i32, 100), front);
            found.ordinal(Scheme::DigitOrdinal, Year::Rest((number / 1000) as i32, 10), number % 1000);
            if let Some(year) = Year::written(4, number) {
                found.year(Scheme::Year, year);
            }
            fiscal::day(front, back / 10, back % 10, found);
        }
        5 => {
            found.ordinal(Scheme::YearOrdinal, Year::Rest((number / 1000) as i32, 100), number % 1000);
            let year = Year::Rest((number / 10_000) as i32, 10);
            found.day(Scheme::DigitMonthDay, year, front % 100, back);
            fiscal::day(number / 1000, number / 10 % 100, number % 10, found);
        }
        6 => {
            three_figures((2, number / 10_000), (2, front % 100), (2, back), found);
            if let Some(year) = Year::written(4, front) {
                weeks::week(Scheme::YearWeek, year, back, found);
                found.month(Scheme::YearMonth, year, back);
            }
        }
        7 => {
            if let Some(year) = Year::written(4, number / 1000) {
                found.ordinal(Scheme::YearOrdinal, year, number % 1000);
            }
        }
        8 => {
            if let Some(year) = Year::written(4, number / 10_000) {
                found.day(Scheme::WrittenDay, year, front % 100, back);
            }
        }
        _ => {}
    }
}

/// `MAR 97`, `WK 9712`, `W12`; joined: `K9`, `K36`.
fn word_and_figures(word: &[u8], digits: usize, number: u32, joined: bool, found: &mut Found) {
    if let Some(month) = month_name(word) {
        if let Some(year) = Year::written(digits, number) {
            found.month(Scheme::WrittenMonth, year, month);
        }
    } else if is_week(word) && digits == 4 {
        weeks::halves(number / 100, number % 100, found);
    } else if let (&[letter], true) = (word, joined) {
        match digits {
            1 => letters::letter_month(letter, b'0' + number as u8, found),
            2 => letters::letter_week(letter, number, found),
            _ => {}
        }
    }
}

/// `97 MAR`, `1997 MARCH`; joined: `8N`.
fn figures_and_word(digits: usize, number: u32, word: &[u8], joined: bool, found: &mut Found) {
    match (month_name(word), Year::written(digits, number)) {
        (Some(month), Some(year)) if digits > 1 => found.month(Scheme::WrittenMonth, year, month),
        _ => {
            if let (1, &[sign], true) = (digits, word, joined) {
                letters::digit_month(number, sign, found);
            }
        }
    }
}

/// `97-12`, `1997/12`, `12.1997`, `1997-245`.
fn two_figures((front, one): (usize, u32), (back, two): (usize, u32), found: &mut Found) {
    match (front, back) {
        (2, 2) => {
            weeks::halves(one, two, found);
            found.month(Scheme::YearMonth, Year::Rest(one as i32, 100), two);
            found.month(Scheme::MonthYear, Year::Rest(two as i32, 100), one);
        }
        (4, 1 | 2) => {
            if let Some(year) = Year::written(4, one) {
                weeks::week(Scheme::YearWeek, year, two, found);
                found.month(Scheme::YearMonth, year, two);
            }
        }
        (1 | 2, 4) => {
            if let Some(year) = Year::written(4, two) {
                weeks::week(Scheme::WeekYear, year, one, found);
                found.month(Scheme::MonthYear, year, one);
            }
        }
        (2 | 4, 3) => {
            if let Some(year) = Year::written(front, one) {
                found.ordinal(Scheme::YearOrdinal, year, two);
            }
        }
        _ => {}
    }
}

/// `1997-03-12`, `12.03.97`, `3/12/1997`, `97-03-12`.
fn three_figures(
    (first, one): (usize, u32),
    (second, two): (usize, u32),
    (third, three): (usize, u32),
    found: &mut Found,
) {
    match (first, second, third) {
        (4, 1 | 2, 1 | 2) => {
            if let Some(year) = Year::written(4, one) {
                found.day(Scheme::WrittenDay, year, two, three);
            }
        }
        (1 | 2, 1 | 2, 2 | 4) => {
            if let Some(year) = Year::written(third, three) {
                found.day(Scheme::DayMonthYear, year, two, one);
                // 05.05.97 says the same either way.
                if one != two {
                    found.day(Scheme::MonthDayYear, year, one, two);
                }
            }
            if (first, second, third) == (2, 2, 2) {
                found.day(Scheme::YearMonthDay, Year::Rest(one as i32, 100), two, three);
            }
        }
        _ => {}
    }
}

/// `12 MAR 1997`, `1997 MAR 12`, `1997-W12`, `97W12`, `1997W123`.
fn figures_around(word: &[u8], (digits, number): (usize, u32), (last, rest): (usize, u32), found: &mut Found) {
    if let Some(month) = month_name(word) {
        if digits == 4 {
            if let Some(year) = Year::written(4, number) {
                found.day(Scheme::WrittenDay, year, month, rest);
            }
        } else if let (true, Some(year)) = (last > 1, Year::written(last, rest)) {
            found.day(Scheme::WrittenDay, year, month, number);
        }
    } else if let (true, Some(year)) = (is_week(word), Year::written(digits, number)) {
        match last {
            1 | 2 => weeks::week(Scheme::WrittenWeek, year, rest, found),
            3 => weeks::weekday(year, rest / 10, rest % 10, found),
            _ => {}
        }
    }
}

/// A year or a range of years behind a copyright sign: the last of them counts.
fn copyright(code: &Code, from: usize, found: &mut Found) {
    let year = (from..code.count()).rev().find_map(|at| match code.part(at) {
        Some(Digits(digits @ (2 | 4), number)) => Year::written(digits, number),
        _ => None,
    });
    if let Some(year) = year {
        found.year(Scheme::Copyright, year);
    }
}

/// Four-digit codes that stand in other text (`KOREA 9432`, `9432A`): those that stand alone, or else those with a
/// letter or two directly before or behind.
fn among_text(code: &Code, found: &mut Found) {
    found.among_text = true;
    let four = |at: usize| match code.part(at) {
        Some(Digits(4, number)) => Some(number),
        _ => None,
    };
    let short = |at: usize| matches!(code.part(at), Some(Letters(word)) if word.len() <= 2);
    let alone = |at: usize| !code.is_joined(at) && !code.is_joined(at + 1);
    let near = |at: usize| (!code.is_joined(at) || short(at - 1)) && (!code.is_joined(at + 1) || short(at + 1));
    for fits in [&alone as &dyn Fn(usize) -> bool, &near] {
        for at in (0..code.count()).filter(|at| fits(*at)) {
            if let Some(number) = four(at) {
                weeks::halves(number / 100, number % 100, found);
            }
        }
        if !found.readings.is_empty() {
            return;
        }
    }
}

/// A month's English name, whole or its first three letters (`SEPT` too).
fn month_name(word: &[u8]) -> Option<u32> {
    const NAMES: [&[u8]; 12] = [
        b"JANUARY",
        b"FEBRUARY",
        b"MARCH",
        b"APRIL",
        b"MAY",
        b"JUNE",
        b"JULY",
        b"AUGUST",
        b"SEPTEMBER",
        b"OCTOBER",
        b"NOVEMBER",
        b"DECEMBER",
    ];
    let known = |name: &&[u8]| *name == word || name[..3] == *word || (word == b"SEPT" && name.starts_with(word));
    NAMES.iter().position(known).map(|at| at as u32 + 1)
}

fn is_week(word: &[u8]) -> bool {
    matches!(word, b"W" | b"WK" | b"WEEK" | b"KW")
}
