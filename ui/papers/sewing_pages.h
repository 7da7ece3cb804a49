#pragma once

#include <vector>

#include "core/making_up/sewing_steps.h"
#include "ui/words/sewing_words.h"

namespace coutil {

class PageWriter;

// The order of work: every step with its number, its words and its picture, two beside each other,
// over as many pages as it takes. Returns where the next may begin.
double writeSewingOrder(PageWriter& page, const std::vector<SewingStep>& steps,
                        const Pattern& pattern, const std::vector<Channel>& channels,
                        const SewingFigures& figures, double topMm);

}  // namespace coutil
