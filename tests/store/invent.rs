//! Records of every kind with anything in their fields that may stand there, from a seed.

use benchwright::record::{
    Answer, Attachment, AttachmentKind, Capacitor, CapacitorLook, CapacitorState, CaseState, CustodyAct, CustodyEvent,
    Design, DesignCapacitor, DesignConnector, DesignFigure, Dielectric, Entry, FaultCase, Finding, FindingSource,
    FindingState, Fitting, FromFactory, Given, Hold, Id, KitLine, KitPosition, Look, Lot, Machine, MarkUse, Marking,
    Material, MaterialUse, Moment, Mounting, Nature, Originality, Part, PartId, Photo, PhotoId, PhotoMark, PhotoView,
    Place, Placement, PowerOn, PowerOnResult, Proof, ProofResult, Reading, Role, Setting, Severity, Side, Standing,
    Surface, Survey, Trial, TrialResult, Valuation, When, Word, Work, WorkAfter, WorkState,
};

use crate::records;
use crate::support::{id, moment, when};

pub use crate::chance::Chance;

impl Chance {
    pub fn pick<T: Clone>(&mut self, list: &[T]) -> T {
        list[self.below(list.len())].clone()
    }

    fn word<W: Word>(&mut self) -> W {
        self.pick(W::ALL)
    }

    fn coin(&mut self) -> bool {
        self.below(2) == 0
    }

    fn maybe<T>(&mut self, make: impl FnOnce(&mut Self) -> T) -> Option<T> {
        self.coin().then(|| make(self))
    }

    fn text(&mut self) -> String {
        const TEXTS: [&str; 8] = [
            "",
            "plain",
            "'; DROP TABLE part; --",
            "quote \" and \\ slash",
            "Ω µ 电 🔋",
            "two\nlines\t",
            " spaced ",
            "0",
        ];
        self.pick(&TEXTS).to_owned()
    }

    /// A figure of any size from a least one on, with all its digits.
    fn figure(&mut self) -> f64 {
        let digits = (self.next() >> 11) as f64 / (1u64 << 53) as f64;
        let scale = self.pick(&[1e-9, 1.0, 100.0 / 3.0, 1e9]);
        (digits + f64::EPSILON) * scale
    }

    fn day(&mut self) -> When {
        let (year, month, day) = (1900 + self.below(300), 1 + self.below(12), 1 + self.below(28));
        when(&match self.below(4) {
            0 => String::new(),
            1 => format!("{year}"),
            2 => format!("{year}-{month:02}"),
            _ => format!("{year}-{month:02}-{day:02}"),
        })
    }

    fn moment(&mut self) -> Moment {
        Moment { on: self.day(), sequence: 0 }
    }

    /// An attached photograph, its mark and another file of one owner.
    fn files(&mut self, part: Option<PartId>, machine: Option<Id<Machine>>, lot: Option<Id<Lot>>) -> Vec<Entry> {
        let content = |chance: &mut Self| {
            let (high, low) = (u128::from(chance.next()), u128::from(chance.next()));
            format!("{:064x}", (high << 64) | low)
        };
        let photo = Photo {
            id: id(),
            part,
            machine,
            lot,
            content: content(self),
            extension: "png".into(),
            width_px: self.below(9000) as u32,
            height_px: 1,
            added: self.moment(),
            taken: self.day(),
            view: self.word::<PhotoView>(),
            caption: self.text(),
            is_map: self.coin(),
        };
        let mark = self.mark(photo.id);
        let attachment = Attachment {
            id: id(),
            part,
            machine,
            lot,
            kind: self.word::<AttachmentKind>(),
            content: content(self),
            file_name: self.text(),
            bytes: self.next() >> 20,
            added: self.moment(),
            note: self.text(),
            proof: None,
        };
        vec![photo.into(), mark.into(), attachment.into()]
    }

    /// A mark of any use, with what that use needs.
    fn mark(&mut self, photo: PhotoId) -> PhotoMark {
        let role = self.word::<MarkUse>();
        let (fewest, most) = role.points();
        let points = match role {
            MarkUse::Rectangle => vec![[0.1, 0.125], [0.75, 0.0], [1.0, 0.9], [0.0, 1.0]],
            _ => (0..fewest + self.below(most.map_or(4, |most| most - fewest + 1)))
                .map(|at| [at as f32 / 9.0, self.below(7) as f32 / 7.0])
                .collect(),
        };
        let colour = if role.is_patch() && self.coin() {
            [0; 3].map(|_| Some(self.below(256) as f64 / 255.0))
        } else {
            [None; 3]
        };
        let [red, green, blue] = colour;
        PhotoMark {
            note: self.text(),
            length_mm: matches!(role, MarkUse::Scale | MarkUse::Rectangle).then(|| self.figure()),
            breadth_mm: (role == MarkUse::Rectangle).then(|| self.figure()),
            red,
            green,
            blue,
            clipped_percent: red.map(|_| self.below(101) as f64),
            ..PhotoMark::new(id(), photo, role, points)
        }
    }

    /// What a part stands on: places, a lot and a design.
    fn ground(&mut self) -> (Place, Lot, Design, Vec<Entry>) {
        let room = Place { id: id(), within: None, name: format!("Room {}", self.below(99)), note: self.text() };
        let shelf = Place { id: id(), within: Some(room.id), name: "Shelf".into(), note: self.text() };
        let lot = Lot {
            id: id(),
            name: self.text(),
            acquired: self.day(),
            source: self.text(),
            price_cents: self.maybe(|chance| chance.below(100_000) as i64 - 500),
            note: self.text(),
        };
        let design = Design {
            id: id(),
            kind: self.word(),
            maker: self.text(),
            model: self.text(),
            revision: self.text(),
            introduced: self.day(),
            discontinued: self.day(),
            note: self.text(),
        };
        let mut entries: Vec<Entry> =
            vec![room.into(), shelf.clone().into(), lot.clone().into(), design.clone().into()];
        entries.push(
            DesignConnector {
                id: id(),
                design: design.id,
                side: self.word::<Side>(),
                connector: "isa_16".into(),
                count: 1 + self.below(8) as u32,
                note: self.text(),
            }
            .into(),
        );
        entries.push(
            DesignFigure {
                id: id(),
                design: design.id,
                figure: "bus_clock_mhz".into(),
                value: self.figure(),
                source: self.text(),
                at_bus_mhz: None,
            }
            .into(),
        );
        entries.push(
            Material {
                name: format!("Stuff {}", self.text()),
                unit: "ml".into(),
                stock: self.figure(),
                place: self.maybe(|_| shelf.id),
                supplier: self.text(),
                note: self.text(),
                capacitance_uf: self.maybe(Self::figure),
                voltage_v: self.maybe(Self::figure),
                dielectric: self.maybe(Self::word),
                mounting: self.maybe(Self::word),
                low_esr: self.maybe(Self::coin),
                ..records::material("")
            }
            .into(),
        );
        entries.extend(self.files(None, None, Some(lot.id)));
        (shelf, lot, design, entries)
    }

    /// A part with something of everything that can hang on it. `tag` must be free.
    pub fn part(&mut self, tag: &str) -> Vec<Entry> {
        let (shelf, lot, design, mut entries) = self.ground();
        let part = Part {
            id: id(),
            tag: tag.into(),
            kind: design.kind,
            design: self.maybe(|_| design.id),
            name: self.text(),
            serial: self.text(),
            originality: self.word::<Originality>(),
            lot: self.maybe(|_| lot.id),
            price_cents: self.maybe(|chance| chance.next() as i64 >> 20),
            acquired: self.day(),
            place: self.maybe(|_| shelf.id),
            inside: None,
            quarantine: self.text(),
            quarantined: self.day(),
            note: self.text(),
        };
        let of = part.id;
        entries.push(part.into());
        let mut supersedes = None;
        for _ in 0..self.below(3) {
            let marking = Marking {
                id: id(),
                part: of,
                read: self.moment(),
                surface: self.word::<Surface>(),
                place_on_part: self.text(),
                text: self.text(),
                from_factory: self.word::<FromFactory>(),
                scheme: String::new(),
                supersedes,
                note: self.text(),
            };
            supersedes = Some(marking.id);
            entries.push(marking.into());
        }
        let survey = Survey {
            id: id(),
            part: of,
            looked: self.moment(),
            who: self.text(),
            why: self.text(),
            supersedes: None,
            note: self.text(),
            answers: (0..self.below(4)).map(|_| self.answer()).collect(),
        };
        let work = Work {
            id: id(),
            part: of,
            finding: None,
            rule: self.text(),
            title: self.text(),
            hold: self.word::<Hold>(),
            nature: self.word::<Nature>(),
            state: self.word::<WorkState>(),
            changed: self.moment(),
            who: self.text(),
            minutes: self.maybe(|chance| chance.below(600) as u32),
            used: self.text(),
            reason: "because".into(),
            reversible: self.maybe(Self::coin),
            note: self.text(),
            touches: benchwright::record::Touches::Unstated,
        };
        let first = Work { id: id(), state: WorkState::Open, ..work.clone() };
        let order = WorkAfter { id: id(), part: of, work: work.id, after: first.id };
        let material = Material {
            stock: self.figure(),
            supplier: self.text(),
            note: self.text(),
            ..records::material(&format!("Stuff {}", self.text()))
        };
        let used = MaterialUse { id: id(), part: of, work: work.id, material: material.id, amount: self.figure() };
        let finding = Finding {
            id: id(),
            part: of,
            what: (&self.text()).into(),
            place_on_part: self.text(),
            source: self.word::<FindingSource>(),
            question: (&self.text()).into(),
            note: self.text(),
        };
        let path =
            self.pick(&[&[FindingState::Open][..], &[FindingState::Open, FindingState::Watched, FindingState::Cured]]);
        let looks = path.iter().enumerate().map(|(day, state)| Look {
            id: id(),
            finding: finding.id,
            looked: moment(&format!("2020-01-{:02}", 1 + day)),
            state: *state,
            severity: self.word::<Severity>(),
            share_percent: self.maybe(|chance| chance.figure().min(100.0)),
            again_by: self.day(),
            reason: self.text(),
            survey: self.maybe(|_| survey.id),
            // Failed work has its finding.
            work: (work.state == WorkState::Failed || self.coin()).then_some(work.id),
            who: String::new(),
        });
        let looks: Vec<Entry> = looks.map(Entry::from).collect();
        entries.extend([survey.into(), first.into(), work.into(), order.into()]);
        entries.extend([material.into(), used.into(), finding.into()]);
        entries.extend(looks);
        for number in 0..self.below(3) {
            let position = Capacitor {
                id: id(),
                part: of,
                designator: format!("C{number}"),
                place_on_part: self.text(),
                capacitance_uf: self.maybe(Self::figure),
                voltage_v: self.maybe(Self::figure),
                temperature_c: Some(105.0),
                diameter_mm: self.maybe(Self::figure),
                height_mm: None,
                pitch_mm: None,
                dielectric: self.word::<Dielectric>(),
                mounting: self.word::<Mounting>(),
                series: self.text(),
                polarity: self.text(),
                logged: self.moment(),
                state: self.word::<CapacitorState>(),
                function: self.maybe(Self::word),
                low_esr: self.maybe(Self::coin),
            };
            let look = CapacitorLook {
                id: id(),
                capacitor: position.id,
                looked: self.moment(),
                state: self.word(),
                measured_uf: self.maybe(Self::figure),
                esr_mohm: self.maybe(Self::figure),
                leakage_ua: Some(0.0),
                replaced_by: self.text(),
                note: self.text(),
            };
            let standard = DesignCapacitor::of(&position, design.id, id());
            let kit = records::kit(&format!("Kit {}", self.text()), self.word(), self.moment());
            let line = KitLine {
                capacitance_uf: self.figure(),
                temperature_c: self.maybe(|_| 105.0),
                dielectric: self.word(),
                mounting: self.word(),
                low_esr: self.coin(),
                price_cents: self.maybe(|chance| chance.below(500) as i64),
                supplier: self.text(),
                note: self.text(),
                ..records::kit_line(kit.id)
            };
            let served = KitPosition { id: id(), line: line.id, capacitor: position.id };
            entries.extend([position.into(), look.into(), standard.into(), kit.into(), line.into(), served.into()]);
        }
        entries.push(
            Setting {
                id: id(),
                part: of,
                found: self.moment(),
                name: "JP12".into(),
                value: self.text(),
                source: self.text(),
            }
            .into(),
        );
        entries.push(
            CustodyEvent {
                id: id(),
                part: of,
                happened: self.moment(),
                act: self.pick(&[CustodyAct::Lent, CustodyAct::Sold]),
                party: self.text(),
                until: self.day(),
                price_cents: None,
                condition: self.text(),
                note: self.text(),
            }
            .into(),
        );
        entries.push(
            Valuation {
                id: id(),
                part: of,
                on: self.day(),
                amount_cents: self.below(90_000) as i64,
                basis: self.text(),
            }
            .into(),
        );
        entries.extend(self.tests(Some(of), None));
        entries.extend(self.files(Some(of), None, None));
        entries
    }

    fn answer(&mut self) -> Answer {
        let given = [Given::NotLooked, Given::CouldNotTell, Given::DoesNotApply, Given::Is((&self.text()).into())];
        Answer {
            question: "cell".into(),
            given: self.pick(&given),
            place_on_part: self.text(),
            note: self.text(),
            figure: self.maybe(Self::figure),
        }
    }

    /// A reading, a proof and a case with a trial.
    fn tests(&mut self, part: Option<PartId>, machine: Option<Id<Machine>>) -> Vec<Entry> {
        let proof = Proof {
            id: id(),
            part,
            machine,
            test: "boot".into(),
            run: self.moment(),
            rig: self.text(),
            minutes: self.maybe(|_| 480),
            criterion: self.text(),
            result: self.word::<ProofResult>(),
            who: self.text(),
            note: self.text(),
        };
        let reading = Reading {
            id: id(),
            part,
            machine,
            measured: self.moment(),
            quantity: self.text(),
            value: -self.figure(),
            unit: "V".into(),
            condition: self.text(),
            who: self.text(),
            supersedes: None,
            note: self.text(),
            proof: Some(proof.id),
            work: None,
        };
        let case = FaultCase {
            id: id(),
            part,
            machine,
            opened: self.moment(),
            symptom: self.text(),
            state: self.word::<CaseState>(),
            outcome: self.text(),
        };
        let trial = Trial {
            id: id(),
            case: case.id,
            tried: self.moment(),
            configuration: self.text(),
            step: self.text(),
            suspect: self.maybe(|_| part).flatten(),
            known_good: None,
            result: self.word::<TrialResult>(),
            note: self.text(),
            codes: self.text(),
        };
        vec![proof.into(), reading.into(), case.into(), trial.into()]
    }

    /// A machine with a role that a part is planned for, was fitted in and taken out of.
    pub fn machine(&mut self, name: &str, part: PartId) -> Vec<Entry> {
        let machine = Machine {
            id: id(),
            name: name.into(),
            purpose: self.text(),
            window_from: when("1994"),
            window_to: when("1996-06"),
            standing: self.word::<Standing>(),
            priority: self.below(5) as u32,
            note: self.text(),
        };
        let of = machine.id;
        let role = Role {
            id: id(),
            machine: of,
            kind: self.word(),
            name: self.text(),
            required: self.coin(),
            count: 2,
            note: self.text(),
            or_kinds: Vec::new(),
        };
        let placement = Placement {
            id: id(),
            machine: of,
            role: role.id,
            part,
            pinned: self.coin(),
            planned: self.moment(),
            reason: self.text(),
        };
        let fitting = Fitting {
            id: id(),
            machine: of,
            role: Some(role.id),
            part,
            fitted: moment("2024-05"),
            removed: Some(moment("2024-06")),
            note: self.text(),
        };
        let power_on = PowerOn {
            id: id(),
            machine: of,
            switched: self.moment(),
            configuration: self.text(),
            settings: self.text(),
            steps: self.text(),
            result: self.word::<PowerOnResult>(),
            happened: self.text(),
            who: self.text(),
        };
        let mut entries: Vec<Entry> =
            vec![machine.into(), role.into(), placement.into(), fitting.into(), power_on.into()];
        entries.extend(self.tests(None, Some(of)));
        entries.extend(self.files(None, Some(of), None));
        entries
    }
}
