//! The shopping list: kits, parts that machines lack, and materials that work asks for or that run low.

use super::reserved;
use crate::assess::kits::Spec;
use crate::assess::outstanding::materials;
use crate::assess::reason::machine_name;
use crate::assess::{Answers, Reason};
use crate::record::{KitId, KitLineId, KitState, Logbook, MachineId, MaterialId, RoleId, Word as _};
use crate::rules::Rules;
use crate::{counted, text};

/// What something is bought for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum For {
    /// A frozen kit's line.
    Kit { kit: KitId, line: KitLineId },
    /// A role of a machine that no part fills.
    Role { machine: MachineId, role: RoleId },
    /// Outstanding work that asks for it.
    Work { tasks: usize },
    /// What is there, less what is reserved, is below the minimum.
    Minimum { minimum: f64 },
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq)]
pub struct ToBuy {
    /// Its name; for a kit's line and a role, what it must be is told by `spec` and `reasons`.
    pub name: String,
    pub spec: Option<Spec>,
    pub unit: String,
    /// How much, in its unit; `None` where nobody can tell, as with a cleaner that work asks for.
    pub amount: Option<f64>,
    /// What of the stock it is.
    pub material: Option<MaterialId>,
    /// What is there, where the logbook lists it.
    pub stock: Option<f64>,
    /// For one unit, in hundredths of the logbook's currency.
    pub price_cents: Option<i64>,
    pub supplier: String,
    pub reasons: Vec<For>,
}

impl For {
    /// In words, for a person.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        match *self {
            Self::Kit { kit, .. } => {
                text!("kit {name}", name = logbook.kit(kit).map_or("", |file| &file.kit.name))
            }
            Self::Role { machine, .. } => text!("{machine} lacks it", machine = machine_name(logbook, machine)),
            Self::Work { tasks } => {
                counted!("{count} piece of work asks for it", "{count} pieces of work ask for it", tasks)
            }
            Self::Minimum { minimum } => text!("less than {minimum} left", minimum = minimum),
        }
    }
}

impl ToBuy {
    /// What it is, in words.
    pub fn said(&self) -> String {
        match &self.spec {
            Some(spec) if self.name.is_empty() => spec.said(),
            _ => self.name.clone(),
        }
    }

    /// What it costs, as far as amount and price are known.
    pub fn cost_cents(&self) -> Option<i64> {
        let (amount, price) = self.amount.zip(self.price_cents)?;
        Some((amount * price as f64).round() as i64)
    }
}

/// Everything to buy: lines of frozen kits, then parts for machines, then materials by name.
pub fn to_buy(logbook: &Logbook, answers: &Answers, rules: &Rules) -> Vec<ToBuy> {
    let mut list = kit_lines(logbook);
    list.extend(roles(logbook, answers));
    list.extend(stuff(logbook, answers, rules));
    list
}

fn kit_lines(logbook: &Logbook) -> Vec<ToBuy> {
    let frozen = logbook.kits.iter().filter(|file| file.kit.state == KitState::Frozen);
    frozen
        .flat_map(|file| file.lines.iter().map(move |line| (file, &line.line)))
        .filter(|(_, line)| line.to_buy > 0)
        .map(|(file, line)| {
            let material = line.material.and_then(|id| logbook.material(id));
            ToBuy {
                name: material.map_or_else(String::new, |known| known.name.clone()),
                spec: Some(Spec::of_line(line)),
                unit: material.map_or_else(|| text!("piece").to_owned(), |known| known.unit.clone()),
                amount: Some(f64::from(line.to_buy + line.spares)),
                material: line.material,
                stock: material.map(|known| known.stock),
                price_cents: line.price_cents.or(material.and_then(|known| known.price_cents)),
                supplier: line.supplier.clone(),
                reasons: vec![For::Kit { kit: file.kit.id, line: line.id }],
            }
        })
        .collect()
}

fn roles(logbook: &Logbook, answers: &Answers) -> Vec<ToBuy> {
    let reasons = answers.machines.iter().flat_map(|of| of.readiness.gates.iter().flat_map(|gate| &gate.reasons));
    let missing = reasons.filter_map(|reason| match reason {
        Reason::RoleEmpty { machine, role, missing } => Some((*machine, *role, *missing)),
        _ => None,
    });
    missing
        .map(|(machine, role, missing)| {
            let told = logbook.machine(machine).and_then(|file| file.roles.iter().find(|one| one.id == role));
            let name = told.map(|one| if one.name.is_empty() { one.kind.label().to_owned() } else { one.name.clone() });
            ToBuy {
                name: name.unwrap_or_default(),
                spec: None,
                unit: text!("piece").to_owned(),
                amount: Some(f64::from(missing)),
                material: None,
                stock: None,
                price_cents: None,
                supplier: String::new(),
                reasons: vec![For::Role { machine, role }],
            }
        })
        .collect()
}

/// Materials below their minimum, or asked for by work and not there.
fn stuff(logbook: &Logbook, answers: &Answers, rules: &Rules) -> Vec<ToBuy> {
    let reserved = reserved(logbook);
    let called = rules.orders.first().map_or(&[][..], |order| &order.called);
    let tasks = answers.parts.iter().flat_map(|part| &part.tasks);
    let mut needs = materials(tasks, &logbook.materials);
    // Capacitors are gathered in kits.
    needs.retain(|need| !called.contains(&need.name));
    let mut list = Vec::new();
    for material in &logbook.materials {
        let lower = material.name.to_lowercase();
        let wanted = needs.iter().position(|need| need.name.to_lowercase() == lower).map(|at| needs.remove(at));
        let free = material.stock - reserved.of(material.id);
        let mut reasons = Vec::new();
        if free < material.minimum {
            reasons.push(For::Minimum { minimum: material.minimum });
        }
        reasons.extend(wanted.filter(|_| material.stock <= 0.0).map(|need| For::Work { tasks: need.tasks }));
        if reasons.is_empty() {
            continue;
        }
        list.push(ToBuy {
            name: material.name.clone(),
            spec: Spec::of_material(material),
            unit: material.unit.clone(),
            amount: (material.minimum > free).then_some(material.minimum - free),
            material: Some(material.id),
            stock: Some(material.stock),
            price_cents: material.price_cents,
            supplier: material.supplier.clone(),
            reasons,
        });
    }
    list.extend(needs.into_iter().filter(|need| need.stock.is_none()).map(|need| ToBuy {
        name: crate::text::say(&need.name).to_owned(),
        spec: None,
        unit: String::new(),
        amount: None,
        material: None,
        stock: None,
        price_cents: None,
        supplier: String::new(),
        reasons: vec![For::Work { tasks: need.tasks }],
    }));
    list.sort_by_key(|one| one.name.to_lowercase());
    list
}
