#include "core/revision/ink_line.h"

#include <algorithm>

namespace coutil {
namespace {

// Seven dashes against six hues: neighbours differ in both, and no pair returns for 42 numbers.
const std::array<std::vector<double>, 7>& dashes() {
    static const std::array<std::vector<double>, 7> all{{
        {},                   // unbroken
        {8, 4},               // long
        {2, 3},               // short
        {10, 3, 2, 3},        // long, dot
        {5, 3},               // middling
        {10, 3, 2, 3, 2, 3},  // long, dot, dot
        {12, 3, 5, 3},        // long, middling
    }};
    return all;
}

}  // namespace

InkLine inkLineOf(int revisionNumber) {
    const auto n = static_cast<std::size_t>(std::max(revisionNumber, 1) - 1);
    const std::size_t hue = n % kInkHues.size();
    return {.hue = hue, .onPaper = kInkHuesOnPaper[hue], .dashPens = dashes()[n % dashes().size()]};
}

}  // namespace coutil
