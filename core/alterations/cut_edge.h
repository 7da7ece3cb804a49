#pragma once

#include <optional>

#include "core/alterations/upward_edge.h"

namespace coutil {

// The length from the start of an upward path to where it crosses the waist (y = 0), the crossing
// nearest to `near`; nothing where it does not cross.
[[nodiscard]] std::optional<double> waistOnMm(const Path& upwards, const Point& near);

// An upward edge cut, or run on straight, so that it is `wanted` long over and under its waist
// mark. An end that is as wanted within tolerance::kSettledLengthMm stays bit for bit; the other
// lengths are kept to that.
[[nodiscard]] UpwardEdge cutToLengths(const UpwardEdge& edge, const SeamLengths& wanted);

}  // namespace coutil
