//! What lies over a photograph: each layer paints where [`Placed`] says and takes what input it wants first.
//!
//! A layer takes the pointer by `ui.interact` on its own rectangles (over the whole of `placed.area` while it draws);
//! what it leaves moves the picture. It takes keys by `consume_key` before the viewer asks for its own. The wheel
//! always zooms.

use egui::{Ui, Vec2};

use super::marking::Marking;
use super::placed::Placed;
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::Photograph;

/// Every layer, with what it keeps while a photograph is looked at.
#[derive(Default)]
pub struct Layers {
    pub marking: Marking,
}

impl Layers {
    /// Draws the layers over a photograph that is shown by itself; says by how much the picture is to be moved, points.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        placed: &Placed,
        photograph: &Photograph,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Vec2 {
        self.marking.ui(ui, placed, photograph, view, outbox)
    }
}
