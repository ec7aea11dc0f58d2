//! Photographs and attached files are copied in under their content's hash.

use benchwright::record::{Attachment, AttachmentKind, Moment};
use benchwright::store::{FileSource, StoreError};

use crate::records::photo;
use crate::support::{fresh, id};

/// SHA-256 of "abc". Source: FIPS 180-4 example, NIST "SHA-256 Example (One Block)".
const ABC: &str = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

#[test]
fn a_photograph_is_kept_under_its_hash_whether_it_comes_as_a_file_or_as_bytes() {
    let (folder, store) = fresh();
    let source = folder.path().join("IMG 0001.JPG");
    std::fs::write(&source, b"abc").unwrap();
    let kept = store.keep_photo(FileSource::Path(&source), "JPG").unwrap();
    assert_eq!((kept.content.as_str(), kept.bytes, kept.extension.as_str()), (ABC, 3, "jpg"));
    let again = store.keep_photo(FileSource::Bytes(b"abc"), "jpg").unwrap();
    assert_eq!((again.content.as_str(), kept.is_new, again.is_new), (ABC, true, false));
    let path = store.photo_path(&photo(&kept.content, &kept.extension));
    assert_eq!(path, store.folder().join("photos").join(format!("{ABC}.jpg")));
    assert_eq!(std::fs::read(&path).unwrap(), b"abc");
    assert_eq!(std::fs::read_dir(store.folder().join("photos")).unwrap().count(), 1, "no copy is left over");
    assert!(source.is_file(), "the original stays where it was");
}

#[test]
fn an_attachment_of_many_blocks_is_kept_whole() {
    let (_folder, store) = fresh();
    // One million letters "a". Source: the long example of the SHA-2 test vectors in FIPS 180-2, appendix B.3.
    let kept = store.keep_attachment(FileSource::Bytes(&vec![b'a'; 1_000_000])).unwrap();
    assert_eq!(kept.content, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    let attachment = Attachment {
        id: id(),
        part: None,
        machine: None,
        lot: None,
        kind: AttachmentKind::FirmwareImage,
        content: kept.content,
        file_name: "board.bin".into(),
        bytes: kept.bytes,
        added: Moment::default(),
        note: String::new(),
        proof: None,
    };
    assert_eq!(std::fs::metadata(store.attachment_path(&attachment)).unwrap().len(), 1_000_000);
}

#[test]
fn a_photograph_that_is_not_there_is_named() {
    let (folder, store) = fresh();
    let missing = folder.path().join("gone.jpg");
    let error = store.keep_photo(FileSource::Path(&missing), "jpg").unwrap_err();
    assert!(matches!(&error, StoreError::FileMissing { path } if *path == missing), "{error}");
    assert!(error.to_string().ends_with(&missing.display().to_string()), "the path stands last: {error}");
    assert_eq!(std::fs::read_dir(store.folder().join("photos")).unwrap().count(), 0);
}
