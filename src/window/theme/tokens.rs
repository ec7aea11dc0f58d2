//! Colours by their use, resolved from palette and meaning.

use std::sync::{Arc, LazyLock};

use egui::Color32;

use crate::paper::Theme;

/// What the window is drawn on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ground {
    /// Light.
    LogPaper,
    /// Dark.
    BenchMat,
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
    fit_well, fit_caveat, fit_unknown, fit_not,
    span_window, span_part, span_outside,
    notice, notice_ink,
}

/// The tokens of a ground.
pub fn of(ground: Ground) -> Arc<Tokens> {
    static LIGHT: LazyLock<Arc<Tokens>> = LazyLock::new(|| Arc::new(read(&Theme::log_paper())));
    static DARK: LazyLock<Arc<Tokens>> = LazyLock::new(|| Arc::new(read(&Theme::bench_mat())));
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

// The one place where a colour is made of numbers.
#[allow(clippy::disallowed_methods)]
fn read(theme: &Theme) -> Tokens {
    Tokens::resolve(|token| {
        let [red, green, blue, alpha] = theme.ink(token);
        Color32::from_rgba_unmultiplied(red, green, blue, alpha)
    })
}
