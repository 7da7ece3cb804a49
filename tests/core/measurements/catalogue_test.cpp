// The catalogue is whole and sound in itself.
#include <set>
#include <string_view>

#include <gtest/gtest.h>

#include "core/measurements/iso_date.h"
#include "core/measurements/measurement.h"

namespace coutil {
namespace {

// The names of the published file format, in its order.
constexpr std::string_view kPublishedNames[] = {"bust_girth",
                                                "under_bust_girth",
                                                "upper_chest_girth",
                                                "waist_girth",
                                                "top_hip_girth",
                                                "hip_girth",
                                                "neck_base_girth",
                                                "shoulder_length",
                                                "across_back_width",
                                                "across_front_width",
                                                "scye_depth",
                                                "back_neck_to_waist",
                                                "front_neck_to_waist",
                                                "side_neck_to_bust_point",
                                                "side_neck_over_bust_to_waist",
                                                "bust_point_width",
                                                "side_waist_to_hip",
                                                "upper_arm_girth",
                                                "stature",
                                                "front_bust_arc",
                                                "waist_to_under_bust",
                                                "waist_to_bust",
                                                "waist_to_armpit",
                                                "waist_to_high_hip",
                                                "waist_to_hip",
                                                "waist_to_lap"};

TEST(Catalogue, holdsThePublishedNames) {
    ASSERT_EQ(measurementCatalogue().size(), std::size(kPublishedNames));
    for (std::size_t i = 0; i < std::size(kPublishedNames); ++i) {
        EXPECT_EQ(measurementCatalogue()[i].key, kPublishedNames[i]);
        const auto id = measurementNamed(kPublishedNames[i]);
        ASSERT_TRUE(id.has_value()) << kPublishedNames[i];
        EXPECT_EQ(keyOf(*id), kPublishedNames[i]);
        EXPECT_EQ(infoOf(*id).id, *id);
    }
    EXPECT_FALSE(measurementNamed("bust").has_value());
    EXPECT_FALSE(measurementNamed("").has_value());
}

TEST(Catalogue, rangesLieInsideEachOther) {
    for (const MeasurementInfo& info : measurementCatalogue()) {
        EXPECT_GT(info.lowestMm, 0) << info.key;
        EXPECT_LT(info.lowestMm, info.usualLowestMm) << info.key;
        EXPECT_LT(info.usualLowestMm, info.usualHighestMm) << info.key;
        EXPECT_LT(info.usualHighestMm, info.highestMm) << info.key;
        EXPECT_FALSE(info.source.empty()) << info.key;
    }
}

// The rule of the drafting card: bust, under-bust, waist, one girth below the waist, and the
// heights that place them.
TEST(Catalogue, marksWhatACorsetNeeds) {
    std::set<std::string_view> needed;
    for (const MeasurementInfo& info : measurementCatalogue()) {
        if (info.isNeededForCorset) needed.insert(info.key);
    }
    EXPECT_EQ(needed,
              (std::set<std::string_view>{"bust_girth", "under_bust_girth", "waist_girth",
                                          "top_hip_girth", "hip_girth", "waist_to_under_bust",
                                          "waist_to_bust", "waist_to_high_hip", "waist_to_hip"}));
}

TEST(IsoDate, knowsTheCalendar) {
    for (const char* good : {"2026-03-02", "2024-02-29", "2000-02-29", "1999-12-31"}) {
        EXPECT_TRUE(isIsoDate(good)) << good;
    }
    for (const char* bad :
         {"", "2026-3-2", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31",
          "02-03-2026", "2026/03/02", "2026-03-02T10:00", "2026-03-0x"}) {
        EXPECT_FALSE(isIsoDate(bad)) << bad;
    }
}

}  // namespace
}  // namespace coutil
