// Bodies of published size tables and handbooks are accepted without a word, and estimates come
// near what the tables print. Each source beside its figures.
#include <cmath>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/measurements/body.h"

namespace coutil {
namespace {

using enum Measurement;
using Values = std::map<Measurement, double>;

constexpr double kIn = 25.4;
constexpr double kCm = 10;

struct TableRow {
    std::string source;
    Values valuesMm;
};

const std::vector<TableRow>& tableRows() {
    static const std::vector<TableRow> rows{
        // ASTM D5585-11e1 (read): bust, under-bust, upper chest, waist (curvy), neck base.
        {"D5585 size 8",
         {{bustGirth, 36.25 * kIn},
          {underBustGirth, 30 * kIn},
          {upperChestGirth, 35.875 * kIn},
          {waistGirth, 28 * kIn},
          {neckBaseGirth, 14.625 * kIn}}},
        {"D5585 size 12",
         {{bustGirth, 38.75 * kIn},
          {underBustGirth, 32.5 * kIn},
          {upperChestGirth, 38 * kIn},
          {waistGirth, 30.75 * kIn},
          {neckBaseGirth, 15.125 * kIn}}},
        {"D5585 size 16",
         {{bustGirth, 42.125 * kIn},
          {underBustGirth, 35.75 * kIn},
          {upperChestGirth, 40.625 * kIn},
          {waistGirth, 34.5 * kIn},
          {neckBaseGirth, 15.75 * kIn}}},
        // Aldrich, Metric Pattern Cutting for Women's Wear, 6th ed., bust 88 (read in a
        // transcription; nape to waist, waist to hip and armscye depth from memory).
        {"Aldrich 88",
         {{bustGirth, 88 * kCm},
          {waistGirth, 72 * kCm},
          {hipGirth, 96 * kCm},
          {acrossBackWidth, 34.4 * kCm},
          {acrossFrontWidth, 32.4 * kCm},
          {shoulderLength, 12.25 * kCm},
          {neckBaseGirth, 37 * kCm},
          {upperArmGirth, 28.4 * kCm},
          {backNeckToWaist, 41 * kCm},
          {waistToHip, 20.6 * kCm},
          {scyeDepth, 21 * kCm}}},
        // EN 13402-3 (memory): bust, waist, hip.
        {"EN 13402-3 84", {{bustGirth, 840}, {waistGirth, 680}, {hipGirth, 920}}},
        {"EN 13402-3 88", {{bustGirth, 880}, {waistGirth, 720}, {hipGirth, 960}}},
        {"EN 13402-3 92", {{bustGirth, 920}, {waistGirth, 760}, {hipGirth, 1000}}},
        {"EN 13402-3 96", {{bustGirth, 960}, {waistGirth, 800}, {hipGirth, 1040}}},
        {"EN 13402-3 104", {{bustGirth, 1040}, {waistGirth, 880}, {hipGirth, 1120}}},
        // EN 13402 cup letters (read): bust over under-bust.
        {"EN 13402 85D", {{bustGirth, 1070}, {underBustGirth, 870}}},
        {"EN 13402 90D", {{bustGirth, 1080}, {underBustGirth, 890}}},
        {"EN 13402 80C", {{bustGirth, 1000}, {underBustGirth, 820}}},
        // Hecklinger, Handbook on Dress and Cloak Cutting, 1884 (read): breast, waist, natural
        // waist length.
        {"Hecklinger 36",
         {{bustGirth, 36 * kIn}, {waistGirth, 24 * kIn}, {backNeckToWaist, 15 * kIn}}},
        {"Hecklinger 44",
         {{bustGirth, 44 * kIn}, {waistGirth, 31.5 * kIn}, {backNeckToWaist, 15.5 * kIn}}},
        // The Practical Corsetiere, p. 18, p. 40, p. 52 (read): waist, hips 6 and 9 in down.
        {"Practical Corsetiere 28/38",
         {{waistGirth, 28 * kIn}, {hipGirth, 38 * kIn}, {waistToHip, 6 * kIn}}},
        {"Practical Corsetiere 36",
         {{bustGirth, 40 * kIn},
          {waistGirth, 30 * kIn},
          {topHipGirth, 39 * kIn},
          {hipGirth, 41 * kIn},
          {waistToBust, 8.5 * kIn},
          {waistToHip, 9 * kIn}}},
        {"Practical Corsetiere special",
         {{bustGirth, 47 * kIn},
          {waistGirth, 40 * kIn},
          {topHipGirth, 46 * kIn},
          {hipGirth, 47 * kIn},
          {backNeckToWaist, 16 * kIn},
          {waistToBust, 8.75 * kIn},
          {waistToHip, 9 * kIn}}},
    };
    return rows;
}

TEST(SizeTables, areAcceptedWithoutAWord) {
    for (const TableRow& row : tableRows()) {
        MeasurementSet set;
        set.valuesMm = row.valuesMm;
        for (const Problem& problem : checkMeasurements(set)) {
            ADD_FAILURE() << row.source << ": " << keyOf(problem.code) << " " << problem.subject
                          << " " << problem.figures[0].value << " " << problem.figures[1].value;
        }
    }
}

// The heights a table does not print; common practice, no source.
Values withHeights(Values valuesMm) {
    valuesMm.insert({{underBustGirth, valuesMm.at(bustGirth) - 150},
                     {hipGirth, valuesMm.at(bustGirth) + 80},
                     {waistToUnderBust, 90},
                     {waistToBust, 160},
                     {waistToHip, 205}});
    return valuesMm;
}

void expectNear(const TableRow& row, Measurement id, const Values& without) {
    MeasurementSet set;
    set.valuesMm = withHeights(without);
    set.valuesMm.erase(id);
    const auto body = completeBody(set);
    ASSERT_TRUE(body.hasValue()) << row.source;
    for (const Estimate& estimate : body->estimates) {
        if (estimate.id != id) continue;
        EXPECT_NEAR(estimate.valueMm, row.valuesMm.at(id), 3 * estimate.sdMm)
            << row.source << " " << keyOf(id);
        return;
    }
    ADD_FAILURE() << row.source << ": no estimate of " << keyOf(id);
}

TEST(SizeTables, estimatesComeNearWhatTheyPrint) {
    for (const TableRow& row : tableRows()) {
        if (!row.valuesMm.contains(bustGirth)) continue;
        if (row.valuesMm.contains(upperChestGirth)) {
            expectNear(row, upperChestGirth, row.valuesMm);
        }
        if (row.valuesMm.contains(topHipGirth)) {
            Values values = row.valuesMm;
            values[waistToHighHip] = 6 * kIn;
            expectNear(row, topHipGirth, values);
        }
    }
}

// Six sizes whose hip is known: estimated from bust and top hip girth alone.
TEST(SizeTables, hipsAreEstimatedFromTheTopHip) {
    for (const TableRow& row : tableRows()) {
        if (!row.valuesMm.contains(hipGirth) || !row.valuesMm.contains(bustGirth)) continue;
        MeasurementSet set;
        set.valuesMm = withHeights(row.valuesMm);
        set.valuesMm.erase(hipGirth);
        set.valuesMm.erase(waistToHip);
        set.valuesMm[waistToHighHip] = 80;
        // Where the table has none: two fifths of the way from waist to hip girth.
        set.valuesMm.insert(
            {topHipGirth, row.valuesMm.at(waistGirth) +
                              0.4 * (row.valuesMm.at(hipGirth) - row.valuesMm.at(waistGirth))});
        const auto body = completeBody(set);
        ASSERT_TRUE(body.hasValue()) << row.source;
        EXPECT_NEAR(body->valueMm(hipGirth), row.valuesMm.at(hipGirth), 3 * 43.8) << row.source;
    }
}

}  // namespace
}  // namespace coutil
