#include "core/revision/recipe.h"

#include <algorithm>

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, const std::string& subject) {
    Problem problem;
    problem.code = code;
    problem.subject = subject;
    return problem;
}

bool takesMeasurements(const Alteration& alteration) {
    return alteration.isOn && std::holds_alternative<TakeMeasurements>(alteration.change);
}

}  // namespace

const MeasurementSet* setInForce(const Folio& folio, const Pencil& pencil) {
    const Revision* parent = pencil.parent.empty() ? nullptr : findRevision(folio, pencil.parent);
    if (parent != nullptr && std::ranges::none_of(pencil.alterations, takesMeasurements))
        return &parent->recipe().measurements;
    return findMeasurementSet(folio, measurementSetInForce(pencil));
}

Outcome<Recipe> recipeOf(const Folio& folio, const Pencil& pencil) {
    const Revision* parent = pencil.parent.empty() ? nullptr : findRevision(folio, pencil.parent);
    if (parent == nullptr && !pencil.parent.empty())
        return problemOf(ProblemCode::revisionParentMissing, pencil.name);
    const MeasurementSet* set = setInForce(folio, pencil);
    if (set == nullptr)
        return problemOf(ProblemCode::measurementMissing, measurementSetInForce(pencil));
    Recipe recipe{*set, styleInForce(pencil), {}};
    if (parent != nullptr) recipe.alterations = parent->recipe().alterations;
    std::ranges::copy_if(pencil.alterations, std::back_inserter(recipe.alterations),
                         &Alteration::isOn);
    return recipe;
}

bool makesAnotherBlock(const Style& now, const Style& before) {
    Style alike = now;
    alike.allowance = before.allowance;
    return alike != before;
}

}  // namespace coutil
