#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/geometry/path.h"
#include "core/measurements/body.h"
#include "core/problems/problem.h"

namespace coutil {

enum class EdgeRole { seam, top, bottom, opening, fold, neck, armhole, shoulder, dartLeg };
[[nodiscard]] std::string_view keyOf(EdgeRole role);  // "seam", ..., "dart_leg"

// Which side of the body a panel is for. `both`: cut once as drawn and once mirrored.
enum class PanelSide { both, left, right };

// One named stretch of a panel's outline. Paths run counter-clockwise around the panel, y up, so
// a panel with its front on the left goes: bottom (rightwards), back edge (up), top (leftwards),
// front edge (down).
struct Edge {
    std::string name;  // "top", "bottom", "seam 1-2", "centre front", "centre back"
    EdgeRole role = EdgeRole::seam;
    Path path{};
    // For edges that cross the waist: length from the path's start to the waist mark, mm.
    std::optional<double> waistMarkAtMm{};
    // True where seam position grows along the path (the edge runs upwards).
    bool runsUp = false;

    bool operator==(const Edge&) const = default;
};

// A level drawn on one panel, from its front edge to its back edge.
struct LevelLine {
    std::string level;  // key of the level or the maker's own name
    Point front = Point::Zero();
    Point back = Point::Zero();

    bool operator==(const LevelLine&) const = default;
};

// One closed shape without allowance, in its own frame: grain vertical, waist at y = 0.
struct Panel {
    std::string name;  // "1" at centre front
    PanelSide side = PanelSide::both;
    // The front edge is a fold. A left or right panel keeps this to remember that it was: its
    // centre front is a seam until the pattern is symmetric again.
    bool isOnFold = false;
    std::vector<Edge> edges{};  // closed, counter-clockwise
    std::vector<LevelLine> levels{};
    std::array<Point, 2> grain{Point::Zero(), Point::Zero()};  // lower, upper end

    bool operator==(const Panel&) const = default;
};

struct EdgeRef {
    std::size_t panel = 0;
    std::size_t edge = 0;
    bool operator==(const EdgeRef&) const = default;
};

struct Seam {
    std::string name;  // "1-2"
    EdgeRef front;     // edge of the panel in front
    EdgeRef back;      // edge of the panel behind
    double easeMm = 0;

    bool operator==(const Seam&) const = default;
};

// One row of the girth table. `bodyMm` and `targetMm` are absent for the maker's own levels and
// below what was measured. `patternMm` is measured on the panels: all of them, both sides, plus the
// lacing gap; absent where the level does not cross every panel.
struct Level {
    std::string name;
    double heightMm = 0;
    std::optional<double> bodyMm{};
    std::optional<double> targetMm{};
    std::optional<double> patternMm{};
    double lacingGapMm = 0;

    bool operator==(const Level&) const = default;
};

// The whole pattern of one revision. Panels are those of one half, front to back, as seen from
// outside with the front on the left; or (sides left and right) those of both, first all left ones,
// then the right ones, every one drawn as the half is.
struct Pattern {
    std::vector<Panel> panels;
    std::vector<Seam> seams;
    std::vector<Level> levels;  // top to bottom
    double lacingGapMm = 0;
    std::vector<Estimate> estimates;

    bool operator==(const Pattern&) const = default;
};

// Whether a panel is cut on the fold: one of both sides only.
[[nodiscard]] inline bool isCutOnFold(const Panel& panel) {
    return panel.isOnFold && panel.side == PanelSide::both;
}

[[nodiscard]] const Edge& edgeAt(const Pattern& pattern, const EdgeRef& ref);

// The closed outline of a panel as one path, counter-clockwise.
[[nodiscard]] Path outlineOf(const Panel& panel);

// The point of an edge at a seam position (mm from the waist mark, up positive); nothing where the
// edge has no waist mark or ends before it.
[[nodiscard]] std::optional<Point> pointAtSeamPosition(const Edge& edge, double positionMm);

// Length of an edge above and below its waist mark, mm (0 for the part that is not there).
struct SeamLengths {
    double aboveWaistMm = 0;
    double belowWaistMm = 0;
};
[[nodiscard]] SeamLengths seamLengthsOf(const Edge& edge);

// Where each panel lies on the master: panels side by side from centre front on the left, waist
// marks in one line, `spaceMm` between neighbours. A whole pattern takes two rows, right panels
// under the left ones. One placement per panel.
[[nodiscard]] std::vector<Placement> masterPlacements(const Pattern& pattern, double spaceMm);

// Where the level line at a height meets the front and the back edge of a panel; nothing where it
// does not reach both.
struct LevelCrossing {
    Point front = Point::Zero();
    Point back = Point::Zero();
};
[[nodiscard]] std::optional<LevelCrossing> crossingAtHeight(const Panel& panel, double heightMm);

// Width of a panel between its front and back edge at a height, mm; nothing where it does not reach
// there.
[[nodiscard]] std::optional<double> widthAtHeightMm(const Panel& panel, double heightMm);

// Checks every promise of a pattern again, from its outlines alone: paired edges, smooth top and
// bottom lines, a girth table that says what the panels measure, simple outlines, narrowest width.
// Empty when all hold. Warnings where it could still be sewn (lines broken across a seam, edges of
// a seam that differ by up to tolerance::kSewableSeamMm), else errors.
[[nodiscard]] std::vector<Problem> checkPattern(const Pattern& pattern);

}  // namespace coutil
