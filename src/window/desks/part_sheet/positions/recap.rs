//! One press for a recap: the work, where nobody has it on the list yet, and a kit for its positions, as one change.

use std::collections::{BTreeMap, HashMap, HashSet};

use egui::Ui;

use super::super::about::About;
use crate::assess::kits::acts::draft;
use crate::assess::kits::{self, PATIENCE, Scope, Which};
use crate::record::{CapacitorId, Change, Entry, Kind, KitId, Moment, Touches, Work, WorkState};
use crate::rules::WorkRule;
use crate::store::Store;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::widgets::{link_ui, press_ui, remark};

/// How many series are offered, the commonest first.
const SERIES: usize = 3;

/// Draws a press for the bad ones that no kit serves yet (`taken` names those that one does), for each series and for all wet ones, and a way to the kits that serve this part.
pub fn recap_ui(ui: &mut Ui, taken: &HashMap<CapacitorId, KitId>, about: &About<'_>, outbox: &mut Outbox) {
    let of = |which: &Which| -> HashSet<CapacitorId> {
        let all = about.file.capacitors.iter().filter(|one| which.means(one));
        all.map(|one| one.position.id).filter(|id| !taken.contains_key(id)).collect()
    };
    let mut series: BTreeMap<&str, usize> = BTreeMap::new();
    for one in about.file.capacitors.iter().filter(|one| !one.position.series.is_empty()) {
        *series.entry(&one.position.series).or_default() += 1;
    }
    let mut series: Vec<(&str, usize)> = series.into_iter().collect();
    series.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    let series = series.into_iter().take(SERIES).map(|(name, _)| Which::Series(name.to_owned()));
    ui.horizontal_wrapped(|ui| {
        for which in [Which::Bad, Which::Wet].into_iter().chain(series) {
            let chosen = of(&which);
            if chosen.is_empty() {
                continue;
            }
            let word = match &which {
                Which::Bad => text!("Recap the bad ones ({count})", count = chosen.len()),
                Which::Series(name) => text!("Recap series {series} ({count})", series = name, count = chosen.len()),
                _ => text!("Recap all wet ones ({count})", count = chosen.len()),
            };
            let tooltip = text!("Puts the recap on the list of work, and gathers a kit for it");
            if press_ui(ui, &word, tooltip, None).clicked() {
                recap(about, chosen, &which, outbox);
            }
        }
        let own: HashSet<_> =
            about.file.capacitors.iter().filter_map(|one| taken.get(&one.position.id).copied()).collect();
        for kit in about.view.logbook.kits.iter().filter(|file| own.contains(&file.kit.id)) {
            if link_ui(ui, &text!("Kit: {name}", name = kit.kit.name)).clicked() {
                outbox.show_kit(kit.kit.id);
            }
            ui.label(remark(ui, crate::record::Word::label(kit.kit.state)));
        }
    });
}

fn recap(about: &About<'_>, chosen: HashSet<CapacitorId>, which: &Which, outbox: &mut Outbox) {
    let view = about.view;
    let mut change = Change::new(text!("Recap of {tag}: {which}", tag = about.tag(), which = which.said()));
    change.put_all(work(about, &chosen).map(Entry::from));
    let proposal = kits::gather(view.logbook, view.rules, &Scope::Chosen(chosen), &Which::All, PATIENCE);
    let at = Moment::on(view.today);
    let name = text!("Recap of {tag}", tag = about.tag());
    let scope = format!("{}, {}", about.tag(), which.said());
    if proposal.lines.is_empty() {
        outbox.say(text!("No position of these can be in a kit; the console’s `kit` says why."));
    } else {
        let entries = draft(&proposal, view.logbook, &name, &scope, at, &mut uuid::Uuid::now_v7);
        let kit = entries.iter().find_map(|entry| if let Entry::Kit(kit) = entry { Some(kit.id) } else { None });
        change.put_all(entries);
        if let Some(kit) = kit {
            outbox.show_kit(kit);
        }
    }
    if !proposal.left_out.is_empty() && !proposal.lines.is_empty() {
        let count = proposal.left_out.len();
        outbox.say(crate::counted!(
            "{count} position is not in the kit: see it there, or with the console’s `kit`",
            "{count} positions are not in the kit: see the console’s `kit` for why",
            count
        ));
    }
    outbox.change(change);
}

/// The recap as work, unless a finding calls for one already.
fn work(about: &About<'_>, chosen: &HashSet<CapacitorId>) -> Option<Work> {
    let view = about.view;
    let called = view.rules.orders.first().map_or(&[][..], |order| &order.called);
    let wants_kit = |rule: &WorkRule| rule.materials.iter().any(|name| called.contains(name));
    let mut tasks = about.answers.tasks.iter().filter_map(|task| task.rule());
    if tasks.any(|rule| wants_kit(rule)) {
        return None;
    }
    let kind: Kind = about.part().kind;
    let fits = |rule: &&std::sync::Arc<WorkRule>| {
        wants_kit(rule) && rule.cures && (rule.kinds.is_empty() || rule.kinds.contains(&kind))
    };
    let rule = view.rules.work.iter().find(fits)?;
    let mut names: Vec<&str> = about
        .file
        .capacitors
        .iter()
        .filter(|one| chosen.contains(&one.position.id))
        .map(|one| one.position.designator.as_str())
        .filter(|name| !name.is_empty())
        .collect();
    names.dedup();
    Some(Work {
        id: Store::new_id(),
        part: about.part().id,
        finding: None,
        rule: rule.name.clone(),
        title: String::new(),
        hold: rule.hold,
        nature: rule.nature,
        state: WorkState::Open,
        changed: about.now(),
        who: String::new(),
        minutes: None,
        used: String::new(),
        reason: String::new(),
        reversible: None,
        note: names.join(", "),
        touches: Touches::Electrical,
    })
}
