#pragma once

#include <cstdint>
#include <vector>

#include "core/problems/problem.h"

namespace coutil {

// So many pieces of one length.
struct PieceToCut {
    double lengthMm = 0;
    int count = 1;

    bool operator==(const PieceToCut&) const = default;
};

// Rods (or reels) of one length that are cut alike.
struct PlannedBar {
    double stockLengthMm = 0;
    int count = 1;
    std::vector<PieceToCut> cuts{};  // longest first
    double lossMm = 0;               // what the cuts of one bar turn to dust
    double leftMm = 0;               // what is left of one bar after its last cut

    bool operator==(const PlannedBar&) const = default;
};

struct CuttingPlan {
    std::vector<PlannedBar> bars{};  // longest stock first, fullest first
    double stockMm = 0;              // length of all bars together; pieces + losses + left-overs
    double piecesMm = 0;
    double lossMm = 0;
    double leftMm = 0;
    // No plan needs less stock than this. Equal to stockMm where the plan is proved best.
    double leastStockMm = 0;
    bool isProvedBest = false;

    bool operator==(const CuttingPlan&) const = default;
};

// How long to look for a better plan and for the proof, in elementary steps of the search (some
// five nanoseconds each). The same steps give the same plan on every machine.
struct CuttingEffort {
    std::int64_t steps = 60'000'000;
};

// How to cut pieces from rods or reels of given lengths (as many of each as needed) with the least
// length of stock, and of those plans one with the fewest bars. Every cut loses `lossPerCutMm`; a
// piece that ends at the bar's own end needs no cut of its own. A reel is one long stock.
// Lengths are taken to the micrometre: pieces and losses rounded up, stock down.
// The method: best fit decreasing; a lower bound from the linear programme over cutting patterns
// (Gilmore and Gomory 1961), its prices turned into whole numbers and checked exactly, so that
// rounding cannot make it too high; then a search bar by bar for the longest piece left, cut off by
// the same bound. `isProvedBest` says whether the search came to its end.
// Pieces with a count of 0 are left out. Problems: pieceLongerThanStock (figures value, limit),
// makingUpOutOfRange (subject "cutting"; lengths up to 100 m, counts up to 8000 together).
[[nodiscard]] Outcome<CuttingPlan> cuttingPlan(const std::vector<PieceToCut>& pieces,
                                               const std::vector<double>& stockLengthsMm,
                                               double lossPerCutMm,
                                               const CuttingEffort& effort = {});

}  // namespace coutil
