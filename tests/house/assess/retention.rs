//! Which mechanism on the shelf suits which board's posts, by the shipped tables.
//!
//! Posts of one slot hold no cartridge of the other, and a heavy cooler wants its second supports beside them
//! (archive.shuttle.eu 2004, retention FAQ; listserv.icors.org PCBUILD June 2001).

use benchwright::assess::retention::{boards_of, missing, of_board};
use benchwright::assess::supplies::to_buy;
use benchwright::assess::{Answers, retention};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::*;
use crate::records;

const SLOT_1: u128 = 10;
const SLOT_A: u128 = 11;
const POSTS_1: u128 = 12;
const POSTS_A: u128 = 13;

fn designs() -> Vec<DesignFile> {
    let years = ("1997", "1999");
    vec![
        design(SLOT_1, Kind::Mainboard, years, &[(Side::Offers, "slot-1", 1)]),
        design(SLOT_A, Kind::Mainboard, years, &[(Side::Offers, "slot-a", 1)]),
        design(POSTS_1, Kind::Retention, years, &[(Side::Offers, "retention-slot-1", 1)]),
        design(POSTS_A, Kind::Retention, years, &[(Side::Offers, "retention-slot-a", 1)]),
    ]
}

fn of(number: u128, tag: &str, kind: Kind, design: u128) -> PartFile {
    let mut file = part(number, tag, kind);
    file.part.design = Some(id(design));
    file
}

/// A Slot 1 board whose posts are missing.
fn bare(number: u128, tag: &str) -> PartFile {
    let mut board = of(number, tag, Kind::Mainboard, SLOT_1);
    board.findings.push(finding(
        number + 500,
        &board,
        "retention-missing",
        at("2026-01-05", number as u32),
        Severity::Plain,
    ));
    board
}

fn answers(logbook: &Logbook, rules: &Rules) -> Answers {
    Answers::of(logbook, rules, day("2026-06-01"))
}

/// Of a board, each mechanism with whether it is wanted and the tags of what suits.
fn told(logbook: &Logbook, tag: &str) -> Vec<(String, bool, Vec<String>)> {
    let rules = Rules::shipped();
    let answers = answers(logbook, &rules);
    let board = answers.part(logbook.part_tagged(tag).unwrap().part.id).unwrap();
    let tags = |posts: &retention::Posts| {
        posts.suiting.iter().map(|one| logbook.part(one.part).unwrap().part.tag.clone()).collect()
    };
    let posts = of_board(board, &answers, logbook, &rules);
    posts.iter().map(|posts| (posts.rule.mechanism.clone(), posts.is_wanted, tags(posts))).collect()
}

#[test]
fn posts_suit_the_boards_of_their_own_slot_alone() {
    let parts = vec![
        bare(1, "0001"),
        of(2, "0002", Kind::Mainboard, SLOT_A),
        of(3, "0003", Kind::Retention, POSTS_1),
        of(4, "0004", Kind::Retention, POSTS_A),
    ];
    let logbook = logbook(parts, designs(), vec![]);
    let posts = ("retention-slot-1".to_owned(), true, vec!["0003".to_owned()]);
    let support = ("retention-slot-1-support".to_owned(), false, vec![]);
    assert_eq!(told(&logbook, "0001"), [posts, support]);
    assert_eq!(told(&logbook, "0002"), [("retention-slot-a".to_owned(), false, vec!["0004".to_owned()])]);
    assert!(told(&logbook, "0003").is_empty(), "hardware takes no hardware");
    let rules = Rules::shipped();
    let answers = answers(&logbook, &rules);
    let hardware = answers.part(id(4)).unwrap();
    assert_eq!(boards_of(hardware, &answers, &rules), [id(2)]);
}

#[test]
fn hardware_of_no_known_design_is_what_its_last_survey_says() {
    let mut found = part(5, "0005", Kind::Retention);
    let first = survey(60, &found, at("2026-01-05", 1), &[("retention-mechanism", "unknown")]);
    let then = survey(61, &found, at("2026-02-05", 2), &[("retention-mechanism", "slot-1")]);
    found.surveys.extend([first, then]);
    let logbook = logbook(vec![bare(1, "0001"), found], designs(), vec![]);
    assert_eq!(told(&logbook, "0001")[0].2, ["0005"]);
}

#[test]
fn what_is_elsewhere_or_not_here_does_not_suit() {
    let mut lent = of(6, "0006", Kind::Retention, POSTS_1);
    lent.custody.push(records::custody(id(6), at("2026-02-01", 3), CustodyAct::Lent));
    let mut apart = of(7, "0007", Kind::Retention, POSTS_1);
    apart.part.quarantine = "Smells".to_owned();
    let mut other = machine(30, "The other", ("", ""), &[(31, Kind::Retention)]);
    fit(&mut other, 32, 31, 3, at("2026-02-01", 4));
    let parts = vec![bare(1, "0001"), of(3, "0003", Kind::Retention, POSTS_1), lent, apart];
    let logbook = logbook(parts, designs(), vec![other]);
    assert_eq!(told(&logbook, "0001")[0].2, Vec::<String>::new());
}

#[test]
fn what_boards_want_and_the_shelf_lacks_is_bought_by_its_name() {
    let rules = Rules::shipped();
    let parts = vec![bare(1, "0001"), bare(2, "0002"), of(3, "0003", Kind::Retention, POSTS_1)];
    let logbook = logbook(parts, designs(), vec![]);
    let answers = answers(&logbook, &rules);
    let short = missing(&answers, &logbook, &rules);
    assert_eq!((short.len(), short[0].count), (1, 1), "two boards want posts, one pair lies here");
    assert_eq!(short[0].boards, [id(1), id(2)]);
    let list = to_buy(&logbook, &answers, &rules);
    let line = list.iter().find(|one| one.name == "Slot 1 retention posts").unwrap();
    assert_eq!(line.amount, Some(1.0));
    let reasons: Vec<String> = line.reasons.iter().map(|reason| reason.sentence(&logbook)).collect();
    assert_eq!(reasons, ["0001 wants it", "0002 wants it"]);
    assert!(list.iter().all(|one| one.name != "Retention kit for this shape"), "not a second time in vaguer words");
}

#[test]
fn every_material_that_a_mechanism_is_called_by_is_asked_for_by_some_work() {
    let rules = Rules::shipped();
    let asked: Vec<&String> = rules.work.iter().flat_map(|work| &work.materials).collect();
    for rule in &rules.retention {
        assert!(!rule.called.is_empty() && rule.called.iter().all(|name| asked.contains(&name)), "{}", rule.name);
    }
}
