//! What is in stock: every material with its amount, what is reserved of it, where it lies; changed where it stands.

use egui::{Id, Key, ScrollArea, TextEdit, Ui, UiBuilder};

use super::files::Files;
use super::{BESIDE, Books, PANEL, amount_text, put};
use crate::assess::supplies::Reserved;
use crate::paper::supplies::{SuppliesTable, stock_csv};
use crate::record::{
    BadLine, Change, Dielectric, Entry, KitState, Logbook, MATERIAL_COLUMNS, Material, MaterialId, Mounting, NAME_MOST,
    TableMaterial, Word, read_materials,
};
use crate::store::Store;
use crate::window::forms::{Pasted, ReadLine, money_text, place_of, read_money};
use crate::window::outbox::{Outbox, View};
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    Cells, Column, Edit, Fact, Rows, Table, TableAct, TableState, Width, body, choice_ui, link_ui, mark_button,
    press_if_ui, press_ui, remark, section_ui, short_field_ui, small,
};
use crate::{counted, text};

/// What the leaf keeps.
#[derive(Default)]
pub struct Stock {
    letters: String,
    table: TableState,
    chosen: Option<MaterialId>,
    edit: Edit,
    /// The name of a material to be added.
    new: Option<String>,
    /// A table that is being pasted.
    pasted: Option<Pasted>,
    files: Files,
}

const NAME: usize = 0;
const THERE: usize = 1;
const RESERVED: usize = 2;
const LEAST: usize = 3;
const PLACE: usize = 4;
const PRICE: usize = 5;

fn columns() -> [Column<'static>; 6] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("Material"), Width::Share(3.0), 0.0),
        column(text!("There"), Width::Points(32.0 * GRID), 0.0),
        column(text!("Reserved"), Width::Points(22.0 * GRID), 110.0 * GRID),
        column(text!("At least"), Width::Points(22.0 * GRID), 130.0 * GRID),
        column(text!("Where"), Width::Share(2.0), 150.0 * GRID),
        column(text!("Price"), Width::Points(26.0 * GRID), 170.0 * GRID),
    ]
}

struct Materials<'a> {
    rows: &'a [&'a Material],
    reserved: &'a Reserved,
    logbook: &'a Logbook,
}

impl Materials<'_> {
    fn is_low(&self, material: &Material) -> bool {
        material.stock - self.reserved.of(material.id) < material.minimum
    }
}

impl Rows for Materials<'_> {
    fn count(&self) -> usize {
        self.rows.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(self.rows[row].id)
    }

    fn name(&self, row: usize) -> String {
        let material = self.rows[row];
        let mut name = format!("{}, {}", material.name, amount_text(material.stock, &material.unit));
        let reserved = self.reserved.of(material.id);
        if reserved > 0.0 {
            name += &text!(", {amount} reserved", amount = reserved);
        }
        if self.is_low(material) {
            name += text!(", runs low");
        }
        name
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let material = self.rows[row];
        let tokens = cells.canvas().tokens();
        cells.text(NAME, &material.name);
        let there = amount_text(material.stock, &material.unit);
        if self.is_low(material) {
            cells.mark(THERE, Mark::Heed, &text!("{amount}, low", amount = there), tokens.power_unknown);
        } else {
            cells.text(THERE, &there);
        }
        let reserved = self.reserved.of(material.id);
        if reserved > 0.0 {
            cells.text(RESERVED, &amount_text(reserved, ""));
        }
        if material.minimum > 0.0 {
            cells.remark(LEAST, &amount_text(material.minimum, ""));
        }
        cells.remark(PLACE, &material.place.map(|place| self.logbook.place_path(place)).unwrap_or_default());
        let currency = &self.logbook.workshop.currency;
        cells.remark(PRICE, &material.price_cents.map(|cents| money_text(cents, currency)).unwrap_or_default());
    }
}

impl Stock {
    /// Shows a table that was read from a file, to be taken in.
    pub fn take_table(&mut self, table: String) {
        self.pasted = Some(Pasted::of(table));
    }

    /// Draws the leaf.
    pub fn ui(&mut self, ui: &mut Ui, books: &Books, view: &View<'_>, outbox: &mut Outbox) {
        self.head_ui(ui, view, outbox);
        if self.pasted.is_some() {
            self.paste_ui(ui, view, outbox);
            return;
        }
        let lower = self.letters.to_lowercase();
        let mut rows: Vec<&Material> = view.logbook.materials.iter().map(|material| &**material).collect();
        rows.retain(|material| lower.split_whitespace().all(|word| material.name.to_lowercase().contains(word)));
        rows.sort_by_key(|material| material.name.to_lowercase());
        if rows.is_empty() {
            ui.label(body(text!("No material is like that. Add one, or paste a table.")));
            return;
        }
        let chosen = self.chosen.and_then(|id| view.logbook.material(id)).cloned();
        let materials = Materials { rows: &rows, reserved: &books.reserved, logbook: view.logbook };
        match chosen {
            Some(material) if ui.available_width() < BESIDE => self.material_ui(ui, &material, books, view, outbox),
            Some(material) => {
                let room = ui.available_rect_before_wrap();
                let (list, beside) = room.split_left_right_at_x(room.right() - PANEL);
                let beside = UiBuilder::new().max_rect(beside.with_min_x(beside.left() + 6.0 * GRID)).id_salt("one");
                ui.scope_builder(beside, |ui| self.material_ui(ui, &material, books, view, outbox));
                ui.scope_builder(UiBuilder::new().max_rect(list).id_salt("list"), |ui| self.list_ui(ui, &materials));
            }
            None => self.list_ui(ui, &materials),
        }
    }

    fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        ui.horizontal_wrapped(|ui| {
            let field = TextEdit::singleline(&mut self.letters).hint_text(text!("Material")).desired_width(50.0 * GRID);
            let field = ui.add(field);
            field.widget_info(|| egui::WidgetInfo::labeled(egui::Role::TextInput, true, text!("Search the stock")));
            if press_ui(ui, text!("Add a material…"), "", None).clicked() {
                self.new = Some(String::new());
            }
            if press_ui(ui, text!("Paste a table…"), text!("Lines of a spreadsheet, or CSV"), None).clicked() {
                self.pasted = Some(Pasted::default());
            }
            let tooltip = text!("All of it, as a table that can be pasted back");
            if press_ui(ui, text!("Copy as CSV"), tooltip, None).clicked() {
                ui.ctx().copy_text(stock_csv(view.logbook));
                outbox.say(text!("The stock is on the clipboard as CSV."));
            }
            self.files.ways_ui(ui, true);
        });
        self.files.path_ui(ui, SuppliesTable::Stock, outbox);
        let Some(name) = &mut self.new else { return };
        let mut given = false;
        ui.horizontal(|ui| {
            let field = short_field_ui(ui, text!("Name of the material"), name, Some(60.0 * GRID), NAME_MOST);
            given |= field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
            given |= press_ui(ui, text!("Add it"), "", None).clicked();
        });
        let name = name.trim().to_owned();
        if given && !name.is_empty() {
            if let Some(known) = named(view.logbook, &name) {
                self.chosen = Some(known.id);
                outbox.say(text!("“{name}” is in stock already; here it is.", name = name));
            } else {
                let material = Material::new(Store::new_id(), &name);
                self.chosen = Some(material.id);
                outbox.change(put(text!("Add material {name}", name = name), material));
            }
            self.new = None;
        }
    }

    fn list_ui(&mut self, ui: &mut Ui, rows: &Materials<'_>) {
        let table = Table { name: text!("Stock"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, rows) {
            self.chosen = rows.rows.get(row).map(|material| material.id);
        }
    }

    fn material_ui(&mut self, ui: &mut Ui, material: &Material, books: &Books, view: &View<'_>, outbox: &mut Outbox) {
        if mark_button(ui, Mark::Away, text!("Put the material away")).clicked() {
            self.chosen = None;
        }
        ScrollArea::vertical().id_salt("material").auto_shrink(false).show(ui, |ui| {
            section_ui(ui, &material.name);
            self.facts_ui(ui, material, view, outbox);
            for (kit, amount) in books.reserved.held(material.id) {
                let name = view.logbook.kit(*kit).map_or("", |file| &file.kit.name);
                let line = text!("{amount} reserved for {kit}", amount = amount_text(*amount, ""), kit = name);
                ui.label(body(line));
            }
            for (amount, name) in ordered_with_kits(material.id, view.logbook) {
                ui.label(body(text!("{amount} on order with {kit}", amount = amount_text(amount, ""), kit = name)));
            }
            section_ui(ui, text!("As a capacitor"));
            ui.label(remark(ui, text!("With value and voltage it is taken into kits.")));
            self.capacitor_ui(ui, material, outbox);
            ui.add_space(2.0 * GRID);
            if link_ui(ui, text!("Strike it out")).clicked() {
                let mut change = Change::new(text!("Strike out material {name}", name = material.name));
                change.remove(material.id);
                outbox.change(change);
                self.chosen = None;
            }
        });
    }

    fn facts_ui(&mut self, ui: &mut Ui, material: &Material, view: &View<'_>, outbox: &mut Outbox) {
        let currency = &view.logbook.workshop.currency;
        let change = |what: &str, material: Material| put(format!("{what} ({})", material.name), material);
        let figure = |typed: &str| match super::super::part_sheet::figure(typed) {
            Ok(Some(value)) if value < 0.0 => Err(text!("“{typed}” cannot be: it is 0 or more.", typed = typed)),
            Ok(value) => Ok(value.unwrap_or(0.0)),
            Err(wrong) => Err(wrong),
        };
        if let Some(name) = self.edit.fact_ui(ui, Fact::line("name", text!("Name")), &material.name) {
            if name.is_empty() {
                self.edit.refuse("name", &name, text!("A material needs a name."));
            } else {
                outbox.change(change(text!("Change the name"), Material { name, ..material.clone() }));
            }
        }
        for (key, label, what, value) in [
            ("stock", text!("In stock"), text!("Change the stock"), material.stock),
            ("minimum", text!("At least"), text!("Change the minimum"), material.minimum),
            ("on order", text!("On order"), text!("Change what is on order"), material.on_order),
        ] {
            let fact = Fact { unit: &material.unit, ..Fact::line(key, label) };
            let Some(typed) = self.edit.fact_ui(ui, fact, &amount_text(value, "")) else { continue };
            match figure(&typed) {
                Ok(value) if key == "stock" => {
                    outbox.change(change(what, Material { stock: value, ..material.clone() }));
                }
                Ok(value) if key == "minimum" => {
                    outbox.change(change(what, Material { minimum: value, ..material.clone() }));
                }
                Ok(value) => outbox.change(change(what, Material { on_order: value, ..material.clone() })),
                Err(wrong) => self.edit.refuse(key, &typed, wrong),
            }
        }
        if let Some(unit) = self.edit.fact_ui(ui, Fact::line("unit", text!("Counted in")), &material.unit) {
            outbox.change(change(text!("Change the unit"), Material { unit, ..material.clone() }));
        }
        let price = material.price_cents.map(|cents| money_text(cents, currency)).unwrap_or_default();
        if let Some(typed) = self.edit.fact_ui(ui, Fact::line("price", text!("Price of one")), &price) {
            match read_money(&typed, currency) {
                Ok(price_cents) => {
                    outbox.change(change(text!("Change the price"), Material { price_cents, ..material.clone() }));
                }
                Err(wrong) => self.edit.refuse("price", &typed, wrong),
            }
        }
        if let Some(supplier) = self.edit.fact_ui(ui, Fact::line("supplier", text!("Bought from")), &material.supplier)
        {
            outbox.change(change(text!("Change the supplier"), Material { supplier, ..material.clone() }));
        }
        let path = material.place.map(|place| view.logbook.place_path(place)).unwrap_or_default();
        if let Some(typed) = self.edit.fact_ui(ui, Fact::line("place", text!("Place")), &path) {
            let mut before: Vec<Entry> = Vec::new();
            let place = place_of(&typed, view.logbook, &mut before);
            let mut change = Change::new(format!("{} ({})", text!("Change the place"), material.name));
            change.put_all(before).put(Material { place, ..material.clone() });
            outbox.change(change);
        }
        let note = Fact { rows: 3, ..Fact::line("note", text!("Note")) };
        if let Some(note) = self.edit.fact_ui(ui, note, &material.note) {
            outbox.change(change(text!("Change the note"), Material { note, ..material.clone() }));
        }
    }

    fn capacitor_ui(&mut self, ui: &mut Ui, material: &Material, outbox: &mut Outbox) {
        let name = text!("Change the capacitor");
        let mut new = material.clone();
        for (key, label, unit, value) in [
            ("uf", text!("Value"), "µF", &mut new.capacitance_uf),
            ("volts", text!("Voltage"), "V", &mut new.voltage_v),
            ("celsius", text!("Temperature"), "°C", &mut new.temperature_c),
            ("across", text!("Across"), "mm", &mut new.diameter_mm),
            ("high", text!("Height"), "mm", &mut new.height_mm),
            ("pitch", text!("Pitch"), "mm", &mut new.pitch_mm),
        ] {
            let shown = value.map(|figure| figure.to_string()).unwrap_or_default();
            let Some(typed) = self.edit.fact_ui(ui, Fact { unit, ..Fact::line(key, label) }, &shown) else { continue };
            match super::super::part_sheet::figure(&typed) {
                Ok(Some(figure)) if figure <= 0.0 => {
                    self.edit.refuse(key, &typed, text!("“{typed}” cannot be: it is above 0.", typed = typed));
                }
                Ok(figure) => *value = figure,
                Err(wrong) => self.edit.refuse(key, &typed, wrong),
            }
        }
        let mut dielectric = new.dielectric.unwrap_or(Dielectric::Unknown);
        let mut mounting = new.mounting.unwrap_or(Mounting::Unknown);
        ui.horizontal_wrapped(|ui| {
            let words: Vec<_> = Dielectric::ALL.iter().map(|word| (*word, word.label())).collect();
            if choice_ui(ui, text!("Made of"), &mut dielectric, &words, 40.0 * GRID) {
                new.dielectric = Some(dielectric);
            }
            let words: Vec<_> = Mounting::ALL.iter().map(|word| (*word, word.label())).collect();
            if choice_ui(ui, text!("Mounting"), &mut mounting, &words, 36.0 * GRID) {
                new.mounting = Some(mounting);
            }
        });
        let mut is_low = new.low_esr == Some(true);
        if ui.checkbox(&mut is_low, body(text!("Of low series resistance"))).changed() {
            new.low_esr = Some(is_low);
        }
        if new != *material {
            outbox.change(put(format!("{name} ({})", material.name), new));
        }
    }

    /// A table that is being pasted: read line by line; nothing is taken while a line is wrong.
    fn paste_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Some(pasted) = &mut self.pasted else { return };
        let known = |name: &str| named(view.logbook, name);
        let names: Vec<&str> = MATERIAL_COLUMNS.iter().map(|column| column.names[0]).collect();
        let columns = names.join(", ");
        ui.label(remark(ui, text!("The first line names the columns, of these: {columns}", columns = columns)));
        pasted.field_ui(ui, text!("The table of materials"));
        let read = read_materials(&pasted.text, known, &mut uuid::Uuid::now_v7);
        let lines = read.as_ref().map_or(&[][..], Vec::as_slice);
        let taken: Vec<&TableMaterial> = lines.iter().filter_map(|line| line.as_ref().ok()).collect();
        let (mut take, mut away) = (false, false);
        ui.horizontal(|ui| {
            let word = counted!("Take {count} line in", "Take {count} lines in", taken.len());
            let is_whole = !taken.is_empty() && taken.len() == lines.len();
            take = press_if_ui(ui, is_whole, &word, "", None).clicked();
            away = press_ui(ui, text!("Put the table away"), "", None).clicked();
        });
        if let Some(error) = read.as_ref().err().filter(|_| !pasted.text.trim().is_empty()) {
            ui.label(small(error.to_string()).color(ui.tokens().power_unknown));
        }
        let shown: Vec<ReadLine> = lines.iter().map(|line| read_as(line, view)).collect();
        if !shown.is_empty() {
            pasted.lines_ui(ui, &shown);
        }
        if take {
            outbox.change(taken_in(&taken, view.logbook));
            away = true;
        }
        if away {
            self.pasted = None;
        }
    }
}

fn read_as(line: &Result<TableMaterial, BadLine>, view: &View<'_>) -> ReadLine {
    match line {
        Ok(TableMaterial { line, material, .. }) => {
            let is_new = view.logbook.material(material.id).is_none();
            let word = if is_new { text!("new") } else { text!("known") };
            let amount = amount_text(material.stock, &material.unit);
            ReadLine { number: *line, said: Ok(format!("{}, {amount} ({word})", material.name)) }
        }
        Err(BadLine { line, wrong }) => ReadLine { number: *line, said: Err(wrong.clone()) },
    }
}

/// What kits have ordered of a material, for positions and to spare, with the kits' names.
fn ordered_with_kits(material: MaterialId, logbook: &Logbook) -> impl Iterator<Item = (f64, &str)> {
    let ordered = logbook.kits.iter().filter(|file| file.kit.state == KitState::Ordered);
    ordered.filter_map(move |file| {
        let own = file.lines.iter().filter(|line| line.line.material == Some(material));
        let pieces: u32 = own.map(|line| line.line.to_buy + line.line.spares).sum();
        (pieces > 0).then_some((f64::from(pieces), file.kit.name.as_str()))
    })
}

/// The material of a name, without regard to case.
fn named<'l>(logbook: &'l Logbook, name: &str) -> Option<&'l Material> {
    let lower = name.to_lowercase();
    logbook.materials.iter().map(|material| &**material).find(|material| material.name.to_lowercase() == lower)
}

/// The lines of a table as one change; places that are not there yet are made.
fn taken_in(lines: &[&TableMaterial], logbook: &Logbook) -> Change {
    let name = counted!("Take {count} material in from a table", "Take {count} materials in from a table", lines.len());
    let mut change = Change::new(name);
    for TableMaterial { material, place, .. } in lines {
        let mut before: Vec<Entry> = Vec::new();
        let mut material = material.clone();
        if let Some(path) = place {
            material.place = place_of(path, logbook, &mut before);
        }
        change.put_all(before).put(material);
    }
    change
}
