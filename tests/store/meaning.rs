//! What records say by the tables: names that none has, what cannot be meant, facts whose finding is missing.

use std::sync::Arc;

use benchwright::assess::missing_findings::MissingFindings;
use benchwright::assess::unknown_names::{self, NameKind, Owner, UnknownName};
use benchwright::record::{
    Answer, CapacitorState, Change, Design, DesignFigure, Entry, FindingFile, FindingSource, FindingState, Given, Kind,
    Logbook, Marking, Part, PartId, Proof, ProofResult, Severity, Side, Surface, Survey, Work, WorkState,
};
use benchwright::rules::Rules;
use benchwright::store::{Area, Report, Store, StoreError, UnknownNames, check};
use rusqlite::Connection;
use serde_json::{Value, json};

use crate::records::{self, answer, design, survey};
use crate::support::{assert_same, fresh, id, moment, part, put};

fn is(name: &str) -> Given {
    Given::Is(name.into())
}

fn rules() -> Rules {
    Rules::shipped()
}

fn looked_over(store: &Store) -> Report {
    check(store.folder(), &rules()).unwrap()
}

fn told(report: &Report, area: Area) -> Vec<&str> {
    report.troubles.iter().chain(&report.remarks).filter(|of| of.area == area).map(|of| of.text.as_str()).collect()
}

#[track_caller]
fn refused(store: &Store, entry: impl Into<Entry>, words: &[&str]) {
    let before = store.logbook();
    match put(store, "Try", entry) {
        Err(StoreError::Refused(refusal)) => {
            let text = refusal.to_string();
            for word in words {
                assert!(text.contains(word), "“{word}” is missing: {text}");
            }
        }
        other => panic!("{other:?}"),
    }
    assert_same(&store.logbook(), &before);
}

/// Writes past the store, as a program of an earlier form may have.
fn by_hand(store: &Store, sql: &str) {
    Connection::open(store.folder().join("logbook.sqlite")).unwrap().execute_batch(sql).unwrap();
}

fn figure(design: &Design, name: &str, value: f64) -> DesignFigure {
    let (figure, source) = (name.to_owned(), String::new());
    DesignFigure { id: id(), design: design.id, figure, value, source, at_bus_mhz: None }
}

fn proof(part: PartId, test: &str) -> Proof {
    Proof {
        id: id(),
        part: Some(part),
        machine: None,
        test: test.to_owned(),
        run: moment("2024"),
        rig: String::new(),
        minutes: None,
        criterion: String::new(),
        result: ProofResult::Passed,
        who: String::new(),
        note: String::new(),
    }
}

/// A board of a design with a name of every kind that no table has, and one of every kind that one has.
fn with_unknown_names(store: &Store) -> (Part, Design) {
    let drawn = design(Kind::Mainboard, "Nordkamp", "NB-4");
    let board = Part { design: Some(drawn.id), ..part("0042", Kind::Mainboard) };
    let mut change = Change::new("Log");
    change.put(drawn.clone()).put(board.clone());
    change.put(records::connector(drawn.id, Side::Offers, "isa-16", 4));
    change.put(records::connector(drawn.id, Side::Offers, "isa_16", 4));
    change.put(figure(&drawn, "bus_clock_mhz", 66.0)).put(figure(&drawn, "bus_clok_mhz", 66.0));
    let scheme = |name: &str| Marking {
        scheme: name.to_owned(),
        ..records::marking(board.id, moment("2024"), Surface::Board, "9712")
    };
    change.put(scheme("year_week")).put(scheme("week_of_year"));
    let answers = vec![
        answer("running", is("seen")),
        answer("dirt", is("filthy beyond words")),
        answer("clock-suply", is("leaking")),
    ];
    change.put(survey(board.id, moment("2024"), answers));
    for what in ["cell-leaked", "cell-leeked"] {
        let finding = records::finding(board.id, what);
        change.put(records::look(finding.id, moment("2024"), FindingState::Open, Severity::Plain)).put(finding);
    }
    let work = |rule: &str| Work { rule: rule.to_owned(), ..records::work(board.id, WorkState::Open, moment("2024")) };
    change.put(work(&rules().work[0].name)).put(work("dance-around-it"));
    change.put(proof(board.id, &rules().proofs[0].name)).put(proof(board.id, "smell-test"));
    store.write(change).unwrap();
    (board, drawn)
}

fn of_part(part: PartId, kind: NameKind, name: &str) -> UnknownName {
    UnknownName { owner: Owner::Part(part), kind, name: name.to_owned() }
}

#[test]
fn names_that_no_table_has_are_told_and_only_those() {
    let (_folder, store) = fresh();
    let (board, drawn) = with_unknown_names(&store);
    let logbook = store.logbook();
    let of_board = vec![
        of_part(board.id, NameKind::Question, "clock-suply"),
        of_part(board.id, NameKind::Answer, "dirt/filthy beyond words"),
        of_part(board.id, NameKind::Finding, "cell-leeked"),
        of_part(board.id, NameKind::Test, "smell-test"),
        of_part(board.id, NameKind::Work, "dance-around-it"),
        of_part(board.id, NameKind::Scheme, "week_of_year"),
    ];
    assert_eq!(unknown_names::of_part(logbook.part(board.id).unwrap(), &rules()), of_board);
    let of_design = [NameKind::Connector, NameKind::Figure]
        .into_iter()
        .zip(["isa_16", "bus_clok_mhz"])
        .map(|(kind, name)| UnknownName { owner: Owner::Design(drawn.id), kind, name: name.to_owned() });
    let all: Vec<UnknownName> = of_board.into_iter().chain(of_design).collect();
    assert_eq!(unknown_names::of(&logbook, &rules()), all);

    let report = looked_over(&store);
    let names = told(&report, Area::Names);
    assert!(!report.is_sound() && names.len() == 8, "{names:#?}");
    assert!(names.contains(&"design Nordkamp NB-4: no connector is named “isa_16”; “isa-16” is known"), "{names:#?}");
    assert!(names.contains(&"part 0042: no test is named “smell-test”"), "{names:#?}");
    assert!(names.iter().any(|name| name.contains("“clock-suply”; “clock-supply” is known")), "{names:#?}");
}

#[test]
fn an_import_refuses_unknown_names_all_at_once_unless_it_is_to_keep_them() {
    let (_folder, store) = fresh();
    with_unknown_names(&store);
    let document = store.export().unwrap();
    let (_other, copy) = fresh();
    let Err(StoreError::UnknownNames(list)) = copy.import(&document, UnknownNames::Refuse) else { panic!() };
    let text = list.to_string();
    for word in [
        "8 names stand in no table",
        "part 0042: no question is named “clock-suply”; “clock-supply” is known",
        "part 0042: no answer is named “dirt/filthy beyond words”",
        "part 0042: no finding is named “cell-leeked”; “cell-leaked” is known",
        "part 0042: no test is named “smell-test”",
        "part 0042: no work is named “dance-around-it”",
        "part 0042: no date scheme is named “week_of_year”",
        "design Nordkamp NB-4: no connector is named “isa_16”; “isa-16” is known",
        "design Nordkamp NB-4: no specification is named “bus_clok_mhz”; “bus_clock_mhz” is known",
    ] {
        assert!(text.contains(word), "“{word}” is missing: {text}");
    }
    assert!(copy.logbook().parts.is_empty());
    // Kept, they go out again as they came; what stands already is no reason to refuse.
    copy.import(&document, UnknownNames::Keep).unwrap();
    assert_eq!(copy.export().unwrap(), document);
    copy.import(&document, UnknownNames::Refuse).unwrap();
    // The user's own tables count.
    let own = "[[question]]\nname = \"clock-suply\"\nkinds = [\"mainboard\"]\nask = \"Mine?\"\ntopic = \"mine\"\n\
               power = \"nothing\"\nsource = \"mine\"\nanswer = [{ name = \"leaking\", say = \"Yes\", power = \"nothing\" }, { name = \"none\", say = \"No\", power = \"nothing\" }]\n";
    let (_third, third) = fresh();
    third.use_rules(Arc::new(Rules::with_own(&[("mine.toml".to_owned(), own.to_owned())]).unwrap()));
    let Err(StoreError::UnknownNames(list)) = third.import(&document, UnknownNames::Refuse) else { panic!() };
    assert!(list.0.len() == 7 && !list.to_string().contains("clock-suply"), "{list}");
}

#[test]
fn a_record_supersedes_neither_itself_nor_another_things() {
    let (_folder, store) = fresh();
    let (board, card) = (part("0042", Kind::Mainboard), part("0043", Kind::VideoCard));
    let mark = |of: PartId| records::marking(of, moment("2024"), Surface::Board, "9712");
    let (first, second) = (mark(board.id), mark(board.id));
    let mut change = Change::new("Log");
    change.put(board.clone()).put(card.clone()).put(first.clone()).put(second.clone());
    store.write(change).unwrap();
    let again = |of: &Marking, supersedes| Marking { supersedes: Some(supersedes), ..of.clone() };
    refused(&store, again(&first, first.id), &["marking of part 0042", "supersede itself"]);
    refused(&store, again(&mark(card.id), first.id), &["marking of part 0043", "marking of part 0042"]);
    put(&store, "Correct", again(&second, first.id)).unwrap();
    refused(&store, again(&first, second.id), &["supersede itself"]);

    let one = survey(board.id, moment("2024"), vec![]);
    put(&store, "Look", one.clone()).unwrap();
    let wrong = Survey { supersedes: Some(one.id), ..survey(card.id, moment("2024"), vec![]) };
    refused(&store, wrong, &["survey of part 0043", "survey of part 0042"]);
    refused(&store, Survey { supersedes: Some(one.id), ..one.clone() }, &["survey of part 0042", "supersede itself"]);
    let five = records::reading(board.id, moment("2024"), "+5 V rail", 5.0, "V");
    put(&store, "Measure", five.clone()).unwrap();
    let mut other = records::reading(card.id, moment("2024"), "+5 V rail", 5.1, "V");
    other.supersedes = Some(five.id);
    refused(&store, other, &["reading of part 0043", "reading of part 0042"]);
}

#[test]
fn a_part_has_a_design_of_its_own_kind() {
    let (_folder, store) = fresh();
    let drawn = design(Kind::VideoCard, "Velmar", "V5");
    let card = Part { design: Some(drawn.id), ..part("0042", Kind::VideoCard) };
    let mut change = Change::new("Log");
    change.put(drawn.clone()).put(card.clone());
    store.write(change).unwrap();
    let board = Part { design: Some(drawn.id), ..part("0043", Kind::Mainboard) };
    refused(&store, board, &["part 0043", "Mainboard", "design V5", "Video card"]);
    refused(&store, Part { kind: Kind::SoundCard, ..card.clone() }, &["part 0042", "Sound card"]);
    refused(&store, Design { kind: Kind::Mainboard, ..drawn.clone() }, &["part 0042", "Mainboard"]);
    // Both at once is a correction.
    let mut change = Change::new("Correct");
    change.put(Design { kind: Kind::SoundCard, ..drawn }).put(Part { kind: Kind::SoundCard, ..card });
    store.write(change).unwrap();
}

#[test]
fn a_design_figure_is_never_negative_and_a_clock_never_nothing() {
    let (_folder, store) = fresh();
    let drawn = design(Kind::Mainboard, "Nordkamp", "NB-4");
    put(&store, "Design", drawn.clone()).unwrap();
    for name in ["current_5v_a", "core_voltage_v", "length_mm", "capacity_mb", "power_w", "access_ns", "heads"] {
        refused(&store, figure(&drawn, name, -1.0), &["design figure of design NB-4", name, "is -1", "0 or more"]);
        put(&store, "Figure", figure(&drawn, name, 0.0)).unwrap();
    }
    for name in ["bus_clock_mhz", "bus_width_bits", "multiplier", "pci_divider", "cache_divider"] {
        refused(&store, figure(&drawn, name, 0.0), &["design figure of design NB-4", name, "above 0"]);
        refused(&store, figure(&drawn, name, -0.5), &[name, "above 0"]);
        put(&store, "Figure", figure(&drawn, name, 0.5)).unwrap();
    }
    let divider = DesignFigure { at_bus_mhz: Some(-66.0), ..figure(&drawn, "pci_divider", 2.0) };
    refused(&store, divider, &["at_bus_mhz", "above 0"]);
    // −0 is 0, from wherever it comes.
    put(&store, "Figure", figure(&drawn, "rating_minus5v_a", -0.0)).unwrap();
    assert!(!store.export().unwrap().contains("-0.0"));
}

#[test]
fn does_not_apply_is_refused_where_the_kind_always_has_what_is_asked_about() {
    let (_folder, store) = fresh();
    let board = part("0042", Kind::Mainboard);
    put(&store, "Log", board.clone()).unwrap();
    let without = |question: &str, note: &str| {
        let given = Answer { note: note.to_owned(), ..answer(question, Given::DoesNotApply) };
        survey(board.id, moment("2024"), vec![given])
    };
    refused(
        &store,
        without("rails", "it has none"),
        &["survey of part 0042", "rails (“", "always applies", "Mainboard"],
    );
    put(&store, "Look", without("coin-cell", "a dry module instead")).unwrap();
    assert!(looked_over(&store).remarks.is_empty());
    // Without a reason it stands in older logbooks: it comes in, and is told.
    put(&store, "Look", without("coin-cell", " ")).unwrap();
    let report = looked_over(&store);
    assert!(report.is_sound());
    assert_eq!(told(&report, Area::Answers), ["part 0042, survey of 2024: coin-cell"]);
    // What stands already stays, is told, and its record can be edited.
    let json = r#"[{"question":"rails","given":"does_not_apply"}]"#;
    by_hand(&store, &format!("UPDATE survey SET answers = '{json}', note = 'old'"));
    let folder = store.folder().to_owned();
    drop(store);
    let store = Store::open(&folder).unwrap();
    let old = store.logbook().part(board.id).unwrap().surveys[0].clone();
    assert_eq!(old.answers[0].given, Given::DoesNotApply);
    put(&store, "Remark", Survey { note: "a remark".to_owned(), ..old.clone() }).unwrap();
    let records = check(&folder, &rules()).unwrap();
    assert!(told(&records, Area::Records).iter().any(|text| text.contains("rails")), "{records:?}");
}

#[test]
fn texts_have_bounds_and_what_stands_beyond_them_stays() {
    let (_folder, store) = fresh();
    refused(&store, part(&"ä".repeat(65), Kind::Fan), &["tag", "65 characters", "64 at most"]);
    put(&store, "Log", part(&"ä".repeat(64), Kind::Fan)).unwrap();
    let named = |count: usize| Part { name: "x".repeat(count), ..part("0042", Kind::Fan) };
    refused(&store, named(201), &["part 0042", "“name”", "201 characters", "200 at most"]);
    let noted = |count: usize| Part { note: "é".repeat(count), ..part("0042", Kind::Fan) };
    refused(&store, noted(100_001), &["part 0042", "“note”", "100001 characters"]);
    put(&store, "Log", noted(100_000)).unwrap();
    let fan = store.logbook().part_tagged("0042").unwrap().part.clone();
    let answer = Answer { note: "x".repeat(100_001), ..answer("dirt", Given::CouldNotTell) };
    refused(&store, survey(fan.id, moment("2024"), vec![answer]), &["survey of part 0042", "answers/dirt/note"]);

    by_hand(&store, "UPDATE part SET name = printf('%.300c', 'y') WHERE tag = '0042'");
    let folder = store.folder().to_owned();
    drop(store);
    let store = Store::open(&folder).unwrap();
    let fan = store.logbook().part(fan.id).unwrap().part.clone();
    assert_eq!(fan.name.len(), 300);
    put(&store, "Serial", Part { serial: "17".to_owned(), ..fan.clone() }).unwrap();
    put(&store, "Shorter", Part { name: "y".repeat(299), ..fan.clone() }).unwrap();
    refused(&store, Part { name: "y".repeat(301), ..fan.clone() }, &["301 characters"]);
    let report = check(&folder, &rules()).unwrap();
    let [long] = told(&report, Area::Records)[..] else { panic!("{report:?}") };
    assert!(long.contains("part 0042") && long.contains("299 characters"), "{long}");
}

/// A board with facts that call for findings, and none of them: a leaking cell, a rail that is short, a burst
/// capacitor, failed work.
fn bare_facts(store: &Store) -> PartId {
    let board = part("0042", Kind::Mainboard);
    let short = Answer { figure: Some(0.2), ..answer("rails", is(&sound_answer("rails"))) };
    let answers = vec![answer("clock-supply", is("leaking")), short];
    let mut change = Change::new("Log");
    change.put(board.clone()).put(survey(board.id, moment("2024-05"), answers));
    change.put(records::capacitor(board.id, "C12", moment("2024-05"), CapacitorState::Burst));
    let failed = Work {
        title: "Lift C12".to_owned(),
        reason: "a pad came off".to_owned(),
        ..records::work(board.id, WorkState::Failed, moment("2024-06"))
    };
    change.put(failed);
    store.write(change).unwrap();
    board.id
}

/// The first answer of a question that raises nothing.
fn sound_answer(question: &str) -> String {
    let rules = rules();
    let question = rules.question(question).unwrap();
    question.answers.iter().find(|row| row.finding.is_none()).unwrap().name.to_string()
}

fn findings(logbook: &Logbook, part: PartId) -> Vec<(String, FindingSource, FindingState)> {
    let of = |file: &FindingFile| (file.finding.what.to_string(), file.finding.source, file.state());
    logbook.part(part).unwrap().findings.iter().map(of).collect()
}

fn called_for() -> Vec<(String, FindingSource, FindingState)> {
    let open = |what: &str, source| (what.to_owned(), source, FindingState::Open);
    vec![
        open("cell-leaked", FindingSource::Survey),
        open("rail-shorted", FindingSource::Survey),
        open("capacitors-burst", FindingSource::Capacitors),
        open("", FindingSource::Work),
    ]
}

#[test]
fn facts_without_their_findings_are_told_and_get_them_as_one_change() {
    let (_folder, store) = fresh();
    let board = bare_facts(&store);
    let before = store.logbook();
    assert!(findings(&before, board).is_empty());
    let report = looked_over(&store);
    let missing = told(&report, Area::Findings);
    assert!(!report.is_sound() && missing.len() == 4, "{missing:#?}");
    assert!(missing.contains(&"part 0042: Leaked cell (clock-supply)"), "{missing:#?}");
    assert!(missing.iter().any(|text| text.contains("a pad came off")), "{missing:#?}");

    let added = store.add_missing_findings().unwrap();
    assert_eq!(added.iter().flat_map(MissingFindings::findings).count(), 4);
    assert_eq!(findings(&store.logbook(), board), called_for());
    assert!(looked_over(&store).is_sound());
    // Twice changes nothing, and one undo takes all of it back.
    assert!(store.add_missing_findings().unwrap().is_empty());
    assert_same(&store.undo_now().unwrap(), &before);
}

#[test]
fn an_import_brings_the_findings_of_its_facts_in_the_same_change() {
    let (_folder, store) = fresh();
    let board = bare_facts(&store);
    let document = store.export().unwrap();
    let (_other, copy) = fresh();
    let empty = copy.logbook();
    let after = copy.import(&document, UnknownNames::Refuse).unwrap();
    assert_eq!(findings(&after, board), called_for());
    assert_eq!(after.revision, empty.revision + 1);
    // Their looks are numbered on after all that came in.
    let numbers: Vec<u32> = after.part(board).unwrap().findings.iter().map(|of| of.looks[0].looked.sequence).collect();
    assert!(numbers.iter().all(|number| *number > 3), "{numbers:?}");
    let again = copy.import(&document, UnknownNames::Refuse).unwrap();
    assert_same(&again, &after);
    assert_same(&copy.undo_now().unwrap(), &empty);
}

#[test]
fn a_fact_whose_finding_is_there_adds_nothing_whatever_became_of_it() {
    let (_folder, store) = fresh();
    let board = bare_facts(&store);
    store.add_missing_findings().unwrap();
    let mut change = Change::new("Settle");
    for file in &store.logbook().part(board).unwrap().findings {
        change.put(file.next_look(id(), moment("2024-07"), FindingState::Confirmed));
    }
    let settled = store.write(change).unwrap();
    assert!(looked_over(&store).is_sound() && store.add_missing_findings().unwrap().is_empty());
    // One by hand, of the same name, is that finding too; a later answer that finds nothing calls for none.
    let card = part("0043", Kind::MultiIoCard);
    let mut change = Change::new("Log");
    change.put(card.clone()).put(survey(card.id, moment("2024-01"), vec![answer("clock-supply", is("leaking"))]));
    let by_hand = records::finding(card.id, "cell-leaked");
    change.put(records::look(by_hand.id, moment("2024-02"), FindingState::Open, Severity::Plain)).put(by_hand);
    let other = part("0044", Kind::MultiIoCard);
    change.put(other.clone()).put(survey(other.id, moment("2024-01"), vec![answer("clock-supply", is("leaking"))]));
    change.put(survey(other.id, moment("2024-02"), vec![answer("clock-supply", is("coin"))]));
    let logged = store.write(change).unwrap();
    assert!(store.add_missing_findings().unwrap().is_empty() && looked_over(&store).is_sound());
    assert_eq!((logged.revision, store.logbook().revision), (settled.revision + 1, settled.revision + 1));
}

/// The reason why a document is refused.
fn reason(document: &str) -> String {
    let (_folder, store) = fresh();
    let error = store.import(document, UnknownNames::Keep).unwrap_err();
    assert!(matches!(error, StoreError::BadDocument { .. }), "{error:?}");
    let text = error.to_string();
    for word in ["expected", "invalid", "unknown variant", "u32", "`", "column 0"] {
        assert!(!text.contains(word), "“{word}”: {text}");
    }
    text
}

#[test]
fn a_documents_faults_are_told_in_plain_words() {
    let (_folder, store) = fresh();
    with_unknown_names(&store);
    let whole: Value = serde_json::from_str(&store.export().unwrap()).unwrap();
    let faulty = |damage: fn(&mut Value)| {
        let mut document = whole.clone();
        damage(&mut document);
        reason(&document.to_string())
    };
    type Case = (fn(&mut Value), &'static str);
    let cases: [Case; 9] = [
        (
            |it| it["part"][0]["tag"] = json!(42),
            "part 1, tag: a text that is not empty is wanted, the number 42 stands here",
        ),
        (|it| it["part"][0]["serial"] = json!([]), "part 0042, serial: a text is wanted, a list stands here"),
        (
            |it| it["design_connector"][1]["count"] = json!(-1),
            "design_connector 2, count: a whole number from 1 to 10000 is wanted, the number -1 stands here",
        ),
        (
            |it| it["part"][0]["price_cents"] = json!(1.5),
            "price_cents: a whole number or null is wanted, the number 1.5",
        ),
        (|it| it["part"][0]["design"] = json!("17"), "design: a key (a UUID: 0190163d"),
        (
            |it| it["survey"][0]["looked"] = json!("2024"),
            "survey 1, looked: a record in braces with on, sequence is wanted",
        ),
        (
            |it| it["survey"][0]["answers"][1]["given"] = json!("leaking"),
            "survey 1, answers, 2, given: one of not_looked",
        ),
        (|it| it["part"] = json!({}), "part: a list is wanted, a record in braces stands here"),
        (|it| drop(it.as_object_mut().unwrap().remove("format")), "the document: “format” is missing"),
    ];
    for (damage, words) in cases {
        let text = faulty(damage);
        assert!(text.contains(words), "“{words}” is missing: {text}");
    }
    let text = whole.to_string();
    assert!(reason(&text[..text.len() / 2]).contains("breaks off"));
    assert!(reason(&text.replacen(':', "=", 1)).contains("line 1, column 10: this is no JSON"));
    let twice = text.replacen("\"tag\":\"0042\"", "\"tag\":\"0042\",\"tag\":\"0043\"", 1);
    assert!(reason(&twice).contains("“tag” stands here twice"), "{}", reason(&twice));
    // A byte-order mark before it is no fault.
    let (_other, copy) = fresh();
    copy.import(&format!("\u{feff}{text}"), UnknownNames::Keep).unwrap();
    assert_eq!(copy.logbook().parts.len(), 1);
}

#[test]
fn a_refusal_of_a_documents_record_says_where_it_stands() {
    let (_folder, store) = fresh();
    let drawn = design(Kind::VideoCard, "Velmar", "V5");
    let card = Part { design: Some(drawn.id), ..part("0042", Kind::VideoCard) };
    let mut change = Change::new("Log");
    change.put(drawn).put(card);
    store.write(change).unwrap();
    let mut document: Value = serde_json::from_str(&store.export().unwrap()).unwrap();
    document["part"][0]["kind"] = json!("mainboard");
    let text = reason(&document.to_string());
    assert!(text.contains("part 0042") && text.contains("of the kind “Video card”"), "{text}");
}
