//! What stands beside a capacitor's value: volts, tolerance, temperature, class.

use super::Mark;
use super::codes::{Tolerance, tolerance, voltage_code};
use super::lexer::{Item, Word};
use super::preferred::scaled;
use Item::{Percent, Word as Letters};

/// Takes one tolerance, voltage, temperature or class off the items; `None` when they begin with none of them.
pub(super) fn beside<'a>(mark: &mut Mark, items: &'a [Item]) -> Option<&'a [Item]> {
    match *items {
        [Item::Number(number), Percent, ..] if mark.tolerance.is_none() && number.value <= 100.0 => {
            mark.tolerance = Some(Tolerance::percent(number.value));
            Some(&items[2..])
        }
        // The temperature that it is made for.
        [Item::Number(celsius), Letters(c), ..]
            if c.letters() == b"C" && [70.0, 85.0, 105.0, 125.0].contains(&celsius.value) =>
        {
            Some(&items[2..])
        }
        [Letters(class), Item::Number(nth), ..]
            if mark.suppression.is_none()
                && nth.joined
                && matches!(class.letters(), b"X" | b"Y")
                && [1.0, 2.0, 3.0].contains(&nth.value) =>
        {
            mark.suppression = Some((class.single()?.into(), nth.value as u8));
            Some(&items[2..])
        }
        _ if mark.volts.is_none() && leading_volts(items).is_some() => {
            let (volts, rest) = leading_volts(items)?;
            mark.volts = Some(volts);
            Some(rest)
        }
        [Item::Number(power), Letters(letter), ..]
            if mark.volts.is_none() && power.digits == 1 && letter.joined && letter.single().is_some() =>
        {
            mark.volts = Some(voltage_code(b'0' + power.value as u8, letter.single()?)?);
            Some(&items[2..])
        }
        [Item::Number(number), ..] if mark.volts.is_none() => {
            mark.volts = Some(number.value);
            Some(&items[1..])
        }
        [Letters(word), ..] if mark.tolerance.is_none() && word.single().is_some() => {
            mark.tolerance = Some(tolerance(word.single()?, mark.capacitance_pf)?);
            mark.is_remembered |= word.single() == Some(b'Q');
            Some(&items[1..])
        }
        _ => None,
    }
}

/// Volts that say they are volts at the front of the items, and what is left: `16V`, `6V3`.
pub(super) fn leading_volts(items: &[Item]) -> Option<(f64, &[Item])> {
    match *items {
        [Item::Number(whole), Letters(v), Item::Number(tenths), ..]
            if v.letters() == b"V" && v.joined && tenths.joined && tenths.digits == 1 && !whole.has_point =>
        {
            Some((whole.value + scaled(tenths.value, -1), &items[3..]))
        }
        [Item::Number(number), Letters(unit), ..] if is_volt_word(unit) => Some((number.value, &items[2..])),
        _ => None,
    }
}

/// Whether a voltage stands beside a value.
pub(super) fn has_volts(rest: &[Item]) -> bool {
    rest.iter().any(|item| matches!(item, Item::Number(_)))
}

pub(super) fn is_volts(item: Option<&Item>) -> bool {
    matches!(item, Some(Letters(word)) if word.joined && is_volt_word(*word))
}

fn is_volt_word(word: Word) -> bool {
    matches!(word.letters(), b"V" | b"v" | b"WV" | b"VDC" | b"VAC" | b"Vdc" | b"VDCW" | b"WVDC")
}
