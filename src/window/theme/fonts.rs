//! The faces that come with the program: a humanist one for reading, a monospaced one for what is printed on parts.

use std::sync::Arc;

use egui::{FontData, FontDefinitions, FontFamily};

/// The heavier weight of the reading face.
pub fn bold() -> FontFamily {
    FontFamily::Name("bold".into())
}

/// Faces and in which order they are asked for a character.
pub fn definitions() -> FontDefinitions {
    let faces: [(&str, &'static [u8]); 4] = [
        ("reading", include_bytes!("../../../resources/fonts/pt-sans-regular.ttf")),
        ("reading-bold", include_bytes!("../../../resources/fonts/pt-sans-bold.ttf")),
        ("marking", include_bytes!("../../../resources/fonts/pt-mono-regular.ttf")),
        // Arrows, thirds, primes and sums, which the others lack.
        ("fallback", include_bytes!("../../../resources/fonts/merriweather-sans-regular.ttf")),
    ];
    let mut definitions = FontDefinitions::empty();
    for (name, bytes) in faces {
        definitions.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    let mut family = |family: FontFamily, order: [&str; 3]| {
        definitions.families.insert(family, order.map(str::to_owned).to_vec());
    };
    family(FontFamily::Proportional, ["reading", "marking", "fallback"]);
    family(bold(), ["reading-bold", "marking", "fallback"]);
    family(FontFamily::Monospace, ["marking", "reading", "fallback"]);
    definitions
}
