#pragma once

#include "core/geometry/point.h"

namespace coutil {

// a.x b.y - a.y b.x: positive where b points to the left of a; twice the area of their triangle.
[[nodiscard]] inline double crossProduct(const Vector& a, const Vector& b) {
    return a.x() * b.y() - a.y() * b.x();
}

}  // namespace coutil
