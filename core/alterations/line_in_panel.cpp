#include "core/alterations/line_in_panel.h"

#include <array>
#include <cmath>
#include <vector>

#include "core/geometry/cross_product.h"

namespace coutil {
namespace {

// Rotation and stretch as one complex number.
Vector times(const Vector& v, const Vector& turn) {
    return {v.x() * turn.x() - v.y() * turn.y(), v.x() * turn.y() + v.y() * turn.x()};
}

Vector overOther(const Vector& v, const Vector& other) {
    return Vector(v.dot(other), crossProduct(other, v)) / other.squaredNorm();
}

// Where each piece begins on a parameter 0..1 over the whole line in which the pieces follow each
// other without a jump of speed.
std::vector<double> evenSpans(const Path& path) {
    std::vector<double> widths{1};
    for (std::size_t i = 1; i < path.pieces.size(); ++i) {
        const double before = derivativeAt(path.pieces[i - 1], 1).norm();
        const double after = derivativeAt(path.pieces[i], 0).norm();
        widths.push_back(before > 0 ? widths.back() * after / before : widths.back());
    }
    double sum = 0;
    for (const double width : widths) sum += width;
    std::vector<double> starts{0};
    for (const double width : widths) starts.push_back(starts.back() + width / sum);
    starts.back() = 1;
    return starts;
}

// The cubic polynomial with value 0 at both ends and slopes `atStart`, `atEnd`, in polar form.
Vector bendBlossom(const Vector& atStart, const Vector& atEnd, double a, double b, double c) {
    const std::array<Vector, 4> points{Vector::Zero(), atStart / 3, -atEnd / 3, Vector::Zero()};
    const auto mix = [](const Vector& p, const Vector& q, double t) -> Vector {
        return (1 - t) * p + t * q;
    };
    const Vector r0 = mix(points[0], points[1], a);
    const Vector r1 = mix(points[1], points[2], a);
    const Vector r2 = mix(points[2], points[3], a);
    return mix(mix(r0, r1, b), mix(r1, r2, b), c);
}

void bend(Path& path, const Vector& atStart, const Vector& atEnd) {
    const std::vector<double> spans = evenSpans(path);
    for (std::size_t i = 0; i < path.pieces.size(); ++i) {
        const double a = spans[i];
        const double b = spans[i + 1];
        Cubic& c = path.pieces[i];
        c.p0 += bendBlossom(atStart, atEnd, a, a, a);
        c.p1 += bendBlossom(atStart, atEnd, a, a, b);
        c.p2 += bendBlossom(atStart, atEnd, a, b, b);
        c.p3 += bendBlossom(atStart, atEnd, b, b, b);
        if (i > 0) c.p0 = path.pieces[i - 1].p3;
    }
}

}  // namespace

std::optional<LineInPanel> lineInPanel(const Panel& panel, EdgeRole role) {
    const std::size_t count = panel.edges.size();
    for (std::size_t e = 0; e < count; ++e) {
        if (panel.edges[e].role != role || panel.edges[e].path.isEmpty()) continue;
        const std::size_t before = (e + count - 1) % count;
        const std::size_t after = (e + 1) % count;
        const bool isTop = role == EdgeRole::top;
        const LineInPanel found{e, isTop ? after : before, isTop ? before : after, isTop};
        const Edge& front = panel.edges[found.front];
        const Edge& back = panel.edges[found.back];
        if (front.runsUp || !back.runsUp || front.path.isEmpty() || back.path.isEmpty())
            return std::nullopt;
        return found;
    }
    return std::nullopt;
}

PanelCorners cornersOf(const Panel& panel, const LineInPanel& line) {
    const Path& front = panel.edges[line.front].path;
    const Path& back = panel.edges[line.back].path;
    if (line.isTop) {
        return {front.start(), back.end(), -tangentAt(front.pieces.front(), 0),
                tangentAt(back.pieces.back(), 1)};
    }
    return {front.end(), back.start(), -tangentAt(front.pieces.back(), 1),
            tangentAt(back.pieces.front(), 0)};
}

Path rightwardsOf(const Panel& panel, const LineInPanel& line) {
    const Path& path = panel.edges[line.line].path;
    return line.isTop ? reversed(path) : path;
}

void setRightwards(Panel& panel, const LineInPanel& line, const Path& rightwards) {
    panel.edges[line.line].path = line.isTop ? reversed(rightwards) : rightwards;
}

Path carriedLine(const Path& rightwards, const Point& start, const Point& end,
                 const Vector& startDirection, const Vector& endDirection) {
    Path line = rightwards;
    const Point from = line.start();
    const Vector turn = overOther(end - start, line.end() - from);
    const auto carried = [&](const Point& p) -> Point { return start + times(p - from, turn); };
    for (Cubic& c : line.pieces) c = {carried(c.p0), carried(c.p1), carried(c.p2), carried(c.p3)};
    for (std::size_t i = 1; i < line.pieces.size(); ++i) line.pieces[i].p0 = line.pieces[i - 1].p3;
    // Speeds over the even parameter: those of the end pieces, by their share of it.
    const std::vector<double> spans = evenSpans(line);
    const double firstShare = spans[1];
    const double lastShare = 1 - spans[spans.size() - 2];
    const Vector out = derivativeAt(line.pieces.front(), 0);
    const Vector in = derivativeAt(line.pieces.back(), 1);
    bend(line, (startDirection * out.norm() - out) / firstShare,
         (endDirection * in.norm() - in) / lastShare);
    line.pieces.front().p0 = start;
    line.pieces.back().p3 = end;
    return line;
}

}  // namespace coutil
