//! What the trade knows: pure functions on plain values, each with its source.

pub mod capacitor;
pub mod span;

pub use span::Span;
