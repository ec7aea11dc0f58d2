//! What holds a board's card or cooler, and of that what lies on the shelf; of retention hardware, the boards it suits.

use egui::Ui;

use super::about::{About, act_ui};
use crate::assess::reason::part_name;
use crate::assess::retention::{Posts, boards_of, of_board};
use crate::record::{Kind, PartId};
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::widgets::{body, link_ui, remark};

/// So many boards are named at most.
const NAMED: usize = 8;

/// What a part takes or suits, of one revision: looked up over all parts.
#[derive(Default)]
pub struct PostsLines {
    known: Option<(u64, u64, Found)>,
}

#[derive(Default)]
struct Found {
    posts: Vec<Posts>,
    boards: Vec<PartId>,
}

impl PostsLines {
    /// Draws what is wanted, or, with `is_all`, everything that the board takes; of hardware, the boards it suits.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, is_all: bool, outbox: &mut Outbox) {
        let view = about.view;
        let key = (view.answers.revision, view.rules.version);
        if self.known.as_ref().is_none_or(|(revision, version, _)| (*revision, *version) != key) {
            let posts = of_board(about.answers, view.answers, view.logbook, view.rules);
            let boards = boards_of(about.answers, view.answers, view.rules);
            self.known = Some((key.0, key.1, Found { posts, boards }));
        }
        let Some((_, _, Found { posts, boards })) = &self.known else { return };
        for posts in posts.iter().filter(|posts| is_all || posts.is_wanted) {
            posts_ui(ui, posts, about, outbox);
        }
        if about.part().kind == Kind::Retention {
            boards_ui(ui, boards, about, outbox);
        }
    }
}

fn posts_ui(ui: &mut Ui, posts: &Posts, about: &About<'_>, outbox: &mut Outbox) {
    let view = about.view;
    ui.horizontal_wrapped(|ui| {
        let mechanism = view.rules.connectors.label(&posts.rule.mechanism);
        ui.label(body(format!("{mechanism}:")));
        for one in &posts.suiting {
            let name = part_name(view.logbook, one.part);
            if act_ui(ui, &name, &text!("Suits its posts: {part}", part = name)) {
                outbox.go(Page::Part(one.part));
            }
            let stand = if one.is_with_it { text!("with it already") } else { text!("on your shelf, suits its posts") };
            ui.label(remark(ui, stand));
        }
        match (posts.suiting.is_empty(), posts.is_wanted) {
            (true, true) => {
                ui.label(body(text!("none on your shelf: to buy")));
                if link_ui(ui, text!("See what is to buy")).clicked() {
                    outbox.go(Page::Supplies);
                }
            }
            (true, false) => drop(ui.label(remark(ui, text!("none on your shelf")))),
            _ => {}
        }
    });
}

fn boards_ui(ui: &mut Ui, boards: &[PartId], about: &About<'_>, outbox: &mut Outbox) {
    let logbook = about.view.logbook;
    ui.horizontal_wrapped(|ui| {
        if boards.is_empty() {
            ui.label(remark(
                ui,
                text!("It suits the posts of no board here, as far as its design and its survey tell."),
            ));
            return;
        }
        ui.label(body(text!("It suits the posts of:")));
        for board in boards.iter().take(NAMED) {
            if link_ui(ui, &part_name(logbook, *board)).clicked() {
                outbox.go(Page::Part(*board));
            }
        }
        if boards.len() > NAMED {
            let more = boards.len() - NAMED;
            ui.label(remark(ui, crate::counted!("and {count} more board", "and {count} more boards", more)));
        }
    });
}
