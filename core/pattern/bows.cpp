#include "core/pattern/bows.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/cross_product.h"

namespace coutil {
namespace {

constexpr double kStationMm = 4;

// A place on a line with how far along it lies (by chords of a few mm) and how it bends there.
struct Station {
    Point at = Point::Zero();
    double alongMm = 0;
    double curvaturePerMm = 0;
};

std::vector<Station> stationsOf(const Path& path) {
    std::vector<Station> stations;
    for (const Cubic& c : path.pieces) {
        const double legsMm = (c.p1 - c.p0).norm() + (c.p2 - c.p1).norm() + (c.p3 - c.p2).norm();
        const int count = std::max(1, static_cast<int>(std::ceil(legsMm / kStationMm)));
        for (int k = 0; k <= count; ++k) {
            const double t = static_cast<double>(k) / count;
            Station station{pointAt(c, t), 0, std::abs(coutil::curvaturePerMmAt(c, t))};
            if (!stations.empty()) {
                station.alongMm =
                    stations.back().alongMm + (station.at - stations.back().at).norm();
            }
            stations.push_back(station);
        }
    }
    return stations;
}

Bow bowOf(const std::vector<Station>& stations, std::size_t first, std::size_t last,
          const Point& end) {
    Bow bow{.at = stations[first].at, .curvatureAt = stations[first].at};
    bow.alongMm = bow.curvatureAlongMm = stations[first].alongMm;
    const Point& start = stations[first].at;
    const Vector along = (end - start).normalized();
    for (std::size_t i = first; i <= last; ++i) {
        const Station& station = stations[i];
        if (station.curvaturePerMm > bow.curvaturePerMm) {
            bow.curvaturePerMm = station.curvaturePerMm;
            bow.curvatureAlongMm = station.alongMm;
            bow.curvatureAt = station.at;
        }
        const double offMm = std::abs(crossProduct(along, station.at - start));
        if (offMm <= bow.chordErrorMm) continue;
        bow.chordErrorMm = offMm;
        bow.alongMm = station.alongMm;
        bow.at = station.at;
    }
    return bow;
}

}  // namespace

std::vector<Bow> bowsOf(const Path& path, double stretchMm) {
    const std::vector<Station> stations = stationsOf(path);
    std::vector<Bow> bows;
    std::size_t last = 0;
    for (std::size_t first = 0; first < stations.size(); ++first) {
        const double untilMm = stations[first].alongMm + stretchMm;
        if (untilMm > stations.back().alongMm && first > 0) break;
        while (last + 1 < stations.size() && stations[last + 1].alongMm <= untilMm) ++last;
        Point end = stations[last].at;
        if (last + 1 < stations.size()) {
            const Station& next = stations[last + 1];
            const double share =
                (untilMm - stations[last].alongMm) / (next.alongMm - stations[last].alongMm);
            end += share * (next.at - end);
        }
        bows.push_back(bowOf(stations, first, last, end));
    }
    return bows;
}

}  // namespace coutil
