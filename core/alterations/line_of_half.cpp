#include "core/alterations/line_of_half.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>

#include "core/alterations/find_places.h"
#include "core/alterations/merge_pieces.h"
#include "core/geometry/arc_length.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kLongestPartMm = 15;

// A line's point raised, with its derivative by the length of the line.
struct Raised {
    Point at = Point::Zero();
    Vector perMm = Vector::Zero();
};

// Where a piece is cut: its parameter, the length of the line up to there, and where it goes.
struct Cut {
    double t = 0;
    double atMm = 0;
    Raised place;
};

class LineRaiser {
  public:
    LineRaiser(const PanelCorners& corners, const PanelOnLine& each, const AmountCurve& curve)
        : corners_(corners), each_(each), curve_(curve), lengthMm_(each.toMm - each.fromMm) {}

    [[nodiscard]] Path raised(const Path& line) {
        double atMm = 0;
        for (const Cubic& piece : line.pieces) {
            const double pieceMm = lengthMm(piece);
            raisePiece(piece, atMm, pieceMm);
            atMm += pieceMm;
        }
        return mergedWhereMoved(pieces_, 2 * kLongestPartMm);
    }

  private:
    [[nodiscard]] Raised raisedAt(const Cubic& piece, double t, double atMm) const {
        const double share = std::clamp(atMm / lengthMm_, 0.0, 1.0);
        const Vector mixed = (1 - share) * corners_.frontUp + share * corners_.backUp;
        const Vector mixedPerMm = (corners_.backUp - corners_.frontUp) / lengthMm_;
        const double upMm = curve_.at(each_.fromMm + atMm);
        const double upPerMm = curve_.slopeAt(each_.fromMm + atMm);
        return {pointAt(piece, t) + upMm * mixed,
                tangentAt(piece, t) + upPerMm * mixed + upMm * mixedPerMm};
    }

    void raisePiece(const Cubic& piece, double fromMm, double pieceMm) {
        const int parts = std::max(1, static_cast<int>(std::ceil(pieceMm / kLongestPartMm)));
        Cut from{0, fromMm, raisedAt(piece, 0, fromMm)};
        for (int k = 0; k < parts; ++k) {
            const double t = (k + 1.0) / parts;
            const double nextMm =
                k + 1 == parts ? fromMm + pieceMm : from.atMm + partLengthMm(piece, from.t, t);
            const Cut to{t, nextMm, raisedAt(piece, t, nextMm)};
            pushRaised(piece, from, to, 0);
            from = to;
        }
    }

    // Cut in the middle, and again, while it is off the true raised line at a quarter, the middle
    // or three quarters: amounts may change fast.
    void pushRaised(const Cubic& piece, const Cut& from, const Cut& to, int halvings) {
        const double third = (to.t - from.t) / 3;
        const Vector out = from.place.perMm * (derivativeAt(piece, from.t).norm() * third);
        const Vector in = to.place.perMm * (derivativeAt(piece, to.t).norm() * third);
        const Point start = pieces_.empty() ? from.place.at : pieces_.back().piece.p3;
        const Cubic part{start, start + out, to.place.at - in, to.place.at};
        constexpr int kMostHalvings = 6;
        if (halvings < kMostHalvings && isOff(piece, from, to, part)) {
            const double t = (from.t + to.t) / 2;
            const double middleMm = from.atMm + partLengthMm(piece, from.t, t);
            const Cut middle{t, middleMm, raisedAt(piece, t, middleMm)};
            pushRaised(piece, from, middle, halvings + 1);
            pushRaised(piece, middle, to, halvings + 1);
            return;
        }
        pieces_.push_back({part, to.atMm - from.atMm, true});
    }

    [[nodiscard]] bool isOff(const Cubic& piece, const Cut& from, const Cut& to,
                             const Cubic& part) const {
        return std::ranges::any_of(std::array{0.25, 0.5, 0.75}, [&](double share) {
            const double t = from.t + (to.t - from.t) * share;
            const Raised there = raisedAt(piece, t, from.atMm + partLengthMm(piece, from.t, t));
            return (pointAt(part, share) - there.at).norm() > tolerance::kMovedEdgeMm;
        });
    }

    PanelCorners corners_;
    const PanelOnLine& each_;
    const AmountCurve& curve_;
    double lengthMm_ = 0;
    std::vector<MovedPiece> pieces_;
};

Vector directionAt(const Path& path, bool isFrontEnd) {
    return isFrontEnd ? tangentAt(path.pieces.front(), 0) : tangentAt(path.pieces.back(), 1);
}

}  // namespace

std::vector<LineOfHalf> linesOfHalves(const Pattern& pattern, BodySide side, EdgeLine line) {
    std::map<PanelSide, LineOfHalf> bySide;
    const EdgeRole role = line == EdgeLine::top ? EdgeRole::top : EdgeRole::bottom;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        const Panel& panel = pattern.panels[p];
        const auto place = lineInPanel(panel, role);
        if (!place || !concerns(side, panel.side)) continue;
        LineOfHalf& half = bySide[panel.side];
        const double fromMm = half.panels.empty() ? 0 : half.panels.back().toMm;
        half.panels.push_back(
            {p, *place, fromMm, fromMm + lengthMm(panel.edges[place->line].path)});
    }
    std::vector<LineOfHalf> lines;
    lines.reserve(bySide.size());
    for (auto& [panelSide, half] : bySide) lines.push_back(std::move(half));
    return lines;
}

std::optional<double> positionOf(const Pattern& pattern, const LineOfHalf& half,
                                 const LinePlace& place) {
    for (const PanelOnLine& each : half.panels) {
        const Panel& panel = pattern.panels[each.panel];
        if (place.seam.empty()) {
            const double lengthMm = each.toMm - each.fromMm;
            if (panel.name != place.panel) continue;
            if (place.alongMm < -tolerance::kSamePointMm ||
                place.alongMm > lengthMm + tolerance::kSamePointMm)
                return std::nullopt;
            return each.fromMm + place.alongMm;
        }
        const auto isIt = [&](std::size_t e) {
            const Seam* seam = seamOf(pattern, {each.panel, e});
            return panel.edges[e].name == place.seam ||
                   (seam != nullptr && seam->name == place.seam);
        };
        if (isIt(each.place.front)) return each.fromMm;
        if (isIt(each.place.back)) return each.toMm;
    }
    return std::nullopt;
}

Path raisedLine(const Panel& panel, const PanelOnLine& each, const AmountCurve& curve) {
    return LineRaiser(cornersOf(panel, each.place), each, curve)
        .raised(rightwardsOf(panel, each.place));
}

Vector endDirection(const Pattern& before, const Pattern& pattern, const PanelOnLine& each,
                    const Path& raised, bool isFrontEnd) {
    Vector plain = directionAt(raised, isFrontEnd);
    const std::size_t edge = isFrontEnd ? each.place.front : each.place.back;
    if (!isCentreName(before.panels[each.panel].edges[edge].name)) return plain;
    const PanelCorners old = cornersOf(before.panels[each.panel], each.place);
    const PanelCorners now = cornersOf(pattern.panels[each.panel], each.place);
    const Vector was = directionAt(rightwardsOf(before.panels[each.panel], each.place), isFrontEnd);
    const double off = was.dot(isFrontEnd ? old.frontUp : old.backUp);
    constexpr double kRad = tolerance::kSmoothAcrossSeamDeg * std::numbers::pi / 180;
    if (std::abs(off) > std::sin(kRad)) return plain;
    const Vector up = isFrontEnd ? now.frontUp : now.backUp;
    return {up.y(), -up.x()};
}

}  // namespace coutil
