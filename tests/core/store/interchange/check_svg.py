"""Reads the sample drawings with an XML parser and compares them with the pattern's own curves.

True scale: width and height in mm equal to the viewBox, so that one user unit is one millimetre
(SVG 2, CSS Values and Units).
"""
import json
import pathlib
import re
import struct
import subprocess
import sys
import xml.etree.ElementTree as ElementTree

folders = sorted(p.parent for p in pathlib.Path(sys.argv[1]).glob("*/pattern.json"))
SVG = "{http://www.w3.org/2000/svg}"
ROUNDING_MM = 1e-4


def expect(claim, words):
    if not claim:
        sys.exit("check_svg: " + words)


def numbers(text):
    return [float(n) for n in re.findall(r"-?\d+(?:\.\d+)?", text)]


def pieces_of(d):
    """The cubic pieces of a path made of M, C and Z."""
    commands = re.findall(r"[A-Za-z]", d)
    expect(commands[0] == "M" and set(commands[1:]) <= {"C", "Z"}, "commands " + "".join(commands))
    values = numbers(d)
    for decimals in re.findall(r"\.(\d+)", d):
        expect(len(decimals) <= 4, "more than four decimals")
    return [values[i:i + 8] for i in range(0, len(values) - 7, 6)]


def page(root, name):
    box = numbers(root.get("viewBox"))
    expect(box[:2] == [0, 0], name + ": the origin moved")
    for key, value in (("width", box[2]), ("height", box[3])):
        expect(root.get(key) == re.split(" ", root.get("viewBox"))[2 if key == "width" else 3] + "mm",
               "%s: %s is not the viewBox in mm" % (name, key))
        expect(50 < value < 5000, "%s: %s %g mm" % (name, key, value))
    return box[2:]


def check_shifted(name, drawn, wanted):
    """Drawn pieces are the wanted ones with y turned down and one shift for all."""
    expect(len(drawn) == len(wanted), "%s: %d pieces, %d wanted" % (name, len(drawn), len(wanted)))
    shift_x = drawn[0][0] - wanted[0][0]
    shift_y = drawn[0][1] + wanted[0][1]
    for d, w in zip(drawn, wanted):
        for i in range(4):
            off = max(abs(d[2 * i] - w[2 * i] - shift_x), abs(d[2 * i + 1] + w[2 * i + 1] - shift_y))
            expect(off <= 3 * ROUNDING_MM, "%s: %.5f mm off" % (name, off))
    return shift_x, shift_y


def group(root, name):
    found = [g for g in root.iter(SVG + "g") if g.get("id") == name]
    expect(len(found) == 1, "groups called %s: %d" % (name, len(found)))
    return found[0]


def paths(element):
    return [p for path in element.iter(SVG + "path") for p in pieces_of(path.get("d"))]


def check_file(folder, name, panels):
    root = ElementTree.parse(folder / name).getroot()
    width, height = page(root, name)
    ids = [e.get("id") for e in root.iter() if e.get("id")]
    expect(len(ids) == len(set(ids)), name + ": an id stands twice")
    for panel in panels:
        own = "panel-" + panel["name"]
        shift = check_shifted(own, paths(group(root, own + "-sewing")), panel["sewing"])
        if "cutting" in panel:
            again = check_shifted(own, paths(group(root, own + "-cutting")), panel["cutting"])
            expect(max(abs(a - b) for a, b in zip(shift, again)) <= 3 * ROUNDING_MM,
                   own + ": cutting and sewing lines moved apart")
        for piece in paths(group(root, own)):
            expect(all(0 <= x <= width for x in piece[0::2]), own + " leaves the page")
            expect(all(0 <= y <= height for y in piece[1::2]), own + " leaves the page")
    check_rendered(folder, name, width, height)


def check_rendered(folder, name, width, height):
    """librsvg at 25.4 dots an inch: one pixel is one millimetre."""
    png = folder / (name + ".png")
    subprocess.run(["rsvg-convert", "--dpi-x", "25.4", "--dpi-y", "25.4", str(folder / name), "-o",
                    str(png)], check=True)
    size = struct.unpack(">II", png.read_bytes()[16:24])
    expect(abs(size[0] - width) <= 1 and abs(size[1] - height) <= 1,
           "%s: rendered %dx%d for %gx%g mm" % (name, *size, width, height))


def joined(edges):
    return [piece for edge in edges for piece in edge["path"]]


expect(len(folders) >= 12, "only %d samples" % len(folders))
count = 0
for folder in folders:
    pattern = json.loads((folder / "pattern.json").read_text())
    check_file(folder, "pattern.svg",
               [dict(name=p["name"], sewing=joined(p["edges"])) for p in pattern["panels"]])
    tracings = json.loads((folder / "tracings.json").read_text())["tracings"]
    check_file(folder, "tracings.svg",
               [dict(name=t["panel"], sewing=joined(t["sewing"]), cutting=t["cutting"])
                for t in tracings])
    count += len(tracings)
print("check_svg: %d patterns, %d tracings" % (len(folders), count))
