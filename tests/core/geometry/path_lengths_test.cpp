#include <gtest/gtest.h>

#include "core/geometry/path.h"
#include "tests/core/geometry/known_curves.h"
#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

using namespace coutil::testing;

TEST(PathLengths, polylineLengthIsTheSumOfItsSides) {
    const Path path = polylinePath({{0, 0}, {30, 40}, {30, 100}, {110, 160}});
    EXPECT_NEAR(lengthMm(path), 50 + 60 + 100, 1e-12);
    EXPECT_NEAR(lengthToMm(path, {1, 0.5}), 80, 1e-12);
    EXPECT_NEAR(lengthToMm(path, {2, 1}), 210, 1e-12);
    const auto at = positionAtLength(path, 80);
    EXPECT_EQ(at.piece, 1U);
    EXPECT_NEAR(at.t, 0.5, 1e-12);
}

TEST(PathLengths, clampedAtTheEnds) {
    const Path path = polylinePath({{0, 0}, {30, 40}, {30, 100}});
    EXPECT_EQ(pointAtLength(path, -5), path.start());
    EXPECT_EQ(pointAtLength(path, 500), path.end());
    EXPECT_EQ(pointAtLength(path, 0), path.start());
}

TEST(PathLengths, aLengthIsFoundAgain) {
    RandomCurves random(61);
    for (int i = 0; i < 200; ++i) {
        const Path path = random.path(3, 600);
        const double wanted = random.number(0, lengthMm(path));
        const auto at = positionAtLength(path, wanted);
        EXPECT_NEAR(lengthToMm(path, at), wanted, 1e-9) << written(path) << wanted;
    }
}

TEST(PathLengths, partsHaveTheLengthAskedFor) {
    RandomCurves random(62);
    for (int i = 0; i < 200; ++i) {
        const Path path = random.path(4, 600);
        const double total = lengthMm(path);
        const double first = random.number(0, total);
        const double second = random.number(first, total);
        const Path part = betweenLengths(path, first, second);
        EXPECT_NEAR(lengthMm(part), second - first, 1e-8) << written(path);
        EXPECT_EQ(part.start(), pointAtLength(path, first));
        EXPECT_EQ(part.end(), pointAtLength(path, second));
        for (std::size_t k = 1; k < part.pieces.size(); ++k) {
            EXPECT_EQ(part.pieces[k].p0, part.pieces[k - 1].p3);
        }
    }
}

TEST(PathLengths, twoPartsJoinedAreTheWhole) {
    RandomCurves random(63);
    for (int i = 0; i < 200; ++i) {
        const Path path = random.path(3, 600);
        const PathPosition cut{static_cast<std::size_t>(i) % 3, random.number(0, 1)};
        const Path whole = joined(between(path, {0, 0}, cut), between(path, cut, {2, 1}));
        EXPECT_EQ(whole.start(), path.start());
        EXPECT_EQ(whole.end(), path.end());
        EXPECT_NEAR(lengthMm(whole), lengthMm(path), 1e-8);
        EXPECT_NEAR(signedAreaMm2(whole), signedAreaMm2(path), 1e-6);
        for (const double share : {0.2, 0.5, 0.9}) {
            const double s = share * lengthMm(path);
            EXPECT_LT((pointAtLength(whole, s) - pointAtLength(path, s)).norm(), 1e-7)
                << written(path);
        }
    }
}

TEST(PathLengths, aCutAtAJointLeavesNoSliver) {
    const Path path = polylinePath({{0, 0}, {30, 40}, {30, 100}, {110, 160}});
    EXPECT_EQ(between(path, {0, 1}, {2, 0}).pieces.size(), 1U);
    EXPECT_EQ(between(path, {1, 0}, {1, 1}), Path{{path.pieces[1]}});
    EXPECT_EQ(between(path, {0, 0}, {2, 1}), path);
    // A part without length is still one piece in its place.
    const Path point = between(path, {0, 1}, {1, 0});
    ASSERT_EQ(point.pieces.size(), 1U);
    EXPECT_EQ(point.start(), Point(30, 40));
    EXPECT_EQ(point.end(), Point(30, 40));
}

}  // namespace
}  // namespace coutil
