#include "core/geometry/bernstein_roots.h"

#include <vector>

#include <gtest/gtest.h>

#include "tests/core/geometry/random_curves.h"

namespace coutil {
namespace {

// (t - root) times a polynomial in Bernstein form, one degree higher.
template <std::size_t N>
Bernstein<N + 1> timesRoot(const Bernstein<N>& b, double root) {
    Bernstein<N + 1> product{};
    const double n = static_cast<double>(N + 1);
    for (std::size_t i = 0; i <= N; ++i) {
        product[i] += b[i] * -root * (n - static_cast<double>(i)) / n;
        product[i + 1] += b[i] * (1 - root) * static_cast<double>(i + 1) / n;
    }
    return product;
}

template <std::size_t N>
std::vector<double> listed(const Bernstein<N>& b) {
    const auto roots = rootsOf<N>(b);
    return {roots.begin(), roots.end()};
}

TEST(BernsteinRoots, knownRootsAreFound) {
    testing::RandomCurves random(21);
    for (int i = 0; i < 500; ++i) {
        const double a = random.number(0, 0.3);
        const double b = random.number(0.35, 0.6);
        const double c = random.number(0.65, 1);
        const auto roots = listed<3>(timesRoot<2>(timesRoot<1>(timesRoot<0>({1.0}, a), b), c));
        ASSERT_EQ(roots.size(), 3U) << a << " " << b << " " << c;
        EXPECT_NEAR(roots[0], a, 1e-12);
        EXPECT_NEAR(roots[1], b, 1e-12);
        EXPECT_NEAR(roots[2], c, 1e-12);
    }
}

TEST(BernsteinRoots, rootsAtTheEndsAndOutside) {
    const auto ends = listed<2>(timesRoot<1>(timesRoot<0>({1.0}, 0), 1));
    ASSERT_EQ(ends.size(), 2U);
    EXPECT_EQ(ends[0], 0);
    EXPECT_EQ(ends[1], 1);
    EXPECT_TRUE(listed<2>(timesRoot<1>(timesRoot<0>({1.0}, -0.1), 1.1)).empty());
    EXPECT_TRUE(listed<3>({0, 0, 0, 0}).empty());
    EXPECT_TRUE(listed<3>({1, 2, 0.5, 3}).empty());
}

TEST(BernsteinRoots, aRootBesideAnEndThatIsOne) {
    for (const double beside : {1e-9, 1e-13, 1e-15, 1e-18}) {
        const auto roots = listed<2>(timesRoot<1>(timesRoot<0>({1.0}, 0), beside));
        ASSERT_FALSE(roots.empty());
        EXPECT_EQ(roots[0], 0);
        // Nearer than the root of rounding they are one.
        EXPECT_NEAR(roots.back(), beside, 5e-8);
    }
}

TEST(BernsteinRoots, touchingCountsOnce) {
    const auto middle = listed<2>(timesRoot<1>(timesRoot<0>({1.0}, 0.5), 0.5));
    ASSERT_EQ(middle.size(), 1U);
    EXPECT_EQ(middle[0], 0.5);
    testing::RandomCurves random(22);
    for (int i = 0; i < 300; ++i) {
        const double a = random.number(0.01, 0.99);
        const auto roots = listed<2>(timesRoot<1>(timesRoot<0>({1.0}, a), a));
        // Rounding may lift a double root off zero or part it; never further than its square root.
        for (const double root : roots) EXPECT_NEAR(root, a, 1e-7);
        EXPECT_LE(roots.size(), 2U);
    }
}

}  // namespace
}  // namespace coutil
