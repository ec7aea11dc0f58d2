//! The two answers about a piece of own work, as commands.

use egui::{Key, KeyboardShortcut, Modifiers};

use crate::record::{Touches, Word};
use crate::text;

/// An answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TouchAct {
    Electrical,
    Nothing,
}

impl TouchAct {
    /// Both, in the order of the menu.
    pub const ALL: [Self; 2] = [Self::Electrical, Self::Nothing];

    /// What it says.
    pub fn touches(self) -> Touches {
        match self {
            Self::Electrical => Touches::Electrical,
            Self::Nothing => Touches::NothingElectrical,
        }
    }

    /// Its name on its button.
    pub fn word(self) -> &'static str {
        self.touches().label()
    }

    /// Its name in menus.
    pub fn label(self) -> &'static str {
        match self {
            Self::Electrical => text!("This work touched something electrical"),
            Self::Nothing => text!("This work touched nothing electrical"),
        }
    }

    /// What follows, in a sentence.
    pub fn tooltip(self) -> &'static str {
        match self {
            Self::Electrical => text!("Tests that such work voids have to be run again"),
            Self::Nothing => text!("Tests that were passed before still count"),
        }
    }

    /// The key that gives it.
    pub fn shortcut(self) -> KeyboardShortcut {
        match self {
            Self::Electrical => KeyboardShortcut::new(Modifiers::NONE, Key::E),
            Self::Nothing => KeyboardShortcut::new(Modifiers::NONE, Key::N),
        }
    }
}
