//! Forms that more than one desk fills in.

mod connectors;
mod day;
mod faults;
mod figure;
mod hours;
mod lot;
mod money;
mod pasted;
mod place;
mod proof;
pub mod work;
mod workshop;

pub use connectors::{all_connectors, connector_row_ui};
pub use day::past_date;
pub use faults::{Faults, Faulty};
pub use figure::{dividers, figure, figures};
pub use hours::HoursField;
pub use lot::LotFacts;
pub use money::{money_text, read_money};
pub use pasted::{Pasted, ReadLine};
pub use place::{PlaceFacts, new_places, place_names, place_of, places};
pub use proof::{Owner, ProofAct, ProofForm};
pub use work::{Ending, WorkAct, WorkForm, guide_ui};
pub use workshop::workshop_ui;
