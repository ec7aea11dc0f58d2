//! Photographs and other attachments: what the logbook knows of a file that lies beside it.

use serde::{Deserialize, Serialize};

use super::{Id, LotId, MachineId, Moment, PartId, PhotoMark, ProofId, When};

/// The key of a [`Photo`].
pub type PhotoId = Id<Photo>;

crate::words! {
    /// What a photograph shows.
    PhotoView {
        Overview = "overview", "Overview";
        Detail = "detail", "Detail";
        Before = "before", "Before work";
        After = "after", "After work";
        Settings = "settings", "Jumpers and settings";
        Label = "label", "Label or marking";
    }
}

/// A photograph of a part, a machine or a lot; the picture itself is a file named by its content's hash.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Photo {
    pub id: PhotoId,
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    pub lot: Option<LotId>,
    /// SHA-256 of the file's bytes, in hexadecimal.
    pub content: String,
    /// The file's kind as it ends: "jpg", "png".
    pub extension: String,
    pub width_px: u32,
    pub height_px: u32,
    pub added: Moment,
    /// When it was taken.
    pub taken: When,
    pub view: PhotoView,
    pub caption: String,
    /// Whether it is a map of the part: the picture on which its places are shown; front and back may both be one.
    #[serde(default)]
    pub is_map: bool,
}

/// A photograph with its marks.
#[derive(Clone, Debug, PartialEq)]
pub struct PhotoFile {
    pub photo: Photo,
    pub marks: Vec<PhotoMark>,
}

/// The key of an [`Attachment`].
pub type AttachmentId = Id<Attachment>;

crate::words! {
    /// What an attached file is.
    AttachmentKind {
        FirmwareImage = "firmware_image", "Firmware image";
        DriveImage = "drive_image", "Drive image";
        Settings = "settings", "Settings";
        Manual = "manual", "Manual page";
        Receipt = "receipt", "Receipt";
        Log = "log", "Test log";
        Other = "other", "Other file";
    }
}

/// A file that goes with a part, a machine or a lot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Attachment {
    pub id: AttachmentId,
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    pub lot: Option<LotId>,
    pub kind: AttachmentKind,
    /// SHA-256 of the file's bytes, in hexadecimal.
    pub content: String,
    /// Its name when it was added.
    pub file_name: String,
    pub bytes: u64,
    pub added: Moment,
    pub note: String,
    /// The proof whose log it is.
    pub proof: Option<ProofId>,
}
