#include <algorithm>
#include <array>

#include "core/measurements/measurement.h"

namespace coutil {

namespace {

// The usual ranges hold every woman of ANSUR II (993 of them in tests/data/bodies) or 3.5 standard
// deviations of ANSUR 1988, widened upwards for girths: an army enlists few large figures, a
// corset maker has many.
constexpr std::string_view kAnsur2 = "ANSUR II (2012), widened upwards for larger figures";
constexpr std::string_view kAnsur1988 = "ANSUR 1988 (Gordon et al. 1989), widened";
constexpr std::string_view kPractice = "common practice, no source";

constexpr auto kGirth = MeasurementKind::girth;
constexpr auto kLength = MeasurementKind::length;

constexpr std::array kCatalogue{
    MeasurementInfo{Measurement::bustGirth, "bust_girth", kGirth, 500, 2200, 680, 1450, kAnsur2,
                    true},
    MeasurementInfo{Measurement::underBustGirth, "under_bust_girth", kGirth, 450, 2000, 580, 1250,
                    kAnsur1988, true},
    MeasurementInfo{Measurement::upperChestGirth, "upper_chest_girth", kGirth, 500, 2000, 680, 1350,
                    kPractice, false},
    MeasurementInfo{Measurement::waistGirth, "waist_girth", kGirth, 400, 2200, 520, 1300,
                    kAnsur1988, true},
    MeasurementInfo{Measurement::topHipGirth, "top_hip_girth", kGirth, 450, 2400, 590, 1450,
                    kAnsur2, true},
    MeasurementInfo{Measurement::hipGirth, "hip_girth", kGirth, 500, 2500, 750, 1550, kAnsur2,
                    true},
    MeasurementInfo{Measurement::neckBaseGirth, "neck_base_girth", kGirth, 220, 800, 290, 500,
                    kAnsur2, false},
    MeasurementInfo{Measurement::shoulderLength, "shoulder_length", kLength, 60, 250, 95, 175,
                    kAnsur2, false},
    MeasurementInfo{Measurement::acrossBackWidth, "across_back_width", kLength, 200, 700, 265, 500,
                    kAnsur2, false},
    MeasurementInfo{Measurement::acrossFrontWidth, "across_front_width", kLength, 180, 700, 250,
                    480, kPractice, false},
    MeasurementInfo{Measurement::scyeDepth, "scye_depth", kLength, 80, 400, 135, 260, kAnsur1988,
                    false},
    MeasurementInfo{Measurement::backNeckToWaist, "back_neck_to_waist", kLength, 200, 700, 280, 545,
                    kAnsur1988, false},
    MeasurementInfo{Measurement::frontNeckToWaist, "front_neck_to_waist", kLength, 180, 650, 230,
                    450, kAnsur1988, false},
    MeasurementInfo{Measurement::sideNeckToBustPoint, "side_neck_to_bust_point", kLength, 120, 550,
                    190, 400, kAnsur1988, false},
    MeasurementInfo{Measurement::sideNeckOverBustToWaist, "side_neck_over_bust_to_waist", kLength,
                    250, 800, 330, 580, kPractice, false},
    MeasurementInfo{Measurement::bustPointWidth, "bust_point_width", kLength, 80, 500, 130, 290,
                    kPractice, false},
    MeasurementInfo{Measurement::sideWaistToHip, "side_waist_to_hip", kLength, 60, 450, 125, 330,
                    kAnsur2, false},
    MeasurementInfo{Measurement::upperArmGirth, "upper_arm_girth", kGirth, 120, 900, 210, 520,
                    kAnsur2, false},
    MeasurementInfo{Measurement::stature, "stature", kLength, 1000, 2400, 1400, 1900, kAnsur2,
                    false},
    MeasurementInfo{Measurement::frontBustArc, "front_bust_arc", kLength, 200, 1400, 340, 850,
                    kPractice, false},
    MeasurementInfo{Measurement::waistToUnderBust, "waist_to_under_bust", kLength, 10, 300, 15, 160,
                    kPractice, true},
    MeasurementInfo{Measurement::waistToBust, "waist_to_bust", kLength, 30, 400, 45, 240,
                    kAnsur1988, true},
    MeasurementInfo{Measurement::waistToArmpit, "waist_to_armpit", kLength, 50, 450, 95, 290,
                    kAnsur1988, false},
    MeasurementInfo{Measurement::waistToHighHip, "waist_to_high_hip", kLength, 20, 300, 40, 150,
                    kAnsur1988, true},
    MeasurementInfo{Measurement::waistToHip, "waist_to_hip", kLength, 60, 450, 130, 310, kAnsur1988,
                    true},
    MeasurementInfo{Measurement::waistToLap, "waist_to_lap", kLength, 20, 350, 50, 200, kPractice,
                    false},
};

// infoOf() relies on it.
constexpr bool isInEnumOrder() {
    for (std::size_t i = 0; i < kCatalogue.size(); ++i) {
        if (static_cast<std::size_t>(kCatalogue[i].id) != i) return false;
    }
    return kCatalogue.size() == static_cast<std::size_t>(Measurement::waistToLap) + 1;
}
static_assert(isInEnumOrder());

}  // namespace

std::span<const MeasurementInfo> measurementCatalogue() { return kCatalogue; }

const MeasurementInfo& infoOf(Measurement id) { return kCatalogue[static_cast<std::size_t>(id)]; }

std::string_view keyOf(Measurement id) { return infoOf(id).key; }

std::optional<Measurement> measurementNamed(std::string_view key) {
    const auto found = std::ranges::find(kCatalogue, key, &MeasurementInfo::key);
    if (found == kCatalogue.end()) return std::nullopt;
    return found->id;
}

}  // namespace coutil
