//! Seeded chance for the fuzz loops: the same inputs in every run.

/// How many inputs each fuzz loop takes: 100,000, or what `BENCHWRIGHT_FUZZ` says.
pub fn rounds() -> u64 {
    std::env::var("BENCHWRIGHT_FUZZ").ok().and_then(|count| count.parse().ok()).unwrap_or(100_000)
}

/// SplitMix64 (Steele, Lea, Flood 2014).
pub struct Chance(pub u64);

impl Chance {
    pub fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    pub fn below(&mut self, bound: usize) -> usize {
        (self.next() % bound as u64) as usize
    }

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
