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
    requireWithin("busk/lengths", static_cast<double>(choices.lengthsMm.size()), 1, 100, problems,
                  FigureUnit::count);
    for (const double mm : choices.lengthsMm) requireWithin("busk/length", mm, 50, 1000, problems);
    requireWithin("busk/free_at_end", choices.freeAtEndMm, 0, 200, problems);
    // On the shortest busk there can be two studs fall together at most.
    requireWithin("busk/end_stud", choices.endStudMm, 0, 25, problems);
    requireWithin("busk/stud_pitch", choices.studPitchMm, 10, 500, problems);
    requireWithin("busk/width", choices.widthMm, 1, 100, problems);
    return problems;
}

std::optional<double> longestWithinMm(const std::vector<double>& lengthsMm, double roomMm) {
    std::optional<double> longestMm;
    for (const double mm : lengthsMm) {
        if (mm > roomMm + tolerance::kSamePointMm) continue;
        longestMm = std::max(longestMm.value_or(mm), mm);
    }
    return longestMm;
}

void placeStuds(const Pattern& pattern, const BuskChoices& choices, Busk& busk) {
    const double spanMm = busk.lengthMm - 2 * choices.endStudMm;
    const int spaces = std::max(1, static_cast<int>(std::lround(spanMm / choices.studPitchMm)));
    for (int k = 0; k <= spaces; ++k) {
        const double positionMm = busk.bottomAtMm + choices.endStudMm + spanMm * k / spaces;
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
    busk.roomMm = busk.stretch.topMm - busk.stretch.bottomMm - 2 * choices.freeAtEndMm;
    const auto lengthMm = longestWithinMm(choices.lengthsMm, busk.roomMm);
    if (!lengthMm) {
        return Problem{.code = ProblemCode::buskDoesNotFit,
                       .subject = "busk",
                       .figures = {{"value", busk.roomMm},
                                   {"limit", *std::ranges::min_element(choices.lengthsMm)}}};
    }
    busk.lengthMm = *lengthMm;
    busk.bottomAtMm = busk.stretch.bottomMm + choices.freeAtEndMm +
                      std::max(0.0, busk.roomMm - busk.lengthMm) / 2;
    busk.topAtMm = busk.bottomAtMm + busk.lengthMm;
    placeStuds(pattern, choices, busk);
    return std::optional<Busk>(std::move(busk));
}

}  // namespace coutil
