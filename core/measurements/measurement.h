#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace coutil {

// The named measurements. Terms follow ISO 8559-1 where it has one; the last seven are the
// project's own.
enum class Measurement {
    bustGirth,
    underBustGirth,
    upperChestGirth,
    waistGirth,
    topHipGirth,
    hipGirth,
    neckBaseGirth,
    shoulderLength,
    acrossBackWidth,
    acrossFrontWidth,
    scyeDepth,
    backNeckToWaist,
    frontNeckToWaist,
    sideNeckToBustPoint,
    sideNeckOverBustToWaist,
    bustPointWidth,
    sideWaistToHip,
    upperArmGirth,
    stature,
    frontBustArc,
    waistToUnderBust,
    waistToBust,
    waistToArmpit,
    waistToHighHip,
    waistToHip,
    waistToLap,
};

enum class MeasurementKind { girth, length };

// One line of the catalogue. `key` is the name in files. A value outside lowest..highest is refused
// as impossible; outside usualLowest..usualHighest it is improbable. `source` names where the range
// is from.
struct MeasurementInfo {
    Measurement id{};
    std::string_view key;
    MeasurementKind kind{};
    double lowestMm = 0;
    double highestMm = 0;
    double usualLowestMm = 0;
    double usualHighestMm = 0;
    std::string_view source;
    bool isNeededForCorset = false;  // without it (or its stand-in) no corset block can be drafted
};

// The whole catalogue in the order a maker measures; one entry per enumerator.
[[nodiscard]] std::span<const MeasurementInfo> measurementCatalogue();
[[nodiscard]] const MeasurementInfo& infoOf(Measurement id);
[[nodiscard]] std::string_view keyOf(Measurement id);
[[nodiscard]] std::optional<Measurement> measurementNamed(std::string_view key);

}  // namespace coutil
