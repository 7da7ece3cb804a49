#include "core/revision/pencil_outcome.h"

#include <utility>

#include "core/alterations/apply_alterations.h"
#include "core/block/draft_corset.h"
#include "core/pattern/every_check.h"
#include "core/revision/recipe.h"

namespace coutil {
namespace {

template <class T>
std::optional<T> taken(Outcome<T> outcome, std::vector<Problem>& problems) {
    problems.insert(problems.end(), outcome.problems.begin(), outcome.problems.end());
    return std::move(outcome.value);
}

// Readings of a revision's own set, whatever became of the folio's.
std::optional<Body> bodyOf(const MeasurementSet& set, std::vector<Problem>& problems) {
    return taken(completeBody(set), problems);
}

PencilBase draftedBase(const MeasurementSet& set, const Style& style) {
    PencilBase base;
    base.body = bodyOf(set, base.problems);
    if (base.body) base.pattern = taken(draftCorset(*base.body, style), base.problems);
    return base;
}

GarmentOutcome traced(GarmentOutcome outcome, const AllowanceStyle& allowance) {
    addEveryCheck(*outcome.pattern, outcome.problems);
    outcome.tracings = taken(traceTracings(*outcome.pattern, allowance), outcome.problems);
    return outcome;
}

}  // namespace

PencilBase baseOf(const Folio& folio, const Pencil& pencil) {
    const Revision* parent = pencil.parent.empty() ? nullptr : findRevision(folio, pencil.parent);
    const MeasurementSet* found = setInForce(folio, pencil);
    const MeasurementSet set = found == nullptr ? MeasurementSet{} : *found;
    const Style& style = styleInForce(pencil);
    if (parent != nullptr && set.valuesMm == parent->recipe().measurements.valuesMm &&
        !makesAnotherBlock(style, parent->recipe().style)) {
        PencilBase base;
        base.body = bodyOf(set, base.problems);
        base.pattern = parent->pattern();
        base.alterations = pencil.alterations;
        return base;
    }
    PencilBase base = draftedBase(set, style);
    if (parent != nullptr) base.alterations = parent->recipe().alterations;
    base.alterations.insert(base.alterations.end(), pencil.alterations.begin(),
                            pencil.alterations.end());
    return base;
}

GarmentOutcome pencilOutcome(const Folio& folio, const Pencil& pencil) {
    PencilBase base = baseOf(folio, pencil);
    GarmentOutcome outcome;
    outcome.body = std::move(base.body);
    outcome.problems = std::move(base.problems);
    if (!base.pattern) return outcome;
    AlteredPattern altered = applyAlterations(*base.pattern, base.alterations);
    outcome.pattern = std::move(altered.pattern);
    outcome.problems.insert(outcome.problems.end(), altered.problems.begin(),
                            altered.problems.end());
    return traced(std::move(outcome), styleInForce(pencil).allowance);
}

GarmentOutcome revisionOutcome(const Revision& revision) {
    GarmentOutcome outcome;
    outcome.body = bodyOf(revision.recipe().measurements, outcome.problems);
    outcome.pattern = revision.pattern();
    return traced(std::move(outcome), revision.recipe().style.allowance);
}

}  // namespace coutil
