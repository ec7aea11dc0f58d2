//! What breaks the part it is meant to mend: coolers, springs, disks, fans, plastics.

use benchwright::record::{Kind, Severity};
use benchwright::rules::{PowerEffect, Rules};

use super::{all_text, is_warned, work};

#[test]
fn the_socket_lever_is_opened_only_when_the_cooler_is_off() {
    let how = &work(&Rules::shipped(), "free-cooler").how.clone();
    assert!(how.contains("socket\u{2019}s lever only when the cooler is off") && how.contains("never lift"), "{how}");
}

#[test]
fn no_rust_converter_goes_on_key_springs() {
    let rules = Rules::shipped();
    let row = work(&rules, "derust-springs");
    assert!(!row.materials.iter().any(|item| item.to_lowercase().contains("converter")));
    assert!(row.how.starts_with("No rust converter") && row.how.contains("rinse"), "{}", row.how);
}

/// Data-recovery houses: never power up a dropped disk (diskeng.com/dropped-hard-disk).
#[test]
fn a_dented_or_dropped_hard_disk_is_not_spun_to_see() {
    let rules = Rules::shipped();
    let called: Vec<_> = rules.work_for("drive-dented", Kind::HardDisk, Severity::Plain).collect();
    let [row] = &called[..] else { panic!("{called:?}") };
    assert_eq!((row.name.as_str(), row.power), ("judge-dropped-disk", PowerEffect::No));
    assert!(row.how.contains("sent out unspun"), "{}", row.how);
    assert!(is_warned(row, "wanted-data"));
    assert!(rules.is_before("image-disk", "watch-bearing"));
}

#[test]
fn a_board_is_never_drilled_for_a_cooler() {
    let rules = Rules::shipped();
    let row = work(&rules, "mend-anchor");
    assert!(!row.tools.iter().any(|tool| tool.to_lowercase().contains("drill")));
    assert!(row.how.contains("Never drill a board"), "{}", row.how);
}

/// classiccmp.org cctech 2016-April/016872: sintered bronze holds oil; sealed ball bearings are replaced.
#[test]
fn a_sleeve_bearing_is_oiled_and_a_ball_bearing_replaced() {
    let rules = Rules::shipped();
    let row = work(&rules, "service-fan");
    assert_eq!(row.materials[0], "Light machine oil");
    assert!(!row.say.contains("grease") && row.how.contains("grease clogs"), "{}", row.how);
    assert!(row.how.contains("ball bearing is not opened: replace"), "{}", row.how);
}

#[test]
fn old_plastic_is_looked_at_and_never_flexed() {
    let rules = Rules::shipped();
    let question = rules.question("retention-plastic").unwrap();
    assert!(question.hint.contains("never flex") && question.ask.contains("whitened"), "{}", question.hint);
}

/// Hantavirus Pulmonary Syndrome: Clean Up!, cdc.gov: disinfectant, five minutes, no sweeping or vacuuming.
#[test]
fn a_nest_is_soaked_with_disinfectant_and_never_swept() {
    let rules = Rules::shipped();
    let row = work(&rules, "clear-nest");
    for word in ["disinfectant", "five minutes", "no sweeping", "no vacuum"] {
        assert!(row.how.contains(word), "{word}");
    }
    assert!(row.materials.contains(&"Disinfectant".to_owned()) && is_warned(row, "droppings"));
}

/// victor9000.com, Plastic Cleaning: 12 % at most; hours and warmth common practice, no source.
#[test]
fn whitening_says_how_strong_how_warm_how_long_and_under_which_film() {
    let text = all_text(work(&Rules::shipped(), "whiten"));
    for word in ["6 to 12 %", "20 to 30 °C", "two to six hours", "cling film"] {
        assert!(text.contains(word), "{word}");
    }
}

/// An alignment disk carries known signals (cctalk 2004-August/1984); a reference disk starts some bus machines' set-up.
#[test]
fn drives_are_aligned_with_an_alignment_disk() {
    let rules = Rules::shipped();
    assert_eq!(work(&rules, "align-drive").materials, ["Alignment disk"]);
    for name in ["align-drive", "judge-heads"] {
        assert!(work(&rules, name).how.contains("an alignment disk"), "{name}");
    }
    assert!(rules.texts().all(|text| !text.to_lowercase().contains("reference disk")));
}
