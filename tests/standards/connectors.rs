//! The connector table against published tables, and tables that must be refused.

use crate::chance::Chance;
use benchwright::rules::Connectors;
use benchwright::rules::connectors::Family;

fn shipped() -> Connectors {
    Connectors::shipped().unwrap()
}

/// AGP 3.0 interface specification 1.0, table 35 (p. 73): boards down, cards across. Combinations with note 1 or 2
/// there (plugs in, does not function) count as refused.
#[test]
fn agp_boards_take_the_cards_of_the_specification() {
    const CARDS: [&str; 6] =
        ["agp-3.3v", "agp-1.5v", "agp-universal", "agp-3.0-universal-1.5v", "agp-3.0", "agp-3.0-universal"];
    let table = [
        ("agp-3.3v", [true, false, true, false, false, true]),
        ("agp-1.5v", [false, true, true, true, false, true]),
        ("agp-universal", [true, true, true, true, false, true]),
        ("agp-3.0-universal-1.5v", [false, true, true, true, true, true]),
        ("agp-3.0", [false, false, false, true, true, true]),
        ("agp-3.0-universal", [true, true, true, true, true, true]),
    ];
    let connectors = shipped();
    for (board, row) in table {
        for (card, expected) in CARDS.into_iter().zip(row) {
            assert_eq!(connectors.accepts(board, card), expected, "{board} with a card {card}");
        }
    }
}

/// Sockets and slots: table 3.18 of Upgrading and Repairing PCs (online companion); Super 7: Wikipedia (de), Sockel 7;
/// ISA, EISA: pinouts.ru (62 + 36, 62 + 38); MCA: ardent-tool.com (2 × 56, 2 × 91); PCI: pin tables collected by Ralph
/// Valentino (positions 1 to 62 and 63 to 94, less two positions a key); VL-Bus: lecture notes (NIU); memory: Hardware
/// Book, Wikipedia (DIMM), rcramer.com; disks: a disk array's SCSI guide, p. 61.
#[test]
fn contacts_are_those_of_published_tables() {
    let published = [
        ("socket-1", 169),
        ("socket-2", 238),
        ("socket-3", 237),
        ("socket-4", 273),
        ("socket-5", 320),
        ("socket-6", 235),
        ("socket-7", 321),
        ("super-7", 321),
        ("socket-8", 387),
        ("slot-1", 242),
        ("slot-2", 330),
        ("slot-a", 242),
        ("socket-370", 370),
        ("socket-a", 462),
        ("socket-423", 423),
        ("socket-478", 478),
        ("socket-775", 775),
        ("socket-754", 754),
        ("socket-939", 939),
        ("isa-8", 62),
        ("isa-16", 62 + 36),
        ("eisa", 62 + 36 + 62 + 38),
        ("mca-16", 2 * 56),
        ("mca-32", 2 * 91),
        ("pci-5v", 2 * 62 - 4),
        ("pci-universal", 2 * 62 - 8),
        ("pci-5v-64", 2 * 94 - 4),
        ("vlb", 112),
        ("simm-30", 30),
        ("simm-72", 72),
        ("dimm-168-sdram", 168),
        ("dimm-184-ddr", 184),
        ("dimm-240-ddr2", 240),
        ("rimm-184", 184),
        ("sodimm-144", 144),
        ("ide-40", 40),
        ("scsi-50", 50),
        ("scsi-68", 68),
        ("scsi-80", 80),
        ("atx-20", 20),
        ("at-p8p9", 12),
    ];
    let connectors = shipped();
    for (id, contacts) in published {
        assert_eq!(connectors.get(id).unwrap().contacts, Some(contacts), "{id}");
    }
    // A flash card in circulation gives Socket 4 the 237 pins of Socket 3.
    assert_ne!(connectors.get("socket-4").unwrap().contacts, Some(237));
}

/// Width of modules without parity: PC Guide, memory modules. Bus widths: PCI, ISA: PC Guide; SCSI: as above.
#[test]
fn widths_are_those_of_published_tables() {
    let published = [
        ("simm-30", 8),
        ("simm-72", 32),
        ("dimm-168-sdram", 64),
        ("dimm-168-edo", 64),
        ("isa-8", 8),
        ("isa-16", 16),
        ("pci-5v", 32),
        ("scsi-50", 8),
        ("scsi-68", 16),
        ("scsi-80", 16),
    ];
    let connectors = shipped();
    for (id, bits) in published {
        assert_eq!(connectors.get(id).unwrap().width_bits, Some(bits), "{id}");
    }
}

/// PC Guide: ISA standard maximum 8.33 MHz, first machines 4.77 MHz. PCI: 33.33 MHz, period 30 ns. Sockets 1 to 6: FOLDOC,
/// x86 processor socket; Socket 7: Wikipedia (de); Slot 1, Slot A, Socket A, 423, 478: Wikipedia, of double- and
/// quad-pumped buses the clock. Modules: Wikipedia, SDRAM (15, 10, 7.5 ns); rcramer.com, Random access memory (DDR).
#[test]
fn clocks_are_those_of_published_tables() {
    let published: [(&str, &[f64]); 18] = [
        ("isa-8", &[4.77, 8.333]),
        ("pci-5v", &[1000.0 / 30.0]),
        ("agp-3.3v", &[66.667]),
        ("socket-1", &[16.0, 20.0, 25.0, 33.0]),
        ("socket-2", &[25.0, 33.0, 40.0, 50.0]),
        ("socket-3", &[25.0, 33.0, 40.0, 50.0]),
        ("socket-6", &[25.0, 33.0, 40.0]),
        ("dimm-184-ddr", &[100.0, 133.333, 166.667, 200.0]),
        ("dimm-240-ddr2", &[200.0, 266.667]),
        ("socket-4", &[60.0, 66.667]),
        ("socket-5", &[50.0, 60.0, 66.667]),
        ("socket-7", &[50.0, 60.0, 66.667]),
        ("slot-1", &[66.667, 100.0, 133.333]),
        ("slot-a", &[100.0, 133.333]),
        ("socket-a", &[100.0, 133.333, 166.667, 200.0]),
        ("socket-423", &[100.0]),
        ("socket-478", &[100.0, 133.333, 200.0]),
        ("dimm-168-sdram", &[1000.0 / 15.0, 1000.0 / 10.0, 1000.0 / 7.5]),
    ];
    let connectors = shipped();
    for (id, clocks) in published {
        let row = connectors.get(id).unwrap();
        assert_eq!(row.clocks_mhz.len(), clocks.len(), "{id}");
        for (ours, theirs) in row.clocks_mhz.iter().zip(clocks) {
            assert!((ours - theirs).abs() < 0.001, "{id}: {ours} against {theirs}");
        }
    }
}

/// Core voltages: table 3.18 of Upgrading and Repairing PCs; Socket 7: Wikipedia (de); Socket 8: a flash card set on sockets;
/// Slot 1, Slot A, Socket A: Wikipedia. Modules: Hardware Book, Memory.
#[test]
fn core_voltages_are_those_of_published_tables() {
    let published: [(&str, &[f64]); 16] = [
        ("socket-1", &[5.0]),
        ("socket-2", &[5.0]),
        ("socket-3", &[3.3, 5.0]),
        ("socket-4", &[5.0]),
        ("socket-5", &[3.3, 3.5]),
        ("socket-7", &[2.0, 3.5]),
        ("socket-8", &[3.1, 3.3]),
        ("socket-6", &[3.3]),
        ("slot-1", &[1.3, 3.5]),
        ("slot-a", &[1.3, 2.05]),
        ("socket-a", &[1.0, 2.05]),
        ("simm-30", &[5.0]),
        ("sodimm-72", &[3.3, 5.0]),
        ("dimm-168-edo", &[3.3, 5.0]),
        ("dimm-168-sdram", &[3.3]),
        ("dimm-184-ddr", &[2.5]),
    ];
    let connectors = shipped();
    for (id, volts) in published {
        assert_eq!(connectors.get(id).unwrap().volts, volts, "{id}");
    }
}

/// Form factor tables, inches: AT 12 × 13.8, Baby AT 8.57 × 13.04, ATX 12 × 9.6, Mini-ATX 11.2 × 8.2, microATX
/// 9.6 × 9.6, FlexATX 9.0 × 7.5, XT 8.5 × 11.
#[test]
fn outlines_are_those_of_published_tables() {
    let published = [
        ("at", 12.0, 13.8),
        ("baby-at", 8.57, 13.04),
        ("atx", 12.0, 9.6),
        ("mini-atx", 11.2, 8.2),
        ("micro-atx", 9.6, 9.6),
        ("flex-atx", 9.0, 7.5),
        ("xt", 8.5, 11.0),
    ];
    let connectors = shipped();
    for (id, width_in, depth_in) in published {
        let [width, depth] = connectors.get(id).unwrap().outline_mm.unwrap();
        assert!((width - 25.4 * width_in).abs() < 0.06 && (depth - 25.4 * depth_in).abs() < 0.06, "{id}");
    }
}

/// A larger outline takes a smaller one only if that is no wider and no deeper: dimensions as above.
#[test]
fn a_case_never_takes_a_board_that_is_larger_than_its_own_outline() {
    let connectors = shipped();
    for case in connectors.all().filter(|row| row.family == Family::Outline) {
        for board in &case.accepts {
            let ([width, depth], [board_width, board_depth]) =
                (case.outline_mm.unwrap(), connectors.get(board).unwrap().outline_mm.unwrap());
            assert!(board_width <= width && board_depth <= depth, "{board} in a case for {}", case.id);
        }
    }
}

/// Wikipedia (de), Sockel 7: it takes Socket 5 processors, not the reverse (a key pin); course notes: Slot 1 and Slot A
/// share the plastic, turned round, and are electrically foreign. The rest is common practice.
#[test]
fn accepting_is_directed() {
    let connectors = shipped();
    let taken = [
        ("socket-7", "socket-5"),
        ("super-7", "socket-7"),
        ("super-7", "socket-5"),
        ("socket-3", "socket-1"),
        ("socket-370-fcpga2", "socket-370-fcpga"),
        ("isa-16", "isa-8"),
        ("vlb", "isa-16"),
        ("eisa", "isa-16"),
        ("mca-32", "mca-16"),
        ("pci-5v", "pci-universal"),
        ("pci-3.3v", "pci-universal"),
        ("atx", "micro-atx"),
        ("bay-5.25-full", "bay-5.25"),
        ("fan-3", "fan-2"),
    ];
    for (offer, need) in taken {
        assert!(connectors.accepts(offer, need), "{offer} takes {need}");
        assert!(!connectors.accepts(need, offer), "{need} does not take {offer}");
    }
    let foreign = [
        ("slot-1", "slot-a"),
        ("pci-5v", "pci-3.3v"),
        ("scsi-50", "scsi-68"),
        ("simm-72", "simm-30"),
        ("dimm-184-ddr", "dimm-168-sdram"),
        ("keyboard-at-din", "keyboard-xt-din"),
        ("st506", "esdi"),
        ("mca-16", "isa-16"),
        ("at-p8p9", "atx-20"),
        ("mda-9", "cga-9"),
    ];
    for (one, other) in foreign {
        assert!(!connectors.accepts(one, other) && !connectors.accepts(other, one), "{one} and {other}");
    }
}

#[test]
fn what_the_table_does_not_know_only_accepts_itself() {
    let connectors = shipped();
    assert!(connectors.accepts("own-riser", "own-riser"));
    assert!(!connectors.accepts("own-riser", "isa-8"));
    assert_eq!(connectors.label("own-riser"), "own-riser");
}

#[test]
fn every_family_has_connectors_and_every_row_a_source() {
    use Family::{
        BoardPower, Disk, DrivePower, Expansion, Floppy, Input, Memory, Mounting, Outline, Port, Processor, Video,
    };
    let connectors = shipped();
    for family in
        [Processor, Expansion, Memory, Outline, Mounting, BoardPower, DrivePower, Disk, Floppy, Video, Input, Port]
    {
        assert!(connectors.all().any(|row| row.family == family), "{family:?}");
    }
    assert!(connectors.all().all(|row| !row.source.said().is_empty()));
    assert!(connectors.all().count() >= 70);
}

#[test]
fn a_users_table_adds_and_overrides() {
    let own = r#"connector = [
        { id = "own-riser", family = "expansion", label = "Own riser", accepts = ["isa-8"], source = "", sureness = "common-practice" },
        { id = "isa-16", family = "expansion", label = "Slot", source = "", sureness = "memory" },
    ]"#;
    let connectors =
        Connectors::load(&[("connectors.toml", benchwright::rules::connectors::SHIPPED), ("own.toml", own)]).unwrap();
    assert!(connectors.accepts("own-riser", "isa-8"));
    assert_eq!(connectors.label("isa-16"), "Slot");
    assert!(connectors.get("socket-7").is_some());
}

#[test]
fn a_bad_table_is_refused_with_file_line_and_reason() {
    let row = |rest: &str| {
        format!(
            "connector = [\n{{ id = \"a\", family = \"port\", label = \"A\", source = \"x\", sureness = \"memory\" }},\n{{ {rest} }},\n]\n"
        )
    };
    let faults = [
        (
            row(r#"id = "b", family = "port", label = "B", accepts = ["c"], source = "x", sureness = "memory""#),
            "b accepts c",
        ),
        (
            row(r#"id = "b", family = "port", label = "B", accepts = ["b"], source = "x", sureness = "memory""#),
            "lists itself",
        ),
        (
            row(r#"id = "b", family = "disk", label = "B", accepts = ["a"], source = "x", sureness = "memory""#),
            "another family",
        ),
        (row(r#"id = "a", family = "port", label = "B", source = "x", sureness = "memory""#), "stands twice"),
        (row(r#"id = "B 1", family = "port", label = "B", source = "x", sureness = "memory""#), "no id"),
        (row(r#"id = "b", family = "port", label = " ", source = "x", sureness = "memory""#), "no label"),
        (row(r#"id = "b", family = "port", label = "B", source = "", sureness = "published""#), "names no source"),
        (
            row(r#"id = "b", family = "port", label = "B", volts = [5, 3.3], source = "x", sureness = "memory""#),
            "ascending",
        ),
        (
            row(r#"id = "b", family = "port", label = "B", clocks_mhz = [0], source = "x", sureness = "memory""#),
            "positive",
        ),
        (
            row(r#"id = "b", family = "port", label = "B", contacts = 0, source = "x", sureness = "memory""#),
            "zero contacts",
        ),
        (
            row(
                r#"id = "b", family = "outline", label = "B", outline_mm = [-1, 2], source = "x", sureness = "memory""#,
            ),
            "sides",
        ),
        (row(r#"id = "b", family = "port", label = "B", colour = "red", source = "x", sureness = "memory""#), "colour"),
        (row(r#"id = "b", family = "harbour", label = "B", source = "x", sureness = "memory""#), "harbour"),
        (row(r#"id = "b", family = "port", label = "B", source = "x", sureness = "sure""#), "sure"),
        (row(r#"id = , family = "port""#), ""),
    ];
    for (table, reason) in faults {
        let error = Connectors::load(&[("own.toml", &table)]).unwrap_err();
        assert_eq!((error.file.as_str(), error.line), ("own.toml", 3), "{error}");
        assert!(error.reason.contains(reason), "{error} should say {reason}");
    }
}

/// A table with one sign changed, lost or doubled is read or refused; a refusal names a line that the table has.
#[test]
fn a_damaged_table_is_read_or_refused() {
    let table = benchwright::rules::connectors::SHIPPED;
    let starts: Vec<usize> = table.char_indices().map(|(at, _)| at).collect();
    let lines = table.lines().count();
    let mut chance = Chance(0x7AB1_E000);
    for _ in 0..200 {
        let at = starts[chance.below(starts.len())];
        let end = table[at..].chars().next().map_or(at, |sign| at + sign.len_utf8());
        let damage = ["", "\"", "[", "}", "=", "-", "\n", "0"][chance.below(8)];
        let damaged = format!("{}{damage}{}", &table[..at], &table[end..]);
        match Connectors::load(&[("own.toml", &damaged)]) {
            Ok(connectors) => assert!(connectors.all().count() >= 140),
            Err(error) => {
                assert!((1..=lines + 1).contains(&error.line), "{error}");
                assert!(!error.reason.is_empty());
            }
        }
    }
}
