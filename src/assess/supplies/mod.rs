//! Supplies: what is reserved for what, what waits for which kit, what is on order and what to buy, and what it all cost.

mod costs;
mod reserved;
mod shopping;

pub use costs::{Costs, machine_costs, part_costs};
pub use reserved::{Reserved, Waiting, on_order, reserved, served, waiting};
pub use shopping::{For, ToBuy, to_buy};
