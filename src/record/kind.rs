//! The kinds of part that the trade tells apart.

crate::words! {
    /// What a part is. Rules (questions, work, proofs) are keyed by it.
    Kind {
        Mainboard = "mainboard", "Mainboard";
        Processor = "processor", "Processor";
        Coprocessor = "coprocessor", "Coprocessor";
        ProcessorAdapter = "processor_adapter", "Processor adapter";
        VoltageModule = "voltage_module", "Voltage module";
        Cooler = "cooler", "Cooler";
        Fan = "fan", "Fan";
        MemoryModule = "memory_module", "Memory module";
        CacheModule = "cache_module", "Cache module";
        FirmwareChip = "firmware_chip", "Firmware chip";
        ClockModule = "clock_module", "Clock module";
        VideoCard = "video_card", "Video card";
        SoundCard = "sound_card", "Sound card";
        NetworkCard = "network_card", "Network card";
        ControllerCard = "controller_card", "Controller card";
        MultiIoCard = "multi_io_card", "Multi-I/O card";
        Riser = "riser", "Riser";
        Modem = "modem", "Modem";
        HardDisk = "hard_disk", "Hard disk";
        FlashAdapter = "flash_adapter", "Flash-card adapter";
        OpticalDrive = "optical_drive", "Optical drive";
        FloppyDrive = "floppy_drive", "Floppy drive";
        TapeDrive = "tape_drive", "Tape or cartridge drive";
        Media = "media", "Media";
        PowerSupply = "power_supply", "Power supply";
        Case = "case", "Case";
        Retention = "retention", "Retention hardware";
        Cable = "cable", "Cable";
        Keyboard = "keyboard", "Keyboard";
        PointingDevice = "pointing_device", "Pointing device";
        Monitor = "monitor", "Monitor";
        TestRig = "test_rig", "Test rig";
        Other = "other", "Other";
    }
}

impl Kind {
    /// Whether it goes into an expansion slot.
    pub fn is_card(self) -> bool {
        matches!(
            self,
            Self::VideoCard
                | Self::SoundCard
                | Self::NetworkCard
                | Self::ControllerCard
                | Self::MultiIoCard
                | Self::Modem
        )
    }

    /// Whether it reads or writes and hangs on a drive's plug.
    pub fn is_drive(self) -> bool {
        matches!(self, Self::HardDisk | Self::FlashAdapter | Self::OpticalDrive | Self::FloppyDrive | Self::TapeDrive)
    }
}
