//! Names in records that no table holds: of questions, answers, findings, tests, work, connectors, figures, schemes.
//!
//! What such a record means nobody knows: it raises nothing, calls for nothing and holds nothing up. So it is told.

use serde::Deserialize as _;
use serde::de::value::{Error, StrDeserializer};

use crate::record::{
    DesignConnector, DesignFigure, DesignFile, DesignId, Entry, Figure, Finding, Given, Logbook, MachineFile,
    MachineId, Marking, PartFile, PartId, Proof, Survey, Word as _, Work,
};
use crate::rules::{Rules, find_question};
use crate::trade::date_code::Scheme;

crate::words! {
    /// What a name is the name of.
    NameKind {
        Question = "question", "Question";
        /// Told as “question/answer”.
        Answer = "answer", "Answer";
        Finding = "finding", "Finding";
        Test = "test", "Test";
        Work = "work", "Work";
        Connector = "connector", "Connector";
        Figure = "figure", "Specification";
        Scheme = "scheme", "Date scheme";
    }
}

/// What a name was said of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Owner {
    Part(PartId),
    Design(DesignId),
    Machine(MachineId),
}

/// A name that no table holds.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct UnknownName {
    pub owner: Owner,
    pub kind: NameKind,
    pub name: String,
}

impl UnknownName {
    /// The known name that it comes nearest to, where one is near enough for a slip of the pen.
    pub fn nearest(&self, rules: &Rules) -> Option<String> {
        let (before, name) = match (self.kind, self.name.split_once('/')) {
            (NameKind::Answer, Some((question, answer))) => (Some(question), answer),
            _ => (None, self.name.as_str()),
        };
        let most = (name.chars().count() / 4).max(1);
        let known: Vec<String> = match before {
            Some(question) => rules.question(question)?.answers.iter().map(|row| row.name.to_string()).collect(),
            None => known(self.kind, rules),
        };
        let near = known.into_iter().map(|known| (slips(name, &known), known)).filter(|(slips, _)| *slips <= most);
        let (_, nearest) = near.min()?;
        Some(before.map_or(nearest.clone(), |question| format!("{question}/{nearest}")))
    }
}

/// All names of a kind; of answers none, since they belong to their questions.
fn known(kind: NameKind, rules: &Rules) -> Vec<String> {
    match kind {
        NameKind::Answer => Vec::new(),
        NameKind::Question => rules.questions.iter().map(|row| row.name.to_string()).collect(),
        NameKind::Finding => rules.findings.iter().map(|row| row.name.clone()).collect(),
        NameKind::Test => rules.proofs.iter().map(|row| row.name.clone()).collect(),
        NameKind::Work => rules.work.iter().map(|row| row.name.clone()).collect(),
        NameKind::Connector => rules.connectors.all().map(|row| row.id.clone()).collect(),
        NameKind::Figure => Figure::ALL.iter().map(|figure| figure.name().to_owned()).collect(),
        NameKind::Scheme => Scheme::ALL.iter().map(|scheme| scheme_name(*scheme)).collect(),
    }
}

/// The name under which a scheme is kept with a marking.
pub fn scheme_name(scheme: Scheme) -> String {
    serde_json::to_value(scheme).ok().and_then(|name| name.as_str().map(str::to_owned)).unwrap_or_default()
}

/// How many letters have to be put in, left out or changed to come from one name to the other (Levenshtein 1966).
/// A hyphen and a low line are the same.
fn slips(one: &str, other: &str) -> usize {
    let letters = |name: &str| name.to_lowercase().replace('_', "-").chars().collect::<Vec<_>>();
    let (one, other) = (letters(one), letters(other));
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (at, letter) in one.iter().enumerate() {
        let mut corner = row[0];
        row[0] = at + 1;
        for (place, against) in other.iter().enumerate() {
            let changed = corner + usize::from(letter != against);
            corner = row[place + 1];
            row[place + 1] = changed.min(corner + 1).min(row[place] + 1);
        }
    }
    row[other.len()]
}

/// Every unknown name of a logbook, sorted, each once for what it is said of.
pub fn of(logbook: &Logbook, rules: &Rules) -> Vec<UnknownName> {
    let mut names: Vec<UnknownName> = logbook.parts.iter().flat_map(|file| of_part(file, rules)).collect();
    names.extend(logbook.designs.iter().flat_map(|file| of_design(file, rules)));
    names.extend(logbook.machines.iter().flat_map(|file| of_machine(file, rules)));
    names.sort_unstable();
    names
}

/// The unknown names in a part's records, sorted, each once. Its design is a matter of its own: [`of_design`].
pub fn of_part(file: &PartFile, rules: &Rules) -> Vec<UnknownName> {
    let mut names = Unknown { rules, owner: Owner::Part(file.part.id), found: Vec::new() };
    file.markings.iter().for_each(|marking| names.marking(marking));
    file.surveys.iter().for_each(|survey| names.survey(survey));
    file.findings.iter().for_each(|known| names.finding(&known.finding));
    file.work.iter().for_each(|work| names.work(work));
    file.proofs.iter().for_each(|proof| names.proof(proof));
    names.sorted()
}

/// The unknown names in a design's records, sorted, each once.
pub fn of_design(file: &DesignFile, rules: &Rules) -> Vec<UnknownName> {
    let mut names = Unknown { rules, owner: Owner::Design(file.design.id), found: Vec::new() };
    file.connectors.iter().for_each(|connector| names.connector(connector));
    file.figures.iter().for_each(|figure| names.figure(figure));
    names.sorted()
}

/// The unknown names in a machine's own records, sorted, each once.
pub fn of_machine(file: &MachineFile, rules: &Rules) -> Vec<UnknownName> {
    let mut names = Unknown { rules, owner: Owner::Machine(file.machine.id), found: Vec::new() };
    file.proofs.iter().for_each(|proof| names.proof(proof));
    names.sorted()
}

/// The unknown names in one record, sorted, each once.
pub fn of_entry(entry: &Entry, rules: &Rules) -> Vec<UnknownName> {
    let names = |owner| Unknown { rules, owner, found: Vec::new() };
    let mut names = match entry {
        Entry::Marking(one) => names(Owner::Part(one.part)),
        Entry::Survey(one) => names(Owner::Part(one.part)),
        Entry::Finding(one) => names(Owner::Part(one.part)),
        Entry::Work(one) => names(Owner::Part(one.part)),
        Entry::DesignConnector(one) => names(Owner::Design(one.design)),
        Entry::DesignFigure(one) => names(Owner::Design(one.design)),
        Entry::Proof(one) => match (one.part, one.machine) {
            (Some(part), _) => names(Owner::Part(part)),
            (None, Some(machine)) => names(Owner::Machine(machine)),
            (None, None) => return Vec::new(),
        },
        _ => return Vec::new(),
    };
    match entry {
        Entry::Marking(one) => names.marking(one),
        Entry::Survey(one) => names.survey(one),
        Entry::Finding(one) => names.finding(one),
        Entry::Work(one) => names.work(one),
        Entry::DesignConnector(one) => names.connector(one),
        Entry::DesignFigure(one) => names.figure(one),
        Entry::Proof(one) => names.proof(one),
        _ => {}
    }
    names.sorted()
}

/// Gathers what of one owner's names no table holds.
struct Unknown<'a> {
    rules: &'a Rules,
    owner: Owner,
    found: Vec<UnknownName>,
}

impl Unknown<'_> {
    fn add(&mut self, kind: NameKind, name: impl Into<String>) {
        self.found.push(UnknownName { owner: self.owner, kind, name: name.into() });
    }

    fn sorted(mut self) -> Vec<UnknownName> {
        self.found.sort_unstable();
        self.found.dedup();
        self.found
    }

    fn question(&mut self, name: &str) {
        if !name.is_empty() && self.rules.question(name).is_none() {
            self.add(NameKind::Question, name);
        }
    }

    fn marking(&mut self, marking: &Marking) {
        let is_known = |name: &str| Scheme::deserialize(StrDeserializer::<Error>::new(name)).is_ok();
        if !marking.scheme.is_empty() && !is_known(&marking.scheme) {
            self.add(NameKind::Scheme, &marking.scheme);
        }
    }

    fn survey(&mut self, survey: &Survey) {
        let (questions, mut last) = (&self.rules.questions, 0);
        for answer in &survey.answers {
            let Some(at) = find_question(questions, answer.question, last) else {
                self.question(&answer.question);
                continue;
            };
            last = at;
            let Given::Is(given) = answer.given else { continue };
            if questions[at].answers.iter().all(|row| row.name != given) {
                self.add(NameKind::Answer, format!("{}/{given}", answer.question));
            }
        }
    }

    fn finding(&mut self, finding: &Finding) {
        if !finding.what.is_empty() && self.rules.finding(&finding.what).is_none() {
            self.add(NameKind::Finding, finding.what.as_str());
        }
        self.question(&finding.question);
    }

    fn work(&mut self, work: &Work) {
        if !work.rule.is_empty() && self.rules.work(&work.rule).is_none() {
            self.add(NameKind::Work, &work.rule);
        }
    }

    fn proof(&mut self, proof: &Proof) {
        if self.rules.proof(&proof.test).is_none() {
            self.add(NameKind::Test, &proof.test);
        }
    }

    fn connector(&mut self, connector: &DesignConnector) {
        if self.rules.connectors.get(&connector.connector).is_none() {
            self.add(NameKind::Connector, &connector.connector);
        }
    }

    fn figure(&mut self, figure: &DesignFigure) {
        if Figure::named(&figure.figure).is_none() {
            self.add(NameKind::Figure, &figure.figure);
        }
    }
}
