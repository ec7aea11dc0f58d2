//! Pictures: what a file is, decoding, thumbnails, laying two over each other, and drawing the sample workshop's photographs.

pub mod align;
pub mod drawing;
pub mod read;
pub mod thumbnail;
pub mod tiles;

pub use read::{Format, PICTURE_ENDINGS, Picture, PictureError};
