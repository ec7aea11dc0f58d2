//! The tables checked against each other.

use std::collections::HashSet;

use super::check_template;
use super::load::{Row, Tables};
use super::table_error::At;
use super::{
    FigureRule, FindingRule, InspectionRule, KindRule, LowEsrRule, OrderRule, PowerEffect, ProofRule, Question,
    Sitting, SubstitutionRule, TableError, WorkRule,
};
use crate::record::{Hold, Mounting, Severity, Word};
use crate::text;

/// Longest hands-on time that can be meant for one piece of work or one test, minutes (a week).
const MOST_MINUTES: u32 = 7 * 24 * 60;

/// Longest time between two looks that can be meant, months.
const MOST_MONTHS: u32 = 120;

/// The furthest that a capacitance may lie above the original, per cent: with more it is another circuit.
const MOST_ABOVE_PERCENT: f64 = 100.0;

/// The most spares that can be meant, per cent.
const MOST_SPARE_PERCENT: f64 = 1000.0;

/// Everything wrong with rows that can be read.
pub(super) fn check(tables: &Tables, errors: &mut Vec<TableError>) {
    let mut check = Check {
        questions: tables.questions.iter().map(|row| row.value.name.as_str()).collect(),
        findings: tables.findings.iter().map(|row| row.value.name.as_str()).collect(),
        work: tables.work.iter().map(|row| row.value.name.as_str()).collect(),
        sittings: tables.sittings.iter().map(|row| row.value.name.as_str()).collect(),
        proofs: tables.proofs.iter().map(|row| row.value.name.as_str()).collect(),
        answers: answers(&tables.questions),
        errors,
    };
    for row in &tables.questions {
        check.question(row);
    }
    for row in &tables.findings {
        check.finding(row);
    }
    check.capacitors(&tables.findings);
    for row in &tables.work {
        check.work(row);
    }
    for row in &tables.sittings {
        check.sitting(row);
    }
    for row in &tables.proofs {
        check.proof(row);
    }
    for Row { value, at } in &tables.templates {
        check.name(at, &value.name);
        check.filled(at, &[("say", &value.say), ("how", &value.how), ("source", &value.source)]);
        check.no_doubles(at, value.kinds.iter().map(|kind| kind.name()));
    }
    check_template::check(tables, check.errors);
    for row in &tables.kinds {
        check.kind(row);
    }
    for row in &tables.inspections {
        check.inspection(row);
    }
    for row in &tables.substitutions {
        check.substitution(row);
    }
    for row in &tables.low_esr {
        check.low_esr(row);
    }
    for row in &tables.orders {
        check.order(row);
    }
    for Row { value, at } in &tables.cautions {
        check.name(at, &value.name);
        check.filled(at, &[("say", &value.say), ("source", &value.source)]);
    }
}

/// All answers as "question/answer".
fn answers(questions: &[Row<Question>]) -> HashSet<String> {
    let named = |row: &Question| {
        let question = row.name;
        row.answers.iter().map(move |answer| format!("{question}/{}", answer.name)).collect::<Vec<_>>()
    };
    questions.iter().flat_map(|row| named(&row.value)).collect()
}

struct Check<'a> {
    questions: HashSet<&'a str>,
    findings: HashSet<&'a str>,
    work: HashSet<&'a str>,
    sittings: HashSet<&'a str>,
    proofs: HashSet<&'a str>,
    answers: HashSet<String>,
    errors: &'a mut Vec<TableError>,
}

impl Check<'_> {
    fn question(&mut self, Row { value, at }: &Row<Question>) {
        self.name(at, &value.name);
        self.filled(at, &[("ask", &value.ask), ("topic", &value.topic), ("source", &value.source)]);
        if value.kinds.is_empty() {
            self.errors.push(at.error(text!("the question `{name}` is asked of no kind", name = value.name)));
        }
        self.no_doubles(at, value.kinds.iter().map(|kind| kind.name()));
        for proof in value.shown_by.iter().filter(|proof| !self.proofs.contains(proof.as_str())) {
            self.errors.push(at.error_at(proof, text!("is shown by the unknown proof `{name}`", name = proof)));
        }
        for work in value.void_after.iter().filter(|work| !self.work.contains(work.as_str())) {
            self.errors.push(at.error_at(work, text!("says nothing after the unknown work `{name}`", name = work)));
        }
        for other in value.agrees_with.iter().filter(|other| !self.questions.contains(other.as_str())) {
            self.errors.push(at.error_at(other, text!("agrees with the unknown question `{name}`", name = other)));
        }
        for kind in value.always_on.iter().chain(&value.harmless_on).filter(|kind| !value.kinds.contains(kind)) {
            let reason = text!(
                "the question `{name}` is not asked of `{kind}`, which its row names",
                name = value.name,
                kind = kind.name()
            );
            self.errors.push(at.error(reason));
        }
        if value.answers.len() < 2 {
            let reason = text!("the question `{name}` needs two answers or more", name = value.name);
            self.errors.push(at.error(reason));
        }
        self.no_doubles(at, value.answers.iter().map(|answer| answer.name.as_str()));
        for answer in &value.answers {
            self.name(at, &answer.name);
            self.filled(at, &[("say", &answer.say)]);
            match &answer.finding {
                Some(finding) => self.raised(at, finding),
                None if answer.severity.is_some() => {
                    let reason = text!("the answer `{name}` has a severity but no finding", name = answer.name);
                    self.errors.push(at.error_at(&answer.name, reason));
                }
                None => {}
            }
        }
        if let Some(figure) = &value.figure {
            self.figure(&at.from(&figure.say), figure);
        }
    }

    fn figure(&mut self, at: &At, figure: &FigureRule) {
        self.filled(at, &[("say", &figure.say), ("unit", &figure.unit)]);
        let FigureRule { least, most, .. } = figure;
        if !(least.is_finite() && most.is_finite() && least < most) {
            let reason =
                text!("figure out of range: least {least} is not below most {most}", least = least, most = most);
            self.errors.push(at.error(reason));
            return;
        }
        for bound in &figure.bounds {
            self.raised(at, &bound.finding);
            let reason = match (bound.below, bound.above) {
                (Some(limit), None) | (None, Some(limit)) if (*least..=*most).contains(&limit) => continue,
                (Some(limit), None) | (None, Some(limit)) => text!(
                    "bound out of range: {limit} is not between {least} and {most}",
                    limit = limit,
                    least = least,
                    most = most
                ),
                _ => text!("a bound has either `below` or `above`").to_owned(),
            };
            self.errors.push(at.error_at(&bound.finding, reason));
        }
    }

    fn raised(&mut self, at: &At, finding: &str) {
        if !self.findings.contains(finding) {
            self.errors.push(at.error_at(finding, text!("raises the unknown finding `{name}`", name = finding)));
        }
    }

    fn finding(&mut self, Row { value, at }: &Row<FindingRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("say", &value.say)]);
        if value.capacitor_states.is_empty() && !value.dielectrics.is_empty() {
            let reason = text!("the finding `{name}` names dielectrics but no capacitor states", name = value.name);
            self.errors.push(at.error(reason));
        }
    }

    /// One position must not be told twice.
    fn capacitors(&mut self, findings: &[Row<FindingRule>]) {
        for (place, Row { value, at }) in findings.iter().enumerate() {
            for Row { value: other, .. } in &findings[..place] {
                let same_state = value.capacitor_states.iter().any(|state| other.capacitor_states.contains(state));
                let same_dielectric = value.dielectrics.is_empty()
                    || other.dielectrics.is_empty()
                    || value.dielectrics.iter().any(|dielectric| other.dielectrics.contains(dielectric));
                if same_state && same_dielectric {
                    let reason = text!(
                        "the findings `{name}` and `{other}` are raised by the same capacitors",
                        name = value.name,
                        other = other.name
                    );
                    self.errors.push(at.error(reason));
                }
            }
        }
    }

    fn work(&mut self, Row { value, at }: &Row<WorkRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("say", &value.say), ("source", &value.source)]);
        self.filled_all(at, "materials", &value.materials);
        self.filled_all(at, "tools", &value.tools);
        self.minutes(at, value.minutes);
        if value.findings.is_empty() {
            self.errors.push(at.error(text!("no finding calls for the work `{name}`", name = value.name)));
        }
        self.no_doubles(at, value.findings.iter().map(String::as_str));
        for finding in value.findings.iter().filter(|finding| !self.findings.contains(finding.as_str())) {
            let reason = text!("called for by the unknown finding `{name}`", name = finding);
            self.errors.push(at.error_at(finding, reason));
        }
        for before in value.after.iter().filter(|before| !self.work.contains(before.as_str())) {
            self.errors.push(at.error_at(before, text!("comes after the unknown work `{name}`", name = before)));
        }
        if !self.sittings.contains(value.sitting.as_str()) {
            let reason = text!("wants the unknown sitting `{name}`", name = value.sitting);
            self.errors.push(at.error_at(&value.sitting, reason));
        }
        for proof in value.proven_by.iter().filter(|proof| !self.proofs.contains(proof.as_str())) {
            self.errors.push(at.error_at(proof, text!("is proven by the unknown proof `{name}`", name = proof)));
        }
        for proof in value.voids.iter().filter(|proof| !self.proofs.contains(proof.as_str())) {
            self.errors.push(at.error_at(proof, text!("voids the unknown proof `{name}`", name = proof)));
        }
        let grave = (value.hold_at(Severity::Grave), value.power_at(Severity::Grave));
        let is_weaker = |(hold, power)| hold <= Hold::Power && power != PowerEffect::No;
        if is_weaker((value.hold, value.power)) || is_weaker(grave) {
            let reason = text!("the work `{name}` holds power, so its `power` is `no`", name = value.name);
            self.errors.push(at.error(reason));
        }
    }

    fn sitting(&mut self, Row { value, at }: &Row<Sitting>) {
        self.name(at, &value.name);
        self.filled(at, &[("say", &value.say)]);
        if value.set_up_minutes > 0 {
            self.minutes(at, value.set_up_minutes);
        }
    }

    fn inspection(&mut self, Row { value, at }: &Row<InspectionRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("say", &value.say), ("source", &value.source)]);
        self.filled_all(at, "places", &value.places);
        if !(1..=MOST_MONTHS).contains(&value.months) {
            let reason =
                text!("{months} months are out of range: 1 to {most}", months = value.months, most = MOST_MONTHS);
            self.errors.push(at.error(reason));
        }
        for finding in value.findings.iter().filter(|finding| !self.findings.contains(finding.as_str())) {
            let reason = text!("looks for the unknown finding `{name}`", name = finding);
            self.errors.push(at.error_at(finding, reason));
        }
        for answer in value.answers.iter().filter(|answer| !self.answers.contains(*answer)) {
            self.errors.push(at.error_at(answer, text!("looks for the unknown answer `{name}`", name = answer)));
        }
        self.small_letters(at, &value.places);
    }

    fn substitution(&mut self, Row { value, at }: &Row<SubstitutionRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("source", &value.source)]);
        if value.dielectrics.is_empty() {
            self.errors.push(at.error(text!("`{name}` names no dielectric that it is for", name = value.name)));
        }
        self.no_doubles(at, value.dielectrics.iter().map(|word| word.name()));
        self.no_doubles(at, value.functions.iter().map(|word| word.name()));
        if !(0.0..=MOST_ABOVE_PERCENT).contains(&value.most_above_percent) {
            let reason = text!(
                "{percent} % are out of range: 0 to {most}",
                percent = value.most_above_percent,
                most = MOST_ABOVE_PERCENT
            );
            self.errors.push(at.error(reason));
        }
        for figure in [value.from_uf, value.to_volts, value.times_rail, value.most_uf_v_per_mm3].into_iter().flatten() {
            self.above_zero(at, figure);
        }
    }

    fn low_esr(&mut self, Row { value, at }: &Row<LowEsrRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("source", &value.source)]);
        self.filled_all(at, "places", &value.places);
        self.small_letters(at, &value.places);
        if value.functions.is_empty() && value.places.is_empty() {
            self.errors.push(at.error(text!("`{name}` names neither uses nor places", name = value.name)));
        }
    }

    fn order(&mut self, Row { value, at }: &Row<OrderRule>) {
        self.name(at, &value.name);
        self.filled(at, &[("source", &value.source)]);
        for (key, figures) in [("volts", &value.volts), ("pitches_mm", &value.pitches_mm)] {
            for figure in figures {
                self.above_zero(at, *figure);
            }
            if figures.is_empty() || !figures.is_sorted_by(|one, next| one < next) {
                self.errors.push(at.error(text!("`{key}` holds no figures, or they do not ascend", key = key)));
            }
        }
        if !(0.0..=MOST_SPARE_PERCENT).contains(&value.spare_percent) {
            let reason = text!(
                "{percent} % are out of range: 0 to {most}",
                percent = value.spare_percent,
                most = MOST_SPARE_PERCENT
            );
            self.errors.push(at.error(reason));
        }
        if value.mounting == Mounting::Unknown {
            self.errors.push(at.error(text!("`mounting` must say how a capacitor sits")));
        }
    }

    fn above_zero(&mut self, at: &At, figure: f64) {
        if !(figure.is_finite() && figure > 0.0) {
            self.errors.push(at.error(text!("{figure} is not above 0", figure = figure)));
        }
    }

    fn small_letters(&mut self, at: &At, words: &[String]) {
        for word in words.iter().filter(|word| word.to_lowercase() != **word) {
            self.errors.push(at.error_at(word, text!("`{place}` is not in small letters", place = word)));
        }
    }

    fn proof(&mut self, Row { value, at }: &Row<ProofRule>) {
        self.name(at, &value.name);
        let texts =
            [("say", &value.say), ("rig", &value.rig), ("criterion", &value.criterion), ("source", &value.source)];
        self.filled(at, &texts);
        self.minutes(at, value.minutes);
        self.no_doubles(at, value.kinds.iter().map(|kind| kind.name()));
        self.no_doubles(at, value.figures.iter().map(|figure| figure.say.as_str()));
        for figure in &value.figures {
            self.filled(at, &[("say", &figure.say)]);
            let bounds = [figure.fails_below, figure.fails_above];
            if bounds.iter().flatten().any(|bound| !bound.is_finite()) {
                let reason = text!("a bound of “{figure}” is no figure", figure = figure.say);
                self.errors.push(at.error_at(&figure.say, reason));
            }
        }
        if value.good_for_days == Some(0) {
            self.errors.push(at.error(text!("the proof `{name}` is good for no day", name = value.name)));
        }
    }

    fn kind(&mut self, Row { value, at }: &Row<KindRule>) {
        if value.look_again_months == 0 {
            let reason = text!("`look_again_months` of `{name}` is 0", name = value.kind.name());
            self.errors.push(at.error(reason));
        }
        self.no_doubles(at, value.papers.iter().map(|paper| paper.name()));
    }

    fn name(&mut self, at: &At, name: &str) {
        let kebab = name.split('-').all(|word| {
            !word.is_empty() && word.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit())
        });
        if !kebab {
            let reason = text!("`{name}` is no name: small letters, digits and single hyphens", name = name);
            self.errors.push(at.error_at(name, reason));
        }
    }

    fn filled(&mut self, at: &At, texts: &[(&str, &String)]) {
        for (key, text) in texts.iter().filter(|(_, text)| text.trim().is_empty()) {
            self.errors.push(at.error_at(text, text!("`{key}` is empty", key = key)));
        }
    }

    fn filled_all(&mut self, at: &At, key: &str, texts: &[String]) {
        for text in texts {
            self.filled(at, &[(key, text)]);
        }
    }

    fn minutes(&mut self, at: &At, minutes: u32) {
        if !(1..=MOST_MINUTES).contains(&minutes) {
            let reason =
                text!("{minutes} minutes are out of range: 1 to {most}", minutes = minutes, most = MOST_MINUTES);
            self.errors.push(at.error(reason));
        }
    }

    fn no_doubles<'w>(&mut self, at: &At, words: impl Iterator<Item = &'w str>) {
        let mut seen = HashSet::new();
        for word in words {
            if !seen.insert(word) {
                self.errors.push(at.error_at(word, text!("`{word}` stands here twice", word = word)));
            }
        }
    }
}
