#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/pattern/pattern.h"
#include "core/units/length.h"
#include "ui/canvas/table_scene.h"

namespace coutil {

// The names of the handles on the picked mark's seam.
inline constexpr char kMarkHandle[] = "mark";
inline constexpr char kSplitHandle[] = "split";
inline constexpr char kFadeUpHandle[] = "fade up";
inline constexpr char kFadeDownHandle[] = "fade down";

// What the Fit bench lays on the table.
struct FitView {
    const Pattern* pattern = nullptr;
    const Pattern* before = nullptr;  // its lines are drawn thin and pale; nullptr: none
    std::vector<Mark> marks{};
    std::string picked{};               // id of a mark; empty: none
    const ShapeSeam* shape = nullptr;   // what the picked mark became, where that is a seam's
    const ReshapeEdge* line = nullptr;  // or where that is a top or bottom edge's
    BodySide shapeSide = BodySide::both;
    LengthUnit unit = LengthUnit::centimetre;
};

// The pattern, its old lines, the marks where they were read, handles of the picked one.
[[nodiscard]] TableScene fitScene(const FitView& view);

// The seam position a handle wanted at `mm` stands for, on the edge it is drawn at; nothing where
// there is none. For kSplitHandle it is the front panel's part, 0..1.
[[nodiscard]] std::optional<double> handleMeans(const FitView& view, const std::string& handle,
                                                const QPointF& mm);

}  // namespace coutil
