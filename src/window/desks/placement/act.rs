//! What is done with the proposal on show, as commands.

use egui::{Key, KeyboardShortcut, Modifiers};

use crate::text;

/// What is done with the proposal on show.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlaceAct {
    /// Writes the moves as plans.
    Plan,
    /// Shows the best found so far.
    Stop,
    /// Takes all pins of this desk off, and uses again what was left out.
    PinsOff,
}

/// Which of them can be done.
#[derive(Clone, Copy, Debug, Default)]
pub struct Placing {
    pub can_plan: bool,
    pub is_running: bool,
    pub has_pins: bool,
}

impl Placing {
    /// Whether an act can be done now.
    pub fn allows(self, act: PlaceAct) -> bool {
        match act {
            PlaceAct::Plan => self.can_plan,
            PlaceAct::Stop => self.is_running,
            PlaceAct::PinsOff => self.has_pins,
        }
    }
}

impl PlaceAct {
    /// All of them, in the order of the menu.
    pub const ALL: [Self; 3] = [Self::Plan, Self::Stop, Self::PinsOff];

    /// Its name in menus and on buttons.
    pub fn label(self) -> &'static str {
        match self {
            Self::Plan => text!("Plan these moves"),
            Self::Stop => text!("Stop looking for a better proposal"),
            Self::PinsOff => text!("Take all pins off"),
        }
    }

    /// What it does, in a sentence.
    pub fn tooltip(self) -> &'static str {
        match self {
            Self::Plan => text!("Writes the proposal as plans, in one step; fitting stays an act at the bench"),
            Self::Stop => text!("Shows the best that was found so far, and how much better another may be"),
            Self::PinsOff => text!("What was pinned or left out to try something is free again"),
        }
    }

    /// The keys that give it.
    pub fn shortcut(self) -> KeyboardShortcut {
        match self {
            Self::Plan => KeyboardShortcut::new(Modifiers::COMMAND, Key::P),
            Self::Stop => KeyboardShortcut::new(Modifiers::COMMAND, Key::Period),
            Self::PinsOff => KeyboardShortcut::new(Modifiers::COMMAND | Modifiers::SHIFT, Key::P),
        }
    }
}
