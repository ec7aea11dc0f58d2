//! What takes long is done away from the window's thread: dialogs, opening, making the sample.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

use super::desktop::Desktop;
use super::outbox::{Ask, FilesToKeep, KeptFile, Picked};
use super::page::Page;
use super::session::Session;
use crate::photo::Picture;
use crate::store::{FileSource, Store};

/// A job that has finished.
pub enum Finished {
    Picked(Picked),
    /// A logbook was opened, or why it was not.
    Opened(PathBuf, anyhow::Result<Box<Session>>),
    /// Whether the desktop prefers dark, if it tells.
    Desktop(Option<bool>),
    /// Files were copied into the logbook for a page; those that could not be are told with their reason.
    Kept {
        page: Page,
        files: Vec<KeptFile>,
        failed: Vec<String>,
    },
}

/// Jobs under way.
pub struct Jobs {
    ctx: egui::Context,
    desktop: Arc<dyn Desktop>,
    sender: Sender<Finished>,
    receiver: Receiver<Finished>,
}

impl Jobs {
    /// No jobs yet; the window is woken whenever one finishes.
    pub fn new(ctx: egui::Context, desktop: Arc<dyn Desktop>) -> Self {
        let (sender, receiver) = channel();
        Self { ctx, desktop, sender, receiver }
    }

    /// The window that is woken.
    pub fn ctx(&self) -> &egui::Context {
        &self.ctx
    }

    /// Jobs that finished since the last call.
    pub fn finished(&self) -> Vec<Finished> {
        self.receiver.try_iter().collect()
    }

    /// Does something on a thread of its own.
    pub fn start(&self, job: impl FnOnce() -> Finished + Send + 'static) {
        let (sender, ctx) = (self.sender.clone(), self.ctx.clone());
        std::thread::spawn(move || {
            // Nobody listens any more once the window is closed.
            let _ = sender.send(job());
            ctx.request_repaint();
        });
    }

    /// Asks the desktop for light or dark.
    pub fn ask_preference(&self) {
        let desktop = Arc::clone(&self.desktop);
        self.start(move || Finished::Desktop(desktop.prefers_dark()));
    }

    /// Copies files into the logbook.
    pub fn keep(&self, store: &Arc<Store>, wanted: FilesToKeep) {
        let store = Arc::clone(store);
        self.start(move || {
            let FilesToKeep { page, paths, are_photographs } = wanted;
            let (mut files, mut failed) = (Vec::new(), Vec::new());
            for path in paths {
                match if are_photographs { keep_photograph(&store, &path) } else { keep_attachment(&store, &path) } {
                    Ok(file) => files.push(file),
                    Err(error) => failed.push(format!("{error:#}")),
                }
            }
            Finished::Kept { page, files, failed }
        });
    }

    /// Shows a file dialog.
    pub fn ask(&self, ask: Ask, parent: Option<&eframe::Frame>) {
        let chosen = self.desktop.choose(ask, parent);
        self.start(move || Finished::Picked(Picked { ask, paths: pollster::block_on(chosen) }));
    }
}

fn file_name(path: &Path) -> String {
    path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
}

fn keep_photograph(store: &Store, path: &Path) -> anyhow::Result<KeptFile> {
    let picture = Picture::open(path)?;
    let kept = store.keep_photo(FileSource::Bytes(picture.bytes()), picture.format().extension())?;
    let photograph = Some((kept.extension, [picture.width_px(), picture.height_px()]));
    Ok(KeptFile { file_name: file_name(path), content: kept.content, bytes: kept.bytes, photograph })
}

fn keep_attachment(store: &Store, path: &Path) -> anyhow::Result<KeptFile> {
    let kept = store.keep_attachment(FileSource::Path(path))?;
    Ok(KeptFile { file_name: file_name(path), content: kept.content, bytes: kept.bytes, photograph: None })
}
