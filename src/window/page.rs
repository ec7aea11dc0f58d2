//! What the window shows: one desk, one part's or machine's sheet, or a photograph over the whole window.

use crate::record::{MachineId, PartId};
use crate::text;
use crate::window::theme::marks::Mark;

/// What the window shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Page {
    Welcome,
    Intake,
    Shelf,
    Part(PartId),
    Bench,
    Machines,
    Machine(MachineId),
    /// Which spare goes into which machine.
    Placement,
    /// Photographs that came in without a part in view.
    Sorting,
    Supplies,
    /// A part that is offered, at the fair.
    Offer,
    /// What own work touched, where it does not say so.
    Touched,
    /// A part's capacitor desk.
    Capacitors(PartId),
    /// A photograph over the whole window; the viewer knows which.
    Photograph,
}

impl Page {
    /// The desks in the order of the rail.
    pub const DESKS: [Self; 7] =
        [Self::Welcome, Self::Intake, Self::Shelf, Self::Bench, Self::Machines, Self::Placement, Self::Supplies];

    /// The desk that a page belongs to.
    #[must_use]
    pub fn desk(self) -> Self {
        match self {
            Self::Part(_) | Self::Capacitors(_) | Self::Photograph | Self::Sorting | Self::Offer => Self::Shelf,
            Self::Machine(_) => Self::Machines,
            Self::Touched => Self::Bench,
            desk => desk,
        }
    }

    /// Its name on the rail.
    pub fn label(self) -> &'static str {
        match self {
            Self::Welcome => text!("Logbooks"),
            Self::Intake => text!("Intake"),
            Self::Shelf => text!("Shelf"),
            Self::Part(_) => text!("Part sheet"),
            Self::Bench => text!("Bench"),
            Self::Machines => text!("Machines"),
            Self::Machine(_) => text!("Machine sheet"),
            Self::Placement => text!("Placement"),
            Self::Sorting => text!("Photographs to sort"),
            Self::Supplies => text!("Supplies"),
            Self::Offer => text!("Offered a part"),
            Self::Touched => text!("What did this work touch?"),
            Self::Capacitors(_) => text!("Capacitor desk"),
            Self::Photograph => text!("Photograph"),
        }
    }

    /// What a person does there.
    pub fn tooltip(self) -> &'static str {
        match self {
            Self::Welcome => text!("Open, start or choose a logbook"),
            Self::Intake => text!("Log a part that has just come in"),
            Self::Shelf => text!("Find any part"),
            Self::Part(_) => text!("Everything about one part"),
            Self::Bench => text!("See what to do next"),
            Self::Machines => text!("See how far each machine is, and why"),
            Self::Machine(_) => text!("Everything about one machine"),
            Self::Placement => text!("See which spare would go best into which machine, and why"),
            Self::Sorting => text!("Say what photographs are of that came in together"),
            Self::Offer => text!("Have I one, which machine lacks it, what would it improve"),
            Self::Touched => text!("Says of work in your own words whether it touched anything electrical"),
            Self::Supplies => text!("Stock, kits, what to buy, and what it all cost"),
            Self::Capacitors(_) => text!("Every capacitor position of one part"),
            Self::Photograph => text!("Looks at a photograph"),
        }
    }

    /// Its mark on the rail.
    pub fn mark(self) -> Mark {
        match self {
            Self::Welcome => Mark::Welcome,
            Self::Intake => Mark::Intake,
            Self::Shelf | Self::Photograph | Self::Sorting | Self::Offer => Mark::Shelf,
            Self::Part(_) | Self::Capacitors(_) => Mark::Part,
            Self::Supplies => Mark::Supplies,
            Self::Placement => Mark::Placement,
            Self::Bench | Self::Touched => Mark::Bench,
            Self::Machines | Self::Machine(_) => Mark::Machines,
        }
    }

    /// Whether it needs an open logbook.
    pub fn needs_logbook(self) -> bool {
        self != Self::Welcome
    }
}
