#include "core/alterations/draw_lines.h"

#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

#include "core/alterations/line_in_panel.h"
#include "core/geometry/cross_product.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

double angleBetween(const Vector& from, const Vector& to) {
    return std::atan2(crossProduct(from, to), from.dot(to));
}

Vector turned(const Vector& v, double rad) {
    return {v.x() * std::cos(rad) - v.y() * std::sin(rad),
            v.x() * std::sin(rad) + v.y() * std::cos(rad)};
}

Vector startOf(const Path& path) { return tangentAt(path.pieces.front(), 0); }
Vector endOf(const Path& path) { return tangentAt(path.pieces.back(), 1); }

// One line (top or bottom) of every panel, before and after its long edges moved.
struct PanelLine {
    std::optional<LineInPanel> place;
    PanelCorners old;
    PanelCorners now;
    Path path;  // rightwards, as it was
    // How much the angle against the seam changes at each end; nothing at centre front and back.
    std::optional<double> frontTurnRad;
    std::optional<double> backTurnRad;
};

bool isSame(const PanelCorners& a, const PanelCorners& b) {
    return a.front == b.front && a.back == b.back && a.frontUp == b.frontUp && a.backUp == b.backUp;
}

std::vector<PanelLine> linesOf(const Pattern& before, const Pattern& pattern, EdgeRole role) {
    std::vector<PanelLine> lines(pattern.panels.size());
    for (std::size_t p = 0; p < lines.size(); ++p) {
        lines[p].place = lineInPanel(pattern.panels[p], role);
        if (!lines[p].place) continue;
        lines[p].old = cornersOf(before.panels[p], *lines[p].place);
        lines[p].now = cornersOf(pattern.panels[p], *lines[p].place);
        lines[p].path = rightwardsOf(pattern.panels[p], *lines[p].place);
    }
    return lines;
}

// The rule's change of angle at every seam, for the two panels it joins.
void setTurns(const Pattern& pattern, std::vector<PanelLine>& lines) {
    for (const Seam& seam : pattern.seams) {
        PanelLine& front = lines[seam.front.panel];
        PanelLine& back = lines[seam.back.panel];
        // A fold that became a seam joins two fronts: a centre line for both.
        if (!front.place || !back.place || front.place->back != seam.front.edge ||
            back.place->front != seam.back.edge)
            continue;
        const bool isUntouched = isSame(front.old, front.now) && isSame(back.old, back.now);
        const double turnRad = isUntouched ? 0
                                           : lineAngleAtSeamRad(front.now, back.now) -
                                                 lineAngleAtSeamRad(front.old, back.old);
        front.backTurnRad = turnRad;
        back.frontTurnRad = turnRad;
    }
}

bool isSquare(const Vector& along, const Vector& up) {
    constexpr double kRad = tolerance::kSmoothAcrossSeamDeg * std::numbers::pi / 180;
    return std::abs(along.dot(up)) < std::sin(kRad);
}

// The direction at a centre end; `other` are the old and new direction at the line's other end.
Vector centreDirection(const Vector& old, const Vector& oldUp, const Vector& nowUp,
                       const Vector& oldOther, const Vector& nowOther, const Vector& oldChord,
                       const Vector& nowChord) {
    if (isSquare(old, oldUp)) return turned(nowUp, angleBetween(oldUp, old));
    const double turnRad = angleBetween(nowOther, nowChord) - angleBetween(oldOther, oldChord);
    return turned(nowChord.normalized(), angleBetween(oldChord, old) + turnRad);
}

Path drawnAgain(const PanelLine& line) {
    const Vector oldChord = line.path.end() - line.path.start();
    const Vector nowChord = line.now.back - line.now.front;
    const Vector oldStart = startOf(line.path);
    const Vector oldEnd = endOf(line.path);
    const auto againstSeam = [](const Vector& old, const Vector& oldUp, const Vector& nowUp,
                                double turnRad) {
        return turned(nowUp, angleBetween(oldUp, old) + turnRad);
    };
    Vector start = oldStart;
    Vector end = oldEnd;
    if (line.frontTurnRad)
        start = againstSeam(oldStart, line.old.frontUp, line.now.frontUp, *line.frontTurnRad);
    if (line.backTurnRad)
        end = againstSeam(oldEnd, line.old.backUp, line.now.backUp, *line.backTurnRad);
    if (!line.frontTurnRad) {
        start = centreDirection(oldStart, line.old.frontUp, line.now.frontUp, oldEnd, end, oldChord,
                                nowChord);
    }
    if (!line.backTurnRad) {
        end = centreDirection(oldEnd, line.old.backUp, line.now.backUp, oldStart, start, oldChord,
                              nowChord);
    }
    return carriedLine(line.path, line.now.front, line.now.back, start, end);
}

void drawLine(const Pattern& before, Pattern& pattern, EdgeRole role) {
    std::vector<PanelLine> lines = linesOf(before, pattern, role);
    setTurns(pattern, lines);
    for (std::size_t p = 0; p < lines.size(); ++p) {
        const PanelLine& line = lines[p];
        if (!line.place) continue;
        const bool isUnturned =
            line.frontTurnRad.value_or(0) == 0 && line.backTurnRad.value_or(0) == 0;
        if (isUnturned && isSame(line.old, line.now)) continue;
        setRightwards(pattern.panels[p], *line.place, drawnAgain(line));
    }
}

// Turns one end of a panel's line, its corner staying.
void turnEnd(Panel& panel, const LineInPanel& place, bool isFrontEnd, double rad) {
    const Path path = rightwardsOf(panel, place);
    const Vector start = startOf(path);
    const Vector end = endOf(path);
    setRightwards(
        panel, place,
        carriedLine(path, path.start(), path.end(), isFrontEnd ? turned(start, rad) : start,
                    isFrontEnd ? end : turned(end, rad)));
}

void evenLine(Pattern& pattern, const Seam& seam, EdgeRole role) {
    Panel& front = pattern.panels[seam.front.panel];
    Panel& back = pattern.panels[seam.back.panel];
    const auto inFront = lineInPanel(front, role);
    const auto behind = lineInPanel(back, role);
    if (!inFront || !behind || inFront->back != seam.front.edge || behind->front != seam.back.edge)
        return;
    const double angleInFront =
        angleBetween(cornersOf(front, *inFront).backUp, endOf(rightwardsOf(front, *inFront)));
    const double angleBehind =
        angleBetween(cornersOf(back, *behind).frontUp, startOf(rightwardsOf(back, *behind)));
    const double differ = angleBehind - angleInFront;
    if (std::abs(differ) < tolerance::kSmoothTurn) return;
    turnEnd(front, *inFront, false, differ / 2);
    turnEnd(back, *behind, true, -differ / 2);
}

}  // namespace

void drawLinesAgain(const Pattern& before, Pattern& pattern) {
    drawLine(before, pattern, EdgeRole::top);
    drawLine(before, pattern, EdgeRole::bottom);
}

void evenLinesAcrossSeams(Pattern& pattern) {
    for (const Seam& seam : pattern.seams) {
        evenLine(pattern, seam, EdgeRole::top);
        evenLine(pattern, seam, EdgeRole::bottom);
    }
}

}  // namespace coutil
