//! The built program on the console, and pictures.
#![allow(clippy::unwrap_used)]

mod answers;
mod evenings;
mod figures;
mod fit;
mod invented;
mod logbooks;
mod names;
mod photos;
mod place;
mod readings;
#[path = "../support/records.rs"]
mod records;
mod sample;
mod supplies;
mod touched;

use std::process::{Command, Output};

/// Runs the built program with these arguments.
fn benchwright(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_benchwright")).args(arguments).output().unwrap()
}

/// The JSON that a command answers with; fails with what it says on stderr instead.
fn json(arguments: &[&str]) -> serde_json::Value {
    let output = benchwright(&[arguments, &["--json"]].concat());
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// A list in such an answer.
fn list<'a>(answer: &'a serde_json::Value, name: &str) -> &'a [serde_json::Value] {
    answer[name].as_array().unwrap()
}

/// The text that a command answers with.
fn text(arguments: &[&str]) -> String {
    let output = benchwright(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

/// The reason on stderr of a command that fails with exit code 1 and prints nothing else.
fn reason(arguments: &[&str]) -> String {
    let output = benchwright(arguments);
    assert_eq!(output.status.code(), Some(1), "{arguments:?}");
    assert!(output.stdout.is_empty(), "{arguments:?}");
    String::from_utf8(output.stderr).unwrap()
}
