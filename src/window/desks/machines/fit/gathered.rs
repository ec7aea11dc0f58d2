//! What a machine's sheet shows of fit, in words and figures, gathered once a revision.

use egui::Color32;

use super::clocks::Clocks;
use super::rails::Rails;
use crate::assess::fit::{Because, Build, Constraint, Link, Verdict};
use crate::assess::reason::part_name;
use crate::record::{Figure, Kind, Logbook, PartId, Word};
use crate::rules::Rules;
use crate::rules::connectors::Family;
use crate::text;
use crate::window::outbox::View;
use crate::window::theme::Tokens;
use crate::window::theme::marks::Mark;

/// A part of the machine.
pub struct Block {
    pub part: PartId,
    pub kind: Kind,
    pub tag: String,
    pub title: String,
    /// The worst of the reasons that are about it.
    pub verdict: Verdict,
}

/// Connectors of one part in those of another.
pub struct Line {
    pub part: usize,
    pub host: usize,
    /// What they are plugged into.
    pub label: String,
    pub family: Option<Family>,
    pub sentence: String,
    pub source: String,
}

/// Connectors that are offered and free.
pub struct Open {
    pub host: usize,
    pub label: String,
}

/// Connectors that are needed and find no offer.
pub struct Unmet {
    pub part: usize,
    pub label: String,
    pub verdict: Verdict,
}

/// A reason in words.
pub struct Told {
    pub verdict: Verdict,
    pub constraint: Constraint,
    pub sentence: String,
    pub source: String,
    pub part: Option<PartId>,
    pub missing: Option<(PartId, Figure)>,
}

/// All of it.
pub struct Shown {
    pub verdict: Verdict,
    pub blocks: Vec<Block>,
    pub lines: Vec<Line>,
    pub open: Vec<Open>,
    pub unmet: Vec<Unmet>,
    /// What speaks against it or is not known, worst first.
    pub against: Vec<Told>,
    /// What fits.
    pub fitting: Vec<Told>,
    pub rails: Option<Rails>,
    pub clocks: Option<Clocks>,
}

impl Block {
    pub fn name(&self) -> String {
        format!("{} {}", self.tag, self.title)
    }
}

impl Shown {
    pub fn of(build: &Build, view: &View<'_>) -> Self {
        let blocks: Vec<Block> = build.pieces().iter().map(|piece| block(piece.part(), build, view)).collect();
        let mut told: Vec<Told> = build.because().map(|because| Told::of(because, view.logbook, view.rules)).collect();
        told.sort_by_key(|one| (std::cmp::Reverse(one.verdict), one.constraint as usize));
        let at = told.partition_point(|one| one.verdict != Verdict::Fits);
        let fitting = told.split_off(at);
        let place = |part| blocks.iter().position(|block| block.part == part);
        let unmet = build.because().filter_map(|because| {
            let (part, connector, missing) = match because {
                Because::NeedUnmet { part, connector, missing, .. } => (*part, connector, *missing),
                Because::AdapterRing { part, connector, .. } => (*part, connector, 1),
                _ => return None,
            };
            let label = times(missing, view.rules.connectors.label(connector));
            Some(Unmet {
                part: place(part)?,
                label: text!("needs {connector}", connector = label),
                verdict: because.verdict(),
            })
        });
        Self {
            verdict: build.verdict(),
            unmet: unmet.collect(),
            lines: lines(build, view),
            open: open(build, view),
            blocks,
            against: told,
            fitting,
            rails: Rails::of(build),
            clocks: Clocks::of(build),
        }
    }
}

fn block(part: PartId, build: &Build, view: &View<'_>) -> Block {
    let about = build.because().filter(|because| because.part() == Some(part));
    let file = view.logbook.part(part);
    Block {
        part,
        kind: file.map_or(Kind::Other, |file| file.part.kind),
        tag: file.map(|file| file.part.tag.clone()).unwrap_or_default(),
        title: file.map(|file| view.logbook.title_of(file)).unwrap_or_default(),
        verdict: about.map(Because::verdict).max().unwrap_or(Verdict::Fits),
    }
}

fn lines(build: &Build, view: &View<'_>) -> Vec<Line> {
    let mut links: Vec<(Link, u32)> = Vec::new();
    for link in build.plugged().links() {
        match links.iter_mut().find(|(known, _)| *known == link) {
            Some((_, count)) => *count += 1,
            None => links.push((link, 1)),
        }
    }
    let connectors = &view.rules.connectors;
    let line = |(link, count): (Link, u32)| {
        let (part, host) = (&build.pieces()[link.part], &build.pieces()[link.host]);
        let (need, offer) = (&part.model.needs[link.need], &host.model.offers[link.offer]);
        let sentence = text!(
            "{part} needs {need}, and {host} offers {offer}.",
            part = part_name(view.logbook, part.part()),
            need = times(count, connectors.label(&need.id)),
            host = part_name(view.logbook, host.part()),
            offer = connectors.label(&offer.id)
        );
        Line {
            part: link.part,
            host: link.host,
            label: times(count, connectors.label(&offer.id)),
            family: offer.family,
            sentence,
            source: offer.source.said(),
        }
    };
    links.into_iter().map(line).collect()
}

fn open(build: &Build, view: &View<'_>) -> Vec<Open> {
    let mut open = Vec::new();
    for (host, piece) in build.pieces().iter().enumerate() {
        for (offer, port) in piece.model.offers.iter().enumerate() {
            let taken = build.plugged().links().filter(|link| (link.host, link.offer) == (host, offer)).count();
            let free = port.count.saturating_sub(taken as u32);
            if free > 0 {
                open.push(Open { host, label: times(free, view.rules.connectors.label(&port.id)) });
            }
        }
    }
    open
}

/// "ISA slot", "3 × ISA slot".
fn times(count: u32, label: &str) -> String {
    if count == 1 { label.to_owned() } else { format!("{count} × {label}") }
}

impl Told {
    pub fn of(because: &Because, logbook: &Logbook, rules: &Rules) -> Self {
        Self {
            verdict: because.verdict(),
            constraint: because.constraint(),
            sentence: because.sentence(logbook, rules),
            source: because.source().said(),
            part: because.part(),
            missing: because.missing(),
        }
    }

    /// The same without a way to the figure that is missing, for a part that has no sheet.
    #[must_use]
    pub fn without_ways(&self) -> Self {
        Self { missing: None, part: None, sentence: self.sentence.clone(), source: self.source.clone(), ..*self }
    }

    /// What it rests on: the constraint, and its rule or source.
    pub fn rests_on(&self) -> String {
        text!("{constraint}: {source}", constraint = self.constraint.label(), source = self.source)
    }
}

/// Mark and hue of a verdict of fit.
pub fn mark_of(verdict: Verdict, tokens: &Tokens) -> (Mark, Color32) {
    (Mark::of_fit(verdict), tokens.fit(verdict))
}
