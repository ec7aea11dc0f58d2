//! Amounts of the logbook's money, kept in hundredths.

pub use crate::record::money_text;
use crate::text;

/// A typed amount, with or without the currency; `None` when nothing is typed.
///
/// # Errors
/// Says what an amount looks like; more than two decimals and more than ten digits are refused.
pub fn read_money(typed: &str, currency: &str) -> Result<Option<i64>, String> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let refuse = || text!("“{typed}” is no amount: write 12.50.", typed = typed);
    let bare = typed.trim_end_matches(currency).trim().replace(',', ".");
    let (whole, part) = bare.split_once('.').unwrap_or((bare.as_str(), ""));
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if whole.is_empty() || whole.len() > 10 || part.len() > 2 || !digits(whole) || !digits(part) {
        return Err(refuse());
    }
    let whole: i64 = whole.parse().map_err(|_| refuse())?;
    let part: i64 = format!("{part:0<2}").parse().map_err(|_| refuse())?;
    Ok(Some(whole * 100 + part))
}
