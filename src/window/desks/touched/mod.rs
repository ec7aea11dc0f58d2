//! What did own work touch? Every piece that does not say so, asked about by two keys, one after the other.

mod act;
mod list;

use egui::{Button, Role, Ui, WidgetInfo, vec2};

pub use self::act::TouchAct;
use self::list::{Pieces, columns, day, key, part, stand, title};
use crate::assess::touched::{Piece, state, unstated};
use crate::record::WorkId;
use crate::window::command::Command;
use crate::window::desks::part_sheet::Spot;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    Table, TableState, body, first_ui, link_ui, mark_ui, press_ui, remark, section_ui, title_ui,
};
use crate::{counted, text};

/// What the page keeps.
#[derive(Default)]
pub struct Touched {
    /// The piece that is asked about.
    chosen: Option<WorkId>,
    /// The answer that was given and is not handed over yet.
    given: Option<TouchAct>,
    /// Answered, and not yet read back.
    sent: Vec<WorkId>,
    refusals: u32,
    /// The pieces when last drawn.
    listed: Vec<WorkId>,
    table: TableState,
    /// Set when the keys are to go to the list.
    takes_keys: bool,
}

impl Touched {
    /// Asks about this piece first.
    pub fn choose(&mut self, work: WorkId) {
        self.chosen = Some(work);
    }

    /// The page was gone to.
    pub fn opened(&mut self) {
        self.takes_keys = true;
    }

    /// Takes an answer about the chosen piece.
    pub fn act(&mut self, act: TouchAct) {
        self.given = Some(act);
    }

    /// Whether there is a piece to answer about.
    pub fn is_asking(&self) -> bool {
        !self.listed.is_empty()
    }

    /// Draws the page.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("What did this work touch?"));
        let mut pieces = unstated(view.logbook);
        if std::mem::replace(&mut self.refusals, view.refusals) != view.refusals {
            self.sent.clear();
        }
        self.sent.retain(|sent| pieces.iter().any(|piece| piece.work.id == *sent));
        pieces.retain(|piece| !self.sent.contains(&piece.work.id));
        self.follow(&pieces);
        if let Some(act) = self.given.take() {
            self.answer(act, &mut pieces, ui, outbox);
        }
        // What had the keys is gone with the last piece, and comes back with one.
        self.takes_keys |= self.listed.is_empty() != pieces.is_empty();
        self.listed = pieces.iter().map(|piece| piece.work.id).collect();
        let at = self.chosen.and_then(|chosen| self.listed.iter().position(|listed| *listed == chosen));
        let Some(at) = at else { return self.all_ui(ui, outbox) };
        let left = first_ui(ui, counted!("{count} piece left", "{count} pieces left", pieces.len()));
        ui.ctx().accesskit_node_builder(left.id, |node| node.set_live(egui::accesskit::Live::Polite));
        ui.label(remark(
            ui,
            text!(
                "Boards, cards, chips, leads, plugs, contacts, switches, cells and solder are electrical; the outside \
                 of a case, keycaps, feet and labels are not. In doubt choose electrical: until it is stated the work \
                 counts as that."
            ),
        ));
        piece_ui(ui, &pieces[at], view, outbox);
        self.answers_ui(ui);
        self.list_ui(ui, view, &pieces, at);
    }

    /// Keeps to the chosen piece; goes to one that came back, or to the first.
    fn follow(&mut self, pieces: &[Piece<'_>]) {
        let there = |work: WorkId| pieces.iter().any(|piece| piece.work.id == work);
        let had_any = !self.listed.is_empty() || self.chosen.is_some();
        let back = pieces.iter().map(|piece| piece.work.id).find(|work| !self.listed.contains(work));
        let back = back.filter(|_| had_any && !self.takes_keys);
        let first = || pieces.first().map(|piece| piece.work.id);
        self.chosen = back.or(self.chosen.filter(|chosen| there(*chosen))).or_else(first);
    }

    /// Hands the answer over and goes to the next piece, or to the first where there is none.
    fn answer(&mut self, act: TouchAct, pieces: &mut Vec<Piece<'_>>, ui: &Ui, outbox: &mut Outbox) {
        let Some(at) = pieces.iter().position(|piece| Some(piece.work.id) == self.chosen) else { return };
        let piece = pieces.remove(at);
        outbox.change(state(piece, act.touches()));
        self.sent.push(piece.work.id);
        let next = pieces.get(at).or(pieces.first());
        // What was chosen last stays known, so that undo comes back to it.
        self.chosen = next.map(|piece| piece.work.id).or(self.chosen);
        self.takes_keys |= ui.memory(|memory| memory.focused().is_none());
    }

    fn answers_ui(&mut self, ui: &mut Ui) {
        ui.add_space(2.0 * GRID);
        ui.horizontal_wrapped(|ui| {
            for act in TouchAct::ALL {
                let keys = ui.ctx().format_shortcut(&act.shortcut());
                let button = Button::new(body(act.word())).shortcut_text(keys).min_size(vec2(52.0 * GRID, 11.0 * GRID));
                let response = ui.add(button).on_hover_text(act.tooltip());
                response.widget_info(|| WidgetInfo::labeled(Role::Button, true, act.word()));
                if response.clicked() {
                    self.given = Some(act);
                    ui.ctx().request_repaint();
                }
            }
        });
        ui.add_space(3.0 * GRID);
    }

    fn list_ui(&mut self, ui: &mut Ui, view: &View<'_>, pieces: &[Piece<'_>], at: usize) {
        let Self { chosen, table, takes_keys, .. } = self;
        let drawn = Table { name: text!("Own work"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        let rows = Pieces { logbook: view.logbook, pieces };
        if table.chosen != Some(key(pieces[at].work.id)) {
            table.choose(key(pieces[at].work.id), at);
        }
        if std::mem::take(takes_keys) {
            table.take_keys();
        }
        drawn.ui(ui, table, &rows);
        let now = pieces.iter().map(|piece| piece.work.id).find(|work| table.chosen == Some(key(*work)));
        if now != *chosen {
            *chosen = now;
            // The piece above the list is the one chosen in it.
            ui.ctx().request_repaint();
        }
    }

    fn all_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        let all = first_ui(ui, text!("All stated"));
        ui.ctx().accesskit_node_builder(all.id, |node| node.set_live(egui::accesskit::Live::Polite));
        ui.label(remark(ui, text!("Every piece of work in your own words says what it touched.")));
        ui.add_space(2.0 * GRID);
        let back = press_ui(ui, text!("Back to where you were"), "", None);
        if std::mem::take(&mut self.takes_keys) {
            back.request_focus();
        }
        if back.clicked() {
            outbox.give(Command::GoBack);
        }
    }
}

/// The piece that is asked about, with all that was written down of it.
fn piece_ui(ui: &mut Ui, piece: &Piece<'_>, view: &View<'_>, outbox: &mut Outbox) {
    let work = piece.work;
    let block = ui.vertical(|ui| {
        ui.set_max_width(ui.available_width().min(200.0 * GRID));
        section_ui(ui, title(piece));
        ui.horizontal_wrapped(|ui| {
            if link_ui(ui, &part(piece, view.logbook)).clicked() {
                outbox.show(piece.file.part.id, Some(Spot::Work(work.id)));
            }
            ui.add_space(2.0 * GRID);
            let (mark, word) = stand(piece);
            mark_ui(ui, mark, ui.tokens().ink_weak);
            let words = [word, &day(piece), &work.who].join(" · ");
            ui.label(body(words.trim_end_matches(" · ")));
        });
        for words in [&work.note, &work.used, &work.reason] {
            if !words.is_empty() {
                ui.label(body(words));
            }
        }
    });
    // The answers stay where they are from one piece to the next, but for a long note.
    ui.add_space((26.0 * GRID - block.response.rect.height()).max(0.0));
}

/// How many pieces do not say it.
pub fn unstated_text(count: usize) -> String {
    counted!(
        "{count} piece of work does not say what it touched.",
        "{count} pieces of work do not say what they touched.",
        count
    )
}
