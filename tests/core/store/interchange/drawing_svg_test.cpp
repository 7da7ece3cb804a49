// What goes out as SVG comes back the same, as written or after another program saved it again; and
// whatever is no drawing of the program is told in one problem.
#include "core/store/drawing_svg.h"

#include <algorithm>
#include <string>

#include <gtest/gtest.h>

#include "core/pattern/panel_key.h"
#include "core/store/interchange.h"
#include "core/store/interchange/svg_path_data.h"
#include "core/store/interchange/svg_transform.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace coutil {
namespace {

constexpr double kExactMm = 0.001;

double farthestControlPoint(const Path& a, const Path& b) {
    if (a.pieces.size() != b.pieces.size()) return 1e9;
    double farthest = 0;
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        const Cubic& p = a.pieces[i];
        const Cubic& q = b.pieces[i];
        farthest = std::max({farthest, (p.p0 - q.p0).norm(), (p.p1 - q.p1).norm(),
                             (p.p2 - q.p2).norm(), (p.p3 - q.p3).norm()});
    }
    return farthest;
}

const DrawnLine* lineNamed(const DrawnPanel& panel, LineKind kind, const std::string& name) {
    const auto line = std::ranges::find_if(
        panel.lines, [&](const DrawnLine& l) { return l.kind == kind && l.name == name; });
    return line == panel.lines.end() ? nullptr : &*line;
}

void expectEdges(const DrawnPanel& panel, const std::vector<Edge>& edges) {
    for (const Edge& edge : edges) {
        const DrawnLine* line = lineNamed(panel, LineKind::sewing, edge.name);
        ASSERT_NE(line, nullptr) << panel.name << " " << edge.name;
        EXPECT_LE(farthestControlPoint(line->path, edge.path), kExactMm) << edge.name;
    }
}

TEST(DrawingSvg, patternsComeBackWithinAMicrometre) {
    for (const samples::Sample& sample : samples::all()) {
        const auto drawing = readDrawingSvg(writePatternSvg(sample.pattern, samples::title()));
        ASSERT_TRUE(drawing) << sample.name;
        ASSERT_EQ(drawing->panels.size(), sample.pattern.panels.size());
        for (std::size_t i = 0; i < drawing->panels.size(); ++i) {
            EXPECT_EQ(drawing->panels[i].name, panelKey(sample.pattern.panels[i]));
            expectEdges(drawing->panels[i], sample.pattern.panels[i].edges);
        }
    }
}

TEST(DrawingSvg, tracingsComeBackWithinAMicrometre) {
    for (const samples::Sample& sample : samples::all()) {
        const auto drawing = readDrawingSvg(writeTracingsSvg(sample.tracings, samples::title()));
        ASSERT_TRUE(drawing) << sample.name;
        ASSERT_EQ(drawing->panels.size(), sample.tracings.size());
        for (std::size_t i = 0; i < drawing->panels.size(); ++i) {
            const DrawnPanel& panel = drawing->panels[i];
            const Tracing& tracing = sample.tracings[i];
            expectEdges(panel, tracing.sewing);
            const DrawnLine* cutting = lineNamed(panel, LineKind::cutting, "");
            ASSERT_NE(cutting, nullptr);
            EXPECT_TRUE(cutting->isClosed);
            EXPECT_LE(farthestControlPoint(cutting->path, tracing.cutting), kExactMm);
            for (const LevelLine& level : tracing.levels) {
                const DrawnLine* line = lineNamed(panel, LineKind::levels, level.level);
                ASSERT_NE(line, nullptr) << level.level;
                EXPECT_LE((line->path.start() - level.front).norm(), kExactMm);
                EXPECT_LE((line->path.end() - level.back).norm(), kExactMm);
            }
        }
    }
}

std::string wrapped(const std::string& inside, const std::string& page) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + page + ">" + inside + "</svg>";
}

// Half a sheet of commands: the same square of 25.4 mm in four ways.
TEST(DrawingSvg, otherProgramsWriteTheSameOtherwise) {
    const std::string square = "<g id=\"panel-1\"><g id=\"panel-1-cutting\">";
    const std::string end = "</g></g>";
    const std::string inMm = "width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\"";
    const std::string inPx = "width=\"2in\" height=\"2in\" viewBox=\"0 0 192 192\"";
    const std::vector<std::string> ways{
        wrapped(square + "<path d=\"M10 20 35.4 20V45.4H10z\"/>" + end, inMm),
        wrapped(square + "<path d=\"m10,20 25.4,0 0 25.4h-25.4zM5 5\"/>" + end, inMm),
        wrapped("<g transform=\"translate(10,20) scale(25.4)\">" + square +
                    "<path d=\"M0 0L1 0c0 .25.0.5 0 1Q.5 1 0 1Z\"/>" + end + "</g>",
                inMm),
        wrapped("<defs/><g><g>" + square + "<path d=\"M0 0 96 0 96 96 0 96Z\"/>" + end + "</g></g>",
                inPx)};
    for (const std::string& way : ways) {
        const auto drawing = readDrawingSvg(way);
        ASSERT_TRUE(drawing) << way;
        const DrawnLine& line = drawing->panels.at(0).lines.at(0);
        EXPECT_TRUE(line.isClosed);
        EXPECT_NEAR(std::abs(signedAreaMm2(line.path)), 25.4 * 25.4, 1e-9) << way;
        EXPECT_NEAR(boundsOf(line.path).widthMm(), 25.4, 1e-9) << way;
    }
}

// Values by hand (SVG 1.1, 7.6): rotate about a point, then matrix, the last one first.
TEST(DrawingSvg, transformsActFromTheLastOn) {
    const auto turn = interchange::readTransform("rotate(90, 10 10) translate(5)");
    ASSERT_TRUE(turn);
    EXPECT_LE((interchange::moved(Point(5, 10), *turn) - Point(10, 10)).norm(), 1e-12);
    EXPECT_LE((interchange::moved(Point(15, 10), *turn) - Point(10, 20)).norm(), 1e-12);
    const auto matrix = interchange::readTransform("matrix(1 2 3 4 5 6)");
    ASSERT_TRUE(matrix);
    EXPECT_EQ(interchange::moved(Point(1, 1), *matrix), Point(9, 12));
    EXPECT_FALSE(interchange::readTransform("rotate(90"));
    EXPECT_FALSE(interchange::readTransform("spin(90)"));
    EXPECT_FALSE(interchange::readTransform("scale(1 2 3)"));
}

TEST(DrawingSvg, smoothCurvesMirrorTheirNeighbours) {
    const auto read = interchange::readPathData("M0 0C0 1 1 2 2 2S4 3 4 4");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->at(0).path.pieces.at(1).p1, Point(3, 2));
    // A quadratic curve and its cubic form have the same middle: (p0 + 2 p1 + p2) / 4.
    const auto quadratic = interchange::readPathData("M0 0Q2 4 4 0T8 0");
    ASSERT_TRUE(quadratic);
    EXPECT_LE((pointAt(quadratic->at(0).path.pieces.at(0), 0.5) - Point(2, 2)).norm(), 1e-12);
    EXPECT_LE((pointAt(quadratic->at(0).path.pieces.at(1), 0.5) - Point(6, -2)).norm(), 1e-12);
}

Problem onlyProblem(const std::string& svg) {
    const auto drawing = readDrawingSvg(svg);
    EXPECT_FALSE(drawing) << svg.substr(0, 80);
    EXPECT_EQ(drawing.problems.size(), 1U);
    return drawing.problems.empty() ? Problem() : drawing.problems.front();
}

TEST(DrawingSvg, brokenOnesAreToldWithTheirPlace) {
    const std::string page = "width=\"9mm\" height=\"9mm\" viewBox=\"0 0 9 9\"";
    const auto path = [&](const std::string& d) {
        return wrapped(
            "\n<g id=\"panel-1\">\n<g id=\"panel-1-cutting\"><path d=\"" + d + "\"/></g></g>",
            page);
    };
    EXPECT_EQ(onlyProblem("").code, ProblemCode::drawingUnreadable);
    EXPECT_EQ(onlyProblem("<svg><g></svg>").code, ProblemCode::drawingUnreadable);
    EXPECT_EQ(onlyProblem("plain words").code, ProblemCode::drawingUnreadable);
    for (const char* d : {"L 1 1", "M 1", "M 0 0 C 1 1 2 2 3", "M 0 0 A 1 1 0 0 1 2 2",
                          "M 0 0 L nan 1", "M 0 0 L 1e99 1", "M 0 0 X 1 1", "M 0 0 L 1 1 ; 2"}) {
        const Problem problem = onlyProblem(path(d));
        EXPECT_EQ(problem.code, ProblemCode::drawingUnreadable) << d;
        EXPECT_EQ(problem.detail, d);
        ASSERT_FALSE(problem.figures.empty()) << d;
        EXPECT_EQ(problem.figures[0].value, 3) << d;
    }
    EXPECT_EQ(onlyProblem(wrapped("<g id=\"panel-1\"/>", "width=\"0\" height=\"1\"")).code,
              ProblemCode::drawingUnreadable);
}

TEST(DrawingSvg, foreignOnesAreTold) {
    const std::string page = "width=\"9mm\" height=\"9mm\" viewBox=\"0 0 9 9\"";
    EXPECT_EQ(onlyProblem(wrapped("<path d=\"M0 0L1 1\"/>", page)).code,
              ProblemCode::drawingForeign);
    EXPECT_EQ(onlyProblem("<html><body/></html>").code, ProblemCode::drawingForeign);
    EXPECT_EQ(onlyProblem(wrapped("<g id=\"panel-1\"><path d=\"M0 0L1 1\"/></g>", page)).code,
              ProblemCode::drawingForeign);
}

TEST(DrawingSvg, hugeAndDeepOnesAreRefused) {
    const std::string page = "width=\"9mm\" height=\"9mm\" viewBox=\"0 0 9 9\"";
    std::string deep;
    for (int i = 0; i < 200'000; ++i) deep += "<g>";
    for (int i = 0; i < 200'000; ++i) deep += "</g>";
    EXPECT_EQ(onlyProblem(wrapped(deep, page)).code, ProblemCode::drawingTooLarge);
    EXPECT_EQ(onlyProblem(std::string(65'000'000, ' ')).code, ProblemCode::drawingTooLarge);
}

// Entities that would multiply, or read a file, stay what they are: no number.
TEST(DrawingSvg, entitiesAreNotExpanded) {
    const std::string document =
        "<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a \"M0 0L1 1\"><!ENTITY f SYSTEM "
        "\"file:///etc/hostname\">]><svg width=\"9mm\" height=\"9mm\" viewBox=\"0 0 9 9\"><g "
        "id=\"panel-1\"><g id=\"panel-1-cutting\"><path d=\"&a;\"/></g></g></svg>";
    const Problem problem = onlyProblem(document);
    EXPECT_EQ(problem.code, ProblemCode::drawingUnreadable);
    EXPECT_EQ(problem.detail, "&a;");
}

}  // namespace
}  // namespace coutil
