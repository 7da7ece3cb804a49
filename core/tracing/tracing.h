#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/block/edge_allowance.h"
#include "core/block/style.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

enum class NotchKind { waist, balance };  // balance: the second one, that tells top from bottom

struct Notch {
    NotchKind kind = NotchKind::waist;
    Point at = Point::Zero();         // on the sewing line
    Vector outward = Vector::Zero();  // unit length, towards the cutting line
    double lengthMm = 0;  // tick from the sewing line to the cutting line; 0 without allowance
    std::string edge;
    double positionMm = 0;  // seam position
};

// A cut-ready copy of one panel, in the panel's frame, face of the cloth up; that of a right panel
// is turned over (x to -x), as right panels are drawn like left ones. Then the edges come in the
// other order and seams that ran up run down.
struct Tracing {
    std::string panel;
    PanelSide side = PanelSide::both;
    bool isOnFold = false;
    int cutCount = 2;  // how many pieces; with isMirroredPair one of each pair is turned over
    bool isMirroredPair = true;
    std::vector<Edge> sewing;  // the panel's edges
    Path cutting;  // closed, counter-clockwise; cubic pieces within 0.01 mm of the true offset
    std::vector<Notch> notches;
    std::array<Point, 2> grain{Point::Zero(), Point::Zero()};
    std::vector<LevelLine> levels;
    Point labelAt = Point::Zero();  // centre of the label
    // Room there: a level rectangle inside the sewing line, clear of grain line and levels (where
    // the levels leave too little, clear of the waist only); 0 where there is none.
    double labelWidthMm = 0;
    double labelHeightMm = 0;
    Point numberAt =
        Point::Zero();          // centre of a large panel number, clear of all that and the label
    double numberHeightMm = 0;  // room there, as high as wide; 0 where there is none
    std::vector<double> allowancesMm;  // per sewing edge
};

// What the label of every tracing says beside the panel's name; words are made in ui.
struct TracingTitle {
    std::string garment;
    std::string client;    // may be empty: patterns can leave without a name
    std::string revision;  // "pencil" or the number
    std::string date;      // ISO 8601
    bool isPencil = true;
    bool operator==(const TracingTitle&) const = default;
};

// Tracings of every panel, in panel order. Corners: the allowance of a seam or an opening is turned
// back where it ends at a top or bottom edge, all others are mitred. Notches: one at the waist on
// both edges of every seam and on openings; on seams a balance notch at the same seam position of
// both edges, so placed that no edge looks the same upside down.
// Problems name the panel: offsetLostPart (warning), offsetTooNear, offsetTooFar, outlineOpen,
// outlineCrossesItself, styleValueOutOfRange (an allowance below 0 or not a number); and
// styleUnknownKey (warning): a width was given for an edge that is not there. A value is returned
// whenever every panel has a cutting line.
[[nodiscard]] Outcome<std::vector<Tracing>> traceTracings(const Pattern& pattern,
                                                          const AllowanceStyle& allowance);

}  // namespace coutil
