#include "core/making_up/panel_frame.h"

#include <algorithm>
#include <cmath>

namespace coutil {
namespace {

constexpr double kProlongedMm = 80;
constexpr double kStepMm = 6;

bool isLong(EdgeRole role) {
    return role == EdgeRole::seam || role == EdgeRole::opening || role == EdgeRole::fold;
}

Vector rightOf(const Vector& direction) { return {direction.y(), -direction.x()}; }

// Nothing where a parallel would run backwards.
std::optional<std::vector<Point>> parallelPoints(const Path& upwards, double toRightMm) {
    std::vector<Point> points;
    for (const Cubic& piece : upwards.pieces) {
        const double legsMm = (piece.p1 - piece.p0).norm() + (piece.p2 - piece.p1).norm() +
                              (piece.p3 - piece.p2).norm();
        const int count = std::max(1, static_cast<int>(std::ceil(legsMm / kStepMm)));
        for (int k = points.empty() ? 0 : 1; k <= count; ++k) {
            const double t = static_cast<double>(k) / count;
            // Left of a line that turns left is its hollow side.
            if (curvaturePerMmAt(piece, t) * -toRightMm >= 1) return std::nullopt;
            points.emplace_back(pointAt(piece, t) + toRightMm * rightOf(tangentAt(piece, t)));
        }
    }
    return points;
}

Path prolonged(const Path& line, const OpenEnds& ends) {
    Path longer = line;
    if (ends.atBottom) {
        const Point below = line.start() - kProlongedMm * tangentAt(line.pieces.front(), 0);
        longer = joined(straightPath(below, line.start()), longer);
    }
    if (ends.atTop) {
        const Point above = line.end() + kProlongedMm * tangentAt(line.pieces.back(), 1);
        longer = joined(longer, straightPath(line.end(), above));
    }
    return longer;
}

bool isStraight(const Path& path) {
    const Vector along = (path.end() - path.start()).normalized();
    return std::ranges::all_of(path.pieces, [&](const Cubic& piece) {
        for (const Point& p : {piece.p1, piece.p2, piece.p3}) {
            if (std::abs(rightOf(along).dot(p - path.start())) > 0) return false;
        }
        return true;
    });
}

}  // namespace

std::optional<PanelFrame> frameOf(const Panel& panel) {
    const std::size_t count = panel.edges.size();
    if (count != 4) return std::nullopt;
    for (std::size_t k = 0; k < count; ++k) {
        const PanelFrame frame{k, (k + 1) % 4, (k + 2) % 4, (k + 3) % 4};
        if (panel.edges[k].role == EdgeRole::bottom &&
            panel.edges[frame.top].role == EdgeRole::top && isLong(panel.edges[frame.back].role) &&
            isLong(panel.edges[frame.front].role))
            return frame;
    }
    return std::nullopt;
}

std::optional<std::size_t> edgeWithName(const Panel& panel, std::string_view name) {
    for (std::size_t k = 0; k < panel.edges.size(); ++k)
        if (panel.edges[k].name == name) return k;
    return std::nullopt;
}

Path upwardsOf(const Edge& edge) { return edge.runsUp ? edge.path : reversed(edge.path); }

double waistFromBelowMm(const Edge& edge) {
    if (!edge.waistMarkAtMm) return waistAlongMm(upwardsOf(edge));
    return edge.runsUp ? *edge.waistMarkAtMm : lengthMm(edge.path) - *edge.waistMarkAtMm;
}

std::optional<Path> besideLine(const Path& upwards, double toRightMm) {
    const Vector start = tangentAt(upwards.pieces.front(), 0);
    const Vector end = tangentAt(upwards.pieces.back(), 1);
    if (toRightMm == 0) return upwards;
    if (isStraight(upwards)) {
        const Vector shift = toRightMm * rightOf(start);
        return straightPath(upwards.start() + shift, upwards.end() + shift);
    }
    const auto points = parallelPoints(upwards, toRightMm);
    if (!points) return std::nullopt;
    return fittedThrough(*points, start, end);
}

std::optional<Path> toRims(const Panel& panel, const PanelFrame& frame, const Path& upwards,
                           const OpenEnds& ends) {
    const Path line = prolonged(upwards, ends);
    PathPosition from;
    PathPosition to{line.pieces.size() - 1, 1};
    if (ends.atBottom) {
        const auto meetings = meetingsOf(line, panel.edges[frame.bottom].path);
        if (meetings.empty()) return std::nullopt;
        from = meetings.back().onFirst;
    }
    if (ends.atTop) {
        const auto meetings = meetingsOf(line, panel.edges[frame.top].path);
        const auto isAfter = [&](const Meeting& meeting) {
            const PathPosition& at = meeting.onFirst;
            return at.piece > from.piece || (at.piece == from.piece && at.t > from.t);
        };
        const auto first = std::ranges::find_if(meetings, isAfter);
        if (first == meetings.end()) return std::nullopt;
        to = first->onFirst;
    }
    return between(line, from, to);
}

double waistAlongMm(const Path& upwards) {
    const auto crossings = crossingsAtHeight(upwards, 0);
    if (!crossings.empty()) return lengthToMm(upwards, crossings.front());
    if (upwards.start().y() > 0) return -upwards.start().y();
    return lengthMm(upwards) - upwards.end().y();
}

}  // namespace coutil
