//! What the trade knows: pure functions on plain values, each with its source.

pub mod capacitor;
pub mod cell;
pub mod clock;
pub mod colour;
pub mod core_voltage;
pub mod corrosion;
pub mod date_code;
pub mod drive;
pub mod setting;
pub mod source;
pub mod span;
pub mod supply;

pub use source::{Source, Sureness};
pub use span::Span;
