//! The window, driven through its accessible tree.
#![allow(clippy::unwrap_used)]
