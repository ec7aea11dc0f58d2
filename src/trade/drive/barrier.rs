//! Every known capacity barrier, with exact bytes, what sets it, and where sources differ.

use serde::Serialize;

use super::Geometry;
use crate::text;
use crate::trade::Source;

/// A capacity beyond which something goes wrong.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Barrier {
    /// Largest capacity before it, in bytes.
    pub bytes: u64,
    /// The geometry that makes it, where one does.
    pub geometry: Option<Geometry>,
    /// What it is called, in the decimal counting of drives.
    pub name: &'static str,
    /// What sets it.
    pub cause: &'static str,
    /// Whether the bytes are exact; the source of one barrier only says "over 3277 MB".
    pub exact: bool,
    /// Where sources differ; empty when they agree.
    pub conflict: &'static str,
    /// Where it stands.
    pub source: Source,
}

const HOWTO: Source = Source::published("Large Disk HOWTO 2.2x, history of BIOS and IDE limits; bytes recomputed");
const ATA: Source = Source::published("PC Magazine encyclopedia, hard disk capacity barriers; bytes recomputed");

/// All barriers, the smallest first.
pub fn barriers() -> Vec<Barrier> {
    let chs = |cylinders, heads, sectors, name, cause, conflict| {
        let geometry = Geometry::new(cylinders, heads, sectors);
        Barrier { bytes: geometry.bytes(), geometry: Some(geometry), name, cause, exact: true, conflict, source: HOWTO }
    };
    let plain = |bytes, name, cause, conflict, source| Barrier {
        bytes,
        geometry: None,
        name,
        cause,
        exact: true,
        conflict,
        source,
    };
    vec![
        plain(
            65_535 * 512,
            text!("33 MB"),
            text!("DOS before 3.31 counts sectors of a partition in 16 bits"),
            "",
            Source::memory("DOS 3 technical reference"),
        ),
        chs(
            1024,
            16,
            63,
            text!("528 MB"),
            text!("one geometry for firmware calls and drive: the smaller of both in each figure"),
            text!("One page gives 1024 × 255 × 63 for 504 MiB; it is 16 heads."),
        ),
        chs(
            4092,
            16,
            63,
            text!("2.1 GB, clip jumper"),
            text!("drives jumpered to 4092 cylinders for firmware that hangs above"),
            "",
        ),
        chs(
            4095,
            16,
            63,
            text!("2.1 GB"),
            text!("12 bits for the cylinders in the set-up memory"),
            text!("Other sources count 4096 cylinders: 2 113 929 216 bytes."),
        ),
        plain(
            1 << 31,
            text!("2.1 GB, FAT16"),
            text!("FAT16 with clusters of 32 KiB"),
            text!(
                "One source counts 65 525 clusters, 2 147 123 200 bytes; the file system's specification ends at 65 524 (from memory)."
            ),
            Source::published("MSDN aa364045"),
        ),
        Barrier {
            exact: false,
            ..plain(
                3_277_000_000,
                text!("3.3 GB"),
                text!("one firmware's set-up locks up above 3277 MB"),
                text!("Also called the 3.2 GB limit."),
                HOWTO,
            )
        },
        chs(8192, 16, 63, text!("4.2 GB"), text!("translation by doubling heads; 256 heads are too many for DOS"), ""),
        chs(1024, 240, 63, text!("7.9 GB"), text!("translation by doubling from 15 heads"), ""),
        chs(1024, 255, 63, text!("8.4 GB"), text!("firmware calls with 1024 cylinders, and DOS with 255 heads"), ""),
        chs(16_383, 16, 63, text!("8.4 GB, reported geometry"), text!("the largest geometry that drives report"), ""),
        chs(1024, 256, 63, text!("8.5 GB"), text!("24 bits of cylinder, head and sector in firmware calls"), ""),
        Barrier {
            exact: false,
            ..plain(
                32_000_000_000,
                text!("32 GB, Windows 95"),
                text!("Windows 95 is not supported on more, for reasons its maker never gave"),
                "",
                Source::published("PC Guide, the Windows 95 limit; only \"32 GB\" is printed"),
            )
        },
        chs(65_535, 16, 63, text!("33.8 GB"), text!("16 bits for the cylinders in firmware of the late nineties"), ""),
        plain(
            1 << 36,
            text!("69 GB, FDISK"),
            text!("Windows 98's first FDISK shows what is left beyond 64 GiB"),
            "",
            Source::published("hexff.com, Windows 98 and large drives; maker's article Q263044"),
        ),
        chs(65_536, 16, 255, text!("137 GB, cylinders"), text!("largest geometry of the ATA interface"), ""),
        plain(1 << 37, text!("137 GB"), text!("28 bits of linear address in the ATA interface"), "", ATA),
        plain(
            1 << 41,
            text!("2.2 TB"),
            text!("32 bits of linear address in the partition table"),
            "",
            Source::published("a drive maker's manual, as 2.2 TB; bytes recomputed"),
        ),
    ]
}

/// The barriers that a drive of this many bytes lies beyond.
pub fn crossed(bytes: u64) -> Vec<Barrier> {
    barriers().into_iter().filter(|barrier| bytes > barrier.bytes).collect()
}
