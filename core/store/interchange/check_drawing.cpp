#include <algorithm>
#include <complex>
#include <limits>

#include "core/geometry/tolerances.h"
#include "core/store/drawing_check.h"

namespace coutil {

namespace {

constexpr double kStationMm = 2;

using Number = std::complex<double>;

Number asNumber(const Point& p) { return {p.x(), p.y()}; }

// Shift and turn that lay a panel over its own, and how much larger it is.
struct LaidOver {
    Placement placement;
    double scale = 1;
};

std::vector<const DrawnLine*> outlinesOf(const DrawnPanel& panel) {
    std::vector<const DrawnLine*> lines;
    for (const DrawnLine& line : panel.lines) {
        if (line.kind == LineKind::sewing || line.kind == LineKind::cutting) lines.push_back(&line);
    }
    return lines;
}

std::vector<Point> stationsOf(const Path& path, std::size_t count) {
    std::vector<Point> stations;
    stations.reserve(count + 1);
    const double length = lengthMm(path);
    for (std::size_t i = 0; i <= count; ++i) {
        stations.push_back(
            pointAtLength(path, length * static_cast<double>(i) / static_cast<double>(count)));
    }
    return stations;
}

// Places that belong together: the same shares of the lengths of lines with the same kind and name.
struct Pairs {
    std::vector<Number> found;
    std::vector<Number> expected;
};

Pairs pairsOf(const DrawnPanel& found, const DrawnPanel& expected) {
    constexpr std::size_t kPerLine = 8;
    Pairs pairs;
    for (const DrawnLine* line : outlinesOf(expected)) {
        const auto like = std::ranges::find_if(found.lines, [&](const DrawnLine& other) {
            return other.kind == line->kind && other.name == line->name;
        });
        if (like == found.lines.end()) continue;
        for (const Point& p : stationsOf(like->path, kPerLine)) pairs.found.push_back(asNumber(p));
        for (const Point& p : stationsOf(line->path, kPerLine)) {
            pairs.expected.push_back(asNumber(p));
        }
    }
    return pairs;
}

Number meanOf(const std::vector<Number>& numbers) {
    Number sum = 0;
    for (const Number& n : numbers) sum += n;
    return sum / static_cast<double>(numbers.size());
}

// Least squares over shift and turn; with the sizes taken out, which are told apart.
LaidOver laidOver(const DrawnPanel& found, const DrawnPanel& expected) {
    LaidOver laid;
    const Pairs pairs = pairsOf(found, expected);
    if (pairs.found.empty()) return laid;
    const Number from = meanOf(pairs.found);
    const Number to = meanOf(pairs.expected);
    Number turn = 0;
    double spread = 0;
    for (std::size_t i = 0; i < pairs.found.size(); ++i) {
        turn += std::conj(pairs.found[i] - from) * (pairs.expected[i] - to);
        spread += std::norm(pairs.expected[i] - to);
    }
    if (std::abs(turn) <= 0) return laid;
    laid.scale = 1;
    double own = 0;
    for (const Number& n : pairs.found) own += std::norm(n - from);
    if (spread > 0) laid.scale = std::sqrt(own / spread);
    laid.placement.turnRad = std::arg(turn);
    const Number shift = to - std::polar(1.0, std::arg(turn)) * from;
    laid.placement.shift = Vector(shift.real(), shift.imag());
    return laid;
}

struct Farthest {
    double mm = 0;
    Point at = Point::Zero();
};

// From any place of the first lines to the nearest of the second of the same kind.
void lookFrom(const std::vector<DrawnLine>& first, const std::vector<DrawnLine>& second,
              Farthest& farthest) {
    for (const DrawnLine& line : first) {
        const auto count = static_cast<std::size_t>(lengthMm(line.path) / kStationMm) + 1;
        for (const Point& station : stationsOf(line.path, count)) {
            double nearest = std::numeric_limits<double>::max();
            for (const DrawnLine& other : second) {
                if (other.kind != line.kind) continue;
                nearest = std::min(nearest, closestOn(other.path, station).distanceMm);
            }
            const bool isAny = nearest < std::numeric_limits<double>::max();
            if (isAny && nearest > farthest.mm) farthest = {nearest, station};
        }
    }
}

std::vector<DrawnLine> outlines(const DrawnPanel& panel, const Placement& placement) {
    std::vector<DrawnLine> lines;
    for (const DrawnLine* line : outlinesOf(panel)) {
        lines.push_back(*line);
        lines.back().path = placed(line->path, placement);
    }
    return lines;
}

Farthest apart(const DrawnPanel& found, const DrawnPanel& expected, const Placement& placement) {
    const std::vector<DrawnLine> there = outlines(found, placement);
    const std::vector<DrawnLine> own = outlines(expected, {});
    Farthest farthest;
    lookFrom(own, there, farthest);
    lookFrom(there, own, farthest);
    return farthest;
}

Problem problemOf(ProblemCode code, const std::string& panel) {
    Problem problem;
    problem.code = code;
    problem.severity = Severity::warning;
    problem.panel = panel;
    return problem;
}

DrawnPanel shrunkBy(DrawnPanel panel, double scale) {
    for (DrawnLine& line : panel.lines) {
        for (Cubic& c : line.path.pieces) {
            c = {c.p0 / scale, c.p1 / scale, c.p2 / scale, c.p3 / scale};
        }
    }
    return panel;
}

// Whether its size is what is wrong with a panel: a kerf makes it larger too, but all round.
bool isScaled(const DrawnPanel& found, const DrawnPanel& expected, double scale, double apartMm) {
    if (std::abs(scale - 1) <= tolerance::kDrawingScaleShare) return false;
    const DrawnPanel shrunk = shrunkBy(found, scale);
    return apart(shrunk, expected, laidOver(shrunk, expected).placement).mm < apartMm / 4;
}

void checkPanel(const DrawnPanel& found, const DrawnPanel& expected, DrawingCheck& check) {
    Farthest farthest = apart(found, expected, {});
    const LaidOver laid = laidOver(found, expected);
    if (farthest.mm > tolerance::kSamePointMm) {
        const Farthest moved = apart(found, expected, laid.placement);
        if (moved.mm < farthest.mm) farthest = moved;
    }
    check.panels.push_back({expected.name, farthest.mm, laid.scale});
    if (farthest.mm <= tolerance::kDrawingMm) return;
    const bool isSize = isScaled(found, expected, laid.scale, farthest.mm);
    Problem problem = problemOf(isSize ? ProblemCode::drawingScaled : ProblemCode::drawingPanelOff,
                                expected.name);
    problem.at = farthest.at;
    problem.figures = {{"value", farthest.mm}, {"limit", tolerance::kDrawingMm}};
    if (isSize) problem.figures = {{"percent", 100 * laid.scale, FigureUnit::percent}};
    check.problems.push_back(std::move(problem));
}

const DrawnPanel* panelNamed(const Drawing& drawing, const std::string& name) {
    const auto found = std::ranges::find(drawing.panels, name, &DrawnPanel::name);
    return found == drawing.panels.end() ? nullptr : &*found;
}

}  // namespace

DrawingCheck checkDrawing(const Drawing& found, const Drawing& expected) {
    DrawingCheck check;
    for (const DrawnPanel& panel : expected.panels) {
        const DrawnPanel* there = panelNamed(found, panel.name);
        if (there != nullptr) {
            checkPanel(*there, panel, check);
        } else {
            check.problems.push_back(problemOf(ProblemCode::drawingPanelMissing, panel.name));
        }
    }
    for (const DrawnPanel& panel : found.panels) {
        if (panelNamed(expected, panel.name) != nullptr) continue;
        check.problems.push_back(problemOf(ProblemCode::drawingPanelUnknown, panel.name));
    }
    return check;
}

}  // namespace coutil
