//! One writer at a time: whoever comes second is told who holds the logbook.

use std::process::Command;

use benchwright::store::{Store, StoreError};

use crate::support::fresh;

#[test]
fn a_second_writer_is_told_who_holds_the_logbook() {
    let (folder, store) = fresh();
    let path = store.folder().to_owned();
    let error = Store::open(&path).err().unwrap();
    let StoreError::Held { holder, .. } = &error else { panic!("{error}") };
    assert!(holder.contains("benchwright") && holder.contains(&std::process::id().to_string()), "{holder}");
    let text = error.to_string();
    assert!(text.contains(holder) && text.ends_with(&path.display().to_string()), "{text}");

    let document = folder.path().join("document.json");
    std::fs::write(&document, store.export().unwrap()).unwrap();
    let import =
        || Command::new(env!("CARGO_BIN_EXE_benchwright")).arg("import").arg(&path).arg(&document).output().unwrap();
    let refused = import();
    assert_eq!(refused.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&refused.stderr).contains(holder));
    drop(store);
    assert_eq!(import().status.code(), Some(0));
    drop(Store::open(&path).unwrap());
}
