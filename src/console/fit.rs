//! `fit LOGBOOK MACHINE [--all] [--file-system ID]`: whether a machine's parts fit, constraint by constraint, each reason with
//! what it rests on; the setting that is chosen and all others; what is plugged into what; the load of each rail.
//!
//! JSON: `{"machine": "Orla", "verdict": "caveat", "constraints": [{"constraint": "clocks", "verdict": "fits",
//! "because": [because, …]}, …], "setting": setting, "best": setting, "settings": [setting, …], "plugged": [{"part": "0006",
//! "connector": "isa-8", "into": "0001", "offer": "isa-16"}, …], "load": [{"rail": "5", "amps": 4.2}, …], "watts": 31.5,
//! "competing": ["0035"]}`. A because is `{"verdict": "not_known", "part": "0042", "say": "…", "source": "…", "figure":
//! "core_voltage_v"}`; `figure` is the one that is missing, else null. A verdict is fits, caveat, not_known or no; that
//! of a constraint which nothing in the machine asks for is null. A setting is `{"bus_mhz": 66.667, "multiplier": 2,
//! "core_mhz": 133.3, "cache_mhz": null, "pci_mhz": 33.333, "agp_mhz": null, "reach": "within", "beyond": [{"clock":
//! "PCI", "mhz": 37.5, "specified_mhz": 33.333, "percent": 12.5, "reach": "beyond"}]}`; `setting` is what is judged: as
//! it is noted on the board, else the best; null while figures are missing or a note cannot be read. `best` is the best
//! whatever is noted. `competing` are parts that stand behind others for a role that is full: the machine is
//! judged without them.

use std::fmt::Write as _;

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::fit::{Because, Build, Constraint, Models, Verdict, competing, draws, watts};
use crate::record::{PartId, Word as _};
use crate::trade::clock::{ClockVerdict, Reach, Row};
use crate::trade::drive::{FileSystem, file_systems};
use crate::trade::supply::Rail;
use crate::{counted, text};

/// How many settings are told in words beside the one that is judged, where not all are asked for.
const MOST_SETTINGS: usize = 12;

#[derive(Args)]
pub struct Fit {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("The machine"))]
    machine: String,
    #[arg(long, help = text!("Tell every setting that board and processor allow"))]
    all: bool,
    #[command(flatten)]
    on: On,
}

/// What disks are to be used with.
#[derive(Args)]
pub struct On {
    #[arg(long, value_name = "ID", value_parser = known_file_system, help = text!("Judge disks with this file system too, as `work-out drive` lists them"))]
    file_system: Option<FileSystem>,
}

impl On {
    pub fn file_system(&self) -> Option<FileSystem> {
        self.file_system.clone()
    }
}

fn known_file_system(id: &str) -> Result<FileSystem, String> {
    let all = file_systems();
    let ids = all.iter().map(|system| system.id).collect::<Vec<_>>().join(", ");
    all.into_iter().find(|system| system.id == id).ok_or_else(|| text!("one of {ids}", ids = ids))
}

#[derive(Serialize)]
struct Form {
    machine: String,
    /// `None` where there is nothing to judge.
    verdict: Option<Verdict>,
    constraints: Vec<ConstraintForm>,
    setting: Option<SettingForm>,
    best: Option<SettingForm>,
    settings: Vec<SettingForm>,
    plugged: Vec<LinkForm>,
    load: Vec<LoadForm>,
    watts: f64,
    competing: Vec<String>,
}

#[derive(Serialize)]
struct ConstraintForm {
    constraint: Constraint,
    verdict: Option<Verdict>,
    because: Vec<BecauseForm>,
}

/// One reason.
#[derive(Serialize)]
pub struct BecauseForm {
    pub verdict: Verdict,
    part: Option<String>,
    pub say: String,
    source: String,
    figure: Option<&'static str>,
}

#[derive(Clone, PartialEq, Serialize)]
struct SettingForm {
    bus_mhz: f64,
    multiplier: f64,
    core_mhz: f64,
    cache_mhz: Option<f64>,
    pci_mhz: Option<f64>,
    agp_mhz: Option<f64>,
    reach: Reach,
    beyond: Vec<BeyondForm>,
}

/// A clock beyond what it is specified for.
#[derive(Clone, PartialEq, Serialize)]
struct BeyondForm {
    clock: &'static str,
    mhz: f64,
    specified_mhz: f64,
    percent: f64,
    reach: Reach,
}

#[derive(Serialize)]
struct LinkForm {
    part: String,
    connector: String,
    into: String,
    offer: String,
}

#[derive(Serialize)]
struct LoadForm {
    rail: Rail,
    amps: f64,
}

/// A part's tag.
pub fn tag(part: PartId, opened: &Opened) -> String {
    opened.logbook.part(part).map_or_else(String::new, |file| file.part.tag.clone())
}

impl BecauseForm {
    pub fn of(because: &Because, opened: &Opened) -> Self {
        Self {
            verdict: because.verdict(),
            part: because.part().map(|part| tag(part, opened)),
            say: because.sentence(&opened.logbook, &opened.rules),
            source: because.source().said(),
            figure: because.missing().map(|(_, figure)| figure.name()),
        }
    }
}

/// The mark before a reason: what speaks against it stands out from what is told only.
pub fn mark(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::No => "-",
        Verdict::NotKnown => "?",
        Verdict::Caveat => "!",
        Verdict::Fits => "·",
    }
}

impl From<&Row> for SettingForm {
    fn from(row: &Row) -> Self {
        Self {
            bus_mhz: row.settings.bus_mhz,
            multiplier: row.settings.multiplier,
            core_mhz: row.clocks.core_mhz,
            cache_mhz: row.clocks.cache_mhz,
            pci_mhz: row.clocks.pci_mhz,
            agp_mhz: row.clocks.agp_mhz,
            reach: row.reach,
            beyond: row.verdicts.iter().filter(|clock| clock.reach > Reach::Within).map(BeyondForm::from).collect(),
        }
    }
}

impl From<&ClockVerdict> for BeyondForm {
    fn from(verdict: &ClockVerdict) -> Self {
        let ClockVerdict { clock, mhz, specified_mhz, beyond_percent, reach, .. } = *verdict;
        Self { clock, mhz, specified_mhz, percent: beyond_percent, reach }
    }
}

impl SettingForm {
    fn said(&self) -> String {
        let mhz = |mhz: f64| format!("{mhz:.1}").trim_end_matches(".0").to_owned();
        let mut line = text!(
            "{multiplier} × {bus} = {core} MHz",
            multiplier = self.multiplier,
            bus = mhz(self.bus_mhz),
            core = mhz(self.core_mhz)
        );
        let beside = [(text!("cache"), self.cache_mhz), (text!("PCI"), self.pci_mhz), (text!("AGP"), self.agp_mhz)];
        for (name, clock) in beside {
            if let Some(clock) = clock {
                let _ = write!(line, ", {name} {}", mhz(clock));
            }
        }
        if self.beyond.is_empty() {
            return format!("{line}: {}", self.reach.said());
        }
        let beyond = self.beyond.iter().map(|clock| {
            text!(
                "{clock} {reach} ({percent} % over)",
                clock = clock.clock,
                reach = clock.reach.said(),
                percent = format!("{:.0}", clock.percent)
            )
        });
        format!("{line}: {}", beyond.collect::<Vec<_>>().join(", "))
    }
}

impl Fit {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let machine = opened.machine(&self.machine)?;
        let mut models = Models::new(&opened.rules);
        let build = opened.answers.build(machine, &mut models, self.on.file_system());
        let unanswered = || anyhow!(text!("the answers do not hold this machine; open the logbook again"));
        let (build, known) = build.zip(opened.answers.machine(machine)).ok_or_else(unanswered)?;
        let behind = competing(&known.file, &known.readiness.roles);
        let form = form(&known.file.machine.name, &build, &behind, &opened);
        if json { as_json(&form) } else { Ok(in_words(&form, self.all)) }
    }
}

fn form(machine: &str, build: &Build, behind: &[PartId], opened: &Opened) -> Form {
    let constraint = |constraint: &Constraint| {
        let because: Vec<BecauseForm> =
            build.of(*constraint).into_iter().map(|one| BecauseForm::of(one, opened)).collect();
        ConstraintForm { constraint: *constraint, verdict: because.first().map(|worst| worst.verdict), because }
    };
    let links = build.plugged().links().map(|link| {
        let (part, host) = (&build.pieces()[link.part], &build.pieces()[link.host]);
        LinkForm {
            part: tag(part.part(), opened),
            connector: part.model.needs[link.need].id.to_string(),
            into: tag(host.part(), opened),
            offer: host.model.offers[link.offer].id.to_string(),
        }
    });
    let drawn = draws(build.pieces());
    Form {
        machine: machine.to_owned(),
        verdict: (!build.pieces().is_empty()).then(|| build.verdict()),
        constraints: Constraint::ALL.iter().map(constraint).collect(),
        setting: build.setting().map(SettingForm::from),
        best: build.best().map(SettingForm::from),
        settings: build.settings().iter().map(SettingForm::from).collect(),
        plugged: links.collect(),
        load: drawn.iter().map(|(rail, amps)| LoadForm { rail: *rail, amps: *amps }).collect(),
        watts: watts(&drawn),
        competing: behind.iter().map(|part| tag(*part, opened)).collect(),
    }
}

fn in_words(form: &Form, tells_all: bool) -> String {
    let Some(verdict) = form.verdict else {
        let nothing = text!("there is nothing to judge: no part is planned for it or fitted in it");
        return format!("{}: {nothing}", form.machine);
    };
    let mut lines = format!("{}: {}", form.machine, verdict.label());
    for one in &form.constraints {
        let Some(verdict) = one.verdict else { continue };
        let _ = write!(lines, "\n  {}: {}", one.constraint.label(), verdict.label());
        // What several rest on is told once, below them.
        for alike in one.because.chunk_by(|one, other| one.source == other.source) {
            for because in alike {
                let _ = write!(lines, "\n    {} {}", mark(because.verdict), because.say);
            }
            let _ = write!(lines, "\n        {}", alike[0].source);
        }
        if one.constraint == Constraint::Clocks {
            write_settings(&mut lines, form, tells_all);
        }
    }
    if !form.competing.is_empty() {
        let behind = form.competing.join(", ");
        let _ = write!(lines, "\n  {}", text!("Judged without {parts}, which stand behind others.", parts = behind));
    }
    lines
}

/// The setting that is judged, the best, and the others.
fn write_settings(lines: &mut String, form: &Form, tells_all: bool) {
    if form.best != form.setting {
        let set = form.setting.as_ref().map_or_else(|| text!("not known").to_owned(), SettingForm::said);
        let _ = write!(lines, "\n      {}", text!("as set: {setting}", setting = set));
        if let Some(best) = &form.best {
            let _ = write!(lines, "\n      {}", text!("best: {setting}", setting = best.said()));
        }
    }
    let is_told =
        |setting: &&SettingForm| Some(*setting) == form.setting.as_ref() || Some(*setting) == form.best.as_ref();
    let others: Vec<&SettingForm> = form.settings.iter().filter(|setting| !is_told(setting)).collect();
    let most = if tells_all { others.len() } else { MOST_SETTINGS.min(others.len()) };
    for setting in &others[..most] {
        let _ = write!(lines, "\n      {}", text!("or {setting}", setting = setting.said()));
    }
    if others.len() > most {
        let more = counted!("{count} more setting", "{count} more settings", others.len() - most);
        let _ = write!(lines, "\n      {}", text!("and {more}: --all tells them", more = more));
    }
}
