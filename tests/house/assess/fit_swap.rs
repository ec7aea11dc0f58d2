//! One part exchanged for another: whatever is exchanged, the answer is that of the machine judged from nothing.

use benchwright::assess::fit::{Asked, Because, Build, Models, Noted, Piece};
use benchwright::record::{Figure, Kind};
use benchwright::rules::Rules;
use benchwright::trade::Span;
use benchwright::trade::setting::Setting;

use crate::chance::Chance;
use crate::fitting::Fitting;

const KINDS: [Kind; 16] = [
    Kind::Mainboard,
    Kind::Processor,
    Kind::Coprocessor,
    Kind::ProcessorAdapter,
    Kind::VoltageModule,
    Kind::MemoryModule,
    Kind::MemoryModule,
    Kind::VideoCard,
    Kind::SoundCard,
    Kind::ControllerCard,
    Kind::HardDisk,
    Kind::Cable,
    Kind::Cooler,
    Kind::PowerSupply,
    Kind::Case,
    Kind::Riser,
];

const PLUGS: [&str; 13] = [
    "socket-5",
    "socket-7",
    "pga-68-coprocessor",
    "voltage-module-socket-7",
    "simm-72",
    "simm-30",
    "isa-16",
    "pci-5v",
    "ide-40",
    "scsi-50",
    "drive-4pin",
    "baby-at",
    "cooler-socket-7",
];

const FIGURES: [(Figure, [f64; 3]); 23] = [
    (Figure::BusClockMhz, [50.0, 66.0, 75.0]),
    (Figure::Multiplier, [1.5, 2.0, 3.0]),
    (Figure::CoreClockMhz, [100.0, 133.0, 200.0]),
    (Figure::CoreVoltageV, [2.8, 3.3, 3.45]),
    (Figure::PciDivider, [1.0, 2.0, 3.0]),
    (Figure::BusWidthBits, [16.0, 32.0, 64.0]),
    (Figure::MemoryMostMb, [8.0, 64.0, 128.0]),
    (Figure::MemorySocketMostMb, [4.0, 16.0, 32.0]),
    (Figure::MemoryCachedMb, [8.0, 32.0, 64.0]),
    (Figure::MemoryMb, [4.0, 8.0, 16.0]),
    (Figure::AccessAskedNs, [60.0, 70.0, 80.0]),
    (Figure::AccessNs, [60.0, 70.0, 80.0]),
    (Figure::DiskMostMb, [504.0, 8064.0, 32_256.0]),
    (Figure::CapacityMb, [210.0, 1280.0, 40_000.0]),
    (Figure::CoolerNeeded, [0.0, 1.0, 1.0]),
    (Figure::Current5vA, [0.5, 2.0, 12.0]),
    (Figure::Current12vA, [0.1, 0.5, 3.0]),
    (Figure::Rating5vA, [10.0, 20.0, 25.0]),
    (Figure::Rating12vA, [0.0, 4.0, 8.0]),
    (Figure::Combined3v3And5vW, [60.0, 100.0, 140.0]),
    (Figure::LengthMm, [120.0, 220.0, 330.0]),
    (Figure::CardRoomMm, [200.0, 300.0, 340.0]),
    (Figure::HeightMm, [30.0, 50.0, 90.0]),
];

const SETTINGS: [(&str, [&str; 3]); 4] = [
    ("bus clock", ["66 MHz", "50", "as printed"]),
    ("multiplier", ["x2", "3,0", "?"]),
    ("core voltage", ["3.3 V", "2.8", "low"]),
    ("PCI divider", ["2", "1/3", "?"]),
];

fn piece(kind: Kind, chance: &mut Chance, fitting: &mut Fitting) -> Piece {
    let mut ports = |most: usize| -> Vec<(&str, u32)> {
        (0..chance.below(most)).map(|_| (PLUGS[chance.below(PLUGS.len())], 1 + chance.below(3) as u32)).collect()
    };
    let (needs, offers) = (ports(3), ports(5));
    let mut figures = Vec::new();
    for (figure, values) in FIGURES {
        for value in values {
            if chance.below(4) == 0 {
                // Now and then what cannot be.
                figures.push((figure, if chance.below(40) == 0 { -value } else { value }));
            }
        }
    }
    let mut piece = fitting.piece(kind, &needs, &offers, &figures);
    for (name, values) in SETTINGS {
        if chance.below(5) == 0 {
            let said = values[chance.below(3)];
            let setting = Setting::of_name(name).unwrap();
            piece.noted.push(Noted { setting, value: setting.read(said), said: said.into() });
        }
    }
    piece
}

fn told(build: &Build) -> Vec<Because> {
    build.because().cloned().collect()
}

#[test]
fn a_swap_answers_as_the_whole_machine_does() {
    let rules = Rules::shipped();
    let window = Span::year(1996);
    for seed in 0..300 {
        let chance = &mut Chance(seed);
        let mut fitting = Fitting::new(&rules);
        let kinds: Vec<Kind> = (0..2 + chance.below(14)).map(|_| KINDS[chance.below(KINDS.len())]).collect();
        let pieces: Vec<Piece> = kinds.iter().map(|kind| piece(*kind, chance, &mut fitting)).collect();
        let mut build = Build::new(&rules, pieces, Asked { window, ..Asked::default() });
        for _ in 0..12 {
            let place = chance.below(kinds.len());
            // Mostly another part of the kind, now and then of another.
            let kind = if chance.below(5) == 0 { KINDS[chance.below(KINDS.len())] } else { kinds[place] };
            let new = piece(kind, chance, &mut fitting);
            let old = build.swap(place, new);
            let whole = Build::new(&rules, build.pieces().to_vec(), Asked { window, ..Asked::default() });
            assert_eq!(told(&build), told(&whole), "seed {seed}, {kind:?} for {:?}", old.kind());
            assert_eq!(build.setting(), whole.setting());
            assert_eq!(build.tally(), whole.tally());
        }
    }
}

#[test]
fn a_part_taken_out_and_put_back_leaves_the_answer_as_it_was() {
    let rules = Rules::shipped();
    let chance = &mut Chance(7);
    let mut fitting = Fitting { models: Models::new(&rules), pieces: Vec::new() };
    let pieces: Vec<Piece> = KINDS.iter().map(|kind| piece(*kind, chance, &mut fitting)).collect();
    let mut build = Build::new(&rules, pieces, Asked::default());
    let tally = build.tally();
    for place in (0..KINDS.len()).rev() {
        let piece = build.take(place);
        assert_eq!(build.pieces().len(), KINDS.len() - 1);
        build.add(piece);
    }
    assert_eq!(build.tally(), tally);
}
