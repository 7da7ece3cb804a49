// Tracings of drafted corsets, on every tenth woman of ANSUR II, over panel counts and shapes.
#include <algorithm>
#include <cmath>
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/geometry/tolerances.h"
#include "core/measurements/body.h"
#include "core/tracing/tracing.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/geometry/geos_judge.h"

namespace coutil {
namespace {

constexpr double kJudgeFlatnessMm = 0.002;
constexpr double kPromisedMm = tolerance::kOffsetMm + kJudgeFlatnessMm;

std::vector<Point> ringOf(const Path& path) {
    auto ring = flattened(path, kJudgeFlatnessMm);
    ring.pop_back();
    return ring;
}

// A style for the k-th body, so that all counts, shapes, closures and bindings are met.
Style styleOf(std::size_t k) {
    Style style;
    style.panelsPerHalf = 4 + static_cast<int>(k % 4);
    style.front = static_cast<FrontClosure>(k / 4 % 3);
    style.topEdge.shape = static_cast<TopShape>(k / 2 % 4);
    style.bottomEdge.shape = static_cast<BottomShape>(k / 3 % 4);
    style.allowance.isTopBound = k % 2 == 0;
    style.allowance.isBottomBound = k / 2 % 2 == 0;
    style.allowance.seamMm = k % 3 == 0 ? 10 : 20;
    return style;
}

struct Traced {
    Pattern pattern;
    std::vector<Tracing> tracings;
    std::set<std::string> tightPanels;  // told to have a hollow tighter than the allowance is wide
};

// The only thing there may be to tell: a waist so hollow that 20 mm do not fit round it.
std::set<std::string> tightPanels(const std::vector<Problem>& problems, double widestMm) {
    std::set<std::string> names;
    for (const Problem& problem : problems) {
        EXPECT_EQ(problem.code, ProblemCode::offsetLostPart);
        EXPECT_EQ(widestMm, 20) << "panel " << problem.panel;
        names.insert(problem.panel);
    }
    return names;
}

template <class Visit>
void visitCorsets(const Visit& visit) {
    const auto sets = bodies::ansurBodies();
    int seen = 0;
    int tight = 0;
    for (std::size_t k = 0; k < sets.size(); k += 10) {
        SCOPED_TRACE("woman " + std::to_string(k));
        const auto body = completeBody(sets[k]);
        ASSERT_TRUE(body.hasValue());
        const Style style = styleOf(k / 10);
        const auto pattern = draftCorset(*body, style);
        ASSERT_TRUE(pattern.hasValue());
        const auto tracings = traceTracings(*pattern, style.allowance);
        ASSERT_TRUE(tracings.hasValue()) << keyOf(tracings.problems.front().code);
        ASSERT_EQ(tracings->size(), pattern->panels.size());
        const auto told = tightPanels(tracings.problems, style.allowance.seamMm);
        visit(Traced{*pattern, *tracings, told});
        tight += !told.empty();
        ++seen;
    }
    EXPECT_GE(seen, 99);
    EXPECT_LE(tight, 5);
}

TEST(TraceBodies, cuttingLinesAreSoundAndHoldTheSewingLine) {
    visitCorsets([](const Traced& traced) {
        for (const Tracing& tracing : traced.tracings) {
            Path sewing;
            for (const Edge& edge : tracing.sewing) {
                sewing = sewing.isEmpty() ? edge.path : joined(sewing, edge.path);
            }
            const auto cut = test::geosPolygon(ringOf(tracing.cutting));
            EXPECT_EQ(test::geosFault(cut), "") << "panel " << tracing.panel;
            const auto inner = test::geosPolygon(ringOf(sewing));
            EXPECT_LT(test::geosAreaOutsideMm2(inner, cut),
                      lengthMm(sewing) * tolerance::kCutFlatnessMm);
            EXPECT_LE(tracing.cutting.pieces.size(), 120U) << "few pieces were promised";
        }
    });
}

// In the middle of every edge, 40 mm and more from its corners, the cutting line runs at the width.
TEST(TraceBodies, cuttingLineRunsAtTheWidth) {
    visitCorsets([](const Traced& traced) {
        for (const Tracing& tracing : traced.tracings) {
            if (traced.tightPanels.contains(tracing.panel)) continue;
            auto closed = flattened(tracing.cutting, kJudgeFlatnessMm);
            const test::GeosTape cutting(closed);
            for (std::size_t e = 0; e < tracing.sewing.size(); ++e) {
                const Path& edge = tracing.sewing[e].path;
                const double length = lengthMm(edge);
                for (double at = 40; at < length - 40; at += 7.3) {
                    const double distance = cutting.distanceMm(pointAtLength(edge, at));
                    EXPECT_NEAR(distance, tracing.allowancesMm[e], kPromisedMm)
                        << "panel " << tracing.panel << ", " << tracing.sewing[e].name;
                }
            }
        }
    });
}

// Issue: "notches on both edges of every seam at the waist and a second one that tells top from
// bottom".
TEST(TraceBodies, seamsHaveTheSameNotchesOnBothEdges) {
    visitCorsets([](const Traced& traced) {
        for (const Seam& seam : traced.pattern.seams) {
            const auto notchesAt = [&](const EdgeRef& ref) {
                std::vector<Notch> found;
                const std::string& name = edgeAt(traced.pattern, ref).name;
                for (const Notch& notch : traced.tracings[ref.panel].notches) {
                    if (notch.edge == name) found.push_back(notch);
                }
                return found;
            };
            const auto front = notchesAt(seam.front);
            const auto back = notchesAt(seam.back);
            ASSERT_EQ(front.size(), 2U) << seam.name;
            ASSERT_EQ(back.size(), 2U) << seam.name;
            for (std::size_t k = 0; k < 2; ++k) {
                EXPECT_EQ(front[k].kind, k == 0 ? NotchKind::waist : NotchKind::balance);
                EXPECT_EQ(front[k].kind, back[k].kind);
                EXPECT_EQ(front[k].positionMm, back[k].positionMm);
                for (const auto& [notch, ref] :
                     {std::pair{front[k], seam.front}, std::pair{back[k], seam.back}}) {
                    const auto place =
                        pointAtSeamPosition(edgeAt(traced.pattern, ref), notch.positionMm);
                    ASSERT_TRUE(place.has_value());
                    EXPECT_LT((*place - notch.at).norm(), 1e-6);
                    const Tracing& tracing = traced.tracings[ref.panel];
                    if (!traced.tightPanels.contains(tracing.panel)) {
                        EXPECT_NEAR(notch.lengthMm, tracing.allowancesMm[ref.edge], 0.02);
                    }
                    EXPECT_NEAR(notch.outward.norm(), 1, 1e-12);
                }
            }
        }
    });
}

TEST(TraceBodies, labelsStandClear) {
    double narrowest = 1e9;
    visitCorsets([&](const Traced& traced) {
        for (const Tracing& tracing : traced.tracings) {
            SCOPED_TRACE("panel " + tracing.panel);
            ASSERT_GT(tracing.labelWidthMm, 0);
            ASSERT_GT(tracing.labelHeightMm, 0);
            narrowest = std::min(narrowest, tracing.labelWidthMm);
            const Vector half(tracing.labelWidthMm / 2, tracing.labelHeightMm / 2);
            const Point low = tracing.labelAt - half;
            const Point high = tracing.labelAt + half;
            const auto label =
                test::geosPolygon({low, {high.x(), low.y()}, high, {low.x(), high.y()}});
            std::vector<Point> ring;
            for (const Edge& edge : tracing.sewing) {
                const auto points = flattened(edge.path, kJudgeFlatnessMm);
                ring.insert(ring.end(), points.begin(), points.end() - 1);
            }
            EXPECT_EQ(test::geosAreaOutsideMm2(label, test::geosPolygon(ring)), 0);
            const auto crosses = [&](const Point& a, const Point& b) {
                const Point lowest = a.cwiseMin(b);
                const Point highest = a.cwiseMax(b);
                return (lowest.array() < high.array()).all() &&
                       (highest.array() > low.array()).all();
            };
            EXPECT_FALSE(crosses(tracing.grain[0], tracing.grain[1]));
            for (const LevelLine& level : tracing.levels) {
                if (level.level != "waist") continue;
                EXPECT_FALSE(crosses(level.front, level.back));
            }
            const Vector number = Vector::Constant(tracing.numberHeightMm / 2);
            if (tracing.numberHeightMm > 0) {
                EXPECT_FALSE(crosses(tracing.numberAt - number, tracing.numberAt + number));
            }
        }
    });
    RecordProperty("narrowestLabelMm", static_cast<int>(narrowest));
    EXPECT_GT(narrowest, 15);
}

}  // namespace
}  // namespace coutil
