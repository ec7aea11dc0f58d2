//! Drives: barriers, geometries, file systems and floppy formats against published figures.

use crate::chance::Chance;
use crate::fuzz::rounds;
use benchwright::trade::drive::{
    Capacity, Firmware, Geometry, Outcome, Position, assisted, barriers, crossed, doubled, file_systems, firmwares,
    floppy_formats, identify, judge, parse_capacity,
};
use proptest::prelude::*;

/// Large Disk HOWTO 2.2x, "History of BIOS and IDE limits" and "Disksize" (bytes as printed there); 4096 cylinders:
/// plasma-online.de; 28 bits: PC Magazine encyclopedia, philscomputerlab.com; FDISK at 64 GiB: hexff.com.
#[test]
fn geometries_hold_the_published_bytes() {
    let published = [
        (1024, 16, 63, 528_482_304),
        (4092, 16, 63, 2_111_864_832),
        (4095, 16, 63, 2_113_413_120),
        (4096, 16, 63, 2_113_929_216),
        (8192, 16, 63, 4_227_858_432),
        (1024, 240, 63, 7_927_234_560),
        (1024, 255, 63, 8_422_686_720),
        (1024, 256, 63, 8_455_716_864),
        (65_536, 16, 255, 136_902_082_560),
    ];
    for (cylinders, heads, sectors, bytes) in published {
        assert_eq!(Geometry::new(cylinders, heads, sectors).bytes(), bytes, "{cylinders}/{heads}/{sectors}");
    }
    // The sectors of the ATA geometry and of the clip jumper as the HOWTO prints them.
    assert_eq!(Geometry::new(65_536, 16, 255).total_sectors(), 267_386_880);
    assert_eq!(Geometry::new(4092, 16, 63).total_sectors(), 4_124_736);
    // One page gives 1024 × 255 × 63 for the 504 MiB barrier. That is 8.4 GB; 16 heads make 504 MiB.
    assert_ne!(Geometry::new(1024, 255, 63).bytes() >> 20, 504);
    assert_eq!(Geometry::new(1024, 16, 63).bytes(), 504 << 20);
}

/// The same figures as barriers, in the order in which a growing drive meets them.
#[test]
fn every_published_barrier_is_known() {
    let published = [
        33_553_920_u64,
        528_482_304,
        2_111_864_832,
        2_113_413_120,
        2_147_483_648,
        4_227_858_432,
        7_927_234_560,
        8_422_686_720,
        8_455_200_768,
        8_455_716_864,
        33_822_351_360,
        68_719_476_736,
        136_902_082_560,
        137_438_953_472,
        2_199_023_255_552,
    ];
    let exact: Vec<u64> = barriers().iter().filter(|barrier| barrier.exact).map(|barrier| barrier.bytes).collect();
    assert_eq!(exact, published);
    let rounded: Vec<_> = barriers().into_iter().filter(|barrier| !barrier.exact).collect();
    assert_eq!(rounded.len(), 2);
    assert_eq!(rounded[0].bytes / 1_000_000, 3277, "HOWTO: locks up over 3277 MB");
    assert_eq!(rounded[1].bytes / 1_000_000_000, 32, "PC Guide: Windows 95 and 32 GB");
    assert!(barriers().windows(2).all(|pair| pair[0].bytes < pair[1].bytes));
    // Where sources differ, the barrier says so.
    let conflict = |bytes| barriers().iter().find(|barrier| barrier.bytes == bytes).unwrap().conflict;
    assert!(conflict(528_482_304).contains("16 heads"));
    assert!(conflict(2_113_413_120).contains("2 113 929 216"));
    assert_eq!(crossed(528_482_304).len(), 1);
    assert_eq!(crossed(528_482_305).len(), 2);
}

/// HOWTO, "Disk Access": LBA = cHS + hS + (s - 1). The last sector of 1024/16/63 is 1 032 191.
#[test]
fn addresses_follow_the_published_rule() {
    let geometry = Geometry::new(1024, 16, 63);
    let at = |cylinder, head, sector| geometry.lba(Position { cylinder, head, sector });
    assert_eq!(at(0, 0, 1), Some(0));
    assert_eq!(at(0, 1, 1), Some(63));
    assert_eq!(at(1, 0, 1), Some(1008));
    assert_eq!(at(1023, 15, 63), Some(1_032_191));
    for outside in [at(0, 0, 0), at(0, 0, 64), at(0, 16, 1), at(1024, 0, 1)] {
        assert_eq!(outside, None);
    }
    assert_eq!(geometry.position(1_032_191), Some(Position { cylinder: 1023, head: 15, sector: 63 }));
    assert_eq!(geometry.position(1_032_192), None);
}

/// HOWTO, "The 8.4 GB limit": the first of 16, 32, 64, 128, 255 heads that fits 1024 cylinders.
#[test]
fn assisted_translation_picks_the_published_heads() {
    let fits = |heads: u64| 1024 * heads * 63;
    for (sectors, heads) in [
        (fits(16), 16),
        (fits(16) + 1, 32),
        (fits(32), 32),
        (fits(64), 64),
        (fits(64) + 1, 128),
        (fits(128), 128),
        (fits(128) + 1, 255),
        (fits(255), 255),
    ] {
        assert_eq!(assisted(sectors).heads, heads, "{sectors} sectors");
    }
    assert_eq!(assisted(fits(255)), Geometry::new(1024, 255, 63));
}

/// HOWTO, "The 4.2 GB limit": 8192/16/63 becomes 1024/128/63, beyond that it ends. "The 7.9 GB limit": 240 heads.
#[test]
fn doubling_ends_where_published() {
    assert_eq!(doubled(Geometry::new(8192, 16, 63), false), Some(Geometry::new(1024, 128, 63)));
    assert_eq!(doubled(Geometry::new(8320, 16, 63), false), None);
    assert_eq!(doubled(Geometry::new(15_360, 16, 63), true), Some(Geometry::new(1024, 240, 63)));
    assert_eq!(doubled(Geometry::new(16_383, 16, 63), true), None);
    assert_eq!(doubled(Geometry::new(900, 16, 63), false), Some(Geometry::new(900, 16, 63)));
}

/// HOWTO: drives over 8.4 GB report 16383/16/63, which is 16 514 064 sectors.
#[test]
fn large_drives_report_the_published_geometry() {
    assert_eq!(identify(39_876_480), Geometry::new(16_383, 16, 63));
    assert_eq!(Geometry::new(16_383, 16, 63).total_sectors(), 16_514_064);
    assert_eq!(identify(4_124_736), Geometry::new(4092, 16, 63));
}

/// PC Guide, floppy media geometry: sectors; bytes by 512.
#[test]
fn floppy_formats_are_the_published_ones() {
    let published = [
        ("160K", 320, 163_840),
        ("180K", 360, 184_320),
        ("320K", 640, 327_680),
        ("360K", 720, 368_640),
        ("720K", 1440, 737_280),
        ("1.2M", 2400, 1_228_800),
        ("1.44M", 2880, 1_474_560),
        ("2.88M", 5760, 2_949_120),
    ];
    let ours: Vec<_> = floppy_formats().iter().map(|row| (row.name, row.total_sectors(), row.bytes())).collect();
    assert_eq!(ours, published);
    // HOWTO, "Units": 1440 KiB are 1.47 MB and 1.41 MiB, not 1.44 of either.
    let capacity = Capacity::of(1_474_560);
    assert_eq!((format!("{:.2}", capacity.mb), format!("{:.2}", capacity.mib)), ("1.47".into(), "1.41".into()));
}

/// Wikipedia, Floppy disk variants: coercivities.
#[test]
fn floppy_media_have_the_published_coercivity() {
    let of = |name| floppy_formats().iter().find(|row| row.name == name).unwrap().coercivity_oe;
    for (name, oersted) in [("360K", 300), ("1.2M", 600), ("720K", 600), ("1.44M", 750), ("2.88M", 900)] {
        assert_eq!(of(name), oersted, "{name}");
    }
}

/// MSDN aa364045: FAT16 of 4 GB with 64 KB clusters on NT. Microsoft Q118335: 2 GB with MS-DOS 4.0 and later.
/// vogons.org p=1334365 (a forum): partitions of 512 MB with DOS 3.31.
#[test]
fn fat_sizes_are_the_published_ones() {
    let largest = |id| file_systems().iter().find(|row| row.id == id).unwrap().partition_bytes;
    assert_eq!(largest("fat16-dos-3.31"), 512 << 20);
    assert_eq!(largest("fat16-dos-4.0"), 2 << 30);
    assert_eq!(largest("fat16-64k"), 4 << 30);
    // DOS 3: 65 535 sectors.
    assert_eq!(largest("fat16-dos-3.0"), 33_553_920);
}

/// Microsoft Q67321, the same in Q69912: DOS FORMAT takes 4 sectors from 16 to 127 MB, 8 to 255, 16 to 511, 32 to 1023,
/// 64 to 2047; one maker of another DOS prints 2 KB from 32 to 127.9 MB (FYI-M-1208, 1992).
/// MSDN aa364045 gives Windows NT's own: 1 KB from 33 to 64 MB, 64 KB from 2048 MB.
#[test]
fn dos_and_windows_nt_format_a_partition_in_clusters_of_their_own() {
    let systems = file_systems();
    let cluster = |id: &str, mib: u64| {
        let system = systems.iter().find(|row| row.id == id).unwrap();
        system.default_cluster_bytes(mib << 20).map(|bytes| bytes >> 10)
    };
    for dos in ["fat16-dos-3.31", "fat16-dos-4.0", "fat16-windows-95"] {
        for (mib, kib) in [(33, 2), (64, 2), (127, 2), (128, 4), (255, 4), (256, 8), (511, 8)] {
            assert_eq!(cluster(dos, mib), Some(kib), "{dos}, {mib} MB");
        }
    }
    for (mib, kib) in [(512, 16), (1023, 16), (1024, 32), (2047, 32)] {
        assert_eq!(cluster("fat16-dos-4.0", mib), Some(kib), "{mib} MB");
    }
    for (mib, kib) in
        [(33, 1), (64, 1), (65, 2), (128, 2), (256, 4), (512, 8), (1023, 16), (1024, 32), (2047, 32), (2048, 64)]
    {
        assert_eq!(cluster("fat16-64k", mib), Some(kib), "{mib} MB");
    }
    assert_eq!(cluster("fat16-64k", 5 << 10), None);
    assert_eq!(cluster("fat16-dos-4.0", 5 << 10), None);
    assert_eq!(cluster("fat32", 1024), None);
}

fn firmware(id: &str) -> Firmware {
    firmwares().into_iter().find(|row| row.id == id).unwrap()
}

/// HOWTO's history, class by class: what a drive just past the barrier does.
#[test]
fn drives_meet_their_barriers_as_published() {
    let published = [
        ("untranslated", 528_482_304_u64, Outcome::ClippedTo { bytes: 528_482_304 }),
        ("cylinders-12-bit", 2_113_413_120, Outcome::NotUsable),
        ("locks-3.2gb", 3_277_000_000, Outcome::NotUsable),
        ("heads-doubled", 4_227_858_432, Outcome::NotUsable),
        ("heads-240", 7_927_234_560, Outcome::ClippedTo { bytes: 7_927_234_560 }),
        ("assisted", 8_422_686_720, Outcome::ClippedTo { bytes: 8_422_686_720 }),
        ("cylinders-16-bit", 33_822_351_360, Outcome::NotUsable),
        ("lba-28", 137_438_953_472, Outcome::ClippedTo { bytes: 137_438_953_472 }),
    ];
    for (id, most, beyond) in published {
        assert_eq!(judge(most, None, &firmware(id), None).outcome, Outcome::SeenWhole, "{id} at its limit");
        let over = judge(most + 516_096, None, &firmware(id), None);
        assert_eq!(over.outcome, beyond, "{id} beyond its limit");
        assert!(over.remarks.len() >= 2, "{id} says why and what to try");
    }
    assert_eq!(judge(2_000_398_934_016, None, &firmware("lba-48"), None).outcome, Outcome::SeenWhole);
}

/// Common practice, no source: 32 GB is the most that a late-nineties firmware accepts. In binary counting, that is.
#[test]
fn the_late_nineties_barrier_is_what_people_call_32_gb() {
    let most = firmware("cylinders-16-bit").most_bytes.unwrap();
    assert_eq!((Capacity::of(most).gib.round(), Capacity::of(most).gb.round()), (31.0, 34.0));
    assert_eq!(judge(40_020_664_320, None, &firmware("cylinders-16-bit"), None).outcome, Outcome::NotUsable);
}

/// An old drive's own geometry decides without translation: 1224/15/17 loses its cylinders past 1023 (by hand:
/// 1024 × 15 × 17 × 512).
#[test]
fn an_old_drive_is_clipped_by_its_own_geometry() {
    let own = Geometry::new(1224, 15, 17);
    let verdict = judge(own.bytes(), Some(own), &firmware("untranslated"), None);
    assert_eq!(verdict.outcome, Outcome::ClippedTo { bytes: 133_693_440 });
    assert_eq!(verdict.shown, Some(Geometry::new(1024, 15, 17)));
}

/// FAT16 under DOS: an 8.4 GB drive takes four partitions of 2 GiB at least; DOS reaches no further than the firmware
/// calls do, on whatever firmware.
#[test]
fn file_systems_bound_partitions_and_drives() {
    let systems = file_systems();
    let dos = systems.iter().find(|row| row.id == "fat16-dos-4.0").unwrap();
    let verdict = judge(20_416_757_760, None, &firmware("lba-48"), Some(dos));
    assert_eq!(verdict.outcome, Outcome::ClippedTo { bytes: 8_422_686_720 });
    let partitions = verdict.partitions.unwrap();
    assert_eq!((partitions.largest_bytes, partitions.least_count), (2 << 30, 4));
    assert_eq!(partitions.cluster_bytes, Some(32 << 10), "Q69912: 32 KB up to 2 GB");
    let old = systems.iter().find(|row| row.id == "fat16-dos-3.0").unwrap();
    // 21 MB of a 20 MB class drive: one partition holds it.
    let small = Geometry::new(615, 4, 17);
    let verdict = judge(small.bytes(), Some(small), &firmware("untranslated"), Some(old));
    assert_eq!((verdict.outcome, verdict.partitions.unwrap().least_count), (Outcome::SeenWhole, 1));
    // A drive that hangs the firmware has no partitions to speak of.
    assert_eq!(judge(3 << 30, None, &firmware("cylinders-12-bit"), Some(dos)).partitions, None);
}

/// PC Guide: Windows 95 and 32 GB; philscomputerlab.com: Windows 98 and 2^28 sectors.
#[test]
fn windows_reaches_what_is_published() {
    let systems = file_systems();
    let reached =
        |id: &str, bytes| judge(bytes, None, &firmware("lba-48"), systems.iter().find(|row| row.id == id)).outcome;
    assert_eq!(reached("fat32-windows-95", 40_020_664_320), Outcome::ClippedTo { bytes: 32_000_000_000 });
    assert_eq!(reached("fat32", 40_020_664_320), Outcome::SeenWhole);
    assert_eq!(reached("fat32", 160_041_885_696), Outcome::ClippedTo { bytes: 268_435_456 * 512 });
}

/// HOWTO, "The problem": Linux does not use the firmware once it runs, but starts by it. A firmware that hangs lets
/// nothing start.
#[test]
fn a_system_with_its_own_driver_reaches_past_the_firmware() {
    let systems = file_systems();
    let linux = systems.iter().find(|row| row.id == "ext2").unwrap();
    let verdict = judge(4_311_982_080, None, &firmware("untranslated"), Some(linux));
    assert_eq!(verdict.outcome, Outcome::SeenWhole);
    assert!(verdict.remarks.iter().any(|remark| remark.contains("must start from there")));
    assert_eq!(judge(4_311_982_080, None, &firmware("heads-doubled"), Some(linux)).outcome, Outcome::NotUsable);
}

/// HOWTO, "Units": 1 MiB is 1 048 576 bytes, 1 GiB 1 073 741 824, 1 TiB 1 099 511 627 776; MB and GB are decimal.
#[test]
fn capacities_are_read_in_both_countings() {
    let typed = [
        ("8455716864", 8_455_716_864_u64),
        ("8 455 716 864 bytes", 8_455_716_864),
        ("1 MiB", 1_048_576),
        ("1GiB", 1_073_741_824),
        ("1 TiB", 1_099_511_627_776),
        ("504 MiB", 528_482_304),
        ("528 MB", 528_000_000),
        ("8.4 GB", 8_400_000_000),
        ("8,4 gb", 8_400_000_000),
        ("16514064 sectors", 8_455_200_768),
        ("720 KiB", 737_280),
    ];
    for (text, bytes) in typed {
        assert_eq!(parse_capacity(text), Ok(bytes), "{text}");
    }
    for text in ["", "0", "GB", "8.4 Gx", "-5 MB", "1e9", "99999999999 TB", "1.2.3 MB", "528 MB 3"] {
        assert!(parse_capacity(text).is_err(), "{text}");
    }
}

#[test]
fn geometries_are_read_as_people_type_them() {
    for text in ["1024/16/63", "1024x16x63", "1024 × 16 × 63", "1024, 16, 63"] {
        assert_eq!(Geometry::parse(text), Ok(Geometry::new(1024, 16, 63)), "{text}");
    }
    for (text, reason) in [
        ("1024/16", "not CYLINDERS"),
        ("1024/257/63", "257 heads"),
        ("1024/16/256", "256 sectors"),
        ("0/16/63", "not CYLINDERS"),
        ("1024/0/63", "0 heads"),
        ("99999999999/16/63", "not CYLINDERS"),
        ("a/b/c", "not CYLINDERS"),
    ] {
        let error = Geometry::parse(text).unwrap_err();
        assert!(error.contains(reason), "{text}: {error}");
    }
}

fn check_any_capacity(text: &str) {
    match parse_capacity(text) {
        Ok(bytes) => assert!(bytes > 0, "{text:?}"),
        Err(reason) => assert!(!reason.is_empty(), "{text:?}"),
    }
}

fn check_any_geometry(text: &str) {
    match Geometry::parse(text) {
        Ok(geometry) => {
            assert!(geometry.bytes() >= 512, "{text:?}");
            assert_eq!(Geometry::parse(&geometry.to_string()), Ok(geometry), "{text:?}");
        }
        Err(reason) => assert!(!reason.is_empty(), "{text:?}"),
    }
}

#[test]
fn fuzz_drive_figures() {
    let capacities: Vec<char> = "0123456789999.,_ kKMGTiBb sectors".chars().collect();
    let geometries: Vec<char> = "01234567899///xX×, :".chars().collect();
    let mut chance = Chance(0x000D_21FE);
    for _ in 0..rounds() {
        check_any_capacity(&chance.text(&capacities, 24));
        check_any_geometry(&chance.text(&geometries, 20));
    }
}

proptest! {
    #[test]
    fn any_text_gives_a_capacity_or_a_reason(text in "[0-9., _]{0,12}[kKMGTib ]{0,4}|\\PC{0,20}") {
        check_any_capacity(&text);
    }

    #[test]
    fn any_text_gives_a_geometry_or_a_reason(text in "[0-9/x ,]{0,16}|\\PC{0,20}") {
        check_any_geometry(&text);
    }

    /// Addresses and positions are two names of one sector.
    #[test]
    fn addresses_lead_back(cylinders in 1..70_000u32, heads in 1..=256u32, sectors in 1..=255u32, at in 0.0..1.0f64) {
        let geometry = Geometry::new(cylinders, heads, sectors);
        let lba = (at * geometry.total_sectors() as f64) as u64;
        let position = geometry.position(lba).unwrap();
        prop_assert_eq!(geometry.lba(position), Some(lba));
    }

    /// A larger drive never shows less, as long as it works; and nothing shows more than it has.
    #[test]
    fn larger_drives_never_show_less(bytes in 1_000_000u64..3_000_000_000_000, more in 0u64..1_000_000_000_000, which in 0usize..9, system in 0usize..9) {
        let firmware = &firmwares()[which];
        let system = &file_systems()[system];
        let seen = |bytes: u64| match judge(bytes, None, firmware, Some(system)).outcome {
            Outcome::SeenWhole => Some(bytes),
            Outcome::ClippedTo { bytes } => Some(bytes),
            Outcome::NotUsable => None,
        };
        if let (Some(small), Some(large)) = (seen(bytes), seen(bytes + more)) {
            prop_assert!(small <= bytes && small <= large);
        }
    }
}
