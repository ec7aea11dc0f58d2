//! A kit is used up: out of stock, and told at each position that it served. A recap that is done takes of each kit what
//! it held for that part; the rest of the kit stays.

use std::collections::HashMap;

use uuid::Uuid;

use super::Spec;
use super::acts::Hindrance;
use crate::assess::findings::after_capacitors;
use crate::assess::outstanding::{self, Task};
use crate::assess::supplies::{self, Waiting};
use crate::record::{
    CapacitorId, CapacitorLook, CapacitorState, Change, Entry, Id, Kit, KitFile, KitLine, KitLineFile, KitPosition,
    KitState, Logbook, Material, MaterialId, Moment, PartFile, PartId,
};
use crate::rules::Rules;
use crate::text;

/// Whether a task's capacitors come from a kit.
pub fn is_recap(task: &Task, rules: &Rules) -> bool {
    let called = rules.orders.first().map_or(&[][..], |order| &order.called);
    task.materials().iter().any(|name| called.contains(name))
}

/// The kits from which a part's recap can be done now.
pub fn at_hand(part: PartId, logbook: &Logbook) -> Vec<Waiting<'_>> {
    let mut kits = supplies::waiting(logbook).remove(&part).unwrap_or_default();
    kits.retain(Waiting::is_at_hand);
    kits
}

/// The recaps that are still outstanding on parts that a kit serves: each part's place in the answers, and the task's
/// in its list.
pub fn recaps(file: &KitFile, answers: &crate::assess::Answers, rules: &Rules) -> Vec<(usize, usize)> {
    let served: std::collections::HashSet<CapacitorId> = file.positions().map(|one| one.capacitor).collect();
    let parts = answers.parts.iter().enumerate().filter(|(_, part)| {
        !part.tasks.is_empty() && part.file.capacitors.iter().any(|one| served.contains(&one.position.id))
    });
    let tasks = parts.flat_map(|(at, part)| {
        let own = part.tasks.iter().enumerate().filter(|(_, task)| is_recap(task, rules));
        own.map(move |(task, _)| (at, task)).collect::<Vec<_>>()
    });
    tasks.collect()
}

/// Uses up what kits hold for one part; `would_be` is the part as the rest of the change leaves it.
///
/// # Errors
/// More is asked for than lies in stock.
pub fn use_up(
    change: &mut Change,
    kits: &[&KitFile],
    would_be: &PartFile,
    logbook: &Logbook,
    rules: &Rules,
    at: Moment,
    ids: &mut dyn FnMut() -> Uuid,
) -> Result<(), Hindrance> {
    let shares: Vec<KitFile> = kits.iter().map(|file| share(change, file, would_be, at, ids)).collect();
    change.put_all(taken_out(&shares, logbook)?);
    let fitted = fitted(&shares);
    change.put_all(told(would_be, &fitted, rules, at, ids));
    Ok(())
}

/// All of one kit; see [`super::acts::step`].
pub(super) fn used(
    file: &KitFile,
    logbook: &Logbook,
    rules: &Rules,
    at: Moment,
    ids: &mut dyn FnMut() -> Uuid,
) -> Result<Vec<Entry>, Hindrance> {
    let whole = std::slice::from_ref(file);
    let mut entries = taken_out(whole, logbook)?;
    let fitted = fitted(whole);
    for part in &logbook.parts {
        entries.extend(told(part, &fitted, rules, at, ids));
    }
    Ok(entries)
}

/// What a kit holds for a part, as a kit that is used up: itself where it serves no other part, else one split off it.
fn share(change: &mut Change, file: &KitFile, part: &PartFile, at: Moment, ids: &mut dyn FnMut() -> Uuid) -> KitFile {
    let is_own = |one: &KitPosition| part.capacitors.iter().any(|own| own.position.id == one.capacitor);
    let received = if file.kit.received.is_known() { file.kit.received } else { at.on };
    let used = Kit { state: KitState::Used, changed: at, received, used: at.on, ..file.kit.clone() };
    if file.positions().all(is_own) {
        change.put(used.clone());
        return KitFile { kit: used, lines: file.lines.clone() };
    }
    let kit = Kit {
        id: Id::from_uuid(ids()),
        name: text!("{kit}, {tag}", kit = file.kit.name, tag = part.part.tag),
        scope: part.part.tag.clone(),
        ..used
    };
    change.put(kit.clone());
    let mut lines = Vec::new();
    for of in &file.lines {
        let id = Id::from_uuid(ids());
        let positions: Vec<KitPosition> =
            of.positions.iter().filter(|one| is_own(one)).map(|one| KitPosition { line: id, ..one.clone() }).collect();
        if positions.is_empty() {
            continue;
        }
        let pieces = positions.len() as u32;
        let from_stock = pieces.min(of.line.from_stock);
        let to_buy = pieces - from_stock;
        let line = KitLine { id, kit: kit.id, from_stock, to_buy, spares: 0, ..of.line.clone() };
        change.put(line.clone()).put_all(positions.iter().cloned().map(Entry::from));
        if positions.len() == of.positions.len() {
            change.remove(of.line.id);
        } else {
            let left = of.line.to_buy.saturating_sub(to_buy);
            change.put(KitLine { from_stock: of.line.from_stock - from_stock, to_buy: left, ..of.line.clone() });
        }
        lines.push(KitLineFile { line, positions });
    }
    KitFile { kit, lines }
}

/// The stock without the pieces of these kits.
fn taken_out(kits: &[KitFile], logbook: &Logbook) -> Result<Vec<Entry>, Hindrance> {
    let mut entries = Vec::new();
    for (material, pieces) in sums(kits, |line| line.from_stock + line.to_buy) {
        let Some(known) = logbook.material(material) else { continue };
        if pieces > known.stock {
            return Err(Hindrance::Short { material: known.name.clone(), asked: pieces, free: known.stock });
        }
        entries.push(Material { stock: known.stock - pieces, ..Material::clone(known) }.into());
    }
    Ok(entries)
}

/// Pieces by material, over all lines that are of the stock.
pub(super) fn sums(kits: &[KitFile], pieces: impl Fn(&KitLine) -> u32) -> Vec<(MaterialId, f64)> {
    let mut sums: Vec<(MaterialId, f64)> = Vec::new();
    for line in kits.iter().flat_map(|file| &file.lines).map(|line| &line.line) {
        let Some(material) = line.material else { continue };
        let amount = f64::from(pieces(line));
        match sums.iter_mut().find(|(known, _)| *known == material) {
            Some((_, sum)) => *sum += amount,
            None => sums.push((material, amount)),
        }
    }
    sums.retain(|(_, sum)| *sum > 0.0);
    sums
}

/// What was fitted at each position, and of which kit.
type Fitted<'k> = HashMap<CapacitorId, (String, &'k str)>;

fn fitted(kits: &[KitFile]) -> Fitted<'_> {
    let lines = kits.iter().flat_map(|file| file.lines.iter().map(move |line| (file.kit.name.as_str(), line)));
    lines
        .flat_map(|(kit, line)| {
            line.positions.iter().map(move |one| (one.capacitor, (Spec::of_line(&line.line).name(), kit)))
        })
        .collect()
}

/// What is told of a part's positions that were served. A finding closes by its positions only where no recap of the
/// part is outstanding any more: one that is ends with its own evidence.
fn told(part: &PartFile, fitted: &Fitted<'_>, rules: &Rules, at: Moment, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let own = || part.capacitors.iter().filter_map(|one| Some((one.position.id, fitted.get(&one.position.id)?)));
    if own().next().is_none() {
        return Vec::new();
    }
    let mut entries = Vec::new();
    let mut would_be = PartFile::clone(part);
    for (capacitor, (what, kit)) in own() {
        let look = CapacitorLook {
            id: Id::from_uuid(ids()),
            capacitor,
            looked: at,
            state: CapacitorState::Sound,
            measured_uf: None,
            esr_mohm: None,
            leakage_ua: None,
            replaced_by: what.clone(),
            note: text!("Kit {name}", name = kit),
        };
        entries.push(look.clone().into());
        // What is written next comes after all that is written.
        would_be.hang(CapacitorLook { looked: Moment { sequence: u32::MAX, ..at }, ..look }.into());
    }
    if !outstanding::of_part(part, rules).iter().any(|task| is_recap(task, rules)) {
        entries.extend(after_capacitors(&would_be, rules, at, ids));
    }
    entries
}
