//! Power supplies: rails and their limits, readings judged, loads against the label, timing, pin-outs.

mod label;
mod pinout;
mod rail;
mod reading;
mod timing;

pub use label::{Combined, Label, LoadFault, RailRating, labels, load_faults};
pub use pinout::{AT_PINOUT, ATX_PINOUT, PlugPin, Signal, at_pinout, atx_pinout};
pub use rail::{Limits, Rail, Standard, limits, rail_in};
pub use reading::{RailReading, RailVerdict, Verdict, judge, parse_pairs};
pub use timing::{PowerGood, PowerGoodVerdict, judge_power_good};
