//! Pin-outs of the board plugs, for putting a meter on the right contact.

use serde::Serialize;

use super::rail::Rail;
use crate::text;
use crate::trade::Source;

/// What a contact carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Signal {
    /// An output.
    Rail(Rail),
    /// Ground.
    Ground,
    /// High while every output is in regulation.
    PowerGood,
    /// Pulled low by the board to switch the supply on.
    PowerOn,
    /// Not connected.
    Unused,
}

/// One contact of a plug.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct PlugPin {
    /// Plug as printed on the board; empty where there is one only.
    pub plug: &'static str,
    /// Number within the plug, from 1.
    pub pin: u8,
    /// What it carries.
    pub signal: Signal,
    /// Usual wire colour. Colours are a habit, not a promise: some makers swap them.
    pub wire: &'static str,
}

/// Source of [`atx_pinout`].
pub const ATX_PINOUT: Source = Source::published("pin tables of the ATX board plug at cvs.ru and housea.ru");
/// Source of [`at_pinout`].
pub const AT_PINOUT: Source = Source::published("PC Hardware in a Nutshell, table 26-6");

/// The 20-pin ATX plug, pins 1 to 20. -5 V is optional from ATX12V 1.2 and gone from 1.3. Some makers' supplies
/// use the same plug with other wiring: measure before it meets a board.
pub fn atx_pinout() -> Vec<PlugPin> {
    use Rail::{Minus5, Minus12, Plus3v3, Plus5, Plus12, Standby};
    use Signal::{Ground, PowerGood, PowerOn};
    let wires = [
        (Signal::Rail(Plus3v3), text!("orange")),
        (Signal::Rail(Plus3v3), text!("orange")),
        (Ground, text!("black")),
        (Signal::Rail(Plus5), text!("red")),
        (Ground, text!("black")),
        (Signal::Rail(Plus5), text!("red")),
        (Ground, text!("black")),
        (PowerGood, text!("grey")),
        (Signal::Rail(Standby), text!("purple")),
        (Signal::Rail(Plus12), text!("yellow")),
        (Signal::Rail(Plus3v3), text!("orange, with a brown sense wire")),
        (Signal::Rail(Minus12), text!("blue")),
        (Ground, text!("black")),
        (PowerOn, text!("green")),
        (Ground, text!("black")),
        (Ground, text!("black")),
        (Ground, text!("black")),
        (Signal::Rail(Minus5), text!("white")),
        (Signal::Rail(Plus5), text!("red")),
        (Signal::Rail(Plus5), text!("red")),
    ];
    pins("", &wires)
}

/// The AT pair P8 and P9, pins 1 to 6 each; the black wires of both meet in the middle. On PC and XT supplies P8
/// pin 2 is not connected.
pub fn at_pinout() -> Vec<PlugPin> {
    use Rail::{Minus5, Minus12, Plus5, Plus12};
    let p8 = [
        (Signal::PowerGood, text!("orange")),
        (Signal::Rail(Plus5), text!("red")),
        (Signal::Rail(Plus12), text!("yellow")),
        (Signal::Rail(Minus12), text!("blue")),
        (Signal::Ground, text!("black")),
        (Signal::Ground, text!("black")),
    ];
    let p9 = [
        (Signal::Ground, text!("black")),
        (Signal::Ground, text!("black")),
        (Signal::Rail(Minus5), text!("white")),
        (Signal::Rail(Plus5), text!("red")),
        (Signal::Rail(Plus5), text!("red")),
        (Signal::Rail(Plus5), text!("red")),
    ];
    let mut all = pins("P8", &p8);
    all.extend(pins("P9", &p9));
    all
}

fn pins(plug: &'static str, wires: &[(Signal, &'static str)]) -> Vec<PlugPin> {
    (1..).zip(wires).map(|(pin, (signal, wire))| PlugPin { plug, pin, signal: *signal, wire }).collect()
}
