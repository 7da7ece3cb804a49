// Every promise of the block on every body of the survey, with every number of panels and every
// pair of top and bottom shapes: 993 x 4 x 16 blocks.
#include <cmath>
#include <numbers>

#include <boost/geometry/algorithms/is_valid.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/geometry/tolerances.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

const std::vector<Body>& bodiesOfSurvey() {
    static const std::vector<Body> all = [] {
        std::vector<Body> completed;
        for (const auto& set : bodies::ansurBodies()) {
            auto body = completeBody(set);
            if (body) completed.push_back(*body);
        }
        return completed;
    }();
    return all;
}

Style styleNumber(std::size_t number, int panels) {
    Style style;
    style.panelsPerHalf = panels;
    style.topEdge.shape = static_cast<TopShape>(number % 4);
    style.bottomEdge.shape = static_cast<BottomShape>(number / 4 % 4);
    style.front = static_cast<FrontClosure>(number % 3);
    return style;
}

template <class Look>
void forEveryBlock(const Body& body, std::size_t number, Look look) {
    for (int panels = 4; panels <= 7; ++panels) {
        for (std::size_t shapes = 0; shapes < 16; ++shapes) {
            const Style style = styleNumber(shapes, panels);
            const auto pattern = draftCorset(body, style);
            ASSERT_TRUE(pattern) << "body " << number << ", " << panels << " panels, shapes "
                                 << shapes << ": " << keyOf(pattern.problems.front().code);
            look(body, style, *pattern);
            ASSERT_FALSE(testing::Test::HasFailure())
                << "body " << number << ", " << panels << " panels, shapes " << shapes;
        }
    }
}

template <class Look>
void forEveryBody(Look look) {
    const auto& all = bodiesOfSurvey();
    ASSERT_EQ(all.size(), 993U);
    for (std::size_t i = 0; i < all.size(); ++i) {
        forEveryBlock(all[i], i, look);
        if (testing::Test::HasFailure()) return;
    }
}

TEST(CorsetBodies, girthsMeetTheirTargets) {
    forEveryBody([](const Body& body, const Style& style, const Pattern& pattern) {
        std::size_t measured = 0;
        for (const Level& level : pattern.levels) {
            if (!level.patternMm) continue;
            double girthMm = style.lacingGapMm;
            for (const Panel& panel : pattern.panels)
                girthMm += 2 * *widthAtHeightMm(panel, level.heightMm);
            EXPECT_NEAR(girthMm, *level.targetMm, tolerance::kGirthMm) << level.name;
            EXPECT_NEAR(*level.patternMm, girthMm, 1e-6) << level.name;
            ++measured;
        }
        EXPECT_GE(measured, 3U);  // bust, under-bust and waist always lie on the garment
        const auto waist = std::ranges::find(pattern.levels, "waist", &Level::name);
        EXPECT_EQ(*waist->targetMm, body.valueMm(Measurement::waistGirth) - 60);
    });
}

TEST(CorsetBodies, pairedEdgesAreEqualAboveAndBelowTheWaist) {
    forEveryBody([](const Body&, const Style&, const Pattern& pattern) {
        for (const Seam& seam : pattern.seams) {
            const auto front = seamLengthsOf(edgeAt(pattern, seam.front));
            const auto back = seamLengthsOf(edgeAt(pattern, seam.back));
            EXPECT_NEAR(front.aboveWaistMm, back.aboveWaistMm, tolerance::kSeamPairMm);
            EXPECT_NEAR(front.belowWaistMm, back.belowWaistMm, tolerance::kSeamPairMm);
            EXPECT_GT(front.aboveWaistMm, 50);
            EXPECT_GT(front.belowWaistMm, 20);
        }
    });
}

double angleDeg(const Vector& a, const Vector& b) {
    return std::atan2(std::abs(a.x() * b.y() - a.y() * b.x()), a.dot(b)) * 180 / std::numbers::pi;
}

TEST(CorsetBodies, topAndBottomRunSmoothlyAcrossSeams) {
    forEveryBody([](const Body&, const Style&, const Pattern& pattern) {
        for (std::size_t p = 0; p + 1 < pattern.panels.size(); ++p) {
            const Path& seamFront = pattern.panels[p].edges[1].path;     // upwards
            const Path& seamBack = pattern.panels[p + 1].edges[3].path;  // downwards
            const Path& topFront = pattern.panels[p].edges[2].path;
            const Path& topBack = pattern.panels[p + 1].edges[2].path;
            const Path& bottomFront = pattern.panels[p].edges[0].path;
            const Path& bottomBack = pattern.panels[p + 1].edges[0].path;
            const auto first = [](const Path& path) { return tangentAt(path.pieces.front(), 0); };
            const auto last = [](const Path& path) { return tangentAt(path.pieces.back(), 1); };
            EXPECT_NEAR(angleDeg(last(seamFront), first(topFront)) +
                            angleDeg(-first(seamBack), -last(topBack)),
                        180, tolerance::kSmoothAcrossSeamDeg);
            EXPECT_NEAR(angleDeg(first(seamFront), -last(bottomFront)) +
                            angleDeg(-last(seamBack), first(bottomBack)),
                        180, tolerance::kSmoothAcrossSeamDeg);
        }
    });
}

// Boost.Geometry is the judge: its is_valid() knows nothing of our own check.
TEST(CorsetBodies, outlinesAreSimple) {
    namespace bg = boost::geometry;
    using Ring = bg::model::polygon<bg::model::d2::point_xy<double>, false, true>;
    forEveryBody([](const Body&, const Style&, const Pattern& pattern) {
        for (const Panel& panel : pattern.panels) {
            Ring ring;
            for (const Point& p : flattened(outlineOf(panel), 0.05))
                bg::append(ring.outer(), bg::model::d2::point_xy<double>(p.x(), p.y()));
            std::string why;
            EXPECT_TRUE(bg::is_valid(ring, why)) << panel.name << ": " << why;
        }
    });
}

TEST(CorsetBodies, noPanelIsTooNarrowAndOurOwnCheckAgrees) {
    forEveryBody([](const Body&, const Style&, const Pattern& pattern) {
        for (const Panel& panel : pattern.panels) {
            for (double y = -70; y <= 110; y += 15) {
                const auto widthMm = widthAtHeightMm(panel, y);
                if (widthMm) {
                    EXPECT_GE(*widthMm, tolerance::kNarrowestPanelMm) << panel.name << " at " << y;
                }
            }
        }
        const auto problems = checkPattern(pattern);
        EXPECT_TRUE(problems.empty())
            << keyOf(problems.front().code) << " " << problems.front().subject;
    });
}

// The same for bodies of which only what is needed was measured; every eighth, as the rest is
// estimates.
TEST(CorsetBodies, bodiesWithFewReadingsKeepThePromises) {
    const auto poor = bodies::ansurBodiesNeededOnly();
    for (std::size_t i = 0; i < poor.size(); i += 8) {
        const auto completed = completeBody(poor[i]);
        ASSERT_TRUE(completed);
        forEveryBlock(*completed, i, [](const Body&, const Style&, const Pattern& pattern) {
            EXPECT_TRUE(checkPattern(pattern).empty());
        });
        if (testing::Test::HasFailure()) return;
    }
}

// Hooks near an opening or cusps at a seam would show as tight turns of the top or bottom line.
TEST(CorsetBodies, topAndBottomHaveNoTightTurns) {
    forEveryBody([](const Body&, const Style&, const Pattern& pattern) {
        for (const Panel& panel : pattern.panels)
            for (const std::size_t e : {0U, 2U})
                for (double t = 0; t <= 1; t += 0.1)
                    EXPECT_LT(std::abs(curvaturePerMmAt(panel.edges[e].path, {0, t})), 1.0 / 25)
                        << panel.name << " " << panel.edges[e].name << " at " << t;
    });
}

}  // namespace
}  // namespace coutil
