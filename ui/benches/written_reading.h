#pragma once

#include <QString>
#include <string>

#include "core/units/length.h"

namespace coutil {

// The maker's own text for a reading of `mm`, made to mean the same in a set whose bare figures
// are of `setUnit` when it was typed in a field of `fieldUnit`: unchanged where it already does,
// else with the unit's name.
[[nodiscard]] std::string writtenReading(const QString& text, double mm, LengthUnit fieldUnit,
                                         LengthUnit setUnit);

}  // namespace coutil
