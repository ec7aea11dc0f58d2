//! Rounds that Intake and the part sheet share: a survey, markings as read, capacitor positions, photographs.
//!
//! Each round is a value that keeps what is typed (and can be written into a draft), draws itself with `ui`, and
//! gives the records that are to be written. For a part that is in the logbook:
//!
//! ```ignore
//! // Survey again; a correction starts from `SurveyRound::correcting(&survey)`.
//! round.ui(ui, rules, file.part.kind);
//! change.put_all(round.entries(&file, rules, today, "who", "why"));
//! // Read another marking; a better reading starts from `MarkingsRound::correcting(&marking)`.
//! markings.ui(ui, &file, design);
//! change.put_all(markings.entries(file.part.id, today));
//! // Log capacitors.
//! capacitors.ui(ui);
//! change.put_all(capacitors.entries(&file, rules, today));
//! // Photographs are looked at and copied away from the window's thread, and come back by `photos.arrived`.
//! photos.ui(ui, page, view, outbox);
//! photos.hand_over(page, outbox);
//! change.put_all(photos.entries(file.part.id, today));
//! ```
//!
//! `entries` also hold what follows for the part's findings. What was wrongly typed is said beside its field; ask
//! `fault()` before writing.

mod capacitors;
mod days;
mod markings;
mod photos;
mod settings;
mod survey;

pub use capacitors::CapacitorsRound;
pub use days::days_text;
pub use markings::{MarkingsRound, joint_notes_ui};
pub use photos::PhotosRound;
pub use settings::{SettingsRound, has_settings};
pub use survey::SurveyRound;

/// A fresh key for a record that is about to be written.
pub fn new_uuid() -> uuid::Uuid {
    uuid::Uuid::now_v7()
}
