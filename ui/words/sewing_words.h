#pragma once

#include <QString>
#include <vector>

#include "core/making_up/sewing_steps.h"
#include "core/units/length.h"

namespace coutil {

// Figures that the words of the steps give.
struct SewingFigures {
    double buskMm = 0;
    double waistTapeMm = 0;  // its width
    std::size_t eyeletsOnASide = 0;
    double eyeletMm = 0;
    double bindingCutMm = 0;  // its cut width
    double bindingMm = 0;     // its finished width
    LengthUnit unit = LengthUnit::centimetre;
};

// "Join seam 2-3".
[[nodiscard]] QString sewingTitle(const SewingStep& step);
// What to do, with its figures, one to three sentences.
[[nodiscard]] QString sewingSentence(const SewingStep& step, const Pattern& pattern,
                                     const std::vector<Channel>& channels,
                                     const SewingFigures& figures);

}  // namespace coutil
