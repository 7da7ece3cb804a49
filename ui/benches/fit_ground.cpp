#include "ui/benches/fit_ground.h"

#include <algorithm>

#include "core/revision/pencil_outcome.h"
#include "ui/document/folio_document.h"

namespace coutil {

namespace {

Pencil withoutShapes(Pencil pencil) {
    std::erase_if(pencil.alterations, [](const Alteration& each) {
        return !std::holds_alternative<ChangeStyle>(each.change) &&
               !std::holds_alternative<TakeMeasurements>(each.change);
    });
    pencil.setAside.clear();
    return pencil;
}

}  // namespace

const Pattern* FitGround::of(const FolioDocument& document) {
    if (document.pencil() == nullptr) return nullptr;
    Pencil pencil = withoutShapes(*document.pencil());
    const MeasurementSet* found = document.measurementSet();
    MeasurementSet set = found == nullptr ? MeasurementSet{} : *found;
    if (pencil_ != pencil || set_ != set) {
        pattern_ = baseOf(document.folio(), pencil).pattern;
        pencil_ = std::move(pencil);
        set_ = std::move(set);
    }
    return pattern_ ? &*pattern_ : nullptr;
}

}  // namespace coutil
