#pragma once

#include <QPainterPath>
#include <QString>
#include <vector>

#include "core/tracing/tracing.h"

namespace coutil {

// One tracing as a projector shows it, in mm with y up: lines only, no fills.
struct ProjectedPiece {
    QString name;   // "3", "3 left"
    QString words;  // "cut 2", "one mirrored", a line each
    QPainterPath cutting;
    QPainterPath sewing;
    QPainterPath fold;     // part of the sewing line that lies on the fold of the cloth
    QPainterPath notches;  // ticks
    QPainterPath levels;
    QPainterPath grain;  // with its arrow heads
    QRectF numberRoom;   // of the drawing; null: no number
    QRectF wordsRoom;
    QRectF box;  // of everything

    [[nodiscard]] QPointF middle() const { return box.center(); }
};

// The tracings side by side as on the table, one piece each.
[[nodiscard]] std::vector<ProjectedPiece> projectedPieces(const std::vector<Tracing>& tracings);

}  // namespace coutil
