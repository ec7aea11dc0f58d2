//! The work of taking photographs in, on a thread of its own: it tells how far it is and can be stopped.

use std::io::Cursor;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};

use egui::ColorImage;
use image::{ImageFormat, RgbaImage};

use super::target::Target;
use crate::photo::thumbnail::Cache;
use crate::photo::{Failure, TakenIn, gather, is_picture, take_in, take_in_bytes};
use crate::store::{FileSource, Store};
use crate::text;
use crate::window::outbox::KeptFile;

/// What is to be taken in.
#[derive(Clone, Debug)]
pub struct Wanted {
    pub target: Target,
    /// Files and folders.
    pub paths: Vec<PathBuf>,
    pub pasted: Option<Arc<ColorImage>>,
    /// Whether files that are no pictures are attached to the part.
    pub attaches_others: bool,
}

/// What came of it.
#[derive(Debug)]
pub struct Came {
    pub target: Target,
    pub taken_in: Vec<TakenIn>,
    /// Files to be attached.
    pub attached: Vec<KeptFile>,
    pub failed: Vec<Failure>,
    /// Files of folders that are no pictures.
    pub passed_over: usize,
    /// Files that were not reached before it was stopped.
    pub left: Option<usize>,
}

/// How far the work is, for both threads.
#[derive(Debug, Default)]
pub struct Progress {
    done: AtomicUsize,
    /// 0 while files are still looked for.
    count: AtomicUsize,
    is_stopped: AtomicBool,
}

impl Progress {
    /// How many are done of how many; `None` while they are still looked for.
    pub fn so_far(&self) -> Option<(usize, usize)> {
        let count = self.count.load(Ordering::Relaxed);
        (count > 0).then(|| (self.done.load(Ordering::Relaxed).min(count), count))
    }

    /// Has the work end after the file it is at.
    pub fn stop(&self) {
        self.is_stopped.store(true, Ordering::Relaxed);
    }

    fn go_on(&self) -> ControlFlow<()> {
        if self.is_stopped.load(Ordering::Relaxed) { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
    }
}

impl Wanted {
    /// Takes it in. `wake` is called whenever there is news of the progress. Waits for the disk.
    pub fn work(self, store: &Store, cache: Option<&Cache>, progress: &Progress, wake: impl Fn() + Sync) -> Came {
        let Self { target, paths, pasted, attaches_others } = self;
        let gathered = gather(&paths, |_| progress.go_on());
        let (pictures, others): (Vec<_>, Vec<_>) =
            gathered.files.into_iter().partition(|path| !attaches_others || is_picture(path));
        let count = pictures.len() + others.len() + usize::from(pasted.is_some());
        progress.count.store(count, Ordering::Relaxed);
        let step = |_: usize| {
            progress.done.fetch_add(1, Ordering::Relaxed);
            wake();
            progress.go_on()
        };
        let mut came = Came {
            target,
            taken_in: Vec::new(),
            attached: Vec::new(),
            failed: gathered.failed,
            passed_over: gathered.passed_over,
            left: None,
        };
        if let Some(pasted) = pasted {
            match pasted_picture(store, cache, &pasted) {
                Ok(taken_in) => came.taken_in.push(taken_in),
                Err(failure) => came.failed.push(failure),
            }
            let _ = step(1);
        }
        let mut batch = take_in(store, cache, &pictures, step);
        came.taken_in.append(&mut batch.taken_in);
        came.failed.append(&mut batch.failed);
        for path in others {
            if progress.go_on().is_break() {
                break;
            }
            match attached(store, &path) {
                Ok(file) => came.attached.push(file),
                Err(failure) => came.failed.push(failure),
            }
            let _ = step(1);
        }
        if gathered.is_stopped || progress.go_on().is_break() {
            came.left = Some(count - progress.done.load(Ordering::Relaxed).min(count));
        }
        came
    }
}

/// Copies a file that is no picture into the logbook.
pub fn attached(store: &Store, path: &Path) -> Result<KeptFile, Failure> {
    let kept = store.keep_attachment(FileSource::Path(path));
    let kept = kept.map_err(|error| Failure { path: path.to_owned(), why: error.to_string() })?;
    Ok(KeptFile::attached(path, kept))
}

/// A pasted picture comes as pixels, whatever it was before: it is kept as PNG, which loses none of them.
fn pasted_picture(store: &Store, cache: Option<&Cache>, pasted: &ColorImage) -> Result<TakenIn, Failure> {
    let name = text!("pasted picture");
    let [width, height] = pasted.size.map(|side| side as u32);
    let pixels: Vec<u8> = pasted.pixels.iter().flat_map(egui::Color32::to_srgba_unmultiplied).collect();
    let mut bytes = Vec::new();
    let packed = RgbaImage::from_raw(width, height, pixels)
        .map(|image| image.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png));
    match packed {
        Some(Ok(())) => take_in_bytes(store, cache, name, bytes),
        Some(Err(error)) => Err(Failure { path: PathBuf::from(name), why: error.to_string() }),
        None => Err(Failure { path: PathBuf::from(name), why: text!("It has no pixels").to_owned() }),
    }
}
