//! Everything that can be set to work has a name, can be reached by the Tab key, and is in sight once it is.

use std::collections::{HashMap, HashSet};

use benchwright::record::{Custody, Kind};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::Key;
use egui::accesskit::{Action, NodeId, Role};
use egui_kittest::Node;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::Hand;

pub const SIZE: [f32; 2] = [1280.0, 800.0];

/// More stops than any page has: a walk that is longer never ends.
const MOST_STOPS: usize = 1500;

/// What a hand or a screen reader can set to work, but for what is disabled, and scroll bars: their role says all, and
/// what they lead to is reached by the focus.
fn controls(hand: &Hand) -> impl Iterator<Item = Node<'_>> {
    hand.window.root().children_recursive().filter(|node| {
        let data = node.accesskit_node().data();
        !data.is_disabled()
            && data.role() != Role::ScrollBar
            && (data.supports_action(Action::Focus) || data.supports_action(Action::Click))
    })
}

fn key(node: &Node<'_>) -> NodeId {
    node.accesskit_node().locate().0
}

fn said(node: &Node<'_>) -> String {
    let at = node.rect();
    let node = node.accesskit_node();
    format!("{:?} “{}” {:?} at {at:?}", node.role(), node.label().unwrap_or_default(), node.value())
}

/// Controls of which a screen reader would say nothing but what they are.
fn nameless(hand: &Hand) -> Vec<String> {
    let has_name = |node: &Node<'_>| node.accesskit_node().label().is_some_and(|label| !label.trim().is_empty());
    // A text that can be focused, so that it is read, is its own name.
    let is_text = |node: &Node<'_>| node.accesskit_node().role() == Role::Label && node.accesskit_node().has_value();
    controls(hand).filter(|node| !has_name(node) && !is_text(node)).map(|node| said(&node)).collect()
}

/// Rows are reached by arrows within their table, and lines of a list within its field.
fn has_own_stop(node: &Node<'_>) -> bool {
    !matches!(node.accesskit_node().role(), Role::Row | Role::ListBoxOption | Role::Label)
}

/// Presses Tab until it comes round; the stops, and those of them that were not in sight.
fn walk(hand: &mut Hand) -> (HashSet<NodeId>, Vec<String>) {
    let (mut stops, mut hidden) = (HashSet::new(), Vec::new());
    let mut idle = 0;
    for _ in 0..MOST_STOPS {
        hand.window.key_press(Key::Tab);
        // One frame moves the focus, one brings it into view, one shows it there.
        hand.window.run_steps(3);
        let window = egui::Rect::from_min_size(egui::Pos2::ZERO, SIZE.into());
        let Some(node) = hand.window.root().children_recursive().find(Node::is_focused) else {
            // Between the last stop and the first.
            idle += 1;
            assert!(idle < 5, "Tab leads nowhere");
            continue;
        };
        if !stops.insert(key(&node)) {
            return (stops, hidden);
        }
        if !window.expand(1.0).contains(node.rect().center()) {
            hidden.push(said(&node));
        }
    }
    panic!("Tab does not come round");
}

/// What is wrong with the page on show.
pub fn faults(hand: &mut Hand, page: &str) -> Vec<String> {
    let mut faults: Vec<String> = nameless(hand).iter().map(|what| format!("{page}: no name: {what}")).collect();
    let wanted: HashMap<NodeId, String> =
        controls(hand).filter(has_own_stop).map(|node| (key(&node), said(&node))).collect();
    assert!(wanted.len() > 5, "{page} shows next to nothing");
    let (stops, hidden) = walk(hand);
    faults.extend(
        wanted.iter().filter(|(key, _)| !stops.contains(key)).map(|(_, what)| format!("{page}: no stop: {what}")),
    );
    faults.extend(hidden.iter().map(|what| format!("{page}: out of sight: {what}")));
    faults
}

/// The pages to be walked: each desk, and sheets of parts and machines that differ.
fn pages(hand: &Hand) -> Vec<(String, Page)> {
    let logbook = &hand.window.state().session().unwrap().logbook;
    let of_kind = |kind| logbook.parts.iter().find(move |file| file.part.kind == kind).unwrap();
    let lent = logbook.parts.iter().find(|file| file.custody_now() == Custody::LentOut).unwrap();
    let parts = [of_kind(Kind::Mainboard), of_kind(Kind::PowerSupply), of_kind(Kind::HardDisk), lent];
    let mut pages: Vec<(String, Page)> = Page::DESKS.iter().map(|page| (page.label().to_owned(), *page)).collect();
    pages.extend(parts.map(|file| (format!("{} {}", file.part.tag, file.part.name), Page::Part(file.part.id))));
    pages.extend([Page::Sorting, Page::Offer, Page::Touched].map(|page| (page.label().to_owned(), page)));
    pages.extend(
        logbook.machines.iter().take(2).map(|file| (file.machine.name.clone(), Page::Machine(file.machine.id))),
    );
    pages
}

#[test]
fn every_control_of_every_desk_has_a_name_and_a_stop_in_sight() {
    let mut hand = Hand::on_sample(SIZE);
    let mut found = Vec::new();
    for (name, page) in pages(&hand) {
        hand.give(Command::Go(page));
        assert_eq!(hand.window.state().page(), page);
        found.extend(faults(&mut hand, &name));
    }
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    let photo = logbook.parts.iter().find_map(|file| file.photos.first()).unwrap().photo.id;
    hand.give(Command::LookAt(photo, [photo].into()));
    found.extend(faults(&mut hand, Page::Photograph.label()));
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn every_leaf_of_supplies_and_the_capacitor_desk_have_names_and_stops() {
    let mut hand = Hand::on_sample(SIZE);
    hand.give(Command::Go(Page::Supplies));
    let mut found = Vec::new();
    for leaf in ["In stock", "Kits", "What it cost"] {
        hand.window.get_by_label(leaf).click();
        hand.window.run();
        found.extend(faults(&mut hand, leaf));
        if leaf != "What it cost" {
            // What was chosen stands beside the list.
            hand.window.query_all_by_role(Role::Row).next().unwrap().click();
            hand.window.run();
            found.extend(faults(&mut hand, &format!("{leaf}, one chosen")));
        }
    }
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    let part = logbook.parts.iter().find(|file| file.capacitors.len() > 4).unwrap().part.id;
    hand.give(Command::Go(Page::Capacitors(part)));
    found.extend(faults(&mut hand, "Capacitors"));
    hand.window.query_all_by_role(Role::Row).next().unwrap().click();
    hand.window.run();
    found.extend(faults(&mut hand, "Capacitors, one chosen"));
    for press in ["Paste a table…", "Put the table away", "Log in groups…"] {
        hand.press(press);
        found.extend(faults(&mut hand, &format!("Capacitors, {press}")));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn every_step_of_intake_has_names_and_stops() {
    let mut hand = Hand::on_sample(SIZE);
    hand.give(Command::Go(Page::Intake));
    hand.fill("Kind", "mai");
    hand.window.key_press(Key::Enter);
    hand.window.run();
    let steps: Vec<String> = hand
        .window
        .query_all_by_role(Role::Tab)
        .filter_map(|tab| tab.accesskit_node().label())
        .filter(|label| label.starts_with("Step "))
        .collect();
    assert!(steps.len() >= 5, "{steps:?}");
    let mut found = Vec::new();
    for step in steps {
        let start = step.split(':').next().unwrap().to_owned();
        hand.window.query_all_by_label_contains(&start).next().unwrap().click();
        hand.window.run();
        found.extend(faults(&mut hand, &start));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

/// Whatever unfolds by a press: forms, menus, the finder.
#[test]
fn what_unfolds_has_names_too() {
    let mut hand = Hand::on_sample(SIZE);
    let mut found = Vec::new();
    let mut unfolded = 0;
    for (name, page) in pages(&hand) {
        hand.give(Command::Go(page));
        let mut pressed: HashSet<String> = HashSet::new();
        loop {
            let next = controls(&hand)
                .filter(|node| node.accesskit_node().role() == Role::Button)
                .filter_map(|node| node.accesskit_node().label())
                .find(|label| label.ends_with('…') && !pressed.contains(label));
            let Some(label) = next else { break };
            pressed.insert(label.clone());
            let button = hand.window.query_all_by_role_and_label(Role::Button, &label).next().unwrap();
            button.click_accesskit();
            hand.window.run();
            unfolded += 1;
            found.extend(nameless(&hand).iter().map(|what| format!("{name}, “{label}”: no name: {what}")));
        }
        hand.window.key_press(Key::Escape);
        hand.window.run();
    }
    assert!(unfolded > 40, "only {unfolded} were unfolded");
    hand.keys(&Command::Find);
    found.extend(nameless(&hand).iter().map(|what| format!("Finder: no name: {what}")));
    found.sort();
    found.dedup();
    assert!(found.is_empty(), "{}", found.join("\n"));
}
