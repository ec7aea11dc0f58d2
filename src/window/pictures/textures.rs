//! Textures up to a number of bytes.

use std::collections::HashMap;

use egui::{ColorImage, Context, TextureFilter, TextureHandle, TextureOptions};

use super::{LARGE_PX, Shown, Size};

/// The most bytes that textures may take; what is on show stays, however much it is.
pub const MOST_BYTES: usize = 96 * 1024 * 1024;

enum Entry {
    Loading,
    Ready { texture: TextureHandle, bytes: usize, used: u64 },
    Failed(String),
}

/// What was asked for, by its size and the content of the photograph's file.
#[derive(Default)]
pub struct Textures {
    entries: HashMap<Size, HashMap<String, Entry>>,
}

impl Textures {
    /// What there is; `None` when nobody asked yet. `now` is the number of the frame.
    pub fn get(&mut self, content: &str, size: Size, now: u64) -> Option<Shown> {
        Some(match self.entries.get_mut(&size)?.get_mut(content)? {
            Entry::Ready { texture, used, .. } => {
                *used = now;
                Shown::Ready(texture.clone())
            }
            Entry::Loading => Shown::Loading,
            Entry::Failed(why) => Shown::Failed(why.clone()),
        })
    }

    /// Remembers that it was asked for, or why it cannot be had.
    pub fn put(&mut self, content: String, size: Size, shown: Shown) {
        let entry = if let Shown::Failed(why) = shown { Entry::Failed(why) } else { Entry::Loading };
        self.entries.entry(size).or_default().insert(content, entry);
    }

    /// Takes what was made, why it was not, or nothing where too much was asked for meanwhile.
    pub fn arrive(
        &mut self,
        ctx: &Context,
        content: String,
        size: Size,
        made: Option<Result<ColorImage, String>>,
        now: u64,
    ) {
        let sized = self.entries.entry(size).or_default();
        let entry = match made {
            None => {
                sized.remove(&content);
                return;
            }
            Some(Err(why)) => Entry::Failed(why),
            Some(Ok(image)) => {
                let bytes = image.as_raw().len();
                // A large one may be seen at much less than its own size.
                let mipmap_mode = (size == Size::Within(LARGE_PX)).then_some(TextureFilter::Linear);
                let options = TextureOptions { mipmap_mode, ..TextureOptions::LINEAR };
                Entry::Ready { texture: ctx.load_texture(&content, image, options), bytes, used: now }
            }
        };
        sized.insert(content, entry);
    }

    /// Bytes that all of them take.
    pub fn bytes(&self) -> usize {
        self.entries.values().flat_map(HashMap::values).map(Entry::bytes).sum()
    }

    /// Lets go of all pieces.
    pub fn forget_tiles(&mut self) {
        for (size, sized) in &mut self.entries {
            if matches!(size, Size::Tile(_)) {
                sized.retain(|_, entry| matches!(entry, Entry::Loading));
            }
        }
        self.entries.retain(|_, sized| !sized.is_empty());
    }

    /// Lets go of what was not used for longest until the rest is small enough.
    pub fn let_go(&mut self, now: u64) {
        let mut total = self.bytes();
        while total > MOST_BYTES {
            let unused = self.entries.iter().flat_map(|(size, sized)| {
                sized.iter().filter_map(move |(content, entry)| match entry {
                    Entry::Ready { bytes, used, .. } if used + 2 < now => Some((*used, *bytes, *size, content)),
                    _ => None,
                })
            });
            let Some((_, bytes, size, content)) = unused.min_by_key(|(used, ..)| *used) else { return };
            let content = content.clone();
            if let Some(sized) = self.entries.get_mut(&size) {
                sized.remove(&content);
            }
            total -= bytes;
        }
    }
}

impl Entry {
    fn bytes(&self) -> usize {
        if let Self::Ready { bytes, .. } = self { *bytes } else { 0 }
    }
}
