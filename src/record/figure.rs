//! Figures that a design may have: what they are called, their units, and which are asked of which kind.

use super::{Kind, Word as _};

crate::words! {
    /// A figure of a design, by the name that [`DesignFigure::figure`](super::DesignFigure) stores. The unit stands in
    /// the name.
    Figure {
        BusClockMhz = "bus_clock_mhz", "Bus clock";
        Multiplier = "multiplier", "Multiplier";
        CoreVoltageV = "core_voltage_v", "Core voltage";
        Current3v3A = "current_3v3_a", "Draws from +3.3 V";
        Current5vA = "current_5v_a", "Draws from +5 V";
        Current12vA = "current_12v_a", "Draws from +12 V";
        CurrentMinus5vA = "current_minus5v_a", "Draws from −5 V";
        CurrentMinus12vA = "current_minus12v_a", "Draws from −12 V";
        PowerW = "power_w", "Power in all";
        Rating3v3A = "rating_3v3_a", "Gives on +3.3 V";
        Rating5vA = "rating_5v_a", "Gives on +5 V";
        Rating12vA = "rating_12v_a", "Gives on +12 V";
        RatingMinus5vA = "rating_minus5v_a", "Gives on −5 V";
        RatingMinus12vA = "rating_minus12v_a", "Gives on −12 V";
        MemoryMostMb = "memory_most_mb", "Most memory it takes";
        MemoryCachedMb = "memory_cached_mb", "Most memory it caches";
        DiskMostMb = "disk_most_mb", "Largest disk it reaches";
        MemoryMb = "memory_mb", "Size of the module";
        MemoryKb = "memory_kb", "Memory on it";
        CacheKb = "cache_kb", "Cache on it";
        AccessNs = "access_ns", "Access time";
        CapacityMb = "capacity_mb", "Capacity";
        CapacityKb = "capacity_kb", "Capacity of a disk";
        Cylinders = "cylinders", "Cylinders";
        Heads = "heads", "Heads";
        Sectors = "sectors", "Sectors a track";
        SpeedX = "speed_x", "Speed";
        LengthMm = "length_mm", "Length";
        HeightMm = "height_mm", "Height";
    }
}

/// The unit that a figure's stored name ends in, as people write it; empty for a bare number.
pub fn figure_unit(name: &str) -> &'static str {
    match name.rsplit('_').next() {
        Some("mhz") => "MHz",
        Some("v") => "V",
        Some("a") => "A",
        Some("w") => "W",
        Some("mb") => "MB",
        Some("kb") => "KB",
        Some("ns") => "ns",
        Some("mm") => "mm",
        Some("x") => "×",
        _ => "",
    }
}

impl Figure {
    /// Those that are asked of a kind's designs, in the order a person meets them; common practice, no source.
    pub fn asked_of(kind: Kind) -> Vec<Self> {
        Self::ALL.iter().copied().filter(|figure| figure.is_asked_of(kind)).collect()
    }

    fn is_asked_of(self, kind: Kind) -> bool {
        use Kind::{
            CacheModule, Cooler, FloppyDrive, HardDisk, Mainboard, MemoryModule, Monitor, OpticalDrive, PowerSupply,
            Processor, VideoCard,
        };
        match self {
            Self::BusClockMhz => matches!(kind, Mainboard | Processor | Kind::Coprocessor | MemoryModule),
            Self::Multiplier => kind == Processor,
            Self::CoreVoltageV => {
                matches!(kind, Processor | Kind::Coprocessor | Kind::ProcessorAdapter | Kind::VoltageModule)
            }
            Self::Current3v3A => kind.is_card() || matches!(kind, Mainboard | Processor | MemoryModule),
            Self::Current5vA => {
                kind.is_card()
                    || kind.is_drive()
                    || matches!(kind, Mainboard | Processor | Kind::Coprocessor | MemoryModule | CacheModule)
            }
            Self::Current12vA => kind.is_card() || kind.is_drive() || matches!(kind, Mainboard | Cooler | Kind::Fan),
            Self::CurrentMinus5vA | Self::CurrentMinus12vA | Self::LengthMm => kind.is_card(),
            Self::PowerW => matches!(kind, PowerSupply | Monitor),
            Self::Rating3v3A | Self::Rating5vA | Self::Rating12vA | Self::RatingMinus5vA | Self::RatingMinus12vA => {
                kind == PowerSupply
            }
            Self::MemoryMostMb | Self::MemoryCachedMb | Self::DiskMostMb => kind == Mainboard,
            Self::MemoryMb => kind == MemoryModule,
            Self::MemoryKb => kind == VideoCard,
            Self::CacheKb => matches!(kind, CacheModule | Processor),
            Self::AccessNs => matches!(kind, MemoryModule | CacheModule),
            Self::CapacityMb | Self::Cylinders | Self::Heads | Self::Sectors => kind == HardDisk,
            Self::CapacityKb => kind == FloppyDrive,
            Self::SpeedX => kind == OpticalDrive,
            Self::HeightMm => kind == Cooler,
        }
    }
}
