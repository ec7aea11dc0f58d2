//! IEC 60062's two-character codes: a year letter or digit, then a month sign.
//!
//! Year letters run A to X without G, I, O, Q and come round every twenty years. Sources: primidi.com (R = 2003 to
//! X = 2009), newtoncbraga.com.br (E = 1994 to M = 2000; a second row of that page is a year late and not followed);
//! N and P fill the gap between them; A to D from memory. Months are 1–9, O, N, D (both pages).

use super::found::{Found, Year};
use super::{Fault, Scheme, weeks};

/// A = 1970, 1990, 2010 and so on.
const YEAR_LETTERS: &[u8; 20] = b"ABCDEFHJKLMNPRSTUVWX";

/// The year a letter stands for, within the twenty-year cycle that began in 1970.
fn letter_year(letter: u8) -> Option<Year> {
    let place = YEAR_LETTERS.iter().position(|known| *known == letter)?;
    // 1970 leaves 10 when divided by 20.
    Some(Year::Rest((place as i32 + 10) % 20, 20))
}

fn month(sign: u8) -> Option<u32> {
    match sign {
        b'1'..=b'9' => Some(u32::from(sign - b'0')),
        b'O' => Some(10),
        b'N' => Some(11),
        b'D' => Some(12),
        _ => None,
    }
}

/// Year letter and month sign.
pub(super) fn letter_month(letter: u8, sign: u8, found: &mut Found) {
    let scheme = Scheme::LetterMonth;
    match (letter_year(letter), month(sign)) {
        (Some(year), Some(month)) => found.month(scheme, year, month),
        (None, _) => found.refuse(scheme, Fault::NoSuchYearLetter(letter.into())),
        (_, None) => found.refuse(scheme, Fault::NoSuchMonthSign(sign.into())),
    }
}

/// Year digit and month sign.
pub(super) fn digit_month(digit: u32, sign: u8, found: &mut Found) {
    let scheme = Scheme::DigitMonth;
    match month(sign) {
        Some(month) => found.month(scheme, Year::Rest(digit as i32, 10), month),
        None => found.refuse(scheme, Fault::NoSuchMonthSign(sign.into())),
    }
}

/// Year letter and two-digit week.
pub(super) fn letter_week(letter: u8, week: u32, found: &mut Found) {
    let scheme = Scheme::LetterWeek;
    match letter_year(letter) {
        Some(year) => weeks::week(scheme, year, week, found),
        None => found.refuse(scheme, Fault::NoSuchYearLetter(letter.into())),
    }
}
