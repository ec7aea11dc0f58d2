//! A capacitor's mark cut into numbers and words, nothing allocated.

use super::Unreadable;

const ITEMS: usize = 10;
const LETTERS: usize = 8;

/// One item of a mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Item {
    Number(Number),
    Word(Word),
    Percent,
}

/// A number as printed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Number {
    pub value: f64,
    /// Digits printed, those behind a point included.
    pub digits: usize,
    /// A point or comma stood in it.
    pub has_point: bool,
    /// Nothing stands between it and what is before.
    pub joined: bool,
}

/// Letters as printed; µ is `u`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Word {
    letters: [u8; LETTERS],
    length: usize,
    pub joined: bool,
}

impl Word {
    pub fn letters(&self) -> &[u8] {
        &self.letters[..self.length]
    }

    /// Its only letter.
    pub fn single(&self) -> Option<u8> {
        (self.length == 1).then_some(self.letters[0])
    }
}

/// The items of a mark.
pub(super) struct Items {
    items: [Item; ITEMS],
    count: usize,
}

impl Items {
    pub fn all(&self) -> &[Item] {
        &self.items[..self.count]
    }

    /// Cuts a mark into items. Spaces, `/ - _ + ~ = ± °` and brackets separate; any other sign is an error.
    pub fn new(text: &str) -> Result<Self, Unreadable> {
        let mut items = Self { items: [Item::Percent; ITEMS], count: 0 };
        let mut joined = false;
        // The place of the digit behind a point, counted in powers of ten.
        let mut divisor = 1.0;
        for sign in text.chars() {
            let last = items.count.checked_sub(1).and_then(|at| items.items.get_mut(at));
            match sign {
                '0'..='9' => {
                    let digit = f64::from(sign as u32 - '0' as u32);
                    if let (true, Some(Item::Number(number))) = (joined, last) {
                        if number.digits == 12 {
                            return Err(Unreadable::TooLong);
                        }
                        number.digits += 1;
                        if number.has_point {
                            divisor *= 10.0;
                        }
                        number.value = number.value * 10.0 + digit;
                    } else {
                        items.finish(divisor);
                        divisor = 1.0;
                        items.push(Item::Number(Number { value: digit, digits: 1, has_point: false, joined }))?;
                    }
                    joined = true;
                }
                '.' | ',' => {
                    match (joined, last) {
                        (true, Some(Item::Number(number))) if !number.has_point => number.has_point = true,
                        (true, Some(Item::Number(_))) => return Err(Unreadable::NoForm),
                        // ".047"
                        _ => {
                            items.finish(divisor);
                            divisor = 1.0;
                            items.push(Item::Number(Number { has_point: true, joined, ..Number::default() }))?;
                        }
                    }
                    joined = true;
                }
                'a'..='z' | 'A'..='Z' | 'µ' | 'μ' => {
                    let letter = if sign.is_ascii() { sign as u8 } else { b'u' };
                    if let (true, Some(Item::Word(word))) = (joined, last) {
                        if word.length == LETTERS {
                            return Err(Unreadable::TooLong);
                        }
                        word.letters[word.length] = letter;
                        word.length += 1;
                    } else {
                        let mut word = Word { length: 1, joined, ..Word::default() };
                        word.letters[0] = letter;
                        items.finish(divisor);
                        divisor = 1.0;
                        items.push(Item::Word(word))?;
                    }
                    joined = true;
                }
                '%' => {
                    items.finish(divisor);
                    divisor = 1.0;
                    items.push(Item::Percent)?;
                    joined = false;
                }
                '/' | '-' | '_' | '+' | '~' | '=' | '±' | '(' | ')' | '–' | '−' | '°' => joined = false,
                _ if sign.is_whitespace() => joined = false,
                _ => return Err(Unreadable::Sign(sign)),
            }
        }
        items.finish(divisor);
        if items.count == 0 { Err(Unreadable::Empty) } else { Ok(items) }
    }

    /// Sets the point of the last number: dividing once by a power of ten keeps it the nearest float.
    fn finish(&mut self, divisor: f64) {
        if divisor > 1.0
            && let Some(Item::Number(number)) = self.count.checked_sub(1).and_then(|at| self.items.get_mut(at))
        {
            number.value /= divisor;
        }
    }

    fn push(&mut self, item: Item) -> Result<(), Unreadable> {
        *self.items.get_mut(self.count).ok_or(Unreadable::TooLong)? = item;
        self.count += 1;
        Ok(())
    }
}
