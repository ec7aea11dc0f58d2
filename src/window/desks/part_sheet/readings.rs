//! Figures measured on the part, with what the trade says about them as they are typed.

use egui::Ui;

use super::about::{About, act_ui, day_text, figure, put, wrong_ui};
use super::over_time;
use super::verdict::{self, Figure, Said};
use crate::counted;
use crate::record::{Kind, Moment, Reading, ReadingId, When};
use crate::store::Store;
use crate::text;
use crate::trade::supply::Standard;
use crate::window::forms::past_date;
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{body, field_ui, press_ui, remark, strong};

/// What is half typed.
#[derive(Default)]
pub struct Readings {
    form: Option<Form>,
    shows_earlier: bool,
}

#[derive(Default)]
struct Form {
    on: String,
    quantity: String,
    value: String,
    unit: String,
    condition: String,
    who: String,
    note: String,
    supersedes: Option<ReadingId>,
}

impl Readings {
    /// Draws the readings that hold, and the form for another.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let all = &about.file.readings;
        let holds = |old: &&Reading| all.iter().all(|new| new.supersedes != Some(old.id));
        let standard = standard(about);
        if all.is_empty() {
            ui.label(body(text!("Nothing was measured yet.")));
        }
        let mut correct = None;
        for reading in all.iter().filter(holds).rev() {
            ui.push_id(reading.id, |ui| {
                ui.horizontal_wrapped(|ui| {
                    ui.label(body(&reading.quantity));
                    ui.label(strong(format!("{} {}", reading.value, reading.unit)));
                    ui.label(remark(ui, under_text(reading)));
                    let name = text!("Correct the reading {quantity}…", quantity = reading.quantity);
                    if act_ui(ui, text!("Correct this reading…"), &name) {
                        correct = Some(Form::correcting(reading));
                    }
                });
                let Reading { quantity, value, unit, condition, .. } = reading;
                let figure = Figure { quantity, value: *value, unit, condition };
                if let Some(said) = verdict::of_reading(about.part().kind, standard, figure) {
                    verdict::ui(ui, &Said { remarks: Vec::new(), source: String::new(), ..said });
                }
            });
        }
        if correct.is_some() {
            self.form = correct;
        }
        for series in over_time::series(all.iter().filter(holds)) {
            let band = verdict::allowed(about.part().kind, standard, series.quantity());
            series.ui(ui, band);
        }
        let earlier: Vec<&Reading> = all.iter().filter(|reading| !holds(reading)).collect();
        self.earlier_ui(ui, &earlier);
        self.form_ui(ui, about, standard, outbox);
    }

    fn earlier_ui(&mut self, ui: &mut Ui, earlier: &[&Reading]) {
        if earlier.is_empty() {
            return;
        }
        let word = if self.shows_earlier {
            text!("Fold corrected readings").to_owned()
        } else {
            counted!("Show {count} corrected reading", "Show {count} corrected readings", earlier.len())
        };
        if act_ui(ui, &word, &word) {
            self.shows_earlier = !self.shows_earlier;
        }
        if self.shows_earlier {
            for reading in earlier {
                let line = format!("{} {} {}", reading.quantity, reading.value, reading.unit);
                ui.label(remark(ui, line).strikethrough());
            }
        }
    }

    fn form_ui(&mut self, ui: &mut Ui, about: &About<'_>, standard: Option<Standard>, outbox: &mut Outbox) {
        let Some(form) = &mut self.form else {
            if press_ui(ui, text!("Add a reading…"), "", None).clicked() {
                let kind = about.part().kind;
                let unit = if kind == Kind::HardDisk { "" } else { "V" };
                let on = about.view.today.to_string();
                self.form = Some(Form { on, unit: unit.to_owned(), who: about.keeper(), ..Form::default() });
            }
            return;
        };
        if form.supersedes.is_some() {
            ui.label(remark(ui, text!("The earlier reading stays, marked as corrected.")));
        }
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("What was measured"), &mut form.quantity, Some(60.0 * GRID));
            field_ui(ui, text!("Figure"), &mut form.value, Some(24.0 * GRID));
            field_ui(ui, text!("Unit"), &mut form.unit, Some(16.0 * GRID));
            field_ui(ui, text!("Under what load or condition"), &mut form.condition, Some(60.0 * GRID));
            field_ui(ui, text!("Measured on"), &mut form.on, Some(28.0 * GRID));
            field_ui(ui, text!("Who measured"), &mut form.who, Some(40.0 * GRID));
            field_ui(ui, text!("Note on the reading"), &mut form.note, Some(60.0 * GRID));
        });
        if form.quantity.is_empty() {
            quick_ui(ui, about.part().kind, &mut form.quantity);
        }
        let value = figure(&form.value);
        let Form { quantity, unit, condition, .. } = &*form;
        if let Ok(Some(value)) = value
            && let Some(said) =
                verdict::of_reading(about.part().kind, standard, Figure { quantity, value, unit, condition })
        {
            verdict::ui(ui, &said);
        }
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the reading"), "", None).clicked();
            away = press_ui(ui, text!("Put the reading away"), "", None).clicked();
        });
        let on = past_date(&form.on, about.view);
        if let Err(wrong) = &on {
            wrong_ui(ui, wrong);
        }
        match value {
            Err(wrong) => wrong_ui(ui, &wrong),
            Ok(None) if !form.value.is_empty() || keep => wrong_ui(ui, text!("Write the figure that was read.")),
            Ok(Some(_)) if keep && form.quantity.trim().is_empty() => {
                wrong_ui(ui, text!("Say what was measured: “+5 V rail”, “cell”."));
            }
            Ok(Some(value)) if keep => {
                if let Ok(on) = on {
                    let reading = form.reading(about, value, on);
                    let name = text!("Measure {quantity} on {tag}", quantity = reading.quantity, tag = about.tag());
                    outbox.change(put(name, reading));
                    self.form = None;
                }
            }
            Ok(_) => {}
        }
        if away {
            self.form = None;
        }
    }
}

impl Form {
    fn correcting(reading: &Reading) -> Self {
        Self {
            on: reading.measured.on.to_string(),
            quantity: reading.quantity.clone(),
            value: reading.value.to_string(),
            unit: reading.unit.clone(),
            condition: reading.condition.clone(),
            who: reading.who.clone(),
            note: reading.note.clone(),
            supersedes: Some(reading.id),
        }
    }

    fn reading(&self, about: &About<'_>, value: f64, on: When) -> Reading {
        Reading {
            id: Store::new_id(),
            part: Some(about.part().id),
            machine: None,
            measured: Moment { on, sequence: 0 },
            quantity: self.quantity.trim().to_owned(),
            value,
            unit: self.unit.trim().to_owned(),
            condition: self.condition.trim().to_owned(),
            who: self.who.trim().to_owned(),
            supersedes: self.supersedes,
            note: self.note.trim().to_owned(),
            proof: None,
            work: None,
        }
    }
}

/// What is usually measured on a kind, one press each.
fn quick_ui(ui: &mut Ui, kind: Kind, quantity: &mut String) {
    let usual: &[&str] = match kind {
        Kind::PowerSupply => &["+5 V", "+12 V", "+3.3 V", "-5 V", "-12 V", "5sb"],
        Kind::Mainboard | Kind::ClockModule => &["Cell", "+5 V to ground, unpowered", "+12 V to ground, unpowered"],
        Kind::HardDisk | Kind::FlashAdapter => &["Capacity"],
        _ => &[],
    };
    ui.horizontal_wrapped(|ui| {
        for word in usual {
            if act_ui(ui, word, &text!("Measured: {what}", what = word)) {
                (*word).clone_into(quantity);
            }
        }
    });
}

/// Which family a supply belongs to, by its plugs or by rails that only one family has.
fn standard(about: &About<'_>) -> Option<Standard> {
    if about.part().kind != Kind::PowerSupply {
        return None;
    }
    let plugs = about.answers.design.iter().flat_map(|file| &file.connectors).map(|plug| plug.connector.as_str());
    let mut families = plugs.filter_map(|plug| match plug {
        plug if plug.contains("atx") => Some(Standard::Atx),
        plug if plug.starts_with("at-") || plug.contains("-at-") => Some(Standard::At),
        _ => None,
    });
    let by_rail =
        |reading: &Reading| reading.quantity.contains("3.3") || reading.quantity.to_lowercase().contains("sb");
    families.next().or_else(|| about.file.readings.iter().any(by_rail).then_some(Standard::Atx))
}

fn under_text(reading: &Reading) -> String {
    let mut words = vec![day_text(reading.measured.on)];
    words
        .extend([&reading.condition, &reading.who, &reading.note].into_iter().filter(|word| !word.is_empty()).cloned());
    words.join(" · ")
}
