// Rooms for label and number on plain panels.
#include "core/tracing/label_room.h"

#include <gtest/gtest.h>

#include "tests/core/tracing/plain_pattern.h"

namespace coutil {
namespace {

bool overlap(const Box& a, const Box& b) {
    return (a.lowest.array() < b.highest.array()).all() &&
           (b.lowest.array() < a.highest.array()).all();
}

// 100 wide, waist at 0, grain from -80 to 120 in the middle: above the grain the whole width is
// free for 80 mm less the clearances and what the bands round off.
TEST(LabelRoom, wholeWidthAboveTheGrain) {
    const auto room = labelRoomOf(samples::plainPanel("1", EdgeRole::seam, EdgeRole::seam));
    ASSERT_FALSE(room.label.isEmpty());
    EXPECT_NEAR(room.label.widthMm(), 100 - 2 * kLabelClearMm, 1e-9);
    EXPECT_GE(room.label.lowest.y(), 120 + kLabelClearMm - 1e-9);
    EXPECT_GE(room.label.heightMm(), 80 - 2 * kLabelClearMm - 2 * kLabelBandMm);
    ASSERT_FALSE(room.number.isEmpty());
    EXPECT_FALSE(overlap(room.label, room.number));
}

TEST(LabelRoom, narrowPanelGetsWhatThereIs) {
    Panel panel = samples::plainPanel("1", EdgeRole::seam, EdgeRole::seam);
    for (Edge& edge : panel.edges) {
        for (Cubic& c : edge.path.pieces) {
            for (Point* p : {&c.p0, &c.p1, &c.p2, &c.p3}) p->x() *= 0.4;
        }
    }
    panel.grain = {Point(20, -140), Point(20, 190)};
    panel.levels = {{"waist", {0, 0}, {40, 0}}};
    const auto room = labelRoomOf(panel);
    ASSERT_FALSE(room.label.isEmpty());
    EXPECT_NEAR(room.label.widthMm(), 20 - 2 * kLabelClearMm, 1e-9);
}

TEST(LabelRoom, manyLevelsLeaveOnlyTheWaistClear) {
    Panel panel = samples::plainPanel("1", EdgeRole::seam, EdgeRole::seam);
    for (int k = -15; k < 20; ++k) {
        panel.levels.push_back({"own", {0, 10.0 * k + 5}, {100, 10.0 * k + 5}});
    }
    const auto room = labelRoomOf(panel);
    ASSERT_FALSE(room.label.isEmpty());
    EXPECT_GE(room.label.heightMm(), 25);
    EXPECT_TRUE(room.label.lowest.y() >= 0 || room.label.highest.y() <= 0);
}

TEST(LabelRoom, noRoomNoLabel) {
    Panel panel;
    panel.edges = {{"a", EdgeRole::seam, straightPath({0, 0}, {3, 0}), {}, false},
                   {"b", EdgeRole::seam, straightPath({3, 0}, {3, 3}), {}, true},
                   {"c", EdgeRole::seam, straightPath({3, 3}, {0, 0}), {}, false}};
    const auto room = labelRoomOf(panel);
    EXPECT_TRUE(room.label.isEmpty());
    EXPECT_TRUE(room.number.isEmpty());
}

}  // namespace
}  // namespace coutil
