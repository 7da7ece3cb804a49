#pragma once

#include <QColor>
#include <QSizeF>
#include <vector>

#include "ui/projecting/projected_pieces.h"
#include "ui/projecting/projected_view.h"

class QPainter;

namespace coutil {

enum class ProjectedLines { both, cuttingOnly, sewingOnly };

// How the lines are thrown.
struct ProjectorLook {
    bool isLightOnBlack = true;
    double lineWidthPx = 3;
    ProjectedLines lines = ProjectedLines::both;
    bool hasGrid = false;  // 50 mm, or 2 in

    bool operator==(const ProjectorLook&) const = default;
};

[[nodiscard]] QColor projectedGround(const ProjectorLook& look);
[[nodiscard]] QColor projectedLine(const ProjectorLook& look);
[[nodiscard]] QColor projectedQuiet(const ProjectorLook& look);  // grid, levels, words

// What lies on the table: all pieces, or only one of them.
struct ProjectedScene {
    const std::vector<ProjectedPiece>& pieces;
    int only = -1;  // index; -1: all
    ProjectedView view;
    ProjectorCalibration calibration;
    ProjectorLook look;
    double gridMm = 50;
};

// Paints all of a screen of that size. Cutting lines solid, sewing lines dashed, folds
// dash-dotted, so that they are told apart without colours.
void paintProjected(QPainter& painter, const QSizeF& screenPx, const ProjectedScene& scene);

}  // namespace coutil
