//! Chance that can be repeated: everything invented comes out of one seed.

use chrono::{Days, NaiveDate};
use uuid::{Builder, Uuid};

use crate::record::When;

/// 1 January 2026, 00:00 UTC, in milliseconds: keys count on from here, so that they sort as they were made.
const FIRST_KEY_MS: u64 = 1_767_225_600_000;

/// A run of chance.
pub struct Chance {
    dice: fastrand::Rng,
    keys: u64,
}

impl Chance {
    pub fn new(seed: u64) -> Self {
        Self { dice: fastrand::Rng::with_seed(seed), keys: 0 }
    }

    /// The next key: a UUIDv7 that sorts after all before it.
    pub fn id(&mut self) -> Uuid {
        self.keys += 1;
        let random: [u8; 10] = std::array::from_fn(|_| self.dice.u8(..));
        Builder::from_unix_timestamp_millis(FIRST_KEY_MS + self.keys, &random).into_uuid()
    }

    /// Whether something happens that happens so many times in a hundred.
    pub fn percent(&mut self, often: u32) -> bool {
        self.dice.u32(0..100) < often
    }

    /// A number from `least` to `most`, both included.
    pub fn between(&mut self, least: u32, most: u32) -> u32 {
        self.dice.u32(least..=most.max(least))
    }

    /// One of a list that is not empty.
    pub fn of<'a, T>(&mut self, list: &'a [T]) -> &'a T {
        &list[self.dice.usize(..list.len())]
    }

    /// Brings a list out of order.
    pub fn shuffle<T>(&mut self, list: &mut [T]) {
        self.dice.shuffle(list);
    }

    /// A day between `least` and `most` days before `today`.
    pub fn day_before(&mut self, today: NaiveDate, least: u32, most: u32) -> When {
        let days = Days::new(u64::from(self.between(least, most)));
        today.checked_sub_days(days).map_or(When::Unknown, When::Day)
    }
}
