//! Looks a whole logbook over: the database, what holds between records, and the files beside it.

use std::collections::{BTreeSet, HashMap};
use std::path::Path;
use std::sync::Arc;

use rusqlite::Connection;
use serde::Serialize;
use uuid::Uuid;

use super::consistency::{self, Laws};
use super::error::StoreError;
use super::history::Touch;
use super::rows::Records;
use super::store::existing_database;
use super::{connect, fields, files, load, schema, unknown};
use crate::assess::missing_findings;
use crate::assess::unknown_names::Owner;
use crate::record::{Attachment, Entry, EntryKind, Finding, Given, Logbook, Photo, Word as _};
use crate::rules::Rules;
use crate::text;

crate::words! {
    /// What a trouble is about.
    Area {
        Database = "database", "Database";
        Records = "records", "Records";
        Files = "files", "Files";
        Names = "names", "Names that no table has";
        Findings = "findings", "Facts without their finding";
        Answers = "answers", "“Does not apply” without a reason";
    }
}

/// Something that is wrong.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Trouble {
    pub area: Area,
    pub text: String,
}

/// What a look at a logbook showed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Report {
    /// Records that were looked at.
    pub records: usize,
    /// Photographs and attached files that were looked at.
    pub files: usize,
    /// Everything that is wrong.
    pub troubles: BTreeSet<Trouble>,
    /// What is wanting, though nothing is wrong with it.
    pub remarks: BTreeSet<Trouble>,
    /// Files that no record names; they harm nothing.
    pub unnamed: Vec<String>,
}

impl Report {
    /// Whether nothing is wrong.
    pub fn is_sound(&self) -> bool {
        self.troubles.is_empty()
    }

    fn add(&mut self, area: Area, text: impl ToString) {
        self.troubles.insert(Trouble { area, text: text.to_string() });
    }
}

/// Looks a logbook over by the tables in force and changes nothing. An error only where there is no logbook to look at.
pub fn check(folder: &Path, rules: &Rules) -> Result<Report, StoreError> {
    let database = existing_database(folder)?;
    let mut report = Report::default();
    let about = |error: StoreError| error.about(&database);
    let opened = connect::reading(&database).map_err(about).and_then(|connection| {
        let version = schema::version(&connection, &database)?;
        Ok((connection, version))
    });
    let connection = match opened {
        Ok((connection, schema::VERSION)) => connection,
        Ok(_) => return Err(StoreError::Older { path: database }),
        Err(error @ StoreError::Damaged { .. }) => {
            report.add(Area::Database, error);
            return Ok(report);
        }
        Err(error) => return Err(error),
    };
    if let Err(error) = check_database(&connection, &mut report) {
        report.add(Area::Database, error.about(&database));
    }
    if !report.is_sound() {
        // Rows of a damaged file may be read wrongly; more said about them would mislead.
        return Ok(report);
    }
    let mut records = Records::default();
    for kind in EntryKind::ALL {
        if let Err(error) = records.read_table(&connection, *kind) {
            report.add(Area::Records, error.about(&database));
        }
    }
    check_files(folder, &records.photo, &records.attachment, &mut report);
    let links = consistency::links(&connection).map_err(about)?;
    let laws = Laws { links: &links, rules: &|| Arc::new(rules.clone()) };
    for entry in records.into_entries() {
        report.records += 1;
        check_record(&connection, &laws, &entry, &mut report);
    }
    // Of rows that cannot be read a trouble tells already.
    if let Ok(logbook) = load::logbook(&database) {
        check_meaning(&logbook, rules, &mut report);
    }
    Ok(report)
}

/// What records say by the tables: names that none holds, facts whose finding is missing, answers without a reason.
fn check_meaning(logbook: &Logbook, rules: &Rules, report: &mut Report) {
    for said in unknown::unknown_in_words(logbook, rules) {
        report.add(Area::Names, said);
    }
    for missing in missing_findings::of(logbook, rules, &mut Uuid::now_v7) {
        let part = unknown::owner_in(logbook, Owner::Part(missing.part));
        for finding in missing.findings() {
            report.add(Area::Findings, text!("{part}: {finding}", part = part, finding = called(finding, rules)));
        }
    }
    for file in &logbook.parts {
        for (survey, answer) in file.surveys_now().flat_map(|of| of.answers.iter().map(move |answer| (of, answer))) {
            if answer.given == Given::DoesNotApply && answer.note.trim().is_empty() {
                let part = unknown::owner_in(logbook, Owner::Part(file.part.id));
                let question = answer.question;
                let text = text!(
                    "{part}, survey of {day}: {question}",
                    part = part,
                    day = survey.looked.on,
                    question = question
                );
                report.remarks.insert(Trouble { area: Area::Answers, text });
            }
        }
    }
}

/// What a finding is called, and which question raised it.
fn called(finding: &Finding, rules: &Rules) -> String {
    let Finding { what, question, note, .. } = finding;
    let name = rules.finding(what).map_or(note.as_str(), |rule| text::say(&rule.say));
    if question.is_empty() { name.to_owned() } else { format!("{name} ({question})") }
}

/// SQLite's own look at its file.
fn check_database(connection: &Connection, report: &mut Report) -> Result<(), StoreError> {
    let mut statement = connection.prepare("PRAGMA integrity_check(20)")?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        let said: String = row.get(0)?;
        if said != "ok" {
            report.add(Area::Database, said);
        }
    }
    Ok(())
}

fn check_record(connection: &Connection, laws: &Laws, entry: &Entry, report: &mut Report) {
    if let Err(error) = fields::check(connection, entry) {
        report.add(Area::Records, error);
    }
    if let Err(fault) = consistency::check(connection, laws, &[Touch::of(entry)]) {
        report.add(Area::Records, fault.error);
    }
}

/// Every named file is there and holds what it held.
fn check_files(folder: &Path, photos: &[Photo], attachments: &[Attachment], report: &mut Report) {
    let mut named = HashMap::new();
    for photo in photos {
        named.insert(files::path(&folder.join("photos"), &photo.content, &photo.extension), &photo.content);
    }
    for attachment in attachments {
        named.insert(files::path(&folder.join("files"), &attachment.content, ""), &attachment.content);
    }
    for (path, content) in &named {
        report.files += 1;
        let shown = path.display();
        match files::hash_of(path) {
            Ok(hash) if hash == **content => {}
            Ok(_) => {
                report.add(Area::Files, text!("The file is not what it was when it was added: {path}", path = shown));
            }
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => {
                report.add(Area::Files, text!("The file is missing: {path}", path = shown));
            }
            Err(error) => {
                report.add(
                    Area::Files,
                    text!("The file cannot be read ({reason}): {path}", reason = error, path = shown),
                );
            }
        }
    }
    for place in ["photos", "files"] {
        let entries = std::fs::read_dir(folder.join(place)).into_iter().flatten().flatten();
        let unnamed = entries.map(|entry| entry.path()).filter(|path| !named.contains_key(path));
        report.unnamed.extend(unnamed.map(|path| path.display().to_string()));
    }
    report.unnamed.sort();
}
