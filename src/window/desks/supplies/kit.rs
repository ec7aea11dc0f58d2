//! One kit: where it stands and its next step, its lines, and of each line whom it serves and why it may.

use std::collections::HashMap;
use std::sync::Arc;

use egui::{ScrollArea, Ui};

use super::kits::mark_of;
use super::put;
use super::recaps::Recaps;
use crate::assess::kits::acts::{Hindrance, step};
use crate::assess::kits::demand::is_low_esr;
use crate::assess::kits::{Demand, Spec, allowed};
use crate::record::{
    CapacitorId, Change, EntryKey, KitFile, KitId, KitLine, KitLineFile, KitLineId, KitState, Logbook, Moment,
    PartFile, Word as _,
};
use crate::window::forms::{money_text, read_money};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Edit, Fact, badge_ui, body, link_ui, mark_button, press_ui, remark, section_ui, strong};
use crate::{counted, text};

/// What the sheet keeps.
#[derive(Default)]
pub struct KitSheet {
    /// The line whose positions are on show.
    open: Option<KitLineId>,
    edit: Edit,
    /// Whose the positions are, of one revision and kit.
    whose: Option<(u64, KitId, Whose)>,
    /// Recaps that are to be marked done when the kit is used up.
    recaps: Recaps,
}

type Whose = HashMap<CapacitorId, Arc<PartFile>>;

impl KitSheet {
    /// Draws the kit; `true` when it was put away.
    pub fn ui(&mut self, ui: &mut Ui, file: &KitFile, view: &View<'_>, outbox: &mut Outbox) -> bool {
        let mut away = false;
        ui.horizontal(|ui| {
            away = mark_button(ui, Mark::Away, text!("Put the kit away")).clicked();
            let (mark, colour) = mark_of(file.kit.state, &ui.tokens());
            let word = file.kit.state.label();
            badge_ui(ui, mark, word, &text!("The kit is: {state}", state = word), colour);
        });
        ScrollArea::vertical().id_salt("kit").auto_shrink(false).show(ui, |ui| {
            section_ui(ui, &file.kit.name);
            ui.label(remark(ui, since_text(file)));
            ui.add_space(GRID);
            self.recaps.ui(ui, file, view);
            acts_ui(ui, file, &self.recaps, view, outbox);
            ui.add_space(2.0 * GRID);
            ui.label(remark(ui, sums_text(file, view)));
            let key = (view.logbook.revision, file.kit.id);
            let whose = match self.whose.take() {
                Some((revision, kit, whose)) if (revision, kit) == key => whose,
                _ => whose(file, view),
            };
            for line in &file.lines {
                ui.push_id(line.line.id, |ui| self.line_ui(ui, file, line, &whose, view, outbox));
            }
            self.whose = Some((key.0, key.1, whose));
        });
        away
    }

    fn line_ui(
        &mut self,
        ui: &mut Ui,
        file: &KitFile,
        of: &KitLineFile,
        whose: &Whose,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) {
        let line = &of.line;
        ui.add_space(3.0 * GRID);
        let said = text!("{count} × {what}", count = of.positions.len(), what = Spec::of_line(line).said());
        let is_open = self.open == Some(line.id);
        let word = strong(&said).color(ui.tokens().press);
        let response = ui.add(egui::Button::new(word).frame(false).wrap());
        let tooltip = text!("Whom it serves, and why it may");
        response
            .widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, text!("Line: {line}", line = said)));
        if response.on_hover_text(tooltip).clicked() {
            self.open = if is_open { None } else { Some(line.id) };
        }
        ui.label(body(pieces_text(line, view)));
        if line.to_buy > 0 && file.kit.state != KitState::Used {
            self.price_ui(ui, line, view, outbox);
        }
        if is_open {
            ui.indent("served", |ui| served_ui(ui, of, whose, view, outbox));
        }
    }

    fn price_ui(&mut self, ui: &mut Ui, line: &KitLine, view: &View<'_>, outbox: &mut Outbox) {
        let currency = &view.logbook.workshop.currency;
        let (price_key, supplier_key) = (format!("price {}", line.id), format!("supplier {}", line.id));
        ui.horizontal_wrapped(|ui| {
            let price = line.price_cents.map(|cents| money_text(cents, currency)).unwrap_or_default();
            if let Some(typed) = self.edit.inline_ui(ui, Fact::line(&price_key, text!("Price of one")), &price) {
                match read_money(&typed, currency) {
                    Ok(price_cents) => {
                        let line = KitLine { price_cents, ..line.clone() };
                        outbox.change(put(text!("Price a line of the kit").to_owned(), line));
                    }
                    Err(wrong) => self.edit.refuse(&price_key, &typed, wrong),
                }
            }
            let fact = Fact::line(&supplier_key, text!("Bought from"));
            if let Some(supplier) = self.edit.inline_ui(ui, fact, &line.supplier) {
                let line = KitLine { supplier, ..line.clone() };
                outbox.change(put(text!("Say where a line of the kit is bought").to_owned(), line));
            }
        });
    }
}

/// The steps that its life allows now, the one onwards first.
fn acts_ui(ui: &mut Ui, file: &KitFile, recaps: &Recaps, view: &View<'_>, outbox: &mut Outbox) {
    let buys = file.lines.iter().any(|line| line.line.to_buy > 0);
    let steps: &[(KitState, &str, &str)] = match file.kit.state {
        KitState::Draft => &[(
            KitState::Frozen,
            text!("Freeze it"),
            text!("Its lines hold from here on, and what is in stock is reserved for it"),
        )],
        KitState::Frozen => &[
            (KitState::Ordered, text!("It is ordered"), text!("What is to be bought is on its way")),
            (KitState::Received, text!("It is all here"), text!("What was bought goes into stock, reserved")),
            (KitState::Draft, text!("Take it up again"), text!("Lets go what is reserved for it")),
        ],
        KitState::Ordered => &[
            (KitState::Received, text!("It has come"), text!("What was bought goes into stock, reserved")),
            (KitState::Frozen, text!("The order is cancelled"), ""),
        ],
        KitState::Received => {
            &[(KitState::Used, text!("It is used up"), text!("Out of stock, and told at each position that it served"))]
        }
        KitState::Used => &[],
    };
    ui.horizontal_wrapped(|ui| {
        for (to, word, tooltip) in steps {
            if *to == KitState::Ordered && !buys {
                continue;
            }
            if press_ui(ui, word, tooltip, None).clicked() {
                let taken = if *to == KitState::Used {
                    recaps.use_up(file, view)
                } else {
                    stepped(file, *to, view.logbook, view)
                };
                match taken {
                    Ok(change) => outbox.change(change),
                    Err(hindrance) => outbox.say(hindrance.to_string()),
                }
            }
        }
        if file.kit.state == KitState::Draft && link_ui(ui, text!("Strike it out")).clicked() {
            outbox.change(struck_out(file));
        }
    });
}

/// So many positions of a line are named at most.
const SHOWN: usize = 200;

/// The positions of a line, those for which the same holds in one paragraph.
fn served_ui(ui: &mut Ui, of: &KitLineFile, whose: &Whose, view: &View<'_>, outbox: &mut Outbox) {
    let spec = Spec::of_line(&of.line);
    let mut groups: Vec<(String, Vec<(&PartFile, String)>)> = Vec::new();
    for served in of.positions.iter().take(SHOWN) {
        let Some(part) = whose.get(&served.capacitor) else { continue };
        let Some(one) = part.capacitors.iter().find(|one| one.position.id == served.capacitor) else { continue };
        let demand = Demand::of(&one.position, is_low_esr(&one.position, view.rules), view.rules);
        let reasons = demand.and_then(|demand| allowed(&demand, &spec));
        let why = match reasons {
            Some(reasons) => reasons.iter().map(|reason| reason.sentence(view.rules)).collect::<Vec<_>>().join("; "),
            None => text!("the rules as they are now do not allow it").to_owned(),
        };
        let name = format!("{} {}", part.part.tag, one.position.designator);
        match groups.iter_mut().find(|(known, _)| *known == why) {
            Some((_, names)) => names.push((part, name)),
            None => groups.push((why, vec![(part, name)])),
        }
    }
    if of.positions.len() > SHOWN {
        let more = of.positions.len() - SHOWN;
        ui.label(remark(ui, text!("The first ones; there are {count} more.", count = more)));
    }
    for (why, names) in groups {
        ui.horizontal_wrapped(|ui| {
            for (part, name) in &names {
                if link_ui(ui, name.trim()).clicked() {
                    outbox.go(Page::Capacitors(part.part.id));
                }
            }
        });
        ui.label(remark(ui, why));
    }
}

fn whose(file: &KitFile, view: &View<'_>) -> Whose {
    let served: std::collections::HashSet<CapacitorId> = file.positions().map(|one| one.capacitor).collect();
    let all = view.logbook.parts.iter().flat_map(|part| part.capacitors.iter().map(move |one| (one, part)));
    all.filter(|(one, _)| served.contains(&one.position.id))
        .map(|(one, part)| (one.position.id, Arc::clone(part)))
        .collect()
}

fn since_text(file: &KitFile) -> String {
    let kit = &file.kit;
    let mut words = vec![kit.scope.clone()];
    for (when, said) in [
        (kit.frozen, text!("frozen {day}", day = kit.frozen)),
        (kit.ordered, text!("ordered {day}", day = kit.ordered)),
        (kit.received, text!("received {day}", day = kit.received)),
        (kit.used, text!("used up {day}", day = kit.used)),
    ] {
        words.extend(when.is_known().then_some(said));
    }
    words.retain(|word| !word.is_empty());
    words.join(" · ")
}

fn sums_text(file: &KitFile, view: &View<'_>) -> String {
    let lines = file.lines.iter().map(|line| &line.line);
    let cost: i64 =
        lines.clone().filter_map(|line| Some(line.price_cents? * i64::from(line.to_buy + line.spares))).sum();
    let positions = counted!("{count} position", "{count} positions", file.positions().count());
    let said = counted!("{count} line", "{count} lines", file.lines.len());
    let mut said = text!("{lines} for {positions}", lines = said, positions = positions);
    if cost > 0 {
        said += &text!(", {money} to buy", money = money_text(cost, &view.logbook.workshop.currency));
        if lines.clone().any(|line| line.to_buy > 0 && line.price_cents.is_none()) {
            said += text!(" and more: not every price is told");
        }
    }
    said
}

fn pieces_text(line: &KitLine, view: &View<'_>) -> String {
    let mut words = Vec::new();
    if line.from_stock > 0 {
        let name = line.material.and_then(|id| view.logbook.material(id)).map_or("", |known| &known.name);
        words.push(text!("{count} from stock: {material}", count = line.from_stock, material = name));
    }
    if line.to_buy > 0 {
        words.push(text!("{count} to buy, and {spares} to spare", count = line.to_buy, spares = line.spares));
    }
    words.join("; ")
}

/// A step of the kit's life, as the logbook given has its parts.
pub fn stepped(file: &KitFile, to: KitState, logbook: &Logbook, view: &View<'_>) -> Result<Change, Hindrance> {
    let entries = step(file, to, logbook, view.rules, Moment::on(view.today), &mut uuid::Uuid::now_v7)?;
    let mut change = Change::new(text!("Kit {name}: {state}", name = file.kit.name, state = to.label().to_lowercase()));
    change.put_all(entries);
    Ok(change)
}

fn struck_out(file: &KitFile) -> Change {
    let mut change = Change::new(text!("Strike out kit {name}", name = file.kit.name));
    let positions = file.positions().map(|one| EntryKey::from(one.id));
    let lines = file.lines.iter().map(|line| EntryKey::from(line.line.id));
    for key in positions.chain(lines) {
        change.remove(key);
    }
    change.remove(file.kit.id);
    change
}
