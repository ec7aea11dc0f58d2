//! Tables of supplies to files and from files, away from the window's thread.

use std::path::PathBuf;

use super::App;
use crate::paper::supplies::SuppliesTable;

impl App {
    pub(super) fn write_table(&self, table: SuppliesTable, path: PathBuf, may_replace: bool) {
        if let Some(session) = &self.session {
            self.jobs.write_table(session, table, path, may_replace);
        }
    }
}
