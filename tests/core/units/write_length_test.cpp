#include <cmath>
#include <limits>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "core/units/length.h"

namespace coutil {
namespace {

constexpr auto kCm = LengthUnit::centimetre;
constexpr auto kIn = LengthUnit::inch;
constexpr auto kMm = LengthUnit::millimetre;

TEST(WrittenLength, metricIsRoundedAndTrimmed) {
    EXPECT_EQ(writtenLength(960, kCm), "96");
    EXPECT_EQ(writtenLength(325, kCm), "32.5");
    EXPECT_EQ(writtenLength(325, kCm, ','), "32,5");
    EXPECT_EQ(writtenLength(325.44, kCm), "32.54");
    EXPECT_EQ(writtenLength(1000, kCm), "100");
    EXPECT_EQ(writtenLength(0, kCm), "0");
    EXPECT_EQ(writtenLength(-0.01, kCm), "0");
    EXPECT_EQ(writtenLength(-325, kCm), "-32.5");
    EXPECT_EQ(writtenLength(99.999, kCm), "10");
    EXPECT_EQ(writtenLength(380.06, kMm), "380.1");
    EXPECT_EQ(writtenLength(1200, kMm), "1200");
    EXPECT_EQ(writtenLength(0.04, kMm), "0");
}

TEST(WrittenLength, inchesAreReducedFractions) {
    EXPECT_EQ(writtenLength(958.85, kIn), "37 3/4");
    EXPECT_EQ(writtenLength(25.4 / 2, kIn), "1/2");
    EXPECT_EQ(writtenLength(25.4 * 3 / 16, kIn), "3/16");
    EXPECT_EQ(writtenLength(25.4 * 20, kIn), "20");
    EXPECT_EQ(writtenLength(-25.4 * 1.5, kIn), "-1 1/2");
    EXPECT_EQ(writtenLength(0, kIn), "0");
}

TEST(WrittenLength, roundingCarriesIntoTheWhole) {
    EXPECT_EQ(writtenLength(25.4 * 11.999, kIn), "12");
    EXPECT_EQ(writtenLength(25.4 * 11.98, kIn), "~12");
    EXPECT_EQ(writtenLength(25.4 * 0.99, kIn), "~1");
}

TEST(WrittenLength, tildeWhereTheFractionIsFurtherOffThanATwoHundredth) {
    EXPECT_EQ(writtenLength(25.4 * (3.5 + 0.0049), kIn), "3 1/2");
    EXPECT_EQ(writtenLength(25.4 * (3.5 + 0.0051), kIn), "~3 1/2");
    EXPECT_EQ(writtenLength(960, kIn), "~37 13/16");
    EXPECT_EQ(writtenLength(0.5, kIn), "~0");
}

TEST(WrittenLength, unitsAreNamed) {
    EXPECT_EQ(writtenLengthWithUnit(960, kCm), "96 cm");
    EXPECT_EQ(writtenLengthWithUnit(958.85, kIn), "37 3/4 in");
    EXPECT_EQ(writtenLengthWithUnit(3.5, kMm, ','), "3,5 mm");
    EXPECT_EQ(keyOf(kMm), "mm");
    EXPECT_EQ(millimetresIn(kCm), 10);
    EXPECT_EQ(millimetresIn(kMm), 1);
    EXPECT_EQ(millimetresIn(kIn), 25.4);
}

TEST(WrittenLength, noTextForWhatIsNoLength) {
    for (const double mm :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        EXPECT_EQ(writtenLength(mm, kCm), "");
        EXPECT_EQ(writtenLengthWithUnit(-mm, kIn), "");
    }
    EXPECT_FALSE(writtenLength(1e300, kMm).empty());
    EXPECT_FALSE(writtenLength(1e300, kIn).empty());
}

// What is written is read as the same length to half a step, and written the same again.
TEST(WrittenLength, roundTrip) {
    std::mt19937_64 engine(7);
    for (int i = 0; i < 20'000; ++i) {
        const double mm = (static_cast<double>(engine() >> 11) * 0x1p-53 - 0.3) * 3000;
        for (const char mark : {'.', ','}) {
            for (const auto& [unit, halfStepMm] :
                 {std::pair{kMm, 0.05}, std::pair{kCm, 0.05}, std::pair{kIn, 25.4 / 32}}) {
                const std::string text = writtenLengthWithUnit(mm, unit, mark);
                const Outcome<double> read = readLengthMm(text, kMm);
                ASSERT_TRUE(read.hasValue()) << text;
                EXPECT_NEAR(*read, mm, halfStepMm + 1e-9) << text;
                const std::string again = writtenLengthWithUnit(*read, unit, mark);
                EXPECT_EQ(again, text.starts_with('~') ? text.substr(1) : text) << mm;
            }
        }
    }
}

}  // namespace
}  // namespace coutil
