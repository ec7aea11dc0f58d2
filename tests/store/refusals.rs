//! A change that does not hold is refused with what and where, and nothing of it is written.

use benchwright::record::{
    Capacitor, CapacitorState, Change, Entry, Kind, MarkUse, Material, MaterialUse, PartId, Photo, PhotoMark, Side,
    When, Word as _, Work, WorkAfter, WorkState,
};
use benchwright::store::{Refusal, Store, StoreError};

use crate::records;
use crate::support::{assert_same, fitting, fresh, id, machine, moment, part, place, put};

fn refusal(outcome: Result<(), StoreError>) -> Refusal {
    match outcome {
        Err(StoreError::Refused(refusal)) => refusal,
        other => panic!("{other:?}"),
    }
}

#[track_caller]
fn refused(store: &Store, entry: impl Into<Entry>, words: &[&str]) {
    let text = refusal(put(store, "Try", entry)).to_string();
    for word in words {
        assert!(text.contains(word), "“{word}” is missing: {text}");
    }
}

fn capacitor(board: PartId) -> Capacitor {
    records::capacitor(board, "C12", moment("2024"), CapacitorState::Sound)
}

#[test]
fn a_tag_belongs_to_one_part_however_it_is_written() {
    let (_folder, store) = fresh();
    put(&store, "Log", part("a-17", Kind::Fan)).unwrap();
    assert_eq!(refusal(put(&store, "Log", part("A-17", Kind::Fan))), Refusal::DoubledTag { tag: "A-17".into() });
    refused(&store, part("  ", Kind::Fan), &["tag", "empty"]);
    put(&store, "Machine", machine("Front desk")).unwrap();
    refused(&store, machine("FRONT DESK"), &["FRONT DESK"]);
}

#[test]
fn figures_that_cannot_be_are_named_with_their_record_and_bounds() {
    let (_folder, store) = fresh();
    let board = part("0042", Kind::Mainboard);
    put(&store, "Log", board.clone()).unwrap();
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e300] {
        let capacitor = Capacitor { capacitance_uf: Some(bad), ..capacitor(board.id) };
        refused(&store, capacitor, &["capacitor C12 of part 0042", "capacitance_uf", "above 0"]);
    }
    let reading = |value| records::reading(board.id, moment("2024"), "+5 V rail", value, "V");
    refused(&store, reading(f64::NAN), &["reading of part 0042", "value"]);
    put(&store, "Reading", reading(-12.1)).unwrap();
    let design = records::design(Kind::Mainboard, "Nordkamp", "NB-4");
    put(&store, "Design", design.clone()).unwrap();
    let connector = records::connector(design.id, Side::Offers, "isa_16", 0);
    refused(&store, connector, &["design connector of design NB-4", "count", "1 to 10000"]);
}

#[test]
fn work_never_comes_after_itself_over_however_many_parts() {
    let (_folder, store) = fresh();
    let (board, card) = (part("0042", Kind::Mainboard), part("0043", Kind::VideoCard));
    let work = |part: PartId, title: &str| Work {
        title: title.to_owned(),
        ..records::work(part, WorkState::Open, moment("2024"))
    };
    let (mend, try_it, sort) = (work(card.id, "Mend"), work(board.id, "Try"), work(board.id, "Sort"));
    let after = |later: &Work, first: &Work| WorkAfter { id: id(), part: later.part, work: later.id, after: first.id };
    let mut change = Change::new("Log");
    change.put(board.clone()).put(card.clone()).put(mend.clone()).put(try_it.clone()).put(sort.clone());
    change.put(after(&try_it, &mend)).put(after(&sort, &try_it));
    let logged = store.write(change).unwrap();

    refused(&store, after(&mend, &sort), &["in a circle", "Mend (0043) → Try (0042) → Sort (0042) → Mend (0043)"]);
    refused(&store, after(&mend, &mend), &["in a circle", "Mend (0043) → Mend (0043)"]);
    refused(&store, WorkAfter { part: card.id, ..after(&sort, &mend) }, &["on another part"]);
    assert_same(&store.logbook(), &logged);

    let material = Material { name: "Solder".to_owned(), unit: "g".to_owned(), stock: 10.0, ..records::material("") };
    put(&store, "Solder", material.clone()).unwrap();
    let used = |amount: f64| MaterialUse { id: id(), part: card.id, work: mend.id, material: material.id, amount };
    refused(&store, used(0.0), &["material use", "amount", "above 0"]);
    refused(&store, Material { stock: -1.0, ..material.clone() }, &["Solder", "stock", "0 or more"]);
    put(&store, "Used", used(2.5)).unwrap();
    let kept = store.logbook();
    assert_eq!(kept.part(card.id).unwrap().uses[0].amount, 2.5);
    assert_eq!(kept.part(board.id).unwrap().work_after.len(), 2);
}

#[test]
fn a_mark_has_its_points_on_the_picture_and_as_many_as_it_needs() {
    let (_folder, store) = fresh();
    let board = part("0042", Kind::Mainboard);
    let photo = Photo { part: Some(board.id), ..records::photo(&"a5".repeat(32), "jpg") };
    let mut change = Change::new("Log");
    change.put(board).put(photo.clone());
    store.write(change).unwrap();
    let mark = |role, points: &[[f32; 2]]| PhotoMark::new(id(), photo.id, role, points.to_vec());
    let square = [[0.1, 0.1], [0.9, 0.1], [0.9, 0.9], [0.1, 0.9]];
    let crossing = [square[0], square[2], square[1], square[3]];
    let in_line = [[0.0, 0.5], [0.2, 0.5], [0.4, 0.5], [0.9, 0.5]];
    let sized = |mark: PhotoMark, length: f64, breadth: f64| PhotoMark {
        length_mm: Some(length),
        breadth_mm: Some(breadth),
        ..mark
    };
    for role in [MarkUse::Surface, MarkUse::Damage, MarkUse::Sample, MarkUse::Reference, MarkUse::Hidden] {
        refused(&store, mark(role, &square[..2]), &["photo mark of photo", role.label(), "2 points", "3 or more"]);
        put(&store, "Outline", mark(role, &square[..3])).unwrap();
    }
    refused(&store, mark(MarkUse::Length, &square[..1]), &["Length", "1 points", "2 or more"]);
    for points in [&square[..1], &square[..3]] {
        refused(&store, sized(mark(MarkUse::Scale, points), 10.0, 1.0), &["Scale", "needs 2"]);
    }
    refused(&store, sized(mark(MarkUse::Scale, &[square[0]; 2]), 10.0, 1.0), &["points", "apart"]);
    refused(&store, mark(MarkUse::Scale, &square[..2]), &["length_mm", "above 0"]);
    for points in [&crossing, &in_line] {
        refused(&store, sized(mark(MarkUse::Rectangle, points), 30.0, 20.0), &["four corners"]);
    }
    for bad in [0.0, -1.0, f64::NAN] {
        refused(&store, sized(mark(MarkUse::Rectangle, &square), 30.0, bad), &["breadth_mm", "above 0"]);
    }
    put(&store, "Rectangle", sized(mark(MarkUse::Rectangle, &square), 30.0, 20.0)).unwrap();
    for stray in [-0.01, 1.01, f32::NAN] {
        refused(&store, mark(MarkUse::Place, &[[0.5, stray]]), &["points", "0 to 1"]);
    }
    let red = PhotoMark { red: Some(1.2), ..mark(MarkUse::Sample, &square) };
    refused(&store, red.clone(), &["red", "0 to 1"]);
    refused(&store, PhotoMark { red: Some(0.5), ..red }, &["red, green, blue", "all three"]);
    put(&store, "Pin", mark(MarkUse::Place, &square[..1])).unwrap();
}

#[test]
fn dates_lie_between_1900_and_2199() {
    let (_folder, store) = fresh();
    for year in [1899, 2200, 30] {
        let mut fan = part("1", Kind::Fan);
        fan.acquired = When::Year(year);
        refused(&store, fan, &["part 1", "acquired", "1900"]);
    }
    let mut fan = part("1", Kind::Fan);
    fan.acquired = When::Year(2199);
    put(&store, "Log", fan).unwrap();
    let mut reversed = machine("Front desk");
    (reversed.window_from, reversed.window_to) = (reversed.window_to, "1990".parse().unwrap());
    assert!(matches!(refusal(put(&store, "Machine", reversed)), Refusal::WindowReversed { .. }));
}

#[test]
fn text_that_no_file_could_carry_is_refused() {
    let (_folder, store) = fresh();
    let mut fan = part("1", Kind::Fan);
    fan.note = "broken\0off".into();
    refused(&store, fan, &["part 1", "note"]);
}

#[test]
fn a_reference_to_nothing_is_named() {
    let (_folder, store) = fresh();
    let mut fan = part("0042", Kind::Fan);
    fan.place = Some(id());
    refused(&store, fan, &["part 0042", "“place”", "not in the logbook"]);
    let board = part("0043", Kind::Mainboard);
    refused(&store, capacitor(board.id), &["“part”"]);
    // The order of steps within one change is free.
    let mut change = Change::new("Child first");
    change.put(capacitor(board.id)).put(board);
    store.write(change).unwrap();
}

#[test]
fn what_is_still_referred_to_cannot_be_removed() {
    let (_folder, store) = fresh();
    let shelf = place("Shelf 2", None);
    let mut fan = part("0042", Kind::Fan);
    fan.place = Some(shelf.id);
    let mut change = Change::new("Log");
    change.put(shelf.clone()).put(fan.clone());
    store.write(change).unwrap();
    let mut change = Change::new("Remove");
    change.remove(shelf.id);
    let text = refusal(store.write(change).map(drop)).to_string();
    assert!(text.contains("part 0042"), "{text}");
    assert_eq!(store.logbook().places.len(), 1);
    let mut change = Change::new("Remove both");
    change.remove(shelf.id).remove(fan.id);
    assert!(store.write(change).unwrap().places.is_empty());
}

#[test]
fn nothing_stands_inside_itself() {
    let (_folder, store) = fresh();
    let (mut room, mut shelf) = (place("Room", None), place("Shelf", None));
    let box_four = place("Box 4", Some(shelf.id));
    shelf.within = Some(room.id);
    let mut change = Change::new("Places");
    change.put(room.clone()).put(shelf).put(box_four.clone());
    store.write(change).unwrap();
    room.within = Some(box_four.id);
    assert_eq!(refusal(put(&store, "Bite", room.clone())), Refusal::InsideItself { at: "place Room".into() });
    let mut case = part("1", Kind::Case);
    case.inside = Some(case.id);
    assert!(matches!(refusal(put(&store, "Bite", case)), Refusal::InsideItself { .. }));
}

#[test]
fn a_part_is_fitted_in_one_machine_at_a_time() {
    let (_folder, store) = fresh();
    let (desk, lab) = (machine("Front desk"), machine("Laboratory"));
    let fan = part("0042", Kind::Fan);
    let first = fitting(desk.id, fan.id);
    let mut change = Change::new("Fit");
    change.put(desk.clone()).put(lab.clone()).put(fan.clone()).put(first.clone());
    store.write(change).unwrap();
    refused(&store, fitting(lab.id, fan.id), &["part 0042", "Front desk"]);
    let mut out = first.clone();
    out.removed = Some(moment("2024-04"));
    assert!(matches!(refusal(put(&store, "Remove", out.clone())), Refusal::RemovedBeforeFitted { .. }));
    out.removed = Some(moment("2024-06"));
    // Out of one and into the other in one go, in either order of steps.
    let mut change = Change::new("Move");
    change.put(fitting(lab.id, fan.id)).put(out);
    let logbook = store.write(change).unwrap();
    assert_eq!(logbook.fitted_in(fan.id).unwrap().0.machine.name, "Laboratory");
}

#[test]
fn a_role_is_filled_in_its_own_machine() {
    let (_folder, store) = fresh();
    let (desk, lab) = (machine("Front desk"), machine("Laboratory"));
    let fan = part("0042", Kind::Fan);
    let role = records::role(desk.id, Kind::Fan);
    let mut wrong = fitting(lab.id, fan.id);
    wrong.role = Some(role.id);
    let mut change = Change::new("Roles");
    change.put(desk).put(lab).put(fan).put(role);
    store.write(change).unwrap();
    assert!(matches!(refusal(put(&store, "Fit", wrong)), Refusal::RoleOfAnother { .. }));
}

#[test]
fn there_is_one_title_page() {
    let (_folder, store) = fresh();
    assert_eq!(refusal(put(&store, "Second", crate::support::workshop())), Refusal::OneWorkshop);
    let mut change = Change::new("Remove");
    change.remove(store.logbook().workshop.id);
    assert_eq!(refusal(store.write(change).map(drop)), Refusal::OneWorkshop);
}
