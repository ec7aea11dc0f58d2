//! Reads a group of capacitor positions from plain words: "six of 1000 µF 6.3 V 8 mm near the processor, sound".
//!
//! The order of the words is free. Figures are known by their units; a place begins with a word such as *near* and
//! runs to the next comma. A word that is not understood is refused, so that nothing said is lost in silence.

use super::capacitor_words::{
    COUNTS, FILLERS, Measure, PLACE_WORDS, Token, Words, ambiguous, dielectric_of, is_designator, mounting_of, run,
    state_of, unit_of,
};
use super::{CapacitorGroup, CapacitorState, Dielectric, MOST_POSITIONS, Mounting};
use crate::text;

/// Why a line is not understood.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum BadPhrase {
    #[error("{}", text!("Nothing is said yet"))]
    Empty,
    #[error("{}", text!("“{word}” is not understood; take it out, or put it behind a word of place such as “near”", word = .0))]
    Word(String),
    #[error("{}", text!("“{word}” can be read in two ways: write {clear}", word = .word, clear = .clear))]
    Ambiguous { word: String, clear: &'static str },
    #[error("{}", text!("“{word}” has no unit: write µF, nF, pF, V, mm or °C behind it", word = .0))]
    NoUnit(String),
    #[error("{}", text!("“mF” can be read in two ways: write µF, nF or pF"))]
    Milli,
    #[error("{}", text!("{word} is told twice", word = .0))]
    Twice(&'static str),
    #[error("{}", text!("{what} of {figure} cannot be: it lies between {least} and {most}", what = .what, figure = .figure, least = .least, most = .most))]
    Beyond { what: &'static str, figure: String, least: String, most: String },
    #[error("{}", text!("{count} positions, but {named} designators", count = .count, named = .named))]
    Counts { count: usize, named: usize },
    #[error("{}", text!("“{word}” is no run of designators: write C1–C6", word = .0))]
    Run(String),
}

/// Reads a line.
///
/// # Errors
/// [`BadPhrase`] names the first word or figure that cannot be; figures must lie within 1 pF to 10 F, 1 to 10,000 V,
/// 1 to 200 mm, 40 to 200 °C and 1 to [`MOST_POSITIONS`] positions (the widest that capacitors are made; from memory).
pub fn read_phrase(line: &str) -> Result<CapacitorGroup, BadPhrase> {
    let words = Words::of(line);
    if words.list.is_empty() {
        return Err(BadPhrase::Empty);
    }
    let mut reader = Reader { words, at: 0, count: None, group: CapacitorGroup::new(), has_state: false };
    while reader.at < reader.words.list.len() {
        reader.next()?;
    }
    let Reader { count, mut group, .. } = reader;
    let named = group.designators.len();
    match count {
        Some(count) if named > 0 && named != count => return Err(BadPhrase::Counts { count, named }),
        Some(count) => group.count = count,
        None if named > 0 => group.count = named,
        None => {}
    }
    if group == CapacitorGroup::new() && count.is_none() {
        return Err(BadPhrase::Empty);
    }
    Ok(group)
}

struct Reader {
    words: Words,
    at: usize,
    count: Option<usize>,
    group: CapacitorGroup,
    has_state: bool,
}

fn within(what: &'static str, figure: f64, unit: &str, least: f64, most: f64) -> Result<f64, BadPhrase> {
    if figure.is_finite() && (least..=most).contains(&figure) {
        return Ok(figure);
    }
    let said = |figure: f64| format!("{figure} {unit}").trim_end().to_owned();
    Err(BadPhrase::Beyond { what, figure: said(figure), least: said(least), most: said(most) })
}

fn set(slot: &mut Option<f64>, what: &'static str, figure: f64) -> Result<(), BadPhrase> {
    if slot.replace(figure).is_some() { Err(BadPhrase::Twice(what)) } else { Ok(()) }
}

impl Reader {
    fn token(&self, ahead: usize) -> Option<&Token> {
        self.words.list.get(self.at + ahead)
    }

    /// The word so many tokens ahead, in small letters.
    fn word(&self, ahead: usize) -> Option<String> {
        match self.token(ahead) {
            Some(Token::Word(word)) => Some(word.to_lowercase()),
            _ => None,
        }
    }

    fn unit(&self, ahead: usize) -> Result<Option<Measure>, BadPhrase> {
        match self.token(ahead) {
            Some(Token::Word(word)) => unit_of(word),
            _ => Ok(None),
        }
    }

    fn next(&mut self) -> Result<(), BadPhrase> {
        match self.token(0).cloned() {
            Some(Token::Number(number, printed)) => self.figure(number, &printed),
            Some(Token::Word(printed)) => self.one_word(&printed),
            Some(Token::Comma) | None => {
                self.at += 1;
                Ok(())
            }
        }
    }

    fn figure(&mut self, number: f64, printed: &str) -> Result<(), BadPhrase> {
        if let Some(measure) = self.unit(1)? {
            self.at += 2;
            return self.measured(number, measure);
        }
        let joined = matches!(self.word(1).as_deref(), Some("x" | "×" | "by"));
        match (joined, self.token(2)) {
            // Diameter by height: "8 x 12 mm".
            (true, Some(Token::Number(height, _))) if matches!(self.unit(3)?, Some(Measure::Millimetres)) => {
                let height = *height;
                self.at += 4;
                self.across(number)?;
                self.high(height)
            }
            // Two values side by side: "1000/6.3".
            (false, Some(Token::Number(volts, _))) if self.word(1).as_deref() == Some("/") => {
                let volts = *volts;
                self.at += if matches!(self.unit(3)?, Some(Measure::Volts)) { 4 } else { 3 };
                self.measured(number, Measure::Capacitance(1.0))?;
                self.measured(volts, Measure::Volts)
            }
            _ if joined || self.word(1).as_deref() == Some("of") || self.count_may_stand_here() => {
                self.at += if joined { 2 } else { 1 };
                self.counted(number, printed)
            }
            _ => Err(BadPhrase::NoUnit(printed.to_owned())),
        }
    }

    /// A bare number counts when it comes first and a figure or a word follows: "6 1000 µF", "6 polymers".
    fn count_may_stand_here(&self) -> bool {
        self.at == 0 && self.count.is_none() && self.token(1).is_some()
    }

    fn counted(&mut self, number: f64, printed: &str) -> Result<(), BadPhrase> {
        if number.fract() != 0.0 {
            return Err(BadPhrase::NoUnit(printed.to_owned()));
        }
        let number = within(text!("A count"), number, "", 1.0, MOST_POSITIONS as f64)?;
        if self.count.replace(number as usize).is_some() {
            return Err(BadPhrase::Twice(text!("The count")));
        }
        Ok(())
    }

    fn measured(&mut self, number: f64, measure: Measure) -> Result<(), BadPhrase> {
        match measure {
            Measure::Capacitance(factor) => {
                // Nine places hide what the change of unit leaves behind.
                let uf: f64 = format!("{:.8e}", number * factor).parse().unwrap_or(number * factor);
                let uf = within(text!("A capacitance"), uf, "µF", 1e-6, 1e7)?;
                set(&mut self.group.capacitance_uf, text!("The capacitance"), uf)
            }
            Measure::Volts => {
                let volts = within(text!("A voltage"), number, "V", 1.0, 10_000.0)?;
                set(&mut self.group.voltage_v, text!("The voltage"), volts)
            }
            Measure::Celsius => {
                let celsius = within(text!("A temperature"), number, "°C", 40.0, 200.0)?;
                set(&mut self.group.temperature_c, text!("The temperature"), celsius)
            }
            Measure::Millimetres => self.length(number),
        }
    }

    /// Millimetres: what they measure stands behind them; the first is the diameter otherwise, the second the height.
    fn length(&mut self, mm: f64) -> Result<(), BadPhrase> {
        match self.word(0).as_deref() {
            Some("high" | "tall" | "height" | "long") => {
                self.at += 1;
                self.high(mm)
            }
            Some("wide" | "across" | "diameter" | "thick" | "dia" | "x" | "×" | "by") => {
                self.at += 1;
                self.across(mm)
            }
            Some("pitch" | "spacing") => {
                self.at += 1;
                let mm = within(text!("A pitch"), mm, "mm", 1.0, 200.0)?;
                set(&mut self.group.pitch_mm, text!("The pitch"), mm)
            }
            Some("lead") if self.word(1).as_deref() == Some("spacing") => {
                self.at += 1;
                self.length(mm)
            }
            _ if self.group.diameter_mm.is_some() => self.high(mm),
            _ => self.across(mm),
        }
    }

    fn across(&mut self, mm: f64) -> Result<(), BadPhrase> {
        let mm = within(text!("A diameter"), mm, "mm", 1.0, 200.0)?;
        set(&mut self.group.diameter_mm, text!("The diameter"), mm)
    }

    fn high(&mut self, mm: f64) -> Result<(), BadPhrase> {
        let mm = within(text!("A height"), mm, "mm", 1.0, 200.0)?;
        set(&mut self.group.height_mm, text!("The height"), mm)
    }

    fn one_word(&mut self, printed: &str) -> Result<(), BadPhrase> {
        let word = printed.to_lowercase();
        let next = self.word(1);
        let pair = next.map(|next| format!("{word} {next}")).unwrap_or_default();
        match pair.as_str() {
            "not looked" => {
                self.at += 2 + usize::from(self.word(2).as_deref() == Some("at"));
                return self.is(CapacitorState::NotLooked);
            }
            "knocked off" => return self.seen(CapacitorState::Missing, 2),
            "out of" if matches!(self.word(2).as_deref(), Some("limits" | "tolerance")) => {
                return self.seen(CapacitorState::OutOfLimits, 3);
            }
            "wrong way" => {
                let round = matches!(self.word(2).as_deref(), Some("round" | "around"));
                return self.seen(CapacitorState::Reversed, 2 + usize::from(round));
            }
            "no leakage" | "not leaking" | "dried out" => {
                let state = state_of(&pair).unwrap_or(CapacitorState::NotLooked);
                return self.seen(state, 2);
            }
            "non polar" | "non polarised" | "non polarized" => return self.made_of(Dielectric::BipolarAluminium, 2),
            // Said of what is named with it, it tells nothing more.
            "solid tantalum" | "solid tantalums" | "solid polymer" | "solid polymers" => {
                self.at += 1;
                return Ok(());
            }
            "surface mount" | "surface mounted" => return self.mounted(Mounting::Surface, 2),
            "snap in" => return self.mounted(Mounting::SnapIn, 2),
            _ => {}
        }
        if word == "series" {
            let Some(Token::Word(series)) = self.token(1) else { return Err(BadPhrase::Word(printed.to_owned())) };
            self.group.series = series.clone();
            self.at += 2;
            return Ok(());
        }
        if let Some(state) = state_of(&word) {
            return self.seen(state, 1);
        }
        if let Some(clear) = ambiguous(&word) {
            return Err(BadPhrase::Ambiguous { word: printed.to_owned(), clear });
        }
        if let Some(dielectric) = dielectric_of(&word) {
            return self.made_of(dielectric, 1);
        }
        if let Some(mounting) = mounting_of(&word) {
            return self.mounted(mounting, 1);
        }
        if PLACE_WORDS.contains(&word.as_str()) || (word == "at" && matches!(self.token(1), Some(Token::Word(_)))) {
            return self.place();
        }
        if let Some(count) = COUNTS.iter().position(|name| *name == word) {
            self.at += 1;
            return self.counted(count as f64, printed);
        }
        if word == "dozen" {
            self.at += 1;
            return self.counted(12.0, printed);
        }
        if is_designator(printed) {
            return self.designators(printed);
        }
        if FILLERS.contains(&word.as_str()) || matches!(printed, "/" | "&") {
            self.at += 1;
            return Ok(());
        }
        Err(BadPhrase::Word(printed.to_owned()))
    }

    fn is(&mut self, state: CapacitorState) -> Result<(), BadPhrase> {
        if std::mem::replace(&mut self.has_state, true) && self.group.state != state {
            return Err(BadPhrase::Twice(text!("The state")));
        }
        self.group.state = state;
        Ok(())
    }

    fn seen(&mut self, state: CapacitorState, words: usize) -> Result<(), BadPhrase> {
        self.at += words;
        self.is(state)
    }

    /// A bipolar electrolytic is an aluminium one as well, so both words may stand.
    fn made_of(&mut self, told: Dielectric, words: usize) -> Result<(), BadPhrase> {
        use Dielectric::{BipolarAluminium, Unknown, WetAluminium};
        self.at += words;
        self.group.dielectric = match (self.group.dielectric, told) {
            (Unknown, told) => told,
            (known, told) if known == told => told,
            (WetAluminium, BipolarAluminium) | (BipolarAluminium, WetAluminium) => BipolarAluminium,
            _ => return Err(BadPhrase::Twice(text!("What they are made of"))),
        };
        Ok(())
    }

    fn mounted(&mut self, mounting: Mounting, words: usize) -> Result<(), BadPhrase> {
        self.at += words;
        if self.group.mounting != Mounting::Unknown && self.group.mounting != mounting {
            return Err(BadPhrase::Twice(text!("How they are mounted")));
        }
        self.group.mounting = mounting;
        Ok(())
    }

    /// A place runs to the next comma or measured figure; a state that ends it belongs to the capacitors.
    fn place(&mut self) -> Result<(), BadPhrase> {
        let mut place: Vec<String> = Vec::new();
        loop {
            match self.token(0) {
                Some(Token::Number(..)) if self.unit(1)?.is_some() => break,
                Some(Token::Word(word)) => place.push(word.clone()),
                Some(Token::Number(_, printed)) => place.push(printed.clone()),
                Some(Token::Comma) | None => break,
            }
            self.at += 1;
        }
        let last = |place: &[String], words: usize| {
            place.len().checked_sub(words).map(|from| place[from..].join(" ").to_lowercase())
        };
        let state =
            |place: &[String]| [2, 1].into_iter().find_map(|words| Some((words, state_of(&last(place, words)?)?)));
        while let Some((words, state)) = state(&place) {
            place.truncate(place.len() - words);
            self.is(state)?;
        }
        if let Some((word, clear)) = place.last().and_then(|word| Some((word, ambiguous(&word.to_lowercase())?))) {
            return Err(BadPhrase::Ambiguous { word: word.clone(), clear });
        }
        let is_side =
            |word: &String| matches!(word.to_lowercase().as_str(), "left" | "right" | "front" | "top" | "bottom");
        if place.len() < 2 && !place.first().is_some_and(is_side) {
            return Err(BadPhrase::Word(place.join(" ")));
        }
        if !self.group.place_on_part.is_empty() {
            self.group.place_on_part.push_str(", ");
        }
        self.group.place_on_part.push_str(&place.join(" "));
        Ok(())
    }

    /// C1–C6, C1 to C6, C1, C3 and C5.
    fn designators(&mut self, printed: &str) -> Result<(), BadPhrase> {
        self.at += 1;
        let (first, mut last) = match printed.split_once('-') {
            Some((first, last)) => (first.to_owned(), Some(last.to_owned())),
            None => (printed.to_owned(), None),
        };
        if last.is_none() && matches!(self.word(0).as_deref(), Some("to" | "-")) {
            last = match self.token(1) {
                Some(Token::Word(word)) => Some(word.clone()),
                Some(Token::Number(_, printed)) => Some(printed.clone()),
                _ => None,
            };
            let Some(word) = &last else { return Err(BadPhrase::Run(printed.to_owned())) };
            if !is_designator(word) && word.parse::<u32>().is_err() {
                return Err(BadPhrase::Run(format!("{first}–{word}")));
            }
            self.at += 2;
        }
        let Some(last) = last else {
            return self.named(first);
        };
        let run = run(&first, &last).ok_or_else(|| BadPhrase::Run(format!("{first}–{last}")))?;
        run.into_iter().try_for_each(|name| self.named(name))
    }

    fn named(&mut self, name: String) -> Result<(), BadPhrase> {
        if self.group.designators.contains(&name) {
            return Err(BadPhrase::Run(name));
        }
        self.group.designators.push(name);
        within(text!("A count"), self.group.designators.len() as f64, "", 1.0, MOST_POSITIONS as f64).map(drop)
    }
}
