//! Finding rows fast: by name, by kind, by finding.

use std::collections::HashMap;
use std::sync::Arc;

use super::load::{Row, Tables};
use super::{CautionRule, Connectors, FindingRule, KindRule, ProofRule, Question, Rules, Template, WorkRule};
use crate::record::{CapacitorState, Dielectric, Kind, Name, Nature, Severity, Word};

/// Rows by what they are looked up by.
#[derive(Debug, Default)]
pub(super) struct Index {
    questions: HashMap<String, Arc<Question>>,
    findings: HashMap<String, Arc<FindingRule>>,
    /// Places in the list of work.
    work: HashMap<String, usize>,
    /// Of each piece of work, all that come before it, over however many steps.
    before: Vec<Vec<bool>>,
    proofs: HashMap<String, Arc<ProofRule>>,
    kinds: HashMap<Kind, Arc<KindRule>>,
    questions_of: HashMap<Kind, Vec<Arc<Question>>>,
    work_of: HashMap<String, Vec<Arc<WorkRule>>>,
    proofs_of: HashMap<Kind, Vec<Arc<ProofRule>>>,
    machine_proofs: Vec<Arc<ProofRule>>,
}

/// Rules with their index, from checked and ordered tables.
pub(super) fn rules(version: u64, mut tables: Tables, connectors: Connectors) -> Rules {
    find_cautions(&mut tables);
    let cautions = shared(tables.cautions);
    let questions = shared(tables.questions);
    let findings = shared(tables.findings);
    let work = shared(tables.work);
    let sittings = shared(tables.sittings);
    let templates = shared(tables.templates);
    let proofs = shared(tables.proofs);
    let kinds = shared(tables.kinds);
    let inspections = shared(tables.inspections);
    let substitutions = shared(tables.substitutions);
    let low_esr = shared(tables.low_esr);
    let orders = shared(tables.orders);
    let retention = shared(tables.retention);

    let mut index = Index {
        questions: questions.iter().map(|row| (row.name.to_string(), Arc::clone(row))).collect(),
        findings: findings.iter().map(|row| (row.name.clone(), Arc::clone(row))).collect(),
        work: work.iter().enumerate().map(|(place, row)| (row.name.clone(), place)).collect(),
        proofs: proofs.iter().map(|row| (row.name.clone(), Arc::clone(row))).collect(),
        kinds: kinds.iter().map(|row| (row.kind, Arc::clone(row))).collect(),
        machine_proofs: proofs.iter().filter(|row| row.kinds.is_empty()).cloned().collect(),
        ..Index::default()
    };
    for kind in Kind::ALL {
        let asked = questions.iter().filter(|row| row.kinds.contains(kind)).cloned().collect();
        index.questions_of.insert(*kind, asked);
        let run = proofs.iter().filter(|row| row.kinds.contains(kind)).cloned().collect();
        index.proofs_of.insert(*kind, run);
    }
    for row in &work {
        for finding in &row.findings {
            index.work_of.entry(finding.clone()).or_default().push(Arc::clone(row));
        }
    }
    for row in &work {
        let mut before = vec![false; work.len()];
        for place in row.after.iter().filter_map(|name| index.work.get(name)) {
            before[*place] = true;
            // Work is in order: what comes before this one is known already.
            for (all, further) in before.iter_mut().zip(&index.before[*place]) {
                *all |= further;
            }
        }
        index.before.push(before);
    }
    let connectors = Arc::new(connectors);
    let index = Arc::new(index);
    Rules {
        version,
        questions,
        findings,
        work,
        sittings,
        templates,
        proofs,
        kinds,
        inspections,
        substitutions,
        low_esr,
        orders,
        retention,
        cautions,
        remarks: tables.remarks,
        connectors,
        index,
    }
}

/// Has every row know the cautions that it names; a job those of its sitting too.
fn find_cautions(tables: &mut Tables) {
    let table: Vec<Arc<CautionRule>> = tables.cautions.iter().map(|row| Arc::new(row.value.clone())).collect();
    tables.questions.iter_mut().for_each(|row| row.value.cautions.find(None, &table));
    tables.findings.iter_mut().for_each(|row| row.value.cautions.find(None, &table));
    tables.proofs.iter_mut().for_each(|row| row.value.cautions.find(None, &table));
    tables.kinds.iter_mut().for_each(|row| row.value.cautions.find(None, &table));
    tables.sittings.iter_mut().for_each(|row| row.value.cautions.find(None, &table));
    for Row { value, .. } in &mut tables.work {
        let sitting = tables.sittings.iter().find(|row| row.value.name == value.sitting);
        value.cautions.find(sitting.map(|row| &row.value.cautions), &table);
    }
}

/// Where a question stands in a list of them, looked for from a place on and then before it: answers come in the order
/// of the questions, so that the next one is mostly not far.
pub fn find_question(questions: &[Arc<Question>], name: Name, from: usize) -> Option<usize> {
    let is_it = |question: &Arc<Question>| question.name == name;
    let further = questions[from..].iter().position(is_it).map(|steps| from + steps);
    further.or_else(|| questions[..from].iter().position(is_it))
}

fn shared<T>(rows: Vec<Row<T>>) -> Vec<Arc<T>> {
    rows.into_iter().map(|row| Arc::new(row.value)).collect()
}

impl Rules {
    pub fn question(&self, name: &str) -> Option<&Arc<Question>> {
        self.index.questions.get(name)
    }

    pub fn finding(&self, name: &str) -> Option<&Arc<FindingRule>> {
        self.index.findings.get(name)
    }

    pub fn work(&self, name: &str) -> Option<&Arc<WorkRule>> {
        self.index.work.get(name).map(|place| &self.work[*place])
    }

    /// A piece of work's place in working order; the last place for one that no table holds.
    pub fn place_of(&self, work: &str) -> usize {
        self.index.work.get(work).copied().unwrap_or(usize::MAX)
    }

    /// Whether one piece of work has to be done before another, over however many steps.
    pub fn is_before(&self, first: &str, later: &str) -> bool {
        self.is_place_before(self.place_of(first), self.place_of(later))
    }

    /// As [`Rules::is_before`], by places in the working order.
    pub fn is_place_before(&self, first: usize, later: usize) -> bool {
        self.index.before.get(later).and_then(|before| before.get(first)).copied().unwrap_or(false)
    }

    /// The overhauls that are meant for a kind.
    pub fn templates_for(&self, kind: Kind) -> impl Iterator<Item = &Arc<Template>> {
        self.templates.iter().filter(move |template| template.kinds.contains(&kind))
    }

    pub fn proof(&self, name: &str) -> Option<&Arc<ProofRule>> {
        self.index.proofs.get(name)
    }

    pub fn kind(&self, kind: Kind) -> Option<&Arc<KindRule>> {
        self.index.kinds.get(&kind)
    }

    /// What a survey asks this kind, in the order it is asked.
    pub fn questions_for(&self, kind: Kind) -> &[Arc<Question>] {
        self.index.questions_of.get(&kind).map_or(&[], Vec::as_slice)
    }

    /// What a finding of this severity calls for on a part of this kind, in working order.
    pub fn work_for(&self, finding: &str, kind: Kind, severity: Severity) -> impl Iterator<Item = &Arc<WorkRule>> {
        let called_for = self.index.work_of.get(finding).map_or(&[][..], Vec::as_slice);
        called_for.iter().filter(move |work| {
            (work.kinds.is_empty() || work.kinds.contains(&kind))
                && work.from_severity.is_none_or(|least| severity >= least)
        })
    }

    /// The tests run on a part of this kind.
    pub fn proofs_for(&self, kind: Kind) -> &[Arc<ProofRule>] {
        self.index.proofs_of.get(&kind).map_or(&[], Vec::as_slice)
    }

    /// Whether work in the restorer's own words on a part of this kind voids a proof: as the tables' work of the same
    /// nature does, of any nature where none is told. Where the tables know no such work that voids anything, all but
    /// care voids every proof.
    pub fn own_work_voids(&self, nature: Option<Nature>, kind: Kind, proof: &str) -> bool {
        let is_alike = |rule: &&Arc<WorkRule>| {
            (rule.kinds.is_empty() || rule.kinds.contains(&kind)) && nature.is_none_or(|nature| rule.nature == nature)
        };
        let mut voiding = self.work.iter().filter(is_alike).filter(|rule| !rule.voids.is_empty()).peekable();
        if voiding.peek().is_none() {
            return nature != Some(Nature::Care);
        }
        voiding.any(|rule| rule.voids.iter().any(|name| name == proof))
    }

    /// The tests run on a whole machine.
    pub fn machine_proofs(&self) -> &[Arc<ProofRule>] {
        &self.index.machine_proofs
    }

    /// The finding that a logged capacitor position raises; none for a sound or unlooked-at one.
    pub fn capacitor_finding(&self, state: CapacitorState, dielectric: Dielectric) -> Option<&Arc<FindingRule>> {
        self.findings.iter().find(|finding| {
            finding.capacitor_states.contains(&state)
                && (finding.dielectrics.is_empty() || finding.dielectrics.contains(&dielectric))
        })
    }

    /// Every text of the tables that a person reads, for the catalogue of texts. Empty texts are left out.
    pub fn texts(&self) -> impl Iterator<Item = &str> {
        let questions = self.questions.iter().flat_map(|row| {
            let figure = row.figure.iter().flat_map(|figure| [&figure.say, &figure.unit]);
            let answers = row.answers.iter().map(|answer| &answer.say);
            [&row.ask, &row.hint, &row.source].into_iter().chain(answers).chain(figure)
        });
        let findings = self.findings.iter().flat_map(|row| [&row.say, &row.means]);
        let work = self.work.iter().flat_map(|row| {
            let lists = row.materials.iter().chain(&row.tools);
            [&row.say, &row.how, &row.source].into_iter().chain(lists)
        });
        let sittings = self.sittings.iter().map(|row| &row.say);
        let proofs = self.proofs.iter().flat_map(|row| {
            let figures = row.figures.iter().map(|figure| &figure.say);
            [&row.say, &row.rig, &row.criterion, &row.source].into_iter().chain(figures)
        });
        let templates = self.templates.iter().flat_map(|row| [&row.say, &row.how, &row.source]);
        let inspections = self.inspections.iter().flat_map(|row| [&row.say, &row.source]);
        let sources = self.substitutions.iter().map(|row| &row.source);
        let sources = sources.chain(self.low_esr.iter().map(|row| &row.source));
        let sources = sources.chain(self.orders.iter().map(|row| &row.source));
        let sources = sources.chain(self.retention.iter().map(|row| &row.source));
        let cautions = self.cautions.iter().flat_map(|row| [&row.say, &row.source]);
        let connectors = self.connectors.all().flat_map(|row| [&row.label, &row.note]);
        questions
            .chain(findings)
            .chain(work)
            .chain(sittings)
            .chain(templates)
            .chain(proofs)
            .chain(inspections)
            .chain(sources)
            .chain(cautions)
            .chain(connectors)
            .map(String::as_str)
            .filter(|text| !text.is_empty())
    }
}
