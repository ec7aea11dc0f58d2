//! A part alone on the bench: what is fed to it can only be right where somebody told what it takes or gives.

use crate::assess::PartAnswers;
use crate::assess::fit;
use crate::assess::reason::Reason;
use crate::record::{DesignFile, Figure, Kind, Word as _};

/// Amperes that a supply gives, at least one of which its label must have told.
const RATINGS: [Figure; 6] = [
    Figure::Rating3v3A,
    Figure::Rating5vA,
    Figure::Rating12vA,
    Figure::RatingMinus5vA,
    Figure::RatingMinus12vA,
    Figure::RatingStandbyA,
];

/// The figure that nobody has told and without which the part is not powered alone.
pub(super) fn untold_figure(part: &PartAnswers) -> Option<Reason> {
    let kind = part.file.part.kind;
    let tells = |figure: Figure| part.design.as_deref().is_some_and(|design| is_told(design, figure));
    let missing = match kind {
        Kind::PowerSupply => (!RATINGS.iter().any(|figure| tells(*figure))).then_some(Figure::Rating5vA),
        Kind::Processor | Kind::Coprocessor if !tells(Figure::CoreVoltageV) => Some(Figure::CoreVoltageV),
        kind if fit::draws_current(kind) => {
            let mut asked = fit::draw_figures().filter(|figure| Figure::asked_of(kind).contains(figure));
            if asked.any(tells) { None } else { Some(fit::draw_asked_of(kind)) }
        }
        _ => None,
    };
    missing.map(|figure| Reason::FigureUntold { part: part.part, figure })
}

fn is_told(design: &DesignFile, figure: Figure) -> bool {
    design.figures.iter().any(|row| row.figure == figure.name() && row.value.is_finite() && row.value >= 0.0)
}
