#include "core/making_up/room_for_channel.h"

#include <algorithm>
#include <limits>
#include <vector>

#include "core/geometry/tolerances.h"
#include "core/making_up/panel_frame.h"

namespace coutil {
namespace {

constexpr double kBetweenPlacesMm = 8;

double distanceMm(const std::vector<Point>& chain, const Point& point) {
    double least = std::numeric_limits<double>::max();
    for (std::size_t k = 0; k + 1 < chain.size(); ++k) {
        const Vector along = chain[k + 1] - chain[k];
        const double share =
            std::clamp((point - chain[k]).dot(along) / along.squaredNorm(), 0.0, 1.0);
        least = std::min(least, (point - chain[k] - share * along).norm());
    }
    return least;
}

// Whether the points keep the distance from an upward edge and lie on the right side of it.
bool areInside(const std::vector<Point>& points, const Edge& edge, double leastMm) {
    const std::vector<Point> chain = flattened(upwardsOf(edge), tolerance::kChangedLineMm / 2);
    return std::ranges::all_of(
        points, [&](const Point& point) { return distanceMm(chain, point) >= leastMm; });
}

std::vector<Point> placesOn(const Path& line) {
    std::vector<Point> points;
    const double wholeMm = lengthMm(line);
    const int count = std::max(2, static_cast<int>(wholeMm / kBetweenPlacesMm));
    points.reserve(static_cast<std::size_t>(count) + 1);
    for (int k = 0; k <= count; ++k) points.push_back(pointAtLength(line, wholeMm * k / count));
    return points;
}

// Between front and back edge at the middle of the line; with the distances kept everywhere it then
// is so everywhere.
bool isBetweenEdges(const Panel& panel, const Point& middle) {
    const auto crossing = crossingAtHeight(panel, middle.y());
    return !crossing || (middle.x() > crossing->front.x() && middle.x() < crossing->back.x());
}

}  // namespace

bool hasRoomFor(const Pattern& pattern, const Channel& channel) {
    const Panel& panel = pattern.panels[channel.panel];
    const auto frame = frameOf(panel);
    if (!frame) return false;
    const bool isInMiddleOfEdge =
        channel.isOnFold || (!channel.seam.empty() && channel.carrier == ChannelCarrier::tape);
    const std::vector<Point> places = placesOn(channel.line);
    const double leastMm = channel.widthMm / 2 - tolerance::kChangedLineMm;
    if (!isInMiddleOfEdge && !isBetweenEdges(panel, places[places.size() / 2])) return false;
    for (const std::size_t edge : {frame->front, frame->back}) {
        if (isInMiddleOfEdge && panel.edges[edge].name == channel.edge) continue;
        if (!areInside(places, panel.edges[edge], leastMm)) return false;
    }
    return true;
}

}  // namespace coutil
