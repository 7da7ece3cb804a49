#pragma once

#include <string>
#include <vector>

#include "core/block/level_table.h"
#include "core/block/panel_widths.h"
#include "core/block/seam_edge.h"
#include "core/block/suppression_curve.h"

namespace coutil {

// The block before its top and bottom edges are cut: levels, widths, and the two long edges of
// every seam. Each edge is in the frame of its panel: x = 0 where the panel's front edge stands at
// the reference width.
struct CorsetFrame {
    std::vector<LevelRow> levels;  // lowest first
    PanelWidths widths;
    std::vector<SuppressionCurve> curves;  // one per seam, front to back
    std::vector<double> frontPart;         // alpha per seam: what the panel in front gives
    std::vector<SeamEdge> frontEdges;      // per seam: the back edge of the panel in front
    std::vector<SeamEdge> backEdges;       // per seam: the front edge of the panel behind

    [[nodiscard]] std::size_t panelCount() const { return widths.widthMm.size(); }
    [[nodiscard]] std::size_t seamCount() const { return curves.size(); }
};

// "1-2" for seam 0.
[[nodiscard]] std::string seamName(std::size_t seam);

// Needs a style that passed checkStyle(). Problems: those of levelTable().
[[nodiscard]] Outcome<CorsetFrame> corsetFrame(const Body& body, const Style& style);

// Width of a panel between its seam lines at a height, mm; negative where they have crossed.
[[nodiscard]] double frameWidthMm(const CorsetFrame& frame, std::size_t panel, double heightMm);

struct NarrowPlace {
    double widthMm = 0;
    double heightMm = 0;
};

// The narrowest place of a panel between two heights: exact, from the cubics.
[[nodiscard]] NarrowPlace narrowestPlace(const CorsetFrame& frame, std::size_t panel, double fromMm,
                                         double toMm);

}  // namespace coutil
