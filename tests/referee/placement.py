"""Referee for placement: the built program against general-purpose solvers (PyPI).

Usage: placement.py PROGRAM. Random shelves are taken in; `place --question` tells each question in the abstract, with
the program's answer. Two models of their own are built from the question alone, one for HiGHS
(scipy.optimize.milp), one for CP-SAT (ortools), with every choice and no cut: their optima must be what the program says
its answer is worth. Prints how many agreed; exits with 1 at the first that does not.
"""

import json
import pathlib
import random
import subprocess
import sys
import tempfile
import uuid

import numpy
import ortools
import scipy
from ortools.sat.python import cp_model
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csc_matrix

LOGBOOKS = 42
SHELVES = 12
GOALS = ["fill", "optional", "dates", "brief", "proven", "work", "original", "stay", "urgent"]
AGES = [
    (1988, "baby-at", "at-p8p9", "pga-132", "simm-30", "isa-16", "keyboard-at-din", {"isa-16": 6, "simm-30": 8}),
    (1993, "baby-at", "at-p8p9", "socket-3", "simm-72", "vlb", "keyboard-at-din", {"isa-16": 4, "vlb": 2, "simm-72": 4}),
    (1998, "atx", "atx-20", "socket-370", "dimm-168-sdram", "pci-5v", "keyboard-mini-din",
     {"pci-5v": 4, "isa-16": 1, "dimm-168-sdram": 3, "ide-40": 4, "floppy-34": 2}),
]
ROLES = {
    "mainboard": (1, True), "processor": (1, True), "memory_module": (2, True), "video_card": (1, True),
    "multi_io_card": (1, False), "hard_disk": (1, True), "floppy_drive": (1, False), "power_supply": (1, True),
    "case": (1, True), "sound_card": (1, False), "keyboard": (1, False),
}
OTHER_KINDS = {"hard_disk": [[], ["flash_adapter"]], "video_card": [[], ["multi_io_card"]], "sound_card": [[], ["multi_io_card"]]}
MACHINE_TESTS = ["look-over", "settles", "soak-run"]
TODAY = "2026-02-10"
KINDS = [*ROLES, *ROLES, "mainboard", "processor", "memory_module", "cable", "processor_adapter", "flash_adapter"]


def run(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"{' '.join(map(str, command))}: {done.stderr.strip()}")
    return done.stdout


def new():
    return str(uuid.uuid4())


def plugs(chance, kind, age):
    _, outline, plug, socket, memory, video, keyboard, board = AGES[age]
    few = lambda most: chance.randint(1, most)
    card = chance.choice(["isa-8", "isa-16", "isa-16", "pci-5v" if age == 2 else "isa-16"])
    return {
        "mainboard": ({outline: 1, plug: 1}, {socket: 1, keyboard: 1} | {name: few(most) for name, most in board.items()}),
        "processor": ({socket: 1}, {}),
        "memory_module": ({memory: 1}, {}),
        "video_card": ({chance.choice([video, "isa-16"]): 1}, {"vga-15": 1}),
        "multi_io_card": ({card: 1}, {"ide-40": 2 * few(2), "floppy-34": 2}),
        "hard_disk": ({"ide-40": 1, "drive-4pin": 1, "bay-3.5-hidden": 1}, {}),
        "floppy_drive": ({"floppy-34": 1, "drive-4pin-small": 1, "bay-3.5": 1}, {}),
        "power_supply": ({"supply-atx": 1}, {plug: 1, "drive-4pin": few(3), "drive-4pin-small": few(2)}),
        "case": ({}, {outline: 1, "supply-atx": 1, "bay-3.5": few(2), "bay-3.5-hidden": few(2)}),
        "sound_card": ({card: 1}, {}),
        "flash_adapter": ({"ide-40": 1, "drive-4pin": 1}, {}),
        "keyboard": ({keyboard: 1}, {}),
        "cable": chance.choice([({"drive-4pin": 1}, {"drive-4pin": 2}), ({"drive-4pin": 1}, {"drive-4pin-small": 1}),
                                ({"drive-4pin-small": 1}, {"drive-4pin": 1})]),
        "processor_adapter": ({"socket-3": 1}, {"pga-132": 1}) if age else ({"pga-132": 1}, {"socket-3": 1}),
    }[kind]


def figures(chance, kind):
    """Figures of a design; supplies are small enough to be overdrawn now and then."""
    amps = lambda least, most: round(chance.uniform(least, most), 1)
    if kind == "power_supply":
        return {"rating_5v_a": chance.choice([8, 10, 15, 20]), "rating_12v_a": chance.choice([2, 4, 8]), "power_w": 150}
    if kind in ("case", "keyboard", "cable", "processor_adapter"):
        return {}
    told = {"current_5v_a": amps(0.2, 4 if kind in ("mainboard", "processor") else 1.5)}
    if kind in ("hard_disk", "floppy_drive"):
        told["current_12v_a"] = amps(0.3, 1.5)
    more = {"hard_disk": ("capacity_mb", [42, 120, 540]), "memory_module": ("memory_mb", [1, 4, 8]),
            "video_card": ("memory_kb", [256, 1024, 4096]), "processor": ("core_clock_mhz", [16, 33, 66, 300])}
    if kind in more:
        name, values = more[kind]
        told[name] = chance.choice(values)
    return told


def logbook(chance, book):
    """Fills an exchange document: designs, parts, machines, and what is planned and pinned so far."""
    lists = {name: [] for name in ("design", "design_connector", "design_figure", "part", "machine", "role", "placement", "fitting", "proof")}
    designs = []
    for kind in sorted({*KINDS}):
        for age in range(len(AGES)):
            for _ in range(chance.randint(1, 2)):
                first = AGES[age][0] + chance.randint(-1, 2)
                design = {"id": new(), "kind": kind, "maker": "Velmar", "model": f"V{len(designs)}", "revision": "",
                          "introduced": str(first), "discontinued": str(first + chance.randint(1, 3)), "note": ""}
                designs.append(design)
                for side, names in zip(("needs", "offers"), plugs(chance, kind, age)):
                    lists["design_connector"] += [
                        {"id": new(), "design": design["id"], "side": side, "connector": name, "count": count, "note": ""}
                        for name, count in names.items()
                    ]
                lists["design_figure"] += [
                    {"id": new(), "design": design["id"], "figure": name, "value": value, "source": "label"}
                    for name, value in figures(chance, kind).items()
                ]
    lists["design"] = designs
    for number in range(chance.randint(20, 46)):
        kind = chance.choice(KINDS)
        design = chance.choice([one for one in designs if one["kind"] == kind]) if chance.random() > 0.06 else None
        lists["part"].append({
            "id": new(), "tag": f"{number:04}", "kind": kind, "design": design and design["id"], "name": "Something",
            "serial": "", "originality": chance.choice(["original", "unstated", "altered", "period_replacement"]),
            "lot": None, "price_cents": None, "acquired": "", "place": None, "inside": None, "quarantine": "",
            "quarantined": "", "note": "",
        })
    free = chance.sample(lists["part"], len(lists["part"]))
    for number in range(chance.randint(2, 4)):
        first = chance.choice(AGES)[0] + chance.randint(-1, 2)
        machine = {"id": new(), "name": f"M{number}", "purpose": "", "window_from": str(first),
                   "window_to": str(first + chance.randint(1, 4)), "standing": chance.choice(["modest", "typical", "best"]),
                   "priority": chance.randint(0, 5), "note": ""}
        lists["machine"].append(machine)
        for kind, (count, required) in ROLES.items():
            role = {"id": new(), "machine": machine["id"], "kind": kind, "name": "", "required": required,
                    "count": count, "note": "", "or_kinds": chance.choice(OTHER_KINDS.get(kind, [[]]))}
            lists["role"].append(role)
            part = next((one for one in free if one["kind"] == kind and chance.random() < 0.3), None)
            if part and chance.random() < 0.4:
                free.remove(part)
                lists["fitting"].append({
                    "id": new(), "machine": machine["id"], "role": role["id"] if chance.random() < 0.9 else None,
                    "part": part["id"], "fitted": {"on": "2026-01-01", "sequence": len(lists["fitting"])}, "removed": None,
                    "note": "",
                })
            elif part:
                free.remove(part)
                lists["placement"].append({
                    "id": new(), "machine": machine["id"], "role": role["id"], "part": part["id"],
                    "pinned": chance.random() < 0.2, "planned": {"on": "2026-01-01", "sequence": 0}, "reason": "",
                })
        lists["proof"] += [
            {"id": new(), "part": None, "machine": machine["id"], "test": test, "rig": "", "minutes": None,
             "run": {"on": "2026-02-01", "sequence": number}, "criterion": "", "result": "passed", "who": "", "note": ""}
            for number, test in enumerate(MACHINE_TESTS) if chance.random() < 0.6
        ]
    return book | lists


class Sheet:
    """Columns and rows of a question, told to either solver."""

    def __init__(self, question):
        self.q = question
        self.choices = [(i, c) for i, spare in enumerate(question["spares"]) for c in spare["options"]]
        self.machine = lambda choice: question["seats"][choice["seat"]]["machine"]

    def here(self, machine):
        return [at for at, (_, c) in enumerate(self.choices) if self.machine(c) == machine]

    def needed(self, machine):
        return sorted({need for at in self.here(machine) for need, _ in self.q["spares"][self.choices[at][0]]["needs"]})

    def changes(self, machine):
        """What changes a machine: a choice that is taken, or a part of it that takes none of the choices where it stays."""
        found = []
        for at, (i, c) in enumerate(self.choices):
            spare = self.q["spares"][i]
            comes = self.machine(c) == machine and spare["live"] and not c["fitted"]
            roams = spare["home"] == machine and not any(one["fitted"] for one in spare["options"])
            if comes or roams:
                found.append((None, at))
        for i, spare in enumerate(self.q["spares"]):
            if spare["home"] == machine and any(one["fitted"] for one in spare["options"]):
                found.append(([at for at, (of, c) in enumerate(self.choices) if of == i and c["fitted"]], None))
        return found

    def amount(self, at, side, connector):
        return dict(self.q["spares"][self.choices[at][0]][side]).get(connector, 0)


def by_cp_sat(question):
    sheet, q = Sheet(question), question
    model, gain = cp_model.CpModel(), []
    x = [model.new_bool_var("") for _ in sheet.choices]
    gain += [c["worth"] * x[at] for at, (_, c) in enumerate(sheet.choices)]
    for i, spare in enumerate(q["spares"]):
        own = [x[at] for at, (of, _) in enumerate(sheet.choices) if of == i]
        model.add(sum(own) == 1) if spare["pinned"] else model.add(sum(own) <= 1)
    for s, seat in enumerate(q["seats"]):
        model.add(sum(x[at] for at, (_, c) in enumerate(sheet.choices) if c["seat"] == s) <= seat["count"])
    for m, machine in enumerate(q["machines"]):
        here = sheet.here(m)
        spare = lambda at: q["spares"][sheet.choices[at][0]]
        flows = {}
        for need in sheet.needed(m):
            asked = sum(sheet.amount(at, "needs", need) * x[at] for at in here)
            for offer in q["takes"][need]:
                flows[need, offer] = model.new_int_var(0, 99, "")
            opened = model.new_int_var(0, 99, "")
            gain.append(-q["open_cost"] * opened)
            model.add(asked == opened + sum(flow for (of, _), flow in flows.items() if of == need))
            settled = sum(sheet.amount(at, "needs", need) * x[at] for at in here if sheet.choices[at][1]["settled"])
            seats = next((one["seats"] for one in machine["open"] if one["need"] == need), [])
            some = []
            for s in seats:
                known = sum(x[at] for at in here if sheet.choices[at][1]["seat"] == s and spare(at)["known"])
                has_room = model.new_bool_var("")
                model.add(known < q["seats"][s]["count"]).only_enforce_if(has_room)
                some.append(has_room)
            full = model.new_bool_var("")
            model.add_bool_or([*some, full])
            model.add(opened <= settled).only_enforce_if(full)
        for offer in {offer for _, offer in flows}:
            given = sum(sheet.amount(at, "offers", offer) * x[at] for at in here)
            model.add(sum(flow for (_, of), flow in flows.items() if of == offer) <= given)
        for rail in range(len(q["rails"])):
            drawn = sum(spare(at)["draws"][rail] * x[at] for at in here if spare(at)["draws"])
            for at in here:
                if spare(at)["gives"] and not isinstance(drawn, int):
                    model.add(drawn <= spare(at)["gives"][rail]).only_enforce_if(x[at])
        # Adapters hang on what is none, over one another or straight: each a step farther than what it hangs on.
        between = [at for at in here if q["seats"][sheet.choices[at][1]["seat"]]["between"]]
        step = {at: model.new_int_var(0, len(between), "") for at in between}
        for at in between:
            for need, _ in spare(at)["needs"]:
                hooks = []
                for on in here:
                    if on != at and any(offer in q["takes"][need] for offer, _ in spare(on)["offers"]):
                        hook = model.new_bool_var("")
                        model.add_implication(hook, x[on])
                        if on in step:
                            model.add(step[at] >= step[on] + 1).only_enforce_if(hook)
                        hooks.append(hook)
                model.add_bool_or([*hooks, x[at].negated()])
        if machine["complete_worth"]:
            complete = model.new_bool_var("")
            gain.append(machine["complete_worth"] * complete)
            for s, seat in enumerate(q["seats"]):
                if seat["machine"] == m and seat["required"]:
                    filled = sum(x[at] for at in here if sheet.choices[at][1]["seat"] == s)
                    model.add(filled >= seat["count"]).only_enforce_if(complete)
        stands = lambda spares: [x[at] for at in here if sheet.choices[at][0] in spares]
        for clash in q["clashes"]:
            if clash["machine"] in (None, m):
                for one in stands(clash["one"]):
                    for other in stands(clash["other"]):
                        model.add_bool_or([one.negated(), other.negated(), *stands(clash["unless"])])
        for barred in q["barred"]:
            if barred["machine"] == m and len(together := stands(barred["spares"])) == len(barred["spares"]):
                model.add_bool_or([*(one.negated() for one in together), *stands(barred["unless"])])
        if machine["change_cost"]:
            changed = model.new_bool_var("")
            gain.append(-machine["change_cost"] * changed)
            for stays, at in sheet.changes(m):
                if stays is None:
                    model.add_implication(x[at], changed)
                else:
                    model.add(sum(x[one] for one in stays) + changed >= 1)
    model.maximize(sum(gain))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    if solver.solve(model) != cp_model.OPTIMAL:
        sys.exit("CP-SAT gave up")
    return round(solver.objective_value)


def by_highs(question, presolve=False):
    """Without its presolve, which in HiGHS 1.12 now and then loses the optimum (as in its issues 1725 and 2957): of one
    shelf it gave 13085 with, 13593 without, and 13593 is what CP-SAT finds for the very same rows."""
    sheet, q = Sheet(question), question
    cost, upper, whole, rows = [], [], [], []

    def column(worth, most, is_whole):
        cost.append(-worth), upper.append(most), whole.append(is_whole)
        return len(cost) - 1

    def row(terms, least, most):
        rows.append((terms, least, most))

    x = [column(c["worth"], 1, 1) for _, c in sheet.choices]
    for i, spare in enumerate(q["spares"]):
        row([(x[at], 1) for at, (of, _) in enumerate(sheet.choices) if of == i], int(spare["pinned"]), 1)
    for s, seat in enumerate(q["seats"]):
        row([(x[at], 1) for at, (_, c) in enumerate(sheet.choices) if c["seat"] == s], 0, seat["count"])
    for m, machine in enumerate(q["machines"]):
        here = sheet.here(m)
        spare = lambda at: q["spares"][sheet.choices[at][0]]
        given = {}
        for need in sheet.needed(m):
            terms = [(x[at], sheet.amount(at, "needs", need)) for at in here]
            for offer in q["takes"][need]:
                flow = column(0, 99, 1)
                given.setdefault(offer, []).append((flow, 1))
                terms.append((flow, -1))
            opened = column(-q["open_cost"], 99, 1)
            row([*terms, (opened, -1)], 0, 0)
            # What is open beyond the settled ones' needs asks for room in a seat: so much for each place of room.
            most = sum(amount for _, amount in terms if amount > 0)
            settled = [(x[at], -sheet.amount(at, "needs", need)) for at in here if sheet.choices[at][1]["settled"]]
            seats = next((one["seats"] for one in machine["open"] if one["need"] == need), [])
            room = sum(q["seats"][s]["count"] for s in seats) * most
            filled = [(x[at], most) for at in here if sheet.choices[at][1]["seat"] in seats and spare(at)["known"]]
            row([(opened, 1), *settled, *filled], -numpy.inf, room)
        for offer, terms in given.items():
            row([*terms, *((x[at], -sheet.amount(at, "offers", offer)) for at in here)], -numpy.inf, 0)
        for rail in range(len(q["rails"])):
            draws = [(x[at], spare(at)["draws"][rail]) for at in here if spare(at)["draws"]]
            total = sum(amount for _, amount in draws)
            for at in here:
                if spare(at)["gives"] and spare(at)["gives"][rail] < total:
                    slack = total - spare(at)["gives"][rail]
                    row([*draws, (x[at], slack)], -numpy.inf, total)
        between = [at for at in here if q["seats"][sheet.choices[at][1]["seat"]]["between"]]
        step = {at: column(0, len(between), 0) for at in between}
        for at in between:
            for need, _ in spare(at)["needs"]:
                hooks = []
                for on in here:
                    if on != at and any(offer in q["takes"][need] for offer, _ in spare(on)["offers"]):
                        hook = column(0, 1, 1)
                        row([(hook, 1), (x[on], -1)], -numpy.inf, 0)
                        if on in step:
                            far = len(between) + 1
                            row([(step[at], 1), (step[on], -1), (hook, -far)], 1 - far, numpy.inf)
                        hooks.append((hook, 1))
                row([*hooks, (x[at], -1)], 0, numpy.inf)
        if machine["complete_worth"]:
            complete = column(machine["complete_worth"], 1, 1)
            for s, seat in enumerate(q["seats"]):
                if seat["machine"] == m and seat["required"]:
                    filled = [(x[at], 1) for at in here if sheet.choices[at][1]["seat"] == s]
                    row([*filled, (complete, -seat["count"])], 0, numpy.inf)
        if machine["change_cost"]:
            changed = column(-machine["change_cost"], 1, 1)
            for stays, at in sheet.changes(m):
                if stays is None:
                    row([(x[at], 1), (changed, -1)], -numpy.inf, 0)
                else:
                    row([*((x[one], 1) for one in stays), (changed, 1)], 1, numpy.inf)
        stands = lambda spares: [x[at] for at in here if sheet.choices[at][0] in spares]
        for clash in q["clashes"]:
            if clash["machine"] in (None, m):
                unless = [(one, -1) for one in stands(clash["unless"])]
                for one in stands(clash["one"]):
                    for other in stands(clash["other"]):
                        row([(one, 1), (other, 1), *unless], -numpy.inf, 1)
        for barred in q["barred"]:
            if barred["machine"] == m and len(together := stands(barred["spares"])) == len(barred["spares"]):
                unless = [(one, -1) for one in stands(barred["unless"])]
                row([*((one, 1) for one in together), *unless], -numpy.inf, len(together) - 1)
    data = [(at, of, amount) for at, (terms, *_) in enumerate(rows) for of, amount in terms]
    matrix = csc_matrix(([d[2] for d in data], ([d[0] for d in data], [d[1] for d in data])), (len(rows), len(cost)))
    solved = milp(
        c=cost, constraints=LinearConstraint(matrix, [r[1] for r in rows], [r[2] for r in rows]), integrality=whole,
        bounds=Bounds(0, upper), options={"mip_rel_gap": 0, "presolve": presolve},
    )
    if not solved.success:
        sys.exit(f"HiGHS gave up: {solved.message}")
    return round(-solved.fun)


def main():
    program = sys.argv[1]
    cases = choices = learned = tested = 0
    with tempfile.TemporaryDirectory() as folder:
        empty, document = f"{folder}/empty", pathlib.Path(f"{folder}/shelf.json")
        run(program, "new", empty)
        run(program, "export", empty, document)
        book = json.loads(document.read_text(encoding="utf-8"))
        for seed in range(LOGBOOKS):
            chance = random.Random(seed)
            filled = logbook(chance, book)
            document.write_text(json.dumps(filled), encoding="utf-8")
            path = f"{folder}/{seed}"
            run(program, "new", path)
            run(program, "import", path, document)
            pinned = {plan["part"] for plan in filled["placement"] if plan["pinned"]}
            tags = [part["tag"] for part in filled["part"] if part["id"] not in pinned]
            for shelf in range(SHELVES):
                # Another shelf each time: some parts are elsewhere today, and other things matter.
                asked = [word for tag in chance.sample(tags, len(tags) // 4) for word in ("--leave-out", tag)]
                asked += [word for goal in GOALS for word in ("--weigh", f"{goal}={chance.randint(0, 9)}")]
                asked += ["--soonest"] if chance.random() < 0.2 else []
                asked += ["--may-touch-all"] if chance.random() < 0.5 else []
                told = json.loads(run(program, "place", path, "--question", "--seconds", "600", "--on", TODAY, *asked))
                question, answer = told["question"], told["answer"]
                found = by_highs(question), by_cp_sat(question)
                if len({answer["worth"], answer["bound"], *found}) != 1:
                    sys.exit(f"shelf {seed}.{shelf}: worth {answer['worth']}, bound {answer['bound']}; should be {found}")
                choices += sum(len(spare["options"]) for spare in question["spares"])
                tested += sum(machine["change_cost"] > 0 for machine in question["machines"])
                learned += len(question["clashes"]) + len(question["barred"])
                cases += 1
    print(f"placement: {cases} shelves with {choices} choices are worth what HiGHS (scipy {scipy.__version__}) and")
    print(f"  CP-SAT (ortools {ortools.__version__}) find; {learned} sets were found on the way not to go together,")
    print(f"  {tested} machines had tests to lose")


main()
