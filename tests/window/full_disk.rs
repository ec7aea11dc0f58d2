//! A disk that fills up while photographs are taken in: what is in stays, the rest is listed, nothing is half taken.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use benchwright::record::{Change, Kind};
use benchwright::store::Store;
use benchwright::window::command::Command as Given;
use benchwright::window::page::Page;

use crate::desktop::drop_files;
use crate::hand::{Hand, part};
use crate::records;
use crate::taking_in::photos;

/// Where the small file system is, in the process that may mount one.
const SMALL: &str = "BENCHWRIGHT_SMALL_DISK";

#[test]
#[cfg(target_os = "linux")]
fn what_is_in_stays_and_the_rest_is_listed() {
    if let Some(small) = std::env::var_os(SMALL) {
        on_the_small_disk(PathBuf::from(small));
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    let small = folder.path().join("small");
    fs::create_dir(&small).unwrap();
    // This very test once more, in a mount namespace of its own, so that nothing outside sees the small file system.
    let script = "mount -t tmpfs -o size=2m tmpfs \"$1\" || exit 77\n\
                  exec \"$2\" --exact full_disk::what_is_in_stays_and_the_rest_is_listed --nocapture";
    let mut call = Command::new("unshare");
    call.args(["-m", "sh", "-c", script, "sh"]).arg(&small).arg(std::env::current_exe().unwrap()).env(SMALL, &small);
    let Ok(output) = call.output() else {
        eprintln!("not tried: no unshare here");
        return;
    };
    let errors = String::from_utf8_lossy(&output.stderr);
    if output.status.code() == Some(77) || errors.contains("unshare failed") {
        eprintln!("not tried: this user may not mount a file system");
        return;
    }
    assert!(output.status.success(), "{}\n{errors}", String::from_utf8_lossy(&output.stdout));
}

#[cfg(target_os = "linux")]
fn on_the_small_disk(small: PathBuf) {
    let pictures = tempfile::tempdir().unwrap();
    // Noise packs badly: 100 kB each, far more than there is room for together with the database.
    for number in 0..40 {
        let mut dice = fastrand::Rng::with_seed(number);
        let noise = image::RgbImage::from_fn(200, 160, |_, _| image::Rgb([dice.u8(..), dice.u8(..), dice.u8(..)]));
        noise.save(pictures.path().join(format!("{number:02}.png"))).unwrap();
    }
    let folder = tempfile::Builder::new().tempdir_in(&small).unwrap();
    let logbook = folder.path().join("trial.logbook");
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    change.put(board.clone());
    let store = Store::create(&logbook, records::workshop("Attic")).unwrap();
    store.write(change).unwrap();
    drop(store);
    let mut hand = Hand::reopened(folder, [1280.0, 800.0]);
    hand.give(Given::Go(Page::Part(board.id)));
    drop_files(&mut hand, &[pictures.path()]);
    hand.wait("the end", |app| !app.taking_in().is_busy() && !app.taking_in().failed().is_empty());
    hand.settle();
    let taken_in = photos(hand.window.state(), board.id).len();
    let failed = hand.window.state().taking_in().failed();
    assert!(failed.iter().all(|failure| failure.why.contains("disk is full")), "{failed:?}");
    assert_eq!(taken_in + failed.len(), 40, "each is either in or listed");
    assert!(failed.len() > 20, "there is room for 20 at most");
    assert_eq!(fs::read_dir(logbook.join("photos")).unwrap().count(), taken_in, "nothing is half taken");
    assert_eq!(fs::read_dir(pictures.path()).unwrap().count(), 40, "the originals are where they were");
    drop(hand);
}
