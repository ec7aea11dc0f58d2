//! Which spare goes into which machine: over all machines and spares at once, solved to a proven optimum.
//!
//! [`question`] says in the abstract what is asked, [`solve`] answers it. Measured on random shelves (`cargo bench --bench
//! placement`): a general-purpose solver's relaxation alone is weak where boards bring their sockets, so choices are cut
//! soundly first (`cut`), boards and their like are decided before single choices (`model`), and short rails are met
//! only where they occur (`short`).

mod cut;
mod model;
pub mod question;
mod short;
pub mod solve;
mod verify;
