#pragma once

#include "core/pattern/pattern.h"

namespace coutil {

// The farthest that the outlines of two patterns lie apart, mm, edge by edge, to
// tolerance::kCheckFlatnessMm; infinite where their panels or edges are not the same in number.
[[nodiscard]] double outlinesApartMm(const Pattern& first, const Pattern& second);

// The same of two paths.
[[nodiscard]] double pathsApartMm(const Path& first, const Path& second);

}  // namespace coutil
