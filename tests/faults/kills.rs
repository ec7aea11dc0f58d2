//! The lights go out in the middle of writing: what was acknowledged is there, what was not is there whole or not at all.

use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

use benchwright::record::{Change, FindingState, Kind};
use benchwright::rules::Rules;
use benchwright::store::{FileSource, Store, check};

use crate::invent::Chance;
use crate::support::{assert_same, finding, fresh, is_whole, look, part};

const FOLDER: &str = "BENCHWRIGHT_KILLED_LOGBOOK";
const FINDINGS: usize = 3;

/// Not a test of its own: the process that is killed. It writes parts until then and says each that is on disk.
#[test]
#[ignore = "run by the test below in a process of its own"]
fn writes_until_killed() {
    let Ok(folder) = std::env::var(FOLDER) else { return };
    let store = Store::open(Path::new(&folder)).unwrap();
    for number in store.logbook().parts.len().. {
        store.save_draft("intake", &number.to_string());
        store.keep_photo(FileSource::Bytes(&vec![number as u8; 200_000]), "png").unwrap();
        let board = part(&format!("{number:06}"), Kind::Mainboard);
        let mut change = Change::new(format!("Log {number}"));
        change.put(board.clone());
        for _ in 0..FINDINGS {
            let leak = finding(board.id);
            change.put(leak.clone()).put(look(leak.id, "2024", FindingState::Open));
        }
        store.write(change).unwrap();
        println!("on disk: {number}");
    }
}

/// Lets a process write for a while, kills it, and gives back the number that it said last.
fn write_and_kill(folder: &Path, time: Duration) -> Option<usize> {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args(["--exact", "faults::kills::writes_until_killed", "--ignored", "--nocapture"])
        .env(FOLDER, folder)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let said = std::thread::spawn(move || {
        lines.map_while(Result::ok).filter_map(|line| line.strip_prefix("on disk: ")?.parse().ok()).last()
    });
    std::thread::sleep(time);
    child.kill().unwrap(); // SIGKILL
    child.wait().unwrap();
    said.join().unwrap()
}

#[test]
fn what_was_acknowledged_survives_a_kill_and_the_rest_is_whole_or_not_there() {
    let kills = std::env::var("BENCHWRIGHT_KILLS").ok().and_then(|count| count.parse().ok()).unwrap_or(6);
    let (_folder, store) = fresh();
    let path = store.folder().to_owned();
    drop(store);
    let mut chance = Chance(3);
    let mut written = 0;
    for kill in 0..kills {
        let said = write_and_kill(&path, Duration::from_millis(60 + chance.below(400) as u64));
        let store = Store::open(&path).unwrap();
        let logbook = store.logbook();
        let parts = logbook.parts.len();
        if let Some(said) = said {
            assert!(parts > said, "kill {kill}: {said} was said to be on disk, {parts} parts are");
            let draft: usize = store.draft("intake").unwrap().parse().unwrap();
            assert!(draft >= said, "kill {kill}: the draft of {said} is not there");
        }
        for file in &logbook.parts {
            assert_eq!(file.findings.len(), FINDINGS, "kill {kill}: half a change");
            assert!(file.findings.iter().all(|finding| finding.looks.len() == 1));
        }
        if parts > 0 {
            assert_eq!(store.undo_now().unwrap().parts.len(), parts - 1);
            store.redo_now().unwrap();
        }
        assert_same(&store.logbook(), &Store::open_reading(&path).unwrap().logbook());
        drop(store);
        let report = check(&path, &Rules::shipped()).unwrap();
        assert!(is_whole(&report), "kill {kill}: {:#?}", report.troubles);
        for photo in std::fs::read_dir(path.join("photos")).unwrap() {
            let photo = photo.unwrap().path();
            let is_named = photo.extension().is_some_and(|extension| extension == "png");
            assert!(!is_named || photo.metadata().unwrap().len() == 200_000, "kill {kill}: half a photograph");
        }
        written = parts;
    }
    println!("{kills} kills, {written} parts written");
    assert!(written > 0, "every process was killed before it wrote anything: nothing was tried");
}
