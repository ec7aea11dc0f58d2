//! A page that any browser shows and prints, whole in itself.

use std::fmt::Write as _;

/// Text as it stands in a page.
pub fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            other => escaped.push(other),
        }
    }
    escaped
}

/// An element around a text.
pub fn element(name: &str, class: &str, text: &str) -> String {
    let class = if class.is_empty() { String::new() } else { format!(" class=\"{class}\"") };
    format!("<{name}{class}>{}</{name}>\n", escaped(text))
}

/// A page of A4 or letter paper, black on white.
pub fn page(title: &str, body: &str) -> String {
    let mut page = String::from("<!DOCTYPE html>\n<html>\n<head>\n<meta charset=\"utf-8\">\n");
    let _ = write!(
        page,
        "<title>{}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n{body}</body>\n</html>\n",
        escaped(title)
    );
    page
}

const STYLE: &str = "
@page { margin: 18mm }
body { font: 11pt/1.4 sans-serif; color: #000; background: #fff; max-width: 180mm; margin: auto }
h1 { font-size: 16pt; margin: 0 0 2mm }
h2 { font-size: 12pt; margin: 6mm 0 2mm; border-bottom: 1px solid #000 }
p { margin: 1mm 0 }
.piece { break-inside: avoid; margin: 0 0 4mm; padding-left: 9mm; position: relative }
.tick { position: absolute; left: 0; top: 1mm; width: 4mm; height: 4mm; border: 1px solid #000 }
.what { font-weight: bold }
.beware { border-left: 1.5mm solid #000; padding-left: 2mm; font-weight: bold }
.aside { font-size: 9pt }
";
