"""Referee for photographs: the built program against Pillow, pillow-heif and piexif (PyPI) on the same files.

Usage: photographs.py PROGRAM. Files of all eight orientations, with times, cameras and places, go into a logbook and out
again: sizes, times and cameras as the libraries read them; the copies' pixels as Pillow's ImageOps.exif_transpose turns
the originals; no place or time left in a copy. Exits with 1 at the first that does not agree.
"""

import json
import pathlib
import random
import subprocess
import sys
import tempfile

import numpy
import piexif
import pillow_heif
from PIL import ExifTags, Image, ImageOps

# What may differ, of 255: nothing where pixels are stored as they are, the decoders' rounding where they are coded; in
# HEIC also colour at a hard edge, which decoders spread differently over the pixels that share it.
MOST = {"jpg": 6, "png": 0, "webp": 0, "tiff": 0, "heic": 90}
MOST_MEAN = {"jpg": 0.6, "png": 0, "webp": 0, "tiff": 0, "heic": 1.5}


def ask(program, *arguments):
    command = [program, *map(str, arguments), "--json"]
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"{' '.join(command)}: {done.stdout}{done.stderr}")
    return json.loads(done.stdout)


def scene(chance, size=(180, 120)):
    """A soft picture with a hard corner, so that a turn shows."""
    width, height = size
    across, down = numpy.meshgrid(numpy.linspace(0, 1, width), numpy.linspace(0, 1, height))
    one, two = chance.random(), chance.random()
    colours = [across * 200 + 30, down * 180 + 40 * one, (across + down) * 90 + 50 * two]
    picture = numpy.stack(colours, axis=-1)
    picture[: height // 3, : width // 4] = [240, 20, 20]
    return Image.fromarray(picture.clip(0, 255).astype(numpy.uint8))


def noted(chance, orientation):
    taken = f"{chance.randint(1999, 2025)}:{chance.randint(1, 12):02}:{chance.randint(1, 28):02} " + ":".join(
        f"{chance.randint(0, top):02}" for top in (23, 59, 59)
    )
    offset = chance.choice(["+00:00", "+02:00", "-03:30", "+05:45", None])
    exif = {piexif.ExifIFD.DateTimeOriginal: taken.encode()}
    if offset:
        exif[piexif.ExifIFD.OffsetTimeOriginal] = offset.encode()
    place = {
        piexif.GPSIFD.GPSLatitudeRef: b"N",
        piexif.GPSIFD.GPSLatitude: [(58, 1), (13, 1), (7, 1)],
        piexif.GPSIFD.GPSLongitudeRef: b"E",
        piexif.GPSIFD.GPSLongitude: [(12, 1), (chance.randint(0, 59), 1), (1, 1)],
    }
    first = {piexif.ImageIFD.Orientation: orientation, piexif.ImageIFD.Model: b"HO-12"}
    return piexif.dump({"0th": first, "Exif": exif, "GPS": place})


def write(picture, path, exif):
    options = {"jpg": {"quality": 93}, "webp": {"lossless": True}, "heic": {"quality": 90}}
    picture.save(path, exif=exif, **options.get(path.suffix[1:], {}))


def as_theirs(path):
    """Size, time and camera as Pillow reads them, and the picture turned by Pillow."""
    picture = Image.open(path)
    exif = picture.getexif()
    details = exif.get_ifd(ExifTags.IFD.Exif)
    if not exif.get_ifd(ExifTags.IFD.GPSInfo):
        sys.exit(f"{path.name}: there was no place in the original to begin with")
    date, time = details[ExifTags.Base.DateTimeOriginal].split()
    taken = date.replace(":", "-") + "T" + time + details.get(ExifTags.Base.OffsetTimeOriginal, "")
    turned = ImageOps.exif_transpose(picture).convert("RGB")
    return turned.size, taken, exif[ExifTags.Base.Model], numpy.asarray(turned).astype(int)


def check_copy(path, pixels, kind):
    copy = Image.open(path)
    exif = copy.getexif()
    left = {ExifTags.TAGS.get(tag, tag) for tag in exif} - {"Orientation"}
    if left or exif.get_ifd(ExifTags.IFD.GPSInfo) or exif.get_ifd(ExifTags.IFD.Exif):
        sys.exit(f"{path}: notes are left: {left}")
    if any(word in path.read_bytes() for word in (b"HO-12", b"GPS", b"DateTime")):
        sys.exit(f"{path}: words of the notes are left")
    ours = numpy.asarray(ImageOps.exif_transpose(copy).convert("RGB")).astype(int)
    if ours.shape != pixels.shape:
        sys.exit(f"{path}: {ours.shape} pixels, Pillow has {pixels.shape}")
    difference = numpy.abs(ours - pixels)
    if difference.max() > MOST[kind] or difference.mean() > MOST_MEAN[kind]:
        sys.exit(f"{path}: pixels differ by up to {difference.max()}, {difference.mean():.2f} on average")


def logbook_with_part(program, folder):
    logbook, document = folder / "w.logbook", folder / "w.json"
    ask(program, "new", logbook)
    ask(program, "export", logbook, document)
    book = json.loads(document.read_text())
    book["part"] = [
        {
            "id": "0190163d-8694-739b-aea5-966c26f8ad91", "tag": "0042", "kind": "mainboard", "design": None,
            "name": "Nordkamp NB-4", "serial": "", "originality": "original", "lot": None, "price_cents": None,
            "acquired": "", "place": None, "inside": None, "quarantine": "", "quarantined": "", "note": "",
        }
    ]
    document.write_text(json.dumps(book))
    ask(program, "import", logbook, document)
    return logbook


def main():
    program = sys.argv[1]
    pillow_heif.register_heif_opener()
    chance = random.Random(2008)
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        logbook = logbook_with_part(program, folder)
        originals = []
        for kind in MOST:
            for orientation in range(1, 9):
                path = folder / f"{orientation}.{kind}"
                write(scene(chance), path, noted(chance, orientation))
                originals.append(path)
        answer = ask(program, "photos", logbook, "add", "0042", *originals)
        theirs = {}
        for kept in answer["kept"]:
            path = pathlib.Path(kept["file"])
            size, taken, camera, pixels = as_theirs(path)
            ours = ((kept["width_px"], kept["height_px"]), kept["taken"], kept["camera"])
            if ours != (size, taken, camera):
                sys.exit(f"{path.name}: {ours}, Pillow has {(size, taken, camera)}")
            theirs[kept["photo"]] = (pixels, path.suffix[1:])
        copies = ask(program, "photos", logbook, "copy", "0042", folder / "out")["copied"]
        for copied in copies:
            check_copy(pathlib.Path(copied["file"]), *theirs[copied["photo"]])
    if len(theirs) != len(originals) or len(copies) != len(originals):
        sys.exit(f"{len(theirs)} of {len(originals)} taken in, {len(copies)} copied")
    print(f"photographs: {len(originals)} files and their copies agree with Pillow {Image.__version__}, {', '.join(MOST)}")


main()
