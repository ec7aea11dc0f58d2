//! The trade's tables: what ships is full and holds together, a bad table is refused with file, line and reason, and
//! facts of the trade stand as its published sources have them.

use std::collections::{BTreeSet, HashSet};

use benchwright::record::{CapacitorState, Competence, Dielectric, Hold, Kind, Nature, Severity, Word};
use benchwright::rules::{Cover, PowerEffect, Rules, TableErrors, WorkRule};
use benchwright::store::own_tables;

/// Findings that no work cures; their texts say what to do instead.
const WATCHED: [&str; 4] = ["shroud-broken", "contacts-worn", "gasket-decayed", "burn-in"];

const MAINS_KINDS: [Kind; 2] = [Kind::PowerSupply, Kind::Monitor];

fn own(content: &str) -> Result<Rules, TableErrors> {
    Rules::with_own(&[("own.toml".into(), content.into())])
}

fn work<'a>(rules: &'a Rules, name: &str) -> &'a WorkRule {
    rules.work(name).unwrap_or_else(|| panic!("there is no work {name}"))
}

#[test]
fn the_shipped_tables_load() {
    if let Err(errors) = Rules::with_own(&[]) {
        panic!("{errors}");
    }
}

#[test]
fn every_kind_is_asked_enough_and_has_a_rule_of_its_own() {
    let rules = Rules::shipped();
    for kind in Kind::ALL {
        let least = match kind {
            Kind::Mainboard => 12,
            Kind::PowerSupply => 10,
            Kind::Media | Kind::TestRig | Kind::Other => 3,
            _ => 6,
        };
        let asked = rules.questions_for(*kind).len();
        assert!(asked >= least, "{kind:?} is asked {asked} questions, wants {least}");
        assert!(rules.kind(*kind).is_some(), "{kind:?} has no row in kinds.toml");
    }
    assert!(rules.work.len() >= 60, "only {} pieces of work", rules.work.len());
    assert!(rules.findings.len() >= 100, "only {} findings", rules.findings.len());
}

#[test]
fn the_first_answer_to_every_question_is_a_sound_one() {
    for question in &Rules::shipped().questions {
        assert_eq!(question.answers[0].finding, None, "{}", question.name);
    }
}

/// Every (finding, kind, severity) that an answer, a figure or a capacitor position raises.
fn raised(rules: &Rules) -> BTreeSet<(String, Kind, Severity)> {
    let mut raised = BTreeSet::new();
    for question in &rules.questions {
        let by_answer = question.answers.iter().map(|answer| (answer.finding.as_ref(), answer.severity));
        let bounds = question.figure.iter().flat_map(|figure| &figure.bounds);
        let by_figure = bounds.map(|bound| (Some(&bound.finding), bound.severity));
        for (finding, severity) in by_answer.chain(by_figure) {
            let Some(finding) = finding else { continue };
            let severity = severity.unwrap_or(rules.finding(finding).unwrap().severity);
            raised.extend(question.kinds.iter().map(|kind| (finding.clone(), *kind, severity)));
        }
    }
    for finding in rules.findings.iter().filter(|finding| !finding.capacitor_states.is_empty()) {
        raised.extend(Kind::ALL.iter().map(|kind| (finding.name.clone(), *kind, finding.severity)));
    }
    raised
}

#[test]
fn every_finding_that_can_be_raised_has_one_piece_of_work_that_cures_it_or_is_watched() {
    let rules = Rules::shipped();
    let raised = raised(&rules);
    for (finding, kind, severity) in &raised {
        let cures: Vec<&str> = rules
            .work_for(finding, *kind, *severity)
            .filter(|work| work.cures)
            .map(|work| work.name.as_str())
            .collect();
        if WATCHED.contains(&finding.as_str()) {
            assert_eq!(rules.work_for(finding, *kind, *severity).count(), 0, "{finding} is watched");
        } else {
            assert_eq!(cures.len(), 1, "{finding} ({severity:?}) on {kind:?} is cured by {cures:?}");
        }
    }
    let seen: HashSet<&str> = raised.iter().map(|(finding, _, _)| finding.as_str()).collect();
    for finding in &rules.findings {
        assert!(seen.contains(finding.name.as_str()), "nothing raises {}", finding.name);
    }
}

/// Else a photograph still to be taken would forbid power to a part that only wants its rust brushed off.
#[test]
fn what_prepares_a_cure_holds_power_only_where_the_cure_does() {
    let rules = Rules::shipped();
    for (finding, kind, severity) in raised(&rules) {
        let called: Vec<(bool, bool)> = rules
            .work_for(&finding, kind, severity)
            .map(|work| (work.cures, work.hold_at(severity) <= Hold::Power))
            .collect();
        let cure_holds = called.contains(&(true, true));
        assert!(cure_holds || !called.contains(&(false, true)), "{finding} on {kind:?}");
    }
}

#[test]
fn every_bad_capacitor_raises_one_finding_and_a_sound_one_none() {
    let rules = Rules::shipped();
    for state in CapacitorState::ALL {
        for dielectric in Dielectric::ALL {
            let found = rules.capacitor_finding(*state, *dielectric);
            assert_eq!(found.is_some(), state.is_bad(), "{state:?} {dielectric:?}");
        }
    }
    let burst = |dielectric| &rules.capacitor_finding(CapacitorState::Burst, dielectric).unwrap().name;
    assert_eq!(burst(Dielectric::WetAluminium), "capacitors-burst");
    assert_eq!(burst(Dielectric::Tantalum), "tantalum-burst");
    assert_eq!(burst(Dielectric::Suppression), "capacitors-cracked");
}

#[test]
fn work_stands_after_all_that_it_needs() {
    let rules = Rules::shipped();
    let mut pairs = 0;
    for (place, row) in rules.work.iter().enumerate() {
        for before in &row.after {
            pairs += 1;
            assert!(rules.place_of(before) < place, "{} stands before {before}", row.name);
            assert!(rules.is_before(before, &row.name) && !rules.is_before(&row.name, before));
        }
    }
    assert!(pairs > 50, "only {pairs} pairs were compared");
}

/// trade.md's order, as the forums have it (vogons.org p=502167, forum.vcfed.org 35143): remove the cell,
/// neutralise, clean, inspect, mend tracks, recap, rails, first start on the bench.
#[test]
fn a_leaked_cell_calls_for_the_whole_chain_in_its_order() {
    let rules = Rules::shipped();
    let chain = [
        "photograph",
        "cut-leaking-cell",
        "neutralise",
        "rinse-and-dry",
        "look-under",
        "mend-eaten-tracks",
        "measure-rails",
        "bench-start",
    ];
    for pair in chain.windows(2) {
        assert!(rules.is_before(pair[0], pair[1]), "{} before {}", pair[0], pair[1]);
    }
    assert!(rules.is_before("look-under", "recap") && rules.is_before("recap", "measure-rails"));
    let called: Vec<&str> =
        rules.work_for("cell-leaked", Kind::Mainboard, Severity::Grave).map(|work| work.name.as_str()).collect();
    let expected: Vec<&str> = chain.iter().copied().filter(|name| *name != "mend-eaten-tracks").collect();
    assert_eq!(called, expected);
    assert_eq!(work(&rules, "cut-leaking-cell").hold, Hold::Storage);
    assert_eq!(work(&rules, "measure-rails").hold, Hold::Power);
}

/// The electrolyte of nickel-cadmium cells is potassium hydroxide (IEC TR 61438): a weak acid neutralises it, baking
/// soda, a base, does not.
#[test]
fn an_alkaline_leak_is_never_met_with_baking_soda() {
    let rules = Rules::shipped();
    let mut met = 0;
    for row in &rules.work {
        // What a lithium thionyl chloride battery leaves is acid.
        let is_alkaline = row.findings.iter().any(|finding| finding == "cell-leaked" || finding == "leak-residue");
        let is_soda = row.materials.iter().any(|material| material.to_lowercase().contains("soda"));
        assert!(!is_soda || !is_alkaline, "{}", row.name);
        if row.name == "neutralise" || row.name == "wash-out-spill" {
            met += 1;
            assert!(row.materials.iter().any(|it| it.contains("vinegar") && it.contains("itric acid")), "{}", row.name);
            assert!(row.cautions.rows().iter().any(|it| it.say.contains("Never baking soda")), "{}", row.name);
        }
    }
    assert_eq!(met, 2);
}

/// Tolerances and ripple: ATX Power Supply Design Guide 0.9, pages 11 and 14.
#[test]
fn a_supply_is_proven_alone_before_power_and_within_the_published_limits() {
    let rules = Rules::shipped();
    let before_power: Vec<&str> = rules
        .proofs
        .iter()
        .filter(|proof| proof.power > PowerEffect::Nothing)
        .map(|proof| proof.name.as_str())
        .collect();
    assert_eq!(before_power, ["load-test"]);
    let test = rules.proof("load-test").unwrap();
    assert_eq!(test.kinds, [Kind::PowerSupply]);
    assert!(test.required);
    for figure in ["+5, +12 V and standby within 5 %", "-5 and -12 V within 10 %", "50 mV", "120 mV", "100 mV"] {
        assert!(test.criterion.contains(figure), "{figure}");
    }
    assert!(work(&rules, "recap-supply").voids.contains(&"load-test".into()));
}

/// X across the line, Y from line to earth, not interchangeable: IEC 60384-14.
#[test]
fn suppression_capacitors_are_replaced_by_rated_ones_and_not_by_just_anybody() {
    let rules = Rules::shipped();
    for name in ["replace-suppression", "renew-monitor-mains"] {
        let row = work(&rules, name);
        assert!(row.materials.iter().any(|it| it.contains("X2")) && row.materials.iter().any(|it| it.contains("Y2")));
        assert_eq!(row.who, Competence::SendOut);
        assert_eq!(row.hold, Hold::Power);
    }
}

#[test]
fn mains_and_picture_tube_work_is_nobodys_alone_and_defers_to_codes_and_trained_people() {
    let rules = Rules::shipped();
    let mains: Vec<_> = rules.work.iter().filter(|row| row.sitting == "mains").collect();
    assert!(mains.len() >= 10);
    for row in mains {
        assert_ne!(row.who, Competence::Oneself, "{}", row.name);
        assert!(!row.cautions.rows().is_empty(), "{}", row.name);
    }
    for kind in MAINS_KINDS {
        for finding in ["capacitors-cracked", "capacitors-bulged", "smell-burnt", "rattle", "reported-dead"] {
            for row in rules.work_for(finding, kind, Severity::Plain).filter(|row| row.cover == Some(Cover::Off)) {
                assert_eq!(row.who, Competence::SendOut, "{} on {kind:?}", row.name);
                assert_eq!(row.hold, Hold::Power, "{} on {kind:?}", row.name);
            }
        }
    }
}

/// What can hurt under power when nobody looked: cells, capacitors, rails, voltages, mains.
#[test]
fn what_could_hurt_under_power_stays_unknown_until_looked_at() {
    let rules = Rules::shipped();
    let hurts = [
        "clock-supply",
        "leak-reach",
        "electrolytics",
        "tantalums",
        "rails",
        "power-plug",
        "voltage-jumpers",
        "core-voltage",
        "suppression",
        "supply-electrolytics",
        "mains-cord",
        "selector",
        "panel-switch",
        "standoffs",
        "tube",
    ];
    for name in hurts {
        assert_eq!(rules.question(name).unwrap().power, PowerEffect::NotKnown, "{name}");
    }
    for kind in [Kind::Cooler, Kind::Media, Kind::Retention] {
        let holds = rules.questions_for(kind).iter().filter(|question| question.topic == "capacitors").count();
        assert_eq!(holds, 0, "{kind:?}");
    }
}

/// Heads before alignment (cctech 2006-August/025572), image before anything that writes (intohard.com), voltage
/// before the first start, discharge before hands go into a supply.
#[test]
fn what_the_trade_does_first_comes_first() {
    let rules = Rules::shipped();
    for (first, later) in [
        ("clean-heads", "align-drive"),
        ("record-label", "image-disk"),
        ("image-disk", "map-bad-sectors"),
        ("set-voltage", "bench-start"),
        ("discharge-supply", "recap-supply"),
        ("discharge-supply", "replace-suppression"),
        ("discharge-monitor", "recap-monitor"),
        ("bench-start", "copy-firmware"),
    ] {
        assert!(rules.is_before(first, later), "{first} before {later}");
    }
}

/// The trade's example: a recap voids a load test, a badge glued on does not.
#[test]
fn looks_void_nothing() {
    let rules = Rules::shipped();
    for name in ["find-trim", "whiten", "clean-marks", "stop-rust", "brighten-shells", "find-caps"] {
        let row = work(&rules, name);
        assert_eq!(row.hold, Hold::Looks, "{name}");
        assert!(row.voids.is_empty(), "{name}");
    }
    assert!(!work(&rules, "recap").voids.is_empty());
}

/// "Tested" lapses after rework: Motherboards and Hard Drive Testing, wiki.freegeek.org, test after every repair.
#[test]
fn soldering_voids_what_was_proven_before() {
    let rules = Rules::shipped();
    let mut compared = 0;
    for (finding, kind, severity) in raised(&rules) {
        let soldered = rules.work_for(&finding, kind, severity).filter(|row| {
            // Cutting a cell's legs needs no iron.
            let is_cut = ["cut-leaking-cell", "cut-cell", "cut-lithium-thionyl"].contains(&row.name.as_str());
            row.sitting == "soldering" && row.nature != Nature::Care && row.hold <= Hold::Power && !is_cut
        });
        for row in soldered {
            for proof in rules.proofs_for(kind).iter().filter(|proof| proof.required) {
                compared += 1;
                assert!(row.voids.contains(&proof.name), "{} on {kind:?} leaves {} standing", row.name, proof.name);
            }
        }
    }
    assert!(compared > 100, "only {compared} were compared");
    for (name, proof) in [("recap", "boot"), ("recap-supply", "load-test"), ("recap", "soak-run")] {
        assert!(work(&rules, name).voids.contains(&proof.into()), "{name} {proof}");
    }
}

#[test]
fn every_kind_with_a_test_has_one_that_is_required() {
    let rules = Rules::shipped();
    let untested = [Kind::Media, Kind::Case, Kind::Retention, Kind::Cable, Kind::Other];
    for kind in Kind::ALL {
        let required = rules.proofs_for(*kind).iter().any(|proof| proof.required);
        assert_eq!(required, !untested.contains(kind), "{kind:?}");
    }
    assert!(rules.machine_proofs().iter().any(|proof| proof.required));
}

const SITTING: &str = "[[sitting]]\nname = \"table\"\nsay = \"Table\"\n";

/// A row of work, to be made wrong.
const WORK: &str = r#"[[work]]
name = "polish"
say = "Polish it"
findings = ["dirt"]
minutes = 10
nature = "care"
hold = "looks"
who = "oneself"
sitting = "dry-cleaning"
source = "mine"
power = "nothing"
cover = "on"
"#;

const QUESTION: &str = r#"[[question]]
name = "smell"
kinds = ["cable"]
ask = "Smell?"
topic = "smell"
answer = [
    { name = "none", say = "None", power = "nothing" },
    { name = "some", say = "Some", finding = "dirt", power = "remark" },
]
source = "mine"
power = "nothing"
"#;

const FIGURE: &str = "[question.figure]\nsay = \"Strength\"\nunit = \"%\"\nleast = 0.0\nmost = 10.0\nbound = [{ above = 5.0, finding = \"dirt\" }]\n";

#[test]
fn a_bad_table_is_refused_with_file_line_and_reason() {
    let with_figure = format!("{QUESTION}{FIGURE}");
    let circle = format!("{}{}", WORK.replace("minutes", "after = [\"shine\"]\nminutes"), {
        WORK.replace("polish", "shine").replace("minutes", "after = [\"polish\"]\nminutes")
    });
    let cases: Vec<(&str, String, usize, &str)> = vec![
        ("unknown finding of an answer", QUESTION.replace("\"dirt\"", "\"drit\""), 8, "unknown finding `drit`"),
        ("unknown finding of work", WORK.replace("\"dirt\"", "\"drit\""), 4, "unknown finding `drit`"),
        ("circular order", circle, 1, "circular order"),
        ("own successor", WORK.replace("minutes", "after = [\"polish\"]\nminutes"), 1, "circular order"),
        ("question for no kind", QUESTION.replace("\"cable\"", ""), 1, "asked of no kind"),
        ("unknown kind", QUESTION.replace("\"cable\"", "\"cabel\""), 3, "“cabel” is none of the words for it: mainboard, "),
        ("kind twice", QUESTION.replace("\"cable\"", "\"cable\", \"cable\""), 3, "`cable` stands here twice"),
        ("unknown work before", WORK.replace("minutes", "after = [\"wash\"]\nminutes"), 5, "unknown work `wash`"),
        ("unknown proof", WORK.replace("source", "proven_by = [\"sniff\"]\nsource"), 10, "unknown proof `sniff`"),
        ("unknown voided proof", WORK.replace("source", "voids = [\"sniff\"]\nsource"), 10, "voids the unknown proof"),
        ("unknown sitting", WORK.replace("dry-cleaning", "sofa"), 9, "unknown sitting `sofa`"),
        ("doubled name", format!("{SITTING}{SITTING}"), 5, "`table` stands here twice"),
        ("doubled answer", QUESTION.replace("\"some\"", "\"none\""), 7, "`none` stands here twice"),
        ("empty text", QUESTION.replace("\"Smell?\"", "\" \""), 4, "`ask` is empty"),
        ("empty material", WORK.replace("source", "materials = [\"\"]\nsource"), 10, "`materials` is empty"),
        ("empty source", WORK.replace("\"mine\"", "\"\""), 10, "`source` is empty"),
        ("unknown key", WORK.replace("minutes", "hours = 3\nminutes"), 5, "there is no field “hours” here"),
        ("missing key", WORK.replace("hold = \"looks\"\n", ""), 1, "“hold” is missing"),
        ("no effect of work", WORK.replace("power = \"nothing\"\n", ""), 1, "“power” is missing"),
        ("no effect of a question", QUESTION.replace("\npower = \"nothing\"\n", "\n"), 1, "“power” is missing"),
        ("no effect of an answer", QUESTION.replace(", power = \"remark\"", ""), 8, "“power” is missing"),
        ("no effect of a finding", "[[finding]]\nname = \"fat\"\nsay = \"Fat\"\nseverity = \"plain\"\n".into(), 1, "“power” is missing"),
        ("work that holds power and lets it be", WORK.replace("\"looks\"", "\"power\""), 1, "holds power, so its `power` is `no`"),
        ("always on a kind not asked", QUESTION.replace("\npower", "\nalways_on = [\"fan\"]\npower"), 1, "not asked of `fan`"),
        ("no word on the cover", WORK.replace("cover = \"on\"\n", ""), 1, "`cover` must be"),
        ("an unknown caution", WORK.replace("source", "cautions = [\"draught\"]\nsource"), 10, "unknown caution `draught`"),
        ("a supply opened by oneself", WORK.replace("\"on\"", "\"off\"").replace("source", "cautions = [\"mains\"]\nsource"), 1, "with the cover off it is \"send_out\""),
        ("mains work by oneself", WORK.replace("dry-cleaning", "mains"), 1, "is on mains or high voltage"),
        ("a supply opened without a word", WORK.replace("\"on\"", "\"off\"").replace("oneself", "send_out"), 1, "without the caution `mains`"),
        ("unknown table", "[[chore]]\nname = \"x\"\n".into(), 1, "no table `chore`"),
        ("single brackets", SITTING.replace("[[sitting]]", "[sitting]"), 1, "double brackets"),
        ("no name", WORK.replace("\"polish\"", "\"Polish it\""), 2, "is no name"),
        ("no minutes", WORK.replace("= 10", "= 0"), 1, "0 minutes are out of range"),
        ("negative minutes", WORK.replace("= 10", "= -10"), 5, "a whole number is wanted"),
        ("figure upside down", with_figure.replace("most = 10.0", "most = -1.0"), 13, "not below most"),
        ("bound out of range", with_figure.replace("above = 5.0", "above = 50.0"), 17, "bound out of range"),
        ("bound both ways", with_figure.replace("above = 5.0", "above = 5.0, below = 1.0"), 17, "either `below`"),
        ("unknown finding of a bound", with_figure.replace("above = 5.0, finding = \"dirt\"", "above = 5.0, finding = \"drit\""), 17, "unknown finding `drit`"),
        ("one answer only", QUESTION.replace("    { name = \"some\", say = \"Some\", finding = \"dirt\", power = \"remark\" },\n", ""), 1, "two answers"),
        ("severity of nothing", QUESTION.replace("\"None\"", "\"None\", severity = \"grave\""), 7, "no finding"),
        ("same capacitors", "[[finding]]\nname = \"fat\"\nsay = \"Fat\"\nseverity = \"plain\"\npower = \"no\"\ncapacitor_states = [\"bulged\"]\n".into(), 1, "same capacitors"),
        ("removes nothing", "[[work]]\nname = \"dance\"\nremove = true\n".into(), 1, "removes the work `dance`"),
        ("half a removal", "[[work]]\nname = \"recap\"\nremove = false\n".into(), 1, "`remove = true` alone"),
        ("not TOML", "[[work]\nname = 3".into(), 1, ""),
        ("no day", "[[proof]]\nname = \"sniff\"\nsay = \"Sniff\"\nrequired = false\npower = \"nothing\"\nrig = \"Nose\"\nminutes = 1\ncriterion = \"None\"\ngood_for_days = 0\nsource = \"mine\"\n".into(), 1, "good for no day"),
    ];
    for (what, table, line, reason) in cases {
        let Err(errors) = own(&table) else { panic!("{what}: not refused") };
        let first = &errors.0[0];
        assert_eq!((first.file.as_str(), first.line), ("own.toml", line), "{what}: {errors}");
        assert!(first.reason.contains(reason), "{what}: {errors}");
    }
}

#[test]
fn all_that_is_wrong_is_told_at_once() {
    let table = format!("{}{}", WORK.replace("\"dirt\"", "\"drit\""), QUESTION.replace("\"dirt\"", "\"drit\""));
    let errors = own(&table).unwrap_err();
    let lines: Vec<usize> = errors.0.iter().map(|error| error.line).collect();
    assert_eq!(lines, [4, 20], "{errors}");
    assert_eq!(errors.to_string().lines().count(), 2);
    assert!(errors.to_string().contains("own.toml"));
}

#[test]
fn a_finding_that_answers_still_raise_cannot_be_taken_away() {
    let errors = own("[[finding]]\nname = \"yellowed\"\nremove = true\n").unwrap_err();
    assert!(errors.0.iter().any(|error| error.file == "questions/cases.toml"), "{errors}");
}

#[test]
fn own_rows_add_replace_and_take_away() {
    let shipped = Rules::shipped();
    let table = format!(
        "{WORK}{QUESTION}[[work]]\nname = \"rinse-and-dry\"\nremove = true\n{}",
        WORK.replace("polish", "dust-off").replace("Polish it", "Dust it my way").replace("= 10", "= 3")
    );
    let rules = own(&table).unwrap();
    assert_eq!(work(&rules, "polish").minutes, 10);
    assert_eq!(work(&rules, "dust-off").say, "Dust it my way");
    assert!(rules.work("rinse-and-dry").is_none());
    assert!(!work(&rules, "look-under").after.contains(&"rinse-and-dry".into()));
    assert_eq!(rules.questions_for(Kind::Cable).last().unwrap().name, "smell");
    let dirty: Vec<_> = rules.work_for("dirt", Kind::Cable, Severity::Slight).map(|row| row.minutes).collect();
    assert_eq!(dirty, [3, 10]);
    assert_eq!(rules.work.len(), shipped.work.len());
    assert_ne!(rules.version, shipped.version);
    assert_eq!(own(&table).unwrap().version, rules.version);
}

#[test]
fn own_rows_that_leave_out_cautions_are_told() {
    let lost = WORK.replace("polish", "dust-off").replace("minutes", "cautions = [\"dust\"]\nminutes");
    let rules = own(&format!("\n{lost}")).unwrap();
    let [remark] = &rules.remarks[..] else { panic!("{:?}", rules.remarks) };
    assert!(
        remark.starts_with("own.toml, line 2: the work `dust-off` replaces the shipped row without its cautions: "),
        "{remark}"
    );
    let told: Vec<&str> = remark.rsplit(": ").next().unwrap().split(", ").collect();
    assert_eq!(told, ["fan-generator", "outside-only", "air-duster"], "{remark}");
    assert!(own(WORK).unwrap().remarks.is_empty());
}

#[test]
fn own_connectors_are_read_with_the_other_tables() {
    let table = "[[connector]]\nid = \"own-port\"\nfamily = \"port\"\nlabel = \"Own port\"\nsource = \"\"\nsureness = \"common-practice\"\n";
    let files = [("connectors.toml".to_owned(), table.to_owned())];
    match Rules::with_own(&files) {
        Ok(rules) => assert_eq!(rules.connectors.label("own-port"), "Own port"),
        Err(errors) => panic!("{errors}"),
    }
    assert!(Rules::shipped().connectors.get("own-port").is_none());
}

#[test]
fn own_tables_are_read_from_the_configuration_folder() {
    let config = tempfile::tempdir().unwrap();
    assert!(own_tables(config.path()).unwrap().is_empty());
    let folder = config.path().join("rules");
    std::fs::create_dir(&folder).unwrap();
    std::fs::write(folder.join("b.toml"), QUESTION).unwrap();
    std::fs::write(folder.join("a.toml"), WORK).unwrap();
    std::fs::write(folder.join("notes.txt"), "not a table").unwrap();
    let tables = own_tables(config.path()).unwrap();
    let names: Vec<&str> = tables.iter().map(|(file, _)| file.as_str()).collect();
    assert_eq!(names, ["a.toml", "b.toml"]);
    assert!(Rules::with_own(&tables).unwrap().question("smell").is_some());
    std::fs::create_dir(folder.join("c.toml")).unwrap();
    assert!(own_tables(config.path()).unwrap_err().to_string().contains("c.toml"));
}

#[test]
fn tables_alone_make_rules_too() {
    let finding = "[[finding]]\nname = \"dirt\"\nsay = \"Dirt\"\nseverity = \"slight\"\npower = \"nothing\"\n";
    let tables = [("small.toml".to_owned(), format!("{finding}{QUESTION}"))];
    let rules = Rules::of(&tables).unwrap();
    assert_eq!(rules.questions.len(), 1);
    assert!(rules.work.is_empty());
    let texts: BTreeSet<&str> = rules.texts().collect();
    assert_eq!(texts, BTreeSet::from(["Dirt", "None", "Smell?", "Some", "mine"]));
}
