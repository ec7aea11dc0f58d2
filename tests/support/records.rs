//! Blank records to build on: a fresh key, what a test must say as arguments, and nothing in every other field.
#![allow(dead_code)] // each test binary takes in those that it needs

use benchwright::record::*;
use benchwright::store::Store;

/// A date as people write it; empty for unknown.
pub fn when(text: &str) -> When {
    text.parse().unwrap()
}

/// A moment of a day as people write it, that the store is to number.
pub fn moment(text: &str) -> Moment {
    Moment { on: when(text), sequence: 0 }
}

pub fn workshop(name: &str) -> Workshop {
    Workshop {
        id: Store::new_id(),
        name: name.to_owned(),
        keeper: String::new(),
        currency: "EUR".to_owned(),
        note: String::new(),
    }
}

pub fn place(name: &str, within: Option<PlaceId>) -> Place {
    Place { id: Store::new_id(), within, name: name.to_owned(), note: String::new() }
}

pub fn lot(name: &str) -> Lot {
    Lot {
        id: Store::new_id(),
        name: name.to_owned(),
        acquired: When::Unknown,
        source: String::new(),
        price_cents: None,
        note: String::new(),
    }
}

pub fn design(kind: Kind, maker: &str, model: &str) -> Design {
    Design {
        id: Store::new_id(),
        kind,
        maker: maker.to_owned(),
        model: model.to_owned(),
        revision: String::new(),
        introduced: When::Unknown,
        discontinued: When::Unknown,
        note: String::new(),
    }
}

pub fn connector(design: DesignId, side: Side, connector: &str, count: u32) -> DesignConnector {
    DesignConnector { id: Store::new_id(), design, side, connector: connector.to_owned(), count, note: String::new() }
}

pub fn part(tag: &str, kind: Kind, name: &str) -> Part {
    Part {
        id: Store::new_id(),
        tag: tag.to_owned(),
        kind,
        design: None,
        name: name.to_owned(),
        serial: String::new(),
        originality: Originality::Unstated,
        lot: None,
        price_cents: None,
        acquired: When::Unknown,
        place: None,
        inside: None,
        quarantine: String::new(),
        quarantined: When::Unknown,
        note: String::new(),
    }
}

pub fn marking(part: PartId, read: Moment, surface: Surface, text: &str) -> Marking {
    Marking {
        id: Store::new_id(),
        part,
        read,
        surface,
        place_on_part: String::new(),
        text: text.to_owned(),
        from_factory: FromFactory::Unknown,
        scheme: String::new(),
        supersedes: None,
        note: String::new(),
    }
}

pub fn answer(question: &str, given: Given) -> Answer {
    Answer { question: question.into(), given, place_on_part: String::new(), note: String::new(), figure: None }
}

pub fn survey(part: PartId, looked: Moment, answers: Vec<Answer>) -> Survey {
    Survey {
        id: Store::new_id(),
        part,
        looked,
        who: String::new(),
        why: String::new(),
        supersedes: None,
        note: String::new(),
        answers,
    }
}

/// A finding by hand; it wants a [`look`].
pub fn finding(part: PartId, what: &str) -> Finding {
    Finding {
        id: Store::new_id(),
        part,
        what: what.into(),
        place_on_part: String::new(),
        source: FindingSource::Hand,
        question: "".into(),
        note: String::new(),
    }
}

pub fn look(finding: FindingId, looked: Moment, state: FindingState, severity: Severity) -> Look {
    Look {
        id: Store::new_id(),
        finding,
        looked,
        state,
        severity,
        share_percent: None,
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
        who: String::new(),
    }
}

/// Care in nobody's words and by no rule, that holds up nothing but readiness.
pub fn work(part: PartId, state: WorkState, changed: Moment) -> Work {
    Work {
        id: Store::new_id(),
        part,
        finding: None,
        rule: String::new(),
        title: String::new(),
        hold: Hold::Ready,
        nature: Nature::Care,
        state,
        changed,
        who: String::new(),
        minutes: None,
        used: String::new(),
        reason: String::new(),
        reversible: None,
        note: String::new(),
        touches: benchwright::record::Touches::Unstated,
    }
}

/// A wet can of 1000 µF and 6.3 V, the commonest on the boards of the time.
pub fn capacitor(part: PartId, designator: &str, logged: Moment, state: CapacitorState) -> Capacitor {
    Capacitor {
        id: Store::new_id(),
        part,
        designator: designator.to_owned(),
        place_on_part: String::new(),
        capacitance_uf: Some(1000.0),
        voltage_v: Some(6.3),
        temperature_c: None,
        diameter_mm: None,
        height_mm: None,
        pitch_mm: None,
        dielectric: Dielectric::WetAluminium,
        mounting: Mounting::Radial,
        series: String::new(),
        polarity: String::new(),
        logged,
        state,
        function: None,
        low_esr: None,
    }
}

/// A piece of something, of which there is none.
pub fn material(name: &str) -> Material {
    Material::new(Store::new_id(), name)
}

pub fn kit(name: &str, state: KitState, changed: Moment) -> Kit {
    let none = When::Unknown;
    Kit {
        id: Store::new_id(),
        name: name.to_owned(),
        scope: String::new(),
        state,
        changed,
        frozen: none,
        ordered: none,
        received: none,
        used: none,
        note: String::new(),
    }
}

/// A line of the commonest can, for one position.
pub fn kit_line(kit: KitId) -> KitLine {
    KitLine {
        id: Store::new_id(),
        kit,
        material: None,
        capacitance_uf: 1000.0,
        voltage_v: 6.3,
        temperature_c: None,
        diameter_mm: None,
        height_mm: None,
        pitch_mm: None,
        dielectric: Dielectric::WetAluminium,
        mounting: Mounting::Radial,
        low_esr: false,
        from_stock: 0,
        to_buy: 1,
        spares: 0,
        price_cents: None,
        supplier: String::new(),
        note: String::new(),
    }
}

pub fn reading(part: PartId, measured: Moment, quantity: &str, value: f64, unit: &str) -> Reading {
    Reading {
        id: Store::new_id(),
        part: Some(part),
        machine: None,
        measured,
        quantity: quantity.to_owned(),
        value,
        unit: unit.to_owned(),
        condition: String::new(),
        who: String::new(),
        supersedes: None,
        note: String::new(),
        proof: None,
        work: None,
    }
}

pub fn proof(test: &str, run: Moment, result: ProofResult) -> Proof {
    Proof {
        id: Store::new_id(),
        part: None,
        machine: None,
        test: test.to_owned(),
        run,
        rig: String::new(),
        minutes: None,
        criterion: String::new(),
        result,
        who: String::new(),
        note: String::new(),
    }
}

pub fn custody(part: PartId, happened: Moment, act: CustodyAct) -> CustodyEvent {
    CustodyEvent {
        id: Store::new_id(),
        part,
        happened,
        act,
        party: String::new(),
        until: When::Unknown,
        price_cents: None,
        condition: String::new(),
        note: String::new(),
    }
}

/// An overview of one pixel that belongs to nothing yet.
pub fn photo(content: &str, extension: &str) -> Photo {
    Photo {
        id: Store::new_id(),
        part: None,
        machine: None,
        lot: None,
        content: content.to_owned(),
        extension: extension.to_owned(),
        width_px: 1,
        height_px: 1,
        added: Moment::default(),
        taken: When::Unknown,
        view: PhotoView::Overview,
        caption: String::new(),
        is_map: false,
    }
}

pub fn machine(name: &str) -> Machine {
    Machine {
        id: Store::new_id(),
        name: name.to_owned(),
        purpose: String::new(),
        window_from: When::Unknown,
        window_to: When::Unknown,
        standing: Standing::Typical,
        priority: 0,
        note: String::new(),
    }
}

/// A role that one part must fill.
pub fn role(machine: MachineId, kind: Kind) -> Role {
    Role {
        id: Store::new_id(),
        machine,
        kind,
        name: String::new(),
        required: true,
        count: 1,
        note: String::new(),
        or_kinds: Vec::new(),
    }
}

pub fn placement(machine: MachineId, role: RoleId, part: PartId, planned: Moment) -> Placement {
    Placement { id: Store::new_id(), machine, role, part, pinned: false, planned, reason: String::new() }
}

pub fn fitting(machine: MachineId, role: Option<RoleId>, part: PartId, fitted: Moment) -> Fitting {
    Fitting { id: Store::new_id(), machine, role, part, fitted, removed: None, note: String::new() }
}
