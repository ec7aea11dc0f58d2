//! What leaves for people: a photograph with its marks and their legend, sheets of work to be printed, lists for shops
//! and spreadsheets.

pub mod file;
mod html;
mod inks;
mod lettering;
pub mod marked_copy;
mod sheet;
pub mod supplies;
mod work_sheet;

pub use inks::Theme;
pub use work_sheet::{Group, Piece, WorkSheet};
