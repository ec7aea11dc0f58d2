//! Marks that are drawn by us: holds, gates, whether power may be applied, severity, desks, and small signs.
//!
//! A mark never stands alone: its word is beside it and its hue goes with both. Each is a few strokes on a square of
//! 16 by 16; the hand that would draw them on a tag is the measure.

use egui::{Color32, Painter, Pos2, Rect, Shape, Stroke, epaint::PathShape, pos2, vec2};

use crate::assess::fit::Verdict;
use crate::record::{Hold, Severity};

/// One mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Mark {
    HoldStorage,
    HoldPower,
    HoldFitting,
    HoldReady,
    HoldLooks,
    GateRoles,
    GateFit,
    GateSafe,
    GateWork,
    GateProven,
    GatePapers,
    PowerNo,
    PowerUnknown,
    PowerYes,
    SeveritySlight,
    SeverityPlain,
    SeverityGrave,
    Welcome,
    Intake,
    Shelf,
    Part,
    Bench,
    Machines,
    Placement,
    Supplies,
    Done,
    Away,
    Add,
    Seek,
    Up,
    Down,
    Back,
    Forth,
    Heed,
    FitWell,
    FitCaveat,
    FitUnknown,
    FitNot,
}

impl Mark {
    /// Every mark, for tests and for looking at them.
    pub const ALL: [Self; 38] = [
        Self::HoldStorage,
        Self::HoldPower,
        Self::HoldFitting,
        Self::HoldReady,
        Self::HoldLooks,
        Self::GateRoles,
        Self::GateFit,
        Self::GateSafe,
        Self::GateWork,
        Self::GateProven,
        Self::GatePapers,
        Self::PowerNo,
        Self::PowerUnknown,
        Self::PowerYes,
        Self::SeveritySlight,
        Self::SeverityPlain,
        Self::SeverityGrave,
        Self::Welcome,
        Self::Intake,
        Self::Shelf,
        Self::Part,
        Self::Bench,
        Self::Machines,
        Self::Placement,
        Self::Supplies,
        Self::Done,
        Self::Away,
        Self::Add,
        Self::Seek,
        Self::Up,
        Self::Down,
        Self::Back,
        Self::Forth,
        Self::Heed,
        Self::FitWell,
        Self::FitCaveat,
        Self::FitUnknown,
        Self::FitNot,
    ];

    /// The mark of a hold.
    pub fn of_hold(hold: Hold) -> Self {
        match hold {
            Hold::Storage => Self::HoldStorage,
            Hold::Power => Self::HoldPower,
            Hold::Fitting => Self::HoldFitting,
            Hold::Ready => Self::HoldReady,
            Hold::Looks => Self::HoldLooks,
        }
    }

    /// The mark of a severity.
    pub fn of_severity(severity: Severity) -> Self {
        match severity {
            Severity::Slight => Self::SeveritySlight,
            Severity::Plain => Self::SeverityPlain,
            Severity::Grave => Self::SeverityGrave,
        }
    }

    /// The mark of a verdict of fit.
    pub fn of_fit(verdict: Verdict) -> Self {
        match verdict {
            Verdict::Fits => Self::FitWell,
            Verdict::Caveat => Self::FitCaveat,
            Verdict::NotKnown => Self::FitUnknown,
            Verdict::No => Self::FitNot,
        }
    }

    /// Its strokes.
    pub fn strokes(self) -> &'static [Piece] {
        use Piece::{Dot, Fill, Line, Ring};
        match self {
            // A crate with its lid ajar.
            Self::HoldStorage => &[
                Line(&[(2.5, 6.5), (2.5, 13.5), (13.5, 13.5), (13.5, 6.5)]),
                Line(&[(2.0, 6.5), (14.0, 6.5)]),
                Line(&[(2.0, 6.5), (13.0, 2.5)]),
            ],
            // A mains plug with its lead.
            Self::HoldPower => &[
                Fill(&[(3.5, 6.0), (12.5, 6.0), (12.5, 9.0), (10.0, 12.0), (6.0, 12.0), (3.5, 9.0)]),
                Line(&[(6.0, 1.5), (6.0, 6.0)]),
                Line(&[(10.0, 1.5), (10.0, 6.0)]),
                Line(&[(8.0, 12.0), (8.0, 15.0)]),
            ],
            // A card above its slot.
            Self::HoldFitting => &[
                Fill(&[(3.0, 2.0), (13.0, 2.0), (13.0, 7.5), (3.0, 7.5)]),
                Fill(&[(4.5, 7.0), (9.5, 7.0), (9.5, 10.0), (4.5, 10.0)]),
                Line(&[(1.5, 11.0), (1.5, 14.0), (14.5, 14.0), (14.5, 11.0)]),
            ],
            // A case with its lamp on.
            Self::HoldReady => &[
                Line(&[(2.0, 3.5), (14.0, 3.5), (14.0, 12.5), (2.0, 12.5), (2.0, 3.5)]),
                Line(&[(4.5, 6.5), (9.0, 6.5)]),
                Dot(11.5, 9.5, 1.6),
            ],
            // A polishing stroke.
            Self::HoldLooks => &[
                Line(&[(2.5, 11.0), (5.5, 5.0)]),
                Line(&[(6.5, 13.0), (11.0, 4.0)]),
                Line(&[(11.5, 12.0), (14.0, 7.0)]),
            ],
            // Every socket taken.
            Self::GateRoles => &[
                Fill(&[(2.0, 2.0), (7.0, 2.0), (7.0, 7.0), (2.0, 7.0)]),
                Fill(&[(9.0, 2.0), (14.0, 2.0), (14.0, 7.0), (9.0, 7.0)]),
                Fill(&[(2.0, 9.0), (7.0, 9.0), (7.0, 14.0), (2.0, 14.0)]),
                Line(&[(9.5, 9.5), (13.5, 9.5), (13.5, 13.5), (9.5, 13.5), (9.5, 9.5)]),
            ],
            // Two halves of a connector.
            Self::GateFit => &[
                Line(&[
                    (1.5, 4.0),
                    (6.0, 4.0),
                    (6.0, 6.5),
                    (9.5, 6.5),
                    (9.5, 9.5),
                    (6.0, 9.5),
                    (6.0, 12.0),
                    (1.5, 12.0),
                ]),
                Line(&[(14.5, 4.0), (8.5, 4.0)]),
                Line(&[(14.5, 12.0), (8.5, 12.0)]),
                Line(&[(12.0, 4.0), (12.0, 12.0)]),
            ],
            // A plug with a guard around it.
            Self::GateSafe => &[
                Ring(8.0, 8.0, 6.5),
                Line(&[(6.0, 4.5), (6.0, 7.5)]),
                Line(&[(10.0, 4.5), (10.0, 7.5)]),
                Fill(&[(4.5, 7.5), (11.5, 7.5), (9.5, 11.0), (6.5, 11.0)]),
            ],
            // A screwdriver.
            Self::GateWork => &[
                Line(&[(2.0, 14.0), (8.0, 8.0)]),
                Fill(&[(8.0, 6.0), (12.5, 1.5), (14.5, 3.5), (10.0, 8.0)]),
                Line(&[(1.5, 12.5), (3.5, 14.5)]),
            ],
            // A tally of passes.
            Self::GateProven => &[
                Line(&[(3.0, 3.0), (3.0, 13.0)]),
                Line(&[(6.0, 3.0), (6.0, 13.0)]),
                Line(&[(9.0, 3.0), (9.0, 13.0)]),
                Line(&[(12.0, 3.0), (12.0, 13.0)]),
                Line(&[(1.5, 11.5), (14.0, 4.5)]),
            ],
            // A written sheet with its corner turned.
            Self::GatePapers => &[
                Line(&[(3.0, 1.5), (10.0, 1.5), (13.0, 4.5), (13.0, 14.5), (3.0, 14.5), (3.0, 1.5)]),
                Line(&[(10.0, 1.5), (10.0, 4.5), (13.0, 4.5)]),
                Line(&[(5.5, 8.0), (10.5, 8.0)]),
                Line(&[(5.5, 11.0), (10.5, 11.0)]),
            ],
            // A knife switch as in a wiring diagram: open and barred, undecided, closed.
            Self::PowerNo => &[
                Dot(2.5, 11.0, 1.7),
                Dot(13.5, 11.0, 1.7),
                Line(&[(2.5, 11.0), (9.5, 4.0)]),
                Line(&[(7.5, 2.0), (11.5, 6.0)]),
                Line(&[(11.0, 14.5), (14.5, 14.5)]),
                Line(&[(1.5, 14.5), (5.0, 14.5)]),
            ],
            Self::PowerUnknown => &[
                Dot(2.5, 11.0, 1.7),
                Ring(13.5, 11.0, 1.5),
                Line(&[(4.2, 10.0), (6.0, 9.0)]),
                Line(&[(7.4, 8.2), (9.2, 7.2)]),
                Line(&[(10.6, 6.4), (12.2, 5.5)]),
            ],
            Self::PowerYes => &[
                Dot(2.5, 9.0, 1.7),
                Dot(13.5, 9.0, 1.7),
                Fill(&[(2.5, 7.9), (13.5, 7.9), (13.5, 10.1), (2.5, 10.1)]),
                Line(&[(8.0, 4.0), (8.0, 8.0)]),
            ],
            // Notches cut in a stick.
            Self::SeveritySlight => &[Line(&[(4.0, 1.5), (4.0, 14.5)]), Line(&[(4.0, 12.5), (9.0, 10.5)])],
            Self::SeverityPlain => {
                &[Line(&[(4.0, 1.5), (4.0, 14.5)]), Line(&[(4.0, 12.5), (9.0, 10.5)]), Line(&[(4.0, 8.5), (11.0, 5.7)])]
            }
            Self::SeverityGrave => &[
                Line(&[(4.0, 1.5), (4.0, 14.5)]),
                Line(&[(4.0, 13.5), (9.0, 11.5)]),
                Line(&[(4.0, 9.5), (11.0, 6.7)]),
                Fill(&[(4.0, 5.5), (13.5, 1.5), (13.5, 4.0), (4.0, 8.0)]),
            ],
            // A bound book.
            Self::Welcome => &[
                Line(&[(3.0, 2.0), (13.0, 2.0), (13.0, 14.0), (3.0, 14.0), (3.0, 2.0)]),
                Line(&[(5.5, 2.0), (5.5, 14.0)]),
                Line(&[(8.0, 5.5), (11.0, 5.5)]),
            ],
            // A tray that takes something in.
            Self::Intake => &[
                Line(&[(2.0, 9.0), (2.0, 14.0), (14.0, 14.0), (14.0, 9.0)]),
                Line(&[(8.0, 1.5), (8.0, 10.0)]),
                Line(&[(4.8, 7.0), (8.0, 10.4), (11.2, 7.0)]),
            ],
            // Two boards with things on them.
            Self::Shelf => &[
                Line(&[(1.0, 7.5), (15.0, 7.5)]),
                Line(&[(1.0, 14.0), (15.0, 14.0)]),
                Fill(&[(3.0, 3.0), (6.5, 3.0), (6.5, 7.5), (3.0, 7.5)]),
                Line(&[(10.0, 7.5), (10.0, 4.5), (13.0, 4.5), (13.0, 7.5)]),
                Line(&[(4.0, 14.0), (4.0, 11.0), (8.0, 11.0), (8.0, 14.0)]),
                Fill(&[(10.5, 10.5), (13.0, 10.5), (13.0, 14.0), (10.5, 14.0)]),
            ],
            // A tag on its string.
            Self::Part => &[
                Line(&[(5.5, 4.0), (13.5, 4.0), (13.5, 14.0), (5.5, 14.0), (2.5, 9.0), (5.5, 4.0)]),
                Ring(6.5, 9.0, 1.3),
                Line(&[(5.5, 9.0), (1.5, 1.5)]),
            ],
            // A bench with a vice on it.
            Self::Bench => &[
                Fill(&[(1.0, 8.0), (15.0, 8.0), (15.0, 10.0), (1.0, 10.0)]),
                Line(&[(3.5, 10.0), (3.5, 14.5)]),
                Line(&[(12.5, 10.0), (12.5, 14.5)]),
                Line(&[(4.0, 3.0), (4.0, 6.0), (9.5, 6.0), (9.5, 3.0)]),
                Line(&[(6.8, 6.0), (6.8, 8.0)]),
                Line(&[(9.5, 4.2), (12.5, 4.2)]),
            ],
            // A desktop machine below its screen.
            Self::Machines => &[
                Line(&[(3.5, 1.5), (12.5, 1.5), (12.5, 8.0), (3.5, 8.0), (3.5, 1.5)]),
                Line(&[(1.5, 10.0), (14.5, 10.0), (14.5, 14.0), (1.5, 14.0), (1.5, 10.0)]),
                Line(&[(9.0, 12.0), (12.5, 12.0)]),
            ],
            // Three ways from the shelf, one of them taken.
            Self::Placement => &[
                Dot(2.8, 8.0, 1.9),
                Line(&[(2.8, 8.0), (6.5, 8.0), (9.0, 3.0), (11.0, 3.0)]),
                Line(&[(6.5, 8.0), (9.0, 13.0), (11.0, 13.0)]),
                Line(&[(6.5, 8.0), (11.0, 8.0)]),
                Fill(&[(11.0, 1.2), (14.8, 1.2), (14.8, 4.8), (11.0, 4.8)]),
                Ring(12.8, 8.0, 1.5),
                Ring(12.8, 13.0, 1.5),
            ],
            // Two cans on their strip.
            Self::Supplies => &[
                Line(&[(2.5, 10.5), (2.5, 2.5), (6.5, 2.5), (6.5, 10.5), (2.5, 10.5)]),
                Line(&[(9.5, 10.5), (9.5, 4.5), (13.5, 4.5), (13.5, 10.5), (9.5, 10.5)]),
                Line(&[(1.0, 14.0), (15.0, 14.0)]),
                Line(&[(4.5, 10.5), (4.5, 14.0)]),
                Line(&[(11.5, 10.5), (11.5, 14.0)]),
            ],
            Self::Done => &[Line(&[(2.5, 8.5), (6.5, 12.5), (13.5, 3.5)])],
            Self::Away => &[Line(&[(4.0, 4.0), (12.0, 12.0)]), Line(&[(12.0, 4.0), (4.0, 12.0)])],
            Self::Add => &[Line(&[(8.0, 3.0), (8.0, 13.0)]), Line(&[(3.0, 8.0), (13.0, 8.0)])],
            // A watchmaker's loupe.
            Self::Seek => &[Ring(8.0, 6.5, 4.5), Line(&[(3.5, 6.5), (5.5, 14.0), (10.5, 14.0), (12.5, 6.5)])],
            Self::Up => &[Fill(&[(8.0, 4.5), (12.0, 10.5), (4.0, 10.5)])],
            Self::Down => &[Fill(&[(8.0, 11.5), (4.0, 5.5), (12.0, 5.5)])],
            Self::Back => &[
                Line(&[(5.5, 3.5), (2.5, 6.5), (5.5, 9.5)]),
                Line(&[(2.5, 6.5), (10.0, 6.5), (13.0, 9.0), (13.0, 12.5)]),
            ],
            Self::Forth => &[
                Line(&[(10.5, 3.5), (13.5, 6.5), (10.5, 9.5)]),
                Line(&[(13.5, 6.5), (6.0, 6.5), (3.0, 9.0), (3.0, 12.5)]),
            ],
            // A pin with a flag.
            Self::Heed => &[
                Line(&[(4.5, 1.5), (4.5, 14.5)]),
                Fill(&[(4.5, 2.0), (13.5, 5.0), (4.5, 8.5)]),
                Line(&[(2.5, 14.5), (6.5, 14.5)]),
            ],
            // A card and its slot: seated, seated askew, of no known shape, and one too wide.
            Self::FitWell => &[
                Line(&[(1.5, 8.0), (4.5, 8.0), (4.5, 13.5), (11.5, 13.5), (11.5, 8.0), (14.5, 8.0)]),
                Fill(&[(5.5, 2.0), (10.5, 2.0), (10.5, 12.0), (5.5, 12.0)]),
            ],
            Self::FitCaveat => &[
                Line(&[(1.5, 8.0), (4.5, 8.0), (4.5, 13.5), (11.5, 13.5), (11.5, 8.0), (14.5, 8.0)]),
                Fill(&[(8.5, 1.0), (13.0, 2.5), (10.0, 12.0), (5.5, 10.5)]),
            ],
            Self::FitUnknown => &[
                Line(&[(1.5, 8.0), (4.5, 8.0), (4.5, 13.5), (11.5, 13.5), (11.5, 8.0), (14.5, 8.0)]),
                Line(&[(5.5, 6.0), (5.5, 4.0)]),
                Line(&[(7.0, 2.0), (9.0, 2.0)]),
                Line(&[(10.5, 4.0), (10.5, 6.0)]),
                Dot(8.0, 9.5, 1.2),
            ],
            Self::FitNot => &[
                Line(&[(1.5, 10.0), (5.5, 10.0), (5.5, 14.0), (10.5, 14.0), (10.5, 10.0), (14.5, 10.0)]),
                Fill(&[(3.0, 1.5), (13.0, 1.5), (13.0, 7.5), (3.0, 7.5)]),
            ],
        }
    }
}

/// One stroke of a mark, in sixteenths of its square.
#[derive(Clone, Copy, Debug)]
pub enum Piece {
    Line(&'static [(f32, f32)]),
    /// A filled outline.
    Fill(&'static [(f32, f32)]),
    /// Centre and radius, filled.
    Dot(f32, f32, f32),
    /// Centre and radius, drawn around.
    Ring(f32, f32, f32),
}

/// Draws a mark into the middle of a rectangle.
pub fn draw(painter: &Painter, rect: Rect, mark: Mark, colour: Color32) {
    let side = rect.width().min(rect.height());
    let corner = rect.center() - vec2(side, side) / 2.0;
    let scale = side / 16.0;
    let stroke = Stroke::new((1.5 * scale).max(1.2), colour);
    let at = |(x, y): (f32, f32)| -> Pos2 { pos2(corner.x + x * scale, corner.y + y * scale) };
    for piece in mark.strokes() {
        match *piece {
            Piece::Line(points) => {
                let points: Vec<Pos2> = points.iter().copied().map(at).collect();
                painter.add(Shape::line(points, stroke));
            }
            Piece::Fill(points) => {
                let points: Vec<Pos2> = points.iter().copied().map(at).collect();
                painter.add(PathShape::convex_polygon(points, colour, Stroke::NONE));
            }
            Piece::Dot(x, y, radius) => {
                painter.circle_filled(at((x, y)), radius * scale, colour);
            }
            Piece::Ring(x, y, radius) => {
                painter.circle_stroke(at((x, y)), radius * scale, stroke);
            }
        }
    }
}
