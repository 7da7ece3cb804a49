// The order of work: common practice, no source.
#include "core/making_up/sewing_steps.h"

#include <algorithm>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "core/alterations/whole_pattern.h"
#include "core/block/draft_corset.h"
#include "tests/core/block/sample_bodies.h"

namespace coutil {
namespace {

Pattern corset(int panels, FrontClosure front, bool isWhole) {
    Style style;
    style.panelsPerHalf = panels;
    style.front = front;
    const Pattern half = *draftCorset(samples::average(), style);
    return isWhole ? wholeOf(half) : half;
}

// A channel at every seam, folded and of tape by turns, two beside the eyelets, one in a panel.
std::vector<Channel> madeUpChannels(const Pattern& pattern) {
    std::vector<Channel> channels;
    for (const Seam& seam : pattern.seams) {
        Channel channel;
        channel.key = "seam " + seam.name;
        channel.seam = seam.name;
        channel.panel = seam.back.panel;
        channel.carrier =
            channels.size() % 2 == 0 ? ChannelCarrier::ownAllowance : ChannelCarrier::tape;
        channels.push_back(channel);
    }
    for (const char* key : {"beside eyelets outer", "beside eyelets inner", "panel 2 middle"}) {
        Channel channel;
        channel.key = key;
        channels.push_back(channel);
    }
    return channels;
}

std::size_t placeOf(const std::vector<SewingStep>& steps, SewingStepKind kind) {
    return static_cast<std::size_t>(std::ranges::find(steps, kind, &SewingStep::kind) -
                                    steps.begin());
}

TEST(SewingSteps, everySeamIsJoinedAndEveryChannelMadeOnce) {
    for (const int panels : {4, 5, 6, 7}) {
        for (const auto front : {FrontClosure::busk, FrontClosure::fold, FrontClosure::seam}) {
            for (const bool isWhole : {false, true}) {
                const Pattern pattern = corset(panels, front, isWhole);
                const auto channels = madeUpChannels(pattern);
                const auto steps = sewingSteps(pattern, channels, {.hasEyelets = true});
                std::set<std::string> seams;
                for (const Seam& seam : pattern.seams) seams.insert(seam.name);
                std::map<std::string, int> joined;
                std::map<std::size_t, int> made;
                for (const SewingStep& step : steps) {
                    if (step.kind == SewingStepKind::joinSeam) ++joined[step.seam];
                    for (const std::size_t i : step.channels) ++made[i];
                }
                for (const auto& [seam, times] : joined) EXPECT_EQ(times, 1) << seam;
                for (const std::string& seam : seams) EXPECT_TRUE(joined.contains(seam)) << seam;
                ASSERT_EQ(made.size(), channels.size());
                for (const auto& [channel, times] : made)
                    EXPECT_EQ(times, 1) << channels[channel].key;
            }
        }
    }
}

TEST(SewingSteps, comeInTheOrderOfWork) {
    const Pattern pattern = corset(5, FrontClosure::busk, false);
    const auto steps = sewingSteps(pattern, madeUpChannels(pattern),
                                   {.hasBusk = true, .hasEyelets = true, .hasWaistTape = true});
    using Kind = SewingStepKind;
    const std::vector<Kind> order{
        Kind::cutOut,       Kind::markLines, Kind::setBusk,  Kind::joinSeam,   Kind::catchTape,
        Kind::foldChannels, Kind::sewTapes,  Kind::turnBack, Kind::setEyelets, Kind::bindBottom,
        Kind::putBones,     Kind::bindTop,   Kind::lace};
    for (std::size_t i = 1; i < order.size(); ++i) {
        ASSERT_LT(placeOf(steps, order[i]), steps.size()) << keyOf(order[i]);
        EXPECT_LT(placeOf(steps, order[i - 1]), placeOf(steps, order[i])) << keyOf(order[i]);
    }
    // Four seams of five panels, from front to back.
    std::vector<std::string> seams;
    for (const SewingStep& step : steps)
        if (step.kind == Kind::joinSeam) seams.push_back(step.seam);
    EXPECT_EQ(seams, (std::vector<std::string>{"1-2", "2-3", "3-4", "4-5"}));
}

TEST(SewingSteps, aSeamInTheMiddleOfTheFrontIsJoinedLast) {
    for (const bool isWhole : {false, true}) {
        const Pattern pattern = corset(5, FrontClosure::seam, isWhole);
        const auto steps = sewingSteps(pattern, {}, {});
        std::vector<std::string> seams;
        for (const SewingStep& step : steps)
            if (step.kind == SewingStepKind::joinSeam) seams.push_back(step.seam);
        ASSERT_EQ(seams.size(), 5U);
        EXPECT_EQ(seams.back(), "centre front");
    }
}

TEST(SewingSteps, whatIsNotThereHasNoStep) {
    const Pattern pattern = corset(5, FrontClosure::fold, false);
    const auto steps = sewingSteps(pattern, {}, {.isTopBound = false});
    using Kind = SewingStepKind;
    for (const Kind kind :
         {Kind::setBusk, Kind::turnFront, Kind::catchTape, Kind::foldChannels, Kind::sewTapes,
          Kind::setEyelets, Kind::putBones, Kind::bindTop, Kind::lace}) {
        EXPECT_EQ(placeOf(steps, kind), steps.size()) << keyOf(kind);
    }
    EXPECT_LT(placeOf(steps, Kind::turnTop), steps.size());
    EXPECT_LT(placeOf(steps, Kind::bindBottom), steps.size());
}

}  // namespace
}  // namespace coutil
