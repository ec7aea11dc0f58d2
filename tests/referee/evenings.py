"""Referee for the evening's choice and the schedule: the built program against general-purpose libraries (PyPI).

Usage: evenings.py PROGRAM. What `tonight` weighed is solved again by HiGHS (scipy.optimize.milp): the worth must be
equal in every case. Each machine's longest path is found again by networkx, paces and spreads by the statistics module
and scipy.stats; no hands may be in two places. What must come after what is worked out again from the exported records
and the shipped tables: tests after the work that voids them, a whole machine's tests after all work on its parts and
the fitting of them, work after its materials, and no date for a machine with an empty role. Prints how many agreed; exits with 1 at the first that does not.
"""

import datetime
import json
import math
import pathlib
import statistics
import subprocess
import sys
import tempfile
import tomllib

import networkx
import numpy
import scipy
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import lil_matrix
from scipy.stats import norm

LOGBOOKS = 25
HOURS = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 9.25]
TODAY = "2026-03-12"


def run(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def answer(*command):
    return json.loads(run(*command, "--on", TODAY, "--json"))


def most_worth(considered, minutes):
    """The most worth within the minutes, of sets that hold with each piece all that it comes after."""
    if not considered:
        return 0
    rows = [(at, first) for at, piece in enumerate(considered) for first in piece["after"]]
    matrix = lil_matrix((len(rows) + 1, len(considered)))
    for row, (at, first) in enumerate(rows):
        matrix[row, at], matrix[row, first] = 1, -1
    for at, piece in enumerate(considered):
        matrix[len(rows), at] = piece["minutes"]
    limits = numpy.array([0.0] * len(rows) + [minutes])
    solved = milp(
        c=[-piece["worth"] for piece in considered],
        constraints=LinearConstraint(matrix.tocsr(), ub=limits),
        integrality=numpy.ones(len(considered)),
        bounds=Bounds(0, 1),
        options={"mip_rel_gap": 0},
    )
    if not solved.success:
        sys.exit(f"HiGHS gave up: {solved.message}")
    return round(-solved.fun)


def check_tonight(program, logbook, hours):
    plan = answer(program, "tonight", logbook, "--hours", str(hours))
    expected = most_worth(plan["considered"], round(hours * 60))
    if not (plan["best"] and plan["worth"] == expected and plan["minutes"] <= hours * 60):
        sys.exit(f"{logbook}, {hours} h: worth {plan['worth']}, HiGHS found {expected}")
    # The sum of the parts: work told, set-ups told, and gates that all their work opens.
    told = sum(piece["minutes"] for piece in plan["work"]) + sum(piece["minutes"] for piece in plan["set_ups"])
    if told != plan["minutes"]:
        sys.exit(f"{logbook}, {hours} h: {told} minutes are told, {plan['minutes']} given as their sum")
    return len(plan["considered"])


def near(what, own, reference):
    if not math.isclose(own, reference, rel_tol=1e-9, abs_tol=1e-9):
        sys.exit(f"{what}: {own}, should be {reference}")


def exported(program, logbook):
    """All records of a logbook."""
    document = pathlib.Path(f"{logbook}.json")
    run(program, "export", logbook, document)
    return json.loads(document.read_text(encoding="utf-8"))


def real_to_rule(records):
    """Ratios of real minutes to the rule's by sitting, from the exported records of work and the shipped tables."""
    rules = {}
    for table in (pathlib.Path(__file__).parents[2] / "resources" / "rules" / "work").glob("*.toml"):
        for rule in tomllib.loads(table.read_text(encoding="utf-8")).get("work", []):
            rules[rule["name"]] = (rule["sitting"], rule["minutes"])
    return [
        (*rules[work["rule"]], work["minutes"])
        for work in records.get("work", [])
        if work["state"] == "done" and work["minutes"] and work["rule"] in rules
    ]


def check_schedule(program, logbook, hours):
    plan = answer(program, "schedule", logbook, "--hours-per-week", str(hours))
    work, stretch = plan["work"], 168 / hours
    for before, after in zip(work, work[1:]):
        if after["start_days"] < before["hands_free_days"] - 1e-9:
            sys.exit(f"{logbook}: the hands are in two places")
    paces = {pace["sitting"]: pace for pace in plan["paces"]}
    overall = plan["pace"]
    for piece in work:
        near("hands", piece["hands_free_days"] - piece["start_days"], piece["minutes"] * stretch / 1440)
        near("wait", piece["over_days"] - piece["hands_free_days"], piece["wait_hours"] / 24)
        factor = paces.get(piece["sitting"], overall)["factor"] if piece["what"] == "work" else 1
        near("pace", piece["minutes"], piece["rule_minutes"] * factor)
        for first in piece["after"]:
            if piece["start_days"] < work[first]["over_days"] - 1e-9:
                sys.exit(f"{logbook}: {piece['title']} begins before what it comes after is over")
    today = datetime.date.fromisoformat(TODAY)
    for machine in plan["machines"]:
        graph = networkx.DiGraph()
        graph.add_node("start")
        for at in machine["needs"]:
            piece = work[at]
            arrival = plan["delivery_days"] if piece["lacks_material"] else 0
            graph.add_edge("start", at, weight=arrival)
            length = piece["minutes"] * stretch / 1440 + piece["wait_hours"] / 24
            graph.add_edge(at, "end", weight=length)
            for first in piece["after"]:
                if first in machine["needs"]:
                    before = work[first]
                    span = before["minutes"] * stretch / 1440 + before["wait_hours"] / 24
                    graph.add_edge(first, at, weight=span)
        near(f"longest path of {machine['machine']}", machine["alone_days"], networkx.dag_longest_path_length(graph))
        if not machine["needs"] or machine["ready"] is None:
            continue
        last = max(machine["needs"], key=lambda at: work[at]["over_days"])
        loads = {}
        for piece in work[: last + 1]:
            if piece["what"] == "work":
                key = piece["sitting"] if piece["sitting"] in paces else None
                loads.setdefault(key, []).append(piece["rule_minutes"])
        variance = 0
        for key, minutes in loads.items():
            pace = overall if key is None else paces[key]
            each = sum((figure * pace["deviation"]) ** 2 for figure in minutes)
            together = (sum(minutes) * pace["deviation"]) ** 2 / max(1, pace["pieces"])
            variance += each + together
        deviation = math.sqrt(variance) * stretch / 1440
        near(f"deviation of {machine['machine']}", machine["deviation_days"], deviation)
        over = work[last]["over_days"]
        for name, quantile in (("early", 0.1), ("ready", 0.5), ("late", 0.9)):
            days = max(0.0, over + norm.ppf(quantile) * deviation)
            told = (datetime.date.fromisoformat(machine[name]) - today).days
            if not told - 1e-6 <= days <= told + 1 + 1e-6:
                sys.exit(f"{machine['machine']}, {name}: day {told}, should hold {days}")
    return len(plan["machines"])


def tables():
    """The shipped rows of work by name."""
    folder = pathlib.Path(__file__).parents[2] / "resources" / "rules" / "work"
    read = [tomllib.loads(table.read_text(encoding="utf-8")) for table in sorted(folder.glob("*.toml"))]
    return {rule["name"]: rule for table in read for rule in table.get("work", [])}


def check_order(program, logbook, records, hours):
    """How many pairs were held against each other, and how many machines have no date."""
    plan = answer(program, "schedule", logbook, "--hours-per-week", str(hours))
    work, rules = plan["work"], tables()
    rows = lambda name: records.get(name, [])
    parts = {part["id"]: part for part in rows("part")}
    used_up = {material["name"].lower() for material in rows("material") if material["stock"] <= 0}
    pairs = undated = 0

    def after(late, early, why):
        nonlocal pairs
        pairs += 1
        if late["start_days"] < early["over_days"] - 1e-9:
            sys.exit(f"{logbook}: “{late['title']}” begins before “{early['title']}” on {early['part']} is over: {why}")

    on_part = {}
    for piece in work:
        if piece["part"]:
            on_part.setdefault(piece["part"], []).append(piece)
    for piece in work:
        if piece["what"] == "work" and any(name.lower() in used_up for name in rules.get(piece["name"], {}).get("materials", [])):
            pairs += 1
            if not piece["lacks_material"] or piece["start_days"] < plan["delivery_days"] - 1e-9:
                sys.exit(f"{logbook}: “{piece['title']}” begins before its materials can have come")
        if piece["what"] == "part_proof":
            for early in on_part[piece["part"]]:
                if early["what"] == "work" and piece["name"] in rules.get(early["name"], {}).get("voids", []):
                    after(piece, early, "it voids the test")
    for machine in rows("machine"):
        fitted = {row["part"]: row["role"] for row in rows("fitting") if row["machine"] == machine["id"] and not row["removed"]}
        planned = {row["part"]: row["role"] for row in rows("placement") if row["machine"] == machine["id"]}
        members = {**planned, **fitted}
        inner = set(members)
        while more := {part["id"] for part in parts.values() if part["inside"] in inner} - inner:
            inner |= more
        told = next(one for one in plan["machines"] if one["machine"] == machine["name"])
        proofs = [piece for piece in work if piece["what"] == "machine_proof" and piece["machine"] == machine["name"]]
        for proof in proofs:
            for part in inner:
                for early in on_part.get(parts[part]["tag"], []):
                    if early["what"] != "fit" or early["machine"] == machine["name"]:
                        after(proof, early, "the whole machine is tested")
            for part in set(planned) - set(fitted):
                if not any(
                    piece["what"] == "fit" and piece["machine"] == machine["name"]
                    for piece in on_part.get(parts[part]["tag"], [])
                ):
                    sys.exit(f"{logbook}: {machine['name']} is tested, and {parts[part]['tag']} was never fitted")
        # Roles that nothing fills: each part fills the role it is told for, or the first of its kind with room.
        roles = [role for role in rows("role") if role["machine"] == machine["id"]]
        room = {role["id"]: role["count"] for role in roles}
        by_role = [part for part in members if members[part] in room]
        for part in [*by_role, *(part for part in inner if part not in by_role)]:
            role = members.get(part) if part in by_role else next(
                (role["id"] for role in roles
                 if room[role["id"]] > 0 and parts[part]["kind"] in (role["kind"], *role.get("or_kinds", []))), None)
            if role:
                room[role] -= 1
        missing = sum(max(0, room[role["id"]]) for role in roles if role["required"])
        if missing:
            undated += 1
            dates = [told[name] for name in ("ready", "early", "late", "alone")]
            if dates != [None] * 4 or proofs or told["undated"]["why"] != "roles_empty" or told["undated"]["count"] != missing:
                sys.exit(f"{logbook}: {machine['name']} has {missing} empty places and is dated: {told['undated']}, {dates}")
        elif (told["undated"] or {}).get("why") == "roles_empty":
            sys.exit(f"{logbook}: every required role of {machine['name']} is filled, and it has no date")
    return pairs, undated


def check_pace(program, logbook, records):
    """The overall pace of all finished work."""
    ratios = [real / rule for _, rule, real in real_to_rule(records)]
    plan = answer(program, "schedule", logbook, "--hours-per-week", "6")
    if plan["pace"]["from"] != "overall" or len(ratios) != plan["pace"]["pieces"]:
        sys.exit(f"{logbook}: {len(ratios)} finished pieces, the pace rests on {plan['pace']['pieces']}")
    near("pace", plan["pace"]["factor"], statistics.mean(ratios))
    near("its deviation", plan["pace"]["deviation"], statistics.stdev(ratios))


def main():
    program = sys.argv[1]
    cases, weighed, machines, pairs, undated = 0, 0, 0, 0, 0
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(1, LOGBOOKS + 1):
            logbook = f"{folder}/{seed}"
            run(program, "new", logbook, "--invent", str(3 + seed), "--seed", str(seed))
            for hours in HOURS:
                weighed += check_tonight(program, logbook, hours)
                cases += 1
            more = check_order(program, logbook, exported(program, logbook), 6)
            pairs, undated = pairs + more[0], undated + more[1]
        sample, large = f"{folder}/sample", f"{folder}/large"
        run(program, "new", sample, "--sample")
        # Here gates can open.
        for hours in HOURS:
            weighed += check_tonight(program, sample, hours)
            cases += 1
        run(program, "new", large, "--invent", "500", "--seed", "59")
        for logbook, hours in ((sample, 6), (sample, 1.5), (large, 6), (large, 20)):
            machines += check_schedule(program, logbook, hours)
            more = check_order(program, logbook, exported(program, logbook), hours)
            pairs, undated = pairs + more[0], undated + more[1]
        check_pace(program, large, exported(program, large))
        # The same workshop with every box of materials empty.
        records, bare = exported(program, sample), f"{folder}/bare"
        for material in records["material"]:
            material["stock"] = 0
        pathlib.Path(f"{folder}/bare.json").write_text(json.dumps(records), encoding="utf-8")
        run(program, "new", bare)
        run(program, "import", bare, f"{folder}/bare.json")
        if not any(piece["lacks_material"] for piece in answer(program, "schedule", bare, "--hours-per-week", "6")["work"]):
            sys.exit("no work waits for materials, though every box is empty")
        more = check_order(program, bare, records, 6)
        pairs, undated = pairs + more[0], undated + more[1]
    print(f"evenings: {cases} choices of {weighed // cases} items each are worth what HiGHS (scipy {scipy.__version__}) finds;")
    print(f"  schedules of {machines} machines agree with networkx {networkx.__version__} and scipy.stats;")
    print(f"  {pairs} orders hold by the tables, {undated} machines wait for their roles")


main()
