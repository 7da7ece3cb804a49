#include "core/alterations/bend_edge.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/alterations/height_warp.h"
#include "core/alterations/lay_on_waist.h"

namespace coutil {
namespace {

constexpr double kPartMm = 4;

Vector turned(const Vector& v, double rad) {
    return {v.x() * std::cos(rad) - v.y() * std::sin(rad),
            v.x() * std::sin(rad) + v.y() * std::cos(rad)};
}

}  // namespace

BentPath bentPath(const Path& path, double atMm, double overMm, double rad) {
    const double wholeMm = lengthMm(path);
    const double fromMm = std::max(0.0, atMm - overMm / 2);
    const double toMm = std::min(wholeMm, atMm + overMm / 2);
    const auto angleAt = [&](double mm) {
        return rad * smoothRise((mm - fromMm) / (toMm - fromMm)).valueMm;
    };
    const PathPosition start = positionAtLength(path, fromMm);
    BentPath bent;
    if (fromMm > 0) bent.path = between(path, {0, 0}, start);
    Point at = pointAt(path, start);
    const int parts = std::max(4, static_cast<int>(std::ceil((toMm - fromMm) / kPartMm)));
    const double stepMm = (toMm - fromMm) / parts;
    for (int k = 0; k < parts; ++k) {
        const double mm = fromMm + k * stepMm;
        const auto directionAt = [&](double beyondMm) {
            return turned(tangentAt(path, positionAtLength(path, mm + beyondMm)),
                          angleAt(mm + beyondMm));
        };
        // Gauss's rule of three points along the length.
        const double off = std::sqrt(0.6) / 2;
        const Vector chord = stepMm / 18 *
                             (5 * directionAt(stepMm * (0.5 - off)) + 8 * directionAt(stepMm / 2) +
                              5 * directionAt(stepMm * (0.5 + off)));
        const Point next = at + chord;
        bent.path.pieces.push_back({at, at + directionAt(0) * (stepMm / 3),
                                    next - directionAt(stepMm) * (stepMm / 3), next});
        at = next;
    }
    bent.beyond = turnAbout(Point::Zero(), rad);
    bent.beyond.shift = at - placed(pointAtLength(path, toMm), bent.beyond);
    if (toMm < wholeMm) {
        Path rest = placed(betweenLengths(path, toMm, wholeMm), bent.beyond);
        rest.pieces.front().p0 = at;
        bent.path = joined(bent.path, rest);
    }
    return bent;
}

}  // namespace coutil
