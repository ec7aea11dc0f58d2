//! What marks can be tied to, and where that stands on the part's sheet.

use crate::assess::tie::{Form, Stand, Tie, Tied};
use crate::record::{CapacitorId, PartFile, PhotoMark};
use crate::text;
use crate::window::desks::part_sheet::{Section, Spot};
use crate::window::outbox::View;

impl Tie {
    /// Where it stands on its part's sheet.
    pub fn spot(self) -> Option<Spot> {
        Some(match self {
            Self::Nothing => return None,
            Self::Finding(id) => Spot::Finding(id),
            Self::Capacitor(id) => Spot::Capacitor(id),
            Self::Marking(_) => Spot::Section(Section::Made),
            Self::Work(id) => Spot::Work(id),
        })
    }
}

/// What a mark is tied to, as it is now; `file` is the part that its photograph shows.
pub fn tied(view: &View<'_>, file: Option<&PartFile>, mark: &PhotoMark) -> Tied {
    Tied::of(mark, file, view.rules)
}

/// Everything of a part that a mark can be tied to, what is open first.
pub fn choices(view: &View<'_>, file: &PartFile) -> Vec<(Tie, String)> {
    let findings = file.findings.iter().map(|one| Tie::Finding(one.finding.id));
    let capacitors = file.capacitors.iter().map(|one| Tie::Capacitor(one.position.id));
    let markings = file.markings_now().map(|one| Tie::Marking(one.id));
    let work = file.work.iter().map(|one| Tie::Work(one.id));
    let all = findings.chain(work).chain(capacitors).chain(markings);
    let mut all: Vec<Tied> = all.filter_map(|tie| Tied::to(tie, file, view.rules)).collect();
    all.sort_by_key(|tied| tied.stand == Stand::Settled);
    let kind = |form| match form {
        Form::Finding => text!("Finding"),
        Form::Capacitor => text!("Capacitor"),
        Form::Marking => text!("Marking"),
        Form::Work | Form::Bare => text!("Work"),
    };
    all.into_iter().map(|tied| (tied.tie, format!("{}: {}", kind(tied.form), tied.said()))).collect()
}

/// The part's capacitor positions that no map shows yet, in the order they were logged.
pub fn unplaced(file: &PartFile) -> Vec<CapacitorId> {
    let maps = file.photos.iter().filter(|photo| photo.photo.is_map);
    let placed: std::collections::HashSet<_> =
        maps.flat_map(|photo| &photo.marks).filter_map(|mark| mark.capacitor).collect();
    file.capacitors.iter().map(|one| one.position.id).filter(|id| !placed.contains(id)).collect()
}

/// What a position is called.
pub fn position_name(view: &View<'_>, file: &PartFile, id: CapacitorId) -> String {
    Tied::to(Tie::Capacitor(id), file, view.rules).map_or_else(String::new, |tied| tied.name)
}
