#pragma once

#include <vector>

#include "core/alterations/alteration.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

using Problems = std::vector<Problem>;

// One function for each kind of change, each in a file of its own. It changes the pattern and
// settles it (settle.h), or leaves it as it was and says why not (severity error; subject = kind,
// detail = the seam, panel or level named). With side left or right the pattern is whole.

// A run of ShapeSeam alterations is one mock-up: all of them are read on the pattern as it is, and
// amounts on one edge are added.
struct ShapeSeamOnSide {
    BodySide side = BodySide::both;
    const ShapeSeam* shape = nullptr;
};
[[nodiscard]] Problems shapeSeams(Pattern& pattern, const std::vector<ShapeSeamOnSide>& shapes);
[[nodiscard]] Problems shapeSeam(Pattern& pattern, BodySide side, const ShapeSeam& shape);

// Whether a ShapeSeam fits a pattern (its seam is there, its readings lie on it, its numbers are
// numbers); what shapeSeams() refuses.
[[nodiscard]] Problems checkShapeSeam(const Pattern& pattern, BodySide side,
                                      const ShapeSeam& shape);

[[nodiscard]] Problems openPanel(Pattern& pattern, BodySide side, const OpenPanel& change);
[[nodiscard]] Problems changeLength(Pattern& pattern, BodySide side, const ChangeLength& change);
[[nodiscard]] Problems reshapeEdge(Pattern& pattern, BodySide side, const ReshapeEdge& change);
[[nodiscard]] Problems moveLevel(Pattern& pattern, BodySide side, const MoveLevel& change);
[[nodiscard]] Problems moveCorner(Pattern& pattern, BodySide side, const MoveCorner& change);
[[nodiscard]] Problems moveHandle(Pattern& pattern, BodySide side, const MoveHandle& change);
[[nodiscard]] Problems splitPanel(Pattern& pattern, BodySide side, const SplitPanel& change);
[[nodiscard]] Problems joinPanels(Pattern& pattern, BodySide side, const JoinPanels& change);
[[nodiscard]] Problems makeSymmetric(Pattern& pattern, BodySide side, const MakeSymmetric& change);

}  // namespace coutil
