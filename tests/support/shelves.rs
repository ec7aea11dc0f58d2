//! Random shelves in the abstract: machines of four ages, and spares mixed as a workshop's shelves are, with dates that
//! lie off the machines' windows, some proven, with work left on them.

#![allow(dead_code)] // each test binary takes in what it needs

use std::collections::BTreeMap;

use benchwright::assess::placement::question::{Choice, Machine, OpenNeed, Question, Seat, Spare};

use crate::chance::Chance;

/// An age of the trade, in years, and the connectors of its parts.
struct Age {
    years: (i64, i64),
    board: &'static [(&'static str, u32)],
    outline: &'static str,
    plug: &'static str,
    socket: &'static str,
    memory: &'static str,
    video: &'static str,
    card: &'static str,
    keyboard: &'static str,
}

const AGES: [Age; 4] = [
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
        board: &[("agp", 1), ("pci-5v", 5), ("dimm", 3), ("socket-370", 1), ("keyboard-mini-din", 1)],
        outline: "atx",
        plug: "atx-20",
        socket: "socket-370",
        memory: "dimm",
        video: "agp",
        card: "pci-5v",
        keyboard: "keyboard-mini-din",
    },
];

/// Kinds, how many in a thousand spares are of them, and whether a machine can do without.
const KINDS: [(&str, u32, bool); 14] = [
    ("board", 150, false),
    ("processor", 60, false),
    ("memory", 100, false),
    ("video", 120, false),
    ("ports", 120, false),
    ("disk", 70, false),
    ("floppy", 40, false),
    ("supply", 40, false),
    ("case", 20, false),
    ("sound", 80, true),
    ("network", 70, true),
    ("optical", 40, true),
    ("keyboard", 10, true),
    ("other", 80, true),
];

/// A design that spares are of: kind, age, how good it is for its time, and the spare but for its options.
struct Design {
    kind: usize,
    age: usize,
    quality: i64,
    spare: Spare,
}

#[derive(Default)]
struct Shelf {
    connectors: Vec<String>,
    plugs: BTreeMap<&'static str, usize>,
}

impl Shelf {
    fn plug(&mut self, name: &'static str) -> usize {
        *self.plugs.entry(name).or_insert_with(|| {
            self.connectors.push(name.to_owned());
            self.connectors.len() - 1
        })
    }

    fn plugs(&mut self, names: &[(&'static str, u32)]) -> Vec<(usize, u32)> {
        names.iter().map(|(name, count)| (self.plug(name), *count)).collect()
    }
}

fn within(chance: &mut Chance, least: i64, most: i64) -> i64 {
    least + chance.below((most - least + 1) as usize) as i64
}

fn design(kind: usize, age: usize, shelf: &mut Shelf, chance: &mut Chance) -> Design {
    let of = &AGES[age];
    let name = KINDS[kind].0;
    let needs: Vec<(&'static str, u32)> = match name {
        "board" => vec![(of.outline, 1), (of.plug, 1)],
        "processor" => vec![(of.socket, 1)],
        "memory" => vec![(of.memory, 1)],
        "video" => vec![(if chance.below(5) == 0 { "isa-16" } else { of.video }, 1)],
        "sound" | "network" | "ports" => match chance.below(6) {
            0 => vec![("isa-8", 1)],
            1 if age >= 2 => vec![("isa-16", 1)],
            _ => vec![(of.card, 1)],
        },
        "disk" => vec![("ide-40", 1), ("drive-4pin", 1), ("bay-3.5-hidden", 1)],
        "optical" => vec![("ide-40", 1), ("drive-4pin", 1), ("bay-5.25", 1)],
        "floppy" => vec![("floppy-34", 1), ("drive-4pin-small", 1), ("bay-3.5", 1)],
        "supply" => vec![("supply-atx", 1)],
        "keyboard" => vec![(of.keyboard, 1)],
        _ => vec![],
    };
    let mut some = |least: i64, most: i64| within(chance, least, most) as u32;
    let offers: Vec<(&'static str, u32)> = match name {
        "board" => {
            let fewer = some(0, 3);
            let mut offers: Vec<_> =
                of.board.iter().map(|(plug, count)| (*plug, count.saturating_sub(fewer).max(1))).collect();
            if age == 3 || age == 2 && some(0, 1) == 0 {
                offers.extend([("ide-40", 4), ("floppy-34", 2)]);
            }
            offers
        }
        "video" => vec![("vga-15", 1)],
        "ports" => vec![("ide-40", 2 * some(1, 2)), ("floppy-34", 2)],
        "supply" => vec![(of.plug, 1), ("drive-4pin", some(2, 5)), ("drive-4pin-small", some(1, 2))],
        "case" => vec![
            (of.outline, 1),
            ("supply-atx", 1),
            ("bay-5.25", some(1, 3)),
            ("bay-3.5", some(1, 2)),
            ("bay-3.5-hidden", some(1, 3)),
        ],
        _ => vec![],
    };
    // On +5 V and +12 V.
    let mut amps = |five: (i64, i64), twelve: (i64, i64)| {
        vec![100 * within(chance, five.0, five.1), 100 * within(chance, twelve.0, twelve.1)]
    };
    let scale = 1 + age as i64;
    let (mut draws, mut gives) = (Vec::new(), Vec::new());
    match name {
        "board" => draws = amps((20, 40), (1, 3)),
        "processor" => draws = amps((5 * scale, 19 * scale), (0, 0)),
        "memory" => draws = amps((2, 6), (0, 0)),
        "disk" | "optical" | "floppy" => draws = amps((3, 8), (3, 15)),
        "video" | "sound" | "network" | "ports" => draws = amps((2, 15), (0, 2)),
        "supply" => gives = amps((150, 300), (40, 100)),
        _ => {}
    }
    let (needs, offers) = (shelf.plugs(&needs), shelf.plugs(&offers));
    let quality = within(chance, 0, 4);
    Design { kind, age, quality, spare: Spare { needs, offers, known: true, draws, gives, ..Spare::default() } }
}

/// Which kinds give a connector, so that it may stay open while a machine has none of them.
fn givers(plug: &str) -> &'static [&'static str] {
    match plug {
        "baby-at" | "atx" | "supply-atx" | "bay-5.25" | "bay-3.5" | "bay-3.5-hidden" => &["case"],
        "at-p8p9" | "atx-20" | "drive-4pin" | "drive-4pin-small" => &["supply"],
        "ide-40" | "floppy-34" => &["board", "ports"],
        "vga-15" => &["video"],
        _ => &["board"],
    }
}

/// A shelf of so many spares, and machines that want them.
pub fn shelf(seed: u64, spares: usize, machines: usize) -> Question {
    let mut chance = Chance(seed);
    let chance = &mut chance;
    let mut shelf = Shelf::default();
    let mut designs = Vec::new();
    for age in 0..AGES.len() {
        for (kind, (_, weight, _)) in KINDS.iter().enumerate() {
            for _ in 0..=spares * *weight as usize / 100_000 {
                designs.push(design(kind, age, &mut shelf, chance));
            }
        }
    }
    let mut question = Question { open_cost: 40, rails: vec!["+5 V".into(), "+12 V".into()], ..Question::default() };
    let mut briefs = Vec::new();
    let mut kinds = Vec::new();
    for machine in 0..machines {
        let from = 52 * AGES[machine % 4].years.0 + within(chance, -26, 25);
        briefs.push((from, from + 52 * within(chance, 2, 4), 2 * within(chance, 0, 2)));
        question.machines.push(Machine { name: format!("Machine {machine}"), ..Machine::default() });
        for (kind, (name, _, optional)) in KINDS.iter().enumerate().take(13) {
            let count = if *name == "memory" { [2, 1, 4, 2][machine % 4] } else { 1 };
            question.seats.push(Seat { machine, name: (*name).to_owned(), count, required: !optional, between: false });
            kinds.push(kind);
        }
    }
    for number in 0..spares {
        let design = &designs[chance.below(designs.len())];
        let base = if chance.below(100) < 45 { 30 } else { 0 } - chance.below(2) as i64 * within(chance, 0, 59)
            + [10, 10, 0, -5][chance.below(4)];
        let years = AGES[design.age].years;
        let week = within(chance, 52 * years.0, 52 * (years.1 + 2));
        let mut spare = Spare { tag: format!("{number:04}"), ..design.spare.clone() };
        for (seat, of) in question.seats.iter().enumerate().filter(|(seat, _)| kinds[*seat] == design.kind) {
            let (from, to, standing) = briefs[of.machine];
            let apart = (from - week).max(week - to).max(0);
            let dates = if apart == 0 { 60 } else { -4 * apart };
            let fill = if of.required { 1000 } else { 150 };
            let worth =
                fill + 10 * (10 - (of.machine as i64 % 9)) + base - 10 * (design.quality - standing).abs() + dates;
            spare.options.push(Choice { seat, worth, settled: false, fitted: false });
        }
        question.spares.push(spare);
    }
    question.takes = (0..shelf.connectors.len()).map(|plug| vec![plug]).collect();
    for (need, offer) in [("isa-8", "isa-16"), ("bay-3.5-hidden", "bay-3.5")] {
        if let (Some(need), Some(offer)) = (shelf.plugs.get(need), shelf.plugs.get(offer)) {
            question.takes[*need].push(*offer);
        }
    }
    for (machine, of) in question.machines.iter_mut().enumerate() {
        of.open = (0..shelf.connectors.len())
            .map(|need| {
                let gives = |seat: &usize| {
                    question.seats[*seat].machine == machine
                        && givers(&shelf.connectors[need]).contains(&question.seats[*seat].name.as_str())
                };
                OpenNeed { need, seats: (0..kinds.len()).filter(gives).collect() }
            })
            .collect();
    }
    question.connectors = shelf.connectors;
    question
}
