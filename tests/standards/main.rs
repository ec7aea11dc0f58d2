//! Published check values, each with its source beside it.
#![allow(clippy::unwrap_used)]
// Published values stand as published.
#![allow(clippy::unreadable_literal)]

mod clocks;
mod colour;
mod connectors;
mod corrosion;
mod drives;
mod supply;
