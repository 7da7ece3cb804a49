#include "core/alterations/mean_edge.h"

#include <algorithm>
#include <cmath>

#include "core/alterations/cut_edge.h"
#include "core/alterations/draw_lines.h"
#include "core/alterations/line_in_panel.h"
#include "core/alterations/merge_pieces.h"
#include "core/alterations/upward_edge.h"

namespace coutil {
namespace {

constexpr double kLongestPieceMm = 10;
// Joints of both paths nearer than this share are one.
constexpr double kSameShare = 1e-3;

void appendJoints(const Path& path, double wholeMm, std::vector<double>& shares) {
    double sumMm = 0;
    for (const Cubic& piece : path.pieces) {
        const double pieceMm = lengthMm(piece);
        const int parts = std::max(1, static_cast<int>(std::ceil(pieceMm / kLongestPieceMm)));
        for (int k = 0; k < parts; ++k) shares.push_back((sumMm + pieceMm * k / parts) / wholeMm);
        sumMm += pieceMm;
    }
}

// Shares of length 0..1 at which the mean has joints.
std::vector<double> sharesOf(const Path& one, double oneMm, const Path& other, double otherMm) {
    std::vector<double> all;
    appendJoints(one, oneMm, all);
    appendJoints(other, otherMm, all);
    std::ranges::sort(all);
    std::vector<double> shares{0};
    for (const double share : all) {
        if (share > shares.back() + kSameShare && share < 1 - kSameShare) shares.push_back(share);
    }
    shares.push_back(1);
    return shares;
}

// Point and derivative by the share of length.
struct Place {
    Point at = Point::Zero();
    Vector perShare = Vector::Zero();
};

Place placeAt(const Path& path, double wholeMm, double share) {
    const PathPosition position = positionAtLength(path, share * wholeMm);
    return {pointAt(path, position), tangentAt(path, position) * wholeMm};
}

}  // namespace

Path meanPath(const Path& one, const Path& other) {
    const double oneMm = lengthMm(one);
    const double otherMm = lengthMm(other);
    const auto at = [&](double share) -> Place {
        const Place a = placeAt(one, oneMm, share);
        const Place b = placeAt(other, otherMm, share);
        return {(a.at + b.at) / 2, (a.perShare + b.perShare) / 2};
    };
    std::vector<MovedPiece> mean;
    const std::vector<double> shares = sharesOf(one, oneMm, other, otherMm);
    Place from = at(0);
    for (std::size_t i = 0; i + 1 < shares.size(); ++i) {
        const Place to = at(shares[i + 1]);
        const double third = (shares[i + 1] - shares[i]) / 3;
        mean.push_back(
            {{from.at, from.at + from.perShare * third, to.at - to.perShare * third, to.at},
             (shares[i + 1] - shares[i]) * (oneMm + otherMm) / 2,
             true});
        from = to;
    }
    constexpr double kLongestJoinedMm = 60;
    return mergedWhereMoved(mean, kLongestJoinedMm);
}

void settleMean(const Pattern& before, Pattern& mean, const std::vector<WantedLengths>& wanted) {
    cutLongEdges(before, mean, wanted);
    for (Panel& panel : mean.panels) {
        for (const EdgeRole role : {EdgeRole::top, EdgeRole::bottom}) {
            const auto line = lineInPanel(panel, role);
            if (!line) continue;
            const PanelCorners corners = cornersOf(panel, *line);
            const Path path = rightwardsOf(panel, *line);
            if (path.start() == corners.front && path.end() == corners.back) continue;
            setRightwards(
                panel, *line,
                carriedLine(path, corners.front, corners.back, tangentAt(path.pieces.front(), 0),
                            tangentAt(path.pieces.back(), 1)));
        }
    }
    evenLinesAcrossSeams(mean);
    refreshFigures(before, mean);
}

}  // namespace coutil
