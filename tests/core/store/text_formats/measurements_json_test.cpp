// Measurements as JSON: what is written is read back to the last bit, and every fault of a file is
// named with the path of its key.
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "core/store/text_formats.h"
#include "tests/bodies/ansur_bodies.h"

namespace coutil {
namespace {

const std::string kHead = R"({"coutil":"measurements","version":1,)";

Outcome<MeasurementSet> readWith(const std::string& rest) {
    return readMeasurementsJson(kHead + rest + "}");
}

// The example of the published format.
TEST(MeasurementsJson, readsNumbersInTheFilesUnitAndTextsInTheirOwn) {
    const auto set = readWith(
        R"("unit":"cm","taken_on":"2026-03-02","taken_by":"client","values":{"bust_girth":96,"waist_girth":"30 1/4 in"})");
    ASSERT_TRUE(set.hasValue());
    EXPECT_EQ(set->unit, LengthUnit::centimetre);
    EXPECT_EQ(set->takenOn, "2026-03-02");
    EXPECT_EQ(set->takenBy, "client");
    EXPECT_DOUBLE_EQ(set->valuesMm.at(Measurement::bustGirth), 960);
    EXPECT_DOUBLE_EQ(set->valuesMm.at(Measurement::waistGirth), 30.25 * 25.4);
    EXPECT_EQ(set->asWritten.at(Measurement::waistGirth), "30 1/4 in");
    EXPECT_FALSE(set->asWritten.contains(Measurement::bustGirth));
}

TEST(MeasurementsJson, textsWithoutUnitAreInTheFilesUnit) {
    const auto set = readWith(R"("unit":"in","values":{"hip_girth":"38 1/2","bust_girth":36.25})");
    ASSERT_TRUE(set.hasValue());
    EXPECT_DOUBLE_EQ(set->valuesMm.at(Measurement::hipGirth), 38.5 * 25.4);
    EXPECT_DOUBLE_EQ(set->valuesMm.at(Measurement::bustGirth), 36.25 * 25.4);
}

TEST(MeasurementsJson, everyRealBodyComesBackToTheLastBit) {
    const LengthUnit units[] = {LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::inch};
    std::size_t turn = 0;
    for (MeasurementSet set : bodies::ansurBodies()) {
        set.unit = units[turn++ % 3];
        set.note = "breathing out, \"laced\"\n\xC3\xA9";
        const auto again = readMeasurementsJson(writeMeasurementsJson(set));
        ASSERT_TRUE(again.hasValue()) << set.id;
        // A length that no short number can say is written as a text in mm: the value is the same.
        MeasurementSet plain = *again;
        plain.asWritten.clear();
        EXPECT_EQ(plain, set) << writeMeasurementsJson(set);
    }
}

TEST(MeasurementsJson, keepsTheMakersOwnTexts) {
    MeasurementSet set;
    set.unit = LengthUnit::inch;
    set.valuesMm = {{Measurement::bustGirth, 37.75 * 25.4}, {Measurement::waistGirth, 700}};
    set.asWritten = {{Measurement::bustGirth, "37 3/4"}, {Measurement::waistGirth, "70 cm"}};
    const auto again = readMeasurementsJson(writeMeasurementsJson(set));
    ASSERT_TRUE(again.hasValue());
    EXPECT_EQ(*again, set);
}

TEST(MeasurementsJson, aTextThatNoLongerSaysTheValueIsDropped) {
    MeasurementSet set;
    set.valuesMm = {{Measurement::bustGirth, 900}};
    set.asWritten = {{Measurement::bustGirth, "96"}};
    const auto again = readMeasurementsJson(writeMeasurementsJson(set));
    ASSERT_TRUE(again.hasValue());
    EXPECT_EQ(again->valuesMm.at(Measurement::bustGirth), 900);
    EXPECT_TRUE(again->asWritten.empty());
}

struct Fault {
    std::string rest;
    ProblemCode code;
    std::string subject;
    std::string detail;
};

TEST(MeasurementsJson, namesEveryFaultWithItsPath) {
    using enum ProblemCode;
    const std::vector<Fault> faults{
        {R"("values":{"bust_grith":96})", measurementUnknown, "values.bust_grith", "bust_girth"},
        {R"("values":{"shoe_size":39})", measurementUnknown, "values.shoe_size", ""},
        {R"("value":{"bust_girth":96})", jsonUnknownKey, "value", "values"},
        {R"("values":{"bust_girth":true})", jsonWantsLength, "values.bust_girth", "true"},
        {R"("values":{"bust_girth":null})", jsonWantsLength, "values.bust_girth", "null"},
        {R"("values":{"bust_girth":"wide"})", lengthUnreadable, "values.bust_girth", "wide"},
        {R"("values":{"bust_girth":""})", lengthUnreadable, "values.bust_girth", ""},
        {R"("values":{"bust_girth":1e308})", lengthOutOfRange, "values.bust_girth", "1e+308"},
        {R"("values":{"bust_girth":-10001})", lengthOutOfRange, "values.bust_girth", "-10001"},
        {R"("values":[1,2])", jsonWantsObject, "values", "[1,2]"},
        {R"("unit":"ell")", jsonWantsChoice, "unit", "cm, in, mm"},
        {R"("unit":2)", jsonWantsChoice, "unit", "cm, in, mm"},
        {R"("taken_on":"2026-02-30")", dateUnreadable, "taken_on", "2026-02-30"},
        {R"("taken_on":"2 March")", dateUnreadable, "taken_on", "2 March"},
        {R"("taken_by":5)", jsonWantsText, "taken_by", "5"},
        {R"("note":"a","note":"b")", jsonKeyTwice, "note", ""},
    };
    for (const Fault& fault : faults) {
        const auto set = readWith(fault.rest);
        EXPECT_FALSE(set.hasValue()) << fault.rest;
        ASSERT_EQ(set.problems.size(), 1U) << fault.rest;
        EXPECT_EQ(set.problems[0].code, fault.code) << fault.rest;
        EXPECT_EQ(set.problems[0].subject, fault.subject) << fault.rest;
        EXPECT_EQ(set.problems[0].detail, fault.detail) << fault.rest;
    }
}

TEST(MeasurementsJson, reportsAllFaultsOfAFileAtOnce) {
    const auto set =
        readWith(R"("unit":"ell","values":{"bust_girth":"wide","waist":70},"colour":1)");
    EXPECT_EQ(set.problems.size(), 4U);
}

TEST(MeasurementsJson, refusesOtherKindsAndVersions) {
    const std::vector<std::pair<std::string, ProblemCode>> files{
        {"[]", ProblemCode::jsonWrongKind},
        {"3", ProblemCode::jsonWrongKind},
        {"{}", ProblemCode::jsonWrongKind},
        {R"({"coutil":"style","version":1})", ProblemCode::jsonWrongKind},
        {R"({"coutil":"measurements"})", ProblemCode::jsonWrongVersion},
        {R"({"coutil":"measurements","version":2})", ProblemCode::jsonWrongVersion},
        {R"({"coutil":"measurements","version":"1"})", ProblemCode::jsonWrongVersion},
    };
    for (const auto& [text, code] : files) {
        const auto set = readMeasurementsJson(text);
        EXPECT_FALSE(set.hasValue()) << text;
        ASSERT_EQ(set.problems.size(), 1U) << text;
        EXPECT_EQ(set.problems[0].code, code) << text;
    }
}

TEST(MeasurementsJson, saysWhereBrokenJsonBreaks) {
    const auto set = readMeasurementsJson("{\"coutil\":\"measurements\",\n \"version\":1,,\n}");
    ASSERT_EQ(set.problems.size(), 1U);
    EXPECT_EQ(set.problems[0].code, ProblemCode::jsonBroken);
    ASSERT_EQ(set.problems[0].figures.size(), 2U);
    EXPECT_EQ(set.problems[0].figures[0].value, 2);   // line
    EXPECT_EQ(set.problems[0].figures[1].value, 14);  // column of the second comma
}

TEST(MeasurementsJson, survivesBrokenTexts) {
    const std::string good = kHead + R"("unit":"cm","values":{"bust_girth":96}})";
    for (std::size_t end = 0; end < good.size(); ++end) {
        const auto set = readMeasurementsJson(good.substr(0, end));
        EXPECT_FALSE(set.hasValue()) << end;
        EXPECT_EQ(set.problems.size(), 1U) << end;
    }
    EXPECT_FALSE(readMeasurementsJson("{\"coutil\":\"\xFF\xFE\"}").hasValue());
    EXPECT_FALSE(readWith(R"("values":{"bust_girth":1e999})").hasValue());
    EXPECT_FALSE(readMeasurementsJson(std::string(3, '\0')).hasValue());
}

TEST(MeasurementsJson, deepNestingAndHugeTextsAreRefused) {
    for (const char bracket : {'[', '{'}) {
        const auto set = readMeasurementsJson(std::string(1'000'000, bracket));
        ASSERT_EQ(set.problems.size(), 1U);
        EXPECT_EQ(set.problems[0].code, ProblemCode::jsonTooLarge);
        EXPECT_EQ(set.problems[0].subject, "nesting");
    }
    const auto huge = readMeasurementsJson("\"" + std::string(20'000'000, 'x') + "\"");
    ASSERT_EQ(huge.problems.size(), 1U);
    EXPECT_EQ(huge.problems[0].code, ProblemCode::jsonTooLarge);
    const auto longText =
        readWith(R"("values":{"bust_girth":")" + std::string(1'000'000, '9') + "\"}");
    ASSERT_EQ(longText.problems.size(), 1U);
    EXPECT_LT(longText.problems[0].detail.size(), 100U);
}

}  // namespace
}  // namespace coutil
