//! Clocks: as it is set and the best in a line each, and a table of the others, each with what it does to every clock.

use egui::{Grid, Ui};

use super::gathered::mark_of;
use crate::assess::fit::{Build, Verdict};
use crate::counted;
use crate::text;
use crate::trade::clock::{Reach, Row};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{badge_ui, body, link_ui, remark, strong};

/// How many other settings are shown before the rest is folded away.
const SHOWN: usize = 8;

/// One setting in words.
struct Setting {
    set: String,
    core: String,
    cache: String,
    pci: String,
    agp: String,
    verdict: Verdict,
    /// What goes beyond its specification, or that nothing does.
    word: String,
}

/// What a setting says in one column.
type Cell = fn(&Setting) -> &String;

/// The settings that board and processor allow together.
pub struct Clocks {
    /// What is judged: as it is noted, else the best; `None` where a note cannot be read.
    set: Option<Setting>,
    /// The best, where it is another.
    best: Option<Setting>,
    others: Vec<Setting>,
}

impl Clocks {
    /// `None` where figures are missing.
    pub fn of(build: &Build) -> Option<Self> {
        let (set, best) = (build.setting(), build.best());
        set.or(best)?;
        let is = |row: &Row, known: Option<&Row>| known.is_some_and(|known| known.settings == row.settings);
        let others = build.settings();
        let others = others.iter().filter(|row| !is(row, set) && !is(row, best)).map(Setting::of).collect();
        let best = best.filter(|best| !is(best, set));
        Some(Self { set: set.map(Setting::of), best: best.map(Setting::of), others })
    }

    /// Draws them; `shows_all` keeps whether all are unfolded.
    pub fn ui(&self, ui: &mut Ui, shows_all: &mut bool) {
        let Self { set, best, others } = self;
        match (set, best) {
            (Some(set), None) => {
                set.line_ui(ui, &text!("{setting} = {core} MHz", setting = set.set, core = set.core));
            }
            (Some(set), Some(_)) => {
                set.line_ui(ui, &text!("As set: {setting} = {core} MHz", setting = set.set, core = set.core));
            }
            (None, _) => {
                ui.label(strong(text!("As set: not known")));
            }
        }
        if let Some(best) = best {
            best.line_ui(ui, &text!("Best: {setting} = {core} MHz", setting = best.set, core = best.core));
        }
        if others.is_empty() {
            ui.label(remark(ui, text!("Board and processor allow no other setting.")));
            return;
        }
        let most = if *shows_all { others.len() } else { SHOWN };
        Grid::new("settings").spacing(egui::vec2(6.0 * GRID, 0.5 * GRID)).show(ui, |ui| {
            let has = |of: Cell| others.iter().any(|setting| !of(setting).is_empty());
            let columns: [(&str, Cell); 5] = [
                (text!("Or set to"), |setting| &setting.set),
                (text!("Core, MHz"), |setting| &setting.core),
                (text!("Cache, MHz"), |setting| &setting.cache),
                (text!("PCI, MHz"), |setting| &setting.pci),
                (text!("AGP, MHz"), |setting| &setting.agp),
            ];
            for (title, _) in columns.iter().filter(|(_, of)| has(*of)) {
                ui.label(remark(ui, *title));
            }
            ui.label(remark(ui, text!("What that means")));
            ui.end_row();
            for setting in others.iter().take(most) {
                for (_, of) in columns.iter().filter(|(_, of)| has(*of)) {
                    ui.label(body(of(setting)));
                }
                setting.verdict_ui(ui);
                ui.end_row();
            }
        });
        let folded = others.len().saturating_sub(SHOWN);
        if folded > 0 {
            let word = if *shows_all {
                text!("Fold them").to_owned()
            } else {
                counted!("and {count} more setting", "and {count} more settings", folded)
            };
            *shows_all ^= link_ui(ui, &word).clicked();
        }
    }
}

fn mhz(mhz: f64) -> String {
    let fixed = format!("{mhz:.1}");
    fixed.trim_end_matches(".0").to_owned()
}

impl Setting {
    fn of(row: &Row) -> Self {
        let optional = |clock: Option<f64>| clock.map(mhz).unwrap_or_default();
        let beyond = row.verdicts.iter().filter(|clock| clock.reach > Reach::Within);
        let words: Vec<String> = beyond
            .map(|clock| {
                text!(
                    "{clock} {reach} ({percent} % over)",
                    clock = clock.clock,
                    reach = clock.reach.said(),
                    percent = format!("{:.0}", clock.beyond_percent)
                )
            })
            .collect();
        Self {
            set: format!("{} × {} MHz", row.settings.multiplier, mhz(row.settings.bus_mhz)),
            core: mhz(row.clocks.core_mhz),
            cache: optional(row.clocks.cache_mhz),
            pci: optional(row.clocks.pci_mhz),
            agp: optional(row.clocks.agp_mhz),
            verdict: match row.reach {
                Reach::Within => Verdict::Fits,
                Reach::Slightly | Reach::Beyond => Verdict::Caveat,
                Reach::Far => Verdict::No,
            },
            word: if words.is_empty() { Reach::Within.said().to_owned() } else { words.join(", ") },
        }
    }

    fn line_ui(&self, ui: &mut Ui, line: &str) {
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(line));
            let beside = self.beside();
            // An empty word would leave the next one without its place.
            if !beside.is_empty() {
                ui.label(body(beside));
            }
            self.verdict_ui(ui);
        });
    }

    fn beside(&self) -> String {
        let clocks = [(text!("cache"), &self.cache), (text!("PCI"), &self.pci), (text!("AGP"), &self.agp)];
        let told = clocks.iter().filter(|(_, clock)| !clock.is_empty());
        told.map(|(name, clock)| format!("{name} {clock} MHz")).collect::<Vec<_>>().join(", ")
    }

    fn verdict_ui(&self, ui: &mut Ui) {
        let (mark, colour) = mark_of(self.verdict, &ui.tokens());
        badge_ui(ui, mark, &self.word, &self.word, colour);
    }
}
