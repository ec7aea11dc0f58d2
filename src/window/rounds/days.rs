//! Spans of days as text.

use crate::text;
use crate::trade::Span;

/// A span to the day: "1996-06-03", "1996-06-03 to 1996-06-23".
pub fn days_text(span: Span) -> String {
    if span.first == span.last {
        span.first.to_string()
    } else {
        text!("{first} to {last}", first = span.first, last = span.last)
    }
}
