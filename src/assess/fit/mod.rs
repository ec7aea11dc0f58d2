//! Whether a machine's parts fit: constraints between them, each verdict with its reason, its rule, and the figure it
//! lacks.
//!
//! [`Models`] gathers what is asked of each design once; a [`Build`] puts pieces together and judges them, and judges
//! anew only what a [`Build::swap`] touches. Rules by which a machine's roles are filled stand in [`roles`].

mod because;
mod build;
pub mod candidates;
mod clocks;
mod connectors;
mod cooling;
mod dates;
mod drives;
mod effect;
pub mod matching;
mod memory;
mod model;
mod power;
mod roles;
mod said;
mod space;
mod voltage;

pub use because::{Because, Constraint, SetVoltage, Verdict};
pub use build::{Asked, Build, Tally};
pub(in crate::assess) use connectors::may_offer;
pub use connectors::{Link, Plugged};
pub use model::{Model, Models, Noted, Piece, Port, Volts};
pub use power::{draw_asked_of, draw_figures, draws, draws_current, watts};
pub use roles::{
    Placed, RoleFill, Uses, competing, note_unplugged, of_machine, part_reasons, role_reasons, roles, uses,
};
