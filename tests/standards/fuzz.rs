//! How many inputs the fuzz loops take, and texts for them.

use crate::chance::Chance;

/// How many inputs each fuzz loop takes: 100,000, or what `BENCHWRIGHT_FUZZ` says.
pub fn rounds() -> u64 {
    std::env::var("BENCHWRIGHT_FUZZ").ok().and_then(|count| count.parse().ok()).unwrap_or(100_000)
}

impl Chance {
    /// A text of up to `longest` signs: mostly from `alphabet`, now and then any sign at all.
    pub fn text(&mut self, alphabet: &[char], longest: usize) -> String {
        let length = self.below(longest + 1);
        (0..length)
            .map(|_| match self.below(40) {
                0 => char::from_u32(self.next() as u32 % 0x11_0000).unwrap_or('\u{fffd}'),
                _ => alphabet[self.below(alphabet.len())],
            })
            .collect()
    }
}
