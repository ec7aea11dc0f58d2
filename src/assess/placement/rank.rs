//! How good a part is among its like: by the one figure that a kind is told by, among parts of the same years.

use std::cell::RefCell;
use std::collections::HashMap;
use std::sync::Arc;

use crate::assess::making::TrueTo;
use crate::assess::{Answers, PartAnswers};
use crate::record::{Figure, Kind, Word as _};
use crate::trade::Span;

/// The figure that a kind is told by; common practice, no source.
fn told_by(kind: Kind) -> Option<Figure> {
    Some(match kind {
        Kind::Processor => Figure::CoreClockMhz,
        Kind::MemoryModule => Figure::MemoryMb,
        Kind::VideoCard => Figure::MemoryKb,
        Kind::HardDisk => Figure::CapacityMb,
        Kind::OpticalDrive => Figure::SpeedX,
        _ => return None,
    })
}

/// Figures of a kind, of parts true to a window, ascending.
type Like = HashMap<(Kind, Option<Span>), Vec<f64>>;

/// Parts with the figure of their kind.
pub struct Ranks {
    /// By kind: the figure, and what is known of its making.
    known: HashMap<Kind, Vec<(f64, Arc<PartAnswers>)>>,
    of_window: RefCell<Like>,
}

/// A part's figure; of a processor without a core clock as sold, its bus clock by its multiplier.
fn figure(answers: &PartAnswers) -> Option<f64> {
    let design = answers.design.as_ref()?;
    let value = |figure: Figure| {
        design.figures.iter().find(|row| row.figure == figure.name()).map(|row| row.value).filter(|value| *value > 0.0)
    };
    let figure = told_by(answers.file.part.kind)?;
    let made =
        || (figure == Figure::CoreClockMhz).then(|| Some(value(Figure::BusClockMhz)? * value(Figure::Multiplier)?));
    value(figure).or_else(|| made().flatten())
}

impl Ranks {
    pub fn of(answers: &Answers) -> Self {
        let mut known: HashMap<Kind, Vec<(f64, Arc<PartAnswers>)>> = HashMap::new();
        for part in &answers.parts {
            if let Some(value) = figure(part).filter(|_| part.file.custody_now().is_at_hand()) {
                known.entry(part.file.part.kind).or_default().push((value, Arc::clone(part)));
            }
        }
        Self { known, of_window: RefCell::default() }
    }

    /// How many in a hundred of its like a part is better than, among those true to the window; as good ones count
    /// half. `None` where nothing is known to tell it by, or it has no like.
    pub fn rank(&self, answers: &PartAnswers, window: Option<Span>) -> Option<u32> {
        let own = figure(answers)?;
        let kind = answers.file.part.kind;
        let mut of_window = self.of_window.borrow_mut();
        let like = of_window.entry((kind, window)).or_insert_with(|| {
            let is_of = |part: &PartAnswers| {
                window.is_none_or(|window| {
                    matches!(part.making.true_to(window), TrueTo::Comfortable | TrueTo::ByDesign { .. })
                })
            };
            let all = self.known.get(&kind).into_iter().flatten();
            let mut like: Vec<f64> = all.filter(|(_, part)| is_of(part)).map(|(value, _)| *value).collect();
            like.sort_unstable_by(f64::total_cmp);
            like
        });
        if like.len() < 2 {
            return None;
        }
        let below = like.partition_point(|value| *value < own);
        let not_above = like.partition_point(|value| *value <= own);
        Some((50 * (below + not_above) / like.len()) as u32)
    }
}
