//! Whose the part is and who has it: changes of hands, and what it was worth.

use egui::Ui;

use super::about::{About, day_text, put, wrong_ui};
use crate::record::{CustodyAct, CustodyEvent, Moment, Valuation, When, Word};
use crate::store::Store;
use crate::text;
use crate::window::forms::{money_text, past_date, read_money};
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{body, field_ui, link_ui, notes_ui, press_ui, remark, strong};

/// What is half typed.
#[derive(Default)]
pub struct CustodyList {
    hands: Option<Hands>,
    worth: Option<Worth>,
}

/// A change of hands.
struct Hands {
    act: CustodyAct,
    on: String,
    party: String,
    until: String,
    price: String,
    condition: String,
    note: String,
}

struct Worth {
    on: String,
    amount: String,
    basis: String,
}

impl CustodyList {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let custody = about.file.custody_now();
        ui.label(strong(custody.label()));
        for event in about.file.custody.iter().rev() {
            ui.label(body(event_text(event, about)));
        }
        match &mut self.hands {
            Some(_) => self.hands_ui(ui, about, outbox),
            None => {
                ui.horizontal_wrapped(|ui| {
                    for act in CustodyAct::ALL.iter().filter(|act| custody.after(**act).is_some()) {
                        if press_ui(ui, act_text(*act), "", None).clicked() {
                            self.hands = Some(Hands::new(*act, about));
                        }
                    }
                });
            }
        }
        self.worth_ui(ui, about, outbox);
    }

    fn hands_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(hands) = &mut self.hands else { return };
        let act = hands.act;
        ui.label(strong(act.label()));
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("On the day"), &mut hands.on, Some(28.0 * GRID));
            if act != CustodyAct::Scrapped {
                let label = match act {
                    CustodyAct::Borrowed | CustodyAct::CameBack | CustodyAct::Bought => text!("From whom"),
                    _ => text!("To whom"),
                };
                field_ui(ui, label, &mut hands.party, Some(60.0 * GRID));
            }
            if matches!(act, CustodyAct::Lent | CustodyAct::Borrowed) {
                field_ui(ui, text!("Until"), &mut hands.until, Some(28.0 * GRID));
            }
            if matches!(act, CustodyAct::Sold | CustodyAct::Bought) {
                field_ui(ui, text!("For how much"), &mut hands.price, Some(28.0 * GRID));
            }
        });
        notes_ui(ui, text!("In what condition"), &mut hands.condition, 2);
        field_ui(ui, text!("Note on it"), &mut hands.note, None);
        let read = hands.read(about);
        let (mut keep, mut away) = (false, false);
        ui.horizontal_wrapped(|ui| {
            let word = text!("Keep: {act}", act = act.label().to_lowercase());
            keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, &word, "", None)).inner.clicked();
            away = press_ui(ui, text!("Nothing changed hands"), "", None).clicked();
        });
        match read {
            Err(wrong) => wrong_ui(ui, &wrong),
            Ok(event) if keep => {
                let name = text!("{act}: {tag}", act = act.label(), tag = about.tag());
                outbox.change(put(name, event));
                self.hands = None;
            }
            Ok(_) => {}
        }
        if away {
            self.hands = None;
        }
    }

    fn worth_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let currency = &about.view.logbook.workshop.currency;
        let worths = &about.file.valuations;
        if !worths.is_empty() || self.worth.is_some() {
            ui.add_space(2.0 * GRID);
            ui.label(strong(text!("What it is worth")));
        }
        for worth in worths.iter().rev() {
            ui.horizontal_wrapped(|ui| {
                ui.label(body(money_text(worth.amount_cents, currency)));
                ui.label(remark(ui, format!("{} · {}", day_text(worth.on), worth.basis)));
            });
        }
        let Some(typed) = &mut self.worth else {
            if link_ui(ui, text!("Value it…")).clicked() {
                let on = about.view.today.to_string();
                self.worth = Some(Worth { on, amount: String::new(), basis: String::new() });
            }
            return;
        };
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Valued on"), &mut typed.on, Some(28.0 * GRID));
            field_ui(ui, text!("Amount"), &mut typed.amount, Some(28.0 * GRID));
            field_ui(ui, text!("By whom, on what ground"), &mut typed.basis, Some(80.0 * GRID));
        });
        let read = past_date(&typed.on, about.view).and_then(|on| Ok((on, read_money(&typed.amount, currency)?)));
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the value"), "", None).clicked();
            away = press_ui(ui, text!("Put the value away"), "", None).clicked();
        });
        match read {
            Err(wrong) => wrong_ui(ui, &wrong),
            Ok((_, None)) if keep => wrong_ui(ui, text!("Write the amount.")),
            Ok((on, Some(amount_cents))) if keep => {
                let basis = typed.basis.trim().to_owned();
                let value = Valuation { id: Store::new_id(), part: about.part().id, on, amount_cents, basis };
                outbox.change(put(text!("Value {tag}", tag = about.tag()), value));
                self.worth = None;
            }
            Ok(_) => {}
        }
        if away {
            self.worth = None;
        }
    }
}

impl Hands {
    fn new(act: CustodyAct, about: &About<'_>) -> Self {
        // A part that comes or goes back has been with somebody: that name is known.
        let with = matches!(act, CustodyAct::CameBack | CustodyAct::GaveBack | CustodyAct::Bought);
        let party = about.file.custody.last().filter(|_| with).map(|event| event.party.clone()).unwrap_or_default();
        Self {
            act,
            on: about.view.today.to_string(),
            party,
            until: String::new(),
            price: String::new(),
            condition: String::new(),
            note: String::new(),
        }
    }

    fn read(&self, about: &About<'_>) -> Result<CustodyEvent, String> {
        let on = past_date(&self.on, about.view)?;
        let until: When = self.until.parse().map_err(|error: crate::record::NoDate| error.to_string())?;
        if until.span().zip(on.span()).is_some_and(|(until, on)| until.last < on.first) {
            return Err(text!("{until} is before it changed hands.", until = until));
        }
        if self.party.trim().is_empty() && self.act != CustodyAct::Scrapped {
            return Err(text!("Say to or from whom.").to_owned());
        }
        Ok(CustodyEvent {
            id: Store::new_id(),
            part: about.part().id,
            happened: Moment { on, sequence: 0 },
            act: self.act,
            party: self.party.trim().to_owned(),
            until,
            price_cents: read_money(&self.price, &about.view.logbook.workshop.currency)?,
            condition: self.condition.trim().to_owned(),
            note: self.note.trim().to_owned(),
        })
    }
}

/// What to press for an act.
fn act_text(act: CustodyAct) -> &'static str {
    match act {
        CustodyAct::Borrowed => text!("It is borrowed…"),
        CustodyAct::Lent => text!("Lend it…"),
        CustodyAct::CameBack => text!("It came back…"),
        CustodyAct::GaveBack => text!("Give it back…"),
        CustodyAct::Bought => text!("Buy it…"),
        CustodyAct::Sold => text!("Sell it…"),
        CustodyAct::Scrapped => text!("Scrap it…"),
    }
}

/// One change of hands in a line.
pub fn event_text(event: &CustodyEvent, about: &About<'_>) -> String {
    let mut words = vec![day_text(event.happened.on), event.act.label().to_owned()];
    if !event.party.is_empty() {
        words.push(event.party.clone());
    }
    if event.until.is_known() {
        words.push(text!("until {day}", day = event.until));
    }
    words.extend(event.price_cents.map(|cents| money_text(cents, &about.view.logbook.workshop.currency)));
    words.extend([&event.condition, &event.note].into_iter().filter(|word| !word.is_empty()).cloned());
    words.join(" · ")
}
