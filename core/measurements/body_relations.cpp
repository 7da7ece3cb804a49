#include "core/measurements/body_relations.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace coutil {

namespace {

using Values = std::map<Measurement, double>;

struct Term {
    Measurement id{};
    double slope = 0;
};

// target = interceptMm + sum of slope * value.
struct LinearRelation {
    Measurement target{};
    double interceptMm = 0;
    double sdMm = 0;
    std::vector<Term> terms;
    std::string_view source;
};

constexpr std::string_view kAnsur2 = "ANSUR II (2012), regression on n = 993";

// The first relation for a target whose inputs are all there is the one that counts.
const std::vector<LinearRelation>& linearRelations() {
    using enum Measurement;
    static const std::vector<LinearRelation> relations{
        // The line on which both girths are equally many standard deviations from their means
        // (907.1, 63.5 and 769.7, 51.0); the spread is that of a correlation of 0.85 about it.
        {underBustGirth,
         41.2,
         28,
         {{bustGirth, 0.8031}},
         "ANSUR 1988 (Gordon et al. 1989), means and standard deviations of both girths"},
        // Girth at the navel on bust (1.0599 B - 144.4, standard error 52.1), carried up to the
        // natural waist by the two waists of 1988 (725.5, 63.0 and 791.9, 82.7), which adds to the
        // spread what a correlation of 0.9 between the waists leaves open.
        {waistGirth,
         12.2,
         48,
         {{bustGirth, 0.8074}},
         "ANSUR II (2012), regression on n = 993, to the natural waist by ANSUR 1988"},
        // Girth at the navel, 74 mm under the natural waist, stands for the top hip.
        {hipGirth, 430.5, 43.8, {{bustGirth, 0.1849}, {topHipGirth, 0.4831}}, kAnsur2},
        {hipGirth, 360.7, 50.5, {{bustGirth, 0.6969}}, kAnsur2},
        // Lines through sizes 8, 12 and 16 on bust and on under-bust, half of each.
        {upperChestGirth,
         226.2,
         25,
         {{bustGirth, 0.4034}, {underBustGirth, 0.4126}},
         "ASTM D5585-11e1, sizes 8, 12 and 16; spread: common practice, no source"},
        {neckBaseGirth, 226.5, 14.2, {{bustGirth, 0.1527}}, kAnsur2},
        {acrossBackWidth, 158.0, 23.3, {{bustGirth, 0.2278}}, kAnsur2},
        {upperArmGirth, 38.0, 20.4, {{bustGirth, 0.2833}}, kAnsur2},
        {bustPointWidth, 0, 15, {{bustGirth, 0.2}}, "common practice, no source"},
        // Axilla height less chest height on bust.
        {waistToArmpit, 1.0, 21.1, {{waistToBust, 1}, {bustGirth, 0.0695}}, kAnsur2},
        // Navel to buttocks on stature (0.0938 S - 5.6), and the natural waist above the navel in
        // the proportion of 1988 (74.4 for a stature of 1629.4).
        {waistToHip,
         -5.6,
         23.8,
         {{stature, 0.1395}},
         "ANSUR II (2012), regression on n = 993, to the natural waist by ANSUR 1988"},
        {waistToHip, 221.6, 24.5, {}, "ANSUR II (2012) and ANSUR 1988, means"},
        {waistToHighHip,
         0,
         15,
         {{waistToHip, 0.46}},
         "common practice, no source (100 mm where the hip lies 218 mm under the waist)"},
        {waistToLap, 0, 20, {{waistToHip, 0.55}}, "common practice, no source"},
    };
    return relations;
}

std::optional<Expectation> applied(const LinearRelation& relation, const Values& valuesMm) {
    Expectation expected{relation.interceptMm, relation.sdMm, {}, relation.source};
    for (const Term& term : relation.terms) {
        const auto found = valuesMm.find(term.id);
        if (found == valuesMm.end()) return std::nullopt;
        expected.valueMm += term.slope * found->second;
        expected.from.push_back(term.id);
    }
    return expected;
}

// Between waist and hip, by the height of the high hip; the only relation that is not linear.
std::optional<Expectation> topHipBetween(const Values& valuesMm) {
    using enum Measurement;
    const std::vector<Measurement> from{waistGirth, hipGirth, waistToHighHip, waistToHip};
    if (!std::ranges::all_of(from, [&](Measurement m) { return valuesMm.contains(m); })) {
        return std::nullopt;
    }
    const double downShare = valuesMm.at(waistToHighHip) / valuesMm.at(waistToHip);
    const double waistMm = valuesMm.at(waistGirth);
    const double valueMm = waistMm + (valuesMm.at(hipGirth) - waistMm) * hipSpringShare(downShare);
    return Expectation{
        valueMm, 30, from,
        "between waist and hip by ANSUR 1988 and The Practical Corsetiere; spread: common "
        "practice, no source"};
}

}  // namespace

double hipSpringShare(double downShare) {
    static constexpr std::array<std::pair<double, double>, 4> kPlaces{
        {{0, 0}, {0.341, 0.275}, {0.667, 0.838}, {1, 1}}};
    const double share = std::clamp(downShare, 0.0, 1.0);
    auto upper = std::next(kPlaces.begin());
    while (upper->first < share) ++upper;
    const auto lower = std::prev(upper);
    const double part = (share - lower->first) / (upper->first - lower->first);
    return lower->second + part * (upper->second - lower->second);
}

std::optional<Expectation> expectedFrom(const Values& valuesMm, Measurement id) {
    if (id == Measurement::topHipGirth) return topHipBetween(valuesMm);
    for (const LinearRelation& relation : linearRelations()) {
        if (relation.target != id) continue;
        if (auto expected = applied(relation, valuesMm)) return expected;
    }
    return std::nullopt;
}

}  // namespace coutil
