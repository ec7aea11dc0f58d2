//! Why an exchange document cannot be read, in plain words: where in it, what is wanted there, and what stands there.
//!
//! The words come from the document's own schema, which is walked beside the document until they part.

use std::sync::LazyLock;

use serde_json::{Map, Value};

use super::error::StoreError;
use super::exchange::SCHEMA;
use crate::record::When;
use crate::text;

static SCHEMA_TREE: LazyLock<Value> = LazyLock::new(|| serde_json::from_str(SCHEMA).unwrap_or_default());

/// So many characters of a wrong text are shown.
const SHOWN: usize = 60;

/// What is wrong with a document that the reader refused with this error.
pub fn fault(document: &str, error: &serde_path_to_error::Error<serde_json::Error>) -> StoreError {
    let inner = error.inner();
    let tree = match serde_json::from_str::<Value>(document) {
        Ok(tree) => tree,
        Err(syntax) => return no_json(&syntax),
    };
    let mut steps = Vec::new();
    if let Some(reason) = walk(&SCHEMA_TREE, &tree, &mut steps) {
        return StoreError::BadDocument { place: place(&tree, &steps), reason };
    }
    // What a schema cannot see: a field that stands twice, a number that no field holds.
    let steps: Vec<Step> = error.path().iter().filter_map(Step::of).collect();
    let message = inner.to_string();
    let reason = match message.strip_prefix("duplicate field `").and_then(|rest| rest.split('`').next()) {
        Some(field) => text!("“{field}” stands here twice", field = field),
        None => match at(&tree, &steps) {
            Some(value) => text!("{found} cannot stand here", found = in_words(value)),
            None => text!("this cannot stand here").to_owned(),
        },
    };
    StoreError::BadDocument { place: place(&tree, &steps), reason }
}

/// A text that is no JSON document at all, or breaks off.
pub fn no_json(error: &serde_json::Error) -> StoreError {
    let place = text!("line {line}, column {column}", line = error.line(), column = error.column());
    let reason = if error.is_eof() {
        text!("the document breaks off here")
    } else {
        text!(
            "this is no JSON: a comma, a colon, a quotation mark or a bracket is missing or one too many, or a number is none"
        )
    };
    StoreError::BadDocument { place, reason: reason.to_owned() }
}

/// One step into a document.
#[derive(Clone, Debug)]
enum Step {
    Field(String),
    Number(usize),
}

impl Step {
    fn of(segment: &serde_path_to_error::Segment) -> Option<Self> {
        match segment {
            serde_path_to_error::Segment::Seq { index } => Some(Self::Number(*index)),
            serde_path_to_error::Segment::Map { key } => Some(Self::Field(key.clone())),
            _ => None,
        }
    }
}

fn at<'t>(tree: &'t Value, steps: &[Step]) -> Option<&'t Value> {
    steps.iter().try_fold(tree, |value, step| match step {
        Step::Field(name) => value.get(name),
        Step::Number(number) => value.get(number),
    })
}

/// A place in words: “part 0042, tag”, “design_connector 3, count”; records are counted from 1.
fn place(tree: &Value, steps: &[Step]) -> String {
    let [first, rest @ ..] = steps else { return text!("the document").to_owned() };
    let (Step::Field(list), [Step::Number(number), rest @ ..]) = (first, rest) else {
        return joined(steps);
    };
    let record = record(list, *number, tree.get(list).and_then(|records| records.get(number)));
    if rest.is_empty() { record } else { format!("{record}, {}", joined(rest)) }
}

/// What a record of a document is called: a part by its tag, anything else by its number in its list.
fn record(list: &str, number: usize, record: Option<&Value>) -> String {
    let tag = record.and_then(|record| record.get("tag")?.as_str()).filter(|tag| !tag.is_empty() && list == "part");
    tag.map_or_else(|| format!("{list} {}", number + 1), |tag| format!("{list} {}", shortened(tag)))
}

fn joined(steps: &[Step]) -> String {
    let words = steps.iter().map(|step| match step {
        Step::Field(name) => shortened(name),
        Step::Number(number) => (number + 1).to_string(),
    });
    words.collect::<Vec<_>>().join(", ")
}

/// The schema that a schema refers to, or itself.
fn resolved(schema: &Value) -> &Value {
    definition(schema).and_then(|name| SCHEMA_TREE["$defs"].get(name)).unwrap_or(schema)
}

fn definition(schema: &Value) -> Option<&str> {
    schema.get("$ref")?.as_str()?.strip_prefix("#/$defs/")
}

/// The schemas of which a value holds to one. Those of a record with fields say whom it belongs to, which is looked at
/// when the record is written.
fn choices(schema: &Value) -> Option<&Vec<Value>> {
    if schema.get("properties").is_some() { None } else { schema.get("oneOf")?.as_array() }
}

/// Walks into a value by its schema; gives the first reason why it does not hold, with the steps to it.
fn walk(schema: &Value, value: &Value, steps: &mut Vec<Step>) -> Option<String> {
    let refuse =
        || Some(text!("{wanted} is wanted, {found} stands here", wanted = wanted(schema), found = in_words(value)));
    match (definition(schema), value.as_str()) {
        (Some("when"), Some(text)) => return text.parse::<When>().map_or_else(|_| refuse(), |_| None),
        (Some("key"), Some(text)) => return uuid::Uuid::try_parse(text).map_or_else(|_| refuse(), |_| None),
        _ => {}
    }
    let full = resolved(schema);
    if let Some(choices) = choices(full) {
        let fits = |choice: &Value| walk(choice, value, &mut Vec::new()).is_none();
        return if choices.iter().any(fits) { None } else { refuse() };
    }
    let is_listed = full.get("enum").and_then(Value::as_array).is_none_or(|words| words.contains(value));
    if !is_listed
        || full.get("const").is_some_and(|only| only != value)
        || !has_type(full, value)
        || !is_within(full, value)
    {
        return refuse();
    }
    match value {
        Value::Array(values) => {
            let items = full.get("items")?;
            values.iter().enumerate().find_map(|(number, value)| {
                steps.push(Step::Number(number));
                let reason = walk(items, value, steps);
                if reason.is_none() {
                    steps.pop();
                }
                reason
            })
        }
        Value::Object(fields) => walk_fields(full, fields, steps),
        _ => None,
    }
}

fn walk_fields(schema: &Value, fields: &Map<String, Value>, steps: &mut Vec<Step>) -> Option<String> {
    let known = schema.get("properties")?.as_object()?;
    for (name, value) in fields {
        steps.push(Step::Field(name.clone()));
        let reason = if let Some(schema) = known.get(name) {
            walk(schema, value, steps)
        } else {
            let names: Vec<&str> = known.keys().map(String::as_str).collect();
            Some(text!("there is no such field here; known are {known}", known = names.join(", ")))
        };
        if reason.is_some() {
            return reason;
        }
        steps.pop();
    }
    let mut needed = schema.get("required").and_then(Value::as_array).into_iter().flatten().filter_map(Value::as_str);
    let missing = needed.find(|name| !fields.contains_key(*name))?;
    Some(text!("“{field}” is missing", field = missing))
}

fn types(schema: &Value) -> Vec<&str> {
    match schema.get("type") {
        Some(Value::String(one)) => vec![one],
        Some(Value::Array(several)) => several.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    }
}

fn has_type(schema: &Value, value: &Value) -> bool {
    let types = types(schema);
    types.is_empty()
        || types.iter().any(|name| match *name {
            "string" => value.is_string(),
            "integer" => value.is_i64() || value.is_u64(),
            "number" => value.is_number(),
            "boolean" => value.is_boolean(),
            "array" => value.is_array(),
            "object" => value.is_object(),
            "null" => value.is_null(),
            _ => true,
        })
}

/// Whether a number lies within its bounds and a text or list is long enough.
fn is_within(schema: &Value, value: &Value) -> bool {
    let bound = |name: &str| schema.get(name).and_then(Value::as_f64);
    let length = match value {
        Value::Number(number) => {
            let number = number.as_f64().unwrap_or_default();
            return bound("minimum").is_none_or(|least| number >= least)
                && bound("maximum").is_none_or(|most| number <= most)
                && bound("exclusiveMinimum").is_none_or(|least| number > least);
        }
        Value::String(text) => (text.chars().count(), "minLength", "maxLength"),
        Value::Array(values) => (values.len(), "minItems", "maxItems"),
        _ => return true,
    };
    let (count, least, most) = (length.0 as f64, bound(length.1), bound(length.2));
    least.is_none_or(|least| count >= least) && most.is_none_or(|most| count <= most)
}

/// What a schema asks for, in words.
fn wanted(schema: &Value) -> String {
    match definition(schema) {
        Some("when") => {
            return text!("a date from 1900 to 2199 (1998-03-12, 1998-03 or 1998; empty when unknown)").to_owned();
        }
        Some("key") => return text!("a key (a UUID: 0190163d-8694-739b-aea5-966c26f8ad91)").to_owned(),
        _ => {}
    }
    let full = resolved(schema);
    if let Some(choices) = choices(full) {
        return choices.iter().map(wanted).collect::<Vec<_>>().join(text!(" or "));
    }
    if let Some(words) = full.get("enum").and_then(Value::as_array) {
        let words: Vec<String> = words.iter().map(plain).collect();
        return text!("one of {words}", words = words.join(", "));
    }
    if let Some(only) = full.get("const") {
        return plain(only);
    }
    let words = types(full).into_iter().map(|name| match name {
        "string" => match full.get("minLength") {
            Some(_) => text!("a text that is not empty").to_owned(),
            None => text!("a text").to_owned(),
        },
        "integer" => bounded(full, text!("a whole number")),
        "number" => bounded(full, text!("a number")),
        "boolean" => text!("true or false").to_owned(),
        "array" => match full.get("minItems").filter(|least| full.get("maxItems") == Some(*least)) {
            Some(count) => text!("a list of {count}", count = count),
            None => text!("a list").to_owned(),
        },
        "object" => match full.get("required").and_then(Value::as_array) {
            Some(names) => {
                text!(
                    "a record in braces with {fields}",
                    fields = names.iter().map(plain).collect::<Vec<_>>().join(", ")
                )
            }
            None => text!("a record in braces").to_owned(),
        },
        _ => "null".to_owned(),
    });
    words.collect::<Vec<_>>().join(text!(" or "))
}

fn bounded(schema: &Value, what: &str) -> String {
    let bound = |name: &str| schema.get(name).map(plain);
    match (bound("minimum"), bound("maximum"), bound("exclusiveMinimum")) {
        (Some(least), Some(most), _) => text!("{what} from {least} to {most}", what = what, least = least, most = most),
        (Some(least), None, _) => text!("{what} of {least} or more", what = what, least = least),
        (None, Some(most), None) => text!("{what} of {most} or less", what = what, most = most),
        (_, _, Some(least)) => text!("{what} above {least}", what = what, least = least),
        (None, None, None) => what.to_owned(),
    }
}

fn plain(value: &Value) -> String {
    value.as_str().map_or_else(|| value.to_string(), str::to_owned)
}

fn shortened(text: &str) -> String {
    let mut letters = text.chars();
    let shown: String = letters.by_ref().take(SHOWN).collect();
    if letters.next().is_some() { format!("{shown}…") } else { shown }
}

/// What stands somewhere, in words.
fn in_words(value: &Value) -> String {
    match value {
        Value::Null => text!("nothing (null)").to_owned(),
        Value::Bool(_) => value.to_string(),
        Value::Number(number) => text!("the number {number}", number = number),
        Value::String(text) => text!("the text “{text}”", text = shortened(text)),
        Value::Array(_) => text!("a list").to_owned(),
        Value::Object(_) => text!("a record in braces").to_owned(),
    }
}
