//! Marks on photographs as people see them: what each is tied to, and how it is drawn wherever its picture is.

mod paint;
mod tie;

pub use paint::{around, from_large_to_small, hits, nearest, paint};
pub use tie::{choices, position_name, tied, unplaced};

pub use crate::assess::tie::{Tie, Tied, mark_name};
