//! The sample workshop.

mod subject;

pub use subject::{Shape, Subject};
