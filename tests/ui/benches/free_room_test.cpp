#include "ui/benches/free_room.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(FreeRoom, liesInsideAndBetweenTheLevels) {
    const Path square = polylinePath({{0, -100}, {80, -100}, {80, 200}, {0, 200}, {0, -100}});
    const QRectF room = freeRoom(square, {150, 0, -90});
    EXPECT_GT(room.left(), 0);
    EXPECT_LT(room.right(), 80);
    EXPECT_GT(room.top(), 0);  // y runs up: the rectangle's top is its lower side
    EXPECT_LT(room.bottom(), 150);
    EXPECT_GT(room.height(), 100);
}

TEST(FreeRoom, keepsOffSlantedSides) {
    const Path triangle = polylinePath({{0, 0}, {100, 0}, {50, 200}, {0, 0}});
    const QRectF room = freeRoom(triangle, {60});
    for (const double y : {room.top(), room.bottom()}) {
        EXPECT_GT(room.left(), y / 4);
        EXPECT_LT(room.right(), 100 - y / 4);
    }
}

}  // namespace
}  // namespace coutil
