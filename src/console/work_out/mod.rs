//! `benchwright work-out`: figures of the trade. Each kind stands in a file of its own.

mod capacitor;
mod cell;
mod clock;
mod colour;
mod connector;
mod corrosion;
mod drive;
mod floppy;
mod life;
mod parallel;
mod preferred;
mod reform;
mod supply;

use clap::Subcommand;

use super::Answer;
use crate::text;

/// One kind of figure a variant.
#[derive(Subcommand)]
pub enum WorkOut {
    #[command(about = text!("Limits of an electrolytic, and how a measured one stands"))]
    Capacitor(capacitor::Capacitor),
    #[command(about = text!("Whether a cell is good, low or spent, and what to do when it leaks"))]
    Cell(cell::Cell),
    #[command(about = text!("Core, bus and card clocks from a board's settings, and their risk"))]
    Clock(clock::Clock),
    #[command(about = text!("Yellowness and difference of colours in a photograph"))]
    Colour(colour::Colour),
    #[command(about = text!("Connectors with their figures, and which takes which"))]
    Connector(connector::ConnectorQuestion),
    #[command(about = text!("Rust grades from the share of a surface"))]
    Corrosion(corrosion::Corrosion),
    #[command(about = text!("What a drive shows on a firmware and a file system"))]
    Drive(drive::Drive),
    #[command(about = text!("Floppy formats"))]
    Floppy(floppy::Floppy),
    #[command(about = text!("How long an electrolytic lasts at the temperatures it is used at"))]
    Life(life::Life),
    #[command(about = text!("Capacitors side by side as one"))]
    Parallel(parallel::Parallel),
    #[command(about = text!("The preferred values next to a value, down and up"))]
    Preferred(preferred::Preferred),
    #[command(about = text!("What a long-shelved electrolytic needs before it is trusted"))]
    Reform(reform::Reform),
    #[command(about = text!("Readings of a supply's rails against their limits"))]
    Supply(supply::Supply),
}

impl WorkOut {
    pub fn answer(&self, json: bool) -> Answer {
        match self {
            Self::Capacitor(capacitor) => capacitor.answer(json),
            Self::Cell(cell) => cell.answer(json),
            Self::Clock(clock) => clock.answer(json),
            Self::Colour(colour) => colour.answer(json),
            Self::Connector(connector) => connector.answer(json),
            Self::Corrosion(corrosion) => corrosion.answer(json),
            Self::Drive(drive) => drive.answer(json),
            Self::Floppy(floppy) => floppy.answer(json),
            Self::Life(life) => life.answer(json),
            Self::Parallel(parallel) => parallel.answer(json),
            Self::Preferred(preferred) => preferred.answer(json),
            Self::Reform(reform) => reform.answer(json),
            Self::Supply(supply) => supply.answer(json),
        }
    }
}

/// A figure as a person types it, with a decimal point or comma.
fn figure(typed: &str) -> anyhow::Result<f64> {
    let read = typed.trim().replace(',', ".").parse::<f64>().ok().filter(|figure| figure.is_finite());
    read.ok_or_else(|| anyhow::anyhow!(text!("\"{text}\" is no number", text = typed)))
}
