#pragma once

#include <cstddef>
#include <vector>

#include "core/block/style.h"
#include "core/measurements/body.h"

namespace coutil {

// How the reference width (half the pattern at the bust) is shared among the panels of one half,
// mm.
struct PanelWidths {
    std::vector<double> widthMm;  // front to back, sum = reference width
    double sideLineMm = 0;        // how far the side line lies behind centre front

    // Where seam `seam` (0: between panels 1 and 2) lies, from centre front.
    [[nodiscard]] double seamAtMm(std::size_t seam) const;
    // The seam nearest the side line; never the one over the bust.
    [[nodiscard]] std::size_t sideSeam() const;
};

// Panel 1 is half the bust point width, so that the first seam passes over the bust point; without
// that measurement a share of the reference width (0.21: a bust point width of a fifth of the bust,
// common practice, no source). The front up to the side line is the measured front bust arc (half,
// with its part of the ease), else the style's front share. The other panels are of even width in
// front and even behind; the side line lies on a seam, or within a side panel where the number of
// panels is odd. panelShares scale them. Widths may come out too small or negative for a body and a
// style that don't go together; the caller looks for that.
[[nodiscard]] PanelWidths panelWidths(const Body& body, const Style& style, double referenceMm,
                                      double bustTargetMm);

}  // namespace coutil
