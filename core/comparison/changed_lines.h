#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/comparison/comparison.h"
#include "core/pattern/pattern.h"

namespace coutil {

// A stretch of one edge that has no line of the same edge of the other pattern under it, to
// tolerance::kChangedLineMm: lengths from the start of the edge's path, each found to
// tolerance::kCompareSearchMm. A waist mark that moved along an unmoved edge is a stretch of no
// length.
struct ChangedStretch {
    std::size_t edge = 0;  // index in its panel
    double fromMm = 0;
    double toMm = 0;
    double farthestMm = 0;  // largest distance met, looked for every 2 mm; of a new edge 0
    Point farthestAt = Point::Zero();

    bool operator==(const ChangedStretch&) const = default;
};

// What changed of one panel. Paths and points are in the panel's own frame of a or b; `shiftOfB`
// lays the panel of b on that of a.
struct PanelChange {
    std::string name;
    PanelSide side = PanelSide::both;
    std::optional<std::size_t> inA;  // index of the panel; absent where it was split or joined
    std::optional<std::size_t> inB;
    Vector shiftOfB = Vector::Zero();
    std::vector<ChangedStretch> ofA;       // the old line where the new one left it
    std::vector<ChangedStretch> ofB;       // the new line
    std::vector<std::string> movedLevels;  // keys; those of which a line is in one only as well

    [[nodiscard]] bool isChanged() const {
        return !inA || !inB || !ofA.empty() || !ofB.empty() || !movedLevels.empty();
    }
};

// Every panel of either, in the order of comparePatterns(); of a half against a whole the half
// stands for both sides. A pattern against itself has nothing changed.
[[nodiscard]] std::vector<PanelChange> changedLines(const Pattern& a, const Pattern& b,
                                                    Registration how = Registration::automatic);

}  // namespace coutil
