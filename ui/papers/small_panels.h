#pragma once

#include <QRectF>

#include "core/pattern/pattern.h"

namespace coutil {

class PageWriter;

// The panels of one half as large as the place lets them be, front on the left: numbers, seams with
// their names, levels with theirs, and a line that says it is not to scale.
void drawSmallPanels(PageWriter& page, const Pattern& pattern, const QRectF& place);

}  // namespace coutil
