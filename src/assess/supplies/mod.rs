//! Supplies: what is reserved for what, what waits for which kit, what is to be bought, and what it all cost.

mod costs;
mod reserved;
mod shopping;

pub use costs::{Costs, machine_costs, part_costs};
pub use reserved::{Reserved, Waiting, reserved, served, waiting};
pub use shopping::{For, ToBuy, to_buy};
