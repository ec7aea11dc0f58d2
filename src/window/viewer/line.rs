//! The quiet lines below a photograph: of what it is, what it shows, when it was taken, and its caption.

use egui::{ComboBox, RichText, Ui};

use crate::record::{Change, Photo, PhotoView, When, Word as _};
use crate::text;
use crate::window::desks::part_sheet::set_map;
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::Photograph;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Edit, Fact, body, link_ui, remark};

/// Draws the lines; what is changed in them is written.
pub fn line_ui(ui: &mut Ui, view: &View<'_>, photograph: &Photograph, edit: &mut Edit, outbox: &mut Outbox) {
    let (photo, of) = (photograph.photo(), photograph.of.name());
    ui.horizontal_wrapped(|ui| {
        let title = photograph.of.title(view.logbook);
        match photograph.of.page() {
            Some(page) => {
                if link_ui(ui, &title).clicked() {
                    outbox.go(page);
                }
            }
            None => drop(ui.label(body(title))),
        }
        let mut view = photo.view;
        let shown = ComboBox::from_id_salt("shows")
            .width(40.0 * GRID)
            .selected_text(RichText::new(view.label()).color(ui.tokens().ink))
            .show_ui(ui, |ui| {
                for word in PhotoView::ALL {
                    ui.selectable_value(&mut view, *word, word.label());
                }
            });
        ui.ctx().accesskit_node_builder(shown.response.id, |node| node.set_label(text!("It shows")));
        if view != photo.view {
            let name = text!("Say what a photograph of {tag} shows", tag = of);
            outbox.change(changed(name, Photo { view, ..photo.clone() }));
        }
        let key = format!("taken {}", photo.id);
        let taken = Fact::line(&key, text!("Taken"));
        if let Some(typed) = edit.inline_ui(ui, taken, &photo.taken.to_string()) {
            match typed.parse::<When>() {
                Ok(taken) => {
                    let name = text!("Say when a photograph of {tag} was taken", tag = of);
                    outbox.change(changed(name, Photo { taken, ..photo.clone() }));
                }
                Err(error) => edit.refuse(&key, &typed, error.to_string()),
            }
        }
        if photo.added.on.is_known() {
            ui.label(remark(ui, text!("Added {day}", day = photo.added.on)));
        }
        if photo.part.is_some() {
            let word =
                if photo.is_map { text!("No longer a map of the part") } else { text!("Make it a map of the part") };
            if link_ui(ui, word).clicked() {
                outbox.change(set_map(of, photo, !photo.is_map));
            }
        }
        if link_ui(ui, text!("Take the photograph out of the logbook")).clicked() {
            let mut change = Change::new(text!("Take a photograph of {tag} out", tag = of));
            for mark in &photograph.file().marks {
                change.remove(mark.id);
            }
            change.remove(photo.id);
            outbox.change(change);
        }
    });
    // A line of its own: among the others a long one would be squeezed into what they leave.
    let key = format!("caption {}", photo.id);
    if let Some(caption) = edit.inline_ui(ui, Fact::line(&key, text!("Caption")), &photo.caption) {
        let name = text!("Caption a photograph of {tag}", tag = of);
        outbox.change(changed(name, Photo { caption, ..photo.clone() }));
    }
}

fn changed(name: String, photo: Photo) -> Change {
    let mut change = Change::new(name);
    change.put(photo);
    change
}
