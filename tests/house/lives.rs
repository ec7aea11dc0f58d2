//! The lives of a finding, of a piece of work and of a part's custody, held against the tables in their docs.

use std::collections::BTreeSet;

use benchwright::record::{Custody, CustodyAct, FindingState, Word, WorkState};

/// The rows (from, to, by) of the one table in a source's docs; several words in `from` make several rows.
fn table(source: &str) -> Vec<(String, String, String)> {
    let rows: Vec<Vec<&str>> = source
        .lines()
        .filter_map(|line| line.trim().strip_prefix("/// |"))
        .map(|row| row.trim_end_matches('|').split('|').map(str::trim).collect())
        .collect();
    assert_eq!(rows[0], ["from", "to", "by"]);
    let split = |words: &str| words.split(',').map(|word| word.trim().replace(' ', "_")).collect::<Vec<_>>();
    rows[2..]
        .iter()
        .flat_map(|row| {
            let (from, to) = (split(row[0]), split(row[1]));
            let by = row[2].to_owned();
            from.into_iter().flat_map(move |from| {
                let by = by.clone();
                to.clone().into_iter().map(move |to| (from.clone(), to, by.clone()))
            })
        })
        .collect()
}

/// The steps to another state that a life allows.
fn allowed<W: Word>(may_become: impl Fn(W, W) -> bool) -> BTreeSet<(String, String)> {
    let pairs = W::ALL.iter().flat_map(|from| W::ALL.iter().map(move |to| (*from, *to)));
    pairs
        .filter(|(from, to)| from != to && may_become(*from, *to))
        .map(|(from, to)| (from.name().to_owned(), to.name().to_owned()))
        .collect()
}

fn told(source: &str) -> BTreeSet<(String, String)> {
    table(source).into_iter().filter(|(from, ..)| from != "–").map(|(from, to, _)| (from, to)).collect()
}

#[test]
fn a_finding_lives_as_its_table_says() {
    let told = told(include_str!("../../src/record/finding.rs"));
    assert_eq!(told.len(), 16, "the table was read wrongly: {told:?}");
    assert_eq!(allowed(FindingState::may_become), told);
}

#[test]
fn a_further_look_may_leave_a_finding_as_it_is() {
    for state in FindingState::ALL {
        assert!(state.may_become(*state), "{}", state.name());
    }
}

#[test]
fn work_lives_as_its_table_says() {
    let told = told(include_str!("../../src/record/work.rs"));
    assert_eq!(told.len(), 16, "the table was read wrongly: {told:?}");
    assert_eq!(allowed(WorkState::may_become), told);
}

#[test]
fn custody_changes_as_its_table_says() {
    let told = table(include_str!("../../src/record/custody.rs"));
    let mut expected = BTreeSet::new();
    for (from, to, by) in told {
        let Some(act) = CustodyAct::ALL.iter().find(|act| act.label().eq_ignore_ascii_case(&by)) else {
            assert_eq!(from, "–", "the table names an act that does not exist: {by}");
            continue;
        };
        // What is logged without an event is mine; a borrowed part comes in by its first event.
        let from = if from == "–" { Custody::Mine.name().to_owned() } else { from };
        expected.insert((from, act.name(), to));
    }
    assert_eq!(expected.len(), 8, "the table was read wrongly: {expected:?}");
    let mut allowed = BTreeSet::new();
    for custody in Custody::ALL {
        for act in CustodyAct::ALL {
            if let Some(after) = custody.after(*act) {
                allowed.insert((custody.name().to_owned(), act.name(), after.name().to_owned()));
            }
        }
    }
    assert_eq!(allowed, expected);
}
