//! A window that is drawn into memory, for benches: what a frame costs without the graphics card.
#![allow(clippy::unwrap_used, dead_code)] // each bench takes what it needs

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant};

use benchwright::window::desktop::NoDesktop;
use benchwright::window::{App, Start};
use chrono::NaiveDate;
use egui::accesskit::{Node, NodeId, Role, TreeUpdate};
use egui::{Event, Modifiers, MouseWheelUnit, Pos2, RawInput, Rect, TouchPhase, vec2};

pub fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 14).unwrap()
}

/// A window that is drawn into memory.
pub struct Bench {
    pub ctx: egui::Context,
    pub app: App,
    scale: f32,
    time: f64,
    /// What the last frame told a screen reader.
    told: Option<TreeUpdate>,
}

impl Bench {
    pub fn open(logbook: &Path, scale: f32, cache_folder: Option<PathBuf>) -> Self {
        let ctx = egui::Context::default();
        ctx.enable_accesskit();
        let start = Start {
            logbook: Some(logbook.to_path_buf()),
            settings_folder: None,
            cache_folder,
            sample_logbook: logbook.with_extension("sample"),
            desktop: Arc::new(NoDesktop),
            clock: today,
        };
        let mut bench = Self { app: App::new(&ctx, start), ctx, scale, time: 0.0, told: None };
        let began = Instant::now();
        while bench.app.session().is_none() {
            bench.frame(Vec::new());
            std::thread::sleep(Duration::from_millis(1));
        }
        bench.frame(Vec::new());
        println!("  opened and filled in {:.0} ms", began.elapsed().as_secs_f64() * 1e3);
        bench
    }

    pub fn frame(&mut self, events: Vec<Event>) -> Duration {
        self.time += 1.0 / 60.0;
        let mut input = RawInput {
            screen_rect: Some(Rect::from_min_size(Pos2::ZERO, vec2(1280.0, 800.0))),
            time: Some(self.time),
            focused: true,
            events,
            ..RawInput::default()
        };
        input.viewports.entry(egui::ViewportId::ROOT).or_default().native_pixels_per_point = Some(self.scale);
        let began = Instant::now();
        let output = self.ctx.run_ui(input, |ui| self.app.window_ui(ui, None));
        let shapes = self.ctx.tessellate(output.shapes, output.pixels_per_point);
        let took = began.elapsed();
        self.told = output.platform_output.accesskit_update;
        assert!(!shapes.is_empty() && self.told.is_some());
        took
    }

    /// The first name on show that begins so.
    pub fn named(&self, begins: &str) -> Option<&str> {
        let mut names = self.told.iter().flat_map(|told| &told.nodes).filter_map(|(_, node)| node.label());
        names.find(|name| name.starts_with(begins))
    }

    /// Presses what is called so.
    pub fn click(&mut self, name: &str) {
        let nodes = || self.told.iter().flat_map(|told| &told.nodes);
        // A field is called what the words beside it say.
        let words = |id: &NodeId| nodes().any(|(of, node)| of == id && node.value() == Some(name));
        let is_called = |node: &Node| node.label() == Some(name) || node.labelled_by().iter().any(words);
        let found = nodes().find(|(_, node)| is_called(node) && node.bounds().is_some());
        let bounds = found.and_then(|(_, node)| node.bounds()).unwrap_or_else(|| panic!("“{name}” is not on show"));
        self.click_at(bounds);
    }

    /// Presses the first of a role.
    pub fn click_role(&mut self, role: Role) {
        let nodes = self.told.iter().flat_map(|told| &told.nodes);
        let bounds = nodes.filter(|(_, node)| node.role() == role).find_map(|(_, node)| node.bounds());
        self.click_at(bounds.unwrap_or_else(|| panic!("no {role:?} is on show")));
    }

    fn click_at(&mut self, bounds: egui::accesskit::Rect) {
        let at = Pos2::new(bounds.x0.midpoint(bounds.x1) as f32, bounds.y0.midpoint(bounds.y1) as f32);
        let button = |pressed| Event::PointerButton {
            pos: at,
            button: egui::PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        };
        self.frame(vec![Event::PointerMoved(at)]);
        self.frame(vec![button(true)]);
        self.frame(vec![button(false)]);
        self.frame(Vec::new());
    }

    /// Draws until something is told; how long that took.
    pub fn until(&mut self, mut is_told: impl FnMut(&Self) -> bool) -> Duration {
        let began = Instant::now();
        while !is_told(self) {
            assert!(began.elapsed() < Duration::from_mins(1), "waited in vain");
            self.frame(Vec::new());
        }
        began.elapsed()
    }

    pub fn press(&mut self, keys: egui::KeyboardShortcut) {
        let key = |pressed| Event::Key {
            key: keys.logical_key,
            physical_key: None,
            pressed,
            repeat: false,
            modifiers: keys.modifiers,
        };
        self.frame(vec![key(true)]);
        self.frame(vec![key(false)]);
    }
}

/// Says what frames took.
pub fn report(what: &str, took: &mut [Duration]) {
    took.sort_unstable();
    let at = |share: f64| took[((took.len() - 1) as f64 * share) as usize].as_secs_f64() * 1e3;
    println!("  {what}: median {:.2} ms, 99th percentile {:.2} ms, longest {:.2} ms", at(0.5), at(0.99), at(1.0));
}

/// A turn of the wheel over the middle.
pub fn scroll(_: usize) -> Vec<Event> {
    vec![
        Event::PointerMoved(Pos2::new(700.0, 500.0)),
        Event::MouseWheel {
            unit: MouseWheelUnit::Point,
            delta: vec2(0.0, -180.0),
            phase: TouchPhase::Move,
            source: egui::MouseWheelSource::Wheel,
            modifiers: Modifiers::NONE,
        },
    ]
}
