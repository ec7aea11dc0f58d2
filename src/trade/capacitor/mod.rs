//! Capacitors: what their marks say, what they may measure, how long they last, how they are woken up again.

mod beside;
pub mod codes;
pub mod esr;
mod lexer;
pub mod life;
mod mark;
pub mod preferred;
pub mod reform;
pub mod series;
mod values;
pub mod verdict;

pub use mark::{Body, Form, Mark, Polarity, Unreadable, capacitance_words, read};
pub use verdict::verdict;
