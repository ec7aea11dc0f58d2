//! What the Tab key leads to comes into view.

use egui::accesskit::{Action, ActionRequest, TreeId};
use egui::{Context, Event, Id};

/// Where the focus was, and what is still to be shown.
#[derive(Debug, Default)]
pub struct FollowedFocus {
    last: Option<Id>,
    hidden: Option<Id>,
}

impl FollowedFocus {
    /// Before the desks are drawn: brings what was found hidden into view, as a screen reader would ask for it.
    pub fn show(&mut self, ctx: &Context) {
        if let Some(id) = self.hidden.take() {
            let request = ActionRequest {
                action: Action::ScrollIntoView,
                target_tree: TreeId::ROOT,
                target_node: id.accesskit_id(),
                data: None,
            };
            ctx.input_mut(|input| input.events.push(Event::AccessKitActionRequest(request)));
        }
    }

    /// After the desks are drawn: whether the focus has gone to something that scrolling hides.
    pub fn note(&mut self, ctx: &Context) {
        // To read a widget that a click has just given the focus would take it away again, as for a click beside it.
        if ctx.input(|input| input.pointer.any_pressed() || input.pointer.any_released()) {
            return;
        }
        let focused = ctx.memory(egui::Memory::focused);
        if focused == self.last {
            return;
        }
        self.last = focused;
        let response = focused.and_then(|id| ctx.read_response(id));
        let is_hidden = |response: &egui::Response| !response.interact_rect.contains_rect(response.rect.shrink(1.0));
        self.hidden = response.filter(is_hidden).map(|response| response.id);
        if self.hidden.is_some() {
            ctx.request_repaint();
        }
    }
}
