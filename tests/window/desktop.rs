//! What comes from the desktop around the window: files from its dialogs, files dropped, light or dark.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use benchwright::record::{Change, Kind, PartId, PhotoView};
use benchwright::window::command::{Appearance, Command};
use benchwright::window::desktop::{Chosen, Desktop};
use benchwright::window::outbox::Ask;
use benchwright::window::page::Page;
use egui::Theme;

use crate::hand::{Hand, part};
use crate::part_sheet::{file, press};

const WHOLE: [f32; 2] = [1280.0, 4000.0];

/// A desktop that answers what it was told, and remembers what it was asked.
#[derive(Debug, Default)]
pub struct Told {
    pub prefers_dark: Option<bool>,
    pub files: Mutex<Vec<PathBuf>>,
    pub asked: Mutex<Vec<Ask>>,
    /// Pages that were shown.
    pub shown: Mutex<Vec<PathBuf>>,
}

impl Desktop for Told {
    fn prefers_dark(&self) -> Option<bool> {
        self.prefers_dark
    }

    fn choose(&self, ask: Ask, _parent: Option<&eframe::Frame>) -> Chosen {
        self.asked.lock().unwrap().push(ask);
        Box::pin(std::future::ready(self.files.lock().unwrap().clone()))
    }

    fn show(&self, page: &Path) -> bool {
        self.shown.lock().unwrap().push(page.to_path_buf());
        true
    }
}

/// A window on the sheet of a board.
fn sheet(desktop: Arc<Told>) -> (Hand, PartId) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let id = board.id;
    let mut change = Change::new("Log a board");
    change.put(board);
    let mut hand = Hand::on_desktop(change, WHOLE, desktop);
    hand.give(Command::Go(Page::Part(id)));
    (hand, id)
}

#[derive(Debug)]
struct Dropped(PathBuf);

impl egui::DroppedFile for Dropped {
    fn path(&self) -> &Path {
        &self.0
    }

    fn bytes(&self) -> Result<Vec<u8>, String> {
        std::fs::read(&self.0).map_err(|error| error.to_string())
    }
}

pub fn drop_files(hand: &mut Hand, paths: &[&Path]) {
    for path in paths {
        hand.window.input_mut().dropped_files.push(Arc::new(Dropped(path.to_path_buf())));
    }
    hand.window.step();
}

pub fn picture(folder: &Path, name: &str, [width, height]: [u32; 2]) -> PathBuf {
    let path = folder.join(name);
    image::RgbImage::from_pixel(width, height, image::Rgb([90, 120, 60])).save(&path).unwrap();
    path
}

#[test]
fn photographs_chosen_in_the_dialog_go_into_the_part() {
    let told = Arc::new(Told::default());
    let (mut hand, board) = sheet(told.clone());
    let pictures =
        [picture(hand.folder.path(), "front.png", [40, 30]), picture(hand.folder.path(), "back.jpg", [30, 40])];
    *told.files.lock().unwrap() = pictures.to_vec();
    hand.press("Add a photograph…");
    press(&mut hand, "Look for it…");
    hand.wait("both photographs", |app| app.session().unwrap().logbook.part(board).unwrap().photos.len() == 2);
    assert_eq!(*told.asked.lock().unwrap(), [Ask::Photographs(Page::Part(board))]);
    let photos = file(&hand, board).photos;
    let seen = |at: usize| (photos[at].photo.width_px, photos[at].photo.height_px, photos[at].photo.view);
    assert_eq!([seen(0), seen(1)], [(40, 30, PhotoView::Overview), (30, 40, PhotoView::Detail)]);
    let session = hand.window.state().session().unwrap();
    assert_eq!(
        std::fs::read(session.store().photo_path(&photos[0].photo)).unwrap(),
        std::fs::read(&pictures[0]).unwrap()
    );
    assert_eq!(session.undo_name().as_deref(), Some("Add 2 photographs (0042)"));
}

#[test]
fn a_cancelled_dialog_changes_nothing() {
    let told = Arc::new(Told::default());
    let (mut hand, board) = sheet(told.clone());
    hand.press("Add a photograph…");
    press(&mut hand, "Look for it…");
    hand.give(Command::OpenLogbook);
    hand.settle();
    assert_eq!(*told.asked.lock().unwrap(), [Ask::Photographs(Page::Part(board)), Ask::Logbook]);
    let session = hand.window.state().session().unwrap();
    assert_eq!(session.undo_name().as_deref(), Some("Log a board"));
    assert_eq!(hand.window.state().page(), Page::Part(board));
}

#[test]
fn dropped_pictures_become_photographs_and_other_files_are_attached() {
    let (mut hand, board) = sheet(Arc::new(Told::default()));
    let front = picture(hand.folder.path(), "FRONT.PNG", [40, 30]);
    let firmware = hand.folder.path().join("rom.bin");
    std::fs::write(&firmware, [0x55, 0xAA]).unwrap();
    drop_files(&mut hand, &[&front, &firmware]);
    hand.wait("both files", |app| {
        let file = app.session().unwrap().logbook.part(board).unwrap().clone();
        (file.photos.len(), file.attachments.len()) == (1, 1)
    });
    let file = file(&hand, board);
    assert_eq!((file.photos[0].photo.width_px, file.photos[0].photo.height_px), (40, 30));
    assert_eq!((file.attachments[0].file_name.as_str(), file.attachments[0].bytes), ("rom.bin", 2));
}

#[test]
fn a_picture_dropped_at_intake_goes_in_with_the_part_from_whatever_step() {
    let mut hand = Hand::on(Change::new("Nothing"), [1280.0, 800.0]);
    assert_eq!(hand.window.state().page(), Page::Intake);
    let front = picture(hand.folder.path(), "front.png", [40, 30]);
    drop_files(&mut hand, &[&front]);
    hand.window.run();
    hand.fill("Kind", "mai");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Enter);
    hand.wait("the part", |app| app.session().unwrap().logbook.parts.len() == 1);
    let logged = hand.window.state().session().unwrap().logbook.parts[0].clone();
    assert_eq!(logged.part.kind, Kind::Mainboard);
    assert_eq!((logged.photos.len(), logged.photos[0].photo.width_px), (1, 40));
}

#[test]
fn the_window_is_light_or_dark_as_the_desktop_says_unless_the_restorer_chose() {
    for (prefers_dark, theme) in [(Some(true), Theme::Dark), (Some(false), Theme::Light), (None, Theme::Light)] {
        let told = Arc::new(Told { prefers_dark, ..Told::default() });
        let mut hand = Hand::on_desktop(Change::new("Nothing"), [1280.0, 800.0], told);
        hand.give(Command::Appear(Appearance::Desktop));
        let ctx = hand.window.ctx.clone();
        hand.wait("the desktop's word", |_| ctx.theme() == theme);
        // Where the window system itself tells, that counts.
        hand.window.input_mut().system_theme = Some(Theme::Dark);
        hand.window.run();
        assert_eq!(hand.window.ctx.theme(), Theme::Dark);
        for (appearance, chosen) in [(Appearance::LogPaper, Theme::Light), (Appearance::BenchMat, Theme::Dark)] {
            hand.give(Command::Appear(appearance));
            assert_eq!(hand.window.ctx.theme(), chosen, "{appearance:?}");
        }
    }
}
