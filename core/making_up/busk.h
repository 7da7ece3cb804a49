#pragma once

#include <optional>
#include <vector>

#include "core/making_up/busk_choices.h"
#include "core/making_up/opening_edges.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// A stud and its loop, at the same height on both front edges.
struct BuskStud {
    double positionMm = 0;        // seam position
    Point left = Point::Zero();   // on the edge, in the frame of the left panel: the stud
    Point right = Point::Zero();  // in the frame of the right panel: the loop

    bool operator==(const BuskStud&) const = default;
};

// The two halves of a busk. The loops are on the wearer's right, the studs on the left (practice).
struct Busk {
    double lengthMm = 0;    // the stock length
    double roomMm = 0;      // the front edge less what is left free at both ends
    double bottomAtMm = 0;  // seam positions of its ends
    double topAtMm = 0;
    std::vector<BuskStud> studs{};  // from the bottom to the top
    OpeningEdges edges{};
    SharedStretch stretch{};

    bool operator==(const Busk&) const = default;
};

// The longest busk in stock that the front edge takes with its ends left free, what is left over
// shared between its two ends; of two edges that differ in length what they share. Nothing inside
// the value where the front does not open.
// Problems: buskDoesNotFit (value: the room, limit: the shortest in stock), makingUpOutOfRange
// ("busk/...").
[[nodiscard]] Outcome<std::optional<Busk>> buskFor(const Pattern& pattern,
                                                   const BuskChoices& choices);

}  // namespace coutil
