#pragma once

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

inline Pattern altered(const Pattern& base, const std::vector<Alteration>& alterations) {
    return applyAlterations(base, alterations).pattern;
}

// checkPattern() without what a fitting changes on purpose: girths against their targets.
inline std::vector<Problem> brokenPromises(Pattern pattern) {
    for (Level& level : pattern.levels) level.targetMm.reset();
    return checkPattern(pattern);
}

}  // namespace coutil::samples
