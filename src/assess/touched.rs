//! What work in the restorer's own words touched: which pieces do not say so, and the change that says it.

use crate::record::{Change, Custody, Logbook, PartFile, Touches, Work};
use crate::text;

/// A piece of work on a part.
#[derive(Clone, Copy, Debug)]
pub struct Piece<'a> {
    pub file: &'a PartFile,
    pub work: &'a Work,
}

/// Work on a part in the restorer's own words, in the order it was written down in.
pub fn own_work(file: &PartFile) -> Vec<&Work> {
    let mut own: Vec<&Work> = file.work.iter().filter(|work| work.is_own()).collect();
    own.sort_by_key(|work| work.id);
    own
}

/// Whether somebody has to say what it touched.
pub fn is_unstated(work: &Work) -> bool {
    work.is_own() && work.state.has_touched() && work.touches == Touches::Unstated
}

/// Every piece that does not say what it touched, by tag and day. Parts that have left for good are not asked about.
pub fn unstated(logbook: &Logbook) -> Vec<Piece<'_>> {
    let has_left =
        |file: &PartFile| matches!(file.custody_now(), Custody::GivenBack | Custody::Sold | Custody::Scrapped);
    let files = logbook.parts.iter().map(|file| &**file);
    let pieces = files.flat_map(|file| file.work.iter().map(move |work| Piece { file, work }));
    let mut pieces: Vec<Piece<'_>> = pieces.filter(|piece| is_unstated(piece.work)).collect();
    pieces.retain(|piece| !has_left(piece.file));
    pieces.sort_by(|one, other| {
        let order = |piece: &Piece<'_>| (piece.work.changed.order(), piece.work.id);
        one.file.part.tag.cmp(&other.file.part.tag).then_with(|| order(one).cmp(&order(other)))
    });
    pieces
}

/// Says what a piece touched.
pub fn state(piece: Piece<'_>, touches: Touches) -> Change {
    let Piece { file, work } = piece;
    let (tag, title) = (&file.part.tag, &work.title);
    let mut change = Change::new(match touches {
        Touches::Electrical => text!("Something electrical on {tag}: {work}", tag = tag, work = title),
        Touches::NothingElectrical => text!("Nothing electrical on {tag}: {work}", tag = tag, work = title),
        Touches::Unstated => text!("Not stated what it touched on {tag}: {work}", tag = tag, work = title),
    });
    if work.touches != touches {
        change.put(Work { touches, ..work.clone() });
    }
    change
}

/// What it touched, going on from the work.
pub fn said(touches: Touches) -> &'static str {
    match touches {
        Touches::Electrical => text!("touches something electrical"),
        Touches::NothingElectrical => text!("touches nothing electrical"),
        Touches::Unstated => text!("what it touches is not stated"),
    }
}
