// Styles as JSON: every field comes back, and every fault is named with the path of its key.
#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/store/text_formats.h"

namespace coutil {
namespace {

Outcome<Style> readWith(const std::string& rest) {
    return readStyleJson(R"({"coutil":"style","version":1)" + (rest.empty() ? "" : "," + rest) +
                         "}");
}

TEST(StyleJson, anEmptyStyleIsTheDefault) {
    const auto style = readWith("");
    ASSERT_TRUE(style.hasValue());
    EXPECT_EQ(*style, Style{});
}

// The example of the published format.
TEST(StyleJson, readsThePublishedExample) {
    const auto style = readWith(
        R"("block":"corset","panels_per_half":5,"lacing_gap":50,
           "ease":{"bust":0,"under_bust":-20,"waist":-60,"high_hip":-10},"front":"busk",
           "top_edge":{"shape":"sweetheart","front":150},"bottom_edge":{"shape":"dipped"},
           "allowance":10)");
    ASSERT_TRUE(style.hasValue());
    EXPECT_EQ(style->easeMm.at(LevelId::waist), -60);
    EXPECT_EQ(style->topEdge.frontMm, 150);
    EXPECT_FALSE(style->topEdge.backMm.has_value());
    EXPECT_EQ(style->bottomEdge.shape, BottomShape::dipped);
    EXPECT_EQ(style->allowance.seamMm, 10);
}

TEST(StyleJson, aLevelNotNamedHasNoEase) {
    const auto style = readWith(R"("ease":{"waist":"-2 in"})");
    ASSERT_TRUE(style.hasValue());
    EXPECT_EQ(style->easeMm, (std::map<LevelId, double>{{LevelId::waist, -50.8}}));
}

// A style with every field set, different for every seed.
class StyleMaker {
  public:
    explicit StyleMaker(unsigned seed) : random_(seed) {}

    Style style() {
        Style style;
        style.panelsPerHalf = 4 + pick(4);
        style.lacingGapMm = mm();
        style.lacingGapAtMm = {{LevelId::bust, mm()}, {LevelId::hip, mm()}};
        style.easeMm.clear();
        for (const LevelId level : kAllLevels)
            if (pick(2) == 0) style.easeMm[level] = -mm();
        style.front = static_cast<FrontClosure>(pick(3));
        style.topEdge = {
            static_cast<TopShape>(pick(4)), maybe(), maybe(), maybe(), maybe(), named("2-3")};
        style.bottomEdge = {static_cast<BottomShape>(pick(4)), maybe(), maybe(), maybe(),
                            named("\"<&\n")};
        style.frontShare = mm() / 300;
        style.panelShares = {mm(), mm(), mm()};
        style.seamShares = {{LevelId::waist, {mm(), mm()}}};
        style.frontPart = named("1-2");
        style.ownLevels = {{"\xC3\x9C ber", mm()}, {"ribs", -mm()}};
        style.allowance = {mm(), mm(), pick(2) == 0, pick(2) == 0, mm(), named("3/seam 2-3")};
        return style;
    }

  private:
    int pick(int count) { return std::uniform_int_distribution<int>(0, count - 1)(random_); }
    double mm() { return std::uniform_real_distribution<double>(0.1, 300)(random_); }
    std::optional<double> maybe() { return pick(2) == 0 ? std::nullopt : std::optional(mm()); }
    std::map<std::string, double> named(const char* name) {
        if (pick(2) == 0) return {};
        return {{name, mm()}};
    }

    std::mt19937 random_;
};

TEST(StyleJson, everyStyleComesBackToTheLastBit) {
    for (unsigned seed = 0; seed < 500; ++seed) {
        const Style style = StyleMaker(seed).style();
        const auto again = readStyleJson(writeStyleJson(style));
        ASSERT_TRUE(again.hasValue()) << writeStyleJson(style);
        EXPECT_EQ(*again, style) << writeStyleJson(style);
    }
}

struct Fault {
    std::string rest;
    ProblemCode code;
    std::string subject;
    std::string detail;
};

TEST(StyleJson, namesEveryFaultWithItsPath) {
    using enum ProblemCode;
    const std::vector<Fault> faults{
        {R"("lacing_gab":50)", jsonUnknownKey, "lacing_gab", "lacing_gap"},
        {R"("ease":{"wast":-60})", jsonUnknownKey, "ease.wast", "waist"},
        {R"("top_edge":{"frnt":1})", jsonUnknownKey, "top_edge.frnt", "front"},
        {R"("allowance":{"hem":20})", jsonUnknownKey, "allowance.hem", ""},
        {R"("panels_per_half":5.5)", jsonWantsWholeNumber, "panels_per_half", "5.5"},
        {R"("panels_per_half":"5")", jsonWantsNumber, "panels_per_half", "5"},
        {R"("front":"zipper")", jsonWantsChoice, "front", "busk, fold, seam"},
        {R"("top_edge":{"shape":1})", jsonWantsChoice, "top_edge.shape",
         "curved, pointed, straight, sweetheart"},
        {R"("bottom_edge":"dipped")", jsonWantsObject, "bottom_edge", "dipped"},
        {R"("lacing_gap":"wide")", lengthUnreadable, "lacing_gap", "wide"},
        {R"("lacing_gap":[])", jsonWantsLength, "lacing_gap", "[]"},
        {R"("panel_shares":[1,"2"])", jsonWantsNumberList, "panel_shares", R"([1,"2"])"},
        {R"("seam_shares":{"waist":0.5})", jsonWantsNumberList, "seam_shares.waist", "0.5"},
        {R"("front_part":{"1-2":"half"})", jsonWantsNumber, "front_part.1-2", "half"},
        {R"("own_levels":{"name":"ribs"})", jsonWantsObjectList, "own_levels",
         R"({"name":"ribs"})"},
        {R"("own_levels":[{"name":"ribs"}])", jsonKeyMissing, "own_levels[0].height", ""},
        {R"("own_levels":[{"height":3}])", jsonKeyMissing, "own_levels[0].name", ""},
        {R"("allowance":{"top_bound":1})", jsonWantsTruth, "allowance.top_bound", "1"},
        {R"("allowance":true)", jsonWantsLength, "allowance", "true"},
        {R"("block":"skirt")", jsonWantsChoice, "block", "corset"},
    };
    for (const Fault& fault : faults) {
        const auto style = readWith(fault.rest);
        EXPECT_FALSE(style.hasValue()) << fault.rest;
        ASSERT_EQ(style.problems.size(), 1U) << fault.rest;
        EXPECT_EQ(style.problems[0].code, fault.code) << fault.rest;
        EXPECT_EQ(style.problems[0].subject, fault.subject) << fault.rest;
        EXPECT_EQ(style.problems[0].detail, fault.detail) << fault.rest;
    }
}

TEST(StyleJson, refusesMeasurements) {
    const auto style = readStyleJson(R"({"coutil":"measurements","version":1})");
    ASSERT_EQ(style.problems.size(), 1U);
    EXPECT_EQ(style.problems[0].code, ProblemCode::jsonWrongKind);
    EXPECT_EQ(style.problems[0].detail, "style");
}

}  // namespace
}  // namespace coutil
