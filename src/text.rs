//! The one catalogue that every text a person reads passes through.
//!
//! The English text is its own key, as in gettext: `text!("Nothing outstanding")` looks the sentence up in the
//! catalogue of the chosen language and falls back to itself. Placeholders stand in braces and are named, so a
//! translation may reorder them: `text!("{count} pieces of work", count = n)`. The catalogue of all texts is
//! `resources/text/catalogue.toml`; a test holds it equal to what code and tables use.

use std::collections::HashMap;
use std::fmt::Display;
use std::sync::OnceLock;

static TRANSLATION: OnceLock<HashMap<String, String>> = OnceLock::new();

/// Sets the translation (English text, its translation) for the rest of the run; a second call changes nothing.
pub fn set_translation(entries: impl IntoIterator<Item = (String, String)>) {
    let _ = TRANSLATION.set(entries.into_iter().collect());
}

/// The text in the reader's language; the English text itself where there is no translation.
pub fn say(english: &str) -> &str {
    // The table lives as long as the program; a translated text may therefore be lent as long as `english`.
    TRANSLATION.get().and_then(|table| table.get(english)).map_or(english, String::as_str)
}

/// Puts named values into a text's `{placeholders}`. A placeholder without a value stays as written.
pub fn fill(template: &str, values: &[(&str, &dyn Display)]) -> String {
    let mut filled = String::with_capacity(template.len() + 16);
    let mut rest = template;
    while let Some(open) = rest.find('{') {
        filled.push_str(&rest[..open]);
        let Some(close) = rest[open..].find('}').map(|at| open + at) else { break };
        let name = &rest[open + 1..close];
        match values.iter().find(|(key, _)| *key == name) {
            Some((_, value)) => filled.push_str(&value.to_string()),
            None => filled.push_str(&rest[open..=close]),
        }
        rest = &rest[close + 1..];
        if rest.is_empty() {
            return filled;
        }
    }
    filled.push_str(rest);
    filled
}

/// A figure to so many decimals; what rounds to −0 is 0.
pub fn figure(value: f64, decimals: usize) -> String {
    let said = format!("{value:.decimals$}");
    match said.strip_prefix('-') {
        Some(bare) if bare.bytes().all(|byte| matches!(byte, b'0' | b'.')) => bare.to_owned(),
        _ => said,
    }
}

/// One of two texts by count, with `{count}` filled in: `count("{count} part", "{count} parts", 3)`.
pub fn count(one: &str, many: &str, count: usize) -> String {
    fill(say(if count == 1 { one } else { many }), &[("count", &count)])
}

/// A text for a person: `text!("Saved")` is a `&str`, `text!("{tag} saved", tag = tag)` a `String`.
#[macro_export]
macro_rules! text {
    ($english:literal) => { $crate::text::say($english) };
    ($english:literal, $($name:ident = $value:expr),+ $(,)?) => {
        $crate::text::fill($crate::text::say($english), &[$((stringify!($name), &$value)),+])
    };
}

/// A counted text: `counted!("{count} part", "{count} parts", parts.len())`.
#[macro_export]
macro_rules! counted {
    ($one:literal, $many:literal, $count:expr) => {
        $crate::text::count($one, $many, $count)
    };
}
