//! A whole overhaul added to the part: shown first, then added in one go.

use egui::Ui;

use super::about::{About, act_ui};
use super::posts::PostsLines;
use super::work::time_text;
use crate::assess::templates::{adds, apply, pieces};
use crate::store::Store;
use crate::text;
use crate::text::say;
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{body, link_ui, press_if_ui, press_ui, remark, strong};

/// What is open.
#[derive(Default)]
pub struct Overhaul {
    is_open: bool,
    /// The name of the overhaul that is looked at.
    chosen: Option<String>,
    posts: PostsLines,
}

impl Overhaul {
    /// Draws the word to press, the overhauls for the part's kind, and the one that is looked at.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let kind = about.part().kind;
        if about.view.rules.templates_for(kind).next().is_none() {
            return;
        }
        let looks_at_posts = self.chosen.as_ref().is_some_and(|name| is_of_retention(name, about));
        self.posts.ui(ui, about, looks_at_posts, outbox);
        if !self.is_open {
            self.is_open = link_ui(ui, text!("A whole overhaul…")).clicked();
            return;
        }
        ui.horizontal_wrapped(|ui| {
            for template in about.view.rules.templates_for(kind) {
                let name = say(&template.say);
                if act_ui(ui, name, &text!("Look at: {overhaul}", overhaul = name)) {
                    self.chosen = Some(template.name.clone());
                }
            }
            if press_ui(ui, text!("Put the overhauls away"), "", None).clicked() {
                *self = Self::default();
            }
        });
        let mut templates = about.view.rules.templates_for(kind);
        if let Some(template) = templates.find(|template| Some(&template.name) == self.chosen.as_ref())
            && chosen_ui(ui, template, about, outbox)
        {
            *self = Self::default();
        }
    }
}

/// Whether a piece of an overhaul asks for a mechanism that holds a card or a cooler.
fn is_of_retention(template: &str, about: &About<'_>) -> bool {
    let rules = about.view.rules;
    let named = rules.templates.iter().filter(|known| known.name == template).flat_map(|known| &known.work);
    let materials = named.filter_map(|name| rules.work(name)).flat_map(|work| &work.materials);
    let called: Vec<&String> = rules.retention.iter().flat_map(|rule| &rule.called).collect();
    materials.into_iter().any(|name| called.contains(&name))
}

/// Draws what an overhaul would add; `true` once it was added.
fn chosen_ui(ui: &mut Ui, template: &crate::rules::Template, about: &About<'_>, outbox: &mut Outbox) -> bool {
    let view = about.view;
    ui.add_space(GRID);
    ui.label(strong(say(&template.say)));
    ui.label(body(say(&template.how)));
    let pieces = pieces(template, about.answers, view.rules);
    for (at, piece) in pieces.iter().enumerate() {
        let stand = if piece.outstanding.is_some() {
            text!("outstanding already").to_owned()
        } else {
            time_text(piece.rule.minutes)
        };
        ui.label(body(format!("{}  {}  ({stand})", at + 1, say(&piece.rule.say))));
    }
    ui.label(remark(
        ui,
        text!("Each piece comes after the one before it. Source: {source}", source = say(&template.source)),
    ));
    let mut ids = || Store::new_id::<crate::record::Work>().uuid();
    let change = apply(template, about.answers, view.rules, view.today, &mut ids);
    let mut is_added = false;
    ui.horizontal(|ui| {
        if press_if_ui(ui, adds(&change), text!("Add these pieces"), "", None).clicked() {
            outbox.change(change);
            is_added = true;
        }
    });
    is_added
}
