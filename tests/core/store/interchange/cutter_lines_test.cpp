// Lines for a laser or cutter, judged by GEOS: half the kerf outside of every cutting line; and in
// an order in which nothing falls loose before it is finished.
#include "core/store/interchange/cutter_lines.h"

#include <algorithm>
#include <numbers>

#include <gtest/gtest.h>

#include "core/geometry/tolerances.h"
#include "core/store/interchange.h"
#include "core/store/interchange/cutter_pieces.h"
#include "tests/core/geometry/geos_judge.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace coutil {
namespace {

using interchange::CutterLine;
using interchange::CutterPiece;
using interchange::Piece;

constexpr double kFlatMm = 0.001;

std::vector<Point> ringOf(const Path& path) {
    auto ring = flattened(path, kFlatMm);
    ring.pop_back();
    return ring;
}

std::vector<Point> closedRingOf(const Path& path) { return flattened(path, kFlatMm); }

const CutterPiece& named(const std::vector<CutterPiece>& cuts, const std::string& name) {
    return *std::ranges::find(cuts, name, &CutterPiece::name);
}

TEST(CutterLines, theOutlineLiesHalfTheKerfOutside) {
    double worst = 0;
    for (const samples::Sample& sample : samples::all()) {
        const auto pieces = interchange::cutterPieces(sample.tracings, false);
        for (const double kerfMm : {0.1, 0.2, 1.0}) {
            const auto cuts = interchange::cutterLines(pieces, kerfMm);
            ASSERT_TRUE(cuts) << sample.name;
            for (const Piece& piece : pieces) {
                const Path wanted = placed(*piece.cutting, piece.placement);
                const test::GeosTape tape(closedRingOf(wanted));
                const auto ring = ringOf(named(*cuts, piece.name).lines.back().path);
                for (const Point& p : ring) {
                    const double short_ = kerfMm / 2 - tape.distanceMm(p);
                    worst = std::max(worst, short_);
                }
                // Against GEOS's own offset: what is enclosed differs by less than a strip of the
                // promised width along the outline.
                const auto inner = test::geosPolygon(ringOf(wanted));
                const double area = test::geosAreaMm2(test::geosPolygon(ring));
                const double judged = test::geosMitredAreaMm2(inner, kerfMm / 2, 3);
                EXPECT_LE(std::abs(area - judged), lengthMm(wanted) * tolerance::kOffsetMm)
                    << sample.name << " " << piece.name << " " << kerfMm;
                EXPECT_EQ(test::geosAreaOutsideMm2(inner, test::geosPolygon(ring)), 0);
            }
        }
    }
    EXPECT_LE(worst, tolerance::kOffsetMm + kFlatMm);
    RecordProperty("nearest_short_mm", std::to_string(worst));
}

TEST(CutterLines, withoutKerfTheCuttingLineIsCut) {
    const auto pieces = interchange::cutterPieces(samples::tracings(), false);
    const auto cuts = interchange::cutterLines(pieces, 0);
    ASSERT_TRUE(cuts);
    for (const Piece& piece : pieces) {
        EXPECT_EQ(named(*cuts, piece.name).lines.back().path,
                  placed(*piece.cutting, piece.placement));
    }
}

TEST(CutterLines, aPieceOnTheFoldIsUnfolded) {
    const auto tracings = samples::tracings();
    const auto pieces = interchange::cutterPieces(tracings, false);
    int folded = 0;
    for (std::size_t i = 0; i < tracings.size(); ++i) {
        const double half = signedAreaMm2(tracings[i].cutting);
        const double whole = signedAreaMm2(*pieces[i].cutting);
        EXPECT_NEAR(whole, tracings[i].isOnFold ? 2 * half : half, 0.01);
        folded += tracings[i].isOnFold ? 1 : 0;
        EXPECT_EQ(test::geosFault(test::geosPolygon(ringOf(*pieces[i].cutting))), "");
        if (tracings[i].isOnFold) {
            EXPECT_EQ(pieces[i].notches.size(), 2 * tracings[i].notches.size());
        }
    }
    EXPECT_EQ(folded, 1);
}

// A plate with two holes and a notch; the radius of a hole and the area of what is left by hand.
Piece plate(const std::string& name, double leftMm) {
    Piece piece;
    piece.name = name;
    piece.cutting = polylinePath({{0, 0}, {100, 0}, {100, 60}, {0, 60}, {0, 0}});
    piece.holes = {{Point(80, 30), 5}, {Point(10, 10), 5}, {Point(50, 30), 0.1}};
    Notch notch;
    notch.at = Point(90, 30);
    notch.outward = Vector(1, 0);
    notch.lengthMm = 10;
    piece.notches = {notch, notch};
    piece.notches[1].lengthMm = 0;  // bound: not cut
    piece.placement.shift = Vector(leftMm, 0);
    return piece;
}

TEST(CutterLines, holesAreCutInsideAndFirst) {
    const auto cuts = interchange::cutterLines({plate("1", 0)}, 0.2);
    ASSERT_TRUE(cuts);
    const auto& lines = cuts->at(0).lines;
    ASSERT_EQ(lines.size(), 4U);  // one hole is narrower than the kerf
    EXPECT_EQ(lines[0].kind, LineKind::eyelets);
    EXPECT_EQ(lines[1].kind, LineKind::eyelets);
    EXPECT_EQ(lines[2].kind, LineKind::notches);
    EXPECT_EQ(lines[3].kind, LineKind::cutting);
    EXPECT_LE((boundsOf(lines[0].path).lowest - Point(7.6, 7.6)).norm(), 1e-9) << "nearest first";
    // The cubic circle is off by 2.7253e-4 of its radius at most.
    for (const Point& p : flattened(lines[0].path, kFlatMm)) {
        EXPECT_NEAR((p - Point(10, 10)).norm(), 2.4, 2.4 * 2.8e-4);
    }
    EXPECT_NEAR(signedAreaMm2(lines[0].path), std::numbers::pi * 2.4 * 2.4, 0.01);
    EXPECT_NEAR(signedAreaMm2(lines[3].path), 100.2 * 60.2, 0.01);
    // From 4 mm inside the edge at 100 mm to the middle of the cut outside of it.
    EXPECT_LE((lines[2].path.start() - Point(96, 30)).norm(), 1e-9);
    EXPECT_LE((lines[2].path.end() - Point(100.1, 30)).norm(), 1e-9);
    EXPECT_FALSE(lines[2].isClosed);
}

TEST(CutterLines, theNextPieceIsTheNearest) {
    const std::vector<Piece> pieces{plate("far", 900), plate("first", 0), plate("third", 400),
                                    plate("second", 200)};
    const auto cuts = interchange::cutterLines(pieces, 0.2);
    ASSERT_TRUE(cuts);
    std::vector<std::string> names;
    for (const CutterPiece& piece : *cuts) names.push_back(piece.name);
    EXPECT_EQ(names, (std::vector<std::string>{"first", "second", "third", "far"}));
}

TEST(CutterLines, aPanelThatCannotBeOffsetIsNamed) {
    Piece crossed = plate("7", 0);
    crossed.cutting = polylinePath({{0, 0}, {100, 60}, {100, 0}, {0, 60}, {0, 0}});
    const auto cuts = interchange::cutterLines({crossed}, 0.2);
    ASSERT_FALSE(cuts);
    EXPECT_EQ(cuts.problems.front().panel, "7");
}

}  // namespace
}  // namespace coutil
