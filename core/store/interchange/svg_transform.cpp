#include "core/store/interchange/svg_transform.h"

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "core/store/interchange/svg_numbers.h"

namespace coutil::interchange {

namespace {

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

SvgTransform translation(double x, double y) { return {1, 0, 0, 1, x, y}; }

SvgTransform rotation(double degrees) {
    const double c = std::cos(radians(degrees));
    const double s = std::sin(radians(degrees));
    return {c, s, -s, c, 0, 0};
}

std::optional<SvgTransform> stepOf(const std::string& name, const std::vector<double>& v) {
    const std::size_t n = v.size();
    if (name == "matrix" && n == 6) return SvgTransform{v[0], v[1], v[2], v[3], v[4], v[5]};
    if (name == "translate" && (n == 1 || n == 2)) return translation(v[0], n == 2 ? v[1] : 0);
    if (name == "scale" && (n == 1 || n == 2)) {
        return SvgTransform{v[0], 0, 0, n == 2 ? v[1] : v[0], 0, 0};
    }
    if (name == "rotate" && n == 1) return rotation(v[0]);
    if (name == "rotate" && n == 3) {
        return after(translation(v[1], v[2]), after(rotation(v[0]), translation(-v[1], -v[2])));
    }
    if (name == "skewX" && n == 1) return SvgTransform{1, 0, std::tan(radians(v[0])), 1, 0, 0};
    if (name == "skewY" && n == 1) return SvgTransform{1, std::tan(radians(v[0])), 0, 1, 0, 0};
    return std::nullopt;
}

}  // namespace

std::optional<SvgTransform> readTransform(std::string_view text) {
    constexpr std::string_view kBetween = " \t\r\n,";
    SvgTransform all;
    for (;;) {
        const auto start = text.find_first_not_of(kBetween);
        if (start == std::string_view::npos) return all;
        const auto open = text.find('(', start);
        const auto close = text.find(')', start);
        if (open == std::string_view::npos || close == std::string_view::npos || close < open) {
            return std::nullopt;
        }
        std::string name(text.substr(start, open - start));
        while (!name.empty() && name.back() == ' ') name.pop_back();
        SvgNumbers numbers(text.substr(open + 1, close - open - 1));
        std::vector<double> values;
        while (const auto number = numbers.next()) values.push_back(*number);
        const auto step = numbers.isAtEnd() ? stepOf(name, values) : std::nullopt;
        if (!step) return std::nullopt;
        all = after(all, *step);
        text.remove_prefix(close + 1);
    }
}

SvgTransform after(const SvgTransform& o, const SvgTransform& i) {
    return {o.a * i.a + o.c * i.b, o.b * i.a + o.d * i.b,       o.a * i.c + o.c * i.d,
            o.b * i.c + o.d * i.d, o.a * i.e + o.c * i.f + o.e, o.b * i.e + o.d * i.f + o.f};
}

Point moved(const Point& p, const SvgTransform& by) {
    return {by.a * p.x() + by.c * p.y() + by.e, by.b * p.x() + by.d * p.y() + by.f};
}

Path moved(const Path& path, const SvgTransform& by) {
    Path result = path;
    for (Cubic& c : result.pieces) {
        c = {moved(c.p0, by), moved(c.p1, by), moved(c.p2, by), moved(c.p3, by)};
    }
    return result;
}

}  // namespace coutil::interchange
