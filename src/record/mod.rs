//! What the logbook holds: plain types, one file an entity, and [`Logbook`], all of them together.
//!
//! Facts about a thing (maker, serial, place) are edited, with history. Observations (surveys, readings, markings,
//! proofs) are never edited into something else: a later one supersedes or holds, the old stays. A key whose moment
//! has sequence 0 is numbered by the store when it is written.

mod capacitor;
mod capacitor_group;
mod capacitor_phrase;
mod capacitor_table;
mod capacitor_words;
mod change;
mod custody;
mod design;
mod entry;
mod fault_case;
mod figure;
mod finding;
mod id;
mod kind;
mod kit;
mod limits;
mod logbook;
mod lot;
mod machine;
mod marking;
mod material;
mod material_table;
mod name;
mod part;
mod part_file;
mod photo_mark;
mod picture;
mod place;
mod proof;
mod reading;
mod survey;
mod table;
mod when;
mod word;
mod work;
mod workshop;

pub use capacitor::{
    Capacitor, CapacitorFile, CapacitorId, CapacitorLook, CapacitorLookId, CapacitorState, CapacitorUse, Dielectric,
    Mounting,
};
pub use capacitor_group::{CapacitorGroup, MOST_POSITIONS};
pub use capacitor_phrase::{BadPhrase, read_phrase};
pub use capacitor_table::{POSITION_COLUMNS, PositionColumn, TablePosition, read_positions};
pub use change::{Change, Step};
pub use custody::{Custody, CustodyAct, CustodyEvent, CustodyEventId, Valuation, ValuationId};
pub use design::{
    Design, DesignCapacitor, DesignCapacitorId, DesignConnector, DesignConnectorId, DesignFigure, DesignFigureId,
    DesignFile, DesignId, Side,
};
pub use entry::{Entry, EntryKey, EntryKind};
pub use fault_case::{CaseState, FaultCase, FaultCaseFile, FaultCaseId, Trial, TrialId, TrialResult};
pub use figure::{Figure, figure_is_above_zero, figure_unit};
pub use finding::{Finding, FindingFile, FindingId, FindingSource, FindingState, Look, LookId, Severity};
pub use id::Id;
pub use kind::Kind;
pub use kit::{Kit, KitFile, KitId, KitLine, KitLineFile, KitLineId, KitPosition, KitPositionId, KitState};
pub use limits::{NAME_MOST, TAG_MOST, TEXT_MOST};
pub use logbook::{Logbook, LotFile};
pub use lot::{Lot, LotId};
pub use machine::{
    Fitting, FittingId, Machine, MachineFile, MachineId, Placement, PlacementId, PowerOn, PowerOnId, PowerOnResult,
    Role, RoleId, Standing,
};
pub use marking::{FromFactory, Marking, MarkingId, Surface};
pub use material::{Material, MaterialId};
pub use material_table::{MATERIAL_COLUMNS, MaterialColumn, TableMaterial, read_materials};
pub use name::Name;
pub use part::{Originality, Part, PartId};
pub use part_file::PartFile;
pub use photo_mark::{MarkUse, PhotoMark, PhotoMarkId};
pub use picture::{Attachment, AttachmentId, AttachmentKind, Photo, PhotoFile, PhotoId, PhotoView};
pub use place::{Place, PlaceId};
pub use proof::{Proof, ProofId, ProofResult};
pub use reading::{Reading, ReadingId, Setting, SettingId};
pub use survey::{Answer, Given, Survey, SurveyId};
pub use table::{BadLine, BadTable, Column as TableColumn};
pub use when::{Moment, NoDate, When, YEARS};
pub use word::Word;
pub use work::{
    Competence, Hold, MaterialUse, MaterialUseId, Nature, Touches, Work, WorkAfter, WorkAfterId, WorkId, WorkState,
};
pub use workshop::{Workshop, WorkshopId, money_text};
