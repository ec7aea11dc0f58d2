//! Outstanding work: what open findings call for by rule, and what was added by hand, less what is done or waived.

mod call;
mod elsewhere;
mod list;
mod order;
mod record;
mod shown;
mod stock;
mod totals;

use std::sync::{Arc, LazyLock};

pub(super) use call::{Call, called_since, calls, is_behind_a_cure};
pub use elsewhere::TaskPlace;
pub(super) use elsewhere::settle;
pub use list::{of_part, undecided};
pub use record::{blank_work, record_of};
pub use shown::{Shown, shown};
pub use stock::Stock;
pub use totals::{MaterialNeed, Totals, hours_text, materials};

use crate::record::{Competence, FindingId, Hold, Nature, PartId, Work, WorkId, WorkState};
use crate::rules::{Cautions, PowerEffect, WorkRule};

/// What a task is, so that a desk can keep hold of it over revisions.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TaskKey {
    /// Work that follows from a finding by the rule of this name.
    Rule { finding: FindingId, rule: String },
    /// Work that was added by hand.
    Hand(WorkId),
}

/// What is to be done.
#[derive(Clone, Debug)]
pub enum Job {
    /// A piece of work from the tables.
    Rule(Arc<WorkRule>),
    /// Work in the restorer's own words.
    Own { title: Arc<str>, nature: Nature },
}

impl Job {
    /// What to do, in the reader's language.
    pub fn title(&self) -> &str {
        match self {
            Self::Rule(rule) => crate::text::say(&rule.say),
            Self::Own { title, .. } => title,
        }
    }

    /// The row of the tables, for work that has one.
    pub fn rule(&self) -> Option<&Arc<WorkRule>> {
        match self {
            Self::Rule(rule) => Some(rule),
            Self::Own { .. } => None,
        }
    }
}

/// One piece of outstanding work on one part. The same work called for by several findings is one task.
#[derive(Clone, Debug)]
pub struct Task {
    pub part: PartId,
    pub job: Job,
    /// The findings that it serves; empty for work added by hand without one.
    pub findings: Vec<FindingId>,
    /// The record that carries it already (begun, remarked on, done before its finding returned); to be reused.
    pub work: Option<WorkId>,
    /// Open, waiting, doing, or failed and not yet taken up again.
    pub state: WorkState,
    /// What it holds up: the strictest that its findings ask for.
    pub hold: Hold,
    /// What its table row does to the answer on power; see [`Task::power_effect`].
    pub power: PowerEffect,
    /// Places in the part's list of the tasks that must be done first.
    pub waits_for: Vec<u16>,
    /// Work on other parts that it comes after by hand, done or not.
    pub after_elsewhere: Vec<WorkId>,
    /// What of that is still outstanding.
    pub elsewhere: Vec<TaskPlace>,
    /// Whether it can be started now: nothing to be done first, no material missing, the part at hand.
    pub doable: bool,
}

impl Task {
    /// What it is, to keep hold of it.
    pub fn key(&self) -> TaskKey {
        match (&self.job, self.findings.first(), self.work) {
            (Job::Rule(rule), Some(finding), _) => TaskKey::Rule { finding: *finding, rule: rule.name.clone() },
            (_, _, Some(work)) => TaskKey::Hand(work),
            // Work without finding or record does not arise.
            (job, finding, None) => TaskKey::Rule {
                finding: finding.copied().unwrap_or_else(|| FindingId::from_uuid(uuid::Uuid::nil())),
                rule: job.title().to_owned(),
            },
        }
    }

    pub fn rule(&self) -> Option<&Arc<WorkRule>> {
        self.job.rule()
    }

    /// Whether this record carries it: its own, or one of the same rule for one of its findings or for none.
    pub fn is_carried_by(&self, work: &Work) -> bool {
        let is_its = |finding: FindingId| self.findings.contains(&finding);
        self.work == Some(work.id)
            || (work.finding.is_none_or(is_its) && self.rule().is_some_and(|rule| rule.name == work.rule))
    }

    /// Settles what it waits for on other parts, and whether it can be started now.
    pub(super) fn settle(&mut self, elsewhere: Vec<TaskPlace>, at_hand: bool) {
        let is_free = self.waits_for.is_empty() && elsewhere.is_empty();
        self.doable = is_free && at_hand && self.state != WorkState::Waiting;
        self.elsewhere = elsewhere;
    }

    /// What to do.
    pub fn title(&self) -> &str {
        self.job.title()
    }

    /// How, in a sentence or two; may be empty.
    pub fn how(&self) -> &str {
        self.rule().map_or("", |rule| crate::text::say(&rule.how))
    }

    /// Hands-on minutes it usually takes; 0 when nobody said.
    pub fn minutes(&self) -> u32 {
        self.rule().map_or(0, |rule| rule.minutes)
    }

    /// Hours of drying, curing or running that need nobody.
    pub fn wait_hours(&self) -> u32 {
        self.rule().map_or(0, |rule| rule.wait_hours)
    }

    pub fn materials(&self) -> &[String] {
        self.rule().map_or(&[], |rule| &rule.materials)
    }

    pub fn tools(&self) -> &[String] {
        self.rule().map_or(&[], |rule| &rule.tools)
    }

    /// What to beware of; nothing for work in the restorer's own words.
    pub fn cautions(&self) -> &Cautions {
        static NONE: LazyLock<Cautions> = LazyLock::new(Cautions::default);
        self.rule().map_or(&NONE, |rule| &rule.cautions)
    }

    /// Proofs that count no longer once it is done, by name.
    pub fn voids(&self) -> &[String] {
        self.rule().map_or(&[], |rule| &rule.voids)
    }

    /// Proofs that show it done, by name.
    pub fn proven_by(&self) -> &[String] {
        self.rule().map_or(&[], |rule| &rule.proven_by)
    }

    /// Who may do it.
    pub fn who(&self) -> Competence {
        self.rule().map_or(Competence::Oneself, |rule| rule.who)
    }

    pub fn nature(&self) -> Nature {
        match &self.job {
            Job::Rule(rule) => rule.nature,
            Job::Own { nature, .. } => *nature,
        }
    }

    /// The set-up it wants, by name; empty for work in the restorer's own words.
    pub fn sitting(&self) -> &str {
        self.rule().map_or("", |rule| &rule.sitting)
    }

    /// Whether it was begun and is not finished.
    pub fn is_under_way(&self) -> bool {
        self.state == WorkState::Doing
    }

    /// What it does to the answer on power: its row's effect, *no* while the part is opened up in the middle of work
    /// that changes it; what was begun or failed is always to be known.
    pub fn power_effect(&self) -> PowerEffect {
        match self.state {
            WorkState::Doing if self.nature() != Nature::Care => PowerEffect::No,
            // What came of it nobody knows.
            WorkState::Failed if self.rule().is_none() => self.power.max(PowerEffect::NotKnown),
            WorkState::Doing | WorkState::Failed => self.power.max(PowerEffect::Remark),
            _ => self.power,
        }
    }
}
