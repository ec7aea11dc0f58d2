//! The part sheet: everything about one part, changed where it stands.

mod about;
mod capacitors;
mod condition;
mod custody;
mod design;
mod design_connectors;
mod design_figures;
mod finding;
mod head;
mod identity;
mod made;
mod map;
mod order;
mod over_time;
mod overhaul;
mod papers;
mod photographs;
mod placing;
mod positions;
mod posts;
mod proofs;
mod readings;
mod section;
mod settings;
mod spot;
mod strike;
mod verdict;
mod work;
mod written;

use std::collections::HashMap;

use egui::scroll_area::ScrollAreaOutput;
use egui::{Align, Key, Modifiers, ScrollArea, Ui, vec2};

pub use self::about::{day_text, figure};
pub use self::map::set_map;
pub use self::papers::added as attached;
pub use self::section::Section;
pub use self::spot::Spot;

use self::about::About;
use crate::record::PartId;
use crate::text;
use crate::window::forms::{Faults, Faulty};
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::taking_in::Ways;
use crate::window::theme::GRID;
use crate::window::widgets::{Edit, body, link_ui, section_ui};

/// The list of sections beside the page, points.
const LIST: f32 = 50.0 * GRID;
/// A column of the page is no wider than this, so that lines can be read.
const COLUMN: f32 = 200.0 * GRID;

/// What is half typed on each sheet.
#[derive(Default)]
pub struct PartSheet {
    sheets: HashMap<PartId, Sheet>,
}

/// One part's sheet.
#[derive(Default)]
struct Sheet {
    /// The spot that was asked for from elsewhere.
    spot: Option<Spot>,
    /// The section to be shown next.
    jump: Option<Section>,
    /// The section that was shown last, until the page is moved by hand: one near the end never reaches the top.
    shown: Option<Section>,
    /// The section at the top of each column of the page.
    here: Vec<Section>,
    /// How far the page was scrolled, points.
    scrolled: f32,
    edit: Edit,
    head: head::Head,
    identity: identity::Identity,
    placing: placing::Placing,
    made: made::Made,
    map: map::Map,
    condition: condition::Condition,
    work: work::WorkList,
    capacitors: capacitors::Capacitors,
    positions: positions::Positions,
    readings: readings::Readings,
    settings: settings::Settings,
    proofs: proofs::Proofs,
    ways: Ways,
    papers: papers::Papers,
    custody: custody::CustodyList,
    faults: Faults,
    written: written::Written,
}

impl PartSheet {
    /// Whether photographs, or any files, that come in belong to a form of a part's sheet.
    pub fn takes_files(&mut self, part: PartId, are_photographs: bool) -> bool {
        self.sheets
            .get_mut(&part)
            .is_some_and(|sheet| sheet.proofs.form().is_some() || (are_photographs && sheet.work.form().is_some()))
    }

    /// Takes files that were copied into the logbook for the proof or the work that is filled in.
    pub fn kept(&mut self, part: PartId, files: Vec<KeptFile>) {
        let Some(sheet) = self.sheets.get_mut(&part) else { return };
        if let Some(form) = sheet.proofs.form() {
            form.kept(files);
        } else if let Some(form) = sheet.work.form() {
            form.kept(files);
        }
    }

    /// Whether a form that is open on any sheet keeps a file of this content.
    pub fn holds(&mut self, content: &str) -> bool {
        self.sheets.values_mut().any(|sheet| {
            sheet.proofs.form().is_some_and(|form| form.holds(content))
                || sheet.work.form().is_some_and(|form| form.holds(content))
        })
    }

    /// Shows a spot of a part's sheet when that is next drawn.
    pub fn show(&mut self, part: PartId, spot: Spot) {
        self.sheets.entry(part).or_default().spot = Some(spot);
    }

    /// Draws the sheet.
    pub fn ui(&mut self, ui: &mut Ui, part: PartId, view: &View<'_>, outbox: &mut Outbox) {
        let (Some(file), Some(answers)) = (view.logbook.part(part), view.answers.part(part)) else {
            self.sheets.remove(&part);
            ui.label(body(text!("This part is no longer in the logbook.")));
            if link_ui(ui, text!("Go to the shelf")).clicked() {
                outbox.go(Page::Shelf);
            }
            return;
        };
        let about = About { view, file, answers };
        self.sheets.entry(part).or_default().ui(ui, &about, outbox);
    }
}

impl Sheet {
    fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        self.keys(ui);
        let beside = ui.available_width() >= LIST + 0.75 * COLUMN;
        // The page takes the turn of the wheel for itself.
        let is_by_hand = ui.input(|input| input.smooth_scroll_delta.y != 0.0 || input.pointer.any_down());
        ui.horizontal_top(|ui| {
            if beside {
                ui.allocate_ui(vec2(LIST, ui.available_height()), |ui| {
                    ui.set_width(LIST);
                    ScrollArea::vertical().id_salt("sections").auto_shrink(false).show(ui, |ui| {
                        ui.vertical(|ui| self.list_ui(ui, about));
                    });
                });
            }
            let scroll = ScrollArea::vertical().id_salt(about.file.part.id).auto_shrink(false);
            let page = scroll.show(ui, |ui| {
                ui.vertical(|ui| {
                    let wide = ui.available_width() >= 1.6 * COLUMN;
                    self.head_ui(ui, about, outbox);
                    if !beside {
                        ui.horizontal_wrapped(|ui| self.list_ui(ui, about));
                    }
                    self.here.clear();
                    if wide {
                        let gap = 10.0 * GRID;
                        let width = ((ui.available_width() - gap) / 2.0).min(COLUMN);
                        ui.horizontal_top(|ui| {
                            for sections in [&Section::ALL[..5], &Section::ALL[5..]] {
                                ui.vertical(|ui| {
                                    ui.set_width(width);
                                    self.sections_ui(ui, sections, about, outbox);
                                });
                                ui.add_space(gap);
                            }
                        });
                    } else {
                        ui.set_max_width(COLUMN.min(ui.available_width()));
                        self.sections_ui(ui, &Section::ALL, about, outbox);
                    }
                    ui.add_space(10.0 * GRID);
                });
            });
            self.moved(is_by_hand, &page);
        });
    }

    /// Notices when the page was moved by hand, and when it is at its end.
    fn moved(&mut self, is_by_hand: bool, page: &ScrollAreaOutput<()>) {
        let scrolled = page.state.clamped_offset().y;
        if is_by_hand && (scrolled - self.scrolled).abs() > 0.5 {
            self.shown = None;
        }
        self.scrolled = scrolled;
        let (height, room) = (page.content_size.y, page.inner_rect.height());
        if height > room && scrolled + room > height - 1.0 {
            self.here = Section::ALL.last().copied().into_iter().collect();
        }
    }

    fn head_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        if let Some(spot) = self.head.ui(ui, about, &mut self.placing, outbox).or(self.spot.take()) {
            self.show(spot, about);
        }
    }

    fn show(&mut self, spot: Spot, about: &About<'_>) {
        let section = match spot {
            Spot::Section(section) => section,
            Spot::Finding(finding) => {
                self.condition.open(finding, about);
                Section::Condition
            }
            Spot::Capacitor(capacitor) => {
                self.capacitors.open(capacitor, about);
                Section::Capacitors
            }
            Spot::Task(task) => {
                self.work.open(task);
                Section::Work
            }
            Spot::Work(work) => {
                self.work.show(work, about);
                Section::Work
            }
            Spot::Survey => {
                self.condition.survey();
                Section::Condition
            }
            Spot::Design => {
                self.identity.show_design(about);
                Section::Identity
            }
            Spot::Figure(figure) => {
                self.identity.show_design(about);
                design_figures::open(figure, about, &mut self.edit);
                // The field comes into view by itself, further down.
                return;
            }
        };
        self.jump = Some(section);
    }

    /// The names of the sections; a press shows one.
    fn list_ui(&mut self, ui: &mut Ui, about: &About<'_>) {
        for (at, section) in Section::ALL.into_iter().enumerate() {
            if section::name_ui(ui, at, section, section.count(about), self.is_here(section)) {
                self.jump = Some(section);
            }
        }
    }

    fn sections_ui(&mut self, ui: &mut Ui, sections: &[Section], about: &About<'_>, outbox: &mut Outbox) {
        let top = ui.clip_rect().top() + 16.0 * GRID;
        let mut at_top = Section::default();
        for section in sections {
            let heading = section_ui(ui, section.label());
            if self.jump.take_if(|jump| jump == section).is_some() {
                heading.scroll_to_me(Some(Align::TOP));
                self.shown = Some(*section);
                // The page has moved only in the next frame.
                ui.ctx().request_repaint();
            }
            if heading.rect.top() < top || *section == sections[0] {
                at_top = *section;
            }
            ui.push_id(section, |ui| self.section_ui(ui, *section, about, outbox));
        }
        self.here.push(at_top);
    }

    /// Whether this is the section that the eye is on.
    fn is_here(&self, section: Section) -> bool {
        self.shown.map_or_else(|| self.here.contains(&section), |shown| shown == section)
    }

    fn section_ui(&mut self, ui: &mut Ui, section: Section, about: &About<'_>, outbox: &mut Outbox) {
        match section {
            Section::Identity => self.identity.ui(ui, about, &mut self.edit, outbox),
            Section::Made => self.made.ui(ui, about, outbox),
            Section::Map => self.map.ui(ui, about, outbox),
            Section::Condition => self.condition.ui(ui, about, outbox),
            Section::Work => self.work.ui(ui, about, outbox),
            Section::Capacitors => self.capacitors.ui(ui, about, outbox),
            Section::Readings => {
                self.readings.ui(ui, about, outbox);
                self.settings.ui(ui, about, outbox);
            }
            Section::Proofs => self.proofs.ui(ui, about, outbox),
            Section::Photographs => photographs::photographs_ui(ui, about, &mut self.ways, outbox),
            Section::Papers => self.papers.ui(ui, about, &mut self.edit, outbox),
            Section::Custody => self.custody.ui(ui, about, outbox),
            Section::Faults => {
                let of =
                    Faulty { part: Some(about.part().id), machine: None, name: about.tag(), cases: &about.file.cases };
                self.faults.ui(ui, of, about.view, outbox);
            }
            Section::Written => self.written.ui(ui, about),
        }
    }

    /// Alt with up, down or a digit goes from section to section.
    fn keys(&mut self, ui: &Ui) {
        let here = Section::ALL.iter().position(|section| self.is_here(*section)).unwrap_or(0);
        let to = ui.input_mut(|input| {
            if input.consume_key(Modifiers::ALT, Key::ArrowDown) {
                return Some(here + 1);
            }
            if input.consume_key(Modifiers::ALT, Key::ArrowUp) {
                return Some(here.saturating_sub(1));
            }
            section::DIGITS.iter().position(|digit| input.consume_key(Modifiers::ALT, *digit))
        });
        if let Some(section) = to.and_then(|to| Section::ALL.get(to)) {
            self.jump = Some(*section);
        }
    }
}
