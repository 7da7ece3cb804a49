// What `compare --json` prints, read back by a JSON parser.
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/block/draft_corset.h"
#include "core/store/comparison_formats.h"
#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

TEST(ComparisonJson, saysWhatTheComparisonSays) {
    Style style;
    const auto a = draftCorset(samples::average(), style);
    style.easeMm[LevelId::waist] -= 12;
    const auto b = draftCorset(samples::average(), style);
    ASSERT_TRUE(a && b);
    ComparisonReport report;
    report.a.id = "1";
    report.a.state = "confirmed";
    report.a.date = "2026-03-02";
    report.comparison = comparePatterns(*a, *b);
    report.chart = girthChart(*a, *b);
    report.alterations.onlyInB = {
        {.alteration = {.id = "x",
                        .change = ShapeSeam{.seam = "2-3", .amounts = {{35, 8}, {120, 0}}},
                        .why = "loose \"here\""},
         .revision = 2,
         .confirmedOn = "2026-04-01"}};
    const auto json = nlohmann::json::parse(writeComparisonJson(report));
    EXPECT_EQ(json.at("coutil"), "comparison");
    EXPECT_EQ(json.at("a").at("date"), "2026-03-02");
    EXPECT_EQ(json.at("b").at("state"), "pencil");
    EXPECT_EQ(json.at("panels").size(), report.comparison.panels.size());
    const auto& edge = json.at("panels").at(0).at("edges").at(1);
    EXPECT_EQ(edge.at("largest").get<double>(), report.comparison.panels[0].edges[1].largestMm);
    EXPECT_EQ(json.at("seams").size(), report.comparison.seams.size());
    for (const auto& level : json.at("levels")) {
        if (level.at("name") != "waist") continue;
        EXPECT_NEAR(level.at("difference").get<double>(), -12, 0.02);
        EXPECT_EQ(level.at("body"), 760);
    }
    EXPECT_EQ(json.at("girth_chart").at("girths").size(), report.chart.girths.size());
    const auto& altered = json.at("alterations").at("only_in_b").at(0);
    EXPECT_EQ(altered.at("kind"), "shape_seam");
    EXPECT_EQ(altered.at("why"), "loose \"here\"");
    EXPECT_EQ(altered.at("revision"), 2);
    EXPECT_EQ(altered.at("amounts"), nlohmann::json::parse("[[35, 8], [120, 0]]"));
    // Every key of an alterations file stands there with the same value.
    const auto written = nlohmann::json::parse(
        writeAlterationsJson({report.alterations.onlyInB.front().alteration}));
    for (const auto& [key, value] : written.at("alterations").at(0).items())
        EXPECT_EQ(altered.at(key), value) << key;
}

}  // namespace
}  // namespace coutil
