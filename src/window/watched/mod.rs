//! A folder that is watched for new photographs, as one that a phone copies to: they are offered, never taken.

mod seen;
mod watcher;

use std::collections::HashSet;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, Sender, channel};

use egui::Context;

pub use self::watcher::Found;

use self::watcher::{News, watch};
use crate::record::Logbook;
use crate::text;

/// What is kept of it between runs, in the folder of the settings.
const FILE: &str = "watched.json";

/// The watched folder, and the new pictures in it.
pub struct Watched {
    folder: PathBuf,
    decided: Sender<Vec<Found>>,
    news: Receiver<News>,
    offered: Vec<Found>,
}

impl Watched {
    /// Watches a folder on a thread of its own. What is there when it is watched for the first time is not offered.
    pub fn new(folder: &Path, settings_folder: Option<&Path>, ctx: Context) -> Self {
        let (decided, taken) = channel();
        let (sender, news) = channel();
        let file = settings_folder.map(|settings| settings.join(FILE));
        let watched = folder.to_owned();
        std::thread::spawn(move || watch(&watched, file.as_deref(), &taken, &sender, &|| ctx.request_repaint()));
        Self { folder: folder.to_owned(), decided, news, offered: Vec::new() }
    }

    /// Takes what has come for an open logbook, which `holds` some pictures already; what went wrong is given back.
    pub fn take_news(&mut self, logbook: &Logbook, mut holds: impl FnMut(&str) -> bool) -> Vec<String> {
        let mut notices = Vec::new();
        for news in self.news.try_iter() {
            match news {
                News::Found(found) => {
                    let known: HashSet<&str> = logbook.photos().map(|photo| photo.content.as_str()).collect();
                    let is_known = |found: &Found| known.contains(found.content.as_str()) || holds(&found.content);
                    let (known, new): (Vec<_>, Vec<_>) = found.into_iter().partition(is_known);
                    self.decided.send(known).ok();
                    for found in new {
                        // Copied twice under two names it is offered once.
                        if self.offered.iter().all(|other| other.content != found.content) {
                            self.offered.push(found);
                        }
                    }
                }
                News::Gone(why) => notices.push(text!(
                    "The watched folder cannot be read ({reason}); it is watched again once it is there: {path}",
                    reason = why,
                    path = self.folder.display()
                )),
            }
        }
        notices
    }

    /// What it is called, for a person.
    pub fn name(&self) -> String {
        self.folder.file_name().unwrap_or(self.folder.as_os_str()).to_string_lossy().into_owned()
    }

    /// How many new pictures are offered.
    pub fn count(&self) -> usize {
        self.offered.len()
    }

    /// The new pictures, which are not offered again.
    pub fn decide(&mut self) -> Vec<PathBuf> {
        let offered = std::mem::take(&mut self.offered);
        let paths = offered.iter().map(|found| found.path.clone()).collect();
        // A watcher that has ended has nothing to remember.
        self.decided.send(offered).ok();
        paths
    }
}
