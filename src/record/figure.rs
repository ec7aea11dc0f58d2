//! Figures that a design may have: what they are called, their units, and which are asked of which kind.

use super::{Kind, Word as _};

crate::words! {
    /// A figure of a design, by the name that [`DesignFigure::figure`](super::DesignFigure) stores. The unit stands in
    /// the name. Of a processor, a coprocessor or a module a clock or voltage is what it is made for; of a board what
    /// it can be set to, see [`Figure::repeats_on`].
    Figure {
        BusClockMhz = "bus_clock_mhz", "Bus clock";
        /// Highest bus clock that a board is specified for, where it can be set beyond.
        BusClockMostMhz = "bus_clock_most_mhz", "Bus clock specified at most";
        BusWidthBits = "bus_width_bits", "Width of the data bus";
        /// Several of a board that can be set, and of a processor that obeys it; one of a processor that has it fixed.
        Multiplier = "multiplier", "Multiplier";
        /// The bus clock by PCI's; none where the board chooses by itself.
        PciDivider = "pci_divider", "Bus clock by PCI clock";
        AgpDivider = "agp_divider", "Bus clock by AGP clock";
        /// As sold and printed.
        CoreClockMhz = "core_clock_mhz", "Core clock as sold";
        /// The core clock by that of the second-level cache beside it: 2 for half speed.
        CacheDivider = "cache_divider", "Core clock by cache clock";
        CacheClockMostMhz = "cache_clock_most_mhz", "Cache clock at most";
        CoreVoltageV = "core_voltage_v", "Core voltage";
        /// Of a board or adapter that regulates in steps too fine to be listed.
        CoreVoltageLeastV = "core_voltage_least_v", "Core voltage from";
        CoreVoltageMostV = "core_voltage_most_v", "Core voltage up to";
        /// 1 of a processor that needs one, 0 of one that runs without or brings its own.
        CoolerNeeded = "cooler_needed", "Cooler needed (1 yes, 0 no)";
        Current3v3A = "current_3v3_a", "Draws from +3.3 V";
        Current5vA = "current_5v_a", "Draws from +5 V";
        Current12vA = "current_12v_a", "Draws from +12 V";
        CurrentMinus5vA = "current_minus5v_a", "Draws from −5 V";
        CurrentMinus12vA = "current_minus12v_a", "Draws from −12 V";
        CurrentStandbyA = "current_standby_a", "Draws from +5 V standby";
        PowerW = "power_w", "Power in all";
        /// Most watts of the two rails together, as labels print it.
        Combined3v3And5vW = "combined_3v3_5v_w", "+3.3 V and +5 V together";
        Rating3v3A = "rating_3v3_a", "Gives on +3.3 V";
        Rating5vA = "rating_5v_a", "Gives on +5 V";
        Rating12vA = "rating_12v_a", "Gives on +12 V";
        /// 0 of a supply that has no such rail.
        RatingMinus5vA = "rating_minus5v_a", "Gives on −5 V";
        RatingMinus12vA = "rating_minus12v_a", "Gives on −12 V";
        RatingStandbyA = "rating_standby_a", "Gives on +5 V standby";
        Least3v3A = "least_3v3_a", "Least load on +3.3 V";
        Least5vA = "least_5v_a", "Least load on +5 V";
        Least12vA = "least_12v_a", "Least load on +12 V";
        /// Memory is counted in MB of 1,048,576 bytes.
        MemoryMostMb = "memory_most_mb", "Most memory it takes";
        MemorySocketMostMb = "memory_socket_most_mb", "Largest module in a socket";
        MemoryCachedMb = "memory_cached_mb", "Most memory it caches";
        /// The slowest memory that the board takes at its fastest bus clock.
        AccessAskedNs = "access_asked_ns", "Access time it asks of memory";
        /// As set-up screens count: MB of 1,048,576 bytes.
        DiskMostMb = "disk_most_mb", "Largest disk it reaches";
        MemoryMb = "memory_mb", "Size of the module";
        MemoryKb = "memory_kb", "Memory on it";
        CacheKb = "cache_kb", "Cache on it";
        AccessNs = "access_ns", "Access time";
        /// As drives are sold: MB of 1,000,000 bytes.
        CapacityMb = "capacity_mb", "Capacity";
        CapacityKb = "capacity_kb", "Capacity of a disk";
        Cylinders = "cylinders", "Cylinders";
        Heads = "heads", "Heads";
        Sectors = "sectors", "Sectors a track";
        SpeedX = "speed_x", "Speed";
        LengthMm = "length_mm", "Length";
        HeightMm = "height_mm", "Height";
        CardRoomMm = "card_room_mm", "Room for the length of cards";
        CoolerRoomMm = "cooler_room_mm", "Room for the height of a cooler";
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
        Some("bits") => "bits",
        _ => "",
    }
}

/// Whether a figure of this stored name can only be above 0: a clock, a width, a multiplier or divider. Any other of a
/// design may be 0 and is never below.
pub fn figure_is_above_zero(name: &str) -> bool {
    matches!(name.rsplit('_').next(), Some("mhz" | "bits" | "multiplier" | "divider"))
}

impl Figure {
    /// Those that are asked of a kind's designs, in the order a person meets them; common practice, no source.
    pub fn asked_of(kind: Kind) -> Vec<Self> {
        Self::ALL.iter().copied().filter(|figure| figure.is_asked_of(kind)).collect()
    }

    /// Whether a design of this kind may have the figure several times: every clock, multiplier, divider or voltage
    /// that it can be set to.
    pub fn repeats_on(self, kind: Kind) -> bool {
        use Kind::{Mainboard, Processor, ProcessorAdapter, VoltageModule};
        match self {
            Self::BusClockMhz | Self::PciDivider | Self::AgpDivider => kind == Mainboard,
            Self::Multiplier => matches!(kind, Mainboard | Processor),
            Self::CoreVoltageV => matches!(kind, Mainboard | ProcessorAdapter | VoltageModule),
            _ => false,
        }
    }

    fn is_asked_of(self, kind: Kind) -> bool {
        use Kind::{
            CacheModule, Case, ControllerCard, Cooler, FloppyDrive, HardDisk, Mainboard, MemoryModule, Monitor,
            OpticalDrive, PowerSupply, Processor, ProcessorAdapter, VideoCard, VoltageModule,
        };
        match self {
            Self::BusClockMhz => matches!(kind, Mainboard | Processor | Kind::Coprocessor | MemoryModule),
            Self::Multiplier => matches!(kind, Mainboard | Processor),
            Self::CoreClockMhz | Self::CacheDivider | Self::CacheClockMostMhz | Self::CoolerNeeded => kind == Processor,
            Self::CoreVoltageV => {
                matches!(kind, Mainboard | Processor | Kind::Coprocessor | ProcessorAdapter | VoltageModule)
            }
            Self::CoreVoltageLeastV | Self::CoreVoltageMostV => {
                matches!(kind, Mainboard | ProcessorAdapter | VoltageModule)
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
            Self::Combined3v3And5vW
            | Self::Rating3v3A
            | Self::Rating5vA
            | Self::Rating12vA
            | Self::RatingMinus5vA
            | Self::RatingMinus12vA
            | Self::RatingStandbyA
            | Self::Least3v3A
            | Self::Least5vA
            | Self::Least12vA => kind == PowerSupply,
            Self::DiskMostMb => matches!(kind, Mainboard | ControllerCard),
            Self::CurrentStandbyA
            | Self::BusClockMostMhz
            | Self::BusWidthBits
            | Self::PciDivider
            | Self::AgpDivider
            | Self::MemoryMostMb
            | Self::MemorySocketMostMb
            | Self::MemoryCachedMb
            | Self::AccessAskedNs => kind == Mainboard,
            Self::MemoryMb => kind == MemoryModule,
            Self::MemoryKb => kind == VideoCard,
            Self::CacheKb => matches!(kind, CacheModule | Processor),
            Self::AccessNs => matches!(kind, MemoryModule | CacheModule),
            Self::CapacityMb => matches!(kind, HardDisk | Kind::FlashAdapter | Kind::Media),
            Self::Cylinders | Self::Heads | Self::Sectors => kind == HardDisk,
            Self::CapacityKb => kind == FloppyDrive,
            Self::SpeedX => kind == OpticalDrive,
            Self::HeightMm => kind == Cooler,
            Self::CardRoomMm | Self::CoolerRoomMm => kind == Case,
        }
    }
}
