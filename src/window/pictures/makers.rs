//! The threads that make pictures: one the small ones of lists, one what is looked at closely.

use std::collections::VecDeque;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, Sender, channel};

use egui::{ColorImage, Context};
use image::{RgbImage, RgbaImage};

use super::Size;
use crate::photo::thumbnail::{Cache, Copies, shrink};
use crate::photo::tiles::{self, Tile};
use crate::photo::{Picture, PictureError};
use crate::text;

/// A request that nobody waits for any more is dropped when so many newer ones are waiting.
const MOST_WAITING: usize = 96;

/// The most bytes that decoded pictures take; the one looked at stays, however large it is.
const MOST_DECODED_BYTES: usize = 96 * 1024 * 1024;

/// What a maker is asked for.
pub enum Order {
    Make {
        content: String,
        size: Size,
        path: PathBuf,
    },
    /// Pictures at their full size are not needed any more.
    LetGo,
}

/// What a maker has made.
pub struct Arrived {
    pub content: String,
    pub size: Size,
    /// The picture, or why there is none; nothing where too much was asked for meanwhile.
    pub made: Option<Result<ColorImage, String>>,
}

/// Starts a thread that makes pictures; small copies are kept in `cache_folder` where there is one.
pub fn maker(cache_folder: Option<PathBuf>, sender: Sender<Arrived>, ctx: Context) -> Sender<Order> {
    let (orders, taken) = channel();
    let mut maker = Maker { cache: cache_folder.map(Cache::new), decoded: VecDeque::new() };
    std::thread::spawn(move || maker.work(&taken, &sender, &ctx));
    orders
}

/// Copies of a picture, by its content, that are not kept yet.
type Fresh = Option<(String, Copies)>;

struct Maker {
    cache: Option<Cache>,
    /// Pictures at their full size by their content, the last used last.
    decoded: VecDeque<(String, RgbImage)>,
}

impl Maker {
    /// Makes pictures, the newest request first: that is the one on show.
    fn work(&mut self, orders: &Receiver<Order>, sender: &Sender<Arrived>, ctx: &Context) {
        let mut waiting = VecDeque::new();
        loop {
            let first = if waiting.is_empty() { orders.recv().ok() } else { orders.try_recv().ok() };
            if first.is_none() && waiting.is_empty() {
                return;
            }
            for order in first.into_iter().chain(orders.try_iter()) {
                match order {
                    Order::Make { content, size, path } => waiting.push_back((content, size, path)),
                    Order::LetGo => self.decoded = VecDeque::new(),
                }
            }
            let too_many = waiting.len().saturating_sub(MOST_WAITING);
            let mut arrived: Vec<Arrived> =
                waiting.drain(..too_many).map(|(content, size, _)| Arrived { content, size, made: None }).collect();
            let mut fresh = None;
            if let Some((content, size, path)) = waiting.pop_back() {
                let made = Some(self.made(&content, size, &path, &mut fresh));
                arrived.push(Arrived { content, size, made });
            }
            for arrived in arrived {
                if sender.send(arrived).is_err() {
                    return;
                }
            }
            ctx.request_repaint();
            // Shown first, kept after.
            if let Some((cache, (content, copies))) = self.cache.as_ref().zip(fresh) {
                cache.keep(&content, &copies);
            }
        }
    }

    fn made(&mut self, content: &str, size: Size, path: &Path, fresh: &mut Fresh) -> Result<ColorImage, String> {
        // A decoder that meets a picture it was not made for must not take the others with it.
        let made = catch_unwind(AssertUnwindSafe(|| match size {
            Size::Within(side_px) => self.copy(content, path, side_px, fresh).map_err(|error| error.to_string()),
            Size::Tile(tile) => self.tile(content, path, tile),
        }));
        made.unwrap_or_else(|_| Err(text!("The picture cannot be read").to_owned()))
    }

    fn copy(&self, content: &str, path: &Path, side_px: u32, fresh: &mut Fresh) -> Result<ColorImage, PictureError> {
        let image: RgbaImage = match &self.cache {
            Some(cache) => {
                let (image, copies) = cache.thumbnail(content, path, side_px)?;
                *fresh = copies.map(|copies| (content.to_owned(), copies));
                image
            }
            None => shrink(&Picture::open(path)?, side_px)?,
        };
        // Copies are laid on paper: none of their pixels is transparent.
        Ok(ColorImage::from_rgba_premultiplied([image.width() as usize, image.height() as usize], image.as_raw()))
    }

    fn tile(&mut self, content: &str, path: &Path, tile: Tile) -> Result<ColorImage, String> {
        if let Some(at) = self.decoded.iter().position(|(of, _)| of == content) {
            // The last used stands last.
            if let Some(used) = self.decoded.remove(at) {
                self.decoded.push_back(used);
            }
        } else {
            let picture = Picture::open(path).map_err(|error| error.to_string())?;
            let image = tiles::decoded(&picture).map_err(|error| error.to_string())?;
            self.decoded.push_back((content.to_owned(), image));
            while self.decoded.len() > 1 && self.decoded_bytes() > MOST_DECODED_BYTES {
                self.decoded.pop_front();
            }
        }
        let image = self.decoded.back().and_then(|(_, image)| tiles::cut(image, tile));
        let image = image.ok_or_else(|| text!("The picture is smaller than the logbook says").to_owned())?;
        Ok(ColorImage::from_rgb([image.width() as usize, image.height() as usize], image.as_raw()))
    }

    fn decoded_bytes(&self) -> usize {
        self.decoded.iter().map(|(_, image)| image.as_raw().len()).sum()
    }
}
