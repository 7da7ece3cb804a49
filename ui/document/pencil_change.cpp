#include "ui/document/pencil_change.h"

#include <algorithm>
#include <utility>

#include "core/revision/begin_pencil.h"
#include "core/store/uuid.h"
#include "ui/document/new_folio.h"

namespace coutil {

namespace {

const Garment* garmentIn(const Folio& folio, int garmentIndex) {
    const auto index = static_cast<std::size_t>(garmentIndex);
    return index < folio.garments.size() ? &folio.garments[index] : nullptr;
}

const Pencil* pencilIn(const Folio& folio, int garmentIndex, const std::string& id) {
    const Garment* garment = garmentIn(folio, garmentIndex);
    return garment != nullptr ? findPencil(*garment, id) : nullptr;
}

// True where the set belongs to the pencil alone: to a block, or taken since the parent.
bool mayCorrect(const Pencil* pencil) {
    return pencil != nullptr &&
           (pencil->parent.empty() || measurementSetInForce(*pencil) != pencil->measurementSet);
}

}  // namespace

ShownState shownAfter(const Folio& before, const Folio& after, int garmentIndex,
                      const ShownState& shown) {
    const Garment* old = garmentIn(before, garmentIndex);
    const Garment* now = garmentIn(after, garmentIndex);
    if (old == nullptr || now == nullptr || old->id != now->id) return shown;
    const Pencil* known = findPencil(*old, shown.pencil);
    if (known == nullptr && findPencil(*now, shown.pencil) != nullptr) return shown;
    for (const Pencil& pencil : now->pencils) {
        if (findPencil(*old, pencil.id) == nullptr) return {pencil.id, {}};
    }
    const bool isRubbedOut = known != nullptr && findPencil(*now, shown.pencil) == nullptr;
    if (isRubbedOut && findRevision(after, known->parent) != nullptr) return {{}, known->parent};
    return shown;
}

PencilChange withPencilChanged(const Folio& folio, int garmentIndex, const std::string& shown,
                               const Revision* revision, const std::function<void(Pencil&)>& edit) {
    PencilChange changed{.folio = folio, .pencil = {}, .isBegun = revision != nullptr};
    const auto index = static_cast<std::size_t>(garmentIndex);
    if (index >= changed.folio.garments.size()) return changed;
    std::vector<Pencil>& pencils = changed.folio.garments[index].pencils;
    if (revision != nullptr) pencils.push_back(pencilFrom(*revision, {newUuid(), today()}));
    const auto place =
        revision != nullptr ? pencils.end() - 1 : std::ranges::find(pencils, shown, &Pencil::id);
    if (place == pencils.end()) return changed;
    edit(*place);
    changed.pencil = place->id;
    return changed;
}

PencilChange withNewSet(const Folio& folio, int garmentIndex, const std::string& shown,
                        const Revision* revision, const MeasurementSet& source) {
    MeasurementSet taken = source;
    taken.id = newUuid();
    taken.takenOn = today();
    taken.note.clear();
    const std::string id = taken.id;
    Folio after = folio;
    after.measurementSets.push_back(std::move(taken));
    std::ranges::stable_sort(after.measurementSets, {}, &MeasurementSet::takenOn);
    return withPencilChanged(after, garmentIndex, shown, revision,
                             [&](Pencil& pencil) { setMeasurementSet(pencil, id); });
}

PencilChange withReadings(const Folio& folio, int garmentIndex, const std::string& shown,
                          const Revision* revision, const MeasurementSet& set) {
    Folio after = folio;
    const bool isOnlyShown = shown.empty() && revision == nullptr;
    if (isOnlyShown || mayCorrect(pencilIn(folio, garmentIndex, shown))) {
        const auto place = std::ranges::find(after.measurementSets, set.id, &MeasurementSet::id);
        if (place != after.measurementSets.end()) *place = set;
        return {.folio = std::move(after), .pencil = shown};
    }
    return withNewSet(folio, garmentIndex, shown, revision, set);
}

}  // namespace coutil
