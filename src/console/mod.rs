//! Commands answered without a window: every answer that a window shows can also be had as text or JSON.
//!
//! A command returns its whole answer as text ([`Answer`]); [`run`] prints it. Exit codes: 0 answered, 1 it failed
//! and the reason stands on stderr, 2 wrong usage (clap's own).

mod candidates;
mod check;
mod due;
mod exchange;
mod faults;
mod fit;
mod kit;
mod new;
mod offer;
mod opened;
mod outstanding;
mod part;
mod part_past;
mod parts;
mod photos;
mod place;
mod read;
mod readiness;
mod rules;
mod schedule;
mod sheet;
mod supplies;
mod tonight;
mod touched;
mod what_if;
mod work_out;

pub use opened::minutes_of_hours;

use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

use crate::text;

/// What a command gives back: the text for stdout, or why there is none.
type Answer = anyhow::Result<String>;

/// An answer that is a failure by itself: the report of a look that found something wrong. It goes to stdout.
#[derive(Debug, thiserror::Error)]
#[error("{0}")]
struct Found(String);

#[derive(Parser)]
#[command(name = "benchwright", version, args_conflicts_with_subcommands = true)]
#[command(about = text!("A logbook for people who restore period personal computers"))]
struct Arguments {
    #[command(subcommand)]
    command: Option<Command>,
    #[arg(value_name = "LOGBOOK", help = text!("The logbook to open in a window"))]
    logbook: Option<PathBuf>,
    #[arg(long, global = true, help = text!("Answer as JSON"))]
    json: bool,
}

/// One command a line; each stands in a file of its own.
#[derive(Subcommand)]
enum Command {
    #[command(about = text!("Make a new logbook"))]
    New(new::New),
    #[command(about = text!("List all parts"))]
    Parts(parts::Parts),
    #[command(about = text!("Show one part and what follows from what is known of it"))]
    Part(part::Part),
    #[command(about = text!("List the work that is outstanding, in working order"))]
    Outstanding(outstanding::Outstanding),
    #[command(about = text!("List own work that does not say what it touched, or state it"))]
    Touched(touched::Touched),
    #[command(about = text!("Say at which gate machines stand, and whether power may be applied"))]
    Readiness(readiness::Readiness),
    #[command(about = text!("Say whether a machine’s parts fit, and why"))]
    Fit(fit::Fit),
    #[command(about = text!("Rank the parts that could fill a role, and say who would miss them"))]
    Candidates(candidates::OfRole),
    #[command(about = text!("Say of an offered part whether you have one, who lacks it and what it would improve"))]
    Offer(offer::OfPart),
    #[command(about = text!("Take photographs of a part in, list them, or copy them out"))]
    Photos(photos::Photos),
    #[command(about = text!("Choose the work that brings most in the hours there are"))]
    Tonight(tonight::Tonight),
    #[command(about = text!("Say when each machine will be ready with so many hours a week"))]
    Schedule(schedule::Schedule),
    #[command(about = text!("Print a page with the work of an evening or of a part, as HTML"))]
    Sheet(sheet::Sheet),
    #[command(about = text!("Gather capacitor positions into as few order lines as the rules allow"))]
    Kit(kit::Kit),
    #[command(about = text!("List stock, kits, what to buy and what it all cost; CSV out and in"))]
    Supplies(supplies::Supplies),
    #[command(about = text!("Say which spare goes into which machine, over all of them at once, and why"))]
    Place(place::Place),
    #[command(about = text!("Say what it would cost if a part went into a machine instead"))]
    WhatIf(what_if::WhatIf),
    #[command(about = text!("List what should be looked at or proven again, and by when"))]
    Due(due::Due),
    #[command(about = text!("Show faults that are looked for, who is suspected, and the next trial"))]
    Faults(faults::Faults),
    #[command(about = text!("Write an exchange document's records into a logbook"))]
    Import(exchange::Import),
    #[command(about = text!("Write everything but picture bytes into an exchange document"))]
    Export(exchange::Export),
    #[command(about = text!("Look a logbook over: database, records, files"))]
    Check(check::Check),
    #[command(about = text!("List the names that records may carry: questions, findings, work, proofs, figures, connectors, schemes"))]
    Rules(rules::ListRules),
    #[command(about = text!("Print the exchange document's JSON Schema"))]
    Schema,
    #[command(subcommand, about = text!("Read what is printed on a part"))]
    Read(read::Read),
    #[command(subcommand, about = text!("Work out a figure of the trade"))]
    WorkOut(work_out::WorkOut),
}

impl Command {
    fn answer(&self, json: bool) -> Answer {
        match self {
            Self::New(new) => new.answer(json),
            Self::Parts(parts) => parts.answer(json),
            Self::Part(part) => part.answer(json),
            Self::Outstanding(outstanding) => outstanding.answer(json),
            Self::Touched(touched) => touched.answer(json),
            Self::Readiness(readiness) => readiness.answer(json),
            Self::Fit(fit) => fit.answer(json),
            Self::Candidates(candidates) => candidates.answer(json),
            Self::Offer(offer) => offer.answer(json),
            Self::Photos(photos) => photos.answer(json),
            Self::Tonight(tonight) => tonight.answer(json),
            Self::Schedule(schedule) => schedule.answer(json),
            Self::Sheet(sheet) => sheet.answer(json),
            Self::Kit(kit) => kit.answer(json),
            Self::Supplies(supplies) => supplies.answer(json),
            Self::Due(due) => due.answer(json),
            Self::Place(place) => place.answer(json),
            Self::WhatIf(what_if) => what_if.answer(json),
            Self::Faults(faults) => faults.answer(json),
            Self::Import(import) => import.answer(json),
            Self::Export(export) => export.answer(json),
            Self::Check(check) => check.answer(json),
            Self::Rules(rules) => rules.answer(json),
            Self::Schema => Ok(exchange::schema()),
            Self::Read(read) => read.answer(json),
            Self::WorkOut(work_out) => work_out.answer(json),
        }
    }
}

/// Answers the program's arguments: a command on the console, or else a window on a logbook (the last one when none
/// is named). Opening windows is a floor above this one, hence an argument.
pub fn run(open_window: impl FnOnce(Option<PathBuf>) -> anyhow::Result<()>) -> ExitCode {
    let Arguments { command, logbook, json } = Arguments::parse();
    match command {
        Some(command) => print(command.answer(json)),
        None => open_window(logbook).map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS),
    }
}

fn print(answer: Answer) -> ExitCode {
    match answer {
        Ok(text) => {
            // A reader that closes the pipe early (`| head`) has had what it wanted.
            let _ = writeln!(std::io::stdout(), "{}", text.trim_end());
            ExitCode::SUCCESS
        }
        Err(error) if error.is::<Found>() => {
            let _ = writeln!(std::io::stdout(), "{error}");
            ExitCode::FAILURE
        }
        Err(error) => failed(&error),
    }
}

fn failed(error: &anyhow::Error) -> ExitCode {
    eprintln!("benchwright: {error:#}");
    ExitCode::FAILURE
}

/// A value in the console's JSON form.
fn as_json(value: &impl serde::Serialize) -> Answer {
    Ok(serde_json::to_string_pretty(value)?)
}
