//! Reading the tables: each row by itself, so that all that is wrong is told at once, then layer over layer.
//!
//! Any file may hold any of `[[question]]`, `[[finding]]`, `[[work]]`, `[[sitting]]`, `[[template]]`, `[[proof]]`,
//! `[[kind]]`, `[[caution]]`, `[[inspection]]`, `[[substitution]]`, `[[low_esr]]`, `[[order]]` and `[[retention]]`. In the user's own files a row with
//! a known name (for `[[kind]]`: of a known kind) replaces the shipped row in its
//! place; any other is added; a row of nothing but `name` and `remove = true` takes the shipped row away, together
//! with its mentions in `after`, `proven_by`, `voids` and templates. A finding that answers still raise cannot be taken away.
//! `connectors.toml` holds connectors alone, and is read as [`Connectors::load`] says.

use std::collections::{HashMap, HashSet};
use std::sync::OnceLock;

use serde::de::DeserializeOwned;
use sha2::{Digest, Sha256};
use toml::Spanned;
use toml::de::{DeTable, DeValue, ValueDeserializer};

use super::plain::plain;
use super::table_error::At;
use super::{
    CautionRule, Connectors, FindingRule, InspectionRule, KindRule, LowEsrRule, OrderRule, ProofRule, Question,
    RetentionRule, Rules, Sitting, SubstitutionRule, TableError, TableErrors, Template, WorkRule,
};
use super::{bounds, check, check_cautions, check_retention, connectors, lookup, order};
use crate::record::Word;
use crate::text;

/// The file of connectors; it has a loader of its own.
const CONNECTORS: &str = "connectors.toml";

/// The tables that ship with the program.
const SHIPPED: &[(&str, &str)] = &[
    ("cautions.toml", include_str!("../../resources/rules/cautions.toml")),
    ("kinds.toml", include_str!("../../resources/rules/kinds.toml")),
    ("findings/boards.toml", include_str!("../../resources/rules/findings/boards.toml")),
    ("findings/others.toml", include_str!("../../resources/rules/findings/others.toml")),
    ("questions/boards.toml", include_str!("../../resources/rules/questions/boards.toml")),
    ("questions/cards.toml", include_str!("../../resources/rules/questions/cards.toml")),
    ("questions/processors.toml", include_str!("../../resources/rules/questions/processors.toml")),
    ("questions/drives.toml", include_str!("../../resources/rules/questions/drives.toml")),
    ("questions/supplies.toml", include_str!("../../resources/rules/questions/supplies.toml")),
    ("questions/cases.toml", include_str!("../../resources/rules/questions/cases.toml")),
    ("work/sittings.toml", include_str!("../../resources/rules/work/sittings.toml")),
    ("work/cells.toml", include_str!("../../resources/rules/work/cells.toml")),
    ("work/capacitors.toml", include_str!("../../resources/rules/work/capacitors.toml")),
    ("work/boards.toml", include_str!("../../resources/rules/work/boards.toml")),
    ("work/processors.toml", include_str!("../../resources/rules/work/processors.toml")),
    ("work/cards.toml", include_str!("../../resources/rules/work/cards.toml")),
    ("work/disks.toml", include_str!("../../resources/rules/work/disks.toml")),
    ("work/drives.toml", include_str!("../../resources/rules/work/drives.toml")),
    ("work/supplies.toml", include_str!("../../resources/rules/work/supplies.toml")),
    ("work/monitors.toml", include_str!("../../resources/rules/work/monitors.toml")),
    ("work/cases.toml", include_str!("../../resources/rules/work/cases.toml")),
    ("work/peripherals.toml", include_str!("../../resources/rules/work/peripherals.toml")),
    ("templates.toml", include_str!("../../resources/rules/templates.toml")),
    ("proofs.toml", include_str!("../../resources/rules/proofs.toml")),
    ("inspections.toml", include_str!("../../resources/rules/inspections.toml")),
    ("substitution.toml", include_str!("../../resources/rules/substitution.toml")),
    ("retention.toml", include_str!("../../resources/rules/retention.toml")),
    (CONNECTORS, connectors::SHIPPED),
];

/// A row and where it stands.
#[derive(Debug)]
pub(super) struct Row<T> {
    pub value: T,
    pub at: At,
}

/// All tables as read, before they are checked against each other.
#[derive(Debug, Default)]
pub(super) struct Tables {
    pub questions: Vec<Row<Question>>,
    pub findings: Vec<Row<FindingRule>>,
    pub work: Vec<Row<WorkRule>>,
    pub sittings: Vec<Row<Sitting>>,
    pub templates: Vec<Row<Template>>,
    pub proofs: Vec<Row<ProofRule>>,
    pub kinds: Vec<Row<KindRule>>,
    pub inspections: Vec<Row<InspectionRule>>,
    pub substitutions: Vec<Row<SubstitutionRule>>,
    pub low_esr: Vec<Row<LowEsrRule>>,
    pub orders: Vec<Row<OrderRule>>,
    pub retention: Vec<Row<RetentionRule>>,
    pub cautions: Vec<Row<CautionRule>>,
    /// What is to be told of rows that were laid over others.
    pub remarks: Vec<String>,
}

/// A kind of row: the table it stands in and what names it.
trait TableRow: DeserializeOwned {
    const TABLE: &'static str;
    fn name(&self) -> &str;
    /// The cautions that the row names.
    fn cautions(&self) -> &[String] {
        &[]
    }
    fn rows(tables: &mut Tables) -> &mut Vec<Row<Self>>;
}

macro_rules! table_rows {
    ($($row:ident $table:literal $rows:ident $($cautions:ident)?;)+) => {
        $(impl TableRow for $row {
            const TABLE: &'static str = $table;
            fn name(&self) -> &str { &self.name }
            $(fn cautions(&self) -> &[String] { self.$cautions.names() })?
            fn rows(tables: &mut Tables) -> &mut Vec<Row<Self>> { &mut tables.$rows }
        })+
    };
}

table_rows! {
    Question "question" questions cautions;
    FindingRule "finding" findings cautions;
    WorkRule "work" work cautions;
    Sitting "sitting" sittings cautions;
    Template "template" templates;
    ProofRule "proof" proofs cautions;
    InspectionRule "inspection" inspections;
    SubstitutionRule "substitution" substitutions;
    LowEsrRule "low_esr" low_esr;
    OrderRule "order" orders;
    RetentionRule "retention" retention;
    CautionRule "caution" cautions;
}

impl TableRow for KindRule {
    const TABLE: &'static str = "kind";
    fn name(&self) -> &str {
        self.kind.name()
    }
    fn cautions(&self) -> &[String] {
        self.cautions.names()
    }
    fn rows(tables: &mut Tables) -> &mut Vec<Row<Self>> {
        &mut tables.kinds
    }
}

impl Rules {
    /// The tables that ship with the program; read once.
    pub fn shipped() -> Self {
        static RULES: OnceLock<Rules> = OnceLock::new();
        RULES.get_or_init(|| Self::with_own(&[]).expect("a test proves that the shipped tables hold")).clone()
    }

    /// The shipped tables with the user's own, each as (file name, content), laid over them.
    ///
    /// # Errors
    /// Everything wrong in the tables, with file, line and reason.
    pub fn with_own(own: &[(String, String)]) -> Result<Self, TableErrors> {
        let shipped: Vec<_> = SHIPPED.iter().map(|(file, content)| ((*file).into(), (*content).into())).collect();
        Self::layered(&[&shipped, own])
    }

    /// These tables alone, without the shipped ones.
    ///
    /// # Errors
    /// Everything wrong in the tables, with file, line and reason.
    pub fn of(tables: &[(String, String)]) -> Result<Self, TableErrors> {
        Self::layered(&[tables])
    }

    fn layered(layers: &[&[(String, String)]]) -> Result<Self, TableErrors> {
        let mut tables = Tables::default();
        let mut errors = Vec::new();
        let mut hash = Sha256::new();
        let mut connectors = Vec::new();
        for layer in layers {
            let mut read = Layer::default();
            for (file, content) in *layer {
                for piece in [file, content] {
                    hash.update(piece.len().to_le_bytes());
                    hash.update(piece);
                }
                if file == CONNECTORS {
                    connectors.push((file.as_str(), content.as_str()));
                    continue;
                }
                read.file(&At { file: file.as_str().into(), text: content.as_str().into(), offset: 0 }, &mut errors);
            }
            read.lay_over(&mut tables, &mut errors);
        }
        let connectors = Connectors::load(&connectors).unwrap_or_else(|error| {
            errors.push(error);
            Connectors::default()
        });
        // A row that could not be read would make every mention of it look wrong too.
        if errors.is_empty() {
            bounds::take_from_tests(&mut tables, &mut errors);
            check::check(&tables, &mut errors);
            check_retention::check(&tables, &connectors, &mut errors);
            check_cautions::check(&tables, &mut errors);
            tables.work = order::sorted(tables.work, &mut errors);
        }
        if !errors.is_empty() {
            errors.sort();
            errors.dedup();
            return Err(TableErrors(errors));
        }
        let digest = hash.finalize();
        let version = digest.iter().take(8).fold(0, |version, byte| version << 8 | u64::from(*byte));
        Ok(lookup::rules(version, tables, connectors))
    }
}

/// A row that takes one away.
#[derive(Debug)]
struct Removal {
    table: &'static str,
    name: String,
    at: At,
}

/// The files of one layer: the shipped ones, or the user's own.
#[derive(Debug, Default)]
struct Layer {
    tables: Tables,
    removals: Vec<Removal>,
}

impl Layer {
    fn file(&mut self, top: &At, errors: &mut Vec<TableError>) {
        let (document, wrong) = DeTable::parse_recoverable(&top.text);
        errors.extend(wrong.iter().map(|error| TableError::toml(&top.file, &top.text, error)));
        if !wrong.is_empty() {
            return;
        }
        for (table, rows) in document.into_inner() {
            let at = At { offset: table.span().start, ..top.clone() };
            match table.get_ref().as_ref() {
                Question::TABLE => self.rows::<Question>(&at, rows, errors),
                FindingRule::TABLE => self.rows::<FindingRule>(&at, rows, errors),
                WorkRule::TABLE => self.rows::<WorkRule>(&at, rows, errors),
                Sitting::TABLE => self.rows::<Sitting>(&at, rows, errors),
                Template::TABLE => self.rows::<Template>(&at, rows, errors),
                ProofRule::TABLE => self.rows::<ProofRule>(&at, rows, errors),
                KindRule::TABLE => self.rows::<KindRule>(&at, rows, errors),
                InspectionRule::TABLE => self.rows::<InspectionRule>(&at, rows, errors),
                SubstitutionRule::TABLE => self.rows::<SubstitutionRule>(&at, rows, errors),
                LowEsrRule::TABLE => self.rows::<LowEsrRule>(&at, rows, errors),
                OrderRule::TABLE => self.rows::<OrderRule>(&at, rows, errors),
                RetentionRule::TABLE => self.rows::<RetentionRule>(&at, rows, errors),
                CautionRule::TABLE => self.rows::<CautionRule>(&at, rows, errors),
                other => errors.push(at.error(text!("there is no table `{table}`", table = other))),
            }
        }
    }

    fn rows<T: TableRow>(&mut self, top: &At, rows: Spanned<DeValue>, errors: &mut Vec<TableError>) {
        let DeValue::Array(rows) = rows.into_inner() else {
            errors.push(top.error(text!("rows begin with [[{table}]], in double brackets", table = T::TABLE)));
            return;
        };
        for row in rows {
            let at = At { offset: row.span().start, ..top.clone() };
            match row.get_ref().as_table() {
                Some(table) if table.contains_key("remove") => match removed_name(table) {
                    Some(name) => self.removals.push(Removal { table: T::TABLE, name, at }),
                    None => errors.push(at.error(text!("a row that removes holds `name` and `remove = true` alone"))),
                },
                _ => match T::deserialize(ValueDeserializer::from(row)) {
                    Ok(value) => T::rows(&mut self.tables).push(Row { value, at }),
                    Err(error) => {
                        let offset = error.span().map_or(at.offset, |span| span.start);
                        errors.push(At { offset, ..at }.error(plain(error.message())));
                    }
                },
            }
        }
    }

    fn lay_over(mut self, base: &mut Tables, errors: &mut Vec<TableError>) {
        lay_rows::<Question>(&mut self, base, errors);
        lay_rows::<FindingRule>(&mut self, base, errors);
        let work = lay_rows::<WorkRule>(&mut self, base, errors);
        lay_rows::<Sitting>(&mut self, base, errors);
        lay_rows::<Template>(&mut self, base, errors);
        let proofs = lay_rows::<ProofRule>(&mut self, base, errors);
        lay_rows::<KindRule>(&mut self, base, errors);
        lay_rows::<InspectionRule>(&mut self, base, errors);
        lay_rows::<SubstitutionRule>(&mut self, base, errors);
        lay_rows::<LowEsrRule>(&mut self, base, errors);
        lay_rows::<OrderRule>(&mut self, base, errors);
        lay_rows::<RetentionRule>(&mut self, base, errors);
        lay_rows::<CautionRule>(&mut self, base, errors);
        for row in &mut base.work {
            row.value.after.retain(|name| !work.contains(name));
            row.value.proven_by.retain(|name| !proofs.contains(name));
            row.value.voids.retain(|name| !proofs.contains(name));
        }
        for row in &mut base.templates {
            row.value.work.retain(|name| !work.contains(name));
        }
    }
}

/// What is to be told of a row that takes the place of another and leaves out cautions that the other names.
fn lost_cautions<T: TableRow>(old: &T, Row { value, at }: &Row<T>) -> Option<String> {
    let lost: Vec<&str> =
        old.cautions().iter().filter(|name| !value.cautions().contains(name)).map(String::as_str).collect();
    if lost.is_empty() {
        return None;
    }
    let reason = text!(
        "the {table} `{name}` replaces the shipped row without its cautions: {cautions}",
        table = T::TABLE,
        name = value.name(),
        cautions = lost.join(", ")
    );
    Some(at.error(reason).to_string())
}

/// Lays one table of a layer over what lies below; gives the names it took away.
fn lay_rows<T: TableRow>(layer: &mut Layer, base: &mut Tables, errors: &mut Vec<TableError>) -> HashSet<String> {
    let mut remarks = Vec::new();
    let below = T::rows(base);
    let places: HashMap<String, usize> =
        below.iter().enumerate().map(|(index, row)| (row.value.name().to_owned(), index)).collect();
    let mut seen = HashSet::new();
    for row in T::rows(&mut layer.tables).drain(..) {
        let name = row.value.name().to_owned();
        match places.get(&name) {
            _ if seen.contains(&name) => errors.push(doubled::<T>(&name, &row.at)),
            Some(index) => {
                remarks.extend(lost_cautions(&below[*index].value, &row));
                below[*index] = row;
            }
            None => below.push(row),
        }
        seen.insert(name);
    }
    let mut removed = HashSet::new();
    for Removal { name, at, .. } in layer.removals.iter().filter(|removal| removal.table == T::TABLE) {
        if !seen.insert(name.clone()) {
            errors.push(doubled::<T>(name, at));
        } else if places.contains_key(name) {
            removed.insert(name.clone());
        } else {
            let reason = text!("removes the {table} `{name}`, which is not there", table = T::TABLE, name = name);
            errors.push(at.error(reason));
        }
    }
    below.retain(|row| !removed.contains(row.value.name()));
    base.remarks.extend(remarks);
    removed
}

fn doubled<T: TableRow>(name: &str, at: &At) -> TableError {
    at.error_at(name, text!("the {table} `{name}` stands here twice", table = T::TABLE, name = name))
}

/// The name in a row of nothing but a name and `remove = true`.
fn removed_name(row: &DeTable<'_>) -> Option<String> {
    let name = row.get("name")?.get_ref().as_str()?;
    let removes = row.get("remove")?.get_ref().as_bool()?;
    (removes && row.len() == 2).then(|| name.to_owned())
}
