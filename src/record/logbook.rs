//! The whole logbook's text as one immutable value per revision.

use std::sync::Arc;

use super::{
    Attachment, Design, DesignFile, DesignId, Fitting, KitFile, KitId, Lot, LotId, MachineFile, MachineId, Material,
    MaterialId, PartFile, PartId, Photo, PhotoFile, Place, PlaceId, Placement, Workshop,
};

/// A lot with its photographs and receipts.
#[derive(Clone, Debug, PartialEq)]
pub struct LotFile {
    pub lot: Lot,
    pub photos: Vec<PhotoFile>,
    pub attachments: Vec<Attachment>,
}

/// Everything that the logbook says at one revision. Each list stands in the order of its keys.
#[derive(Clone, Debug)]
pub struct Logbook {
    /// Grows by one with every change.
    pub revision: u64,
    pub workshop: Arc<Workshop>,
    pub places: Vec<Arc<Place>>,
    pub lots: Vec<Arc<LotFile>>,
    pub designs: Vec<Arc<DesignFile>>,
    pub parts: Vec<Arc<PartFile>>,
    pub machines: Vec<Arc<MachineFile>>,
    pub materials: Vec<Arc<Material>>,
    pub kits: Vec<Arc<KitFile>>,
}

fn find<T, K: Ord>(sorted: &[Arc<T>], key: K, of: impl Fn(&T) -> K) -> Option<&Arc<T>> {
    sorted.binary_search_by(|entry| of(entry).cmp(&key)).ok().map(|index| &sorted[index])
}

impl Logbook {
    /// The part of a key.
    pub fn part(&self, id: PartId) -> Option<&Arc<PartFile>> {
        find(&self.parts, id, |file| file.part.id)
    }

    /// The part that carries a tag, compared as written but without regard to case.
    pub fn part_tagged(&self, tag: &str) -> Option<&Arc<PartFile>> {
        self.parts.iter().find(|file| file.part.tag.eq_ignore_ascii_case(tag))
    }

    /// The design of a key.
    pub fn design(&self, id: DesignId) -> Option<&Arc<DesignFile>> {
        find(&self.designs, id, |file| file.design.id)
    }

    /// A part's design, when it is known.
    pub fn design_of(&self, file: &PartFile) -> Option<&Arc<DesignFile>> {
        file.part.design.and_then(|id| self.design(id))
    }

    /// The machine of a key.
    pub fn machine(&self, id: MachineId) -> Option<&Arc<MachineFile>> {
        find(&self.machines, id, |file| file.machine.id)
    }

    /// The machine of a name, without regard to case.
    pub fn machine_named(&self, name: &str) -> Option<&Arc<MachineFile>> {
        let name = name.to_lowercase();
        self.machines.iter().find(|file| file.machine.name.to_lowercase() == name)
    }

    /// Every photograph with its marks, of parts, machines and lots.
    pub fn photo_files(&self) -> impl Iterator<Item = &PhotoFile> {
        let parts = self.parts.iter().flat_map(|file| &file.photos);
        let machines = self.machines.iter().flat_map(|file| &file.photos);
        let lots = self.lots.iter().flat_map(|file| &file.photos);
        parts.chain(machines).chain(lots)
    }

    /// Every photograph, of parts, machines and lots.
    pub fn photos(&self) -> impl Iterator<Item = &Photo> {
        self.photo_files().map(|file| &file.photo)
    }

    /// The material of a key.
    pub fn material(&self, id: MaterialId) -> Option<&Arc<Material>> {
        find(&self.materials, id, |material| material.id)
    }

    /// The kit of a key.
    pub fn kit(&self, id: KitId) -> Option<&Arc<KitFile>> {
        find(&self.kits, id, |file| file.kit.id)
    }

    /// The lot of a key.
    pub fn lot(&self, id: LotId) -> Option<&Arc<LotFile>> {
        find(&self.lots, id, |file| file.lot.id)
    }

    /// The place of a key.
    pub fn place(&self, id: PlaceId) -> Option<&Arc<Place>> {
        find(&self.places, id, |place| place.id)
    }

    /// A place with all that it stands in, outermost first: "Cellar / Shelf 2 / Box 4".
    pub fn place_path(&self, id: PlaceId) -> String {
        let mut names: Vec<&str> = Vec::new();
        let mut next = Some(id);
        while let Some(place) = next.and_then(|id| self.place(id)) {
            names.push(&place.name);
            next = place.within;
            // A tree of places that bites its own tail is refused when written; a damaged one must not hang us.
            if names.len() > 32 {
                break;
            }
        }
        names.reverse();
        names.join(" / ")
    }

    /// The place at the end of a path, as [`Logbook::place_path`] writes it, without regard to case.
    pub fn place_at(&self, path: &str) -> Option<PlaceId> {
        let path = path.to_lowercase();
        self.places.iter().map(|place| place.id).find(|id| self.place_path(*id).to_lowercase() == path)
    }

    /// What a part is called: its own words, else its design, else its kind.
    pub fn title_of(&self, file: &PartFile) -> String {
        let title = if file.part.name.is_empty() {
            self.design_of(file).map(|design: &Arc<DesignFile>| Design::title(&design.design)).unwrap_or_default()
        } else {
            file.part.name.clone()
        };
        if title.is_empty() {
            use super::Word;
            file.part.kind.label().to_owned()
        } else {
            title
        }
    }

    /// The machine that a part is fitted in now.
    pub fn fitted_in(&self, part: PartId) -> Option<(&Arc<MachineFile>, &Fitting)> {
        self.machines
            .iter()
            .find_map(|file| file.fitted().find(|fitting| fitting.part == part).map(|fitting| (file, fitting)))
    }

    /// The machine that a part is planned for.
    pub fn planned_for(&self, part: PartId) -> Option<(&Arc<MachineFile>, &Placement)> {
        self.machines
            .iter()
            .find_map(|file| file.placements.iter().find(|plan| plan.part == part).map(|plan| (file, plan)))
    }
}
