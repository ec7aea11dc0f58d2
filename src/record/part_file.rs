//! A part with all that hangs on it: replaced whole when anything of it changes, shared otherwise.

use super::{
    Attachment, CapacitorFile, Custody, CustodyEvent, FaultCaseFile, FindingFile, FindingId, Marking, Part, PhotoFile,
    Proof, Reading, Setting, Survey, SurveyId, Valuation, Work,
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

    fn is_superseded(&self, survey: SurveyId) -> bool {
        self.surveys.iter().any(|new| new.supersedes == Some(survey))
    }

    /// The finding of a key.
    pub fn finding(&self, id: FindingId) -> Option<&FindingFile> {
        self.findings.iter().find(|file| file.finding.id == id)
    }
}
