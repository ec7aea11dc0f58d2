//! File systems of the period: the largest partition, the largest drive, the clusters.

use serde::Serialize;

use super::Geometry;
use crate::text;
use crate::trade::Source;

/// A file system as one family of systems uses it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FileSystem {
    /// Key on the console and in records.
    pub id: &'static str,
    /// In words.
    pub label: &'static str,
    /// Largest partition in bytes.
    pub partition_bytes: u64,
    /// Most of a drive that its systems can reach, in bytes; `None` where the firmware alone decides.
    pub drive_bytes: Option<u64>,
    /// Whether its systems reach the drive past the firmware once they run, as Linux does (Large Disk HOWTO 2.2x); they
    /// still start from what the firmware sees.
    pub own_driver: bool,
    /// What to look out for; empty when nothing.
    pub note: &'static str,
    /// Where it stands.
    pub source: Source,
}

/// All of them, the oldest first.
pub fn file_systems() -> Vec<FileSystem> {
    const MICROSOFT: Source = Source::published("MSDN aa364045, file system size limits");
    const DOS_4: Source =
        Source::published("Microsoft knowledge base Q118335, Maximum Partition Size Using FAT16: MS-DOS 4.0 and later");
    const CALLS: Option<u64> = Some(Geometry::new(1024, 255, 63).bytes());
    const TABLE: u64 = 1 << 41;
    let row = |id, label, partition_bytes, drive_bytes, note, source| FileSystem {
        id,
        label,
        partition_bytes,
        drive_bytes,
        own_driver: matches!(id, "hpfs" | "ntfs" | "ext2"),
        note,
        source,
    };
    vec![
        row(
            "fat16-dos-3.0",
            text!("FAT16, DOS 3.0 to 3.30"),
            65_535 * 512,
            Some(Geometry::new(1024, 16, 63).bytes()),
            text!("More than one partition from DOS 3.30 on."),
            Source::memory(
                "DOS 3 technical reference; FAT16 in 3.0, large sectors counts in 3.31: sagapedia, File Allocation Table",
            ),
        ),
        row(
            "fat16-dos-3.31",
            text!("FAT16, DOS 3.31"),
            1 << 29,
            CALLS,
            text!("Its tools make partitions of 512 MiB at most; DOS 4 makes larger ones."),
            Source::published("vogons.org p=1334365, limits of DOS 3 found by trying: a forum, no maker's word"),
        ),
        row(
            "fat16-dos-4.0",
            text!("FAT16, DOS 4.0 to 6.22"),
            1 << 31,
            CALLS,
            text!("Clusters grow to 32 KiB: many small files waste much."),
            DOS_4,
        ),
        row("fat16-windows-95", text!("FAT16, Windows 95 and later"), 1 << 31, None, "", MICROSOFT),
        row(
            "fat16-64k",
            text!("FAT16 with 64 KiB clusters, Windows NT"),
            1 << 32,
            None,
            text!("DOS cannot read clusters of 64 KiB."),
            MICROSOFT,
        ),
        row(
            "fat32-windows-95",
            text!("FAT32, Windows 95 OSR2"),
            TABLE,
            Some(32_000_000_000),
            text!("The 32 GB are what its maker supports; the exact limit is not published."),
            Source::published("PC Guide, the Windows 95 limit; FAT32 in OSR2: sagapedia, File Allocation Table"),
        ),
        row(
            "fat32",
            text!("FAT32, Windows 98 and later"),
            TABLE,
            Some(1 << 37),
            text!("Windows 98's checking tools stop near 127 GiB, its first FDISK shows drives above 64 GiB wrongly."),
            Source::published(
                "philscomputerlab.com, Windows 98 maximum hard drive capacity; hexff.com, Windows 98 and large drives",
            ),
        ),
        row("hpfs", text!("HPFS"), 1 << 36, Some(1 << 37), "", Source::memory("OS/2 Warp documentation")),
        row(
            "ntfs",
            text!("NTFS, Windows NT"),
            TABLE,
            Some(1 << 37),
            text!("Windows NT 4 cannot start from beyond the first 7.8 GiB."),
            Source::memory("Microsoft knowledge base; the partition table sets the limit"),
        ),
        row(
            "ext2",
            text!("ext2, Linux"),
            TABLE,
            None,
            text!("An old boot loader must find its kernel below cylinder 1024."),
            Source::memory(
                "kernel documentation; the partition table sets the limit. Boot loader: Large Disk HOWTO 2.2x",
            ),
        ),
    ]
}

impl FileSystem {
    /// The cluster size in bytes that formatting a FAT16 partition of this size picks by default; `None` for another
    /// file system, and outside the tables (under 16 MB, where DOS takes a 12-bit table and Windows NT other steps).
    /// MB are of 1 048 576 bytes, as the tables' sources count.
    ///
    /// Sources: DOS and Windows 95, knowledge base Q67321 (2 KB from 16 to 127 MB, doubled with the size); Windows NT,
    /// MSDN aa364045 (1 KB from 33 to 64 MB, and 64 KB from 2048 MB on).
    pub fn default_cluster_bytes(&self, partition_bytes: u64) -> Option<u32> {
        let mib = partition_bytes >> 20;
        match self.id {
            "fat16-64k" => Some(match mib {
                33..=64 => 1 << 10,
                65..=128 => 2 << 10,
                129..=256 => 4 << 10,
                257..=512 => 8 << 10,
                513..=1023 => 16 << 10,
                1024..=2047 => 32 << 10,
                2048..=4096 => 64 << 10,
                _ => return None,
            }),
            id if id.starts_with("fat16-") => Some(match mib {
                16..=127 => 2 << 10,
                128..=255 => 4 << 10,
                256..=511 => 8 << 10,
                512..=1023 => 16 << 10,
                1024..=2048 => 32 << 10,
                _ => return None,
            }),
            _ => None,
        }
    }
}
