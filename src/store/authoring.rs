//! Writing a part's life from its tables: what a person would do desk by desk, with findings and work that follow.

use uuid::Uuid;

use crate::assess::findings::{after_capacitors, after_survey, after_work};
use crate::assess::outstanding;
use crate::record::{
    Entry, FindingId, Hold, Id, Nature, Part, PartFile, Proof, ProofResult, Survey, When, Work, WorkState,
};
use crate::rules::{Question, Rules};

/// Where keys come from.
pub type Ids<'a> = dyn FnMut() -> Uuid + 'a;

/// A part that is being written: its records in their order, and the part as they leave it.
pub struct PartAuthor<'a> {
    rules: &'a Rules,
    pub file: PartFile,
    entries: Vec<Entry>,
    sequence: u32,
}

/// Work as it was done.
#[derive(Clone, Debug)]
pub struct Deed<'a> {
    pub rule: &'a str,
    pub state: WorkState,
    pub on: When,
    pub who: &'a str,
    pub minutes: Option<u32>,
    pub used: &'a str,
    pub reason: &'a str,
    pub note: &'a str,
}

/// A key of a record.
pub fn key<T>(ids: &mut Ids) -> Id<T> {
    Id::from_uuid(ids())
}

/// A moment that the store is still to number.
pub fn moment(on: When) -> crate::record::Moment {
    crate::record::Moment { on, sequence: 0 }
}

impl<'a> PartAuthor<'a> {
    /// Logs a part.
    pub fn new(part: Part, rules: &'a Rules) -> Self {
        let entries = vec![Entry::from(part.clone())];
        Self { rules, file: PartFile::new(part), entries, sequence: 0 }
    }

    /// The rules it is written by.
    pub fn rules(&self) -> &'a Rules {
        self.rules
    }

    /// What a survey asks the part's kind.
    pub fn questions(&self) -> &'a [std::sync::Arc<Question>] {
        self.rules.questions_for(self.file.part.kind)
    }

    /// The records written so far, in their order.
    pub fn into_entries(self) -> Vec<Entry> {
        self.entries
    }

    /// Writes a record that hangs on the part. Its moment is numbered here only for the part as it stands; the store
    /// numbers it anew.
    pub fn put(&mut self, entry: impl Into<Entry>) {
        let mut entry = entry.into();
        self.entries.push(entry.clone());
        for moment in entry.moments_mut() {
            self.sequence += 1;
            moment.sequence = self.sequence;
        }
        self.file.hang(entry);
    }

    /// Writes several such records.
    pub fn put_all(&mut self, entries: impl IntoIterator<Item = Entry>) {
        for entry in entries {
            self.put(entry);
        }
    }

    /// Looks the part over: the survey, and the findings that it brings.
    pub fn survey(&mut self, survey: Survey, ids: &mut Ids) {
        self.put(survey.clone());
        let brought = after_survey(&self.file, &survey, self.rules, &mut || ids());
        self.put_all(brought);
    }

    /// Draws the findings out of the capacitor positions as they stand now.
    pub fn capacitors(&mut self, on: When, ids: &mut Ids) {
        let brought = after_capacitors(&self.file, self.rules, moment(on), &mut || ids());
        self.put_all(brought);
    }

    /// Does, begins, waives or fails the outstanding work of a rule; `false` when there is none of it.
    pub fn work(&mut self, deed: &Deed, ids: &mut Ids) -> bool {
        let tasks = outstanding::of_part(&self.file, self.rules);
        let Some(task) = tasks.iter().find(|task| task.rule().is_some_and(|rule| rule.name == deed.rule)) else {
            return false;
        };
        let known = task.work.and_then(|id| self.file.work.iter().find(|work| work.id == id)).cloned();
        let finding = task.findings.first().copied();
        let hold = task.hold;
        let mut work = known.unwrap_or_else(|| self.blank_work(finding, deed.rule, hold, ids));
        work.state = deed.state;
        work.changed = moment(deed.on);
        deed.who.clone_into(&mut work.who);
        work.minutes = deed.minutes;
        deed.used.clone_into(&mut work.used);
        deed.reason.clone_into(&mut work.reason);
        deed.note.clone_into(&mut work.note);
        self.put(work.clone());
        let brought = after_work(&self.file, &work, self.rules, &mut || ids());
        self.put_all(brought);
        true
    }

    fn blank_work(&self, finding: Option<FindingId>, rule: &str, hold: Hold, ids: &mut Ids) -> Work {
        Work {
            id: key(ids),
            part: self.file.part.id,
            finding,
            rule: rule.to_owned(),
            title: String::new(),
            hold,
            nature: self.rules.work(rule).map_or(Nature::Care, |rule| rule.nature),
            state: WorkState::Open,
            changed: moment(When::Unknown),
            who: String::new(),
            minutes: None,
            used: String::new(),
            reason: String::new(),
            reversible: None,
            note: String::new(),
            touches: crate::record::Touches::Unstated,
        }
    }

    /// Runs every test that the part's kind has to pass, with the rules' own rig, minutes and criterion.
    pub fn pass_all_proofs(&mut self, on: When, who: &str, ids: &mut Ids) {
        let rules = self.rules;
        for rule in rules.proofs_for(self.file.part.kind).iter().filter(|rule| rule.required) {
            self.put(Proof {
                id: key(ids),
                part: Some(self.file.part.id),
                machine: None,
                test: rule.name.clone(),
                run: moment(on),
                rig: rule.rig.clone(),
                minutes: Some(rule.minutes),
                criterion: rule.criterion.clone(),
                result: ProofResult::Passed,
                who: who.to_owned(),
                note: String::new(),
            });
        }
    }
}
