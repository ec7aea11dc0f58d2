"""Named facts, each of which worsens exactly one thing about a sound machine: none may leave the plain yes standing.

Each row is (fact, era of the sound machine, what is owed at least, function that writes the fact into the shop). Owed is
"no", "not_known", or "remark" (a yes that says so).
"""

from power_rules.workshops import LATER, PROVEN, WORKED, sound_machine

STALE, FUTURE, SOON = "2024-03-03", "2027-03-03", "2026-11-27"


def last_survey(shop, part):
    """The last survey of a part."""
    return shop.rows("survey", part=part["id"])[-1]


def proof(shop, part, test):
    """The proof of a test on a part."""
    return shop.rows("proof", part=part["id"], test=test)[-1]


def lose_proof(shop, part, test):
    """Takes a proof away, with its figures."""
    row = proof(shop, part, test)
    for reading in shop.rows("reading", proof=row["id"]):
        shop.drop("reading", reading)
    shop.drop("proof", row)


def rails_unlooked(shop, part):
    """Nobody measured the rails: neither in the survey nor as a proof."""
    shop.say(part, "rails", None)
    if shop.rows("proof", part=part["id"], test="rails-to-ground"):
        lose_proof(shop, part, "rails-to-ground")


def proof_figure(shop, part, test, quantity, value, unit):
    """One figure of a passed proof, out of bounds."""
    row = proof(shop, part, test)
    for reading in shop.rows("reading", proof=row["id"], quantity=quantity):
        shop.drop("reading", reading)
    shop.reading(part, quantity, value, unit, proof=row)


def no_draw(shop, part):
    """Nobody told what a part draws."""
    for rail in ("3v3", "5v", "12v", "minus5v", "minus12v", "standby"):
        shop.set_figure(part, f"current_{rail}_a")


def undesigned(shop, part):
    """Nobody knows what design a part is of."""
    part["design"], part["name"] = None, "a part of unknown make"


def taken_out(shop, m, name):
    """A part is taken out of the machine."""
    m.fitting(name)["removed"] = shop.moment(LATER)


def only_planned(shop, m, name):
    """A part is meant for the machine, and not in it."""
    fitting = m.fitting(name)
    shop.drop("fitting", fitting)
    shop.add("placement", machine=m.record["id"], role=fitting["role"], part=m[name]["id"], pinned=True,
             planned=shop.moment(LATER), reason="")  # fmt: skip


def never_there(shop, m, name):
    """A part never was in the machine."""
    fitting = m.fitting(name)
    shop.drop("fitting", fitting)
    for role in shop.rows("role", id=fitting["role"]):
        shop.drop("role", role)


def no_cooler(shop, m):
    """The processor has no cooler, and nobody says that it has."""
    never_there(shop, m, "cooler")
    shop.say(m["processor"], "cooler-with-it", None)


def corrected_survey(shop, part):
    """The sound survey is corrected by one that leaves the rails out."""
    old = last_survey(shop, part)
    row = shop.survey(part, LATER, supersedes=old["id"])
    row["answers"] = [a for a in row["answers"] if a["question"] != "rails"]
    if shop.rows("proof", part=part["id"], test="rails-to-ground"):
        lose_proof(shop, part, "rails-to-ground")


def later_survey(shop, part, question, given):
    """A later survey answers one question worse."""
    shop.survey(part, LATER, sound=False, but={question: given})


def equal_moment(shop, part, test, **fields):
    """Work in own words at the very moment of a proof."""
    row = shop.work(part, "resoldered an output", on=PROVEN, **fields)
    row["changed"] = dict(proof(shop, part, test)["run"])


def unnumbered(shop, part, test):
    """Work on the day of a proof, without a running number."""
    row = shop.work(part, "resoldered an output", on=PROVEN)
    row["changed"] = {"on": PROVEN, "sequence": 0}


def vague_day(shop, part):
    """Work of the month in which the proof was run: nobody can tell which was first."""
    shop.work(part, "resoldered an output", on=PROVEN[:7])


def cured_then_returned(shop, part, what):
    """A finding that was cured and came back."""
    row = shop.finding(part, what, "open", on="2026-05-01")
    shop.look(row, "cured", on="2026-06-01")
    shop.look(row, "returned", on=LATER)


def rule_work(shop, part, what, rule, state, finding="open"):
    """A finding with the work of its rule."""
    row = shop.finding(part, what, finding, on="2026-11-20")
    work = shop.work(part, rule=rule, finding=row, state=state, hold="power", on=LATER)
    if state == "done":
        shop.look(row, "cured", on=LATER, work=work)


def capacitor_later(shop, part, state, **fields):
    """A capacitor that was sound when it was logged, looked at again."""
    shop.capacitor_look(shop.capacitor(part), state, **fields)


def two_supplies_plug(shop, m):
    """An ATX supply for an AT board."""
    shop.set_connector(m["supply"], "offers", "at-p8p9", "atx-20")


def not_applied(question, part_name):
    """A function that answers "does not apply" where the kind always has it."""

    def write(shop, m):
        part = m[part_name]
        if question == "rails":
            rails_unlooked(shop, part)
        if question == "earth":
            lose_proof(shop, part, "earth-continuity")
        shop.say(part, question, "does_not_apply", "I think not")

    return write


def unlooked(question, part_name, given=None):
    """A function that leaves a question unanswered, or answers that nobody looked or could tell."""

    def write(shop, m):
        part = m[part_name]
        if question == "rails":
            rails_unlooked(shop, part)
        if question == "earth":
            lose_proof(shop, part, "earth-continuity")
        shop.say(part, question, given)

    return write


def says(question, given, part_name, **fields):
    """A function that answers a question badly."""
    return lambda s, m: s.say(m[part_name], question, given, **fields)


def finds(what, part_name, state="open", severity="plain", **fields):
    """A function that adds a finding."""
    return lambda s, m: s.finding(m[part_name], what, state, severity, **fields)


MUTATIONS = [
    # survey answers
    ("answer: a rail is shorted", "socket 7", "no", says("rails", "shorted", "video")),
    ("answer: rails clear, yet its figure is 0.4 ohm", "socket 7", "no", says("rails", "clear", "sound", figure=0.4)),
    ("answer: leaking cell", "286", "no", says("clock-supply", "leaking", "board")),
    ("answer: rechargeable cell, looks dry", "386", "remark", says("clock-supply", "rechargeable", "board")),
    ("answer: residue under chips", "286", "no", says("leak-reach", "under-chips", "board")),
    ("answer: bulged electrolytics", "slot 1", "no", says("electrolytics", "bulged", "board")),
    ("answer: electrolytics of a bad age", "socket 370", "remark", says("electrolytics", "bad-age", "board")),
    ("answer: burst tantalum", "xt", "no", says("tantalums", "burst", "controller")),
    ("answer: supply plug not known", "286", "not_known", says("power-plug", "unknown", "board")),
    ("answer: board wired its maker's own way, supply the standard one", "slot 1", "no", says("power-plug", "own", "board")),
    ("answer: core voltage set wrongly", "486", "no", says("voltage-jumpers", "wrong", "board")),
    ("answer: burnt place", "386", "no", says("board-faces", "burnt", "sound")),
    ("answer: chip the wrong way round", "xt", "no", says("socketed-chips", "reversed", "board")),
    ("answer: bent contacts in a socket", "socket 7", "no", says("sockets", "bent", "board")),
    ("answer: a liquid dried on the board", "486", "no", says("dirt", "spill", "board")),
    ("answer: card keyed for another voltage", "slot 1", "no", says("slot-key", "wrong", "video")),
    ("answer: bent pins of the processor", "socket 370", "no", says("chip-pins", "bent", "processor")),
    ("answer: burnt processor", "socket 7", "no", says("die", "burnt", "processor")),
    ("answer: pin 1 of the coprocessor not to be found", "386", "not_known", says("orientation", "gone", "coprocessor")),
    ("answer: processor needs a cooler and has none", "socket 7", "no", says("cooler-with-it", "missing", "processor")),
    ("answer: cooler made for another socket", "slot 1", "no", says("cooler-match", "wrong", "cooler")),
    ("answer: the cooler's fan is seized", "socket 370", "no", says("fan", "seized", "cooler")),
    ("answer: stray standoff", "486", "no", says("standoffs", "stray", "case")),
    ("answer: mains selector on the wrong voltage", "286", "no", says("selector", "wrong", "supply")),
    ("answer: cracked suppression capacitor", "xt", "no", says("suppression", "cracked", "supply")),
    ("answer: mains cord damaged", "386", "no", says("mains-cord", "damaged", "supply")),
    ("answer: earth open", "slot 1", "no", says("earth", "open", "supply")),
    ("answer: bare panel switch", "286", "no", says("panel-switch", "bare", "supply")),
    ("answer: something rattles in the supply", "486", "no", says("smell-and-rattle", "rattle", "supply")),
    ("answer: scorched plugs", "socket 7", "no", says("plugs", "scorched", "supply")),
    ("answer: polarity of the flash adapter's feed not known", "486", "not_known", says("adapter-power", "unknown", "flash")),
    ("answer: small capacitors of a drive leak", "386", "no", says("drive-electrolytics", "leaking", "optical")),
    ("answer: a later survey says bulged", "socket 370", "no", lambda s, m: later_survey(s, m["board"], "electrolytics", "bulged")),
    ("answer: a later survey could not tell about the rails", "286", "not_known", lambda s, m: (
        lose_proof(s, m["video"], "rails-to-ground"), later_survey(s, m["video"], "rails", "could_not_tell"))),
    # nobody looked
    ("not looked: cells", "286", "not_known", unlooked("clock-supply", "board")),
    ("not looked, said so: cells", "socket 7", "not_known", unlooked("clock-supply", "board", "not_looked")),
    ("not looked: suppression capacitors", "386", "not_known", unlooked("suppression", "supply")),
    ("could not tell: suppression capacitors", "slot 1", "not_known", unlooked("suppression", "supply", "could_not_tell")),
    ("not looked: voltage setting", "486", "not_known", lambda s, m: (
        s.say(m["board"], "voltage-jumpers", None),
        [s.drop("setting", r) for r in s.rows("setting", part=m["board"]["id"], name="core voltage")])),
    ("not looked: rails of the board", "socket 7", "not_known", unlooked("rails", "board")),
    ("not looked: rails of a card", "286", "not_known", unlooked("rails", "network")),
    ("not looked: electrolytics of the board", "socket 370", "not_known", unlooked("electrolytics", "board")),
    ("not looked: mains selector", "xt", "not_known", unlooked("selector", "supply")),
    ("not looked: earth", "486", "not_known", unlooked("earth", "supply")),
    ("not looked: which supply plug", "386", "not_known", unlooked("power-plug", "board")),
    ("never surveyed: the supply", "slot 1", "not_known", lambda s, m: s.drop("survey", last_survey(s, m["supply"]))),
    ("never surveyed: the board", "286", "not_known", lambda s, m: s.drop("survey", last_survey(s, m["board"]))),
    ("survey dated after today", "socket 7", "not_known", lambda s, m: (
        lose_proof(s, m["sound"], "rails-to-ground"), last_survey(s, m["sound"])["looked"].update(on=FUTURE))),
    ("survey corrected by one without the rails", "386", "not_known", lambda s, m: corrected_survey(s, m["video"])),
    ("does not apply: rails of a board", "486", "not_known", not_applied("rails", "board")),
    ("does not apply: suppression capacitors of a supply", "286", "not_known", not_applied("suppression", "supply")),
    ("does not apply: earth of a supply", "socket 370", "not_known", not_applied("earth", "supply")),
    # capacitors
    *[
        (f"capacitor logged as {state}", era, "not_known" if state in ("missing", "out_of_limits") else "no",
         lambda s, m, state=state: s.capacitor(m["board"], state, "processor_supply"))
        for state, era in zip("bulged leaking burst cracked missing reversed out_of_limits".split(),
                              ["socket 7", "slot 1", "486", "286", "socket 370", "xt", "386"])
    ],
    ("capacitor looked at again: leaking", "socket 7", "no", lambda s, m: capacitor_later(s, m["video"], "leaking")),
    ("capacitor of the supply looked at again: out of limits", "286", "not_known", lambda s, m: capacitor_later(s, m["supply"], "out_of_limits")),
    ("capacitor measured at a fifth of what is printed", "slot 1", "not_known", lambda s, m: capacitor_later(s, m["board"], "sound", uf=200)),
    ("capacitor of the supply replaced after its load test", "386", "not_known", lambda s, m: s.capacitor_look(
        s.capacitor(m["supply"], "bulged", "supply_output", on=WORKED), "sound", replaced_by="1000 µF 16 V")),
    # readings
    ("reading: +5 V rail at 5.6 V", "486", "no", lambda s, m: s.reading(m["supply"], "+5 V rail", 5.6, "V", on=LATER)),
    ("reading on the machine: +12 V rail at 10.6 V", "socket 7", "no", lambda s, m: s.reading(None, "+12 V rail", 10.6, "V", on=LATER, machine=m.record)),
    ("reading: -12 V rail at -9 V", "286", "no", lambda s, m: s.reading(m["supply"], "-12 V rail", -9.0, "V", on=LATER)),
    ("reading: +5 V rail at 5600 mV", "xt", "no", lambda s, m: s.reading(m["supply"], "+5 V rail", 5600, "mV", on=LATER)),
    ("reading: +5 V to ground 0.3 ohm", "386", "no", lambda s, m: s.reading(m["board"], "+5 V to ground, unpowered", 0.3, "Ω", on=LATER)),
    ("reading: +12 V to ground 0.2 ohm on a card", "slot 1", "no", lambda s, m: s.reading(m["video"], "+12 V to ground, unpowered", 0.2, "ohm", on=LATER)),
    ("reading: cell at 1.2 V", "486", "remark", lambda s, m: s.reading(m["board"], "cell", 1.2, "V", on=LATER)),
    # proofs
    ("proof: no load test", "socket 7", "not_known", lambda s, m: lose_proof(s, m["supply"], "load-test")),
    ("proof: load test failed", "486", "no", lambda s, m: s.proof(m["supply"], "load-test", "failed", on=LATER)),
    ("proof: load test undecided", "286", "not_known", lambda s, m: s.proof(m["supply"], "load-test", "undecided", on=LATER)),
    ("proof: load test stale", "xt", "not_known", lambda s, m: proof(s, m["supply"], "load-test")["run"].update(on="2025-11-20")),
    ("proof: load test of a year long gone", "slot 1", "not_known", lambda s, m: proof(s, m["supply"], "load-test")["run"].update(on=STALE)),
    ("proof: load test dated after today", "386", "not_known", lambda s, m: proof(s, m["supply"], "load-test")["run"].update(on=FUTURE)),
    ("proof: load test of an unknown day", "socket 370", "not_known", lambda s, m: proof(s, m["supply"], "load-test")["run"].update(on="")),
    ("proof: load test with its own +5 V at 5.5 V", "socket 7", "not_known", lambda s, m: proof_figure(s, m["supply"], "load-test", "+5 V rail", 5.5, "V")),
    ("proof: rails to ground failed", "286", "no", lambda s, m: s.proof(m["board"], "rails-to-ground", "failed", on=LATER)),
    ("proof: rails to ground passed on 0.5 ohm", "486", "no", lambda s, m: proof_figure(s, m["board"], "rails-to-ground", "+5 V to ground, unpowered", 0.5, "ohm")),
    ("proof: earth continuity failed", "386", "no", lambda s, m: s.proof(m["supply"], "earth-continuity", "failed", on=LATER)),
    ("proof: start with known-good parts failed", "slot 1", "remark", lambda s, m: s.proof(m["board"], "boot", "failed", on=LATER)),
    ("proof: fan of the cooler failed its hour", "socket 370", "no", lambda s, m: s.proof(m["cooler"], "fan-run", "failed", on=LATER)),
    ("proof: look-over of the machine failed", "xt", "no", lambda s, m: s.proof(None, "look-over", "failed", on=LATER, machine=m.record)),
    ("proof: half an hour after standing failed", "socket 7", "not_known", lambda s, m: s.proof(None, "settles", "failed", on=LATER, machine=m.record)),
    # work
    ("work done on the supply after its load test, by rule", "286", "not_known", lambda s, m: rule_work(s, m["supply"], "capacitors-bulged", "recap-supply", "done")),
    ("work done on the supply after its load test, nobody said what it touched", "486", "not_known", lambda s, m: s.work(m["supply"], "tidied inside", on=LATER)),
    ("work done on the supply after its load test, electrical", "xt", "not_known", lambda s, m: s.work(m["supply"], "new inlet", on=LATER, touches="electrical")),
    ("work at the very moment of the load test", "386", "not_known", lambda s, m: equal_moment(s, m["supply"], "load-test")),
    ("work on the day of the load test, without a number", "socket 7", "not_known", lambda s, m: unnumbered(s, m["supply"], "load-test")),
    ("work in the month of the load test", "slot 1", "not_known", lambda s, m: vague_day(s, m["supply"])),
    ("work done on the board since it was measured: recap", "socket 370", "not_known", lambda s, m: rule_work(s, m["board"], "capacitors-bulged", "recap", "done")),
    ("work done on a card since it was measured, own words", "486", "not_known", lambda s, m: s.work(m["video"], "resoldered a corner", on=LATER)),
    ("work open that holds power", "286", "no", lambda s, m: s.work(m["board"], "see to the odd wire", state="open", hold="power", on=LATER)),
    ("work waiting that holds power", "386", "no", lambda s, m: s.work(m["supply"], "see to the odd wire", state="waiting", hold="power", on=LATER)),
    ("work being done that holds power", "socket 7", "no", lambda s, m: s.work(m["video"], "see to the odd wire", state="doing", hold="power", on=LATER)),
    ("work failed that holds power", "slot 1", "no", lambda s, m: s.work(m["board"], "see to the odd wire", state="failed", hold="power", on=LATER)),
    ("work waived that held power", "486", "remark", lambda s, m: s.work(m["board"], "see to the odd wire", state="waived", hold="power", on=LATER)),
    ("work half done on the board that holds readiness", "socket 370", "not_known", lambda s, m: s.work(m["board"], "new socket", state="doing", hold="ready", touches="electrical", on=LATER)),
    ("work by rule open: a burst tantalum", "xt", "no", lambda s, m: rule_work(s, m["controller"], "tantalum-burst", "replace-tantalum", "open")),
    ("work by rule waived, its finding accepted", "286", "remark", lambda s, m: rule_work(s, m["board"], "capacitors-bulged", "recap", "waived", "accepted")),
    # findings
    ("finding open: shorted rail", "socket 7", "no", finds("rail-shorted", "sound")),
    ("finding open, slight: bulged capacitors", "socket 370", "no", finds("capacitors-bulged", "board", severity="slight")),
    ("finding watched, grave: burnt place", "486", "remark", finds("burnt-place", "board", "watched", "grave", again_by="2027-06-01")),
    ("finding watched, and the day to look again is past", "386", "remark", finds("burnt-place", "board", "watched", "grave", on="2026-06-01", again_by="2026-08-01")),
    ("finding accepted, grave: burst tantalum", "xt", "remark", finds("tantalum-burst", "video", "accepted", "grave")),
    ("finding accepted, slight: bulged capacitors", "slot 1", "remark", finds("capacitors-bulged", "board", "accepted", "slight")),
    ("finding returned: leaked cell", "286", "no", lambda s, m: cured_then_returned(s, m["board"], "cell-leaked")),
    ("finding in own words, grave", "socket 7", "not_known", finds("", "board", severity="grave", words="crackles when bent")),
    ("finding in own words, plain", "slot 1", "remark", finds("", "supply", severity="plain", words="hums more than it did")),
    ("finding open: cooler clip tired", "socket 370", "not_known", finds("clip-tired", "cooler")),
    ("finding open: capacitors of a bad age", "386", "remark", finds("capacitors-suspect", "board")),
    # events
    ("kept apart: the board leaks", "286", "no", lambda s, m: m["board"].update(quarantine="leaks", quarantined=LATER)),
    ("kept apart: a card", "486", "no", lambda s, m: m["sound"].update(quarantine="leaks", quarantined=LATER)),
    ("fault open on the machine: smoke", "socket 7", "no", lambda s, m: s.fault("smoke from the left side", machine=m.record)),
    ("fault open on a part: smells burnt", "xt", "no", lambda s, m: s.fault("smells burnt", part=m["video"])),
    ("fault open on a part: too hot to touch", "slot 1", "no", lambda s, m: s.fault("too hot to touch", part=m["processor"])),
    ("fault open: no picture", "286", "remark", lambda s, m: s.fault("no picture", machine=m.record)),
    ("fault given up: smoke", "386", "no", lambda s, m: s.fault("smoke", part=m["supply"], state="given_up")),
    ("last power-on stopped", "socket 370", "not_known", lambda s, m: s.switch(m.record, "stopped", "the supply clicked and went off", on=LATER)),
    ("last power-on stopped for smoke", "486", "no", lambda s, m: s.switch(m.record, "stopped", "smoke", on=LATER)),
    ("last power-on faulty", "socket 7", "remark", lambda s, m: s.switch(m.record, "faulty", "no sound", on=LATER)),
    ("lent out: the supply", "286", "not_known", lambda s, m: s.custody(m["supply"], "lent")),
    ("sold: the video card", "slot 1", "not_known", lambda s, m: s.custody(m["video"], "sold")),
    ("scrapped: the board", "386", "not_known", lambda s, m: s.custody(m["board"], "scrapped")),
    # what is in the machine
    ("no supply", "socket 7", "not_known", lambda s, m: never_there(s, m, "supply")),
    ("supply taken out", "486", "not_known", lambda s, m: taken_out(s, m, "supply")),
    ("supply only planned", "286", "not_known", lambda s, m: only_planned(s, m, "supply")),
    ("no board", "xt", "not_known", lambda s, m: never_there(s, m, "board")),
    ("no cooler where the design offers its place", "socket 7", "no", no_cooler),
    ("no cooler on a processor of a class that wants one", "slot 1", "no", no_cooler),
    ("nobody told of a cooler on a 486", "486", "not_known", no_cooler),
    ("cooler taken out", "socket 370", "not_known", lambda s, m: taken_out(s, m, "cooler")),
    ("a bad card planned for the machine", "386", "no", lambda s, m: s.plan(m.record, bad_card(s))),
    ("bad chip inside the board", "socket 7", "no", lambda s, m: bad_inside(s, m)),
    # designs
    ("design of a card not told", "286", "not_known", lambda s, m: undesigned(s, m["video"])),
    ("design of the supply not told", "slot 1", "not_known", lambda s, m: undesigned(s, m["supply"])),
    ("draw of the board not told", "486", "not_known", lambda s, m: no_draw(s, m["board"])),
    ("draw of a drive not told", "socket 7", "not_known", lambda s, m: no_draw(s, m["disk"])),
    ("more amperes on +5 V than on the label", "386", "no", lambda s, m: s.set_figure(m["supply"], "rating_5v_a", 6)),
    ("more amperes on +12 V than on the label", "slot 1", "no", lambda s, m: s.set_figure(m["supply"], "rating_12v_a", 1.5)),
    ("one part draws too much", "socket 7", "no", lambda s, m: s.set_figure(m["sound"], "current_12v_a", 8)),
    ("more than 3.3 V and 5 V may give together", "socket 370", "no", lambda s, m: s.set_figure(m["supply"], "combined_3v3_5v_w", 60)),
    ("more watts than on the label", "486", "no", lambda s, m: s.set_figure(m["supply"], "power_w", 50)),
    ("less than the least load", "xt", "not_known", lambda s, m: s.set_figure(m["supply"], "least_5v_a", 9)),
    ("rating of +12 V not told", "286", "not_known", lambda s, m: s.set_figure(m["supply"], "rating_12v_a")),
    ("-5 V wanted, and the supply has none", "386", "remark", lambda s, m: s.set_figure(m["supply"], "rating_minus5v_a")),
    ("an ATX supply on an AT board", "socket 7", "no", two_supplies_plug),
    ("a card for another bus", "486", "no", lambda s, m: s.set_connector(m["sound"], "needs", "isa-16", "mca-16")),
    ("an AGP card of another voltage", "slot 1", "no", lambda s, m: s.set_connector(m["video"], "needs", "agp-universal", "agp-1.5v")),
    ("a PCI card of another voltage", "socket 370", "no", lambda s, m: s.set_connector(m["network"], "needs", "pci-universal", "pci-3.3v")),
    ("a processor for another socket", "adapter", "no", lambda s, m: s.set_connector(m["processor"], "needs", "socket-370-fcpga", "socket-370-fcpga2")),
    ("memory of another type", "slot 1", "no", lambda s, m: s.set_connector(m["memory 1"], "needs", "dimm-168-sdram", "dimm-184-ddr")),
    ("too few slots of a kind", "486", "no", lambda s, m: [r.update(count=1) for r in s.rows("design_connector", design=s.own_design(m["board"])["id"], connector="vlb")]),
    ("the cooler's fan finds no plug", "socket 7", "not_known", lambda s, m: s.set_connector(m["board"], "offers", "fan-3")),
    ("the board tells no supply plug", "286", "not_known", lambda s, m: s.set_connector(m["board"], "needs", "at-p8p9")),
    ("the board cannot give the core voltage", "socket 7", "no", lambda s, m: s.set_figure(m["board"], "core_voltage_v", 3.2, 3.45)),
    ("the processor's core voltage not told", "socket 370", "not_known", lambda s, m: s.set_figure(m["processor"], "core_voltage_v")),
    # settings
    ("core voltage set too high", "486", "no", lambda s, m: s.setting(m["board"], "core voltage", "5 V", on=LATER)),
    ("core voltage set too high, other letters", "socket 7", "no", lambda s, m: s.setting(m["board"], "Core Voltage", "3.45", on=LATER)),
    ("core voltage set too high on the adapter", "adapter", "no", lambda s, m: s.setting(m["adapter"], "core voltage", "2.0 V", on=LATER)),
    ("bus clock set to three times", "socket 7", "not_known", lambda s, m: s.setting(m["board"], "bus clock", "200 MHz", on=LATER)),
    ("multiplier set to three times", "486", "not_known", lambda s, m: (s.set_figure(m["processor"], "multiplier"), s.setting(m["board"], "multiplier", "9x", on=LATER))),
]  # fmt: skip


def bad_card(shop):
    """A card whose rail is shorted."""
    design = shop.design("network_card", "Vantry", f"Bad {shop.tags}", "isa-8", "", {"current_5v_a": 0.2})
    part = shop.part("network_card", design)
    shop.survey(part, but={"rails": "shorted", "clock-supply": "nothing"})
    return part


def bad_inside(shop, m):
    """A burnt firmware chip that sits on the board and is not fitted by itself."""
    shop.drop("fitting", m.fitting("firmware"))
    m["firmware"]["inside"] = m["board"]["id"]
    shop.say(m["firmware"], "chip-body", "burnt")


def build(shop, mutations=MUTATIONS):
    """Writes the mutated machines, and one untouched machine of each era they need: [(fact, owed, before, after)]."""
    shop.earlier_work = 0
    before, rows = {}, []
    for number, (fact, era, owed, write) in enumerate(mutations):
        if era not in before:
            before[era] = sound_machine(shop, f"Untouched {shop.prefix}{era}", era)
        m = sound_machine(shop, f"Worsened {shop.prefix}{number}", era)
        write(shop, m)
        rows.append((fact, owed, before[era].name, m.name))
    return rows


