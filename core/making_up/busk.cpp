#include "core/making_up/busk.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/tolerances.h"
#include "core/making_up/choice_range.h"

namespace coutil {
namespace {

std::vector<Problem> checkChoices(const BuskChoices& choices) {
    std::vector<Problem> problems;
    requireWithin("busk/stock_lengths", static_cast<double>(choices.stockLengthsMm.size()), 1, 100,
                  problems, FigureUnit::count);
    for (const double mm : choices.stockLengthsMm)
        requireWithin("busk/stock_length", mm, 50, 1000, problems);
    requireWithin("busk/top_clearance", choices.topClearanceMm, 0, 200, problems);
    requireWithin("busk/bottom_clearance", choices.bottomClearanceMm, 0, 200, problems);
    // Two studs have to be apart on the shortest busk there can be.
    requireWithin("busk/stud_end", choices.studEndMm, 0, 24, problems);
    requireWithin("busk/stud_spacing", choices.studSpacingMm, 10, 500, problems);
    requireWithin("busk/width", choices.widthMm, 1, 100, problems);
    return problems;
}

std::optional<double> longestWithinMm(const std::vector<double>& stockLengthsMm, double roomMm) {
    std::optional<double> longestMm;
    for (const double mm : stockLengthsMm) {
        if (mm > roomMm + tolerance::kSamePointMm) continue;
        longestMm = std::max(longestMm.value_or(mm), mm);
    }
    return longestMm;
}

void placeStuds(const Pattern& pattern, const BuskChoices& choices, Busk& busk) {
    const double spanMm = busk.lengthMm - 2 * choices.studEndMm;
    const int spaces = std::max(1, static_cast<int>(std::lround(spanMm / choices.studSpacingMm)));
    for (int k = 0; k <= spaces; ++k) {
        const double positionMm = busk.bottomAtMm + choices.studEndMm + spanMm * k / spaces;
        busk.studs.push_back({positionMm,
                              *pointAtSeamPosition(edgeAt(pattern, busk.edges.left), positionMm),
                              *pointAtSeamPosition(edgeAt(pattern, busk.edges.right), positionMm)});
    }
}

}  // namespace

Outcome<std::optional<Busk>> buskFor(const Pattern& pattern, const BuskChoices& choices) {
    using Found = Outcome<std::optional<Busk>>;
    auto problems = checkChoices(choices);
    if (!problems.empty()) return Found::failed(std::move(problems));
    const auto edges = frontOpening(pattern);
    if (!edges) return Found(std::optional<Busk>{});
    Busk busk;
    busk.edges = *edges;
    busk.stretch = sharedStretchOf(pattern, *edges);
    busk.roomMm = busk.stretch.topMm - busk.stretch.bottomMm - choices.topClearanceMm -
                  choices.bottomClearanceMm;
    const auto lengthMm = longestWithinMm(choices.stockLengthsMm, busk.roomMm);
    if (!lengthMm) {
        return Problem{.code = ProblemCode::buskDoesNotFit,
                       .subject = "busk",
                       .figures = {{"value", busk.roomMm},
                                   {"limit", *std::ranges::min_element(choices.stockLengthsMm)}}};
    }
    busk.lengthMm = *lengthMm;
    busk.bottomAtMm = busk.stretch.bottomMm + choices.bottomClearanceMm +
                      std::max(0.0, busk.roomMm - busk.lengthMm) / 2;
    busk.topAtMm = busk.bottomAtMm + busk.lengthMm;
    placeStuds(pattern, choices, busk);
    return std::optional<Busk>(std::move(busk));
}

}  // namespace coutil
