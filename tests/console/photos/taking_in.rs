//! `photos LOGBOOK add`, `list` and `copy`.

use std::fs;
use std::path::{Path, PathBuf};

use benchwright::record::{Change, Kind};
use benchwright::store::Store;
use serde_json::{Value, json};
use sha2::{Digest as _, Sha256};

use super::exif::{Noted, PLACE, ascii};
use super::quarters::packed;
use crate::{benchwright, json, reason, records, text};

/// A logbook with parts 0042 and 0043.
fn logbook(folder: &Path) -> String {
    let path = folder.join("w.logbook");
    let store = Store::create(&path, records::workshop("Attic")).unwrap();
    let mut change = Change::new("Log");
    change.put(records::part("0042", Kind::Mainboard, "Nordkamp NB-4"));
    change.put(records::part("0043", Kind::Fan, "Fan"));
    store.write(change).unwrap();
    path.to_str().unwrap().to_owned()
}

fn written(path: PathBuf, bytes: &[u8]) -> PathBuf {
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(&path, bytes).unwrap();
    path
}

/// Runs `photos LOGBOOK …` as JSON; with the exit code.
fn photos(logbook: &str, arguments: &[&str]) -> (Option<i32>, Value) {
    let output = benchwright(&[&["photos", logbook], arguments, &["--json"]].concat());
    let errors = String::from_utf8_lossy(&output.stderr).into_owned();
    (output.status.code(), serde_json::from_slice(&output.stdout).unwrap_or_else(|_| panic!("{errors}")))
}

fn sha256(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    Sha256::digest(bytes).iter().fold(String::new(), |mut text, byte| {
        write!(text, "{byte:02x}").unwrap();
        text
    })
}

#[test]
fn good_files_are_kept_as_they_are_and_each_bad_one_is_named_with_its_reason() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let logbook = logbook(folder);
    let mut noted = Noted::taken(b"2024:05:06 07:08:09", Some(b"+02:00"));
    noted.orientation = 6;
    noted.fields.push(ascii(0x0110, b"HO-12"));
    let jpeg = noted.jpeg();
    let good = written(folder.join("in/IMG 1.jpg"), &jpeg);
    written(folder.join("in/deep/er/board.txt"), &packed(image::ImageFormat::Png));
    written(folder.join("in/deep/cut.jpg"), &jpeg[..jpeg.len() - 40]);
    written(folder.join("in/deep/empty.png"), b"");
    written(folder.join("in/notes.txt"), b"nothing to see");
    written(folder.join("in/.hidden.jpg"), &jpeg);
    written(folder.join("in/letter.jpg"), b"Dear restorer");
    #[cfg(unix)]
    std::os::unix::fs::symlink(folder.join("in"), folder.join("in/deep/loop")).unwrap();
    let (input, gone) = (folder.join("in"), folder.join("gone.jpg"));
    let (input, gone) = (input.to_str().unwrap(), gone.to_str().unwrap());

    let (code, answer) = photos(&logbook, &["add", "0042", input, gone]);
    assert_eq!(code, Some(1));
    let of = |list: &str, field: &str| -> Vec<String> {
        let list = answer[list].as_array().unwrap();
        list.iter().map(|entry| entry[field].as_str().unwrap().to_owned()).collect()
    };
    let names = |files: Vec<String>| -> Vec<String> {
        files.iter().map(|file| Path::new(file).file_name().unwrap().to_string_lossy().into_owned()).collect()
    };
    assert_eq!(names(of("kept", "file")), ["IMG 1.jpg", "board.txt"]);
    assert_eq!(names(of("failed", "file")), ["letter.jpg", "cut.jpg", "empty.png", "gone.jpg"]);
    let reasons = of("failed", "reason");
    for (reason, word) in reasons.iter().zip(["no picture", "cut short", "empty", "cannot be read"]) {
        assert!(reason.contains(word), "{reasons:?}");
    }
    assert_eq!(answer["passed_over"], 1);
    let kept = &answer["kept"][0];
    assert_eq!((&kept["width_px"], &kept["height_px"]), (&json!(32), &json!(48)));
    assert_eq!((&kept["taken"], &kept["camera"]), (&json!("2024-05-06T07:08:09+02:00"), &json!("HO-12")));
    assert_eq!(kept["content"], json!(sha256(&jpeg)));

    let list = json(&["photos", &logbook, "list", "0042"]);
    let list = list["photos"].as_array().unwrap();
    assert_eq!(list.len(), 2);
    let of_jpeg = list.iter().find(|photo| photo["content"] == json!(sha256(&jpeg))).unwrap();
    assert_eq!(of_jpeg["taken"], "2024-05-06");
    assert_eq!(fs::read(of_jpeg["file"].as_str().unwrap()).unwrap(), jpeg, "byte for byte");
    assert_eq!(fs::read(good).unwrap(), jpeg, "the original is untouched");
    let check = json(&["check", &logbook]);
    assert_eq!((&check["files"], &check["unnamed"]), (&json!(2), &json!([])));
}

#[test]
fn the_same_picture_is_kept_once() {
    let folder = tempfile::tempdir().unwrap();
    let logbook = logbook(folder.path());
    let one = written(folder.path().join("one.jpg"), &Noted::turned(1).jpeg());
    let two = written(folder.path().join("two.jpg"), &Noted::turned(1).jpeg());
    let (one, two) = (one.to_str().unwrap(), two.to_str().unwrap());
    let (code, answer) = photos(&logbook, &["add", "0042", one, two]);
    assert_eq!(
        (code, &answer["kept"][0]["already"], &answer["kept"][1]["already"]),
        (Some(0), &json!(false), &json!(true))
    );
    assert_eq!(answer["kept"][0]["photo"], answer["kept"][1]["photo"]);
    assert!(text(&["photos", &logbook, "add", "0042", one]).contains("1 was there already"));
    photos(&logbook, &["add", "0043", one]);
    let count = |tag| json(&["photos", &logbook, "list", tag])["photos"].as_array().unwrap().len();
    assert_eq!((count("0042"), count("0043")), (1, 1), "two parts may share a picture");
    assert_eq!(fs::read_dir(Path::new(&logbook).join("photos")).unwrap().count(), 1);
    assert!(reason(&["photos", &logbook, "add", "0099", one]).contains("“0099”"));
}

#[test]
fn copies_go_out_without_place_and_nothing_is_overwritten() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let logbook = logbook(folder);
    let noted = Noted { orientation: 8, has_place: true, ..Noted::default() };
    let files = [written(folder.join("a.jpg"), &noted.jpeg()), written(folder.join("b.png"), &noted.png())];
    let files = files.each_ref().map(|file| file.to_str().unwrap());
    photos(&logbook, &["add", "0042", files[0], files[1]]);
    let out = folder.join("out");
    let out = out.to_str().unwrap();
    let (code, answer) = photos(&logbook, &["copy", "0042", out]);
    assert_eq!((code, answer["copied"].as_array().unwrap().len()), (Some(0), 2));
    for copied in answer["copied"].as_array().unwrap() {
        let bytes = fs::read(copied["file"].as_str().unwrap()).unwrap();
        assert!(!bytes.windows(PLACE.len()).any(|window| window == PLACE), "{copied}");
    }
    let before = fs::read(answer["copied"][0]["file"].as_str().unwrap()).unwrap();
    let (code, again) = photos(&logbook, &["copy", "0042", out]);
    assert_eq!((code, again["failed"].as_array().unwrap().len()), (Some(1), 2), "{again}");
    assert_eq!(fs::read(answer["copied"][0]["file"].as_str().unwrap()).unwrap(), before);
    let content =
        json(&["photos", &logbook, "list", "0042"])["photos"][0]["content"].as_str().unwrap()[..12].to_owned();
    let (code, one) = photos(&logbook, &["copy", &content, &format!("{out}/one")]);
    assert_eq!((code, one["copied"].as_array().unwrap().len()), (Some(0), 1));
    assert!(reason(&["photos", &logbook, "copy", "nothing", out]).contains("“nothing”"));
}
