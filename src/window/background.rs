//! An answer that is too long for the window's thread: worked out beside it, the last one shown meanwhile.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// The latest answer to a question that changes (`Key`), and the one that is being worked out.
pub struct Background<Key, Answer> {
    ready: Option<(Key, Arc<Answer>)>,
    running: Option<(Key, Receiver<Answer>)>,
}

impl<Key, Answer> Default for Background<Key, Answer> {
    fn default() -> Self {
        Self { ready: None, running: None }
    }
}

impl<Key: PartialEq + Clone, Answer: Send + 'static> Background<Key, Answer> {
    /// The answer to `key`: worked out here when it is `small`, else beside the window, which is drawn again when it is
    /// there; until then the last answer, if any.
    pub fn get(
        &mut self,
        key: Key,
        ctx: &egui::Context,
        is_small: bool,
        work: impl FnOnce() -> Answer + Send + 'static,
    ) -> Option<Arc<Answer>> {
        self.take_ready();
        let is_current = self.ready.as_ref().is_some_and(|(of, _)| *of == key);
        if !is_current && is_small {
            self.running = None;
            self.ready = Some((key, Arc::new(work())));
        } else if !is_current && self.running.is_none() {
            let (send, receive) = channel();
            let ctx = ctx.clone();
            self.running = Some((key, receive));
            std::thread::spawn(move || {
                // The window may be gone by now: then nobody wants the answer.
                let _ = send.send(work());
                ctx.request_repaint();
            });
        }
        self.ready.as_ref().map(|(_, answer)| Arc::clone(answer))
    }

    fn take_ready(&mut self) {
        let Some((key, receive)) = self.running.take() else { return };
        match receive.try_recv() {
            Ok(answer) => self.ready = Some((key, Arc::new(answer))),
            Err(TryRecvError::Empty) => self.running = Some((key, receive)),
            Err(TryRecvError::Disconnected) => {}
        }
    }
}
