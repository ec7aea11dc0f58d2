//! `supplies LOGBOOK [--csv stock | --csv to-buy] [--take FILE]`: stock with what is reserved, kits, what to buy, and
//! what parts and machines cost.
//!
//! `--csv` prints one of the lists as CSV instead. `--take` writes a table of materials into the logbook, as one change
//! and only as a whole: its first line names columns as `--csv stock` does; a known name is changed, another added.
//!
//! JSON: `{"currency": "EUR", "stock": [{"name": "…", "unit": "piece", "stock": 12, "reserved": 4, "minimum": 5,
//! "on_order": 0, "place": "…", "price_cents": 40, "supplier": "…", "for": [{"kit": "…", "amount": 4}]}, …], "kits":
//! [{"name": "…", "scope": "…", "state": "frozen", "lines": 3, "positions": 14, "since": "2026-03-01"}, …], "to_buy":
//! [{"what": "…", "unit": "piece", "amount": 5, "cost_cents": 200, "supplier": "…", "for": ["…", …]}, …], "parts":
//! [{"part": "0042", "bought_cents": 1500, "spent_cents": 320, "minutes": 95, "complete": true}, …], "machines":
//! [{"machine": "…", …}, …]}`. `on_order` is what was ordered by hand; `amount` is null where nobody can tell how much,
//! and where what is on order is enough; `complete` says that every price in a sum is told.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use anyhow::{Context as _, bail};
use clap::{Args, ValueEnum};
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::outstanding::hours_text;
use crate::assess::supplies::{Costs, machine_costs, part_costs, reserved, to_buy};
use crate::paper::supplies::{shopping_csv, stock_csv};
use crate::record::{BadLine, Change, KitState, TableMaterial, Word as _, read_materials};
use crate::store::Store;
use crate::{counted, text};

#[derive(Args)]
pub struct Supplies {
    #[command(flatten)]
    which: Which,
    #[arg(long, value_name = "LIST", conflicts_with = "take", help = text!("Print this list as CSV"))]
    csv: Option<List>,
    #[arg(long, value_name = "FILE", help = text!("Take a table of materials into the stock"))]
    take: Option<PathBuf>,
}

/// A list that can be had as CSV.
#[derive(Clone, Copy, ValueEnum)]
enum List {
    Stock,
    ToBuy,
}

#[derive(Serialize)]
struct Form {
    currency: String,
    stock: Vec<StockForm>,
    kits: Vec<KitForm>,
    to_buy: Vec<ToBuyForm>,
    parts: Vec<PartForm>,
    machines: Vec<MachineForm>,
}

#[derive(Serialize)]
struct StockForm {
    name: String,
    unit: String,
    stock: f64,
    reserved: f64,
    minimum: f64,
    on_order: f64,
    place: Option<String>,
    price_cents: Option<i64>,
    supplier: String,
    r#for: Vec<HeldForm>,
}

#[derive(Serialize)]
struct HeldForm {
    kit: String,
    amount: f64,
}

#[derive(Serialize)]
struct KitForm {
    name: String,
    scope: String,
    state: KitState,
    lines: usize,
    positions: usize,
    since: String,
}

#[derive(Serialize)]
struct ToBuyForm {
    what: String,
    unit: String,
    amount: Option<f64>,
    cost_cents: Option<i64>,
    supplier: String,
    r#for: Vec<String>,
}

#[derive(Serialize)]
struct CostsForm {
    bought_cents: i64,
    spent_cents: i64,
    minutes: u32,
    complete: bool,
}

#[derive(Serialize)]
struct PartForm {
    part: String,
    #[serde(flatten)]
    costs: CostsForm,
}

#[derive(Serialize)]
struct MachineForm {
    machine: String,
    #[serde(flatten)]
    costs: CostsForm,
}

impl From<Costs> for CostsForm {
    fn from(costs: Costs) -> Self {
        Self {
            bought_cents: costs.bought_cents,
            spent_cents: costs.spent_cents,
            minutes: costs.minutes,
            complete: costs.unpriced_parts + costs.unpriced_uses == 0,
        }
    }
}

impl Supplies {
    pub fn answer(&self, json: bool) -> Answer {
        if let Some(file) = &self.take {
            return taken(&self.which.logbook, file);
        }
        let opened = self.which.open()?;
        match self.csv {
            Some(List::Stock) => return Ok(stock_csv(&opened.logbook)),
            Some(List::ToBuy) => {
                let list = to_buy(&opened.logbook, &opened.answers, &opened.rules);
                return Ok(shopping_csv(&list, &opened.logbook));
            }
            None => {}
        }
        let form = form(&opened);
        if json { as_json(&form) } else { Ok(in_words(&form)) }
    }
}

/// Takes a table of materials into the stock, whole or not at all.
fn taken(logbook: &Path, file: &Path) -> Answer {
    let table =
        std::fs::read_to_string(file).with_context(|| text!("{path} cannot be read as text", path = file.display()))?;
    let store = Store::open(logbook)?;
    let book = store.logbook();
    let known = |name: &str| {
        let lower = name.to_lowercase();
        book.materials.iter().map(|one| &**one).find(|one| one.name.to_lowercase() == lower)
    };
    let read = read_materials(&table, known, &mut uuid::Uuid::now_v7)?;
    let (mut wrong, mut change) = (Vec::new(), Change::new(text!("Take materials in from a table")));
    for line in read {
        let placed = line.and_then(|TableMaterial { line, mut material, place }| {
            if let Some(path) = place {
                let unknown = || text!("there is no place “{place}”", place = path);
                material.place = match path.as_str() {
                    "" => None,
                    path => Some(book.place_at(path).ok_or_else(|| BadLine { line, wrong: unknown() })?),
                };
            }
            Ok(material)
        });
        match placed {
            Ok(material) => drop(change.put(material)),
            Err(BadLine { line, wrong: why }) => wrong.push(text!("line {line}: {wrong}", line = line, wrong = why)),
        }
    }
    if !wrong.is_empty() {
        bail!("{}\n{}", text!("nothing was taken from {path}", path = file.display()), wrong.join("\n"));
    }
    let count = change.steps.len();
    store.write(change)?;
    Ok(counted!("{count} material taken in", "{count} materials taken in", count))
}

fn form(opened: &Opened) -> Form {
    let (logbook, answers) = (&opened.logbook, &opened.answers);
    let held = reserved(logbook);
    let kit_name = |kit| logbook.kit(kit).map_or_else(String::new, |file| file.kit.name.clone());
    let stock = logbook.materials.iter().map(|material| StockForm {
        name: material.name.clone(),
        unit: material.unit.clone(),
        stock: material.stock,
        reserved: held.of(material.id),
        minimum: material.minimum,
        on_order: material.on_order,
        place: material.place.map(|place| logbook.place_path(place)),
        price_cents: material.price_cents,
        supplier: material.supplier.clone(),
        r#for: held
            .held(material.id)
            .iter()
            .map(|(kit, amount)| HeldForm { kit: kit_name(*kit), amount: *amount })
            .collect(),
    });
    let kits = logbook.kits.iter().map(|file| KitForm {
        name: file.kit.name.clone(),
        scope: file.kit.scope.clone(),
        state: file.kit.state,
        lines: file.lines.len(),
        positions: file.positions().count(),
        since: file.kit.changed.on.to_string(),
    });
    let buy = to_buy(logbook, answers, &opened.rules).into_iter().map(|one| ToBuyForm {
        what: one.said(),
        cost_cents: one.cost_cents(),
        r#for: one.reasons.iter().map(|reason| reason.sentence(logbook)).collect(),
        unit: one.unit,
        amount: one.amount,
        supplier: one.supplier,
    });
    let costs = part_costs(logbook);
    let mut parts: Vec<PartForm> = logbook
        .parts
        .iter()
        .filter_map(|file| Some((file.part.tag.clone(), *costs.get(&file.part.id)?)))
        .map(|(part, costs)| PartForm { part, costs: costs.into() })
        .collect();
    parts.sort_by(|a, b| a.part.cmp(&b.part));
    let machines = answers
        .machines
        .iter()
        .map(|of| MachineForm { machine: of.file.machine.name.clone(), costs: machine_costs(&costs, of).into() });
    Form {
        currency: logbook.workshop.currency.clone(),
        stock: stock.collect(),
        kits: kits.collect(),
        to_buy: buy.collect(),
        machines: machines.collect(),
        parts,
    }
}

/// An amount with its unit, as short as it can be.
fn amount(amount: f64, unit: &str) -> String {
    format!("{amount} {unit}").trim_end().to_owned()
}

fn money(cents: i64, currency: &str) -> String {
    format!("{}.{:02} {currency}", cents / 100, cents % 100)
}

fn in_words(form: &Form) -> String {
    let mut lines = text!("In stock:").to_owned();
    for one in &form.stock {
        let _ = write!(lines, "\n  {}: {}", one.name, amount(one.stock, &one.unit));
        if one.reserved > 0.0 {
            let names: Vec<&str> = one.r#for.iter().map(|held| held.kit.as_str()).collect();
            lines += &text!(", {amount} reserved for {kits}", amount = one.reserved, kits = names.join(", "));
        }
        if one.on_order > 0.0 {
            lines += &text!(", {amount} on order", amount = one.on_order);
        }
        if one.stock - one.reserved < one.minimum {
            lines += &text!(", below {minimum}", minimum = one.minimum);
        }
    }
    let _ = write!(lines, "\n{}", text!("Kits:"));
    for kit in &form.kits {
        let positions = counted!("{count} position", "{count} positions", kit.positions);
        let count = counted!("{count} line", "{count} lines", kit.lines);
        let _ = write!(lines, "\n  {}: {}, {count}, {positions}", kit.name, kit.state.label().to_lowercase());
    }
    let _ = write!(lines, "\n{}", text!("To buy:"));
    for one in &form.to_buy {
        let much = one.amount.map_or_else(String::new, |many| format!("{}  ", amount(many, &one.unit)));
        let _ = write!(lines, "\n  {much}{}: {}", one.what, one.r#for.join("; "));
    }
    let _ = write!(lines, "\n{}", text!("Machines so far:"));
    for MachineForm { machine, costs } in &form.machines {
        let bought = money(costs.bought_cents, &form.currency);
        let spent = money(costs.spent_cents, &form.currency);
        let said = text!(
            "bought for {bought}, {spent} in materials, {hours} at it",
            bought = bought,
            spent = spent,
            hours = hours_text(costs.minutes)
        );
        let _ = write!(lines, "\n  {machine}: {said}");
        if !costs.complete {
            lines += text!("; not every price is told");
        }
    }
    lines
}
