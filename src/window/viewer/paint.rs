//! Painting a picture where it is placed: as a whole, and in tiles where the whole is not sharp enough.

use egui::epaint::Vertex;
use egui::{Color32, Mesh, Painter, Pos2, Rect, TextureHandle, Ui, pos2, vec2};

use super::placed::Placed;
use crate::photo::tiles::{RIM_PX, Tile};
use crate::record::Photo;
use crate::window::outbox::View;
use crate::window::pictures::{LARGE_PX, SMALL_PX, Shown};

/// How far a picture is there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Painted {
    Whole,
    /// Some of it is still being made.
    Waiting,
    /// Why there is nothing.
    Failed(String),
}

/// Paints what there is of a photograph into a part of the window.
pub fn picture_ui(ui: &Ui, view: &View<'_>, placed: &Placed, photo: &Photo, clip: Rect) -> Painted {
    let painter = ui.painter().with_clip_rect(clip.intersect(placed.area));
    let whole = Rect::from_min_size(Pos2::ZERO, placed.size_px.into());
    let mut painted = Painted::Whole;
    match view.pictures.get(view.store, photo, LARGE_PX) {
        Shown::Ready(texture) => part_ui(&painter, placed, &texture, whole, 0.0),
        // The small copy of the lists stands in until then.
        Shown::Loading => {
            painted = Painted::Waiting;
            if let Shown::Ready(texture) = view.pictures.get(view.store, photo, SMALL_PX) {
                part_ui(&painter, placed, &texture, whole, 0.0);
            }
        }
        Shown::Failed(why) => return Painted::Failed(why),
    }
    let longest = placed.size_px[0].max(placed.size_px[1]);
    // A copy that is as sharp as the screen needs no tiles over it.
    if placed.zoom() * longest > LARGE_PX as f32 && longest > LARGE_PX as f32 {
        tiles_ui(&painter, view, placed, photo, &mut painted);
    }
    painted
}

fn tiles_ui(painter: &Painter, view: &View<'_>, placed: &Placed, photo: &Photo, painted: &mut Painted) {
    let level = Tile::level_for(placed.zoom());
    // Coarser ones that are there already stand in while the right ones are made.
    for level in (level + 1..=level + 2).rev() {
        for tile in seen(placed, painter.clip_rect(), level) {
            if let Some(texture) = view.pictures.tile_at_hand(photo, tile) {
                tile_ui(painter, placed, &texture, tile);
            }
        }
    }
    for tile in seen(placed, painter.clip_rect(), level) {
        match view.pictures.tile(view.store, photo, tile) {
            Shown::Ready(texture) => tile_ui(painter, placed, &texture, tile),
            Shown::Loading => *painted = Painted::Waiting,
            Shown::Failed(why) => *painted = Painted::Failed(why),
        }
    }
}

/// The tiles of a level that are in sight.
fn seen(placed: &Placed, clip: Rect, level: u8) -> Vec<Tile> {
    let corners = [clip.left_top(), clip.right_top(), clip.right_bottom(), clip.left_bottom()];
    let corners = corners.map(|corner| Pos2::from(placed.px(corner)));
    let part = Rect::from_points(&corners).intersect(Rect::from_min_size(Pos2::ZERO, placed.size_px.into()));
    if !part.is_positive() {
        return Vec::new();
    }
    let span = Tile::span_px(level) as f32;
    let range = |from: f32, to: f32| (from / span) as u32..=((to - 0.5).max(0.0) / span) as u32;
    range(part.top(), part.bottom())
        .flat_map(|y| range(part.left(), part.right()).map(move |x| Tile { level, x, y }))
        .collect()
}

fn tile_ui(painter: &Painter, placed: &Placed, texture: &TextureHandle, tile: Tile) {
    let Some([left, top, width, height]) = tile.part_of(placed.size_px.map(|side| side as u32)) else { return };
    let part = Rect::from_min_size(pos2(left as f32, top as f32), vec2(width as f32, height as f32));
    part_ui(painter, placed, texture, part, RIM_PX as f32);
}

/// Paints a texture that holds a part of the picture, given in the picture's pixels, within a rim.
fn part_ui(painter: &Painter, placed: &Placed, texture: &TextureHandle, part: Rect, rim: f32) {
    let [width, height] = texture.size().map(|side| side as f32);
    let (near_x, near_y) = (rim / width, rim / height);
    let mut mesh = Mesh::with_texture(texture.id());
    for (corner, uv) in [
        (part.left_top(), pos2(near_x, near_y)),
        (part.right_top(), pos2(1.0 - near_x, near_y)),
        (part.right_bottom(), pos2(1.0 - near_x, 1.0 - near_y)),
        (part.left_bottom(), pos2(near_x, 1.0 - near_y)),
    ] {
        mesh.vertices.push(Vertex { pos: placed.at_px([corner.x, corner.y]), uv, color: Color32::WHITE });
    }
    mesh.indices.extend([0, 1, 2, 0, 2, 3]);
    painter.add(mesh);
}
