//! Clocks: the chosen setting in one line, and a table of the others, each with what it does to every clock.

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

/// The settings that board and processor allow together, the chosen one first.
pub struct Clocks {
    settings: Vec<Setting>,
}

impl Clocks {
    /// `None` where figures are missing.
    pub fn of(build: &Build) -> Option<Self> {
        build.setting()?;
        let settings: Vec<Setting> = build.settings().iter().map(Setting::of).collect();
        (!settings.is_empty()).then_some(Self { settings })
    }

    /// Draws them; `shows_all` keeps whether all are unfolded.
    pub fn ui(&self, ui: &mut Ui, shows_all: &mut bool) {
        let Some((chosen, others)) = self.settings.split_first() else { return };
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(text!("{setting} = {core} MHz", setting = chosen.set, core = chosen.core)));
            let beside = chosen.beside();
            // An empty word would leave the next one without its place.
            if !beside.is_empty() {
                ui.label(body(beside));
            }
            chosen.verdict_ui(ui);
        });
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
