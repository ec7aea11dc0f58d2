//! What leaves for people: a photograph with its marks and their legend.

mod inks;
mod lettering;
pub mod marked_copy;
mod sheet;

pub use inks::Theme;
//! What leaves for people: sheets of work to be printed.

mod html;
mod work_sheet;

pub use work_sheet::{Group, Piece, WorkSheet};
