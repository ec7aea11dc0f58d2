//! What leaves for people: a photograph with its marks and their legend.

mod inks;
mod lettering;
pub mod marked_copy;
mod sheet;

pub use inks::Theme;
