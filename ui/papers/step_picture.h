#pragma once

#include <QRectF>
#include <vector>

#include "core/making_up/sewing_steps.h"

namespace coutil {

class PageWriter;

// One half from outside, front on the left, as large as the place lets it be, with what a step
// works at drawn thick: a seam's edges, channels with both their sides, the waist, an opening, the
// top or bottom line. Of a whole pattern the left half.
void drawStep(PageWriter& page, const SewingStep& step, const Pattern& pattern,
              const std::vector<Channel>& channels, const QRectF& place);

}  // namespace coutil
