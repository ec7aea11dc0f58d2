//! A measured share, put on record with its finding.

use egui::Ui;

use crate::assess::reason::finding_name;
use crate::photo::measure::{Measured, seen_on};
use crate::record::{Change, FindingFile, Look, Moment, PartFile, Photo, PhotoMark, When};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::widgets::{press_ui, remark};

/// Shares nearer to each other than this are the same one.
const SAME: f64 = 0.005;

/// Offers to put a mark's share on record, or says that it is.
pub fn record_ui(
    ui: &mut Ui,
    view: &View<'_>,
    part: &PartFile,
    photo: &Photo,
    mark: &PhotoMark,
    measured: &Measured,
    outbox: &mut Outbox,
) {
    for since in measured.shares_of(mark.id) {
        let Some(finding) = since.share.finding.and_then(|id| part.finding(id)) else { continue };
        let share = since.share.grades.share_percent;
        let on = day(view, photo, finding);
        let is_same =
            |look: &&Look| look.looked.on == on && look.share_percent.is_some_and(|known| (known - share).abs() < SAME);
        if finding.looks.iter().any(|look| is_same(&look)) {
            ui.label(remark(ui, text!("This share is on record with the finding.")));
            continue;
        }
        let tooltip = text!("Writes a look at the finding, so that its grade stands on the part’s sheet");
        if press_ui(ui, text!("Record this share on the finding"), tooltip, None).clicked() {
            let name = finding_name(view.logbook, view.rules, part.part.id, finding.finding.id);
            let mut change =
                Change::new(text!("Record the share of {finding} on {tag}", finding = name, tag = part.part.tag));
            let look = finding.next_look(Store::new_id(), Moment { on, sequence: 0 }, finding.state());
            change.put(Look { share_percent: Some(share), ..look });
            outbox.change(change);
        }
    }
}

/// The day of the photograph; today where that is not known, or lies before the finding's last look.
fn day(view: &View<'_>, photo: &Photo, finding: &FindingFile) -> When {
    let seen = seen_on(photo);
    let last = finding.last().and_then(|look| look.looked.on.span()).map(|span| span.last);
    let is_later =
        seen.span().is_some_and(|seen| last.is_none_or(|last| seen.first >= last) && seen.last <= view.today);
    if is_later { seen } else { When::Day(view.today) }
}
