#include "ui/timeline/branch_line.h"

#include <algorithm>
#include <cstdlib>

#include "ui/canvas/ink_colours.h"
#include "ui/canvas/table_colours.h"

namespace coutil {

namespace {
constexpr int kCornerPx = 8;
constexpr double kInkWidthPx = 2;
}  // namespace

QPainterPath branchLine(const QPoint& from, const QPoint& to) {
    QPainterPath path(from);
    if (from.y() != to.y()) {
        const int corner =
            std::clamp(to.x() - from.x(), 0, std::min(kCornerPx, std::abs(to.y() - from.y())));
        const int turn = to.y() > from.y() ? to.y() - corner : to.y() + corner;
        path.lineTo(from.x(), turn);
        path.quadTo(from.x(), to.y(), from.x() + corner, to.y());
    }
    path.lineTo(to);
    return path;
}

QPen branchPen(TimelineKind kind, int revisionNumber, bool isDark) {
    const TableColours& colours = tableColours(isDark);
    switch (kind) {
        case TimelineKind::revision:
            return inkPen(inkLook(revisionNumber, isDark), kInkWidthPx);
        case TimelineKind::pencil:
            return QPen(colours.graphite, 1.4);
        case TimelineKind::fitting:
            break;
    }
    return QPen(colours.level, 1);
}

}  // namespace coutil
