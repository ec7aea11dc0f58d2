//! Photographs and a log that go with a run.

use egui::Ui;

use super::Owner;
use crate::record::{Attachment, AttachmentKind, Entry, MarkUse, Moment, Photo, PhotoMark, PhotoView, ProofId};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Ask, KeptFile, Outbox};
use crate::window::page::Page;
use crate::window::widgets::{body, path_field_ui};

/// Files that were copied into the logbook, and the paths that are being typed.
#[derive(Debug, Default)]
pub struct Files {
    photograph: String,
    log: String,
    kept: Vec<KeptFile>,
}

impl Files {
    /// Takes files that were copied into the logbook.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        self.kept.extend(files);
    }

    /// Whether a file of this content goes with the run.
    pub fn holds(&self, content: &str) -> bool {
        self.kept.iter().any(|file| file.content == content)
    }

    /// Draws the fields, and what goes with the run so far.
    pub fn ui(&mut self, ui: &mut Ui, page: Page, outbox: &mut Outbox) {
        let mut ask = false;
        let label = text!("Photograph of the run");
        if let Some(path) = path_field_ui(ui, label, &mut self.photograph, text!("Add the photograph"), &mut ask) {
            self.photograph.clear();
            outbox.keep_files(page, vec![path], true);
        }
        if std::mem::take(&mut ask) {
            outbox.ask(Ask::Photographs(page));
        }
        ui.push_id("log", |ui| {
            let label = text!("Log of the run, a file");
            if let Some(path) = path_field_ui(ui, label, &mut self.log, text!("Add the log"), &mut ask) {
                self.log.clear();
                outbox.keep_files(page, vec![path], false);
            }
        });
        if ask {
            outbox.ask(Ask::Attachment(page));
        }
        for file in &self.kept {
            ui.label(body(text!("Goes with it: {name}", name = file.file_name)));
        }
    }

    /// The records of the files.
    pub fn entries(&self, Owner { part, machine, .. }: Owner, proof: ProofId, added: Moment) -> Vec<Entry> {
        let mut entries = Vec::new();
        for file in &self.kept {
            let Some((extension, [width_px, height_px])) = file.photograph.clone() else {
                entries.push(Entry::from(Attachment {
                    id: Store::new_id(),
                    part,
                    machine,
                    lot: None,
                    kind: AttachmentKind::Log,
                    content: file.content.clone(),
                    file_name: file.file_name.clone(),
                    bytes: file.bytes,
                    added,
                    note: String::new(),
                    proof: Some(proof),
                }));
                continue;
            };
            let photo = Photo {
                id: Store::new_id(),
                part,
                machine,
                lot: None,
                content: file.content.clone(),
                extension,
                width_px,
                height_px,
                added,
                taken: file.taken,
                view: PhotoView::Detail,
                caption: String::new(),
                is_map: false,
            };
            // The whole picture shows the run: a pin in its middle ties the two.
            let place = PhotoMark::new(Store::new_id(), photo.id, MarkUse::Place, vec![[0.5, 0.5]]);
            entries.extend([photo.into(), PhotoMark { proof: Some(proof), ..place }.into()]);
        }
        entries
    }
}
