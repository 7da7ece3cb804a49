#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace coutil {

// The levels a corset block knows, from top to bottom. aboveBust is the upper chest under the arms.
enum class LevelId { aboveBust, bust, underBust, waist, highHip, hip };
inline constexpr std::array kAllLevels{LevelId::aboveBust, LevelId::bust,    LevelId::underBust,
                                       LevelId::waist,     LevelId::highHip, LevelId::hip};
[[nodiscard]] std::string_view keyOf(LevelId level);  // "above_bust", "bust", "under_bust", ...
[[nodiscard]] std::optional<LevelId> levelNamed(std::string_view key);

enum class BlockKind { corset };
enum class FrontClosure { busk, fold, seam };
enum class TopShape { straight, curved, sweetheart, pointed };
enum class BottomShape { straight, curved, pointed, dipped };

// Where the garment ends, as seam positions: mm along the seam from its waist mark, up positive for
// the top edge, DOWN positive for the bottom edge. What is not given is worked out from the body
// and the shape.
struct TopEdgeStyle {
    TopShape shape = TopShape::sweetheart;
    std::optional<double> frontMm;
    std::optional<double> bustSeamMm;  // at the seam over the bust point
    std::optional<double> sideMm;      // at the seam nearest the side
    std::optional<double> backMm;
    std::map<std::string, double> atSeamMm;  // by seam name, wins over the above

    bool operator==(const TopEdgeStyle&) const = default;
};

struct BottomEdgeStyle {
    BottomShape shape = BottomShape::pointed;
    std::optional<double> frontMm;
    std::optional<double> sideMm;
    std::optional<double> backMm;
    std::map<std::string, double> atSeamMm;

    bool operator==(const BottomEdgeStyle&) const = default;
};

// A level of the maker's own: a line across all panels at a height over the waist; drawn and
// measured, no target.
struct OwnLevel {
    std::string name;
    double heightMm = 0;
    bool operator==(const OwnLevel&) const = default;
};

// What is added outside a sewing line, mm.
struct AllowanceStyle {
    double seamMm = 10;
    double openingMm = 15;   // front closure and laced back edge: turned in as facing
    bool isTopBound = true;  // bound edges get 0
    bool isBottomBound = true;
    double edgeMm = 10;                      // top and bottom where not bound
    std::map<std::string, double> byEdgeMm;  // "panel/edge name", e.g. "3/seam 2-3"

    bool operator==(const AllowanceStyle&) const = default;
};

// The maker's decisions for a garment. Everything has a sound default; a style is independent of a
// body.
struct Style {
    BlockKind block = BlockKind::corset;
    int panelsPerHalf = 5;  // 4 to 7
    double lacingGapMm = 50;
    std::map<LevelId, double> lacingGapAtMm;  // only where the style says otherwise
    // Negative ease is reduction. A level not named has 0.
    std::map<LevelId, double> easeMm{
        {LevelId::underBust, -20}, {LevelId::waist, -60}, {LevelId::highHip, -10}};
    FrontClosure front = FrontClosure::busk;
    TopEdgeStyle topEdge;
    BottomEdgeStyle bottomEdge;
    double frontShare =
        0.55;  // front's share of the reference width when the front bust arc was not measured
    // Relative panel widths front to back (any positive numbers), panel 1 excepted where the bust
    // point width fixes it; empty for the default of the panel count.
    std::vector<double> panelShares;
    // Per level the part of the suppression each seam takes, front to back, summing to 1; missing =
    // default.
    std::map<LevelId, std::vector<double>> seamShares;
    // Per seam the part taken from the panel in front (alpha); missing = 0.5.
    std::map<std::string, double> frontPart;
    std::vector<OwnLevel> ownLevels;
    AllowanceStyle allowance;

    bool operator==(const Style&) const = default;
};

}  // namespace coutil
