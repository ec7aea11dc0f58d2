//! An invented logbook at scale, written straight through the store's door.

use std::path::Path;

use benchwright::record::{
    Answer, Capacitor, CapacitorState, Change, Design, Dielectric, Finding, FindingSource, FindingState, Fitting,
    Given, Kind, Look, Machine, Moment, Mounting, Originality, Part, Place, Role, Severity, Standing, Survey, When,
    Word as _, Workshop,
};
use benchwright::store::Store;

fn day(number: usize) -> Moment {
    let text = format!("{}-{:02}-{:02}", 2015 + number % 10, 1 + number % 12, 1 + number % 28);
    Moment { on: text.parse().unwrap(), sequence: 0 }
}

/// Makes a logbook with `parts` parts, each with 6 findings, 10 capacitor positions and a survey; 40 machines.
pub fn logbook(path: &Path, parts: usize) -> Store {
    let workshop = Workshop {
        id: Store::new_id(),
        name: "Scale".into(),
        keeper: "Ida Lund".into(),
        currency: "EUR".into(),
        note: String::new(),
    };
    let store = Store::create(path, workshop).unwrap();
    let mut change = Change::new("Fill");
    let places: Vec<Place> = (0..200)
        .map(|number| Place { id: Store::new_id(), within: None, name: format!("Box {number}"), note: String::new() })
        .collect();
    let designs: Vec<Design> = (0..300)
        .map(|number| Design {
            id: Store::new_id(),
            kind: Kind::ALL[number % Kind::ALL.len()],
            maker: "Nordkamp".into(),
            model: format!("N-{number}"),
            revision: "1.2".into(),
            introduced: When::Year(1990 + number as i32 % 12),
            discontinued: When::Unknown,
            note: String::new(),
        })
        .collect();
    for place in &places {
        change.put(place.clone());
    }
    for design in &designs {
        change.put(design.clone());
    }
    let machines: Vec<Machine> = (0..40)
        .map(|number| Machine {
            id: Store::new_id(),
            name: format!("Machine {number}"),
            purpose: "An office of its year".into(),
            window_from: When::Year(1990),
            window_to: When::Year(1996),
            standing: Standing::Typical,
            priority: 1,
            note: String::new(),
        })
        .collect();
    for machine in &machines {
        change.put(machine.clone());
    }
    for number in 0..parts {
        let design = &designs[number % designs.len()];
        let part = Part {
            id: Store::new_id(),
            tag: format!("{number:05}"),
            kind: design.kind,
            design: Some(design.id),
            name: String::new(),
            serial: format!("SN{:08}", number * 7919 % 100_000_000),
            originality: Originality::Original,
            lot: None,
            price_cents: Some(1250),
            acquired: day(number).on,
            place: Some(places[number % places.len()].id),
            inside: None,
            quarantine: String::new(),
            quarantined: When::Unknown,
            note: "From the attic clearance".into(),
        };
        change.put(part.clone());
        hang_on(&mut change, &part, number);
        if number < machines.len() * 8 {
            let machine = &machines[number % machines.len()];
            let role = Role {
                id: Store::new_id(),
                machine: machine.id,
                kind: part.kind,
                name: String::new(),
                required: true,
                count: 1,
                note: String::new(),
            };
            change.put(role.clone()).put(Fitting {
                id: Store::new_id(),
                machine: machine.id,
                role: Some(role.id),
                part: part.id,
                fitted: day(number),
                removed: None,
                note: String::new(),
            });
        }
    }
    store.write(change).unwrap();
    store
}

fn hang_on(change: &mut Change, part: &Part, number: usize) {
    let survey = Survey {
        id: Store::new_id(),
        part: part.id,
        looked: day(number),
        who: "Ida Lund".into(),
        why: "On arrival".into(),
        supersedes: None,
        note: String::new(),
        answers: (0..12)
            .map(|question| Answer {
                question: format!("question_{question}"),
                given: if question % 3 == 0 { Given::NotLooked } else { Given::Is("sound".into()) },
                place_on_part: String::new(),
                note: String::new(),
                figure: None,
            })
            .collect(),
    };
    change.put(survey.clone());
    for which in 0..6 {
        let finding = Finding {
            id: Store::new_id(),
            part: part.id,
            what: format!("finding_{which}"),
            place_on_part: "near the keyboard socket".into(),
            source: FindingSource::Survey,
            question: format!("question_{which}"),
            note: String::new(),
        };
        change.put(finding.clone()).put(Look {
            id: Store::new_id(),
            finding: finding.id,
            looked: day(number),
            state: FindingState::Open,
            severity: Severity::Plain,
            share_percent: None,
            again_by: When::Unknown,
            reason: String::new(),
            survey: Some(survey.id),
            work: None,
        });
    }
    for position in 0..10 {
        change.put(Capacitor {
            id: Store::new_id(),
            part: part.id,
            designator: format!("C{position}"),
            place_on_part: "near the processor".into(),
            capacitance_uf: Some(1000.0),
            voltage_v: Some(6.3),
            temperature_c: Some(105.0),
            diameter_mm: Some(8.0),
            height_mm: None,
            pitch_mm: None,
            dielectric: Dielectric::WetAluminium,
            mounting: Mounting::Radial,
            series: String::new(),
            polarity: String::new(),
            logged: day(number),
            state: CapacitorState::Sound,
        });
    }
}
