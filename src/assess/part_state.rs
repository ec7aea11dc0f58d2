//! The one word that a row of parts shows.

use super::proofs::ProofStanding;
use crate::record::{Custody, Hold, PartFile};

crate::words! {
    /// The one word for how a part stands, most urgent first.
    PartState {
        KeptApart = "kept_apart", "Kept apart";
        HeldStorage = "held_storage", "Work before storage";
        HeldPower = "held_power", "Work before power";
        Unidentified = "unidentified", "Not identified";
        Unsurveyed = "unsurveyed", "Not surveyed";
        HeldFitting = "held_fitting", "Work before fitting";
        Undecided = "undecided", "To be decided";
        HeldReady = "held_ready", "Work before ready";
        ToBeProven = "to_be_proven", "To be proven";
        Proven = "proven", "Proven";
        Sound = "sound", "Nothing outstanding";
        LentOut = "lent_out", "Lent out";
        Gone = "gone", "Gone";
    }
}

impl PartState {
    /// The word for a part: what it is held up by comes before what is not known, and that before proofs.
    pub(super) fn of(file: &PartFile, hold: Option<Hold>, undecided: bool, proofs: &[ProofStanding]) -> Self {
        match file.custody_now() {
            Custody::LentOut => return Self::LentOut,
            Custody::GivenBack | Custody::Sold | Custody::Scrapped => return Self::Gone,
            Custody::Mine | Custody::BorrowedIn => {}
        }
        if file.part.is_quarantined() {
            return Self::KeptApart;
        }
        match hold {
            Some(Hold::Storage) => Self::HeldStorage,
            Some(Hold::Power) => Self::HeldPower,
            _ if file.part.design.is_none() && file.part.name.is_empty() => Self::Unidentified,
            _ if file.surveys.is_empty() => Self::Unsurveyed,
            Some(Hold::Fitting) => Self::HeldFitting,
            _ if undecided => Self::Undecided,
            Some(Hold::Ready) => Self::HeldReady,
            Some(Hold::Looks) | None if proofs.iter().any(ProofStanding::is_lacking) => Self::ToBeProven,
            _ if proofs.iter().any(|proof| proof.rule.required) => Self::Proven,
            _ => Self::Sound,
        }
    }
}
