//! A part of the sample, from its tag to its last proof, in the order in which things happened.

use std::collections::BTreeMap;

use super::super::authoring::{Deed, Ids, PartAuthor, key, moment};
use super::noted::{fault_case, proof, reading};
use super::pictures::photographs;
use super::tables::{
    AnswerRow, CapacitorRow, CustodyRow, DecisionRow, OrderRow, PartRow, ProofRow, ReadingRow, SurveyRow, ValuationRow,
    WorkRow,
};
use super::{Book, Fault, Sheet, Shot, find};
use crate::record::{
    Answer, Attachment, Capacitor, CapacitorLook, Change, CustodyEvent, Dielectric, Given, Hold, Kind, Logbook, Look,
    Marking, MaterialUse, Mounting, Nature, Originality, Part, PartId, Setting, Survey, Valuation, When, Work,
    WorkAfter,
};
use crate::text;

/// One thing that happened to a part.
enum Act<'a> {
    Sound,
    Survey(&'a SurveyRow),
    Capacitors(&'a CapacitorRow),
    CapacitorsAgain(&'a CapacitorRow),
    Work(&'a WorkRow),
    Decision(&'a DecisionRow),
    Proof(&'a ProofRow),
    Reading(&'a ReadingRow),
    Custody(&'a CustodyRow),
    Valuation(&'a ValuationRow),
    Proven,
}

/// The tags of a row.
pub fn tags(row: &PartRow) -> impl Iterator<Item = &str> {
    row.tag.iter().chain(&row.tags).map(String::as_str)
}

/// The orders by hand, once all work is written.
pub fn orders(rows: &[OrderRow], logbook: &Logbook, ids: &mut Ids) -> Result<Change, Fault> {
    let mut change = Change::new(text!("Put work in order"));
    for row in rows {
        let find = |tag: &str, name: &str| {
            let file = logbook.part_tagged(tag);
            let work = file.and_then(|file| file.work.iter().find(|work| work.rule == name || work.title == name));
            work.ok_or_else(|| Fault {
                at: format!("order of part {tag}"),
                fault: format!("“{name}” is no work of it"),
            })
        };
        let (work, after) = (find(&row.part, &row.work)?, find(&row.after_part, &row.after)?);
        change.put(WorkAfter { id: key(ids), part: work.part, work: work.id, after: after.id });
    }
    Ok(change)
}

/// The part of a tag with all that happened to it, as one change.
pub fn change(
    row: &PartRow,
    tag: &str,
    book: &Book,
    ids: &mut Ids,
    shots: &mut Vec<Shot>,
    sheets: &mut Vec<Sheet>,
) -> Result<Change, Fault> {
    let fault = |fault: String| Fault { at: format!("part {tag}"), fault };
    let part = part(row, tag, book)?;
    let mut author = PartAuthor::new(part, book.rules);
    for (surface, place_on_part, characters, from_factory) in &row.markings {
        let marking = Marking {
            id: key(ids),
            part: author.file.part.id,
            read: moment(first_look(row, book)),
            surface: *surface,
            place_on_part: place_on_part.clone(),
            text: characters.clone(),
            from_factory: *from_factory,
            scheme: String::new(),
            supersedes: None,
            note: String::new(),
        };
        author.put(marking);
    }
    for (name, value, source) in &row.settings {
        let setting = Setting {
            id: key(ids),
            part: author.file.part.id,
            found: moment(first_look(row, book)),
            name: name.clone(),
            value: value.clone(),
            source: source.clone(),
        };
        author.put(setting);
    }
    for (on, act) in acts(row, book) {
        perform(&act, on, row, book, &mut author, ids).map_err(fault)?;
    }
    photographs(row, book, &author, ids, shots).map_err(fault)?;
    for file in &row.files {
        sheets.push(Sheet {
            attachment: Attachment {
                id: key(ids),
                part: Some(author.file.part.id),
                machine: None,
                lot: None,
                kind: file.kind,
                content: String::new(),
                file_name: file.name.clone(),
                bytes: 0,
                added: moment(first_look(row, book)),
                note: file.note.clone(),
                proof: None,
            },
            text: file.text.clone(),
        });
    }
    let mut change = Change::new(text!("Log part {tag}", tag = tag));
    change.put_all(author.into_entries());
    Ok(change)
}

fn part(row: &PartRow, tag: &str, book: &Book) -> Result<Part, Fault> {
    let design = find(&book.designs, row.design.as_ref(), &format!("part {tag}, design"))?;
    let kind = row.kind.or(design.map(|(_, kind)| kind));
    let kind = kind.ok_or_else(|| Fault { at: format!("part {tag}"), fault: "it has no kind".to_owned() })?;
    Ok(Part {
        id: book.parts[tag],
        tag: tag.to_owned(),
        kind,
        design: design.map(|(id, _)| id),
        name: row.name.clone(),
        serial: row.serial.clone(),
        originality: row.originality.unwrap_or(Originality::Original),
        lot: find(&book.lots, row.lot.as_ref(), &format!("part {tag}, lot"))?,
        price_cents: row.price,
        acquired: row.acquired.when(book.today),
        place: find(&book.places, row.place.as_ref(), &format!("part {tag}, place"))?,
        inside: find(&book.parts, row.inside.as_ref(), &format!("part {tag}, inside"))?,
        quarantine: row.quarantine.clone(),
        quarantined: row.quarantined.when(book.today),
        note: row.note.clone(),
    })
}

/// When somebody first looked at the part.
pub fn first_look(row: &PartRow, book: &Book) -> When {
    let first = row.sound.or_else(|| row.survey.first().map(|survey| survey.on));
    first.map_or(When::Unknown, |on| on.when(book.today))
}

/// All that happened, oldest first; of one day, in the order of this list.
fn acts<'a>(row: &'a PartRow, book: &Book) -> Vec<(When, Act<'a>)> {
    let mut acts: Vec<(super::date::Told, Act)> = Vec::new();
    acts.extend(row.custody.iter().map(|one| (one.on, Act::Custody(one))));
    acts.extend(row.sound.map(|on| (on, Act::Sound)));
    acts.extend(row.survey.iter().map(|one| (one.on, Act::Survey(one))));
    acts.extend(row.capacitors.iter().map(|one| (one.on, Act::Capacitors(one))));
    acts.extend(row.reading.iter().map(|one| (one.on, Act::Reading(one))));
    acts.extend(row.work.iter().map(|one| (one.on, Act::Work(one))));
    acts.extend(row.decision.iter().map(|one| (one.on, Act::Decision(one))));
    // New capacitors are looked at once they are in.
    let later = |one: &'a CapacitorRow| one.later.as_ref().map(|later| (later.on, Act::CapacitorsAgain(one)));
    acts.extend(row.capacitors.iter().filter_map(later));
    acts.extend(row.proof.iter().map(|one| (one.on, Act::Proof(one))));
    acts.extend(row.proven.map(|on| (on, Act::Proven)));
    acts.extend(row.valuation.iter().map(|one| (one.on, Act::Valuation(one))));
    acts.sort_by_key(|(on, _)| on.order(book.today));
    acts.into_iter().map(|(on, act)| (on.when(book.today), act)).collect()
}

fn perform(
    act: &Act,
    on: When,
    row: &PartRow,
    book: &Book,
    author: &mut PartAuthor,
    ids: &mut Ids,
) -> Result<(), String> {
    let part = author.file.part.id;
    let kind = author.file.part.kind;
    match act {
        Act::Sound => {
            let answers = answers(kind, &row.but, true, book)?;
            let why = text!("On arrival").to_owned();
            let survey = Survey {
                id: key(ids),
                part,
                looked: moment(on),
                who: book.keeper.clone(),
                why,
                supersedes: None,
                note: String::new(),
                answers,
            };
            author.survey(survey, ids);
        }
        Act::Survey(one) => {
            let answers = answers(kind, &one.answers, one.rest_sound, book)?;
            let who = one.who.clone().unwrap_or_else(|| book.keeper.clone());
            let (why, note) = (one.why.clone(), one.note.clone());
            let survey = Survey { id: key(ids), part, looked: moment(on), who, why, supersedes: None, note, answers };
            author.survey(survey, ids);
        }
        Act::Capacitors(one) => {
            for name in one.names.split_whitespace() {
                author.put(position(one, name, on, part, ids));
            }
            author.capacitors(on, ids);
        }
        Act::CapacitorsAgain(one) => {
            for look in later_looks(one, on, author, ids) {
                author.put(look);
            }
            author.capacitors(on, ids);
        }
        Act::Work(one) => work(one, on, book, author, ids)?,
        Act::Decision(one) => author.put(decision(one, on, book, author, ids)?),
        Act::Proof(one) => author.put(proof(one, Some(part), None, book, ids)?),
        Act::Reading(one) => author.put(reading(one, Some(part), None, book, ids)),
        Act::Custody(one) => author.put(CustodyEvent {
            id: key(ids),
            part,
            happened: moment(on),
            act: one.act,
            party: one.party.clone(),
            until: one.until.when(book.today),
            price_cents: one.price,
            condition: one.condition.clone(),
            note: String::new(),
        }),
        Act::Valuation(one) => {
            let (amount_cents, basis) = (one.amount, one.basis.clone());
            author.put(Valuation { id: key(ids), part, on, amount_cents, basis });
        }
        Act::Proven => author.pass_all_proofs(on, &book.keeper, ids),
    }
    Ok(())
}

/// The answers to a kind's questions. The first answer of a question is its sound one.
fn answers(
    kind: Kind,
    told: &BTreeMap<String, AnswerRow>,
    rest_sound: bool,
    book: &Book,
) -> Result<Vec<Answer>, String> {
    let questions = book.rules.questions_for(kind);
    if let Some(name) = told.keys().find(|name| questions.iter().all(|question| question.name != **name)) {
        return Err(format!("“{name}” is not asked of its kind"));
    }
    let mut answers = Vec::new();
    for question in questions {
        let (given, place_on_part, note, figure) = match told.get(question.name.as_str()) {
            Some(AnswerRow::Name(name)) => (name.clone(), String::new(), String::new(), None),
            Some(AnswerRow::Whole(whole)) => {
                (whole.is.clone(), whole.place_on_part.clone(), whole.note.clone(), whole.figure)
            }
            None if rest_sound => {
                let sound = question.answers.iter().find(|answer| answer.finding.is_none());
                let Some(sound) = sound else { continue };
                (sound.name.to_string(), String::new(), String::new(), None)
            }
            None => continue,
        };
        let given = match given.as_str() {
            "not-looked" => Given::NotLooked,
            "could-not-tell" => Given::CouldNotTell,
            "does-not-apply" => Given::DoesNotApply,
            name if question.answers.iter().any(|answer| answer.name == name) => Given::Is(name.into()),
            name => return Err(format!("“{name}” is no answer to “{}”", question.name)),
        };
        answers.push(Answer { question: question.name, given, place_on_part, note, figure });
    }
    Ok(answers)
}

fn position(row: &CapacitorRow, name: &str, on: When, part: PartId, ids: &mut Ids) -> Capacitor {
    Capacitor {
        id: key(ids),
        part,
        designator: name.to_owned(),
        place_on_part: row.place_on_part.clone(),
        capacitance_uf: Some(row.uf),
        voltage_v: Some(row.volts),
        temperature_c: Some(105.0),
        diameter_mm: row.diameter_mm,
        height_mm: row.height_mm,
        pitch_mm: None,
        dielectric: row.dielectric.unwrap_or(Dielectric::WetAluminium),
        mounting: row.mounting.unwrap_or(Mounting::Radial),
        series: row.series.clone(),
        polarity: row.polarity.clone(),
        logged: moment(on),
        state: row.state,
        function: row.function,
        low_esr: row.low_esr,
    }
}

fn later_looks(row: &CapacitorRow, on: When, author: &PartAuthor, ids: &mut Ids) -> Vec<CapacitorLook> {
    let Some(later) = &row.later else { return Vec::new() };
    let names: Vec<&str> = row.names.split_whitespace().collect();
    let those = author.file.capacitors.iter().filter(|file| names.contains(&file.position.designator.as_str()));
    those
        .map(|file| CapacitorLook {
            id: key(ids),
            capacitor: file.position.id,
            looked: moment(on),
            state: later.state,
            measured_uf: later.measured_uf,
            esr_mohm: later.esr_mohm,
            leakage_ua: None,
            replaced_by: later.replaced_by.clone(),
            note: String::new(),
        })
        .collect()
}

fn decision(row: &DecisionRow, on: When, book: &Book, author: &PartAuthor, ids: &mut Ids) -> Result<Look, String> {
    let known = author.file.findings.iter().find(|known| *known.finding.what == *row.finding);
    let known = known.ok_or_else(|| format!("“{}” is no finding of it", row.finding))?;
    Ok(Look {
        id: key(ids),
        finding: known.finding.id,
        looked: moment(on),
        state: row.state,
        severity: known.severity(),
        share_percent: known.last().and_then(|last| last.share_percent),
        again_by: When::Unknown,
        reason: row.reason.clone(),
        survey: None,
        work: None,
        who: row.who.clone().unwrap_or_else(|| book.keeper.clone()),
    })
}

fn work(row: &WorkRow, on: When, book: &Book, author: &mut PartAuthor, ids: &mut Ids) -> Result<(), String> {
    let who = row.who.as_deref().unwrap_or(&book.keeper);
    if row.rule.is_empty() {
        author.put(Work {
            id: key(ids),
            part: author.file.part.id,
            finding: None,
            rule: String::new(),
            title: row.title.clone(),
            hold: row.hold.unwrap_or(Hold::Looks),
            nature: row.nature.unwrap_or(Nature::Care),
            state: row.state,
            changed: moment(on),
            who: who.to_owned(),
            minutes: row.minutes,
            used: row.used.clone(),
            reason: row.reason.clone(),
            reversible: None,
            note: row.note.clone(),
            touches: row.touches,
        });
        return Ok(());
    }
    let deed = Deed {
        rule: &row.rule,
        state: row.state,
        on,
        who,
        minutes: row.minutes,
        used: &row.used,
        reason: &row.reason,
        note: &row.note,
    };
    if !author.work(&deed, ids) {
        return Err(format!("“{}” is not outstanding on {on}", row.rule));
    }
    let part = author.file.part.id;
    let done = author.file.work.iter().rfind(|work| work.rule == row.rule).map(|work| work.id);
    for (name, amount) in &row.takes {
        let material = book.materials.get(name).copied().ok_or_else(|| format!("“{name}” is no material"))?;
        author.put_all(done.map(|work| MaterialUse { id: key(ids), part, work, material, amount: *amount }.into()));
    }
    Ok(())
}

/// The part's fault cases, once every part that they name is logged; `None` when it has none.
pub fn cases(row: &PartRow, book: &Book, ids: &mut Ids) -> Result<Option<Change>, Fault> {
    let Some(tag) = row.tag.as_ref().filter(|_| !row.case.is_empty()) else { return Ok(None) };
    let mut change = Change::new(text!("Look for a fault on {tag}", tag = tag));
    for case in &row.case {
        change.put_all(fault_case(case, Some(book.parts[tag]), None, book, ids)?);
    }
    Ok(Some(change))
}
