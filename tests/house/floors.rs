//! A floor uses only the floors above it in the list of `lib.rs`; the lower ones know no files, SQLite or window.

use std::fs;
use std::path::{Path, PathBuf};

const FLOORS: [&str; 9] = ["trade", "record", "rules", "assess", "store", "photo", "paper", "console", "window"];

/// Floors, and what their code may not name.
const UNKNOWN_THERE: [(&str, &[&str]); 4] = [
    ("trade", &["rusqlite", "egui", "std::fs", "std::path", "Utc::now", "Local::now", "SystemTime"]),
    ("record", &["rusqlite", "egui", "std::fs", "std::path", "Utc::now", "Local::now", "SystemTime"]),
    ("rules", &["rusqlite", "egui", "std::fs", "Utc::now", "Local::now", "SystemTime"]),
    ("assess", &["rusqlite", "egui", "std::fs", "std::path", "Utc::now", "Local::now", "SystemTime"]),
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

fn floor_sources(floor: &str) -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src").join(floor), &mut found);
    found.into_iter().map(|path| (path.clone(), fs::read_to_string(path).unwrap())).collect()
}

/// Floors that a source names by `crate::floor`, each with its line.
fn named_floors(source: &str) -> Vec<(usize, &str)> {
    source
        .lines()
        .enumerate()
        .filter(|(_, line)| !line.trim_start().starts_with("//"))
        .flat_map(|(number, line)| {
            line.match_indices("crate::").map(move |(at, _)| {
                let rest = &line[at + "crate::".len()..];
                let end = rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len());
                (number + 1, &rest[..end])
            })
        })
        .collect()
}

#[test]
fn every_crate_path_leads_to_the_same_floor_or_one_above_it() {
    let mut checked = 0;
    for (height, floor) in FLOORS.iter().enumerate() {
        for (path, source) in floor_sources(floor) {
            for (line, named) in named_floors(&source) {
                if let Some(other) = FLOORS.iter().position(|name| *name == named) {
                    checked += 1;
                    assert!(other <= height, "{}:{line}: `{floor}` may not use `{named}`", path.display());
                }
            }
        }
    }
    assert!(checked > 20, "only {checked} paths were read: the reader of paths is broken");
}

#[test]
fn the_lower_floors_know_no_files_database_window_or_clock() {
    for (floor, words) in UNKNOWN_THERE {
        for (path, source) in floor_sources(floor) {
            for (number, line) in source.lines().enumerate().filter(|(_, line)| !line.trim_start().starts_with("//")) {
                for word in words {
                    assert!(!line.contains(word), "{}:{}: `{floor}` may not know {word}", path.display(), number + 1);
                }
            }
        }
    }
}
