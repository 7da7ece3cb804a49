#include "ui/benches/measurement_groups.h"

#include <QCoreApplication>
#include <algorithm>

namespace coutil {

namespace {

bool isFromWaist(Measurement id) {
    using enum Measurement;
    switch (id) {
        case sideWaistToHip:
        case waistToUnderBust:
        case waistToBust:
        case waistToArmpit:
        case waistToHighHip:
        case waistToHip:
        case waistToLap:
            return true;
        default:
            return false;
    }
}

}  // namespace

std::vector<MeasurementGroup> measurementGroups() {
    const auto words = [](const char* text) {
        return QCoreApplication::translate("MeasurementGroups", text);
    };
    std::vector<MeasurementGroup> groups{
        {words(QT_TRANSLATE_NOOP("MeasurementGroups", "Girths")), {}},
        {words(QT_TRANSLATE_NOOP("MeasurementGroups", "Heights from the waist")), {}},
        {words(QT_TRANSLATE_NOOP("MeasurementGroups", "Widths and lengths")), {}}};
    for (const MeasurementInfo& info : measurementCatalogue()) {
        const bool isGirth = info.kind == MeasurementKind::girth;
        groups[isGirth ? 0 : isFromWaist(info.id) ? 1 : 2].ids.push_back(info.id);
    }
    for (MeasurementGroup& group : groups) {
        std::stable_partition(group.ids.begin(), group.ids.end(),
                              [](Measurement id) { return infoOf(id).isNeededForCorset; });
    }
    return groups;
}

}  // namespace coutil
