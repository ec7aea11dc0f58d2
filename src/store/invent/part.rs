//! An invented part with a life of its own: markings, capacitors, surveys, work, proofs.

use super::super::authoring::{Deed, PartAuthor, key, moment};
use super::Ground;
use super::chance::Chance;
use super::design::{AGES, Invented, KINDS};
use super::machine::{Condition, Wanted};
use crate::assess::outstanding;
use crate::record::{
    Answer, Capacitor, CapacitorLook, CapacitorState, CustodyAct, CustodyEvent, Dielectric, Entry, FromFactory, Given,
    Kind, Marking, Mounting, Originality, Part, PartId, Reading, Setting, Surface, Survey, Valuation, When, WorkState,
};
use crate::rules::{PowerEffect, Question};

/// Invents the part of a number; `containers` are parts that others may be inside.
pub fn invent(
    number: u32,
    want: Option<&Wanted>,
    ground: &Ground,
    containers: &mut Vec<PartId>,
    chance: &mut Chance,
) -> (PartId, Vec<Entry>) {
    let kind = want.map_or_else(|| kind(chance), |want| want.kind);
    let design = match want {
        Some(want) => ground.designs.iter().find(|design| design.kind == kind && design.age == want.age),
        None => design(kind, ground, chance),
    };
    let condition = want.map_or(Condition::AsFound, |want| want.condition);
    let arrived = chance.between(60, 1400);
    let id: PartId = key(&mut || chance.id());
    let inside =
        if want.is_none() && chance.percent(2) && !containers.is_empty() { Some(*chance.of(containers)) } else { None };
    // Nothing as chance has it gets into a machine inside its case.
    if kind == Kind::Case && want.is_none() {
        containers.push(id);
    }
    let quarantined = want.is_none() && chance.percent(1);
    let part = Part {
        id,
        tag: format!("{number:06}"),
        kind,
        design: design.map(|design| design.id),
        name: if design.is_none() {
            format!("{} {number}", chance.of(&["Untitled", "Scratched", "Odd"]))
        } else {
            String::new()
        },
        serial: format!("{}-{}", chance.between(10, 99), chance.between(10_000, 99_999)),
        originality: *chance.of(&[
            Originality::Original,
            Originality::Original,
            Originality::Unstated,
            Originality::Altered,
        ]),
        lot: Some(*chance.of(&ground.lots)),
        price_cents: Some(i64::from(chance.between(0, 80)) * 50),
        acquired: When::Unknown,
        place: Some(*chance.of(&ground.boxes)),
        inside,
        quarantine: if quarantined { "Something leaks".to_owned() } else { String::new() },
        quarantined: if quarantined { day(ground, arrived) } else { When::Unknown },
        note: String::new(),
    };
    let mut author = PartAuthor::new(part, &ground.rules);
    markings(&mut author, design, day(ground, arrived), chance);
    capacitors(&mut author, day(ground, arrived), condition, chance);
    match condition {
        Condition::Well => {
            let plug = want.map(|want| AGES[want.age].plug_answer());
            survey(&mut author, day(ground, arrived), plug, chance);
            author.pass_all_proofs(day(ground, chance.between(1, 20)), "A. Nobody", &mut || chance.id());
        }
        // One in twenty-five was never looked at.
        Condition::AsFound if !chance.percent(4) => {
            survey(&mut author, day(ground, arrived), None, chance);
            if chance.percent(12) {
                survey(&mut author, day(ground, arrived / 3), None, chance);
            }
            work(&mut author, day(ground, arrived / 4), chance);
            rest(&mut author, ground, arrived, chance);
        }
        _ => {}
    }
    (id, author.into_entries())
}

fn day(ground: &Ground, before: u32) -> When {
    ground.today.checked_sub_days(chrono::Days::new(u64::from(before))).map_or(When::Unknown, When::Day)
}

fn kind(chance: &mut Chance) -> Kind {
    let all: u32 = KINDS.iter().map(|(_, weight)| weight).sum();
    let mut left = chance.between(0, all - 1);
    for (kind, weight) in KINDS {
        if left < weight {
            return kind;
        }
        left -= weight;
    }
    Kind::Other
}

fn design<'a>(kind: Kind, ground: &'a Ground, chance: &mut Chance) -> Option<&'a Invented> {
    if chance.percent(6) {
        return None;
    }
    let first = ground.designs.len() as u32;
    // Designs of a kind stand together within each age: a few throws find one.
    (0..60)
        .map(|_| &ground.designs[chance.between(0, first - 1) as usize])
        .find(|design| design.kind == kind)
        .or_else(|| ground.designs.iter().find(|design| design.kind == kind))
}

fn markings(author: &mut PartAuthor, design: Option<&Invented>, read: When, chance: &mut Chance) {
    let (first, last) = design.map_or((1988, 2000), |design| (design.first_year, design.last_year));
    let maker = design.map_or("QX", |design| &design.maker[..2]);
    for surface in [Surface::Board, Surface::Chip, Surface::Sticker].into_iter().take(chance.between(1, 3) as usize) {
        let (year, week) = (chance.between(first, last), chance.between(1, 52));
        let text = match chance.between(0, 3) {
            0 => format!("{week:02}{:02}", year % 100),
            1 => format!("{}{} {:02}{week:02}", maker.to_uppercase(), chance.between(100, 9999), year % 100),
            2 => format!("{}{week:02}", year % 10),
            _ => format!("{:02}{week:02}", year % 100),
        };
        author.put(Marking {
            id: key(&mut || chance.id()),
            part: author.file.part.id,
            read: moment(read),
            surface,
            place_on_part: String::new(),
            text,
            from_factory: *chance.of(&[FromFactory::Yes, FromFactory::Yes, FromFactory::Unknown]),
            scheme: String::new(),
            supersedes: None,
            note: String::new(),
        });
    }
}

/// How many capacitor positions a kind is logged with, at least and at most.
fn positions(kind: Kind) -> (u32, u32) {
    match kind {
        Kind::Mainboard => (16, 38),
        Kind::VideoCard | Kind::SoundCard => (6, 22),
        Kind::NetworkCard | Kind::ControllerCard | Kind::MultiIoCard | Kind::Modem => (3, 12),
        Kind::PowerSupply | Kind::Monitor => (12, 30),
        Kind::HardDisk | Kind::OpticalDrive | Kind::FloppyDrive | Kind::TapeDrive => (2, 8),
        Kind::VoltageModule | Kind::ProcessorAdapter => (2, 6),
        _ => (0, 0),
    }
}

fn capacitors(author: &mut PartAuthor, on: When, condition: Condition, chance: &mut Chance) {
    let (least, most) = positions(author.file.part.kind);
    let count = chance.between(least, most);
    let troubled = chance.percent(35) && condition == Condition::AsFound;
    for number in 1..=count {
        let state = match chance.between(0, 99) {
            0..6 if troubled => CapacitorState::Bulged,
            6..10 if troubled => CapacitorState::Leaking,
            10..12 if troubled => CapacitorState::Missing,
            90..95 if condition == Condition::AsFound => CapacitorState::NotLooked,
            _ => CapacitorState::Sound,
        };
        let position = Capacitor {
            id: key(&mut || chance.id()),
            part: author.file.part.id,
            designator: format!("C{number}"),
            place_on_part: String::new(),
            capacitance_uf: Some(*chance.of(&[10.0, 22.0, 47.0, 100.0, 220.0, 470.0, 1000.0, 1500.0, 2200.0])),
            voltage_v: Some(*chance.of(&[6.3, 10.0, 16.0, 25.0])),
            temperature_c: Some(105.0),
            diameter_mm: Some(*chance.of(&[5.0, 6.3, 8.0, 10.0])),
            height_mm: Some(f64::from(chance.between(7, 25))),
            pitch_mm: None,
            // A few couple a signal.
            dielectric: if number % 23 == 0 { Dielectric::BipolarAluminium } else { Dielectric::WetAluminium },
            mounting: *chance.of(&[Mounting::Radial, Mounting::Radial, Mounting::Surface]),
            series: (*chance.of(&["ZQ", "QV", "LR", "TK"])).to_owned(),
            polarity: String::new(),
            logged: moment(on),
            state,
            function: None,
            low_esr: None,
        };
        let again = (chance.percent(4)).then(|| CapacitorLook {
            id: key(&mut || chance.id()),
            capacitor: position.id,
            looked: moment(on),
            state,
            measured_uf: position.capacitance_uf.map(|uf| uf * f64::from(chance.between(85, 108)) / 100.0),
            esr_mohm: Some(f64::from(chance.between(15, 400))).filter(|_| condition == Condition::AsFound),
            leakage_ua: None,
            replaced_by: String::new(),
            note: String::new(),
        });
        author.put(position);
        if let Some(again) = again {
            author.put(again);
        }
    }
    if count > 0 {
        author.capacitors(on, &mut || chance.id());
    }
}

/// The questions to a board and to a supply about the plug between them, which the two answer alike.
const PLUG_QUESTIONS: [&str; 2] = ["power-plug", "supply-plugs"];

/// A survey of every question; six or so of its answers raise something. With `plug`, what board and supply say of the
/// plug between them, every answer is one that power waits for nothing by.
fn survey(author: &mut PartAuthor, on: When, plug: Option<&str>, chance: &mut Chance) {
    let questions = author.questions();
    let can_raise = |question: &Question| question.answers.iter().any(|answer| answer.finding.is_some());
    let mut raising: Vec<usize> = (0..questions.len()).filter(|at| can_raise(&questions[*at])).collect();
    chance.shuffle(&mut raising);
    let is_well = plug.is_some();
    raising.truncate(if is_well { 0 } else { chance.between(3, 10) as usize });
    let mut answers = Vec::new();
    for (at, question) in questions.iter().enumerate() {
        let raises = raising.contains(&at);
        let choices: Vec<&str> = question
            .answers
            .iter()
            .filter(|answer| answer.finding.is_some() == raises)
            .filter(|answer| !is_well || answer.power < PowerEffect::NotKnown)
            .map(|answer| answer.name.as_str())
            .collect();
        let always = question.always_on.contains(&author.file.part.kind);
        let of_plug = plug.filter(|_| PLUG_QUESTIONS.contains(&question.name.as_str()));
        let given = match (of_plug, chance.between(0, 99)) {
            (Some(plug), _) => Given::Is(plug.into()),
            _ if is_well && choices.is_empty() && !always => Given::DoesNotApply,
            (_, 0..4) if !is_well => Given::NotLooked,
            (_, 4..6) if !is_well => Given::CouldNotTell,
            (_, 6..8) if !is_well && !always => Given::DoesNotApply,
            _ if choices.is_empty() => Given::NotLooked,
            _ => Given::Is((*chance.of(&choices)).into()),
        };
        let figure = question.figure.as_ref().filter(|figure| figure.unit == "%" && raises);
        answers.push(Answer {
            question: question.name,
            place_on_part: String::new(),
            note: if given == Given::DoesNotApply { "There is none".to_owned() } else { String::new() },
            given,
            figure: figure.map(|_| f64::from(chance.between(1, 60))),
        });
    }
    let survey = Survey {
        id: key(&mut || chance.id()),
        part: author.file.part.id,
        looked: moment(on),
        who: "A. Nobody".to_owned(),
        why: "On arrival".to_owned(),
        supersedes: None,
        note: String::new(),
        answers,
    };
    author.survey(survey, &mut || chance.id());
}

fn work(author: &mut PartAuthor, on: When, chance: &mut Chance) {
    if !chance.percent(60) {
        return;
    }
    for _ in 0..chance.between(1, 3) {
        let tasks = outstanding::of_part(&author.file, author.rules());
        let doable = tasks.iter().find(|task| task.doable).and_then(|task| task.rule());
        let Some(rule) = doable.map(|rule| rule.name.clone()) else { return };
        let state = match chance.between(0, 9) {
            0 => WorkState::Doing,
            1 => WorkState::Waiting,
            2 => WorkState::Waived,
            _ => WorkState::Done,
        };
        let deed = Deed {
            rule: &rule,
            state,
            on,
            who: "A. Nobody",
            minutes: (state == WorkState::Done).then(|| chance.between(5, 90)),
            used: "",
            reason: if state == WorkState::Waived { "Not worth it" } else { "" },
            note: "",
        };
        author.work(&deed, &mut || chance.id());
    }
}

/// Settings, readings, proofs, custody, valuations: some of each.
fn rest(author: &mut PartAuthor, ground: &Ground, arrived: u32, chance: &mut Chance) {
    let part = author.file.part.id;
    let on = day(ground, arrived / 5);
    if chance.percent(40) {
        author.put(Setting {
            id: key(&mut || chance.id()),
            part,
            found: moment(day(ground, arrived)),
            name: format!("JP{}", chance.between(1, 30)),
            value: (*chance.of(&["open", "closed", "1-2", "2-3"])).to_owned(),
            source: "print on the board".to_owned(),
        });
    }
    if chance.percent(25) {
        author.put(Reading {
            id: key(&mut || chance.id()),
            part: Some(part),
            machine: None,
            measured: moment(on),
            quantity: "+5 V to ground, unpowered".to_owned(),
            value: f64::from(chance.between(20, 900)),
            unit: "Ω".to_owned(),
            condition: String::new(),
            who: "A. Nobody".to_owned(),
            supersedes: None,
            note: String::new(),
            proof: None,
            work: None,
        });
    }
    if chance.percent(45) {
        author.pass_all_proofs(on, "A. Nobody", &mut || chance.id());
    }
    if chance.percent(2) {
        author.put(CustodyEvent {
            id: key(&mut || chance.id()),
            part,
            happened: moment(on),
            act: *chance.of(&[CustodyAct::Lent, CustodyAct::Sold, CustodyAct::Borrowed]),
            party: "B. Somebody".to_owned(),
            until: When::Unknown,
            price_cents: None,
            condition: String::new(),
            note: String::new(),
        });
    }
    if chance.percent(5) {
        author.put(Valuation {
            id: key(&mut || chance.id()),
            part,
            on,
            amount_cents: i64::from(chance.between(1, 200)) * 100,
            basis: "List".to_owned(),
        });
    }
}
