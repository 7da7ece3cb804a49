#include "core/comparison/alterations_between.h"

#include <algorithm>
#include <cstddef>

namespace coutil {
namespace {

// One revision or pencil on the way from the block to a state.
struct Step {
    std::string digest{};  // empty for a pencil
    std::vector<DatedAlteration> own{};
};

struct State {
    std::vector<Step> steps{};  // from the block on
    Style style{};
    MeasurementSet measurements{};
};

std::string garmentName(const Folio& folio, const std::string& id) {
    const auto found = std::ranges::find(folio.garments, id, &Garment::id);
    return found == folio.garments.end() ? std::string() : found->name;
}

std::vector<DatedAlteration> dated(const std::vector<Alteration>& alterations, std::size_t from,
                                   const DatedAlteration& head) {
    std::vector<DatedAlteration> own{};
    for (std::size_t i = from; i < alterations.size(); ++i) {
        if (!alterations[i].isOn) continue;
        own.push_back(head);
        own.back().alteration = alterations[i];
    }
    return own;
}

// A recipe begins with that of its parent.
std::size_t inheritedCount(const Revision& revision, const Revision* parent) {
    if (parent == nullptr) return 0;
    const auto& all = revision.recipe().alterations;
    const auto& before = parent->recipe().alterations;
    return static_cast<std::size_t>(std::ranges::mismatch(all, before).in1 - all.begin());
}

Step stepOf(const Folio& folio, const Revision& revision) {
    const RevisionContent& content = revision.content();
    const std::size_t from = inheritedCount(revision, findRevision(folio, content.parent));
    return {revision.digest(), dated(content.recipe.alterations, from,
                                     {.alteration = {},
                                      .revision = content.number,
                                      .garment = garmentName(folio, content.garment),
                                      .confirmedOn = content.confirmedOn,
                                      .note = content.note})};
}

// The revisions from the block to one, itself last. A chain of digests has no circle.
std::vector<Step> stepsTo(const Folio& folio, const std::string& digest) {
    std::vector<Step> steps{};
    const Revision* revision = digest.empty() ? nullptr : findRevision(folio, digest);
    while (revision != nullptr) {
        steps.push_back(stepOf(folio, *revision));
        const std::string& parent = revision->content().parent;
        revision = parent.empty() ? nullptr : findRevision(folio, parent);
    }
    std::ranges::reverse(steps);
    return steps;
}

State stateOfPencil(const Folio& folio, const std::string& id) {
    for (const Garment& garment : folio.garments) {
        const Pencil* pencil = findPencil(garment, id);
        if (pencil == nullptr) continue;
        State state{.steps = stepsTo(folio, pencil->parent),
                    .style = styleInForce(*pencil),
                    .measurements = {}};
        if (const auto* set = findMeasurementSet(folio, measurementSetInForce(*pencil)))
            state.measurements = *set;
        state.steps.push_back(
            {{}, dated(pencil->alterations, 0, {.alteration = {}, .garment = garment.name})});
        return state;
    }
    return {};
}

State stateOf(const Folio& folio, const StateRef& ref) {
    if (ref.digest.empty()) return stateOfPencil(folio, ref.pencil);
    const Revision* revision = findRevision(folio, ref.digest);
    if (revision == nullptr) return {};
    return {stepsTo(folio, ref.digest), revision->recipe().style, revision->recipe().measurements};
}

std::size_t sharedSteps(const std::vector<Step>& a, const std::vector<Step>& b) {
    std::size_t shared = 0;
    while (shared < std::min(a.size(), b.size()) && !a[shared].digest.empty() &&
           a[shared].digest == b[shared].digest)
        ++shared;
    return shared;
}

std::vector<DatedAlteration> from(const std::vector<Step>& steps, std::size_t first) {
    std::vector<DatedAlteration> all{};
    for (std::size_t i = first; i < steps.size(); ++i)
        all.insert(all.end(), steps[i].own.begin(), steps[i].own.end());
    return all;
}

Style withoutAllowance(Style style) {
    style.allowance = {};
    return style;
}

}  // namespace

AlterationsBetween alterationsBetween(const Folio& folio, const StateRef& a, const StateRef& b) {
    const State inA = stateOf(folio, a);
    const State inB = stateOf(folio, b);
    // One pencil twice: nothing lies between.
    if (a.digest.empty() && b.digest.empty() && a.pencil == b.pencil) {
        return {.commonAncestor =
                    inA.steps.size() > 1 ? inA.steps[inA.steps.size() - 2].digest : std::string(),
                .onlyInA = {},
                .onlyInB = {},
                .isSameBlock = true};
    }
    const std::size_t shared = sharedSteps(inA.steps, inB.steps);
    AlterationsBetween between;
    if (shared > 0) between.commonAncestor = inA.steps[shared - 1].digest;
    between.onlyInA = from(inA.steps, shared);
    between.onlyInB = from(inB.steps, shared);
    between.stylesDiffer = inA.style != inB.style;
    between.measurementsDiffer = inA.measurements.valuesMm != inB.measurements.valuesMm;
    between.isSameBlock =
        !between.measurementsDiffer && withoutAllowance(inA.style) == withoutAllowance(inB.style);
    return between;
}

}  // namespace coutil
