//! Why parts fit or do not: each reason as data, with its verdict, the rule it rests on, and the figure it lacks.

use std::sync::Arc;

use crate::assess::making::TrueTo;
use crate::record::{Figure, FindingId, PartId};
use crate::rules::connectors::Family;
use crate::trade::Source;
use crate::trade::clock::{ClockVerdict, Reach};
use crate::trade::core_voltage::{self, Nearness};
use crate::trade::drive::Outcome;
use crate::trade::setting::Setting;
use crate::trade::supply::LoadFault;

crate::words! {
    /// What fit says, from best to worst.
    Verdict {
        Fits = "fits", "Fits";
        Caveat = "caveat", "Fits with a caveat";
        NotKnown = "not_known", "Not known";
        No = "no", "Does not fit";
    }
}

crate::words! {
    /// What must hold between the parts of a machine.
    Constraint {
        Connectors = "connectors", "Connectors";
        Voltage = "voltage", "Core voltage";
        Clocks = "clocks", "Clocks";
        Memory = "memory", "Memory";
        Drives = "drives", "Disks";
        Power = "power", "Power";
        Cooling = "cooling", "Cooling";
        Space = "space", "Space";
        Dates = "dates", "Dates";
    }
}

impl Constraint {
    /// The constraint that a figure is asked for by.
    pub fn of_figure(figure: Figure) -> Self {
        use Figure as F;
        match figure {
            F::CoreVoltageV | F::CoreVoltageLeastV | F::CoreVoltageMostV => Self::Voltage,
            F::BusClockMhz
            | F::BusClockMostMhz
            | F::Multiplier
            | F::PciDivider
            | F::AgpDivider
            | F::CoreClockMhz
            | F::CacheDivider
            | F::CacheClockMostMhz => Self::Clocks,
            F::BusWidthBits
            | F::MemoryMostMb
            | F::MemorySocketMostMb
            | F::MemoryCachedMb
            | F::AccessAskedNs
            | F::MemoryMb
            | F::MemoryKb
            | F::CacheKb
            | F::AccessNs => Self::Memory,
            F::DiskMostMb | F::CapacityMb | F::CapacityKb | F::Cylinders | F::Heads | F::Sectors | F::SpeedX => {
                Self::Drives
            }
            F::Current3v3A
            | F::Current5vA
            | F::Current12vA
            | F::CurrentMinus5vA
            | F::CurrentMinus12vA
            | F::CurrentStandbyA
            | F::PowerW
            | F::Combined3v3And5vW
            | F::Rating3v3A
            | F::Rating5vA
            | F::Rating12vA
            | F::RatingMinus5vA
            | F::RatingMinus12vA
            | F::RatingStandbyA
            | F::Least3v3A
            | F::Least5vA
            | F::Least12vA => Self::Power,
            F::CoolerNeeded => Self::Cooling,
            F::LengthMm | F::HeightMm | F::CardRoomMm | F::CoolerRoomMm => Self::Space,
        }
    }
}

/// One reason. Parts lead back to what it is about.
#[derive(Clone, Debug, PartialEq)]
pub enum Because {
    /// Every connector that is needed is offered.
    AllPlugged { connectors: usize },
    /// The part's design, or its connectors, are not known.
    ConnectorsUnknown { part: PartId },
    /// `missing` connectors that the part needs are offered by none, or held by others; not known while another
    /// part's are not known, or a part that could offer them is still to come.
    NeedUnmet {
        part: PartId,
        connector: Arc<str>,
        family: Option<Family>,
        missing: u32,
        is_certain: bool,
        held_by: Box<[PartId]>,
    },
    /// Adapters would only plug into each other, round in a ring.
    AdapterRing { part: PartId, connector: Arc<str>, around: Box<[PartId]> },
    /// A connector without its shroud or key.
    ByEye { part: PartId, finding: FindingId },
    /// A figure is missing, so that a constraint cannot be judged.
    FigureMissing { constraint: Constraint, part: PartId, figure: Figure },
    /// A figure that cannot be, negative or no number: it counts as not told.
    FigureNonsense { part: PartId, figure: Figure, value: f64 },
    /// A setting was noted, and cannot be read as a number.
    SettingUnreadable { part: PartId, setting: Setting, said: Arc<str> },
    /// The core voltage that a part asks, and what its board or adapter is set to, or else gives nearest.
    Voltage { part: PartId, host: PartId, asks_v: f64, gives_v: f64, set: SetVoltage },
    /// The setting that the machine is judged at: as it is noted, or else the best.
    Runs { part: PartId, bus_mhz: f64, multiplier: f64, core_mhz: f64, is_noted: bool },
    /// The best setting, where another is noted.
    CouldRun { part: PartId, bus_mhz: f64, multiplier: f64, core_mhz: f64 },
    /// The multiplier that is noted is none that the processor obeys.
    NotObeyed { part: PartId, board: PartId, multiplier: f64, is_fixed: bool },
    /// No setting of the board is one that the processor obeys.
    NoSetting { part: PartId, board: PartId },
    /// Slower than the processor is sold for.
    RunsSlower { part: PartId, core_mhz: f64, sold_mhz: f64 },
    /// A clock of the chosen setting that goes beyond what it is specified for.
    ClockBeyond { part: PartId, clock: ClockVerdict },
    /// All memory is used.
    MemoryTaken { board: PartId, mb: f64 },
    /// `short` modules are wanted to fill the last bank of `per_bank`.
    BankShort { part: PartId, connector: Arc<str>, per_bank: u32, short: u32 },
    /// Modules of a bank are of several sizes.
    BankMixed { part: PartId, connector: Arc<str> },
    /// A module larger than a socket takes.
    ModuleTooLarge { part: PartId, mb: f64, most_mb: f64 },
    /// More memory than the board takes.
    TooMuchMemory { board: PartId, mb: f64, most_mb: f64 },
    /// More memory than the cache covers.
    NotAllCached { board: PartId, mb: f64, cached_mb: f64 },
    /// A module slower than the board asks at its fastest clock.
    ModuleSlow { part: PartId, ns: f64, asked_ns: f64 },
    /// What becomes of a disk behind this firmware, and with this file system.
    Disk { part: PartId, bytes: u64, outcome: Outcome, remedy: &'static str, source: Source },
    /// A disk whose controller brings its own firmware.
    DiskOnController { part: PartId, host: PartId },
    /// The supply carries it all.
    LoadCarried { part: PartId, watts: f64 },
    /// The supply does not.
    Load { part: PartId, fault: LoadFault },
    /// A cooler sits on the processor.
    Cooled { part: PartId, cooler: PartId },
    /// The cooler that it has is made for another socket with the same lugs: for a cooler of less power `is_weaker`.
    CoolerOfOther { part: PartId, cooler: PartId, socket: Arc<str>, lugs: Arc<str>, is_weaker: bool },
    /// Nothing cools the processor. `is_needed` where its design or socket asks for a cooler, else nobody told;
    /// `may_come` while it is only tried.
    NoCooler { part: PartId, is_needed: bool, may_come: bool },
    /// Everything that has this size has room.
    RoomEnough { case: PartId, size: Figure },
    /// A card longer, or a cooler higher, than the case has room for.
    NoRoom { part: PartId, case: PartId, mm: f64, room_mm: f64 },
    /// Every part was made within the window.
    InWindow { parts: usize },
    /// How a part stands to the machine's window.
    Dates { part: PartId, true_to: TrueTo, is_modern: bool },
}

/// Where a core voltage comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SetVoltage {
    /// The nearest that can be given: nothing is noted.
    Nearest,
    /// As it is noted; `best_v` is the nearest that could be set, where that is known.
    Noted { best_v: Option<f64> },
}

impl Because {
    pub fn verdict(&self) -> Verdict {
        match self {
            Self::AllPlugged { .. }
            | Self::Runs { .. }
            | Self::CouldRun { .. }
            | Self::MemoryTaken { .. }
            | Self::DiskOnController { .. }
            | Self::LoadCarried { .. }
            | Self::Cooled { .. }
            | Self::RoomEnough { .. }
            | Self::InWindow { .. } => Verdict::Fits,
            Self::ConnectorsUnknown { .. }
            | Self::FigureMissing { .. }
            | Self::FigureNonsense { .. }
            | Self::SettingUnreadable { .. }
            | Self::NotObeyed { is_fixed: false, .. }
            | Self::NoCooler { is_needed: false, .. }
            | Self::NoCooler { may_come: true, .. }
            | Self::CoolerOfOther { is_weaker: true, .. }
            | Self::NeedUnmet { is_certain: false, .. } => Verdict::NotKnown,
            Self::Voltage { asks_v, gives_v, .. } => match core_voltage::nearness(*asks_v, *gives_v) {
                Nearness::Same => Verdict::Fits,
                Nearness::Near => Verdict::Caveat,
                Nearness::Other => Verdict::No,
            },
            Self::ClockBeyond { clock, .. } if clock.reach == Reach::Far => Verdict::No,
            Self::Disk { outcome, .. } => match outcome {
                Outcome::SeenWhole => Verdict::Fits,
                Outcome::ClippedTo { .. } => Verdict::Caveat,
                Outcome::NotUsable => Verdict::No,
            },
            Self::Dates { true_to, is_modern, .. } => match true_to {
                TrueTo::Comfortable => Verdict::Fits,
                TrueTo::ByDesign { .. } => Verdict::Caveat,
                TrueTo::Apart { .. } if *is_modern => Verdict::Caveat,
                TrueTo::Apart { .. } => Verdict::No,
                TrueTo::NotKnown | TrueTo::Conflict => Verdict::NotKnown,
            },
            Self::NotObeyed { is_fixed: true, .. }
            | Self::CoolerOfOther { .. }
            | Self::ByEye { .. }
            | Self::RunsSlower { .. }
            | Self::ClockBeyond { .. }
            | Self::BankMixed { .. }
            | Self::TooMuchMemory { .. }
            | Self::NotAllCached { .. }
            | Self::ModuleSlow { .. }
            | Self::Load { fault: LoadFault::TooLittle { .. }, .. } => Verdict::Caveat,
            Self::NeedUnmet { .. }
            | Self::AdapterRing { .. }
            | Self::NoSetting { .. }
            | Self::BankShort { .. }
            | Self::ModuleTooLarge { .. }
            | Self::Load { .. }
            | Self::NoCooler { .. }
            | Self::NoRoom { .. } => Verdict::No,
        }
    }

    pub fn constraint(&self) -> Constraint {
        match self {
            Self::AllPlugged { .. }
            | Self::ConnectorsUnknown { .. }
            | Self::NeedUnmet { .. }
            | Self::AdapterRing { .. }
            | Self::ByEye { .. } => Constraint::Connectors,
            Self::FigureMissing { constraint, .. } => *constraint,
            Self::FigureNonsense { figure, .. } => Constraint::of_figure(*figure),
            Self::Voltage { .. } | Self::SettingUnreadable { setting: Setting::CoreVoltage, .. } => Constraint::Voltage,
            Self::Runs { .. }
            | Self::CouldRun { .. }
            | Self::NotObeyed { .. }
            | Self::SettingUnreadable { .. }
            | Self::NoSetting { .. }
            | Self::RunsSlower { .. }
            | Self::ClockBeyond { .. } => Constraint::Clocks,
            Self::MemoryTaken { .. }
            | Self::BankShort { .. }
            | Self::BankMixed { .. }
            | Self::ModuleTooLarge { .. }
            | Self::TooMuchMemory { .. }
            | Self::NotAllCached { .. }
            | Self::ModuleSlow { .. } => Constraint::Memory,
            Self::Disk { .. } | Self::DiskOnController { .. } => Constraint::Drives,
            Self::LoadCarried { .. } | Self::Load { .. } => Constraint::Power,
            Self::Cooled { .. } | Self::CoolerOfOther { .. } | Self::NoCooler { .. } => Constraint::Cooling,
            Self::RoomEnough { .. } | Self::NoRoom { .. } => Constraint::Space,
            Self::InWindow { .. } | Self::Dates { .. } => Constraint::Dates,
        }
    }

    /// The part that it is about, where it is about one more than about others.
    pub fn part(&self) -> Option<PartId> {
        match self {
            Self::AllPlugged { .. } | Self::InWindow { .. } => None,
            Self::ConnectorsUnknown { part }
            | Self::NeedUnmet { part, .. }
            | Self::AdapterRing { part, .. }
            | Self::ByEye { part, .. }
            | Self::FigureMissing { part, .. }
            | Self::FigureNonsense { part, .. }
            | Self::SettingUnreadable { part, .. }
            | Self::Voltage { part, .. }
            | Self::Runs { part, .. }
            | Self::CouldRun { part, .. }
            | Self::NotObeyed { part, .. }
            | Self::Cooled { part, .. }
            | Self::CoolerOfOther { part, .. }
            | Self::NoCooler { part, .. }
            | Self::NoSetting { part, .. }
            | Self::RunsSlower { part, .. }
            | Self::ClockBeyond { part, .. }
            | Self::BankShort { part, .. }
            | Self::BankMixed { part, .. }
            | Self::ModuleTooLarge { part, .. }
            | Self::ModuleSlow { part, .. }
            | Self::Disk { part, .. }
            | Self::DiskOnController { part, .. }
            | Self::LoadCarried { part, .. }
            | Self::Load { part, .. }
            | Self::NoRoom { part, .. }
            | Self::Dates { part, .. } => Some(*part),
            Self::MemoryTaken { board, .. } | Self::TooMuchMemory { board, .. } | Self::NotAllCached { board, .. } => {
                Some(*board)
            }
            Self::RoomEnough { case, .. } => Some(*case),
        }
    }

    /// Whether the sentence names this part.
    pub fn names(&self, part: PartId) -> bool {
        let beside = match self {
            Self::NeedUnmet { held_by: parts, .. } | Self::AdapterRing { around: parts, .. } => &**parts,
            Self::Voltage { host: other, .. }
            | Self::DiskOnController { host: other, .. }
            | Self::NoSetting { board: other, .. }
            | Self::NotObeyed { board: other, .. }
            | Self::Cooled { cooler: other, .. }
            | Self::CoolerOfOther { cooler: other, .. }
            | Self::NoRoom { case: other, .. } => std::slice::from_ref(other),
            _ => &[],
        };
        self.part() == Some(part) || beside.contains(&part)
    }

    /// The figure that is missing, and of which part.
    pub fn missing(&self) -> Option<(PartId, Figure)> {
        match self {
            Self::FigureMissing { part, figure, .. } | Self::FigureNonsense { part, figure, .. } => {
                Some((*part, *figure))
            }
            Self::NoCooler { part, is_needed: false, .. } => Some((*part, Figure::CoolerNeeded)),
            _ => None,
        }
    }

    /// The board or adapter that is to be set another way, where that would mend it.
    pub fn to_set(&self) -> Option<PartId> {
        match self {
            Self::SettingUnreadable { part, .. } => Some(*part),
            Self::NotObeyed { board, .. } => Some(*board),
            Self::Voltage { host, asks_v, set: SetVoltage::Noted { best_v: Some(best_v) }, .. } => {
                let could_be = core_voltage::nearness(*asks_v, *best_v) == Nearness::Same;
                (could_be && self.verdict() > Verdict::Fits).then_some(*host)
            }
            _ => None,
        }
    }

    /// What the verdict rests on.
    pub fn source(&self) -> Source {
        const PRINTED: Source = Source::practice("figures of the parts' designs, each with its own source");
        const MATCHED: Source =
            Source::practice("each need in an offer that takes it, as the table of connectors says");
        const BANKS: Source =
            Source::published("altsci.com and brainbell.com, memory banks: bus width by module width");
        const CLOCKS: Source =
            Source::practice("core = bus × multiplier; the safest setting is chosen, then the fastest");
        const COOLING: Source = Source::practice(
            "a processor without the cooler that it needs is destroyed in seconds; up to a 486 of 33 MHz none had one",
        );
        const DATES: Source = Source::practice("date codes and the design's years against the machine's window");
        match self {
            Self::ClockBeyond { clock, .. } => clock.source.clone(),
            Self::Disk { source, .. } => source.clone(),
            Self::AllPlugged { .. }
            | Self::ConnectorsUnknown { .. }
            | Self::NeedUnmet { .. }
            | Self::AdapterRing { .. } => MATCHED,
            Self::ByEye { .. } => Source::practice("usable while the pins stand straight"),
            Self::Voltage { .. } => core_voltage::source(),
            Self::Runs { .. }
            | Self::CouldRun { .. }
            | Self::NotObeyed { .. }
            | Self::NoSetting { .. }
            | Self::RunsSlower { .. } => CLOCKS,
            Self::SettingUnreadable { .. } => Source::practice("settings as they were found on the board"),
            Self::Cooled { .. } | Self::NoCooler { .. } => COOLING,
            Self::CoolerOfOther { .. } => Source::published(
                "coolerxtreme.tripod.com, CPU cooler installation; Wikipedia, Socket A: load limits of the bare die",
            ),
            Self::BankShort { .. } | Self::BankMixed { .. } => BANKS,
            Self::DiskOnController { .. } => Source::practice("a controller with its own firmware sets its own limit"),
            Self::LoadCarried { .. } | Self::Load { .. } => {
                Source::practice("the supply's label against the sum of what the parts draw")
            }
            Self::InWindow { .. } | Self::Dates { .. } => DATES,
            _ => PRINTED,
        }
    }
}
