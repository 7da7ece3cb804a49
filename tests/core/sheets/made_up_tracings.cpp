#include "tests/core/sheets/made_up_tracings.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "core/sheets/outline_shape.h"
#include "core/sheets/seeded_random.h"

namespace coutil {
namespace {

constexpr double kAllowanceMm = 10;
constexpr double kDressMm2 = 1.84e6;

// A smooth seam through hip, waist and bust, from below upwards; upright at the waist.
Path seam(const Point& hip, const Point& waist, const Point& bust) {
    const Vector down(0, (waist.y() - hip.y()) / 3);
    const Vector up(0, (bust.y() - waist.y()) / 3);
    return {{{hip, hip + down, waist - down, waist}, {waist, waist + up, bust - up, bust}}};
}

Edge edge(const std::string& name, EdgeRole role, const Path& path) {
    Edge made;
    made.name = name;
    made.role = role;
    made.path = path;
    return made;
}

Cubic curved(const Point& a, const Point& b, double bulge) {
    const Vector d = b - a;
    const Vector out(d.y(), -d.x());
    return {a, a + d / 3 + bulge * out, a + d * 2 / 3 + bulge * out, b};
}

// Curves a little; between the two ends of the seams.
Path cap(const Point& a, const Point& b, double bulge) { return {{curved(a, b, bulge)}}; }

// The shape of one corset panel at a distance outside its sewing line at both seams.
struct CorsetShape {
    double bottomMm;
    double topMm;
    double hipMm;
    double waistMm;
    double bustMm;
    double leanMm;

    [[nodiscard]] Path front(double out) const {
        return seam({-out + leanMm / 2, bottomMm}, {-out + (hipMm - waistMm) / 2, 0},
                    {-out + (hipMm - bustMm) / 2, topMm});
    }
    [[nodiscard]] Path back(double out) const {
        return seam({out + hipMm, bottomMm - leanMm}, {out + (hipMm + waistMm) / 2, 0},
                    {out + (hipMm + bustMm) / 2, topMm + leanMm});
    }
};

Tracing corsetPanel(int index, bool isOnFold) {
    const CorsetShape shape{-170.0 - 4 * index,     180.0 - 3 * index,      84.0 + 4 * (index % 3),
                            52.0 + 3 * (index % 4), 76.0 + 5 * (index % 2), 5.0 * (index % 3)};
    Tracing tracing;
    tracing.panel = std::to_string(index + 1);
    tracing.isOnFold = isOnFold;
    tracing.cutCount = isOnFold ? 1 : 2;
    tracing.isMirroredPair = !isOnFold;
    const Path front = shape.front(0);
    const Path back = shape.back(0);
    const Path bottom = cap(front.start(), back.start(), 0.08);
    const Path top = cap(back.end(), front.end(), index == 0 ? -0.15 : 0.06);
    tracing.sewing = {edge("bottom", EdgeRole::bottom, bottom), edge("back", EdgeRole::seam, back),
                      edge("top", EdgeRole::top, top),
                      edge("front", isOnFold ? EdgeRole::fold : EdgeRole::seam, reversed(front))};
    const Path outerBack = shape.back(kAllowanceMm);
    const Path outerFront = isOnFold ? front : shape.front(kAllowanceMm);
    tracing.cutting = joined(
        joined(joined(joined(straightPath(outerFront.start(), bottom.start()), bottom),
                      straightPath(bottom.end(), outerBack.start())),
               joined(outerBack, straightPath(outerBack.end(), top.start()))),
        joined(top, joined(straightPath(top.end(), outerFront.end()), reversed(outerFront))));
    const double middle = shape.hipMm / 2;
    const double half = shape.waistMm / 2;
    tracing.notches = {
        {NotchKind::waist, {middle + half, 0}, {1, 0}, kAllowanceMm, "back", 0},
        {NotchKind::waist, {middle - half, 0}, {-1, 0}, isOnFold ? 0 : kAllowanceMm, "front", 0}};
    const Point balance = pointAtLength(back, lengthMm(back) * 0.75);
    tracing.notches.push_back({NotchKind::balance, balance, {1, 0}, kAllowanceMm, "back", 90});
    tracing.grain = {Point(middle + 12, -100), Point(middle + 12, 110)};
    tracing.levels = {{"waist", {middle - half, 0}, {middle + half, 0}},
                      {"bust", {middle - 36, 140}, {middle + 36, 140}}};
    tracing.labelAt = {middle - 8, 45};
    tracing.labelWidthMm = 34;
    tracing.labelHeightMm = 70;
    tracing.allowancesMm = {0, kAllowanceMm, 0, isOnFold ? 0 : kAllowanceMm};
    return tracing;
}

// The largest level square of those tried whose surrounding circle lies inside.
void giveLabelRoom(Tracing& tracing, const Box& box) {
    const OutlineShape shape = shapeOf(tracing, {}, 0.1);
    constexpr int kTries = 40;
    for (int i = 1; i < kTries; ++i) {
        for (int k = 1; k < kTries; ++k) {
            const Point at = box.lowest + Vector(box.widthMm() * i, box.heightMm() * k) / kTries;
            if (!isInside(shape, at)) continue;
            double nearest = 1e9;
            for (std::size_t n = 0; n < shape.points.size(); ++n) {
                const Point& a = shape.points[n];
                const Vector d = shape.points[(n + 1) % shape.points.size()] - a;
                const double t = std::clamp((at - a).dot(d) / d.squaredNorm(), 0.0, 1.0);
                nearest = std::min(nearest, (a + t * d - at).norm());
            }
            const double side = nearest * 1.3;
            if (side <= tracing.labelWidthMm) continue;
            tracing.labelAt = at;
            tracing.labelWidthMm = tracing.labelHeightMm = side;
        }
    }
}

// A closed outline from corners; each side bulges outwards (or in, negative) by a part of its
// length.
Tracing outlined(const std::string& name, const std::vector<Point>& corners,
                 const std::vector<double>& bulges) {
    Tracing tracing;
    tracing.panel = name;
    Box box;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        tracing.cutting.pieces.push_back(
            curved(corners[i], corners[(i + 1) % corners.size()], bulges[i]));
        box.include(corners[i]);
    }
    const Point middle = (box.lowest + box.highest) / 2;
    tracing.grain = {middle - Vector(0, box.heightMm() / 5),
                     middle + Vector(0, box.heightMm() / 5)};
    giveLabelRoom(tracing, box);
    return tracing;
}

void stretch(Tracing& piece, double byX, double byY) {
    const auto moved = [&](const Point& p) { return Point(p.x() * byX, p.y() * byY); };
    for (Cubic& c : piece.cutting.pieces) c = {moved(c.p0), moved(c.p1), moved(c.p2), moved(c.p3)};
    piece.grain = {moved(piece.grain[0]), moved(piece.grain[1])};
    piece.labelAt = moved(piece.labelAt);
    piece.labelWidthMm *= byX;
    piece.labelHeightMm *= byY;
}

void bringToDressSize(std::vector<Tracing>& pieces) {
    double areaMm2 = 0;
    for (const Tracing& piece : pieces) areaMm2 += signedAreaMm2(piece.cutting);
    const double by = std::sqrt(kDressMm2 / areaMm2);
    for (Tracing& piece : pieces) stretch(piece, by, by);
}

// A piece of a ring: facings, peplums.
Tracing ring(const std::string& name, double innerMm, double widthMm, double angleRad) {
    const double outer = innerMm + widthMm;
    const auto at = [&](double radius, double angle) {
        return Point(radius * std::sin(angle), radius * std::cos(angle));
    };
    const double half = angleRad / 2;
    // Arc as two cubic pieces would be exact enough; a bulge serves as well here.
    const double bulge = std::tan(angleRad / 8) * 0.66;
    return outlined(name,
                    {at(outer, -half), at(innerMm, -half), at(innerMm, half), at(outer, half)},
                    {0, -bulge, 0, bulge});
}

}  // namespace

std::vector<Tracing> madeUpCorset(int panels) {
    std::vector<Tracing> tracings;
    for (int i = 0; i < panels; ++i) tracings.push_back(corsetPanel(i, i == 0));
    return tracings;
}

std::vector<Tracing> madeUpDress() {
    const auto body = [](const std::string& name, double w, double h, double notch) {
        return outlined(name,
                        {{0, 0},
                         {w * 0.55, 0},
                         {w * 0.58, notch},
                         {w * 0.64, 0},
                         {w, 20},
                         {w - 30, h * 0.55},
                         {w - 60, h - 40},
                         {w * 0.55, h},
                         {30, h - 110}},
                        {0, 0, 0, 0, -0.08, -0.22, 0.02, -0.14, 0.04});
    };
    const auto sleeve = [](const std::string& name, double w, double h) {
        return outlined(name, {{50, 0}, {w - 50, 0}, {w, h * 0.66}, {w / 2, h}, {0, h * 0.64}},
                        {0.02, -0.04, 0.16, 0.14, -0.04});
    };
    const auto leg = [](const std::string& name, double w, double h) {
        return outlined(name, {{70, 0}, {w - 90, 0}, {w, h * 0.62}, {w - 80, h}, {30, h - 15}},
                        {0, -0.03, -0.24, 0.02, 0.03});
    };
    std::vector<Tracing> pieces{
        body("1", 300, 520, 130),
        body("2", 290, 510, 110),
        body("3", 270, 480, 0.5),
        body("4", 260, 500, 90),
        sleeve("5", 330, 430),
        sleeve("6", 320, 420),
        leg("7", 300, 700),
        leg("8", 330, 690),
        ring("9", 180, 160, 1.9),
        ring("10", 160, 150, 2.1),
        ring("11", 300, 45, 1.4),
        ring("12", 320, 40, 1.2),
        outlined("13", {{0, 0}, {480, 0}, {480, 70}, {0, 70}}, {0.02, 0, 0.02, 0}),
        outlined("14", {{0, 0}, {440, 0}, {440, 80}, {0, 80}}, {0, 0, 0, 0}),
        outlined("15", {{0, 0}, {160, 0}, {170, 180}, {0, 190}}, {0.12, 0, 0, 0}),
        outlined("16", {{0, 0}, {170, 10}, {160, 190}, {5, 180}}, {0.14, 0, -0.05, 0})};
    bringToDressSize(pieces);
    return pieces;
}

std::vector<Tracing> randomDress(unsigned seed) {
    SeededRandom random(seed);
    auto pieces = madeUpDress();
    for (Tracing& piece : pieces) {
        const double byX = 0.7 + 0.6 * random.part();
        stretch(piece, byX, 0.7 + 0.6 * random.part());
    }
    bringToDressSize(pieces);
    return pieces;
}

}  // namespace coutil
