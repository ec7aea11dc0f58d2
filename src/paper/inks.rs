//! The colours of `resources/theme` by their use, as red, green, blue and opacity.

use std::collections::HashMap;

use serde::Deserialize;

use crate::assess::tie::Stand;
use crate::record::Severity;

const LOG_PAPER: &str = include_str!("../../resources/theme/log_paper.toml");
const BENCH_MAT: &str = include_str!("../../resources/theme/bench_mat.toml");
const USE: &str = include_str!("../../resources/theme/use.toml");

/// Red, green, blue, opacity.
pub type Ink = [u8; 4];

/// What each use is painted with on one ground.
pub struct Theme {
    paints: Paints,
    uses: HashMap<String, String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Paints {
    palette: HashMap<String, String>,
    meaning: HashMap<String, String>,
}

impl Theme {
    /// Light.
    pub fn log_paper() -> Self {
        Self::read(LOG_PAPER)
    }

    /// Dark.
    pub fn bench_mat() -> Self {
        Self::read(BENCH_MAT)
    }

    // The tables are part of the program; a fault in them is ours and shows in the first test that draws anything.
    fn read(paints: &str) -> Self {
        Self {
            paints: toml::from_str(paints).expect("the theme's paints are readable"),
            uses: toml::from_str(USE).expect("the theme's uses are readable"),
        }
    }

    /// The ink of a use, as `resources/theme/use.toml` calls it.
    pub fn ink(&self, name: &str) -> Ink {
        let look_up = |table: &HashMap<String, String>, name: &str| {
            table.get(name).cloned().unwrap_or_else(|| panic!("the theme names no {name}"))
        };
        let paint = look_up(&self.paints.palette, &look_up(&self.paints.meaning, &look_up(&self.uses, name)));
        read_ink(&paint).unwrap_or_else(|| panic!("{paint} is no colour: write #RRGGBB or #RRGGBBAA"))
    }
}

fn read_ink(hex: &str) -> Option<Ink> {
    let digits = hex.strip_prefix('#')?;
    let byte = |index: usize| u8::from_str_radix(digits.get(index..index + 2)?, 16).ok();
    let alpha = if digits.len() == 8 { byte(6)? } else { 255 };
    Some([byte(0)?, byte(2)?, byte(4)?, alpha])
}

/// What paper is drawn with: always the light ground, since it may be printed.
pub struct Inks {
    pub page: Ink,
    pub ink: Ink,
    pub ink_weak: Ink,
    pub hairline: Ink,
    severities: [Ink; 3],
    watched: Ink,
    settled: Ink,
    plain: Ink,
}

impl Inks {
    pub fn new() -> Self {
        let theme = Theme::log_paper();
        Self {
            page: theme.ink("page"),
            ink: theme.ink("ink"),
            ink_weak: theme.ink("ink_weak"),
            hairline: theme.ink("hairline"),
            severities: ["severity_slight", "severity_plain", "severity_grave"].map(|name| theme.ink(name)),
            watched: theme.ink("power_unknown"),
            settled: theme.ink("hold_ready"),
            plain: theme.ink("press"),
        }
    }

    /// The hue of a state, the same as in the window.
    pub fn of(&self, stand: Stand) -> Ink {
        let [slight, plain, grave] = self.severities;
        match stand {
            Stand::Asks(Severity::Slight) => slight,
            Stand::Asks(Severity::Plain) => plain,
            Stand::Asks(Severity::Grave) => grave,
            Stand::Watched => self.watched,
            Stand::Settled | Stand::Replaced => self.settled,
            Stand::Unseen => self.ink_weak,
            Stand::Plain => self.plain,
        }
    }
}
