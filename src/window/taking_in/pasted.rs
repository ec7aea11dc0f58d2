//! What was pasted: a picture, or paths as text. What is pasted into a text field is left to it.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{ColorImage, Context, Event};

/// What was pasted beside all text fields.
#[derive(Debug)]
pub enum Pasted {
    Picture(Arc<ColorImage>),
    Paths(Vec<PathBuf>),
    /// Text that is no path of a file.
    Other,
}

/// Takes what was pasted from the input. A picture is taken while text is typed, too: no text field wants it.
pub fn take_pasted(ctx: &Context) -> Option<Pasted> {
    let is_typing = ctx.text_edit_focused();
    ctx.input_mut(|input| {
        let at = input.events.iter().position(|event| match event {
            Event::PasteImage(_) => true,
            Event::Paste(_) => !is_typing,
            _ => false,
        })?;
        Some(match input.events.remove(at) {
            Event::PasteImage(picture) => Pasted::Picture(picture),
            Event::Paste(text) => paths(&text).map_or(Pasted::Other, Pasted::Paths),
            _ => Pasted::Other,
        })
    })
}

/// The paths that a text names, one a line, as file managers give them: whole paths, or `file:` URIs (RFC 8089). `None`
/// when a line is neither.
pub fn paths(text: &str) -> Option<Vec<PathBuf>> {
    // A list of URIs has comments (RFC 2483), and one dialect of it a first line that says what was done.
    let is_path = |line: &&str| !line.is_empty() && !line.starts_with('#') && !["copy", "cut"].contains(line);
    let lines = text.lines().map(str::trim).filter(is_path);
    let paths: Option<Vec<PathBuf>> = lines.map(path).collect();
    paths.filter(|paths| !paths.is_empty())
}

fn path(line: &str) -> Option<PathBuf> {
    let line = line.trim_matches('"');
    let path = match line.strip_prefix("file://") {
        // Between the slashes stands a host: none, or this one.
        Some(rest) => PathBuf::from(unescaped(&rest[rest.find('/')?..])?),
        None => crate::window::widgets::expanded(line),
    };
    path.is_absolute().then_some(path)
}

/// Text with its `%20` and the like as characters (RFC 3986, 2.1).
fn unescaped(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let Some((first, tail)) = rest.split_first() {
        if *first == b'%' {
            let digits = std::str::from_utf8(tail.get(..2)?).ok()?;
            bytes.push(u8::from_str_radix(digits, 16).ok()?);
            rest = &tail[2..];
        } else {
            bytes.push(*first);
            rest = tail;
        }
    }
    String::from_utf8(bytes).ok()
}
