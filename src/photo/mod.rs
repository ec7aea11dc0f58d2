//! Pictures: what a file is, decoding, thumbnails, and drawing the sample workshop's photographs.

pub mod drawing;
pub mod read;
pub mod thumbnail;

pub use read::{Format, Picture, PictureError};
