//! Contrast by WCAG 2.1, and hues that stay apart for colour-blind eyes.

use benchwright::window::theme::marks::Mark;
use benchwright::window::theme::{Ground, Tokens};
use egui::Color32;

const GROUNDS: [Ground; 2] = [Ground::LogPaper, Ground::BenchMat];

fn linear(colour: Color32) -> [f64; 3] {
    [colour.r(), colour.g(), colour.b()].map(|channel| {
        let channel = f64::from(channel) / 255.0;
        // WCAG 2.1, definition of relative luminance.
        if channel <= 0.03928 { channel / 12.92 } else { ((channel + 0.055) / 1.055).powf(2.4) }
    })
}

/// Contrast ratio as WCAG 2.1 defines it, 1 to 21.
fn contrast(one: Color32, other: Color32) -> f64 {
    let luminance = |colour| {
        let [red, green, blue] = linear(colour);
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    };
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

#[test]
fn contrast_follows_the_published_definition() {
    // WCAG 2.1: black on white is 21:1; #767676 on white is the well-known 4.54:1 (figure from memory).
    assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 0.01);
    assert!((contrast(Color32::from_gray(0x76), Color32::WHITE) - 4.54).abs() < 0.01);
}

#[test]
fn every_text_is_readable_on_the_grounds_it_stands_on() {
    for ground in GROUNDS {
        let tokens = Tokens::of(ground);
        let texts = tokens.all().into_iter().filter(|(name, _)| {
            ["ink", "ink_weak", "press", "notice_ink"].contains(name)
                || ((name.starts_with("hold_")
                    || name.starts_with("severity_")
                    || name.starts_with("gate_")
                    || name.starts_with("fit_"))
                    && !name.ends_with("_wash"))
        });
        for (name, colour) in texts {
            for (on, under) in [("page", tokens.page), ("rail", tokens.rail), ("field", tokens.field)] {
                let ratio = contrast(colour, under);
                assert!(ratio >= 4.5, "{ground:?}: {name} on {on} has {ratio:.2}:1");
            }
        }
        let pairs = [
            ("power_no", tokens.power_no, tokens.power_no_wash),
            ("power_unknown", tokens.power_unknown, tokens.power_unknown_wash),
            ("power_yes", tokens.power_yes, tokens.power_yes_wash),
            ("press_ink", tokens.press_ink, tokens.press),
            ("press on wash", tokens.press, tokens.press_wash),
            ("ink on selected", tokens.ink, tokens.selected),
            ("ink_weak on selected", tokens.ink_weak, tokens.selected),
            ("ink on hover", tokens.ink, tokens.hover),
            ("ink_weak on hover", tokens.ink_weak, tokens.hover),
            ("notice", tokens.notice_ink, tokens.notice),
        ];
        for (name, over, under) in pairs {
            let ratio = contrast(over, under);
            assert!(ratio >= 4.5, "{ground:?}: {name} has {ratio:.2}:1");
        }
    }
}

/// How people without one kind of cone see linear light: Machado, Oliveira and Fernandes, "A physiologically-based
/// model for simulation of color vision deficiency" (2009), severity 1.0; figures from memory.
const EYES: [(&str, [[f64; 3]; 3]); 3] = [
    (
        "protan",
        [[0.152_286, 1.052_583, -0.204_868], [0.114_503, 0.786_281, 0.099_216], [-0.003_882, -0.048_116, 1.051_998]],
    ),
    (
        "deutan",
        [[0.367_322, 0.860_646, -0.227_968], [0.280_085, 0.672_501, 0.047_413], [-0.011_820, 0.042_940, 0.968_881]],
    ),
    (
        "tritan",
        [[1.255_528, -0.076_749, -0.178_779], [-0.078_411, 0.930_809, 0.147_602], [0.004_733, 0.691_367, 0.303_900]],
    ),
];

/// CIELAB of linear sRGB light, white D65 (IEC 61966-2-1 primaries).
fn lab(light: [f64; 3]) -> [f64; 3] {
    let [red, green, blue] = light.map(|channel| channel.clamp(0.0, 1.0));
    let x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505;
    let y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    let z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089;
    let bend = |share: f64| if share > 0.008_856 { share.cbrt() } else { 7.787 * share + 16.0 / 116.0 };
    [116.0 * bend(y) - 16.0, 500.0 * (bend(x) - bend(y)), 200.0 * (bend(y) - bend(z))]
}

fn apart(one: Color32, other: Color32, eye: &[[f64; 3]; 3]) -> f64 {
    let seen = |colour| {
        let light = linear(colour);
        lab([0, 1, 2].map(|row: usize| (0..3).map(|column| eye[row][column] * light[column]).sum()))
    };
    let (one, other) = (seen(one), seen(other));
    (0..3).map(|axis| (one[axis] - other[axis]).powi(2)).sum::<f64>().sqrt()
}

#[test]
fn hues_of_holds_and_of_what_is_pressed_stay_apart_for_colour_blind_eyes() {
    for ground in GROUNDS {
        let tokens = Tokens::of(ground);
        let hues: Vec<_> =
            tokens.all().into_iter().filter(|(name, _)| name.starts_with("hold_") || *name == "press").collect();
        assert_eq!(hues.len(), 6);
        for (eye, matrix) in &EYES {
            for (index, (name, colour)) in hues.iter().enumerate() {
                for (other_name, other) in &hues[index + 1..] {
                    // A difference of 2.3 is just noticed (Mahy and others, 1994); marks are small, so six times that.
                    let distance = apart(*colour, *other, matrix);
                    assert!(distance > 14.0, "{ground:?}, {eye}: {name} and {other_name} are {distance:.1} apart");
                }
            }
        }
    }
}

#[test]
fn no_two_marks_are_drawn_alike() {
    for (index, mark) in Mark::ALL.iter().enumerate() {
        for other in &Mark::ALL[index + 1..] {
            assert_ne!(format!("{:?}", mark.strokes()), format!("{:?}", other.strokes()), "{mark:?} and {other:?}");
        }
    }
}
