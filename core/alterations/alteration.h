#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/block/style.h"
#include "core/geometry/point.h"

namespace coutil {

// Which side of the body, as the wearer has it.
enum class BodySide { both, left, right };
[[nodiscard]] std::string_view keyOf(BodySide side);  // "both", "left", "right"

// How an amount ends beyond its last reading: fading to nothing over so many mm along the edge, or
// (nothing) carried on to the end of the edge.
struct Fade {
    std::optional<double> overMm = 60;
    bool operator==(const Fade&) const = default;
};

// So many mm at a seam position.
struct AmountAt {
    double positionMm = 0;
    double amountMm = 0;
    bool operator==(const AmountAt&) const = default;
};

// A place on one edge of a panel: mm from its front corner on a top or bottom edge, the seam
// position on all others.
struct EdgePlace {
    std::string edge;
    double alongMm = 0;
    bool operator==(const EdgePlace&) const = default;
};

// A place on a top or bottom line: where a seam (or "centre front", "centre back") ends in it, or
// inside a panel so many mm along from its front corner.
struct LinePlace {
    std::string seam{};  // wins when not empty
    std::string panel{};
    double alongMm = 0;
    bool operator==(const LinePlace&) const = default;
};

struct LineAmount {
    LinePlace place;
    double amountMm = 0;
    bool operator==(const LineAmount&) const = default;
};

// A height: that of a level, or (level empty) so many mm over the waist.
struct HeightPlace {
    std::string level{};
    double heightMm = 0;
    bool operator==(const HeightPlace&) const = default;
};

// Takes in (positive) or lets out one seam. The amount is the whole across the seam; the panel in
// front gives frontPart of it, the panel behind the rest. "centre front" and "centre back" name the
// edges at the closures: with side `both` each half gives half of the amount, else that side gives
// all.
struct ShapeSeam {
    std::string seam;
    std::vector<AmountAt> amounts;
    Fade up{};
    Fade down{};
    double frontPart = 0.5;
    bool operator==(const ShapeSeam&) const = default;
};

// Opens (positive) or closes a panel from `mouth`, a place on its top or bottom edge, about a
// hinge. With a place as hinge the panel is cut from mouth to hinge and one part turned about it;
// with a slit length the slit ends inside the panel and the amount fades to nothing at its end.
struct OpenPanel {
    std::string panel;
    EdgePlace mouth;
    std::optional<EdgePlace> hinge{};
    std::optional<double> slitLengthMm{};
    double amountMm = 0;
    bool operator==(const OpenPanel&) const = default;
};

// Where a lengthening tapers: the whole amount at the edge or seam `from`, nothing at `to`.
struct Taper {
    std::string from;
    std::string to;
    bool operator==(const Taper&) const = default;
};

// Lengthens (positive) or shortens at a height; parallel, or tapering to nothing. Over the waist
// what is above moves up, below it what is below moves down: the waist stays.
struct ChangeLength {
    HeightPlace at;
    double amountMm = 0;
    std::optional<Taper> taper{};
    bool operator==(const ChangeLength&) const = default;
};

enum class EdgeLine { top, bottom };
[[nodiscard]] std::string_view keyOf(EdgeLine line);  // "top", "bottom"

// Raises (positive) or lowers the top or bottom line.
struct ReshapeEdge {
    EdgeLine line = EdgeLine::top;
    std::vector<LineAmount> amounts;
    Fade towardsFront{};
    Fade towardsBack{};
    bool operator==(const ReshapeEdge&) const = default;
};

// Moves a level up (positive) with the shape that belongs to it, up to the next levels. At the bust
// also the distance of the bust points, the girth kept.
struct MoveLevel {
    std::string level;
    double upMm = 0;
    double widerMm = 0;
    bool operator==(const MoveLevel&) const = default;
};

// Moves the upper or lower end of a long edge (seam or opening): along the edge both edges of its
// seam, across it this panel's alone.
struct MoveCorner {
    std::string panel;
    std::string edge;
    EdgeLine end = EdgeLine::top;
    Vector byMm = Vector::Zero();
    bool operator==(const MoveCorner&) const = default;
};

// Moves one of the two handles (1, 2) of a piece of an edge.
struct MoveHandle {
    std::string panel;
    std::string edge;
    int piece = 0;
    int handle = 1;
    Vector byMm = Vector::Zero();
    bool operator==(const MoveHandle&) const = default;
};

// A new seam through a panel, straight from a place on its bottom edge to one on its top edge (mm
// from the front corners).
struct SplitPanel {
    std::string panel;
    double bottomAlongMm = 0;
    double topAlongMm = 0;
    bool operator==(const SplitPanel&) const = default;
};

// Two panels become one: the seam between them is given up.
struct JoinPanels {
    std::string seam;
    bool operator==(const JoinPanels&) const = default;
};

enum class SymmetrySource { mean, left, right };
[[nodiscard]] std::string_view keyOf(SymmetrySource source);  // "mean", "left", "right"

// Left and right become one again.
struct MakeSymmetric {
    SymmetrySource from = SymmetrySource::mean;
    bool operator==(const MakeSymmetric&) const = default;
};

// From here on the block is drafted by another style, or from another measurement set (its id), and
// everything before is applied to it again.
struct ChangeStyle {
    Style style;
    bool operator==(const ChangeStyle&) const = default;
};

struct TakeMeasurements {
    std::string measurementSet;
    bool operator==(const TakeMeasurements&) const = default;
};

using Change =
    std::variant<ShapeSeam, OpenPanel, ChangeLength, ReshapeEdge, MoveLevel, MoveCorner, MoveHandle,
                 SplitPanel, JoinPanels, MakeSymmetric, ChangeStyle, TakeMeasurements>;

// The key of a kind, as in files: "shape_seam", "open_panel", "change_length", "reshape_edge",
// "move_level", "move_corner", "move_handle", "split_panel", "join_panels", "make_symmetric",
// "change_style", "take_measurements".
[[nodiscard]] std::string_view kindOf(const Change& change);

// One change of the pattern, as data: what, where, how much, why, from which marks.
struct Alteration {
    std::string id;  // UUID
    BodySide side = BodySide::both;
    Change change;
    std::string why{};
    std::vector<std::string> marks{};  // ids of the marks it came from
    bool isOn = true;                  // switched off: kept, not applied

    bool operator==(const Alteration&) const = default;
};

}  // namespace coutil
