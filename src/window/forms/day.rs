//! The day on which something was done: a day, a month or a year, as it is remembered.

use crate::record::{NoDate, When};
use crate::text;
use crate::window::outbox::View;

/// A typed date on which something has happened; nothing typed is a day that nobody remembers.
///
/// # Errors
/// Says what a date looks like, or that the day has not come yet.
pub fn past_date(typed: &str, view: &View<'_>) -> Result<When, String> {
    let on: When = typed.parse().map_err(|error: NoDate| error.to_string())?;
    if on.span().is_some_and(|span| span.first > view.today) {
        return Err(text!("{day} has not come yet.", day = on));
    }
    Ok(on)
}
