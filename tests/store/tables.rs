//! The tables are those of the records: the same names, every field a column.

use benchwright::record::{EntryKind, Word as _};
use benchwright::store::{Shape, columns};

use crate::support::fresh;

#[test]
fn each_table_has_the_columns_of_its_record_in_the_type_of_its_field() {
    let (_folder, store) = fresh();
    let database = rusqlite::Connection::open(store.folder().join("logbook.sqlite")).unwrap();
    for kind in EntryKind::ALL {
        let mut statement = database.prepare("SELECT name, type FROM pragma_table_info(?)").unwrap();
        let stored: Vec<(String, String)> = statement
            .query_map([kind.name()], |row| Ok((row.get(0)?, row.get(1)?)))
            .unwrap()
            .map(Result::unwrap)
            .collect();
        let told: Vec<(String, String)> = columns(*kind)
            .iter()
            .map(|column| {
                let sql = match column.shape {
                    Shape::Key => "BLOB",
                    Shape::Text | Shape::Date => "TEXT",
                    Shape::Integer => "INTEGER",
                    Shape::Real => "REAL",
                };
                (column.name.clone(), sql.to_owned())
            })
            .collect();
        assert_eq!(stored, told, "{}", kind.name());
    }
}

#[test]
fn every_table_is_strict_and_says_that_the_file_is_a_logbook() {
    let (_folder, store) = fresh();
    let database = rusqlite::Connection::open(store.folder().join("logbook.sqlite")).unwrap();
    let lax: Vec<String> = database
        .prepare("SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'")
        .unwrap()
        .query_map([], |row| row.get(0))
        .unwrap()
        .map(Result::unwrap)
        .collect();
    assert_eq!(lax, Vec::<String>::new());
    // Bytes 68–71 of a database file: the application's number. Source: https://www.sqlite.org/fileformat.html
    let bytes = std::fs::read(store.folder().join("logbook.sqlite")).unwrap();
    assert_eq!(&bytes[68..72], b"BwLb");
}

#[test]
fn what_a_record_refers_to_is_listed_before_it() {
    let (_folder, store) = fresh();
    let database = rusqlite::Connection::open(store.folder().join("logbook.sqlite")).unwrap();
    let mut links = 0;
    for (place, kind) in EntryKind::ALL.iter().enumerate() {
        let mut statement = database.prepare("SELECT \"table\" FROM pragma_foreign_key_list(?)").unwrap();
        for parent in statement.query_map([kind.name()], |row| row.get::<_, String>(0)).unwrap() {
            let parent = EntryKind::named(&parent.unwrap()).unwrap();
            assert!(EntryKind::ALL[..=place].contains(&parent), "{} before {}", kind.name(), parent.name());
            links += 1;
        }
    }
    assert!(links > 40, "only {links} references found");
}
