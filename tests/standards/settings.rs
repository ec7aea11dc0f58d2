//! Settings as people note them: names and ways of writing are common practice, no source.

use benchwright::trade::setting::Setting;

use crate::chance::Chance;
use crate::fuzz::rounds;

const ALL: [Setting; 5] =
    [Setting::BusClock, Setting::Multiplier, Setting::CoreVoltage, Setting::PciDivider, Setting::AgpDivider];

#[test]
fn names_are_known_in_any_case_and_by_their_usual_synonyms() {
    let known = [
        ("bus clock", Setting::BusClock),
        ("Bus Clock", Setting::BusClock),
        ("FSB", Setting::BusClock),
        ("Front-side bus", Setting::BusClock),
        ("MULTIPLIER", Setting::Multiplier),
        ("Vcore", Setting::CoreVoltage),
        ("V-core", Setting::CoreVoltage),
        ("CPU core voltage", Setting::CoreVoltage),
        ("PCI divider", Setting::PciDivider),
        ("agp ratio", Setting::AgpDivider),
    ];
    for (name, setting) in known {
        assert_eq!(Setting::of_name(name), Some(setting), "{name}");
    }
    for other in ["JP12", "firmware version", "I/O voltage", "memory clock", "core clock", "", "PCI"] {
        assert_eq!(Setting::of_name(other), None, "{other}");
    }
}

#[test]
fn values_are_read_with_and_without_their_unit() {
    let read = [
        (Setting::BusClock, "66 MHz", 66.0),
        (Setting::BusClock, "66,6mhz", 66.6),
        (Setting::BusClock, " 100 ", 100.0),
        (Setting::Multiplier, "x3.5", 3.5),
        (Setting::Multiplier, "3,5", 3.5),
        (Setting::Multiplier, "3.5 ×", 3.5),
        (Setting::CoreVoltage, "2.9 V", 2.9),
        (Setting::CoreVoltage, "2,9 volts", 2.9),
        (Setting::CoreVoltage, "2V9", 2.9),
        (Setting::PciDivider, "3", 3.0),
        (Setting::PciDivider, "1/3", 3.0),
        (Setting::PciDivider, "/2", 2.0),
        // Two thirds of 100 MHz are AGP's 66.
        (Setting::AgpDivider, "2/3", 1.5),
    ];
    for (setting, value, expected) in read {
        assert_eq!(setting.read(value), Some(expected), "{value}");
    }
}

#[test]
fn what_is_no_number_or_has_another_unit_or_cannot_be_is_not_guessed() {
    let wrong = [
        (Setting::BusClock, "66 or 75"),
        (Setting::BusClock, "JP3 1-2"),
        (Setting::BusClock, "66000 kHz"),
        (Setting::BusClock, "0"),
        (Setting::BusClock, "-66"),
        (Setting::BusClock, "1e2"),
        (Setting::Multiplier, "automatic"),
        (Setting::Multiplier, "2/3"),
        (Setting::CoreVoltage, "2.8/3.3 V"),
        (Setting::CoreVoltage, "28 V"),
        (Setting::CoreVoltage, "2800 mV"),
        (Setting::CoreVoltage, "nan"),
        (Setting::PciDivider, "1:3"),
        (Setting::PciDivider, "0"),
        (Setting::AgpDivider, ""),
    ];
    for (setting, value) in wrong {
        assert_eq!(setting.read(value), None, "{value}");
    }
}

#[test]
fn fuzz_settings() {
    let alphabet: Vec<char> = "0123456789.,/ vVxX×mMhHzZ-+:÷inf".chars().collect();
    let mut chance = Chance(0x0066_2A90);
    for _ in 0..rounds() {
        let text = chance.text(&alphabet, 12);
        Setting::of_name(&text);
        for setting in ALL {
            if let Some(value) = setting.read(&text) {
                assert!(value.is_finite() && value > 0.0, "{text:?}");
                assert_eq!(setting.read(&value.to_string()), Some(value), "{text:?}");
            }
        }
    }
}
