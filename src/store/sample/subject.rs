//! What a photograph of the sample workshop shows: the words in which the tables ask for a drawing.

use serde::Deserialize;

use crate::record::Kind;

/// The outer shape of what is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shape {
    /// A mainboard from above, slots to the left.
    Board,
    /// An expansion card, bracket to the left, contacts down.
    Card,
    /// A processor in its cartridge.
    Cartridge,
    /// A chip from above: processors, coprocessors, firmware.
    Chip,
    /// Memory and cache modules.
    Module,
    /// A drive from above with its label.
    Disk,
    /// A drive's face with a tray or a slot.
    Face,
    Supply,
    /// A case lying flat, seen from the front.
    Desktop,
    /// A case standing up, seen from the front.
    Tower,
    Keyboard,
    Monitor,
    /// Small things on the mat: posts, cables, coolers.
    Small,
}

/// What a drawn photograph shows. Places on it are shares of its width and height, 0–1.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default, rename_all = "kebab-case")]
pub struct Subject {
    pub shape: Shape,
    /// Large print: maker and model.
    pub title: String,
    /// Small print, line by line.
    pub lines: Vec<String>,
    /// The board's colour: green, dark, brown or blue.
    pub mask: String,
    /// Slots of a board from the left: isa, vlb, pci, agp.
    pub slots: Vec<String>,
    /// Where its processor goes: square, slot or none.
    pub processor: String,
    /// Memory sockets.
    pub memory: u32,
    /// What keeps its clock: barrel, coin, module, cut or none.
    pub cell: String,
    /// Chips, and capacitors.
    pub chips: u32,
    pub cans: u32,
    /// How many of the capacitors are domed, and how many are new.
    pub domed: u32,
    pub fresh: u32,
    /// A blue-green crust: where, and how far it reaches.
    pub crust: Option<[f32; 3]>,
    /// Rust: where, and how far it reaches.
    pub rust: Option<[f32; 3]>,
    /// A burnt place: where, and how far it reaches.
    pub burn: Option<[f32; 3]>,
    /// How yellow its plastic has become, 0–1.
    pub yellowed: f32,
    /// Plates along a case's front, a pale one where no light came; or what a small thing is: posts, ribbon, cooler,
    /// clock.
    pub front: Vec<String>,
    /// Whether a grey card lies beside it.
    pub card: bool,
    /// Tells two of a kind apart; the part's tag when left at 0.
    pub seed: u64,
}

impl Default for Subject {
    fn default() -> Self {
        Self {
            shape: Shape::Small,
            title: String::new(),
            lines: Vec::new(),
            mask: "green".to_owned(),
            slots: Vec::new(),
            processor: "square".to_owned(),
            memory: 4,
            cell: "none".to_owned(),
            chips: 4,
            cans: 6,
            domed: 0,
            fresh: 0,
            crust: None,
            rust: None,
            burn: None,
            yellowed: 0.15,
            front: Vec::new(),
            card: false,
            seed: 0,
        }
    }
}

/// Width of a drawn photograph, pixels.
pub const WIDTH_PX: u32 = 800;
/// Height of a drawn photograph, pixels.
pub const HEIGHT_PX: u32 = 600;

/// What a part of a kind looks like where the tables say nothing.
pub fn of_kind(kind: Kind) -> Subject {
    let shape = match kind {
        Kind::Mainboard => Shape::Board,
        Kind::VideoCard
        | Kind::SoundCard
        | Kind::NetworkCard
        | Kind::ControllerCard
        | Kind::MultiIoCard
        | Kind::Modem
        | Kind::Riser
        | Kind::ProcessorAdapter
        | Kind::VoltageModule
        | Kind::FlashAdapter
        | Kind::TestRig => Shape::Card,
        Kind::Processor | Kind::Coprocessor | Kind::FirmwareChip => Shape::Chip,
        Kind::MemoryModule | Kind::CacheModule => Shape::Module,
        Kind::HardDisk => Shape::Disk,
        Kind::OpticalDrive | Kind::FloppyDrive | Kind::TapeDrive => Shape::Face,
        Kind::PowerSupply => Shape::Supply,
        Kind::Case => Shape::Tower,
        Kind::Keyboard => Shape::Keyboard,
        Kind::Monitor => Shape::Monitor,
        Kind::Cooler
        | Kind::Fan
        | Kind::ClockModule
        | Kind::Media
        | Kind::Retention
        | Kind::Cable
        | Kind::PointingDevice
        | Kind::Other => Shape::Small,
    };
    let front = match kind {
        Kind::FloppyDrive | Kind::TapeDrive => vec!["floppy".to_owned()],
        Kind::Case => ["optical", "blank", "floppy"].map(str::to_owned).to_vec(),
        Kind::Retention => vec!["posts".to_owned()],
        Kind::Cable => vec!["ribbon".to_owned()],
        Kind::ClockModule => vec!["clock".to_owned()],
        Kind::Media => vec!["disc".to_owned()],
        _ => Vec::new(),
    };
    Subject { shape, front, memory: if shape == Shape::Module { 1 } else { 4 }, ..Subject::default() }
}
