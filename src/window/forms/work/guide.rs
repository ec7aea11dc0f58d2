//! What to do in a piece of work, with what, and what to beware of.

use egui::Ui;

use crate::assess::Task;
use crate::assess::cautions::JobCautions;
use crate::assess::reason::finding_name;
use crate::assess::touched;
use crate::counted;
use crate::record::Nature;
use crate::text;
use crate::text::say;
use crate::window::outbox::View;
use crate::window::theme::GRID;
use crate::window::widgets::{body, caution_ui, remark};

/// Draws the guide: the worst cautions first, then how, then what it takes and why it is asked for.
pub fn guide_ui(ui: &mut Ui, task: &Task, view: &View<'_>) {
    ui.set_max_width(ui.available_width().min(180.0 * GRID));
    let cautions = JobCautions::alone(task);
    for caution in &cautions.first {
        caution_ui(ui, caution);
    }
    if !task.how().is_empty() {
        ui.label(body(task.how()));
    }
    for caution in &cautions.later {
        caution_ui(ui, caution);
    }
    let list = |words: &[String]| words.iter().map(|word| say(word)).collect::<Vec<_>>().join(", ");
    if !task.materials().is_empty() {
        ui.label(body(text!("Materials: {materials}", materials = list(task.materials()))));
    }
    if !task.tools().is_empty() {
        ui.label(body(text!("Tools: {tools}", tools = list(task.tools()))));
    }
    let mut words = Vec::new();
    if task.minutes() > 0 {
        words.push(counted!("usually {count} minute", "usually {count} minutes", task.minutes() as usize));
    }
    if task.wait_hours() > 0 {
        let hours = task.wait_hours() as usize;
        words.push(counted!("then {count} hour that needs nobody", "then {count} hours that need nobody", hours));
    }
    words.push(nature_text(task.nature()).to_owned());
    let record = || view.logbook.part(task.part)?.work.iter().find(|work| task.work == Some(work.id) && work.is_own());
    words.extend(record().map(|work| touched::said(work.touches).to_owned()));
    ui.label(remark(ui, words.join(" · ")));
    let findings: Vec<String> = task
        .findings
        .iter()
        .map(|finding| finding_name(view.logbook, view.rules, task.part, *finding))
        .filter(|name| !name.is_empty())
        .collect();
    if !findings.is_empty() {
        ui.label(remark(ui, text!("Because of: {findings}", findings = findings.join(", "))));
    }
    let proofs: Vec<&str> =
        task.proven_by().iter().filter_map(|name| Some(say(&view.rules.proof(name)?.say))).collect();
    if !proofs.is_empty() {
        ui.label(remark(ui, text!("Shown done by: {proofs}", proofs = proofs.join(", "))));
    }
    if let Some(rule) = task.rule() {
        ui.label(remark(ui, text!("Source: {source}", source = say(&rule.source))));
    }
}

/// What a nature of work means for the part.
fn nature_text(nature: Nature) -> &'static str {
    match nature {
        Nature::Care => text!("care: changes nothing on the part"),
        Nature::Rework => text!("rework: back to the original drawing"),
        Nature::Repair => text!("repair: works again, no longer to the drawing"),
        Nature::Modification => text!("modification: deliberately different"),
    }
}
