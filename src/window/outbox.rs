//! What desks draw from and what they hand back: they change nothing themselves.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use chrono::NaiveDate;

use super::command::Command;
use super::desks::part_sheet::Spot;
use super::page::Page;
use super::part_index::PartIndex;
use super::pictures::Pictures;
use super::settings::{Hours, Settings, Touch};
use super::taking_in::TakingIn;
use super::viewer::Aim;
use crate::assess::{Answers, Reason};
use crate::paper::supplies::SuppliesTable;
use crate::photo::{TakenAt, TakenIn};
use crate::record::{Change, KitId, Logbook, PartId, Photo, PhotoId, PhotoMark, When, WorkId};
use crate::rules::Rules;
use crate::store::{Kept, Store};

/// Everything that a desk may look at while a logbook is open.
#[derive(Clone, Copy)]
pub struct View<'a> {
    /// For the paths of photographs and for drafts; desks write by the [`Outbox`] alone.
    pub store: &'a Arc<Store>,
    pub logbook: &'a Arc<Logbook>,
    pub answers: &'a Arc<Answers>,
    pub rules: &'a Arc<Rules>,
    pub index: &'a PartIndex,
    /// Pictures of photographs, as far as they are made.
    pub pictures: &'a Pictures,
    /// Photographs on their way in.
    pub taking_in: &'a TakingIn,
    pub today: NaiveDate,
    /// The logbook's folder.
    pub folder: &'a Path,
    pub settings: &'a Settings,
    /// How many changes were refused since the logbook was opened.
    pub refusals: u32,
}

/// What a desk hands back.
#[derive(Debug, Default)]
pub struct Outbox {
    pub commands: Vec<Command>,
    pub changes: Vec<Change>,
    pub notices: Vec<String>,
    /// Dialogs to be asked; the answer comes back to the desk that asked.
    pub asks: Vec<Ask>,
    /// What is half typed at a desk: kept as JSON, or forgotten when `None`.
    pub drafts: Vec<(&'static str, Option<String>)>,
    /// Files to be copied into the logbook for a page, which gets word by `Desks::kept`.
    pub files: Vec<FilesToKeep>,
    /// Spots to be shown on parts' sheets.
    pub spots: Vec<(PartId, Spot)>,
    /// Pages to be printed: they are written to a file and shown in the desktop's browser.
    pub pages: Vec<PrintedPage>,
    /// The piece of own work that is asked about first.
    pub touched: Option<WorkId>,
    /// The kit to be shown on the Supplies desk.
    pub kit: Option<KitId>,
    /// The hours there are for the bench, to be remembered.
    pub hours: Option<Hours>,
    /// Machines past their tests that a proposal may touch, to be remembered.
    pub touch: Option<Touch>,
    /// Marks whose colour is to be taken off their photograph before they are written.
    pub samples: Vec<ToSample>,
    /// What the photograph that is shown next is opened for.
    pub aim: Option<Aim>,
    /// Photographs whose marked copies are to be written, and where.
    pub copies: Vec<(PhotoId, PathBuf)>,
    /// Tables of supplies to be written to files that are not there yet.
    pub tables: Vec<(SuppliesTable, PathBuf)>,
    /// Files with a table of materials, to be read for the Supplies desk.
    pub tables_to_read: Vec<PathBuf>,
    /// Kept files that no record came to name.
    pub forget: Vec<Kept>,
}

/// A patch whose colour is to be taken off its photograph.
#[derive(Clone, Debug)]
pub struct ToSample {
    /// Of the change that writes it.
    pub name: String,
    pub photo: Photo,
    pub mark: PhotoMark,
}

/// A page to be printed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PrintedPage {
    /// What its file is called, without an ending.
    pub name: String,
    pub html: String,
}

/// Files to be copied into the logbook.
#[derive(Clone, Debug)]
pub struct FilesToKeep {
    pub page: Page,
    pub paths: Vec<PathBuf>,
    /// Photographs are looked at before they are taken; any other file is attached as it is.
    pub are_photographs: bool,
}

/// A file that the logbook now keeps; a record of it is still to be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptFile {
    /// What it was called.
    pub file_name: String,
    /// SHA-256 of its bytes, in hexadecimal.
    pub content: String,
    pub bytes: u64,
    /// For a photograph: how its file ends, and its size in pixels.
    pub photograph: Option<(String, [u32; 2])>,
    /// When a photograph was taken.
    pub taken: When,
}

impl KeptFile {
    /// Any other file than a photograph.
    pub fn attached(path: &Path, kept: Kept) -> Self {
        let Kept { content, bytes, .. } = kept;
        Self { file_name: file_name(path), content, bytes, photograph: None, taken: When::Unknown }
    }

    /// A photograph that was taken in.
    pub fn photograph(taken_in: TakenIn) -> Self {
        let TakenIn { path, kept: Kept { content, bytes, extension, .. }, size_px, shot } = taken_in;
        let photograph = Some((extension, size_px.into()));
        let taken = shot.taken.map_or(When::Unknown, TakenAt::day);
        Self { file_name: file_name(&path), content, bytes, photograph, taken }
    }
}

fn file_name(path: &Path) -> String {
    path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
}

/// A file dialog to be shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ask {
    /// An existing logbook's folder.
    Logbook,
    /// A folder to put a new logbook in.
    NewLogbook,
    /// Photographs for what a page shows.
    Photographs(Page),
    /// A folder to be watched for new photographs.
    WatchedFolder,
    /// Another file to attach.
    Attachment(Page),
    /// Where a photograph's marked copy is to be written.
    MarkedCopy(PhotoId),
    /// A file with a table of materials.
    TableToRead,
    /// Where a table of supplies is to be written.
    TableToWrite(SuppliesTable),
}

/// What a dialog gave; nothing when it was cancelled or the desktop has none.
#[derive(Clone, Debug)]
pub struct Picked {
    pub ask: Ask,
    pub paths: Vec<PathBuf>,
}

impl Outbox {
    /// Gives a command.
    pub fn give(&mut self, command: Command) {
        self.commands.push(command);
    }

    /// Goes to a page.
    pub fn go(&mut self, page: Page) {
        self.give(Command::Go(page));
    }

    /// Shows a photograph over the whole window, to go on from to the others of a list.
    pub fn look_at(&mut self, photo: PhotoId, among: impl IntoIterator<Item = PhotoId>) {
        self.give(Command::LookAt(photo, among.into_iter().collect()));
    }

    /// Shows a photograph for some purpose: one of its marks, or a mark to be set.
    pub fn look_for(&mut self, photo: PhotoId, among: impl IntoIterator<Item = PhotoId>, aim: Aim) {
        self.aim = Some(aim);
        self.look_at(photo, among);
    }

    /// Writes a mark once its colour is taken off its photograph.
    pub fn sample(&mut self, sample: ToSample) {
        self.samples.push(sample);
    }

    /// Writes a photograph's marked copy to a file that is not there yet.
    pub fn copy_out(&mut self, photo: PhotoId, path: PathBuf) {
        self.copies.push((photo, path));
    }

    /// Writes a table of supplies to a file that is not there yet.
    pub fn write_table(&mut self, table: SuppliesTable, path: PathBuf) {
        self.tables.push((table, path));
    }

    /// Reads a file with a table of materials, for the Supplies desk.
    pub fn read_table(&mut self, path: PathBuf) {
        self.tables_to_read.push(path);
    }

    /// Goes to a spot on a part's sheet, or to its head.
    pub fn show(&mut self, part: PartId, spot: Option<Spot>) {
        self.spots.extend(spot.map(|spot| (part, spot)));
        self.go(Page::Part(part));
    }

    /// Goes to a kit on the Supplies desk.
    pub fn show_kit(&mut self, kit: KitId) {
        self.kit = Some(kit);
        self.go(Page::Supplies);
    }

    /// Asks what own work touched, of this piece first.
    pub fn ask_touched(&mut self, work: WorkId) {
        self.touched = Some(work);
        self.go(Page::Touched);
    }

    /// Goes to where a reason is settled.
    pub fn settle(&mut self, part: PartId, reason: &Reason) {
        match reason {
            Reason::TouchUnstated { work, .. } => self.ask_touched(*work),
            reason => self.show(part, Spot::of(reason)),
        }
    }

    /// Hands a change over to be written.
    pub fn change(&mut self, change: Change) {
        if !change.is_empty() {
            self.changes.push(change);
        }
    }

    /// Says something in the notice bar.
    pub fn say(&mut self, notice: impl Into<String>) {
        self.notices.push(notice.into());
    }

    /// Keeps what is half typed at a desk, so that it survives the lights going out.
    pub fn save_draft(&mut self, desk: &'static str, json: String) {
        self.drafts.push((desk, Some(json)));
    }

    /// Forgets what was half typed at a desk.
    pub fn drop_draft(&mut self, desk: &'static str) {
        self.drafts.push((desk, None));
    }

    /// Copies files into the logbook for a page.
    pub fn keep_files(&mut self, page: Page, paths: Vec<PathBuf>, are_photographs: bool) {
        if !paths.is_empty() {
            self.files.push(FilesToKeep { page, paths, are_photographs });
        }
    }

    /// Has a page printed.
    pub fn print(&mut self, name: impl Into<String>, html: String) {
        self.pages.push(PrintedPage { name: name.into(), html });
    }

    /// Asks for files.
    pub fn ask(&mut self, ask: Ask) {
        self.asks.push(ask);
    }
}
