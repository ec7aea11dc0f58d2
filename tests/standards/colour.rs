//! Colours against published data and against values of a reference library.

use crate::chance::Chance;
use crate::fuzz::rounds;
use benchwright::trade::colour::{
    Correction, Illuminant, Lab, ReferenceWarning, Srgb, Xyz, delta_e_2000, lab, xyz, yellowness, yellowness_index,
};
use proptest::prelude::*;

fn of(hex: &str) -> Srgb {
    Srgb::parse(hex).unwrap()
}

/// Sharma, Wu, Dalal (2005), table 1: pairs of CIELAB colours and their difference to four decimals.
#[test]
fn ciede2000_gives_the_published_differences() {
    let table = [
        ([50.0, 2.6772, -79.7751], [50.0, 0.0, -82.7485], 2.0425),
        ([50.0, 3.1571, -77.2803], [50.0, 0.0, -82.7485], 2.8615),
        ([50.0, 2.8361, -74.0200], [50.0, 0.0, -82.7485], 3.4412),
        ([50.0, -1.3802, -84.2814], [50.0, 0.0, -82.7485], 1.0000),
        ([50.0, 0.0, 0.0], [50.0, -1.0, 2.0], 2.3669),
        ([50.0, 2.49, -0.001], [50.0, -2.49, 0.0009], 7.1792),
        ([50.0, 2.49, -0.001], [50.0, -2.49, 0.0011], 7.2195),
        ([50.0, -0.001, 2.49], [50.0, 0.0009, -2.49], 4.8045),
        ([50.0, 2.5, 0.0], [50.0, 0.0, -2.5], 4.3065),
        ([50.0, 2.5, 0.0], [73.0, 25.0, -18.0], 27.1492),
        ([50.0, 2.5, 0.0], [61.0, -5.0, 29.0], 22.8977),
        ([50.0, 2.5, 0.0], [56.0, -27.0, -3.0], 31.9030),
        ([50.0, 2.5, 0.0], [58.0, 24.0, 15.0], 19.4535),
        ([60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644),
        ([22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373),
        ([90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], 1.4441),
        ([6.7747, -0.2908, -2.4247], [5.8714, -0.0985, -2.2286], 0.6377),
        ([2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082),
    ];
    for ([l1, a1, b1], [l2, a2, b2], published) in table {
        let (one, other) = (Lab { l: l1, a: a1, b: b1 }, Lab { l: l2, a: a2, b: b2 });
        for difference in [delta_e_2000(one, other), delta_e_2000(other, one)] {
            assert!((difference - published).abs() < 1e-4, "{one:?} {other:?}: {difference} against {published}");
        }
    }
}

/// Coefficients: C/2 and D65/10 HunterLab; D65/2 colour-science. Values of the library colour-science 0.4.7.
#[test]
fn yellowness_index_agrees_with_a_reference_library() {
    let table = [
        ([95.0, 100.0, 105.0], 2.8945, 10.0895, 4.3400),
        ([94.811, 100.0, 107.304], -0.000585, 7.407769, 1.483000),
        ([95.047, 100.0, 108.883], -1.509012, 6.036641, -0.000351),
        ([98.074, 100.0, 118.232], -8.319457, -0.000644, -6.666883),
        ([80.0, 84.0, 70.0], 28.116667, 33.342857, 29.208333),
        ([72.0, 75.0, 55.0], 40.606133, 44.907733, 41.532667),
        ([60.0, 62.0, 40.0], 51.751613, 55.235484, 52.532258),
        ([90.0, 95.0, 95.0], 8.301053, 15.049474, 9.665789),
    ];
    for ([x, y, z], d65_10, c_2, d65_2) in table {
        let values = Xyz { x, y, z };
        for (illuminant, expected) in
            [(Illuminant::D65Deg10, d65_10), (Illuminant::C2, c_2), (Illuminant::D65Deg2, d65_2)]
        {
            let index = yellowness_index(illuminant, values).unwrap();
            assert!((index - expected).abs() < 1e-6, "{values:?} {illuminant:?}: {index} against {expected}");
        }
    }
    assert_eq!(yellowness_index(Illuminant::C2, Xyz { x: 0.0, y: 0.0, z: 0.0 }), None);
}

/// colour-science 0.4.7, sRGB_to_XYZ with the matrix of IEC 61966-2-1 and XYZ_to_Lab at D65/2°.
#[test]
fn srgb_samples_agree_with_a_reference_library() {
    let table = [
        ("FFFFFF", [95.05, 100.0, 108.9], -0.01573, [100.0, 0.0077, 0.0035]),
        ("E8E4D9", [73.5465, 77.65236, 76.75773], 10.94009, [90.621, -0.5375, 5.8429]),
        ("F5F0DC", [81.73454, 86.89996, 80.17564], 17.55261, [94.6958, -1.6619, 10.2648]),
        ("D9D2BE", [60.95613, 64.56261, 57.96429], 20.83095, [84.2578, -0.9594, 10.7769]),
        ("CFC4A0", [51.81722, 55.28332, 41.19739], 37.23983, [79.2042, -1.9017, 19.5003]),
        ("C2B280", [42.06481, 44.86864, 26.86553], 53.86630, [72.8053, -1.7458, 27.6797]),
        ("B59F66", [33.85247, 35.57934, 17.65365], 67.30594, [66.1972, 0.1252, 32.6697]),
        ("808080", [20.51754, 21.58605, 23.50721], -0.01573, [53.585, 0.0046, 0.0021]),
    ];
    for (hex, [x, y, z], index, [l, a, b]) in table {
        let (values, colour) = (xyz(of(hex)), lab(xyz(of(hex))));
        for (ours, theirs) in [(values.x, x), (values.y, y), (values.z, z)] {
            assert!((ours - theirs).abs() < 1e-4, "{hex}: {values:?}");
        }
        for (ours, theirs) in [(colour.l, l), (colour.a, a), (colour.b, b)] {
            assert!((ours - theirs).abs() < 1e-4, "{hex}: {colour:?}");
        }
        let ours = yellowness(of(hex)).unwrap().index;
        assert!((ours - index).abs() < 1e-4, "{hex}: {ours} against {index}");
    }
}

/// The 10° coefficients put every neutral at -1.5, and a formula in circulation, 142.86 b*/a*, is no E313 at all.
#[test]
fn the_wrong_formulas_in_circulation_are_not_used() {
    for grey in ["FFFFFF", "808080", "C0C0C0"] {
        let ours = yellowness(of(grey)).unwrap().index;
        assert!(ours.abs() < 0.05, "{grey}: {ours}");
        let ten_degrees = yellowness_index(Illuminant::D65Deg10, xyz(of(grey))).unwrap();
        assert!((ten_degrees - -1.52466).abs() < 1e-4, "{grey}: {ten_degrees}");
    }
    let yellowed = of("D9D2BE");
    let colour = lab(xyz(yellowed));
    assert!((yellowness(yellowed).unwrap().index - 142.86 * colour.b / colour.a).abs() > 100.0);
}

/// ASTM E313-20, scope: near-white samples of a hue about 570 to 580 nm.
#[test]
fn samples_outside_the_scope_are_remarked() {
    for (hex, remarks) in [("E8E4D9", 0), ("FFFFFF", 0), ("303030", 1), ("A0C0FF", 1), ("FFA0A0", 1), ("200000", 2)] {
        assert_eq!(yellowness(of(hex)).unwrap().remarks.len(), remarks, "{hex}");
    }
    assert_eq!(yellowness(of("000000")), None);
}

/// A lamp that tints a grey card tints the plastic beside it the same way: with the card as reference the plastic comes
/// back. The lamp here is a gain a channel in linear light, which is what the correction is made for.
#[test]
fn a_neutral_patch_takes_the_lamp_out() {
    let lamp = |sample: Srgb| {
        let [red, green, blue] = sample.linear();
        Srgb::of_linear([0.9 * red, 0.75 * green, 0.5 * blue])
    };
    let (plastic, card) = (of("D9D2BE"), of("777777"));
    let colour = |sample| lab(xyz(sample));
    assert!(delta_e_2000(colour(lamp(plastic)), colour(plastic)) > 5.0, "the lamp shows");
    // 0x77 is 0.1845 of linear light (IEC 61966-2-1: ((119/255 + 0.055)/1.055)^2.4).
    let correction = Correction::by(lamp(card), Some(0.184_475));
    assert_eq!(correction.warning, None);
    let back = correction.of(lamp(plastic));
    assert!(delta_e_2000(colour(back), colour(plastic)) < 0.01, "{back}");
    // Without the card's reflectance brightness stays, but the card itself comes out grey.
    let grey = Correction::by(lamp(card), None).of(lamp(card));
    assert!((grey.red - grey.green).abs() < 1e-9 && (grey.green - grey.blue).abs() < 1e-9);
}

#[test]
fn a_bad_reference_is_warned_of() {
    let warning = |hex| Correction::by(of(hex), None).warning;
    assert_eq!(warning("FFF0E0"), Some(ReferenceWarning::Clipped));
    assert_eq!(warning("C0B0FE"), Some(ReferenceWarning::Clipped));
    assert_eq!(warning("101008"), Some(ReferenceWarning::Dark));
    assert_eq!(warning("F04030"), Some(ReferenceWarning::Coloured));
    assert_eq!(warning("808890"), None);
    // A reference too dark to divide by changes nothing.
    assert_eq!(Correction::by(of("000000"), None).of(of("808080")).to_string(), "808080");
}

#[test]
fn colours_are_read() {
    assert_eq!(of("#e8e4d9"), Srgb::of_bytes(0xE8, 0xE4, 0xD9));
    assert_eq!(of("E8E4D9").to_string(), "E8E4D9");
    for text in ["", "#", "E8E4D", "E8E4D9F", "GGGGGG", "+12345", "#-12345", "ÄÖÜ"] {
        assert!(Srgb::parse(text).is_err(), "{text}");
    }
}

fn check_any_colour(text: &str) {
    match Srgb::parse(text) {
        Ok(sample) => {
            assert!(sample.to_string().eq_ignore_ascii_case(text.trim().trim_start_matches('#')), "{text:?}");
        }
        Err(reason) => assert!(!reason.is_empty(), "{text:?}"),
    }
}

#[test]
fn fuzz_colours() {
    let alphabet: Vec<char> = "##0123456789abcdefABCDEF+- ".chars().collect();
    let mut chance = Chance(0x00C0_1020);
    for _ in 0..rounds() {
        check_any_colour(&chance.text(&alphabet, 8));
    }
}

fn any_lab() -> impl Strategy<Value = Lab> {
    (0.0..100.0f64, -110.0..110.0f64, -110.0..110.0f64).prop_map(|(l, a, b)| Lab { l, a, b })
}

proptest! {
    #[test]
    fn any_text_gives_a_colour_or_a_reason(text in "#?[0-9a-fA-F]{0,8}|\\PC{0,10}") {
        check_any_colour(&text);
    }

    /// A difference is a number, the same both ways, and 0 from a colour to itself.
    #[test]
    fn differences_are_sane(one in any_lab(), other in any_lab()) {
        let difference = delta_e_2000(one, other);
        prop_assert!(difference.is_finite() && difference >= 0.0);
        prop_assert!((difference - delta_e_2000(other, one)).abs() < 1e-9);
        prop_assert_eq!(delta_e_2000(one, one), 0.0);
    }
}
