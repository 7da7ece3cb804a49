#include "core/revision/draft_garment.h"

#include <iterator>
#include <utility>

#include "core/block/draft_corset.h"
#include "core/pattern/every_check.h"

namespace coutil {

namespace {

// The value of a stage, its problems added to those of the stages before.
template <class T>
std::optional<T> taken(Outcome<T> outcome, std::vector<Problem>& problems) {
    problems.insert(problems.end(), outcome.problems.begin(), outcome.problems.end());
    return std::move(outcome.value);
}

// What is always looked at, on the pattern as it is now: what the block said about the girth of the
// waist may no longer hold.
void addChecks(const Pattern& pattern, std::vector<Problem>& problems) {
    std::erase_if(problems, [](const Problem& problem) {
        return problem.code == ProblemCode::reductionLarge;
    });
    std::vector<Problem> found = everyCheck(pattern);
    std::move(found.begin(), found.end(), std::back_inserter(problems));
}

}  // namespace

GarmentOutcome draftGarment(const MeasurementSet& set, const Style& style) {
    GarmentOutcome garment;
    garment.body = taken(completeBody(set), garment.problems);
    if (!garment.body) return garment;
    garment.pattern = taken(draftCorset(*garment.body, style), garment.problems);
    if (!garment.pattern) return garment;
    addChecks(*garment.pattern, garment.problems);
    garment.tracings = taken(traceTracings(*garment.pattern, style.allowance), garment.problems);
    return garment;
}

}  // namespace coutil
