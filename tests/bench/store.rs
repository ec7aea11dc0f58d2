//! How long a logbook of 10,000 parts takes to open, and one edit to be worked out and to be on disk.
#![allow(clippy::unwrap_used)]

use std::path::Path;
use std::time::{Duration, Instant};

use benchwright::record::{Change, Part};
use benchwright::store::{Store, invent};
use chrono::NaiveDate;
use rusqlite::Connection;

const PARTS: u32 = 10_000;

fn median(mut times: Vec<Duration>) -> Duration {
    times.sort();
    times[times.len() / 2]
}

fn timed<T>(act: impl FnOnce() -> T) -> (Duration, T) {
    let begun = Instant::now();
    let value = act();
    (begun.elapsed(), value)
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}

/// One edited field of one part, a different part each time.
fn edit(store: &Store, round: usize) -> (Change, Part) {
    let logbook = store.logbook();
    let mut part = logbook.parts[round * 97 % logbook.parts.len()].part.clone();
    part.note = format!("Looked at again, round {round}");
    let mut change = Change::new("Remark");
    change.put(part.clone());
    (change, part)
}

/// The same database without this program: what SQLite itself takes to have the same rows on disk. The triggers stay,
/// so that the history's rows are written too.
fn bare(folder: &Path, store: &Store) -> Connection {
    let path = folder.join("bare.sqlite");
    std::fs::copy(store.folder().join("logbook.sqlite"), &path).unwrap();
    let connection = Connection::open(&path).unwrap();
    connection.pragma_update_and_check(None, "journal_mode", "wal", |_| Ok(())).unwrap();
    connection.pragma_update(None, "synchronous", "FULL").unwrap();
    connection
}

fn bare_edit(connection: &mut Connection, part: &Part) {
    let transaction = connection.transaction().unwrap();
    transaction
        .prepare_cached("INSERT INTO change (name, at, act, sequence) VALUES ('Remark', '2024-03-01', 'do', 1)")
        .unwrap()
        .execute([])
        .unwrap();
    transaction
        .prepare_cached("UPDATE part SET note = ? WHERE id = ?")
        .unwrap()
        .execute(rusqlite::params![part.note, part.id.uuid().as_bytes()])
        .unwrap();
    transaction.commit().unwrap();
}

fn main() {
    let disk = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let path = disk.path().join("scale.logbook");
    let today = NaiveDate::from_ymd_opt(2026, 1, 1).unwrap();
    let (filled, store) = timed(|| invent::create(&path, today, PARTS, 1).unwrap());
    println!("{PARTS} parts invented and written as one change: {:.0} ms", ms(filled));
    drop(store);
    let bytes = std::fs::metadata(path.join("logbook.sqlite")).unwrap().len();
    println!("database: {:.1} MB", bytes as f64 / 1e6);

    let opened: Vec<Duration> = (0..7).map(|_| timed(|| drop(Store::open(&path).unwrap())).0).collect();
    println!("open to the first revision: {:.0} ms (limit 400)", ms(median(opened)));

    // On disk: a change of ours and a bare transaction by turns, so that both meet the same disk.
    let store = Store::open(&path).unwrap();
    let mut bare = bare(disk.path(), &store);
    let (mut ours, mut bares) = (Vec::new(), Vec::new());
    for round in 0..80 {
        let (change, part) = edit(&store, round);
        ours.push(timed(|| store.write(change).unwrap()).0);
        store.take_events();
        bares.push(timed(|| bare_edit(&mut bare, &part)).0);
    }
    let (ours, bares) = (median(ours), median(bares));
    println!(
        "one edit on disk: {:.2} ms, a bare transaction of the same rows {:.2} ms: {:.2} times (limit 2)",
        ms(ours),
        ms(bares),
        ms(ours) / ms(bares)
    );
    drop(store);

    // In memory the disk costs nothing, so that what is left is computing.
    let memory = Path::new("/dev/shm");
    if memory.is_dir() {
        let folder = tempfile::tempdir_in(memory).unwrap();
        let copy = folder.path().join("scale.logbook");
        std::fs::create_dir(&copy).unwrap();
        std::fs::copy(path.join("logbook.sqlite"), copy.join("logbook.sqlite")).unwrap();
        let store = Store::open(&copy).unwrap();
        let mut times: Vec<Duration> = (0..200)
            .map(|round| {
                let (change, _) = edit(&store, round);
                let time = timed(|| store.write(change).unwrap()).0;
                store.take_events();
                time
            })
            .collect();
        times.sort();
        println!(
            "one edit without the disk: {:.2} ms, 99th percentile {:.2} ms (limit 3)",
            ms(times[100]),
            ms(times[197])
        );
    }
}
