//! What can be drawn on a photograph, each with its word, its key and what it becomes.

use egui::Key;

use crate::record::MarkUse;
use crate::text;

/// What the hand holds over a photograph.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tool {
    /// Nothing: the picture is moved, marks are pressed.
    Hand,
    Pin,
    Outline,
    Surface,
    Damage,
    Length,
    Scale,
    Rectangle,
    Sample,
    Reference,
    Hidden,
}

impl Tool {
    /// All of them, in the order of their buttons.
    pub const ALL: [Self; 11] = [
        Self::Hand,
        Self::Pin,
        Self::Outline,
        Self::Surface,
        Self::Damage,
        Self::Scale,
        Self::Rectangle,
        Self::Length,
        Self::Sample,
        Self::Reference,
        Self::Hidden,
    ];

    /// What it draws; nothing for the bare hand.
    pub fn role(self) -> Option<MarkUse> {
        Some(match self {
            Self::Hand => return None,
            Self::Pin | Self::Outline => MarkUse::Place,
            Self::Surface => MarkUse::Surface,
            Self::Damage => MarkUse::Damage,
            Self::Length => MarkUse::Length,
            Self::Scale => MarkUse::Scale,
            Self::Rectangle => MarkUse::Rectangle,
            Self::Sample => MarkUse::Sample,
            Self::Reference => MarkUse::Reference,
            Self::Hidden => MarkUse::Hidden,
        })
    }

    /// The fewest and the most points that it draws.
    pub fn points(self) -> (usize, Option<usize>) {
        match self {
            Self::Pin => (1, Some(1)),
            Self::Outline => (3, None),
            tool => tool.role().map_or((0, Some(0)), MarkUse::points),
        }
    }

    /// Whether it can be drawn round something in one go.
    pub fn is_free(self) -> bool {
        matches!(self.points(), (3, None))
    }

    /// Its name in the finder.
    pub fn label(self) -> &'static str {
        match self {
            Self::Hand => text!("Photograph: put the pencil down"),
            Self::Pin => text!("Photograph: set a pin"),
            Self::Outline => text!("Photograph: outline something"),
            Self::Surface => text!("Photograph: outline a surface"),
            Self::Damage => text!("Photograph: outline damage"),
            Self::Length => text!("Photograph: measure a length"),
            Self::Scale => text!("Photograph: set a scale"),
            Self::Rectangle => text!("Photograph: mark a known rectangle"),
            Self::Sample => text!("Photograph: sample a colour"),
            Self::Reference => text!("Photograph: mark a neutral patch"),
            Self::Hidden => text!("Photograph: sample the hidden side"),
        }
    }

    /// Its word on its button.
    pub fn word(self) -> &'static str {
        match self {
            Self::Hand => text!("Bare hand"),
            Self::Pin => text!("Pin"),
            Self::Outline => text!("Outline"),
            Self::Surface => text!("Surface"),
            Self::Damage => text!("Damage"),
            Self::Length => text!("Length"),
            Self::Scale => text!("Scale"),
            Self::Rectangle => text!("Rectangle"),
            Self::Sample => text!("Colour"),
            Self::Reference => text!("Neutral"),
            Self::Hidden => text!("Hidden side"),
        }
    }

    /// What it is for.
    pub fn tooltip(self) -> &'static str {
        match self {
            Self::Hand => text!("Moves the picture and presses marks"),
            Self::Pin => text!("Shows where a finding, a capacitor, a marking or a piece of work is"),
            Self::Outline => text!("Goes round something: point after point, or in one go with the button held"),
            Self::Surface => text!("The surface within which damage is measured"),
            Self::Damage => text!("What is corroded, worn or burnt on a surface"),
            Self::Length => text!("Measures along points; press the last one twice"),
            Self::Scale => text!("Two points whose distance you know"),
            Self::Rectangle => text!("Four corners of a rectangle you know: corrects what is seen from aside"),
            Self::Sample => text!("A patch whose yellowness you want to know"),
            Self::Reference => text!("A patch that is white or grey: takes the lamp out of the colours"),
            Self::Hidden => text!("A patch that no light has reached: the colour as it was"),
        }
    }

    /// What the hand does next, `set` points being set already.
    pub fn next(self, set: usize) -> String {
        match (self, set) {
            (Self::Hand, _) => String::new(),
            (Self::Pin, _) => text!("Press where it is.").to_owned(),
            (Self::Scale, 0) => text!("Press one end of the known length.").to_owned(),
            (Self::Scale, _) => text!("Press its other end.").to_owned(),
            (Self::Rectangle, set) => text!("Press corner {number} of 4, going round.", number = set + 1),
            (Self::Length, 0) => text!("Press where the length begins.").to_owned(),
            (Self::Length, _) => text!("Press on along it; press the last point twice to end it.").to_owned(),
            (_, 0) => text!("Press the first corner, or draw round it with the button held.").to_owned(),
            (_, 1 | 2) => text!("Press the next corner.").to_owned(),
            _ => text!("Press the next corner; the first one or the last one twice closes it.").to_owned(),
        }
    }

    /// The key that takes it up.
    pub fn key(self) -> Key {
        match self {
            Self::Hand => Key::B,
            Self::Pin => Key::I,
            Self::Outline => Key::U,
            Self::Surface => Key::A,
            Self::Damage => Key::D,
            Self::Length => Key::L,
            Self::Scale => Key::S,
            Self::Rectangle => Key::Q,
            Self::Sample => Key::Y,
            Self::Reference => Key::N,
            Self::Hidden => Key::H,
        }
    }
}
