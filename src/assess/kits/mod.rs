//! Kits: capacitor positions gathered into as few order lines as the rules of substitution allow, exactly.
//!
//! Positions that ask for the same become one [`Demand`]. A line is one capacitor specification, in stock or to be
//! bought; a position may be served by it when the tables allow the substitution (see [`allowed`]). The fewest lines
//! that serve every position are a least set cover of demands by lines, and are found exactly (see [`cover`]); of
//! covers equally small, the one with the most lines that are in stock already. Each position then goes to the chosen
//! line nearest to it in value and voltage, each line is made as narrow as its positions allow, what is in stock is
//! taken first, and the rest is bought with spares.
//!
//! That finitely many lines are enough is shown at [`candidates`].

pub mod acts;
pub mod allowed;
pub mod candidates;
pub mod cover;
pub mod demand;
pub mod fill;
pub mod scope;
mod shrink;
pub mod used;

use std::sync::Arc;

pub use allowed::{Reason, allowed};
pub use demand::{Demand, Room, Spec};
pub use fill::{Line, Proposal};
pub use scope::{LeftOut, Scope, Which, Why};

use crate::record::{Logbook, MaterialId};
use crate::rules::Rules;

/// Capacitors of one kind in stock that nothing has reserved.
#[derive(Clone, Debug, PartialEq)]
pub struct InStock {
    pub material: MaterialId,
    pub spec: Spec,
    /// Pieces, 0 or more; a kind of which there is none is bought again under its name.
    pub free: u32,
}

/// How much is looked at before the best so far is given with its bound: nodes of the search. Kits of a hundred
/// thousand positions take a few hundred.
pub const PATIENCE: u64 = 200_000;

/// The kit of the positions in scope; `patience` as [`PATIENCE`].
pub fn gather(logbook: &Logbook, rules: &Rules, scope: &Scope, which: &Which, patience: u64) -> Proposal {
    let stock = in_stock(logbook);
    let (positions, left_out) = scope::positions(logbook, rules, scope, which);
    fill::fill(positions, left_out, &stock, rules, patience)
}

/// The capacitors in stock, less what kits have reserved.
pub fn in_stock(logbook: &Logbook) -> Vec<InStock> {
    let reserved = super::supplies::reserved(logbook);
    let of = |material: &Arc<crate::record::Material>| {
        let spec = Spec::of_material(material)?;
        let free = (material.stock - reserved.of(material.id)).max(0.0).floor() as u32;
        Some(InStock { material: material.id, spec, free })
    };
    logbook.materials.iter().filter_map(of).collect()
}
