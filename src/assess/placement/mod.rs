//! Which spare goes into which machine: over all machines and spares at once, solved to a proven optimum.
//!
//! [`question`] says in the abstract what is asked, [`solve`] answers it. Measured on random shelves (`cargo bench --bench
//! placement`): a general-purpose solver's relaxation alone is weak where boards bring their sockets, so choices are cut
//! soundly first (`cut`), boards and their like are decided before single choices (`model`) and bind what hangs on them
//! (`held`), and short rails are met only where they occur (`short`). What one machine teaches is learned with that machine
//! alone (`solve`), and fractions are mended by sorts of spares before single ones (`part`).

pub mod ask;
mod by_hand;
mod change;
mod cut;
mod effort;
mod finished;
pub mod goals;
mod held;
mod left;
mod misfits;
mod model;
mod moves;
mod part;
pub mod pins;
mod plugs;
pub mod propose;
pub mod question;
mod rails;
mod rank;
mod said;
mod short;
pub mod solve;
mod ties;
mod verify;
mod wanted;
pub mod what_if;
mod wishes;

pub use ask::{Ask, Asked, ask};
pub use effort::{Effort, bench_minutes};
pub use goals::{Goals, Term};
pub use left::{Lack, Left, lacks_in, left_of, left_over};
pub use moves::{Move, change};
pub use pins::Contradiction;
pub use propose::{NextBest, Outlook, Proposal, SHORT, Seated, Voided, next_best, propose};
pub use wanted::Wanted;
pub use what_if::{Consequences, instead, what_if};
pub use wishes::Wish;
