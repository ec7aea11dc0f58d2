//! How long a scale is, and the sides of a known rectangle: asked once their points are set.

use egui::{Key, Ui};

use crate::record::{MarkUse, PhotoMark};
use crate::text;
use crate::window::desks::part_sheet::figure;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, field_ui, press_ui, small};

/// A mark that waits for its lengths.
pub struct Asks {
    mark: PhotoMark,
    length: String,
    breadth: String,
    is_fresh: bool,
}

/// What was answered.
pub enum Answered {
    Mark(Box<PhotoMark>),
    GivenUp,
}

impl Asks {
    /// Asks for the lengths of a mark whose points are set.
    pub fn new(mark: PhotoMark) -> Self {
        Self { mark, length: String::new(), breadth: String::new(), is_fresh: true }
    }

    /// The mark that waits.
    pub fn mark(&self) -> &PhotoMark {
        &self.mark
    }

    /// Draws the fields.
    pub fn ui(&mut self, ui: &mut Ui) -> Option<Answered> {
        let is_rectangle = self.mark.role == MarkUse::Rectangle;
        ui.label(body(if is_rectangle {
            text!("Its sides: the first is the one between corner 1 and 2.")
        } else {
            text!("How far are the two points apart?")
        }));
        let mut entered = false;
        ui.horizontal_wrapped(|ui| {
            let first = field_ui(ui, text!("Length, mm"), &mut self.length, Some(28.0 * GRID));
            if std::mem::take(&mut self.is_fresh) {
                first.request_focus();
            }
            entered |= first.lost_focus();
            if is_rectangle {
                entered |= field_ui(ui, text!("Breadth, mm"), &mut self.breadth, Some(28.0 * GRID)).lost_focus();
            }
        });
        entered &= ui.input(|input| input.key_pressed(Key::Enter));
        let read = self.read();
        let (mut keep, mut away) = (entered && read.is_ok(), false);
        if let Err(wrong) = &read
            && !self.length.trim().is_empty()
        {
            ui.label(small(wrong).color(ui.tokens().power_unknown));
        }
        ui.horizontal_wrapped(|ui| {
            let word = text!("Keep the length");
            keep |= ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, word, "", None)).inner.clicked();
            away = press_ui(ui, text!("Give it up"), "", None).clicked();
        });
        match read {
            Ok(mark) if keep => Some(Answered::Mark(Box::new(mark))),
            _ if away => Some(Answered::GivenUp),
            _ => None,
        }
    }

    fn read(&self) -> Result<PhotoMark, String> {
        let length_mm = Some(millimetres(&self.length)?);
        let breadth_mm = match self.mark.role {
            MarkUse::Rectangle => Some(millimetres(&self.breadth)?),
            _ => None,
        };
        Ok(PhotoMark { length_mm, breadth_mm, ..self.mark.clone() })
    }
}

/// A typed length in millimetres.
pub fn millimetres(typed: &str) -> Result<f64, String> {
    match figure(typed)? {
        Some(mm) if mm > 0.0 => Ok(mm),
        _ => Err(text!("Write a length in millimetres, above 0.").to_owned()),
    }
}
