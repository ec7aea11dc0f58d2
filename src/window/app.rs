//! The window itself: what is open, which page is on show, and where commands and changes go.

mod brought;
mod tables;

use std::path::PathBuf;
use std::sync::Arc;

use chrono::NaiveDate;
use egui::Ui;

use super::command::{Appearance, Command, Situation};
use super::desks::Desks;
use super::desks::placement::Placing;
use super::desktop::Desktop;
use super::finder::Finder;
use super::focus::FollowedFocus;
use super::frame;
use super::jobs::{Finished, Jobs};
use super::outbox::{Ask, FilesToKeep, Outbox, Picked};
use super::page::Page;
use super::pictures::Pictures;
use super::session::Session;
use super::settings::Settings;
use super::taking_in::{News, Offered, TakingIn, over_ui};
use super::theme;
use super::watched::Watched;
use crate::record::PhotoId;
use crate::text;

/// Tells today's date. Below the window a date is always an argument; tests fix it here.
pub type Clock = fn() -> NaiveDate;

/// What a window starts with.
#[derive(Clone, Debug)]
pub struct Start {
    /// The logbook to open; the last one when `None`.
    pub logbook: Option<PathBuf>,
    /// Where settings are kept; nowhere when `None`.
    pub settings_folder: Option<PathBuf>,
    /// Where small copies of pictures are kept; nowhere when `None`.
    pub cache_folder: Option<PathBuf>,
    /// Where the sample workshop is, or is to be made.
    pub sample_logbook: PathBuf,
    /// Asked for files, and for light or dark where the window system does not tell.
    pub desktop: Arc<dyn Desktop>,
    pub clock: Clock,
}

/// The window.
pub struct App {
    clock: Clock,
    settings_folder: Option<PathBuf>,
    settings: Settings,
    sample_logbook: PathBuf,
    /// Where pages to be printed are written.
    pages_folder: PathBuf,
    jobs: Jobs,
    pictures: Pictures,
    taking_in: TakingIn,
    watched: Option<Watched>,
    session: Option<Session>,
    /// The logbook that is being opened.
    opening: Option<PathBuf>,
    page: Page,
    came_from: Vec<Page>,
    finder: Finder,
    focus: FollowedFocus,
    notices: Vec<String>,
    desks: Desks,
}

impl App {
    /// A window about to be shown; a logbook to open is read on a thread of its own.
    pub fn new(ctx: &egui::Context, start: Start) -> Self {
        theme::apply(ctx);
        let settings = Settings::load(start.settings_folder.as_deref());
        let receives_drops = start.desktop.receives_drops();
        let mut app = Self {
            clock: start.clock,
            taking_in: TakingIn::new(ctx.clone(), start.cache_folder.clone(), receives_drops),
            watched: None,
            settings_folder: start.settings_folder,
            sample_logbook: start.sample_logbook,
            pages_folder: start.cache_folder.clone().unwrap_or_else(std::env::temp_dir).join("pages"),
            jobs: Jobs::new(ctx.clone(), start.desktop),
            pictures: Pictures::new(ctx, start.cache_folder),
            session: None,
            opening: None,
            page: Page::Welcome,
            came_from: Vec::new(),
            finder: Finder::default(),
            focus: FollowedFocus::default(),
            notices: Vec::new(),
            desks: Desks::default(),
            settings,
        };
        app.appear(ctx);
        app.watch(ctx);
        app.jobs.ask_preference();
        let last = app.settings.recent.first().filter(|_| app.settings.open_last).cloned();
        if let Some(logbook) = start.logbook.or(last) {
            app.open(logbook);
        }
        app
    }

    /// The page on show.
    pub fn page(&self) -> Page {
        self.page
    }

    /// What the window remembers.
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// The open logbook.
    pub fn session(&self) -> Option<&Session> {
        self.session.as_ref()
    }

    /// The desks, with what they keep.
    pub fn desks(&self) -> &Desks {
        &self.desks
    }

    /// Photographs on their way in.
    pub fn taking_in(&self) -> &TakingIn {
        &self.taking_in
    }

    /// The pictures on show.
    pub fn pictures(&self) -> &Pictures {
        &self.pictures
    }

    fn today(&self) -> NaiveDate {
        (self.clock)()
    }

    fn situation(&self) -> Situation {
        Situation {
            has_logbook: self.session.is_some(),
            is_looking: self.page == Page::Photograph,
            can_undo: self.session.as_ref().is_some_and(|session| session.undo_name().is_some()),
            can_redo: self.session.as_ref().is_some_and(|session| session.redo_name().is_some()),
            can_go_back: !self.came_from.is_empty(),
            placing: if self.page == Page::Placement { self.desks.placement.placing() } else { Placing::default() },
            is_asking_touch: self.page == Page::Touched && self.desks.touched.is_asking(),
        }
    }

    fn appear(&self, ctx: &egui::Context) {
        ctx.set_theme(match self.settings.appearance {
            Appearance::Desktop => egui::ThemePreference::System,
            Appearance::LogPaper => egui::ThemePreference::Light,
            Appearance::BenchMat => egui::ThemePreference::Dark,
        });
        ctx.set_zoom_factor(self.settings.text_percent as f32 / 100.0);
    }

    fn open(&mut self, folder: PathBuf) {
        let (today, config) = (self.today(), self.settings_folder.clone());
        self.start_opening(folder.clone(), move || Session::open(&folder, config.as_deref(), today));
    }

    fn start_new(&mut self, folder: PathBuf) {
        let (today, config) = (self.today(), self.settings_folder.clone());
        self.start_opening(folder.clone(), move || Session::new_at(&folder, config.as_deref(), today));
    }

    fn start_opening(&mut self, path: PathBuf, open: impl FnOnce() -> anyhow::Result<Session> + Send + 'static) {
        self.opening = Some(path.clone());
        // A logbook has one writer: the one that is open is let go before another is asked for.
        self.session = None;
        self.taking_in.closed();
        let ending = self.taking_in.ending();
        self.jobs.start(move || {
            if let Some(ending) = ending {
                // It ends after the file it is at; what it was doing is in the logbook's draft.
                let _ = ending.join();
            }
            Finished::Opened(path, open().map(Box::new))
        });
    }

    /// Carries a command out.
    pub fn carry_out(&mut self, command: Command, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        match command {
            Command::Go(page) => self.go(page),
            Command::GoBack => {
                if let Some(page) = self.came_from.pop() {
                    self.page = page;
                }
            }
            Command::LookAt(photo, among) => {
                self.desks.viewer.look_at(photo, among);
                self.go(Page::Photograph);
            }
            Command::Look(act) => self.desks.viewer.act(act),
            Command::Place(act) => {
                self.desks.placement.act(act);
                ctx.request_repaint();
            }
            Command::Touch(act) => {
                self.desks.touched.act(act);
                ctx.request_repaint();
            }
            Command::Find => self.finder.open(),
            Command::SearchShelf => {
                self.go(Page::Shelf);
                self.desks.shelf.search_from_start();
            }
            Command::SearchPhotographs => {
                self.go(Page::Shelf);
                self.desks.shelf.search_photographs();
            }
            Command::OpenLogbook => self.jobs.ask(Ask::Logbook, frame),
            Command::NewLogbook => self.jobs.ask(Ask::NewLogbook, frame),
            Command::OpenAt(folder) => self.open(folder),
            Command::NewAt(folder) => self.start_new(folder),
            Command::OpenSample => {
                let (folder, today, config) = (self.sample_logbook.clone(), self.today(), self.settings_folder.clone());
                self.start_opening(folder.clone(), move || Session::sample(&folder, config.as_deref(), today));
            }
            Command::CloseLogbook => {
                self.session = None;
                self.taking_in.closed();
                self.desks = Desks::default();
                self.came_from.clear();
                self.page = Page::Welcome;
                self.settings.open_last = false;
                self.keep_settings();
            }
            Command::Paste => ctx.send_viewport_cmd(egui::ViewportCommand::RequestPaste),
            Command::Undo => self.with_session(Session::undo),
            Command::Redo => self.with_session(Session::redo),
            Command::LargerText | Command::SmallerText | Command::UsualText => {
                self.settings.text_percent = match command {
                    Command::UsualText => 100,
                    larger_or_smaller => self.settings.text_step(larger_or_smaller == Command::LargerText),
                };
                self.appear(ctx);
                self.keep_settings();
            }
            Command::Appear(appearance) => {
                self.settings.appearance = appearance;
                self.appear(ctx);
                self.keep_settings();
            }
            Command::Watch(folder) => self.watch_folder(folder, ctx),
            Command::Quit => ctx.send_viewport_cmd(egui::ViewportCommand::Close),
        }
    }

    fn with_session(&mut self, act: impl FnOnce(&mut Session)) {
        if let Some(session) = &mut self.session {
            act(session);
        }
    }

    fn keep_settings(&self) {
        self.settings.keep(self.settings_folder.as_deref());
    }

    fn go(&mut self, page: Page) {
        if page == self.page || (page.needs_logbook() && self.session.is_none()) {
            return;
        }
        self.came_from.push(self.page);
        if self.came_from.len() > 50 {
            self.came_from.remove(0);
        }
        self.page = page;
        if page == Page::Touched {
            self.desks.touched.opened();
        }
    }

    fn take_news(&mut self) {
        self.pictures.take_arrived();
        for finished in self.jobs.finished() {
            match finished {
                Finished::Picked(picked) => self.picked(picked),
                Finished::Opened(path, opened) => self.opened(path, opened),
                Finished::Desktop(prefers_dark) => {
                    let theme = if prefers_dark == Some(true) { egui::Theme::Dark } else { egui::Theme::Light };
                    self.jobs.ctx().options_mut(|options| options.fallback_theme = theme);
                }
                Finished::Attached { page, files, failed } => {
                    self.taking_in.tell_failed(failed, files.len());
                    self.attach(page, files);
                }
                Finished::Said(said) => self.notices.push(said),
                Finished::Table(table) => self.desks.supplies.take_table(table),
                Finished::Sampled(change, failed) => {
                    self.notices.extend(failed);
                    self.with_session(|session| session.write(change));
                }
            }
        }
        match self.taking_in.take_news() {
            Some(News::Came(came)) => self.came(came),
            Some(News::Recorded(recorded)) => self.recorded(recorded),
            None => {}
        }
        self.take_watched();
        let today = self.today();
        if let Some(session) = &mut self.session {
            self.notices.extend(session.take_news(today));
        }
    }

    fn opened(&mut self, path: PathBuf, opened: anyhow::Result<Box<Session>>) {
        if self.opening.take_if(|opening| *opening == path).is_none() {
            return;
        }
        match opened {
            Ok(mut session) => {
                self.settings.opened(&session.folder);
                self.keep_settings();
                self.desks = Desks::default();
                self.came_from.clear();
                self.page = if session.logbook.parts.is_empty() { Page::Intake } else { Page::Shelf };
                let ctx = self.jobs.ctx().clone();
                session.on_news(move || ctx.request_repaint());
                self.taking_in.opened(session.store());
                if !self.desks.sorting.opened(session.store()) {
                    let notice = text!("What was left to sort cannot be read by this version.");
                    self.notices.push(notice.to_owned());
                }
                self.session = Some(*session);
            }
            Err(error) => self.notices.push(format!("{error:#}")),
        }
    }

    fn picked(&mut self, picked: Picked) {
        let Picked { ask, paths } = picked;
        let first = paths.first().cloned();
        match (ask, first) {
            (_, None) => {}
            (Ask::Logbook, Some(folder)) => self.open(folder),
            (Ask::NewLogbook, Some(folder)) => self.start_new(folder),
            (Ask::WatchedFolder, Some(folder)) => {
                let ctx = self.jobs.ctx().clone();
                self.watch_folder(Some(folder), &ctx);
            }
            (Ask::Photographs(page), Some(_)) => self.keep(FilesToKeep { page, paths, are_photographs: true }),
            // The dialog has asked whether a file may be replaced.
            (Ask::MarkedCopy(photo), Some(path)) => self.copy_out(photo, path, true),
            (Ask::TableToRead, Some(path)) => self.jobs.read_table(path),
            (Ask::TableToWrite(table), Some(path)) => self.write_table(table, path, true),
            (Ask::Attachment(page), Some(_)) => self.keep(FilesToKeep { page, paths, are_photographs: false }),
        }
    }

    fn copy_out(&self, photo: PhotoId, path: PathBuf, may_replace: bool) {
        if let Some(session) = &self.session {
            self.jobs.copy_out(session, photo, path, may_replace);
        }
    }

    fn page_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        let today = self.today();
        let Self { session, desks, page, settings, opening, pictures, taking_in, .. } = self;
        match session.as_ref().map(|session| session.view(today, settings, pictures, taking_in)) {
            Some(view) if page.needs_logbook() => desks.ui(ui, *page, &view, outbox),
            view => desks.welcome.ui(ui, settings, opening.as_deref(), view.as_ref(), outbox),
        }
    }

    fn deliver(&mut self, outbox: Outbox, ctx: &egui::Context, frame: Option<&eframe::Frame>) {
        let Outbox {
            commands,
            changes,
            notices,
            asks,
            drafts,
            files,
            spots,
            pages,
            hours,
            touch,
            samples,
            aim,
            copies,
            kit,
            touched,
            tables,
            tables_to_read,
            forget,
        } = outbox;
        for page in pages {
            self.jobs.print(page, self.pages_folder.clone());
        }
        if let Some(hours) = hours {
            self.settings.hours = hours;
            self.keep_settings();
        }
        if let Some(touch) = touch {
            self.settings.touch = touch;
            self.keep_settings();
        }
        for (part, spot) in spots {
            self.desks.part_sheet.show(part, spot);
        }
        if let Some(work) = touched {
            self.desks.touched.choose(work);
        }
        if let Some(kit) = kit {
            self.desks.supplies.show(kit);
        }
        for files in files {
            self.keep(files);
        }
        self.forget(forget);
        if let Some(session) = &self.session {
            for (desk, json) in drafts {
                match json {
                    Some(json) => session.store().save_draft(desk, &json),
                    None => session.store().drop_draft(desk),
                }
            }
        }
        for wanted in samples {
            if let Some(session) = &self.session {
                self.jobs.sample(session.store(), wanted);
            }
        }
        for (photo, path) in copies {
            self.copy_out(photo, path, false);
        }
        for (table, path) in tables {
            self.write_table(table, path, false);
        }
        for path in tables_to_read {
            self.jobs.read_table(path);
        }
        for change in changes {
            self.with_session(|session| session.write(change));
        }
        self.notices.extend(notices);
        for ask in asks {
            self.jobs.ask(ask, frame);
        }
        for command in commands {
            self.carry_out(command, ctx, frame);
        }
        if let Some(aim) = aim {
            self.desks.viewer.aim(aim);
        }
    }

    /// Draws the window; `frame` is there unless a test draws it.
    pub fn window_ui(&mut self, ui: &mut Ui, frame: Option<&eframe::Frame>) {
        let ctx = ui.ctx().clone();
        self.take_news();
        self.focus.show(&ctx);
        let situation = self.situation();
        let mut outbox = Outbox::default();
        self.take_what_is_brought(&ctx);
        if let Some(command) = Command::pressed(&ctx, situation).filter(|_| !self.finder.is_open) {
            outbox.give(command);
        }
        let today = self.today();
        {
            let Self { session, settings, finder, page, notices, pictures, taking_in, watched, desks, .. } = &mut *self;
            // A photograph has the whole window.
            if !situation.is_looking {
                frame::status_ui(ui, session.as_ref(), situation, &mut outbox);
                frame::rail_ui(ui, *page, situation, &mut outbox);
            }
            if let Some(session) = session.as_ref() {
                let to_sort = desks.sorting.count(&session.logbook, session.refusals());
                let offered = Offered { to_sort, watched: watched.as_mut() };
                taking_in.strip_ui(ui, session.store(), *page, offered, &mut outbox);
            }
            taking_in.failed_ui(&ctx);
            over_ui(&ctx, session.as_ref().map(|session| &*session.logbook), || desks.target(*page));
            frame::notices_ui(ui, notices);
            let view = session.as_ref().map(|session| session.view(today, settings, pictures, taking_in));
            if let Some(command) = finder.ui(&ctx, situation, view.as_ref()) {
                outbox.give(command);
            }
        }
        egui::CentralPanel::no_frame().show(ui, |ui| {
            // Of its own name, so that its fields keep the keys when a panel around it comes or goes.
            ui.scope_builder(egui::UiBuilder::new().scope_id(egui::Id::unique("page")), |ui| {
                if situation.is_looking {
                    self.page_ui(ui, &mut outbox);
                } else {
                    frame::leaf_ui(ui, |ui| self.page_ui(ui, &mut outbox));
                }
            });
        });
        self.focus.note(&ctx);
        self.deliver(outbox, &ctx, frame);
        if situation.is_looking && self.page != Page::Photograph {
            self.pictures.stop_looking();
        }
    }
}

impl eframe::App for App {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        self.window_ui(ui, Some(frame));
        let size = ui.ctx().content_rect().size() * ui.ctx().zoom_factor();
        self.settings.window = size.into();
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        self.settings.keep_now(self.settings_folder.as_deref());
    }

    fn persist_egui_memory(&self) -> bool {
        false
    }
}
