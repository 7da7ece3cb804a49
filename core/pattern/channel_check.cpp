#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/every_check.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

constexpr double kStationMm = 4;

// A place on an edge with how far along it lies (by chords of a few mm) and how it bends there.
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

// The most that a stretch leaves its chord, and the tightest bend in it.
struct Bow {
    double chordErrorMm = 0;
    double alongMm = 0;
    Point at = Point::Zero();
    double curvaturePerMm = 0;
};

Bow bowOf(const std::vector<Station>& stations, std::size_t first, std::size_t last,
          const Point& end) {
    Bow bow;
    const Point& start = stations[first].at;
    const Vector along = (end - start).normalized();
    for (std::size_t i = first; i <= last; ++i) {
        const Station& station = stations[i];
        bow.curvaturePerMm = std::max(bow.curvaturePerMm, station.curvaturePerMm);
        const double offMm = std::abs(crossProduct(along, station.at - start));
        if (offMm <= bow.chordErrorMm) continue;
        bow.chordErrorMm = offMm;
        bow.alongMm = station.alongMm;
        bow.at = station.at;
    }
    return bow;
}

bool isTooCurved(const Bow& bow) {
    return bow.chordErrorMm >= tolerance::kChannelChordMm &&
           bow.curvaturePerMm * tolerance::kChannelRadiusMm >= 1;
}

// The worst of all stretches of 100 mm that are too curved; of a shorter edge the whole.
std::optional<Bow> worstBow(const Path& path) {
    const std::vector<Station> stations = stationsOf(path);
    std::optional<Bow> worst;
    std::size_t last = 0;
    for (std::size_t first = 0; first < stations.size(); ++first) {
        const double untilMm = stations[first].alongMm + tolerance::kChannelStretchMm;
        const bool isOver = untilMm > stations.back().alongMm;
        if (isOver && first > 0) break;
        while (last + 1 < stations.size() && stations[last + 1].alongMm <= untilMm) ++last;
        Point end = stations[last].at;
        if (last + 1 < stations.size()) {
            const Station& next = stations[last + 1];
            const double share =
                (untilMm - stations[last].alongMm) / (next.alongMm - stations[last].alongMm);
            end += share * (next.at - end);
        }
        const Bow bow = bowOf(stations, first, last, end);
        if (isTooCurved(bow) && (!worst || bow.chordErrorMm > worst->chordErrorMm)) worst = bow;
    }
    return worst;
}

Problem problemOf(const Seam& seam, const Panel& panel, const Edge& edge, const Bow& bow) {
    Problem problem{.code = ProblemCode::seamTooCurved,
                    .severity = Severity::note,
                    .subject = seam.name,
                    .panel = panelKey(panel),
                    .at = bow.at,
                    .figures = {{"value", bow.chordErrorMm},
                                {"limit", tolerance::kChannelChordMm},
                                {"radius", 1 / bow.curvaturePerMm}}};
    if (edge.waistMarkAtMm) {
        const double fromMarkMm = bow.alongMm - *edge.waistMarkAtMm;
        problem.figures.push_back({"position", edge.runsUp ? fromMarkMm : -fromMarkMm});
    }
    return problem;
}

}  // namespace

std::vector<Problem> checkChannels(const Pattern& pattern) {
    std::vector<Problem> problems;
    for (const Seam& seam : pattern.seams) {
        const EdgeRef* worstEdge = nullptr;
        std::optional<Bow> worst;
        for (const EdgeRef* ref : {&seam.front, &seam.back}) {
            const auto bow = worstBow(edgeAt(pattern, *ref).path);
            if (!bow || (worst && bow->chordErrorMm <= worst->chordErrorMm)) continue;
            worst = bow;
            worstEdge = ref;
        }
        if (worstEdge == nullptr) continue;
        problems.push_back(
            problemOf(seam, pattern.panels[worstEdge->panel], edgeAt(pattern, *worstEdge), *worst));
    }
    return problems;
}

}  // namespace coutil
