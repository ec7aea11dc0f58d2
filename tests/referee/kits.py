"""Referee for kits: the built program against general-purpose solvers (PyPI).

Usage: kits.py PROGRAM. Invented boards and stock are taken in; the kit of each board is solved again by
HiGHS (scipy.optimize.milp) and by CP-SAT (ortools), over every line of a far wider grid of values, voltages and sizes
than the program itself considers: lines and lines from stock must be equal in number. What a line may take the place
of is worked out here anew from resources/rules/substitution.toml, preferred values from eseries. Prints how many
agreed; exits with 1 at the first that does not.
"""

import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile
import tomllib
import uuid

import eseries
import numpy
import ortools
import scipy
from ortools.sat.python import cp_model
from scipy.optimize import Bounds, LinearConstraint, milp

RULES = pathlib.Path(__file__).parents[2] / "resources/rules/substitution.toml"
LOGBOOKS = 10
BOARDS = 24
SAME = 1e-9
# Places that name the rail that a position sits on, and what it carries.
RAILS = {"on the +12 V rail": 12.0, "by slot 2, −5 V": 5.0, "+5 V, at the edge": 5.0}
SERIES = {"E3": eseries.E3, "E6": eseries.E6, "E12": eseries.E12, "E24": eseries.E24}


def run(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def some(chance, values, none=0.0):
    return None if chance.random() < none else chance.choice(values)


def board(chance, tag, positions):
    """A board with positions; each board has a style of its own, so that kits differ in what makes them hard."""
    part = {
        "id": str(uuid.uuid4()), "tag": tag, "kind": "mainboard", "design": None, "name": "", "serial": "",
        "originality": "unstated", "lot": None, "price_cents": None, "acquired": "", "place": None, "inside": None,
        "quarantine": "", "quarantined": "", "note": "",
    }
    values = chance.choice([
        [10, 22, 47, 100, 220, 470, 1000, 2200],
        [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82, 100],
        [100, 120, 150, 220, 330, 470, 680, 820, 1000, 1100, 1500, 1600],
    ])
    volts = chance.choice([[6.3, 10, 16, 25, 35], [4, 6, 6.3, 7.5, 16, 50, 63, 200]])
    across = chance.choice([[5, 6.3, 8, 10], [4, 5, 6.3, 6.5, 8, 10, 12.5, 13], [8, 16, 18, 22]])
    high = chance.choice([[7, 11, 12.5, 16, 20, 25], [5.4, 7, 8, 9, 10, 11, 11.5, 12, 13, 15, 16, 17, 20, 25, 30]])
    unknown = chance.choice([0.0, 0.1, 0.5])
    kinds = chance.choice([["wet_aluminium"], ["wet_aluminium", "unknown"],
                           ["wet_aluminium", "polymer", "tantalum", "tantalum", "film", "suppression", "unknown", "ceramic",
                            "bipolar_aluminium"]])
    uses = [None] * 6 + ["processor_supply", "supply_output", "rail_smoothing", "coupling", "timing", "other"]
    capacitors = [
        {
            "id": str(uuid.uuid4()), "part": part["id"], "designator": f"C{number}",
            "place_on_part": chance.choice(["", "", "near the Processor", "by the sound chip", "at the edge", *RAILS]),
            "capacitance_uf": some(chance, values, 0.02), "voltage_v": some(chance, volts, 0.02),
            "temperature_c": some(chance, [85, 105, 125], 0.4), "diameter_mm": some(chance, across, unknown),
            "height_mm": some(chance, high, unknown), "pitch_mm": some(chance, [2, 2.5, 2.6, 3.5, 5], 0.6),
            "dielectric": chance.choice(kinds), "mounting": chance.choice(["radial", "radial", "unknown", "surface"]),
            "series": "ZQ", "polarity": "", "logged": {"on": "2026-01-01", "sequence": 0}, "state": "bulged",
            "function": chance.choice(uses), "low_esr": chance.choice([None, None, None, True, False]),
        }
        for number in range(1, positions + 1)
    ]
    return part, capacitors


def material(chance, number):
    return {
        "id": str(uuid.uuid4()), "name": f"Can {number}", "unit": "piece", "stock": float(chance.randint(0, 9)),
        "minimum": 0, "place": None, "price_cents": None, "supplier": "", "note": "",
        "capacitance_uf": chance.choice([10, 15, 22, 47, 100, 120, 220, 330, 470, 1000, 1200, 2200]),
        "voltage_v": chance.choice([6.3, 10, 16, 25, 35, 50, 63]), "temperature_c": some(chance, [85, 105], 0.2),
        "diameter_mm": some(chance, [4, 5, 6.3, 8, 10], 0.1), "height_mm": some(chance, [5.4, 7, 11, 12.5, 16], 0.1),
        "pitch_mm": some(chance, [2.0, 2.5, 3.5, 5.0], 0.4),
        "dielectric": chance.choice(["wet_aluminium", "wet_aluminium", "polymer", "tantalum", "film", "bipolar_aluminium", None]),
        "mounting": chance.choice(["radial", "radial", "surface", None]), "low_esr": chance.choice([None, True, False]),
    }


class Rules:
    def __init__(self):
        with open(RULES, "rb") as file:
            tables = tomllib.load(file)
        self.rows, self.low, self.order = tables["substitution"], tables["low_esr"], tables["order"][0]

    def is_low(self, one):
        if one["low_esr"] is not None:
            return one["low_esr"]
        place = one["place_on_part"].lower()
        return one["dielectric"] == "polymer" or any(
            one["function"] in row.get("functions", []) or any(word in place for word in row.get("places", []))
            for row in self.low
        )

    def rated(self, row, one, volts):
        """The least rated voltage: some rows ask for a multiple of the rail, or else for the next step."""
        times = row.get("times_rail")
        if times is None:
            return volts
        if one["place_on_part"] in RAILS:
            return max(volts, times * RAILS[one["place_on_part"]])
        return min((made for made in self.order["volts"] if made > volts * (1 + SAME)), default=math.inf)

    def demand(self, one):
        """What a position asks for: what sat there, and per dielectric the capacitances and density allowed."""
        if one["capacitance_uf"] is None or one["voltage_v"] is None:
            return None
        uf, volts, across, high = (one[name] for name in ("capacitance_uf", "voltage_v", "diameter_mm", "height_mm"))
        rooms = {}
        for named in (False, True):
            for row in self.rows:
                uses = row.get("functions", [])
                if (
                    one["dielectric"] in row["dielectrics"] and uf >= row.get("from_uf", 0)
                    and volts <= row.get("to_volts", math.inf) and bool(uses) == named
                    and (not named or one["function"] in uses)
                ):
                    following = eseries.find_greater_than(SERIES[row["series"]], uf * (1 + SAME))
                    most = min(following, uf * (1 + row["most_above_percent"] / 100))
                    dense = row.get("most_uf_v_per_mm3", math.inf)
                    if across and high:
                        dense = max(dense, uf * volts / (math.pi / 4 * across**2 * high))
                    rooms[row["with"]] = (most, dense, self.rated(row, one, volts))
        pitch = one["pitch_mm"]
        if pitch is not None:
            pitch = min(self.order["pitches_mm"], key=lambda made: abs(made - pitch))
        mounting = self.order["mounting"] if one["mounting"] == "unknown" else one["mounting"]
        return {
            "id": one["id"], "uf": uf, "volts": volts, "celsius": one["temperature_c"], "across": across, "high": high,
            "pitch": pitch, "mounting": mounting, "low": self.is_low(one), "rooms": rooms,
        } if rooms else None

    def serves(self, demand, line):
        """Which of the lines, given as arrays, may take the demand's place. A figure not known is NaN."""
        at_least = lambda name: demand[name] is None or line[name] >= demand[name] * (1 - SAME)
        at_most = lambda name: demand[name] is None or line[name] <= demand[name] * (1 + SAME)
        density = line["uf"] * line["volts"] / (math.pi / 4 * line["across"] ** 2 * line["high"])
        found = numpy.zeros(len(line["uf"]), bool)
        for with_, (most, dense, rated) in demand["rooms"].items():
            found |= (
                (line["with"] == with_) & (line["uf"] <= most * (1 + SAME)) & (line["volts"] >= rated * (1 - SAME))
                & ~(density > dense * (1 + SAME))
            )
        for holds in (at_least("uf"), at_least("celsius"), at_most("across"), at_most("high")):
            found &= holds
        if demand["pitch"] is not None:
            found &= numpy.abs(line["pitch"] - demand["pitch"]) < 1e-6
        if demand["low"]:
            found &= line["low"]
        return found & (line["mounting"] == demand["mounting"])


def grids(rules, demands):
    """Every line to buy that could be thought of, for one dielectric and mounting after the other: each value of the
    series in reach, each voltage up to the next above the highest, each size that occurs and one between them."""
    for with_, mounting in sorted({(with_, one["mounting"]) for one in demands for with_ in one["rooms"]}):
        own = [one for one in demands if one["mounting"] == mounting and with_ in one["rooms"]]
        known = lambda name: sorted({one[name] for one in own if one[name] is not None})
        between = lambda sizes: [*sizes, math.nan] + ([(sizes[0] + sizes[-1]) / 2] if sizes else [])
        ufs = [one["uf"] for one in own]
        highest = max(max(one["volts"], min(one["rooms"][with_][2], 1000)) for one in own)
        axes = {
            "uf": list(eseries.erange(SERIES[rules.order["series"]], min(ufs), max(ufs) * 1.6)),
            "volts": [made for made in rules.order["volts"] if min(one["volts"] for one in own) <= made <= 2 * highest],
            "across": between(known("across")), "high": between(known("high")), "pitch": known("pitch") or [math.nan],
        }
        mesh = numpy.meshgrid(*(numpy.array(axis, float) for axis in axes.values()), indexing="ij")
        lines = {name: part.ravel() for name, part in zip(axes, mesh)}
        count = len(lines["uf"])
        yield lines | {
            "celsius": numpy.full(count, 999.0), "low": numpy.full(count, True), "with": numpy.full(count, with_),
            "mounting": numpy.full(count, mounting),
        }


def one_line(spec):
    number = lambda figure: numpy.array([math.nan if figure is None else figure], float)
    return {
        "uf": number(spec["uf"]), "volts": number(spec["volts"]), "celsius": number(spec["celsius"]),
        "across": number(spec["diameter_mm"]), "high": number(spec["height_mm"]), "pitch": number(spec["pitch_mm"]),
        "with": numpy.array([spec["dielectric"]]), "mounting": numpy.array([spec["mounting"]]),
        "low": numpy.array([spec["low_esr"] or spec["dielectric"] == "polymer"]),
    }


def stock_line(one):
    return one_line({
        "uf": one["capacitance_uf"], "volts": one["voltage_v"], "celsius": one["temperature_c"],
        "diameter_mm": one["diameter_mm"], "height_mm": one["height_mm"], "pitch_mm": one["pitch_mm"],
        "dielectric": one["dielectric"] or "unknown", "mounting": one["mounting"] or "unknown",
        "low_esr": bool(one["low_esr"]),
    })


def columns(rules, demands, stock):
    """The distinct sets of demands that a line to buy, or one in stock, serves."""
    to_buy = set()
    for lines in grids(rules, demands):
        served = numpy.packbits([rules.serves(one, lines) for one in demands], axis=0)
        to_buy |= {column.tobytes() for column in numpy.unique(served, axis=1).T if column.any()}
    in_stock = set()
    for can in stock:
        column = numpy.packbits([rules.serves(one, stock_line(can))[0] for one in demands])
        if column.any():
            in_stock.add(column.tobytes())
    unpack = lambda packed: numpy.unpackbits(numpy.frombuffer(packed, numpy.uint8))[: len(demands)].astype(bool)
    return [(unpack(one), 0) for one in in_stock] + [(unpack(one), 1) for one in to_buy - in_stock]


def by_highs(sets, demands):
    matrix = numpy.array([served for served, _ in sets], float).T
    solved = milp(
        c=[len(demands) + 1 + bought for _, bought in sets], constraints=LinearConstraint(matrix, lb=1),
        integrality=numpy.ones(len(sets)), bounds=Bounds(0, 1), options={"mip_rel_gap": 0},
    )
    if not solved.success:
        sys.exit(f"HiGHS gave up: {solved.message}")
    chosen = [bought for (_, bought), share in zip(sets, solved.x) if share > 0.5]
    return len(chosen), chosen.count(0)


def by_cp_sat(sets, demands):
    model = cp_model.CpModel()
    chosen = [model.new_bool_var("") for _ in sets]
    for at in range(len(demands)):
        model.add_at_least_one(one for one, (served, _) in zip(chosen, sets) if served[at])
    model.minimize(sum(one * (len(demands) + 1 + bought) for one, (_, bought) in zip(chosen, sets)))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    if solver.solve(model) != cp_model.OPTIMAL:
        sys.exit("CP-SAT gave up")
    picked = [bought for one, (_, bought) in zip(chosen, sets) if solver.value(one)]
    return len(picked), picked.count(0)


def check(what, rules, kit, capacitors, stock):
    demands = [demand for one in capacitors if (demand := rules.demand(one))]
    cans = [one for one in stock if one["stock"] >= 1]
    thought_of = [*grids(rules, demands), *map(stock_line, cans)]
    hopeless = {one["id"] for one in demands if not any(rules.serves(one, lines).any() for lines in thought_of)}
    demands = [one for one in demands if one["id"] not in hopeless]
    told = {one["id"] for one in demands}
    left_out = {one["id"] for one in kit["left_out"]}
    if left_out != {one["id"] for one in capacitors} - told:
        sys.exit(f"{what}: other positions are left out than should be")
    by_id = {one["id"]: one for one in demands}
    served = [position["id"] for line in kit["lines"] for position in line["positions"]]
    if sorted(served) != sorted(told):
        sys.exit(f"{what}: a position is served by none, or twice")
    free = {one["name"]: int(one["stock"]) for one in stock}
    order = rules.order
    for line in kit["lines"]:
        spec = one_line(line)
        for position in line["positions"]:
            if not rules.serves(by_id[position["id"]], spec)[0]:
                sys.exit(f"{what}: {position['designator']} must not get {line}")
        if line["from_stock"] + line["to_buy"] != len(line["positions"]) or line["from_stock"] > free.get(line["material"], 0):
            sys.exit(f"{what}: the pieces of {line} do not add up")
        share = math.ceil(line["to_buy"] * order["spare_percent"] / 100 - 1e-9)
        if line["spares"] != (max(share, order["spare_least"]) if line["to_buy"] else 0):
            sys.exit(f"{what}: {line['spares']} spares for {line['to_buy']} to buy")
    if not demands:
        return 0
    sets = columns(rules, demands, cans)
    found = by_highs(sets, demands)
    if by_cp_sat(sets, demands) != found:
        sys.exit(f"{what}: the two solvers do not agree")
    if not kit["best"] or (len(kit["lines"]), kit["in_stock"]) != found or kit["least_lines"] > found[0]:
        sys.exit(f"{what}: {len(kit['lines'])} lines, {kit['in_stock']} in stock; should be {found}")
    return found[0]


def main():
    program, rules = sys.argv[1], Rules()
    cases = lines = positions = 0
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(LOGBOOKS):
            chance = random.Random(seed)
            parts = [board(chance, f"{seed}-{number}", chance.randint(5, 60)) for number in range(BOARDS)]
            stock = [material(chance, number) for number in range(chance.choice([0, 8, 40]))]
            logbook = f"{folder}/{seed}"
            run(program, "new", logbook)
            document = pathlib.Path(f"{folder}/{seed}.json")
            run(program, "export", logbook, document)
            book = json.loads(document.read_text(encoding="utf-8")) | {
                "part": [part for part, _ in parts], "material": stock,
                "capacitor": [one for _, capacitors in parts for one in capacitors],
            }
            document.write_text(json.dumps(book), encoding="utf-8")
            run(program, "import", logbook, document)
            for part, capacitors in parts:
                kit = json.loads(run(program, "kit", logbook, "--part", part["tag"], "--json"))
                lines += check(f"board {part['tag']}", rules, kit, capacitors, stock)
                positions += len(capacitors)
                cases += 1
    print(f"kits: {cases} boards with {positions} positions take {lines} lines, as few, and as many of them in stock,")
    print(f"  as HiGHS (scipy {scipy.__version__}) and CP-SAT (ortools {ortools.__version__}) find")


main()
