//! The part sheet: facts changed where they stand, observations that supersede, work with evidence, changes of hands.

use benchwright::record::{
    CapacitorState, Change, Custody, Design, FindingState, Kind, Part, PartFile, PartId, ProofResult, WorkState,
    Workshop,
};
use benchwright::store::Store;
use benchwright::trade::Span;
use benchwright::window::page::Page;
use chrono::NaiveDate;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, marking, part, place};
use crate::records;

/// High enough for the whole page: a hand presses only what is in sight.
pub const WHOLE: [f32; 2] = [1280.0, 4000.0];

/// A window on the sheet of a part, with whatever else the change holds.
pub fn sheet(part: &Part, change: Change) -> Hand {
    sheet_of(part, change, WHOLE)
}

fn sheet_of(part: &Part, mut change: Change, size: [f32; 2]) -> Hand {
    change.put(part.clone());
    let mut hand = Hand::on(change, size);
    hand.window.get_by_label_contains(&format!("{}, ", part.tag)).click();
    hand.window.run();
    assert_eq!(hand.window.state().page(), Page::Part(part.id));
    hand
}

pub fn file(hand: &Hand, id: PartId) -> PartFile {
    PartFile::clone(hand.window.state().session().unwrap().logbook.part(id).unwrap())
}

/// Presses and waits until what follows is on the disk.
pub fn press(hand: &mut Hand, name: &str) {
    hand.window.get_by_role_and_label(Role::Button, name).click();
    hand.window.step();
    hand.settle();
}

/// Types into a field of several lines.
fn fill_notes(hand: &mut Hand, field: &str, text: &str) {
    hand.window.get_by_role_and_label(Role::MultilineTextInput, field).focus();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::MultilineTextInput, field).type_text(text);
    hand.window.run();
}

/// Types into a field in place of what stands there.
pub fn replace(hand: &mut Hand, field: &str, text: &str) {
    hand.window.get_by_role_and_label(Role::TextInput, field).focus();
    hand.window.run();
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    hand.window.run();
    hand.window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    hand.window.run();
}

pub fn key(hand: &mut Hand, key: Key) {
    hand.window.key_press(key);
    hand.window.step();
    hand.settle();
}

fn choose(hand: &mut Hand, list: &str, choice: &str) {
    hand.window.get_by_role_and_label(Role::ComboBox, list).click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, choice).click();
    hand.window.step();
    hand.settle();
}

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

#[test]
fn a_fact_turns_into_a_field_and_enter_writes_one_change_that_undo_takes_back() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut hand = sheet(&board, Change::new("Log a board"));
    hand.press("Serial number: –");
    hand.window.get_by_role_and_label(Role::TextInput, "Serial number").type_text("VB-7741");
    hand.window.run();
    assert_eq!(file(&hand, board.id).part.serial, "", "nothing is written while it is typed");
    key(&mut hand, Key::Enter);
    assert_eq!(file(&hand, board.id).part.serial, "VB-7741");
    hand.window.get_by_role_and_label(Role::Button, "Serial number: VB-7741");
    press(&mut hand, "Undo: Change “Serial number” of 0042");
    assert_eq!(file(&hand, board.id).part.serial, "");
}

#[test]
fn escape_gives_a_fact_back_and_a_bad_one_is_refused_beside_its_field() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut hand = sheet(&board, Change::new("Log a board"));
    hand.press("In own words: Veltrane board");
    replace(&mut hand, "In own words", "Something else");
    key(&mut hand, Key::Escape);
    assert_eq!(file(&hand, board.id).part.name, "Veltrane board");
    hand.press("Price: –");
    replace(&mut hand, "Price", "twelve");
    key(&mut hand, Key::Enter);
    hand.window.get_by_label("“twelve” is no amount: write 12.50.");
    replace(&mut hand, "Price", "12,50");
    key(&mut hand, Key::Enter);
    assert_eq!(file(&hand, board.id).part.price_cents, Some(1250));
    hand.window.get_by_role_and_label(Role::Button, "Price: 12.50 EUR");
}

#[test]
fn a_tag_that_another_part_carries_is_refused() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log two parts");
    change.put(part("0043", Kind::SoundCard, "Orrin card"));
    let mut hand = sheet(&board, change);
    hand.press("Tag: 0042");
    replace(&mut hand, "Tag", "0043");
    key(&mut hand, Key::Enter);
    hand.window.get_by_label("Tag 0043 is taken; choose another.");
    assert_eq!(file(&hand, board.id).part.tag, "0042");
}

#[test]
fn a_place_is_found_by_a_few_letters() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    let (cellar, attic) = (place("Cellar", None), place("Attic", None));
    change.put(cellar.clone()).put(attic.clone());
    let mut hand = sheet(&board, change);
    hand.press("Kept at: –");
    hand.window.run();
    hand.window.get_by_role_and_label(Role::TextInput, "Place: room, shelf or box").type_text("atti");
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert_eq!(file(&hand, board.id).part.place, Some(attic.id));
}

/// A CRT monitor of 15 to 30 kg is carried by two.
#[test]
fn where_a_monitor_is_moved_to_another_place_the_lift_is_warned_of() {
    for (kind, is_warned) in [(Kind::Monitor, true), (Kind::Mainboard, false)] {
        let mut hand = sheet(&part("0042", kind, "Veltrane"), Change::new("Log it"));
        hand.press("Kept at: –");
        let warning = hand.window.query_by_label_contains("two people, screen towards your body");
        assert_eq!(warning.is_some(), is_warned, "{kind:?}");
    }
}

#[test]
fn an_open_reading_is_settled_by_a_better_one_that_keeps_the_old() {
    // “0203” is week 2 of 2003 or week 3 of 2002, as YYWW and WWYY both occur.
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut change = Change::new("Log a card");
    change.put(marking(card.id, "0203"));
    let mut hand = sheet(&card, change);
    let names: Vec<String> = hand
        .window
        .get_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .filter(|name| name.starts_with("Settle 0203 as "))
        .collect();
    assert!(names.len() >= 2, "both readings are offered: {names:?}");
    let of_2003 = names.iter().find(|name| name.contains("2003")).unwrap_or_else(|| panic!("{names:?}")).clone();
    press(&mut hand, &of_2003);
    let markings = file(&hand, card.id).markings;
    assert_eq!(markings.len(), 2, "the first reading stays");
    assert_eq!(markings[1].supersedes, Some(markings[0].id));
    assert_eq!((markings[0].scheme.as_str(), markings[1].text.as_str()), ("", "0203"));
    assert!(!markings[1].scheme.is_empty());
    let answers = &hand.window.state().session().unwrap().answers;
    let span: Span = answers.part(card.id).unwrap().making.span.unwrap();
    // Week 2 of 2003 by ISO 8601 is 6 to 12 January; week 3 of 2002 is 14 to 20 January.
    assert!(span.last >= day("2003-01-06") && span.first > day("2002-01-20"), "{span:?}");
}

#[test]
fn a_finding_gets_its_work_and_done_with_evidence_cures_it() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet(&card, Change::new("Log a card"));
    hand.press("Note a finding of your own…");
    hand.fill("What is wrong", "Bracket bent");
    press(&mut hand, "Keep the finding");
    hand.press("Finding: Bracket bent, open");
    hand.press("Say what is to be done…");
    hand.fill("What is to be done", "Straighten the bracket");
    press(&mut hand, "Keep: this is to be done");
    hand.window.get_by_role_and_label(Role::Heading, "Next: straighten the bracket");
    hand.press("Done: Straighten the bracket");
    hand.fill("Minutes at it", "ten");
    hand.window.get_by_label_contains("“ten” is no number of minutes");
    replace(&mut hand, "Minutes at it", "10");
    hand.fill("Who", "Mira");
    hand.fill("What was used", "Vice with soft jaws");
    hand.press("Nothing electrical");
    press(&mut hand, "Keep: it is done");
    let file = file(&hand, card.id);
    let work = &file.work[0];
    assert_eq!((work.state, work.minutes, work.who.as_str()), (WorkState::Done, Some(10), "Mira"));
    assert_eq!(work.used, "Vice with soft jaws");
    assert_eq!(file.findings[0].state(), FindingState::Cured);
    hand.window.get_by_label("Nothing is outstanding on this part.");
}

#[test]
fn a_waiver_asks_for_its_reason_and_stays_with_the_part() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet(&card, Change::new("Log a card"));
    hand.press("Add work of your own…");
    hand.fill("What is to be done", "Polish the bracket");
    press(&mut hand, "Add the work");
    hand.press("Waive: Polish the bracket");
    hand.window.get_by_label("Say why it is left: the reason stays with the part.");
    press(&mut hand, "Keep: it is waived");
    assert_eq!(file(&hand, card.id).work[0].state, WorkState::Open, "not without a reason");
    fill_notes(&mut hand, "Why it is left", "Seen by nobody inside the case");
    press(&mut hand, "Keep: it is waived");
    let work = &file(&hand, card.id).work[0];
    assert_eq!((work.state, work.reason.as_str()), (WorkState::Waived, "Seen by nobody inside the case"));
}

#[test]
fn a_part_is_lent_until_a_day_and_comes_back() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet(&card, Change::new("Log a card"));
    hand.press("Lend it…");
    hand.window.get_by_label("Say to or from whom.");
    hand.fill("To whom", "Harbour Street museum");
    hand.fill("Until", "2026-06-30");
    press(&mut hand, "Keep: lent");
    let lent = file(&hand, card.id);
    assert_eq!(lent.custody_now(), Custody::LentOut);
    assert_eq!(
        (lent.custody[0].party.as_str(), lent.custody[0].until.to_string()),
        ("Harbour Street museum", "2026-06-30".to_owned())
    );
    hand.press("It came back…");
    press(&mut hand, "Keep: came back");
    let back = file(&hand, card.id);
    assert_eq!(back.custody_now(), Custody::Mine);
    assert_eq!(back.custody[1].party, "Harbour Street museum", "who had it is known");
}

#[test]
fn a_proof_is_recorded_and_then_holds() {
    let supply = part("0070", Kind::PowerSupply, "Tessek supply");
    let mut hand = sheet(&supply, Change::new("Log a supply"));
    hand.press("Record: Load test of the supply alone…");
    choose(&mut hand, "How it came out", "Passed");
    press(&mut hand, "Keep the proof");
    let proofs = file(&hand, supply.id).proofs;
    assert_eq!((proofs.len(), proofs[0].test.as_str(), proofs[0].result), (1, "load-test", ProofResult::Passed));
    let answers = &hand.window.state().session().unwrap().answers;
    let standing = answers.part(supply.id).unwrap().proofs.iter().find(|proof| proof.rule.name == "load-test").unwrap();
    assert!(standing.standing.is_good());
}

#[test]
fn a_reading_is_judged_as_it_is_typed_and_a_correction_keeps_the_slip() {
    // ATX power supply design guide 0.9: +5 V within 5 %, so 4.75 to 5.25 V. Older supplies are held closer still.
    let supply = part("0070", Kind::PowerSupply, "Tessek supply");
    let mut hand = sheet(&supply, Change::new("Log a supply"));
    hand.press("Add a reading…");
    hand.press("Measured: +5 V");
    hand.fill("Figure", "4.60");
    hand.window.get_by_label_contains("fail:");
    replace(&mut hand, "Figure", "5.02");
    hand.window.get_by_label_contains("pass:");
    press(&mut hand, "Keep the reading");
    hand.press("Correct the reading +5 V…");
    replace(&mut hand, "Figure", "5,20");
    press(&mut hand, "Keep the reading");
    let readings = file(&hand, supply.id).readings;
    assert_eq!(readings.len(), 2);
    assert_eq!((readings[0].value, readings[1].value), (5.02, 5.2));
    assert_eq!(readings[1].supersedes, Some(readings[0].id));
}

#[test]
fn capacitors_are_logged_as_a_group_and_replacing_the_bad_ones_confirms_the_finding() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut hand = sheet(&board, Change::new("Log a board"));
    hand.press("Log capacitors…");
    hand.fill("Capacitors in plain words", "six of 1000 µF 6.3 V 8 mm near the processor, bulged");
    press(&mut hand, "Keep the capacitors");
    let logged = file(&hand, board.id);
    assert_eq!(logged.capacitors.len(), 6);
    assert_eq!(logged.findings.len(), 1);
    assert_eq!(logged.findings[0].finding.what, "capacitors-bulged");
    hand.press("Capacitors: 6 × 1000 µF 6.3 V Ø 8 mm, near the processor: bulged");
    hand.press("Choose all of them");
    hand.press("Replaced…");
    hand.fill("Replaced by", "1500 µF 6.3 V, low series resistance");
    press(&mut hand, "Keep the look");
    let replaced = file(&hand, board.id);
    assert!(replaced.capacitors.iter().all(|position| position.state() == CapacitorState::Sound));
    assert_eq!(replaced.findings[0].state(), FindingState::Confirmed);
}

#[test]
fn a_part_is_planned_for_a_machine_and_fitted_from_its_own_sheet() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let machine = records::machine("Front desk");
    let role = records::role(machine.id, Kind::VideoCard);
    let mut change = Change::new("Log a card and a machine");
    change.put(machine.clone()).put(role.clone());
    let mut hand = sheet(&card, change);
    hand.press("Plan it for a machine…");
    press(&mut hand, "Front desk: Video card (free)");
    let machine_now = |hand: &Hand| hand.window.state().session().unwrap().logbook.machine(machine.id).unwrap().clone();
    assert_eq!(machine_now(&hand).placements[0].role, role.id);
    press(&mut hand, "0050 is fitted now");
    let now = machine_now(&hand);
    assert!(now.placements.is_empty());
    assert_eq!(
        now.fitted().map(|fitting| (fitting.part, fitting.role)).collect::<Vec<_>>(),
        [(card.id, Some(role.id))]
    );
}

#[test]
fn only_a_part_that_nothing_hangs_on_is_struck_out() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut change = Change::new("Log a card");
    change.put(marking(card.id, "9712"));
    let mut hand = sheet(&card, change);
    press(&mut hand, "Strike 0050 from the logbook");
    hand.window.get_by_label_contains("1 marking would be lost");
    assert_eq!(file(&hand, card.id).part.tag, "0050");

    let slip = part("0051", Kind::Other, "Slip");
    let mut hand = sheet(&slip, Change::new("Log a slip"));
    press(&mut hand, "Strike 0051 from the logbook");
    assert!(hand.window.state().session().unwrap().logbook.part(slip.id).is_none());
    assert_eq!(hand.window.state().page(), Page::Shelf);
}

#[test]
fn sections_are_reached_from_the_list_and_by_keys() {
    let supply = part("0070", Kind::PowerSupply, "Tessek supply");
    let size = [1280.0, 800.0];
    let mut hand = sheet_of(&supply, Change::new("Log a supply"), size);
    let top = |hand: &Hand| hand.window.get_by_role_and_label(Role::Heading, "Proofs").rect().top();
    let before = top(&hand);
    hand.press("Go to: Proofs");
    hand.window.run();
    let after = top(&hand);
    assert!(after < before && (0.0..size[1]).contains(&after), "from {before} to {after}");
    hand.window.key_press_modifiers(Modifiers::ALT, Key::Num1);
    hand.window.run();
    let first = hand.window.get_by_role_and_label(Role::Heading, "What it is").rect().top();
    assert!((0.0..size[1]).contains(&first), "{first}");
}

#[test]
fn one_column_becomes_two_where_there_is_room_and_nothing_lies_over_another() {
    let board = part("0042", Kind::Mainboard, "Veltrane board with a name that is rather long");
    for (size, columns) in [([2000.0, 4000.0], 2), ([1280.0, 4000.0], 1), ([640.0, 6000.0], 1)] {
        let mut change = Change::new("Log a board");
        change.put(marking(board.id, "LR8310 9118")).put(marking(board.id, "0203"));
        let hand = sheet_of(&board, change, size);
        let heading = |name| hand.window.get_by_role_and_label(Role::Heading, name).rect();
        let beside = heading("Capacitors").left() > heading("Work").right();
        assert_eq!(beside, columns == 2, "{size:?}");
        let roles = [Role::Button, Role::TextInput, Role::ComboBox, Role::Label, Role::Heading];
        let nodes: Vec<_> = roles.iter().flat_map(|role| hand.window.query_all_by_role(*role)).collect();
        assert!(nodes.len() > 40, "{size:?} shows only {}", nodes.len());
        for (index, node) in nodes.iter().enumerate() {
            for other in &nodes[index + 1..] {
                let shared = node.rect().shrink(1.0).intersect(other.rect().shrink(1.0));
                let name = |node: &egui_kittest::Node<'_>| {
                    node.accesskit_node().label().or(node.accesskit_node().value()).unwrap_or_default()
                };
                assert!(!shared.is_positive(), "{size:?}: “{}” lies over “{}”", name(node), name(other));
            }
            assert!(
                node.rect().right() <= size[0] + 1.0,
                "{size:?}: {:?} leaves the window",
                node.accesskit_node().label()
            );
        }
    }
}

#[test]
fn a_reading_under_a_named_load_is_judged_without_the_remark_on_missing_load() {
    let supply = part("0070", Kind::PowerSupply, "Tessek supply");
    let mut hand = sheet(&supply, Change::new("Log a supply"));
    hand.press("Add a reading…");
    hand.fill("What was measured", "+12 V under load");
    hand.fill("Figure", "11.9");
    hand.window.get_by_label_contains("Load not stated");
    hand.fill("Under what load or condition", "3 A");
    hand.window.get_by_label_contains("pass:");
    assert!(hand.window.query_by_label_contains("Load not stated").is_none());
}

/// A window on the sheet of a part in a workshop that somebody keeps.
fn sheet_of_keeper(part: &Part, mut change: Change) -> Hand {
    let folder = tempfile::tempdir().unwrap();
    let workshop = Workshop { keeper: "Mira".to_owned(), ..records::workshop("Trial workshop") };
    let store = Store::create(&folder.path().join("trial.logbook"), workshop).unwrap();
    change.put(part.clone());
    store.write(change).unwrap();
    drop(store);
    let mut hand = Hand::reopened(folder, WHOLE);
    hand.window.get_by_label_contains(&format!("{}, ", part.tag)).click();
    hand.window.run();
    hand
}

#[test]
fn what_is_accepted_or_watched_says_by_whom_and_since_when() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet_of_keeper(&card, Change::new("Log a card"));
    let today = crate::hand::today();
    for (what, act, keep) in
        [("Bracket bent", "Accept it…", "Keep: it is accepted"), ("Port loose", "Watch it…", "Keep: it is watched")]
    {
        hand.press("Note a finding of your own…");
        hand.fill("What is wrong", what);
        press(&mut hand, "Keep the finding");
        hand.press(&format!("Finding: {what}, open"));
        hand.press(act);
        hand.fill("Reason", "Holds as it is");
        press(&mut hand, keep);
    }
    let looks: Vec<_> = file(&hand, card.id).findings.iter().map(|finding| finding.looks[1].who.clone()).collect();
    assert_eq!(looks, ["Mira", "Mira"]);
    hand.press("Show 1 settled finding");
    let accepted = format!("Finding: Bracket bent, accepted on {today} by Mira: Holds as it is");
    hand.window.get_by_role_and_label(Role::Button, &accepted);
    let watched = format!("Finding: Port loose, watched since {today} by Mira, until ");
    hand.window.get_by_label_contains(&watched);
}

#[test]
fn a_marking_outside_the_designs_years_is_told_on_the_sheet() {
    let years = Design {
        introduced: records::when("1998-09"),
        discontinued: records::when("2000"),
        ..records::design(Kind::HardDisk, "Tessaly", "T9")
    };
    let disk = Part { design: Some(years.id), ..part("0050", Kind::HardDisk, "") };
    let mut change = Change::new("Log a disk");
    // 1992-W14 begins on Monday 30 March; a week is allowed either side.
    change.put(marking(disk.id, "92-14")).put(years);
    let hand = sheet(&disk, change);
    hand.window.get_by_label_contains("Conflict with its design’s years; as the markings say: ");
    hand.window.get_by_label_contains("“92-14” says 1992-03-23 to 1992-04-12: 334 weeks before its design’s years");
}
