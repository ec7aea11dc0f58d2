//! An answer that is too long for the window's thread: worked out beside it, the last one shown meanwhile.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use crate::assess::Stop;

/// The latest answer to a question that changes (`Key`), and the one that is being worked out.
pub struct Background<Key, Answer> {
    ready: Option<(Key, Arc<Answer>)>,
    running: Option<Running<Key, Answer>>,
}

struct Running<Key, Answer> {
    key: Key,
    receive: Receiver<Answer>,
    stop: Stop,
}

impl<Key, Answer> Default for Background<Key, Answer> {
    fn default() -> Self {
        Self { ready: None, running: None }
    }
}

impl<Key: PartialEq + Clone, Answer: Send + 'static> Background<Key, Answer> {
    /// The answer to `key`: worked out here when it is `small`, else beside the window, which is drawn again when it is
    /// there; until then the last answer, if any. What is being worked out is awaited before the next is begun.
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
            self.start(key, ctx, |_| work());
        }
        self.ready.as_ref().map(|(_, answer)| Arc::clone(answer))
    }

    /// The same for what can be stopped: what is being worked out for another key is stopped and let go at once.
    pub fn get_newest(
        &mut self,
        key: Key,
        ctx: &egui::Context,
        is_small: bool,
        work: impl FnOnce(Stop) -> Answer + Send + 'static,
    ) -> Option<Arc<Answer>> {
        self.take_ready();
        if let Some(old) = self.running.take_if(|running| running.key != key) {
            old.stop.stop();
        }
        let is_current = self.ready.as_ref().is_some_and(|(of, _)| *of == key);
        if !is_current && is_small {
            self.ready = Some((key, Arc::new(work(Stop::default()))));
        } else if !is_current && self.running.is_none() {
            self.start(key, ctx, work);
        }
        self.ready.as_ref().map(|(_, answer)| Arc::clone(answer))
    }

    /// Whether an answer is being worked out.
    pub fn is_running(&self) -> bool {
        self.running.is_some()
    }

    /// Has what is being worked out give what it has.
    pub fn stop(&self) {
        if let Some(running) = &self.running {
            running.stop.stop();
        }
    }

    fn start(&mut self, key: Key, ctx: &egui::Context, work: impl FnOnce(Stop) -> Answer + Send + 'static) {
        let (send, receive) = channel();
        let (ctx, stop) = (ctx.clone(), Stop::default());
        self.running = Some(Running { key, receive, stop: stop.clone() });
        std::thread::spawn(move || {
            // The window may be gone by now, or ask for something else: then nobody wants the answer.
            let _ = send.send(work(stop));
            ctx.request_repaint();
        });
    }

    fn take_ready(&mut self) {
        let Some(running) = self.running.take() else { return };
        match running.receive.try_recv() {
            Ok(answer) => self.ready = Some((running.key, Arc::new(answer))),
            Err(TryRecvError::Empty) => self.running = Some(running),
            Err(TryRecvError::Disconnected) => {}
        }
    }
}
