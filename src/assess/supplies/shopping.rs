//! The shopping list: kits, parts that machines lack, retention hardware, and materials that work asks for or that run
//! low, less what is on order.

use super::{on_order, reserved};
use crate::assess::Answers;
use crate::assess::fit::{Models, Piece, RoleFill};
use crate::assess::kits::Spec;
use crate::assess::outstanding::materials;
use crate::assess::placement::Wanted;
use crate::assess::reason::machine_name;
use crate::assess::retention::{self, Missing};
use crate::record::{Kind, KitId, KitLineId, KitState, Logbook, MachineId, MaterialId, PartId, RoleId};
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
    /// A board whose card or cooler nothing holds.
    Board { board: PartId },
    /// So much was ordered by hand and has not come: it is not counted again.
    OnOrder { amount: f64 },
    /// So many pieces come to spare with an ordered kit: they are not counted again.
    Spares { kit: KitId, amount: f64 },
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq)]
pub struct ToBuy {
    /// Its name; for a kit's line and a role, what it must be is told by `spec` and `reasons`.
    pub name: String,
    pub spec: Option<Spec>,
    pub unit: String,
    /// How much, in its unit; `None` where nobody can tell, as with a cleaner that work asks for, and where what is on
    /// order is enough.
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
            Self::Board { board } => {
                text!("{tag} wants it", tag = logbook.part(board).map_or("", |file| &file.part.tag))
            }
            Self::OnOrder { amount } => text!("{amount} on order", amount = amount),
            Self::Spares { kit, amount } => {
                let name = logbook.kit(kit).map_or("", |file| &file.kit.name);
                text!("{amount} on order to spare, with kit {name}", amount = amount, name = name)
            }
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

/// Everything to buy: lines of frozen kits, then parts for machines, then retention hardware, then materials by name.
pub fn to_buy(logbook: &Logbook, answers: &Answers, rules: &Rules) -> Vec<ToBuy> {
    let mut list = kit_lines(logbook);
    let posts = retention::missing(answers, logbook, rules);
    list.extend(roles(logbook, answers, rules, &posts));
    list.extend(posts.iter().map(|missing| of_posts(missing, rules)));
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

fn of_posts(missing: &Missing, rules: &Rules) -> ToBuy {
    ToBuy {
        name: rules.connectors.label(&missing.rule.mechanism).to_owned(),
        spec: None,
        unit: text!("piece").to_owned(),
        amount: Some(missing.count as f64),
        material: None,
        stock: None,
        price_cents: None,
        supplier: String::new(),
        reasons: missing.boards.iter().map(|board| For::Board { board: *board }).collect(),
    }
}

/// Roles that no part fills, each with what would plug in; one of retention hardware is told by the board that wants
/// it, where one does.
fn roles(logbook: &Logbook, answers: &Answers, rules: &Rules, posts: &[Missing]) -> Vec<ToBuy> {
    let (mut models, mut wanted) = (Models::new(rules), Wanted::of(logbook, rules));
    let mut list = Vec::new();
    for of in answers.machines.iter().filter(|of| of.readiness.roles.iter().any(|fill| fill.missing > 0)) {
        let Some(build) = answers.build(of.machine, &mut models, None) else { continue };
        let pieces: Vec<&Piece> = build.pieces().iter().collect();
        let fills = &of.readiness.roles;
        let filled = |role| {
            let fill = fills.iter().find(|fill| fill.role == role);
            fill.map_or(0, RoleFill::filled)
        };
        let is_told = posts.iter().any(|missing| missing.boards.iter().any(|board| of.members.contains(board)));
        let wishes = wanted.in_machine(&of.file, &pieces, filled).into_iter().filter(|wish| wish.required);
        let wishes = wishes.filter(|wish| !(is_told && wish.kind == Some(Kind::Retention)));
        list.extend(wishes.filter_map(|wish| {
            Some(ToBuy {
                name: wish.what(logbook, rules),
                spec: None,
                unit: text!("piece").to_owned(),
                amount: Some(f64::from(wish.count)),
                material: None,
                stock: None,
                price_cents: None,
                supplier: String::new(),
                reasons: vec![For::Role { machine: wish.machine, role: wish.role? }],
            })
        }));
    }
    list
}

/// Materials below their minimum, or asked for by work and not there.
fn stuff(logbook: &Logbook, answers: &Answers, rules: &Rules) -> Vec<ToBuy> {
    let reserved = reserved(logbook);
    let called = rules.orders.first().map_or(&[][..], |order| &order.called);
    let coming = on_order(logbook);
    // A mechanism that a board's design tells has a line of its own.
    let tasks = answers.parts.iter().flat_map(|part| {
        let is_told = |name: &String| retention::is_told(part, name, rules);
        part.tasks.iter().filter(move |task| !task.materials().iter().any(is_told))
    });
    let mut needs = materials(tasks, &logbook.materials);
    // Capacitors are gathered in kits.
    needs.retain(|need| !called.contains(&need.name));
    let mut list = Vec::new();
    for material in &logbook.materials {
        let lower = material.name.to_lowercase();
        let wanted = needs.iter().position(|need| need.name.to_lowercase() == lower).map(|at| needs.remove(at));
        let spares = coming.get(&material.id).map_or(&[][..], Vec::as_slice);
        let to_come = material.on_order + spares.iter().map(|(_, amount)| amount).sum::<f64>();
        let free = material.stock - reserved.of(material.id);
        let short = material.minimum - free - to_come;
        let mut reasons = Vec::new();
        if short > 0.0 {
            reasons.push(For::Minimum { minimum: material.minimum });
        }
        reasons.extend(wanted.filter(|_| material.stock <= 0.0).map(|need| For::Work { tasks: need.tasks }));
        if material.on_order > 0.0 {
            reasons.push(For::OnOrder { amount: material.on_order });
        }
        if reasons.is_empty() {
            continue;
        }
        reasons.extend(spares.iter().map(|(kit, amount)| For::Spares { kit: *kit, amount: *amount }));
        list.push(ToBuy {
            name: material.name.clone(),
            spec: Spec::of_material(material),
            unit: material.unit.clone(),
            amount: (short > 0.0).then_some(short),
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
