"""Reads the cutter drawings with an XML parser and with ezdxf and compares both with the tracings.

Kerf: every point of a cut outline lies half the kerf outside of the cutting line (geometry; mitred
corners reach farther). Order: notches of a piece before its outline, each next piece the nearest.
"""
import json
import math
import pathlib
import re
import sys
import xml.etree.ElementTree as ElementTree

import ezdxf

from bezier import Chain, evenly

SVG = "{http://www.w3.org/2000/svg}"
HALF_KERF_MM = 0.1  # write_sample_drawings.cpp cuts with 0.2 mm
OFFSET_MM = 0.015  # the promise of offsets, 0.01 mm, and what chords and rounding add


def expect(claim, words):
    if not claim:
        sys.exit("check_cutter: " + words)


def pieces_of(d):
    values = [float(n) for n in re.findall(r"-?\d+(?:\.\d+)?", d)]
    return [values[i:i + 8] for i in range(0, len(values) - 7, 6)]


def cuts_of(svg):
    """(panel, kind, closed, points in mm) in the order of the file, y up from the page's top."""
    root = ElementTree.parse(svg).getroot()
    box = root.get("viewBox").split()
    expect(root.get("width") == box[2] + "mm" and root.get("height") == box[3] + "mm",
           "not in millimetres")
    expect(not list(root.iter(SVG + "text")), "words among the cuts")
    for panel in root.findall(SVG + "g"):
        x, y = (float(n) for n in panel.get("data-origin").split())
        for group in panel.findall(SVG + "g"):
            kind = group.get("id")[len(panel.get("id")) + 1:]
            for path in group.findall(SVG + "path"):
                points = evenly(pieces_of(path.get("d")), 0.5)
                yield (panel.get("aria-label"), kind, path.get("d").endswith("Z"),
                       [(px - x, y - py) for px, py in points], points)


def area(ring):
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:] + ring[:1]))) / 2


def check_folder(folder):
    tracings = {t["panel"]: t for t in json.loads((folder / "tracings.json").read_text())["tracings"]}
    cuts = list(cuts_of(folder / "cutter.svg"))
    drawn = [c[0] for c in cuts]
    blocks = [k for i, k in enumerate(drawn) if i == 0 or drawn[i - 1] != k]
    expect(len(blocks) == len(set(blocks)), "a piece is cut in two goes")
    wanted = set(tracings)
    wanted |= {n + " mirrored" for n, t in tracings.items() if t["mirrored_pair"] and t["cut"] > 1}
    expect(set(blocks) == wanted, "pieces %s" % sorted(set(blocks) ^ wanted))
    for name in blocks:
        own = [c for c in cuts if c[0] == name]
        kinds = [c[1] for c in own]
        expect(kinds == sorted(kinds, key=("eyelets", "notches", "cutting").index) and
               kinds.count("cutting") == 1, "%s is cut in the order %s" % (name, kinds))
        expect(own[-1][2], name + ": the outline is not closed")
        check_outline(name, own[-1][3], tracings[name.replace(" mirrored", "")],
                      name.endswith(" mirrored"))
    check_nearest([[c[4] for c in cuts if c[0] == name] for name in blocks])
    check_dxf(folder, cuts)
    return len(blocks)


def check_outline(name, outline, tracing, is_mirrored):
    chain = evenly(tracing["cutting"], 0.5)
    if is_mirrored:
        chain = [(-x, y) for x, y in chain]
    if tracing["on_fold"]:
        expect(1.99 < area(outline) / area(chain) < 2.05, name + " is not unfolded")
        return
    lines = Chain(chain)
    apart = [lines.distance(p) for p in outline[::5]]
    for distance in apart:
        expect(HALF_KERF_MM - OFFSET_MM <= distance <= 3 * HALF_KERF_MM + OFFSET_MM,
               "%s: %.4f mm from the cutting line" % (name, distance))
    near = sum(distance <= HALF_KERF_MM + OFFSET_MM for distance in apart)
    expect(near >= 0.95 * len(apart), name + ": farther than half the kerf")
    expect(area(outline) > area(chain), name + ": cut inside of the cutting line")


def check_nearest(pieces):
    at = None
    for i, lines in enumerate(pieces):
        if at is not None:
            way = math.dist(at, lines[0][0])
            for later in pieces[i + 1:]:
                expect(way <= math.dist(at, later[0][0]) + 1e-6, "a nearer piece is cut later")
        at = lines[-1][-1]


def check_dxf(folder, cuts):
    document = ezdxf.readfile(folder / "cutter.dxf")
    expect(not document.audit().has_errors, "ezdxf finds errors")
    lines = list(document.modelspace())
    expect(len(lines) == len(cuts), "%d lines in DXF, %d in SVG" % (len(lines), len(cuts)))
    layer = {"cutting": "1", "notches": "4", "eyelets": "11"}
    first = [v.dxf.location for v in lines[0].vertices][0]
    shift = (first.x - cuts[0][4][0][0], first.y + cuts[0][4][0][1])
    for line, cut in zip(lines, cuts):
        expect(line.dxf.layer == layer[cut[1]] and line.is_closed == cut[2],
               cut[0] + ": another order than in SVG")
        points = [(v.dxf.location.x, v.dxf.location.y) for v in line.vertices]
        svg = [(x + shift[0], shift[1] - y) for x, y in cut[4]]
        if cut[2]:
            svg.append(svg[0])
        drawn = Chain(svg)
        for p in points[::3]:
            expect(drawn.distance(p) <= 0.02, cut[0] + ": DXF and SVG differ")


folders = sorted(p.parent for p in pathlib.Path(sys.argv[1]).glob("*/cutter.svg"))
expect(len(folders) >= 12, "only %d samples" % len(folders))
print("check_cutter: %d pieces of %d patterns" % (sum(map(check_folder, folders)), len(folders)))
