// Where entries stand: in their order, words beside words, branches in rows of their own.
#include "ui/timeline/timeline_places.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

TimelineEntry entry(std::optional<std::size_t> parent, std::size_t lane) {
    TimelineEntry made;
    made.parent = parent;
    made.lane = lane;
    return made;
}

TEST(TimelinePlaces, oneLineIsOneRowWithoutOverlaps) {
    const std::vector<TimelineEntry> entries{entry({}, 0), entry(0, 0), entry(1, 0)};
    const std::vector<int> widths{80, 20, 60};
    const TimelinePlaces places = timelinePlaces(entries, widths, 20);
    EXPECT_EQ(places.rows, 1);
    EXPECT_EQ(places.size.height(), 20);
    for (std::size_t i = 1; i < 3; ++i) {
        EXPECT_GT(places.dots[i].x() - places.dots[i - 1].x(), widths[i - 1] + 20);
        EXPECT_EQ(places.dots[i].y(), 10);
    }
    EXPECT_GE(places.size.width(), places.dots[2].x() + 60);
}

TEST(TimelinePlaces, branchesKeepTheOrderInRowsOfTheirOwn) {
    const std::vector<TimelineEntry> entries{entry({}, 0), entry(0, 0), entry(0, 1), entry(1, 0),
                                             entry(0, 2)};
    const TimelinePlaces places = timelinePlaces(entries, std::vector<int>(5, 70), 20);
    EXPECT_EQ(places.rows, 3);
    for (std::size_t i = 1; i < 5; ++i) {
        EXPECT_GT(places.dots[i].x(), places.dots[i - 1].x()) << i;
    }
    EXPECT_EQ(places.dots[2].y(), 30);
    EXPECT_EQ(places.dots[4].y(), 50);
    EXPECT_LT(places.dots[2].x() - places.dots[1].x(), 70) << "rows are filled beside each other";
}

TEST(TimelinePlaces, aBranchThatIsOverLendsItsRow) {
    // 0 - 2 - 3 on the first line, 1 a branch of 0, 4 a branch of 3.
    const std::vector<TimelineEntry> entries{entry({}, 0), entry(0, 1), entry(0, 0),
                                             entry(2, 0),  entry(3, 0), entry(3, 2)};
    const TimelinePlaces places = timelinePlaces(entries, std::vector<int>(6, 70), 20);
    EXPECT_EQ(places.rows, 2);
    EXPECT_EQ(places.dots[5].y(), places.dots[1].y());
}

TEST(TimelinePlaces, nothingTakesNoRoom) {
    EXPECT_EQ(timelinePlaces({}, {}, 20).rows, 0);
    EXPECT_TRUE(timelinePlaces({}, {}, 20).dots.empty());
}

}  // namespace
}  // namespace coutil
