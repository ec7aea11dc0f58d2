//! Figures as people type them.

use crate::text;

/// A typed figure with a point or a comma; `None` when nothing is typed.
///
/// # Errors
/// Says what a figure looks like.
pub fn figure(typed: &str) -> Result<Option<f64>, String> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let figure = typed.replace(',', ".").parse::<f64>().ok().filter(|figure| figure.is_finite());
    figure.map(Some).ok_or_else(|| text!("“{typed}” is no figure: write it in digits, as 4.93.", typed = typed))
}

/// Typed figures with semicolons between them, each with or without its unit; none when nothing is typed.
///
/// # Errors
/// Says what a figure looks like.
pub fn figures(typed: &str, unit: &str) -> Result<Vec<f64>, String> {
    let each = typed.split(';').map(|one| figure(one.trim().strip_suffix(unit).unwrap_or(one)));
    each.filter_map(Result::transpose).collect()
}

/// Typed dividers with semicolons between them, each perhaps with the bus clock in MHz that it belongs to: "2 @ 75; 3 @
/// 112 MHz".
///
/// # Errors
/// Says what a divider looks like.
pub fn dividers(typed: &str) -> Result<Vec<(f64, Option<f64>)>, String> {
    let one = |one: &str| {
        let one = one.to_lowercase();
        let (divider, bus) = one.split_once('@').or_else(|| one.split_once("at")).unwrap_or((&one, ""));
        let bus = bus.trim();
        let bus_mhz = figure(bus.strip_suffix("mhz").unwrap_or(bus))?;
        match figure(divider)? {
            None if bus_mhz.is_some() => Err(text!("“{typed}” is no divider: write it as 3 @ 112 MHz.", typed = one)),
            _ if bus_mhz.is_some_and(|mhz| mhz <= 0.0) => {
                Err(text!("“{typed}” cannot be: a bus clock is above 0.", typed = one))
            }
            divider => Ok(divider.map(|divider| (divider, bus_mhz))),
        }
    };
    typed.split(';').map(one).filter_map(Result::transpose).collect()
}
