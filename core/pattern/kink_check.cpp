#include <cmath>
#include <numbers>
#include <optional>

#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"
#include "core/pattern/every_check.h"
#include "core/pattern/panel_key.h"

namespace coutil {
namespace {

struct Kink {
    double turnDeg = 0;
    Point at = Point::Zero();
};

Kink sharpestKink(const Path& path) {
    Kink sharpest;
    for (std::size_t i = 1; i < path.pieces.size(); ++i) {
        const Vector before = tangentAt(path.pieces[i - 1], 1);
        const Vector after = tangentAt(path.pieces[i], 0);
        const double turnDeg =
            std::atan2(std::abs(crossProduct(before, after)), before.dot(after)) * 180 /
            std::numbers::pi;
        if (turnDeg > sharpest.turnDeg) sharpest = {turnDeg, path.pieces[i].p0};
    }
    return sharpest;
}

}  // namespace

std::vector<Problem> checkKinks(const Pattern& pattern) {
    std::vector<Problem> problems;
    for (const Panel& panel : pattern.panels) {
        for (const Edge& edge : panel.edges) {
            const Kink kink = sharpestKink(edge.path);
            if (kink.turnDeg <= tolerance::kKinkDeg) continue;
            problems.push_back({.code = ProblemCode::kinkInCurve,
                                .severity = Severity::warning,
                                .subject = edge.name,
                                .panel = panelKey(panel),
                                .at = kink.at,
                                .figures = {{"value", kink.turnDeg, FigureUnit::degree},
                                            {"limit", tolerance::kKinkDeg, FigureUnit::degree}}});
        }
    }
    return problems;
}

}  // namespace coutil
