//! Records and rules for these tests: an invented workshop's board, supply and machine, with tables of a few rows.

use std::sync::Arc;

use benchwright::record::*;
use benchwright::rules::Rules;
use chrono::NaiveDate;
use uuid::Uuid;

pub fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

pub fn at(on: &str, sequence: u32) -> Moment {
    Moment { on: on.parse().unwrap(), sequence }
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
    PartFile::new(Part {
        id: id(number),
        tag: tag.to_owned(),
        kind,
        design: None,
        name: format!("Velmar {}", kind.label().to_lowercase()),
        serial: String::new(),
        originality: Originality::Unstated,
        lot: None,
        price_cents: None,
        acquired: When::Unknown,
        place: None,
        inside: None,
        quarantine: String::new(),
        quarantined: When::Unknown,
        note: String::new(),
    })
}

pub fn answer(question: &str, given: &str) -> Answer {
    let given = match given {
        "not looked" => Given::NotLooked,
        "could not tell" => Given::CouldNotTell,
        "does not apply" => Given::DoesNotApply,
        own => Given::Is(own.to_owned()),
    };
    Answer { question: question.to_owned(), given, place_on_part: String::new(), note: String::new(), figure: None }
}

pub fn survey(number: u128, part: &PartFile, looked: Moment, answers: &[(&str, &str)]) -> Survey {
    Survey {
        id: id(number),
        part: part.part.id,
        looked,
        who: "Ada".to_owned(),
        why: String::new(),
        supersedes: None,
        note: String::new(),
        answers: answers.iter().map(|(question, given)| answer(question, given)).collect(),
    }
}

pub fn work(number: u128, part: &PartFile, rule: &str, state: WorkState, changed: Moment) -> Work {
    Work {
        id: id(number),
        part: part.part.id,
        finding: None,
        rule: rule.to_owned(),
        title: String::new(),
        hold: Hold::Ready,
        nature: Nature::Care,
        state,
        changed,
        who: "Ada".to_owned(),
        minutes: None,
        used: String::new(),
        reason: String::new(),
        reversible: None,
        note: String::new(),
    }
}

pub fn proof(number: u128, test: &str, run: Moment, result: ProofResult) -> Proof {
    Proof {
        id: id(number),
        part: None,
        machine: None,
        test: test.to_owned(),
        run,
        rig: String::new(),
        minutes: None,
        criterion: String::new(),
        result,
        who: "Ada".to_owned(),
        note: String::new(),
    }
}

pub fn marking(number: u128, part: &PartFile, surface: Surface, text: &str) -> Marking {
    Marking {
        id: id(number),
        part: part.part.id,
        read: at("2026-01-01", 1),
        surface,
        place_on_part: String::new(),
        text: text.to_owned(),
        from_factory: FromFactory::Unknown,
        scheme: String::new(),
        supersedes: None,
        note: String::new(),
    }
}

pub fn capacitor(number: u128, part: &PartFile, designator: &str, state: CapacitorState) -> CapacitorFile {
    CapacitorFile {
        position: Capacitor {
            id: id(number),
            part: part.part.id,
            designator: designator.to_owned(),
            place_on_part: "near the processor".to_owned(),
            capacitance_uf: Some(1000.0),
            voltage_v: Some(6.3),
            temperature_c: None,
            diameter_mm: None,
            height_mm: None,
            pitch_mm: None,
            dielectric: Dielectric::WetAluminium,
            mounting: Mounting::Radial,
            series: String::new(),
            polarity: String::new(),
            logged: at("2026-01-01", 1),
            state,
        },
        looks: Vec::new(),
    }
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
        finding: Finding {
            id: id(number),
            part: part.part.id,
            what: what.to_owned(),
            place_on_part: String::new(),
            source: FindingSource::Hand,
            question: String::new(),
            note: String::new(),
        },
        looks: vec![look(number + 500, number, looked, FindingState::Open, severity)],
    }
}

pub fn look(number: u128, finding: u128, looked: Moment, state: FindingState, severity: Severity) -> Look {
    Look {
        id: id(number),
        finding: id(finding),
        looked,
        state,
        severity,
        share_percent: None,
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
    }
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
        match entry {
            Entry::Finding(finding) => file.findings.push(FindingFile { finding, looks: Vec::new() }),
            Entry::Look(look) => {
                let of = file.findings.iter_mut().find(|known| known.finding.id == look.finding).unwrap();
                of.looks.push(look);
                of.looks.sort_by_key(|look| look.looked.order());
            }
            Entry::Work(work) => match file.work.iter_mut().find(|known| known.id == work.id) {
                Some(known) => *known = work,
                None => file.work.push(work),
            },
            other => panic!("no {other:?} is expected here"),
        }
    }
}

/// What the findings of a part are and how they stand.
pub fn standing(file: &PartFile) -> Vec<(&str, FindingState)> {
    file.findings.iter().map(|known| (known.finding.what.as_str(), known.state())).collect()
}

pub fn design(number: u128, kind: Kind, years: (&str, &str), connectors: &[(Side, &str, u32)]) -> DesignFile {
    let connector = |(at, (side, name, count)): (usize, &(Side, &str, u32))| DesignConnector {
        id: id(number * 100 + at as u128),
        design: id(number),
        side: *side,
        connector: (*name).to_owned(),
        count: *count,
        note: String::new(),
    };
    DesignFile {
        design: Design {
            id: id(number),
            kind,
            maker: "Velmar".to_owned(),
            model: format!("V{number}"),
            revision: String::new(),
            introduced: years.0.parse().unwrap(),
            discontinued: years.1.parse().unwrap(),
            note: String::new(),
        },
        connectors: connectors.iter().enumerate().map(connector).collect(),
        figures: Vec::new(),
    }
}

pub fn machine(number: u128, name: &str, window: (&str, &str), roles: &[(u128, Kind)]) -> MachineFile {
    let role = |(role, kind): &(u128, Kind)| Role {
        id: id(*role),
        machine: id(number),
        kind: *kind,
        name: String::new(),
        required: true,
        count: 1,
        note: String::new(),
    };
    MachineFile {
        machine: Machine {
            id: id(number),
            name: name.to_owned(),
            purpose: String::new(),
            window_from: window.0.parse().unwrap(),
            window_to: window.1.parse().unwrap(),
            standing: Standing::Typical,
            priority: 0,
            note: String::new(),
        },
        roles: roles.iter().map(role).collect(),
        placements: Vec::new(),
        fittings: Vec::new(),
        power_ons: Vec::new(),
        proofs: Vec::new(),
        readings: Vec::new(),
        cases: Vec::new(),
        photos: Vec::new(),
        attachments: Vec::new(),
    }
}

pub fn fit(machine: &mut MachineFile, number: u128, role: u128, part: u128, fitted: Moment) {
    machine.fittings.push(Fitting {
        id: id(number),
        machine: machine.machine.id,
        role: Some(id(role)),
        part: id(part),
        fitted,
        removed: None,
        note: String::new(),
    });
}

pub fn plan(machine: &mut MachineFile, number: u128, role: u128, part: u128) {
    machine.placements.push(Placement {
        id: id(number),
        machine: machine.machine.id,
        role: id(role),
        part: id(part),
        pinned: false,
        planned: at("2026-01-01", 1),
        reason: String::new(),
    });
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
        workshop: Arc::new(Workshop {
            id: id(1),
            name: "Attic".to_owned(),
            keeper: "Ada".to_owned(),
            currency: "EUR".to_owned(),
            note: String::new(),
        }),
        places: Vec::new(),
        lots: Vec::new(),
        designs,
        parts,
        machines,
        materials: Vec::new(),
    }
}
