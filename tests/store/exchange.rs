//! The exchange document: whole, by its schema, and refused with place and reason when it is wrong.

use std::collections::BTreeSet;
use std::sync::Arc;

use benchwright::record::{
    AttachmentKind, CapacitorState, CapacitorUse, CaseState, Change, CustodyAct, Dielectric, EntryKind, FindingSource,
    FindingState, FromFactory, Hold, Kind, KitState, MarkUse, Mounting, Nature, Originality, PhotoView, PowerOnResult,
    ProofResult, Severity, Side, Standing, Surface, Touches, TrialResult, Word, WorkState,
};
use benchwright::rules::Rules;
use benchwright::store::{SCHEMA, Store, StoreError, UnknownNames};
use proptest::prelude::*;
use serde_json::{Value, json};
use tempfile::TempDir;

use crate::invent::Chance;
use crate::support::{assert_same, fresh, part, put};

/// A logbook with something of every kind.
fn full(seed: u64) -> (TempDir, Store) {
    let (folder, store) = fresh();
    let mut chance = Chance(seed);
    let mut change = Change::new("Fill");
    let entries = chance.part("0001");
    let part = entries.iter().find_map(|entry| match entry {
        benchwright::record::Entry::Part(part) => Some(part.id),
        _ => None,
    });
    change.put_all(entries).put_all(chance.machine("Front desk", part.unwrap()));
    store.write(change).unwrap();
    (folder, store)
}

fn exported(store: &Store) -> Value {
    serde_json::from_str(&store.export().unwrap()).unwrap()
}

fn import(document: &Value) -> (TempDir, Store, Result<(), StoreError>) {
    let (folder, store) = fresh();
    // The logbook's names come from chance, and from no table.
    store.use_rules(Arc::new(Rules::of(&[]).unwrap()));
    let outcome = store.import(&document.to_string(), UnknownNames::Keep).map(drop);
    (folder, store, outcome)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn exporting_and_importing_again_gives_the_same_logbook(seed in any::<u64>()) {
        let (_folder, store) = full(seed);
        let document = exported(&store);
        let (_other, copy, outcome) = import(&document);
        outcome.unwrap();
        assert_same(&copy.logbook(), &store.logbook());
        prop_assert_eq!(exported(&copy), document);
    }

    #[test]
    fn every_exported_document_holds_to_the_schema(seed in any::<u64>()) {
        let (_folder, store) = full(seed);
        let schema: Value = serde_json::from_str(SCHEMA).unwrap();
        let validator = jsonschema::validator_for(&schema).unwrap();
        let document = exported(&store);
        let errors: Vec<String> =
            validator.iter_errors(&document).map(|error| format!("{}: {error}", error.instance_path())).collect();
        prop_assert!(errors.is_empty(), "{errors:#?}");
    }
}

#[test]
fn the_schema_is_one_by_the_metaschema() {
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
    jsonschema::meta::validate(&schema).unwrap();
}

fn names(members: &Value) -> BTreeSet<String> {
    members.as_object().unwrap().keys().cloned().collect()
}

#[test]
fn the_schema_tells_every_list_and_every_field() {
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    let lists = names(&schema["properties"]);
    let kinds = EntryKind::ALL.iter().map(|kind| kind.name().to_owned());
    assert_eq!(lists, kinds.chain(["format".into(), "version".into()]).collect());
    // Enough seeds that each kind is met.
    let mut met = BTreeSet::new();
    for seed in 0..6 {
        let (_folder, store) = full(seed);
        for (list, records) in exported(&store).as_object().unwrap() {
            let first = if records.is_array() { &records[0] } else { records };
            if first.is_object() {
                assert_eq!(names(&schema["$defs"][list]["properties"]), names(first), "{list}");
                met.insert(list.clone());
            }
        }
    }
    assert_eq!(met.len(), EntryKind::ALL.len());
}

#[test]
fn the_schema_knows_every_word() {
    fn holds<W: Word>(schema: &Value, list: &str) {
        let told: Vec<&str> =
            schema["$defs"][list]["enum"].as_array().unwrap().iter().map(|word| word.as_str().unwrap()).collect();
        assert_eq!(told, W::ALL.iter().map(|word| word.name()).collect::<Vec<_>>(), "{list}");
    }
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    holds::<AttachmentKind>(&schema, "attachment_kind_word");
    holds::<CapacitorState>(&schema, "capacitor_state_word");
    holds::<CapacitorUse>(&schema, "capacitor_use_word");
    holds::<CaseState>(&schema, "case_state_word");
    holds::<CustodyAct>(&schema, "custody_act_word");
    holds::<Dielectric>(&schema, "dielectric_word");
    holds::<FindingSource>(&schema, "finding_source_word");
    holds::<FindingState>(&schema, "finding_state_word");
    holds::<FromFactory>(&schema, "from_factory_word");
    holds::<Hold>(&schema, "hold_word");
    holds::<Kind>(&schema, "kind_word");
    holds::<KitState>(&schema, "kit_state_word");
    holds::<MarkUse>(&schema, "mark_use_word");
    holds::<Mounting>(&schema, "mounting_word");
    holds::<Nature>(&schema, "nature_word");
    holds::<Originality>(&schema, "originality_word");
    holds::<PhotoView>(&schema, "photo_view_word");
    holds::<PowerOnResult>(&schema, "power_on_result_word");
    holds::<ProofResult>(&schema, "proof_result_word");
    holds::<Severity>(&schema, "severity_word");
    holds::<Side>(&schema, "side_word");
    holds::<Standing>(&schema, "standing_word");
    holds::<Surface>(&schema, "surface_word");
    holds::<Touches>(&schema, "touches_word");
    holds::<TrialResult>(&schema, "trial_result_word");
    holds::<WorkState>(&schema, "work_state_word");
    let words = names(&schema["$defs"]).into_iter().filter(|name| name.ends_with("_word")).count();
    assert_eq!(words, 26, "each list of words is checked here");
}

/// No word of a programming language stands in a reason.
fn assert_plain(reason: &str) {
    for word in
        ["expected", "invalid", "unknown variant", "unknown field", "u32", "u64", "i64", "f64", "struct", "enum"]
    {
        assert!(!reason.contains(word), "“{word}”: {reason}");
    }
}

/// What is done to a document, and where the error must be said to be.
type Damage = (&'static str, fn(&mut Value));

#[test]
fn a_wrong_document_is_refused_by_schema_and_import_alike_and_changes_nothing() {
    let (_folder, store) = full(7);
    let document = exported(&store);
    let schema: Value = serde_json::from_str(SCHEMA).unwrap();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let damages: [Damage; 17] = [
        ("format", |it| it["format"] = json!("another")),
        ("version", |it| it["version"] = json!(2)),
        ("workshop", |it| drop(it.as_object_mut().unwrap().remove("workshop"))),
        ("part 0001, kind", |it| it["part"][0]["kind"] = json!("mainbord")),
        ("part 0001, acquired", |it| it["part"][0]["acquired"] = json!("1850")),
        ("part 0001, colour", |it| it["part"][0]["colour"] = json!("beige")),
        ("part 0001", |it| drop(it["part"][0].as_object_mut().unwrap().remove("serial"))),
        ("part 0001, id", |it| it["part"][0]["id"] = json!("17")),
        ("part 1", |it| it["part"][0]["tag"] = json!("")),
        ("role 1", |it| it["role"][0]["count"] = json!(0)),
        ("finding 1, note", |it| it["finding"][0]["note"] = json!(4)),
        ("look 1, looked, on", |it| it["look"][0]["looked"]["on"] = json!("1998-13")),
        ("photo 1, is_map", |it| it["photo"][0]["is_map"] = json!("front")),
        ("photo_mark 1, role", |it| it["photo_mark"][0]["role"] = json!("pin")),
        ("photo_mark 1", |it| {
            (it["photo_mark"][0]["role"], it["photo_mark"][0]["points"]) = (json!("scale"), json!([]));
        }),
        ("photo_mark 1", |it| it["photo_mark"][0]["length_mm"] = json!(-2.5)),
        ("pieces", |it| it["pieces"] = json!([])),
    ];
    for (place, damage) in damages {
        let mut wrong = document.clone();
        damage(&mut wrong);
        assert!(!validator.is_valid(&wrong), "the schema lets pass: {place}");
        let (_other, copy, outcome) = import(&wrong);
        let Err(StoreError::BadDocument { place: told, reason }) = outcome else { panic!("{place}: {outcome:?}") };
        assert!(told == place || (told == "the document" && reason.contains(place)), "{place}: {told}: {reason}");
        assert_plain(&reason);
        assert_eq!((copy.logbook().revision, copy.logbook().parts.len()), (1, 0));
    }
}

#[test]
fn what_no_schema_can_see_is_refused_with_its_place_too() {
    let (_folder, store) = full(7);
    let document = exported(&store);
    let damages: [Damage; 4] = [
        ("part 0001", |it| it["part"][0]["lot"] = json!("0190163d-8694-739b-aea5-966c26f8ad91")),
        ("finding 1", |it| it["look"] = json!([])),
        ("place 2, id", |it| it["place"][1]["id"] = it["place"][0]["id"].clone()),
        ("machine 1", |it| it["machine"][0]["window_to"] = json!("1980")),
    ];
    for (place, damage) in damages {
        let mut wrong = document.clone();
        damage(&mut wrong);
        let (_other, _copy, outcome) = import(&wrong);
        let Err(StoreError::BadDocument { place: told, reason }) = outcome else { panic!("{place}: {outcome:?}") };
        assert_eq!(told, place, "{reason}");
    }
    let (_other, copy) = fresh();
    assert!(matches!(copy.import("{ \"format\": ", UnknownNames::Keep), Err(StoreError::BadDocument { .. })));
}

#[test]
fn an_import_is_one_change_that_joins_by_key_and_can_be_undone() {
    let (_folder, store) = full(3);
    let document = exported(&store);
    let (_other, target) = fresh();
    target.use_rules(Arc::new(Rules::of(&[]).unwrap()));
    put(&target, "Log", part("0777", Kind::Fan)).unwrap();
    let before = target.logbook();
    let after = target.import(&document.to_string(), UnknownNames::Keep).unwrap();
    assert_eq!((after.revision, after.parts.len()), (before.revision + 1, 2));
    assert_eq!(after.workshop, before.workshop, "a logbook with parts of its own keeps its title page");
    target.import(&document.to_string(), UnknownNames::Keep).unwrap();
    assert_same(&target.logbook(), &after);
    assert_same(&target.undo_now().unwrap(), &before);
}
