#!/usr/bin/env python3
"""Reads a PDF of sheets back without the program that wrote it, puts the sheets together again and
compares them with the outlines they were made from. Only the standard library, with its own small
PDF reader; the tools of poppler and qpdf are asked as further witnesses.

usage: read_back.py FILE.pdf TRUTH.json
exit 0 when everything holds; 1 and one line per fault otherwise."""
import json
import math
import re
import subprocess
import sys
import zlib

MM = 25.4 / 72  # millimetres in a point, ISO 32000-1 section 8.3.2
LINE_TOLERANCE_MM = 0.05
CUTTING_MM, SEWING_MM = 0.35, 0.5

# ---------------------------------------------------------------- PDF objects
DELIMITERS = b"()<>[]{}/%"
BLANKS = b"\x00\t\n\x0c\r "


class Name(str):
    pass


class Ref(int):
    pass


class Op(str):
    pass


class Reader:
    """Tokens of PDF syntax: numbers, names, strings, arrays, dictionaries, references, operators."""

    def __init__(self, data, at=0):
        self.data, self.at = data, at

    def skip(self):
        while self.at < len(self.data):
            c = self.data[self.at]
            if c in BLANKS:
                self.at += 1
            elif c == 0x25:  # a comment
                while self.at < len(self.data) and self.data[self.at] not in b"\r\n":
                    self.at += 1
            else:
                return

    def word(self):
        start = self.at
        while self.at < len(self.data) and self.data[self.at] not in BLANKS + DELIMITERS:
            self.at += 1
        return self.data[start:self.at].decode("latin-1")

    def string(self):
        depth, out = 1, bytearray()
        self.at += 1
        while depth:
            c = self.data[self.at]
            if c == 0x5C:
                out += self.data[self.at:self.at + 2]
                self.at += 2
                continue
            depth += {0x28: 1, 0x29: -1}.get(c, 0)
            if depth:
                out.append(c)
            self.at += 1
        return bytes(out)

    def value(self):
        """The next value, None at the end of the data."""
        self.skip()
        if self.at >= len(self.data):
            return None
        c = self.data[self.at:self.at + 1]
        if self.data.startswith(b"<<", self.at):
            self.at += 2
            items = self.until(b">>")
            return dict(zip(items[0::2], items[1::2]))
        if c == b"[":
            self.at += 1
            return self.until(b"]")
        if c == b"/":
            self.at += 1
            return Name(self.word())
        if c == b"(":
            return self.string()
        if c == b"<":
            end = self.data.index(b">", self.at)
            text = self.data[self.at + 1:end]
            self.at = end + 1
            return bytes.fromhex(text.decode("latin-1") + "0" * (len(text) % 2))
        word = self.word()
        if re.fullmatch(r"[+-]?(\d+\.?\d*|\.\d+)", word):
            reference = re.compile(rb"\s+\d+\s+R(?![A-Za-z])").match(self.data, self.at)
            if reference and word.isdigit():
                self.at = reference.end()
                return Ref(word)
            return float(word) if "." in word else int(word)
        if word == "":
            raise ValueError(f"unexpected {c!r} at {self.at}")
        return Op(word)

    def until(self, end):
        items = []
        while True:
            self.skip()
            if self.data.startswith(end, self.at):
                self.at += len(end)
                return items
            items.append(self.value())


class Pdf:
    def __init__(self, data):
        self.data = data
        start = int(re.findall(rb"startxref\s+(\d+)", data)[-1])
        if not data.startswith(b"xref", start):
            raise ValueError("no plain cross-reference table")
        self.places, self.trailer = {}, None
        reader = Reader(data, start + 4)
        while True:
            reader.skip()
            if data.startswith(b"trailer", reader.at):
                reader.at += 7
                self.trailer = reader.value()
                break
            first, count = reader.value(), reader.value()
            for number in range(first, first + count):
                offset, _, kind = reader.value(), reader.value(), reader.value()
                if kind == "n":
                    self.places[number] = offset

    def get(self, thing):
        if not isinstance(thing, Ref):
            return thing
        reader = Reader(self.data, self.places[int(thing)])
        for _ in range(3):  # number, generation, obj
            reader.value()
        value = reader.value()
        reader.skip()
        if isinstance(value, dict) and self.data.startswith(b"stream", reader.at):
            start = self.data.index(b"\n", reader.at) + 1
            raw = self.data[start:start + self.get(value["Length"])]
            kind = self.get(value.get("Filter"))
            kind = kind[0] if isinstance(kind, list) and kind else kind
            value = dict(value)
            value["content"] = zlib.decompress(raw) if kind == "FlateDecode" else raw
        return value

    def pages(self):
        def walk(node):
            node = self.get(node)
            if node["Type"] == "Page":
                yield node
            else:
                for kid in self.get(node["Kids"]):
                    yield from walk(kid)

        return list(walk(self.get(self.trailer["Root"])["Pages"]))

    def content(self, page):
        parts = self.get(page["Contents"])
        parts = parts if isinstance(parts, list) else [page["Contents"]]
        return b"\n".join(self.get(part)["content"] for part in parts)


# ---------------------------------------------------------------- content streams
def times(m, n):
    """m applied first, then n."""
    a, b, c, d, e, f = m
    g, h, i, j, k, l = n
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j,
            e * g + f * i + k, e * h + f * j + l)


def apply(m, x, y):
    return (m[0] * x + m[2] * y + m[4]) * MM, (m[1] * x + m[3] * y + m[5]) * MM


def cubic(p, q, r, s):
    steps = max(4, min(64, int(math.dist(p, q) + math.dist(q, r) + math.dist(r, s))))
    for i in range(1, steps + 1):
        t = i / steps
        u = 1 - t
        yield tuple(u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d
                    for a, b, c, d in zip(p, q, r, s))


def box_of(chains):
    xs = [p[0] for chain in chains for p in chain]
    ys = [p[1] for chain in chains for p in chain]
    return (min(xs), min(ys), max(xs), max(ys)) if xs else None


def meet(a, b):
    return (max(a[0], b[0]), max(a[1], b[1]), min(a[2], b[2]), min(a[3], b[3]))


class Stroke:
    def __init__(self, chains, width, clip, dashed):
        self.chains, self.width, self.clip, self.dashed = chains, width, clip, dashed


def strokes_of(content, page_box):
    """Stroked paths in mm from the page's lower left corner, y up, with width and clip box; and the
    clip boxes under which text is shown."""
    reader = Reader(content)
    state = {"m": (1, 0, 0, 1, 0, 0), "w": 1.0, "clip": page_box, "dash": False}
    stack, operands, chains, strokes, texts = [], [], [], [], []
    clipping = False
    while (token := reader.value()) is not None:
        if not isinstance(token, Op):
            operands.append(token)
            continue
        o, operands = operands, []
        m = state["m"]
        if token == "q":
            stack.append(dict(state))
        elif token == "Q":
            state = stack.pop()
        elif token == "cm":
            state["m"] = times(tuple(o), m)
        elif token == "w":
            state["w"] = o[0]
        elif token == "d":
            state["dash"] = len(o[0]) > 0
        elif token == "m":
            chains.append([apply(m, *o)])
        elif token == "l":
            chains[-1].append(apply(m, *o))
        elif token == "c":
            chains[-1] += cubic(chains[-1][-1], apply(m, *o[0:2]), apply(m, *o[2:4]), apply(m, *o[4:6]))
        elif token == "re":
            x, y, w, h = o
            corners = [(x, y), (x + w, y), (x + w, y + h), (x, y + h), (x, y)]
            chains.append([apply(m, *c) for c in corners])
        elif token == "h":
            chains[-1].append(chains[-1][0])
        elif token in ("W", "W*"):
            clipping = True
        elif token in ("S", "s", "B", "B*", "b", "b*", "f", "f*", "F", "n"):
            if token in ("S", "s", "B", "B*", "b", "b*"):
                if token in ("s", "b", "b*"):
                    chains[-1].append(chains[-1][0])
                scale = math.sqrt(abs(m[0] * m[3] - m[1] * m[2])) * MM
                strokes.append(Stroke(chains, state["w"] * scale, state["clip"], state["dash"]))
            if clipping:
                state["clip"] = meet(state["clip"], box_of(chains) or (0, 0, 0, 0))
                clipping = False
            chains = []
        elif token in ("Tj", "TJ"):
            texts.append(state["clip"])
    return strokes, texts


# ---------------------------------------------------------------- comparing
class Lines:
    """Straight pieces in squares of 5 mm, to ask for the nearest."""
    SIZE = 5.0

    def __init__(self, chains):
        self.squares = {}
        for chain in chains:
            for a, b in zip(chain, chain[1:]):
                for i in range(self.square(min(a[0], b[0])), self.square(max(a[0], b[0])) + 1):
                    for j in range(self.square(min(a[1], b[1])), self.square(max(a[1], b[1])) + 1):
                        self.squares.setdefault((i, j), []).append((a, b))

    def square(self, v):
        return math.floor(v / self.SIZE)

    def distance(self, p):
        i, j = self.square(p[0]), self.square(p[1])
        least = self.SIZE
        for u in (i - 1, i, i + 1):
            for v in (j - 1, j, j + 1):
                for a, b in self.squares.get((u, v), ()):
                    least = min(least, to_segment(p, a, b))
        return least


def to_segment(p, a, b):
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    t = 0 if square == 0 else max(0, min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square))
    return math.hypot(a[0] + t * dx - p[0], a[1] + t * dy - p[1])


def along(chain, every):
    for a, b in zip(chain, chain[1:]):
        steps = max(1, math.ceil(math.dist(a, b) / every))
        for k in range(steps):
            yield a[0] + (b[0] - a[0]) * k / steps, a[1] + (b[1] - a[1]) * k / steps
    yield chain[-1]


def inside(p, box, by):
    return box[0] + by <= p[0] <= box[2] - by and box[1] + by <= p[1] <= box[3] - by


faults = []


def claim(holds, text):
    if not holds:
        faults.append(text)


def first_apart(truth):
    """Pages before the sheets: the first page has one of its own on small papers only."""
    return 1 if truth["firstPageApart"] else 0


def check_boxes(pdf, pages, truth):
    root = pdf.get(pdf.trailer["Root"])
    viewer = pdf.get(root.get("ViewerPreferences", {}))
    claim(viewer.get("PrintScaling") == "None", "PrintScaling is not None")
    claim(len(pages) == len(truth["sheets"]) + first_apart(truth), f"{len(pages)} pages")
    for number, page in enumerate(pages, 1):
        for key in ("MediaBox", "CropBox", "TrimBox"):
            box = pdf.get(page[key])
            want = (0, 0, truth["widthMm"] / MM, truth["heightMm"] / MM)
            off = max(abs(a - b) for a, b in zip(box, want))
            claim(off <= 0.01, f"page {number}: {key} {box} is {off:.4f} pt off")


def check_square(strokes, truth):
    """The 100 mm square and the 4 in bars of the first page, with the correction factors."""
    fx, fy = truth["factors"]
    squares = [box_of(s.chains) for s in strokes if len(s.chains[0]) in (5, 6)]
    squares = [b for b in squares if abs(b[2] - b[0] - 100) < 4 and abs(b[3] - b[1] - 100) < 4]
    claim(len(squares) == 1, f"{len(squares)} squares of about 100 mm on the first page")
    for b in squares:
        width, height = b[2] - b[0], b[3] - b[1]
        claim(abs(width - 100 * fx) <= 0.05, f"square is {width:.4f} mm wide")
        claim(abs(height - 100 * fy) <= 0.05, f"square is {height:.4f} mm high")
        print(f"square {width:.5f} x {height:.5f} mm")
    bars = [box_of(s.chains) for s in strokes if len(s.chains[0]) == 2]
    level = [b[2] - b[0] for b in bars if b[3] - b[1] < 0.01 and abs(b[2] - b[0] - 101.6 * fx) < 0.05]
    upright = [b[3] - b[1] for b in bars if b[2] - b[0] < 0.01 and abs(b[3] - b[1] - 101.6 * fy) < 0.05]
    claim(level and upright, "no bars of 4 in both ways")


def check_margin(number, strokes, texts, truth):
    m = truth["marginMm"]
    free = (m - 1e-3, m - 1e-3, truth["widthMm"] - m + 1e-3, truth["heightMm"] - m + 1e-3)
    for stroke in strokes:
        half = stroke.width / 2
        b = box_of(stroke.chains)
        printed = meet((b[0] - half, b[1] - half, b[2] + half, b[3] + half), stroke.clip)
        if printed[0] > printed[2] or printed[1] > printed[3]:
            continue
        claim(inside(printed[:2], free, 0) and inside(printed[2:], free, 0),
              f"page {number}: a line reaches into the margin: {printed}")
    for clip in texts:
        claim(inside(clip[:2], free, 0) and inside(clip[2:], free, 0),
              f"page {number}: words may reach into the margin")


def check_lines(pages, truth, kind, width, pattern, wanted):
    """Both ways: what is on the sheets lies on the pattern, and all that is wanted is on a sheet."""
    lines = Lines(pattern)
    fx, fy = truth["factors"]
    m = truth["marginMm"]
    worst = 0.0
    back = {}
    for sheet, (strokes, _) in zip(truth["sheets"], pages[first_apart(truth):]):
        chains = []
        for s in strokes:
            if abs(s.width - width) > 0.01:
                continue
            clip = s.clip
            for chain in s.chains:
                drawn = [((x - m) / fx + sheet["x"], (y - m) / fy + sheet["y"]) for x, y in chain]
                chains.append(drawn)
                for x, y in along(chain, 1.0):
                    if inside((x, y), clip, 0):
                        q = ((x - m) / fx + sheet["x"], (y - m) / fy + sheet["y"])
                        worst = max(worst, lines.distance(q))
        back[sheet["name"]] = Lines(chains)
    claim(worst <= LINE_TOLERANCE_MM, f"{kind}: a printed line is {worst:.4f} mm off the pattern")
    lost, far, points = 0, 0.0, 0
    for chain in wanted:
        for p in along(chain, 1.0):
            points += 1
            shown = 0
            for sheet in truth["sheets"]:
                box = (sheet["x"], sheet["y"], sheet["x"] + truth["frameMm"][0],
                       sheet["y"] + truth["frameMm"][1])
                if inside(p, box, width / 2):
                    shown += 1
                    far = max(far, back[sheet["name"]].distance(p))
            lost += shown == 0
    claim(points > 1000, f"{kind}: only {points} points to compare")
    claim(lost == 0, f"{kind}: {lost} points lie on no sheet")
    claim(far <= LINE_TOLERANCE_MM, f"{kind}: the pattern is {far:.4f} mm off the printed line")
    print(f"{kind}: {points} points, sheets to pattern {worst:.5f} mm, pattern to sheets {far:.5f} mm")


def ask(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    claim(done.returncode == 0, f"{command[0]} says: {done.stderr.strip() or done.stdout.strip()}")
    return done.stdout


def check_witnesses(path, truth):
    ask("qpdf", "--check", path)
    info = ask("pdfinfo", path)
    size = re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", info)
    for got, want in zip(size.groups(), (truth["widthMm"], truth["heightMm"])):
        claim(abs(float(got) - want / MM) <= 0.01, f"pdfinfo: page side {got} pt")
    claim(truth["title"] in info, "pdfinfo: no title")
    fonts = ask("pdffonts", path).splitlines()[2:]
    claim(fonts, "no fonts: words are not text")
    for line in fonts:
        embedded = line.split()[-5]
        claim(embedded == "yes", f"font not embedded: {line}")
    for number, sheet in enumerate(truth["sheets"], 1 + first_apart(truth)):
        words = ask("pdftotext", "-f", str(number), "-l", str(number), path, "-").split()
        claim(truth.get("isOnePage") or sheet["name"] in words, f"page {number}: its name {sheet['name']} is not found as text")
        for neighbour in sheet["neighbours"]:
            claim(neighbour in words, f"page {number}: neighbour {neighbour} is not named")


def main():
    path, truth = sys.argv[1], json.load(open(sys.argv[2], encoding="utf-8"))
    pdf = Pdf(open(path, "rb").read())
    pages = pdf.pages()
    check_boxes(pdf, pages, truth)
    page_box = (0, 0, truth["widthMm"], truth["heightMm"])
    drawn = [strokes_of(pdf.content(page), page_box) for page in pages]
    check_square(drawn[0][0], truth)
    for number, (strokes, texts) in enumerate(drawn, 1):
        check_margin(number, strokes, texts, truth)
    for kind, width in (("cutting", CUTTING_MM), ("sewing", SEWING_MM)):
        if truth.get(kind):
            check_lines(drawn, truth, kind, width, truth[kind], truth[kind])
    for line in truth.get("lines", []):  # of a change sheet: more may be drawn than is wanted
        check_lines(drawn, truth, line["kind"], line["widthMm"], line["lieOn"], line["wanted"])
    check_witnesses(path, truth)
    for fault in faults[:20]:
        print(fault)
    return 1 if faults else 0


sys.exit(main())
