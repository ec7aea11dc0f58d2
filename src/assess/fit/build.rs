//! The parts of a machine together, judged; one part exchanged for another touches only what hangs on it.

use super::because::{Because, Constraint, Verdict};
use super::connectors::{self, Plugged};
use super::model::Piece;
use super::{clocks, cooling, dates, drives, memory, power, space, voltage};
use crate::record::{Kind, PartId, Word};
use crate::rules::{Connectors, Rules};
use crate::trade::Span;
use crate::trade::clock::Row;
use crate::trade::drive::FileSystem;

/// What a machine is to be held against beside its own parts.
#[derive(Clone, Debug, Default)]
pub struct Asked {
    pub window: Option<Span>,
    /// What its disks are to be used with; `None` judges them by the firmware alone.
    pub file_system: Option<FileSystem>,
    /// Kinds still to come, each as often as it is wanted: what they could offer is not known to be missing.
    pub to_come: Vec<Kind>,
    /// Only tried, not as it stands: settings can be changed, and a cooler may still come.
    pub is_trial: bool,
}

/// How many reasons there are of each verdict: the fewest *does not fit* are best, then the fewest *not known*, then
/// the fewest caveats.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Tally {
    pub no: usize,
    pub not_known: usize,
    pub caveats: usize,
}

impl Tally {
    pub fn of<'b>(because: impl IntoIterator<Item = &'b Because>) -> Self {
        let mut tally = Self::default();
        for one in because {
            match one.verdict() {
                Verdict::No => tally.no += 1,
                Verdict::NotKnown => tally.not_known += 1,
                Verdict::Caveat => tally.caveats += 1,
                Verdict::Fits => {}
            }
        }
        tally
    }

    /// The worst of what was counted.
    pub fn verdict(self) -> Verdict {
        match self {
            Self { no: 1.., .. } => Verdict::No,
            Self { not_known: 1.., .. } => Verdict::NotKnown,
            Self { caveats: 1.., .. } => Verdict::Caveat,
            _ => Verdict::Fits,
        }
    }
}

/// The pieces of a machine and what holds between them. Pieces of one [`Models`](super::Models) alone go together.
#[derive(Clone, Debug)]
pub struct Build<'r> {
    table: &'r Connectors,
    asked: Asked,
    pieces: Vec<Piece>,
    plugged: Plugged,
    setting: Option<Row>,
    /// The best setting, where another may be noted.
    best: Option<Row>,
    because: [Vec<Because>; CONSTRAINTS],
}

const CONSTRAINTS: usize = Constraint::ALL.len();

impl<'r> Build<'r> {
    pub fn new(rules: &'r Rules, pieces: Vec<Piece>, asked: Asked) -> Self {
        let plugged = Plugged::default();
        let because = [const { Vec::new() }; CONSTRAINTS];
        let mut build = Self { table: &rules.connectors, asked, pieces, plugged, setting: None, best: None, because };
        build.judge(|_| true);
        build
    }

    pub fn asked(&self) -> &Asked {
        &self.asked
    }

    pub fn pieces(&self) -> &[Piece] {
        &self.pieces
    }

    /// The place of a part among the pieces.
    pub fn place(&self, part: PartId) -> Option<usize> {
        self.pieces.iter().position(|piece| piece.part() == part)
    }

    /// Puts a piece in the place of another, and gives that one back.
    ///
    /// # Panics
    /// When there is no such place.
    pub fn swap(&mut self, place: usize, piece: Piece) -> Piece {
        let host = clocks::processor_host(&self.pieces, &self.plugged);
        let old = std::mem::replace(&mut self.pieces[place], piece);
        let new = &self.pieces[place];
        let is_alike = old.kind() == new.kind() && old.model.plugs_alike(&new.model) && old.by_eye == new.by_eye;
        // Reasons name parts: with another part in the place even the same verdicts are told anew.
        let named = |constraint: Constraint| self.because[constraint as usize].iter().any(|one| one.names(old.part()));
        let replug = !is_alike || named(Constraint::Connectors);
        let (before, after) = (touched_by(old.kind()), touched_by(new.kind()));
        let is_odd = !old.model.nonsense.is_empty() || !new.model.nonsense.is_empty();
        let stale = Constraint::ALL.iter().copied().map(|constraint| match constraint {
            // Summed over all parts, and quickly.
            Constraint::Power | Constraint::Dates => true,
            _ => is_odd || before.contains(&constraint) || after.contains(&constraint) || named(constraint),
        });
        let stale: Vec<bool> = stale.collect();
        if replug {
            self.judge(|constraint| constraint == Constraint::Connectors);
        }
        // Who hangs on whom may be another way round now.
        let rehung = clocks::processor_host(&self.pieces, &self.plugged) != host;
        self.judge(|constraint| match constraint {
            Constraint::Connectors => false,
            Constraint::Clocks => stale[constraint as usize] || rehung,
            Constraint::Voltage | Constraint::Drives | Constraint::Memory | Constraint::Cooling => {
                stale[constraint as usize] || replug
            }
            _ => stale[constraint as usize],
        });
        old
    }

    /// Adds a piece; one of its kind is not to come any more.
    pub fn add(&mut self, piece: Piece) {
        if let Some(at) = self.asked.to_come.iter().position(|kind| *kind == piece.kind()) {
            self.asked.to_come.swap_remove(at);
        }
        self.pieces.push(piece);
        self.judge(|_| true);
    }

    /// Takes a piece out; another of its kind is to come.
    ///
    /// # Panics
    /// When there is no such place.
    pub fn take(&mut self, place: usize) -> Piece {
        let piece = self.pieces.remove(place);
        self.asked.to_come.push(piece.kind());
        self.judge(|_| true);
        piece
    }

    fn judge(&mut self, is_stale: impl Fn(Constraint) -> bool) {
        let Self { table, asked, pieces, plugged, setting, best, because } = self;
        for constraint in Constraint::ALL.iter().copied().filter(|constraint| is_stale(*constraint)) {
            because[constraint as usize] = match constraint {
                Constraint::Connectors => {
                    let judged = connectors::judge(pieces, table, &asked.to_come);
                    *plugged = judged.0;
                    judged.1
                }
                Constraint::Voltage => voltage::judge(pieces, plugged, asked),
                Constraint::Clocks => {
                    let judged = clocks::judge(pieces, plugged, asked);
                    (*setting, *best) = (judged.set, judged.best);
                    judged.because
                }
                Constraint::Memory => memory::judge(pieces, plugged),
                Constraint::Drives => drives::judge(pieces, plugged, asked.file_system.as_ref()),
                Constraint::Power => power::judge(pieces),
                Constraint::Cooling => cooling::judge(pieces, plugged, asked),
                Constraint::Space => space::judge(pieces),
                Constraint::Dates => dates::judge(pieces, asked.window),
            };
            for piece in pieces.iter().filter(|piece| !piece.model.nonsense.is_empty()) {
                let own =
                    piece.model.nonsense.iter().filter(|(figure, _)| Constraint::of_figure(*figure) == constraint);
                let told = own.map(|(figure, value)| Because::FigureNonsense {
                    part: piece.part(),
                    figure: *figure,
                    value: *value,
                });
                because[constraint as usize].extend(told);
            }
        }
    }

    /// Every reason, constraint by constraint, as they were found.
    pub fn because(&self) -> impl Iterator<Item = &Because> {
        self.because.iter().flatten()
    }

    /// The reasons of one constraint, worst first; none where nothing in the machine asks for it.
    pub fn of(&self, constraint: Constraint) -> Vec<&Because> {
        let mut reasons: Vec<&Because> = self.because[constraint as usize].iter().collect();
        reasons.sort_by_key(|one| std::cmp::Reverse(one.verdict()));
        reasons
    }

    pub fn tally(&self) -> Tally {
        Tally::of(self.because())
    }

    /// The worst of all.
    pub fn verdict(&self) -> Verdict {
        let nothing = if self.pieces.is_empty() { Verdict::NotKnown } else { Verdict::Fits };
        self.because().map(Because::verdict).max().unwrap_or(nothing)
    }

    /// The setting that is judged: as it is noted, else the best; `None` where board or processor is missing, says too
    /// little, or a note cannot be read.
    pub fn setting(&self) -> Option<&Row> {
        self.setting.as_ref()
    }

    /// The best setting, whatever is noted.
    pub fn best(&self) -> Option<&Row> {
        self.best.as_ref().or(self.setting.as_ref())
    }

    /// Judges it as it could be set, not as it is noted.
    pub fn set_free(&mut self) {
        self.asked.is_trial = true;
        self.judge(|constraint| matches!(constraint, Constraint::Voltage | Constraint::Clocks | Constraint::Cooling));
    }

    /// Memory that counts: whole banks of modules that fit, as far as their sizes are told.
    pub fn memory_mb(&self) -> f64 {
        memory::usable_mb(&self.pieces, &self.plugged)
    }

    /// All settings that board and processor allow, the safest first.
    pub fn settings(&self) -> Vec<Row> {
        clocks::settings(&self.pieces)
    }

    /// Which connector of which piece is in which.
    pub fn plugged(&self) -> &Plugged {
        &self.plugged
    }
}

/// The constraints that a part of a kind has a say in, beside those in which every part has.
fn touched_by(kind: Kind) -> &'static [Constraint] {
    use Constraint::{Clocks, Cooling, Drives, Memory, Space, Voltage};
    match kind {
        Kind::Mainboard => &[Voltage, Clocks, Memory, Drives, Cooling],
        Kind::Processor => &[Voltage, Clocks, Memory, Cooling],
        Kind::Coprocessor => &[Voltage, Clocks],
        Kind::ProcessorAdapter => &[Voltage, Clocks, Cooling],
        Kind::VoltageModule => &[Voltage],
        Kind::MemoryModule => &[Clocks, Memory],
        Kind::HardDisk | Kind::FlashAdapter | Kind::Media | Kind::Cable => &[Drives],
        Kind::Case => &[Space],
        Kind::Cooler => &[Cooling, Space],
        Kind::Retention => &[Cooling],
        kind if kind.is_card() => &[Drives, Space],
        _ => &[],
    }
}
