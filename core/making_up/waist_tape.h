#pragma once

#include <string>
#include <vector>

#include "core/making_up/tape_choices.h"
#include "core/making_up/tape_pieces.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// Where the tape is caught on one panel: in both its seams (or openings) and at its middle; points
// in the panel's frame, on the waist.
struct TapeCatch {
    std::string panel;  // its key
    Point front = Point::Zero();
    Point middle = Point::Zero();
    Point back = Point::Zero();
    double frontAlongMm = 0;  // along the tape, from the centre front
    double backAlongMm = 0;

    bool operator==(const TapeCatch&) const = default;
};

struct WaistTape {
    std::vector<TapePiece> pieces{};   // one for each side, one for both where the front is closed
    std::vector<TapeCatch> catches{};  // one a panel, in the order of the pattern's panels
    double finishedMm = 0;             // all pieces: the waist of the pattern less the lacing gap

    bool operator==(const WaistTape&) const = default;
};

// The waist tape: along the waist of every panel from the centre front to the centre back. Where
// the front opens, two pieces; else one from back edge to back edge. No pieces where none is
// wanted. Widths are measured at the waist level, error below 1e-6 mm. Problems: tapeMissesPanel,
// makingUpOutOfRange
// ("waist_tape/...").
[[nodiscard]] Outcome<WaistTape> waistTapeFor(const Pattern& pattern,
                                              const WaistTapeChoices& choices);

}  // namespace coutil
