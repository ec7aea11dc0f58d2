//! Findings, work and custody go only where the tables in the records' docs lead.

use benchwright::record::{Change, CustodyAct, FindingState, Kind, KitState, Word as _, WorkState};
use benchwright::store::{Refusal, Store, StoreError};

use crate::records;
use crate::support::{custody, finding, fresh, look, moment, part, put, work};

/// Writes a finding with looks in these states, a day apart, and says what came of it.
fn live(store: &Store, tag: &str, states: &[FindingState]) -> Result<(), StoreError> {
    let board = part(tag, Kind::Mainboard);
    let leak = finding(board.id);
    let mut change = Change::new("Live");
    change.put(board).put(leak.clone());
    for (day, state) in states.iter().enumerate() {
        let mut look = look(leak.id, &format!("2024-01-{:02}", day + 1), *state);
        look.reason = "said so".into();
        change.put(look);
    }
    store.write(change).map(drop)
}

#[test]
fn findings_live_as_their_table_says() {
    use FindingState::{Accepted, Confirmed, Cured, Open, Returned, Watched};
    let (_folder, store) = fresh();
    // Every row of the table in `FindingState`'s docs.
    let allowed: &[&[FindingState]] = &[
        &[Open],
        &[Open, Open],
        &[Open, Watched, Open],
        &[Open, Cured, Confirmed, Returned, Watched, Cured],
        &[Open, Accepted, Returned, Accepted],
        &[Open, Confirmed],
        &[Open, Watched, Confirmed],
        &[Open, Cured, Returned, Cured],
        &[Watched],
        &[Watched, Confirmed],
    ];
    for (number, states) in allowed.iter().enumerate() {
        live(&store, &format!("good {number}"), states).unwrap_or_else(|error| panic!("{states:?}: {error}"));
    }
    // What can be used by eye is watched from the start.
    live(&store, "by eye", &[Watched, Open]).unwrap();
    let forbidden: &[(&[FindingState], FindingState, FindingState)] = &[
        (&[Open, Returned], Open, Returned),
        (&[Open, Cured, Open], Cured, Open),
        (&[Open, Cured, Watched], Cured, Watched),
        (&[Open, Confirmed, Cured], Confirmed, Cured),
        (&[Open, Accepted, Open], Accepted, Open),
        (&[Open, Confirmed, Accepted], Confirmed, Accepted),
    ];
    for (number, (states, before, after)) in forbidden.iter().enumerate() {
        let error = live(&store, &format!("bad {number}"), states).unwrap_err();
        assert!(
            matches!(&error, StoreError::Refused(Refusal::FindingStep { from, to, .. }) if (from, to) == (before, after)),
            "{states:?}: {error}"
        );
    }
    for states in [&[][..], &[Cured]] {
        let error = live(&store, "unborn", states).unwrap_err();
        assert!(matches!(error, StoreError::Refused(Refusal::FindingUnborn { .. })), "{states:?}: {error}");
    }
}

#[test]
fn a_look_written_later_but_dated_earlier_must_fit_in_too() {
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    let leak = finding(board.id);
    let mut change = Change::new("Log");
    change.put(board).put(leak.clone()).put(look(leak.id, "2024-01-10", FindingState::Open));
    change.put(look(leak.id, "2024-01-20", FindingState::Watched));
    store.write(change).unwrap();
    put(&store, "Look", look(leak.id, "2024-01-15", FindingState::Watched)).unwrap();
    let error = put(&store, "Look", look(leak.id, "2024-01-12", FindingState::Cured)).unwrap_err();
    assert!(error.to_string().contains("finding cell_leaked of part 1"), "{error}");
}

#[test]
fn work_goes_only_where_its_table_says() {
    use WorkState::{Doing, Done, Failed, Open, Waiting, Waived};
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    put(&store, "Log", board.clone()).unwrap();
    // Read off the table in `WorkState`'s docs: (from, to, whether there is such a row).
    let steps = [
        (Open, Waiting, true),
        (Doing, Waiting, true),
        (Open, Doing, true),
        (Waiting, Doing, true),
        (Open, Done, true),
        (Waiting, Done, true),
        (Doing, Done, true),
        (Open, Waived, true),
        (Waiting, Waived, true),
        (Doing, Waived, true),
        (Open, Failed, true),
        (Waiting, Failed, true),
        (Doing, Failed, true),
        (Waived, Open, true),
        (Failed, Open, true),
        (Done, Open, true),
        (Done, Doing, false),
        (Done, Waived, false),
        (Waived, Done, false),
        (Failed, Waiting, false),
        (Waived, Failed, false),
        (Waiting, Open, false),
    ];
    for (from, to, allowed) in steps {
        let mut piece = work(board.id, from);
        piece.reason = "said so".into();
        put(&store, "Work", piece.clone()).unwrap();
        piece.state = to;
        match put(&store, "Step", piece) {
            Ok(()) => assert!(allowed, "{from:?} → {to:?} was written"),
            Err(StoreError::Refused(Refusal::WorkStep { from: f, to: t, .. })) => {
                assert!(!allowed && (f, t) == (from, to), "{from:?} → {to:?} was refused");
            }
            Err(other) => panic!("{other}"),
        }
    }
}

#[test]
fn waived_and_failed_work_and_an_accepted_finding_say_why() {
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    let leak = finding(board.id);
    let mut change = Change::new("Log");
    change.put(board.clone()).put(leak.clone()).put(look(leak.id, "2024", FindingState::Open));
    store.write(change).unwrap();
    for state in [WorkState::Waived, WorkState::Failed] {
        let error = put(&store, "Work", work(board.id, state)).unwrap_err();
        assert!(matches!(error, StoreError::Refused(Refusal::Empty { field: "reason", .. })));
    }
    let error = put(&store, "Accept", look(leak.id, "2025", FindingState::Accepted)).unwrap_err();
    assert!(matches!(error, StoreError::Refused(Refusal::Empty { field: "reason", .. })));
}

#[test]
fn nobody_can_sell_what_he_has_given_back() {
    let (_folder, store) = fresh();
    let drive = part("1", Kind::HardDisk);
    let mut change = Change::new("Borrow");
    change.put(drive.clone()).put(custody(drive.id, "2024-01", CustodyAct::Borrowed));
    change.put(custody(drive.id, "2024-02", CustodyAct::GaveBack));
    store.write(change).unwrap();
    let error = put(&store, "Sell", custody(drive.id, "2024-03", CustodyAct::Sold)).unwrap_err();
    assert!(matches!(&error, StoreError::Refused(Refusal::CustodyStep { act: CustodyAct::Sold, .. })), "{error}");
    put(&store, "Other", custody(drive.id, "2024-03", CustodyAct::Borrowed)).unwrap_err();
}

#[test]
fn a_kit_goes_only_where_its_table_says() {
    use KitState::{Draft, Frozen, Ordered, Received, Used};
    let (_folder, store) = fresh();
    // Read off the table in `KitState`'s docs; every other step is refused.
    let rows = [
        (Draft, Frozen),
        (Frozen, Draft),
        (Frozen, Ordered),
        (Ordered, Frozen),
        (Frozen, Received),
        (Ordered, Received),
        (Received, Used),
    ];
    for from in KitState::ALL {
        for to in KitState::ALL.iter().filter(|to| *to != from) {
            let mut kit = records::kit("Recap", *from, moment("2024-03-01"));
            put(&store, "Kit", kit.clone()).unwrap();
            kit.state = *to;
            let allowed = rows.contains(&(*from, *to));
            match put(&store, "Step", kit) {
                Ok(()) => assert!(allowed, "{from:?} → {to:?} was written"),
                Err(StoreError::Refused(Refusal::KitStep { from: f, to: t, .. })) => {
                    assert!(!allowed && (f, t) == (*from, *to), "{from:?} → {to:?} was refused");
                }
                Err(other) => panic!("{other}"),
            }
        }
    }
}
