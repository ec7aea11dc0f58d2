//! `kit` and `supplies` about the sample workshop; CSV out and in.

use serde_json::Value;

use crate::sample::closed as sample;
use crate::{benchwright, json, list, reason, text};

#[test]
fn a_kit_names_whom_each_line_serves_and_why() {
    let (_folder, logbook) = sample();
    let answer = json(&["kit", &logbook, "--wet"]);
    assert_eq!(answer["best"], true);
    assert_eq!(answer["least_lines"], list(&answer, "lines").len());
    let mut served = 0;
    for line in list(&answer, "lines") {
        let positions = list(line, "positions").len();
        assert_eq!(line["from_stock"].as_u64().unwrap() + line["to_buy"].as_u64().unwrap(), positions as u64);
        let why: usize = list(line, "why").iter().map(|why| list(why, "positions").len()).sum();
        assert_eq!(why, positions, "each position has its reasons");
        served += positions;
    }
    assert!(served > 0);
    // The kit on order serves three already, and says so.
    let taken: Vec<&str> = list(&answer, "left_out").iter().map(|one| one["designator"].as_str().unwrap()).collect();
    assert_eq!(taken, ["C4", "C5", "C6"]);
    let words = text(&["kit", &logbook, "--part", "0071", "--wet"]);
    assert!(words.contains("the kit “Second half of 0071” serves it already"), "{words}");
    assert!(words.contains("µF as it was"), "{words}");
    assert!(reason(&["kit", &logbook, "--part", "nobody"]).contains("nobody"));
    assert_eq!(benchwright(&["kit", &logbook, "--wet", "--bad-only"]).status.code(), Some(2));
}

#[test]
fn supplies_tell_what_is_reserved_and_what_to_buy_for_what() {
    let (_folder, logbook) = sample();
    let answer = json(&["supplies", &logbook]);
    let held = list(&answer, "stock").iter().find(|one| one["reserved"].as_f64().unwrap() > 0.0).unwrap();
    assert_eq!(held["for"][0]["kit"], "Second half of 0071");
    assert_eq!(list(&answer, "kits")[0]["state"], "ordered");
    let low = list(&answer, "to_buy").iter().find(|one| one["what"] == "Alcohol 90 % or more").unwrap();
    // 150 ml are there and 200 ml on order, 500 ml should be.
    assert_eq!(low["amount"], 150.0);
    assert!(low["for"].as_array().unwrap().contains(&"200 on order".into()), "{low}");
    let lacks =
        list(&answer, "to_buy").iter().any(|one| one["for"][0].as_str().unwrap().contains("The schoolroom, 1991"));
    assert!(lacks, "a role that no part fills is to be bought");
    assert_eq!(list(&answer, "machines").len(), 7);
    let words = text(&["supplies", &logbook]);
    assert!(words.contains("1 reserved for Second half of 0071") && words.contains("To buy:"), "{words}");
}

/// The schoolroom's board wants the AT board plugs, its floppy drive a cable and the small plug (the sample's own
/// designs), and its window is 1990 to 1992.
#[test]
fn a_role_that_no_part_fills_says_exactly_what_would_plug_in() {
    let (_folder, logbook) = sample();
    let answer = json(&["supplies", &logbook]);
    let lacks = |one: &&Value| one["for"][0] == "The schoolroom, 1991 lacks it";
    let lines: Vec<&str> =
        list(&answer, "to_buy").iter().filter(lacks).map(|one| one["what"].as_str().unwrap()).collect();
    let line = |begins: &str| *lines.iter().find(|line| line.starts_with(begins)).unwrap();
    let supply = line("Power supply, ");
    for ground in ["giving AT board plugs P8 and P9", "small 4-pin (3.5-inch floppy)", "made 1990-01 to 1992-12"] {
        assert!(supply.contains(ground), "{supply}");
    }
    assert_eq!(line("Keyboard"), "Keyboard, for Keyboard, AT protocol, 5-pin DIN, made 1990-01 to 1992-12");
    assert!(line("Multi-I/O card").contains("for ISA, 16-bit, giving Floppy, 34-pin"), "{lines:?}");
    let csv = text(&["supplies", &logbook, "--csv", "to-buy"]);
    assert!(csv.contains(supply), "the shop reads the same: {csv}");
}

#[test]
fn the_stock_goes_out_as_csv_and_comes_back_the_same() {
    let (folder, logbook) = sample();
    let before = json(&["supplies", &logbook])["stock"].clone();
    let csv = text(&["supplies", &logbook, "--csv", "stock"]);
    assert!(csv.lines().next().unwrap().starts_with("name,stock,unit,minimum,price"));
    let file = folder.path().join("stock.csv");
    std::fs::write(&file, &csv).unwrap();
    text(&["supplies", &logbook, "--take", file.to_str().unwrap()]);
    assert_eq!(json(&["supplies", &logbook])["stock"], before);
    assert!(text(&["supplies", &logbook, "--csv", "to-buy"]).starts_with("what,amount,unit,price,supplier,for"));
}

#[test]
fn a_table_with_wrong_lines_is_refused_line_by_line_and_nothing_is_taken() {
    let (folder, logbook) = sample();
    let before = json(&["supplies", &logbook])["stock"].clone();
    let file = folder.path().join("wrong.csv");
    let take = ["supplies", &logbook, "--take", file.to_str().unwrap()].map(str::to_owned);
    let take: Vec<&str> = take.iter().map(String::as_str).collect();
    std::fs::write(&file, "name;stock;place\nSolder;300;\nFlux;-1;\nBraid;two;\nWire;1;The moon\n").unwrap();
    let told = reason(&take);
    for line in ["line 3: Stock", "line 4: Stock", "line 5: there is no place “The moon”"] {
        assert!(told.contains(line), "{told}");
    }
    std::fs::write(&file, "material;colour\nSolder;grey\n").unwrap();
    assert!(reason(&take).contains("“colour” is no column"));
    assert_eq!(json(&["supplies", &logbook])["stock"], before);
}

#[test]
fn a_board_names_the_posts_that_suit_it_and_what_nobody_has_is_to_be_bought() {
    let (_folder, logbook) = sample();
    let board = json(&["part", &logbook, "0058"]);
    let posts: Vec<_> = list(&board, "posts").iter().map(|one| (&one["mechanism"], &one["suits"])).collect();
    assert_eq!(*posts[0].0, "Slot 1 retention posts");
    assert_eq!(posts[0].1.as_array().unwrap(), &["0108"]);
    assert_eq!(
        (posts[1].0.as_str().unwrap(), posts[1].1.as_array().unwrap().len()),
        ("Slot 1 heavy cooler support", 0)
    );
    assert!(text(&["part", &logbook, "0108"]).contains("It suits the posts of: 0058"));
    let answer = json(&["supplies", &logbook]);
    let line = list(&answer, "to_buy").iter().find(|one| one["what"] == "Slot 1 heavy cooler support").unwrap();
    assert_eq!((&line["amount"], &line["for"][0]), (&1.0.into(), &"0058 wants it".into()));
    assert!(
        list(&answer, "to_buy").iter().all(|one| one["what"] != "Slot 1 retention posts"),
        "they lie in the drawer"
    );
}
