//! The open logbook: what others hold of it, and the orders they can give.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Sender, channel, sync_channel};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread::JoinHandle;

use rusqlite::Connection;
use uuid::Uuid;

use super::consistency;
use super::error::StoreError;
use super::files::{self, FileSource, Kept};
use super::history::{self, Act, Stacks};
use super::lock::WriterLock;
use super::unknown::UnknownNames;
use super::write::Fault;
use super::writer::{Order, Reply, Writer};
use super::{connect, exchange, load, schema, write};
use crate::assess::missing_findings::{self, MissingFindings};
use crate::record::{Attachment, Change, Id, Logbook, Photo, Step, Workshop};
use crate::rules::Rules;
use crate::{counted, text};

/// What the store tells about orders that nobody waited for.
#[derive(Debug)]
pub enum Event {
    /// A revision was written and published, by whichever way.
    Published { logbook: Arc<Logbook>, name: String },
    /// Something was not written, and why.
    Refused { name: String, error: StoreError },
}

/// So many events are kept when nobody takes them; each holds a revision in memory.
const UNTAKEN: usize = 100;

type Hook = Box<dyn Fn() + Send>;

/// What the writer and those who read share.
pub struct Shared {
    current: Mutex<Arc<Logbook>>,
    events: Mutex<Vec<Event>>,
    hook: Mutex<Option<Hook>>,
    /// Names of what can be undone and redone next.
    names: Mutex<(Option<String>, Option<String>)>,
    drafts: Mutex<BTreeMap<String, String>>,
    /// The tables in force; `None` for the shipped ones alone.
    rules: Mutex<Option<Arc<Rules>>>,
    /// Desks whose draft is not on disk yet.
    unsaved: Mutex<BTreeSet<String>>,
}

/// A lock whose holder panicked still holds whole values: each is replaced in one step.
fn hold<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Shared {
    fn new(logbook: Logbook) -> Self {
        Self {
            current: Mutex::new(Arc::new(logbook)),
            events: Mutex::default(),
            hook: Mutex::new(None),
            names: Mutex::default(),
            drafts: Mutex::default(),
            rules: Mutex::default(),
            unsaved: Mutex::default(),
        }
    }

    pub fn logbook(&self) -> Arc<Logbook> {
        Arc::clone(&hold(&self.current))
    }

    /// The tables that changes are held against.
    pub fn rules(&self) -> Arc<Rules> {
        hold(&self.rules).clone().unwrap_or_else(|| Arc::new(Rules::shipped()))
    }

    pub fn publish(&self, logbook: Arc<Logbook>, stacks: &Stacks, name: String) {
        *hold(&self.current) = Arc::clone(&logbook);
        self.note_names(stacks);
        self.tell(Event::Published { logbook, name });
    }

    fn note_names(&self, stacks: &Stacks) {
        let last = |stack: &[(u64, String)]| stack.last().map(|(_, name)| name.clone());
        *hold(&self.names) = (last(&stacks.undo), last(&stacks.redo));
    }

    pub fn tell(&self, event: Event) {
        let mut events = hold(&self.events);
        if events.len() >= UNTAKEN {
            events.remove(0);
        }
        events.push(event);
        drop(events);
        if let Some(hook) = hold(&self.hook).as_ref() {
            hook();
        }
    }

    /// A desk's draft as it is now, counted as saved from here on.
    pub fn draft_to_save(&self, desk: &str) -> Option<String> {
        hold(&self.unsaved).remove(desk);
        hold(&self.drafts).get(desk).cloned()
    }
}

/// An open logbook. Everything may be called from any thread; what waits for the disk says so.
pub struct Store {
    folder: PathBuf,
    shared: Arc<Shared>,
    /// `None` when the logbook is open for reading only.
    writer: Option<(Sender<Order>, JoinHandle<()>)>,
}

impl Store {
    /// Makes a new logbook in a folder that is not there yet (or is empty), and opens it. Waits for the disk.
    pub fn create(path: &Path, workshop: Workshop) -> Result<Self, StoreError> {
        let is_taken = match std::fs::read_dir(path) {
            Ok(mut entries) => entries.next().is_some(),
            Err(_) => path.symlink_metadata().is_ok(),
        };
        if is_taken {
            return Err(StoreError::Exists { path: path.to_owned() });
        }
        // Laid out beside its place and moved there when it is whole.
        let mut name = path.file_name().unwrap_or_default().to_owned();
        name.push(format!(".{}.new", std::process::id()));
        let unfinished = path.with_file_name(name);
        let made = lay_out(&unfinished, workshop).and_then(|()| {
            let _ = std::fs::remove_dir(path);
            std::fs::rename(&unfinished, path).map_err(|error| StoreError::file("Making the logbook", error, path))
        });
        if let Err(error) = made {
            let _ = std::fs::remove_dir_all(&unfinished);
            return Err(error);
        }
        Self::open(path)
    }

    /// Opens a logbook for reading and writing, bringing an older one up to date. Waits for the disk.
    pub fn open(path: &Path) -> Result<Self, StoreError> {
        let database = existing_database(path)?;
        let lock = WriterLock::take(path)?;
        let about = |error: StoreError| error.about(&database);
        let mut connection = connect::writing(&database, false).map_err(about)?;
        let version = schema::version(&connection, &database)?;
        schema::bring_up_to_date(&mut connection, version, &database)?;
        connect::keep_log(&connection).map_err(about)?;
        let shared = Arc::new(Shared::new(load::logbook(&database)?));
        let stacks = Stacks::of_history(&connection).map_err(about)?;
        shared.note_names(&stacks);
        *hold(&shared.drafts) = drafts(&connection).map_err(about)?;
        let sequence = connection
            .query_row("SELECT coalesce(max(sequence), 0) FROM change", [], |row| row.get(0))
            .map_err(|error| StoreError::from(error).about(&database))?;
        let links = consistency::links(&connection).map_err(about)?;
        let writer =
            Writer { connection, links, folder: path.to_owned(), shared: Arc::clone(&shared), stacks, sequence, lock };
        let (orders, taken) = channel();
        let thread = std::thread::Builder::new()
            .name("logbook writer".to_owned())
            .spawn(move || writer.run(&taken))
            .map_err(|error| StoreError::file("Starting the writer", error, path))?;
        Ok(Self { folder: path.to_owned(), shared, writer: Some((orders, thread)) })
    }

    /// Opens a logbook for reading, beside whoever writes it. Waits for the disk.
    pub fn open_reading(path: &Path) -> Result<Self, StoreError> {
        let database = existing_database(path)?;
        let shared = Arc::new(Shared::new(load::logbook(&database)?));
        Ok(Self { folder: path.to_owned(), shared, writer: None })
    }

    /// The logbook's folder.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Has changes held against these tables from now on, instead of the shipped ones.
    pub fn use_rules(&self, rules: Arc<Rules>) {
        *hold(&self.shared.rules) = Some(rules);
    }

    /// The last published revision.
    pub fn logbook(&self) -> Arc<Logbook> {
        self.shared.logbook()
    }

    fn order(&self, order: Order) -> Result<(), StoreError> {
        let (orders, _) = self.writer.as_ref().ok_or(StoreError::ReadingOnly)?;
        orders.send(order).map_err(|_| StoreError::Stopped)
    }

    fn wait(&self, order: impl FnOnce(Reply) -> Order) -> Result<Arc<Logbook>, Fault> {
        let (reply, answer) = sync_channel(1);
        self.order(order(Some(reply)))?;
        answer.recv().unwrap_or(Err(StoreError::Stopped.into()))
    }

    fn send_order(&self, name: &str, order: Order) {
        if let Err(error) = self.order(order) {
            self.shared.tell(Event::Refused { name: name.to_owned(), error });
        }
    }

    /// Writes a change and waits until it is on disk; gives back the revision after it.
    pub fn write(&self, change: Change) -> Result<Arc<Logbook>, StoreError> {
        self.wait(|reply| Order::Write(change, reply)).map_err(|fault| fault.error)
    }

    /// Writes what a new logbook begins with, which undo never takes back, and waits until it is on disk.
    pub(super) fn found(&self, change: Change) -> Result<Arc<Logbook>, StoreError> {
        self.wait(|reply| Order::Found(change, reply)).map_err(|fault| fault.error)
    }

    /// Has a change written; the outcome comes as an [`Event`].
    pub fn send(&self, change: Change) {
        self.send_order(&change.name.clone(), Order::Write(change, None));
    }

    /// Has the last change taken back; the outcome comes as an [`Event`].
    pub fn undo(&self) {
        self.send_order("", Order::Undo(None));
    }

    /// Has the change that was taken back last written again; the outcome comes as an [`Event`].
    pub fn redo(&self) {
        self.send_order("", Order::Redo(None));
    }

    /// Takes the last change back and waits until that is on disk.
    pub fn undo_now(&self) -> Result<Arc<Logbook>, StoreError> {
        self.wait(Order::Undo).map_err(|fault| fault.error)
    }

    /// Writes what was taken back last again and waits until it is on disk.
    pub fn redo_now(&self) -> Result<Arc<Logbook>, StoreError> {
        self.wait(Order::Redo).map_err(|fault| fault.error)
    }

    /// The name of the change that undo would take back.
    pub fn undo_name(&self) -> Option<String> {
        hold(&self.shared.names).0.clone()
    }

    /// The name of the change that redo would write again.
    pub fn redo_name(&self) -> Option<String> {
        hold(&self.shared.names).1.clone()
    }

    /// Events since they were last taken, oldest first.
    pub fn take_events(&self) -> Vec<Event> {
        std::mem::take(&mut *hold(&self.shared.events))
    }

    /// What is called, on the writer's thread, after every event.
    pub fn on_event(&self, hook: impl Fn() + Send + 'static) {
        *hold(&self.shared.hook) = Some(Box::new(hook));
    }

    /// Keeps what is half typed at a desk; it is on disk shortly after.
    pub fn save_draft(&self, desk: &str, json: &str) {
        hold(&self.shared.drafts).insert(desk.to_owned(), json.to_owned());
        self.draft_changed(desk);
    }

    /// What was half typed at a desk, perhaps before the lights went out.
    pub fn draft(&self, desk: &str) -> Option<String> {
        hold(&self.shared.drafts).get(desk).cloned()
    }

    /// Forgets a desk's draft.
    pub fn drop_draft(&self, desk: &str) {
        hold(&self.shared.drafts).remove(desk);
        self.draft_changed(desk);
    }

    fn draft_changed(&self, desk: &str) {
        // A save that is still waiting will take the newest text with it.
        if hold(&self.shared.unsaved).insert(desk.to_owned()) {
            self.send_order(desk, Order::Draft(desk.to_owned()));
        }
    }

    fn photos(&self) -> PathBuf {
        self.folder.join("photos")
    }

    fn files(&self) -> PathBuf {
        self.folder.join("files")
    }

    /// Copies a photograph into the logbook; a [`Photo`] is then made of what is given back. Waits for the disk.
    pub fn keep_photo(&self, source: FileSource<'_>, extension: &str) -> Result<Kept, StoreError> {
        self.writer.as_ref().ok_or(StoreError::ReadingOnly)?;
        files::keep(&self.photos(), source, extension)
    }

    /// Removes photographs again that were kept, but for which no record was written. Waits for the disk.
    pub fn forget_photos<'a>(&self, kept: impl IntoIterator<Item = &'a Kept>) {
        let logbook = self.logbook();
        let is_named = |kept: &Kept| logbook.photos().any(|photo| photo.content == kept.content);
        kept.into_iter().filter(|kept| !is_named(kept)).for_each(|kept| files::forget(&self.photos(), kept));
    }

    /// Copies any other file into the logbook, for an [`Attachment`]. Waits for the disk.
    pub fn keep_attachment(&self, source: FileSource<'_>) -> Result<Kept, StoreError> {
        self.writer.as_ref().ok_or(StoreError::ReadingOnly)?;
        files::keep(&self.files(), source, "")
    }

    /// Where a photograph's file lies, if it is there.
    pub fn photo_path(&self, photo: &Photo) -> PathBuf {
        files::path(&self.photos(), &photo.content, &photo.extension)
    }

    /// Where an attachment's file lies, if it is there.
    pub fn attachment_path(&self, attachment: &Attachment) -> PathBuf {
        files::path(&self.files(), &attachment.content, "")
    }

    /// A fresh key; keys made later sort later.
    pub fn new_id<T>() -> Id<T> {
        Id::from_uuid(Uuid::now_v7())
    }

    /// Everything but picture bytes as an exchange document. Waits for the disk.
    pub fn export(&self) -> Result<String, StoreError> {
        exchange::export(&connect::database(&self.folder))
    }

    /// Writes an exchange document's records into the logbook as one change, together with the findings that they call
    /// for: a record of the same key is replaced. The document's title page is taken over by a logbook that holds
    /// nothing else yet. Names that the tables in force do not hold are refused, or kept as they are. Waits for the disk.
    pub fn import(&self, document: &str, unknown: UnknownNames) -> Result<Arc<Logbook>, StoreError> {
        let logbook = self.logbook();
        let import = exchange::read(document, &logbook)?;
        if unknown == UnknownNames::Refuse {
            import.refuse_unknown_names(&logbook, &self.shared.rules(), || {
                let (_, records) = load::records(&connect::database(&self.folder))?;
                Ok(records.into_entries())
            })?;
        }
        self.wait(|reply| Order::WriteWithFindings(import.change.clone(), reply)).map_err(|fault| import.explain(fault))
    }

    /// Writes the findings that recorded facts call for and that are not in the logbook, as one change, and gives
    /// them back; none were missing where it is empty. Waits for the disk.
    pub fn add_missing_findings(&self) -> Result<Vec<MissingFindings>, StoreError> {
        let missing = missing_findings::of(&self.logbook(), &self.shared.rules(), &mut Uuid::now_v7);
        if missing.is_empty() {
            return Ok(missing);
        }
        let count = missing.iter().flat_map(MissingFindings::findings).count();
        let mut change = Change::new(counted!("Add {count} missing finding", "Add {count} missing findings", count));
        change.put_all(missing.iter().flat_map(|of| of.entries.iter().cloned()));
        self.write(change)?;
        Ok(missing)
    }

    /// Copies the database into the logbook's `backups` and gives back the copy's path. Waits for the disk.
    pub fn backup(&self) -> Result<PathBuf, StoreError> {
        let (reply, answer) = sync_channel(1);
        self.order(Order::Backup(reply))?;
        answer.recv().unwrap_or(Err(StoreError::Stopped))
    }

    /// Keeps the database from growing beyond so many pages, as a full disk would.
    #[doc(hidden)]
    pub fn limit_pages(&self, pages: u32) {
        self.send_order("", Order::LimitPages(pages));
    }
}

impl Drop for Store {
    /// Lets the writer finish what it was ordered to do.
    fn drop(&mut self) {
        if let Some((orders, thread)) = self.writer.take() {
            let _ = orders.send(Order::Stop);
            let _ = thread.join();
        }
    }
}

/// The database of a logbook's folder, when there is one.
pub fn existing_database(folder: &Path) -> Result<PathBuf, StoreError> {
    if folder.is_file() {
        return Err(StoreError::Foreign { path: folder.to_owned() });
    }
    let database = connect::database(folder);
    if database.is_file() { Ok(database) } else { Err(StoreError::Absent { path: folder.to_owned() }) }
}

fn lay_out(folder: &Path, workshop: Workshop) -> Result<(), StoreError> {
    for folder in [folder.to_owned(), folder.join("photos"), folder.join("files"), folder.join("backups")] {
        std::fs::create_dir(&folder).map_err(|error| StoreError::file("Making the logbook", error, &folder))?;
    }
    let database = connect::database(folder);
    let lay_out = || {
        let mut connection = connect::writing(&database, true)?;
        schema::lay_out(&mut connection)?;
        let transaction = connection.transaction()?;
        history::begin(&transaction, text!("New logbook"), Act::New, None, 0)?;
        write::apply(&transaction, &Step::Put(workshop.into())).map_err(|fault| fault.error)?;
        transaction.commit()?;
        Ok(())
    };
    lay_out().map_err(|error: StoreError| error.about(&database))
}

fn drafts(connection: &Connection) -> Result<BTreeMap<String, String>, StoreError> {
    let mut statement = connection.prepare("SELECT desk, body FROM draft")?;
    let drafts = statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
    Ok(drafts.collect::<Result<_, _>>()?)
}
