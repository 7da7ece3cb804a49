#pragma once

#include <string>
#include <vector>

#include "core/store/report_formats.h"
#include "core/units/length.h"

namespace coutil {

// What `check` prints for people: per garment its problems and what was estimated, one line each.
[[nodiscard]] std::string checkText(const std::vector<GarmentCheck>& checks, LengthUnit unit);

}  // namespace coutil
