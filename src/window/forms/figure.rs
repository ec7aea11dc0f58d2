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
