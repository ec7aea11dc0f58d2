//! Cautions as they are read: the worst first, three at most before the steps, what holds for a whole sitting once.

use benchwright::assess::Answers;
use benchwright::assess::cautions::{JobCautions, of_sitting};
use benchwright::record::*;
use benchwright::rules::Rules;

use crate::assess::support::{at, day, finding, logbook, part};

/// The jobs of a part with one finding.
fn answers(kind: Kind, what: &str) -> Answers {
    let mut file = part(1, "0001", kind);
    let found = finding(50, &file, what, at("2026-05-01", 5), Severity::Grave);
    file.findings.push(found);
    Answers::of(&logbook(vec![file], vec![], vec![]), &Rules::shipped(), day("2026-06-01"))
}

#[test]
fn before_the_first_step_stand_three_cautions_at_most_and_the_worst_comes_first() {
    let mut jobs = 0;
    for (kind, what) in [
        (Kind::PowerSupply, "capacitors-bulged"),
        (Kind::Monitor, "capacitors-leaking"),
        (Kind::Mainboard, "cell-leaked"),
        (Kind::Mainboard, "lithium-thionyl-leaked"),
    ] {
        for task in &answers(kind, what).parts[0].tasks {
            jobs += 1;
            let read = JobCautions::alone(task);
            assert!(read.first.len() <= 3, "{}: {:?}", task.title(), read.first);
            let harms: Vec<_> = task.cautions().rows().iter().map(|row| row.harm).collect();
            assert!(harms.is_sorted(), "{}: {harms:?}", task.title());
            assert!(read.later.is_empty() || read.first.len() == 3, "{}", task.title());
        }
    }
    assert!(jobs > 15, "only {jobs} jobs were looked at");
}

#[test]
fn what_opens_a_power_supply_says_first_who_does_it_and_then_what_kills() {
    let answers = answers(Kind::PowerSupply, "capacitors-bulged");
    let opening = answers.parts[0].tasks.iter().filter(|task| task.who() == Competence::SendOut);
    let mut opened = 0;
    for task in opening {
        opened += 1;
        let first = JobCautions::listed(task).first;
        assert!(first[0].starts_with("Send it out") && first[1].contains("kill"), "{first:?}");
    }
    assert!(opened >= 2);
}

#[test]
fn what_holds_for_a_sitting_is_said_once_and_not_beside_each_job() {
    let answers = answers(Kind::Mainboard, "cell-leaked");
    let tasks = &answers.parts[0].tasks;
    let once = of_sitting(tasks.iter());
    assert!(once.iter().any(|said| said.starts_with("Solder fume")), "{once:?}");
    for task in tasks {
        let listed = JobCautions::listed(task);
        for said in listed.first.iter().chain(&listed.later) {
            assert!(!once.contains(said), "{}: {said}", task.title());
        }
    }
}

/// A wrist strap ties a hand to earth: wanted at a board, never at mains.
#[test]
fn no_sheet_of_mains_work_asks_for_a_wrist_strap() {
    let answers = answers(Kind::PowerSupply, "dirt");
    assert!(of_sitting(answers.parts[0].tasks.iter()).iter().any(|said| said.starts_with("Static: wrist strap")));
    let mut both = self::answers(Kind::PowerSupply, "dirt").parts[0].tasks.clone();
    both.extend(self::answers(Kind::PowerSupply, "capacitors-bulged").parts[0].tasks.iter().cloned());
    let said = of_sitting(both.iter());
    assert!(said.iter().any(|said| said.starts_with("No wrist strap")), "{said:?}");
    assert!(!said.iter().any(|said| said.starts_with("Static: wrist strap")), "{said:?}");
}
