//! Published check values, each with its source beside it.
#![allow(clippy::unwrap_used)]

mod connectors;
