//! How long all answers take for a large logbook, and those of the next revision after one edit.
//!
//! `cargo bench --bench assess` prints each figure with its target: 10,000 parts with 60,000 findings and 100,000
//! capacitor positions, 40 machines, the shipped tables. Medians of several rounds, plain wall clock.
#![allow(clippy::unwrap_used, clippy::wildcard_imports, clippy::assigning_clones)]

use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

use benchwright::assess::Answers;
use benchwright::assess::outstanding::materials;
use benchwright::record::*;
use benchwright::rules::Rules;
use chrono::NaiveDate;
use uuid::Uuid;

const ROUNDS: usize = 21;
const PARTS: u128 = 10_000;
const MACHINES: u128 = 40;
const PARTS_IN_A_MACHINE: u128 = 12;

fn median_ms(mut call: impl FnMut()) -> f64 {
    let mut rounds: Vec<f64> = (0..ROUNDS)
        .map(|_| {
            let start = Instant::now();
            call();
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    rounds.sort_unstable_by(f64::total_cmp);
    rounds[ROUNDS / 2]
}

fn show(what: &str, figure: f64, target: f64) {
    let verdict = if figure < target { "within" } else { "OVER" };
    println!("{what:<60} {figure:>9.3} ms  {verdict} {target} ms");
}

/// The next of a row of numbers that look like chance and are the same in every run.
struct Chance(u64);

impl Chance {
    fn below(&mut self, bound: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % bound
    }
}

fn id<T>(family: u128, number: u128) -> Id<T> {
    Id::from_uuid(Uuid::from_u128((family << 96) | number))
}

fn moment(chance: &mut Chance, sequence: u32) -> Moment {
    let (month, day) = (1 + chance.below(12), 1 + chance.below(28));
    Moment { on: format!("2025-{month:02}-{day:02}").parse().unwrap(), sequence }
}

fn part(number: u128, kind: Kind, rules: &Rules, chance: &mut Chance) -> PartFile {
    let of = id(1, number);
    let mut file = PartFile::new(Part {
        id: of,
        tag: format!("{number:05}"),
        kind,
        design: Some(id(2, number % 300)),
        name: String::new(),
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
    });
    let mut sequence = number as u32 * 40 + 1;
    let mut next = || {
        sequence += 1;
        sequence
    };
    for at in 0..3 {
        file.markings.push(Marking {
            id: id(3, number * 10 + at),
            part: of,
            read: moment(chance, next()),
            surface: Surface::Chip,
            place_on_part: String::new(),
            text: format!("{:02}{:02}", 90 + chance.below(10), 1 + chance.below(52)),
            from_factory: FromFactory::Unknown,
            scheme: String::new(),
            supersedes: None,
            note: String::new(),
        });
    }
    let answers = rules.questions_for(kind).iter().map(|question| Answer {
        question: question.name.clone(),
        given: Given::Is(question.answers[0].name.clone()),
        place_on_part: String::new(),
        note: String::new(),
        figure: None,
    });
    file.surveys.push(Survey {
        id: id(4, number),
        part: of,
        looked: moment(chance, next()),
        who: String::new(),
        why: String::new(),
        supersedes: None,
        note: String::new(),
        answers: answers.collect(),
    });
    for at in 0..6 {
        let what = &rules.findings[chance.below(rules.findings.len())];
        let finding = id(5, number * 10 + at);
        let state = FindingState::ALL[chance.below(FindingState::ALL.len())];
        let mut look = |number: u128, state: FindingState| Look {
            id: id(6, number),
            finding,
            looked: moment(chance, next()),
            state,
            severity: what.severity,
            share_percent: None,
            again_by: When::Unknown,
            reason: String::new(),
            survey: None,
            work: None,
        };
        let looks = vec![look(number * 20 + at * 2, FindingState::Open), look(number * 20 + at * 2 + 1, state)];
        file.findings.push(FindingFile {
            finding: Finding {
                id: finding,
                part: of,
                what: what.name.clone(),
                place_on_part: String::new(),
                source: FindingSource::Survey,
                question: String::new(),
                note: String::new(),
            },
            looks,
        });
    }
    for at in 0..10 {
        file.capacitors.push(CapacitorFile {
            position: Capacitor {
                id: id(7, number * 10 + at),
                part: of,
                designator: format!("C{at}"),
                place_on_part: String::new(),
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
                logged: moment(chance, next()),
                state: CapacitorState::Sound,
            },
            looks: Vec::new(),
        });
    }
    for at in 0..3 {
        let rule = &rules.work[chance.below(rules.work.len())];
        file.work.push(Work {
            id: id(8, number * 10 + at),
            part: of,
            finding: Some(file.findings[at as usize].finding.id),
            rule: rule.name.clone(),
            title: String::new(),
            hold: Hold::Ready,
            nature: Nature::Care,
            state: WorkState::Done,
            changed: moment(chance, next()),
            who: String::new(),
            minutes: Some(20),
            used: String::new(),
            reason: String::new(),
            reversible: None,
            note: String::new(),
        });
    }
    for rule in rules.proofs_for(kind).iter().take(2) {
        file.proofs.push(Proof {
            id: id(9, number * 10 + file.proofs.len() as u128),
            part: Some(of),
            machine: None,
            test: rule.name.clone(),
            run: moment(chance, next()),
            rig: String::new(),
            minutes: None,
            criterion: String::new(),
            result: ProofResult::Passed,
            who: String::new(),
            note: String::new(),
        });
    }
    file
}

fn design(number: u128) -> DesignFile {
    let connector = |at: u128, side, connector: &str, count| DesignConnector {
        id: id(10, number * 10 + at),
        design: id(2, number),
        side,
        connector: connector.to_owned(),
        count,
        note: String::new(),
    };
    DesignFile {
        design: Design {
            id: id(2, number),
            kind: Kind::ALL[number as usize % Kind::ALL.len()],
            maker: "Velmar".to_owned(),
            model: format!("V{number}"),
            revision: String::new(),
            introduced: When::Year(1990 + (number % 8) as i32),
            discontinued: When::Year(1995 + (number % 8) as i32),
            note: String::new(),
        },
        connectors: vec![
            connector(0, Side::Offers, "isa-16", 3),
            connector(1, Side::Needs, "isa-8", 1),
            connector(2, Side::Offers, "atx-20", 1),
        ],
        figures: Vec::new(),
    }
}

fn machine(number: u128, parts: &[Arc<PartFile>], chance: &mut Chance) -> MachineFile {
    let of = id(11, number);
    let first = number * (PARTS / MACHINES);
    let own = &parts[first as usize..(first + PARTS_IN_A_MACHINE) as usize];
    let roles: Vec<Role> = own
        .iter()
        .zip(0..)
        .map(|(file, at)| Role {
            id: id(12, number * 100 + at),
            machine: of,
            kind: file.part.kind,
            name: String::new(),
            required: true,
            count: 1,
            note: String::new(),
        })
        .collect();
    let fittings = own.iter().zip(&roles).map(|(file, role)| Fitting {
        id: id(13, role.id.uuid().as_u128() & 0xffff_ffff),
        machine: of,
        role: Some(role.id),
        part: file.part.id,
        fitted: moment(chance, 900_000),
        removed: None,
        note: String::new(),
    });
    MachineFile {
        fittings: fittings.collect(),
        machine: Machine {
            id: of,
            name: format!("Machine {number}"),
            purpose: String::new(),
            window_from: When::Year(1994),
            window_to: When::Year(1998),
            standing: Standing::Typical,
            priority: 0,
            note: String::new(),
        },
        roles,
        placements: Vec::new(),
        power_ons: Vec::new(),
        proofs: Vec::new(),
        readings: Vec::new(),
        cases: Vec::new(),
        photos: Vec::new(),
        attachments: Vec::new(),
    }
}

fn logbook(rules: &Rules) -> Logbook {
    let mut chance = Chance(5);
    let kind = |number: u128| Kind::ALL[number as usize * 7 % Kind::ALL.len()];
    let parts: Vec<Arc<PartFile>> =
        (0..PARTS).map(|number| Arc::new(part(number, kind(number), rules, &mut chance))).collect();
    Logbook {
        revision: 1,
        workshop: Arc::new(Workshop {
            id: id(14, 0),
            name: "Bench".to_owned(),
            keeper: String::new(),
            currency: "EUR".to_owned(),
            note: String::new(),
        }),
        places: Vec::new(),
        lots: Vec::new(),
        designs: (0..300).map(|number| Arc::new(design(number))).collect(),
        machines: (0..MACHINES).map(|number| Arc::new(machine(number, &parts, &mut chance))).collect(),
        parts,
        materials: Vec::new(),
    }
}

fn main() {
    let rules = Rules::shipped();
    let logbook = logbook(&rules);
    let today: NaiveDate = "2026-06-01".parse().unwrap();
    let answers = Answers::of(&logbook, &rules, today);
    let totals = answers.totals();
    let reasons: usize = answers.machines.iter().flat_map(|m| &m.readiness.gates).map(|gate| gate.reasons.len()).sum();
    println!("{} tasks, {} of them doable now; {reasons} reasons of 40 machines", totals.tasks, totals.doable);

    show(
        "all outstanding work and readiness",
        median_ms(|| drop(black_box(Answers::of(&logbook, &rules, today)))),
        100.0,
    );
    show("materials of all tasks", median_ms(|| drop(black_box(materials(answers.tasks(), &[])))), 10.0);

    let edit = |at: usize| {
        let mut next = logbook.clone();
        let mut file = (*next.parts[at]).clone();
        file.part.note = "edited".to_owned();
        next.parts[at] = Arc::new(file);
        next
    };
    for (what, at) in [("a part on the shelf", 9_999), ("a part of a machine", 3)] {
        let next = edit(at);
        show(
            &format!("answers after an edit: {what}"),
            median_ms(|| drop(black_box(answers.next(&next, &rules, today)))),
            3.0,
        );
    }
    let mut next = logbook.clone();
    let mut machine = (*next.machines[7]).clone();
    machine.machine.note = "edited".to_owned();
    next.machines[7] = Arc::new(machine);
    show("answers after an edit: a machine", median_ms(|| drop(black_box(answers.next(&next, &rules, today)))), 3.0);
}
