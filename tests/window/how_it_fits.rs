//! How a machine's parts fit, on its sheet: blocks, lines, open ends, reasons, a missing figure entered, rails and clocks.

use benchwright::record::{Change, Design, Figure, Kind, Part, PartId, Side, Word};
use benchwright::store::Store;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::records::{self, connector, moment};

const WIDE: [f32; 2] = [1280.0, 2400.0];

/// Connectors, each so many times.
pub type Ports<'p> = &'p [(Side, &'p str, u32)];

/// Tag, kind, model, connectors and figures.
type Row<'p> = (&'p str, Kind, &'p str, Ports<'p>, &'p [(Figure, f64)]);

/// A part of a design of its own: connectors with their sides and counts, and figures.
pub fn designed(change: &mut Change, part: Part, model: &str, ports: Ports, figures: &[(Figure, f64)]) -> Design {
    let design = records::design(part.kind, "Veltrane", model);
    change.put(design.clone());
    for (side, name, count) in ports {
        change.put(connector(design.id, *side, name, *count));
    }
    for (figure, value) in figures {
        change.put(benchwright::record::DesignFigure {
            id: Store::new_id(),
            design: design.id,
            figure: figure.name().to_owned(),
            value: *value,
            source: String::new(),
            at_bus_mhz: None,
        });
    }
    change.put(Part { design: Some(design.id), ..part });
    design
}

/// A machine with a board, a processor whose core voltage nobody has told, an 8-bit card, a card without a slot, and a
/// supply.
fn machine() -> (Change, Page) {
    machine_set(&[])
}

/// The same, with notes of how the board is set.
fn machine_set(notes: &[(&str, &str)]) -> (Change, Page) {
    use Side::{Needs, Offers};
    let mut change = Change::new("Start a machine");
    let machine = records::machine("The reading room");
    change.put(machine.clone());
    let rows: [Row<'_>; 5] = [
        (
            "0001",
            Kind::Mainboard,
            "B5",
            &[(Offers, "socket-7", 1), (Offers, "isa-16", 2), (Needs, "at-p8p9", 1)],
            &[
                (Figure::BusClockMhz, 66.0),
                (Figure::Multiplier, 2.0),
                (Figure::Multiplier, 2.5),
                (Figure::CoreVoltageV, 3.3),
                (Figure::Current5vA, 4.0),
            ],
        ),
        (
            "0002",
            Kind::Processor,
            "P133",
            &[(Needs, "socket-7", 1)],
            &[(Figure::BusClockMhz, 66.0), (Figure::CoreClockMhz, 133.0), (Figure::Current5vA, 3.5)],
        ),
        ("0003", Kind::SoundCard, "S8", &[(Needs, "isa-8", 1)], &[(Figure::Current5vA, 0.5)]),
        ("0004", Kind::VideoCard, "V1", &[(Needs, "agp-3.3v", 1)], &[(Figure::Current5vA, 1.0)]),
        (
            "0005",
            Kind::PowerSupply,
            "G200",
            &[(Offers, "at-p8p9", 1)],
            &[(Figure::Rating5vA, 20.0), (Figure::Least5vA, 2.0)],
        ),
    ];
    for (tag, kind, model, ports, figures) in rows {
        let of = part(tag, kind, "");
        let id: PartId = of.id;
        designed(&mut change, of, model, ports, figures);
        for (name, value) in notes.iter().filter(|_| kind == Kind::Mainboard) {
            change.put(benchwright::record::Setting {
                id: Store::new_id(),
                part: id,
                found: moment("2026-03-01"),
                name: (*name).to_owned(),
                value: (*value).to_owned(),
                source: String::new(),
            });
        }
        let role = records::role(machine.id, kind);
        change.put(role.clone()).put(records::fitting(machine.id, Some(role.id), id, moment("2026-03-01")));
    }
    (change, Page::Machine(machine.id))
}

fn hand(size: [f32; 2]) -> Hand {
    let (change, page) = machine();
    let mut hand = Hand::on(change, size);
    hand.give(Command::Go(page));
    hand
}

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn buttons(hand: &Hand) -> Vec<String> {
    let buttons = hand.window.query_all_by_role(Role::Button);
    buttons.filter_map(|button| button.accesskit_node().label()).collect()
}

#[test]
fn parts_are_blocks_connectors_are_lines_and_what_is_free_is_told() {
    let hand = hand(WIDE);
    let buttons = buttons(&hand);
    let has = |name: &str| assert!(buttons.iter().any(|button| button == name), "no “{name}” in {buttons:#?}");
    has("0001 Veltrane B5: Fits");
    has("0002 Veltrane P133: Not known");
    has("0004 Veltrane V1: Does not fit");
    has("0002 Veltrane P133 in 0001 Veltrane B5: Socket 7");
    // PC Guide, ISA bus: an 8-bit card works in a 16-bit slot.
    has("0003 Veltrane S8 in 0001 Veltrane B5: ISA, 16-bit");
    assert!(says(&hand, "Free on 0001 Veltrane B5: ISA, 16-bit"), "one of two slots is taken");
    assert!(says(&hand, "0004 Veltrane V1 needs AGP"), "{buttons:#?}");
    // The machine as a whole is as bad as its worst part.
    assert!(says(&hand, "Fit: Does not fit"));
}

#[test]
fn a_narrow_window_lists_the_same_parts_and_lines() {
    let wide = buttons(&hand(WIDE));
    let narrow = buttons(&hand([760.0, 2400.0]));
    let drawn = wide.iter().filter(|name| name.contains(" in 0001 Veltrane B5: ") || name.contains(": Fits"));
    for name in drawn {
        assert!(narrow.contains(name), "“{name}” is not in the list: {narrow:#?}");
    }
    let block = |size| hand(size).window.get_by_role_and_label(Role::Button, "0001 Veltrane B5: Fits").rect();
    assert!(block(WIDE).height() > 2.0 * block([760.0, 2400.0]).height(), "a block is drawn, a line is listed");
}

#[test]
fn a_line_shows_what_it_rests_on_and_a_block_opens_its_part() {
    let mut hand = hand(WIDE);
    let sentence = "0003 (Veltrane S8) needs ISA, 8-bit, and 0001 (Veltrane B5) offers ISA, 16-bit.";
    assert!(hand.window.query_all_by_label(sentence).next().is_none());
    let line = "0003 Veltrane S8 in 0001 Veltrane B5: ISA, 16-bit";
    hand.window.get_by_role_and_label(Role::Button, line).focus();
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    assert!(hand.window.query_all_by_label(sentence).next().is_some(), "Enter on a line tells of it");
    hand.press("0003 Veltrane S8: Fits");
    let Page::Part(part) = hand.window.state().page() else { panic!("no part on show") };
    assert_eq!(hand.window.state().session().unwrap().logbook.part(part).unwrap().part.tag, "0003");
}

#[test]
fn a_figure_that_is_missing_is_entered_from_its_reason_and_the_verdict_follows() {
    let mut hand = hand(WIDE);
    let page = hand.window.state().page();
    let reason = "Not told of 0002 (Veltrane P133): core voltage.";
    hand.press(&format!("Enter it: {reason}"));
    hand.window.run();
    let field = hand.window.get_by_role_and_label(Role::TextInput, "Core voltage");
    assert!(field.is_focused(), "the figure is ready to be typed");
    field.type_text("2.2");
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    hand.settle();
    hand.give(Command::Go(page));
    assert!(!says(&hand, reason));
    assert!(
        says(&hand, "0002 (Veltrane P133) asks 2.2 V, and 0001 (Veltrane B5) gives no less than 3.3 V"),
        "3.3 V at a core of 2.2 V destroys it"
    );
    assert!(says(&hand, "0002 Veltrane P133: Does not fit"));
}

#[test]
fn rails_stand_against_the_label_and_clocks_against_other_settings() {
    let hand = hand(WIDE);
    // 4.0 + 3.5 + 0.5 + 1.0 A.
    assert!(says(&hand, "+5 V: 9 of 20 A, carried"));
    // 66⅔ MHz × 2 is the 133 MHz of the print; × 2.5 is 166⅔ MHz, a quarter more.
    assert!(says(&hand, "2 × 66.7 MHz = 133.3 MHz"));
    assert!(says(&hand, "2.5 × 66.7 MHz"));
    assert!(says(&hand, "core far beyond (25 % over)"));
}

#[test]
fn a_board_as_it_is_set_stands_beside_what_would_be_best() {
    assert!(!says(&hand(WIDE), "As set: "), "nothing is noted");
    let (change, page) = machine_set(&[("Bus clock", "66 MHz"), ("Multiplier", "2.5")]);
    let mut hand = Hand::on(change, WIDE);
    hand.give(Command::Go(page));
    // 66⅔ MHz × 2.5 is 166⅔ MHz; the print of 133 MHz asks for × 2.
    assert!(says(&hand, "As set: 2.5 × 66.7 MHz = 166.7 MHz"));
    assert!(says(&hand, "Best: 2 × 66.7 MHz = 133.3 MHz"));
}

/// The same machine, with two more boards on the shelf: one with the processor's socket, one without.
fn with_boards() -> Hand {
    use Side::{Needs, Offers};
    let (mut change, page) = machine();
    let figures = [
        (Figure::BusClockMhz, 66.0),
        (Figure::Multiplier, 2.0),
        (Figure::CoreVoltageV, 3.3),
        (Figure::Current5vA, 4.0),
    ];
    let rows: [Row<'_>; 2] = [
        (
            "0011",
            Kind::Mainboard,
            "B3",
            &[(Offers, "socket-3", 1), (Offers, "isa-16", 2), (Needs, "at-p8p9", 1)],
            &figures,
        ),
        (
            "0012",
            Kind::Mainboard,
            "B7",
            &[(Offers, "socket-7", 1), (Offers, "isa-16", 2), (Needs, "at-p8p9", 1)],
            &figures,
        ),
    ];
    for (tag, kind, model, ports, figures) in rows {
        designed(&mut change, part(tag, kind, ""), model, ports, figures);
    }
    let mut hand = Hand::on(change, WIDE);
    hand.give(Command::Go(page));
    hand
}

fn planned(hand: &Hand) -> Vec<String> {
    let logbook = &hand.window.state().session().unwrap().logbook;
    let machine = logbook.machine_named("The reading room").unwrap();
    machine.placements.iter().map(|plan| logbook.part(plan.part).unwrap().part.tag.clone()).collect()
}

#[test]
fn candidates_are_ranked_compared_planned_and_taken_back_by_one_undo() {
    let mut hand = with_boards();
    hand.press("Candidates for Mainboard…");
    let top = |hand: &Hand, name: &str| hand.window.get_by_role_and_label(Role::CheckBox, name).rect().top();
    let (fits, not) = (top(&hand, "Compare 0012 Veltrane B7"), top(&hand, "Compare 0011 Veltrane B3"));
    assert!(fits < not, "a board without the processor's socket comes last");
    // One alone is not compared.
    hand.window.get_by_role_and_label(Role::CheckBox, "Compare 0012 Veltrane B7").click();
    hand.window.run();
    assert!(!says(&hand, "Plan 0012 Veltrane B7 here"));
    hand.window.get_by_role_and_label(Role::CheckBox, "Compare 0011 Veltrane B3").click();
    hand.window.run();
    let beside = |hand: &Hand, name: &str| hand.window.get_by_role_and_label(Role::Button, name).rect().left();
    assert!(beside(&hand, "Plan 0012 Veltrane B7 here") < beside(&hand, "Plan 0011 Veltrane B3 here"));
    assert!(says(&hand, "0002 (Veltrane P133) needs 1 × Socket 7"), "why the other does not fit");
    hand.press("Plan 0012 Veltrane B7 here");
    // The role is filled: what is to make room is asked.
    hand.press("Plan 0012 for when 0001 comes out");
    hand.settle();
    assert_eq!(planned(&hand), ["0012"]);
    hand.give(Command::Undo);
    hand.settle();
    assert!(planned(&hand).is_empty());
}

#[test]
fn an_offered_part_is_answered_as_it_is_told() {
    let mut hand = hand(WIDE);
    hand.keys(&Command::Go(Page::Offer));
    assert!(says(&hand, "You have 1 (0 free)"), "a sound card, in the machine");
    hand.fill("A connector that it has", "VL-B");
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    assert!(says(&hand, "You have none; no machine lacks one"), "none for this bus");
    hand.press("It offers VL-Bus, and needs none");
    hand.press("It needs VL-Bus, and offers none");
    hand.press("One VL-Bus more");
    assert!(says(&hand, "You have none; no machine lacks one"), "none that takes two");
    hand.press("Take VL-Bus out");
    assert!(says(&hand, "You have 1 (0 free)"));
    hand.fill("Figures, with semicolons between", "volume=11");
    assert!(says(&hand, "“volume” is no figure"));
}
