//! A supply's rails under load: volts, ripple and load of each, judged as they are typed.

use egui::Ui;

use super::{Measured, Owner};
use crate::text;
use crate::trade::supply::{Rail, RailReading, RailVerdict, Standard, Verdict, judge, limits};
use crate::window::forms::figure;
use crate::window::outbox::View;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, mark_ui, remark, small};

/// The table as typed.
#[derive(Debug)]
pub struct Rails {
    standard: Standard,
    rows: Vec<Row>,
}

#[derive(Debug)]
struct Row {
    rail: Rail,
    volts: String,
    ripple_mvpp: String,
    load_a: String,
}

impl Rails {
    /// An empty table of the family that the part's design belongs to.
    pub fn new(owner: Owner, view: &View<'_>) -> Self {
        let answers = owner.part.and_then(|part| view.answers.part(part));
        let plugs = answers.iter().filter_map(|part| part.design.as_ref()).flat_map(|design| &design.connectors);
        let is_at = plugs.clone().any(|plug| plug.connector.starts_with("at-"));
        let standard = if is_at { Standard::At } else { Standard::Atx };
        let row = |rail| Row { rail, volts: String::new(), ripple_mvpp: String::new(), load_a: String::new() };
        Self { standard, rows: Rail::ALL.into_iter().map(row).collect() }
    }

    /// The rows of rails that the family has.
    fn own(&self) -> impl Iterator<Item = &Row> {
        let known = limits(self.standard);
        self.rows.iter().filter(move |row| known.iter().any(|limits| limits.rail == row.rail))
    }

    /// Draws the table.
    pub fn ui(&mut self, ui: &mut Ui) {
        let families = [(Standard::Atx, text!("ATX and its like")), (Standard::At, text!("AT and its like"))];
        choice_ui(ui, text!("Which family of supplies"), &mut self.standard, &families, 50.0 * GRID);
        let verdicts = self.judged();
        let known = limits(self.standard);
        for row in self.rows.iter_mut().filter(|row| known.iter().any(|limits| limits.rail == row.rail)) {
            let rail = row.rail.label();
            ui.horizontal_wrapped(|ui| {
                field_ui(ui, &text!("{rail}, volts", rail = rail), &mut row.volts, Some(30.0 * GRID));
                field_ui(ui, &text!("{rail}, ripple mV", rail = rail), &mut row.ripple_mvpp, Some(36.0 * GRID));
                field_ui(ui, &text!("{rail}, load A", rail = rail), &mut row.load_a, Some(30.0 * GRID));
                if let Some(verdict) = verdicts.iter().find(|verdict| verdict.reading.rail == row.rail) {
                    verdict_ui(ui, verdict);
                }
            });
        }
        let remarks =
            verdicts.iter().flat_map(|verdict| verdict.remarks.iter().map(|said| (verdict.reading.rail, said)));
        for (rail, said) in remarks {
            ui.label(small(format!("{}: {said}", rail.label())).color(ui.tokens().power_unknown));
        }
        if let Some(limits) = known.first() {
            ui.label(remark(ui, text!("Source: {source}", source = limits.source.said())));
        }
    }

    /// What is typed and can be read, judged.
    fn judged(&self) -> Vec<RailVerdict> {
        let told = |typed: &str| figure(typed).ok().flatten();
        let readings: Vec<RailReading> = self
            .own()
            .filter_map(|row| {
                let volts = told(&row.volts)?;
                Some(RailReading {
                    rail: row.rail,
                    volts,
                    ripple_mvpp: told(&row.ripple_mvpp),
                    load_a: told(&row.load_a),
                })
            })
            .collect();
        judge(self.standard, &readings).0
    }

    /// What was measured: the volts of each rail, and its ripple.
    ///
    /// # Errors
    /// Says on which rail something cannot be read.
    pub fn read(&self) -> Result<Vec<Measured>, String> {
        for row in self.own() {
            for typed in [&row.volts, &row.ripple_mvpp, &row.load_a] {
                figure(typed).map_err(|wrong| format!("{}: {wrong}", row.rail.label()))?;
            }
            if row.volts.trim().is_empty() && !row.ripple_mvpp.trim().is_empty() {
                return Err(text!("{rail}: ripple without volts says little; measure both.", rail = row.rail.label()));
            }
        }
        let mut measured = Vec::new();
        for verdict in self.judged() {
            let RailReading { rail, volts, ripple_mvpp, load_a } = verdict.reading;
            let condition = load_a.map(|load| text!("load {load} A", load = load)).unwrap_or_default();
            let figure = |quantity: String, value: f64, unit: &str, judged: Verdict| Measured {
                quantity,
                value,
                unit: unit.to_owned(),
                condition: condition.clone(),
                speaks_against: judged == Verdict::Fail,
            };
            measured.push(figure(rail.label().to_owned(), volts, "V", verdict.voltage));
            if let Some((ripple, judged)) = ripple_mvpp.zip(verdict.ripple) {
                measured.push(figure(text!("{rail} ripple", rail = rail.label()), ripple, "mV", judged));
            }
        }
        Ok(measured)
    }
}

/// How a rail stands: mark, word, hue, and how far it is from its limit.
fn verdict_ui(ui: &mut Ui, verdict: &RailVerdict) {
    let tokens = ui.tokens();
    let (mark, colour) = match verdict.verdict {
        Verdict::Pass => (Mark::Done, tokens.power_yes),
        Verdict::Marginal => (Mark::Heed, tokens.power_unknown),
        Verdict::Fail => (Mark::SeverityGrave, tokens.power_no),
    };
    mark_ui(ui, mark, colour);
    let said = text!(
        "{rail} {verdict}, {least} to {most} V",
        rail = verdict.reading.rail.label(),
        verdict = verdict.verdict.said(),
        least = verdict.limits.weakest_v,
        most = verdict.limits.strongest_v
    );
    ui.label(body(said).color(colour));
}
