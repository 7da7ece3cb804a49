#pragma once

#include "core/measurements/body.h"

// Invented bodies for the tests of the block.
namespace coutil::samples {

inline Body bodyOf(std::map<Measurement, double> valuesMm) {
    return Body{.valuesMm = std::move(valuesMm), .estimates = {}};
}

inline Body average() {
    using enum Measurement;
    return bodyOf({{bustGirth, 947},
                   {underBustGirth, 800},
                   {upperChestGirth, 938},
                   {waistGirth, 760},
                   {topHipGirth, 890},
                   {hipGirth, 1021},
                   {bustPointWidth, 190},
                   {waistToUnderBust, 65},
                   {waistToBust, 130},
                   {waistToArmpit, 180},
                   {waistToHighHip, 100},
                   {waistToHip, 218},
                   {waistToLap, 120}});
}

inline Body largeBust() {
    using enum Measurement;
    return bodyOf({{bustGirth, 1200},
                   {underBustGirth, 980},
                   {upperChestGirth, 1115},
                   {waistGirth, 980},
                   {topHipGirth, 1120},
                   {hipGirth, 1250},
                   {bustPointWidth, 240},
                   {waistToUnderBust, 55},
                   {waistToBust, 125},
                   {waistToArmpit, 200},
                   {waistToHighHip, 100},
                   {waistToHip, 225},
                   {waistToLap, 124}});
}

// A waist larger than the bust.
inline Body straight() {
    using enum Measurement;
    return bodyOf({{bustGirth, 900},
                   {underBustGirth, 870},
                   {upperChestGirth, 940},
                   {waistGirth, 960},
                   {topHipGirth, 980},
                   {hipGirth, 1000},
                   {bustPointWidth, 180},
                   {waistToUnderBust, 60},
                   {waistToBust, 125},
                   {waistToArmpit, 175},
                   {waistToHighHip, 100},
                   {waistToHip, 215},
                   {waistToLap, 118}});
}

inline Body petite() {
    using enum Measurement;
    return bodyOf({{bustGirth, 780},
                   {underBustGirth, 680},
                   {upperChestGirth, 790},
                   {waistGirth, 600},
                   {topHipGirth, 740},
                   {hipGirth, 850},
                   {bustPointWidth, 156},
                   {waistToUnderBust, 50},
                   {waistToBust, 110},
                   {waistToArmpit, 150},
                   {waistToHighHip, 88},
                   {waistToHip, 190},
                   {waistToLap, 104}});
}

}  // namespace coutil::samples
