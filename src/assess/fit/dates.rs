//! Dates: how each part's making stands to the machine's window.

use super::because::Because;
use super::model::Piece;
use crate::assess::making::TrueTo;
use crate::record::Originality;
use crate::trade::Span;

pub(super) fn judge(pieces: &[Piece], window: Option<Span>) -> Vec<Because> {
    let Some(window) = window else { return Vec::new() };
    let told = pieces.iter().filter_map(|piece| {
        let true_to = piece.answers.making.true_to(window);
        (true_to != TrueTo::Comfortable).then_some(Because::Dates {
            part: piece.part(),
            true_to,
            // What is openly a modern part is not meant to be of the window.
            is_modern: piece.answers.file.part.originality == Originality::ModernReplacement,
        })
    });
    let mut because: Vec<Because> = told.collect();
    if because.is_empty() && !pieces.is_empty() {
        because.push(Because::InWindow { parts: pieces.len() });
    }
    because
}
