//! What the window remembers between runs: its ground, the size of its text, the logbooks opened of late.

use std::fs;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::command::Appearance;
use crate::record::MachineId;

/// Text sizes that can be chosen, per cent.
pub const TEXT_PERCENT: [u32; 6] = [100, 115, 130, 150, 175, 200];

const RECENT: usize = 8;

/// The hours there are for the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Hours {
    /// Minutes of one sitting, 1 to a day's.
    pub tonight_minutes: u32,
    /// Whether somebody is there to help.
    pub help: bool,
    /// Minutes of a week, 1 to a week's.
    pub week_minutes: u32,
    /// Days until missing materials are taken to have come, up to [`MOST_DELIVERY_DAYS`].
    pub delivery_days: u32,
}

/// Minutes of a day and of a week: no sitting and no week has more.
pub const MOST_TONIGHT_MINUTES: u32 = 24 * 60;
pub const MOST_WEEK_MINUTES: u32 = 7 * 24 * 60;
/// Two years: nothing is waited for longer.
pub const MOST_DELIVERY_DAYS: u32 = 730;

impl Default for Hours {
    fn default() -> Self {
        Self { tonight_minutes: 150, help: false, week_minutes: 360, delivery_days: 14 }
    }
}

/// Machines past their tests that a proposal may touch all the same.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Touch {
    pub all: bool,
    pub machines: Vec<MachineId>,
}

/// What the window remembers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    pub appearance: Appearance,
    /// 100 to 200.
    pub text_percent: u32,
    /// Whether the last logbook is opened at the start: it is until it was closed by hand.
    pub open_last: bool,
    /// Logbooks opened of late, the last one first.
    pub recent: Vec<PathBuf>,
    /// The folder that is watched for new photographs.
    pub watched: Option<PathBuf>,
    /// Width and height of the window, points.
    pub window: [f32; 2],
    pub hours: Hours,
    pub touch: Touch,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            appearance: Appearance::default(),
            text_percent: 100,
            open_last: true,
            recent: Vec::new(),
            watched: None,
            // Fits a screen of 1280 × 800 with a title bar and a panel.
            window: [1200.0, 720.0],
            hours: Hours::default(),
            touch: Touch::default(),
        }
    }
}

/// Where settings are kept; `None` where the system tells no such folder: then they last as long as the window.
pub fn folder() -> Option<PathBuf> {
    directories::ProjectDirs::from("", "", "benchwright").map(|folders| folders.config_dir().to_path_buf())
}

/// Where small copies of pictures are kept; they can be thrown away at any time.
pub fn cache_folder() -> Option<PathBuf> {
    directories::ProjectDirs::from("", "", "benchwright").map(|folders| folders.cache_dir().join("pictures"))
}

/// Where the sample workshop is made; a folder for what may be lost where the system tells none for data.
pub fn sample_logbook() -> PathBuf {
    directories::ProjectDirs::from("", "", "benchwright")
        .map_or_else(std::env::temp_dir, |folders| folders.data_dir().to_path_buf())
        .join("sample.logbook")
}

fn file(folder: &Path) -> PathBuf {
    folder.join("window.toml")
}

impl Settings {
    /// Reads the settings; a missing or damaged file gives the usual ones.
    pub fn load(folder: Option<&Path>) -> Self {
        let read = folder.and_then(|folder| fs::read_to_string(file(folder)).ok());
        let mut settings: Self = read.and_then(|text| toml::from_str(&text).ok()).unwrap_or_default();
        settings.text_percent = settings.text_percent.clamp(100, 200);
        settings.window =
            settings.window.map(|side| if side.is_finite() { side.clamp(400.0, 10_000.0) } else { 800.0 });
        let hours = &mut settings.hours;
        hours.tonight_minutes = hours.tonight_minutes.clamp(1, MOST_TONIGHT_MINUTES);
        hours.week_minutes = hours.week_minutes.clamp(1, MOST_WEEK_MINUTES);
        hours.delivery_days = hours.delivery_days.min(MOST_DELIVERY_DAYS);
        settings
    }

    /// Writes them away from the window's thread. That they cannot be kept is no reason to disturb anybody.
    pub fn keep(&self, folder: Option<&Path>) {
        let (Some(folder), Ok(text)) = (folder.map(Path::to_path_buf), toml::to_string(self)) else { return };
        std::thread::spawn(move || {
            let _ = fs::create_dir_all(&folder).and_then(|()| fs::write(file(&folder), text));
        });
    }

    /// Writes them at once, when the window is about to be gone.
    pub fn keep_now(&self, folder: Option<&Path>) {
        if let (Some(folder), Ok(text)) = (folder, toml::to_string(self)) {
            let _ = fs::create_dir_all(folder).and_then(|()| fs::write(file(folder), text));
        }
    }

    /// Puts a logbook first among those opened of late.
    pub fn opened(&mut self, logbook: &Path) {
        self.recent.retain(|path| path != logbook);
        self.recent.insert(0, logbook.to_path_buf());
        self.recent.truncate(RECENT);
        self.open_last = true;
    }

    /// The next larger text size, or the next smaller.
    #[must_use]
    pub fn text_step(&self, larger: bool) -> u32 {
        let now = self.text_percent;
        let next = if larger {
            TEXT_PERCENT.iter().copied().find(|percent| *percent > now)
        } else {
            TEXT_PERCENT.iter().rev().copied().find(|percent| *percent < now)
        };
        next.unwrap_or(now)
    }
}
