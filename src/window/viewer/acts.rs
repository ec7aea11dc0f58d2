//! What can be done while a photograph is looked at, each with its word, its keys and what it does.

use egui::{Key, KeyboardShortcut, Modifiers};

use super::Tool;
use crate::text;

/// What can be done in the viewer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act {
    Nearer,
    Farther,
    /// The whole picture.
    Fit,
    /// One pixel of the picture on one of the screen.
    PixelForPixel,
    TurnRight,
    TurnLeft,
    Next,
    Previous,
    /// A second picture beside this one, or none any more.
    Compare,
    /// The second picture beside this one, or over it.
    BesideOrOver,
    /// Points that are the same in both.
    MatchPoints,
    /// The list of the marks, beside the picture or put away.
    Marks,
    /// Takes a tool up.
    Take(Tool),
    Leave,
}

impl Act {
    /// Every act, in the order of the menu.
    pub const ALL: [Self; 24] = [
        Self::Nearer,
        Self::Farther,
        Self::Fit,
        Self::PixelForPixel,
        Self::TurnRight,
        Self::TurnLeft,
        Self::Next,
        Self::Previous,
        Self::Compare,
        Self::BesideOrOver,
        Self::MatchPoints,
        Self::Marks,
        Self::Take(Tool::ALL[0]),
        Self::Take(Tool::ALL[1]),
        Self::Take(Tool::ALL[2]),
        Self::Take(Tool::ALL[3]),
        Self::Take(Tool::ALL[4]),
        Self::Take(Tool::ALL[5]),
        Self::Take(Tool::ALL[6]),
        Self::Take(Tool::ALL[7]),
        Self::Take(Tool::ALL[8]),
        Self::Take(Tool::ALL[9]),
        Self::Take(Tool::ALL[10]),
        Self::Leave,
    ];

    /// Its name in menus and in the finder.
    pub fn label(self) -> &'static str {
        match self {
            Self::Nearer => text!("Photograph: nearer"),
            Self::Farther => text!("Photograph: farther"),
            Self::Fit => text!("Photograph: the whole picture"),
            Self::PixelForPixel => text!("Photograph: pixel for pixel"),
            Self::TurnRight => text!("Photograph: turn right"),
            Self::TurnLeft => text!("Photograph: turn left"),
            Self::Next => text!("Photograph: the next one"),
            Self::Previous => text!("Photograph: the one before"),
            Self::Compare => text!("Photograph: compare with another"),
            Self::BesideOrOver => text!("Photograph: beside or over the other"),
            Self::MatchPoints => text!("Photograph: match points"),
            Self::Marks => text!("Photograph: marks and what they measure"),
            Self::Take(tool) => tool.label(),
            Self::Leave => text!("Photograph: go back"),
        }
    }

    /// Its word on its button.
    pub fn word(self) -> &'static str {
        match self {
            Self::Nearer => text!("Nearer"),
            Self::Farther => text!("Farther"),
            Self::Fit => text!("Whole"),
            Self::PixelForPixel => text!("1 : 1"),
            Self::TurnRight => text!("Turn"),
            Self::TurnLeft => text!("Turn left"),
            Self::Next => text!("Next"),
            Self::Previous => text!("Previous"),
            Self::Compare => text!("Compare"),
            Self::BesideOrOver => text!("Beside or over"),
            Self::MatchPoints => text!("Match points"),
            Self::Marks => text!("Marks"),
            Self::Take(tool) => tool.word(),
            Self::Leave => text!("Back"),
        }
    }

    /// What it does, in a sentence.
    pub fn tooltip(self) -> &'static str {
        match self {
            Self::Nearer | Self::Farther => text!("Zooms at the middle; the wheel zooms where the pointer is"),
            Self::Fit => text!("Fits the picture into the window"),
            Self::PixelForPixel => text!("One pixel of the picture on one of the screen"),
            Self::TurnRight | Self::TurnLeft => text!("A quarter turn to look at; the kept file stays as it is"),
            Self::Next | Self::Previous => text!("The other photographs, in their order"),
            Self::Compare => text!("Before and after, or two surveys, near and far together"),
            Self::BesideOrOver => text!("Two beside each other, or one over the other under a slider"),
            Self::MatchPoints => text!("Two or three points that are the same in both lay one on the other"),
            Self::Marks => text!("What is marked on the picture, what it measures, and pencils to mark more"),
            Self::Take(tool) => tool.tooltip(),
            Self::Leave => text!("Back to where you were"),
        }
    }

    /// The keys that give it.
    pub fn shortcut(self) -> KeyboardShortcut {
        let key = |key| KeyboardShortcut::new(Modifiers::NONE, key);
        match self {
            Self::Nearer => key(Key::Plus),
            Self::Farther => key(Key::Minus),
            Self::Fit => key(Key::Num0),
            Self::PixelForPixel => key(Key::Num1),
            Self::TurnRight => key(Key::R),
            Self::TurnLeft => KeyboardShortcut::new(Modifiers::SHIFT, Key::R),
            Self::Next => key(Key::PageDown),
            Self::Previous => key(Key::PageUp),
            Self::Compare => key(Key::C),
            Self::BesideOrOver => key(Key::O),
            Self::MatchPoints => key(Key::P),
            Self::Marks => key(Key::M),
            Self::Take(tool) => key(tool.key()),
            Self::Leave => key(Key::Escape),
        }
    }

    /// The act whose keys were pressed, with those keys taken from the input. Not asked while text is typed.
    pub fn pressed(ctx: &egui::Context) -> Option<Self> {
        let pressed = |act: Self| {
            ctx.input_mut(|input| {
                input.consume_shortcut(&act.shortcut())
                    // Plus stands on the same key as equals on many keyboards.
                    || (act == Self::Nearer && input.consume_key(Modifiers::NONE, Key::Equals))
            })
        };
        // Turning left has one key more than turning right, and would be taken for it.
        std::iter::once(Self::TurnLeft).chain(Self::ALL).find(|act| pressed(*act))
    }
}
