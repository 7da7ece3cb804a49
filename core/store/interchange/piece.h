#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/path.h"
#include "core/pattern/pattern.h"
#include "core/tracing/tracing.h"

namespace coutil::interchange {

// A round hole: an eyelet or a stud.
struct PieceHole {
    Point at = Point::Zero();
    double diameterMm = 0;
};

// What both kinds of drawing show of one panel, pattern or tracing alike, in the panel's own frame.
struct Piece {
    std::string name;             // of the panel
    std::vector<Edge> sewing;     // closed
    std::optional<Path> cutting;  // absent on a pattern: it has no allowance
    std::vector<Notch> notches;
    std::vector<PieceHole> holes;
    std::vector<Point> waistMarks;  // on a pattern, where no notch shows them
    std::array<Point, 2> grain{Point::Zero(), Point::Zero()};
    std::vector<LevelLine> levels;
    std::optional<Path> foldLine;
    Point labelAt = Point::Zero();
    int cutCount = 2;
    bool isMirroredPair = true;
    Placement placement;  // on the drawing: beside its neighbours, y up
};

// Pieces side by side as they are drawn.
[[nodiscard]] std::vector<Piece> piecesOf(const Pattern& pattern);
[[nodiscard]] std::vector<Piece> piecesOf(const std::vector<Tracing>& tracings);

// Sets the placements so that the pieces lie side by side from x = 0 on, turned and mirrored as
// they are.
void layInRow(std::vector<Piece>& pieces);

// The outermost line of a piece as it lies on the drawing.
[[nodiscard]] Path outermostLine(const Piece& piece);
[[nodiscard]] Path sewingLine(const Piece& piece);

}  // namespace coutil::interchange
