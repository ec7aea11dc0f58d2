//! What the window asks of the desktop around it: a file dialog, what was dropped, light or dark.

use std::fmt::Debug;
use std::path::{Path, PathBuf};
use std::pin::Pin;

use raw_window_handle::{HasDisplayHandle, RawDisplayHandle};
use rfd::{AsyncFileDialog, FileHandle};

use super::outbox::Ask;
use crate::photo::PICTURE_ENDINGS;
use crate::text;

/// The paths that a dialog will have given once it is closed; none where it was cancelled.
pub type Chosen = Pin<Box<dyn Future<Output = Vec<PathBuf>> + Send>>;

/// A desktop that a window stands on.
pub trait Desktop: Debug + Send + Sync {
    /// Whether it prefers dark; `None` where it has no preference or does not tell. Waits for the answer: not for the
    /// window's thread.
    fn prefers_dark(&self) -> Option<bool>;

    /// Whether files dropped on the window reach the program.
    fn receives_drops(&self) -> bool {
        true
    }

    /// Shows a file dialog over the window. It is shown from the window's thread, as some systems demand; the answer
    /// is waited for elsewhere.
    fn choose(&self, ask: Ask, parent: Option<&eframe::Frame>) -> Chosen;

    /// Shows a page in the desktop's browser; `false` where there is none. Waits for nothing but the start of it.
    fn show(&self, page: &Path) -> bool;
}

/// Nothing around the window: no preference, and every dialog is cancelled.
#[derive(Clone, Copy, Debug)]
pub struct NoDesktop;

impl Desktop for NoDesktop {
    fn prefers_dark(&self) -> Option<bool> {
        None
    }

    fn choose(&self, _ask: Ask, _parent: Option<&eframe::Frame>) -> Chosen {
        Box::pin(std::future::ready(Vec::new()))
    }

    fn show(&self, _page: &Path) -> bool {
        false
    }
}

/// The desktop that the program runs on. Where it has no file dialog, that answers as if cancelled.
#[derive(Clone, Copy, Debug)]
pub struct ThisDesktop {
    is_wayland: bool,
}

impl ThisDesktop {
    /// The desktop that a window stands on.
    pub fn under(window: &impl HasDisplayHandle) -> Self {
        let handle = window.display_handle();
        Self { is_wayland: handle.is_ok_and(|handle| matches!(handle.as_raw(), RawDisplayHandle::Wayland(_))) }
    }
}

impl Desktop for ThisDesktop {
    #[cfg(target_os = "linux")]
    fn prefers_dark(&self) -> Option<bool> {
        portal_prefers_dark()
    }

    /// Other systems tell the window themselves.
    #[cfg(not(target_os = "linux"))]
    fn prefers_dark(&self) -> Option<bool> {
        None
    }

    /// The window library knows no dropping on Wayland.
    fn receives_drops(&self) -> bool {
        !self.is_wayland
    }

    fn choose(&self, ask: Ask, parent: Option<&eframe::Frame>) -> Chosen {
        let mut dialog = AsyncFileDialog::new();
        if let Some(frame) = parent {
            dialog = dialog.set_parent(frame);
        }
        match ask {
            Ask::Logbook => {
                let answer = dialog.set_title(text!("Open a logbook: choose its folder")).pick_folder();
                Box::pin(async { paths(answer.await) })
            }
            Ask::NewLogbook => {
                let answer = dialog.set_title(text!("Start a new logbook: name its folder")).save_file();
                Box::pin(async { paths(answer.await) })
            }
            Ask::WatchedFolder => {
                let answer = dialog.set_title(text!("Choose the folder to watch")).pick_folder();
                Box::pin(async { paths(answer.await) })
            }
            Ask::Photographs(_) => {
                let dialog = dialog.add_filter(text!("Photographs"), &PICTURE_ENDINGS);
                let answer = dialog.set_title(text!("Choose photographs")).pick_files();
                Box::pin(async { paths(answer.await.unwrap_or_default()) })
            }
            Ask::MarkedCopy(_) => {
                let dialog = dialog.add_filter("JPEG", &["jpg", "jpeg"]).add_filter("PNG", &["png"]);
                let answer = dialog.set_title(text!("Copy out with marks")).save_file();
                Box::pin(async { paths(answer.await) })
            }
            Ask::TableToRead => {
                let dialog = dialog.add_filter(text!("Tables"), &["csv", "tsv", "txt"]);
                let answer = dialog.set_title(text!("Choose the file with the table")).pick_file();
                Box::pin(async { paths(answer.await) })
            }
            Ask::TableToWrite(_) => {
                let dialog = dialog.add_filter("CSV", &["csv"]);
                let answer = dialog.set_title(text!("Write the table to a file")).save_file();
                Box::pin(async { paths(answer.await) })
            }
            Ask::Attachment(_) => {
                let answer = dialog.set_title(text!("Choose files to attach")).pick_files();
                Box::pin(async { paths(answer.await.unwrap_or_default()) })
            }
        }
    }

    fn show(&self, page: &Path) -> bool {
        let opener = match std::env::consts::OS {
            "macos" => "open",
            "windows" => "explorer",
            _ => "xdg-open",
        };
        let silent = std::process::Stdio::null;
        let mut command = std::process::Command::new(opener);
        command.arg(page).stdin(silent()).stdout(silent()).stderr(silent()).spawn().is_ok()
    }
}

fn paths(files: impl IntoIterator<Item = FileHandle>) -> Vec<PathBuf> {
    files.into_iter().map(|file| file.path().to_path_buf()).collect()
}

/// The files that were dropped on the window since the last call.
pub fn take_dropped(ctx: &egui::Context) -> Vec<PathBuf> {
    let dropped = ctx.input_mut(|input| std::mem::take(&mut input.raw.dropped_files));
    dropped.iter().map(|file| file.path().to_path_buf()).filter(|path| !path.as_os_str().is_empty()).collect()
}

/// Asked of the desktop's portal over D-Bus.
#[cfg(target_os = "linux")]
fn portal_prefers_dark() -> Option<bool> {
    let ask = |connection: zbus::Connection, method: &'static str| async move {
        let reply = connection
            .call_method(
                Some("org.freedesktop.portal.Desktop"),
                "/org/freedesktop/portal/desktop",
                Some("org.freedesktop.portal.Settings"),
                method,
                &("org.freedesktop.appearance", "color-scheme"),
            )
            .await
            .ok()?;
        let body = reply.body();
        let mut value: zbus::zvariant::Value<'_> = body.deserialize().ok()?;
        // The older of the two methods wraps its answer once more.
        while let zbus::zvariant::Value::Value(inner) = value {
            value = *inner;
        }
        u32::try_from(value).ok()
    };
    let answer = pollster::block_on(async {
        let connection = zbus::Connection::session().await.ok()?;
        match ask(connection.clone(), "ReadOne").await {
            None => ask(connection, "Read").await,
            answer => answer,
        }
    });
    // Values of the portal's documentation: 0 no preference, 1 dark, 2 light.
    match answer {
        Some(1) => Some(true),
        Some(2) => Some(false),
        _ => None,
    }
}
