"""Referee for capacitors: the built program against eseries and rkm_codes (PyPI).

Usage: capacitors.py PROGRAM. Seeded random values in four series, up and down; seeded random letter-and-digit codes.
Prints how many values agreed; exits with 1 at the first that does not.
"""

import json
import math
import random
import subprocess
import sys
from importlib.metadata import version

import eseries
from rkm_codes import from_rkm

VALUES = 100
CODES = 300


def ours(program, *arguments):
    command = [program, *arguments, "--json"]
    return json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)


def same(one, other):
    return math.isclose(one, other, rel_tol=1e-9)


def preferred(program, chance):
    agreed = 0
    for series in (eseries.E3, eseries.E6, eseries.E12, eseries.E24):
        values = [10 ** chance.uniform(-9, 9) for _ in range(VALUES)]
        # Preferred values themselves too, where down and up are one.
        values += [float(f"{mantissa}e{chance.randint(-6, 6)}") for mantissa in eseries.series(series)]
        for value in values:
            found = ours(program, "work-out", "preferred", repr(value), "--series", series.name)
            expected = (
                eseries.find_less_than_or_equal(series, value),
                eseries.find_greater_than_or_equal(series, value),
            )
            if not (same(found["down"], expected[0]) and same(found["up"], expected[1])):
                sys.exit(f"{value} in {series.name}: {found}, eseries has {expected}")
            agreed += 2
    return agreed


def codes(program, chance):
    for _ in range(CODES):
        prefix = chance.choice("pnum")
        whole = chance.choice(["", str(chance.randint(1, 99))])
        fraction = str(chance.randint(1, 9)) if not whole else chance.choice(["", str(chance.randint(0, 9))])
        text = f"{whole}{prefix}{fraction}"
        found = ours(program, "read", "capacitor", text)["readings"][0]["capacitance_pf"]
        expected = float(from_rkm(text)) * 1e12
        if not same(found, expected):
            sys.exit(f"{text}: {found} pF, rkm_codes has {expected}")
    return CODES


def main():
    program, chance = sys.argv[1], random.Random(60063)
    print(f"capacitors: {preferred(program, chance)} preferred values agree with eseries {version('eseries')}")
    print(f"capacitors: {codes(program, chance)} letter-and-digit codes agree with rkm_codes {version('rkm_codes')}")


main()
