//! A part's outstanding work in the order in which it can be done.

use std::sync::Arc;

use super::order::in_order;
use super::{Job, Task, calls, is_behind_a_cure};
use crate::assess::power::of_hold;
use crate::record::{Custody, FindingFile, FindingId, FindingState, Hold, PartFile, Work, WorkState};
use crate::rules::{Rules, WorkRule};

/// All that is to be done on a part, every piece after those that must be done before it; nothing for a part that
/// has left for good.
pub fn of_part(file: &PartFile, rules: &Rules) -> Vec<Task> {
    if matches!(file.custody_now(), Custody::GivenBack | Custody::Sold | Custody::Scrapped) {
        return Vec::new();
    }
    let works: Vec<&Work> = file.work.iter().collect();
    let mut tasks = Vec::new();
    for finding in &file.findings {
        add_called_for(&mut tasks, file, finding, &works, rules);
    }
    for work in &file.work {
        if let Some(listed) = listed(work, &mut tasks) {
            join(listed, work);
        } else if let Some(task) = by_hand(work, file, &tasks, rules) {
            tasks.push(task);
        }
    }
    // The tables stand in working order; work in the restorer's own words comes last, as it was added.
    let mut placed: Vec<(usize, Task)> = tasks.into_iter().map(|task| (place_of(&task, rules), task)).collect();
    placed.sort_by_key(|(place, _)| *place);
    in_order(placed, file, rules, file.custody_now().is_at_hand())
}

fn add_called_for(tasks: &mut Vec<Task>, file: &PartFile, finding: &FindingFile, works: &[&Work], rules: &Rules) {
    let kind = file.part.kind;
    let cured = finding.state() == FindingState::Cured;
    if !finding.state().calls_for_work() && !cured {
        return;
    }
    for call in calls(finding, kind, works, rules).filter(|call| !call.is_settled()) {
        if cured && !is_behind_a_cure(finding, call.rule, kind, rules) {
            continue;
        }
        let hold = call.rule.hold_at(finding.severity());
        let power = call.rule.power_at(finding.severity());
        let work = call.work.map(|work| work.id);
        let listed = tasks.iter_mut().find(|task| task.rule().is_some_and(|rule| Arc::ptr_eq(rule, call.rule)));
        let Some(task) = listed else {
            let task = new_task(file, Job::Rule(Arc::clone(call.rule)), hold, call.state, work, finding);
            tasks.push(Task { power, ..task });
            continue;
        };
        task.findings.push(finding.finding.id);
        task.hold = task.hold.min(hold);
        task.power = task.power.max(power);
        if progress(call.state) > progress(task.state) {
            // The finding whose record carries the work leads, so that the task keeps that record's key.
            let last = task.findings.len() - 1;
            task.findings.swap(0, last);
            task.state = call.state;
            task.work = work;
        }
    }
}

/// How far a state is on the way, to tell which of several records carries the task.
fn progress(state: WorkState) -> u8 {
    match state {
        WorkState::Doing => 3,
        WorkState::Waiting => 2,
        WorkState::Failed => 1,
        _ => 0,
    }
}

fn new_task(
    file: &PartFile,
    job: Job,
    hold: Hold,
    state: WorkState,
    work: Option<crate::record::WorkId>,
    finding: &FindingFile,
) -> Task {
    let findings = vec![finding.finding.id];
    Task {
        part: file.part.id,
        job,
        findings,
        work,
        state,
        hold,
        power: of_hold(hold),
        waits_for: Vec::new(),
        after_elsewhere: Vec::new(),
        elsewhere: Vec::new(),
        doable: false,
    }
}

/// The task of a record that no finding's rule asks for: added by hand, or begun before the rules were changed.
fn by_hand(work: &Work, file: &PartFile, tasks: &[Task], rules: &Rules) -> Option<Task> {
    if !work.state.is_outstanding() && work.state != WorkState::Failed {
        return None;
    }
    let rule: Option<&Arc<WorkRule>> = rules.work(&work.rule);
    if let Some(finding) = work.finding.filter(|_| !work.rule.is_empty()) {
        let finding = file.finding(finding).filter(|file| file.state().calls_for_work());
        let is_listed = |task: &Task| task.rule().is_some_and(|rule| rule.name == work.rule);
        // Called for while the finding was worse, and never begun.
        let is_past = |finding: &FindingFile| {
            work.state == WorkState::Open
                && rule.is_none_or(|rule| rule.from_severity.is_some_and(|least| finding.severity() < least))
        };
        if finding.is_none_or(is_past) || tasks.iter().any(is_listed) {
            return None;
        }
    }
    let own_words = || {
        let title = if work.title.is_empty() { work.rule.as_str() } else { &work.title };
        Job::Own { title: title.into(), nature: work.nature }
    };
    Some(Task {
        part: file.part.id,
        job: rule.map_or_else(own_words, |rule| Job::Rule(Arc::clone(rule))),
        findings: work.finding.into_iter().collect(),
        work: Some(work.id),
        state: work.state,
        hold: rule.map_or(work.hold, |rule| rule.hold),
        power: rule.map_or_else(|| of_hold(work.hold), |rule| rule.power),
        waits_for: Vec::new(),
        after_elsewhere: Vec::new(),
        elsewhere: Vec::new(),
        doable: false,
    })
}

/// The task that a record by hand asks for too: the same work, called for by a finding or added before.
fn listed<'a>(work: &Work, tasks: &'a mut [Task]) -> Option<&'a mut Task> {
    let by_hand = work.finding.is_none() && !work.rule.is_empty() && work.state.is_outstanding();
    tasks.iter_mut().find(|task| by_hand && task.rule().is_some_and(|rule| rule.name == work.rule))
}

/// Lets a task stand as far as a record by hand of the same work has come.
fn join(task: &mut Task, work: &Work) {
    if progress(work.state) > progress(task.state) {
        task.state = work.state;
    }
    task.work = task.work.or(Some(work.id));
}

fn place_of(task: &Task, rules: &Rules) -> usize {
    task.rule().map_or(usize::MAX, |rule| rules.place_of(&rule.name))
}

/// Open findings that no rule calls for work on and for which nobody has decided any.
pub fn undecided(file: &PartFile, rules: &Rules) -> Vec<FindingId> {
    let open = file.findings.iter().filter(|finding| finding.state().calls_for_work());
    open.filter(|finding| {
        let by_rule = rules.work_for(&finding.finding.what, file.part.kind, finding.severity()).next();
        by_rule.is_none() && file.work.iter().all(|work| work.finding != Some(finding.finding.id))
    })
    .map(|finding| finding.finding.id)
    .collect()
}
