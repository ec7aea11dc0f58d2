"""Referee for the evening's choice and the schedule: the built program against general-purpose libraries (PyPI).

Usage: evenings.py PROGRAM. What `tonight` weighed is solved again by HiGHS (scipy.optimize.milp): the worth must be
equal in every case. Each machine's longest path is found again by networkx, paces and spreads by the statistics module
and scipy.stats; no hands may be in two places. Prints how many agreed; exits with 1 at the first that does not.
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


def real_to_rule(exported):
    """Ratios of real minutes to the rule's by sitting, from the exported records of work and the shipped tables."""
    rules = {}
    for table in (pathlib.Path(__file__).parents[2] / "resources" / "rules" / "work").glob("*.toml"):
        for rule in tomllib.loads(table.read_text(encoding="utf-8")).get("work", []):
            rules[rule["name"]] = (rule["sitting"], rule["minutes"])
    return [
        (*rules[work["rule"]], work["minutes"])
        for work in exported.get("work", [])
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


def check_pace(program, logbook, exported):
    """The overall pace of all finished work."""
    ratios = [real / rule for _, rule, real in real_to_rule(exported)]
    plan = answer(program, "schedule", logbook, "--hours-per-week", "6")
    if plan["pace"]["from"] != "overall" or len(ratios) != plan["pace"]["pieces"]:
        sys.exit(f"{logbook}: {len(ratios)} finished pieces, the pace rests on {plan['pace']['pieces']}")
    near("pace", plan["pace"]["factor"], statistics.mean(ratios))
    near("its deviation", plan["pace"]["deviation"], statistics.stdev(ratios))


def main():
    program = sys.argv[1]
    cases, weighed, machines = 0, 0, 0
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(1, LOGBOOKS + 1):
            logbook = f"{folder}/{seed}"
            run(program, "new", logbook, "--invent", str(3 + seed), "--seed", str(seed))
            for hours in HOURS:
                weighed += check_tonight(program, logbook, hours)
                cases += 1
        sample, large = f"{folder}/sample", f"{folder}/large"
        run(program, "new", sample, "--sample")
        # Here gates can open.
        for hours in HOURS:
            weighed += check_tonight(program, sample, hours)
            cases += 1
        run(program, "new", large, "--invent", "500", "--seed", "59")
        for logbook, hours in ((sample, 6), (sample, 1.5), (large, 6), (large, 20)):
            machines += check_schedule(program, logbook, hours)
        run(program, "export", large, f"{folder}/large.json")
        with open(f"{folder}/large.json", encoding="utf-8") as file:
            check_pace(program, large, json.load(file))
    print(f"evenings: {cases} choices of {weighed // cases} items each are worth what HiGHS (scipy {scipy.__version__}) finds;")
    print(f"  schedules of {machines} machines agree with networkx {networkx.__version__} and scipy.stats")


main()
