//! Published check values, each with its source beside it.
#![allow(clippy::unwrap_used)]

mod clocks;
mod colour;
mod connectors;
mod corrosion;
mod drives;
mod supply;
