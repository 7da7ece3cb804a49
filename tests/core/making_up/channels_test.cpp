// Where channels run, by rule and by hand, on a pattern that can be reckoned by hand.
#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include <gtest/gtest.h>

#include "core/making_up/channel.h"
#include "tests/core/making_up/arc_seam.h"

namespace coutil {
namespace {

// Two rectangles of 100 x 200 mm between a busk and a laced back.
Pattern laced() {
    Pattern pattern = samples::twoPanels();
    pattern.panels[0].edges[3].role = EdgeRole::opening;
    pattern.panels[1].edges[1].role = EdgeRole::opening;
    pattern.levels.push_back({.name = "under_bust", .heightMm = 60});
    return pattern;
}

const Channel* find(const std::vector<Channel>& channels, const std::string& key,
                    PanelSide side = PanelSide::both) {
    const auto found = std::ranges::find_if(channels, [&](const Channel& channel) {
        return channel.key == key && channel.side == side;
    });
    return found == channels.end() ? nullptr : &*found;
}

std::vector<Channel> found(const Pattern& pattern, const MakingUpChoices& choices = {}) {
    const auto outcome = findChannels(pattern, {}, choices);
    EXPECT_TRUE(outcome.problems.empty());
    return *outcome;
}

void expectLine(const Channel* channel, double xMm, double fromMm, double toMm) {
    ASSERT_NE(channel, nullptr);
    EXPECT_NEAR(channel->line.start().x(), xMm, 1e-6) << channel->key;
    EXPECT_NEAR(channel->line.end().x(), xMm, 1e-6) << channel->key;
    EXPECT_NEAR(channel->line.start().y(), fromMm, 1e-6) << channel->key;
    EXPECT_NEAR(channel->line.end().y(), toMm, 1e-6) << channel->key;
    EXPECT_NEAR(channel->waistAtMm, -fromMm, 1e-6) << channel->key;
}

TEST(Channels, theRulesOfALacedCorsetWithABusk) {
    const auto channels = found(laced());
    ASSERT_EQ(channels.size(), 4U);
    // Behind a busk of 13 mm and 2 mm of stitching; width bone + 2 (read: +1.6 to +3.2).
    expectLine(find(channels, "front"), 13 + 2 + 4.5, -80, 120);
    EXPECT_EQ(find(channels, "front")->widthMm, 9);
    // The seam is straight: folded on the panel behind, half its width from the seam.
    const Channel* seam = find(channels, "seam 1-2");
    expectLine(seam, 4, -80, 120);
    EXPECT_EQ(seam->panel, 1U);
    EXPECT_EQ(seam->carrier, ChannelCarrier::ownAllowance);
    // 7 mm on both sides of a column 12 mm from the edge.
    expectLine(find(channels, "beside eyelets inner"), 100 - 19, -80, 120);
    expectLine(find(channels, "beside eyelets outer"), 100 - 5, -80, 120);
}

TEST(Channels, aFoldHasOneInTheMiddleOfItsPanel) {
    Pattern pattern = laced();
    pattern.panels[0].edges[3].role = EdgeRole::fold;
    pattern.panels[0].isOnFold = true;
    const auto channels = found(pattern);
    expectLine(find(channels, "front"), 0, -80, 120);
    EXPECT_TRUE(find(channels, "front")->isOnFold);
    const auto lines = stitchLinesOn(pattern, *find(channels, "front"), 0);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_NEAR(lines[0].start().x(), 4.5, 1e-6);
}

TEST(Channels, aCurvedSeamIsCarriedByATapeInItsMiddle) {
    const Pattern pattern = samples::withArc(200, 200);
    const auto channels = found(pattern);
    const Channel* seam = find(channels, "seam 1-2");
    ASSERT_NE(seam, nullptr);
    EXPECT_EQ(seam->carrier, ChannelCarrier::tape);
    EXPECT_EQ(seam->line, pattern.panels[0].edges[1].path);
    EXPECT_NEAR(seam->waistAtMm, 100, 1e-3);
    for (const std::size_t panel : {0U, 1U}) {
        const auto lines = stitchLinesOn(pattern, *seam, panel);
        ASSERT_EQ(lines.size(), 1U);
        for (const double atMm : {30.0, 100.0, 170.0}) {
            const Point at = pointAtLength(lines[0], atMm);
            const Path& edge = pattern.panels[panel].edges[panel == 0 ? 1 : 3].path;
            EXPECT_NEAR(closestOn(edge, at).distanceMm, 4, 0.01);
        }
    }
}

TEST(Channels, stitchLinesStandAtBothSides) {
    const Pattern pattern = laced();
    const auto channels = found(pattern);
    const auto inner = stitchLinesOn(pattern, *find(channels, "beside eyelets inner"), 1);
    ASSERT_EQ(inner.size(), 2U);
    EXPECT_NEAR(inner[0].start().x(), 81 - 4.5, 1e-6);
    EXPECT_NEAR(inner[1].end().x(), 81 + 4.5, 1e-6);
    EXPECT_TRUE(stitchLinesOn(pattern, *find(channels, "beside eyelets inner"), 0).empty());
    const auto seam = stitchLinesOn(pattern, *find(channels, "seam 1-2"), 1);
    ASSERT_EQ(seam.size(), 1U);
    EXPECT_NEAR(seam[0].start().x(), 8, 1e-6);
    EXPECT_TRUE(stitchLinesOn(pattern, *find(channels, "seam 1-2"), 0).empty());
}

TEST(Channels, theFoldedAllowanceIsWideAndTheOneInsideTrimmed) {
    const Pattern pattern = laced();
    const auto channels = found(pattern);
    const AllowanceStyle with = allowanceWithChannels({}, pattern, channels, {});
    const std::map<std::string, double> expected{{"1/seam 1-2", 14}, {"2/seam 1-2", 5}};
    EXPECT_EQ(with.byEdgeMm, expected);
    AllowanceStyle byHand;
    byHand.byEdgeMm["1/seam 1-2"] = 25;
    EXPECT_EQ(allowanceWithChannels(byHand, pattern, channels, {}).byEdgeMm.at("1/seam 1-2"), 25);
}

TEST(Channels, byHandOneSideOnlyChangesThatSide) {
    MakingUpChoices choices;
    choices.channels.byHand = {
        {.channel = "seam 1-2", .side = PanelSide::left, .bone = BoneType{BoneKind::synthetic, 4}},
        {.channel = "front", .isOn = false},
        {.channel = "panel 2 middle", .isOn = true, .bottomMm = -50, .topMm = 40},
        {.channel = "my own", .line = ChannelLine{"1", 40, 60}}};
    const auto channels = found(laced(), choices);
    EXPECT_EQ(find(channels, "front"), nullptr);
    EXPECT_EQ(find(channels, "seam 1-2", PanelSide::left)->bone.kind, BoneKind::synthetic);
    EXPECT_EQ(find(channels, "seam 1-2", PanelSide::right)->bone.kind, BoneKind::spiralSteel);
    expectLine(find(channels, "panel 2 middle"), 50, -50, 40);
    EXPECT_FALSE(find(channels, "panel 2 middle")->endsAtBottomEdge);
    const Channel* own = find(channels, "my own");
    ASSERT_NE(own, nullptr);
    EXPECT_NEAR((own->line.start() - Point(40, -80)).norm(), 0, 1e-9);
    EXPECT_NEAR((own->line.end() - Point(60, 120)).norm(), 0, 1e-9);
    EXPECT_NEAR(own->waistAtMm, 80 * std::hypot(200, 20) / 200, 1e-6);
}

TEST(Channels, bustSupportStandsUnderTheBustClearOfTheSeam) {
    MakingUpChoices choices;
    choices.channels.hasBustSupport = true;
    expectLine(find(found(laced(), choices), "bust support"), 8 + 2 + 4, -80, 60);
}

struct Refusal {
    ChannelChoice choice;
    ProblemCode code;
};

TEST(Channels, choicesThatDoNotFitAreToldAndLeftOut) {
    const std::vector<Refusal> refusals{
        {{.channel = "seam 7-8"}, ProblemCode::choiceUnfit},
        {{.channel = "mine", .line = ChannelLine{"9", 10, 10}}, ProblemCode::choiceUnfit},
        {{.channel = "front", .line = ChannelLine{"1", 10, 10}}, ProblemCode::choiceUnfit},
        {{.channel = "mine", .line = ChannelLine{"1", -10, 10}}, ProblemCode::channelImpossible},
        {{.channel = "mine", .line = ChannelLine{"1", 2, 2}}, ProblemCode::channelImpossible},
        {{.channel = "front", .bone = BoneType{BoneKind::flatSteel, 250}},
         ProblemCode::channelImpossible},
        {{.channel = "front", .bottomMm = 30, .topMm = 20}, ProblemCode::channelImpossible}};
    for (const Refusal& refusal : refusals) {
        MakingUpChoices choices;
        choices.channels.byHand = {refusal.choice};
        const auto outcome = findChannels(laced(), {}, choices);
        ASSERT_EQ(outcome.problems.size(), 1U) << refusal.choice.channel;
        EXPECT_EQ(outcome.problems[0].code, refusal.code) << refusal.choice.channel;
        EXPECT_EQ(outcome.problems[0].subject, refusal.choice.channel);
        EXPECT_FALSE(isError(outcome.problems[0]));
    }
}

TEST(Channels, ownAllowanceOfACurvedSeamIsObeyedAndTold) {
    MakingUpChoices choices;
    choices.channels.byHand = {{.channel = "seam 1-2", .carrier = ChannelCarrier::ownAllowance}};
    Style style;
    style.allowance.byEdgeMm["1/seam 1-2"] = 9;
    const auto outcome = findChannels(samples::withArc(300, 200), style, choices);
    ASSERT_EQ(outcome.problems.size(), 2U);
    EXPECT_EQ(outcome.problems[0].code, ProblemCode::seamTooCurvedForBone);
    EXPECT_EQ(outcome.problems[1].code, ProblemCode::allowanceTooNarrow);
    EXPECT_EQ(find(*outcome, "seam 1-2")->carrier, ChannelCarrier::ownAllowance);
}

}  // namespace
}  // namespace coutil
