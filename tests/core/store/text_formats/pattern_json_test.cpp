// Patterns and tracings as JSON: the published form, every number to the last bit.
#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/store/text_formats.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace coutil {
namespace {

using nlohmann::json;

void expectSamePath(const json& pieces, const Path& path) {
    ASSERT_EQ(pieces.size(), path.pieces.size());
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& piece = path.pieces[i];
        const double wanted[] = {piece.p0.x(), piece.p0.y(), piece.p1.x(), piece.p1.y(),
                                 piece.p2.x(), piece.p2.y(), piece.p3.x(), piece.p3.y()};
        for (std::size_t k = 0; k < 8; ++k) EXPECT_EQ(pieces[i][k].get<double>(), wanted[k]);
    }
}

TEST(PatternJson, holdsEveryEdgeToTheLastBit) {
    const Pattern pattern = samples::corset();
    const json read = json::parse(writePatternJson(pattern, {}, {}, {}));
    EXPECT_EQ(read["coutil"], "pattern");
    EXPECT_EQ(read["version"], 1);
    ASSERT_EQ(read["panels"].size(), pattern.panels.size());
    for (std::size_t i = 0; i < pattern.panels.size(); ++i) {
        const Panel& panel = pattern.panels[i];
        const json& shown = read["panels"][i];
        EXPECT_EQ(shown["name"], panel.name);
        EXPECT_EQ(shown["side"], "both");
        EXPECT_EQ(shown["cut"], panel.isOnFold ? 1 : 2);
        EXPECT_EQ(shown["levels"].size(), panel.levels.size());
        EXPECT_EQ(shown["grain"][1][1].get<double>(), panel.grain[1].y());
        ASSERT_EQ(shown["edges"].size(), panel.edges.size());
        for (std::size_t k = 0; k < panel.edges.size(); ++k) {
            EXPECT_EQ(shown["edges"][k]["name"], panel.edges[k].name);
            EXPECT_EQ(shown["edges"][k]["role"], keyOf(panel.edges[k].role));
            expectSamePath(shown["edges"][k]["path"], panel.edges[k].path);
        }
    }
}

// The promises of the drafting card, as a script sees them: paired edges equal, girths on target,
// both to 0.01 mm.
TEST(PatternJson, showsSeamsAndGirths) {
    const Pattern pattern = samples::corset();
    const json read = json::parse(writePatternJson(pattern, {}, {}, {}));
    ASSERT_EQ(read["seams"].size(), 4U);
    EXPECT_EQ(read["seams"][1]["name"], "2-3");
    EXPECT_EQ(read["seams"][1]["a"], (json{{"panel", "2"}, {"edge", "seam 2-3"}}));
    EXPECT_EQ(read["seams"][1]["b"], (json{{"panel", "3"}, {"edge", "seam 2-3"}}));
    for (const json& seam : read["seams"]) {
        for (const char* part : {"above_waist", "below_waist"}) {
            EXPECT_GT(seam[part][0].get<double>(), 20);
            EXPECT_NEAR(seam[part][0].get<double>(), seam[part][1].get<double>(), 0.01);
        }
    }
    int compared = 0;
    for (const json& level : read["levels"]) {
        if (level["target"].is_null() || level["pattern"].is_null()) continue;
        EXPECT_NEAR(level["pattern"].get<double>(), level["target"].get<double>(), 0.01);
        ++compared;
    }
    EXPECT_GE(compared, 3);  // bust, under-bust, waist
    EXPECT_EQ(read["lacing_gap"], 50);
    EXPECT_EQ(read["estimates"].size(), pattern.estimates.size());
    EXPECT_FALSE(read["estimates"][0]["source"].get<std::string>().empty());
}

TEST(PatternJson, namesTheRevision) {
    const json pencil = json::parse(writePatternJson({}, {}, {}, {}))["revision"];
    EXPECT_EQ(pencil["id"], "pencil");
    EXPECT_EQ(pencil["state"], "pencil");
    EXPECT_TRUE(pencil["parent"].is_null());
    EXPECT_TRUE(pencil["digest"].is_null());
    const json ink = json::parse(
        writePatternJson({}, {"2", "confirmed", "2026-04-11", "1", "ab12"}, {}, {}))["revision"];
    EXPECT_EQ(ink, (json{{"id", 2},
                         {"state", "confirmed"},
                         {"date", "2026-04-11"},
                         {"parent", 1},
                         {"digest", "ab12"}}));
}

TEST(PatternJson, problemsCarryTheirSentence) {
    Problem problem;
    problem.code = ProblemCode::panelTooNarrow;
    problem.severity = Severity::warning;
    problem.panel = std::string(1, '3');
    problem.at = Point(1.5, -0.0);
    problem.figures = {{"value", 11.25}};
    const auto sentence = [](const Problem& told) { return "panel " + told.panel; };
    const json read = json::parse(writePatternJson({}, {}, {problem}, sentence))["problems"];
    EXPECT_EQ(read, (json::array({{{"code", "panel_too_narrow"},
                                   {"severity", "warning"},
                                   {"panel", "3"},
                                   {"at", {1.5, 0.0}},
                                   {"figures", {{"value", 11.25}}},
                                   {"text", "panel 3"}}})));
}

TEST(TracingsJson, holdsLinesNotchesAndLabel) {
    const auto tracings = samples::tracings();
    TracingTitle title = samples::title();
    const std::string text = writeTracingsJson(tracings, title, {}, {});
    const json read = json::parse(text);
    EXPECT_EQ(read["coutil"], "tracings");
    ASSERT_EQ(read["tracings"].size(), tracings.size());
    for (std::size_t i = 0; i < tracings.size(); ++i) {
        const json& shown = read["tracings"][i];
        expectSamePath(shown["cutting"], tracings[i].cutting);
        ASSERT_EQ(shown["sewing"].size(), tracings[i].sewing.size());
        for (std::size_t k = 0; k < tracings[i].sewing.size(); ++k) {
            expectSamePath(shown["sewing"][k]["path"], tracings[i].sewing[k].path);
            EXPECT_EQ(shown["sewing"][k]["allowance"].get<double>(), tracings[i].allowancesMm[k]);
        }
        EXPECT_EQ(shown["notches"].size(), tracings[i].notches.size());
        EXPECT_EQ(shown["label"]["lines"][0], tracings[i].panel);
    }
    EXPECT_EQ(text, writeTracingsJson(tracings, title, {}, {}));
    title.client.clear();
    EXPECT_EQ(writeTracingsJson(tracings, title, {}, {}).find("K\xC3\xA4the"), std::string::npos);
}

}  // namespace
}  // namespace coutil
