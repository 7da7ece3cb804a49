#include "ui/document/fitting_change.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/alterations/apply_alterations.h"
#include "core/revision/begin_pencil.h"
#include "core/revision/pencil_outcome.h"
#include "core/store/uuid.h"
#include "ui/document/new_folio.h"

namespace coutil {

namespace {

using Ids = std::set<std::string>;

Ids idsOf(const std::vector<Mark>& marks) {
    Ids ids;
    for (const Mark& mark : marks) ids.insert(mark.id);
    return ids;
}

bool cameFrom(const Alteration& alteration, const Ids& marks) {
    return std::ranges::any_of(alteration.marks,
                               [&](const std::string& id) { return marks.contains(id); });
}

Garment* garmentIn(Folio& folio, int index) {
    const auto place = static_cast<std::size_t>(index);
    return place < folio.garments.size() ? &folio.garments[place] : nullptr;
}

void sortByDate(std::vector<Fitting>& fittings) {
    std::ranges::stable_sort(fittings, {}, &Fitting::heldOn);
}

// What the marks were read on: everything the pencil holds but what they asked for themselves.
std::optional<Pattern> patternReadOn(const Folio& folio, Pencil pencil, const Ids& marks) {
    std::erase_if(pencil.alterations, [&](const Alteration& a) { return cameFrom(a, marks); });
    PencilBase base = baseOf(folio, pencil);
    if (!base.pattern || base.alterations.empty()) return std::move(base.pattern);
    return applyAlterations(*base.pattern, base.alterations).pattern;
}

// What the maker switched off stays off.
void keepSwitches(std::vector<Alteration>& made, const std::vector<Alteration>& before) {
    for (Alteration& each : made) {
        const auto old = std::ranges::find(before, each.id, &Alteration::id);
        if (old != before.end() && each.isOn) each.isOn = old->isOn;
    }
}

void replaceAlterations(std::vector<Alteration>& all, const Ids& marks,
                        std::vector<Alteration> made) {
    const auto isOld = [&](const Alteration& each) { return cameFrom(each, marks); };
    const auto first = std::ranges::find_if(all, isOld);
    const auto at = first - all.begin();
    std::erase_if(all, isOld);
    all.insert(all.begin() + at, std::make_move_iterator(made.begin()),
               std::make_move_iterator(made.end()));
}

}  // namespace

Folio withFittingAdded(const Folio& folio, int garmentIndex, const Fitting& fitting) {
    Folio after = folio;
    if (Garment* garment = garmentIn(after, garmentIndex)) {
        garment->fittings.push_back(fitting);
        sortByDate(garment->fittings);
    }
    return after;
}

Folio withFittingRemoved(const Folio& folio, int garmentIndex, const std::string& id) {
    Folio after = folio;
    Garment* garment = garmentIn(after, garmentIndex);
    const Fitting* found = garment == nullptr ? nullptr : findFitting(*garment, id);
    if (found == nullptr) return after;
    const Fitting gone = *found;
    const Ids marks = idsOf(gone.marks);
    std::erase_if(garment->fittings, [&](const Fitting& each) { return each.id == id; });
    for (Pencil& pencil : garment->pencils)
        std::erase_if(pencil.alterations, [&](const Alteration& a) { return cameFrom(a, marks); });
    std::erase_if(after.photos, [&](const Shared<Photo>& photo) {
        const bool wasHere = std::ranges::find(gone.photos, photo->id) != gone.photos.end();
        return wasHere && std::ranges::none_of(after.garments, [&](const Garment& each) {
                   return std::ranges::any_of(each.fittings, [&](const Fitting& fitting) {
                       return std::ranges::find(fitting.photos, photo->id) != fitting.photos.end();
                   });
               });
    });
    return after;
}

bool isDrawnOn(const Fitting& fitting, const Pencil& pencil) {
    const bool isTried =
        fitting.revision.empty() ? pencil.id == fitting.pencil : pencil.parent == fitting.revision;
    return isTried || !alterationsOf(pencil, fitting.marks).empty();
}

bool isDrawnOn(const Fitting& fitting, const Revision& revision) {
    return revision.digest() == fitting.revision;
}

std::vector<Alteration> alterationsOf(const Pencil& pencil, const std::vector<Mark>& marks) {
    const Ids ids = idsOf(marks);
    std::vector<Alteration> found;
    std::ranges::copy_if(pencil.alterations, std::back_inserter(found),
                         [&](const Alteration& each) { return cameFrom(each, ids); });
    return found;
}

FittingChange withFittingChanged(const Folio& folio, int garmentIndex, const std::string& shown,
                                 const Revision* revision, const Fitting& after) {
    FittingChange changed{.change = {.folio = folio, .pencil = shown}, .problems = {}};
    Garment* garment = garmentIn(changed.change.folio, garmentIndex);
    if (garment == nullptr) return changed;
    const auto place = std::ranges::find(garment->fittings, after.id, &Fitting::id);
    if (place == garment->fittings.end()) return changed;
    Ids ids = idsOf(place->marks);
    ids.merge(idsOf(after.marks));
    const bool hasSameMarks = place->marks == after.marks;
    const std::vector<Mark> marksBefore = place->marks;
    *place = after;
    sortByDate(garment->fittings);

    const Pencil* found = revision == nullptr ? findPencil(*garment, shown) : nullptr;
    if (revision == nullptr && found == nullptr) return changed;
    const Pencil pencil =
        revision != nullptr ? pencilFrom(*revision, {newUuid(), today()}) : *found;
    const bool isDrawn = revision != nullptr ? isDrawnOn(after, *revision)
                                             : isDrawnOn(after, pencil) ||
                                                   !alterationsOf(pencil, marksBefore).empty();
    if (!isDrawn || hasSameMarks) return changed;
    const auto readOn = patternReadOn(folio, pencil, ids);
    if (!readOn) return changed;

    Pencil drawn = pencil;
    std::vector<Alteration> before;
    std::ranges::copy_if(pencil.alterations, std::back_inserter(before),
                         [&](const Alteration& each) { return cameFrom(each, ids); });
    FromMarks made = alterationsFrom(after.marks, *readOn, before, [] { return newUuid(); });
    changed.problems = std::move(made.problems);
    keepSwitches(made.alterations, before);
    if (revision != nullptr && made.alterations.empty()) return changed;
    replaceAlterations(drawn.alterations, ids, std::move(made.alterations));
    if (revision != nullptr) {
        garment->pencils.push_back(drawn);
    } else {
        *std::ranges::find(garment->pencils, drawn.id, &Pencil::id) = drawn;
    }
    changed.change.pencil = drawn.id;
    changed.change.isBegun = revision != nullptr;
    return changed;
}

}  // namespace coutil
