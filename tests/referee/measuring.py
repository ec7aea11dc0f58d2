"""Referee for measuring on photographs: the built program against shapely, OpenCV, pyclipper and colour-science (PyPI).

Usage: measuring.py PROGRAM. Seeded random marks go into a logbook by an exchange document and come back measured: lengths
and areas through OpenCV's homography, areas by shapely and OpenCV, of outlines that cross themselves by pyclipper's
non-zero rule, shares by shapely's union and intersection; patches of drawn pictures by shapely's point-in-polygon, their
light, yellowness and CIEDE2000 by colour-science. Exits with 1 at the first that does not agree.
"""

import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile
import uuid
import warnings

warnings.simplefilter("ignore")  # colour-science speaks of optional plotting parts

import colour
import cv2
import numpy
import pyclipper
import shapely
from colour.colorimetry.yellowness import (
    YELLOWNESS_COEFFICIENTS_ASTME313 as COEFFICIENTS,
    yellowness_ASTME313,
)
from PIL import Image

GEOMETRY_CASES = 300
COLOUR_CASES = 80
# Points on sixteenths of a pixel are shares that single precision holds exactly, as OpenCV holds points.
SIZE = (4096, 2048)
# OpenCV solves for a homography the more exactly, the nearer to 1 its figures are; not better than this even so (in
# fractions the program's own figures came out right to fourteen digits).
NEAR_ONE = 4096
OPENCV = 1e-5
OBSERVER = "CIE 1931 2 Degree Standard Observer"
WHITE = colour.CCS_ILLUMINANTS[OBSERVER]["D65"]
D65_2 = COEFFICIENTS[OBSERVER]["D65"]
PART = "0190163d-8694-739b-aea5-966c26f8ad91"
# What lies so many times farther off than the nearest corner of the rectangle is not measured.
FARTHEST = 1000
agreed = 0


def ask(program, *arguments):
    command = [program, *map(str, arguments), "--json"]
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"{' '.join(command)}: {done.stdout}{done.stderr}")
    return json.loads(done.stdout)


def agree(what, ours, theirs, share=1e-6, least=1e-9):
    global agreed
    if ours is None or abs(ours - theirs) > max(abs(theirs) * share, least):
        sys.exit(f"{what}: {ours}, the reference has {theirs}")
    agreed += 1


def key(chance):
    """A UUID of version 7 (RFC 9562, 5.7)."""
    bits = chance.getrandbits(128) & ~(0xF << 76) & ~(0x3 << 62)
    return str(uuid.UUID(int=bits | 0x7 << 76 | 0x2 << 62))


def mark(chance, photo, role, points, **told):
    """Points are pixels; the logbook keeps shares of single precision, from which the reference starts too."""
    size = told.pop("size", SIZE)
    shares = (numpy.asarray(points, dtype=float) * 16).round() / 16 / size
    shares = numpy.clip(shares, 0, 1).astype(numpy.float32)
    fields = dict.fromkeys(
        ["finding", "capacitor", "marking", "work", "length_mm", "breadth_mm", "red", "green", "blue", "clipped_percent"]
    )
    fields |= {"id": key(chance), "photo": photo, "role": role, "note": "", "points": shares.astype(float).tolist()}
    return fields | told, shares.astype(float) * size


def around(chance, corners):
    """Angles in order, none half a turn from the next, so that no edges cross."""
    return [2 * math.pi * (corner + chance.uniform(0, 0.4)) / corners for corner in range(corners)]


def round_outline(chance, corners=None):
    """An outline that does not cross itself, round a middle, within the picture."""
    corners = corners or chance.randint(3, 40)
    radius = chance.uniform(30, 700)
    middle = [chance.uniform(radius, side - radius) for side in SIZE]
    turns = around(chance, corners)
    far = [radius * chance.uniform(0.3, 1) for _ in turns]
    return [[middle[0] + r * math.cos(t), middle[1] + r * math.sin(t)] for r, t in zip(far, turns)]


def quadrangle(chance):
    """A rectangle as a tilted camera may see it."""
    width, height = chance.uniform(300, 1500), chance.uniform(300, 1200)
    left, top = chance.uniform(0, SIZE[0] - width), chance.uniform(0, SIZE[1] - height)
    corners = [[left, top], [left + width, top], [left + width, top + height], [left, top + height]]
    return [[x + chance.uniform(-0.2, 0.2) * width, y + chance.uniform(-0.2, 0.2) * height] for x, y in corners]


def on_picture(points):
    return all(0 <= x <= SIZE[0] and 0 <= y <= SIZE[1] for x, y in points)


class Case:
    """A photograph with random marks, and what they measure."""

    def __init__(self, chance):
        self.photo, self.marks, self.checks = key(chance), [], []
        basis = chance.choice(["pixels", "scale", "rectangle", "rectangle"])
        to_plane, farness = self.basis(chance, basis)
        self.basis_name, self.most_apart = basis, OPENCV if basis == "rectangle" else 1e-7

        def add(role, outline, **told):
            fields, points = mark(chance, self.photo, role, outline, **told)
            self.marks.append(fields)
            return fields["id"], points

        def check(ident, points, name, value):
            self.checks.append((ident, name, value, farness(points)))

        def far(points):
            return farness(points) >= FARTHEST

        def mapped(points):
            return NEAR_ONE * cv2.perspectiveTransform(points.reshape(-1, 1, 2) / NEAR_ONE, to_plane).reshape(-1, 2)

        for _ in range(2):
            ident, points = add("length", [[chance.uniform(0, side) for side in SIZE] for _ in range(chance.randint(2, 6))])
            steps = numpy.diff(mapped(points), axis=0)
            check(ident, points, "length", float(numpy.hypot(*steps.T).sum()))
        surfaces, damages = [], []
        for role, kept in [("surface", surfaces)] + [("damage", damages)] * chance.randint(1, 5):
            ident, points = add(role, round_outline(chance))
            outline = mapped(points)
            area = shapely.Polygon(outline).area
            if not far(points):
                # OpenCV keeps points in single precision.
                agree("shapely beside OpenCV", area, cv2.contourArea((outline - outline[0]).astype(numpy.float32)), 1e-3, 1e-2)
            check(ident, points, "area", area)
            kept.append((points, outline))
        ident, points = add("place", [[chance.uniform(0, side) for side in SIZE] for _ in range(chance.randint(4, 12))])
        check(ident, points, "area", clipped_area(mapped(points)))
        self.has_share = not any(far(points) for points, _ in surfaces + damages)
        self.farthest = max(1, *(farness(points) for points, _ in surfaces + damages))
        if self.has_share:
            surface = shapely.Polygon(surfaces[0][1])
            union = shapely.unary_union([shapely.Polygon(outline) for _, outline in damages])
            # Damage that touches the surface nowhere is of another.
            on = [shapely.Polygon(o) for _, o in damages if shapely.Polygon(o).intersection(surface).area > 0]
            counted = shapely.unary_union(on) if on else shapely.Polygon()
            common = union.intersection(surface).area
            self.share = (surface.area, common, 100 * (1 - common / counted.area) if on else 0.0)

    def basis(self, chance, basis):
        if basis == "pixels":
            return numpy.eye(3), lambda _: 1
        mm = chance.randint(20, 1200) / 4
        if basis == "scale":
            fields, points = mark(
                chance, self.photo, "scale", [[chance.uniform(0, side) for side in SIZE] for _ in range(2)], length_mm=mm
            )
            self.marks.append(fields)
            by = mm / math.dist(*points)
            return numpy.diag([by, by, 1.0]), lambda _: 1
        corners = quadrangle(chance)
        while not on_picture(corners):
            corners = quadrangle(chance)
        other = chance.randint(20, 1200) / 4
        fields, points = mark(chance, self.photo, "rectangle", corners, length_mm=mm, breadth_mm=other)
        self.marks.append(fields)
        plane = numpy.array([[0, 0], [mm, 0], [mm, other], [0, other]], dtype=numpy.float32)
        to_plane = cv2.getPerspectiveTransform((points / NEAR_ONE).astype(numpy.float32), plane / NEAR_ONE)

        def depths(points):
            return numpy.column_stack([points / NEAR_ONE, numpy.ones(len(points))]) @ to_plane[2]

        nearest = max(depths(points), key=abs)

        def farness(points):
            """How many times farther off than the rectangle's nearest corner."""
            least = (depths(points) / nearest).min()
            return 1 / least if least > 0 else math.inf

        return to_plane, farness

    def record(self):
        return {
            "id": self.photo, "part": PART, "machine": None, "lot": None, "content": self.photo.replace("-", "") * 2,
            "extension": "png", "width_px": SIZE[0], "height_px": SIZE[1], "added": {"on": "2025-01-01", "sequence": 1},
            "taken": "", "view": "detail", "caption": "", "is_map": False,
        }  # fmt: skip

    def check(self, answer):
        if answer["basis"] != self.basis_name:
            sys.exit(f"{answer['basis']} instead of {self.basis_name}: {answer['why_not']}")
        by_id = {line["mark"]: line for line in answer["marks"]}
        for ident, name, theirs, farness in self.checks:
            line = by_id[ident]
            if (farness >= FARTHEST) != (line["why_not"] is not None):
                sys.exit(f"{line}: {farness} times farther than the rectangle")
            if farness < FARTHEST:
                # Towards the horizon rounding grows.
                agree(f"{name} of a {line['role']}", line[name], theirs, self.most_apart * max(1, farness))
        if not self.has_share:
            if answer["no_shares"] is None:
                sys.exit("a share of what cannot be measured")
            return
        share = answer["shares"][0]
        area, damaged, outside = self.share
        apart = self.most_apart * self.farthest
        agree("surface", share["surface_area"], area, apart)
        agree("damage", share["damaged_area"], damaged, least=area * apart)
        agree("share", share["share_percent"], 100 * damaged / area, least=100 * apart)
        agree("outside", share["outside_percent"], outside, least=100 * apart * max(1, area / max(damaged, area * 1e-3)))


def clipped_area(points):
    """The area that an outline goes round, whichever way and how often."""
    fine = 2.0**40 / max(1.0, numpy.abs(points).max())
    simple = pyclipper.SimplifyPolygon(
        (points * fine).round().astype(numpy.int64).tolist(), pyclipper.PFT_NONZERO
    )
    return abs(sum(pyclipper.Area(contour) for contour in simple)) / fine / fine


def geometry(program, chance, folder):
    cases = [Case(chance) for _ in range(GEOMETRY_CASES)]
    logbook = logbook_with(program, folder, "geometry", [case.record() for case in cases], [m for c in cases for m in c.marks])
    answers = {photo["photo"]: photo for photo in ask(program, "photos", logbook, "marks", "0042")["photos"]}
    for case in cases:
        case.check(answers[case.photo])
    far = sum(farness >= FARTHEST for case in cases for *_, farness in case.checks)
    print(f"measuring: {len(cases)} photographs, {agreed} figures agree with shapely {shapely.__version__}, OpenCV "
          f"{cv2.__version__} and pyclipper; {far} outlines beyond a horizon are refused")  # fmt: skip


def logbook_with(program, folder, name, photos, marks):
    logbook, document = folder / f"{name}.logbook", folder / f"{name}.json"
    ask(program, "new", logbook)
    ask(program, "export", logbook, document)
    book = json.loads(document.read_text())
    book["part"] = [
        {
            "id": PART, "tag": "0042", "kind": "mainboard", "design": None, "name": "Nordkamp NB-4", "serial": "",
            "originality": "original", "lot": None, "price_cents": None, "acquired": "", "place": None, "inside": None,
            "quarantine": "", "quarantined": "", "note": "",
        }
    ]  # fmt: skip
    book["photo"], book["photo_mark"] = photos, marks
    document.write_text(json.dumps(book))
    ask(program, "import", logbook, document)
    return logbook


class Patches:
    """A drawn picture of three patches: neutral, hidden side, and what is asked; each with its outline."""

    SIZE = (180, 120)
    ROLES = ("reference", "hidden", "sample")

    def __init__(self, chance, noise, lamp):
        grey, plastic = chance.uniform(0.3, 0.8), [chance.uniform(0.75, 0.98), chance.uniform(0.72, 0.95), chance.uniform(0.5, 0.9)]
        hidden = [min(1.0, value + chance.uniform(0, 0.1)) for value in plastic]
        pixels = numpy.zeros((self.SIZE[1], self.SIZE[0], 3))
        for column, base in enumerate(([grey] * 3, hidden, plastic)):
            light = colour.cctf_decoding(numpy.array(base), function="sRGB") * lamp
            patch = colour.cctf_encoding(light, function="sRGB") * 255 + noise.normal(0, 6, (self.SIZE[1], 60, 3))
            pixels[:, 60 * column : 60 * (column + 1)] = patch
        self.pixels = pixels.clip(0, 255).round().astype(numpy.uint8)
        self.outlines = {}
        for column, role in enumerate(self.ROLES):
            turns = around(chance, chance.randint(3, 9))
            middle, reach = [60 * column + 30, 60], 0.4 if chance.random() < 0.1 else chance.uniform(4, 28)
            self.outlines[role] = [[middle[0] + reach * math.cos(t), middle[1] + reach * math.sin(t)] for t in turns]

    def taken(self, points):
        """Linear mean and clipped share of the pixels whose centres lie inside."""
        width, height = self.SIZE
        across, down = numpy.meshgrid(numpy.arange(width) + 0.5, numpy.arange(height) + 0.5)
        inside = shapely.contains_xy(shapely.Polygon(points), across, down)
        if not inside.any():
            x, y = numpy.mean(points, axis=0).astype(int)
            inside[y, x] = True
        chosen = self.pixels[inside]
        clipped = ((chosen == 0) | (chosen >= 254)).any(axis=1).mean() * 100
        return colour.cctf_decoding(chosen / 255, function="sRGB").mean(axis=0), clipped


def luminance(light):
    return colour.sRGB_to_XYZ(light, apply_cctf_decoding=False)[1]


def under_neutral(light, neutral, brightness=None):
    return (light * (brightness or luminance(neutral)) / neutral).clip(0, 1)


def lab(light):
    return colour.XYZ_to_Lab(colour.sRGB_to_XYZ(light, apply_cctf_decoding=False), WHITE)


def yellowness(light):
    return float(yellowness_ASTME313(colour.sRGB_to_XYZ(light, apply_cctf_decoding=False), D65_2))


def apart(one, other):
    return float(colour.delta_E(lab(one), lab(other), method="CIE 2000"))


def colours(program, chance, folder):
    """Of each case an earlier and a later picture, under two lamps."""
    noise = numpy.random.default_rng(1931)
    pictures, files = {}, []
    for case in range(COLOUR_CASES):
        for time in ("2023-04", "2025-06-02"):
            picture = Patches(chance, noise, numpy.array([chance.uniform(0.6, 0.95) for _ in range(3)]))
            path = folder / f"{case}-{time}.png"
            Image.fromarray(picture.pixels).save(path)
            files.append(path)
            pictures[str(path)] = (case, time, picture)
    logbook = logbook_with(program, folder, "colours", [], [])
    kept = {k["photo"]: pictures[k["file"]] for k in ask(program, "photos", logbook, "add", "0042", *files)["kept"]}
    document = folder / "marked.json"
    ask(program, "export", logbook, document)
    book = json.loads(document.read_text())
    points = {}
    for photo in book["photo"]:
        case, photo["taken"], picture = kept[photo["id"]]
        for role in Patches.ROLES:
            fields, where = mark(chance, photo["id"], role, picture.outlines[role], size=Patches.SIZE, note=f"case {case}")
            book.setdefault("photo_mark", []).append(fields)
            points[photo["id"], role] = where
    document.write_text(json.dumps(book))
    ask(program, "import", logbook, document)
    answers = {photo["photo"]: photo for photo in ask(program, "photos", logbook, "marks", "0042")["photos"]}
    before = agreed
    lights = {(kept[ident][0], kept[ident][1]): {r: kept[ident][2].taken(points[ident, r])[0] for r in Patches.ROLES} for ident in kept}
    for ident, (case, time, picture) in kept.items():
        light = lights[case, time]
        for line in answers[ident]["marks"]:
            role, what = line["role"], f"case {case}, {time}, {line['role']}"
            encoded = colour.cctf_encoding(light[role], function="sRGB")
            for ours, theirs in zip(line["sampled"], encoded):
                agree(f"{what}: colour", ours, float(theirs), least=1e-6)
            clipped = picture.taken(points[ident, role])[1]
            agree(f"{what}: clipped", line["clipped_percent"], float(clipped), least=1e-9)
            warnings_ = json.dumps(line["tone"]["warnings"])
            if role != "reference" and ("clipped\": " in warnings_.lower()) != (clipped > 1):
                sys.exit(f"{what}: {clipped} % clipped, warned of {warnings_}")
            if role == "reference":
                continue
            plain = under_neutral(light[role], light["reference"])
            agree(f"{what}: yellowness", line["tone"]["yellowness"]["index"], yellowness(plain), least=2e-3)
            differences = {next(iter(d["other"])): d for d in line["tone"]["differences"]}
            if role == "hidden":
                continue
            other = under_neutral(light["hidden"], light["reference"])
            agree(f"{what}: hidden side", differences["hidden"]["delta_e_2000"], apart(plain, other), least=1e-3)
            agree(f"{what}: yellower", differences["hidden"]["yellower"], yellowness(plain) - yellowness(other), least=4e-3)
            if time == "2023-04":
                continue
            earlier = lights[case, "2023-04"]
            both = min(luminance(light["reference"]), luminance(earlier["reference"]))
            now = under_neutral(light["sample"], light["reference"], both)
            then = under_neutral(earlier["sample"], earlier["reference"], both)
            agree(f"{what}: earlier", differences["earlier"]["delta_e_2000"], apart(now, then), least=1e-3)
    print(f"measuring: {agreed - before} colours of {len(kept)} pictures agree with colour-science {colour.__version__}")


def main():
    program = sys.argv[1]
    chance = random.Random(4628)
    with tempfile.TemporaryDirectory() as folder:
        geometry(program, chance, pathlib.Path(folder))
        colours(program, chance, pathlib.Path(folder))


main()
