//! Pictures on show: shrunk on a thread of their own, kept as textures up to a number of bytes, the longest unused
//! let go first.

use std::cell::RefCell;
use std::collections::HashMap;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, Sender, channel};

use egui::{ColorImage, Context, Rect, TextureHandle, TextureOptions, Ui, Vec2, pos2};
use image::RgbaImage;

use crate::photo::thumbnail::{Cache, shrink};
use crate::photo::{Picture, PictureError};
use crate::record::{Photo, PhotoFile, PhotoView};
use crate::store::Store;
use crate::text;

/// The most bytes that textures may take.
pub const MOST_BYTES: usize = 48 * 1024 * 1024;

/// A request that nobody waits for any more is dropped when so many newer ones are waiting.
const MOST_WAITING: usize = 256;

/// The side of the pictures in lists, pixels.
pub const SMALL_PX: u32 = 256;

/// The side of a picture that is looked at closely, pixels.
pub const LARGE_PX: u32 = 1600;

type Key = (String, u32);

struct Order {
    key: Key,
    path: PathBuf,
}

enum Arrived {
    Picture(Key, RgbaImage),
    Failed(Key, String),
    /// Not made, since too much was asked for meanwhile.
    Dropped(Key),
}

enum Entry {
    Loading,
    Ready { texture: TextureHandle, bytes: usize, used: u64 },
    Failed(String),
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
    entries: RefCell<HashMap<u32, HashMap<String, Entry>>>,
    orders: Sender<Order>,
    arrived: Receiver<Arrived>,
}

impl Pictures {
    /// No pictures yet; small copies are kept in `cache_folder` where there is one.
    pub fn new(ctx: &Context, cache_folder: Option<PathBuf>) -> Self {
        let (orders, taken) = channel::<Order>();
        let (sender, arrived) = channel();
        let waker = ctx.clone();
        std::thread::spawn(move || work(&taken, cache_folder.map(Cache::new).as_ref(), &sender, &waker));
        Self { ctx: ctx.clone(), entries: RefCell::default(), orders, arrived }
    }

    /// What there is of a photograph at a size; asks for it when there is nothing yet.
    pub fn get(&self, store: &Store, photo: &Photo, side_px: u32) -> Shown {
        let mut entries = self.entries.borrow_mut();
        let sized = entries.entry(side_px).or_default();
        match sized.get_mut(&photo.content) {
            Some(Entry::Ready { texture, used, .. }) => {
                *used = self.ctx.cumulative_frame_nr();
                Shown::Ready(texture.clone())
            }
            Some(Entry::Loading) => Shown::Loading,
            Some(Entry::Failed(reason)) => Shown::Failed(reason.clone()),
            None => {
                sized.insert(photo.content.clone(), Entry::Loading);
                let order = Order { key: (photo.content.clone(), side_px), path: store.photo_path(photo) };
                if self.orders.send(order).is_err() {
                    sized.insert(photo.content.clone(), Entry::Failed(text!("Pictures cannot be made now").to_owned()));
                }
                Shown::Loading
            }
        }
    }

    /// Takes what was made meanwhile, and lets go of what was not used for longest.
    pub fn take_arrived(&mut self) {
        let now = self.ctx.cumulative_frame_nr();
        let entries = self.entries.get_mut();
        for arrived in self.arrived.try_iter() {
            let (key, entry) = match arrived {
                Arrived::Dropped((content, side_px)) => {
                    entries.entry(side_px).or_default().remove(&content);
                    continue;
                }
                Arrived::Failed(key, reason) => (key, Entry::Failed(reason)),
                Arrived::Picture(key, image) => {
                    let size = [image.width() as usize, image.height() as usize];
                    let bytes = image.as_raw().len();
                    let image = ColorImage::from_rgba_unmultiplied(size, image.as_raw());
                    let texture = self.ctx.load_texture(&key.0, image, TextureOptions::LINEAR);
                    (key, Entry::Ready { texture, bytes, used: now })
                }
            };
            entries.entry(key.1).or_default().insert(key.0, entry);
        }
        let_go(entries, now);
    }

    /// Bytes that textures take now.
    pub fn bytes(&self) -> usize {
        self.entries.borrow().values().flat_map(HashMap::values).map(Entry::bytes).sum()
    }
}

impl Entry {
    fn bytes(&self) -> usize {
        if let Self::Ready { bytes, .. } = self { *bytes } else { 0 }
    }
}

fn let_go(entries: &mut HashMap<u32, HashMap<String, Entry>>, now: u64) {
    let mut total: usize = entries.values().flat_map(HashMap::values).map(Entry::bytes).sum();
    while total > MOST_BYTES {
        let oldest = entries
            .iter()
            .flat_map(|(side_px, sized)| sized.iter().map(move |(content, entry)| (*side_px, content, entry)))
            .filter_map(|(side_px, content, entry)| match entry {
                // What is on show stays, however much it is.
                Entry::Ready { bytes, used, .. } if used + 2 < now => Some((*used, side_px, content.clone(), *bytes)),
                _ => None,
            })
            .min();
        let Some((_, side_px, content, bytes)) = oldest else { return };
        entries.entry(side_px).or_default().remove(&content);
        total -= bytes;
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

/// Makes pictures, the newest request first: that is the one on show.
fn work(orders: &Receiver<Order>, cache: Option<&Cache>, sender: &Sender<Arrived>, ctx: &Context) {
    let mut waiting: Vec<Order> = Vec::new();
    loop {
        if waiting.is_empty() {
            match orders.recv() {
                Ok(order) => waiting.push(order),
                Err(_) => return,
            }
        }
        waiting.extend(orders.try_iter());
        let too_many = waiting.len().saturating_sub(MOST_WAITING);
        let dropped = waiting.drain(..too_many).map(|order| Arrived::Dropped(order.key));
        let mut arrived: Vec<Arrived> = dropped.collect();
        if let Some(order) = waiting.pop() {
            arrived.push(made(order, cache));
        }
        for arrived in arrived {
            if sender.send(arrived).is_err() {
                return;
            }
        }
        ctx.request_repaint();
    }
}

fn made(order: Order, cache: Option<&Cache>) -> Arrived {
    let Order { key, path } = order;
    // A decoder that meets a picture it was not made for must not take the others with it.
    let made = std::panic::catch_unwind(|| -> Result<RgbaImage, PictureError> {
        match cache {
            Some(cache) => cache.thumbnail(&key.0, &path, key.1),
            None => shrink(&Picture::open(&path)?, key.1),
        }
    });
    match made {
        Ok(Ok(image)) => Arrived::Picture(key, image),
        Ok(Err(error)) => Arrived::Failed(key, error.to_string()),
        Err(_) => Arrived::Failed(key, text!("The picture cannot be read").to_owned()),
    }
}
