//! Painting a picture where it is placed.

use egui::{Mesh, Rect, TextureHandle, Ui, pos2};

use super::placed::Placed;
use crate::record::Photo;
use crate::window::outbox::View;
use crate::window::pictures::{LARGE_PX, SMALL_PX, Shown};

/// Paints what there is of a photograph; gives why there is nothing.
pub fn picture_ui(ui: &Ui, view: &View<'_>, placed: &Placed, photo: &Photo) -> Option<String> {
    let whole = Rect::from_min_size(pos2(0.0, 0.0), placed.size_px.into());
    match view.pictures.get(view.store, photo, LARGE_PX) {
        Shown::Ready(texture) => part_ui(ui, placed, &texture, whole),
        // The small copy of the lists stands in until then.
        Shown::Loading => {
            if let Shown::Ready(texture) = view.pictures.get(view.store, photo, SMALL_PX) {
                part_ui(ui, placed, &texture, whole);
            }
        }
        Shown::Failed(why) => return Some(why),
    }
    None
}

/// Paints a texture that holds a part of the picture, given in its pixels.
fn part_ui(ui: &Ui, placed: &Placed, texture: &TextureHandle, part: Rect) {
    let mut mesh = Mesh::with_texture(texture.id());
    for (corner, share) in [
        (part.left_top(), pos2(0.0, 0.0)),
        (part.right_top(), pos2(1.0, 0.0)),
        (part.right_bottom(), pos2(1.0, 1.0)),
        (part.left_bottom(), pos2(0.0, 1.0)),
    ] {
        let pos = placed.at_px([corner.x, corner.y]);
        mesh.vertices.push(egui::epaint::Vertex { pos, uv: share, color: egui::Color32::WHITE });
    }
    mesh.indices.extend([0, 1, 2, 0, 2, 3]);
    ui.painter().with_clip_rect(placed.area).add(mesh);
}
