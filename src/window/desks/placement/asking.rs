//! A question put to a thread of its own: it proposes, then tells what is asked about its proposal.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, TryRecvError, channel};
use std::time::{Duration, Instant};

use super::about::{Said, tell};
use super::found::Found;
use crate::assess::placement::{Ask, Contradiction, Proposal, ask, propose};
use crate::assess::{Answers, Stop};
use crate::record::{Logbook, PartId};
use crate::rules::Rules;

/// So long is looked for a better proposal.
const PATIENCE: Duration = Duration::from_secs(20);

/// What a question is asked of.
#[derive(Clone)]
pub struct Of {
    pub logbook: Arc<Logbook>,
    pub answers: Arc<Answers>,
    pub rules: Arc<Rules>,
    pub ask: Ask,
}

/// Tells one question from another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Key {
    pub revision: u64,
    pub rules: u64,
    pub ask: Ask,
}

/// What comes back.
pub enum News {
    Proposed(Result<Box<Found>, Contradiction>),
    /// What the best proposal without pins is worth, and whether that is proven.
    Free(i64, bool),
    About(PartId, Said),
    /// The thread ended before it could answer.
    Failed,
}

/// A question under way or answered.
pub struct Asking {
    pub key: Key,
    stop: Stop,
    is_proposing: bool,
    about: Option<(PartId, Stop)>,
    /// `None` once nobody wants to know any more.
    questions: Option<Sender<(PartId, Stop)>>,
    news: Receiver<News>,
}

/// How much longer to look.
pub fn left_until(end: Instant, stop: &Stop) -> Duration {
    if stop.is_stopped() { Duration::ZERO } else { end.saturating_duration_since(Instant::now()) }
}

impl Asking {
    /// Puts a question; the window is drawn again whenever something comes back.
    pub fn start(key: Key, of: Of, ctx: &egui::Context) -> Self {
        let (to_desk, news) = channel();
        let (questions, asked) = channel();
        let (ctx, stop) = (ctx.clone(), Stop::default());
        let own = stop.clone();
        std::thread::spawn(move || {
            let tell = |news: News| {
                // The desk may be gone by now: then nobody wants it.
                let _ = to_desk.send(news);
                ctx.request_repaint();
            };
            answer(&of, &own, &asked, &tell);
            drop(to_desk);
            // Another question may wait for the end of this one.
            ctx.request_repaint();
        });
        Self { key, stop, is_proposing: true, about: None, questions: Some(questions), news }
    }

    /// Lets the question go; whether its thread has ended. Where it has not yet, the window is drawn again once it has.
    pub fn let_go(&mut self) -> bool {
        self.stop.stop();
        if let Some((_, stop)) = &self.about {
            stop.stop();
        }
        self.questions = None;
        loop {
            match self.news.try_recv() {
                Ok(_) => {}
                Err(TryRecvError::Empty) => return false,
                Err(TryRecvError::Disconnected) => return true,
            }
        }
    }

    /// Whether a proposal is still looked for.
    pub fn is_proposing(&self) -> bool {
        self.is_proposing
    }

    /// Has the best so far given.
    pub fn stop(&self) {
        self.stop.stop();
    }

    /// Asks about a part, unless that is asked already.
    pub fn ask_about(&mut self, part: PartId) {
        if self.is_proposing || self.about.as_ref().is_some_and(|(known, _)| *known == part) {
            return;
        }
        if let Some((_, stop)) = &self.about {
            stop.stop();
        }
        let stop = Stop::default();
        self.about = Some((part, stop.clone()));
        if let Some(questions) = &self.questions {
            // A thread that has ended has said so.
            let _ = questions.send((part, stop));
        }
    }

    /// What came back since the last call.
    pub fn take_news(&mut self) -> Vec<News> {
        let mut all = Vec::new();
        loop {
            match self.news.try_recv() {
                Ok(news) => {
                    self.is_proposing &= !matches!(news, News::Proposed(_));
                    all.push(news);
                }
                Err(TryRecvError::Disconnected) if self.is_proposing => {
                    self.is_proposing = false;
                    all.push(News::Failed);
                }
                Err(_) => return all,
            }
        }
    }
}

impl Drop for Asking {
    fn drop(&mut self) {
        self.let_go();
    }
}

fn answer(of: &Of, stop: &Stop, questions: &Receiver<(PartId, Stop)>, news: &dyn Fn(News)) {
    let Of { logbook, answers, rules, ask: wanted } = of;
    let end = Instant::now() + PATIENCE;
    let asked = match ask(logbook, answers, rules, wanted.clone()) {
        Ok(asked) => asked,
        Err(contradiction) => return news(News::Proposed(Err(contradiction))),
    };
    let proposal = propose(&asked, &|| left_until(end, stop));
    news(News::Proposed(Ok(Box::new(Found::of(&asked, proposal.clone(), Arc::clone(logbook))))));
    let is_tried = !(wanted.pins.is_empty() && wanted.left_out.is_empty());
    if let Some((worth, is_proven)) = is_tried.then(|| free(of, end, stop)).flatten() {
        news(News::Free(worth, is_proven));
    }
    for (part, stop) in questions {
        tell(&asked, &proposal, part, &stop, &|said| news(News::About(part, said)));
    }
}

/// What the best proposal is worth where nothing is pinned or left out to try something.
fn free(of: &Of, end: Instant, stop: &Stop) -> Option<(i64, bool)> {
    let without = Ask { pins: Vec::new(), left_out: Vec::new(), ..of.ask.clone() };
    let asked = ask(&of.logbook, &of.answers, &of.rules, without).ok()?;
    let proposal: Proposal = propose(&asked, &|| left_until(end, stop));
    Some((proposal.worth, proposal.is_proven()))
}
