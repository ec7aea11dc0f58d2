//! A hand at the window: a temporary logbook, a fixed date, and waiting for what comes from other threads.

use std::path::PathBuf;
use std::sync::Arc;
use std::time::{Duration, Instant};

use benchwright::record::{Change, Marking, Part, PartId, Photo, Surface};
use benchwright::store::sample::{self, Subject};
use benchwright::store::{Kept, Store};
use benchwright::window::command::Command;
use benchwright::window::desktop::{Desktop, NoDesktop};
use benchwright::window::{App, Start};
use chrono::NaiveDate;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tempfile::TempDir;

use crate::records::{self, moment};
pub use crate::records::{part, place};

/// A window with the folder that holds its logbook and its settings.
pub struct Hand {
    pub window: Harness<'static, App>,
    pub folder: TempDir,
}

/// Word from other threads may come while the window settles: a few frames more than one act takes.
const MOST_STEPS: u64 = 16;

pub fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 14).unwrap()
}

pub fn marking(part: PartId, text: &str) -> Marking {
    records::marking(part, moment("2026-03-01"), Surface::Sticker, text)
}

pub fn photo_of(part: &Part, kept: &Kept, [width_px, height_px]: [u32; 2]) -> Photo {
    Photo { part: Some(part.id), width_px, height_px, ..records::photo(&kept.content, &kept.extension) }
}

impl Hand {
    /// A window without a logbook, of a size in points.
    pub fn empty(size: [f32; 2]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        Self { window: open(&folder, None, size, Arc::new(NoDesktop)), folder }
    }

    /// A window on a logbook that holds what a change writes.
    pub fn on(change: Change, size: [f32; 2]) -> Self {
        Self::on_desktop(change, size, Arc::new(NoDesktop))
    }

    /// The same on a desktop that answers.
    pub fn on_desktop(change: Change, size: [f32; 2], desktop: Arc<dyn Desktop>) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let logbook = folder.path().join("trial.logbook");
        let store = Store::create(&logbook, records::workshop("Trial workshop")).unwrap();
        if !change.is_empty() {
            store.write(change).unwrap();
        }
        drop(store);
        Self::opened(folder, size, desktop)
    }

    /// A window on the sample workshop, whose photographs are all of one small size.
    pub fn on_sample(size: [f32; 2]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let draw = |_: &Subject| {
            let mut bytes = std::io::Cursor::new(Vec::new());
            image::RgbImage::new(8, 6).write_to(&mut bytes, image::ImageFormat::Png).unwrap();
            bytes.into_inner()
        };
        drop(sample::create(&folder.path().join("trial.logbook"), today(), draw).unwrap());
        Self::opened(folder, size, Arc::new(NoDesktop))
    }

    fn opened(folder: TempDir, size: [f32; 2], desktop: Arc<dyn Desktop>) -> Self {
        let logbook = folder.path().join("trial.logbook");
        let mut hand = Self { window: open(&folder, Some(logbook), size, desktop), folder };
        hand.wait("the logbook to open", |app| app.session().is_some());
        hand.window.run();
        hand
    }

    /// A window on the logbook of a folder.
    pub fn reopened(folder: TempDir, size: [f32; 2]) -> Self {
        Self::opened(folder, size, Arc::new(NoDesktop))
    }

    /// A new window on the same logbook, after the old one was dropped.
    pub fn again(self, size: [f32; 2]) -> Self {
        let Self { window, folder } = self;
        drop(window);
        Self::reopened(folder, size)
    }

    /// Gives a command as the menu would.
    pub fn give(&mut self, command: Command) {
        let ctx = self.window.ctx.clone();
        self.window.state_mut().carry_out(command, &ctx, None);
        self.window.run();
    }

    /// Presses a command's keys.
    pub fn keys(&mut self, command: &Command) {
        let keys = command.shortcut().unwrap();
        self.window.key_press_modifiers(keys.modifiers, keys.logical_key);
        self.window.run();
    }

    /// Draws until something holds; fails after ten seconds.
    pub fn wait(&mut self, what: &str, holds: impl Fn(&App) -> bool) {
        let until = Instant::now() + Duration::from_secs(10);
        loop {
            self.window.step();
            if holds(self.window.state()) {
                return;
            }
            assert!(Instant::now() < until, "waited in vain for {what}");
            std::thread::sleep(Duration::from_millis(5));
        }
    }

    /// Draws until the window shows something; fails after ten seconds.
    pub fn until(&mut self, what: &str, shows: impl Fn(&Self) -> bool) {
        let until = Instant::now() + Duration::from_secs(10);
        while !shows(self) {
            assert!(Instant::now() < until, "waited in vain for {what}: {:#?}", self.rows());
            std::thread::sleep(Duration::from_millis(5));
            self.window.step();
        }
        self.window.run();
    }

    /// Waits until everything is on the disk and on show.
    pub fn settle(&mut self) {
        self.wait("the disk", |app| app.session().is_none_or(|session| !session.is_saving()));
        self.window.run();
    }

    /// Presses a button.
    pub fn press(&mut self, name: &str) {
        self.window.get_by_role_and_label(Role::Button, name).click();
        self.window.run();
    }

    /// Types into a field.
    pub fn fill(&mut self, field: &str, text: &str) {
        self.window.get_by_role_and_label(Role::TextInput, field).focus();
        self.window.run();
        self.window.get_by_role_and_label(Role::TextInput, field).type_text(text);
        self.window.run();
    }

    /// The names of the rows on show, in their order.
    pub fn rows(&self) -> Vec<String> {
        self.window.query_all_by_role(Role::Row).map(|row| row.accesskit_node().label().unwrap_or_default()).collect()
    }
}

fn open(
    folder: &TempDir,
    logbook: Option<PathBuf>,
    size: [f32; 2],
    desktop: Arc<dyn Desktop>,
) -> Harness<'static, App> {
    let start = Start {
        logbook,
        settings_folder: Some(folder.path().join("settings")),
        cache_folder: None,
        sample_logbook: folder.path().join("sample.logbook"),
        desktop,
        clock: today,
    };
    let mut window = Harness::builder()
        .with_size(size)
        .with_max_steps(MOST_STEPS)
        .build_eframe(|creation| App::new(&creation.egui_ctx, start));
    window.run();
    window
}
