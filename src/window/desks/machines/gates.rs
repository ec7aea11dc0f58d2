//! A machine's gates with their reasons, and the answer to "may power be applied?".

use egui::{CollapsingHeader, RichText, Ui};

use crate::assess::{Gate, GateState, Next, Power, Readiness, Reason, Verdict, Weight};
use crate::record::Word;
use crate::text;
use crate::window::desks::part_sheet::Spot;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{GateMark, GateStand, PowerWord, body, link_ui, mark_ui, power_ui, remark, strong};

/// How many reasons are shown before the rest is folded away.
const SHOWN: usize = 4;

/// The word that the window has for an answer about power.
pub fn power_word(verdict: Verdict) -> PowerWord {
    match verdict {
        Verdict::No => PowerWord::No,
        Verdict::NotKnown => PowerWord::Unknown,
        Verdict::Yes => PowerWord::Yes,
    }
}

fn mark(gate: Gate) -> Mark {
    match gate {
        Gate::RolesFilled => Mark::GateRoles,
        Gate::PartsFit => Mark::GateFit,
        Gate::SafeToSwitchOn => Mark::GateSafe,
        Gate::WorkDone => Mark::GateWork,
        Gate::Proven => Mark::GateProven,
        Gate::PapersComplete | Gate::Ready => Mark::GatePapers,
    }
}

/// The strip of a machine's gates.
pub fn gate_marks(readiness: &Readiness) -> Vec<GateMark<'static>> {
    let at = readiness.at;
    let stand = |gate: Gate| match gate.cmp(&at) {
        std::cmp::Ordering::Less => GateStand::Passed,
        std::cmp::Ordering::Equal => GateStand::Here,
        std::cmp::Ordering::Greater => GateStand::Ahead,
    };
    let gates = readiness.gates.iter().map(|answer| answer.gate);
    gates.map(|gate| GateMark { mark: mark(gate), say: gate.label(), stand: stand(gate) }).collect()
}

/// Whether power may be applied, large, with its reasons below.
pub fn power_answer_ui(ui: &mut Ui, power: &Power, view: &View<'_>, outbox: &mut Outbox) {
    power_ui(ui, power_word(power.verdict));
    if power.may_be_applied() {
        ui.label(remark(
            ui,
            text!(
                "Nothing that was recorded speaks against it. Look, sniff and listen all the same; hand on the switch."
            ),
        ));
    }
    ui.push_id("power", |ui| reasons_ui(ui, Gate::SafeToSwitchOn, &power.reasons, view, outbox));
}

/// Every gate: the one where the machine stands open, the others folded.
pub fn gates_ui(ui: &mut Ui, readiness: &Readiness, view: &View<'_>, outbox: &mut Outbox) {
    for answer in &readiness.gates {
        let count = answer.reasons.len();
        let title = match (answer.state, count) {
            (GateState::Passed, 0) => text!("{gate}: passed", gate = answer.gate.label()),
            (state, count) => text!(
                "{gate}: {state} ({count})",
                gate = answer.gate.label(),
                state = state.label().to_lowercase(),
                count = count
            ),
        };
        if count == 0 {
            ui.horizontal(|ui| {
                mark_ui(ui, Mark::Done, ui.tokens().gate_passed);
                ui.label(body(title));
            });
            continue;
        }
        CollapsingHeader::new(strong(title))
            .id_salt(("gate", answer.gate))
            .default_open(answer.gate == readiness.at)
            .show(ui, |ui| reasons_ui(ui, answer.gate, &answer.reasons, view, outbox));
    }
}

/// Reasons, each with its weight and the way to its part; many are folded.
fn reasons_ui(ui: &mut Ui, gate: Gate, reasons: &[Reason], view: &View<'_>, outbox: &mut Outbox) {
    let (shown, folded) = reasons.split_at(reasons.len().min(SHOWN));
    for reason in shown {
        reason_ui(ui, gate, reason, view, outbox);
    }
    if !folded.is_empty() {
        let title = crate::counted!("and {count} more reason", "and {count} more reasons", folded.len());
        CollapsingHeader::new(body(title)).id_salt("more").show(ui, |ui| {
            for reason in folded {
                reason_ui(ui, gate, reason, view, outbox);
            }
        });
    }
}

fn reason_ui(ui: &mut Ui, gate: Gate, reason: &Reason, view: &View<'_>, outbox: &mut Outbox) {
    let tokens = ui.tokens();
    let (mark, colour) = match gate.weight(reason) {
        Weight::Holds => (Mark::PowerNo, tokens.power_no),
        Weight::NotKnown => (Mark::PowerUnknown, tokens.power_unknown),
        Weight::Remark => (Mark::Heed, tokens.ink_weak),
    };
    let sentence = reason.sentence(view.logbook, view.rules);
    ui.horizontal_top(|ui| {
        mark_ui(ui, mark, colour);
        ui.vertical(|ui| {
            ui.set_width(ui.available_width() - GRID);
            match reason.part() {
                Some(part) => {
                    let button = egui::Button::new(body(&sentence).color(tokens.ink)).frame(false).wrap();
                    if ui.add(button).on_hover_text(text!("Opens where it is settled")).clicked() {
                        outbox.settle(part, reason);
                    }
                }
                None => {
                    ui.label(body(sentence));
                }
            }
        });
    });
}

/// The next step, as the one thing to follow.
pub fn next_ui(ui: &mut Ui, readiness: &Readiness, view: &View<'_>, outbox: &mut Outbox) {
    let Some(next) = &readiness.next else { return };
    ui.horizontal_wrapped(|ui| {
        ui.label(strong(text!("Next:")));
        step_ui(ui, next, view, outbox, strong);
    });
}

/// A next step in a sentence; it leads to the part that it is about.
pub fn step_ui(
    ui: &mut Ui,
    next: &Next,
    view: &View<'_>,
    outbox: &mut Outbox,
    written: impl FnOnce(String) -> RichText,
) {
    let sentence = next.sentence(view.logbook, view.rules);
    match next.part() {
        Some(part) => {
            if link_ui(ui, &sentence).clicked() {
                match next {
                    Next::StateTouch { work, .. } => outbox.ask_touched(*work),
                    next => outbox.show(part, Spot::of_next(next, view)),
                }
            }
        }
        None => drop(ui.label(written(sentence))),
    }
}
