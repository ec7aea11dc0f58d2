//! Any one record, so that changes, history and exchange treat all of them alike.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{
    Attachment, Capacitor, CapacitorLook, CustodyEvent, Design, DesignCapacitor, DesignConnector, DesignFigure,
    FaultCase, Finding, Fitting, Kit, KitLine, KitPosition, Look, Lot, Machine, Marking, Material, MaterialUse, Moment,
    Part, Photo, PhotoMark, Place, Placement, PowerOn, Proof, Reading, Role, Setting, Survey, Trial, Valuation, Work,
    WorkAfter, Workshop,
};

macro_rules! entries {
    ($($record:ident = $name:literal $([$($moment:ident),+])? ;)+) => {
        crate::words! {
            /// What kind of record an entry is; its name is that of its table and of its list in an exchange document.
            /// Listed so that whatever a record refers to comes before it.
            EntryKind { $($record = $name, $name;)+ }
        }

        /// Any one record.
        #[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
        pub enum Entry {
            $($record($record),)+
        }

        impl Entry {
            /// What it is and which.
            pub fn key(&self) -> EntryKey {
                match self {
                    $(Self::$record(record) => EntryKey { kind: EntryKind::$record, uuid: record.id.uuid() },)+
                }
            }

            /// Its moments, for the store to number those that have none yet.
            pub fn moments_mut(&mut self) -> Vec<&mut Moment> {
                match self {
                    // The one record with a second moment, which it gets only later.
                    Self::Fitting(fitting) => std::iter::once(&mut fitting.fitted).chain(&mut fitting.removed).collect(),
                    $(#[allow(unreachable_patterns)] Self::$record(_record) => entries!(@moments _record $($($moment),+)?),)+
                }
            }
        }

        $(
            impl From<$record> for Entry {
                fn from(record: $record) -> Self {
                    Self::$record(record)
                }
            }

            impl From<super::Id<$record>> for EntryKey {
                fn from(id: super::Id<$record>) -> Self {
                    Self { kind: EntryKind::$record, uuid: id.uuid() }
                }
            }
        )+
    };
    (@moments $record:ident) => { Vec::new() };
    (@moments $record:ident $($moment:ident),+) => { vec![$(&mut $record.$moment),+] };
}

entries! {
    Workshop = "workshop";
    Place = "place";
    Lot = "lot";
    Design = "design";
    DesignConnector = "design_connector";
    DesignFigure = "design_figure";
    DesignCapacitor = "design_capacitor";
    Material = "material";
    Part = "part";
    Machine = "machine";
    Role = "role";
    Placement = "placement" [planned];
    Fitting = "fitting" [fitted];
    PowerOn = "power_on" [switched];
    Marking = "marking" [read];
    Survey = "survey" [looked];
    Finding = "finding";
    Work = "work" [changed];
    WorkAfter = "work_after";
    MaterialUse = "material_use";
    Look = "look" [looked];
    Capacitor = "capacitor" [logged];
    CapacitorLook = "capacitor_look" [looked];
    Kit = "kit" [changed];
    KitLine = "kit_line";
    KitPosition = "kit_position";
    Proof = "proof" [run];
    Reading = "reading" [measured];
    Setting = "setting" [found];
    FaultCase = "fault_case" [opened];
    Trial = "trial" [tried];
    CustodyEvent = "custody_event" [happened];
    Valuation = "valuation";
    Photo = "photo" [added];
    PhotoMark = "photo_mark";
    Attachment = "attachment" [added];
}

/// The kind and key of one record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct EntryKey {
    pub kind: EntryKind,
    pub uuid: Uuid,
}
