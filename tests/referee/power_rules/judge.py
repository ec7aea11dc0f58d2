"""A deliberately simple referee for one question: may power be applied? It knows the exchange document and nothing else.

    judge_machine(document, machine key, today) -> (verdict, reasons)
    judge_part(document, part key, today)       -> (verdict, reasons)

A verdict is "yes", "not_known" or "no"; a reason is (weight, part's tag or None, words). Whatever is against power counts,
and where two readings of a record are possible, the one that keeps the power off is taken.
"""

import re
from collections import defaultdict

from power_rules import names
from power_rules.names import NO, NOT_KNOWN, NOTHING, ORDER, REMARK

# ---------------------------------------------------------------- dates


def first_day(on):
    """The earliest day that a remembered date may mean."""
    return (on + "-01-01")[:10] if len(on) == 4 else (on + "-01") if len(on) == 7 else on or "0000-00-00"


def last_day(on):
    """The latest day that a remembered date may mean."""
    return on + "-12-31" if len(on) == 4 else on + "-31" if len(on) == 7 else on or "9999-99-99"


def surely_before(a, b):
    """Whether moment a is before moment b beyond doubt: by date, and on the same day by both running numbers."""
    if last_day(a["on"]) < first_day(b["on"]):
        return True
    return len(a["on"]) == 10 and a["on"] == b["on"] and 0 < a["sequence"] < b["sequence"]


def days_between(earlier, later):
    """Days from one full date to another."""
    from datetime import date

    return (date.fromisoformat(later) - date.fromisoformat(earlier)).days


def number_in(text):
    """The first number in a free text ("66 MHz", "2,9 V", "x3"), or None."""
    found = re.search(r"\d+(?:[.,]\d+)?", text)
    return float(found.group().replace(",", ".")) if found else None


# ---------------------------------------------------------------- words of danger

DANGER = re.compile(
    r"smok|smel[lt]|\bburn(t|ed|ing|s)?\b|scorch|charred|\bhot\b|hotter|\bfire\b|flame|spark|\bbang|crackl|\barc(s|ed|ing)?\b"
    r"|overheat|blown fuse|fuse (ble|blow)|short circuit|shorted|shock|tingl|melt|glow|burst",
    re.I,
)

RAIL = re.compile(r"(?P<sign>[+\-−–]?)\s*(?P<volts>3[.,]3|12|5)\s*V", re.I)
RIPPLE_MOST_MV = {"3.3": 50, "5": 50, "12": 120, "-12": 120, "-5": 100}
NEAR_ZERO_OHM = 2.0
LOW_OHM = 8.0
LOW_CELL_V = 2.8
TOO_HOT_C = 80.0


def core_slack(volts):
    """How far off a core voltage may be: processors of split voltage stand a tenth of a volt, others 5 %."""
    return min(0.05 * volts, 0.1) if volts < 3 else 0.05 * volts


def rail_of(quantity):
    """"3.3", "5", "12", "-5" or "-12" where the words name a rail, or None."""
    if re.search("standby|vsb", quantity, re.I):
        return "5"
    found = RAIL.search(quantity)
    if not found:
        return None
    return ("-" if found["sign"] in ("-", "−", "–") else "") + found["volts"].replace(",", ".")


def in_base_unit(value, unit):
    """A figure in volts, ohms or as it stands."""
    unit = unit.strip()
    if unit in ("mV", "mΩ", "mohm", "mOhm"):
        return value / 1000
    if unit[:1] in ("k", "K") and unit[1:].lower() in ("ω", "ω", "ohm", "v", "ohms"):
        return value * 1000
    if unit[:1] == "M" and unit[1:].lower() in ("ω", "ohm", "ohms"):
        return value * 1e6
    return value


def reading_subject(reading):
    """What a reading is about: two readings of the same subject are about the same thing."""
    words = reading["quantity"].lower()
    rail = rail_of(words)
    ohms = "ground" in words or "resistance" in words or reading["unit"].strip().lower().endswith(("ω", "ω", "ohm", "ohms"))
    if "cell" in words and not ohms:
        return ("cell", None)
    if rail and ohms:
        return ("ground", rail)
    if rail and "ripple" in words:
        return ("ripple", rail)
    if rail:
        return ("rail", rail)
    if "core" in words and reading["unit"].strip() in ("V", "mV"):
        return ("core", None)
    return ("other", words.strip())


def reading_weight(reading):
    """What a reading means by itself."""
    what, rail = reading_subject(reading)
    value = in_base_unit(reading["value"], reading["unit"])
    if what == "cell":
        return REMARK if value < LOW_CELL_V else NOTHING
    if what == "ground":
        return NO if value < NEAR_ZERO_OHM else NOT_KNOWN if value < LOW_OHM else NOTHING
    if what == "ripple":
        most = RIPPLE_MOST_MV[rail] / 1000
        value = reading["value"] / 1000 if reading["unit"].strip() != "V" else reading["value"]
        return NO if value > most else NOTHING
    if what == "rail":
        wanted = abs(float(rail))
        share = 0.10 if rail.startswith("-") else 0.05
        return NO if abs(abs(value) - wanted) > wanted * share + 1e-9 else NOTHING
    return NOTHING


def worst(weights):
    """The gravest of some weights."""
    return max(weights, key=lambda weight: ORDER[weight], default=NOTHING)


# ---------------------------------------------------------------- the referee


class Referee:
    """Everything looked up once for a document; answers for its machines and parts."""

    def __init__(self, document, today):
        self.today = today
        self.table = defaultdict(list, {k: v for k, v in document.items() if isinstance(v, list)})
        self.parts = {part["id"]: part for part in self.table["part"]}
        self.designs = {design["id"]: design for design in self.table["design"]}
        self.works = {work["id"]: work for work in self.table["work"]}
        self.figures = defaultdict(lambda: defaultdict(list))
        for row in self.table["design_figure"]:
            self.figures[row["design"]][row["figure"]].append(row["value"])
        self.connectors = defaultdict(list)
        for row in self.table["design_connector"]:
            self.connectors[row["design"]].append(row)
        self.groups = {}

    def of(self, table, field, key):
        """The records of a table whose field is that key."""
        group = self.groups.get((table, field))
        if group is None:
            group = self.groups[(table, field)] = defaultdict(list)
            for row in self.table[table]:
                group[row.get(field)].append(row)
        return group[key] if key is not None and key in group else []

    def is_past(self, moment):
        """Whether something can have happened by today."""
        return first_day(moment["on"]) <= self.today

    def holding(self, rows, field):
        """Those of some dated records that hold today: no other one is surely later."""
        past = [row for row in rows if self.is_past(row[field])]
        return [row for row in past if not any(surely_before(row[field], other[field]) for other in past)]

    def coming(self, rows, field):
        """Those that are dated after today: what they say well does not count yet, what they say badly does."""
        return [row for row in rows if not self.is_past(row[field])]

    def standing(self, table, rows):
        """Records that no other one corrects."""
        gone = self.groups.get((table, "gone"))
        if gone is None:
            gone = self.groups[(table, "gone")] = {row["supersedes"] for row in self.table[table] if row.get("supersedes")}
        return [row for row in rows if row["id"] not in gone]

    # ------------------------------------------------ designs

    def figure(self, part, name):
        """The figures of a part's design under a name."""
        return self.figures[part.get("design")].get(name, []) if part.get("design") else []

    def links(self, part, side):
        """(connector, count) that a part's design offers or needs."""
        rows = self.connectors[part["design"]] if part.get("design") else []
        return [(row["connector"], row["count"]) for row in rows if row["side"] == side]

    def sockets(self, part, side):
        """The processor sockets among them."""
        return [name for name, _ in self.links(part, side) if names.CONNECTORS.get(name, ("",))[0] == "processor"]

    # ------------------------------------------------ one part's own facts

    def answers(self, part):
        """Question -> (past answers that hold, answers dated after today); an answer is (its survey, the answer)."""
        past, coming = defaultdict(list), defaultdict(list)
        for survey in self.standing("survey", self.of("survey", "part", part["id"])):
            for answer in survey.get("answers", []):
                if answer["given"] != "not_looked":
                    (past if self.is_past(survey["looked"]) else coming)[answer["question"]].append((survey, answer))

        def overtaken(old, rows):
            # What could not be told later does not take back what was seen before.
            vague = not isinstance(old[1]["given"], dict)
            return any((vague or isinstance(new[1]["given"], dict)) and surely_before(old[0]["looked"], new[0]["looked"]) for new in rows)

        held = {question: [row for row in rows if not overtaken(row, rows)] for question, rows in past.items()}
        return held, coming

    def finding_state(self, finding):
        """(state, severity, overdue, its last looks) of a finding; without a look it is open."""
        looks = self.of("look", "finding", finding["id"])
        last = self.holding(looks, "looked") + [l for l in self.coming(looks, "looked") if l["state"] in ("open", "returned")]
        if not last:
            return "open", "plain", False, []
        rank = ["cured", "confirmed", "accepted", "watched", "open", "returned"]
        look = max(last, key=lambda l: (rank.index(l["state"]), ["slight", "plain", "grave"].index(l["severity"])))
        state = look["state"]
        if state == "cured" and look.get("work") and self.works.get(look["work"], {}).get("state") != "done":
            state = "open"
        overdue = state == "watched" and look["again_by"] != "" and last_day(look["again_by"]) < self.today
        return state, look["severity"], overdue, last

    def answer_weight(self, part, question, survey, answer):
        """What one answer means for power."""
        asked = names.QUESTIONS.get(question)
        given = answer["given"]
        if asked is None:
            return NOT_KNOWN
        if given == "could_not_tell":
            return worst([asked.unlooked, NOT_KNOWN if "unknown" in asked.answers and asked.answers["unknown"] == NOT_KNOWN else NOTHING])
        if given == "does_not_apply":
            always = part["kind"] in names.ALWAYS_THERE.get(question, "").split()
            return asked.unlooked if always or not answer.get("note") else NOTHING
        name = given["is"]
        if name not in asked.answers:
            return NOT_KNOWN
        weight = names.ANSWER_BY_KIND.get((question, part["kind"], name), asked.answers[name])
        figure = answer.get("figure")
        if question == "rails" and figure is not None and figure < NEAR_ZERO_OHM:
            weight = NO
        if question == "coin-cell" and figure is not None and figure < LOW_CELL_V and name == "good":
            weight = worst([weight, REMARK])
        # A finding that followed the answer up: what was cured is cured, what was accepted is told.
        for finding in self.of("finding", "part", part["id"]):
            if finding["question"] == question and weight != NOTHING:
                state, _, overdue, last = self.finding_state(finding)
                later = last and all(surely_before(survey["looked"], look["looked"]) for look in last)
                if later and state in ("cured", "confirmed"):
                    weight = NOTHING
                elif later and state in ("accepted", "watched") and not overdue:
                    weight = REMARK
        return weight

    def given(self, part, question):
        """The names of the answers that hold for a question."""
        held, _ = self.answers(part)
        return {a["given"]["is"] for _, a in held.get(question, []) if isinstance(a["given"], dict)}

    def single_voltage(self, part):
        """Whether all processor sockets that a part offers or needs know one voltage only."""
        sockets = self.sockets(part, "offers") + self.sockets(part, "needs")
        volts = {v for name in sockets for v in names.CONNECTORS[name][2]}
        return len(volts) == 1

    def unlooked_weight(self, part, question, rest):
        """What it means that nobody looked, or that the question is said not to apply where it does."""
        weight = names.QUESTIONS[question].unlooked
        if question == "drive-electrolytics" and part["kind"] != "keyboard":
            weight = NOT_KNOWN
        if question == "leak-reach" and rest("clock-supply") & {"nothing", "coin", "soldered-coin", "module"}:
            return NOTHING
        if question == "rails" and any(self.proof_counts(p) for p in self.proofs_of(part, "rails-to-ground")):
            return NOTHING
        if question == "earth" and any(self.proof_counts(p) for p in self.proofs_of(part, "earth-continuity")):
            return NOTHING
        if question == "voltage-jumpers":
            told = self.figure(part, "core_voltage_v")
            fixed = len(set(told)) == 1 and not self.figure(part, "core_voltage_most_v")
            if self.single_voltage(part) or fixed or self.setting(part, "core voltage")[0] is not None:
                return NOTHING
        if question == "core-voltage" and (self.single_voltage(part) or self.figure(part, "core_voltage_v")):
            return NOTHING
        if question == "panel-switch" and part["kind"] == "power_supply":
            if not part.get("design") or any(name == "at-p8p9" for name, _ in self.links(part, "offers")):
                return NOT_KNOWN
        return weight

    def survey_reasons(self, part):
        """What the surveys say, and what they leave out."""
        held, coming = self.answers(part)
        out = []

        def rest(question):
            return {a["given"]["is"] for _, a in held.get(question, []) if isinstance(a["given"], dict)}

        for question in sorted(set(held) | set(coming)):
            if question not in names.QUESTIONS:
                out.append((NOT_KNOWN, f"unknown question {question}"))
                continue
            for survey, answer in held.get(question, []):
                weight = self.answer_weight(part, question, survey, answer)
                if not isinstance(answer["given"], dict):
                    weight = worst([weight, NOTHING]) if weight == NOTHING else self.unlooked_weight(part, question, rest)
                if question == "core-voltage" and weight == NOT_KNOWN and self.single_voltage(part):
                    weight = NOTHING
                if question == "voltage-jumpers" and weight == NOT_KNOWN and self.single_voltage(part):
                    weight = NOTHING
                out.append((weight, f"{question}: {answer['given']}"))
            for survey, answer in coming.get(question, []):
                weight = self.answer_weight(part, question, survey, answer)
                out.append((weight, f"{question}: {answer['given']}, dated after today"))
        for question, asked in names.QUESTIONS.items():
            if part["kind"] in asked.kinds and question not in held:
                out.append((self.unlooked_weight(part, question, rest), f"{question}: nobody looked"))
        return out

    def finding_reasons(self, part):
        """Findings and what was decided about them."""
        out = []
        for finding in self.of("finding", "part", part["id"]):
            state, severity, overdue, _ = self.finding_state(finding)
            what = finding["what"]
            if what == "":
                weight = names.OWN_WORDS[severity]
            elif what in names.FINDINGS:
                weight = names.FINDING_BY_KIND.get((what, part["kind"]), names.FINDINGS[what][0])
            else:
                weight = NOT_KNOWN
            if state in ("cured", "confirmed"):
                weight = NOTHING
            if state in ("accepted", "watched") and weight != NOTHING:
                weight = NOT_KNOWN if overdue and weight == NO else REMARK
            out.append((weight, f"finding {what or 'in own words'}, {state}, {severity}"))
        return out

    def touched_moments(self, part):
        """When something electrical was last changed on a part: by work, or by a capacitor that was replaced."""
        moments = []
        for work in self.of("work", "part", part["id"]):
            if work["state"] != "done":
                continue
            if work["rule"]:
                touches = work["rule"] in names.TOUCHES or work["rule"] not in names.WORKS
            else:
                touches = work.get("touches", "unstated") != "nothing_electrical"
            if touches:
                moments.append((work["changed"], f"work \"{work['rule'] or work['title']}\""))
        for capacitor in self.of("capacitor", "part", part["id"]):
            for look in self.of("capacitor_look", "capacitor", capacitor["id"]):
                if look["replaced_by"]:
                    moments.append((look["looked"], f"capacitor {capacitor['designator']} replaced"))
        return moments

    def work_reasons(self, part):
        """Unfinished work, waived work, and work that nothing has measured or proven since."""
        out = []
        for work in self.of("work", "part", part["id"]):
            state, rule = work["state"], work["rule"]
            title = f"work \"{rule or work['title']}\" {state}"
            if rule and rule not in names.WORKS:
                out.append((NOT_KNOWN, f"unknown {title}"))
                continue
            if rule:
                holds, touches = rule in names.HOLDS_POWER, rule in names.TOUCHES
            else:
                holds = work["hold"] == "power"
                touches = work.get("touches", "unstated") != "nothing_electrical"
            if state == "waived":
                out.append((REMARK if holds else NOTHING, title))
            elif state in ("open", "waiting"):
                storage = not rule and work["hold"] == "storage"
                out.append((NO if holds or storage else NOTHING, title))
            elif state == "doing":
                out.append((NO if holds else NOT_KNOWN if touches else NOTHING, title))
            elif state == "failed":
                # What came of it nobody knows.
                out.append((NO if holds else NOT_KNOWN, title))
        if part["kind"] != "power_supply":
            evidence = self.evidence(part)
            for moment, what in self.touched_moments(part):
                if not any(surely_before(moment, proof) for proof in evidence):
                    out.append((NOT_KNOWN, f"{what} since it was last measured or proven"))
        return out

    def evidence(self, part):
        """When a part was last shown to be safe: its rails measured, or a test passed; a survey where it has no rails."""
        moments = [p["run"] for p in self.proofs_of(part) if self.proof_counts(p, fresh=False, after_work=False)]
        has_rails = part["kind"] in names.QUESTIONS["rails"].kinds
        for survey in self.standing("survey", self.of("survey", "part", part["id"])):
            clear = any(a["question"] == "rails" and a["given"] == {"is": "clear"} for a in survey.get("answers", []))
            if self.is_past(survey["looked"]) and (clear or not has_rails):
                moments.append(survey["looked"])
        return moments

    def capacitor_reasons(self, part):
        """The state of every logged capacitor: the last look at it holds."""
        out = []
        for capacitor in self.of("capacitor", "part", part["id"]):
            looks = [{"looked": capacitor["logged"], "state": capacitor["state"]}]
            looks += self.of("capacitor_look", "capacitor", capacitor["id"])
            looked = [look for look in looks if look["state"] != "not_looked" or look.get("replaced_by")]
            last = self.holding(looked, "looked") + self.coming(looked, "looked")
            weight = NOTHING
            where = capacitor.get("function")
            heavy = where in ("processor_supply", "rail_smoothing", "supply_output", "mains_reservoir", "mains_suppression")
            mains = where == "mains_suppression" or capacitor["dielectric"] == "suppression"
            for look in last:
                state = look["state"]
                if state in ("bulged", "leaking", "burst", "cracked", "reversed"):
                    weight = NO
                elif state in ("missing", "out_of_limits"):
                    weight = worst([weight, NO if heavy or mains else REMARK if where in ("coupling", "timing") else NOT_KNOWN])
                printed, measured = capacitor.get("capacitance_uf"), look.get("measured_uf")
                if printed and measured is not None and not 0.5 * printed <= measured <= 1.6 * printed:
                    weight = worst([weight, NOT_KNOWN])
            if not last and mains and not self.given(part, "suppression"):
                weight = NOT_KNOWN
            out.append((weight, f"capacitor {capacitor['designator']}: {[l['state'] for l in last] or 'not looked at'}"))
        return out

    def readings_held(self, field, key):
        """Readings that hold: not corrected, and nothing later of the same subject."""
        subjects = defaultdict(list)
        for reading in self.standing("reading", self.of("reading", field, key)):
            subjects[reading_subject(reading)].append(reading)
        for rows in subjects.values():
            yield from self.holding(rows, "measured") + self.coming(rows, "measured")

    def reading_reasons(self, field, key):
        """Readings out of limits."""
        return [
            (reading_weight(r), f"reading {r['quantity']} = {r['value']} {r['unit']}") for r in self.readings_held(field, key)
        ]

    # ------------------------------------------------ proofs

    def proofs_of(self, part, test=None):
        """A part's proofs, of one test or of all."""
        return [p for p in self.of("proof", "part", part["id"]) if test in (None, p["test"])]

    def figures_bad(self, proof):
        """Whether one of the proof's own figures is out of bounds."""
        for reading in self.standing("reading", self.of("reading", "proof", proof["id"])):
            words, value = reading["quantity"].strip().lower(), reading["value"]
            if reading_weight(reading) in (NO, NOT_KNOWN):
                return True
            if words == "warmest place" and value > TOO_HOT_C:
                return True
            if words in ("errors", "differences", "hangs and errors", "starts that failed", "unreadable sectors") and value > 0:
                return True
            if words in ("speed", "full passes") and value <= 0:
                return True
            if words == "output":
                part = self.parts.get(proof.get("part"), {})
                wanted = self.figure(part, "core_voltage_v")
                if wanted and not any(abs(value - v) <= core_slack(v) + 1e-9 for v in wanted):
                    return True
        return False

    def proof_counts(self, proof, fresh=True, after_work=True):
        """Whether a proof is passed, of today or before, not stale, within its bounds, and later than the work on its part."""
        test = names.PROOFS.get(proof["test"])
        if test is None or proof["result"] != "passed" or not self.is_past(proof["run"]) or self.figures_bad(proof):
            return False
        run = proof["run"]["on"]
        if fresh and test.days and (not run or days_between(first_day(run), self.today) > test.days):
            return False
        part = self.parts.get(proof.get("part"))
        if part and after_work:
            return all(surely_before(moment, proof["run"]) for moment, _ in self.touched_moments(part))
        return True

    def proof_reasons(self, field, key):
        """Proofs that failed, stayed undecided, or passed on figures out of bounds: the last of each test holds."""
        out = []
        tests = defaultdict(list)
        for proof in self.of("proof", field, key):
            tests[proof["test"]].append(proof)
        for test, rows in tests.items():
            means = names.PROOFS.get(test)
            if means is None:
                out.append((NOT_KNOWN, f"unknown test {test}"))
                continue
            for proof in self.holding(rows, "run") + self.coming(rows, "run"):
                if proof["result"] == "failed" or self.figures_bad(proof):
                    if field == "part" and self.mended_after(key, proof["run"]):
                        continue
                    out.append((means.failed, f"proof {test} failed, or its figures are out of bounds"))
                elif proof["result"] == "undecided":
                    out.append((means.undecided, f"proof {test} undecided"))
        return out

    def mended_after(self, part, moment):
        """Whether something electrical was surely changed after a test that failed: it is to be run again."""
        for work in self.of("work", "part", part):
            if work["state"] != "done" or not self.is_past(work["changed"]) or not surely_before(moment, work["changed"]):
                continue
            if work["rule"] in names.TOUCHES or (not work["rule"] and work.get("touches") == "electrical"):
                return True
        return False

    def load_test_reasons(self, part):
        """A supply without a valid load test is not known."""
        rows = self.holding(self.proofs_of(part, "load-test"), "run")
        if rows and all(self.proof_counts(proof) for proof in rows):
            return []
        return [(NOT_KNOWN, "no load test that counts")]

    # ------------------------------------------------ events

    def fault_reasons(self, field, key):
        """Fault cases that nothing has settled."""
        out = []
        for case in self.of("fault_case", field, key):
            danger = DANGER.search(case["symptom"] + " " + case["outcome"])
            if case["state"] in ("open", "given_up"):
                out.append((NO if danger else REMARK, f"fault: {case['symptom']}"))
            elif case["state"] == "not_reproduced" and danger:
                out.append((REMARK, f"fault not reproduced: {case['symptom']}"))
        return out

    def custody_reasons(self, part):
        """Who has it."""
        weights = {"lent": NOT_KNOWN, "sold": NOT_KNOWN, "gave_back": NOT_KNOWN, "scrapped": NO}
        events = self.holding(self.of("custody_event", "part", part["id"]), "happened")
        return [(weights.get(event["act"], NOTHING), f"custody: {event['act']}") for event in events]

    def setting(self, part, name):
        """(the gravest-looking value of the setting that holds, its source), both None when it is not told."""
        rows = [s for s in self.of("setting", "part", part["id"]) if s["name"].strip().lower() == name]
        told = [(number_in(s["value"]), s) for s in self.holding(rows, "found") if number_in(s["value"]) is not None]
        if not told:
            return None, None
        value, row = max(told, key=lambda pair: pair[0])
        return value, row

    def part_reasons(self, part, alone=False):
        """Everything that a part's own records say."""
        out = []
        if part["quarantine"]:
            out.append((NO, f"kept apart: {part['quarantine']}"))
        out += self.custody_reasons(part)
        out += self.survey_reasons(part)
        out += self.finding_reasons(part)
        out += self.work_reasons(part)
        out += self.capacitor_reasons(part)
        out += self.reading_reasons("part", part["id"])
        out += self.proof_reasons("part", part["id"])
        out += self.fault_reasons("part", part["id"])
        if part["kind"] not in names.CARRIES_NOTHING and not part.get("design"):
            if not alone:
                out.append((NOT_KNOWN, "its design is not told"))
        if part["kind"] == "power_supply" and not alone:
            out += self.load_test_reasons(part)
        if part["kind"] == "power_supply" and alone:
            # The dummy load is where an undecided load test, and a supply said to be dead, are looked into.
            mild = ("proof load-test undecided", "running:", "finding reported-dead", "finding works-badly")
            out = [(REMARK if w == NOT_KNOWN and say.startswith(mild) else w, say) for w, say in out]
        return [(weight, part["tag"], say) for weight, say in out if weight != NOTHING]

    # ------------------------------------------------ fit

    def belongings(self, machine):
        """Part key -> whether it is in the machine now ("fitted") or meant for it ("planned")."""
        fitted = [f["part"] for f in self.of("fitting", "machine", machine["id"]) if self.is_in(f)]
        elsewhere = {f["part"] for f in self.table["fitting"] if self.is_in(f)}
        planned = [p["part"] for p in self.of("placement", "machine", machine["id"])]
        found = {}
        for state, keys in (("fitted", fitted), ("planned", planned)):
            todo = list(keys)
            while todo:
                key = todo.pop()
                if key in self.parts and key not in found:
                    found[key] = state
                    todo += [p["id"] for p in self.of("part", "inside", key) if p["id"] not in elsewhere]
        return found

    def is_in(self, fitting):
        """Whether a fitting still holds."""
        removed = fitting.get("removed")
        return removed is None or not self.is_past(removed)

    def plug_reasons(self, parts):
        """Every need that finds no offer to plug into, and parts that tell nothing about their plugs."""
        out = []
        hosts = {kind: [p for p in parts if p["kind"] == kind] for kind in ("mainboard", "power_supply")}
        untold = any(not rows or not all(self.links(p, "offers") for p in rows) for rows in hosts.values())
        offers, needs = [], []
        for part in parts:
            offers += [(part, name) for name, count in self.links(part, "offers") for _ in range(count)]
            needs += [(part, name) for name, count in self.links(part, "needs") for _ in range(count)]
        by_name = defaultdict(list)
        for number, (part, name) in enumerate(offers):
            by_name[name].append(number)
            for other in names.CONNECTORS.get(name, ("", "", ()))[1].split():
                by_name[other].append(number)
        taken = {}

        def place(need, seen):
            part, name = needs[need]
            for offer in by_name[name]:
                if offer not in seen and offers[offer][0] is not part:
                    seen.add(offer)
                    if offer not in taken or place(taken[offer], seen):
                        taken[offer] = need
                        return True
            return False

        for number, (part, name) in enumerate(needs):
            if name not in names.CONNECTORS:
                out.append((NOT_KNOWN, part["tag"], f"unknown connector {name}"))
                continue
            weight = names.UNMET.get(names.CONNECTORS[name][0], NOTHING)
            if name in names.COOLER_MOUNTINGS and part["kind"] == "cooler":
                weight = NO
            if weight == NO and untold:
                weight = NOT_KNOWN
            if not place(number, set()) and weight != NOTHING:
                out.append((weight, part["tag"], f"nothing here takes its {name}"))
        plugs_in = "processor coprocessor memory_module cache_module video_card sound_card network_card controller_card "
        plugs_in += "multi_io_card riser modem processor_adapter voltage_module"
        for part in parts:
            if part.get("design"):
                families = {names.CONNECTORS.get(name, ("",))[0] for name, _ in self.links(part, "needs")}
                if part["kind"] in plugs_in.split() and not families & {"processor", "expansion", "memory"}:
                    out.append((NOT_KNOWN, part["tag"], "nobody told what it plugs into"))
                if part["kind"] == "mainboard" and "board-power" not in families:
                    out.append((NOT_KNOWN, part["tag"], "nobody told which supply plug the board takes"))
                offered = {names.CONNECTORS.get(name, ("",))[0] for name, _ in self.links(part, "offers")}
                if part["kind"] == "power_supply" and "board-power" not in offered:
                    out.append((NOT_KNOWN, part["tag"], "nobody told which plugs the supply has"))
        return out

    def standard_reasons(self, parts):
        """The plug as it was looked up on the board against the plug as it was looked up on the supply."""
        out = []
        for board in (p for p in parts if p["kind"] == "mainboard"):
            for supply in (p for p in parts if p["kind"] == "power_supply"):
                here, there = self.given(board, "power-plug"), self.given(supply, "supply-plugs")
                known = {"two-plug", "atx", "own"}
                if len(here & known) == 1 and len(there & known) == 1:
                    if here & known != there & known:
                        out.append((NO, board["tag"], f"the board takes {here}, the supply has {there}"))
                    elif "own" in here:
                        out.append((REMARK, board["tag"], "board and supply are both wired their makers' own way"))
        return out

    RAILS = {"3v3": 3.3, "5v": 5.0, "12v": 12.0, "minus5v": 5.0, "minus12v": 12.0, "standby": 5.0}

    def load_reasons(self, parts, states, supply):
        """Amperes on each rail against the label, combined limits, watts in all, and least loads (of what is fitted now)."""
        out = []
        draw, now = defaultdict(float), defaultdict(float)
        for part in parts:
            if part["kind"] in names.CARRIES_NOTHING + ["power_supply"]:
                continue
            told = False
            for rail in self.RAILS:
                values = self.figure(part, f"current_{rail}_a")
                if values:
                    told = True
                    draw[rail] += max(values)
                    now[rail] += max(values) if states[part["id"]] == "fitted" else 0
            passive = part["kind"] == "cooler" and not any(
                names.CONNECTORS.get(name, ("",))[0] == "drive-power" for name, _ in self.links(part, "needs")
            )
            # Milliamperes, from a fused lead or the board: common practice, no source.
            light = part["kind"] in ("keyboard", "pointing_device", "firmware_chip", "clock_module")
            if part.get("design") and not told and not passive and not light:
                out.append((NOT_KNOWN, part["tag"], "nobody told what it draws"))
        if supply is None:
            return out
        tag = supply["tag"]
        for rail, amperes in draw.items():
            rating = self.figure(supply, f"rating_{rail}_a")
            negative = rail.startswith("minus")
            if amperes > 0 and not rating:
                out.append((NOT_KNOWN, tag, f"nobody told what it gives on {rail}"))
            elif amperes > 0 and min(rating) == 0 and negative:
                out.append((NOT_KNOWN, tag, f"it has no {rail} rail"))
            elif rating and amperes > min(rating) + 1e-9:
                out.append((NO, tag, f"{amperes:.2f} A drawn on {rail}, {min(rating)} A on the label"))
        for rail in ("3v3", "5v", "12v"):
            least = self.figure(supply, f"least_{rail}_a")
            if least and now[rail] < max(least) - 1e-9:
                out.append((NOT_KNOWN, tag, f"{now[rail]:.2f} A drawn on {rail}, less than the least {max(least)} A"))
        combined = self.figure(supply, "combined_3v3_5v_w")
        if combined and draw["3v3"] * 3.3 + draw["5v"] * 5 > min(combined) + 1e-9:
            out.append((NO, tag, "more than 3.3 V and 5 V may give together"))
        watts = sum(amperes * self.RAILS[rail] for rail, amperes in draw.items())
        power = self.figure(supply, "power_w")
        if power and watts > min(power) + 1e-9:
            out.append((NO, tag, f"{watts:.0f} W drawn, {min(power)} W on the label"))
        return out

    def cooler_reasons(self, machine, parts, states):
        """Whether every processor that wants a cooler has one."""
        out = []
        left = {f["part"] for f in self.of("fitting", "machine", machine["id"]) if not self.is_in(f)} - set(states)
        taken_out = any(self.parts[key]["kind"] == "cooler" for key in left if key in self.parts)
        coolers = [p for p in parts if p["kind"] == "cooler"]
        fitted = [p for p in coolers if states[p["id"]] == "fitted"]
        chips = [p for p in parts if p["kind"] == "processor"]
        wanting = 0
        for chip in chips:
            sockets = self.sockets(chip, "needs")
            lugs = any(name in names.COOLER_MOUNTINGS for name, _ in self.links(chip, "offers"))
            always = lugs or any(name in names.ALWAYS_COOLED for name in sockets)
            sometimes = any(name in names.SOMETIMES_COOLED for name in sockets) or not sockets
            told = self.given(chip, "cooler-with-it")
            if not always and (not sometimes or "not-needed" in told):
                continue
            wanting += 1
            if len(fitted) >= wanting:
                clip = {name for cooler in fitted for name, _ in self.links(cooler, "needs")}
                if "cooler-socket-7" in clip and any(re.match("socket-(370|a$)", name) for name in sockets):
                    out.append((NOT_KNOWN, chip["tag"], "its cooler is made for a smaller socket"))
                continue
            if coolers:
                weight, say = NOT_KNOWN, "its cooler is planned and not fitted"
            elif always and lugs:
                weight, say = (NOT_KNOWN if "there" in told else NO), "its design offers a place for a cooler, and none is here"
            elif always:
                weight = NOTHING if "there" in told else NOT_KNOWN if "not-needed" in told else NO
                say = "a processor of this class always wants a cooler"
            else:
                weight, say = (NOTHING if "there" in told else NOT_KNOWN), "nobody told whether it has or wants a cooler"
            if taken_out and weight == NOTHING:
                weight, say = NOT_KNOWN, "its cooler was taken out"
            out.append((weight, chip["tag"], say))
        return out

    def volts_wanted(self, chip):
        """(least, most) core volts that a processor may be given, or None when nobody told."""
        told = self.figure(chip, "core_voltage_v")
        least, most = self.figure(chip, "core_voltage_least_v"), self.figure(chip, "core_voltage_most_v")
        if least and most:
            return min(least), max(most)
        if told:
            return min(v - core_slack(v) for v in told), max(v + core_slack(v) for v in told)
        if self.sockets(chip, "needs") and self.single_voltage(chip):
            return 4.75, 5.25
        return None

    def core_reasons(self, parts):
        """Core voltage: what feeds the processor can give it, and is set to it."""
        out = []
        tells = ("core_voltage_v", "core_voltage_least_v", "core_voltage_most_v")
        between = [p for p in parts if p["kind"] in ("processor_adapter", "voltage_module")]
        feeders = [p for p in between if any(self.figure(p, f) for f in tells)] or [p for p in parts if p["kind"] == "mainboard"]
        for chip in (p for p in parts if p["kind"] == "processor" and p.get("design")):
            wanted = self.volts_wanted(chip)
            if wanted is None:
                out.append((NOT_KNOWN, chip["tag"], "nobody told which core voltage it is made for"))
                continue
            low, high = wanted[0] - 1e-6, wanted[1] + 1e-6
            for feeder in feeders:
                if not feeder.get("design"):
                    continue
                values = self.figure(feeder, "core_voltage_v")
                least, most = self.figure(feeder, "core_voltage_least_v"), self.figure(feeder, "core_voltage_most_v")
                can = any(low <= v <= high for v in values)
                if least and most:
                    can = can or (min(least) <= high and max(most) >= low)
                if not values and not (least and most):
                    if self.single_voltage(feeder):
                        values, can = [5.0], low <= 5.0 <= high
                    else:
                        out.append((NOT_KNOWN, feeder["tag"], "nobody told which core voltages it gives"))
                        can = True
                if not can:
                    out.append((NO, feeder["tag"], f"it cannot give the {chip['tag']} its core voltage"))
                value, row = self.setting(feeder, "core voltage")
                if value is not None and "mv" in row["value"].lower():
                    value /= 1000
                read = self.given(feeder, "voltage-jumpers") & {"right", "automatic"}
                if value is not None:
                    if not low <= value <= high:
                        out.append((NO, feeder["tag"], f"set to {value} V, wanted {wanted[0]:.2f} to {wanted[1]:.2f} V"))
                    elif "guess" in row["source"].lower() and not read:
                        out.append((NOT_KNOWN, feeder["tag"], "what the voltage is set to was only guessed"))
                elif len(set(values)) > 1 and not read:
                    out.append((NOT_KNOWN, feeder["tag"], "the voltage can be set, and nobody read what it is set to"))
                for reading in self.readings_held("part", feeder["id"]):
                    if reading_subject(reading)[0] == "core":
                        volts = in_base_unit(reading["value"], reading["unit"])
                        if not low <= volts <= high:
                            out.append((NO, feeder["tag"], f"core voltage measured as {volts} V"))
        return out

    def clock_reasons(self, parts):
        """Clocks as they are set, where they are far beyond what is specified."""
        out = []

        def against(tag, name, value, most):
            share = value / most
            weight = NO if share > 1.45 else NOT_KNOWN if share > 1.3 else REMARK if share > 1.1 else NOTHING
            if weight != NOTHING:
                out.append((weight, tag, f"{name} {value:.1f} MHz, made for {most:.1f}"))

        for board in (p for p in parts if p["kind"] == "mainboard"):
            bus, _ = self.setting(board, "bus clock")
            if bus is None:
                continue
            most = self.figure(board, "bus_clock_most_mhz") or self.figure(board, "bus_clock_mhz")
            if most:
                against(board["tag"], "bus clock", bus, max(most))
            for name, limit, connector in (("pci divider", 33.333, "pci"), ("agp divider", 66.667, "agp")):
                _, row = self.setting(board, name)
                used = any(n.startswith(connector) for n, _ in self.links(board, "offers"))
                if row is not None and used:
                    fraction = re.search(r"(\d+)\s*/\s*(\d+)", row["value"])
                    number = number_in(row["value"])
                    divider = float(fraction[2]) / float(fraction[1]) if fraction else number
                    if divider:
                        against(board["tag"], name, bus / divider, limit)
            for chip in (p for p in parts if p["kind"] == "processor"):
                rated = self.figure(chip, "core_clock_mhz")
                fixed = self.figure(chip, "multiplier")
                times, _ = self.setting(board, "multiplier")
                if len(set(fixed)) == 1:
                    # A fixed multiplier keeps its ratio, whatever the board is set to.
                    if times is not None and times != fixed[0]:
                        out.append((REMARK, chip["tag"], f"set to {times}, which it does not obey"))
                    times = fixed[0]
                if rated and times is not None:
                    against(chip["tag"], "core clock", bus * times, max(rated))
        return out

    # ------------------------------------------------ verdicts

    def machine(self, key):
        """May power be applied to this machine?"""
        machine = next(m for m in self.table["machine"] if m["id"] == key)
        states = self.belongings(machine)
        parts = [self.parts[k] for k in states]
        out = []
        for part in parts:
            out += self.part_reasons(part)
        boards = [p for p in parts if p["kind"] == "mainboard"]
        if not boards:
            out.append((NOT_KNOWN, None, "it has no board"))
        elif not any(states[p["id"]] == "fitted" for p in boards):
            out.append((NOT_KNOWN, boards[0]["tag"], "its board is planned and not fitted"))
        supplies = [p for p in parts if p["kind"] == "power_supply"]
        feeding = [p for p in supplies if states[p["id"]] == "fitted"]
        if not supplies:
            out.append((NOT_KNOWN, None, "it has no supply"))
        elif not feeding:
            out.append((NOT_KNOWN, supplies[0]["tag"], "its supply is planned and not fitted"))
        elif len(feeding) > 1:
            out.append((NOT_KNOWN, None, "it has more than one supply"))
        out += self.plug_reasons(parts)
        out += self.standard_reasons(parts)
        out += self.load_reasons(parts, states, (feeding or supplies or [None])[0])
        out += self.cooler_reasons(machine, parts, states)
        out += self.core_reasons(parts)
        out += self.clock_reasons(parts)
        own = self.reading_reasons("machine", key) + self.proof_reasons("machine", key) + self.fault_reasons("machine", key)
        out += [(weight, None, say) for weight, say in own]
        out += self.switching_reasons(machine, parts)
        return verdict(out)

    def switching_reasons(self, machine, parts):
        """How the last power-on ended."""
        out = []
        for event in self.holding(self.of("power_on", "machine", machine["id"]), "switched"):
            if event["result"] == "well":
                continue
            danger = DANGER.search(event["happened"])
            weight = NO if danger else NOT_KNOWN if event["result"] == "stopped" else REMARK
            out.append((weight, None, f"the last power-on was {event['result']}: {event['happened']}"))
        return out

    def part(self, key):
        """May power be applied to this part on the bench, or to this supply on a dummy load?"""
        return verdict(self.part_reasons(self.parts[key], alone=True))


def verdict(reasons):
    """The verdict that some reasons add up to, with the reasons that say something."""
    reasons = [r for r in reasons if r[0] != NOTHING]
    gravest = worst([r[0] for r in reasons])
    return (gravest if gravest in (NO, NOT_KNOWN) else "yes"), reasons


def judge_machine(document, machine, today):
    """(verdict, reasons) for a machine, by its key."""
    return Referee(document, today).machine(machine)


def judge_part(document, part, today):
    """(verdict, reasons) for a part alone, by its key."""
    return Referee(document, today).part(part)
