#pragma once

#include <vector>

#include "core/store/interchange/piece.h"
#include "core/tracing/line_kind.h"

namespace coutil::interchange {

// One cut, as the middle of the beam or blade goes, on the drawing.
struct CutterLine {
    LineKind kind = LineKind::cutting;  // eyelets (holes), notches (slits) or cutting
    Path path;
    bool isClosed = true;
};

// All cuts of one piece in their order.
struct CutterPiece {
    std::string name;
    Point origin = Point::Zero();  // of the piece's frame, on the drawing
    std::vector<CutterLine> lines;
};

// A slit goes this far in from the cutting line, or through half the allowance where that is less.
inline constexpr double kSlitMm = 4;

// What is cut, in the order of cutting: pieces by the nearest next one, starting from the lower
// left; of each first the holes, then the slits of its notches, the outline last, so that nothing
// lies loose before it is finished. Outlines lie half the kerf outside of the cutting line, corners
// mitred, to 0.01 mm; holes half of it inside of theirs, and one no wider than the kerf is left
// out. A notch without allowance is not cut. Problems: those of offsetOutline(), naming the panel.
[[nodiscard]] Outcome<std::vector<CutterPiece>> cutterLines(const std::vector<Piece>& pieces,
                                                            double kerfMm);

}  // namespace coutil::interchange
