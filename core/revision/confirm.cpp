#include "core/revision/confirm.h"

#include <algorithm>
#include <utility>

#include "core/measurements/iso_date.h"
#include "core/revision/ink.h"
#include "core/revision/ink_grid.h"
#include "core/revision/recipe.h"

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, const std::string& subject, const std::string& detail = {}) {
    Problem problem;
    problem.code = code;
    problem.subject = subject;
    problem.detail = detail;
    return problem;
}

std::vector<Problem> errorsOf(const DraftedPencil& drafted) {
    std::vector<Problem> errors;
    std::ranges::copy_if(drafted.problems, std::back_inserter(errors), isError);
    return errors;
}

std::vector<Problem> refused(const Garment& garment, std::vector<Problem> errors) {
    errors.insert(errors.begin(), problemOf(ProblemCode::confirmRefused, garment.name));
    return errors;
}

std::string accepted(const std::vector<Problem>& errors, const std::string& reason) {
    if (errors.empty()) return {};
    std::string text = reason;
    for (const Problem& error : errors) text.append("\n").append(acceptedErrorLine(error));
    return text;
}

int nextNumber(const Garment& garment) {
    int highest = 0;
    for (const Shared<Revision>& revision : garment.revisions)
        highest = std::max(highest, revision->number());
    return highest + 1;
}

}  // namespace

std::string acceptedErrorLine(const Problem& error) {
    std::string line(keyOf(error.code));
    for (const std::string* part : {&error.subject, &error.panel})
        if (!part->empty()) line.append(" ").append(*part);
    return line;
}

Outcome<Folio> pencilConfirmed(const Folio& folio, std::size_t garment, const std::string& pencil,
                               const DraftedPencil& drafted, const Confirmation& confirmation,
                               const WriteRecipe& writeRecipe) {
    const Garment& owner = folio.garments.at(garment);
    const Pencil* confirmed = findPencil(owner, pencil);
    if (confirmed == nullptr) return problemOf(ProblemCode::pencilMissing, owner.name);
    if (!isIsoDate(confirmation.on))
        return problemOf(ProblemCode::dateUnreadable, "date", confirmation.on);
    const std::vector<Problem> errors = errorsOf(drafted);
    const bool canBeInked = drafted.pattern && isInkable(*drafted.pattern);
    if (!canBeInked || (!errors.empty() && confirmation.reason.empty()))
        return Outcome<Folio>::failed(refused(owner, errors));
    Outcome<Recipe> recipe = recipeOf(folio, *confirmed);
    if (!recipe) return Outcome<Folio>::failed(std::move(recipe.problems));
    std::string recipeText = writeRecipe(*recipe);
    RevisionContent content{.garment = owner.id,
                            .number = nextNumber(owner),
                            .confirmedOn = confirmation.on,
                            .confirmedBy = confirmation.by,
                            .note = confirmation.note,
                            .parent = confirmed->parent,
                            .recipe = std::move(*recipe),
                            .pattern = *drafted.pattern,
                            .errorsAccepted = accepted(errors, confirmation.reason)};
    Folio next = folio;
    Garment& changed = next.garments[garment];
    changed.revisions.emplace_back(inkOver(std::move(content), std::move(recipeText)));
    std::erase_if(changed.pencils, [&](const Pencil& each) { return each.id == pencil; });
    return next;
}

}  // namespace coutil
