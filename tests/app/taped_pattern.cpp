#include "tests/app/taped_pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace coutil::test {
namespace {

using nlohmann::json;

const json& panelOf(const json& pattern, const std::string& name, const std::string& side) {
    for (const json& panel : pattern.at("panels"))
        if (panel.at("name") == name && panel.at("side") == side) return panel;
    throw std::runtime_error("no panel " + name + " " + side);
}

// One coordinate of a cubic Bezier piece at t.
double bezier(const std::array<double, 4>& c, double t) {
    const double s = 1 - t;
    return s * s * s * c[0] + 3 * s * s * t * c[1] + 3 * s * t * t * c[2] + t * t * t * c[3];
}

std::vector<TapedPoint> chordsOf(const json& path) {
    std::vector<TapedPoint> points;
    for (const json& piece : path) {
        const auto v = piece.get<std::array<double, 8>>();
        constexpr int kChords = 400;
        for (int i = points.empty() ? 0 : 1; i <= kChords; ++i) {
            const double t = static_cast<double>(i) / kChords;
            points.push_back(
                {bezier({v[0], v[2], v[4], v[6]}, t), bezier({v[1], v[3], v[5], v[7]}, t)});
        }
    }
    return points;
}

}  // namespace

const json& named(const json& list, const std::string& name) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const json& e) { return e.at("name") == name; });
    if (found == list.end()) throw std::runtime_error("nothing is named " + name);
    return *found;
}

TapedEdge::TapedEdge(const json& pattern, const std::string& panel, const std::string& side,
                     const std::string& edge)
    : points_(chordsOf(named(panelOf(pattern, panel, side).at("edges"), edge).at("path"))) {
    if (points_.front().y > points_.back().y) std::reverse(points_.begin(), points_.end());
    alongMm_.push_back(0);
    for (std::size_t i = 1; i < points_.size(); ++i) {
        const TapedPoint& a = points_[i - 1];
        const TapedPoint& b = points_[i];
        const double chordMm = std::hypot(b.x - a.x, b.y - a.y);
        if (a.y < 0 && b.y >= 0) waistMm_ = lengthMm_ + chordMm * (-a.y) / (b.y - a.y);
        lengthMm_ += chordMm;
        alongMm_.push_back(lengthMm_);
    }
}

std::size_t TapedEdge::chordAt(double alongMm) const {
    const auto after = std::upper_bound(alongMm_.begin(), alongMm_.end(), alongMm);
    const auto index = static_cast<std::size_t>(after - alongMm_.begin());
    return std::clamp<std::size_t>(index, 1, points_.size() - 1) - 1;
}

TapedPoint TapedEdge::at(double seamPositionMm) const {
    const double alongMm = waistMm_ + seamPositionMm;
    const std::size_t i = chordAt(alongMm);
    const double share = (alongMm - alongMm_[i]) / (alongMm_[i + 1] - alongMm_[i]);
    return {points_[i].x + share * (points_[i + 1].x - points_[i].x),
            points_[i].y + share * (points_[i + 1].y - points_[i].y)};
}

double TapedEdge::movedRightMm(double seamPositionMm, const TapedEdge& other) const {
    const TapedPoint p = at(seamPositionMm);
    const std::size_t i = chordAt(waistMm_ + seamPositionMm);
    const double dx = points_[i + 1].x - points_[i].x;
    const double dy = points_[i + 1].y - points_[i].y;
    const double length = std::hypot(dx, dy);
    const TapedPoint up{dx / length, dy / length};
    const TapedPoint right{up.y, -up.x};
    // Where the other crosses the square line nearest to p.
    double best = INFINITY;
    for (std::size_t k = 0; k + 1 < other.points_.size(); ++k) {
        const TapedPoint& a = other.points_[k];
        const TapedPoint& b = other.points_[k + 1];
        const double alongA = (a.x - p.x) * up.x + (a.y - p.y) * up.y;
        const double alongB = (b.x - p.x) * up.x + (b.y - p.y) * up.y;
        if ((alongA < 0) == (alongB < 0)) continue;
        const double share = alongA / (alongA - alongB);
        const double moved = (a.x + share * (b.x - a.x) - p.x) * right.x +
                             (a.y + share * (b.y - a.y) - p.y) * right.y;
        if (std::abs(moved) < std::abs(best)) best = moved;
    }
    return best;
}

double takenInMm(const json& before, const json& after, const std::string& seam, double positionMm,
                 const std::string& sideBefore, const std::string& sideAfter) {
    const std::string front = seam.substr(0, seam.find('-'));
    const std::string back = seam.substr(seam.find('-') + 1);
    const auto moved = [&](const std::string& panel) {
        return TapedEdge(before, panel, sideBefore, "seam " + seam)
            .movedRightMm(positionMm, TapedEdge(after, panel, sideAfter, "seam " + seam));
    };
    // Panels are drawn with their front to the left: the seam is the right edge of the one in
    // front.
    return moved(back) - moved(front);
}

}  // namespace coutil::test
