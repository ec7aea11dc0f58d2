//! What one finding calls for, and how far each piece of that work has come.

use std::sync::Arc;

use crate::assess::findings::is_worse;
use crate::record::{FindingFile, FindingState, Kind, Look, Moment, Work, WorkState};
use crate::rules::{Rules, WorkRule};

/// One piece of work that a finding calls for.
pub(in crate::assess) struct Call<'a> {
    pub rule: &'a Arc<WorkRule>,
    /// The record that carries it, where there is one.
    pub work: Option<&'a Work>,
    /// How far it has come; done or waived only where that was after the finding was last found anew.
    pub state: WorkState,
}

impl Call<'_> {
    /// Whether nothing is left to do, because it was done or waived.
    pub fn is_settled(&self) -> bool {
        matches!(self.state, WorkState::Done | WorkState::Waived)
    }
}

/// Since when a finding calls for work: when it was opened, came back or was last found worse. Work done or waived
/// before then says nothing about it.
pub(in crate::assess) fn called_since(file: &FindingFile) -> Moment {
    let mut since = Moment::default();
    let mut before: Option<&Look> = None;
    for look in &file.looks {
        let ran_on = before.is_some_and(|look| look.state.calls_for_work() || look.state == FindingState::Watched);
        let worse = before.is_some_and(|before| is_worse(look.severity, look.share_percent, before));
        if look.state.calls_for_work() && (!ran_on || worse) {
            since = look.looked;
        }
        before = Some(look);
    }
    since
}

/// The work that a finding calls for on a part of this kind, in working order; `works` are the part's records.
pub(in crate::assess) fn calls<'a>(
    file: &'a FindingFile,
    kind: Kind,
    works: &'a [&'a Work],
    rules: &'a Rules,
) -> impl Iterator<Item = Call<'a>> {
    let since = called_since(file);
    let id = file.finding.id;
    rules.work_for(&file.finding.what, kind, file.severity()).map(move |rule| {
        let still_holds = |work: &Work| !since.is_after(work.changed);
        let own = works.iter().copied().find(|work| work.finding == Some(id) && work.rule == rule.name);
        // Done once for another finding of the part, it is done for this one too: a cell is cut out once.
        let elsewhere = || {
            let done = |work: &&Work| work.state == WorkState::Done && work.rule == rule.name && still_holds(work);
            works.iter().copied().find(done)
        };
        match own {
            Some(work) if work.state.is_outstanding() => elsewhere().filter(|_| work.state == WorkState::Open).map_or(
                Call { rule, work: Some(work), state: work.state },
                |done| Call { rule, work: Some(done), state: WorkState::Done },
            ),
            Some(work) if still_holds(work) => Call { rule, work: Some(work), state: work.state },
            Some(work) => Call { rule, work: Some(work), state: WorkState::Open },
            None => elsewhere().map_or(Call { rule, work: None, state: WorkState::Open }, |work| Call {
                rule,
                work: Some(work),
                state: WorkState::Done,
            }),
        }
    })
}

/// Whether a piece that cures nothing (an inspection) comes after one that does: it is still due once the finding
/// is cured, while a piece that only prepares the cure is not.
pub(in crate::assess) fn is_behind_a_cure(file: &FindingFile, rule: &WorkRule, kind: Kind, rules: &Rules) -> bool {
    let mut curing = rules.work_for(&file.finding.what, kind, file.severity()).filter(|work| work.cures);
    !rule.cures && curing.any(|cure| rules.is_before(&cure.name, &rule.name))
}
