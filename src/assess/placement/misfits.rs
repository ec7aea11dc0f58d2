//! The whole machine's fit as a referee: what it does not take, as rows for the solver.
//!
//! Connectors, dates and sums of amperes stand in the question itself; here come core voltage, clocks, memory, disks,
//! space and whatever else fit knows. A finding is widened to all parts of the same designs, so that it is learned once.

use super::ask::Asked;
use super::question::{Barred, Clash};
use super::solve::Misfits;
use crate::assess::fit::{Asked as Against, Because, Build, Constraint, Verdict};
use crate::record::{Kind, PartId};

/// Why a machine's parts do not go together, but for connectors and dates.
pub fn reasons(asked: &Asked, spares: &[usize]) -> Vec<Because> {
    let pieces = spares.iter().map(|spare| asked.pieces[*spare].clone()).collect();
    let build = Build::new(asked.rules, pieces, Against::default());
    let counts = |because: &&Because| {
        because.verdict() == Verdict::No && !matches!(because.constraint(), Constraint::Connectors | Constraint::Dates)
    };
    build.because().filter(counts).cloned().collect()
}

/// What fit finds wrong with these spares in a machine. What is pinned or fitted together is taken as it is.
pub fn misfits(asked: &Asked, machine: usize, spares: &[usize]) -> Misfits {
    let mut misfits = Misfits::default();
    for because in reasons(asked, spares) {
        learn(asked, machine, spares, &because, &mut misfits);
    }
    misfits
}

fn learn(asked: &Asked, machine: usize, spares: &[usize], because: &Because, misfits: &mut Misfits) {
    let question = &asked.question;
    let with_part = |part: PartId| spares.iter().copied().find(|spare| asked.parts[*spare] == part);
    let with_kind = |kind: Kind| spares.iter().copied().find(|spare| asked.pieces[*spare].kind() == kind);
    let comes = |spare: &usize| {
        question.spares[*spare].options.iter().any(|choice| question.machine_of(choice.seat) == machine)
    };
    let of_kinds = |kinds: &[Kind]| -> Vec<usize> {
        (0..asked.parts.len()).filter(comes).filter(|spare| kinds.contains(&asked.pieces[*spare].kind())).collect()
    };
    let is_full = |kind: Kind| {
        let places: u32 = question
            .seats
            .iter()
            .zip(&asked.seats)
            .filter(|(seat, (id, role))| seat.machine == machine && is_role_of(asked, *id, *role, kind))
            .map(|(seat, _)| seat.count)
            .sum();
        spares.iter().filter(|spare| asked.pieces[**spare].kind() == kind).count() >= places as usize
    };
    let (pair, unless) = match because {
        Because::Voltage { part, host, .. } => {
            ((with_part(*part), with_part(*host)), of_kinds(&[Kind::ProcessorAdapter, Kind::VoltageModule]))
        }
        Because::NoSetting { part, board } => ((with_part(*part), with_part(*board)), Vec::new()),
        Because::ClockBeyond { .. } => ((with_kind(Kind::Processor), with_kind(Kind::Mainboard)), Vec::new()),
        Because::ModuleTooLarge { part, .. } => ((with_part(*part), with_kind(Kind::Mainboard)), Vec::new()),
        Because::NoRoom { part, case, .. } => ((with_part(*part), with_part(*case)), Vec::new()),
        Because::Disk { part, .. } => {
            ((with_part(*part), with_kind(Kind::Mainboard)), of_kinds(&[Kind::ControllerCard, Kind::MultiIoCard]))
        }
        // A module that is still missing is told as a wish.
        Because::BankShort { .. } if !is_full(Kind::MemoryModule) => return,
        _ => ((None, None), Vec::new()),
    };
    let is_fixed = |spare: usize| {
        let own = &question.spares[spare];
        own.pinned || own.options.iter().any(|choice| choice.settled && question.machine_of(choice.seat) == machine)
    };
    if let (Some(one), Some(other)) = pair
        && !spares.iter().any(|spare| unless.contains(spare))
    {
        if !(is_fixed(one) && is_fixed(other)) {
            // What is fixed here is only one of its design: others of it may be barred all the same.
            let like = |spare: usize| -> Vec<usize> {
                let design = asked.pieces[spare].model.design;
                let is_like =
                    |at: &usize| *at == spare || (design.is_some() && asked.pieces[*at].model.design == design);
                (0..asked.parts.len()).filter(comes).filter(is_like).collect()
            };
            let fixed_pair = |one: &[usize], other: &[usize]| {
                one.iter().any(|spare| is_fixed(*spare)) && other.iter().any(|spare| is_fixed(*spare))
            };
            let (mut ones, mut others) = (like(one), like(other));
            if fixed_pair(&ones, &others) {
                (ones, others) = (vec![one], vec![other]);
            }
            misfits.clashes.push(Clash { machine: Some(machine), one: ones, other: others, unless });
        }
        return;
    }
    let (together, mut unless) = match because {
        // Another module, another board or processor may fill the bank; other parts have no say in it.
        Because::BankShort { connector, .. } => {
            let has_say = |spare: &usize| {
                matches!(asked.pieces[*spare].kind(), Kind::MemoryModule | Kind::Mainboard | Kind::Processor)
            };
            let fills = |spare: &usize| asked.pieces[*spare].model.needs.iter().any(|port| port.id == *connector);
            let modules = of_kinds(&[Kind::MemoryModule]).into_iter().filter(fills).collect();
            (spares.iter().copied().filter(has_say).collect(), modules)
        }
        _ => (fewest(asked, spares, because.constraint()), unless),
    };
    if !together.iter().all(|spare| is_fixed(*spare)) {
        unless.retain(|spare| !spares.contains(spare));
        misfits.barred.push(Barred { machine, spares: together, unless });
    }
}

/// As few of these spares as still do not go together, as far as one constraint is concerned.
fn fewest(asked: &Asked, spares: &[usize], constraint: Constraint) -> Vec<usize> {
    let mut few = spares.to_vec();
    for spare in spares {
        let without: Vec<usize> = few.iter().copied().filter(|other| other != spare).collect();
        if reasons(asked, &without).iter().any(|because| because.constraint() == constraint) {
            few = without;
        }
    }
    few
}

fn is_role_of(
    asked: &Asked,
    machine: crate::record::MachineId,
    role: Option<crate::record::RoleId>,
    kind: Kind,
) -> bool {
    let file = asked.logbook.machine(machine);
    file.is_some_and(|file| file.roles.iter().any(|known| Some(known.id) == role && known.takes(kind)))
}
