#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/units/length.h"

namespace coutil {
namespace {

constexpr auto kCm = LengthUnit::centimetre;
constexpr auto kIn = LengthUnit::inch;
constexpr auto kMm = LengthUnit::millimetre;

struct Reading {
    std::string text;
    LengthUnit assumed;
    double mm;
};

class ReadLength : public ::testing::TestWithParam<Reading> {};

TEST_P(ReadLength, isRead) {
    const Outcome<double> read = readLengthMm(GetParam().text, GetParam().assumed);
    ASSERT_TRUE(read.hasValue()) << GetParam().text;
    EXPECT_NEAR(*read, GetParam().mm, 1e-9) << GetParam().text;
    EXPECT_TRUE(read.problems.empty());
}

// 1 in = 25.4 mm exactly: international yard and pound agreement of 1959.
INSTANTIATE_TEST_SUITE_P(
    Forms, ReadLength,
    ::testing::Values(Reading{"96", kCm, 960}, Reading{"96", kMm, 96}, Reading{"96", kIn, 2438.4},
                      Reading{"96 cm", kIn, 960}, Reading{"32,5 cm", kIn, 325},
                      Reading{"32.5cm", kIn, 325}, Reading{"37 3/4 in", kCm, 958.85},
                      Reading{"37-3/4\"", kCm, 958.85}, Reading{"37 3/4", kIn, 958.85},
                      Reading{"1.5 in", kCm, 38.1}, Reading{"3/8 in", kCm, 9.525},
                      Reading{"380 mm", kIn, 380}, Reading{".5", kCm, 5}, Reading{"5.", kCm, 50},
                      Reading{"0", kCm, 0}, Reading{"1 INCH", kCm, 25.4},
                      Reading{"2 inches", kCm, 50.8}));

INSTANTIATE_TEST_SUITE_P(Sums, ReadLength,
                         ::testing::Values(Reading{"12 + 3/8 in", kCm, 314.325},
                                           Reading{"96 - 2", kCm, 940}, Reading{"96-2", kCm, 940},
                                           Reading{"37 - 3/4 in", kCm, 920.75},
                                           Reading{"1 in + 1 cm + 1 mm", kCm, 36.4},
                                           Reading{"1 + 1 cm + 1 in + 1", kMm, 46.4},
                                           Reading{"-3", kCm, -30}, Reading{"+3", kCm, 30},
                                           Reading{"- 1/2 in", kCm, -12.7},
                                           Reading{"  96   cm  ", kIn, 960}));

INSTANTIATE_TEST_SUITE_P(
    Typography, ReadLength,
    ::testing::Values(Reading{"37\u00BE\u2033", kCm, 958.85}, Reading{"37 \u00BD in", kCm, 952.5},
                      Reading{"\u215B\u201D", kCm, 3.175}, Reading{"5''", kCm, 127},
                      Reading{"96 \u2212 2", kCm, 940}, Reading{"96\u00A0cm", kIn, 960},
                      Reading{"~37 13/16", kIn, 960.4375}));

class Unreadable : public ::testing::TestWithParam<std::string> {};

TEST_P(Unreadable, givesOneProblemWithTheText) {
    for (const LengthUnit unit : {kMm, kCm, kIn}) {
        const Outcome<double> read = readLengthMm(GetParam(), unit);
        EXPECT_FALSE(read.hasValue()) << GetParam();
        ASSERT_EQ(read.problems.size(), 1U);
        EXPECT_EQ(read.problems[0].code, ProblemCode::lengthUnreadable);
        EXPECT_EQ(read.problems[0].severity, Severity::error);
        EXPECT_EQ(read.problems[0].detail, GetParam());
    }
}

INSTANTIATE_TEST_SUITE_P(Malformed, Unreadable,
                         ::testing::Values("", " ", "12 parsecs", "1/0", "--3", "1e400", "nan",
                                           "inf", "-", "+", "1+", "1 2", "1 2 3/4", "3/4/5", "1/",
                                           "/2", ".", ",", "1.2.3", "1,234.5", "1..2", "37 5/4 in",
                                           "1.5 3/4", "cm", "in 5", "5 cmm", "5 i", "0x10",
                                           "12 +- 3", "3 - -2", "1.5/2", "5 cm in", "\xff\xfe",
                                           "96 cm;", "12\n", "\u0665"));

TEST(ReadLengthProblems, embeddedNullIsUnreadable) {
    const Outcome<double> read = readLengthMm(std::string_view("12\0 cm", 6), kCm);
    ASSERT_EQ(read.problems.size(), 1U);
    EXPECT_EQ(read.problems[0].code, ProblemCode::lengthUnreadable);
}

TEST(ReadLengthProblems, beyondAHundredMetresIsOutOfRange) {
    const std::string digits(90, '9');
    for (const std::string& text :
         std::vector<std::string>{"100000.1 mm", "10001", "-10001", "4000 in", digits,
                                  digits + "," + "5", "1/3937 + 10001"}) {
        const Outcome<double> read = readLengthMm(text, kCm);
        EXPECT_FALSE(read.hasValue()) << text;
        ASSERT_EQ(read.problems.size(), 1U) << text;
        EXPECT_EQ(read.problems[0].code, ProblemCode::lengthOutOfRange) << text;
        ASSERT_EQ(read.problems[0].figures.size(), 1U);
        EXPECT_EQ(read.problems[0].figures[0].value, 100'000);
    }
    EXPECT_TRUE(readLengthMm("10000,0", kCm).hasValue());
    EXPECT_TRUE(readLengthMm("10000", kCm).hasValue());
    EXPECT_TRUE(readLengthMm("-10000", kCm).hasValue());
}

TEST(ReadLengthProblems, veryLongTextIsCutInItsDetail) {
    const Outcome<double> read = readLengthMm(std::string(1'000'000, '7'), kCm);
    ASSERT_EQ(read.problems.size(), 1U);
    EXPECT_EQ(read.problems[0].code, ProblemCode::lengthUnreadable);
    EXPECT_EQ(read.problems[0].detail, std::string(60, '7') + "...");
    // Never inside a character: 59 bytes, then one of two.
    const std::string marks = std::string(59, '7') + std::string("\u00BD\u00BD\u00BD");
    EXPECT_EQ(readLengthMm(marks + std::string(100, 'x'), kCm).problems.at(0).detail,
              std::string(59, '7') + "...");
}

}  // namespace
}  // namespace coutil
