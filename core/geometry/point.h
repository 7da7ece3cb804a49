#pragma once

#include <Eigen/Core>

namespace coutil {

// A place in the plane, millimetres, y up.
using Point = Eigen::Vector2d;

// A displacement in millimetres, or a direction where a comment says "unit length".
using Vector = Eigen::Vector2d;

}  // namespace coutil
