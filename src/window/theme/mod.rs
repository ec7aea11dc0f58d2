//! The window's colours, sizes and faces, taken from `resources/theme` and `resources/fonts`.
//!
//! Paints have meanings, meanings have uses; drawing code takes uses: `ui.tokens().hold_power`.

pub mod fonts;
pub mod marks;
mod style;
mod tokens;

use std::sync::Arc;

pub use style::{GRID, TextRole, apply};
pub use tokens::{Ground, Tokens};

/// Takes the tokens of the theme that is on.
pub trait Themed {
    /// The colours by their use.
    fn tokens(&self) -> Arc<Tokens>;
}

impl Themed for egui::Ui {
    fn tokens(&self) -> Arc<Tokens> {
        tokens::of(if self.visuals().dark_mode { Ground::BenchMat } else { Ground::LogPaper })
    }
}

impl Themed for egui::Context {
    fn tokens(&self) -> Arc<Tokens> {
        tokens::of(if self.theme() == egui::Theme::Dark { Ground::BenchMat } else { Ground::LogPaper })
    }
}
