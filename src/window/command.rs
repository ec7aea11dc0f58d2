//! What a person can give: one enum that menus, shortcuts, the finder and tests all read.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{Key, KeyboardShortcut, Modifiers};
use serde::{Deserialize, Serialize};

use super::desks::placement::{PlaceAct, Placing};
use super::desks::touched::TouchAct;
use super::page::Page;
use super::viewer::Act;
use crate::record::PhotoId;
use crate::text;
use crate::window::theme::marks::Mark;

/// Which ground the window is drawn on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Appearance {
    /// Light or dark as the desktop says.
    #[default]
    Desktop,
    LogPaper,
    BenchMat,
}

/// What a person can give.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    Go(Page),
    GoBack,
    /// Shows a photograph over the whole window, to go on from to the others of a list.
    LookAt(PhotoId, Arc<[PhotoId]>),
    /// Something done in the viewer.
    Look(Act),
    /// Something done with the proposal of the Placement desk.
    Place(PlaceAct),
    /// Says of the piece of own work that is asked about what it touched.
    Touch(TouchAct),
    /// Opens the finder.
    Find,
    /// Goes to the Shelf with the text field ready.
    SearchShelf,
    /// Goes to every photograph with the text field ready.
    SearchPhotographs,
    /// Takes a picture, or the files that a text names, from the clipboard.
    Paste,
    /// Asks where, then opens.
    OpenLogbook,
    OpenAt(PathBuf),
    /// Asks where, then starts a new one.
    NewLogbook,
    NewAt(PathBuf),
    OpenSample,
    CloseLogbook,
    Undo,
    Redo,
    LargerText,
    SmallerText,
    UsualText,
    Appear(Appearance),
    /// Watches a folder for new photographs, or none any more.
    Watch(Option<PathBuf>),
    Quit,
}

/// What decides which commands apply.
#[derive(Clone, Copy, Debug, Default)]
pub struct Situation {
    pub has_logbook: bool,
    /// Whether a photograph is looked at.
    pub is_looking: bool,
    pub can_undo: bool,
    pub can_redo: bool,
    pub can_go_back: bool,
    /// What can be done with the proposal on show.
    pub placing: Placing,
    /// Whether it is asked what a piece of own work touched.
    pub is_asking_touch: bool,
}

impl Command {
    /// Every command that needs no further word, in the order of the menu.
    pub const LISTED: [Self; 56] = [
        Self::Go(Page::Intake),
        Self::Go(Page::Shelf),
        Self::Go(Page::Bench),
        Self::Go(Page::Machines),
        Self::Go(Page::Placement),
        Self::Go(Page::Supplies),
        Self::Go(Page::Offer),
        Self::Go(Page::Sorting),
        Self::Go(Page::Touched),
        Self::Go(Page::Welcome),
        Self::GoBack,
        Self::SearchShelf,
        Self::SearchPhotographs,
        Self::Paste,
        Self::Find,
        Self::Undo,
        Self::Redo,
        Self::Place(PlaceAct::ALL[0]),
        Self::Place(PlaceAct::ALL[1]),
        Self::Place(PlaceAct::ALL[2]),
        Self::Touch(TouchAct::ALL[0]),
        Self::Touch(TouchAct::ALL[1]),
        Self::OpenLogbook,
        Self::NewLogbook,
        Self::OpenSample,
        Self::CloseLogbook,
        Self::Look(Act::ALL[0]),
        Self::Look(Act::ALL[1]),
        Self::Look(Act::ALL[2]),
        Self::Look(Act::ALL[3]),
        Self::Look(Act::ALL[4]),
        Self::Look(Act::ALL[5]),
        Self::Look(Act::ALL[6]),
        Self::Look(Act::ALL[7]),
        Self::Look(Act::ALL[8]),
        Self::Look(Act::ALL[9]),
        Self::Look(Act::ALL[10]),
        Self::Look(Act::ALL[11]),
        Self::Look(Act::ALL[12]),
        Self::Look(Act::ALL[13]),
        Self::Look(Act::ALL[14]),
        Self::Look(Act::ALL[15]),
        Self::Look(Act::ALL[16]),
        Self::Look(Act::ALL[17]),
        Self::Look(Act::ALL[18]),
        Self::Look(Act::ALL[19]),
        Self::Look(Act::ALL[20]),
        Self::Look(Act::ALL[21]),
        Self::Look(Act::ALL[22]),
        Self::Look(Act::ALL[23]),
        Self::LargerText,
        Self::SmallerText,
        Self::UsualText,
        Self::Appear(Appearance::Desktop),
        Self::Appear(Appearance::LogPaper),
        Self::Appear(Appearance::BenchMat),
    ];

    /// Its name in menus and in the finder.
    pub fn label(&self) -> String {
        match self {
            Self::Go(Page::Intake) => text!("Log a part").to_owned(),
            Self::Go(Page::Touched) => Page::Touched.label().to_owned(),
            Self::Go(page) => text!("Go to {desk}", desk = page.label()),
            Self::GoBack => text!("Go back").to_owned(),
            Self::LookAt(..) => text!("Look at the photograph").to_owned(),
            Self::Look(act) => act.label().to_owned(),
            Self::Place(act) => act.label().to_owned(),
            Self::Touch(act) => act.label().to_owned(),
            Self::Find => text!("Find a command or a part").to_owned(),
            Self::SearchShelf => text!("Search the shelf").to_owned(),
            Self::SearchPhotographs => text!("Search all photographs").to_owned(),
            Self::Paste => text!("Paste a photograph").to_owned(),
            Self::OpenLogbook => text!("Open a logbook…").to_owned(),
            Self::OpenAt(path) => text!("Open {path}", path = path.display()),
            Self::NewLogbook => text!("Start a new logbook…").to_owned(),
            Self::NewAt(path) => text!("Start a new logbook at {path}", path = path.display()),
            Self::OpenSample => text!("Open the sample workshop").to_owned(),
            Self::CloseLogbook => text!("Close the logbook").to_owned(),
            Self::Undo => text!("Undo").to_owned(),
            Self::Redo => text!("Redo").to_owned(),
            Self::LargerText => text!("Larger text").to_owned(),
            Self::SmallerText => text!("Smaller text").to_owned(),
            Self::UsualText => text!("Text of the usual size").to_owned(),
            Self::Appear(Appearance::Desktop) => text!("Light or dark as the desktop says").to_owned(),
            Self::Appear(Appearance::LogPaper) => text!("Light: log paper").to_owned(),
            Self::Appear(Appearance::BenchMat) => text!("Dark: bench mat").to_owned(),
            Self::Watch(Some(folder)) => text!("Watch {path} for photographs", path = folder.display()),
            Self::Watch(None) => text!("Watch no folder for photographs").to_owned(),
            Self::Quit => text!("Quit").to_owned(),
        }
    }

    /// What it does, in a sentence.
    pub fn tooltip(&self) -> &'static str {
        match self {
            Self::Go(page) => page.tooltip(),
            Self::GoBack => text!("Shows the page you came from"),
            Self::LookAt(..) => Page::Photograph.tooltip(),
            Self::Look(act) => act.tooltip(),
            Self::Place(act) => act.tooltip(),
            Self::Touch(act) => act.tooltip(),
            Self::Find => text!("Type a few letters of a command, a tag or a machine’s name"),
            Self::SearchShelf => text!("Goes to the shelf, ready to type"),
            Self::SearchPhotographs => text!("Every photograph of the logbook, by part, kind, view and date"),
            Self::Paste => text!("A copied picture or copied files become photographs of what is in view"),
            Self::OpenLogbook | Self::OpenAt(_) => text!("A logbook is a folder that holds logbook.sqlite"),
            Self::NewLogbook | Self::NewAt(_) => text!("Makes a folder with an empty logbook in it"),
            Self::OpenSample => text!("An invented workshop to look around in; changes to it are yours alone"),
            Self::CloseLogbook => text!("Everything is saved already"),
            Self::Undo => text!("Takes the last change back"),
            Self::Redo => text!("Makes the change again that was taken back"),
            Self::LargerText | Self::SmallerText | Self::UsualText => text!("Text from 100 % to 200 %"),
            Self::Appear(_) => text!("The window’s ground"),
            Self::Watch(_) => text!("New photographs in a watched folder are offered for sorting"),
            Self::Quit => text!("Closes the window; everything is saved already"),
        }
    }

    /// The keys that give it.
    pub fn shortcut(&self) -> Option<KeyboardShortcut> {
        let keys = |key| Some(KeyboardShortcut::new(Modifiers::COMMAND, key));
        match self {
            Self::Go(Page::Intake) => keys(Key::N),
            Self::Go(Page::Welcome) => keys(Key::Num0),
            Self::Go(Page::Shelf) => keys(Key::Num1),
            Self::Go(Page::Bench) => keys(Key::Num2),
            Self::Go(Page::Machines) => keys(Key::Num3),
            Self::Go(Page::Placement) => keys(Key::Num4),
            Self::Go(Page::Supplies) => keys(Key::Num5),
            Self::Go(Page::Offer) => Some(KeyboardShortcut::new(Modifiers::COMMAND | Modifiers::SHIFT, Key::O)),
            Self::Go(Page::Touched) => Some(KeyboardShortcut::new(Modifiers::COMMAND | Modifiers::SHIFT, Key::T)),
            Self::GoBack => Some(KeyboardShortcut::new(Modifiers::ALT, Key::ArrowLeft)),
            Self::Look(act) => Some(act.shortcut()),
            Self::Place(act) => Some(act.shortcut()),
            Self::Touch(act) => Some(act.shortcut()),
            Self::Find => keys(Key::G),
            Self::SearchShelf => keys(Key::F),
            Self::SearchPhotographs => Some(KeyboardShortcut::new(Modifiers::COMMAND | Modifiers::SHIFT, Key::F)),
            Self::Paste => keys(Key::V),
            Self::OpenLogbook => keys(Key::O),
            Self::Undo => keys(Key::Z),
            Self::Redo => Some(KeyboardShortcut::new(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z)),
            Self::LargerText => keys(Key::Plus),
            Self::SmallerText => keys(Key::Minus),
            Self::Quit => keys(Key::Q),
            _ => None,
        }
    }

    /// Whether it can be given now.
    pub fn applies(&self, situation: Situation) -> bool {
        match self {
            Self::Go(page) => situation.has_logbook || !page.needs_logbook(),
            Self::GoBack => situation.can_go_back,
            Self::Look(_) => situation.is_looking,
            Self::Place(act) => situation.placing.allows(*act),
            Self::Touch(_) => situation.is_asking_touch,
            Self::LookAt(..) | Self::SearchShelf | Self::SearchPhotographs | Self::Paste | Self::CloseLogbook => {
                situation.has_logbook
            }
            Self::Undo => situation.can_undo,
            Self::Redo => situation.can_redo,
            _ => true,
        }
    }

    /// Its mark, where it has one.
    pub fn mark(&self) -> Option<Mark> {
        match self {
            Self::Go(page) => Some(page.mark()),
            Self::GoBack | Self::Undo => Some(Mark::Back),
            Self::Redo => Some(Mark::Forth),
            Self::Find | Self::SearchShelf | Self::SearchPhotographs => Some(Mark::Seek),
            Self::NewLogbook => Some(Mark::Add),
            Self::OpenLogbook | Self::OpenAt(_) | Self::OpenSample => Some(Mark::Welcome),
            _ => None,
        }
    }

    /// The command whose keys were pressed, with those keys taken from the input. The longest combination is asked
    /// first: otherwise Ctrl+Z would answer Ctrl+Shift+Z. The viewer's keys are its own: it asks [`Act::pressed`] when
    /// nothing on the picture wants them.
    pub fn pressed(ctx: &egui::Context, situation: Situation) -> Option<Self> {
        let mut with_keys: Vec<(Self, KeyboardShortcut)> = Self::LISTED
            .into_iter()
            .chain([Self::Quit])
            .filter(|command| !matches!(command, Self::Look(_)))
            .filter_map(|command| command.shortcut().map(|keys| (command, keys)))
            .collect();
        with_keys.sort_by_key(|(_, keys)| !keys.modifiers.shift);
        // A text field undoes its own letters first, and takes what is pasted.
        let is_typing = ctx.text_edit_focused();
        with_keys
            .into_iter()
            .filter(|(command, _)| {
                !(is_typing && matches!(command, Self::Undo | Self::Redo | Self::Paste | Self::Touch(_)))
            })
            .filter(|(command, _)| command.applies(situation))
            .find_map(|(command, keys)| ctx.input_mut(|input| input.consume_shortcut(&keys)).then_some(command))
    }
}
