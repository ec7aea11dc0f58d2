//! What must hold within a mark on a photograph: points on the picture, as many as it needs, and its lengths.

use super::refusal::Refusal;
use crate::record::{MarkUse, PhotoMark, Word as _};
use crate::text;

/// Checks a mark by itself; figures in their bounds are checked with those of all records.
pub fn check(mark: &PhotoMark, at: impl Fn() -> String) -> Result<(), Refusal> {
    let wrong = |field: &str, value: String, bounds: &'static str| Refusal::Figure {
        at: at(),
        field: field.into(),
        value,
        bounds,
    };
    if let Some(share) = mark.points.iter().flatten().find(|share| !(0.0..=1.0).contains(*share)) {
        return Err(wrong("points", share.to_string(), "shares of the picture, 0 to 1"));
    }
    let (role, count) = (mark.role, mark.points.len());
    let (fewest, most) = role.points();
    if count < fewest || most.is_some_and(|most| count > most) {
        let wanted = most.map_or_else(|| text!("{count} or more", count = fewest), |most| most.to_string());
        return Err(Refusal::Points { at: at(), role, count, wanted });
    }
    if role == MarkUse::Scale && mark.points[0] == mark.points[1] {
        return Err(wrong("points", text!("twice the same").to_owned(), "two points apart from each other"));
    }
    if role == MarkUse::Rectangle && !mark.is_convex() {
        return Err(wrong("points", text!("crossing or in one line").to_owned(), "four corners, one after the other"));
    }
    let lengths = [
        ("length_mm", mark.length_mm, matches!(role, MarkUse::Scale | MarkUse::Rectangle)),
        ("breadth_mm", mark.breadth_mm, role == MarkUse::Rectangle),
    ];
    if let Some((field, _, _)) = lengths.iter().find(|(_, length, needed)| length.is_none() && *needed) {
        return Err(wrong(field, text!("not told").to_owned(), "above 0"));
    }
    let told = [mark.red, mark.green, mark.blue].iter().flatten().count();
    if told != 0 && (told != 3 || !role.is_patch()) {
        return Err(wrong("red, green, blue", role.label().to_owned(), "all three, of a patch whose colour is taken"));
    }
    Ok(())
}
