//! What can hurt at the bench stands on the job where it does.

use benchwright::record::Kind;
use benchwright::rules::Rules;

use super::{is_warned, work};

#[test]
fn each_job_warns_of_what_it_is_known_to_hurt_with() {
    let rules = Rules::shipped();
    let named: [(&str, &[&str]); 12] = [
        ("heavy-lift", &["leave-tube", "discharge-monitor"]),
        ("ccfl", &["discharge-monitor", "recap-monitor", "clear-monitor", "mend-picture", "whiten-mains"]),
        ("beryllia", &["true-cooler", "retire-burnt-chip"]),
        ("fibreglass", &["mend-cell-holder"]),
        ("air-duster", &["dust-off", "clean-lens"]),
        ("electrolyte", &["recap", "recap-small", "recap-weak", "recap-supply"]),
        ("caustic", &["look-under", "neutralise", "cut-cell", "remove-pack"]),
        ("peroxide", &["whiten"]),
        ("droppings", &["clear-nest"]),
        ("cold-spray", &["trace-picture-fault"]),
        ("implosion", &["leave-tube", "discharge-monitor", "mend-cataract"]),
        ("wet-drive", &["wash-leak-off-disk"]),
    ];
    for (caution, jobs) in named {
        for job in jobs {
            assert!(is_warned(work(&rules, job), caution), "{job} does not warn of {caution}");
        }
    }
}

#[test]
fn tests_and_questions_warn_of_lifts_and_of_flat_panels() {
    let rules = Rules::shipped();
    let of_proof = |name: &str| rules.proof(name).unwrap().cautions.names().to_vec();
    for (name, caution) in [
        ("monitor-run", "heavy-lift"),
        ("look-over", "heavy-lift"),
        ("monitor-run", "ccfl"),
        ("monitor-run", "picture-tube-charge"),
    ] {
        assert!(of_proof(name).contains(&caution.to_owned()), "{name} does not warn of {caution}");
    }
    assert!(rules.question("tube").unwrap().cautions.names().contains(&"ccfl".to_owned()));
    let leaking = rules.finding("capacitors-leaking").unwrap();
    assert!(leaking.cautions.names().contains(&"electrolyte".to_owned()));
}

#[test]
fn each_caution_says_what_to_do() {
    let rules = Rules::shipped();
    let says = |name: &str| rules.cautions.iter().find(|row| row.name == name).unwrap().say.as_str();
    for (name, words) in [
        ("heavy-lift", &["two people", "screen towards your body", "15 to 30 kg"][..]),
        ("ccfl", &["mercury", "several hundred volts"]),
        ("beryllia", &["sand", "drill", "break", "beryllium oxide"]),
        ("peroxide", &["12 % at most", "gloves", "eye protection", "sealed vessel", "metal and labels"]),
        ("air-duster", &["upright", "short bursts", "eye protection"]),
        ("fibreglass", &["Gloves", "never blow"]),
        ("epoxy", &["gloves", "open window"]),
        ("droppings", &["disinfectant", "five minutes", "never sweep or vacuum"]),
        ("earth-bond", &["earth bonds", "screw pads", "test earth continuity"]),
        ("bare-switch", &["switch at the outlet"]),
        ("antistatic-bag", &["outside conducts"]),
        ("grille", &["nothing through the grille"]),
        ("battery-terminals", &["Tape the terminals", "goggles"]),
    ] {
        for word in words {
            assert!(says(name).contains(word), "{name}: {word}");
        }
    }
}

#[test]
fn what_runs_under_power_is_told_to_keep_its_cover_on_and_not_to_be_unplugged() {
    let rules = Rules::shipped();
    for name in ["load-test", "monitor-run"] {
        let names = rules.proof(name).unwrap().cautions.names();
        assert!(names.contains(&"closed-case".to_owned()) && !names.contains(&"outside-only".to_owned()), "{name}");
    }
}

#[test]
fn where_a_monitor_or_a_case_is_moved_two_people_are_asked_for() {
    let rules = Rules::shipped();
    for kind in [Kind::Monitor, Kind::Case] {
        assert_eq!(rules.kind(kind).unwrap().cautions.names(), ["heavy-lift"], "{kind:?}");
    }
}
