//! Answers without a window, as text and as JSON.
#![allow(clippy::unwrap_used)]
