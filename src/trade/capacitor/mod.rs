//! Capacitors: what their marks say, what they may measure, how long they last, how they are woken up again.

pub mod codes;
mod lexer;
mod mark;
pub mod preferred;
mod values;

pub use mark::{Body, Form, Mark, Polarity, Unreadable, capacitance_words, read};
