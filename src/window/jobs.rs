//! What takes long is done away from the window's thread: dialogs, opening, making the sample.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

use super::desktop::Desktop;
use super::outbox::{Ask, KeptFile, Picked, PrintedPage, ToSample};
use super::page::Page;
use super::session::Session;
use super::taking_in::attached;
use crate::paper::file::write_whole;
use crate::paper::marked_copy;
use crate::paper::supplies::SuppliesTable;
use crate::photo::measure::{Sampled, sample};
use crate::photo::{Colours, Failure, Picture};
use crate::record::{Change, PhotoId, PhotoMark};
use crate::store::Store;
use crate::text;
use crate::trade::colour::Srgb;

/// A job that has finished.
pub enum Finished {
    Picked(Picked),
    /// A logbook was opened, or why it was not.
    Opened(PathBuf, anyhow::Result<Box<Session>>),
    /// Whether the desktop prefers dark, if it tells.
    Desktop(Option<bool>),
    /// Files were copied into the logbook to be attached; those that could not be are told with their reason.
    Attached {
        page: Page,
        files: Vec<KeptFile>,
        failed: Vec<Failure>,
    },
    /// Something is done or failed; what is to be said of it.
    Said(String),
    /// A patch to be written, with its colour or why it has none.
    Sampled(Change, Option<String>),
    /// What stands in a file with a table of materials.
    Table(String),
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

    /// Copies files into the logbook, to be attached.
    pub fn attach(&self, store: &Arc<Store>, page: Page, paths: Vec<PathBuf>) {
        let store = Arc::clone(store);
        self.start(move || {
            let (mut files, mut failed) = (Vec::new(), Vec::new());
            for path in paths {
                match attached(&store, &path) {
                    Ok(file) => files.push(file),
                    Err(failure) => failed.push(failure),
                }
            }
            Finished::Attached { page, files, failed }
        });
    }

    /// Takes the colour of a patch off its photograph.
    pub fn sample(&self, store: &Arc<Store>, wanted: ToSample) {
        let store = Arc::clone(store);
        self.start(move || {
            let ToSample { name, photo, mut mark } = wanted;
            let failed = match sampled(&store.photo_path(&photo), &mark) {
                Ok(Sampled { colour: Srgb { red, green, blue }, clipped_percent, .. }) => {
                    (mark.red, mark.green, mark.blue) = (Some(red), Some(green), Some(blue));
                    mark.clipped_percent = Some(clipped_percent);
                    None
                }
                Err(error) => Some(text!("The colour could not be taken. {error}", error = format!("{error:#}"))),
            };
            let mut change = Change::new(name);
            change.put(mark);
            Finished::Sampled(change, failed)
        });
    }

    /// Writes a photograph's marked copy.
    pub fn copy_out(&self, session: &Session, photo: PhotoId, path: PathBuf, may_replace: bool) {
        let (store, logbook, rules) = (session.store().clone(), session.logbook.clone(), session.rules.clone());
        self.start(move || {
            let written = marked_copy::write_out(&store, &logbook, &rules, photo, &path, may_replace);
            Finished::Said(match written {
                Ok(()) => text!("The copy with marks is written: {path}", path = path.display()),
                Err(error) => error.to_string(),
            })
        });
    }

    /// Writes a table of supplies to a file.
    pub fn write_table(&self, session: &Session, table: SuppliesTable, path: PathBuf, may_replace: bool) {
        let (logbook, answers, rules) = (session.logbook.clone(), session.answers.clone(), session.rules.clone());
        self.start(move || {
            let csv = table.csv(&logbook, &answers, &rules);
            let (written, path) = (write_whole(csv.as_bytes(), &path, may_replace), path.display());
            Finished::Said(match written {
                Ok(()) => text!("The table is written: {path}", path = path),
                Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => {
                    text!("This file is there already: {path}", path = path)
                }
                Err(error) => text!("The table cannot be written ({reason}): {path}", reason = error, path = path),
            })
        });
    }

    /// Reads a file with a table of materials.
    pub fn read_table(&self, path: PathBuf) {
        self.start(move || table_text(&path).map_or_else(Finished::Said, Finished::Table));
    }

    /// Writes a page into a folder and has the desktop show it.
    pub fn print(&self, page: PrintedPage, folder: PathBuf) {
        let desktop = Arc::clone(&self.desktop);
        self.start(move || {
            let path = folder.join(format!("{}.html", page.name));
            let written = std::fs::create_dir_all(&folder).and_then(|()| std::fs::write(&path, &page.html));
            Finished::Said(match written {
                Ok(()) if desktop.show(&path) => {
                    text!("The page is shown in the browser: {path}", path = path.display())
                }
                Ok(()) => text!("The page lies at {path}: open it in a browser.", path = path.display()),
                Err(error) => {
                    text!("The page could not be written: {error} ({path})", error = error, path = path.display())
                }
            })
        });
    }

    /// Shows a file dialog.
    pub fn ask(&self, ask: Ask, parent: Option<&eframe::Frame>) {
        let chosen = self.desktop.choose(ask, parent);
        self.start(move || Finished::Picked(Picked { ask, paths: pollster::block_on(chosen) }));
    }
}

/// The largest file that is taken for a table, bytes: a line for each of ten thousand materials.
const MOST_TABLE_BYTES: u64 = 4 << 20;

/// What stands in a file that is meant to hold a table, or why it cannot be read.
fn table_text(path: &Path) -> Result<String, String> {
    let unread = |reason: &dyn std::fmt::Display| {
        text!("The table cannot be read ({reason}): {path}", reason = reason, path = path.display())
    };
    let size = std::fs::metadata(path).map_err(|error| unread(&error))?.len();
    if size > MOST_TABLE_BYTES {
        return Err(unread(&text!("it is larger than {most} MB", most = MOST_TABLE_BYTES >> 20)));
    }
    let bytes = std::fs::read(path).map_err(|error| unread(&error))?;
    String::from_utf8(bytes).map_err(|_| unread(&text!("it is no text in UTF-8: save it as such, or paste the table")))
}

fn sampled(path: &Path, mark: &PhotoMark) -> anyhow::Result<Sampled> {
    let picture = Picture::open(path)?;
    Ok(sample(&picture.decode()?, &Colours::of(&picture), &mark.points)?)
}
