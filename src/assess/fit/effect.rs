//! What each reason of fit does to the answer on power. No reason is left out: a new one does not compile until it is
//! weighed here.

use super::because::{Because, Constraint, Verdict};
use crate::rules::PowerEffect;
use crate::rules::connectors::Family;
use crate::trade::clock::Reach;
use crate::trade::supply::LoadFault;

impl Because {
    /// What it does to "may power be applied?"
    pub fn power_effect(&self) -> PowerEffect {
        use PowerEffect::{No, NotKnown, Nothing, Remark};
        match self {
            Self::NeedUnmet { family, is_certain, .. } => unmet(*family, *is_certain),
            Self::FigureMissing { constraint, .. } => missing(*constraint),
            Self::FigureNonsense { figure, .. } => missing(Constraint::of_figure(*figure)),
            Self::Voltage { .. } => match self.verdict() {
                Verdict::Fits => Nothing,
                Verdict::Caveat => Remark,
                Verdict::NotKnown => NotKnown,
                Verdict::No => No,
            },
            Self::ClockBeyond { clock, .. } => match clock.reach {
                Reach::Within => Nothing,
                Reach::Slightly | Reach::Beyond => Remark,
                Reach::Far => No,
            },
            Self::Load { fault, .. } => match fault {
                LoadFault::TooMuch { .. } | LoadFault::TooMuchTogether { .. } | LoadFault::NoSuchRail { .. } => No,
                // Readings prove nothing then, and some supplies rise.
                LoadFault::TooLittle { .. } => NotKnown,
            },
            Self::NoCooler { is_needed, may_come: _, .. } => {
                if *is_needed {
                    No
                } else {
                    NotKnown
                }
            }
            Self::CoolerOfOther { is_weaker: true, .. }
            | Self::ConnectorsUnknown { .. }
            | Self::AdapterRing { .. }
            | Self::SettingUnreadable { .. }
            | Self::NotObeyed { is_fixed: false, .. }
            | Self::NoSetting { .. }
            // What has no room hangs out of its slot, or is not in.
            | Self::NoRoom { .. } => NotKnown,
            Self::CoolerOfOther { is_weaker: false, .. }
            | Self::NotObeyed { is_fixed: true, .. }
            | Self::ByEye { .. }
            | Self::RunsSlower { .. }
            | Self::BankShort { .. }
            | Self::BankMixed { .. }
            | Self::ModuleTooLarge { .. }
            | Self::TooMuchMemory { .. }
            | Self::NotAllCached { .. }
            | Self::ModuleSlow { .. } => Remark,
            Self::AllPlugged { .. }
            | Self::Runs { .. }
            | Self::CouldRun { .. }
            | Self::MemoryTaken { .. }
            | Self::Disk { .. }
            | Self::DiskOnController { .. }
            | Self::LoadCarried { .. }
            | Self::Cooled { .. }
            | Self::RoomEnough { .. }
            | Self::InWindow { .. }
            | Self::Dates { .. } => Nothing,
        }
    }
}

fn unmet(family: Option<Family>, is_certain: bool) -> PowerEffect {
    match family {
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
        None => PowerEffect::NotKnown,
        Some(Family::Processor | Family::Expansion | Family::Memory | Family::BoardPower | Family::DrivePower) => {
            if is_certain {
                PowerEffect::No
            } else {
                PowerEffect::NotKnown
            }
        }
    }
}

fn missing(constraint: Constraint) -> PowerEffect {
    match constraint {
        Constraint::Voltage | Constraint::Power | Constraint::Cooling | Constraint::Connectors => PowerEffect::NotKnown,
        Constraint::Clocks => PowerEffect::Remark,
        Constraint::Memory | Constraint::Space | Constraint::Drives | Constraint::Dates => PowerEffect::Nothing,
    }
}
