// No word of a sheet may lie across a sewing or cutting line, where it could be taken for a mark or
// hide where to cut, and none is lost: over corsets drafted to ANSUR II
// women, and over random pieces. Judged by the boxes of the words against the outlines themselves.
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/measurements/body.h"
#include "core/sheets/sheet_drawing.h"
#include "core/sheets/sheet_lettering.h"
#include "tests/bodies/ansur_bodies.h"
#include "tests/core/sheets/made_up_tracings.h"
#include "tests/core/sheets/made_up_words.h"

namespace coutil {
namespace {

// The box of a line of text as it lies, from the baseline to the top of the capitals.
std::array<Point, 4> boxOf(const SheetLettering& lettering) {
    double width = aboutWidthMm(lettering.text, lettering.heightMm);
    if (lettering.roomMm > 0) width = std::min(width, lettering.roomMm);
    double left = 0;
    if (lettering.anchor == TextAnchor::centre) left = -width / 2;
    if (lettering.anchor == TextAnchor::right) left = -width;
    const Vector along(std::cos(lettering.turnRad), std::sin(lettering.turnRad));
    const Vector up(-along.y(), along.x());
    const double high = lettering.heightMm;
    return {lettering.at + left * along, lettering.at + (left + width) * along,
            lettering.at + (left + width) * along + high * up,
            lettering.at + left * along + high * up};
}

double cross(const Vector& a, const Vector& b) { return a.x() * b.y() - a.y() * b.x(); }

bool segmentsCross(const Point& a, const Point& b, const Point& c, const Point& d) {
    const auto side = [](const Point& p, const Point& q, const Point& r) {
        return cross(q - p, r - p) > 0;
    };
    return side(a, b, c) != side(a, b, d) && side(c, d, a) != side(c, d, b);
}

bool crosses(const std::array<Point, 4>& box, const std::vector<Point>& chain) {
    for (std::size_t i = 0; i + 1 < chain.size(); ++i) {
        for (std::size_t k = 0; k < 4; ++k) {
            if (segmentsCross(chain[i], chain[i + 1], box[k], box[(k + 1) % 4])) return true;
        }
    }
    return false;
}

std::vector<std::vector<Point>> linesOf(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                                        const Sheet& sheet) {
    std::vector<std::vector<Point>> chains;
    const auto add = [&](const Path& path, const Placement& placement) {
        auto chain = flattened(placed(path, placement), 0.05);
        for (Point& p : chain) p = onPaper(plan, sheet, p);
        chains.push_back(std::move(chain));
    };
    for (const auto& piece : plan.placed) {
        const Tracing& tracing = tracings[piece.tracing];
        add(tracing.cutting, piece.placement);
        for (const Edge& edge : tracing.sewing) add(edge.path, piece.placement);
    }
    return chains;
}

bool saysAll(const SheetDrawing& drawing, const std::string& text) {
    std::string all;
    for (const auto& lettering : drawing.letterings) all += lettering.text + ' ';
    return all.find(text) != std::string::npos;
}

void expectClean(const SheetPlan& plan, const std::vector<Tracing>& tracings,
                 const std::string& what) {
    const auto drawings = drawSheets(plan, tracings, madeUpWords());
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        const SheetDrawing& drawing = drawings[static_cast<std::size_t>(pageOfSheet(plan, i))];
        const auto lines = linesOf(plan, tracings, plan.sheets[i]);
        int large = 0;
        for (const auto& lettering : drawing.letterings) {
            const std::string where = what + ", sheet " + drawing.name + ": " + lettering.text;
            const auto box = boxOf(lettering);
            for (const auto& chain : lines) EXPECT_FALSE(crosses(box, chain)) << where;
            large += lettering.text == drawing.name && lettering.ink == SheetInk::pale ? 1 : 0;
        }
        EXPECT_EQ(large, 1) << what << ", sheet " << drawing.name;
        EXPECT_TRUE(saysAll(drawing, "Sheet " + drawing.name + ", page")) << what;
        EXPECT_TRUE(saysAll(drawing, madeUpWords().title.garment)) << what;
        EXPECT_TRUE(saysAll(drawing, madeUpWords().scaleNote)) << what;
    }
}

void expectCleanOn(const char* paper, const std::vector<Tracing>& tracings, const std::string& what,
                   bool isSearched) {
    SheetOptions options;
    options.paper = *paperNamed(paper);
    const auto plan =
        isSearched ? planFewerSheets(tracings, options, 1, 0.03) : planSheets(tracings, options);
    ASSERT_TRUE(plan);
    expectClean(*plan, tracings, what + " on " + paper);
}

TEST(Lettering, draftedCorsetsOfRealMeasurements) {
    const auto sets = bodies::ansurBodies();
    for (std::size_t k = 0; k < sets.size(); k += 90) {
        const auto body = completeBody(sets[k]);
        ASSERT_TRUE(body.hasValue());
        Style style;
        style.panelsPerHalf = 4 + static_cast<int>(k / 90 % 4);
        style.topEdge.shape = static_cast<TopShape>(k / 90 % 4);
        style.bottomEdge.shape = static_cast<BottomShape>(k / 90 / 2 % 4);
        const auto pattern = draftCorset(*body, style);
        ASSERT_TRUE(pattern.hasValue());
        const auto tracings = traceTracings(*pattern, style.allowance);
        ASSERT_TRUE(tracings.hasValue());
        const std::string what = "woman " + std::to_string(k);
        expectCleanOn("A4", *tracings, what, k / 90 % 2 == 0);
        for (const char* paper : {"Letter", "A3", "A0", "Roll 914", "148x210"}) {
            expectCleanOn(paper, *tracings, what, false);
        }
    }
}

TEST(Lettering, randomTracings) {
    for (unsigned seed = 1; seed <= 8; ++seed) {
        const auto tracings = randomDress(seed);
        for (const char* paper : {"A4", "Letter", "A0"}) {
            expectCleanOn(paper, tracings, "random set " + std::to_string(seed), seed % 2 == 0);
        }
    }
}

}  // namespace
}  // namespace coutil
