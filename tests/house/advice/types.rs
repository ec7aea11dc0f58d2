//! Types of battery and capacitor that look alike and must not be taken for one another.

use std::sync::Arc;

use benchwright::assess::kits::{PATIENCE, Proposal, Scope, Which, Why, gather};
use benchwright::record::*;
use benchwright::rules::{PowerEffect, Rules};
use benchwright::trade::cell::{Chemistry, named_in};

use crate::records;

const THIONYL: [&str; 4] =
    ["lithium-thionyl-spent", "lithium-thionyl-leaked", "lithium-thionyl-swollen", "lithium-thionyl-residue"];

/// Safety data sheets of lithium thionyl chloride batteries: contents react with water to hydrogen chloride and sulphur
/// dioxide, which are acid; vinegar is for the alkali of rechargeable ones.
#[test]
fn a_lithium_thionyl_battery_has_answers_and_jobs_of_its_own_and_never_the_vinegar() {
    let rules = Rules::shipped();
    let question = rules.question("clock-supply").unwrap();
    let raised = |name: &str| question.answers.iter().find(|row| row.name == name).unwrap();
    assert_eq!(raised("lithium-thionyl").finding, None);
    for (answer, finding, power) in [
        ("lithium-thionyl-spent", "lithium-thionyl-spent", PowerEffect::Remark),
        ("lithium-thionyl-leaking", "lithium-thionyl-leaked", PowerEffect::No),
        ("lithium-thionyl-swollen", "lithium-thionyl-swollen", PowerEffect::No),
    ] {
        let row = raised(answer);
        assert_eq!((row.finding.as_deref(), row.power), (Some(finding), power), "{answer}");
        assert_eq!(rules.finding(finding).unwrap().power, power, "{finding}");
    }
    for finding in THIONYL {
        let jobs: Vec<_> = rules.work_for(finding, Kind::Mainboard, Severity::Grave).collect();
        assert!(!jobs.is_empty(), "{finding}");
        for job in jobs {
            let is_vinegar = |it: &String| it.to_lowercase().contains("vinegar") || it.contains("itric");
            assert!(!job.materials.iter().any(is_vinegar), "{finding}: {}", job.name);
        }
    }
    // What nobody should touch is nobody's own work.
    let swollen: Vec<_> = rules.work_for("lithium-thionyl-swollen", Kind::Mainboard, Severity::Grave).collect();
    assert!(swollen.iter().all(|job| job.who == Competence::SendOut), "{swollen:?}");
}

/// The survey and the findings say of it what the table of batteries says on the console.
#[test]
fn the_survey_warns_of_a_lithium_thionyl_battery_in_the_consoles_own_words() {
    let rules = Rules::shipped();
    let leak = Chemistry::LithiumThionyl.facts().leaks;
    let hint = &rules.question("clock-supply").unwrap().hint;
    assert!(hint.contains(leak.caution()), "{hint}");
    let leaked = &rules.finding("lithium-thionyl-leaked").unwrap().means;
    assert!(
        leaked.contains(leak.caution()) && leaked.contains(leak.neutralised_by().split(':').next().unwrap()),
        "{leaked}"
    );
    assert!(rules.finding("lithium-thionyl-swollen").unwrap().means.contains(leak.caution()));
    assert_eq!(named_in("3.6 V lithium barrel battery"), Some((Chemistry::LithiumThionyl, 1)));
    assert_eq!(named_in("barrel battery"), Some((Chemistry::NickelCadmium, 3)));
}

/// A leaking one is cut out, its residue cleared, the neighbours looked at, in this order.
#[test]
fn the_jobs_of_a_leaking_lithium_thionyl_battery_stand_in_order() {
    let rules = Rules::shipped();
    for (first, later) in [
        ("cut-lithium-thionyl", "clear-lithium-thionyl"),
        ("clear-lithium-thionyl", "look-under"),
        ("look-under", "fit-clock-supply"),
    ] {
        assert!(rules.is_before(first, later), "{first} before {later}");
    }
}

/// A board with bulged positions: (microfarads, volts, dielectric, place).
fn board(positions: &[(f64, f64, Dielectric, &str)]) -> PartFile {
    let part = records::part("0042", Kind::Mainboard, "Velmar board");
    let mut file = PartFile::new(part.clone());
    for (at, (uf, volts, dielectric, place)) in positions.iter().enumerate() {
        let logged = records::moment("2026-01-01");
        let position = records::capacitor(part.id, &format!("C{}", at + 1), logged, CapacitorState::Bulged);
        let position = Capacitor {
            capacitance_uf: Some(*uf),
            voltage_v: Some(*volts),
            temperature_c: None,
            diameter_mm: None,
            height_mm: None,
            pitch_mm: None,
            dielectric: *dielectric,
            mounting: Mounting::Radial,
            place_on_part: (*place).to_owned(),
            polarity: String::new(),
            function: None,
            low_esr: None,
            ..position
        };
        file.capacitors.push(CapacitorFile { position, looks: vec![] });
    }
    file
}

fn stock(uf: f64, volts: f64, dielectric: Dielectric) -> Arc<Material> {
    Arc::new(Material {
        stock: 50.0,
        capacitance_uf: Some(uf),
        voltage_v: Some(volts),
        dielectric: Some(dielectric),
        mounting: Some(Mounting::Radial),
        low_esr: Some(true),
        ..records::material(&format!("{uf} µF {volts} V"))
    })
}

fn empty() -> Logbook {
    Logbook {
        revision: 1,
        workshop: Arc::new(records::workshop("Bench")),
        places: vec![],
        lots: vec![],
        designs: vec![],
        parts: vec![],
        machines: vec![],
        materials: vec![],
        kits: vec![],
    }
}

fn kit(board: PartFile, materials: Vec<Arc<Material>>) -> Proposal {
    let logbook = Logbook { parts: vec![Arc::new(board)], materials, ..empty() };
    gather(&logbook, &Rules::shipped(), &Scope::All, &Which::All, PATIENCE)
}

/// usefulcomponents.com, non-polar electrolytic capacitors: a polar one where the voltage turns round dies within a year.
#[test]
fn a_polar_electrolytic_is_never_ordered_or_taken_for_a_bipolar_one() {
    let polar = vec![stock(10.0, 50.0, Dielectric::WetAluminium), stock(10.0, 50.0, Dielectric::Tantalum)];
    let one = kit(board(&[(10.0, 50.0, Dielectric::BipolarAluminium, "")]), polar.clone());
    assert_eq!(one.lines.len(), 1);
    assert_eq!((one.lines[0].spec.dielectric, one.lines[0].from_stock), (Dielectric::BipolarAluminium, 0));
    assert!(one.lines[0].spec.said().contains("bipolar"), "{}", one.lines[0].spec.said());
    // Nor does a bipolar one save a line for a polar neighbour.
    let two = board(&[(10.0, 50.0, Dielectric::BipolarAluminium, ""), (10.0, 50.0, Dielectric::WetAluminium, "")]);
    assert_eq!(kit(two, vec![]).lines.len(), 2);
    let mut told = board(&[(10.0, 50.0, Dielectric::WetAluminium, "")]);
    told.capacitors[0].position.polarity = "none: printed NP".to_owned();
    let told = kit(told, polar);
    assert_eq!(told.lines[0].spec.dielectric, Dielectric::BipolarAluminium, "its print tells that it has no polarity");
    assert_eq!(
        kit(
            board(&[(10.0, 50.0, Dielectric::BipolarAluminium, "")]),
            vec![stock(10.0, 50.0, Dielectric::BipolarAluminium)]
        )
        .in_stock,
        1
    );
}

/// ec.kemet.com, How much do you derate tantalum capacitors: to 50 % of the rated voltage with manganese dioxide; so a
/// part on 12 V is rated for 24 V at the least, and 25 V is the next that is made.
#[test]
fn a_tantalum_is_ordered_for_twice_its_rail() {
    let volts = |rated: f64, place: &str| {
        let stock = [10.0, 16.0, 25.0, 35.0].map(|volts| stock(22.0, volts, Dielectric::Tantalum));
        let mut rules = Rules::shipped();
        rules.substitutions.retain(|row| row.with == Dielectric::Tantalum);
        let board = board(&[(22.0, rated, Dielectric::Tantalum, place)]);
        let logbook = Logbook { parts: vec![Arc::new(board)], materials: stock.to_vec(), ..empty() };
        let kit = gather(&logbook, &rules, &Scope::All, &Which::All, PATIENCE);
        kit.lines[0].spec.volts
    };
    assert_eq!(volts(16.0, "on the +12 V rail"), 25.0, "the same 16 V again would burn again");
    assert_eq!(volts(16.0, "−12 V, by slot 2"), 25.0);
    assert_eq!(volts(10.0, "on +5 V"), 10.0, "twice the rail already");
    assert_eq!(volts(6.3, "on +5 V"), 10.0);
    assert_eq!(volts(16.0, "by slot 2"), 25.0, "no rail named: the next voltage that is made");
    assert_eq!(volts(16.0, ""), 25.0);
}

#[test]
fn an_aluminium_electrolytic_takes_a_tantalums_place_with_a_word_on_polarity() {
    let rules = Rules::shipped();
    let can = vec![stock(22.0, 16.0, Dielectric::WetAluminium)];
    let proposal = kit(board(&[(22.0, 16.0, Dielectric::Tantalum, "on the +12 V rail")]), can);
    assert_eq!((proposal.lines[0].spec.dielectric, proposal.in_stock), (Dielectric::WetAluminium, 1));
    let demand = &benchwright::assess::kits::Demand::of(
        &board(&[(22.0, 16.0, Dielectric::Tantalum, "on the +12 V rail")]).capacitors[0].position,
        false,
        &rules,
    );
    let reasons = benchwright::assess::kits::allowed(demand.as_ref().unwrap(), &proposal.lines[0].spec).unwrap();
    let said: Vec<String> = reasons.iter().map(|reason| reason.sentence(&rules)).collect();
    assert!(
        said.iter().any(|line| line.contains("bead’s mark is plus") && line.contains("stripe is minus")),
        "{said:?}"
    );
    assert_eq!(
        kit(board(&[(22.0, 900.0, Dielectric::Suppression, "")]), vec![]).left_out[0].why,
        Why::NoRule(Dielectric::Suppression)
    );
}

/// In the trade a dried-out capacitor is a dead one, and beads are solid too.
#[test]
fn words_in_two_senses_are_refused_with_the_clear_ones() {
    let refused = |line: &str| read_phrase(line).expect_err(line).to_string();
    for line in ["6 of 1000 µF dry", "6 of 1000 µF near the processor dry", "dry, 6 of 1000 µF"] {
        let said = refused(line);
        assert!(said.contains("“dry”") && said.contains("no leakage") && said.contains("dried out"), "{line}: {said}");
    }
    let said = refused("2 solid 100 µF 6.3 V");
    assert!(said.contains("“solid”") && said.contains("polymer") && said.contains("tantalum"), "{said}");
    let read = |line: &str| read_phrase(line).expect(line);
    for line in ["6 of 1000 µF dried out", "6 of 1000 µF near the processor dried out", "6 of 1000 µF, dried-out"] {
        assert_eq!(read(line).state, CapacitorState::OutOfLimits, "{line}");
    }
    for line in ["6 of 1000 µF no leakage", "6 of 1000 µF near the processor, no leakage", "6 of 1000 µF not leaking"]
    {
        assert_eq!(read(line).state, CapacitorState::Sound, "{line}");
    }
    assert_eq!(read("6 of 1000 µF near the processor dried out").place_on_part, "near the processor");
    assert_eq!(read("2 solid tantalum 10 µF").dielectric, Dielectric::Tantalum);
    assert_eq!(read("2 solid polymers 560 µF").dielectric, Dielectric::Polymer);
}

#[test]
fn bipolar_electrolytics_are_known_by_what_people_and_prints_call_them() {
    let read = |line: &str| read_phrase(line).expect(line).dielectric;
    for line in [
        "2 bipolar 10 µF 50 V",
        "10 µF 50 V non-polar",
        "10 µF 50 V non polar",
        "10 µF 50 V NP",
        "10 µF 50 V BP axial",
        "10 µF bipolar electrolytic",
        "10 µF electrolytic non-polarised",
    ] {
        assert_eq!(read(line), Dielectric::BipolarAluminium, "{line}");
    }
    assert!(read_phrase("10 µF bipolar tantalum").is_err());
    let table =
        read_positions("designator,value,voltage,type\nC1,10,50,NP\nC2,10,50,Bipolar electrolytic\nC3,10,50,dry")
            .unwrap();
    for line in &table[..2] {
        assert_eq!(line.as_ref().unwrap().position.dielectric, Dielectric::BipolarAluminium);
    }
    assert!(table[2].is_err());
}
