"""Reads the sample drawings with ezdxf and compares them with the pattern's own curves.

Layers, header and texts: ASTM D6673-10 (layers 1 to 8 and 15 read in a transcription, 11 and 14
from memory). Chord error: at most 0.1 mm, the same standard.
"""
import json
import math
import pathlib
import sys

import ezdxf

from bezier import farthest_apart, points_of

folders = sorted(p.parent for p in pathlib.Path(sys.argv[1]).glob("*/pattern.json"))
CHORD_MM = 0.1


def expect(claim, words):
    if not claim:
        sys.exit("check_dxf: " + words)


def vertices(polyline):
    points = [(v.dxf.location.x, v.dxf.location.y) for v in polyline.vertices]
    return points + points[:1] if polyline.is_closed else points


def on(block, layer, kind):
    return [e for e in block if e.dxf.layer == str(layer) and e.dxftype() == kind]


def texts(entities):
    return [e.dxf.text for e in entities if e.dxftype() == "TEXT"]


def check_file(folder, name, pieces, has_allowance):
    raw = (folder / name).read_bytes()
    expect(max(raw) < 128, name + " holds bytes over 7 bits")
    document = ezdxf.readfile(folder / name)
    expect(document.dxfversion == "AC1009", name + " is no R12 file")
    audit = document.audit()
    expect(not audit.has_errors, "%s: %s" % (name, [e.message for e in audit.errors][:3]))
    layers = {e.dxf.layer for block in document.blocks for e in block}
    layers -= {"0"}
    expect(layers <= {"1", "2", "3", "4", "6", "7", "8", "11", "13", "14", "15"},
           "%s: layers %s" % (name, sorted(layers)))
    inserts = [e for e in document.modelspace() if e.dxftype() == "INSERT"]
    expect(len(inserts) == len(pieces), name + ": pieces inserted: %d" % len(inserts))
    expect("Units: METRIC" in texts(document.modelspace()), name + " does not say its units")
    expect(any("Bueste" in t for t in texts(document.modelspace())), "umlauts are not spelled out")
    for insert, piece in zip(inserts, pieces):
        check_piece(document.blocks.get(insert.dxf.name), piece, has_allowance)


def check_piece(block, piece, has_allowance):
    name = piece["name"]
    outlines = on(block, 1, "POLYLINE")
    expect(len(outlines) == 1 and outlines[0].is_closed, name + ": one closed boundary wanted")
    outline = vertices(outlines[0])
    apart = farthest_apart(outline, points_of(piece["outline"]))
    expect(apart <= CHORD_MM, "%s: boundary %.4f mm off" % (name, apart))
    turns = on(block, 2, "POINT")
    check_turns(name, [(t.dxf.location.x, t.dxf.location.y) for t in turns], piece["corners"],
                outline)
    expect(len(turns) >= 4, "%s: %d corners" % (name, len(turns)))
    expect(len(turns) + len(on(block, 3, "POINT")) == len(outline) - 1,
           name + ": every vertex is either a turn or a curve point")
    expect(len(on(block, 7, "LINE")) == 1, name + ": one grain line wanted")
    expect(len(on(block, 8, "LINE")) == piece["levels"], name + ": level lines")
    expect(len(on(block, 4, "POINT")) == piece["notches"], name + ": notches")
    expect(len(on(block, 6, "LINE")) == (1 if piece["on_fold"] else 0), name + ": mirror line")
    sewing = on(block, 14, "POLYLINE")
    expect(len(sewing) == (1 if has_allowance else 0), name + ": sewing lines")
    if has_allowance:
        apart = farthest_apart(vertices(sewing[0]), points_of(piece["sewing"]))
        expect(apart <= CHORD_MM, "%s: sewing line %.4f mm off" % (name, apart))
    words = texts(block)
    for start in ("Piece Name: " + name, "Size: ", "Quantity: ", "Category: ", "Annotation: "):
        expect(any(w.startswith(start) for w in words), name + " has no text " + start)


SPECK_MM = 0.011  # pieces shorter than this have no direction, and a corner may lie at either end


def check_turns(name, turns, corners, outline):
    """Every corner of the pattern is a turn point, and every turn point lies on the boundary."""
    for corner in corners:
        apart = min(math.dist(corner, turn) for turn in turns)
        expect(apart <= SPECK_MM, "%s: no turn point at corner %s" % (name, corner))
    for turn in turns:
        expect(min(math.dist(turn, p) for p in outline) <= 1e-3, name + ": a turn point is off")


def sharp_corners(pieces):
    """Where the closed chain of cubic pieces turns by more than 5 degrees."""
    def direction(c, at_end):
        points = [(c[i], c[i + 1]) for i in (0, 2, 4, 6)]
        points = points[::-1] if at_end else points
        other = next(p for p in points[1:] if math.dist(p, points[0]) > 1e-9)
        angle = math.atan2(other[1] - points[0][1], other[0] - points[0][0])
        return angle + math.pi if at_end else angle
    found = []
    pieces = [c for c in pieces if math.dist(c[:2], c[6:]) > 0.01]  # no direction in a speck
    for before, after in zip(pieces[-1:] + pieces[:-1], pieces):
        turn = (direction(after, False) - direction(before, True) + math.pi) % (2 * math.pi)
        if abs(turn - math.pi) > math.radians(5):
            found.append((after[0], after[1]))
    return found


def joined(edges):
    return [piece for edge in edges for piece in edge["path"]]


expect(len(folders) >= 12, "only %d samples" % len(folders))
count = 0
for folder in folders:
    pattern = json.loads((folder / "pattern.json").read_text())
    check_file(folder, "pattern.dxf", [
        dict(name=p["name"], outline=joined(p["edges"]), levels=len(p["levels"]),
             corners=[e["path"][0][:2] for e in p["edges"]],
             notches=sum(e["role"] in ("seam", "opening", "fold") for e in p["edges"]),
             on_fold=p["on_fold"]) for p in pattern["panels"]], False)
    tracings = json.loads((folder / "tracings.json").read_text())["tracings"]
    check_file(folder, "tracings.dxf", [
        dict(name=t["panel"], outline=t["cutting"], sewing=joined(t["sewing"]),
             corners=sharp_corners(t["cutting"]), levels=len(t["levels"]),
             notches=len(t["notches"]), on_fold=t["on_fold"])
        for t in tracings], True)
    count += len(tracings)
print("check_dxf: %d patterns, %d tracings" % (len(folders), count))
