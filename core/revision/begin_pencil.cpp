#include "core/revision/begin_pencil.h"

#include <utility>

namespace coutil {
namespace {

// Several changes of one kind in a row are one: only the last is in force.
template <class Kind>
void putLast(Pencil& pencil, Kind change) {
    if (!pencil.alterations.empty() &&
        std::holds_alternative<Kind>(pencil.alterations.back().change)) {
        pencil.alterations.back().change = std::move(change);
        pencil.alterations.back().isOn = true;
        return;
    }
    Alteration made;
    made.id = pencil.id + "-" + std::to_string(pencil.alterations.size() + 1);
    made.change = std::move(change);
    pencil.alterations.push_back(std::move(made));
}

}  // namespace

Pencil pencilFrom(const Revision& revision, const NewPencil& pencil) {
    return {.id = pencil.id,
            .startedOn = pencil.startedOn,
            .measurementSet = revision.recipe().measurements.id,
            .style = revision.recipe().style,
            .name = pencil.name,
            .parent = revision.digest()};
}

void setStyle(Pencil& pencil, const Style& style) {
    if (pencil.parent.empty()) {
        pencil.style = style;
    } else {
        putLast(pencil, ChangeStyle{style});
    }
}

void setMeasurementSet(Pencil& pencil, const std::string& set) {
    if (pencil.parent.empty()) {
        pencil.measurementSet = set;
    } else {
        putLast(pencil, TakeMeasurements{set});
    }
}

}  // namespace coutil
