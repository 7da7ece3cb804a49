#include "tests/core/geometry/random_outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace coutil::test {

namespace {

constexpr double kSharpestTipDeg = 8;

Point turned(const Point& p, double turnRad) {
    return {p.x() * std::cos(turnRad) - p.y() * std::sin(turnRad),
            p.x() * std::sin(turnRad) + p.y() * std::cos(turnRad)};
}

// Bulges are shares of the chord, to the right; two different ones give an S.
Path curve(const Point& a, const Point& b, double bulge0, double bulge1) {
    const Vector chord = b - a;
    const Vector right{chord.y(), -chord.x()};
    return {{Cubic{a, a + chord / 3 + bulge0 * right, b - chord / 3 + bulge1 * right, b}}};
}

// Smooth through the points (Catmull-Rom arms).
Path smooth(const std::vector<Point>& points) {
    Path path;
    const auto slope = [&](std::size_t k) -> Vector {
        if (k == 0) return points[1] - points[0];
        if (k + 1 == points.size()) return points[k] - points[k - 1];
        return (points[k + 1] - points[k - 1]) / 2;
    };
    for (std::size_t k = 0; k + 1 < points.size(); ++k) {
        path.pieces.push_back(
            {points[k], points[k] + slope(k) / 3, points[k + 1] - slope(k + 1) / 3, points[k + 1]});
    }
    return path;
}

std::vector<OffsetEdge> bodicePanel(Dice& dice) {
    const double below = dice.between(60, 220);
    const double above = dice.between(60, 260);
    const double waist = dice.between(30, 110);
    const auto side = [&](double sign) {
        return std::vector<Point>{
            {sign * (waist / 2 + dice.between(-5, 40)), -below},
            {sign * (waist / 2 + dice.between(-3, 14)), -below / 2},
            {sign * waist / 2, 0},
            {sign * (waist / 2 + dice.between(-3, 14)), above / 2},
            {sign * (waist / 2 + dice.between(-8, 35)), above + dice.between(-30, 30)}};
    };
    const auto right = side(1);
    auto left = side(-1);
    std::reverse(left.begin(), left.end());
    return {{curve(left.back(), right.front(), dice.between(-0.2, 0.2), dice.between(-0.2, 0.2))},
            {smooth(right)},
            {curve(right.back(), left.front(), dice.between(-0.3, 0.3), dice.between(-0.3, 0.3))},
            {smooth(left)}};
}

std::vector<OffsetEdge> notchedPiece(Dice& dice) {
    const double w = dice.between(80, 300);
    const double h = dice.between(100, 400);
    const double at = dice.between(0.25, 0.75) * w;
    const double half = dice.between(3, 0.2 * w);
    const double deep = dice.between(10, 0.8 * h);
    return {{curve({0, 0}, {w, 0}, dice.between(-0.1, 0.1), dice.between(-0.1, 0.1))},
            {curve({w, 0}, {w, h}, dice.between(-0.1, 0.1), dice.between(-0.1, 0.1))},
            {straightPath({w, h}, {at + half, h})},
            {curve({at + half, h}, {at, h - deep}, dice.between(-0.1, 0.1), 0)},
            {curve({at, h - deep}, {at - half, h}, 0, dice.between(-0.1, 0.1))},
            {straightPath({at - half, h}, {0, h})},
            {curve({0, h}, {0, 0}, dice.between(-0.1, 0.1), dice.between(-0.1, 0.1))}};
}

std::vector<OffsetEdge> crescent(Dice& dice) {
    const double w = dice.between(80, 350);
    const double bulge = dice.between(0.1, 0.7);
    const double thick = dice.between(0.1, 0.4);
    return {{curve({0, 0}, {w, 0}, bulge, bulge)},
            {curve({w, 0}, {0, 0}, thick - bulge, thick - bulge)}};
}

std::vector<OffsetEdge> star(Dice& dice) {
    const int n = dice.whole(3, 9);
    std::vector<Point> corners;
    for (int k = 0; k < n; ++k) {
        const double at = 2 * std::numbers::pi * (k + dice.between(-0.3, 0.3)) / n;
        corners.push_back(dice.between(30, 220) * Point{std::cos(at), std::sin(at)});
    }
    std::vector<OffsetEdge> edges;
    for (std::size_t k = 0; k < corners.size(); ++k) {
        edges.push_back({curve(corners[k], corners[(k + 1) % corners.size()],
                               dice.between(-0.25, 0.25), dice.between(-0.25, 0.25))});
    }
    return edges;
}

// Tips and slits too sharp to be sewn: there the outline all but touches itself.
bool hasSharpTip(const std::vector<OffsetEdge>& edges) {
    for (std::size_t k = 0; k < edges.size(); ++k) {
        const Cubic& before = edges[k].path.pieces.back();
        const Cubic& after = edges[(k + 1) % edges.size()].path.pieces.front();
        const Vector in = (before.p3 - before.p2).normalized();
        const Vector out = (after.p1 - after.p0).normalized();
        if (in.dot(out) < -std::cos(kSharpestTipDeg / 180 * std::numbers::pi)) return true;
    }
    return false;
}

std::vector<OffsetEdge> anyOutline(Dice& dice) {
    const int kind = dice.whole(0, 9);
    return kind < 5   ? bodicePanel(dice)
           : kind < 6 ? crescent(dice)
           : kind < 8 ? notchedPiece(dice)
                      : star(dice);
}

}  // namespace

std::vector<OffsetEdge> randomOutline(Dice& dice) {
    std::vector<OffsetEdge> edges = anyOutline(dice);
    while (hasSharpTip(edges)) edges = anyOutline(dice);
    const double turn = dice.oneIn(3) ? 0 : dice.between(0, 2 * std::numbers::pi);
    for (OffsetEdge& edge : edges) {
        for (Cubic& c : edge.path.pieces) {
            c = {turned(c.p0, turn), turned(c.p1, turn), turned(c.p2, turn), turned(c.p3, turn)};
        }
    }
    return edges;
}

void giveRandomWidths(std::vector<OffsetEdge>& edges, Dice& dice) {
    const double usual = dice.between(0, 25);
    for (OffsetEdge& edge : edges) {
        edge.widthMm = dice.oneIn(5)   ? 0
                       : dice.oneIn(3) ? dice.whole(0, 25)
                       : dice.oneIn(2) ? usual
                                       : dice.between(0, 25);
    }
}

std::vector<CornerTreatment> randomTreatments(std::size_t count, Dice& dice) {
    std::vector<CornerTreatment> treatments;
    for (std::size_t k = 0; k < count; ++k) {
        treatments.push_back(static_cast<CornerTreatment>(dice.whole(0, 3)));
    }
    return treatments;
}

}  // namespace coutil::test
