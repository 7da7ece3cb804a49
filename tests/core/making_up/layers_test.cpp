// Layers, the estimate of cloth and the list of materials.
#include <limits>

#include "core/block/edge_allowance.h"
#include "core/making_up/cloth_estimate.h"
#include "core/making_up/layer_cut.h"
#include "core/making_up/material_needs.h"
#include "tests/core/making_up/made_up_patterns.h"

namespace coutil {
namespace {

using made_up::rectangles;

TEST(Layers, mockUpHasTwentyRoundEveryEdge) {
    const Pattern pattern = rectangles(3, 80, 200, 120, EdgeRole::fold);
    const auto layers = usualLayers();
    ASSERT_EQ(layers.back().key, "mock_up");
    AllowanceStyle style;
    style.byEdgeMm = {{"2/seam 1", 13}};
    const auto cut = layerCut(pattern, style, layers.back());
    ASSERT_TRUE(cut.hasValue());
    EXPECT_EQ(cut->panels, (std::vector<std::size_t>{0, 1, 2}));
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) {
            EXPECT_EQ(allowanceMm(cut->allowance, panel, edge),
                      edge.role == EdgeRole::fold ? 0 : 20)
                << panel.name << " " << edge.name;
        }
    }
    EXPECT_EQ(layerCut(pattern, style, layers.front())->allowance, style);
}

TEST(Layers, panelsAndAdditions) {
    const Pattern pattern = wholeOf(rectangles(3, 80, 200, 120));
    Layer outer{.key = "outer", .panels = {"1", "3"}};
    outer.additions = {{"3", "centre back", 25}, {"3", "top", 4}};
    const auto cut = layerCut(pattern, {}, outer);
    ASSERT_TRUE(cut.hasValue());
    EXPECT_TRUE(cut.problems.empty());
    EXPECT_EQ(cut->panels, (std::vector<std::size_t>{0, 2, 3, 5}));
    // Opening 15 and 25 more; the bound top 0 and 4: once, though both sides have the panel.
    EXPECT_EQ(cut->allowance.byEdgeMm,
              (std::map<std::string, double>{{"3/centre back", 40}, {"3/top", 4}}));
}

TEST(Layers, whatThePatternDoesNotHaveIsTold) {
    const Pattern pattern = rectangles(3, 80, 200, 120);
    Layer layer{.key = "lining", .panels = {"2", "9"}};
    layer.additions = {{"2", "hem", 5}};
    const auto cut = layerCut(pattern, {}, layer);
    ASSERT_TRUE(cut.hasValue());
    EXPECT_EQ(cut->panels, (std::vector<std::size_t>{1}));
    ASSERT_EQ(cut.problems.size(), 2U);
    EXPECT_EQ(cut.problems[0].code, ProblemCode::layerPanelUnknown);
    EXPECT_EQ(cut.problems[0].subject, "lining");
    EXPECT_EQ(cut.problems[0].detail, "9");
    EXPECT_EQ(cut.problems[1].detail, "2/hem");
    layer.seamAllowanceMm = std::numeric_limits<double>::infinity();
    EXPECT_EQ(layerCut(pattern, {}, layer).problems.at(0).code, ProblemCode::makingUpOutOfRange);
}

// Rectangles of 100 x 360 with 20 round them are 140 x 400: nine side by side on 1300, so eight in
// one row; ten of them take two rows.
TEST(ClothEstimate, rowsOfRectangles) {
    const auto mockUp = usualLayers().back();
    const Pattern four = rectangles(4, 100, 200, 160);
    const auto row = clothEstimate(four, *layerCut(four, {}, mockUp), 1300);
    ASSERT_TRUE(row.hasValue());
    EXPECT_EQ(row->pieces, 8);
    EXPECT_NEAR(row->lengthMm, 400, 1e-9);
    EXPECT_NEAR(row->areaMm2, 8 * (100 * 360 + 2 * 20 * (100 + 360)), 1e-6);
    const Pattern five = rectangles(5, 100, 200, 160);
    EXPECT_NEAR(clothEstimate(five, *layerCut(five, {}, mockUp), 1300)->lengthMm, 800, 1e-9);
    // On the fold the first panel is one piece of 2 x 120.
    const Pattern folded = rectangles(1, 100, 200, 160, EdgeRole::fold);
    const auto fold = clothEstimate(folded, *layerCut(folded, {}, mockUp), 240);
    ASSERT_TRUE(fold.hasValue());
    EXPECT_EQ(fold->pieces, 1);
    const auto narrow = clothEstimate(folded, *layerCut(folded, {}, mockUp), 239);
    EXPECT_FALSE(narrow.hasValue());
    EXPECT_EQ(narrow.problems[0].code, ProblemCode::makingUpOutOfRange);
    EXPECT_NEAR(narrow.problems[0].figures[1].value, 240, 1e-9);
}

TEST(ClothEstimate, onManyBodiesTheRowsHoldTheArea) {
    made_up::visitCorsets(31, [](const Pattern& pattern, const Style& style) {
        const auto cut = layerCut(pattern, style.allowance, usualLayers().front());
        const auto estimate = clothEstimate(pattern, *cut, 1400);
        ASSERT_TRUE(estimate.hasValue());
        const double clothMm2 = estimate->lengthMm * estimate->clothWidthMm;
        EXPECT_GT(clothMm2, estimate->areaMm2);
        EXPECT_GT(estimate->lengthMm, 200);
        EXPECT_LT(estimate->lengthMm, 2000);
    });
}

TEST(Materials, amountsSparesAndCost) {
    MaterialChoices choices;
    choices.sparePart = 0.1;
    choices.priceByKey = {{"cloth/strength", 20}, {"eyelets", 0.1}, {"busk", 12}};
    const auto list =
        materialsList({{MaterialKind::cloth, "strength", 1400, MaterialUnit::metre, 0.8},
                       {MaterialKind::eyelets, {}, 5, MaterialUnit::piece, 32},
                       {MaterialKind::busk, {}, 305, MaterialUnit::piece, 1},
                       {MaterialKind::waistTape, {}, 22, MaterialUnit::metre, 0.7},
                       {MaterialKind::channelTape, {}, 9, MaterialUnit::metre, 0},
                       {MaterialKind::eyelets, {}, 5, MaterialUnit::piece, 8}},
                      choices);
    ASSERT_TRUE(list.hasValue());
    ASSERT_EQ(list->rows.size(), 4U);
    EXPECT_NEAR(list->rows[0].amountToBuy, 0.9, 1e-9);  // 0.88
    EXPECT_EQ(list->rows[1].amountToBuy, 44);           // 40 and a tenth, exactly
    EXPECT_EQ(list->rows[2].amountToBuy, 1);
    EXPECT_NEAR(*list->rows[0].cost, 18, 1e-9);
    EXPECT_FALSE(list->rows[3].price.has_value());
    EXPECT_TRUE(list->isPriceMissing);
    EXPECT_NEAR(list->cost, 18 + 4.4 + 12, 1e-9);
    choices.priceByKey["waist_tape"] = 1.5;
    choices.priceByKey["lace"] = -1;
    EXPECT_EQ(materialsList({}, choices).problems.at(0).subject, "materials/price_by_key/lace");
    choices.priceByKey.erase("lace");
    choices.sparePart = -0.5;
    EXPECT_EQ(materialsList({}, choices).problems.at(0).code, ProblemCode::makingUpOutOfRange);
}

TEST(Materials, needsOfTheParts) {
    const Pattern pattern = rectangles(4, 80, 200, 120);
    const auto eyelets = eyeletsFor(pattern, {});
    const auto needs = needsOf(*eyelets, {});
    ASSERT_EQ(needs.size(), 2U);
    EXPECT_EQ(needs[0].amount, 2.0 * static_cast<double>(eyelets->pairs.size()));
    EXPECT_NEAR(needs[1].amount, eyelets->laceMm / 1000, 1e-12);
    BonesToBuy bones;
    bones.plans = {
        {{BoneKind::spiralSteel, 6}, *cuttingPlan({{300, 3}, {250, 3}}, {700, 1000}, 1)}};
    double stockMm = 0;
    for (const MaterialNeed& need : needsOf(bones)) {
        EXPECT_EQ(materialKey(need), "bone_stock/spiral_steel 6");
        stockMm += need.amount * need.sizeMm;
    }
    EXPECT_EQ(stockMm, bones.plans[0].plan.stockMm);
    EXPECT_NEAR(needOf(*bindingFor(pattern, {}, {8, 15})).amount, 1.4, 1e-12);
    EXPECT_NEAR(needsOf(tapesByWidth({{22, 640, 670, 1}}), MaterialKind::waistTape)[0].amount, 0.67,
                1e-12);
}

}  // namespace
}  // namespace coutil
