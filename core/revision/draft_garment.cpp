#include "core/revision/draft_garment.h"

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

}  // namespace

GarmentOutcome draftGarment(const MeasurementSet& set, const Style& style) {
    GarmentOutcome garment;
    garment.body = taken(completeBody(set), garment.problems);
    if (!garment.body) return garment;
    garment.pattern = taken(draftCorset(*garment.body, style), garment.problems);
    if (!garment.pattern) return garment;
    addEveryCheck(*garment.pattern, garment.problems);
    garment.tracings = taken(traceTracings(*garment.pattern, style.allowance), garment.problems);
    return garment;
}

}  // namespace coutil
