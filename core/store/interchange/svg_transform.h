#pragma once

#include <optional>
#include <string_view>

#include "core/geometry/path.h"

namespace coutil::interchange {

// (x, y) goes to (a x + c y + e, b x + d y + f), as SVG's matrix().
struct SvgTransform {
    double a = 1;
    double b = 0;
    double c = 0;
    double d = 1;
    double e = 0;
    double f = 0;
};

// What a "transform" says: matrix, translate, scale, rotate, skewX, skewY, any number of them, the
// last one acting first. Nothing for anything else.
[[nodiscard]] std::optional<SvgTransform> readTransform(std::string_view text);

[[nodiscard]] SvgTransform after(const SvgTransform& outer, const SvgTransform& inner);
[[nodiscard]] Point moved(const Point& point, const SvgTransform& by);
[[nodiscard]] Path moved(const Path& path, const SvgTransform& by);

}  // namespace coutil::interchange
