//! A machine on its way through the gates, with what to do next at each.

use benchwright::assess::{Answers, Gate, GateState, MachineAnswers, Next, Reason, Standing};
use benchwright::record::*;

use super::support::*;
use crate::records;

const TODAY: &str = "2026-06-01";
const WELL: [(&str, &str); 2] = [("cell", "sound"), ("capacitors", "sound")];

struct Workshop {
    board: PartFile,
    supply: PartFile,
    designs: Vec<DesignFile>,
    machine: MachineFile,
}

impl Workshop {
    fn new() -> Self {
        let designs = vec![board_design(301, ("1997", "1999")), supply_design(302, ("1997", "1999"))];
        let board = made_to(part(1, "0001", Kind::Mainboard), &designs[0]);
        let supply = made_to(part(2, "0002", Kind::PowerSupply), &designs[1]);
        let roles = [(401, Kind::Mainboard), (402, Kind::PowerSupply)];
        Self { board, supply, designs, machine: machine(400, "Orla", ("1997", "1999"), &roles) }
    }

    fn answers(&self) -> Answers {
        let Self { board, supply, designs, machine } = self;
        let logbook = logbook(vec![board.clone(), supply.clone()], designs.clone(), vec![machine.clone()]);
        Answers::of(&logbook, &rules(), day(TODAY))
    }

    fn stands(&self) -> (Gate, MachineAnswers) {
        let machine = (*self.answers().machines[0]).clone();
        (machine.readiness.at, machine)
    }

    fn next(&self) -> Option<Next> {
        self.stands().1.readiness.next
    }

    fn sentences(&self, gate: Gate) -> Vec<String> {
        let Self { board, supply, designs, machine } = self;
        let logbook = logbook(vec![board.clone(), supply.clone()], designs.clone(), vec![machine.clone()]);
        let (_, answers) = self.stands();
        let gate = answers.readiness.gate(gate).unwrap();
        gate.reasons.iter().map(|reason| reason.sentence(&logbook, &rules())).collect()
    }

    fn fitted() -> Self {
        let mut workshop = Self::new();
        fit(&mut workshop.machine, 403, 401, 1, at("2026-05-02", 20));
        fit(&mut workshop.machine, 404, 402, 2, at("2026-05-02", 21));
        workshop
    }

    fn surveyed() -> Self {
        let mut workshop = Self::fitted();
        workshop.board.surveys.push(survey(10, &workshop.board, at("2026-01-05", 5), &WELL));
        workshop.supply.surveys.push(survey(11, &workshop.supply, at("2026-01-05", 6), &[("smoke-film", "sound")]));
        workshop
    }

    fn safe() -> Self {
        let mut workshop = Self::surveyed();
        workshop.supply.proofs.push(proof(40, "load-test", at("2026-05-01", 9), ProofResult::Passed));
        workshop
    }

    fn proven() -> Self {
        let mut workshop = Self::safe();
        workshop.board.proofs.push(proof(41, "boot", at("2026-05-03", 30), ProofResult::Passed));
        workshop.machine.proofs.push(proof(42, "long-run", at("2026-05-03", 31), ProofResult::Passed));
        workshop
    }
}

#[test]
fn an_empty_role_holds_the_first_gate() {
    let workshop = Workshop::new();
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::RolesFilled);
    let first = &machine.readiness.gates[0];
    assert!(matches!(first.reasons[..], [Reason::RoleEmpty { missing: 1, .. }, Reason::RoleEmpty { .. }]));
    assert!(matches!(workshop.next(), Some(Next::FillRole { role, .. }) if role == id(401)));
    assert_eq!(workshop.sentences(Gate::RolesFilled)[0], "Nothing fills the role Mainboard yet.");
}

#[test]
fn a_planned_part_fills_its_role_but_is_not_yet_fitted() {
    let mut workshop = Workshop::surveyed();
    workshop.machine.fittings.remove(0);
    plan(&mut workshop.machine, 405, 401, 1);
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::PartsFit);
    let reasons: Vec<_> = machine.readiness.gates[1].holding().collect();
    assert!(matches!(reasons[..], [Reason::PlannedOnly { part, .. }] if *part == id(1)));
    assert!(matches!(workshop.next(), Some(Next::Fit { part, .. }) if part == id(1)));
}

#[test]
fn an_optional_role_may_stay_empty_and_two_parts_for_one_role_are_told() {
    let mut workshop = Workshop::safe();
    let floppy = Role { id: id(409), kind: Kind::FloppyDrive, required: false, ..workshop.machine.roles[0].clone() };
    workshop.machine.roles.push(floppy);
    assert!(workshop.stands().0 > Gate::RolesFilled);
    plan(&mut workshop.machine, 406, 401, 2);
    workshop.machine.fittings.pop();
    workshop.machine.roles.retain(|role| role.kind != Kind::PowerSupply);
    let reasons = workshop.stands().1.readiness.gates[0].reasons.clone();
    assert!(matches!(reasons[..], [Reason::RoleCrowded { over: 1, .. }, Reason::WrongKind { .. }]), "{reasons:?}");
}

#[test]
fn an_unsurveyed_part_stands_between_the_machine_and_its_first_power_on() {
    let workshop = Workshop::fitted();
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::SafeToSwitchOn);
    assert_eq!(machine.readiness.gates[2].state, GateState::NotKnown);
    assert!(matches!(workshop.next(), Some(Next::Survey { part }) if part == id(1)));
    let sentences = workshop.sentences(Gate::SafeToSwitchOn);
    assert!(sentences.contains(&"0001 (Velmar mainboard) was never surveyed.".to_owned()), "{sentences:?}");
}

#[test]
fn a_supply_never_tested_is_what_is_next_once_all_is_surveyed() {
    let workshop = Workshop::surveyed();
    assert_eq!(workshop.stands().0, Gate::SafeToSwitchOn);
    assert!(matches!(workshop.next(), Some(Next::Prove { part, proof }) if part == id(2) && proof.name == "load-test"));
}

#[test]
fn a_leaked_cell_is_urgent_whatever_the_gate() {
    let mut workshop = Workshop::new();
    plan(&mut workshop.machine, 405, 401, 1);
    workshop.board.findings.push(finding(50, &workshop.board, "leaked-cell", at("2026-01-05", 5), Severity::Grave));
    assert_eq!(workshop.stands().0, Gate::RolesFilled, "the supply's role is empty");
    assert!(
        matches!(workshop.next(), Some(Next::Work { part, job, .. }) if part == id(1) && job.title() == "Cut the cell out")
    );
    let sentences = workshop.sentences(Gate::SafeToSwitchOn);
    assert_eq!(sentences[0], "0001 (Velmar mainboard), even before it is stored: cut the cell out.");
}

#[test]
fn work_that_waits_for_other_work_is_reached_by_what_can_be_started() {
    let mut workshop = Workshop::safe();
    // The recap holds power and comes after rinsing, which holds only ready: rinsing is what can be done.
    workshop.board.findings.push(finding(50, &workshop.board, "bulged", at("2026-01-05", 5), Severity::Plain));
    workshop.board.findings.push(finding(51, &workshop.board, "residue", at("2026-01-05", 6), Severity::Plain));
    let neutralised = work(30, &workshop.board, "neutralise", WorkState::Done, at("2026-02-01", 20));
    workshop.board.work.push(Work { finding: Some(id(51)), ..neutralised });
    assert_eq!(workshop.stands().0, Gate::PartsFit, "work that holds power holds fitting too");
    assert!(matches!(workshop.next(), Some(Next::Work { job, .. }) if job.title() == "Rinse and dry"));
}

#[test]
fn work_before_ready_open_findings_and_open_faults_hold_the_fourth_gate() {
    let mut workshop = Workshop::safe();
    workshop.board.findings.push(finding(50, &workshop.board, "flat-cell", at("2026-01-05", 5), Severity::Slight));
    assert_eq!(workshop.stands().0, Gate::WorkDone);
    assert!(matches!(workshop.next(), Some(Next::Work { job, .. }) if job.title() == "Fit a cell"));

    let mut workshop = Workshop::safe();
    workshop.board.findings.push(finding(50, &workshop.board, "", at("2026-01-05", 5), Severity::Slight));
    workshop.board.findings[0].finding.note = "hums".to_owned();
    assert_eq!(workshop.stands().0, Gate::WorkDone);
    assert!(matches!(workshop.next(), Some(Next::Decide { finding, .. }) if finding == id(50)));
    assert!(workshop.sentences(Gate::WorkDone)[0].contains("hums"));

    let mut workshop = Workshop::safe();
    workshop.machine.cases.push(FaultCaseFile {
        case: FaultCase {
            id: id(60),
            part: None,
            machine: Some(id(400)),
            opened: at("2026-05-05", 40),
            symptom: "three beeps".to_owned(),
            state: CaseState::Open,
            outcome: String::new(),
        },
        trials: Vec::new(),
    });
    assert_eq!(workshop.stands().0, Gate::WorkDone);
    assert!(matches!(workshop.next(), Some(Next::FindFault { part: None, .. })));
}

#[test]
fn looks_only_never_block_ready() {
    let mut workshop = Workshop::safe();
    workshop.board.findings.push(finding(50, &workshop.board, "badge-lost", at("2026-01-05", 5), Severity::Slight));
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::Proven);
    assert_eq!(machine.readiness.left.minutes, 0, "and count for nothing in the hours left");
}

#[test]
fn the_first_power_on_comes_before_the_proofs_that_need_it() {
    let mut workshop = Workshop::safe();
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::Proven);
    assert_eq!(machine.readiness.proof_minutes, 15 + 480);
    assert!(matches!(workshop.next(), Some(Next::PowerOn { .. })));
    workshop.machine.power_ons.push(PowerOn {
        id: id(61),
        machine: id(400),
        switched: at("2026-05-03", 25),
        configuration: String::new(),
        settings: String::new(),
        steps: String::new(),
        result: PowerOnResult::Well,
        happened: String::new(),
        who: "Ada".to_owned(),
    });
    assert!(matches!(workshop.next(), Some(Next::Prove { proof, .. }) if proof.name == "boot"));
}

#[test]
fn papers_are_the_last_gate_and_then_it_is_ready() {
    let mut workshop = Workshop::proven();
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::PapersComplete);
    assert_eq!(machine.readiness.gates[5].reasons.len(), 4, "three for the board, one for the supply");
    assert!(matches!(workshop.next(), Some(Next::File { .. })));
    let photo = |number, part| PhotoFile {
        photo: Photo { id: id(number), part: Some(id(part)), view: PhotoView::Settings, ..records::photo("", "jpg") },
        marks: Vec::new(),
    };
    workshop.board.photos.push(photo(62, 1));
    workshop.supply.photos.push(photo(63, 2));
    workshop.board.attachments.push(Attachment {
        id: id(64),
        part: Some(id(1)),
        machine: None,
        lot: None,
        kind: AttachmentKind::FirmwareImage,
        content: String::new(),
        file_name: "rom.bin".to_owned(),
        bytes: 1,
        added: at("2026-05-04", 51),
        note: String::new(),
        proof: None,
    });
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::Ready);
    assert!(machine.readiness.next.is_none());
    assert!(machine.readiness.gates.iter().all(|gate| gate.state == GateState::Passed));
}

#[test]
fn a_part_exchanged_after_the_long_run_asks_for_another() {
    let mut workshop = Workshop::proven();
    assert!(workshop.stands().0 > Gate::Proven);
    workshop.machine.fittings[0].fitted = at("2026-05-10", 60);
    let (gate, machine) = workshop.stands();
    assert_eq!(gate, Gate::Proven);
    assert_eq!(machine.readiness.proofs[0].standing, Standing::Changed { part: id(1) });
}

#[test]
fn a_part_fitted_elsewhere_or_lent_out_does_not_fit_here() {
    let mut workshop = Workshop::safe();
    workshop.machine.fittings.remove(0);
    plan(&mut workshop.machine, 405, 401, 1);
    let mut other = machine(500, "Brand", ("", ""), &[(501, Kind::Mainboard)]);
    fit(&mut other, 503, 501, 1, at("2026-05-02", 20));
    let Workshop { board, supply, designs, machine } = workshop;
    let logbook = logbook(vec![board, supply], designs, vec![machine, other]);
    let answers = Answers::of(&logbook, &rules(), day(TODAY));
    let readiness = &answers.machines[0].readiness;
    let gate = readiness.gate(Gate::PartsFit).unwrap();
    assert!(
        gate.reasons
            .iter()
            .any(|reason| matches!(reason, Reason::FittedElsewhere { machine, .. } if *machine == id(500)))
    );
    assert!(matches!(readiness.next, Some(Next::Fetch { part }) if part == id(1)));
}
