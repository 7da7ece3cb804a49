#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/alterations/apply_alterations.h"
#include "core/block/draft_corset.h"
#include "core/pattern/pattern.h"
#include "tests/core/block/sample_bodies.h"

// Patterns and alterations for the tests of alterations.
namespace coutil::samples {

inline Pattern drafted(int panels = 6) {
    Style style;
    style.panelsPerHalf = panels;
    return *draftCorset(average(), style);
}

inline Alteration takeIn(const std::string& seam, std::vector<AmountAt> amounts,
                         BodySide side = BodySide::both) {
    ShapeSeam shape{.seam = seam, .amounts = std::move(amounts)};
    return {.id = seam, .side = side, .change = shape};
}

inline OpenPanel opening(std::string panel, EdgePlace mouth, std::optional<EdgePlace> hinge,
                         std::optional<double> slitLengthMm, double amountMm) {
    OpenPanel change;
    change.panel = std::move(panel);
    change.mouth = std::move(mouth);
    change.hinge = std::move(hinge);
    change.slitLengthMm = slitLengthMm;
    change.amountMm = amountMm;
    return change;
}

inline ChangeLength lengthened(HeightPlace at, double amountMm, std::optional<Taper> taper = {}) {
    ChangeLength change;
    change.at = std::move(at);
    change.amountMm = amountMm;
    change.taper = std::move(taper);
    return change;
}

inline HeightPlace atLevel(std::string level) {
    HeightPlace place;
    place.level = std::move(level);
    return place;
}

inline Pattern altered(const Pattern& base, const std::vector<Alteration>& alterations) {
    return applyAlterations(base, alterations).pattern;
}

// checkPattern() without what a fitting changes on purpose: girths against their targets.
inline std::vector<Problem> brokenPromises(Pattern pattern) {
    for (Level& level : pattern.levels) level.targetMm.reset();
    return checkPattern(pattern);
}

}  // namespace coutil::samples
