//! Pictures on show: made on threads of their own, kept as textures up to a number of bytes, the longest unused let go
//! first.

mod makers;
mod textures;

use std::cell::RefCell;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, Sender, channel};

use egui::{Context, Rect, TextureHandle, Ui, Vec2, pos2};

use self::makers::{Arrived, Order, maker};
use self::textures::Textures;
use crate::photo::tiles::Tile;
use crate::record::{Photo, PhotoFile, PhotoView};
use crate::store::Store;
use crate::text;

pub use self::textures::MOST_BYTES;

/// The side of the pictures in lists, pixels.
pub const SMALL_PX: u32 = 256;

/// The side of a picture that is looked at, pixels; what is nearer comes in tiles.
pub const LARGE_PX: u32 = 1600;

/// The most bytes that become textures in one frame, so that it is not late.
const MOST_BYTES_A_FRAME: usize = 8 * 1024 * 1024;

/// Which picture of a photograph.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Size {
    /// A copy that fits in a square of so many pixels.
    Within(u32),
    /// A piece of it.
    Tile(Tile),
}

/// What there is to show of a picture.
#[derive(Clone)]
pub enum Shown {
    Ready(TextureHandle),
    Loading,
    /// Why there is none.
    Failed(String),
}

/// The pictures that were asked for.
pub struct Pictures {
    ctx: Context,
    textures: RefCell<Textures>,
    small: Sender<Order>,
    large: Sender<Order>,
    arrived: Receiver<Arrived>,
}

impl Pictures {
    /// No pictures yet; small copies are kept in `cache_folder` where there is one.
    pub fn new(ctx: &Context, cache_folder: Option<PathBuf>) -> Self {
        let (sender, arrived) = channel();
        // Whoever looks at a photograph does not wait for a list's small ones.
        let small = maker(cache_folder.clone(), sender.clone(), ctx.clone());
        let large = maker(cache_folder, sender, ctx.clone());
        Self { ctx: ctx.clone(), textures: RefCell::default(), small, large, arrived }
    }

    /// What there is of a photograph within a square of `side_px`; asks for it when there is nothing yet.
    pub fn get(&self, store: &Store, photo: &Photo, side_px: u32) -> Shown {
        self.ask(store, photo, Size::Within(side_px))
    }

    /// What there is of a piece of a photograph; asks for it when there is nothing yet.
    pub fn tile(&self, store: &Store, photo: &Photo, tile: Tile) -> Shown {
        self.ask(store, photo, Size::Tile(tile))
    }

    /// A piece of a photograph, if it is there already.
    pub fn tile_at_hand(&self, photo: &Photo, tile: Tile) -> Option<TextureHandle> {
        let found = self.textures.borrow_mut().get(&photo.content, Size::Tile(tile), self.ctx.cumulative_frame_nr());
        if let Some(Shown::Ready(texture)) = found { Some(texture) } else { None }
    }

    fn ask(&self, store: &Store, photo: &Photo, size: Size) -> Shown {
        let mut textures = self.textures.borrow_mut();
        if let Some(shown) = textures.get(&photo.content, size, self.ctx.cumulative_frame_nr()) {
            return shown;
        }
        let content = photo.content.clone();
        let maker = if size == Size::Within(SMALL_PX) { &self.small } else { &self.large };
        let shown = match maker.send(Order::Make { content: content.clone(), size, path: store.photo_path(photo) }) {
            Ok(()) => Shown::Loading,
            Err(_) => Shown::Failed(text!("Pictures cannot be made now").to_owned()),
        };
        textures.put(content, size, shown.clone());
        shown
    }

    /// Lets go of pictures at their full size: nobody looks at one any more.
    pub fn stop_looking(&self) {
        // Without its maker there is nothing to let go of.
        let _ = self.large.send(Order::LetGo);
        self.textures.borrow_mut().forget_tiles();
    }

    /// Takes what was made meanwhile, and lets go of what was not used for longest.
    pub fn take_arrived(&mut self) {
        let now = self.ctx.cumulative_frame_nr();
        let textures = self.textures.get_mut();
        let mut bytes = 0;
        while bytes < MOST_BYTES_A_FRAME
            && let Ok(Arrived { content, size, made }) = self.arrived.try_recv()
        {
            bytes += made.as_ref().map_or(0, |made| made.as_ref().map_or(0, |image| image.as_raw().len()));
            textures.arrive(&self.ctx, content, size, made, now);
        }
        if bytes >= MOST_BYTES_A_FRAME {
            self.ctx.request_repaint();
        }
        textures.let_go(now);
    }

    /// Bytes that textures take now.
    pub fn bytes(&self) -> usize {
        self.textures.borrow().bytes()
    }
}

/// The photograph that stands for a thing: an overview, else the first.
pub fn face_of(photos: &[PhotoFile]) -> Option<&Photo> {
    let photos = || photos.iter().map(|file| &file.photo);
    photos().find(|photo| photo.view == PhotoView::Overview).or_else(|| photos().next())
}

/// Paints a picture as large as fits in the middle of a rectangle.
pub fn paint_fitting(ui: &Ui, rect: Rect, texture: &TextureHandle) {
    let size = texture.size_vec2();
    let scale = (rect.width() / size.x.max(1.0)).min(rect.height() / size.y.max(1.0));
    let fitted = Rect::from_center_size(rect.center(), Vec2::new(size.x * scale, size.y * scale));
    let whole = Rect::from_min_max(pos2(0.0, 0.0), pos2(1.0, 1.0));
    let mut mesh = egui::Mesh::with_texture(texture.id());
    mesh.add_rect_with_uv(fitted, whole, egui::Color32::WHITE);
    ui.painter().add(mesh);
}
