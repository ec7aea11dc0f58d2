//! Batteries: charge kept out, no iron on lithium, and what to do with one that swells or burns.

use benchwright::rules::Rules;

use super::{is_warned, work};

/// UL recommendations for lithium memory back-up, after UL 1642 and IEC 60086-4, as in tadiranbatteries.de, Safety:
/// two diodes in series, or a diode and a resistor.
#[test]
fn charge_is_kept_out_of_a_new_battery_by_two_parts() {
    let rules = Rules::shipped();
    let row = work(&rules, "fit-clock-supply");
    assert!(row.how.contains("two diodes in series, or a diode and a resistor"), "{}", row.how);
    assert!(row.materials.iter().any(|item| item == "Two low-leakage diodes, or a diode and a resistor"));
    assert!(is_warned(row, "lithium-charging"));
}

#[test]
fn no_lithium_battery_is_soldered_to() {
    let rules = Rules::shipped();
    for name in ["fit-coin-cell", "renew-clock-module", "fit-clock-supply", "mend-cell-holder"] {
        assert!(is_warned(work(&rules, name), "lithium-soldering"), "{name}");
    }
}

#[test]
fn terminals_are_taped_and_eyes_covered_when_a_battery_is_taken_out() {
    let rules = Rules::shipped();
    for name in ["cut-cell", "cut-leaking-cell", "remove-pack"] {
        let row = work(&rules, name);
        assert!(is_warned(row, "battery-terminals"), "{name}");
        assert!(row.tools.iter().any(|tool| tool == "Eye protection"), "{name}");
        assert!(is_warned(row, "battery-disposal"), "{name}");
    }
}

/// Guidelines for Handling Lithium Batteries, 1747-IN515A-EN-P, page 9: no water, toxic fume.
#[test]
fn a_swollen_hot_or_burning_battery_is_warned_of() {
    let rules = Rules::shipped();
    let caution = rules.cautions.iter().find(|row| row.name == "battery-fire").unwrap();
    for word in ["swollen", "hot", "hissing", "sand", "Lithium"] {
        assert!(caution.say.contains(word), "{word}");
    }
    for name in ["cut-lithium-thionyl", "send-off-lithium-thionyl", "cut-cell", "remove-pack"] {
        assert!(is_warned(work(&rules, name), "battery-fire"), "{name}");
    }
    for name in ["coin-cell-spent", "clock-module-flat", "pack-tired", "cell-present"] {
        assert!(rules.finding(name).unwrap().cautions.names().contains(&"battery-fire".to_owned()), "{name}");
    }
}

#[test]
fn acid_stays_on_a_board_for_minutes_and_is_rinsed_off_the_same_day() {
    let rules = Rules::shipped();
    let row = work(&rules, "neutralise");
    assert!(row.how.contains("minutes, never overnight") && row.how.contains("rinse the same day"), "{}", row.how);
    assert!(work(&rules, "rinse-and-dry").how.contains("the same day as the acid"));
    assert_eq!(row.wait_hours, 0);
}
