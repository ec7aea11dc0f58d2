//! Every job walked through: who does it, and what it warns of, follows from what it touches and uses.

use benchwright::record::{Competence, Kind};
use benchwright::rules::{Cover, Rules, WorkRule};

use super::{all_text, cautions, is_warned};

/// Refuses every job that `is_meant` and that `holds` does not hold for, all of them by name.
fn walk(least: usize, is_meant: impl Fn(&WorkRule) -> bool, holds: impl Fn(&WorkRule) -> bool) {
    let rules = Rules::shipped();
    let meant: Vec<_> = rules.work.iter().filter(|row| is_meant(row)).collect();
    assert!(meant.len() >= least, "only {} jobs", meant.len());
    let wrong: Vec<_> = meant.iter().filter(|row| !holds(row)).map(|row| (&row.name, cautions(row))).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

fn is_for(row: &WorkRule, kind: Kind) -> bool {
    row.kinds.is_empty() || row.kinds.contains(&kind)
}

fn uses(row: &WorkRule, words: &[&str]) -> bool {
    let lists = row.materials.iter().chain(&row.tools);
    lists.into_iter().any(|item| words.iter().any(|word| item.contains(word)))
}

/// IEC 62368-1 leaves the inside of such apparatus to skilled persons (clause not seen); the rest common practice.
#[test]
fn every_job_on_a_power_supply_or_monitor_warns_of_mains() {
    let is_mains = |row: &WorkRule| is_for(row, Kind::PowerSupply) || is_for(row, Kind::Monitor);
    walk(35, is_mains, |row| is_warned(row, "mains") || is_warned(row, "outside-only"));
    walk(35, is_mains, |row| row.cover.is_some());
}

#[test]
fn what_opens_a_power_supply_or_monitor_is_sent_out_and_discharged_first() {
    let opens = |row: &WorkRule| row.cover == Some(Cover::Off);
    walk(20, opens, |row| row.who == Competence::SendOut && row.sitting == "mains");
    let discharges = |name: &str| name == "discharge-supply" || name == "discharge-monitor";
    for (kind, first) in [(Kind::PowerSupply, "discharge-supply"), (Kind::Monitor, "discharge-monitor")] {
        let opens = |row: &WorkRule| opens(row) && is_for(row, kind) && !discharges(&row.name);
        walk(12, opens, |row| row.after.iter().any(|name| name == first));
    }
    let opens_monitor = |row: &WorkRule| opens(row) && is_for(row, Kind::Monitor);
    walk(12, opens_monitor, |row| is_warned(row, "picture-tube-charge"));
}

/// hse.gov.uk/asthma/solderers.htm: rosin fume is a top cause of asthma at work, so it is extracted.
#[test]
fn every_job_with_an_iron_warns_of_solder_fume() {
    walk(25, |row| uses(row, &["Solder", "Iron", "Desolder"]), |row| is_warned(row, "solder-fume"));
}

#[test]
fn every_job_with_alcohol_or_solvent_warns_of_fire() {
    let with_alcohol = |row: &WorkRule| ["IPA", "lcohol"].iter().any(|word| all_text(row).contains(word));
    walk(18, with_alcohol, |row| is_warned(row, "alcohol-fire"));
    let with_solvent =
        |row: &WorkRule| uses(row, &["ontact cleaner", "olvent", "aint", "acquer", "etal polish", "ust protection"]);
    walk(10, with_solvent, |row| is_warned(row, "solvent-fire"));
}

/// HSE research report RR79 on epoxy and the skin; cutting tools common practice, no source.
#[test]
fn epoxy_and_tools_that_cut_are_warned_of() {
    walk(5, |row| uses(row, &["poxy"]), |row| is_warned(row, "epoxy"));
    walk(5, |row| uses(row, &["drill", "Scalpel", "cutters", "Shears"]), |row| is_warned(row, "cutting"));
}

/// Lithium and alkaline leaks want different care, and only some batteries may be charged.
#[test]
fn every_job_about_batteries_says_for_which_chemistry_it_is() {
    let about = |finding: &String| {
        ["cell-", "clock-", "leak-", "lithium"].iter().any(|start| finding.starts_with(start))
            || ["coin-cell-spent", "pack-tired", "tracks-eaten"].contains(&finding.as_str())
    };
    walk(
        13,
        |row| row.findings.iter().all(about),
        |row| {
            let text = all_text(row).to_lowercase();
            ["nickel-", "alkaline", "lithium"].iter().any(|chemistry| text.contains(chemistry))
        },
    );
}

/// IEC 61340-5-1 grounds people by wrist strap; ESD TR20.20-2008 forbids it where 250 V or more lies open.
#[test]
fn static_is_warned_of_on_bare_electronics_and_a_wrist_strap_never_told_on_mains() {
    const SITTINGS: [&str; 5] = ["meter", "soldering", "dry-cleaning", "test-bench", "copying"];
    walk(60, |row| SITTINGS.contains(&row.sitting.as_str()), |row| is_warned(row, "static"));
    let is_mains = |row: &WorkRule| row.cover == Some(Cover::Off) || row.sitting == "mains";
    walk(20, is_mains, |row| {
        !is_warned(row, "static")
            && is_warned(row, "wrist-strap-mains")
            && !row.tools.iter().any(|tool| tool.contains("wrist strap"))
    });
    let rules = Rules::shipped();
    let caution = rules.cautions.iter().find(|row| row.name == "static").unwrap();
    assert!(caution.say.contains("never a wrist strap on mains or CRT work"), "{}", caution.say);
}

/// EN 149 and 42 CFR 84: a mask against dust, mould and droppings has a class.
#[test]
fn a_mask_is_named_by_its_class() {
    let rules = Rules::shipped();
    let names_class = |text: &str| text.contains("FFP2") && text.contains("N95");
    let said = rules.cautions.iter().map(|row| &row.say);
    let masks: Vec<_> =
        said.chain(rules.work.iter().flat_map(|row| &row.tools)).filter(|text| text.contains("mask")).collect();
    assert!(masks.len() >= 8, "{masks:?}");
    for text in masks.into_iter().chain(rules.work.iter().flat_map(|row| &row.tools).filter(|tool| *tool == "Mask")) {
        assert!(names_class(text), "{text}");
    }
}

#[test]
fn every_caution_has_a_source_and_is_named_by_some_row() {
    let rules = Rules::shipped();
    let questions = rules.questions.iter().flat_map(|row| row.cautions.names());
    let findings = rules.findings.iter().flat_map(|row| row.cautions.names());
    let sittings = rules.sittings.iter().flat_map(|row| row.cautions.names());
    let others = rules.proofs.iter().flat_map(|row| row.cautions.names()).chain(sittings);
    let work = rules.work.iter().flat_map(|row| row.cautions.names());
    let named: Vec<_> = questions.chain(findings).chain(others).chain(work).collect();
    for row in &rules.cautions {
        assert!(!row.source.trim().is_empty(), "{} has no source", row.name);
        assert!(named.contains(&&row.name), "nothing names {}", row.name);
    }
}
