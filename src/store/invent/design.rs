//! Invented designs: makers, models, years, connectors, figures.

use super::super::authoring::key;
use super::chance::Chance;
use super::figures::figures;
use crate::record::{Change, Design, DesignConnector, DesignFigure, DesignId, Kind, Side, When, Word};

/// A design that parts are made of.
pub struct Invented {
    pub id: DesignId,
    pub kind: Kind,
    /// Which of the [`AGES`] it belongs to.
    pub age: usize,
    pub first_year: u32,
    pub last_year: u32,
    pub maker: &'static str,
}

/// Kinds and how many in a thousand parts are of them.
pub const KINDS: [(Kind, u32); 33] = [
    (Kind::Mainboard, 150),
    (Kind::VideoCard, 120),
    (Kind::SoundCard, 80),
    (Kind::NetworkCard, 70),
    (Kind::ControllerCard, 60),
    (Kind::MultiIoCard, 60),
    (Kind::Modem, 30),
    (Kind::MemoryModule, 100),
    (Kind::Processor, 60),
    (Kind::HardDisk, 70),
    (Kind::FloppyDrive, 40),
    (Kind::OpticalDrive, 40),
    (Kind::PowerSupply, 40),
    (Kind::Case, 20),
    (Kind::Keyboard, 10),
    (Kind::PointingDevice, 5),
    (Kind::Monitor, 5),
    (Kind::Cooler, 5),
    (Kind::Fan, 3),
    (Kind::Coprocessor, 3),
    (Kind::ProcessorAdapter, 3),
    (Kind::VoltageModule, 3),
    (Kind::CacheModule, 3),
    (Kind::FirmwareChip, 3),
    (Kind::ClockModule, 3),
    (Kind::Riser, 3),
    (Kind::FlashAdapter, 2),
    (Kind::TapeDrive, 2),
    (Kind::Media, 2),
    (Kind::Retention, 2),
    (Kind::Cable, 1),
    (Kind::TestRig, 1),
    (Kind::Other, 1),
];

const MAKERS: [&str; 12] = [
    "Aldmoor",
    "Wexdale",
    "Lorrith",
    "Tumok",
    "Quoxby",
    "Orbelis",
    "Sonderwick",
    "Fennimark",
    "Drammoth",
    "Ostrobyte",
    "Hallowick",
    "Galvenor",
];

/// Connectors, each with how many.
type Connectors = Vec<(&'static str, u32)>;

/// An age of the trade: its years, and the connectors of its parts.
pub struct Age {
    years: (u32, u32),
    board: &'static [(&'static str, u32)],
    outline: &'static str,
    plug: &'static str,
    socket: &'static str,
    memory: &'static str,
    video: &'static str,
    card: &'static str,
    keyboard: &'static str,
}

/// The ages of the trade that machines are invented for.
pub const AGES: [Age; 4] = [
    Age {
        years: (1988, 1991),
        board: &[("isa-16", 7), ("simm-30", 8), ("pga-132", 1), ("keyboard-at-din", 1)],
        outline: "baby-at",
        plug: "at-p8p9",
        socket: "pga-132",
        memory: "simm-30",
        video: "isa-16",
        card: "isa-16",
        keyboard: "keyboard-at-din",
    },
    Age {
        years: (1992, 1994),
        board: &[("vlb", 2), ("isa-16", 5), ("simm-72", 4), ("socket-3", 1), ("keyboard-at-din", 1)],
        outline: "baby-at",
        plug: "at-p8p9",
        socket: "socket-3",
        memory: "simm-72",
        video: "vlb",
        card: "isa-16",
        keyboard: "keyboard-at-din",
    },
    Age {
        years: (1995, 1997),
        board: &[("pci-5v", 4), ("isa-16", 4), ("simm-72", 4), ("socket-7", 1), ("keyboard-at-din", 1)],
        outline: "baby-at",
        plug: "at-p8p9",
        socket: "socket-7",
        memory: "simm-72",
        video: "pci-5v",
        card: "isa-16",
        keyboard: "keyboard-at-din",
    },
    Age {
        years: (1998, 2001),
        board: &[
            ("agp-universal", 1),
            ("pci-5v", 5),
            ("dimm-168-sdram", 3),
            ("socket-370-fcpga", 1),
            ("keyboard-mini-din", 1),
        ],
        outline: "atx",
        plug: "atx-20",
        socket: "socket-370-fcpga",
        memory: "dimm-168-sdram",
        video: "agp-universal",
        card: "pci-5v",
        keyboard: "keyboard-mini-din",
    },
];

impl Age {
    /// The answer that board and supply give about the plug between them.
    pub fn plug_answer(&self) -> &'static str {
        if self.plug == "atx-20" { "atx" } else { "two-plug" }
    }

    /// The first year of the age.
    pub fn first_year(&self) -> u32 {
        self.years.0
    }

    /// What a part of a kind needs, and what it offers.
    fn connectors(&self, kind: Kind) -> (Connectors, Connectors) {
        let needs = match kind {
            Kind::Mainboard => vec![(self.outline, 1), (self.plug, 1)],
            Kind::Processor => vec![(self.socket, 1)],
            Kind::MemoryModule => vec![(self.memory, 1)],
            Kind::VideoCard => vec![(self.video, 1)],
            Kind::SoundCard | Kind::NetworkCard | Kind::ControllerCard | Kind::MultiIoCard | Kind::Modem => {
                vec![(self.card, 1)]
            }
            Kind::HardDisk => vec![("ide-40", 1), ("drive-4pin", 1), ("bay-3.5-hidden", 1)],
            Kind::OpticalDrive => vec![("ide-40", 1), ("drive-4pin", 1), ("bay-5.25", 1)],
            Kind::FloppyDrive => vec![("floppy-34", 1), ("drive-4pin-small", 1), ("bay-3.5", 1)],
            Kind::PowerSupply => vec![("supply-atx", 1)],
            Kind::Keyboard => vec![(self.keyboard, 1)],
            Kind::Monitor => vec![("vga-15", 1)],
            Kind::PointingDevice => vec![("serial-9", 1)],
            _ => Vec::new(),
        };
        let offers = match kind {
            Kind::Mainboard => self.board.to_vec(),
            Kind::VideoCard => vec![("vga-15", 1)],
            Kind::MultiIoCard => vec![("ide-40", 4), ("floppy-34", 2), ("serial-9", 2), ("parallel-25", 1)],
            Kind::ControllerCard => vec![("ide-40", 4), ("floppy-34", 2)],
            Kind::PowerSupply => vec![(self.plug, 1), ("drive-4pin", 5), ("drive-4pin-small", 2)],
            Kind::Case => {
                vec![(self.outline, 1), ("supply-atx", 1), ("bay-5.25", 3), ("bay-3.5", 2), ("bay-3.5-hidden", 3)]
            }
            _ => Vec::new(),
        };
        (needs, offers)
    }
}

/// About one design for twenty-five parts, and at least one of each kind in each age.
pub fn designs(parts: u32, chance: &mut Chance, change: &mut Change) -> Vec<Invented> {
    let mut designs = Vec::new();
    for age in 0..AGES.len() {
        for (kind, weight) in KINDS {
            let more = parts / 25 * weight / 1000 / AGES.len() as u32;
            for number in 0..=more {
                designs.push(design(kind, age, number, chance, change));
            }
        }
    }
    designs
}

fn design(kind: Kind, age: usize, number: u32, chance: &mut Chance, change: &mut Change) -> Invented {
    let (first, last) = AGES[age].years;
    let first_year = chance.between(first, last);
    let last_year = first_year + chance.between(1, 3);
    let maker = *chance.of(&MAKERS);
    let letters = ["A", "B", "K", "M", "R", "T", "V", "X"];
    let model = format!("{}{}-{}", chance.of(&letters), chance.of(&letters), chance.between(100, 999));
    let year = |year: u32| When::Year(year as i32);
    let design = Design {
        id: key(&mut || chance.id()),
        kind,
        maker: maker.to_owned(),
        model,
        revision: if number.is_multiple_of(3) { String::new() } else { format!("1.{number}") },
        introduced: year(first_year),
        discontinued: year(last_year),
        note: String::new(),
    };
    let id = design.id;
    change.put(design);
    let (needs, offers) = AGES[age].connectors(kind);
    for (side, connectors) in [(Side::Needs, needs), (Side::Offers, offers)] {
        for (connector, count) in connectors {
            let (connector, note) = (connector.to_owned(), String::new());
            change.put(DesignConnector { id: key(&mut || chance.id()), design: id, side, connector, count, note });
        }
    }
    for (figure, value) in figures(kind, age, chance) {
        let (figure, source) = (figure.name().to_owned(), "label".to_owned());
        change.put(DesignFigure { id: key(&mut || chance.id()), design: id, figure, value, source, at_bus_mhz: None });
    }
    Invented { id, kind, age, first_year, last_year, maker }
}
