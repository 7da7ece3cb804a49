#pragma once

#include <QPainterPath>
#include <QPen>

#include "core/revision/timeline.h"

namespace coutil {

// The line of a timeline from an entry's dot to that of one that comes from it: level in one row,
// else down (or up) and round a corner.
[[nodiscard]] QPainterPath branchLine(const QPoint& from, const QPoint& to);

// In the ink of the revision it leads to; graphite to a pencil; a hairline to a fitting.
[[nodiscard]] QPen branchPen(TimelineKind kind, int revisionNumber, bool isDark);

}  // namespace coutil
