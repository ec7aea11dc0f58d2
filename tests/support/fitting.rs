//! Pieces of invented designs, put together as fit does.
#![allow(dead_code)] // each test binary takes in those that it needs

use std::sync::Arc;

use benchwright::assess::PartAnswers;
use benchwright::assess::fit::{Asked, Because, Build, Constraint, Models, Piece, Verdict};
use benchwright::record::*;
use benchwright::rules::Rules;
use benchwright::trade::Span;
use chrono::NaiveDate;

use crate::records;

/// What a design needs and offers, each so many times.
pub type Ports<'p> = &'p [(&'p str, u32)];

/// A part of a design of its own.
pub fn part(kind: Kind, needs: Ports, offers: Ports, figures: &[(Figure, f64)]) -> (Arc<PartFile>, Arc<DesignFile>) {
    let design = records::design(kind, "Velmar", kind.name());
    let id = design.id;
    let mut file = DesignFile::new(design);
    for (side, ports) in [(Side::Needs, needs), (Side::Offers, offers)] {
        file.connectors.extend(ports.iter().map(|(name, count)| records::connector(id, side, name, *count)));
    }
    file.figures = figures.iter().map(|(figure, value)| figure_of(id, *figure, *value)).collect();
    let part = Part { design: Some(id), ..records::part("0001", kind, "") };
    (Arc::new(PartFile::new(part)), Arc::new(file))
}

pub fn figure_of(design: DesignId, figure: Figure, value: f64) -> DesignFigure {
    let id = benchwright::store::Store::new_id();
    DesignFigure { id, design, figure: figure.name().to_owned(), value, source: String::new(), at_bus_mhz: None }
}

/// Gathers pieces of one machine.
pub struct Fitting<'r> {
    pub models: Models<'r>,
    pub pieces: Vec<Piece>,
}

impl<'r> Fitting<'r> {
    pub fn new(rules: &'r Rules) -> Self {
        Self { models: Models::new(rules), pieces: Vec::new() }
    }

    /// A part of a design of its own, made as a piece and not yet put in.
    pub fn piece(&mut self, kind: Kind, needs: Ports, offers: Ports, figures: &[(Figure, f64)]) -> Piece {
        let (part, design) = part(kind, needs, offers, figures);
        self.of(&part, Some(&design))
    }

    pub fn of(&mut self, part: &Arc<PartFile>, design: Option<&Arc<DesignFile>>) -> Piece {
        let today = NaiveDate::from_ymd_opt(2026, 6, 1).unwrap();
        let answers = PartAnswers::of(part, design, self.models.rules(), today);
        self.models.piece(&Arc::new(answers), false)
    }

    /// Puts a part of a design of its own in.
    pub fn add(&mut self, kind: Kind, needs: Ports, offers: Ports, figures: &[(Figure, f64)]) -> PartId {
        let piece = self.piece(kind, needs, offers, figures);
        let part = piece.part();
        self.pieces.push(piece);
        part
    }

    pub fn build(self) -> Build<'r> {
        self.build_for(None)
    }

    pub fn build_for(self, window: Option<Span>) -> Build<'r> {
        Build::new(self.models.rules(), self.pieces, Asked { window, ..Asked::default() })
    }
}

/// The verdict of one constraint; `None` where nothing asks for it.
pub fn verdict(build: &Build, constraint: Constraint) -> Option<Verdict> {
    build.of(constraint).first().map(|because| because.verdict())
}

/// The reasons of one constraint.
pub fn because(build: &Build, constraint: Constraint) -> Vec<Because> {
    build.of(constraint).into_iter().cloned().collect()
}
