//! The open logbook: the store behind it, the revision on show and the answers that follow from it.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use chrono::NaiveDate;

use super::outbox::View;
use super::part_index::PartIndex;
use super::pictures::Pictures;
use super::settings::Settings;
use super::taking_in::TakingIn;
use crate::assess::Answers;
use crate::photo::drawing;
use crate::record::{Change, Logbook, Workshop};
use crate::rules::Rules;
use crate::store::{Event, Store, own_tables, sample};
use crate::text;

/// The open logbook.
pub struct Session {
    store: Arc<Store>,
    pub folder: PathBuf,
    pub logbook: Arc<Logbook>,
    pub rules: Arc<Rules>,
    pub answers: Arc<Answers>,
    pub index: Arc<PartIndex>,
    /// Orders that the store has not answered yet.
    pending: usize,
    /// What went wrong while opening without keeping the logbook shut.
    troubles: Vec<String>,
    /// How many changes were refused.
    refusals: u32,
    /// The newest revision; on show once what follows from it is worked out.
    newest: Arc<Logbook>,
    /// What is being worked out beside the window.
    following: Option<Receiver<Following>>,
    /// Has the window drawn again.
    wake: Arc<dyn Fn() + Send + Sync>,
}

/// A revision with what follows from it.
struct Following {
    logbook: Arc<Logbook>,
    answers: Arc<Answers>,
    index: Arc<PartIndex>,
}

/// Up to this many parts, what follows from a change is worked out between two frames; above, beside the window.
const PARTS_AT_ONCE: usize = 1_000;

/// The trade's tables with the user's own over them; the shipped ones alone, and why, when those do not hold.
fn rules(config_folder: Option<&Path>) -> (Rules, Vec<String>) {
    let own = match config_folder.map_or(Ok(Vec::new()), own_tables) {
        Ok(own) => own,
        Err(error) => return (Rules::shipped(), vec![error.to_string()]),
    };
    if own.is_empty() {
        return (Rules::shipped(), Vec::new());
    }
    Rules::with_own(&own).map_or_else(
        |errors| {
            let notice = text!("Your own tables are left out until this is mended: {errors}", errors = errors);
            (Rules::shipped(), vec![notice])
        },
        |rules| {
            let notices = rules.remarks.clone();
            (rules, notices)
        },
    )
}

impl Session {
    /// Opens a logbook. Waits for the disk: not for the window's thread.
    ///
    /// `config_folder` is where the user's own tables of the trade lie.
    pub fn open(folder: &Path, config_folder: Option<&Path>, today: NaiveDate) -> anyhow::Result<Self> {
        Ok(Self::of(Store::open(folder)?, config_folder, today))
    }

    /// Starts a new logbook, named like its folder. Waits for the disk.
    pub fn new_at(folder: &Path, config_folder: Option<&Path>, today: NaiveDate) -> anyhow::Result<Self> {
        let name = folder.file_stem().unwrap_or(folder.as_os_str()).to_string_lossy().into_owned();
        let workshop = Workshop {
            id: Store::new_id(),
            name,
            keeper: String::new(),
            currency: "EUR".to_owned(),
            note: String::new(),
        };
        Ok(Self::of(Store::create(folder, workshop)?, config_folder, today))
    }

    /// Opens the sample workshop, drawing it first where it is not there yet. Waits for the disk.
    pub fn sample(folder: &Path, config_folder: Option<&Path>, today: NaiveDate) -> anyhow::Result<Self> {
        if folder.exists() {
            return Self::open(folder, config_folder, today);
        }
        if let Some(parent) = folder.parent() {
            std::fs::create_dir_all(parent)?;
        }
        Ok(Self::of(sample::create(folder, today, drawing::draw_jpeg)?, config_folder, today))
    }

    fn of(store: Store, config_folder: Option<&Path>, today: NaiveDate) -> Self {
        let (rules, troubles) = rules(config_folder);
        let rules = Arc::new(rules);
        store.use_rules(Arc::clone(&rules));
        let logbook = store.logbook();
        let answers = Arc::new(Answers::of(&logbook, &rules, today));
        let index = Arc::new(PartIndex::default().next(&logbook, &answers));
        let folder = store.folder().to_path_buf();
        Self {
            store: Arc::new(store),
            folder,
            newest: Arc::clone(&logbook),
            logbook,
            rules,
            answers,
            index,
            pending: 0,
            troubles,
            refusals: 0,
            following: None,
            wake: Arc::new(|| ()),
        }
    }

    /// Calls `wake` whenever the store has news, or what follows from them is worked out.
    pub fn on_news(&mut self, wake: impl Fn() + Send + Sync + 'static) {
        let wake: Arc<dyn Fn() + Send + Sync> = Arc::new(wake);
        self.wake = Arc::clone(&wake);
        self.store.on_event(move || wake());
    }

    /// What the logbook is called.
    pub fn name(&self) -> &str {
        &self.logbook.workshop.name
    }

    /// The store, for work on other threads.
    pub fn store(&self) -> &Arc<Store> {
        &self.store
    }

    /// What desks draw from.
    pub fn view<'a>(
        &'a self,
        today: NaiveDate,
        settings: &'a Settings,
        pictures: &'a Pictures,
        taking_in: &'a TakingIn,
    ) -> View<'a> {
        let Self { store, folder, logbook, rules, answers, index, refusals, .. } = self;
        View {
            store,
            logbook,
            answers,
            rules,
            index,
            pictures,
            taking_in,
            today,
            folder,
            settings,
            refusals: *refusals,
        }
    }

    /// Has a change written.
    pub fn write(&mut self, change: Change) {
        self.pending += 1;
        self.store.send(change);
    }

    /// Has the last change taken back.
    pub fn undo(&mut self) {
        self.pending += 1;
        self.store.undo();
    }

    /// Has the change made again that was taken back last.
    pub fn redo(&mut self) {
        self.pending += 1;
        self.store.redo();
    }

    /// How many changes were refused since the logbook was opened.
    pub fn refusals(&self) -> u32 {
        self.refusals
    }

    /// The name of what undo would take back.
    pub fn undo_name(&self) -> Option<String> {
        self.store.undo_name()
    }

    /// The name of what redo would make again.
    pub fn redo_name(&self) -> Option<String> {
        self.store.redo_name()
    }

    /// Whether something is on its way to the disk.
    pub fn is_saving(&self) -> bool {
        self.pending > 0
    }

    /// Takes what the store has published since the last call, works out what follows, and gives back what went wrong.
    pub fn take_news(&mut self, today: NaiveDate) -> Vec<String> {
        let mut notices = std::mem::take(&mut self.troubles);
        for event in self.store.take_events() {
            self.pending = self.pending.saturating_sub(1);
            self.refusals += u32::from(matches!(event, Event::Refused { .. }));
            match event {
                Event::Published { logbook, .. } => self.newest = logbook,
                Event::Refused { name, error } if name.is_empty() => notices.push(error.to_string()),
                Event::Refused { name, error } => {
                    notices.push(text!("“{name}” was not written. {error}", name = name, error = error));
                }
            }
        }
        self.follow(today);
        notices
    }

    /// Puts the newest revision on show with what follows from it.
    fn follow(&mut self, today: NaiveDate) {
        if let Some(following) = &self.following {
            match following.try_recv() {
                Ok(followed) => self.show(followed),
                Err(TryRecvError::Empty) => return,
                Err(TryRecvError::Disconnected) => self.following = None,
            }
        }
        if self.newest.revision == self.answers.revision && today == self.answers.today {
            return;
        }
        let (logbook, answers) = (Arc::clone(&self.newest), Arc::clone(&self.answers));
        let (rules, index) = (Arc::clone(&self.rules), Arc::clone(&self.index));
        let work = move || {
            let answers = Arc::new(answers.next(&logbook, &rules, today));
            let index = Arc::new(index.next(&logbook, &answers));
            Following { logbook, answers, index }
        };
        if self.newest.parts.len() <= PARTS_AT_ONCE {
            self.show(work());
            return;
        }
        let (send, receive) = channel();
        let wake = Arc::clone(&self.wake);
        self.following = Some(receive);
        std::thread::spawn(move || {
            // The window may be gone by now: then nobody wants it.
            let _ = send.send(work());
            wake();
        });
    }

    fn show(&mut self, followed: Following) {
        let Following { logbook, answers, index } = followed;
        (self.logbook, self.answers, self.index) = (logbook, answers, index);
        self.following = None;
    }
}
