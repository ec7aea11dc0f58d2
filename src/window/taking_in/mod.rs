//! Photographs on their way into the logbook, wherever in the window they were dropped, pasted, picked or typed.
//!
//! Files are looked at and copied one batch after the other beside the window; the window puts them on record when a
//! batch is through. What was under way when the lights went out is offered again.

mod failed;
mod job;
mod over;
mod pasted;
mod put;
mod strip;
mod target;
mod ways;

use std::collections::VecDeque;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, TryRecvError, channel};
use std::thread::JoinHandle;

use chrono::NaiveDate;
use egui::Context;
use serde::{Deserialize, Serialize};

pub use self::job::{Came, Wanted, attached};
pub use self::over::over_ui;
pub use self::pasted::{Pasted, paths, take_pasted};
pub use self::put::{Recorded, put_photos, record};
pub use self::strip::Offered;
pub use self::target::Target;
pub use self::ways::{Ways, hint_ui};

use self::job::Progress;
use crate::photo::thumbnail::Cache;
use crate::photo::{Failure, TakenIn};
use crate::store::Store;
use crate::text;

/// The name under which the store keeps what is under way.
const DRAFT: &str = "taking in";

/// Batches under way, and what could not be taken in.
pub struct TakingIn {
    ctx: Context,
    cache: Option<Cache>,
    receives_drops: bool,
    running: Option<Running>,
    waiting: VecDeque<Wanted>,
    ending: Option<JoinHandle<()>>,
    /// What was under way when the program ended the last time.
    cut_off: Vec<Remembered>,
    failed: Vec<Failure>,
    /// Of how many files they are.
    tried: usize,
    shows_failed: bool,
}

/// The batch that is being taken in.
struct Running {
    remembered: Remembered,
    progress: Arc<Progress>,
    sender: Sender<News>,
    news: Receiver<News>,
    thread: JoinHandle<()>,
}

/// What a batch's thread tells, one after the other.
#[derive(Debug)]
pub enum News {
    /// The files are the logbook's; the window says where they go.
    Came(Came),
    /// The records were written, or were not.
    Recorded(Recorded),
}

/// What of a batch outlives the program: pasted pixels do not.
#[derive(Clone, Debug, Serialize, Deserialize)]
struct Remembered {
    target: Target,
    paths: Vec<PathBuf>,
}

impl Remembered {
    fn of(wanted: &Wanted) -> Self {
        Self { target: wanted.target.after_all(), paths: wanted.paths.clone() }
    }
}

impl TakingIn {
    /// Nothing under way; small copies are kept in `cache_folder` where there is one.
    pub fn new(ctx: Context, cache_folder: Option<PathBuf>, receives_drops: bool) -> Self {
        Self {
            ctx,
            cache: cache_folder.map(Cache::new),
            receives_drops,
            running: None,
            waiting: VecDeque::new(),
            ending: None,
            cut_off: Vec::new(),
            failed: Vec::new(),
            tried: 0,
            shows_failed: false,
        }
    }

    /// Whether files dropped on the window reach the program.
    pub fn receives_drops(&self) -> bool {
        self.receives_drops
    }

    /// Whether photographs for this target are being taken in.
    pub fn is_under_way(&self, target: Target) -> bool {
        self.running.as_ref().is_some_and(|running| running.remembered.target == target)
            || self.waiting.iter().any(|wanted| wanted.target == target)
    }

    /// Whether anything is being taken in.
    pub fn is_busy(&self) -> bool {
        self.running.is_some()
    }

    /// What could not be taken in, until it is put away.
    pub fn failed(&self) -> &[Failure] {
        &self.failed
    }

    /// Looks for what was under way in a logbook that was opened; what cannot be read any more is forgotten.
    pub fn opened(&mut self, store: &Store) {
        let draft = store.draft(DRAFT).and_then(|draft| serde_json::from_str::<Vec<Remembered>>(&draft).ok());
        self.cut_off = draft.unwrap_or_default();
    }

    /// Lets go of a logbook: what is under way ends after the file it is at.
    pub fn closed(&mut self) {
        self.waiting.clear();
        self.cut_off.clear();
        self.put_failed_away();
        if let Some(running) = self.running.take() {
            running.progress.stop();
            self.ending = Some(running.thread);
        }
    }

    /// The thread that still holds a logbook that was let go: to be waited for before that is opened again.
    pub fn ending(&mut self) -> Option<JoinHandle<()>> {
        self.ending.take()
    }

    /// Takes a batch in, once those before it are through.
    pub fn take_in(&mut self, wanted: Wanted, store: &Arc<Store>) {
        if wanted.paths.is_empty() && wanted.pasted.is_none() {
            return;
        }
        self.waiting.push_back(wanted);
        self.go_on(store);
    }

    fn go_on(&mut self, store: &Arc<Store>) {
        if self.running.is_none()
            && let Some(wanted) = self.waiting.pop_front()
        {
            let (sender, news) = channel();
            let (remembered, progress) = (Remembered::of(&wanted), Arc::new(Progress::default()));
            let (store, cache, ctx, shared) =
                (Arc::clone(store), self.cache.clone(), self.ctx.clone(), Arc::clone(&progress));
            let tells = sender.clone();
            let thread = std::thread::spawn(move || {
                let wake = || ctx.request_repaint();
                let came = wanted.work(&store, cache.as_ref(), &shared, wake);
                // The logbook may be closed by now; it is let go before anybody hears of it.
                drop(store);
                let _ = tells.send(News::Came(came));
                ctx.request_repaint();
            });
            self.running = Some(Running { remembered, progress, sender, news, thread });
        }
        self.remember(store);
    }

    /// Keeps what is under way, so that it survives the lights going out.
    fn remember(&self, store: &Store) {
        let running = self.running.iter().map(|running| running.remembered.clone());
        let under_way = running.chain(self.waiting.iter().map(Remembered::of)).chain(self.cut_off.iter().cloned());
        let under_way: Vec<Remembered> = under_way.filter(|remembered| !remembered.paths.is_empty()).collect();
        match serde_json::to_string(&under_way) {
            Ok(json) if !under_way.is_empty() => store.save_draft(DRAFT, &json),
            _ => store.drop_draft(DRAFT),
        }
    }

    /// Has photographs that came in written on record as a target's, which is told by [`News::Recorded`].
    pub fn record(&mut self, target: Target, taken_in: Vec<TakenIn>, today: NaiveDate, store: &Arc<Store>) {
        let Some(running) = &mut self.running else { return };
        let (store, ctx, sender) = (Arc::clone(store), self.ctx.clone(), running.sender.clone());
        running.thread = std::thread::spawn(move || {
            let recorded = record(target, &taken_in, today, &store);
            drop(store);
            let _ = sender.send(News::Recorded(recorded));
            ctx.request_repaint();
        });
    }

    /// What the batch's thread tells; the next one is begun by [`TakingIn::done`].
    pub fn take_news(&mut self) -> Option<News> {
        let running = self.running.as_ref()?;
        match running.news.try_recv() {
            Ok(news) => Some(news),
            Err(TryRecvError::Empty | TryRecvError::Disconnected) if !running.thread.is_finished() => None,
            // It may have told something and ended between the two looks.
            Err(_) if let Ok(news) = running.news.try_recv() => Some(news),
            Err(_) => {
                let Remembered { target, paths } = running.remembered.clone();
                let why = text!("Taking it in ended with a fault of the program");
                let failed: Vec<Failure> =
                    paths.into_iter().map(|path| Failure { path, why: why.to_owned() }).collect();
                let (taken_in, attached) = (Vec::new(), Vec::new());
                Some(News::Came(Came { target, taken_in, attached, failed, passed_over: 0, left: None }))
            }
        }
    }

    /// The batch that was through is on record or handed on: the next one.
    pub fn done(&mut self, store: &Arc<Store>) {
        self.running = None;
        self.go_on(store);
    }

    /// Tells what could not be taken in, of so many files.
    pub fn tell_failed(&mut self, failed: Vec<Failure>, tried: usize) {
        if !failed.is_empty() {
            self.tried += tried;
            self.failed.extend(failed);
        }
    }

    fn put_failed_away(&mut self) {
        self.failed.clear();
        self.tried = 0;
        self.shows_failed = false;
    }
}
