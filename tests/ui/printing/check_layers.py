#!/usr/bin/env python3
"""Shows a PDF of sheets layer by layer, by a reader that knows nothing of the program that wrote it
(pikepdf switches, poppler draws), and looks whether the ink is where the lines of that kind are.

Optional content: ISO 32000-1, 8.11 (from memory).

usage: check_layers.py FILE.pdf TRUTH.json SCRATCH
exit 0 when everything holds."""
import json
import math
import pathlib
import subprocess
import sys

import pikepdf

DPI = 60
PX = 25.4 / DPI  # mm
DARK = 200

path, truth, scratch = sys.argv[1], json.load(open(sys.argv[2], encoding="utf-8")), sys.argv[3]


def expect(claim, words):
    if not claim:
        sys.exit("check_layers: " + words)


def layers(pdf):
    return {str(layer.Name): layer for layer in pdf.Root.OCProperties.OCGs}


def only(names, file):
    """The same file with these layers shown."""
    with pikepdf.open(path) as pdf:
        off = [layer for name, layer in layers(pdf).items() if name not in names]
        pdf.Root.OCProperties.D[pikepdf.Name.OFF] = pikepdf.Array(off)
        pdf.save(file)


def ink(names, page):
    """Dark pixels (column, row) of a page with these layers shown."""
    file = pathlib.Path(scratch) / "shown.pdf"
    only(names, file)
    stem = pathlib.Path(scratch) / "shown"
    subprocess.run(["pdftoppm", "-r", str(DPI), "-gray", "-f", str(page), "-l", str(page),
                    "-singlefile", str(file), str(stem)], check=True)
    raw = stem.with_suffix(".pgm").read_bytes()
    kind, size, _, data = raw.split(b"\n", 3)
    expect(kind == b"P5", "no PGM")
    width, height = (int(n) for n in size.split())
    return {(i % width, i // width)
            for i, grey in enumerate(data[:width * height]) if grey < DARK}


def pixels_along(chains, sheet):
    """Pixels under the lines of the truth on a sheet."""
    fx, fy = truth["factors"]
    m = truth["marginMm"]
    found = set()
    for chain in chains:
        for (ax, ay), (bx, by) in zip(chain, chain[1:]):
            steps = max(1, math.ceil(math.hypot(bx - ax, by - ay) / (PX / 2)))
            for k in range(steps + 1):
                x = m + (ax + (bx - ax) * k / steps - sheet["x"]) * fx
                y = m + (ay + (by - ay) * k / steps - sheet["y"]) * fy
                if m < x < truth["widthMm"] - m and m < y < truth["heightMm"] - m:
                    found.add((int(x / PX), int((truth["heightMm"] - y) / PX)))
    return found


def grown(pixels):
    return {(x + i, y + j) for x, y in pixels for i in (-1, 0, 1) for j in (-1, 0, 1)}


with pikepdf.open(path) as pdf:
    names = list(layers(pdf))
    expect(len(names) == len(set(names)) and len(names) >= 6, "layers: %s" % names)
    expect(len(pdf.Root.OCProperties.D.Order) == len(names), "layers are not listed")
    for page in pdf.pages:
        depth = 0
        for operands, operator in pikepdf.parse_content_stream(page):
            if str(operator) == "BDC":
                expect(str(operands[0]) == "/OC" and depth == 0, "marked content is nested")
                expect(operands[1] in page.Resources.Properties, "a layer without its name")
            depth += {"BDC": 1, "EMC": -1}.get(str(operator), 0)
            expect(depth in (0, 1), "marked content is not closed")
        expect(depth == 0, "marked content is not closed")

first = 2 if truth["firstPageApart"] else 1
sheets = list(enumerate(truth["sheets"], first))
for number, sheet in sheets[:2]:
    bare = ink([], number)
    whole = ink(names, number)
    shown = {}
    for name in names:
        shown[name] = ink([name], number) - bare
        expect(shown[name] <= grown(whole), name + " shows what the whole page does not")
    for kind, name in (("cutting", "Cutting lines"), ("sewing", "Sewing lines")):
        wanted = pixels_along(truth[kind], sheet)
        expect(len(wanted) > 200, "only %d pixels of %s" % (len(wanted), kind))
        stray = shown[name] - grown(wanted)
        expect(not stray, "%s: %d dark pixels off the lines" % (name, len(stray)))
        lost = wanted - grown(shown[name] | bare)
        # A front on the fold is drawn as its fold, in a layer of its own; 3 pixels bridge its dashes.
        lost -= grown(grown(grown(shown.get("Folds", set()))))
        expect(len(lost) <= 0.01 * len(wanted), "%s: %d of %d pixels without ink" %
               (name, len(lost), len(wanted)))
    together = bare.union(*shown.values())
    expect(len(whole - grown(together)) == 0, "some ink is in no layer and not on the bare page")
    print("page %d: %s" % (number, ", ".join("%s %d" % (n, len(shown[n])) for n in names)))
