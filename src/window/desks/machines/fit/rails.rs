//! Rails as bars against what the supply's label allows, combined limits too.

use egui::{Rect, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, pos2, vec2};

use super::gathered::mark_of;
use crate::assess::fit::{Build, Constraint, Verdict, draws};
use crate::counted;
use crate::record::Kind;
use crate::text;
use crate::trade::supply::{LoadFault, Rail, load_faults};
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{badge_ui, body, remark};

const NAME: f32 = 44.0 * GRID;
const BAR: f32 = 70.0 * GRID;
const FIGURES: f32 = 34.0 * GRID;

/// One rail, or several together.
struct Bar {
    name: String,
    load: f64,
    least: f64,
    most: f64,
    unit: &'static str,
    verdict: Verdict,
}

/// The supply's rails under the machine's load.
pub struct Rails {
    bars: Vec<Bar>,
    /// How many designs do not say what they draw.
    unknown: usize,
}

impl Rails {
    /// `None` without a supply whose label is known.
    pub fn of(build: &Build) -> Option<Self> {
        let supply = build.pieces().iter().find(|piece| piece.kind() == Kind::PowerSupply)?;
        let label = supply.model.label.as_ref()?;
        let load = draws(build.pieces());
        let faults = load_faults(label, &load);
        let carried = |rail: Rail| load.iter().find(|(on, _)| *on == rail).map_or(0.0, |(_, amps)| *amps);
        let missing = build.of(Constraint::Power).into_iter().filter(|because| because.missing().is_some());
        let unknown = missing.filter(|because| because.part() != Some(supply.part())).count();
        let mut bars: Vec<Bar> = label
            .rails
            .iter()
            .map(|rating| Bar {
                name: rating.rail.label().to_owned(),
                load: carried(rating.rail),
                least: rating.least_a,
                most: rating.most_a,
                unit: "A",
                verdict: rail_verdict(rating.rail, &faults, unknown),
            })
            .collect();
        bars.extend(label.combined.iter().map(|limit| {
            let rails: Vec<Rail> = if limit.rails.is_empty() {
                label.rails.iter().map(|rating| rating.rail).collect()
            } else {
                limit.rails.clone()
            };
            let names = limit.rails.iter().map(|rail| rail.label()).collect::<Vec<_>>().join(", ");
            let watts: f64 = rails.iter().map(|rail| carried(*rail) * rail.nominal_v().abs()).sum();
            let is_over = faults
                .iter()
                .any(|fault| matches!(fault, LoadFault::TooMuchTogether { rails: over, .. } if *over == rails));
            Bar {
                name: if names.is_empty() {
                    text!("All rails").to_owned()
                } else {
                    text!("{rails} together", rails = names)
                },
                load: watts,
                least: 0.0,
                most: limit.most_w,
                unit: "W",
                verdict: if is_over { Verdict::No } else { within(unknown) },
            }
        }));
        Some(Self { bars, unknown })
    }

    pub fn ui(&self, ui: &mut Ui) {
        for bar in &self.bars {
            bar.ui(ui);
        }
        if self.unknown > 0 {
            let said = counted!(
                "At least so much: what {count} design draws is not told.",
                "At least so much: what {count} designs draw is not told.",
                self.unknown
            );
            ui.label(remark(ui, said));
        }
    }
}

/// Within the limit as far as is known.
fn within(unknown: usize) -> Verdict {
    if unknown > 0 { Verdict::NotKnown } else { Verdict::Fits }
}

fn rail_verdict(of: Rail, faults: &[LoadFault], unknown: usize) -> Verdict {
    let about = faults.iter().find_map(|fault| match fault {
        LoadFault::TooMuch { rail, .. } if *rail == of => Some(Verdict::No),
        // More may be drawn than is known.
        LoadFault::TooLittle { rail, .. } if *rail == of && unknown == 0 => Some(Verdict::Caveat),
        _ => None,
    });
    about.unwrap_or(within(unknown))
}

impl Bar {
    fn word(&self) -> &'static str {
        match self.verdict {
            Verdict::Fits => text!("carried"),
            Verdict::Caveat => text!("too little to regulate"),
            Verdict::NotKnown => text!("not all is known"),
            Verdict::No => text!("too much"),
        }
    }

    fn ui(&self, ui: &mut Ui) {
        // What nothing draws from carries 0, not −0.
        let figure = |value: f64| (value * 100.0).round() / 100.0 + 0.0;
        let words =
            text!("{load} of {most} {unit}", load = figure(self.load), most = figure(self.most), unit = self.unit);
        ui.horizontal_wrapped(|ui| {
            cell(ui, NAME, &self.name);
            let (mark, colour) = mark_of(self.verdict, &ui.tokens());
            let (rect, response) = ui.allocate_exact_size(vec2(BAR, 5.0 * GRID), Sense::hover());
            let tokens = ui.tokens();
            let track = rect.shrink2(vec2(0.0, 1.25 * GRID));
            // What goes beyond the label ends beyond the frame.
            let whole = self.most.max(self.load).max(f64::MIN_POSITIVE);
            let x = |value: f64| track.left() + track.width() * (value / whole) as f32;
            let limit = Rect::from_min_max(track.min, pos2(x(self.most), track.bottom()));
            let painter = ui.painter();
            painter.rect_filled(Rect::from_min_max(track.min, pos2(x(self.load), track.bottom())), 0.0, colour);
            painter.rect_stroke(limit, 0.0, Stroke::new(1.0, tokens.ink_weak), StrokeKind::Inside);
            if self.least > 0.0 {
                painter.vline(x(self.least), rect.y_range(), Stroke::new(2.0, tokens.ink));
            }
            let name = format!("{}: {words}, {}", self.name, self.word());
            response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &name));
            if self.least > 0.0 {
                response.on_hover_text(text!("At least {least} A", least = figure(self.least)));
            }
            cell(ui, FIGURES, &words);
            badge_ui(ui, mark, self.word(), self.word(), colour);
        });
    }
}

fn cell(ui: &mut Ui, width: f32, words: &str) {
    ui.allocate_ui_with_layout(vec2(width, 5.0 * GRID), egui::Layout::left_to_right(egui::Align::Center), |ui| {
        ui.set_width(width);
        ui.add(egui::Label::new(body(words).font(TextRole::Body.font())).truncate());
    });
}
