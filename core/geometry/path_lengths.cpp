#include <algorithm>

#include "core/geometry/arc_length.h"
#include "core/geometry/path.h"

namespace coutil {

double lengthMm(const Path& path) {
    double sum = 0;
    for (const Cubic& c : path.pieces) sum += lengthMm(c);
    return sum;
}

double lengthToMm(const Path& path, const PathPosition& position) {
    double sum = 0;
    for (std::size_t i = 0; i < position.piece; ++i) sum += lengthMm(path.pieces[i]);
    const Cubic& last = path.pieces[position.piece];
    return sum + (position.t >= 1 ? lengthMm(last) : partLengthMm(last, 0, position.t));
}

PathPosition positionAtLength(const Path& path, double fromStartMm) {
    double leftMm = fromStartMm;
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const double pieceMm = lengthMm(path.pieces[i]);
        if (leftMm < pieceMm) return {i, parameterAtLength(path.pieces[i], leftMm, pieceMm)};
        leftMm -= pieceMm;
    }
    return {path.pieces.size() - 1, 1};
}

Point pointAtLength(const Path& path, double fromStartMm) {
    return pointAt(path, positionAtLength(path, fromStartMm));
}

Path between(const Path& path, const PathPosition& first, const PathPosition& second) {
    if (first.piece >= second.piece) {
        return Path{{between(path.pieces[first.piece], first.t, std::max(first.t, second.t))}};
    }
    Path part;
    // A cut at the very end of a piece leaves no sliver of it.
    if (first.t < 1) part.pieces.push_back(between(path.pieces[first.piece], first.t, 1));
    for (std::size_t i = first.piece + 1; i < second.piece; ++i) {
        part.pieces.push_back(path.pieces[i]);
    }
    if (second.t > 0 || part.isEmpty()) {
        part.pieces.push_back(between(path.pieces[second.piece], 0, second.t));
    }
    return part;
}

Path betweenLengths(const Path& path, double firstMm, double secondMm) {
    return between(path, positionAtLength(path, firstMm), positionAtLength(path, secondMm));
}

}  // namespace coutil
