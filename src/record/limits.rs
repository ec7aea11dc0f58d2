//! How long the texts of a record may be, in characters. What was written before there were bounds stays whole.

/// A tag, which is said and scanned.
pub const TAG_MOST: usize = 64;

/// A name or a title.
pub const NAME_MOST: usize = 200;

/// A note, and any other text.
pub const TEXT_MOST: usize = 100_000;
