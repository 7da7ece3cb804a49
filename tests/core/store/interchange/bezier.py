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


def farthest_apart(first, second):
    """The larger of the two one-sided distances between chains of points."""
    return max(max(distance_to_chain(p, second) for p in first),
               max(distance_to_chain(p, first) for p in second))
