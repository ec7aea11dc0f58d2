//! What the reader of tables says of a wrong row, in plain words.

use crate::text;

/// The reader's message without the words of the programming language; one of another form as it is.
pub(super) fn plain(message: &str) -> String {
    let message = message.trim().replace('\n', ", ");
    let quoted = |prefix: &str| -> Option<(String, &str)> {
        let (name, rest) = message.strip_prefix(prefix)?.strip_prefix(" `")?.split_once('`')?;
        Some((name.to_owned(), rest))
    };
    if let Some((field, _)) = quoted("missing field") {
        return text!("“{field}” is missing", field = field);
    }
    if let Some((field, _)) = quoted("duplicate field") {
        return text!("“{field}” stands here twice", field = field);
    }
    if let Some((field, rest)) = quoted("unknown field") {
        return match names(rest) {
            known if known.is_empty() => text!("there is no field “{field}” here", field = field),
            known => text!("there is no field “{field}” here; known are {known}", field = field, known = known),
        };
    }
    if let Some((word, rest)) = quoted("unknown variant") {
        return text!("“{word}” is none of the words for it: {known}", word = word, known = names(rest));
    }
    let pair = ["invalid type: ", "invalid value: ", "invalid length "].into_iter().find_map(|prefix| {
        let (found, wanted) = message.strip_prefix(prefix)?.split_once(", expected ")?;
        Some((found.to_owned(), wanted.to_owned()))
    });
    match pair {
        Some((found, wanted)) => {
            text!("{wanted} is wanted, {found} stands here", wanted = thing(&wanted), found = thing(&found))
        }
        None => message,
    }
}

/// The names in a list such as "expected one of `a`, `b`".
fn names(list: &str) -> String {
    list.split('`').skip(1).step_by(2).collect::<Vec<_>>().join(", ")
}

/// A thing of the language in plain words, with its value where one is told: "string \"warm\"".
fn thing(said: &str) -> String {
    let value = said.split_once(['"', '`']).map(|(_, rest)| rest.trim_end_matches(['"', '`']));
    let bare = said.trim_start_matches("a ").trim_start_matches("an ");
    match bare.split([' ', '`']).find(|word| !word.is_empty()).unwrap_or_default() {
        "string" | "str" => match value {
            Some(value) => text!("the text “{value}”", value = value),
            None => text!("a text").to_owned(),
        },
        "integer" | "floating" | "float" => match value {
            Some(value) => text!("the number {value}", value = value),
            None => text!("a number").to_owned(),
        },
        "u8" | "u16" | "u32" | "u64" | "usize" | "i32" | "i64" | "nonzero" => text!("a whole number").to_owned(),
        "f32" | "f64" => text!("a number").to_owned(),
        "boolean" | "bool" => text!("true or false").to_owned(),
        "sequence" | "array" | "tuple" => text!("a list").to_owned(),
        "map" | "struct" | "table" => text!("a row of fields").to_owned(),
        "variant" | "enum" => text!("a word").to_owned(),
        "datetime" => text!("a date").to_owned(),
        _ => said.to_owned(),
    }
}
