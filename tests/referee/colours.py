"""Referee for colours: the built program against the library colour-science (PyPI), on seeded random samples.

Usage: colours.py PROGRAM. Prints how many values agreed; exits with 1 at the first that does not.
"""

import json
import random
import subprocess
import sys
import warnings

warnings.simplefilter("ignore")  # the library speaks of optional plotting parts

import numpy
import colour
from colour.colorimetry.yellowness import (
    YELLOWNESS_COEFFICIENTS_ASTME313 as COEFFICIENTS,
    yellowness_ASTME313,
)

SAMPLES = 150
WHITE = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D65"]
D65_2 = COEFFICIENTS["CIE 1931 2 Degree Standard Observer"]["D65"]


def ours(program, sample, other):
    command = [program, "work-out", "colour", sample, "--against", other, "--json"]
    return json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)


def theirs(sample):
    encoded = numpy.array([int(sample[at : at + 2], 16) for at in (0, 2, 4)]) / 255
    xyz = colour.sRGB_to_XYZ(encoded)
    return 100 * xyz, colour.XYZ_to_Lab(xyz, WHITE)


def main():
    program = sys.argv[1]
    chance = random.Random(1931)
    # Near-white plastics first, where yellowness is meant for, then anything.
    samples = [f"{chance.randint(0xA0, 0xFF):02X}" * 3 for _ in range(10)]
    samples += ["".join(f"{chance.randint(low, 255):02X}" for _ in range(3)) for low in (160, 1) for _ in range(SAMPLES // 2)]
    agreed = 0
    for sample in samples:
        other = chance.choice(samples)
        answer = ours(program, sample, other)
        (xyz, lab), (_, other_lab) = theirs(sample), theirs(other)
        pairs = [
            *zip("XYZ", answer["xyz"].values(), xyz),
            *zip(("L*", "a*", "b*"), answer["lab"].values(), lab),
            ("yellowness", answer["yellowness"]["index"], float(yellowness_ASTME313(xyz, D65_2))),
            ("CIEDE2000", answer["against"]["delta_e_2000"], float(colour.delta_E(lab, other_lab, method="CIE 2000"))),
        ]
        for name, own, reference in pairs:
            if abs(own - reference) > 1e-4:
                sys.exit(f"{name} of {sample} (against {other}): {own}, colour-science has {reference}")
            agreed += 1
    print(f"colour: {agreed} values of {len(samples)} samples agree with colour-science {colour.__version__}")


main()
