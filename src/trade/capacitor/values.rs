//! How a mark's items make a value.

use super::beside::{beside, has_volts, is_volts, leading_volts};
use super::codes::{is_remembered_voltage, tolerance, value_letter, voltage_code, voltage_letter};
use super::lexer::{Item, Items, Number, Word};
use super::preferred::{ESeries, neighbours, scaled};
use super::{Body, Form, Mark, Unreadable};
use Item::Word as Letters;

/// A value as far as it is read, and the items that are left.
struct Value<'a> {
    form: Form,
    capacitance_pf: f64,
    volts: Option<f64>,
    /// The meaning of its voltage letter is from memory.
    is_remembered: bool,
    rest: &'a [Item],
}

pub(super) fn marks(text: &str, body: Body) -> Result<Vec<Mark>, Unreadable> {
    let items = Items::new(text)?;
    // "16V 1000µF": the volts are taken off first; "1V104" begins with a voltage code instead.
    let is_code_first = voltage_code_first(items.all()).is_some();
    let (volts, value) = match leading_volts(items.all()) {
        Some((volts, value)) if !(value.is_empty() || is_code_first) => (Some(volts), value),
        _ => (None, items.all()),
    };
    let mut gathered = Gathered { body, volts, marks: Vec::new(), fault: None };
    gathered.values(value);
    let Gathered { marks, fault, .. } = gathered;
    if marks.is_empty() { Err(fault.unwrap_or(Unreadable::NoForm)) } else { Ok(marks) }
}

struct Gathered {
    body: Body,
    /// Volts that stood before the value.
    volts: Option<f64>,
    marks: Vec<Mark>,
    fault: Option<Unreadable>,
}

impl Gathered {
    /// Tries every way to read a value from the first items; the likeliest way first.
    fn values(&mut self, items: &[Item]) {
        if let Some((power, letter, code)) = voltage_code_first(items) {
            return self.voltage_first(power, letter, code, &items[3..]);
        }
        match *items {
            [Letters(o), Item::Number(code), ..] if matches!(o.letters(), [b'O', _]) && is_code(code) => {
                self.refuse(Unreadable::LetterForZero);
            }
            [Item::Number(whole), Letters(point), Item::Number(rest), ..]
                if point.joined && rest.joined && !is_volts(items.get(3)) =>
            {
                self.point_letter(whole, point, rest, items);
            }
            [Item::Number(number), Letters(unit), ..] if unit_pf(unit).is_some() => {
                let pf = number.value * unit_pf(unit).unwrap_or(1.0);
                // Upper case N and P are also tolerances; three figures before them may be a code.
                let form = if unit.letters().len() == 1 { Form::PrefixForPoint } else { Form::WithUnit };
                self.keep(&Value { form, capacitance_pf: pf, volts: None, is_remembered: false, rest: &items[2..] });
                if is_code(number) && matches!(unit.single(), Some(b'N' | b'P')) {
                    self.number(number, &items[1..]);
                }
            }
            [Item::Number(number), ..] => self.number(number, &items[1..]),
            [Letters(word), Item::Number(number), ..] if number.joined => self.letters_first(word, number, &items[2..]),
            _ => {}
        }
    }

    /// `2A474`: a voltage code before a three-figure value.
    fn voltage_first(&mut self, power: u8, letter: u8, code: Number, rest: &[Item]) {
        match voltage_code(power, letter) {
            Some(volts) => self.three_figures(code, Some((volts, false)), rest),
            None => self.refuse(Unreadable::NoVoltageCode(power.into(), letter.into())),
        }
    }

    /// `4n7`, `4R7`; with another letter it is a tolerance and volts: `22K50`.
    fn point_letter(&mut self, whole: Number, point: Word, fraction: Number, items: &[Item]) {
        let Some(letter) = point.single() else { return self.number(whole, &items[1..]) };
        if fraction.has_point || whole.has_point {
            // "0.1K250": a tolerance, then volts.
            return self.number(whole, &items[1..]);
        }
        if let Some(pf) = prefix_pf(letter) {
            self.keep(&Value {
                form: Form::PrefixForPoint,
                capacitance_pf: pf_of(whole, fraction, pf),
                volts: None,
                is_remembered: false,
                rest: &items[3..],
            });
        } else if letter == b'R' {
            for &unit_pf in self.units() {
                self.keep(&Value {
                    form: Form::RForPoint,
                    capacitance_pf: pf_of(whole, fraction, unit_pf),
                    volts: None,
                    is_remembered: false,
                    rest: &items[3..],
                });
            }
        } else {
            self.number(whole, &items[1..]);
        }
    }

    /// `p33`, `C107`, `S3`, `KA2`.
    fn letters_first(&mut self, word: Word, number: Number, rest: &[Item]) {
        match *word.letters() {
            [letter] if number.digits == 3 && !number.has_point && voltage_letter(letter).is_some() => {
                let volts = voltage_letter(letter).map(|volts| (volts, is_remembered_voltage(letter)));
                self.three_figures(number, volts, rest);
            }
            [letter @ (b'p' | b'n' | b'u' | b'm')] if !number.has_point => {
                let zero = Number::default();
                let capacitance_pf = pf_of(zero, number, prefix_pf(letter).unwrap_or(1.0));
                self.keep(&Value {
                    form: Form::PrefixForPoint,
                    capacitance_pf,
                    volts: None,
                    is_remembered: false,
                    rest,
                });
            }
            [letter] | [b'A'..=b'Z', letter] if number.digits == 1 && !number.has_point => {
                if let Some(mantissa) = value_letter(letter) {
                    let capacitance_pf = match number.value as i32 {
                        9 => scaled(mantissa, -1),
                        power => scaled(mantissa, power),
                    };
                    self.keep(&Value {
                        form: Form::LetterFigure,
                        capacitance_pf,
                        volts: None,
                        is_remembered: false,
                        rest,
                    });
                }
            }
            _ => {}
        }
    }

    /// A number without a unit: a three-figure code, microfarads or picofarads.
    fn number(&mut self, number: Number, rest: &[Item]) {
        let electrolytic = self.body.is_electrolytic();
        let bare = |form, unit_pf: f64| Value {
            form,
            capacitance_pf: number.value * unit_pf,
            volts: None,
            is_remembered: false,
            rest,
        };
        if is_code(number) {
            // "470" on a can is microfarads; "476" is no preferred value and can only be a code.
            let preferred = neighbours(number.value, ESeries::E24).is_some_and(super::preferred::Neighbours::is_exact);
            let microfarads = preferred && (electrolytic || (self.body == Body::Unknown && has_volts(rest)));
            if microfarads && !self.body.is_tantalum() {
                self.keep(&bare(Form::BareMicrofarads, 1e6));
            }
            self.three_figures(number, None, rest);
            if microfarads && self.body.is_tantalum() {
                self.keep(&bare(Form::BareMicrofarads, 1e6));
            }
            return;
        }
        // A fraction of a picofarad is printed with an R; ".047" is microfarads.
        let microfarads = electrolytic || number.has_point || self.body == Body::Unknown || number.digits > 3;
        if microfarads && self.body != Body::Ceramic || number.has_point {
            self.keep(&bare(Form::BareMicrofarads, 1e6));
        }
        let is_volts_beside = self.body == Body::Unknown && has_volts(rest);
        if !(electrolytic || number.has_point || is_volts_beside) {
            self.keep(&bare(Form::BarePicofarads, 1.0));
        }
    }

    /// Two figures and a power of ten, with the volts before it (and whether they are from memory), or with a
    /// tantalum's voltage letter behind it.
    fn three_figures(&mut self, code: Number, volts: Option<(f64, bool)>, rest: &[Item]) {
        let (figures, power) = ((code.value / 10.0).floor(), code.value as i32 % 10);
        if figures < 10.0 {
            return self.refuse(Unreadable::NoForm);
        }
        let power = match (power, self.body) {
            (7, Body::Ceramic | Body::Film) => return self.refuse(Unreadable::UnusedPower),
            // Eight and nine stand for hundredths and tenths, but not where a value that small is not made.
            (8 | 9, body) if !body.is_electrolytic() => power - 10,
            _ => power,
        };
        let capacitance_pf = scaled(figures, power);
        let value = |volts: Option<(f64, bool)>, rest| Value {
            form: Form::ThreeFigure,
            capacitance_pf,
            volts: volts.map(|(volts, _)| volts),
            is_remembered: volts.is_some_and(|(_, is_remembered)| is_remembered),
            rest,
        };
        if let (None, [Letters(letter), after @ ..]) = (volts, rest)
            && let (true, Some(letter)) = (letter.joined, letter.single())
            && let Some(volts) = voltage_letter(letter)
        {
            let volts = (volts, is_remembered_voltage(letter));
            // "476J": five per cent, or 6.3 V on a tantalum chip.
            let is_tolerance = tolerance(letter, capacitance_pf).is_some();
            if is_tolerance && !self.body.is_tantalum() {
                self.keep(&value(None, rest));
            }
            if self.body.is_tantalum() || self.body == Body::Unknown && capacitance_pf >= 1e5 {
                self.keep(&value(Some(volts), after));
            }
            if is_tolerance && self.body.is_tantalum() {
                self.keep(&value(None, rest));
            }
            return;
        }
        self.keep(&value(volts, rest));
    }

    /// What R and bare numbers count: microfarads on electrolytics, picofarads on others.
    fn units(&self) -> &'static [f64] {
        match self.body {
            Body::Unknown => &[1.0, 1e6],
            body if body.is_electrolytic() => &[1e6],
            _ => &[1.0],
        }
    }

    /// Reads tolerance and voltage beside a value and keeps it, unless something remains that says nothing.
    fn keep(&mut self, value: &Value) {
        if !(0.01..=1e13).contains(&value.capacitance_pf) {
            return self.refuse(Unreadable::Beyond);
        }
        let mut mark = Mark {
            form: value.form,
            capacitance_pf: value.capacitance_pf,
            volts: value.volts.or(self.volts),
            tolerance: None,
            polarity: self.body.polarity(value.capacitance_pf),
            suppression: None,
            is_remembered: value.is_remembered,
        };
        let mut rest = value.rest;
        while !rest.is_empty() {
            match beside(&mut mark, rest) {
                Some(left) => rest = left,
                None => return self.refuse(Unreadable::Remainder),
            }
        }
        if mark.volts.is_some_and(|volts| !(1.0..=10_000.0).contains(&volts)) {
            return self.refuse(Unreadable::Remainder);
        }
        if !self.marks.contains(&mark) {
            self.marks.push(mark);
        }
    }

    fn refuse(&mut self, fault: Unreadable) {
        self.fault.get_or_insert(fault);
    }
}

/// The figure and letter of a voltage code at the front of the items, and the three-figure value behind: `2A474`.
fn voltage_code_first(items: &[Item]) -> Option<(u8, u8, Number)> {
    match *items {
        [Item::Number(power), Letters(letter), Item::Number(code), ..]
            if power.digits == 1 && !power.has_point && letter.joined && code.joined && is_code(code) =>
        {
            Some((b'0' + power.value as u8, letter.single()?, code))
        }
        _ => None,
    }
}

fn is_code(number: Number) -> bool {
    number.digits == 3 && !number.has_point
}

/// Picofarads of a single prefix letter. Only the small m is milli: the large one is a tolerance.
fn prefix_pf(letter: u8) -> Option<f64> {
    match letter {
        b'p' | b'P' => Some(1.0),
        b'n' | b'N' => Some(1e3),
        b'u' | b'U' => Some(1e6),
        b'm' => Some(1e9),
        _ => None,
    }
}

/// Picofarads of a unit as it is printed.
fn unit_pf(word: Word) -> Option<f64> {
    match word.letters() {
        [letter] if word.joined => prefix_pf(*letter),
        b"pF" | b"PF" | b"pf" | b"uuF" | b"UUF" | b"MMF" | b"MMFD" => Some(1.0),
        b"nF" | b"NF" | b"nf" => Some(1e3),
        b"uF" | b"UF" | b"uf" | b"MFD" | b"mfd" | b"Mfd" | b"MF" => Some(1e6),
        b"mF" => Some(1e9),
        _ => None,
    }
}

/// Picofarads of a number whose point is a letter, with one rounding only.
fn pf_of(whole: Number, fraction: Number, unit_pf: f64) -> f64 {
    let places = fraction.digits as i32;
    (whole.value * 10f64.powi(places) + fraction.value) * unit_pf / 10f64.powi(places)
}
