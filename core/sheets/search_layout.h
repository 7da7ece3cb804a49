#pragma once

#include <functional>
#include <vector>

#include "core/sheets/layout_state.h"
#include "core/sheets/seeded_random.h"

namespace coutil {

// How one run of the search goes about it.
struct SearchCourse {
    long long moves = 0;
    double hot = 25;  // temperature at the start and at the end, in units of cost
    double cold = 0.6;
    double overlapFirst = 1;  // cost of one cm2 of overlap at the start and at the end
    double overlapLast = 30;
};

// The best arrangement without overlaps that was met.
struct FoundLayout {
    LayoutCost cost;
    std::vector<CellPlace> places;
};

// Told the part of this run that is done; returns false to stop.
using SearchProgress = std::function<bool(double done)>;

// One run of annealing over positions and turns: small shifts, turns, exchanges, snapping to sheet
// edges, nestling up to neighbours; overlaps are allowed at a rising price. `best` is replaced
// whenever a better arrangement without overlaps is met. The same random stream gives the same run
// on any machine. Returns false when stopped.
bool searchLayout(LayoutState& state, const SearchCourse& course, SeededRandom& random,
                  FoundLayout& best, const SearchProgress& progress);

}  // namespace coutil
