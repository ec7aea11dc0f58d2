//! Colours by their use, resolved from palette and meaning.

use std::collections::HashMap;
use std::sync::{Arc, LazyLock};

use egui::Color32;
use serde::Deserialize;

const LOG_PAPER: &str = include_str!("../../../resources/theme/log_paper.toml");
const BENCH_MAT: &str = include_str!("../../../resources/theme/bench_mat.toml");
const USE: &str = include_str!("../../../resources/theme/use.toml");

/// What the window is drawn on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ground {
    /// Light.
    LogPaper,
    /// Dark.
    BenchMat,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Paints {
    palette: HashMap<String, String>,
    meaning: HashMap<String, String>,
}

macro_rules! tokens {
    ($($token:ident),+ $(,)?) => {
        /// Colours by their use; what each is for stands in `resources/theme/use.toml`.
        #[derive(Clone, Debug, PartialEq)]
        pub struct Tokens {
            $(pub $token: Color32,)+
        }

        impl Tokens {
            /// Every token with its name, for tests.
            pub fn all(&self) -> Vec<(&'static str, Color32)> {
                vec![$((stringify!($token), self.$token)),+]
            }

            fn resolve(mut colour: impl FnMut(&str) -> Color32) -> Self {
                Self { $($token: colour(stringify!($token)),)+ }
            }
        }
    };
}

tokens! {
    page, rail, field, hover, ink, ink_weak, hairline, press, press_wash, press_ink, selected, shadow,
    hold_storage, hold_power, hold_fitting, hold_ready, hold_looks,
    power_no, power_no_wash, power_unknown, power_unknown_wash, power_yes, power_yes_wash,
    severity_slight, severity_plain, severity_grave,
    gate_passed, gate_here, gate_ahead,
    span_window, span_part, span_outside,
    notice, notice_ink,
}

/// The tokens of a ground.
pub fn of(ground: Ground) -> Arc<Tokens> {
    static LIGHT: LazyLock<Arc<Tokens>> = LazyLock::new(|| Arc::new(read(LOG_PAPER)));
    static DARK: LazyLock<Arc<Tokens>> = LazyLock::new(|| Arc::new(read(BENCH_MAT)));
    match ground {
        Ground::LogPaper => LIGHT.clone(),
        Ground::BenchMat => DARK.clone(),
    }
}

impl Tokens {
    /// The tokens of a ground.
    pub fn of(ground: Ground) -> Arc<Self> {
        of(ground)
    }
}

// The tables are part of the program; a fault in them is ours and shows in the first test that draws anything.
fn read(paints: &str) -> Tokens {
    let Paints { palette, meaning } = toml::from_str(paints).expect("the theme's paints are readable");
    let uses: HashMap<String, String> = toml::from_str(USE).expect("the theme's uses are readable");
    let look_up = |table: &HashMap<String, String>, name: &str| {
        table.get(name).cloned().unwrap_or_else(|| panic!("the theme names no {name}"))
    };
    Tokens::resolve(|token| {
        let paint = look_up(&palette, &look_up(&meaning, &look_up(&uses, token)));
        colour(&paint).unwrap_or_else(|| panic!("{paint} is no colour: write #RRGGBB or #RRGGBBAA"))
    })
}

// The one place where a colour is made of numbers.
#[allow(clippy::disallowed_methods)]
fn colour(hex: &str) -> Option<Color32> {
    let digits = hex.strip_prefix('#')?;
    let byte = |index: usize| u8::from_str_radix(digits.get(index..index + 2)?, 16).ok();
    let alpha = if digits.len() == 8 { byte(6)? } else { 255 };
    Some(Color32::from_rgba_unmultiplied(byte(0)?, byte(2)?, byte(4)?, alpha))
}
