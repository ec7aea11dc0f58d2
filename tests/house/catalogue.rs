//! The catalogue of texts holds exactly what the code and the tables say to people.
//!
//! After adding or changing a text, write the catalogue anew: `BENCHWRIGHT_BLESS=1 cargo nextest run catalogue`.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use benchwright::record::Word;
use benchwright::rules::Rules;
use benchwright::text;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn rust_sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            rust_sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// The string literal at the start of `source` (white space before it allowed) and what follows it.
fn literal(source: &str) -> Option<(String, &str)> {
    let source = source.trim_start().strip_prefix('"')?;
    let mut escaped = false;
    let end = source.find(|letter| {
        let ends = letter == '"' && !escaped;
        escaped = letter == '\\' && !escaped;
        ends
    })?;
    Some((unescaped(&source[..end]), &source[end + 1..]))
}

fn unescaped(raw: &str) -> String {
    let mut said = String::new();
    let mut rest = raw;
    while let Some(at) = rest.find('\\') {
        said.push_str(&rest[..at]);
        let escape = rest[at + 1..].chars().next().unwrap_or('\\');
        rest = &rest[at + 1 + escape.len_utf8()..];
        match escape {
            'n' => said.push('\n'),
            // A continued line: its indentation is not part of the text.
            '\n' => rest = rest.trim_start(),
            other => said.push(other),
        }
    }
    said + rest
}

/// Literals that the text macros are called with.
fn said_in(source: &str) -> Vec<String> {
    let mut said = Vec::new();
    for (macro_call, literals) in [("text!(", 1), ("counted!(", 2)] {
        for (at, _) in source.match_indices(macro_call) {
            let mut rest = &source[at + macro_call.len()..];
            for _ in 0..literals {
                let Some((text, after)) = literal(rest) else { break };
                said.push(text);
                rest = after.trim_start().strip_prefix(',').unwrap_or(after);
            }
        }
    }
    said
}

/// Labels of the closed lists declared with `words!`: `Name = "name", "Label";`.
fn labels_in(source: &str) -> Vec<String> {
    source
        .lines()
        .filter_map(|line| {
            let (_, rest) = line.split_once(" = \"")?;
            let (_, rest) = rest.split_once("\", ")?;
            let (label, rest) = literal(rest)?;
            (rest.trim() == ";").then_some(label)
        })
        .collect()
}

fn said_by_code_and_tables() -> BTreeSet<String> {
    let mut sources = Vec::new();
    rust_sources(&root().join("src"), &mut sources);
    let mut said = BTreeSet::new();
    for path in sources {
        let source = fs::read_to_string(path).unwrap();
        let code: Vec<&str> = source.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
        let code = code.join("\n");
        said.extend(said_in(&code));
        said.extend(labels_in(&code));
    }
    said.extend(Rules::shipped().texts().map(str::to_owned));
    said
}

#[test]
fn the_catalogue_holds_what_code_and_tables_say() {
    let path = root().join("resources/text/catalogue.txt");
    let said = said_by_code_and_tables();
    assert!(said.contains("Mainboard"), "labels of closed lists were not read");
    let mut lines: Vec<String> = said.iter().map(|text| text.replace('\n', "\\n")).collect();
    // The file ends with a line break.
    lines.push(String::new());
    if std::env::var_os("BENCHWRIGHT_BLESS").is_some() {
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, lines.join("\n")).unwrap();
    }
    let kept: BTreeSet<String> =
        fs::read_to_string(&path).unwrap_or_default().lines().map(|line| line.replace("\\n", "\n")).collect();
    let missing: Vec<_> = said.difference(&kept).take(10).collect();
    let unused: Vec<_> = kept.difference(&said).take(10).collect();
    assert!(
        missing.is_empty() && unused.is_empty(),
        "the catalogue is stale; write it anew with BENCHWRIGHT_BLESS=1. Missing: {missing:#?}, unused: {unused:#?}"
    );
}

#[test]
fn a_translation_takes_the_place_of_the_english_text_and_may_reorder_its_values() {
    text::set_translation([("{n} of {all}".to_owned(), "von {all}: {n}".to_owned())]);
    assert_eq!(benchwright::text!("{n} of {all}", n = 3, all = 7), "von 7: 3");
    assert_eq!(benchwright::text!("Saved"), "Saved");
    assert_eq!(benchwright::record::Kind::Mainboard.label(), "Mainboard");
}

#[test]
fn a_continued_literal_is_read_without_its_indentation() {
    assert_eq!(said_in("text!(\"one \\\n      two\", a = 1)"), ["one two"]);
    assert_eq!(said_in("counted!(\n  \"{count} part\",\n  \"{count} parts\", 3)"), ["{count} part", "{count} parts"]);
}
