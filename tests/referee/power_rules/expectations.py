"""Hand-written expectations: small machines, supplies and parts with one thing said about them, and what must be answered.

Each row is (sentence, answers that are right, function that writes the subject into a shop and returns it). The answers:

    yes        power may be applied
    told       power may be applied, and at least one reason is given
    not_known  nobody can tell
    no         power must not be applied
"""

from power_rules.mutations import (
    FUTURE, cured_then_returned, finds, lose_proof, no_draw, only_planned, proof, proof_figure, rails_unlooked, rule_work, says,
    taken_out, undesigned, unlooked, vague_day,
)  # fmt: skip
from power_rules.names import QUESTIONS
from power_rules.workshops import (
    LATER, LOOKED, WORKED, Machine, at_supply, card, chip, design, settings, sound_machine,
    sound_part,
)  # fmt: skip

# ---------------------------------------------------------------- subjects


def numbered(shop, word):
    """A name that no other subject of the document has."""
    return f"{word} {shop.prefix}{shop.tags + 1}"


def small(shop):
    """A small sound machine of the 386 class: board, processor, memory, video card, disk, supply."""
    m = Machine(shop, numbered(shop, "Small"), "small")
    d = design(shop, "small", "mainboard", "Wren", "at-p8p9", "pga-132 isa-16*4 simm-30*4 keyboard-at-din", core_voltage_v=5,
               bus_clock_mhz=33, bus_clock_most_mhz=33, current_5v_a=2, current_12v_a=0.1)  # fmt: skip
    sound_part(m, "board", "mainboard", d, {"voltage-jumpers": "automatic"})
    chip(m, "processor", "processor", "Plain", "pga-132", core_voltage_v=5, core_clock_mhz=33, multiplier=1, current_5v_a=0.8)
    chip(m, "memory", "memory_module", "Stick", "simm-30", current_5v_a=0.3)
    card(m, "video", "video_card", "Raster", "isa-16", "vga-15", current_5v_a=1)
    d = design(shop, "small", "hard_disk", "Platter", "drive-4pin", current_5v_a=0.7, current_12v_a=0.9)
    sound_part(m, "disk", "hard_disk", d)
    at_supply(m)
    return m


def fast(shop):
    """A small sound machine on Socket 7 with split voltage and a cooler on the processor."""
    m = Machine(shop, numbered(shop, "Fast"), "fast")
    d = design(shop, "fast", "mainboard", "Swift", "at-p8p9", "socket-7 pci-5v*3 isa-16*2 dimm-168-sdram*2 fan-3 keyboard-at-din",
               core_voltage_v=[2.2, 2.8, 3.3], bus_clock_mhz=[60, 66.667], bus_clock_most_mhz=66.667, multiplier=[2, 3, 3.5],
               current_5v_a=3, current_12v_a=0.1)  # fmt: skip
    sound_part(m, "board", "mainboard", d)
    settings(m, core_voltage="2.8 V", bus_clock="66.6 MHz", multiplier="3.5")
    chip(m, "processor", "processor", "Media", "socket-7", "cooler-socket-7", core_voltage_v=2.8, core_clock_mhz=233,
         current_5v_a=3, but={"cooler-with-it": "there"})  # fmt: skip
    sound_part(m, "cooler", "cooler", design(shop, "fast", "cooler", "Breeze", "cooler-socket-7 fan-3", current_12v_a=0.1))
    card(m, "video", "video_card", "Vista", "pci-5v", "vga-15", current_5v_a=1.5, but={"slot-key": "right"})
    at_supply(m, 230)
    return m


def bare_supply(shop, tested=False):
    """A supply alone, surveyed soundly; with a load test that counts, or without."""
    d = shop.design("power_supply", "Orrin Data", f"Mains {shop.tags}", "", "at-p8p9 drive-4pin*4", {"power_w": 200, "rating_5v_a": 20})
    part = shop.part("power_supply", d)
    shop.survey(part, but={"supply-plugs": "two-plug"})
    if tested:
        shop.proof(part, "load-test")
    return part


class One:
    """A single part in the dress of a machine, so that the same facts can be said of it."""

    def __init__(self, shop, part):
        self.shop, self.part = shop, part

    def __getitem__(self, _name):
        return self.part


def on(base, *facts):
    """A machine of a base with some facts."""

    def write(shop):
        m = base(shop) if callable(base) else sound_machine(shop, numbered(shop, base), base)
        for fact in facts:
            fact(shop, m)
        return m.record

    return write


def supply(*facts, tested=False):
    """A supply alone with some facts."""

    def write(shop):
        part = bare_supply(shop, tested)
        for fact in facts:
            fact(shop, One(shop, part))
        return part

    return write


def alone(kind, needs, *facts, but=None, offers="", **figures):
    """A part on the bench with some facts, surveyed soundly."""

    def write(shop):
        d = shop.design(kind, "Pell Systems", f"Lone {shop.tags}", needs, offers, figures or {"current_5v_a": 0.5})
        part = shop.part(kind, d)
        shop.survey(part, but=but)
        for fact in facts:
            fact(shop, One(shop, part))
        return part

    return write


# ---------------------------------------------------------------- facts


def figure(name, what, *values):
    """A figure of a part's design."""
    return lambda s, m: s.set_figure(m[name], what, *values)


def plug(name, side, old, new=None):
    """A connector of a part's design, swapped or taken away."""
    return lambda s, m: s.set_connector(m[name], side, old, new)


def work(name, title="saw to it", **fields):
    """Work in own words."""
    return lambda s, m: s.work(m[name], title, **{"on": LATER, **fields})


def reads(name, quantity, value, unit, **fields):
    """A reading on a part."""
    return lambda s, m: s.reading(m[name], quantity, value, unit, **{"on": LATER, **fields})


def machine_reads(quantity, value, unit, **fields):
    """A reading on the machine."""
    return lambda s, m: s.reading(None, quantity, value, unit, **{"on": LATER, **fields}, machine=m.record)


def tests(name, test, result="passed", day=LATER):
    """A proof of a part."""
    return lambda s, m: s.proof(m[name], test, result, on=day)


def machine_tests(test, result, day=LATER):
    """A proof of the machine."""
    return lambda s, m: s.proof(None, test, result, on=day, machine=m.record)


def moved(name, test, day):
    """A proof of a part, run on another day."""
    return lambda s, m: proof(s, m[name], test)["run"].update(on=day)


def sets(name, what, value, **fields):
    """A setting as found."""
    return lambda s, m: s.setting(m[name], what, value, **{"on": LATER, **fields})


def surveyed(name, day=LATER, **answers):
    """A later (or earlier) survey that answers a few questions (written with _ for -)."""
    return lambda s, m: s.survey(m[name], day, sound=False, but={q.replace("_", "-"): a for q, a in answers.items()})


def cap(name, state="sound", use="rail_smoothing", then=None, replaced="", day=LATER, **fields):
    """A capacitor as logged, perhaps looked at again."""

    def write(s, m):
        row = s.capacitor(m[name], state, use, **fields)
        if then:
            s.capacitor_look(row, then, on=day, replaced_by=replaced)

    return write


def fault(symptom, name=None, state="open"):
    """A fault case on a part, or on the machine."""
    return lambda s, m: s.fault(symptom, part=name and m[name], machine=None if name else m.record, state=state)


def switched(result, happened, day=LATER):
    """A power-on."""
    return lambda s, m: s.switch(m.record, result, happened, on=day)


def hands(name, *acts, day=LATER):
    """Changes of hands, one after the other."""
    return lambda s, m: [s.custody(m[name], act, on=day) for act in acts]


def add(kind, needs, but=None, offers="", planned=False, **figures):
    """Another sound part in the machine."""

    def write(s, m):
        d = s.design(kind, "Umbra Logic", f"More {s.tags}", needs, offers, figures or {"current_5v_a": 0.3})
        m.parts["more"] = part = s.part(kind, d)
        cell = {"clock-supply": "nothing"} if kind in QUESTIONS["clock-supply"].kinds else {}
        s.survey(part, but=cell | (but or {}))
        (s.plan if planned else s.fit)(m.record, part)

    return write


def lose_draw(name):
    """Nobody told what a part draws."""
    return lambda s, m: no_draw(s, m[name])


def untold(name):
    """Nobody told a part's design."""
    return lambda s, m: undesigned(s, m[name])


def lose(name, test):
    """A proof that was never run."""
    return lambda s, m: lose_proof(s, m[name], test)


def kept_apart(name):
    """A part in quarantine."""
    return lambda s, m: m[name].update(quarantine="leaks", quarantined=LATER)


def out(name):
    """A part is taken out."""
    return lambda s, m: taken_out(s, m, name)


def ruled(name, what, rule, state, finding="open"):
    """A finding with the work of its rule."""
    return lambda s, m: rule_work(s, m[name], what, rule, state, finding)


def resurveyed(name):
    """The survey is corrected by a full, sound one."""
    return lambda s, m: s.survey(m[name], but={"voltage-jumpers": "automatic"}, supersedes=s.rows("survey", part=m[name]["id"])[-1]["id"])


def slip_corrected(name, question, wrong):
    """A first survey with a slip of the pen, corrected by the sound one."""

    def write(s, m):
        sound = s.rows("survey", part=m[name]["id"])[-1]
        slip = s.survey(m[name], LATER, sound=False, but={question: wrong})
        sound["supersedes"] = slip["id"]

    return write


def in_case(s, m):
    """The supply sits inside a fitted case."""
    case = s.part("case", s.design("case", "Nordholm", f"Box {s.tags}", "", "supply-at"))
    s.survey(case)
    s.fit(m.record, case)
    s.drop("fitting", m.fitting("supply"))
    m["supply"]["inside"] = case["id"]


def wrong_then_right(s, m):
    """A wrong reading of the rail, corrected."""
    wrong = s.reading(m["supply"], "+12 V rail", 1.21, "V", on=LATER)
    s.reading(m["supply"], "+12 V rail", 12.1, "V", on=LATER, supersedes=wrong["id"])


def healed(s, m):
    """Bulged in spring, recapped, seen sound and measured in autumn."""
    s.survey(m["board"], "2026-03-03", sound=False, but={"electrolytics": "bulged"})
    row = s.finding(m["board"], "capacitors-bulged", "open", on="2026-03-03", question="electrolytics")
    done = s.work(m["board"], rule="recap", finding=row, state="done", hold="power", on="2026-04-04")
    s.look(row, "cured", on="2026-04-04", work=done)
    s.look(row, "confirmed", on=LOOKED)


def cured_in_name(s, m):
    """A finding called cured by work that is still open."""
    row = s.finding(m["board"], "tantalum-burst", "open", on="2026-11-20")
    still = s.work(m["board"], rule="replace-tantalum", finding=row, state="open", hold="power", on="2026-11-21")
    s.look(row, "cured", on="2026-11-22", work=still)


def module(volts):
    """A voltage module between the board and its processor."""

    def write(s, m):
        s.set_connector(m["board"], "offers", "keyboard-at-din", "voltage-module-socket-7")
        add("voltage_module", "voltage-module-socket-7", core_voltage_v=volts, current_5v_a=0.1)(s, m)

    return write


def sound_cable(s, m):
    """A ribbon that nobody told anything about but that it is sound."""
    part = s.part("cable")
    s.survey(part)
    s.fit(m.record, part)


NO_VOLTAGE_READ = unlooked("voltage-jumpers", "board")


def no_core_setting(s, m):
    """The board's voltage setting was not noted."""
    for row in s.rows("setting", part=m["board"]["id"], name="core voltage"):
        s.drop("setting", row)


EXPECTATIONS = [
    # ------------------------------------------------ sound ones
    ("a small sound machine may be switched on", "yes", on(small)),
    ("a sound Socket 7 machine may be switched on", "yes", on(fast)),
    ("a sound machine of the first class may be switched on", "yes", on("xt")),
    ("a sound ATX machine may be switched on", "yes", on("slot 1")),
    ("a supply never tested may go on the dummy load when it was looked over", "yes", supply()),
    ("a supply with a load test that counts may go on the dummy load", "yes", supply(tested=True)),
    ("a sound card may be powered on the bench", "yes", alone("sound_card", "isa-16", but={"clock-supply": "nothing"})),
    # ------------------------------------------------ supplies alone, on a dummy load
    ("a cracked suppression capacitor fails in smoke", "no", supply(says("suppression", "cracked", "it"))),
    ("suppression capacitors that nobody looked at", "not_known", supply(unlooked("suppression", "it"))),
    ("suppression capacitors that could not be seen", "not_known", supply(says("suppression", "could_not_tell", "it"))),
    ("every mains supply has suppression capacitors", "not_known", supply(says("suppression", "does_not_apply", "it", note="small"))),
    ("the selector on the wrong voltage goes with a bang", "no", supply(says("selector", "wrong", "it"))),
    ("the selector was not looked at", "not_known", supply(unlooked("selector", "it"))),
    ("a supply that takes any mains has no selector", "yes", supply(says("selector", "wide", "it"))),
    ("mains within reach of a hand at the cord", "no", supply(says("mains-cord", "damaged", "it"))),
    ("nobody looked at the cord", "not_known no", supply(unlooked("mains-cord", "it"))),
    ("an open earth puts mains on the case", "no", supply(says("earth", "open", "it"))),
    ("a loose screw rattles on the mains side", "no", supply(says("smell-and-rattle", "rattle", "it"))),
    ("it smells burnt", "no", supply(says("smell-and-rattle", "burnt", "it"))),
    ("bare mains contacts at the panel switch", "no", supply(says("panel-switch", "bare", "it"))),
    ("burst electrolytics in a supply", "no", supply(says("supply-electrolytics", "burst", "it"))),
    ("electrolytics of a bad age are told", "told", supply(says("supply-electrolytics", "bad-age", "it"))),
    ("the supply's fan is seized", "no", supply(says("fan", "seized", "it"))),
    ("the supply's fan is gritty", "told no", supply(says("fan", "gritty", "it"))),
    ("scorched plugs", "no not_known", supply(says("plugs", "scorched", "it"))),
    ("a lead of the supply is cut", "no", supply(says("insulation", "damaged", "it"))),
    ("dust in a supply", "yes", supply(says("dirt", "dusty", "it"))),
    ("a liquid dried in a supply", "no", supply(says("dirt", "spill", "it"))),
    ("surface rust on its steel", "yes", supply(says("rust", "surface", "it"))),
    ("its last load test failed and nothing was mended", "no", supply(tests("it", "load-test", "failed"))),
    ("its last load test was long ago: that is what the dummy load is for", "yes", supply(tests("it", "load-test", day="2020-02-02"))),
    ("its earth failed when it was measured", "no", supply(tests("it", "earth-continuity", "failed"))),
    ("its +5 V stood at 5.7 V on the load", "no", supply(reads("it", "+5 V rail", 5.7, "V"))),
    ("its -12 V stood at -11 V, within a tenth", "yes", supply(reads("it", "-12 V rail", -11.0, "V"))),
    ("its -12 V stood at -10 V, beyond a tenth", "no", supply(reads("it", "-12 V rail", -10.0, "V"))),
    ("its +12 V stood at 11.5 V, within a twentieth", "yes", supply(reads("it", "+12 V rail", 11.5, "V"))),
    ("work on it that holds power is open", "no", supply(work("it", state="open", hold="power"))),
    ("work on it that holds power has failed", "no", supply(work("it", state="failed", hold="power"))),
    ("it was recapped and never tested since: the dummy load is next", "yes told", supply(work("it", touches="electrical"), tested=True)),
    ("a waived piece of work that held power is told", "told", supply(work("it", state="waived", hold="power"))),
    ("smoke came out of it and nobody found out why", "no", supply(fault("smoke", "it"))),
    ("it hums, and nobody found out why", "told", supply(fault("hums", "it"))),
    ("it is kept apart", "no", supply(kept_apart("it"))),
    ("it is lent out", "no not_known", supply(hands("it", "lent"))),
    ("it is scrapped", "no", supply(hands("it", "scrapped"))),
    ("an output capacitor of it leaks", "no", supply(cap("it", "leaking", "supply_output"))),
    ("a suppression capacitor of it is cracked on the record", "no", supply(cap("it", "cracked", "mains_suppression", dielectric="suppression"))),
    ("a logged capacitor was bulged, and is replaced", "yes", supply(cap("it", "bulged", "supply_output", "sound", "1000 µF 16 V"))),
    ("an accepted cracked suppression capacitor is never silent", "told no not_known", supply(finds("capacitors-cracked", "it", "accepted", "grave"))),
    ("a finding in own words, grave", "no not_known", supply(finds("", "it", severity="grave", words="arcs inside"))),
    ("a finding about looks", "yes", supply(finds("rust-surface", "it", severity="slight"))),
    # ------------------------------------------------ the supply in a machine
    ("a supply without a load test in a machine", "not_known", on(small, lose("supply", "load-test"))),
    ("a load test of 364 days ago counts", "yes", on(small, moved("supply", "load-test", "2025-12-02"))),
    ("a load test of 366 days ago does not", "not_known", on(small, moved("supply", "load-test", "2025-11-30"))),
    ("a load test of tomorrow does not", "not_known", on(small, moved("supply", "load-test", "2026-12-02"))),
    ("work on the supply in this year, month untold: perhaps after its load test", "not_known", on(small, work("supply", on="2026", touches="electrical"))),
    ("a load test of the year before last", "not_known", on(small, moved("supply", "load-test", "2024"))),
    ("a failed load test after a passed one", "no", on(small, tests("supply", "load-test", "failed"))),
    ("an undecided load test after a passed one", "not_known no", on(small, tests("supply", "load-test", "undecided"))),
    ("a passed load test after a failed one", "yes", on(small, tests("supply", "load-test", "failed", WORKED))),
    ("a new inlet after the load test", "not_known", on(small, work("supply", "new inlet", touches="electrical"))),
    ("nobody said what the work after the load test touched", "not_known", on(small, work("supply", "went over it"))),
    ("the work after the load test touched nothing electrical", "yes", on(small, work("supply", "painted the lid", touches="nothing_electrical"))),
    ("work before the load test", "yes", on(small, work("supply", "recapped", on=WORKED, touches="electrical"))),
    ("the supply was recapped by rule after its load test", "not_known", on(small, ruled("supply", "capacitors-bulged", "recap-supply", "done"))),
    ("the supply was dusted off after its load test", "yes", on(small, ruled("supply", "dirt", "dust-off", "done"))),
    ("work on the supply in the month of the load test, day untold", "not_known", on(small, lambda s, m: vague_day(s, m["supply"]))),
    ("a load test after the recap", "yes", on(small, work("supply", "recapped", on="2026-11-20", touches="electrical"), tests("supply", "load-test"))),
    ("the load test's own +12 V was 13 V", "no not_known", on(small, lambda s, m: proof_figure(s, m["supply"], "load-test", "+12 V rail", 13.0, "V"))),
    ("the load test's warmest place was at 120 degrees", "no not_known", on(small, lambda s, m: proof_figure(s, m["supply"], "load-test", "Warmest place", 120, "°C"))),
    ("an earth test of a supply that failed", "no", on(small, tests("supply", "earth-continuity", "failed"))),
    ("the supply sits inside a fitted case", "yes", on(small, in_case)),
    ("the supply is only planned", "not_known no", on(small, lambda s, m: only_planned(s, m, "supply"))),
    ("the supply was taken out", "not_known no", on(small, out("supply"))),
    ("nobody knows the supply's design", "not_known", on(small, untold("supply"))),
    # ------------------------------------------------ answers of other parts
    ("a rail of the board is near zero", "no", on(small, says("rails", "shorted", "board"))),
    ("a rail of a card is near zero", "no", on(small, says("rails", "shorted", "video"))),
    ("a card's rails were never measured", "not_known", on(small, lambda s, m: rails_unlooked(s, m["video"]))),
    ("a card's rails are proven, though the survey left them out", "yes", on(small, lambda s, m: s.say(m["video"], "rails", None))),
    ("a cell leaks on the board", "no", on(small, says("clock-supply", "leaking", "board"))),
    ("nobody looked for a cell", "not_known", on(small, unlooked("clock-supply", "board"))),
    ("a rechargeable cell that looks dry is told", "told not_known no", on(small, says("clock-supply", "rechargeable", "board"))),
    ("a soldered coin cell", "yes", on(small, says("clock-supply", "soldered-coin", "board"))),
    ("a board whose cell was taken out, and no residue", "yes told", on(small, says("clock-supply", "removed", "board"))),
    ("residue of a cell on the board", "no", on(small, says("leak-reach", "near", "board"))),
    ("tracks eaten by a cell", "no", on(small, says("leak-reach", "tracks-gone", "board"))),
    ("domed capacitors on the board", "no", on(small, says("electrolytics", "bulged", "board"))),
    ("a burst capacitor on a card", "no", on(small, says("electrolytics", "burst", "video"))),
    ("a capacitor knocked off the board", "no not_known", on(small, says("electrolytics", "missing", "board"))),
    ("a pinholed tantalum on a card", "no", on(small, says("tantalums", "burst", "video"))),
    ("a charred place conducts", "no", on(small, says("board-faces", "burnt", "board"))),
    ("a cracked board", "no not_known", on(small, says("board-faces", "cracked", "video"))),
    ("a chip the wrong way round melts", "no", on(small, says("socketed-chips", "reversed", "board"))),
    ("parts knocked off the board", "no not_known", on(small, says("parts-present", "missing", "board"))),
    ("a bent slot contact", "no not_known", on(small, says("sockets", "bent", "board"))),
    ("a spilt drink dried on the board", "no not_known", on(small, says("dirt", "spill", "board"))),
    ("rust on a card's bracket", "yes", on(small, says("shells", "rusty", "video"))),
    ("a bracket is missing", "yes told", on(small, says("bracket", "missing", "video"))),
    ("the video card's driver is still to find", "yes", on(small, says("driver", "missing", "video"))),
    ("a memory module failed its last test", "yes told", on(small, says("memory-result", "failed", "memory"))),
    ("the supply plug's wiring is not known", "not_known no", on(small, says("power-plug", "unknown", "board"))),
    ("board wired its maker's own way, supply the standard way", "no", on(small, says("power-plug", "own", "board"))),
    ("supply wired its maker's own way, board the standard way", "no", on(small, says("supply-plugs", "own", "supply"))),
    ("bent pins under a processor", "no not_known", on(small, says("chip-pins", "bent", "processor"))),
    ("a burnt processor", "no", on(small, says("die", "burnt", "processor"))),
    ("nobody read the voltage of a board whose socket knows one voltage", "yes told not_known", on(small, NO_VOLTAGE_READ)),
    ("nobody read the voltage of a board with several", "not_known", on(fast, NO_VOLTAGE_READ, no_core_setting)),
    ("the voltage setting could not be read", "not_known no", on(fast, says("voltage-jumpers", "unknown", "board"), no_core_setting)),
    ("the voltage is set wrongly", "no", on(fast, says("voltage-jumpers", "wrong", "board"))),
    ("the disk clicks: each start costs platters", "no not_known told", on(small, says("first-spin", "clicks", "disk"))),
    ("the disk's label is not photographed", "yes told", on(small, says("disk-label", "unrecorded", "disk"))),
    ("a bead on the disk's board has burst", "no", on(small, says("drive-electrolytics", "burst", "disk"))),
    ("a card keyed for another voltage", "no", on(fast, says("slot-key", "wrong", "video"))),
    ("the paste was cleaned off and not renewed", "not_known no told", on(fast, says("old-paste", "off", "processor"))),
    ("the cooler's clip is tired", "not_known no", on(fast, says("cooler-clip", "tired", "cooler"))),
    ("the cooler is made for another socket", "no not_known", on(fast, says("cooler-match", "wrong", "cooler"))),
    ("the cooler's fan does not turn", "no", on(fast, says("fan", "seized", "cooler"))),
    ("the processor needs a cooler and has none", "no", on(fast, says("cooler-with-it", "missing", "processor"))),
    ("a standoff where the board has no hole", "no", on("386", says("standoffs", "stray", "case"))),
    # ------------------------------------------------ later and corrected looks
    ("a later survey that says bulged holds", "no", on(small, surveyed("board", electrolytics="bulged"))),
    ("an earlier survey that said shorted is overtaken", "yes", on(small, surveyed("video", "2026-02-02", rails="shorted"))),
    ("a later survey of two answers leaves the others standing", "yes", on(small, surveyed("board", dirt="clean", shells="rusty"))),
    ("a slip of the pen is corrected", "yes", on(small, slip_corrected("video", "rails", "shorted"))),
    ("a survey dated after today has not happened", "not_known", on(small, lambda s, m: (
        lose_proof(s, m["video"], "rails-to-ground"), s.rows("survey", part=m["video"]["id"])[-1]["looked"].update(on=FUTURE)))),
    ("the correction is as sound as what it corrects", "yes", on(small, resurveyed("board"))),
    ("bulged in spring, recapped, seen sound in autumn", "yes", on(small, healed)),
    # ------------------------------------------------ findings
    ("an open burst tantalum", "no", on(small, finds("tantalum-burst", "video"))),
    ("an open leaked cell, slight", "no", on(small, finds("cell-leaked", "board", severity="slight"))),
    ("a leaked cell that was cured and came back", "no", on(small, lambda s, m: cured_then_returned(s, m["board"], "cell-leaked"))),
    ("an accepted grave finding is never a plain yes", "told not_known no", on(small, finds("burnt-place", "board", "accepted", "grave"))),
    ("a watched grave finding is never a plain yes", "told not_known no", on(small, finds("capacitors-bulged", "board", "watched", "grave", again_by="2027-01-01"))),
    ("an accepted slight finding that matters is told", "told not_known no", on(small, finds("capacitors-bulged", "video", "accepted", "slight"))),
    ("yellowed plastic holds nothing up", "yes", on("286", finds("yellowed", "case", severity="plain"))),
    ("a finding confirmed as cured long ago", "yes", on(small, lambda s, m: (
        row := s.finding(m["video"], "tantalum-burst", "open", on="2026-02-01"), s.look(row, "cured", on="2026-03-01"), s.look(row, "confirmed", on=LOOKED)))),
    ("a finding called cured by work that is still open", "no", on(small, cured_in_name)),
    ("a finding in own words, grave, on a board", "no not_known", on(small, finds("", "board", severity="grave", words="ticks when warm"))),
    ("a finding in own words, slight, is told", "told not_known", on(small, finds("", "board", severity="slight", words="odd stain"))),
    # ------------------------------------------------ work
    ("open work that holds power", "no", on(small, work("video", state="open", hold="power"))),
    ("waiting work that holds power", "no", on(small, work("board", state="waiting", hold="power"))),
    ("half-done work that holds power", "no", on(small, work("disk", state="doing", hold="power"))),
    ("half-done work on the board that holds readiness", "not_known no", on(small, work("board", state="doing", hold="ready", touches="electrical"))),
    ("open work that holds looks", "yes", on(small, work("video", state="open", hold="looks"))),
    ("open work that holds readiness", "yes told", on(small, work("disk", state="open", hold="ready"))),
    ("waived work that held power is told", "told not_known", on(small, work("board", state="waived", hold="power"))),
    ("waived work that held looks", "yes", on(small, work("board", state="waived", hold="looks"))),
    ("the board was soldered since it was measured", "not_known", on(small, work("board", "new socket", touches="electrical"))),
    ("the board was soldered, and measured since", "yes", on(small, work("board", "new socket", on="2026-11-20", touches="electrical"), tests("board", "rails-to-ground"))),
    ("a card was recapped by rule since it was measured", "not_known no", on(small, ruled("video", "capacitors-bulged", "recap", "done"))),
    ("a card's bracket was straightened since", "yes", on(small, ruled("video", "bracket-bent", "straighten-bracket", "done"))),
    ("rule's work failed", "no", on(small, ruled("video", "tantalum-burst", "replace-tantalum", "failed"))),
    ("rule's work waived while its finding is open: never silent", "told not_known no", on(small, ruled("board", "capacitors-bulged", "recap", "waived"))),
    # ------------------------------------------------ capacitors
    ("a logged capacitor is reversed", "no", on(small, cap("board", "reversed"))),
    ("a logged capacitor was sound and is now leaking", "no", on(small, cap("video", "sound", then="leaking"))),
    ("a logged capacitor at the processor is out of limits", "no not_known", on(small, cap("board", "out_of_limits", "processor_supply"))),
    ("a bulged capacitor was replaced before the board was measured", "yes", on(small, cap("board", "bulged", then="sound", replaced="1000 µF 16 V", day=WORKED, on="2026-05-05"))),
    ("a capacitor of the board was replaced since it was measured", "not_known", on(small, cap("board", "bulged", then="sound", replaced="1000 µF 16 V"))),
    ("a capacitor of the supply was replaced since its load test", "not_known", on(small, cap("supply", "bulged", "supply_output", then="sound", replaced="1000 µF 16 V"))),
    # ------------------------------------------------ readings
    ("the machine's +5 V at 5.5 V", "no", on(small, machine_reads("+5 V rail", 5.5, "V"))),
    ("the machine's +5 V at 5.1 V", "yes", on(small, machine_reads("+5 V rail", 5.1, "V"))),
    ("the machine's +12 V at 12 800 mV", "no", on(small, machine_reads("+12 V rail", 12800, "mV"))),
    ("+5 V of the board 0.4 ohm to ground", "no", on(small, reads("board", "+5 V to ground, unpowered", 0.4, "Ω"))),
    ("+12 V of the board 2 kΩ to ground", "yes", on(small, reads("board", "+12 V to ground, unpowered", 2, "kΩ"))),
    ("a wrong reading, corrected", "yes", on(small, wrong_then_right)),
    ("the coin cell at 1.1 V is told", "told", on(small, reads("board", "cell", 1.1, "V"))),
    ("the coin cell at 3.0 V", "yes", on(small, reads("board", "cell", 3.0, "V"))),
    ("an older bad reading, overtaken by a later good one", "yes", on(small, reads("supply", "+5 V rail", 5.8, "V", on="2026-05-05"), reads("supply", "+5 V rail", 5.02, "V"))),
    # ------------------------------------------------ proofs of other parts and of the machine
    ("the board's rails failed when they were measured", "no", on(small, tests("board", "rails-to-ground", "failed"))),
    ("the board's rails passed with a figure of half an ohm", "no", on(small, lambda s, m: proof_figure(s, m["board"], "rails-to-ground", "+5 V to ground, unpowered", 0.5, "ohm"))),
    ("the board did not start with known-good parts", "not_known no told", on(small, tests("board", "boot", "failed"))),
    ("the board's boot test is stale, and nothing was done to it", "yes", on(small, moved("board", "boot", "2023-05-05"))),
    ("the memory test was never run: power is not what it asks about", "yes", on(small, lose("memory", "memory-test"))),
    ("the disk's surface was never read", "yes", on(small, lose("disk", "surface-read"))),
    ("the look-over found a plug the wrong way round", "no", on(small, machine_tests("look-over", "failed"))),
    ("the half hour ended with a smell", "no not_known", on(small, machine_tests("settles", "failed"))),
    ("the cooler's fan failed its hour", "no not_known", on(fast, tests("cooler", "fan-run", "failed"))),
    # ------------------------------------------------ events
    ("smoke, and the case is open", "no", on(small, fault("smoke at the back"))),
    ("a smell, on a part", "no", on(small, fault("a burnt smell", "video"))),
    ("no picture, and the case is open", "told not_known no", on(small, fault("no picture"))),
    ("smoke, and its cause was found", "yes told", on(small, fault("smoke at the back", state="found"))),
    ("smoke, and it was given up", "no", on(small, fault("smoke at the back", state="given_up"))),
    ("the last power-on was stopped", "no not_known", on(small, switched("stopped", "it went off by itself"))),
    ("the last power-on was stopped for smoke", "no", on(small, switched("stopped", "smoke"))),
    ("the last power-on was faulty", "told not_known no", on(small, switched("faulty", "no sound"))),
    ("an older power-on was stopped, the last went well", "yes", on(small, switched("stopped", "fan stood", "2026-11-01"), switched("well", "all fine"))),
    ("the board is kept apart", "no", on(small, kept_apart("board"))),
    ("the video card is lent out", "no not_known", on(small, hands("video", "lent"))),
    ("the video card came back before it was surveyed", "yes", on(small, hands("video", "lent", "came_back", day="2026-01-05"))),
    ("the disk was bought", "yes", on(small, hands("disk", "bought", day="2026-01-05"))),
    ("the disk is borrowed, and here", "yes", on(small, hands("disk", "borrowed", day="2026-01-05"))),
    ("the board is scrapped", "no not_known", on(small, hands("board", "scrapped"))),
    ("a bad card was taken out", "yes", on(small, says("rails", "shorted", "video"), out("video"))),
    # ------------------------------------------------ fit
    ("a card for a bus that the board has not", "no", on(small, add("sound_card", "mca-16"))),
    ("an 8-bit card in a 16-bit slot", "yes", on(small, add("sound_card", "isa-8"))),
    ("a universal card in a 5 V slot", "yes", on(fast, add("network_card", "pci-universal", {"slot-key": "right"}))),
    ("a 3.3 V card in a 5 V slot", "no", on(fast, plug("video", "needs", "pci-5v", "pci-3.3v"))),
    ("a 1.5 V AGP card in a 3.3 V slot", "no", on("slot 1", plug("video", "needs", "agp-universal", "agp-1.5v"))),
    ("a fourth and fifth card in four slots with one taken", "no", on(small, *[add("network_card", "isa-16") for _ in range(4)])),
    ("three more cards in four slots with one taken", "yes", on(small, *[add("network_card", "isa-16") for _ in range(3)])),
    ("a Slot A cartridge in Slot 1", "no", on("slot 1", plug("processor", "needs", "slot-1", "slot-a"))),
    ("a Socket 7 processor in a Socket 5 board", "no", on(fast, plug("board", "offers", "socket-7", "socket-5"))),
    ("a Socket 5 processor in a Socket 7 board, volts fitting", "yes", on(fast, plug("processor", "needs", "socket-7", "socket-5"))),
    ("an ATX supply on an AT board", "no", on(small, plug("supply", "offers", "at-p8p9", "atx-20"))),
    ("a 20-pin board on a 24-pin supply", "yes", on("slot 1", plug("supply", "offers", "atx-20", "atx-24"))),
    ("a planned card without a slot", "no not_known", on(small, add("sound_card", "mca-16", planned=True))),
    ("a planned card that fits", "yes", on(small, add("sound_card", "isa-8", planned=True))),
    ("nobody told what a card plugs into", "not_known", on(small, plug("video", "needs", "isa-16"))),
    ("nobody knows the design of a card", "not_known", on(small, untold("video"))),
    ("nobody told what a card draws", "not_known", on(small, lose_draw("video"))),
    ("a cable has no design and draws nothing", "yes", on(small, sound_cable)),
    ("no board", "not_known no", on(small, out("board"))),
    ("the board is only planned", "not_known no", on(small, lambda s, m: only_planned(s, m, "board"))),
    # ------------------------------------------------ loads
    ("twenty-five amperes on a rail of twenty", "no", on(small, figure("video", "current_5v_a", 21.5))),
    ("nine amperes of +12 V on a rail of eight", "no", on(small, figure("disk", "current_12v_a", 9))),
    ("the label leaves room", "yes", on(small, figure("video", "current_5v_a", 6))),
    ("each rail within its label, and the watts in all beyond it", "no", on(small, figure("supply", "power_w", 30))),
    ("3.3 V and 5 V each within, together beyond", "no", on("slot 1", figure("supply", "combined_3v3_5v_w", 50))),
    ("less than the least load", "not_known no", on(small, figure("supply", "least_5v_a", 12))),
    ("no rating told for the +5 V", "not_known", on(small, figure("supply", "rating_5v_a"))),
    # ------------------------------------------------ volts, clocks, coolers
    ("the board cannot give the core voltage", "no", on(fast, figure("board", "core_voltage_v", 3.3, 3.5))),
    ("2.8 V processor set to 3.3 V", "no", on(fast, sets("board", "core voltage", "3.3 V"))),
    ("2.8 V processor set to 2.2 V", "no", on(fast, sets("board", "core voltage", "2.2 V"))),
    ("set with a comma and in capitals", "no", on(fast, sets("board", "CORE VOLTAGE", "3,3 V"))),
    ("set wrongly once, rightly since", "yes", on(fast, sets("board", "core voltage", "3.3 V", on="2026-01-01"))),
    ("what it is set to was guessed, nothing was read", "not_known", on(fast, NO_VOLTAGE_READ, no_core_setting, sets("board", "core voltage", "2.8 V", source="guess"))),
    ("the core voltage of the processor is not told", "not_known", on(fast, figure("processor", "core_voltage_v"))),
    ("a range of volts that holds the setting", "yes", on(fast, figure("processor", "core_voltage_v"), figure("processor", "core_voltage_least_v", 2.7), figure("processor", "core_voltage_most_v", 2.9))),
    ("a range of volts that does not", "no", on(fast, figure("processor", "core_voltage_v"), figure("processor", "core_voltage_least_v", 2.1), figure("processor", "core_voltage_most_v", 2.3))),
    ("a voltage module that gives what the processor wants", "yes", on(fast, figure("board", "core_voltage_v"), no_core_setting, module(2.8))),
    ("a voltage module that gives too much", "no", on(fast, figure("board", "core_voltage_v"), no_core_setting, module(3.3))),
    ("bus clock of three times what the board is made for", "no not_known told", on(fast, sets("board", "bus clock", "200"))),
    ("bus clock below what the board is made for", "yes", on(fast, sets("board", "bus clock", "60 MHz"))),
    ("no cooler on a Socket 7 processor, and nobody says there is one", "no", on(fast, out("cooler"), unlooked("cooler-with-it", "processor"))),
    ("no cooler on a 386, which wants none", "yes", on(small, says("cooler-with-it", "not-needed", "processor"))),
    ("the cooler is planned and not fitted", "not_known no", on(fast, lambda s, m: only_planned(s, m, "cooler"))),
    # ------------------------------------------------ parts alone
    ("a board with a leaking cell, on the bench", "no", alone("mainboard", "at-p8p9", but={"clock-supply": "leaking"}, offers="pga-132")),
    ("a board whose rails nobody measured, on the bench", "not_known", alone("mainboard", "at-p8p9", unlooked_one := (lambda s, m: s.say(m["it"], "rails", None)), offers="pga-132")),
    ("a card with a burst tantalum, on the bench", "no", alone("video_card", "isa-16", but={"tantalums": "burst"})),
    ("a card whose rails nobody measured, on the bench", "not_known", alone("network_card", "isa-16", unlooked_one, but={"clock-supply": "nothing"})),
    ("a card that was soldered since it was measured", "not_known", alone("video_card", "isa-16", work("it", touches="electrical"))),
    ("a card that smells burnt under a fault case", "no", alone("video_card", "isa-16", fault("smells burnt", "it"))),
    ("a burnt processor, on the bench", "no", alone("processor", "pga-132", but={"die": "burnt"})),
    ("a card kept apart", "no", alone("video_card", "isa-16", kept_apart("it"))),
    ("a card with open work that holds power", "no", alone("video_card", "isa-16", work("it", state="open", hold="power"))),
    ("a card whose last bench finding is looks only", "yes", alone("video_card", "isa-16", finds("bracket-bent", "it", severity="slight"))),
    ("a disk whose small capacitors leak", "no", alone("hard_disk", "ide-40 drive-4pin", but={"drive-electrolytics": "leaking"})),
    ("a monitor with a cracked tube", "no", alone("monitor", "vga-15", but={"tube": "cracked"})),
    ("a monitor whose suppression capacitors nobody looked at", "not_known", alone("monitor", "vga-15", lambda s, m: s.say(m["it"], "suppression", None))),
]  # fmt: skip


def build(shop, expectations=EXPECTATIONS):
    """Writes the subjects: [(sentence, right answers, "machine" or "part", name or tag)]."""
    shop.earlier_work = 0
    rows = []
    for sentence, right, write in expectations:
        subject = write(shop)
        rows.append((sentence, right.split(), "part" if "tag" in subject else "machine", subject.get("tag") or subject["name"]))
    return rows
