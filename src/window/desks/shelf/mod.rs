//! The Shelf: all parts, found at once.

mod filter;
mod found;
mod grid;
mod photographs;
mod pictures;
mod rows;

use egui::{Align, Id, Key, Layout, Modifiers, Ui, vec2};

use self::filter::{Filter, filter_ui};
use self::found::Found;
use self::grid::Grid;
use self::photographs::Photographs;
use self::pictures::PartTiles;
use self::rows::{COLUMNS, PartRows, columns};
use crate::record::PartId;
use crate::window::forms::PlaceFacts;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::widgets::{Edit, Sort, Table, TableAct, TableState, body, first_ui, link_ui, remark};
use crate::{counted, text};

/// Below this width, points, the ways to show the shelf stand below its heading.
const NARROW: f32 = 160.0 * GRID;

/// What the desk shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shows {
    Table,
    /// Parts, each by the photograph that stands for it.
    Pictures,
    /// Every photograph.
    Photographs,
}

/// What the desk keeps while another is on show.
pub struct Shelf {
    filter: Filter,
    sort: Sort,
    table: TableState,
    found: Found,
    shows: Shows,
    grid: Grid,
    photographs: Photographs,
    edit: Edit,
    place: PlaceFacts,
    shows_place: bool,
    /// Set when the text field is to be ready for typing.
    wants_text: bool,
}

impl Default for Shelf {
    fn default() -> Self {
        Self {
            filter: Filter::default(),
            sort: Sort { column: COLUMNS.tag, descending: false },
            table: TableState::default(),
            found: Found::default(),
            shows: Shows::Table,
            grid: Grid::default(),
            photographs: Photographs::default(),
            edit: Edit::default(),
            place: PlaceFacts::default(),
            shows_place: false,
            wants_text: false,
        }
    }
}

impl Shelf {
    /// Readies the text field.
    pub fn search_from_start(&mut self) {
        if self.shows == Shows::Photographs {
            self.shows = Shows::Table;
        }
        self.wants_text = true;
    }

    /// Shows every photograph, with the text field ready.
    pub fn search_photographs(&mut self) {
        self.shows = Shows::Photographs;
        self.wants_text = true;
    }

    /// The part that is chosen in the table or by the keys among the pictures.
    pub fn chosen_part(&self) -> Option<PartId> {
        let parts = self.found.parts();
        match self.shows {
            Shows::Table => {
                let chosen = self.table.chosen?;
                parts.iter().find(|part| Id::unique(part.id) == chosen).map(|part| part.id)
            }
            Shows::Pictures => parts.get(self.grid.chosen()?).map(|part| part.id),
            Shows::Photographs => None,
        }
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        self.found.bring_up_to_date(view, &self.filter, self.sort);
        self.heading_ui(ui, view, outbox);
        if self.shows == Shows::Photographs {
            let text_field = self.photographs.ui(ui, view, outbox);
            if std::mem::take(&mut self.wants_text) {
                text_field.request_focus();
            }
            return;
        }
        let before = self.filter.clone();
        let text_field = filter_ui(ui, &mut self.filter, self.found.places());
        if std::mem::take(&mut self.wants_text) {
            text_field.request_focus();
        }
        if self.filter != before {
            self.table.show_top();
            self.grid.show_top();
            self.found.bring_up_to_date(view, &self.filter, self.sort);
        }
        self.place_ui(ui, view, outbox);
        ui.add_space(2.0 * GRID);
        if self.found.parts().is_empty() {
            self.nothing_ui(ui, view, outbox);
        } else if self.shows == Shows::Pictures {
            let parts = self.found.parts();
            if let Some(part) = self.grid.ui(ui, text!("Parts"), &PartTiles { view, parts }) {
                outbox.go(Page::Part(parts[part].id));
            }
        } else {
            // Enter takes the focus from a field in the same moment.
            self.table_ui(ui, text_field.has_focus() || text_field.lost_focus(), outbox);
        }
    }

    fn heading_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let (all, found) = (view.index.rows.len(), self.found.parts().len());
        let heading = if self.shows == Shows::Photographs {
            self.photographs.heading(ui, view)
        } else if found == all {
            counted!("{count} part on the shelf", "{count} parts on the shelf", all)
        } else {
            text!("{found} of {all} parts", found = found, all = all)
        };
        if ui.available_width() < NARROW {
            first_ui(ui, heading);
            ui.horizontal_wrapped(|ui| {
                self.ways_ui(ui);
                offered_ui(ui, outbox);
            });
            return;
        }
        ui.horizontal(|ui| {
            first_ui(ui, heading);
            offered_ui(ui, outbox);
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| self.ways_ui(ui));
        });
    }

    /// The place that is asked for, to be called or moved otherwise.
    fn place_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Some(place) = self.filter.place else { return };
        if view.logbook.place(place).is_none() {
            // It was struck out.
            self.filter.place = None;
            return;
        }
        let word = if self.shows_place { text!("Fold the place") } else { text!("Change this place…") };
        if link_ui(ui, word).clicked() {
            self.shows_place = !self.shows_place;
        }
        if self.shows_place {
            self.place.ui(ui, place, &mut self.edit, view, outbox);
        }
    }

    /// The other ways to show what is on the shelf.
    fn ways_ui(&mut self, ui: &mut Ui) {
        let ways = [
            (Shows::Photographs, text!("Show all photographs")),
            (Shows::Pictures, text!("Show pictures")),
            (Shows::Table, text!("Show as a table")),
        ];
        let now = self.shows;
        for (shows, word) in ways.into_iter().filter(|(shows, _)| *shows != now) {
            if link_ui(ui, word).clicked() {
                self.shows = shows;
            }
        }
    }

    fn table_ui(&mut self, ui: &mut Ui, is_typing: bool, outbox: &mut Outbox) {
        let rows = PartRows { parts: self.found.parts() };
        let columns = columns();
        let name = text!("Parts");
        let table = Table { name, columns: &columns, row_height: 7.0 * GRID, sort: Some(self.sort) };
        // Arrows and Enter work from the text field too: type, go down, open.
        let moves = is_typing
            && ui.input(|input| [Key::ArrowDown, Key::ArrowUp, Key::Enter].iter().any(|key| input.key_pressed(*key)));
        let opened_typing = if moves { table.keys(ui, &mut self.table, &rows, ui.available_height()) } else { None };
        let act = table.ui(ui, &mut self.table, &rows).or(opened_typing.map(TableAct::Open));
        match act {
            Some(TableAct::Open(row)) => outbox.go(Page::Part(rows.parts[row].id)),
            Some(TableAct::Sort(sort)) => self.sort = sort,
            None => {}
        }
    }

    fn nothing_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        if view.index.rows.is_empty() {
            ui.label(body(text!("Nothing is logged yet. A tag, a kind and a photograph already make a part.")));
            if link_ui(ui, text!("Log the first part")).clicked() {
                outbox.go(Page::Intake);
            }
            return;
        }
        ui.label(body(text!("No part answers to all of this.")));
        ui.label(remark(ui, text!("Tags, names, serial numbers, markings, notes and places are searched.")));
        if link_ui(ui, text!("Show all parts")).clicked() {
            self.filter = Filter::default();
        }
        let escape = ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape));
        if escape {
            self.filter = Filter::default();
        }
        ui.allocate_space(vec2(0.0, GRID));
    }
}

/// The way to the answer about a part that is offered.
fn offered_ui(ui: &mut Ui, outbox: &mut Outbox) {
    let link = link_ui(ui, text!("Offered a part?"));
    if link.on_hover_text(Page::Offer.tooltip()).clicked() {
        outbox.go(Page::Offer);
    }
}
