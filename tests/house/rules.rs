//! The trade's tables: what ships holds together, and a bad table is refused with file, line and reason.

use benchwright::rules::Rules;

#[test]
fn the_shipped_tables_load() {
    if let Err(errors) = Rules::with_own(&[]) {
        panic!("{errors}");
    }
}
