//! Capacities as sold (powers of ten), as programs print them (powers of two), and as people type them.

use serde::Serialize;

use crate::text;

/// One capacity in both countings.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Capacity {
    /// Bytes.
    pub bytes: u64,
    /// Megabytes of 1 000 000, as drives are sold.
    pub mb: f64,
    /// Mebibytes of 1 048 576, as firmware and file systems count ("MB" on their screens).
    pub mib: f64,
    /// Gigabytes of 10⁹.
    pub gb: f64,
    /// Gibibytes of 2³⁰.
    pub gib: f64,
}

impl Capacity {
    /// From bytes.
    pub fn of(bytes: u64) -> Self {
        let exact = bytes as f64;
        let mib = exact / f64::from(1 << 20);
        Self { bytes, mb: exact / 1e6, mib, gb: exact / 1e9, gib: mib / 1024.0 }
    }

    /// "8.46 GB as sold, 7.88 GiB as programs count", in MB and MiB below 1 GB.
    pub fn said(self) -> String {
        if self.bytes < 1_000_000_000 {
            let (mb, mib) = (format!("{:.1}", self.mb), format!("{:.1}", self.mib));
            text!("{mb} MB as sold, {mib} MiB as programs count", mb = mb, mib = mib)
        } else {
            let (gb, gib) = (format!("{:.2}", self.gb), format!("{:.2}", self.gib));
            text!("{gb} GB as sold, {gib} GiB as programs count", gb = gb, gib = gib)
        }
    }
}

/// Reads a capacity: bytes, or a number with B, kB, MB, GB, TB (powers of ten), KiB, MiB, GiB, TiB (powers of two) or
/// "sectors" (of 512 bytes). Spaces and underscores may group digits; a comma is a decimal comma.
///
/// # Errors
/// A sentence: no number, an unknown unit, not positive, more than 2⁶⁴ − 1 bytes.
pub fn parse_capacity(text: &str) -> Result<u64, String> {
    let compact: String = text.chars().filter(|c| !c.is_whitespace() && *c != '_').collect();
    let end = compact.find(|c: char| !c.is_ascii_digit() && c != '.' && c != ',').unwrap_or(compact.len());
    let (number, unit) = compact.split_at(end);
    let Some(scale) = unit_bytes(unit) else {
        return Err(text!("\"{unit}\" is no unit: B, kB, MB, GB, TB, KiB, MiB, GiB, TiB or sectors", unit = unit));
    };
    let unreadable = || text!("\"{text}\" is no capacity, such as 8455716864, 8.4 GB or 504 MiB", text = text);
    if let Ok(whole) = number.parse::<u64>() {
        let bytes = whole.checked_mul(scale).filter(|bytes| *bytes > 0);
        return bytes.ok_or_else(|| text!("{text} is zero or beyond what can be counted", text = text));
    }
    let number: f64 = number.replace(',', ".").parse().map_err(|_| unreadable())?;
    let bytes = (number * scale as f64).round();
    if (1.0..1.8e19).contains(&bytes) { Ok(bytes as u64) } else { Err(unreadable()) }
}

fn unit_bytes(unit: &str) -> Option<u64> {
    Some(match unit.to_ascii_lowercase().as_str() {
        "" | "b" | "byte" | "bytes" => 1,
        "sector" | "sectors" => super::SECTOR_BYTES,
        "kb" => 1_000,
        "mb" => 1_000_000,
        "gb" => 1_000_000_000,
        "tb" => 1_000_000_000_000,
        "kib" => 1 << 10,
        "mib" => 1 << 20,
        "gib" => 1 << 30,
        "tib" => 1 << 40,
        _ => return None,
    })
}
