#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/pattern/pattern.h"

namespace coutil {

// How a panel of b is laid on the same panel of a: waist on waist and grain on grain always, and
// across the grain
enum class Registration {
    automatic,   // as it was drawn where the two share a stretch of an edge, else by the middle
    ownFrame,    // as it was drawn: revisions of one block, whose untouched edges lie on each other
    waistMiddle  // the middle of its waist line on the middle of the other's
};

// The place on an edge where it moved most, in both. Points are in the panel's own frame of a and
// of b. `along...` is mm from the front corner on a top or bottom edge, on all others the seam
// position (absent where the edge has no waist mark).
struct EdgeComparison {
    std::string edge{};
    EdgeRole role = EdgeRole::seam;
    double largestMm = 0;  // error as largestDistance() says
    Point onA = Point::Zero();
    Point onB = Point::Zero();
    std::optional<double> alongAMm{};
    std::optional<double> alongBMm{};
};

// A panel of a and the one of b with its name and side; absent in one of them where panels were
// split or joined. In a half against a whole the half stands for both sides.
struct PanelComparison {
    std::string name{};
    PanelSide side = PanelSide::both;
    std::optional<std::size_t> inA{};  // index of the panel
    std::optional<std::size_t> inB{};
    Vector shiftOfB = Vector::Zero();  // lays the panel of b on that of a
    std::optional<double> areaAMm2{};
    std::optional<double> areaBMm2{};
    std::vector<EdgeComparison> edges{};  // those that are in both, in the order of a
};

// What b takes in (positive) or lets out against a at one level, measured along the level: the
// whole across the seam, and its parts in the panels in front and behind. A part is absent where
// its panel is not in both or does not reach the level, the whole where a part that belongs to it
// is. Over the seams and closures of a half the wholes sum to what that half became narrower.
struct SeamAtLevel {
    std::string level{};
    std::optional<double> amountMm{};
    std::optional<double> inFrontMm{};
    std::optional<double> behindMm{};
};

// The same anywhere along the seam, measured square to the seam line of a.
struct SeamAmount {
    double positionMm = 0;  // seam position on a
    double amountMm = 0;
};

// A seam, or a closure ("centre front", "centre back": one panel only, in front at the back).
struct SeamComparison {
    std::string name{};
    PanelSide side = PanelSide::both;
    bool isInA = false;
    bool isInB = false;
    std::vector<SeamAtLevel> levels{};  // the levels of both, top to bottom
    std::optional<SeamLengths> lengthsA{};
    std::optional<SeamLengths> lengthsB{};
    // The amount that is largest (either way), looked for every 4 mm; nothing where no panel of the
    // seam is in both.
    std::optional<SeamAmount> largest{};
};

// Girths of both at a level, with the lacing gap. `differenceMm` is b less a.
struct LevelComparison {
    std::string level{};
    std::optional<double> heightAMm{};
    std::optional<double> heightBMm{};
    std::optional<double> bodyMm{};    // of b; of a where b has none
    std::optional<double> targetMm{};  // of b; of a where b has none
    std::optional<double> aMm{};
    std::optional<double> bMm{};
    std::optional<double> differenceMm{};
};

// How high the top or bottom line meets a seam, "centre front" or "centre back": seam positions
// (below the waist negative). `differenceMm` is b less a: positive is higher.
struct EdgeHeightComparison {
    EdgeRole line = EdgeRole::top;  // top or bottom
    std::string seam{};
    PanelSide side = PanelSide::both;
    std::optional<double> aMm{};
    std::optional<double> bMm{};
    std::optional<double> differenceMm{};
};

// Everything that is different between two patterns, in figures. Compared with itself a pattern
// gives zero everywhere, exactly.
struct Comparison {
    std::vector<PanelComparison> panels{};
    std::vector<SeamComparison> seams{};    // front to back, the left half first
    std::vector<LevelComparison> levels{};  // top to bottom
    std::vector<EdgeHeightComparison> edgeHeights{};
};

// a is the older one as a rule, b what became of it.
[[nodiscard]] Comparison comparePatterns(const Pattern& a, const Pattern& b,
                                         Registration how = Registration::automatic);

// Left (as a) against right (as b) of one pattern. Girths are those of a garment whose other half
// is the same. A symmetric pattern gives zero everywhere.
[[nodiscard]] Comparison compareSides(const Pattern& pattern);

}  // namespace coutil
