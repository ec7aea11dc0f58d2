//! Mains, stored charge and CRTs: nothing inside is anybody's home work.

use benchwright::record::{Competence, Kind, Severity};
use benchwright::rules::{Cover, Rules};

use super::{is_warned, work};

const MAINS_KINDS: [Kind; 2] = [Kind::PowerSupply, Kind::Monitor];

/// The only job that mends the finding there.
fn mend(rules: &Rules, finding: &str, kind: Kind) -> String {
    let mut mends = rules.work_for(finding, kind, Severity::Grave).filter(|row| row.cures);
    let row = mends.next().unwrap_or_else(|| panic!("nothing mends {finding} on {kind:?}"));
    assert!(mends.next().is_none(), "{finding} on {kind:?}");
    row.name.clone()
}

#[test]
fn nothing_is_put_through_the_grille_of_a_power_supply_to_turn_its_fan() {
    let rules = Rules::shipped();
    let fan = rules.question("fan").unwrap();
    assert!(fan.kinds.contains(&Kind::PowerSupply));
    assert_eq!(fan.cautions.names(), ["grille"]);
    assert!(!fan.ask.contains("finger") && fan.hint.contains("that of a power supply never"), "{}", fan.hint);
}

#[test]
fn a_power_supply_or_monitor_is_photographed_from_outside_until_it_is_discharged() {
    let rules = Rules::shipped();
    for kind in MAINS_KINDS {
        assert!(!work(&rules, "photograph").kinds.contains(&kind));
        assert!(work(&rules, "photograph-outside").kinds.contains(&kind));
    }
    let outside = work(&rules, "photograph-outside");
    assert_eq!(outside.cover, Some(Cover::On));
    assert!(is_warned(outside, "outside-only"));
    let overhaul = rules.templates.iter().find(|row| row.name == "supply-overhaul").unwrap();
    assert_eq!(overhaul.work[..2], ["photograph-outside", "discharge-supply"]);
    for name in ["recap-supply", "recap-monitor"] {
        assert!(!work(&rules, name).after.contains(&"photograph".to_owned()), "{name}");
    }
}

#[test]
fn a_damaged_lead_of_a_power_supply_or_monitor_is_replaced_by_somebody_licensed() {
    let rules = Rules::shipped();
    for kind in MAINS_KINDS {
        for finding in ["insulation-damaged", "wire-broken"] {
            assert_eq!(mend(&rules, finding, kind), "mend-leads-mains");
        }
    }
    let row = work(&rules, "mend-leads-mains");
    assert_eq!(row.who, Competence::SendOut);
    assert!(row.how.contains("never sleeved"), "{}", row.how);
    assert!(!row.materials.iter().chain(&row.tools).any(|item| item.contains("sleeve")));
}

#[test]
fn a_leak_is_not_washed_out_of_a_power_supply_at_home_and_no_drive_is_wetted() {
    let rules = Rules::shipped();
    assert_eq!(mend(&rules, "leak-residue", Kind::PowerSupply), "wash-out-spill-mains");
    assert_eq!(work(&rules, "wash-out-spill-mains").who, Competence::SendOut);
    let home = work(&rules, "wash-out-spill");
    assert!(![Kind::PowerSupply, Kind::Monitor, Kind::HardDisk].iter().any(|kind| home.kinds.contains(kind)));
    let disk = work(&rules, &mend(&rules, "leak-residue", Kind::HardDisk));
    assert!(is_warned(disk, "wet-drive") && disk.how.contains("off the drive"), "{}", disk.how);
}

#[test]
fn looks_of_a_power_supply_or_monitor_are_tended_from_outside_or_sent_out() {
    let rules = Rules::shipped();
    let tended = [
        ("yellowed", Kind::Monitor),
        ("clips-broken", Kind::Monitor),
        ("rust-surface", Kind::PowerSupply),
        ("rust-through", Kind::PowerSupply),
        ("mould-film", Kind::PowerSupply),
        ("mould-film", Kind::Monitor),
        ("scratched", Kind::Monitor),
        ("trim-missing", Kind::Monitor),
        ("dirt", Kind::PowerSupply),
    ];
    for (finding, kind) in tended {
        let row = work(&rules, &mend(&rules, finding, kind)).clone();
        match row.cover {
            Some(Cover::On) => assert!(is_warned(&row, "outside-only"), "{}", row.name),
            cover => assert_eq!((cover, row.who), (Some(Cover::Off), Competence::SendOut), "{}", row.name),
        }
    }
    assert!(!work(&rules, "wipe-film-outside").materials.iter().any(|item| item.contains("lcohol")));
}

#[test]
fn paint_is_kept_off_the_earth_bond_and_earth_is_tested_after() {
    let rules = Rules::shipped();
    for name in ["stop-rust", "patch-rust", "stop-rust-mains", "patch-rust-mains"] {
        assert!(is_warned(work(&rules, name), "earth-bond"), "{name}");
    }
    for name in ["stop-rust-mains", "patch-rust-mains"] {
        assert!(work(&rules, name).voids.contains(&"earth-continuity".to_owned()), "{name}");
    }
}

/// S. Rice of Tektronix, comp.sys.amiga, 26 November 1986: voltage reappears minutes, hours or days after discharging.
#[test]
fn a_crt_counts_as_charged_for_days_and_after_discharging() {
    let rules = Rules::shipped();
    let caution = rules.cautions.iter().find(|row| row.name == "picture-tube-charge").unwrap();
    assert!(caution.say.contains("days") && caution.say.contains("recovers"), "{}", caution.say);
    assert!(rules.finding("squeals").unwrap().cautions.names().contains(&"picture-tube-charge".to_owned()));
    assert!(rules.texts().all(|text| !text.contains("an hour or more")));
    assert!(work(&rules, "discharge-monitor").how.contains("recovers"));
}

/// PC Hardware in a Nutshell, O'Reilly, ch. 26: full mains on the panel switch of an AT power supply.
#[test]
fn the_first_start_is_switched_at_the_outlet() {
    let rules = Rules::shipped();
    let start = work(&rules, "bench-start");
    assert!(start.how.contains("Switch at the outlet"), "{}", start.how);
    assert!(is_warned(start, "bare-switch") && is_warned(start, "antistatic-bag"));
    let boot = rules.proof("boot").unwrap();
    for name in ["bare-switch", "antistatic-bag"] {
        assert!(boot.cautions.names().contains(&name.to_owned()), "{name}");
    }
    assert_eq!(work(&rules, "cover-switch").who, Competence::SendOut);
}

#[test]
fn a_plug_in_cord_is_anybodys_and_the_inlet_is_not() {
    let rules = Rules::shipped();
    for kind in MAINS_KINDS {
        assert_eq!(work(&rules, &mend(&rules, "inlet-damaged", kind)).who, Competence::SendOut);
        let cord = work(&rules, &mend(&rules, "cord-damaged", kind)).clone();
        assert_eq!((cord.who, cord.cover), (Competence::Oneself, Some(Cover::On)));
        assert!(is_warned(&cord, "wired-in-cord"));
    }
}

#[test]
fn every_job_on_mains_defers_to_local_codes_and_licensed_people() {
    let rules = Rules::shipped();
    for row in rules.work.iter().filter(|row| row.sitting == "mains") {
        let defers = row.cautions.rows().iter().any(|row| row.say.contains("Local codes and licensed people"));
        assert!(defers, "{}", row.name);
    }
}
