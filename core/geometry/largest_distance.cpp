#include "core/geometry/largest_distance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/geometry/prepared_chain.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kStationMm = 4;

// A place on a path as one number: the index of its piece and the parameter on it.
double numberOf(const PathPosition& at) { return static_cast<double>(at.piece) + at.t; }

PathPosition placeOf(const Path& path, double number) {
    const double most = static_cast<double>(path.pieces.size());
    const double within = std::clamp(number, 0.0, most);
    const auto piece = std::min(static_cast<std::size_t>(within), path.pieces.size() - 1);
    return {piece, within - static_cast<double>(piece)};
}

std::vector<PathPosition> stationsOf(const Path& path) {
    std::vector<PathPosition> stations{{0, 0}};
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const Cubic& c = path.pieces[i];
        const double legsMm = (c.p1 - c.p0).norm() + (c.p2 - c.p1).norm() + (c.p3 - c.p2).norm();
        const auto count = std::max(1, static_cast<int>(std::ceil(legsMm / kStationMm)));
        for (int k = 1; k <= count; ++k) stations.push_back({i, static_cast<double>(k) / count});
    }
    return stations;
}

// The station that is farthest from the other path, by the other's chords.
struct Farthest {
    std::size_t station = 0;
    double aboutMm = 0;
};

Farthest farthestStation(const Path& path, const std::vector<PathPosition>& stations,
                         PreparedChain& other) {
    Farthest farthest;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const Point p = pointAt(path, stations[i]);
        const auto nearest = other.nearest(p, std::numeric_limits<double>::max());
        const double aboutMm = nearest ? (*nearest - p).norm() : 0;
        if (aboutMm > farthest.aboutMm) farthest = {i, aboutMm};
    }
    return farthest;
}

struct Seen {
    double distanceMm = -1;
    PathPosition from;
    PathPosition to;
};

// The largest distance between the neighbours of a station: golden section, from exact distances.
Seen refined(const Path& path, const std::vector<PathPosition>& stations, std::size_t station,
             const Path& other) {
    constexpr double kGolden = 0.6180339887498949;
    constexpr int kSteps = 14;  // a bracket of 8 mm comes down to 0.01 mm
    Seen best;
    const auto look = [&](double number) {
        const PathPosition from = placeOf(path, number);
        const ClosestPlace to = closestOn(other, pointAt(path, from));
        if (to.distanceMm > best.distanceMm) best = {to.distanceMm, from, to.position};
        return to.distanceMm;
    };
    look(numberOf(stations[station]));
    double low = numberOf(stations[station == 0 ? 0 : station - 1]);
    double high = numberOf(stations[std::min(station + 1, stations.size() - 1)]);
    double left = high - kGolden * (high - low);
    double right = low + kGolden * (high - low);
    double atLeft = look(left);
    double atRight = look(right);
    for (int step = 0; step < kSteps; ++step) {
        if (atLeft > atRight) {
            high = right;
            right = left;
            atRight = atLeft;
            left = high - kGolden * (high - low);
            atLeft = look(left);
        } else {
            low = left;
            left = right;
            atLeft = atRight;
            right = low + kGolden * (high - low);
            atRight = look(right);
        }
    }
    return best;
}

}  // namespace

LargestDistance largestDistance(const Path& first, const Path& second) {
    if (first == second) return {};
    PreparedChain firstChain(flattened(first, tolerance::kCheckFlatnessMm));
    PreparedChain secondChain(flattened(second, tolerance::kCheckFlatnessMm));
    const auto onFirst = stationsOf(first);
    const auto onSecond = stationsOf(second);
    const Farthest there = farthestStation(first, onFirst, secondChain);
    const Farthest back = farthestStation(second, onSecond, firstChain);
    // Only what may be the largest after a closer look is looked at closely.
    const double worthMm = std::max(there.aboutMm, back.aboutMm) - 4 * tolerance::kCheckFlatnessMm;
    LargestDistance largest{.distanceMm = -1};
    if (there.aboutMm >= worthMm) {
        const Seen seen = refined(first, onFirst, there.station, second);
        largest = {seen.distanceMm, seen.from, seen.to};
    }
    if (back.aboutMm >= worthMm) {
        const Seen seen = refined(second, onSecond, back.station, first);
        if (seen.distanceMm > largest.distanceMm) largest = {seen.distanceMm, seen.to, seen.from};
    }
    return largest;
}

}  // namespace coutil
