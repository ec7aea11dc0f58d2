"""Random workshops: complete, sound machines of seven eras as exchange documents, and facts that worsen them or do not matter.

    workshop(seed) -> (document, [machine names])

A `Shop` is a document that is being written; a `Machine` is one of its machines with its parts by a short name.
"""

import random
import uuid

from power_rules import names

TODAY = "2026-12-01"
LOOKED, WORKED, PROVEN, FITTED = "2026-09-12", "2026-08-20", "2026-10-18", "2026-11-14"
CHECKED, SWITCHED, LATER = "2026-11-18", "2026-11-19", "2026-11-26"


class Shop:
    """A document that is being written, with one short way to write each kind of record."""

    def __init__(self, seed, prefix="", sequence=0):
        self.random = random.Random(seed)
        self.tables = {}
        self.prefix = prefix
        self.sequence = sequence
        self.tags = 0
        self.machines = []
        self.earlier_work = 0.3  # how many sound parts were worked on before they were surveyed and proven

    # -- keys, moments, records

    def key(self):
        """A UUID of the form of version 7, from the seeded dice."""
        bits = (0x019A << 112) | self.random.getrandbits(112)
        bits = bits & ~(0xF << 76) | (0x7 << 76)
        bits = bits & ~(0x3 << 62) | (0x2 << 62)
        return str(uuid.UUID(int=bits))

    def moment(self, on):
        """A day and the next running number."""
        self.sequence += 1
        return {"on": on, "sequence": self.sequence}

    def add(self, table, **fields):
        """A record of a table."""
        row = {"id": self.key(), **fields}
        self.tables.setdefault(table, []).append(row)
        return row

    def rows(self, table, **fields):
        """The records of a table with these fields."""
        return [r for r in self.tables.get(table, []) if all(r.get(k) == v for k, v in fields.items())]

    def drop(self, table, row):
        """Takes a record out again."""
        self.tables[table].remove(row)

    # -- designs and parts

    def design(self, kind, maker, model, needs=(), offers=(), figures=None):
        """A design with its connectors ("name" or "name*4") and figures (name -> value, several, or {value: bus clock})."""
        row = self.add("design", kind=kind, maker=maker, model=model, revision="1", introduced="", discontinued="", note="")
        for side, connectors in (("needs", needs), ("offers", offers)):
            for text in connectors.split() if isinstance(connectors, str) else connectors:
                name, _, count = text.partition("*")
                self.add("design_connector", design=row["id"], side=side, connector=name, count=int(count or 1), note="")
        for name, values in (figures or {}).items():
            for value in values if isinstance(values, (list, dict)) else [values]:
                told = self.add("design_figure", design=row["id"], figure=name, value=value, source="label")
                if isinstance(values, dict):
                    told["at_bus_mhz"] = values[value]
        return row

    def part(self, kind, design=None, tag=None, name="", inside=None):
        """A part with a tag of its own."""
        self.tags += 1
        return self.add(
            "part", tag=tag or f"{self.prefix}{self.tags:04}", kind=kind, design=design and design["id"], name=name, serial="",
            originality="original", lot=None, price_cents=None, acquired="", place=None, inside=inside and inside["id"],
            quarantine="", quarantined="", note="",
        )  # fmt: skip

    def own_design(self, part):
        """The part's design as one that no other part shares, so that changing it worsens this part alone."""
        old = part["design"]
        source = next(d for d in self.tables["design"] if d["id"] == old)
        if source["revision"] == part["tag"]:
            return source
        new = self.add("design", **{k: v for k, v in source.items() if k != "id"})
        new["revision"] = part["tag"]
        for table in ("design_connector", "design_figure", "design_capacitor"):
            for row in self.rows(table, design=old):
                self.add(table, **{k: v for k, v in row.items() if k != "id"} | {"design": new["id"]})
        part["design"] = new["id"]
        return new

    def set_figure(self, part, figure, *values):
        """Gives a part's design these values of a figure, or none."""
        design = self.own_design(part)["id"]
        self.tables["design_figure"] = [
            f for f in self.tables.get("design_figure", []) if not (f["design"] == design and f["figure"] == figure)
        ]
        for value in values:
            self.add("design_figure", design=design, figure=figure, value=value, source="label")

    def set_connector(self, part, side, old, new=None):
        """Swaps a connector of a part's design for another one, or takes it away."""
        design = self.own_design(part)["id"]
        for row in self.rows("design_connector", design=design, side=side, connector=old):
            if new:
                row["connector"] = new
            else:
                self.drop("design_connector", row)

    # -- what is said about a part

    def survey(self, part, on=LOOKED, sound=True, but=None, supersedes=None):
        """A survey that answers every question of the kind soundly (or none), but for some answers given by name."""
        answers = dict(sound_answers(part["kind"])) if sound else {}
        answers.update(but or {})
        row = self.add(
            "survey", part=part["id"], looked=self.moment(on), who="Ada Marsh", why="before fitting", supersedes=supersedes,
            note="", answers=[],
        )  # fmt: skip
        for question, given in answers.items():
            if given is not None:
                row["answers"].append(answer(question, given))
        return row

    def say(self, part, question, given, note=None, figure=None):
        """Changes one answer of the part's last survey; None leaves the question out."""
        surveys = self.rows("survey", part=part["id"])
        row = surveys[-1] if surveys else self.survey(part, sound=False)
        row["answers"] = [a for a in row["answers"] if a["question"] != question]
        if given is not None:
            row["answers"].append(answer(question, given, note, figure))

    def proof(self, part, test, result="passed", on=PROVEN, machine=None):
        """A proof of a part, or of a machine."""
        return self.add(
            "proof", part=part and part["id"], machine=machine and machine["id"], test=test, run=self.moment(on),
            rig="bench with known-good parts", minutes=60, criterion="as the test asks", result=result, who="Ada Marsh", note="",
        )  # fmt: skip

    def reading(self, part, quantity, value, unit, on=PROVEN, proof=None, machine=None, condition="", supersedes=None):
        """A reading on a part, or on a machine."""
        return self.add(
            "reading", part=part and part["id"], machine=machine and machine["id"], measured=self.moment(on), quantity=quantity,
            value=value, unit=unit, condition=condition, who="Ada Marsh", supersedes=supersedes, note="",
            proof=proof and proof["id"], work=None,
        )  # fmt: skip

    def finding(self, part, what, state="open", severity="plain", on=LATER, words="", question="", again_by="", work=None, who=None):
        """A finding as it was last looked at; every finding begins open."""
        row = self.add(
            "finding", part=part["id"], what=what, place_on_part="", source="survey" if question else "hand", question=question,
            note=words,
        )  # fmt: skip
        if state != "open":
            self.look(row, "open", severity, on)
        self.look(row, state, severity, on, again_by, work, who)
        return row

    def look(self, finding, state, severity="plain", on=LATER, again_by="", work=None, who=None):
        """A later look at a finding."""
        row = self.add(
            "look", finding=finding["id"], looked=self.moment(on), state=state, severity=severity, share_percent=None,
            again_by=again_by, reason="decided so" if state in ("accepted", "watched") else "", survey=None,
            work=work and work["id"],
        )  # fmt: skip
        if who or state in ("accepted", "watched"):
            row["who"] = who or "Ada Marsh"
        return row

    def work(self, part, title="", state="done", hold="ready", touches=None, on=WORKED, rule="", finding=None):
        """A piece of work, by rule or in own words."""
        row = self.add(
            "work", part=part["id"], finding=finding and finding["id"], rule=rule, title="" if rule else title, hold=hold,
            nature="care", state=state, changed=self.moment(on), who="Ada Marsh", minutes=20, used="",
            reason="not worth it" if state == "waived" else "did not hold" if state == "failed" else "", reversible=None, note="",
        )  # fmt: skip
        if touches:
            row["touches"] = touches
        return row

    def capacitor(self, part, state="sound", use="rail_smoothing", dielectric="wet_aluminium", on=LOOKED, uf=1000.0, name="C1"):
        """A logged capacitor position."""
        return self.add(
            "capacitor", part=part["id"], designator=name, place_on_part="", capacitance_uf=uf, voltage_v=16.0,
            temperature_c=105.0, diameter_mm=10.0, height_mm=20.0, pitch_mm=5.0, dielectric=dielectric, mounting="radial",
            series="", polarity="stripe is minus", logged=self.moment(on), state=state, function=use, low_esr=None,
        )  # fmt: skip

    def capacitor_look(self, capacitor, state, on=LATER, replaced_by="", uf=None):
        """A later look at a capacitor, or its replacement."""
        return self.add(
            "capacitor_look", capacitor=capacitor["id"], looked=self.moment(on), state=state, measured_uf=uf, esr_mohm=None,
            leakage_ua=None, replaced_by=replaced_by, note="",
        )  # fmt: skip

    def setting(self, part, name, value, on=LOOKED, source="manual"):
        """A setting as it was found."""
        return self.add("setting", part=part["id"], found=self.moment(on), name=name, value=value, source=source)

    def fault(self, symptom, part=None, machine=None, state="open", on=LATER):
        """A fault case on a part or a machine."""
        return self.add(
            "fault_case", part=part and part["id"], machine=machine and machine["id"], opened=self.moment(on), symptom=symptom,
            state=state, outcome="",
        )  # fmt: skip

    def custody(self, part, act, on=LATER, until=""):
        """A change of hands; what is given back or bought was borrowed before."""
        if act in ("gave_back", "bought"):
            self.custody(part, "borrowed", "2024-01-05")
        return self.add(
            "custody_event", part=part["id"], happened=self.moment(on), act=act, party="Bo Lind", until=until, price_cents=None,
            condition="as before", note="",
        )  # fmt: skip

    # -- machines

    def machine(self, name):
        """A machine without parts."""
        return self.add(
            "machine", name=name, purpose="to be shown", window_from="", window_to="", standing="typical", priority=0, note=""
        )

    def fit(self, machine, part, on=FITTED):
        """Fits a part in a machine, with a role for it."""
        role = self.add("role", machine=machine["id"], kind=part["kind"], name="", required=True, count=1, note="")
        return self.add(
            "fitting", machine=machine["id"], role=role["id"], part=part["id"], fitted=self.moment(on), removed=None, note=""
        )

    def plan(self, machine, part, on=LATER):
        """Plans a part for a machine, with a role for it."""
        role = self.add("role", machine=machine["id"], kind=part["kind"], name="", required=True, count=1, note="")
        return self.add(
            "placement", machine=machine["id"], role=role["id"], part=part["id"], pinned=False, planned=self.moment(on), reason=""
        )

    def switch(self, machine, result="well", happened="started to a picture", on=SWITCHED):
        """A power-on."""
        return self.add(
            "power_on", machine=machine["id"], switched=self.moment(on), configuration="as fitted", settings="as noted",
            steps="supply, board, rest", result=result, happened=happened, who="Ada Marsh",
        )  # fmt: skip

    # -- the document

    def document(self):
        """The finished document: running numbers in the order of the days, a number 0 kept."""
        moments = [
            value
            for rows in self.tables.values()
            for row in rows
            for value in row.values()
            if isinstance(value, dict) and "sequence" in value
        ]
        old = sorted({(m["on"] or "0", m["sequence"]) for m in moments if m["sequence"]}, key=lambda k: (k[0], k[1]))
        new = {key: number for number, key in enumerate(old, 1)}
        for m in moments:
            if m["sequence"]:
                m["sequence"] = new[(m["on"] or "0", m["sequence"])]
        workshop = {"id": self.key(), "name": "A workshop", "keeper": "Ada Marsh", "currency": "EUR", "note": ""}
        return {"format": "benchwright-exchange", "version": 1, "workshop": workshop, **self.tables}


def answer(question, given, note=None, figure=None):
    """One answer of a survey: a name of the question's list, or one of the three that say nothing."""
    vague = ("not_looked", "could_not_tell", "does_not_apply")
    row = {"question": question, "given": given if given in vague else {"is": given}, "place_on_part": "", "figure": figure}
    row["note"] = note if note is not None else ("this example has none" if given == "does_not_apply" else "")
    if figure is None and question == "coin-cell" and given == "good":
        row["figure"] = 3.04
    if figure is None and question == "rails" and given == "clear":
        row["figure"] = 140.0
    return row


# The sound answer where the first fine one of the table is not the one that a machine in use gives.
SOUND = {
    "clock-supply": "coin",
    "tantalums": "whole",
    "power-plug": "two-plug",
    "supply-plugs": "two-plug",
    "voltage-jumpers": "right",
    "slot-key": "plain",
    "cooler-with-it": "not-needed",
    "held-in-place": "socket",
    "board-posts": "socket",
    "core-voltage": "printed",
    "panel-switch": "covered",
    "support": "manual",
    "retention-mechanism": "slot-1",
}


def sound_answers(kind):
    """Question -> sound answer, for every question of a kind."""
    return {q: SOUND.get(q, asked.fine[0]) for q, asked in names.QUESTIONS.items() if kind in asked.kinds}


# ---------------------------------------------------------------- machines


class Machine:
    """A machine of a shop, with its parts by a short name."""

    def __init__(self, shop, name, era):
        self.shop, self.name, self.era = shop, name, era
        self.record = shop.machine(name)
        self.parts = {}
        shop.machines.append(self)

    def __getitem__(self, name):
        return self.parts[name]

    def kinds(self, *kinds):
        """Its parts of some kinds."""
        return [p for p in self.parts.values() if p["kind"] in kinds]

    def fitting(self, name):
        """The fitting of one of its parts."""
        return next(f for f in self.shop.rows("fitting", machine=self.record["id"], part=self.parts[name]["id"]))


# Figures of the proofs, all within bounds: test -> [(quantity, value, unit)].
GOOD_FIGURES = {
    "load-test": [("+5 V rail", 5.05, "V"), ("+12 V rail", 12.1, "V"), ("-12 V rail", -11.8, "V"), ("Warmest place", 43, "°C")],
    "rails-to-ground": [("+5 V to ground, unpowered", 145, "ohm"), ("+12 V to ground, unpowered", 900, "ohm")],
    "cold-starts": [("Starts that failed", 0, "")],
    "processor-run": [("Warmest place", 46, "°C")],
    "fan-run": [("Speed", 2900, "1/min")],
    "memory-test": [("Full passes", 9, ""), ("Errors", 0, "")],
    "cache-test": [("Errors", 0, "")],
    "picture": [("Warmest place", 44, "°C")],
    "controller-copy": [("Differences", 0, "")],
    "surface-read": [("Unreadable sectors", 0, ""), ("Bad sectors mapped", 3, "")],
    "flash-copy": [("Differences", 0, "")],
    "tray-cycles": [("Times it stuck", 0, "")],
}


def sound_part(m, name, kind, design, but=None):
    """A part with a full, sound survey, every proof of its kind within bounds, fitted."""
    shop = m.shop
    part = m.parts[name] = shop.part(kind, design)
    if shop.random.random() < shop.earlier_work:
        shop.work(part, "cleaned and looked over", touches=shop.random.choice(["electrical", "nothing_electrical", None]))
    shop.survey(part, but=but)
    for test, proof in names.PROOFS.items():
        if kind in proof.kinds:
            row = shop.proof(part, test)
            for quantity, value, unit in GOOD_FIGURES.get(test, []):
                shop.reading(part, quantity, value, unit, proof=row)
    shop.fit(m.record, part)
    return part


def finish(m):
    """The papers of a sound machine: looked over, switched on well, left running."""
    m.shop.proof(None, "look-over", machine=m.record, on=CHECKED)
    m.shop.switch(m.record)
    m.shop.proof(None, "settles", machine=m.record, on=SWITCHED)
    m.shop.proof(None, "soak-run", machine=m.record, on=SWITCHED)
    m.shop.reading(None, "+5 V rail", 5.04, "V", machine=m.record, on=SWITCHED, condition="at the drive plug")
    return m


MAKERS = ["Kestrel Works", "Nordholm", "Tallis & Roe", "Umbra Logic", "Vantry", "Orrin Data", "Pell Systems"]


def cached(shop, key, make):
    """A design of the shop that several machines share."""
    known = shop.__dict__.setdefault("designs", {})
    if key not in known:
        known[key] = make()
    return known[key]


def design(shop, era, kind, model, needs="", offers="", **figures):
    """A design of an era, once a shop."""
    maker = MAKERS[sum(map(ord, model)) % len(MAKERS)]
    return cached(shop, (era, kind, model), lambda: shop.design(kind, maker, f"{model} {era}", needs, offers, figures))


def at_supply(m, watts=200):
    """A supply for an older board."""
    d = design(
        m.shop, m.era, "power_supply", f"Dynamo {watts}", "supply-at", "at-p8p9 drive-4pin*6 drive-4pin-small*2",
        power_w=watts, rating_5v_a=20, rating_12v_a=8, rating_minus5v_a=0.5, rating_minus12v_a=0.5, least_5v_a=1.5,
    )  # fmt: skip
    part = sound_part(m, "supply", "power_supply", d, {"supply-plugs": "two-plug"})
    return part


def atx_supply(m, watts=250):
    """An ATX supply."""
    d = design(
        m.shop, m.era, "power_supply", f"Dynamo X{watts}", "supply-atx", "atx-20 drive-4pin*6 drive-4pin-small*2",
        power_w=watts, combined_3v3_5v_w=150, rating_3v3_a=14, rating_5v_a=25, rating_12v_a=10, rating_minus5v_a=0.5,
        rating_minus12v_a=0.8, rating_standby_a=1, least_5v_a=1,
    )  # fmt: skip
    return sound_part(m, "supply", "power_supply", d, {"supply-plugs": "atx", "panel-switch": "none"})


def at_case(m, outline="at"):
    """A case of the older kind."""
    d = design(m.shop, m.era, "case", "Tower", "", f"{outline} supply-at bay-5.25*3 bay-3.5*2 bay-3.5-hidden*2")
    return sound_part(m, "case", "case", d, {"panel-switch": "covered"})


def drives(m, disk="ide-40", floppy=True, optical=None):
    """Disks and drives that draw their usual currents."""
    shop, era = m.shop, m.era
    d = design(shop, era, "hard_disk", "Platter", f"{disk} drive-4pin", current_5v_a=0.7, current_12v_a=0.9, disk_most_mb=8000)
    sound_part(m, "disk", "hard_disk", d, {"disk-label": "recorded"})
    if floppy:
        d = design(shop, era, "floppy_drive", "Flap", "floppy-34 drive-4pin-small bay-3.5", current_5v_a=0.4, current_12v_a=0.3)
        sound_part(m, "floppy", "floppy_drive", d)
    if optical:
        d = design(shop, era, "optical_drive", "Disc", f"{optical} drive-4pin bay-5.25", current_5v_a=0.8, current_12v_a=0.9, speed_x=8)
        sound_part(m, "optical", "optical_drive", d)


def cable(m, name):
    """A ribbon."""
    sound_part(m, name, "cable", design(m.shop, m.era, "cable", "Ribbon"))


def keyboard(m, plug):
    """A keyboard."""
    d = design(m.shop, m.era, "keyboard", "Keys", plug, current_5v_a=0.2)
    sound_part(m, "keyboard", "keyboard", d)


def card(m, name, kind, model, needs, offers="", but=None, **figures):
    """A card."""
    sound_part(m, name, kind, design(m.shop, m.era, kind, model, needs, offers, **figures), but)


def chip(m, name, kind, model, needs, offers="", but=None, **figures):
    """A processor, coprocessor, firmware chip, clock module or memory module."""
    sound_part(m, name, kind, design(m.shop, m.era, kind, model, needs, offers, **figures), but)


def settings(m, **values):
    """Settings of the board as found."""
    for name, value in values.items():
        m.shop.setting(m["board"], name.replace("_", " "), value)


def xt(m):
    """8088 class: a 5 V machine with an 8-bit bus, no cell, a disk of the oldest kind."""
    d = design(
        m.shop, m.era, "mainboard", "Plover", "at-p8p9 baby-at",
        "dip-40-processor dip-40-coprocessor isa-8*8 firmware-dip-28*2 keyboard-xt-din dip-16-memory*36",
        core_voltage_v=5, bus_clock_mhz=4.77, bus_clock_most_mhz=10, current_5v_a=2.5, current_12v_a=0.1,
    )  # fmt: skip
    but = {"clock-supply": "nothing", "coin-cell": "none", "voltage-jumpers": "automatic", "tantalums": "whole"}
    sound_part(m, "board", "mainboard", d, but)
    five = {"core_voltage_v": 5, "core_clock_mhz": 8, "current_5v_a": 0.3}
    chip(m, "processor", "processor", "Eight", "dip-40-processor", **five)
    chip(m, "coprocessor", "coprocessor", "Eight M", "dip-40-coprocessor", **five)
    chip(m, "firmware", "firmware_chip", "Rom", "firmware-dip-28", current_5v_a=0.05)
    card(m, "video", "video_card", "Amber", "isa-8", "mda-9 parallel-25", current_5v_a=0.8)
    card(m, "controller", "controller_card", "Spindle", "isa-8", "st506*2 floppy-34*2", current_5v_a=1.0, current_12v_a=0.1)
    drives(m, "st506")
    keyboard(m, "keyboard-xt-din")
    at_case(m)
    at_supply(m, 150)


def at286(m):
    """286 class with a multi-I/O card and a coin cell."""
    d = design(
        m.shop, m.era, "mainboard", "Heron", "at-p8p9 baby-at", "plcc-68 isa-16*6 isa-8*2 simm-30*4 keyboard-at-din firmware-dip-28*2",
        core_voltage_v=5, bus_clock_mhz=[12, 16], bus_clock_most_mhz=16, current_5v_a=2.5, current_12v_a=0.1,
    )  # fmt: skip
    sound_part(m, "board", "mainboard", d, {"voltage-jumpers": "automatic"})
    settings(m, bus_clock="12 MHz")
    chip(m, "processor", "processor", "Sixteen", "plcc-68", core_voltage_v=5, core_clock_mhz=16, multiplier=1, current_5v_a=0.6)
    for number in "1 2 3 4".split():
        chip(m, f"memory {number}", "memory_module", "Stick", "simm-30", current_5v_a=0.25, memory_mb=1, access_ns=80)
    card(m, "video", "video_card", "Raster", "isa-16", "vga-15", current_5v_a=1.0)
    card(m, "io", "multi_io_card", "Ports", "isa-16", "ide-40 floppy-34 serial-9*2 parallel-25 game-15", current_5v_a=0.5,
         current_12v_a=0.05, current_minus12v_a=0.05, but={"clock-supply": "nothing", "coin-cell": "none"})  # fmt: skip
    card(m, "network", "network_card", "Wire", "isa-8", "ethernet-bnc", current_5v_a=0.4, current_12v_a=0.1,
         but={"clock-supply": "nothing"})  # fmt: skip
    drives(m)
    cable(m, "ribbon")
    keyboard(m, "keyboard-at-din")
    at_case(m)
    at_supply(m)


def at386(m):
    """386 class with a clock module, a coprocessor, and a sound card that carries the optical drive."""
    d = design(
        m.shop, m.era, "mainboard", "Egret", "at-p8p9 baby-at",
        "pga-132 pga-68-coprocessor isa-16*6 simm-30*8 cache-dip-28*8 clock-dip-24 keyboard-at-din",
        core_voltage_v=5, bus_clock_mhz=[25, 33, 40], bus_clock_most_mhz=40, current_5v_a=3, current_12v_a=0.1,
    )  # fmt: skip
    sound_part(m, "board", "mainboard", d, {"clock-supply": "module", "coin-cell": "none", "voltage-jumpers": "automatic"})
    settings(m, bus_clock="33 MHz")
    chip(m, "processor", "processor", "Thirtytwo", "pga-132", core_voltage_v=5, core_clock_mhz=33, multiplier=1, current_5v_a=0.8)
    chip(m, "coprocessor", "coprocessor", "Thirtytwo M", "pga-68-coprocessor", current_5v_a=0.5)
    chip(m, "clock", "clock_module", "Tick", "clock-dip-24", current_5v_a=0.02, but={"module-cell": "rebuilt"})
    for number in "1 2 3 4".split():
        chip(m, f"memory {number}", "memory_module", "Stick", "simm-30", current_5v_a=0.25, memory_mb=4, access_ns=70)
    chip(m, "cache", "cache_module", "Quick", "cache-dip-28", current_5v_a=0.1)
    card(m, "video", "video_card", "Raster", "isa-16", "vga-15", current_5v_a=1.0)
    card(m, "sound", "sound_card", "Chime", "isa-16", "cd-panel-40 audio-3.5 game-15", current_5v_a=0.5, current_12v_a=0.3,
         current_minus5v_a=0.02, but={"minus-five": "yes", "clock-supply": "nothing"})  # fmt: skip
    card(m, "io", "multi_io_card", "Ports", "isa-16", "ide-40 floppy-34*2 serial-9*2 parallel-25", current_5v_a=0.5,
         but={"clock-supply": "nothing", "coin-cell": "none"})  # fmt: skip
    drives(m, optical="cd-panel-40")
    d = design(m.shop, m.era, "tape_drive", "Reel", "floppy-34 drive-4pin bay-5.25", current_5v_a=0.5, current_12v_a=0.8)
    sound_part(m, "tape", "tape_drive", d, {"belt": "none"})
    keyboard(m, "keyboard-at-din")
    at_case(m)
    at_supply(m)


def vlb486(m):
    """486 with VL-Bus, Socket 3, a 3.45 V processor under a cooler, a flash adapter for a disk."""
    d = design(
        m.shop, m.era, "mainboard", "Curlew", "at-p8p9 baby-at", "socket-3 vlb*2 isa-16*5 simm-72*4 keyboard-at-din cache-dip-28*9",
        core_voltage_v=[3.3, 3.45, 5], bus_clock_mhz=[25, 33, 40], bus_clock_most_mhz=40, multiplier=[2, 3], current_5v_a=3,
        current_12v_a=0.1,
    )  # fmt: skip
    sound_part(m, "board", "mainboard", d)
    settings(m, core_voltage="3.45 V", bus_clock="33 MHz", multiplier="x3")
    chip(m, "processor", "processor", "Hundred", "socket-3", core_voltage_v=3.45, core_clock_mhz=100, multiplier=3,
         bus_clock_mhz=33, current_5v_a=1.3, but={"cooler-with-it": "there", "core-voltage": "printed"})  # fmt: skip
    d = design(m.shop, m.era, "cooler", "Breeze", "drive-4pin", current_12v_a=0.1)
    sound_part(m, "cooler", "cooler", d)
    for number in "1 2".split():
        chip(m, f"memory {number}", "memory_module", "Long stick", "simm-72", current_5v_a=0.5, memory_mb=8, access_ns=60)
    card(m, "video", "video_card", "Local", "vlb", "vga-15", current_5v_a=1.3)
    card(m, "controller", "controller_card", "Local disk", "vlb", "ide-40*2 floppy-34", current_5v_a=0.6,
         but={"clock-supply": "nothing"})  # fmt: skip
    card(m, "sound", "sound_card", "Chime", "isa-16", "audio-3.5 game-15", current_5v_a=0.5, current_12v_a=0.3,
         but={"clock-supply": "nothing"})  # fmt: skip
    d = design(m.shop, m.era, "flash_adapter", "Card slot", "ide-40 drive-4pin", current_5v_a=0.2)
    sound_part(m, "flash", "flash_adapter", d)
    drives(m)
    keyboard(m, "keyboard-at-din")
    at_case(m)
    at_supply(m)


def socket7(m):
    """Socket 7 with split voltage and PCI on an AT supply; the processor's design offers the place for its cooler."""
    d = design(
        m.shop, m.era, "mainboard", "Avocet", "at-p8p9 baby-at",
        "socket-7 pci-5v*4 isa-16*3 simm-72*4 cache-160 firmware-dip-32 ide-40*2 floppy-34 fan-3 keyboard-at-din serial-9*2",
        core_voltage_v=[2.8, 2.9, 3.2, 3.45], bus_clock_mhz=[50, 60, 66.667], bus_clock_most_mhz=66.667,
        multiplier=[1.5, 2, 2.5, 3, 3.5], pci_divider=2, current_5v_a=3.5, current_12v_a=0.1,
    )  # fmt: skip
    sound_part(m, "board", "mainboard", d)
    settings(m, core_voltage="2.8 V", bus_clock="66 MHz", multiplier="3", pci_divider="2")
    chip(m, "processor", "processor", "Media", "socket-7", "cooler-socket-7", core_voltage_v=2.8, core_clock_mhz=200,
         bus_clock_mhz=66.667, current_5v_a=3.4, but={"cooler-with-it": "there", "core-voltage": "printed"})  # fmt: skip
    d = design(m.shop, m.era, "cooler", "Breeze", "cooler-socket-7 fan-3", current_12v_a=0.1)
    sound_part(m, "cooler", "cooler", d)
    for number in "1 2".split():
        chip(m, f"memory {number}", "memory_module", "Long stick", "simm-72", current_5v_a=0.6, memory_mb=16, access_ns=60)
    chip(m, "cache", "cache_module", "Quick", "cache-160", current_5v_a=0.4)
    chip(m, "firmware", "firmware_chip", "Rom", "firmware-dip-32", current_5v_a=0.05)
    card(m, "video", "video_card", "Vista", "pci-5v", "vga-15", current_5v_a=1.5, but={"slot-key": "right"})
    card(m, "sound", "sound_card", "Chime", "isa-16", "audio-3.5 game-15 cd-audio-4", current_5v_a=0.5, current_12v_a=0.3,
         but={"clock-supply": "nothing"})  # fmt: skip
    card(m, "network", "network_card", "Wire", "pci-universal", "ethernet-8p8c", current_5v_a=0.3,
         but={"slot-key": "right", "clock-supply": "nothing"})  # fmt: skip
    card(m, "modem", "modem", "Call", "isa-16", "modem-6p2c", current_5v_a=0.3, current_12v_a=0.05)
    drives(m, optical="ide-40")
    cable(m, "ribbon")
    keyboard(m, "keyboard-at-din")
    at_case(m)
    at_supply(m, 230)


def atx_board(m, model, sockets, **more):
    """An ATX board that sets the core voltage itself."""
    d = design(
        m.shop, m.era, "mainboard", model, "atx-20 atx",
        f"{sockets} agp-3.3v pci-5v*4 isa-16 dimm-168-sdram*3 ide-40*2 floppy-34 fan-3*3 keyboard-mini-din mouse-mini-din usb-a*2",
        bus_clock_mhz=[66.667, 100], bus_clock_most_mhz=100, pci_divider={2: 66.667, 3: 100}, agp_divider={1: 66.667, 1.5: 100}, current_3v3_a=2,
        current_5v_a=2, current_12v_a=0.2, current_standby_a=0.2, **more,
    )  # fmt: skip
    but = {"power-plug": "atx", "voltage-jumpers": "automatic", "board-posts": "there"}
    sound_part(m, "board", "mainboard", d, but)


def atx_rest(m):
    """What an ATX machine has beside its board and processor."""
    chip(m, "memory 1", "memory_module", "Fast stick", "dimm-168-sdram", current_3v3_a=1.2, memory_mb=128)
    card(m, "video", "video_card", "Vertex", "agp-universal", "vga-15", current_3v3_a=2, current_5v_a=0.5, current_12v_a=0.1,
         but={"slot-key": "right"})  # fmt: skip
    card(m, "network", "network_card", "Wire", "pci-universal", "ethernet-8p8c", current_3v3_a=0.2, current_5v_a=0.1,
         but={"slot-key": "right", "clock-supply": "nothing"})  # fmt: skip
    card(m, "sound", "sound_card", "Carillon", "pci-5v", "audio-3.5 game-15", current_5v_a=0.4, current_12v_a=0.1,
         but={"slot-key": "right", "clock-supply": "nothing"})  # fmt: skip
    drives(m, optical="ide-40")
    d = design(m.shop, m.era, "fan", "Gust", "fan-3", current_12v_a=0.15)
    sound_part(m, "fan", "fan", d)
    keyboard(m, "keyboard-mini-din")
    d = design(m.shop, m.era, "pointing_device", "Mouse", "mouse-mini-din", current_5v_a=0.05)
    sound_part(m, "mouse", "pointing_device", d)
    d = design(m.shop, m.era, "case", "Tower X", "", "atx supply-atx bay-5.25*3 bay-3.5*2 bay-3.5-hidden*2")
    sound_part(m, "case", "case", d, {"panel-switch": "none"})
    atx_supply(m)


def slot1(m):
    """Slot 1 on ATX, the cartridge in its posts, the cooler clipped to it."""
    atx_board(m, "Gannet", "slot-1 retention-slot-1", core_voltage_least_v=1.8, core_voltage_most_v=3.5)
    settings(m, bus_clock="100 MHz", multiplier="4", pci_divider="3", agp_divider="1.5")
    chip(m, "processor", "processor", "Cartridge", "slot-1", core_voltage_v=2.0, core_clock_mhz=400, bus_clock_mhz=100, multiplier=4,
         current_5v_a=4.5, but={"cooler-with-it": "there", "held-in-place": "right"})  # fmt: skip
    d = design(m.shop, m.era, "cooler", "Breeze", "fan-3", current_12v_a=0.15)
    sound_part(m, "cooler", "cooler", d)
    sound_part(m, "retention", "retention", design(m.shop, m.era, "retention", "Posts", "retention-slot-1"))
    atx_rest(m)


def socket370(m):
    """Flip-chip Socket 370 on ATX, the cooler on the socket's lugs."""
    atx_board(m, "Fulmar", "socket-370-fcpga cooler-socket-370", core_voltage_least_v=1.3, core_voltage_most_v=2.05)
    settings(m, bus_clock="100 MHz", pci_divider="3", agp_divider="1.5")
    chip(m, "processor", "processor", "Flip", "socket-370-fcpga", core_voltage_v=1.65, core_clock_mhz=700, bus_clock_mhz=100,
         multiplier=7, current_5v_a=4.0, but={"cooler-with-it": "there"})  # fmt: skip
    d = design(m.shop, m.era, "cooler", "Breeze", "cooler-socket-370 fan-3", current_12v_a=0.15)
    sound_part(m, "cooler", "cooler", d)
    atx_rest(m)


def adapter(m):
    """A flip-chip processor on a slot adapter that sets its core voltage."""
    atx_board(m, "Gannet", "slot-1 retention-slot-1", core_voltage_least_v=1.3, core_voltage_most_v=3.5)
    settings(m, bus_clock="100 MHz", pci_divider="3", agp_divider="1.5")
    chip(m, "adapter", "processor_adapter", "Step", "slot-1", "socket-370-fcpga cooler-socket-370", core_voltage_v=[1.65, 1.7, 2.0],
         current_5v_a=0.1, but={"held-in-place": "right"})  # fmt: skip
    m.shop.setting(m["adapter"], "core voltage", "1.65 V")
    chip(m, "processor", "processor", "Flip", "socket-370-fcpga", core_voltage_v=1.65, core_clock_mhz=700, bus_clock_mhz=100,
         multiplier=7, current_5v_a=4.0, but={"cooler-with-it": "there"})  # fmt: skip
    d = design(m.shop, m.era, "cooler", "Breeze", "cooler-socket-370 fan-3", current_12v_a=0.15)
    sound_part(m, "cooler", "cooler", d)
    sound_part(m, "retention", "retention", design(m.shop, m.era, "retention", "Posts", "retention-slot-1"))
    atx_rest(m)


ERAS = {"xt": xt, "286": at286, "386": at386, "486": vlb486, "socket 7": socket7, "slot 1": slot1, "socket 370": socket370, "adapter": adapter}


def sound_machine(shop, name, era):
    """A complete, sound machine of an era."""
    m = Machine(shop, name, era)
    ERAS[era](m)
    return finish(m)


# ---------------------------------------------------------------- facts that do not matter


def earlier_cure(shop, m):
    """A finding of the spring, cured by work, confirmed by the survey of the autumn."""
    part = shop.random.choice(m.kinds("mainboard", "video_card", "sound_card"))
    shop.survey(part, "2026-03-10", sound=False, but={"electrolytics": "bulged"})
    row = shop.finding(part, "capacitors-bulged", "open", on="2026-03-10", question="electrolytics")
    work = shop.work(part, state="done", rule="recap", finding=row, on="2026-04-02", hold="power")
    shop.look(row, "cured", on="2026-04-02", work=work)
    shop.look(row, "confirmed", on=LOOKED)


def removed_part(shop, m):
    """A bad card that was taken out again."""
    bad = shop.part("sound_card", None, name="an old card")
    shop.survey(bad, "2026-05-01", but={"rails": "shorted"})
    fitting = shop.fit(m.record, bad, "2026-05-02")
    fitting["removed"] = shop.moment("2026-05-03")
    for role in shop.rows("role", id=fitting["role"]):
        role["required"] = False


def short_survey(shop, m):
    """A later look that answers two questions well and leaves the others."""
    part = shop.random.choice(m.kinds("mainboard"))
    shop.survey(part, LATER, sound=False, but={"shells": "bright", "dirt": "clean"})


def looks_only(shop, m):
    """A finding about looks."""
    what = shop.random.choice(["yellowed", "scratched", "rust-surface", "trim-missing", "clips-broken"])
    shop.finding(m["case"], what, shop.random.choice(["open", "accepted", "watched"]), "slight")


def harmless_work(shop, m):
    """Work after everything that said it touched nothing electrical, or a rule's work that does not."""
    part = shop.random.choice(list(m.parts.values()))
    if shop.random.random() < 0.5:
        shop.work(part, "polished the bracket", on=LATER, touches="nothing_electrical")
    else:
        row = shop.finding(part, "dirt", "cured", "slight")
        shop.work(part, rule="dust-off", finding=row, on=LATER, hold="looks")


def open_looks_work(shop, m):
    """Open work that holds looks or readiness."""
    part = shop.random.choice(list(m.parts.values()))
    shop.work(part, "find a better screw", state="open", hold=shop.random.choice(["looks", "ready"]), on=LATER)


def settled_fault(shop, m):
    """A fault that was found in the summer."""
    shop.fault("no picture, three beeps", machine=m.record, state="found", on="2026-07-01")


def older_stop(shop, m):
    """An older power-on that was stopped, before the one that went well."""
    shop.switch(m.record, "stopped", "fan did not turn", on="2026-11-15")


def corrected_reading(shop, m):
    """A slip of the pen in a reading, corrected."""
    wrong = shop.reading(m["supply"], "+5 V rail", 50.5, "V", on=PROVEN)
    shop.reading(m["supply"], "+5 V rail", 5.05, "V", on=PROVEN, supersedes=wrong["id"])


def good_reading(shop, m):
    """A good reading."""
    quantity, value, unit = shop.random.choice([("+12 V rail", 12.05, "V"), ("-12 V rail", -11.6, "V"), ("+5 V ripple", 22, "mV")])
    shop.reading(m["supply"], quantity, value, unit, on=LATER)


def came_back(shop, m):
    """Lent out in the spring and back before it was surveyed."""
    part = shop.random.choice(list(m.parts.values()))
    shop.custody(part, "lent", "2026-02-01")
    shop.custody(part, "came_back", "2026-03-01")


def borrowed(shop, m):
    """A part that is borrowed, and here."""
    shop.custody(shop.random.choice(list(m.parts.values())), "borrowed", "2026-06-01", until="2027-06-01")


def sound_capacitors(shop, m):
    """Capacitors logged as sound, one of them replaced before everything was proven."""
    part = shop.random.choice(m.kinds("mainboard", "video_card", "power_supply"))
    shop.capacitor(part, name="C1")
    old = shop.capacitor(part, "bulged", on="2026-05-01", name="C2")
    shop.capacitor_look(old, "sound", on="2026-06-01", replaced_by="1000 µF 16 V 105 °C", uf=990)


def other_fine_answer(shop, m):
    """Another fine answer to a question where all fine ones say the same about power."""
    choices = {"running": "said untested", "parts-present": "all", "tantalums": "none whole", "dirt": "clean dusty film",
               "jumpers": "known none unknown", "firmware": "saved none unsaved bare", "electrolytics": "sound none",
               "keys": "all untried some", "bracket": "right bent missing", "shells": "bright rusty"}  # fmt: skip
    part = shop.random.choice(list(m.parts.values()))
    asked = [q for q in choices if part["kind"] in names.QUESTIONS[q].kinds]
    if asked:
        question = shop.random.choice(asked)
        shop.say(part, question, shop.random.choice(choices[question].split()))


def older_load_test(shop, m):
    """A load test that failed before the supply was mended, long before the one that counts."""
    shop.proof(m["supply"], "load-test", "failed", on="2025-11-02")
    shop.work(m["supply"], rule="recap-supply", on="2026-01-10", hold="power",
              finding=shop.finding(m["supply"], "capacitors-bulged", "cured", on="2026-01-10"))  # fmt: skip


def supply_in_case(shop, m):
    """The supply sits in the case, and is not fitted by itself."""
    shop.drop("fitting", m.fitting("supply"))
    m["supply"]["inside"] = m["case"]["id"]
    for role in shop.rows("role", machine=m.record["id"], kind="power_supply"):
        shop.drop("role", role)


def planned_fine(shop, m):
    """Another, sound part that is meant for the machine and finds its place."""
    d = shop.design("network_card", "Vantry", f"Spare {shop.tags}", "isa-16" if m.era == "286" else "isa-8", "", {"current_5v_a": 0.2})
    if m.era in ("slot 1", "socket 370", "adapter"):
        d = shop.design("network_card", "Vantry", f"Spare {shop.tags}", "pci-universal", "", {"current_5v_a": 0.2})
    part = shop.part("network_card", d)
    shop.survey(part, but={"clock-supply": "nothing", "slot-key": "right"})
    shop.plan(m.record, part)


def other_role(shop, m):
    """A role that several kinds of part may fill."""
    part = any_part(shop, m)
    for fitting in shop.rows("fitting", machine=m.record["id"], part=part["id"]):
        for role in shop.rows("role", id=fitting["role"]):
            role["kind"], role["or_kinds"] = "other", [part["kind"]]


NEUTRAL = [
    earlier_cure, removed_part, short_survey, looks_only, harmless_work, open_looks_work, settled_fault, older_stop,
    corrected_reading, good_reading, came_back, borrowed, sound_capacitors, other_fine_answer, older_load_test, supply_in_case,
    planned_fine, other_role,
]  # fmt: skip


# ---------------------------------------------------------------- facts of any kind

# Findings with the work that cures them.
PAIRS = """capacitors-bulged recap, tantalum-burst replace-tantalum, rail-shorted find-short, dirt dust-off,
contacts-filmed clean-contacts, joints-cracked mend-joints, tracks-cut mend-tracks, burnt-place clear-burn,
parts-missing replace-parts, bracket-bent straighten-bracket, driver-missing find-driver, cell-present cut-cell,
cell-leaked cut-leaking-cell, leak-residue neutralise, chips-crept press-chips, liquid-spilt wash-board,
voltage-setting-wrong set-voltage, coin-cell-spent fit-coin-cell, firmware-unsaved copy-firmware, pins-bent straighten-pins,
selector-wrong set-selector, rattle clear-supply, cord-damaged replace-cord, fan-gritty replace-supply-fan,
earth-open restore-earth, plugs-scorched renew-plugs, yellowed whiten, clip-tired renew-clip, paste-hardened renew-paste,
capacitors-cracked replace-suppression, standoff-stray remove-stray-standoff, data-unsaved image-disk,
heads-dirty clean-heads, belt-slack replace-belt, memory-errors sort-memory"""
PAIRS = [tuple(pair.split()) for pair in PAIRS.replace("\n", " ").split(",")]


def any_part(shop, m):
    """Any part of the machine."""
    return shop.random.choice(list(m.parts.values()))


def any_answer(shop, m):
    """Any answer to any question of any part, or none."""
    part = any_part(shop, m)
    asked = [q for q, question in names.QUESTIONS.items() if part["kind"] in question.kinds]
    question = shop.random.choice(asked)
    given = shop.random.choice(list(names.QUESTIONS[question].answers) * 2 + ["not_looked", "could_not_tell", "could_not_tell", None])
    shop.say(part, question, given)


def finding_part(shop, m, what):
    """A part on which such a finding is met, or None."""
    kinds = names.FINDINGS[what][1].split()
    parts = m.kinds(*kinds)
    return shop.random.choice(parts) if parts else None


def any_finding(shop, m):
    """Any finding in any state."""
    what = shop.random.choice(list(names.FINDINGS))
    part = finding_part(shop, m, what)
    state = shop.random.choice(["open", "open", "watched", "accepted", "returned", "cured", "confirmed"])
    if part:
        severity = shop.random.choice(["slight", "plain", "grave"])
        again = "2027-06-01" if state == "watched" else ""
        row = shop.finding(part, what, "open" if state in ("cured", "confirmed", "returned") else state, severity, on="2026-11-20", again_by=again)
        if state in ("cured", "confirmed", "returned"):
            shop.look(row, "cured", severity, on="2026-11-21")
        if state in ("confirmed", "returned"):
            shop.look(row, state, severity, on="2026-11-22")
    else:
        any_answer(shop, m)


def own_words(shop, m):
    """A finding in the restorer's own words."""
    severity = shop.random.choice(["slight", "plain", "grave"])
    shop.finding(any_part(shop, m), "", shop.random.choice(["open", "watched", "accepted"]), severity, words="looks odd near the edge", again_by="")


def any_rule_work(shop, m):
    """A finding with the work of its rule, in any state."""
    what, rule = shop.random.choice(PAIRS)
    part = finding_part(shop, m, what)
    if not part:
        return any_answer(shop, m)
    state = shop.random.choice(["open", "waiting", "doing", "done", "waived", "failed"])
    row = shop.finding(part, what, {"waived": "accepted"}.get(state, "open"), on="2026-11-20")
    work = shop.work(part, state=state, rule=rule, finding=row, on="2026-11-21", hold="power")
    if state == "done":
        shop.look(row, "cured", on="2026-11-21", work=work)


def any_own_work(shop, m):
    """Work in own words, in any state."""
    state = shop.random.choice(["open", "waiting", "doing", "done", "waived", "failed"])
    hold = shop.random.choice(["storage", "power", "fitting", "ready", "looks"])
    touches = shop.random.choice([None, "unstated", "electrical", "nothing_electrical"])
    shop.work(any_part(shop, m), "saw to the odd corner", state, hold, touches, on=LATER)


def any_proof(shop, m):
    """A later run of one of the part's tests, with any result; or the run that counts moved in time."""
    part = any_part(shop, m)
    proofs = shop.rows("proof", part=part["id"])
    if not proofs:
        return
    row = shop.random.choice(proofs)
    way = shop.random.choice(["failed", "undecided", "stale", "future", "unknown date", "gone", "again"])
    if way in ("failed", "undecided"):
        shop.proof(part, row["test"], way, on=LATER)
    elif way == "again":
        shop.proof(part, row["test"], "passed", on=LATER)
    elif way == "gone":
        for reading in shop.rows("reading", proof=row["id"]):
            reading["proof"] = None
        shop.drop("proof", row)
    else:
        row["run"]["on"] = {"stale": "2019-05-05", "future": "2027-02-01", "unknown date": ""}[way]


def any_figure(shop, m):
    """A figure of one of the part's proofs, good or bad."""
    readings = [r for r in shop.tables["reading"] if r["part"] in {p["id"] for p in m.parts.values()} and r["proof"]]
    row = shop.random.choice(readings)
    bad = {"V": row["value"] * 0.8, "ohm": 0.3, "°C": 110, "1/min": 0}
    row["value"] = bad.get(row["unit"], 7)


def any_reading(shop, m):
    """A reading on the supply, the board or the machine."""
    choices = [
        ("supply", "+5 V rail", [4.4, 4.98, 5.6], "V"), ("supply", "+12 V rail", [10.5, 12.1, 13.5], "V"),
        ("supply", "-12 V rail", [-9.5, -11.5], "V"), ("supply", "+12 V ripple", [60, 400], "mV"),
        ("board", "+5 V to ground, unpowered", [0.2, 0.5, 180], "ohm"), ("board", "+12 V to ground, unpowered", [0.4, 2.2], "ohm"),
        ("board", "cell", [0.4, 1.6, 3.0], "V"), ("video", "+5 V to ground, unpowered", [0.3, 250], "Ω"),
    ]  # fmt: skip
    name, quantity, values, unit = shop.random.choice(choices)
    value = shop.random.choice(values)
    if value == 2.2:
        unit = "kΩ"
    if "rail" in quantity and shop.random.random() < 0.3:
        shop.reading(None, quantity, value, unit, on=LATER, machine=m.record)
    else:
        shop.reading(m[name], quantity, value, unit, on=LATER)


def any_capacitor(shop, m):
    """A logged capacitor in any state, perhaps looked at again or replaced."""
    part = shop.random.choice(m.kinds("mainboard", "video_card", "sound_card", "power_supply"))
    states = "sound sound not_looked bulged leaking burst cracked missing reversed out_of_limits".split()
    use = shop.random.choice(["processor_supply", "rail_smoothing", "supply_output", "coupling", "timing", "other", None])
    row = shop.capacitor(part, shop.random.choice(states), use)
    if shop.random.random() < 0.4:
        shop.capacitor_look(row, shop.random.choice(states), replaced_by=shop.random.choice(["", "", "1000 µF 16 V"]), on="2026-10-01")


def any_fault(shop, m):
    """A fault case in any state."""
    symptom = shop.random.choice(
        ["no picture", "three beeps", "smoke from the supply", "smells burnt", "chip too hot to touch", "hangs after an hour"]
    )
    state = shop.random.choice(["open", "open", "found", "not_reproduced", "given_up"])
    if shop.random.random() < 0.5:
        shop.fault(symptom, part=any_part(shop, m), state=state)
    else:
        shop.fault(symptom, machine=m.record, state=state)


def any_switching(shop, m):
    """A later power-on."""
    result, happened = shop.random.choice(
        [("well", "as before"), ("faulty", "no sound"), ("faulty", "smelt hot"), ("stopped", "fan stood still"), ("stopped", "smoke")]
    )
    shop.switch(m.record, result, happened, on=LATER)


def any_custody(shop, m):
    """A change of hands."""
    shop.custody(any_part(shop, m), shop.random.choice(["lent", "sold", "scrapped", "gave_back", "bought", "borrowed"]))


def any_quarantine(shop, m):
    """A part that is kept apart."""
    part = any_part(shop, m)
    part["quarantine"], part["quarantined"] = "something leaks", LATER


def any_design(shop, m):
    """A figure or connector that is wrong or untold, or no design at all."""
    part = shop.random.choice([p for p in m.parts.values() if p["kind"] not in names.CARRIES_NOTHING and p["kind"] != "power_supply"])
    way = shop.random.choice(["none", "draw", "heavy", "plug"])
    if way == "none":
        part["design"] = None
        part["name"] = "a part of unknown make"
    elif way == "draw":
        for figure in ("current_5v_a", "current_3v3_a", "current_12v_a", "current_minus5v_a", "current_minus12v_a", "current_standby_a"):
            shop.set_figure(part, figure)
    elif way == "heavy":
        shop.set_figure(part, "current_5v_a", 30)
    else:
        rows = shop.rows("design_connector", design=part["design"], side="needs")
        row = shop.random.choice(rows)
        family = names.CONNECTORS[row["connector"]][0]
        other = {"processor": "slot-a", "expansion": "mca-32", "memory": "rimm-184", "board-power": "atx12v-4",
                 "drive-power": "sata-power-15", "disk": "scsi-68", "floppy": "floppy-34-edge", "input": "mouse-bus-9",
                 "mounting": "supply-sfx", "outline": "nlx"}[family]  # fmt: skip
        shop.set_connector(part, "needs", row["connector"], other)


def any_label(shop, m):
    """A label of the supply that says too little, nothing, or asks for more load than there is."""
    figure, value = shop.random.choice(
        [("rating_5v_a", 3), ("rating_12v_a", 0.5), ("power_w", 40), ("rating_12v_a", None), ("least_5v_a", 60), ("rating_5v_a", None)]
    )
    shop.set_figure(m["supply"], figure, *([value] if value is not None else []))


def any_setting(shop, m):
    """A setting that is wrong or unread."""
    choices = [("bus clock", "200 MHz"), ("bus clock", "8 MHz" if m.era in ("286", "386") else "25 MHz")]
    if m.era in ("486", "socket 7"):
        choices += [("core voltage", "5 V" if m.era == "486" else "3.45 V"), ("multiplier", "9")]
    if m.era == "adapter":
        shop.setting(m["adapter"], "core voltage", "2.0 V", on=LATER)
    elif m.era == "xt":
        any_reading(shop, m)
    else:
        name, value = shop.random.choice(choices)
        shop.setting(m["board"], name, value, on=LATER)


def any_removal(shop, m):
    """A part that is taken out, or whose fitting was only ever planned."""
    name = shop.random.choice([n for n in m.parts if n in ("supply", "board", "cooler", "sound", "video", "network")])
    fitting = m.fitting(name) if shop.rows("fitting", machine=m.record["id"], part=m[name]["id"]) else None
    if fitting is None:
        return
    if shop.random.random() < 0.5:
        fitting["removed"] = shop.moment(LATER)
    else:
        shop.drop("fitting", fitting)
        shop.add("placement", machine=m.record["id"], role=fitting["role"], part=m[name]["id"], pinned=False,
                 planned=shop.moment(LATER), reason="")  # fmt: skip


def any_lost_survey(shop, m):
    """A part that nobody ever looked at, or whose survey was corrected by a shorter one."""
    part = any_part(shop, m)
    row = shop.rows("survey", part=part["id"])[-1]
    if shop.random.random() < 0.5:
        shop.drop("survey", row)
    else:
        shop.survey(part, LATER, sound=False, but={"running": "seen"} if part["kind"] in names.QUESTIONS["running"].kinds else {}, supersedes=row["id"])


ANY = [
    any_answer, any_answer, any_answer, any_answer, any_finding, any_finding, any_finding, own_words, any_rule_work, any_rule_work,
    any_own_work, any_own_work, any_proof, any_proof, any_figure, any_reading, any_capacitor, any_fault, any_switching, any_custody,
    any_quarantine, any_design, any_design, any_label, any_setting, any_removal, any_lost_survey,
]  # fmt: skip


def workshop(seed, machines=40):
    """A document of random machines: sound ones, ones with facts that do not matter, and ones with facts of any kind."""
    shop = Shop(seed, prefix=f"{seed}-")
    dice = shop.random
    facts = {}
    for number in range(machines):
        name = f"Machine {seed}-{number}"
        m = sound_machine(shop, name, dice.choice(list(ERAS)))
        throw = dice.random()
        chosen = []
        if throw > 0.15:
            chosen += dice.sample(NEUTRAL, dice.choice([0, 1, 2]))
        if throw > 0.30:
            chosen += [dice.choice(ANY) for _ in range(dice.choice([1, 1, 1, 2, 3]))]
        for fact in chosen:
            fact(shop, m)
        facts[name] = [fact.__name__ for fact in chosen]
    return shop.document(), facts
