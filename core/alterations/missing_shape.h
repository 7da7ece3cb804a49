#pragma once

#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/shape_parts.h"
#include "core/pattern/pattern.h"

namespace coutil {

// How far into the panel an edge would have to move at a place to lie on its target, and how that
// grows along the edge.
struct MissingShape {
    double mm = 0;
    double slope = 0;
};

// Seam positions at which edges are looked at: even steps, closer at both ends, whose
// direction decides how the top and bottom lines run.
[[nodiscard]] std::vector<double> shapeStations(const Pattern& pattern,
                                                const std::vector<PartOfEdge>& parts,
                                                double stepMm);

// By how much the amounts of a ShapeSeam of `base` would have to grow at every station, for the
// edges that have come to `now` with the amounts `soFar` to lie on those of `wanted`: looked at
// along the normals of `base`, by least squares over all edges. What lies farther off than 250 mm
// is not seen.
[[nodiscard]] std::vector<MissingShape> missingShapes(const Pattern& base, const Pattern& now,
                                                      const Pattern& wanted,
                                                      const std::vector<PartOfEdge>& parts,
                                                      const std::vector<double>& stations,
                                                      const std::vector<MissingShape>& soFar);

// Each amount with those of its neighbours (1 : 2 : 1), the ends staying: takes out what is only
// between stations and would grow from look to look.
void smooth(std::vector<MissingShape>& missing);

// How far outlines are off with that: along the seam, and on the lines that end at it.
[[nodiscard]] double worstMm(const std::vector<MissingShape>& missing);

// A ShapeSeam (of the seam and split of `like`) with these amounts: only the stretch that moves,
// faded at once outside it; where it reaches an end a reading past the end gives the edge its
// direction there.
[[nodiscard]] ShapeSeam shapeThrough(const ShapeSeam& like, const std::vector<double>& stations,
                                     const std::vector<MissingShape>& missing);

}  // namespace coutil
