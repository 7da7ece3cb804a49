#include "ui/words/changes_told.h"

#include <algorithm>
#include <span>

#include "ui/words/alteration_sentence.h"

namespace coutil {

namespace {

// A recipe goes on where its parent's ends; one that does not is told as a whole.
std::span<const Alteration> beyond(std::span<const Alteration> parents,
                                   std::span<const Alteration> all) {
    const auto common = std::ranges::mismatch(parents, all);
    if (common.in1 != parents.end()) return all;
    return all.subspan(static_cast<std::size_t>(common.in2 - all.begin()));
}

// The style that was in force at a revision; of a block, that it was drafted by.
const Style& styleBefore(const Revision* parent, const Style& own) {
    return parent == nullptr ? own : parent->recipe().style;
}

}  // namespace

QStringList changesOf(const Folio& folio, const Revision& revision, LengthUnit unit) {
    const Revision* parent = findRevision(folio, revision.content().parent);
    const std::vector<Alteration>& all = revision.recipe().alterations;
    const auto own = parent == nullptr ? std::span<const Alteration>(all)
                                       : beyond(parent->recipe().alterations, all);
    return alterationSentences(own, {&folio, &styleBefore(parent, revision.recipe().style)}, unit);
}

QStringList changesOf(const Folio& folio, const Pencil& pencil, LengthUnit unit) {
    const Revision* parent = findRevision(folio, pencil.parent);
    return alterationSentences(pencil.alterations, {&folio, &styleBefore(parent, pencil.style)},
                               unit);
}

}  // namespace coutil
