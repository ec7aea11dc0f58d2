//! The window: app shell, commands, theme, widgets, one folder a desk.
//!
//! Desks draw from a borrowed [`View`] and hand back an [`Outbox`]; only [`App`] carries out what is in it.

mod app;
mod background;
pub mod command;
pub mod desks;
pub mod desktop;
mod finder;
mod focus;
pub mod forms;
mod frame;
mod jobs;
mod marked;
pub mod outbox;
pub mod page;
pub mod part_index;
pub mod photographs;
pub mod pictures;
pub mod rounds;
pub mod session;
pub mod settings;
pub mod taking_in;
pub mod theme;
pub mod viewer;
pub mod watched;
pub mod widgets;

use std::path::PathBuf;
use std::sync::Arc;

pub use app::{App, Clock, Start};
pub use finder::{Find, finds};
pub use outbox::{Outbox, View};

/// Opens the window on a logbook, or on the last one.
///
/// # Errors
/// When no window can be made: no display, no OpenGL.
pub fn run(logbook: Option<PathBuf>) -> anyhow::Result<()> {
    let settings_folder = settings::folder();
    let size = settings::Settings::load(settings_folder.as_deref()).window;
    let start = Start {
        logbook,
        settings_folder,
        cache_folder: settings::cache_folder(),
        sample_logbook: settings::sample_logbook(),
        desktop: Arc::new(desktop::NoDesktop),
        clock: || chrono::Local::now().date_naive(),
    };
    let options = options(size.into());
    let app = |creation: &eframe::CreationContext<'_>| -> Box<dyn eframe::App> {
        let desktop = Arc::new(desktop::ThisDesktop::under(creation));
        Box::new(App::new(&creation.egui_ctx, Start { desktop, ..start }))
    };
    eframe::run_native("benchwright", options, Box::new(|creation| Ok(app(creation))))
        .map_err(|error| anyhow::anyhow!("{}", crate::text!("No window could be opened: {error}", error = error)))
}

/// What the window asks of the window system; `size` in points.
pub fn options(size: egui::Vec2) -> eframe::NativeOptions {
    let viewport = egui::ViewportBuilder::default()
        .with_title("Benchwright")
        .with_icon(icon())
        .with_app_id("benchwright")
        .with_inner_size(size)
        .with_min_inner_size([640.0, 480.0]);
    eframe::NativeOptions { viewport, ..Default::default() }
}

/// The window's icon; none where the picture in the program cannot be read.
fn icon() -> egui::IconData {
    eframe::icon_data::from_png_bytes(include_bytes!("../../packaging/icons/benchwright.png")).unwrap_or_default()
}
