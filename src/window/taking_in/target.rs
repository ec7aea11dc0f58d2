//! Whose photographs are taken in.

use serde::{Deserialize, Serialize};

use crate::record::{Logbook, LotId, MachineId, PartId, Photo};
use crate::text;
use crate::window::page::Page;

/// Whose photographs they are, or where that is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Target {
    Part(PartId),
    Machine(MachineId),
    Lot(LotId),
    /// A part's; evidence of the work whose form is open for it on this page, if one is.
    #[serde(skip)]
    Work(Page, PartId),
    /// The part's that is being logged.
    Intake,
    /// To be said later.
    Sorting,
}

impl Target {
    /// What it is called; `None` where it is not in the logbook any more.
    pub fn title(self, logbook: &Logbook) -> Option<String> {
        match self {
            Self::Part(part) | Self::Work(_, part) => {
                logbook.part(part).map(|file| format!("{} {}", file.part.tag, logbook.title_of(file)))
            }
            Self::Machine(machine) => logbook.machine(machine).map(|file| file.machine.name.clone()),
            Self::Lot(lot) => logbook.lot(lot).map(|file| file.lot.name.clone()),
            Self::Intake => Some(text!("the part being logged").to_owned()),
            Self::Sorting => Some(text!("sorting").to_owned()),
        }
    }

    /// A short name for the names of changes: a part's tag, a machine's or a lot's name.
    pub fn name(self, logbook: &Logbook) -> Option<String> {
        match self {
            Self::Part(part) | Self::Work(_, part) => logbook.part(part).map(|file| file.part.tag.clone()),
            other => other.title(logbook),
        }
    }

    /// Its photographs; none where whose they are is not said yet.
    pub fn photos(self, logbook: &Logbook) -> impl Iterator<Item = &Photo> {
        let photos = match self {
            Self::Part(part) | Self::Work(_, part) => logbook.part(part).map(|file| &file.photos),
            Self::Machine(machine) => logbook.machine(machine).map(|file| &file.photos),
            Self::Lot(lot) => logbook.lot(lot).map(|file| &file.photos),
            Self::Intake | Self::Sorting => None,
        };
        photos.into_iter().flatten().map(|file| &file.photo)
    }

    /// The photograph as one of its own.
    pub fn own(self, photo: Photo) -> Photo {
        match self {
            Self::Part(part) | Self::Work(_, part) => Photo { part: Some(part), ..photo },
            Self::Machine(machine) => Photo { machine: Some(machine), ..photo },
            Self::Lot(lot) => Photo { lot: Some(lot), ..photo },
            Self::Intake | Self::Sorting => photo,
        }
    }

    /// What stays of it when the program ends meanwhile: no form is open then.
    #[must_use]
    pub fn after_all(self) -> Self {
        if let Self::Work(_, part) = self { Self::Part(part) } else { self }
    }
}
