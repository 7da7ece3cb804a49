#include "ui/projecting/projected_view.h"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>

namespace coutil {
namespace {

// Where a projector with these true pixels to the millimetre throws a pixel, mm, y up.
QPointF thrown(const QPointF& px, const ProjectorCalibration& truth) {
    return {px.x() / truth.acrossPxPerMm, -px.y() / truth.upPxPerMm};
}

double distance(const QPointF& a, const QPointF& b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

constexpr QSizeF kScreen(1920, 1080);

// Plane geometry: after any move, turn and turning over, every thrown length is the true one.
TEST(Projection, throwsEveryLengthTrueAtEveryAngle) {
    const ProjectorCalibration truth{1.37, 1.52};
    for (double turn = -180; turn <= 180; turn += 7.5) {
        for (const bool isTurnedOver : {false, true}) {
            const ProjectedView view{{312, -40}, turn, isTurnedOver};
            const QTransform toScreen = projection(view, truth, kScreen);
            const auto at = [&](double x, double y) {
                return thrown(toScreen.map(QPointF(x, y)), truth);
            };
            EXPECT_NEAR(distance(at(300, 0), at(400, 0)), 100, 1e-9) << turn;
            EXPECT_NEAR(distance(at(300, 0), at(300, 100)), 100, 1e-9) << turn;
            EXPECT_NEAR(distance(at(300, 0), at(400, 100)), std::hypot(100, 100), 1e-9) << turn;
        }
    }
}

TEST(Projection, theMiddleStaysInTheMiddleAndUpIsUp) {
    const QTransform toScreen = projection({{100, 50}, 0, false}, {2, 3}, kScreen);
    EXPECT_EQ(toScreen.map(QPointF(100, 50)), QPointF(960, 540));
    EXPECT_EQ(toScreen.map(QPointF(110, 50)), QPointF(980, 540));
    EXPECT_EQ(toScreen.map(QPointF(100, 60)), QPointF(960, 510));
}

TEST(Projection, aTurnIsAnticlockwiseOnTheTable) {
    const QTransform toScreen = projection({{0, 0}, 90, false}, {1, 1}, QSizeF(0, 0));
    const QPointF end = toScreen.map(QPointF(10, 0));
    EXPECT_NEAR(end.x(), 0, 1e-9);
    EXPECT_NEAR(end.y(), -10, 1e-9);  // up on the screen
}

TEST(Projection, movesByMillimetresOfTheTableHoweverItIsTurned) {
    const ProjectorCalibration truth{1.37, 1.52};
    for (const bool isTurnedOver : {false, true}) {
        const ProjectedView before{{20, 30}, 37, isTurnedOver};
        const ProjectedView after = movedOnTable(before, {10, -25});
        const QPointF place(55, -70);
        const QPointF a = thrown(projection(before, truth, kScreen).map(place), truth);
        const QPointF b = thrown(projection(after, truth, kScreen).map(place), truth);
        EXPECT_NEAR(b.x() - a.x(), 10, 1e-9);
        EXPECT_NEAR(b.y() - a.y(), -25, 1e-9);
    }
}

TEST(Projection, turnsStayWithinHalfATurn) {
    EXPECT_DOUBLE_EQ(turnedOnTable({{}, 170, false}, 15).turnDeg, -175);
    EXPECT_DOUBLE_EQ(turnedOnTable({{}, -175, false}, -15).turnDeg, 170);
    EXPECT_DOUBLE_EQ(turnedOnTable({{}, 165, false}, 15).turnDeg, 180);
}

TEST(Calibration, isPixelsShownByMillimetresMeasured) {
    const auto found = calibrationFrom({400, 300}, {250, 150});
    ASSERT_TRUE(found);
    EXPECT_DOUBLE_EQ(found->acrossPxPerMm, 1.6);
    EXPECT_DOUBLE_EQ(found->upPxPerMm, 2);
    EXPECT_EQ(squarePx(*found, 100), QSizeF(160, 200));
}

TEST(Calibration, refusesWhatNoProjectorThrows) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(calibrationFrom({400, 300}, {0, 150}));
    EXPECT_FALSE(calibrationFrom({400, 300}, {250, -1}));
    EXPECT_FALSE(calibrationFrom({400, 300}, {nan, 150}));
    EXPECT_FALSE(calibrationFrom({400, 300}, {250, 1}));      // 300 px to the mm
    EXPECT_FALSE(calibrationFrom({400, 300}, {20000, 150}));  // a pixel 50 mm wide
}

}  // namespace
}  // namespace coutil
