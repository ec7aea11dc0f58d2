//! Other files that go with the part: firmware images, manual pages, receipts, logs.

use chrono::NaiveDate;
use egui::Ui;

use super::about::{About, act_ui, day_text, put};
use crate::counted;
use crate::record::{Attachment, AttachmentId, AttachmentKind, Change, Moment, Part, Word};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Ask, KeptFile, Outbox};
use crate::window::theme::GRID;
use crate::window::widgets::{Edit, Fact, body, choice_ui, link_ui, path_field_ui, remark};

/// What is open and half typed.
#[derive(Default)]
pub struct Papers {
    /// The path that is being typed.
    path: Option<String>,
    open: Option<AttachmentId>,
}

/// The attachments of files that were copied into the logbook.
pub fn added(part: &Part, today: NaiveDate, files: &[KeptFile]) -> Change {
    let name = counted!("Attach {count} file", "Attach {count} files", files.len());
    let mut change = Change::new(format!("{name} ({})", part.tag));
    for file in files {
        change.put(Attachment {
            id: Store::new_id(),
            part: Some(part.id),
            machine: None,
            lot: None,
            kind: likely_kind(&file.file_name),
            content: file.content.clone(),
            file_name: file.file_name.clone(),
            bytes: file.bytes,
            added: Moment::on(today),
            note: String::new(),
            proof: None,
        });
    }
    change
}

/// What a file probably is, by its name; a person says better.
fn likely_kind(name: &str) -> AttachmentKind {
    let end = name.rsplit_once('.').map(|(_, end)| end.to_lowercase()).unwrap_or_default();
    match end.as_str() {
        "bin" | "rom" => AttachmentKind::FirmwareImage,
        "img" | "ima" | "iso" | "dsk" => AttachmentKind::DriveImage,
        "pdf" => AttachmentKind::Manual,
        "log" | "csv" => AttachmentKind::Log,
        _ => AttachmentKind::Other,
    }
}

impl Papers {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        if about.file.attachments.is_empty() {
            ui.label(body(text!("None. A firmware image saved today can be written back in ten years.")));
        }
        for paper in &about.file.attachments {
            ui.push_id(paper.id, |ui| self.paper_ui(ui, about, paper, edit, outbox));
        }
        let Some(path) = &mut self.path else {
            if link_ui(ui, text!("Attach a file…")).clicked() {
                self.path = Some(String::new());
            }
            return;
        };
        let mut ask = false;
        let label = text!("Path of a file");
        if let Some(path) = path_field_ui(ui, label, path, text!("Attach the file"), &mut ask) {
            self.path = None;
            outbox.keep_files(about.page(), vec![path], false);
        }
        if ask {
            outbox.ask(Ask::Attachment(about.page()));
        }
    }

    fn paper_ui(&mut self, ui: &mut Ui, about: &About<'_>, paper: &Attachment, edit: &mut Edit, outbox: &mut Outbox) {
        let is_open = self.open == Some(paper.id);
        ui.horizontal_wrapped(|ui| {
            ui.label(body(paper.kind.label()));
            if act_ui(ui, &paper.file_name, &text!("File: {name}", name = paper.file_name)) {
                self.open = if is_open { None } else { Some(paper.id) };
            }
            let mut words = vec![bytes_text(paper.bytes), day_text(paper.added.on)];
            if !paper.note.is_empty() {
                words.push(paper.note.clone());
            }
            ui.label(remark(ui, words.join(" · ")));
        });
        if !is_open {
            return;
        }
        let mut kind = paper.kind;
        let kinds: Vec<(AttachmentKind, &str)> = AttachmentKind::ALL.iter().map(|word| (*word, word.label())).collect();
        if choice_ui(ui, text!("What it is"), &mut kind, &kinds, 40.0 * GRID) {
            let name = text!("Say what {file} is", file = paper.file_name);
            outbox.change(put(name, Attachment { kind, ..paper.clone() }));
        }
        let key = paper.id.to_string();
        if let Some(note) = edit.fact_ui(ui, Fact::line(&key, text!("Note")), &paper.note) {
            let name = text!("Note on {file}", file = paper.file_name);
            outbox.change(put(name, Attachment { note, ..paper.clone() }));
        }
        let path = about.view.store.attachment_path(paper);
        ui.label(remark(ui, text!("Kept at {path}", path = path.display())));
        let name = text!("Take {file} out of the logbook", file = paper.file_name);
        if act_ui(ui, text!("Take it out of the logbook"), &name) {
            let mut change = Change::new(name);
            change.remove(paper.id);
            outbox.change(change);
        }
    }
}

/// A size for a person, in powers of ten.
fn bytes_text(bytes: u64) -> String {
    match bytes {
        0..1_000 => text!("{bytes} bytes", bytes = bytes),
        1_000..1_000_000 => format!("{:.0} kB", bytes as f64 / 1e3),
        _ => format!("{:.1} MB", bytes as f64 / 1e6),
    }
}
