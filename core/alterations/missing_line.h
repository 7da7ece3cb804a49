#pragma once

#include <cstddef>
#include <vector>

#include "core/alterations/line_of_half.h"
#include "core/pattern/pattern.h"

namespace coutil {

// How far up every place of a top or bottom line of one half would have to go: by panel of the
// line, at shares 0..1 of its length there.
struct MissingLine {
    struct OfPanel {
        std::vector<double> shares;
        std::vector<double> upMm;
    };
    std::vector<OfPanel> panels;

    void scale(double by);
    void smooth();                      // each by the mean of its neighbours; ends stay
    void add(const MissingLine& more);  // taken at the same shares
    [[nodiscard]] double worstMm() const;
};

// Looked at every 3 mm, closer at the corners, along the directions in which a ReshapeEdge raises
// the line. At a corner it is what the long edges lack of their length, so that seams stay equal.
// With `like`, at the shares of that.
[[nodiscard]] MissingLine missingLine(const Pattern& now, const Pattern& wanted,
                                      const LineOfHalf& half, const MissingLine* like);

// The ReshapeEdge that raises the line of `now` so.
[[nodiscard]] ReshapeEdge reshapeThrough(const Pattern& now, const LineOfHalf& half, EdgeLine line,
                                         const MissingLine& missing);

}  // namespace coutil
