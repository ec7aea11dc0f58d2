//! Records and rules for these tests: an invented workshop's board, supply and machine, with tables of a few rows.

use std::sync::Arc;

use benchwright::record::*;
use benchwright::rules::Rules;
use chrono::NaiveDate;
use uuid::Uuid;

use crate::fitting::figure_of;
use crate::records::{self, when};

pub fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

pub fn at(on: &str, sequence: u32) -> Moment {
    Moment { on: when(on), sequence }
}

/// Keys that count up from 1; keys of one test are apart by their first number.
pub struct Ids(u128);

impl Ids {
    pub fn from(first: u128) -> Self {
        Self(first)
    }

    pub fn next(&mut self) -> Uuid {
        self.0 += 1;
        Uuid::from_u128(self.0)
    }
}

pub fn id<T>(number: u128) -> Id<T> {
    Id::from_uuid(Uuid::from_u128(number))
}

pub const TABLES: &str = include_str!("tables.toml");

pub fn rules() -> Rules {
    rules_of(TABLES)
}

pub fn rules_of(tables: &str) -> Rules {
    let mut rules = Rules::of(&[("tables.toml".to_owned(), tables.to_owned())]).unwrap();
    rules.connectors = Rules::shipped().connectors;
    rules
}

pub fn part(number: u128, tag: &str, kind: Kind) -> PartFile {
    let name = format!("Velmar {}", kind.label().to_lowercase());
    PartFile::new(Part { id: id(number), ..records::part(tag, kind, &name) })
}

pub fn answer(question: &str, given: &str) -> Answer {
    let given = match given {
        "not looked" => Given::NotLooked,
        "could not tell" => Given::CouldNotTell,
        "does not apply" => Given::DoesNotApply,
        own => Given::Is(own.into()),
    };
    records::answer(question, given)
}

pub fn survey(number: u128, part: &PartFile, looked: Moment, answers: &[(&str, &str)]) -> Survey {
    let answers = answers.iter().map(|(question, given)| answer(question, given)).collect();
    Survey { id: id(number), who: "Ada".to_owned(), ..records::survey(part.part.id, looked, answers) }
}

pub fn work(number: u128, part: &PartFile, rule: &str, state: WorkState, changed: Moment) -> Work {
    Work { id: id(number), rule: rule.to_owned(), who: "Ada".to_owned(), ..records::work(part.part.id, state, changed) }
}

pub fn proof(number: u128, test: &str, run: Moment, result: ProofResult) -> Proof {
    Proof { id: id(number), who: "Ada".to_owned(), ..records::proof(test, run, result) }
}

pub fn marking(number: u128, part: &PartFile, surface: Surface, text: &str) -> Marking {
    Marking { id: id(number), ..records::marking(part.part.id, at("2026-01-01", 1), surface, text) }
}

pub fn capacitor(number: u128, part: &PartFile, designator: &str, state: CapacitorState) -> CapacitorFile {
    let position = Capacitor {
        id: id(number),
        place_on_part: "near the processor".to_owned(),
        ..records::capacitor(part.part.id, designator, at("2026-01-01", 1), state)
    };
    CapacitorFile { position, looks: Vec::new() }
}

pub fn look_at(number: u128, capacitor: &mut CapacitorFile, looked: Moment, state: CapacitorState) {
    capacitor.looks.push(CapacitorLook {
        id: id(number),
        capacitor: capacitor.position.id,
        looked,
        state,
        measured_uf: None,
        esr_mohm: None,
        leakage_ua: None,
        replaced_by: String::new(),
        note: String::new(),
    });
}

/// An open finding with its first look.
pub fn finding(number: u128, part: &PartFile, what: &str, looked: Moment, severity: Severity) -> FindingFile {
    FindingFile {
        finding: Finding { id: id(number), ..records::finding(part.part.id, what) },
        looks: vec![look(number + 500, number, looked, FindingState::Open, severity)],
    }
}

pub fn look(number: u128, finding: u128, looked: Moment, state: FindingState, severity: Severity) -> Look {
    Look { id: id(number), ..records::look(id(finding), looked, state, severity) }
}

/// Writes entries into a part's file as the store would, numbering their moments from `sequence` on.
pub fn write(file: &mut PartFile, entries: Vec<Entry>, mut sequence: u32) {
    for mut entry in entries {
        for moment in entry.moments_mut() {
            if moment.sequence == 0 {
                moment.sequence = sequence;
                sequence += 1;
            }
        }
        file.hang(entry);
    }
    for finding in &mut file.findings {
        finding.looks.sort_by_key(|look| look.looked.order());
    }
}

/// What the findings of a part are and how they stand.
pub fn standing(file: &PartFile) -> Vec<(&str, FindingState)> {
    file.findings.iter().map(|known| (known.finding.what.as_str(), known.state())).collect()
}

pub fn design(number: u128, kind: Kind, years: (&str, &str), connectors: &[(Side, &str, u32)]) -> DesignFile {
    let mut file = DesignFile::new(Design {
        id: id(number),
        introduced: when(years.0),
        discontinued: when(years.1),
        ..records::design(kind, "Velmar", &format!("V{number}"))
    });
    for (at, (side, name, count)) in connectors.iter().enumerate() {
        let connector = records::connector(id(number), *side, name, *count);
        file.connectors.push(DesignConnector { id: id(number * 100 + at as u128), ..connector });
    }
    file
}

/// Writes figures into a design.
pub fn tell(file: &mut DesignFile, figures: &[(Figure, f64)]) {
    let design = file.design.id;
    file.figures.extend(figures.iter().map(|(figure, value)| figure_of(design, *figure, *value)));
}

/// The design of a board that tells what is asked before power: the plug that feeds it, and what it draws.
pub fn board_design(number: u128, years: (&str, &str)) -> DesignFile {
    let mut file = design(number, Kind::Mainboard, years, &[(Side::Needs, "atx-20", 1)]);
    tell(&mut file, &[(Figure::Current5vA, 2.0)]);
    file
}

/// The design of a supply that tells its plug and what it gives.
pub fn supply_design(number: u128, years: (&str, &str)) -> DesignFile {
    let mut file = design(number, Kind::PowerSupply, years, &[(Side::Offers, "atx-20", 1)]);
    tell(&mut file, &[(Figure::Rating3v3A, 14.0), (Figure::Rating5vA, 20.0), (Figure::Rating12vA, 8.0)]);
    file
}

/// The part, made to a design.
pub fn made_to(mut part: PartFile, design: &DesignFile) -> PartFile {
    part.part.design = Some(design.design.id);
    part
}

pub fn machine(number: u128, name: &str, window: (&str, &str), roles: &[(u128, Kind)]) -> MachineFile {
    let mut file = MachineFile::new(Machine {
        id: id(number),
        window_from: when(window.0),
        window_to: when(window.1),
        ..records::machine(name)
    });
    file.roles.extend(roles.iter().map(|(role, kind)| Role { id: id(*role), ..records::role(id(number), *kind) }));
    file
}

pub fn fit(machine: &mut MachineFile, number: u128, role: u128, part: u128, fitted: Moment) {
    let fitting = records::fitting(machine.machine.id, Some(id(role)), id(part), fitted);
    machine.fittings.push(Fitting { id: id(number), ..fitting });
}

pub fn plan(machine: &mut MachineFile, number: u128, role: u128, part: u128) {
    let placement = records::placement(machine.machine.id, id(role), id(part), at("2026-01-01", 1));
    machine.placements.push(Placement { id: id(number), ..placement });
}

pub fn logbook(parts: Vec<PartFile>, designs: Vec<DesignFile>, machines: Vec<MachineFile>) -> Logbook {
    let mut parts: Vec<Arc<PartFile>> = parts.into_iter().map(Arc::new).collect();
    parts.sort_by_key(|file| file.part.id);
    let mut designs: Vec<Arc<DesignFile>> = designs.into_iter().map(Arc::new).collect();
    designs.sort_by_key(|file| file.design.id);
    let mut machines: Vec<Arc<MachineFile>> = machines.into_iter().map(Arc::new).collect();
    machines.sort_by_key(|file| file.machine.id);
    Logbook {
        revision: 1,
        workshop: Arc::new(records::workshop("Attic")),
        places: Vec::new(),
        lots: Vec::new(),
        designs,
        parts,
        machines,
        materials: Vec::new(),
        kits: Vec::new(),
    }
}
