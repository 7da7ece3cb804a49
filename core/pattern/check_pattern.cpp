#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "core/geometry/tolerances.h"
#include "core/pattern/outline_check.h"
#include "core/pattern/panel_key.h"
#include "core/pattern/pattern.h"

namespace coutil {
namespace {

void checkOutline(const Panel& panel, std::vector<Problem>& problems) {
    const Path outline = outlineOf(panel);
    if (outline.isEmpty()) return;
    if (const auto gap = gapOf(outline))
        problems.push_back({.code = ProblemCode::outlineOpen, .panel = panelKey(panel), .at = gap});
    if (const auto at = selfCrossingOf(flattened(outline, tolerance::kCheckFlatnessMm))) {
        problems.push_back(
            {.code = ProblemCode::outlineCrossesItself, .panel = panelKey(panel), .at = at});
    }
}

std::string nearestLevel(const Pattern& pattern, double heightMm) {
    if (pattern.levels.empty()) return {};
    return std::ranges::min_element(
               pattern.levels, {},
               [&](const Level& level) { return std::abs(level.heightMm - heightMm); })
        ->name;
}

void checkWidth(const Pattern& pattern, const Panel& panel, std::vector<Problem>& problems) {
    const auto narrowest = narrowestWidthOf(panel);
    if (!narrowest ||
        narrowest->widthMm >= tolerance::kNarrowestPanelMm - 2 * tolerance::kCheckFlatnessMm)
        return;
    problems.push_back({.code = ProblemCode::panelTooNarrow,
                        .subject = nearestLevel(pattern, narrowest->middle.y()),
                        .panel = panelKey(panel),
                        .at = narrowest->middle,
                        .figures = {{"value", narrowest->widthMm},
                                    {"limit", tolerance::kNarrowestPanelMm},
                                    {"height", narrowest->middle.y()}}});
}

void reportLengths(const Pattern& pattern, const Seam& seam, std::string part, double frontMm,
                   double backMm, std::vector<Problem>& problems) {
    const double leftOverMm = std::abs(std::abs(frontMm - backMm) - std::abs(seam.easeMm));
    const bool isSewable = leftOverMm <= tolerance::kSewableSeamMm;
    problems.push_back({.code = ProblemCode::seamLengthsDiffer,
                        .severity = isSewable ? Severity::warning : Severity::error,
                        .subject = seam.name,
                        .detail = std::move(part),
                        .panel = panelKey(pattern.panels[seam.front.panel]),
                        .at = edgeAt(pattern, seam.front).path.start(),
                        .figures = {{"value", frontMm},
                                    {"other", backMm},
                                    {"difference", frontMm - backMm},
                                    {"limit", tolerance::kSeamPairMm}}});
}

void checkSeamLengths(const Pattern& pattern, const Seam& seam, std::vector<Problem>& problems) {
    const Edge& front = edgeAt(pattern, seam.front);
    const Edge& back = edgeAt(pattern, seam.back);
    const auto differ = [](double a, double b) { return std::abs(a - b) > tolerance::kSeamPairMm; };
    if (seam.easeMm != 0 || !front.waistMarkAtMm || !back.waistMarkAtMm) {
        const double frontMm = lengthMm(front.path);
        const double backMm = lengthMm(back.path);
        if (differ(std::abs(frontMm - backMm), std::abs(seam.easeMm)))
            reportLengths(pattern, seam, "whole", frontMm, backMm, problems);
        return;
    }
    const SeamLengths f = seamLengthsOf(front);
    const SeamLengths b = seamLengthsOf(back);
    if (differ(f.aboveWaistMm, b.aboveWaistMm))
        reportLengths(pattern, seam, "above", f.aboveWaistMm, b.aboveWaistMm, problems);
    if (differ(f.belowWaistMm, b.belowWaistMm))
        reportLengths(pattern, seam, "below", f.belowWaistMm, b.belowWaistMm, problems);
}

// The edge of a panel that starts or ends where a seam's edge has its upper or lower end.
struct LineEnd {
    Vector outOfSeam = Vector::Zero();  // direction of the top or bottom edge, away from the seam
    Vector upSeam = Vector::Zero();
    Point at = Point::Zero();
};

Vector startDirection(const Path& path) { return tangentAt(path.pieces.front(), 0); }
Vector endDirection(const Path& path) { return tangentAt(path.pieces.back(), 1); }

std::optional<LineEnd> lineEndAt(const Panel& panel, std::size_t seamEdge, EdgeRole role) {
    const std::size_t count = panel.edges.size();
    const Edge& edge = panel.edges[seamEdge];
    const bool isAtPathEnd = edge.runsUp == (role == EdgeRole::top);
    const Edge& line = panel.edges[(seamEdge + (isAtPathEnd ? 1 : count - 1)) % count];
    if (line.role != role || line.path.isEmpty() || edge.path.isEmpty()) return std::nullopt;
    LineEnd end;
    end.outOfSeam = isAtPathEnd ? startDirection(line.path) : -endDirection(line.path);
    const Vector along = isAtPathEnd ? endDirection(edge.path) : startDirection(edge.path);
    end.upSeam = edge.runsUp ? along : -along;
    end.at = isAtPathEnd ? edge.path.end() : edge.path.start();
    return end;
}

double angleDeg(const Vector& a, const Vector& b) {
    return std::atan2(std::abs(a.x() * b.y() - a.y() * b.x()), a.dot(b)) * 180 / std::numbers::pi;
}

void checkLine(const Pattern& pattern, const Seam& seam, EdgeRole role,
               std::vector<Problem>& problems) {
    const Panel& frontPanel = pattern.panels[seam.front.panel];
    // At centre front the style may want a point.
    if (frontPanel.side != pattern.panels[seam.back.panel].side) return;
    const auto front = lineEndAt(frontPanel, seam.front.edge, role);
    const auto back = lineEndAt(pattern.panels[seam.back.panel], seam.back.edge, role);
    if (!front || !back) return;
    const double sumDeg =
        angleDeg(front->upSeam, front->outOfSeam) + angleDeg(back->upSeam, back->outOfSeam);
    if (std::abs(sumDeg - 180) <= tolerance::kSmoothAcrossSeamDeg) return;
    problems.push_back(
        {.code = ProblemCode::lineBrokenAcrossSeam,
         .severity = Severity::warning,
         .subject = seam.name,
         .detail = std::string(keyOf(role)),
         .panel = panelKey(frontPanel),
         .at = front->at,
         .figures = {{"value", sumDeg - 180, FigureUnit::degree},
                     {"limit", tolerance::kSmoothAcrossSeamDeg, FigureUnit::degree}}});
}

// Whether the girth table says what the panels measure.
void checkGirth(const Pattern& pattern, const Level& level, std::vector<Problem>& problems) {
    if (!level.patternMm) return;
    double girthMm = level.lacingGapMm;
    for (const Panel& panel : pattern.panels) {
        const auto widthMm = widthAtHeightMm(panel, level.heightMm);
        if (!widthMm) return;
        girthMm += panel.side == PanelSide::both ? 2 * *widthMm : *widthMm;
    }
    if (std::abs(girthMm - *level.patternMm) <= tolerance::kGirthMm) return;
    problems.push_back(
        {.code = ProblemCode::girthTargetMissed,
         .subject = level.name,
         .figures = {
             {"value", girthMm}, {"target", *level.patternMm}, {"limit", tolerance::kGirthMm}}});
}

}  // namespace

std::vector<Problem> checkPattern(const Pattern& pattern) {
    std::vector<Problem> problems;
    for (const Panel& panel : pattern.panels) {
        checkOutline(panel, problems);
        checkWidth(pattern, panel, problems);
    }
    for (const Seam& seam : pattern.seams) {
        checkSeamLengths(pattern, seam, problems);
        checkLine(pattern, seam, EdgeRole::top, problems);
        checkLine(pattern, seam, EdgeRole::bottom, problems);
    }
    for (const Level& level : pattern.levels) checkGirth(pattern, level, problems);
    return problems;
}

}  // namespace coutil
