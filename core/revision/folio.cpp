#include "core/revision/folio.h"

#include <algorithm>

namespace coutil {
namespace {

// The member of a list that `isIt` means; nullptr where there is none.
template <class List, class Test>
auto found(const List& list, const Test& isIt) -> const typename List::value_type* {
    const auto place = std::ranges::find_if(list, isIt);
    return place == list.end() ? nullptr : &*place;
}

// The last change of one kind that is switched on.
template <class Kind>
const Kind* lastOf(const std::vector<Alteration>& alterations) {
    const auto isIt = [](const Alteration& alteration) {
        return alteration.isOn && std::holds_alternative<Kind>(alteration.change);
    };
    const auto last = std::find_if(alterations.rbegin(), alterations.rend(), isIt);
    return last == alterations.rend() ? nullptr : std::get_if<Kind>(&last->change);
}

}  // namespace

const Style& styleInForce(const Pencil& pencil) {
    const auto* change = lastOf<ChangeStyle>(pencil.alterations);
    return change == nullptr ? pencil.style : change->style;
}

const std::string& measurementSetInForce(const Pencil& pencil) {
    const auto* change = lastOf<TakeMeasurements>(pencil.alterations);
    return change == nullptr ? pencil.measurementSet : change->measurementSet;
}

std::string_view keyOf(FittingKind kind) {
    return kind == FittingKind::posted ? "posted" : "in_person";
}

const MeasurementSet* findMeasurementSet(const Folio& folio, const std::string& id) {
    return found(folio.measurementSets, [&](const MeasurementSet& set) { return set.id == id; });
}

const Garment* findGarment(const Folio& folio, const std::string& name) {
    return found(folio.garments, [&](const Garment& garment) { return garment.name == name; });
}

const Revision* findRevision(const Folio& folio, const std::string& digest) {
    for (const Garment& garment : folio.garments) {
        for (const Shared<Revision>& revision : garment.revisions)
            if (revision->digest() == digest) return &*revision;
    }
    return nullptr;
}

const Revision* findRevision(const Garment& garment, int number) {
    const auto* revision =
        found(garment.revisions, [&](const auto& each) { return each->number() == number; });
    return revision == nullptr ? nullptr : &**revision;
}

const Pencil* latestPencil(const Garment& garment) {
    return garment.pencils.empty() ? nullptr : &garment.pencils.back();
}

const Pencil* findPencil(const Garment& garment, const std::string& id) {
    return found(garment.pencils, [&](const Pencil& pencil) { return pencil.id == id; });
}

const Fitting* findFitting(const Garment& garment, const std::string& id) {
    return found(garment.fittings, [&](const Fitting& fitting) { return fitting.id == id; });
}

const Photo* findPhoto(const Folio& folio, const std::string& id) {
    const auto* photo = found(folio.photos, [&](const auto& each) { return each->id == id; });
    return photo == nullptr ? nullptr : &**photo;
}

}  // namespace coutil
