//! Beside the picture: the tools, what the hand does next, and the list of the marks.

use egui::{ScrollArea, Ui};

use super::super::Act;
use super::asks::Answered;
use super::{Marking, part_of};
use crate::counted;
use crate::record::{
    Change, Entry, Finding, FindingSource, FindingState, Look, MarkUse, Moment, PartFile, PhotoMarkId, Severity, When,
};
use crate::store::Store;
use crate::text;
use crate::window::marked::{Tie, choices, position_name, unplaced};
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::Photograph;
use crate::window::theme::GRID;
use crate::window::viewer::Tool;
use crate::window::widgets::{Asking, Pick, Picker, body, link_ui, press_ui, remark, strong, tool_ui};

/// A choice of what a mark is tied to.
pub struct Tying {
    /// `None`: the next mark.
    pub mark: Option<PhotoMarkId>,
    picker: Picker<Tie>,
}

/// What was chosen.
pub enum Choice {
    /// With what is to be written for it.
    Tie(Tie, Vec<Entry>),
    Away,
}

impl Tying {
    /// Asks what a mark is tied to.
    pub fn of_mark(mark: PhotoMarkId) -> Self {
        Self { mark: Some(mark), picker: Picker::ready() }
    }

    /// Asks what the next mark is tied to.
    pub fn of_next() -> Self {
        Self { mark: None, picker: Picker::ready() }
    }

    /// What was chosen, once it is; a finding of its own words comes with its first look.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, file: &PartFile) -> Option<Choice> {
        let asking = Asking { new_word: Some(text!("A new finding:")), ..Asking::one(text!("What it shows")) };
        let pick = self.picker.ui(ui, asking, (view.logbook.revision, file.part.id), || choices(view, file))?;
        Some(match pick {
            Pick::One(tie) => Choice::Tie(tie, Vec::new()),
            Pick::New(words) => {
                let (finding, look) = found(view, file, words);
                Choice::Tie(Tie::Finding(finding.id), vec![finding.into(), look.into()])
            }
            Pick::Away => Choice::Away,
        })
    }
}

/// A finding in the restorer's own words.
fn found(view: &View<'_>, file: &PartFile, note: String) -> (Finding, Look) {
    let finding = Finding {
        id: Store::new_id(),
        part: file.part.id,
        what: "".into(),
        place_on_part: String::new(),
        source: FindingSource::Hand,
        question: "".into(),
        note,
    };
    let look = Look {
        id: Store::new_id(),
        finding: finding.id,
        looked: Moment::on(view.today),
        state: FindingState::Open,
        severity: Severity::Plain,
        share_percent: None,
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
        who: view.logbook.workshop.keeper.clone(),
    };
    (finding, look)
}

impl Marking {
    /// Draws what stands beside the picture; the tool that was taken up.
    pub fn panel_ui(
        &mut self,
        ui: &mut Ui,
        photograph: &Photograph,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Option<Tool> {
        let mut taken = None;
        ScrollArea::vertical().id_salt("marks").auto_shrink(false).show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.label(remark(ui, text!("Take up a pencil")));
            ui.horizontal_wrapped(|ui| {
                ui.spacing_mut().item_spacing.y = GRID;
                for tool in Tool::ALL {
                    let shortcut = Some(Act::Take(tool).shortcut());
                    if tool_ui(ui, tool.word(), tool.tooltip(), shortcut, self.tool() == tool).clicked() {
                        taken = Some(tool);
                    }
                }
            });
            ui.add_space(2.0 * GRID);
            self.hint_ui(ui, photograph, view, outbox);
            self.copy_out_ui(ui, photograph, outbox);
            self.list_ui(ui, photograph, view, outbox);
        });
        taken
    }

    fn hint_ui(&mut self, ui: &mut Ui, photograph: &Photograph, view: &View<'_>, outbox: &mut Outbox) {
        if let Some(asks) = &mut self.asks {
            match asks.ui(ui) {
                None => {}
                Some(Answered::GivenUp) => {
                    self.asks = None;
                    self.drawing.iter_mut().for_each(super::Drawing::take_keys);
                }
                Some(Answered::Mark(mark)) => {
                    let id = mark.id;
                    self.take(Tool::Hand);
                    self.add(*mark, photograph, view, outbox);
                    self.select(Some(id));
                }
            }
            return;
        }
        let part = part_of(photograph);
        let Some(drawing) = &self.drawing else {
            self.place_ui(ui, photograph);
            return;
        };
        let (tool, set) = (drawing.tool, drawing.set());
        if let Some((placing, part)) = self.placing.as_mut().zip(part) {
            let name = placing.next().map(|next| position_name(view, part, next)).unwrap_or_default();
            ui.label(strong(text!("Press where {capacitor} is.", capacitor = name)));
            ui.label(remark(ui, counted!("{count} position is left", "{count} positions are left", placing.left())));
            let (mut skip, mut stop) = (false, false);
            ui.horizontal_wrapped(|ui| {
                skip = press_ui(ui, text!("Leave this one out"), "", None).clicked();
                stop = press_ui(ui, text!("Place no more"), "", None).clicked();
            });
            if skip {
                placing.go_on();
            }
            if stop || placing.left() == 0 {
                self.take(Tool::Hand);
            } else if skip {
                self.drawing.iter_mut().for_each(super::Drawing::take_keys);
            }
            return;
        }
        ui.label(strong(tool.next(set)));
        ui.label(remark(ui, text!("By keys: arrows move the cross, Enter sets a point, Backspace takes it back.")));
        let can_tie = tool
            .role()
            .is_some_and(|role| matches!(role, MarkUse::Place | MarkUse::Surface | MarkUse::Damage | MarkUse::Sample));
        if let Some(part) = part.filter(|_| can_tie) {
            self.next_tie_ui(ui, view, part, outbox);
        }
        ui.add_space(2.0 * GRID);
    }

    /// What the next mark is tied to.
    fn next_tie_ui(&mut self, ui: &mut Ui, view: &View<'_>, part: &PartFile, outbox: &mut Outbox) {
        let Some(tying) = self.tying.as_mut().filter(|tying| tying.mark.is_none()) else {
            let said = choices(view, part).into_iter().find(|(tie, _)| *tie == self.tie).map(|(_, said)| said);
            ui.horizontal_wrapped(|ui| match said {
                None => {
                    if link_ui(ui, text!("Say first what it shows…")).clicked() {
                        self.tying = Some(Tying::of_next());
                    }
                }
                Some(said) => {
                    ui.label(body(text!("It shows: {what}", what = said)));
                    if link_ui(ui, text!("Something else")).clicked() {
                        self.tie = Tie::Nothing;
                    }
                }
            });
            return;
        };
        if let Some(choice) = tying.ui(ui, view, part) {
            self.tying = None;
            self.drawing.iter_mut().for_each(super::Drawing::take_keys);
            if let Choice::Tie(tie, entries) = choice {
                self.tie = tie;
                let mut change = Change::new(text!("Note a finding on {tag}", tag = part.part.tag));
                change.put_all(entries);
                outbox.change(change);
            }
        }
    }

    /// On a map: the positions that are still to be placed.
    fn place_ui(&mut self, ui: &mut Ui, photograph: &Photograph) {
        let Some(part) = part_of(photograph).filter(|_| photograph.photo().is_map) else { return };
        let left = unplaced(part).len();
        if left == 0 {
            return;
        }
        let word = counted!("Place {count} capacitor…", "Place {count} capacitors…", left);
        let tooltip = text!("One position after the other: press where it is on the map");
        if press_ui(ui, &word, tooltip, None).clicked() {
            self.place_capacitors(photograph);
        }
        ui.add_space(2.0 * GRID);
    }
}
