//! Photographs that belong together by the time they were taken, until each group is given to something.

use std::collections::HashSet;

use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

use crate::photo::{TakenAt, TakenIn, groups};
use crate::record::{Logbook, Photo, PhotoId, PhotoView};
use crate::window::taking_in::Target;

/// A photograph that the logbook keeps, and of which is not said yet what it is of.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Item {
    pub photo: Photo,
    /// What its file was called.
    pub name: String,
    /// When it was taken, on its camera's clock.
    pub time: Option<NaiveDateTime>,
    /// Whether its file is the logbook's only because it came in here.
    pub is_new: bool,
}

/// What became of a group.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Fate {
    #[default]
    Open,
    /// Put on record as photographs of something; open again when that is undone.
    Given(Target),
    LeftOut,
}

/// Photographs that belong together.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Group {
    pub items: Vec<Item>,
    pub fate: Fate,
    /// The revision and the number of refusals when it was given: until either changes it is on its way.
    #[serde(skip)]
    pub given_at: Option<(u64, u32)>,
}

/// All groups, in the order they came in.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Groups {
    pub list: Vec<Group>,
}

impl Item {
    fn of(taken_in: &TakenIn, today: NaiveDate) -> Self {
        Self {
            photo: taken_in.photo(PhotoView::Detail, today),
            name: taken_in.path.file_name().unwrap_or(taken_in.path.as_os_str()).to_string_lossy().into_owned(),
            time: taken_in.shot.taken.map(|taken| taken.local),
            is_new: taken_in.kept.is_new,
        }
    }
}

impl Group {
    /// What it is as of a revision: given only while its photographs are on record there, or on their way.
    pub fn stands(&self, logbook: &Logbook, refusals: u32) -> Fate {
        let Fate::Given(target) = self.fate else { return self.fate };
        let is_under_way = self.given_at == Some((logbook.revision, refusals));
        let first = self.items.first().map(|item| &item.photo.content);
        let is_there = target.photos(logbook).any(|photo| Some(&photo.content) == first);
        if is_under_way || is_there { self.fate } else { Fate::Open }
    }

    /// The first and the last time noted.
    pub fn times(&self) -> Option<(NaiveDateTime, NaiveDateTime)> {
        let times = || self.items.iter().filter_map(|item| item.time);
        times().min().zip(times().max())
    }
}

impl Groups {
    /// Adds photographs that came in together, parted by the gaps in time between them; one that is there already is
    /// passed over. How many those were.
    pub fn add(&mut self, taken_in: &[TakenIn], today: NaiveDate) -> usize {
        let mut known: HashSet<String> = self.items().map(|item| item.photo.content.clone()).collect();
        let new: Vec<&TakenIn> = taken_in.iter().filter(|one| known.insert(one.kept.content.clone())).collect();
        let taken: Vec<Option<TakenAt>> = new.iter().map(|one| one.shot.taken).collect();
        for places in groups(&taken) {
            let items = places.into_iter().map(|place| Item::of(new[place], today)).collect();
            self.list.push(Group { items, ..Group::default() });
        }
        taken_in.len() - new.len()
    }

    /// Every photograph.
    pub fn items(&self) -> impl Iterator<Item = &Item> {
        self.list.iter().flat_map(|group| &group.items)
    }

    /// How many photographs are of nothing yet.
    pub fn open_count(&self, logbook: &Logbook, refusals: u32) -> usize {
        let open = self.list.iter().filter(|group| group.stands(logbook, refusals) == Fate::Open);
        open.map(|group| group.items.len()).sum()
    }

    /// The place of a photograph within a group.
    pub fn place(&self, group: usize, photo: PhotoId) -> Option<usize> {
        self.list.get(group)?.items.iter().position(|item| item.photo.id == photo)
    }

    /// Parts a group before a photograph of it.
    pub fn split(&mut self, group: usize, at: usize) {
        if at > 0 && self.list.get(group).is_some_and(|group| at < group.items.len()) {
            let items = self.list[group].items.split_off(at);
            self.list.insert(group + 1, Group { items, ..Group::default() });
        }
    }

    /// Joins a group with another one.
    pub fn join(&mut self, group: usize, with: usize) {
        if group != with && group.max(with) < self.list.len() {
            let (first, second) = (group.min(with), group.max(with));
            let mut later = self.list.remove(second);
            self.list[first].items.append(&mut later.items);
            self.list[first].items.sort_by_key(|item| (item.time.is_none(), item.time));
        }
    }

    /// Moves a photograph to another group; a group that is left empty goes.
    pub fn move_to(&mut self, group: usize, at: usize, to: usize) {
        if group == to || to >= self.list.len() || self.list.get(group).is_none_or(|group| at >= group.items.len()) {
            return;
        }
        let item = self.list[group].items.remove(at);
        self.list[to].items.push(item);
        self.list[to].items.sort_by_key(|item| (item.time.is_none(), item.time));
        if self.list[group].items.is_empty() {
            self.list.remove(group);
        }
    }

    /// Leaves one photograph of a group out: it becomes a group of its own.
    pub fn leave_out(&mut self, group: usize, at: usize) {
        if self.list.get(group).is_some_and(|group| at < group.items.len()) {
            let item = self.list[group].items.remove(at);
            let fate = Fate::LeftOut;
            self.list.insert(group + 1, Group { items: vec![item], fate, given_at: None });
            if self.list[group].items.is_empty() {
                self.list.remove(group);
            }
        }
    }
}
