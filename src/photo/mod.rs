//! Pictures: what a file is, decoding, small copies, laying two over each other, taking in and handing out, and drawing
//! the sample workshop's photographs.

pub mod align;
pub mod drawing;
mod gather;
mod groups;
pub mod handed_out;
mod heic;
mod jpeg;
pub mod measure;
mod profile;
pub mod read;
mod shot;
mod take_in;
pub mod thumbnail;
pub mod tiles;

pub use gather::{Gathered, gather, is_picture};
pub use groups::groups;
pub use profile::Colours;
pub use read::{Format, PICTURE_ENDINGS, Picture, PictureError};
pub use shot::{Shot, TakenAt};
pub use take_in::{Batch, Failure, TakenIn, take_in, take_in_bytes};
