//! Loss factor and series resistance: one from the other, and of capacitors side by side.

use std::f64::consts::TAU;

/// The frequency at which electrolytics' loss factors are given, in hertz.
pub const MAINS_HZ: f64 = 120.0;

/// Series resistance in milliohm from the loss factor: tan δ = 2π f C ESR.
///
/// `capacitance_uf` in microfarads, `frequency_hz` in hertz, all above 0. A loss factor given at 120 Hz says nothing
/// about 100 kHz. Source: docslides ("Impedance, dissipation factor"); calculator.academy prints the inverse, wrongly.
pub fn esr_mohm(tan_delta: f64, capacitance_uf: f64, frequency_hz: f64) -> f64 {
    tan_delta * 1e9 / (TAU * frequency_hz * capacitance_uf)
}

/// The loss factor from the series resistance; units and source as [`esr_mohm`].
pub fn tan_delta(esr_mohm: f64, capacitance_uf: f64, frequency_hz: f64) -> f64 {
    esr_mohm * TAU * frequency_hz * capacitance_uf / 1e9
}

/// One capacitor of a group.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Member {
    pub capacitance_uf: f64,
    pub esr_mohm: f64,
}

/// Capacitors side by side as one: capacitances add, resistances by their inverses. `None` for an empty group or a
/// figure that is not above 0. Source: DOE electrical science ES-03, p. 14; parallel resistance is textbook.
pub fn parallel(members: &[Member]) -> Option<Member> {
    let sound = |figure: f64| figure.is_finite() && figure > 0.0;
    if members.is_empty() || !members.iter().all(|member| sound(member.capacitance_uf) && sound(member.esr_mohm)) {
        return None;
    }
    Some(Member {
        capacitance_uf: members.iter().map(|member| member.capacitance_uf).sum(),
        esr_mohm: 1.0 / members.iter().map(|member| 1.0 / member.esr_mohm).sum::<f64>(),
    })
}
