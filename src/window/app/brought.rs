//! What is brought into the window: files dropped, pasted, picked or typed, and where they go once they are taken in.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{ColorImage, Context};

use super::App;
use crate::store::Kept;
use crate::window::desks::part_sheet;
use crate::window::desktop::take_dropped;
use crate::window::outbox::{FilesToKeep, KeptFile};
use crate::window::page::Page;
use crate::window::taking_in::{Came, Pasted, Recorded, Target, Wanted, take_pasted};
use crate::window::watched::Watched;
use crate::{counted, text};

impl App {
    /// Takes in what was dropped or pasted since the last frame, for what is in view.
    pub(super) fn take_what_is_brought(&mut self, ctx: &Context) {
        let dropped = take_dropped(ctx);
        let pasted = if self.finder.is_open { None } else { take_pasted(ctx) };
        if dropped.is_empty() && pasted.is_none() {
            return;
        }
        if self.session.is_none() {
            self.notices
                .push(text!("Open a logbook first: photographs are taken into the one that is open.").to_owned());
            return;
        }
        self.bring(dropped, None);
        match pasted {
            Some(Pasted::Picture(picture)) => self.bring(Vec::new(), Some(picture)),
            Some(Pasted::Paths(paths)) => self.bring(paths, None),
            Some(Pasted::Other) => {
                let notice = text!("What was pasted is no picture, and no path of one.");
                self.notices.push(notice.to_owned());
            }
            None => {}
        }
    }

    fn bring(&mut self, paths: Vec<PathBuf>, pasted: Option<Arc<ColorImage>>) {
        let target = self.desks.target(self.page);
        let attaches_others = matches!(target, Target::Part(_) | Target::Work(..));
        self.take_in(Wanted { target, paths, pasted, attaches_others });
    }

    pub(super) fn take_in(&mut self, wanted: Wanted) {
        if let Some(session) = &self.session {
            self.taking_in.take_in(wanted, session.store());
        }
    }

    /// Takes in what a page asked for.
    pub(super) fn keep(&mut self, files: FilesToKeep) {
        let FilesToKeep { page, paths, are_photographs } = files;
        if are_photographs {
            let target = self.desks.target(page);
            self.take_in(Wanted { target, paths, pasted: None, attaches_others: false });
        } else if let Some(session) = &self.session {
            self.jobs.attach(session.store(), page, paths);
        }
    }

    /// Watches the folder of the settings.
    pub(super) fn watch(&mut self, ctx: &Context) {
        let folder = self.settings.watched.as_deref();
        self.watched = folder.map(|folder| Watched::new(folder, self.settings_folder.as_deref(), ctx.clone()));
    }

    /// Watches another folder from now on, or none.
    pub(super) fn watch_folder(&mut self, folder: Option<PathBuf>, ctx: &Context) {
        self.settings.watched = folder;
        self.watch(ctx);
        self.keep_settings();
    }

    /// Takes what has come into the watched folder.
    pub(super) fn take_watched(&mut self) {
        let Self { watched: Some(watched), session: Some(session), desks, notices, .. } = self else { return };
        notices.extend(watched.take_news(&session.logbook, |content| desks.holds(content)));
    }

    /// Has a batch that is through put where it belongs. What belongs nowhere any more is offered for sorting.
    pub(super) fn came(&mut self, came: Came) {
        let Came { target, taken_in, attached, failed, passed_over, left } = came;
        let today = self.today();
        let Some(session) = &self.session else { return };
        let store = Arc::clone(session.store());
        let tried = taken_in.len() + attached.len() + failed.len();
        if let Some(left) = left {
            let taken = taken_in.len() + attached.len();
            let notice = text!("Stopped: {taken} taken in, {left} left where they are.", taken = taken, left = left);
            self.notices.push(notice);
        }
        if passed_over > 0 {
            self.notices.push(counted!(
                "{count} file of the folders is no picture and was passed over.",
                "{count} files of the folders are no pictures and were passed over.",
                passed_over
            ));
        }
        if let Target::Part(part) | Target::Work(_, part) = target {
            self.attach(Page::Part(part), attached);
        }
        let is_gone = target.title(&store.logbook()).is_none();
        match target {
            Target::Intake => self.desks.intake.arrived(&taken_in, &failed, today),
            Target::Work(page, part) if self.desks.takes(page, Some(part), true) => {
                self.desks.kept(page, taken_in.into_iter().map(KeptFile::photograph).collect());
                self.taking_in.tell_failed(failed, tried);
            }
            Target::Machine(machine) if self.desks.takes(Page::Machine(machine), None, true) => {
                let files = taken_in.into_iter().map(KeptFile::photograph).collect();
                self.desks.kept(Page::Machine(machine), files);
                self.taking_in.tell_failed(failed, tried);
            }
            target if target == Target::Sorting || is_gone => {
                let already = self.desks.sorting.add(&taken_in, &store, today);
                self.taking_in.tell_failed(failed, tried);
                self.tell_already(already);
            }
            target => {
                self.taking_in.tell_failed(failed, tried);
                self.taking_in.record(target, taken_in, today, &store);
                return;
            }
        }
        self.taking_in.done(&store);
    }

    /// Tells how the records of a batch were written.
    pub(super) fn recorded(&mut self, recorded: Recorded) {
        let Recorded { already, failed } = recorded;
        let Some(session) = &self.session else { return };
        let store = Arc::clone(session.store());
        self.taking_in.tell_failed(failed, 0);
        self.tell_already(already);
        self.taking_in.done(&store);
    }

    fn tell_already(&mut self, already: usize) {
        if already > 0 {
            self.notices.push(counted!(
                "{count} photograph was there already: the same picture is kept once.",
                "{count} photographs were there already: the same picture is kept once.",
                already
            ));
        }
    }

    /// Hands files that were copied into the logbook to the form that takes them, or puts them on record as a part's.
    pub(super) fn attach(&mut self, page: Page, files: Vec<KeptFile>) {
        if self.desks.takes(page, None, false) {
            self.desks.kept(page, files);
            return;
        }
        let today = self.today();
        if let (Page::Part(part), Some(session), false) = (page, &mut self.session, files.is_empty())
            && let Some(file) = session.store().logbook().part(part)
        {
            session.write(part_sheet::attached(&file.part, today, &files));
        }
    }

    /// Lets go of kept files that no record came to name, unless a desk still keeps one for a record to come.
    pub(super) fn forget(&mut self, kept: Vec<Kept>) {
        let Some(session) = &self.session else { return };
        let mut kept = kept;
        kept.retain(|kept| !self.desks.holds(&kept.content));
        // A picture that is coming in just now may be the same one.
        if kept.is_empty() || self.taking_in.is_busy() {
            return;
        }
        let store = Arc::clone(session.store());
        std::thread::spawn(move || store.forget_photos(&kept));
    }
}
