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

/// A divider of a board, and the bus clock in MHz that it belongs to; `None` for any.
pub type Divider = (f64, Option<f64>);

/// Typed dividers with semicolons between them, each with the bus clock it belongs to where it does to one: "2 at 66;
/// 3 at 100 MHz"; none when nothing is typed.
///
/// # Errors
/// Says what a figure looks like.
pub fn dividers(typed: &str) -> Result<Vec<Divider>, String> {
    let one = |typed: &str| -> Result<Option<Divider>, String> {
        let Some((divider, bus)) = typed.split_once('@').or_else(|| typed.split_once(text!(" at "))) else {
            return Ok(figure(typed)?.map(|divider| (divider, None)));
        };
        let bus_mhz = figure(bus.trim().trim_end_matches("MHz"))?;
        let (Some(divider), Some(bus_mhz)) = (figure(divider)?, bus_mhz.filter(|mhz| *mhz > 0.0)) else {
            return Err(text!("“{typed}” is no divider at a bus clock: write 3 at 100.", typed = typed.trim()));
        };
        Ok(Some((divider, Some(bus_mhz))))
    };
    typed.split(';').map(one).filter_map(Result::transpose).collect()
}
