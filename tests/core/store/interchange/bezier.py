"""Cubic pieces as the JSON of patterns and tracings has them, measured without the program."""
import math


def points_of(pieces, per_piece=64):
    """Points along a chain of cubic pieces [x0,y0,...,x3,y3], ends included."""
    points = []
    for c in pieces:
        for k in range(0 if not points else 1, per_piece + 1):
            t = k / per_piece
            b = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3)
            points.append((sum(b[i] * c[2 * i] for i in range(4)),
                           sum(b[i] * c[2 * i + 1] for i in range(4))))
    return points


def distance_to_chain(p, chain):
    """From a point to a chain of chords."""
    best = math.inf
    for (ax, ay), (bx, by) in zip(chain, chain[1:]):
        dx, dy = bx - ax, by - ay
        length2 = dx * dx + dy * dy
        t = 0 if length2 == 0 else max(0, min(1, ((p[0] - ax) * dx + (p[1] - ay) * dy) / length2))
        best = min(best, math.hypot(p[0] - ax - t * dx, p[1] - ay - t * dy))
    return best


def evenly(pieces, every):
    """Points along a chain of cubic pieces, about so far apart."""
    points = []
    for c in pieces:
        legs = sum(math.dist(c[k:k + 2], c[k + 2:k + 4]) for k in (0, 2, 4))
        points += points_of([c], max(1, math.ceil(legs / every)))[1 if points else 0:]
    return points


class Chain:
    """A chain of chords in squares of 5 mm, to ask for the nearest."""
    SIZE = 5.0

    def __init__(self, points):
        self.squares = {}
        for a, b in zip(points, points[1:]):
            for i in range(self.square(min(a[0], b[0])), self.square(max(a[0], b[0])) + 1):
                for j in range(self.square(min(a[1], b[1])), self.square(max(a[1], b[1])) + 1):
                    self.squares.setdefault((i, j), []).append((a, b))

    def square(self, v):
        return math.floor(v / self.SIZE)

    def distance(self, p):
        """Up to 5 mm; what is farther counts as that far."""
        i, j = self.square(p[0]), self.square(p[1])
        return min([self.SIZE] + [distance_to_chain(p, segment)
                                  for u in (i - 1, i, i + 1) for v in (j - 1, j, j + 1)
                                  for segment in self.squares.get((u, v), ())])


def farthest_apart(first, second):
    """The larger of the two one-sided distances between chains of points, up to 5 mm."""
    return max(max(map(Chain(second).distance, first)), max(map(Chain(first).distance, second)))
