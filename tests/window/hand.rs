//! A hand at the window: a temporary logbook, a fixed date, and waiting for what comes from other threads.

use std::path::PathBuf;
use std::time::{Duration, Instant};

use benchwright::record::{
    Change, Id, Kind, Marking, Moment, Originality, Part, Place, PlaceId, Surface, When, Workshop,
};
use benchwright::record::{FromFactory, PartId, Photo, PhotoView};
use benchwright::store::{Kept, Store};
use benchwright::window::{App, Start};
use chrono::NaiveDate;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tempfile::TempDir;

/// A window with the folder that holds its logbook and its settings.
pub struct Hand {
    pub window: Harness<'static, App>,
    pub folder: TempDir,
}

/// Word from other threads may come while the window settles: a few frames more than one act takes.
const MOST_STEPS: u64 = 16;

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 14).unwrap()
}

pub fn part(tag: &str, kind: Kind, name: &str) -> Part {
    Part {
        id: Store::new_id(),
        tag: tag.to_owned(),
        kind,
        design: None,
        name: name.to_owned(),
        serial: String::new(),
        originality: Originality::Unstated,
        lot: None,
        price_cents: None,
        acquired: When::Unknown,
        place: None,
        inside: None,
        quarantine: String::new(),
        quarantined: When::Unknown,
        note: String::new(),
    }
}

pub fn place(name: &str, within: Option<PlaceId>) -> Place {
    Place { id: Store::new_id(), within, name: name.to_owned(), note: String::new() }
}

pub fn marking(part: PartId, text: &str) -> Marking {
    Marking {
        id: Store::new_id(),
        part,
        read: Moment { on: "2026-03-01".parse().unwrap(), sequence: 0 },
        surface: Surface::Sticker,
        place_on_part: String::new(),
        text: text.to_owned(),
        from_factory: FromFactory::Unknown,
        scheme: String::new(),
        supersedes: None,
        note: String::new(),
    }
}

pub fn photo_of(part: &Part, kept: &Kept, [width_px, height_px]: [u32; 2]) -> Photo {
    Photo {
        id: Store::new_id(),
        part: Some(part.id),
        machine: None,
        lot: None,
        content: kept.content.clone(),
        extension: kept.extension.clone(),
        width_px,
        height_px,
        added: Moment::default(),
        taken: When::Unknown,
        view: PhotoView::Overview,
        caption: String::new(),
    }
}

impl Hand {
    /// A window without a logbook, of a size in points.
    pub fn empty(size: [f32; 2]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        Self { window: open(&folder, None, size), folder }
    }

    /// A window on a logbook that holds what a change writes.
    pub fn on(change: Change, size: [f32; 2]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let logbook = folder.path().join("trial.logbook");
        let workshop = Workshop {
            id: Id::from_uuid(uuid::Uuid::now_v7()),
            name: "Trial workshop".to_owned(),
            keeper: String::new(),
            currency: "EUR".to_owned(),
            note: String::new(),
        };
        let store = Store::create(&logbook, workshop).unwrap();
        if !change.is_empty() {
            store.write(change).unwrap();
        }
        drop(store);
        let mut hand = Self { window: open(&folder, Some(logbook), size), folder };
        hand.wait("the logbook to open", |app| app.session().is_some());
        hand.window.run();
        hand
    }

    /// A new window on the same logbook, after the old one was dropped.
    pub fn again(self, size: [f32; 2]) -> Self {
        let Self { window, folder } = self;
        drop(window);
        let logbook = folder.path().join("trial.logbook");
        let mut hand = Self { window: open(&folder, Some(logbook), size), folder };
        hand.wait("the logbook to open", |app| app.session().is_some());
        hand.window.run();
        hand
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

fn open(folder: &TempDir, logbook: Option<PathBuf>, size: [f32; 2]) -> Harness<'static, App> {
    let start = Start {
        logbook,
        settings_folder: Some(folder.path().join("settings")),
        cache_folder: None,
        sample_logbook: folder.path().join("sample.logbook"),
        asks_desktop: false,
        clock: today,
    };
    let mut window = Harness::builder()
        .with_size(size)
        .with_max_steps(MOST_STEPS)
        .build_eframe(|creation| App::new(&creation.egui_ctx, start));
    window.run();
    window
}
