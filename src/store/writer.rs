//! The thread that owns the writing connection: it takes orders one by one and publishes what they led to.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::mpsc::{Receiver, SyncSender};

use rusqlite::{Connection, params};

use super::consistency::{Laws, Link};
use super::error::StoreError;
use super::history::{Act, Stacks};
use super::lock::WriterLock;
use super::store::{Event, Shared};
use super::write::{Deed, Fault, write};
use super::{backup, connect};
use crate::record::{Change, Logbook};

/// Where the outcome goes; without a waiting caller it becomes an event.
pub type Reply = Option<SyncSender<Result<Arc<Logbook>, Fault>>>;

/// What the writer is asked to do.
pub enum Order {
    Write(Change, Reply),
    /// As `Write`, with the findings that the facts of every part touched call for.
    WriteWithFindings(Change, Reply),
    /// What a new logbook begins with.
    Found(Change, Reply),
    Undo(Reply),
    Redo(Reply),
    /// A desk's draft has changed in memory; it is to be on disk too.
    Draft(String),
    Backup(SyncSender<Result<PathBuf, StoreError>>),
    /// For trying a full disk: the file may not grow beyond so many pages.
    LimitPages(u32),
    Stop,
}

pub struct Writer {
    pub connection: Connection,
    pub links: Vec<Link>,
    pub folder: PathBuf,
    pub shared: Arc<Shared>,
    pub stacks: Stacks,
    /// The highest number given to a moment so far.
    pub sequence: u32,
    /// Held until the connection is closed.
    #[expect(dead_code, reason = "held, not read")]
    pub lock: WriterLock,
}

impl Writer {
    /// Takes orders until told to stop.
    pub fn run(mut self, orders: &Receiver<Order>) {
        while let Ok(order) = orders.recv() {
            match order {
                Order::Write(Change { name, steps }, reply) => {
                    self.answer(Act::Do, name, Deed::Steps(steps), reply);
                }
                Order::WriteWithFindings(Change { name, steps }, reply) => {
                    self.answer(Act::Do, name, Deed::StepsWithFindings(steps), reply);
                }
                Order::Found(Change { name, steps }, reply) => {
                    self.answer(Act::New, name, Deed::Steps(steps), reply);
                }
                Order::Undo(reply) => match self.stacks.undo.last().cloned() {
                    Some((number, name)) => self.answer(Act::Undo, name, Deed::Reverse(number), reply),
                    None => self.refuse(String::new(), StoreError::NothingToUndo.into(), reply),
                },
                Order::Redo(reply) => match self.stacks.redo.last().cloned() {
                    Some((number, name)) => self.answer(Act::Redo, name, Deed::Reverse(number), reply),
                    None => self.refuse(String::new(), StoreError::NothingToRedo.into(), reply),
                },
                Order::Draft(desk) => {
                    if let Err(error) = self.save_draft(&desk) {
                        self.refuse(desk, error.about(&connect::database(&self.folder)).into(), None);
                    }
                }
                Order::Backup(reply) => {
                    let _ = reply.send(backup::back_up(&self.connection, &self.folder, "asked-for"));
                }
                Order::LimitPages(pages) => {
                    let _ = self.connection.pragma_update_and_check(None, "max_page_count", pages, |_| Ok(()));
                }
                Order::Stop => break,
            }
        }
    }

    fn answer(&mut self, act: Act, name: String, deed: Deed, reply: Reply) {
        let Self { connection, links, folder, shared, stacks, sequence, .. } = self;
        let last = shared.logbook();
        let laws = Laws { links, rules: &|| shared.rules() };
        match write(connection, &laws, &last, *sequence, act, &name, deed) {
            Ok(written) => {
                *sequence = written.sequence;
                if let Some(number) = written.number {
                    stacks.note(number, name.clone(), act);
                    shared.publish(Arc::clone(&written.logbook), stacks, name);
                }
                if let Some(reply) = reply {
                    let _ = reply.send(Ok(written.logbook));
                }
            }
            Err(Fault { key, error }) => {
                let error = error.about(&connect::database(folder));
                self.refuse(name, Fault { key, error }, reply);
            }
        }
    }

    fn refuse(&self, name: String, fault: Fault, reply: Reply) {
        match reply {
            Some(reply) => drop(reply.send(Err(fault))),
            None => self.shared.tell(Event::Refused { name, error: fault.error }),
        }
    }

    fn save_draft(&self, desk: &str) -> Result<(), StoreError> {
        match self.shared.draft_to_save(desk) {
            Some(body) => self
                .connection
                .prepare_cached(
                    "INSERT INTO draft (desk, body, saved_at) VALUES (?, ?, ?)
                     ON CONFLICT (desk) DO UPDATE SET body = excluded.body, saved_at = excluded.saved_at",
                )?
                .execute(params![desk, body, chrono::Utc::now().to_rfc3339()])?,
            None => self.connection.prepare_cached("DELETE FROM draft WHERE desk = ?")?.execute([desk])?,
        };
        Ok(())
    }
}
