// Channels and bones of real bodies: 993 women, every panel count and front.
#include <cmath>
#include <sstream>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "core/making_up/bones.h"
#include "core/making_up/channel.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

struct Drafted {
    Pattern pattern;
    Style style;
    std::string what;
};

// Every seventh body with each count of panels, the fronts in turn.
std::vector<Drafted> drafts() {
    std::vector<Drafted> all;
    const auto bodies = bodies::ansurBodies();
    for (std::size_t b = 0; b < bodies.size(); b += 7) {
        const auto body = completeBody(bodies[b]);
        for (int count = 4; body && count <= 7; ++count) {
            Style style;
            style.panelsPerHalf = count;
            style.front = static_cast<FrontClosure>(b % 3);
            auto pattern = draftCorset(*body, style);
            if (!pattern) continue;
            std::ostringstream what;
            what << "body " << b << ", " << count << " panels";
            all.push_back({std::move(*pattern), style, what.str()});
        }
    }
    return all;
}

MakingUpChoices everyRule() {
    MakingUpChoices choices;
    choices.channels.hasPanelMiddles = true;
    choices.channels.hasBustSupport = true;
    return choices;
}

TEST(ChannelsOnBodies, bonesStayInChannelsAndChannelsInPanels) {
    const auto all = drafts();
    ASSERT_GT(all.size(), 400U);
    std::size_t bones = 0;
    for (const Drafted& drafted : all) {
        const MakingUpChoices choices = everyRule();
        const auto channels = findChannels(drafted.pattern, drafted.style, choices);
        ASSERT_TRUE(channels) << drafted.what;
        EXPECT_GE(channels->size() + channels.problems.size(),
                  drafted.pattern.seams.size() + drafted.pattern.panels.size() + 3);
        std::vector<Problem> problems;
        const auto table =
            boneTable(drafted.pattern, *channels, drafted.style.allowance, choices, problems);
        ASSERT_EQ(table.rows.size(), channels->size());
        for (std::size_t k = 0; k < table.rows.size(); ++k) {
            const BoneRow& row = table.rows[k];
            ASSERT_LE(row.lengthMm, row.channelLengthMm - 16 + 1e-6) << drafted.what;
            ASSERT_NEAR(std::remainder(row.lengthMm, 10), 0, 1e-9);
            if (row.lengthMm > 0) {
                ASSERT_GT(row.lengthMm, row.channelLengthMm - 26 - 1e-6);
            }
            const Channel& channel = (*channels)[k];
            const Panel& panel = drafted.pattern.panels[channel.panel];
            Path outline = outlineOf(panel);
            ASSERT_LT(closestOn(outline, channel.line.start()).distanceMm, 1e-4) << row.channel;
            if (channel.endsAtTopEdge) {
                ASSERT_LT(closestOn(outline, channel.line.end()).distanceMm, 1e-4) << row.channel;
            }
            bones += static_cast<std::size_t>(row.count);
        }
    }
    EXPECT_GT(bones, 10 * all.size());
}

// The same pattern with left and right panels of their own.
Pattern wholeOf(const Pattern& half) {
    Pattern whole = half;
    for (Panel& panel : whole.panels) panel.side = PanelSide::left;
    for (Panel panel : half.panels) {
        panel.side = PanelSide::right;
        whole.panels.push_back(panel);
    }
    for (Seam seam : half.seams) {
        seam.front.panel += half.panels.size();
        seam.back.panel += half.panels.size();
        whole.seams.push_back(seam);
    }
    return whole;
}

TEST(ChannelsOnBodies, leftIsRightAndBothAreTheHalf) {
    for (const Drafted& drafted : drafts()) {
        if (drafted.style.front == FrontClosure::fold) continue;  // a fold has one for both
        const Pattern whole = wholeOf(drafted.pattern);
        const auto half = findChannels(drafted.pattern, drafted.style, {});
        const auto both = findChannels(whole, drafted.style, {});
        ASSERT_TRUE(half && both);
        ASSERT_EQ(both->size(), 2 * half->size()) << drafted.what;
        for (std::size_t k = 0; k < half->size(); ++k) {
            Channel left = (*both)[k];
            Channel right = (*both)[k + half->size()];
            ASSERT_EQ(left.side, PanelSide::left);
            ASSERT_EQ(right.side, PanelSide::right);
            left.side = right.side = PanelSide::both;
            right.panel -= drafted.pattern.panels.size();
            ASSERT_EQ(left, (*half)[k]) << drafted.what << " " << left.key;
            ASSERT_EQ(right, (*half)[k]) << drafted.what << " " << right.key;
        }
        std::vector<Problem> problems;
        const auto one = boneTable(drafted.pattern, *half, {}, {}, problems);
        const auto two = boneTable(whole, *both, {}, {}, problems);
        ASSERT_EQ(one.totals, two.totals) << drafted.what;
    }
}

}  // namespace
}  // namespace coutil
