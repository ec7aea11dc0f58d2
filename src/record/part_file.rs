//! A part with all that hangs on it: replaced whole when anything of it changes, shared otherwise.

use chrono::NaiveDate;

use super::{
    Attachment, CapacitorFile, Custody, CustodyEvent, Entry, FaultCaseFile, FindingFile, FindingId, Marking,
    MaterialUse, Part, PhotoFile, Proof, Reading, Setting, Survey, SurveyId, Valuation, Work, WorkAfter,
};

/// A part with all that hangs on it. Lists stand in the order of their moments, oldest first.
#[derive(Clone, Debug, PartialEq)]
pub struct PartFile {
    pub part: Part,
    pub markings: Vec<Marking>,
    pub surveys: Vec<Survey>,
    pub findings: Vec<FindingFile>,
    pub capacitors: Vec<CapacitorFile>,
    pub readings: Vec<Reading>,
    pub settings: Vec<Setting>,
    pub work: Vec<Work>,
    /// Orders by hand of its work, in the order of their keys.
    pub work_after: Vec<WorkAfter>,
    /// What its work used, in the order of their keys.
    pub uses: Vec<MaterialUse>,
    pub proofs: Vec<Proof>,
    pub cases: Vec<FaultCaseFile>,
    pub custody: Vec<CustodyEvent>,
    pub valuations: Vec<Valuation>,
    pub photos: Vec<PhotoFile>,
    pub attachments: Vec<Attachment>,
}

impl PartFile {
    /// A part that nothing has been said about yet.
    pub fn new(part: Part) -> Self {
        Self {
            part,
            markings: Vec::new(),
            surveys: Vec::new(),
            findings: Vec::new(),
            capacitors: Vec::new(),
            readings: Vec::new(),
            settings: Vec::new(),
            work: Vec::new(),
            work_after: Vec::new(),
            uses: Vec::new(),
            proofs: Vec::new(),
            cases: Vec::new(),
            custody: Vec::new(),
            valuations: Vec::new(),
            photos: Vec::new(),
            attachments: Vec::new(),
        }
    }

    /// Whose it is and who has it now, from its custody events; an impossible event changes nothing.
    pub fn custody_now(&self) -> Custody {
        self.custody.iter().fold(Custody::Mine, |custody, event| custody.after(event.act).unwrap_or(custody))
    }

    /// Markings that no later reading supersedes.
    pub fn markings_now(&self) -> impl Iterator<Item = &Marking> {
        self.markings.iter().filter(|old| self.markings.iter().all(|new| new.supersedes != Some(old.id)))
    }

    /// Surveys that no correction supersedes, oldest first.
    pub fn surveys_now(&self) -> impl DoubleEndedIterator<Item = &Survey> {
        self.surveys.iter().filter(|old| !self.is_superseded(old.id))
    }

    /// The same without those dated after a day.
    pub fn surveys_until(&self, today: NaiveDate) -> impl DoubleEndedIterator<Item = &Survey> {
        self.surveys_now().filter(move |survey| survey.looked.on.span().is_none_or(|span| span.first <= today))
    }

    fn is_superseded(&self, survey: SurveyId) -> bool {
        self.surveys.iter().any(|new| new.supersedes == Some(survey))
    }

    /// Puts records where they belong, as when they are written.
    pub fn hang_all(&mut self, entries: &[Entry]) {
        entries.iter().cloned().for_each(|entry| self.hang(entry));
    }

    /// Puts a record where it belongs, after those that are there; one of another thing is passed over.
    pub fn hang(&mut self, entry: Entry) {
        match entry {
            Entry::Part(part) => self.part = part,
            Entry::Marking(marking) => self.markings.push(marking),
            Entry::Survey(survey) => self.surveys.push(survey),
            Entry::Finding(finding) => self.findings.push(FindingFile { finding, looks: Vec::new() }),
            Entry::Look(look) => {
                if let Some(of) = self.findings.iter_mut().find(|of| of.finding.id == look.finding) {
                    of.looks.push(look);
                }
            }
            Entry::Capacitor(position) => self.capacitors.push(CapacitorFile { position, looks: Vec::new() }),
            Entry::CapacitorLook(look) => {
                if let Some(of) = self.capacitors.iter_mut().find(|of| of.position.id == look.capacitor) {
                    of.looks.push(look);
                }
            }
            Entry::Reading(reading) => self.readings.push(reading),
            Entry::Setting(setting) => self.settings.push(setting),
            Entry::Work(work) => match self.work.iter_mut().find(|known| known.id == work.id) {
                Some(known) => *known = work,
                None => self.work.push(work),
            },
            Entry::WorkAfter(order) => self.work_after.push(order),
            Entry::MaterialUse(used) => self.uses.push(used),
            Entry::Proof(proof) => self.proofs.push(proof),
            Entry::FaultCase(case) => self.cases.push(FaultCaseFile { case, trials: Vec::new() }),
            Entry::Trial(trial) => {
                if let Some(of) = self.cases.iter_mut().find(|of| of.case.id == trial.case) {
                    of.trials.push(trial);
                }
            }
            Entry::CustodyEvent(event) => self.custody.push(event),
            Entry::Valuation(valuation) => self.valuations.push(valuation),
            Entry::Photo(photo) => self.photos.push(PhotoFile { photo, marks: Vec::new() }),
            Entry::PhotoMark(mark) => {
                if let Some(of) = self.photos.iter_mut().find(|of| of.photo.id == mark.photo) {
                    of.marks.push(mark);
                }
            }
            Entry::Attachment(attachment) => self.attachments.push(attachment),
            _ => {}
        }
    }

    /// The finding of a key.
    pub fn finding(&self, id: FindingId) -> Option<&FindingFile> {
        // As they are read, findings stand in the order of their keys; what is hung on later comes after, as it comes.
        let at = self.findings.binary_search_by_key(&id, |file| file.finding.id).ok();
        at.map(|at| &self.findings[at]).or_else(|| self.findings.iter().find(|file| file.finding.id == id))
    }
}
