//! Groups of capacitor positions told in plain words. The lines are invented; what each must mean is read off it by
//! a person, the units by their definitions (1 µF = 1000 nF = 1,000,000 pF).

use benchwright::record::{
    BadPhrase, CapacitorGroup, CapacitorState, Dielectric, Id, MOST_POSITIONS, Moment, Mounting, read_phrase,
};
use uuid::Uuid;

fn read(line: &str) -> CapacitorGroup {
    read_phrase(line).unwrap_or_else(|error| panic!("{line}: {error}"))
}

#[test]
fn the_line_of_the_trade_is_read_whole() {
    let group = read("six of 1000 µF 6.3 V 8 mm near the processor, sound");
    assert_eq!(
        group,
        CapacitorGroup {
            count: 6,
            capacitance_uf: Some(1000.0),
            voltage_v: Some(6.3),
            diameter_mm: Some(8.0),
            place_on_part: "near the processor".to_owned(),
            state: CapacitorState::Sound,
            ..CapacitorGroup::new()
        }
    );
    assert_eq!(group.said(), "6 positions, 1000 µF, 6.3 V, Ø 8 mm, near the processor: sound");
}

#[test]
fn the_order_and_the_writing_are_free() {
    let figures = |line: &str| {
        let group = read(line);
        (group.count, group.capacitance_uf, group.voltage_v, group.diameter_mm, group.height_mm)
    };
    let meant = (4, Some(2200.0), Some(10.0), Some(10.0), Some(20.0));
    for line in [
        "4x 2200uF 10V 10x20mm",
        "10 V, 2200 µF, 10 × 20 mm, four of them",
        "four 2200 mfd 10 volts 10 mm wide 20 mm high",
        "4 pieces 2200µF/10V, 20 mm tall, 10 mm across",
        "4 of 2200/10 10 by 20 mm",
        "bulged, 4 × 2200 microfarads 10 VDC 10 mm 20 mm",
    ] {
        assert_eq!(figures(line), meant, "{line}");
    }
    // µ has two characters that look alike, and a comma can be the point.
    assert_eq!(read("4,7 μF").capacitance_uf, Some(4.7));
    for (line, uf) in [("100 nF", 0.1), ("4n7", 0.0047), ("22 pF", 0.000_022), ("a 470 nF film", 0.47)] {
        assert_eq!(read(line).capacitance_uf, Some(uf), "{line}");
    }
}

#[test]
fn words_tell_state_make_and_place() {
    let state = |line: &str| read(line).state;
    for (line, meant) in [
        ("2 of 10 µF", CapacitorState::NotLooked),
        ("2 of 10 µF not looked at", CapacitorState::NotLooked),
        ("2 of 10 µF domed", CapacitorState::Bulged),
        ("10 µF leaking", CapacitorState::Leaking),
        ("10 µF knocked off", CapacitorState::Missing),
        ("10 µF wrong way round", CapacitorState::Reversed),
        ("10 µF out of limits", CapacitorState::OutOfLimits),
        ("10 µF behind the slots burst", CapacitorState::Burst),
        ("one 100 nF suppression, cracked", CapacitorState::Cracked),
    ] {
        assert_eq!(state(line), meant, "{line}");
    }
    let group = read("three tantalum surface mount 10 µF 16 V series QZ 105 °C near the sound chip, good");
    assert_eq!((group.dielectric, group.mounting), (Dielectric::Tantalum, Mounting::Surface));
    assert_eq!((group.series.as_str(), group.temperature_c), ("QZ", Some(105.0)));
    assert_eq!((group.place_on_part.as_str(), group.state), ("near the sound chip", CapacitorState::Sound));
    let group = read("left of slot 3 1500 µF 5 mm pitch, snap-in");
    assert_eq!((group.place_on_part.as_str(), group.pitch_mm), ("left of slot 3", Some(5.0)));
    assert_eq!((group.capacitance_uf, group.mounting), (Some(1500.0), Mounting::SnapIn));
}

#[test]
fn designators_count_and_name_the_positions() {
    for line in
        ["C1–C4 1000 µF", "C1-C4, 1000 µF", "C1 to C4 1000 µF", "C1-4 1000 µF", "four 1000 µF C1, C2, C3 and C4"]
    {
        let group = read(line);
        assert_eq!((group.count, group.designators.join(" ").as_str()), (4, "C1 C2 C3 C4"), "{line}");
    }
    let mut number = 0;
    let mut ids = || {
        number += 1;
        Uuid::from_u128(number)
    };
    let part = Id::from_uuid(Uuid::from_u128(99));
    let positions = read("EC7-EC9 1000 µF 6.3 V bulged").positions(part, Moment::default(), &mut ids);
    let names: Vec<&str> = positions.iter().map(|position| position.designator.as_str()).collect();
    assert_eq!(names, ["EC7", "EC8", "EC9"]);
    assert!(positions.iter().all(|p| p.part == part && p.voltage_v == Some(6.3) && p.state == CapacitorState::Bulged));
    assert_eq!(positions.iter().map(|p| p.id.uuid().as_u128()).collect::<Vec<_>>(), [1, 2, 3]);
    let counted = read("6 of 10 µF").positions(part, Moment::default(), &mut ids);
    assert_eq!((counted.len(), counted[5].designator.as_str()), (6, ""));
}

#[test]
fn what_cannot_be_is_refused_by_name() {
    let refused = |line: &str| read_phrase(line).expect_err(line);
    for line in ["", "  ", ",;", "the capacitors"] {
        assert_eq!(refused(line), BadPhrase::Empty, "{line:?}");
    }
    assert_eq!(refused("six of 1000 µF wobbly"), BadPhrase::Word("wobbly".to_owned()));
    assert_eq!(refused("six of 1000 µF near"), BadPhrase::Word("near".to_owned()));
    assert_eq!(refused("six of 1000"), BadPhrase::NoUnit("1000".to_owned()));
    assert_eq!(refused("2.5 of 1000 µF"), BadPhrase::NoUnit("2.5".to_owned()));
    assert_eq!(refused("1000 mF"), BadPhrase::Milli);
    assert_eq!(refused("C1–C6 four of 10 µF"), BadPhrase::Counts { count: 4, named: 6 });
    for line in ["C6–C1 10 µF", "C1–D6 10 µF", "C1, C1 10 µF"] {
        assert!(matches!(refused(line), BadPhrase::Run(_)), "{line}");
    }
    for line in ["10 µF 22 µF", "10 V 16 V", "six of four 10 µF", "10 µF sound bulged", "8 mm 9 mm 10 mm"] {
        assert!(matches!(refused(line), BadPhrase::Twice(_)), "{line}");
    }
    for line in
        ["0 µF", "zero of 10 µF", "900 of 10 µF", "C1–C999 10 µF", "99999999999999 µF", "0.2 V", "5000 mm", "5 °C"]
    {
        let error = refused(line);
        assert!(matches!(error, BadPhrase::Beyond { .. } | BadPhrase::Run(_)), "{line}: {error:?}");
    }
    let said = refused("10 µF 90000 V").to_string();
    assert!(said.contains("90000 V") && said.contains("10000 V"), "{said}");
}

proptest::proptest! {
    #[test]
    fn whatever_is_typed_stays_within_bounds(line in "([0-9]{1,5}|[a-zC°µ×/.,-]{1,3}|six|of|µF|mm|near|C1-C9| ){0,12}") {
        if let Ok(group) = read_phrase(&line) {
            assert!((1..=MOST_POSITIONS).contains(&group.count), "{line}");
            assert!(group.designators.is_empty() || group.designators.len() == group.count, "{line}");
            assert!(group.capacitance_uf.is_none_or(|uf| (1e-6..=1e7).contains(&uf)), "{line}");
            let lengths = [group.diameter_mm, group.height_mm, group.pitch_mm];
            assert!(lengths.into_iter().flatten().all(|mm| (1.0..=200.0).contains(&mm)), "{line}");
        }
    }
}

#[test]
fn a_line_without_end_is_refused() {
    assert!(read_phrase(&"9".repeat(5000)).is_err());
    let many: Vec<String> = (1..5000).map(|number| format!("C{number}")).collect();
    assert!(matches!(read_phrase(&many.join(" ")), Err(BadPhrase::Beyond { .. })));
}
