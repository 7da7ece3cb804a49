// Ink: the grid, the text of the outlines, the digest that covers every byte.
#include "core/revision/ink.h"

#include <cmath>
#include <functional>
#include <limits>

#include <gtest/gtest.h>

#include "core/revision/draft_garment.h"
#include "core/revision/ink_grid.h"
#include "core/revision/ink_room.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

// A step of the grid and what a double of this size can be off by.
constexpr double kHalfStepMm = 0.0005 + 1e-12;

Pattern drafted(std::size_t body) {
    Style style;
    style.ownLevels = {{"peplum \"low\"\\\nline", -60}};
    const auto garment = draftGarment(bodies::ansurBodies().at(body), style);
    EXPECT_TRUE(garment.pattern);
    return garment.pattern.value_or(Pattern{});
}

void eachPoint(const Pattern& pattern, const std::function<void(const Point&)>& see) {
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges)
            for (const Cubic& piece : edge.path.pieces)
                for (const Point& point : {piece.p0, piece.p1, piece.p2, piece.p3}) see(point);
        for (const LevelLine& line : panel.levels) {
            see(line.front);
            see(line.back);
        }
        for (const Point& point : panel.grain) see(point);
    }
}

std::vector<Point> pointsOf(const Pattern& pattern) {
    std::vector<Point> points;
    eachPoint(pattern, [&](const Point& point) { points.push_back(point); });
    return points;
}

RevisionContent content() {
    RevisionContent content;
    content.garment = "g";
    content.number = 3;
    content.confirmedOn = "2026-04-11";
    content.confirmedBy = "wardrobe";
    content.note = "hip let out";
    content.parent = std::string(64, 'a');
    content.errorsAccepted = "told";
    content.pattern = drafted(17);
    return content;
}

TEST(Ink, theGridMovesNothingByMoreThanHalfAStep) {
    for (std::size_t body = 0; body < 993; body += 97) {
        Pattern before = drafted(body);
        const Pattern after = onInkGrid(before);
        for (Panel& panel : before.panels)
            for (Edge& edge : panel.edges) edge.path = withRoomForInk(edge.path);
        const auto a = pointsOf(before);
        const auto b = pointsOf(after);
        ASSERT_EQ(a.size(), b.size());
        for (std::size_t i = 0; i < a.size(); ++i) {
            EXPECT_LE((a[i] - b[i]).cwiseAbs().maxCoeff(), kHalfStepMm);
            EXPECT_EQ(b[i].x(), std::round(b[i].x() * 1000) / 1000);
            EXPECT_EQ(b[i].y(), std::round(b[i].y() * 1000) / 1000);
        }
        EXPECT_EQ(onInkGrid(after), after);
        EXPECT_TRUE(isInkable(after));
        for (const Problem& problem : checkPattern(after))
            EXPECT_FALSE(isError(problem)) << keyOf(problem.code);
    }
}

// Bodies whose top line cuts a seam's last piece to less than 0.1 mm: on the grid its direction
// could turn by degrees. The joint moves along the curve, the curve itself stays.
TEST(Ink, shortPiecesGetRoomOnTheSameCurve) {
    std::size_t moved = 0;
    for (const std::size_t body : {2, 14, 20, 29}) {
        const Pattern pattern = drafted(body);
        for (const Panel& panel : pattern.panels) {
            for (const Edge& edge : panel.edges) {
                const Path roomy = withRoomForInk(edge.path);
                ASSERT_EQ(roomy.pieces.size(), edge.path.pieces.size());
                EXPECT_EQ(roomy.start(), edge.path.start());
                EXPECT_EQ(roomy.end(), edge.path.end());
                if (roomy == edge.path) continue;
                ++moved;
                EXPECT_NEAR(lengthMm(roomy), lengthMm(edge.path), 1e-4);
                for (std::size_t i = 0; i < roomy.pieces.size(); ++i) {
                    EXPECT_GT(lengthMm(roomy.pieces[i]), 1);
                    EXPECT_TRUE(i == 0 || roomy.pieces[i].p0 == roomy.pieces[i - 1].p3);
                    for (double t = 0; t <= 1; t += 0.0625)
                        EXPECT_LT(closestOn(edge.path, pointAt(roomy.pieces[i], t)).distanceMm,
                                  1e-4);
                }
            }
        }
        for (const Problem& problem : checkPattern(onInkGrid(pattern)))
            EXPECT_FALSE(isError(problem)) << body << ' ' << keyOf(problem.code);
    }
    EXPECT_GE(moved, 8U);
}

TEST(Ink, closedOutlinesStayClosed) {
    for (std::size_t body = 0; body < 993; body += 97) {
        for (const Panel& panel : onInkGrid(drafted(body)).panels) {
            for (std::size_t i = 0; i < panel.edges.size(); ++i) {
                const Edge& next = panel.edges[(i + 1) % panel.edges.size()];
                EXPECT_EQ(panel.edges[i].path.end(), next.path.start());
            }
        }
    }
}

// Two ends that differ by rounding, one on each side of a half step.
TEST(Ink, aCornerOnAHalfStepStaysOneCorner) {
    Pattern pattern = drafted(0);
    std::vector<Edge>& edges = pattern.panels[0].edges;
    edges[0].path.pieces.back().p3 = Point(100.0005 - 1e-10, 0);
    edges[1].path.pieces.front().p0 = Point(100.0005 + 1e-10, 0);
    const Pattern inked = onInkGrid(pattern);
    EXPECT_EQ(inked.panels[0].edges[0].path.end(), inked.panels[0].edges[1].path.start());
}

TEST(Ink, theTextGivesThePatternBackToTheLastBit) {
    for (std::size_t body = 0; body < 993; body += 97) {
        const Pattern inked = onInkGrid(drafted(body));
        const std::string text = inkText(inked);
        const Outcome<Pattern> again = patternFromInkText(text);
        ASSERT_TRUE(again);
        EXPECT_EQ(*again, inked);
        EXPECT_EQ(inkText(*again), text);
    }
    EXPECT_EQ(*patternFromInkText(inkText(Pattern{})), Pattern{});
}

TEST(Ink, theTextKnowsSidesFoldsAndAbsentFigures) {
    Pattern pattern = onInkGrid(drafted(0));
    pattern.panels[0].side = PanelSide::left;
    pattern.panels[1].side = PanelSide::right;
    pattern.panels[1].isOnFold = true;
    pattern.panels[2].edges[0].waistMarkAtMm.reset();
    pattern.seams[0].easeMm = -1.5;
    pattern.levels[0].patternMm.reset();
    pattern.levels[1].bodyMm.reset();
    for (int role = 0; role <= static_cast<int>(EdgeRole::dartLeg); ++role) {
        pattern.panels[0].edges[0].role = static_cast<EdgeRole>(role);
        EXPECT_EQ(*patternFromInkText(inkText(pattern)), pattern);
    }
}

TEST(Ink, anyOtherTextIsRefused) {
    const std::string text = inkText(onInkGrid(drafted(0)));
    for (std::size_t length = 0; length < text.size(); length += 7) {
        const std::string cut = text.substr(0, length);
        if (cut.empty() || cut.back() == '\n') continue;
        EXPECT_FALSE(patternFromInkText(cut)) << length;
    }
    for (const char* broken :
         {"", "coutil ink 2\nlacing 0\n", "coutil ink 1\nlacing 1.5\n", "coutil ink 1\nlacing +1\n",
          "coutil ink 1\nlacing 99999999999999999999\n", "coutil ink 1\nlacing 0\nedge \"a\"\n",
          "coutil ink 1\nlacing 0\nseam \"1-2\" 0 0 1 0 0\n",
          "coutil ink 1\nlacing 0\nseam \"1-2\" -1 0 -1 0 0\n",
          "coutil ink 1\nlacing 0\npanel \"1\" both loose 0 0 0 0\nedge \"a\" top up - 0 0 1\n",
          "coutil ink 1\nlacing 0\npanel \"1\" middle loose 0 0 0 0\n",
          "coutil ink 1\nlacing 0\nlevel \"a\nb\" 0 - - - 0\n",
          "coutil ink 1\nlacing 0\nestimate girth 1 1 \"x\"\n", "coutil ink 1\nlacing 0\n\n"})
        EXPECT_FALSE(patternFromInkText(broken)) << broken;
}

TEST(Ink, whatInkCannotHoldIsTold) {
    Pattern pattern = drafted(0);
    EXPECT_TRUE(isInkable(pattern));
    pattern.panels[1].edges[2].path.pieces[0].p1.y() = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(isInkable(pattern));
    pattern = drafted(0);
    pattern.panels[0].levels[0].back.x() = 1e9;
    EXPECT_FALSE(isInkable(pattern));
    pattern = drafted(0);
    pattern.levels[0].patternMm = std::numeric_limits<double>::infinity();
    EXPECT_FALSE(isInkable(pattern));
    pattern = drafted(0);
    pattern.panels[0].edges[0].path.pieces.clear();
    EXPECT_FALSE(isInkable(pattern));
}

TEST(Ink, aRevisionReadsBackAsItWasMade) {
    const Revision made = inkOver(content(), "recipe");
    EXPECT_EQ(made.digest().size(), 64U);
    EXPECT_EQ(made.pattern(), onInkGrid(content().pattern));
    const auto again = inkRead(content(), made.recipeText(), made.inkText(), made.digest());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->content(), made.content());
    EXPECT_EQ(again->digest(), inkOver(content(), "recipe").digest());
}

TEST(Ink, theDigestCoversEveryField) {
    const Revision made = inkOver(content(), "recipe");
    const std::vector<std::function<void(RevisionContent&)>> changes{
        [](auto& c) { c.garment = "h"; },
        [](auto& c) { c.number = 4; },
        [](auto& c) { c.confirmedOn = "2026-04-12"; },
        [](auto& c) { c.confirmedBy = "Wardrobe"; },
        [](auto& c) { c.note.clear(); },
        [](auto& c) { c.parent.back() = 'b'; },
        [](auto& c) { c.errorsAccepted += ' '; },
        // The same letters, parted otherwise.
        [](auto& c) {
            c.note = "hip let ou";
            c.parent = std::string("t").append(64, 'a');
        },
    };
    for (std::size_t i = 0; i < changes.size(); ++i) {
        RevisionContent changed = content();
        changes[i](changed);
        const auto read = inkRead(changed, made.recipeText(), made.inkText(), made.digest());
        ASSERT_FALSE(read) << i;
        EXPECT_EQ(read.problems.front().code, ProblemCode::revisionTampered);
        EXPECT_EQ(read.problems.front().subject, std::to_string(changed.number));
    }
    EXPECT_FALSE(inkRead(content(), "recipe ", made.inkText(), made.digest()));
    EXPECT_FALSE(inkRead(content(), "recipe", made.inkText() + " ", made.digest()));
    EXPECT_FALSE(inkRead(content(), "recipe", made.inkText(), std::string(64, '0')));
}

}  // namespace
}  // namespace coutil
