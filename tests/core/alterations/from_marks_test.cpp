#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/alterations/apply_alterations.h"
#include "tests/core/alterations/drafted.h"

namespace coutil {
namespace {

using samples::drafted;

Mark onSeam(const std::string& id, const std::string& seam, double at, double mm,
            BodySide side = BodySide::both, MarkKind kind = MarkKind::pinned) {
    Mark mark{.id = id};
    mark.kind = kind;
    mark.place = SeamPlace{seam, at};
    mark.amountMm = mm;
    mark.side = side;
    return mark;
}

Mark marked(const std::string& id, MarkKind kind, MarkPlace place, double mm) {
    Mark mark{.id = id};
    mark.kind = kind;
    mark.place = std::move(place);
    mark.amountMm = mm;
    return mark;
}

FromMarks from(const std::vector<Mark>& marks, const std::vector<Alteration>& previous = {}) {
    static const Pattern pattern = drafted(6);
    int next = 0;
    return alterationsFrom(marks, pattern, previous,
                           [&] { return "new " + std::to_string(next++); });
}

const ShapeSeam& shapeOf(const Alteration& alteration) {
    return std::get<ShapeSeam>(alteration.change);
}

TEST(AlterationsFrom, readingsOnOneSeamBecomeOneCurve) {
    const auto made = from({onSeam("a", "2-3", 0, 10), onSeam("b", "3-4", 20, 4),
                            onSeam("c", "2-3", 50, 6, BodySide::both, MarkKind::opened)});
    ASSERT_EQ(made.alterations.size(), 2U);
    EXPECT_EQ(shapeOf(made.alterations[0]).amounts, (std::vector<AmountAt>{{0, 10}, {50, -6}}));
    EXPECT_EQ(made.alterations[0].marks, (std::vector<std::string>{"a", "c"}));
    EXPECT_EQ(shapeOf(made.alterations[1]).seam, "3-4");
}

TEST(AlterationsFrom, aOneSidedMarkPartsTheSides) {
    const auto made = from({onSeam("a", "2-3", 0, 10), onSeam("b", "2-3", 50, 6, BodySide::left)});
    ASSERT_EQ(made.alterations.size(), 2U);
    EXPECT_EQ(made.alterations[0].side, BodySide::left);
    EXPECT_EQ(shapeOf(made.alterations[0]).amounts, (std::vector<AmountAt>{{0, 10}, {50, 6}}));
    EXPECT_EQ(made.alterations[1].side, BodySide::right);
    EXPECT_EQ(shapeOf(made.alterations[1]).amounts, (std::vector<AmountAt>{{0, 10}}));
}

// checks.md: n mm pinned is n/2 off each edge (common practice, no source).
TEST(AlterationsFrom, aTuckComesOffBothEdgesOfItsPanel) {
    const Pattern before = drafted(6);
    const auto made = from({marked("a", MarkKind::pinned, TuckPlace{"3", 0}, 8)});
    ASSERT_EQ(made.alterations.size(), 2U);
    EXPECT_EQ(shapeOf(made.alterations[0]).seam, "2-3");
    EXPECT_EQ(shapeOf(made.alterations[0]).frontPart, 0);
    EXPECT_EQ(shapeOf(made.alterations[1]).seam, "3-4");
    EXPECT_EQ(shapeOf(made.alterations[1]).frontPart, 1);
    const Pattern after = applyAlterations(before, made.alterations).pattern;
    // The waist is where the edges stand nearly upright.
    EXPECT_NEAR(*widthAtHeightMm(before.panels[2], 0) - *widthAtHeightMm(after.panels[2], 0), 8,
                0.1);
    EXPECT_EQ(before.panels[1].edges[1], after.panels[1].edges[1]);
}

TEST(AlterationsFrom, everyKindOfMarkAsksForItsChange) {
    const auto made = from({
        marked("a", MarkKind::opened, SlitPlace{"2", EdgeLine::bottom, 30, 80}, 12),
        marked("b", MarkKind::raise, OnLinePlace{EdgeLine::top, {.seam = "1-2"}}, 5),
        marked("c", MarkKind::lower, OnLinePlace{EdgeLine::top, {.seam = "centre front"}}, 7),
        marked("d", MarkKind::longer, HeightPlace{.level = "waist"}, 15),
        marked("e", MarkKind::shorter, HeightPlace{.heightMm = -40}, 4),
        marked("f", MarkKind::bustPointLower, {}, 9),
        marked("g", MarkKind::bustPointWider, {}, 6),
        marked("h", MarkKind::gapes, {}, 0),
    });
    EXPECT_TRUE(made.problems.empty());
    ASSERT_EQ(made.alterations.size(), 5U);
    const auto& slit = std::get<OpenPanel>(made.alterations[0].change);
    EXPECT_EQ(slit.amountMm, 12);
    EXPECT_EQ(slit.slitLengthMm, 80);
    EXPECT_EQ(slit.mouth, (EdgePlace{"bottom", 30}));
    const auto& line = std::get<ReshapeEdge>(made.alterations[1].change);
    ASSERT_EQ(line.amounts.size(), 2U);
    EXPECT_EQ(line.amounts[0].amountMm, 5);
    EXPECT_EQ(line.amounts[1].amountMm, -7);
    EXPECT_EQ(std::get<ChangeLength>(made.alterations[2].change).amountMm, 15);
    EXPECT_EQ(std::get<ChangeLength>(made.alterations[3].change).amountMm, -4);
    const auto& bust = std::get<MoveLevel>(made.alterations[4].change);
    EXPECT_EQ(bust.level, "bust");
    EXPECT_EQ(bust.upMm, -9);
    EXPECT_EQ(bust.widerMm, 6);
}

TEST(AlterationsFrom, marksWithoutAPlaceAreNamed) {
    const auto made = from({onSeam("a", "8-9", 0, 4), onSeam("b", "2-3", 900, 4),
                            marked("c", MarkKind::longer, HeightPlace{.level = "knee"}, 5),
                            marked("d", MarkKind::pinned, TuckPlace{"12", 0}, 5)});
    EXPECT_TRUE(made.alterations.empty());
    ASSERT_EQ(made.problems.size(), 4U);
    for (const Problem& problem : made.problems) EXPECT_EQ(problem.code, ProblemCode::markUnfit);
    EXPECT_EQ(made.problems[0].detail, "8-9");
    EXPECT_EQ(made.problems[2].detail, "knee");
    EXPECT_EQ(made.problems[3].subject, "pinned");
}

TEST(AlterationsFrom, whatTheMakerSetIsKept) {
    auto first = from({onSeam("a", "2-3", 0, 10), onSeam("b", "3-4", 0, 4)}).alterations;
    auto& shape = std::get<ShapeSeam>(first[0].change);
    shape.frontPart = 0.3;
    shape.up.overMm = 90;
    shape.down.overMm.reset();
    first[0].why = "gapes when she sits";
    const auto again = from({onSeam("b", "3-4", 0, 4), onSeam("a", "2-3", 0, 12)}, first);
    ASSERT_EQ(again.alterations.size(), 2U);
    EXPECT_EQ(again.alterations[1].id, first[0].id);
    EXPECT_EQ(again.alterations[0].id, first[1].id);
    shape.amounts = {{0, 12}};
    EXPECT_EQ(again.alterations[1], first[0]);
}

}  // namespace
}  // namespace coutil
