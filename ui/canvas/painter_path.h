#pragma once

#include <QPainterPath>
#include <QPointF>

#include "core/geometry/path.h"

namespace coutil {

// The same curves for a painter, in mm; straight pieces become lines. Nothing is flattened.
[[nodiscard]] QPainterPath painterPath(const Path& path, bool isClosed = false);

[[nodiscard]] inline QPointF painterPoint(const Point& point) { return {point.x(), point.y()}; }

}  // namespace coutil
