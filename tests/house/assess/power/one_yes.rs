//! *Yes* is built in one place.

use std::fs;
use std::path::{Path, PathBuf};

/// Every source of the program, with its path from the project's folder.
fn sources() -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let (mut folders, mut files) = (vec![root.join("src")], Vec::<PathBuf>::new());
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|extension| extension == "rs") {
                files.push(path);
            }
        }
    }
    let named = |path: &PathBuf| path.strip_prefix(root).unwrap().display().to_string().replace('\\', "/");
    files.iter().map(|path| (named(path), code(&fs::read_to_string(path).unwrap()))).collect()
}

/// A source without its comments.
fn code(source: &str) -> String {
    let lines = source.lines().map(|line| line.split("//").next().unwrap_or_default());
    lines.collect::<Vec<_>>().join("\n")
}

/// The functions in which a value is built: named, and neither a pattern nor compared with.
fn built(source: &str, value: &str) -> Vec<String> {
    let is_pattern = |at: usize| {
        let (before, after) = (source[..at].trim_end(), source[at + value.len()..].trim_start());
        let compared = ["==", "!=", "|"].iter().any(|sign| before.ends_with(sign));
        compared || after.starts_with("=>") || after.starts_with('|')
    };
    let function = |at: usize| {
        let named = source[..at].rfind("fn ").map_or("", |start| &source[start + 3..at]);
        named.split(['(', '<']).next().unwrap_or_default().to_owned()
    };
    source.match_indices(value).map(|(at, _)| at).filter(|at| !is_pattern(*at)).map(function).collect()
}

#[test]
fn yes_is_built_by_one_function_and_no_other_name_for_it_is_in_use() {
    let mut all = Vec::new();
    for (path, source) in sources() {
        all.extend(built(&source, "Verdict::Yes").into_iter().map(|function| (path.clone(), function)));
        if path.starts_with("src/assess/power/") {
            all.extend(built(&source, "Self::Yes").into_iter().map(|function| (path.clone(), function)));
        }
        let other_names = ["power::Verdict as", "Verdict::*", "Power { verdict"];
        assert!(other_names.iter().all(|name| !source.contains(name)), "{path}");
        let imported = source.split("Verdict::{").skip(1).filter_map(|rest| rest.split('}').next());
        assert!(imported.clone().all(|names| names.split(',').all(|name| name.trim() != "Yes")), "{path}");
    }
    assert_eq!(all, [("src/assess/power/mod.rs".to_owned(), "judge".to_owned())]);
}

#[test]
fn the_window_says_yes_only_for_the_answer_that_is_yes() {
    let mut said = 0;
    for (path, source) in sources() {
        for (at, _) in source.match_indices("PowerWord::Yes") {
            assert!(source[..at].trim_end().ends_with("Verdict::Yes =>"), "{path}");
            said += 1;
        }
    }
    assert!(said > 1);
}

#[test]
fn what_is_built_is_told_from_what_is_only_compared_or_matched() {
    let source = "fn one() { if given == Verdict::Yes {} match given { Verdict::Yes => 1, _ => 2 } }\n\
                  fn other<T>() -> Verdict { Verdict::Yes }";
    assert_eq!(built(source, "Verdict::Yes"), ["other"]);
}
