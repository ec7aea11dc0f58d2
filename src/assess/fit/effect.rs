//! What each reason of fit does to the answer on power.

use super::because::{Because, Constraint, Verdict};
use crate::rules::PowerEffect;
use crate::rules::connectors::Family;
use crate::trade::clock::Reach;
use crate::trade::supply::LoadFault;

impl Because {
    /// What it does to "may power be applied?".
    pub fn power_effect(&self) -> PowerEffect {
        match self {
            Self::AllPlugged { .. }
            | Self::Runs { .. }
            | Self::MemoryTaken { .. }
            | Self::DiskOnController { .. }
            | Self::LoadCarried { .. }
            | Self::RoomEnough { .. }
            | Self::Disk { .. }
            | Self::InWindow { .. }
            | Self::Dates { .. } => PowerEffect::Nothing,
            Self::ConnectorsUnknown { .. } | Self::AdapterRing { .. } | Self::NoSetting { .. } => PowerEffect::NotKnown,
            Self::NeedUnmet { family, is_certain, .. } => unmet(*family, *is_certain),
            Self::FigureMissing { constraint, .. } => match constraint {
                Constraint::Voltage | Constraint::Power => PowerEffect::NotKnown,
                Constraint::Clocks => PowerEffect::Remark,
                Constraint::Connectors
                | Constraint::Memory
                | Constraint::Drives
                | Constraint::Space
                | Constraint::Dates => PowerEffect::Nothing,
            },
            Self::Voltage { .. } => match self.verdict() {
                Verdict::Fits => PowerEffect::Nothing,
                Verdict::Caveat => PowerEffect::Remark,
                Verdict::NotKnown => PowerEffect::NotKnown,
                Verdict::No => PowerEffect::No,
            },
            Self::ClockBeyond { clock, .. } if clock.reach == Reach::Far => PowerEffect::No,
            Self::Load { fault: LoadFault::TooLittle { .. }, .. } => PowerEffect::NotKnown,
            Self::Load { .. } => PowerEffect::No,
            Self::ByEye { .. }
            | Self::RunsSlower { .. }
            | Self::ClockBeyond { .. }
            | Self::BankShort { .. }
            | Self::BankMixed { .. }
            | Self::ModuleTooLarge { .. }
            | Self::TooMuchMemory { .. }
            | Self::NotAllCached { .. }
            | Self::ModuleSlow { .. }
            | Self::NoRoom { .. } => PowerEffect::Remark,
        }
    }
}

/// A connector without its place: what carries supply or logic voltages may have been forced.
fn unmet(family: Option<Family>, is_certain: bool) -> PowerEffect {
    match family {
        Some(Family::Processor | Family::Expansion | Family::Memory | Family::BoardPower | Family::DrivePower)
            if is_certain =>
        {
            PowerEffect::No
        }
        // A supply that lies beside its case, a drive without its bay, a lead that is not plugged in.
        Some(
            Family::Outline
            | Family::Mounting
            | Family::Disk
            | Family::Floppy
            | Family::Video
            | Family::Input
            | Family::Port,
        ) => PowerEffect::Remark,
        _ => PowerEffect::NotKnown,
    }
}
