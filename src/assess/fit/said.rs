//! Reasons of fit as sentences.

use super::because::{Because, SetVoltage, Verdict};
use super::candidates::Loss;
use crate::assess::reason::{finding_name, lower_first, machine_name, part_name, role_name};
use crate::record::{Figure, Logbook, PartId, Word};
use crate::rules::Rules;
use crate::trade::drive::{Capacity, Outcome};
use crate::{counted, text};

/// A figure as it is read: up to two places, without zeros behind.
fn said(value: f64) -> String {
    let fixed = format!("{value:.2}");
    fixed.trim_end_matches('0').trim_end_matches('.').to_owned()
}

impl Because {
    /// The reason as one sentence that names its parts by tag and title.
    pub fn sentence(&self, logbook: &Logbook, rules: &Rules) -> String {
        let name = |part: PartId| part_name(logbook, part);
        let part = self.part().map(name).unwrap_or_default();
        let label = |connector: &str| rules.connectors.label(connector).to_owned();
        match self {
            Self::AllPlugged { connectors } => {
                let all = counted!("{count} connector", "{count} connectors", *connectors);
                text!("Everything that is needed is offered: {connectors}.", connectors = all)
            }
            Self::ConnectorsUnknown { .. } => text!("What {part} plugs into is not known.", part = part),
            Self::NeedUnmet { connector, missing, is_certain, held_by, .. } => {
                let connector = label(connector);
                let mut sentence = if held_by.is_empty() {
                    text!(
                        "{part} needs {missing} × {connector}, and nothing in the machine has it free.",
                        part = part,
                        missing = missing,
                        connector = connector
                    )
                } else {
                    let holders = held_by.iter().copied().map(name).collect::<Vec<_>>().join(", ");
                    text!(
                        "{part} needs {missing} × {connector}, and what would take it is held by {holders}.",
                        part = part,
                        missing = missing,
                        connector = connector,
                        holders = holders
                    )
                };
                if !is_certain {
                    sentence =
                        format!("{sentence} {}", text!("A part that could offer it is not known, or still to come."));
                }
                sentence
            }
            Self::AdapterRing { connector, around, .. } => {
                let around = around.iter().copied().map(name).collect::<Vec<_>>().join(", ");
                text!(
                    "{part} needs {connector}, which only its own chain of adapters offers: {around} would be plugged into each other.",
                    part = part,
                    connector = label(connector),
                    around = around
                )
            }
            Self::ByEye { part: of, finding } => text!(
                "{part} can be used, by eye: {finding}.",
                part = part,
                finding = finding_name(logbook, rules, *of, *finding).to_lowercase()
            ),
            Self::FigureMissing { figure, .. } => {
                text!("Not told of {part}: {figure}.", part = part, figure = lower_first(figure.label()))
            }
            Self::FigureNonsense { figure, value, .. } => text!(
                "{part}: {figure} cannot be {value}, so it counts as not told.",
                part = part,
                figure = lower_first(figure.label()),
                value = value
            ),
            Self::SettingUnreadable { setting, said, .. } => text!(
                "{part}: the {setting} noted, “{said}”, cannot be read as a number, so what it is set to is not known.",
                part = part,
                setting = setting.said(),
                said = said
            ),
            Self::Voltage { host, asks_v, gives_v, set: SetVoltage::Noted { best_v }, .. } => {
                self.voltage_set(&part, &name(*host), (*asks_v, *gives_v), *best_v)
            }
            Self::Voltage { host, asks_v, gives_v, .. } => self.voltage(&part, &name(*host), *asks_v, *gives_v),
            Self::Runs { bus_mhz, multiplier, core_mhz, is_noted: true, .. } => text!(
                "As set: {part} runs at {multiplier} × {bus} MHz = {core} MHz.",
                part = part,
                multiplier = said(*multiplier),
                bus = said(*bus_mhz),
                core = said(*core_mhz)
            ),
            Self::CouldRun { bus_mhz, multiplier, core_mhz, .. } => text!(
                "Best: {part} could be set to {multiplier} × {bus} MHz = {core} MHz.",
                part = part,
                multiplier = said(*multiplier),
                bus = said(*bus_mhz),
                core = said(*core_mhz)
            ),
            Self::NotObeyed { board, multiplier, is_fixed: true, .. } => text!(
                "{board} is set to {multiplier} ×; the multiplier of {part} is fixed and does not obey it.",
                board = name(*board),
                multiplier = said(*multiplier),
                part = part
            ),
            Self::NotObeyed { board, multiplier, .. } => text!(
                "{board} is set to {multiplier} ×, which {part} does not obey: what it runs at is not known.",
                board = name(*board),
                multiplier = said(*multiplier),
                part = part
            ),
            Self::CoolerOfOther { cooler, socket, lugs, is_weaker, .. } => {
                let (cooler, socket, lugs) = (name(*cooler), label(socket), label(lugs));
                let what = text!(
                    "{part} sits in {socket}, and {cooler} is for “{lugs}”: check clip, step and footprint.",
                    part = part,
                    socket = socket,
                    cooler = cooler,
                    lugs = lugs
                );
                let more = if *is_weaker {
                    text!("Whether it carries the heat off is not known; a bare die chips under a tilted base.")
                } else {
                    text!("A stiff clip bends or breaks the lugs.")
                };
                format!("{what} {more}")
            }
            Self::Cooled { cooler, .. } => text!("{cooler} cools {part}.", cooler = name(*cooler), part = part),
            Self::NoCooler { is_needed: true, .. } => {
                text!("{part} needs a cooler, and the machine has none for it.", part = part)
            }
            Self::NoCooler { .. } => {
                text!("{part} has no cooler, and nobody told whether it needs one.", part = part)
            }
            Self::Runs { bus_mhz, multiplier, core_mhz, .. } => text!(
                "{part} is set to {multiplier} × {bus} MHz and runs at {core} MHz.",
                part = part,
                multiplier = said(*multiplier),
                bus = said(*bus_mhz),
                core = said(*core_mhz)
            ),
            Self::NoSetting { board, .. } => {
                text!("{board} has no multiplier that {part} obeys.", board = name(*board), part = part)
            }
            Self::RunsSlower { core_mhz, sold_mhz, .. } => text!(
                "{part} runs at {core} MHz, slower than the {sold} MHz that it is made for.",
                part = part,
                core = said(*core_mhz),
                sold = said(*sold_mhz)
            ),
            Self::ClockBeyond { clock, .. } => text!(
                "{part}: {clock} at {mhz} MHz is {reach} the {specified} MHz specified ({percent} % over).",
                part = part,
                clock = clock.clock,
                mhz = said(clock.mhz),
                reach = clock.reach.said(),
                specified = said(clock.specified_mhz),
                percent = format!("{:.0}", clock.beyond_percent)
            ),
            Self::MemoryTaken { mb, .. } => text!("{board} takes the {mb} MB of memory.", board = part, mb = said(*mb)),
            Self::BankShort { connector, per_bank, short, .. } => text!(
                "A bank takes {per_bank} × {connector}: {short} more like {part} would fill the last one.",
                per_bank = per_bank,
                connector = label(connector),
                short = short,
                part = part
            ),
            Self::BankMixed { connector, .. } => text!(
                "The modules for {connector} do not make banks of one size: each bank counts as its smallest.",
                connector = label(connector)
            ),
            Self::ModuleTooLarge { mb, most_mb, .. } => text!(
                "{part} has {mb} MB; a socket takes at most {most} MB.",
                part = part,
                mb = said(*mb),
                most = said(*most_mb)
            ),
            Self::TooMuchMemory { mb, most_mb, .. } => {
                text!("{board} uses {most} of the {mb} MB.", board = part, most = said(*most_mb), mb = said(*mb))
            }
            Self::NotAllCached { mb, cached_mb, .. } => text!(
                "{board} caches the first {cached} of the {mb} MB; what lies above is slower.",
                board = part,
                cached = said(*cached_mb),
                mb = said(*mb)
            ),
            Self::ModuleSlow { ns, asked_ns, .. } => text!(
                "{part} needs {ns} ns, and the board asks {asked} ns at its fastest clock: wait states, or a slower bus.",
                part = part,
                ns = said(*ns),
                asked = said(*asked_ns)
            ),
            Self::Disk { bytes, outcome, remedy, .. } => disk(&part, *bytes, *outcome, remedy),
            Self::DiskOnController { host, .. } => {
                text!("{part} is reached by the firmware of {host}.", part = part, host = name(*host))
            }
            Self::LoadCarried { watts, .. } => {
                text!("{part} carries the load: {watts} W.", part = part, watts = format!("{watts:.0}"))
            }
            Self::Load { fault, .. } => text!("{part}: {fault}.", part = part, fault = fault.said()),
            Self::RoomEnough { size: Figure::HeightMm, .. } => text!("The cooler has room in {case}.", case = part),
            Self::RoomEnough { .. } => text!("The cards have room in {case}.", case = part),
            Self::NoRoom { case, mm, room_mm, .. } => text!(
                "{part} takes {mm} mm, and {case} has {room} mm.",
                part = part,
                mm = said(*mm),
                case = name(*case),
                room = said(*room_mm)
            ),
            Self::InWindow { .. } => text!("All parts were made within the window.").to_owned(),
            Self::Dates { true_to, .. } => {
                text!("{part} and the window: {true_to}.", part = part, true_to = true_to.said())
            }
        }
    }

    fn voltage(&self, part: &str, host: &str, asks_v: f64, gives_v: f64) -> String {
        let (asks, gives) = (said(asks_v), said(gives_v));
        match self.verdict() {
            Verdict::Fits => text!("{host} gives {part} its {asks} V.", host = host, part = part, asks = asks),
            Verdict::Caveat => text!(
                "{part} asks {asks} V; the nearest that {host} gives is {gives} V: measure before power.",
                part = part,
                asks = asks,
                host = host,
                gives = gives
            ),
            _ if gives_v > asks_v => text!(
                "{part} asks {asks} V, and {host} gives no less than {gives} V: that would destroy it.",
                part = part,
                asks = asks,
                host = host,
                gives = gives
            ),
            _ => text!(
                "{part} asks {asks} V, and {host} gives no more than {gives} V.",
                part = part,
                asks = asks,
                host = host,
                gives = gives
            ),
        }
    }
}

impl Because {
    fn voltage_set(&self, part: &str, host: &str, (asks_v, gives_v): (f64, f64), best_v: Option<f64>) -> String {
        let (asks, gives) = (said(asks_v), said(gives_v));
        let set = match self.verdict() {
            Verdict::Fits => {
                text!("As set: {host} gives {part} its {asks} V.", host = host, part = part, asks = asks)
            }
            Verdict::Caveat => text!(
                "As set: {host} gives {gives} V, and {part} asks {asks} V: measure before power.",
                host = host,
                gives = gives,
                part = part,
                asks = asks
            ),
            _ if gives_v > asks_v => text!(
                "As set: {host} gives {gives} V, and {part} asks {asks} V: that would destroy it.",
                host = host,
                gives = gives,
                part = part,
                asks = asks
            ),
            _ => text!(
                "As set: {host} gives {gives} V, and {part} asks {asks} V.",
                host = host,
                gives = gives,
                part = part,
                asks = asks
            ),
        };
        match best_v.filter(|best| (best / gives_v - 1.0).abs() > 1e-6) {
            Some(best) => format!("{set} {}", text!("Best: {volts} V can be set.", volts = said(best))),
            None => set,
        }
    }
}

impl Loss {
    /// Who would miss the part, and what else could take its place there.
    pub fn said(&self, logbook: &Logbook) -> String {
        let machine = machine_name(logbook, self.machine);
        let role = self.role.map(|role| role_name(logbook, self.machine, role)).unwrap_or_default();
        let lost = match (self.empties, self.is_fitted) {
            (true, true) => {
                text!("{machine} would lose it from “{role}”, which it must fill", machine = machine, role = role)
            }
            (true, false) => {
                text!("{machine} has planned it for “{role}”, which it must fill", machine = machine, role = role)
            }
            (false, true) => text!("{machine} would lose it from “{role}”", machine = machine, role = role),
            (false, false) => text!("{machine} has planned it for “{role}”", machine = machine, role = role),
        };
        let alike = match self.stand_ins {
            0 => text!("nothing free plugs in alike").to_owned(),
            free => counted!("{count} free part plugs in alike", "{count} free parts plug in alike", free),
        };
        format!("{lost}; {alike}")
    }
}

fn disk(part: &str, bytes: u64, outcome: Outcome, remedy: &str) -> String {
    let whole = Capacity::of(bytes).said();
    let sentence = match outcome {
        Outcome::SeenWhole => text!("{part} is seen whole: {whole}.", part = part, whole = whole),
        Outcome::ClippedTo { bytes } => {
            text!(
                "{part} is seen up to {seen}, of {whole}.",
                part = part,
                seen = Capacity::of(bytes).said(),
                whole = whole
            )
        }
        Outcome::NotUsable => {
            text!("{part} is too large for the firmware, which hangs or fails: {whole}.", part = part, whole = whole)
        }
    };
    if remedy.is_empty() { sentence } else { format!("{sentence} {remedy}") }
}
