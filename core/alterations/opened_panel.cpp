#include "core/alterations/opened_panel.h"

#include <cmath>

#include "core/alterations/bend_edge.h"
#include "core/alterations/find_places.h"
#include "core/alterations/lay_on_waist.h"
#include "core/alterations/upward_edge.h"
#include "core/geometry/tolerances.h"

namespace coutil {
namespace {

constexpr double kBendMm = 40;

Vector turned(const Vector& v, double rad) {
    return {v.x() * std::cos(rad) - v.y() * std::sin(rad),
            v.x() * std::sin(rad) + v.y() * std::cos(rad)};
}

bool isLine(const Edge& edge) {
    return edge.role == EdgeRole::top || edge.role == EdgeRole::bottom;
}

// By how much each end of the lines turns.
struct Turns {
    double topFront = 0;
    double topBack = 0;
    double bottomFront = 0;
    double bottomBack = 0;
};

void drawThrough(const Panel& old, Panel& panel, EdgeRole role, double frontRad, double backRad) {
    const auto place = lineInPanel(old, role);
    if (!place) return;
    const Path line = rightwardsOf(old, *place);
    const PanelCorners now = cornersOf(panel, *place);
    setRightwards(
        panel, *place,
        carriedLine(line, now.front, now.back, turned(tangentAt(line.pieces.front(), 0), frontRad),
                    turned(tangentAt(line.pieces.back(), 1), backRad)));
}

void place(Panel& panel, const Placement& placement) {
    for (Edge& edge : panel.edges) edge.path = placed(edge.path, placement);
}

// The whole long edge on one side turns about the hinge.
Turns turnBack(Panel& panel, const LongEdgeIndices& edges, const PanelCut& cut, double rad) {
    Edge& back = panel.edges[edges.back];
    back.path = placed(back.path, turnAbout(cut.hinge, rad));
    return {0, rad, 0, rad};
}

// The corner of a long edge beyond the hinge turns.
Turns turnCorner(Panel& panel, const PanelCut& cut, double rad) {
    Edge& edge = panel.edges[cut.hingeEdge];
    UpwardEdge upwards = upwardOf(edge);
    const double atMm = upwards.waistAtMm + cut.hingeAlongMm;
    const bool isTop = cut.mouthLine == EdgeLine::top;
    if (isTop) {
        upwards.path = bentPath(upwards.path, atMm, kBendMm, rad).path;
    } else {
        const Path downwards = reversed(upwards.path);
        upwards.path = reversed(bentPath(downwards, lengthMm(downwards) - atMm, kBendMm, rad).path);
    }
    setUpward(edge, upwards);
    const bool isBack = edge.runsUp;
    Turns turns;
    (isTop ? (isBack ? turns.topBack : turns.topFront)
           : (isBack ? turns.bottomBack : turns.bottomFront)) = rad;
    return turns;
}

// Counter-clockwise where the mouth lies under a part behind it, or over a part in front of it.
double signOf(const Panel& panel, const PanelCut& cut) {
    const double ofLine = cut.mouthLine == EdgeLine::bottom ? 1 : -1;
    const Edge& hinge = panel.edges[cut.hingeEdge];
    return isLine(hinge) || hinge.runsUp ? ofLine : -ofLine;
}

}  // namespace

std::optional<Point> pointOf(const Panel& panel, const EdgePlace& place) {
    const auto e = edgeNamed(panel, place.edge);
    if (!e) return std::nullopt;
    const Edge& edge = panel.edges[*e];
    if (!isLine(edge)) return pointAtSeamPosition(edge, place.alongMm);
    const double wholeMm = lengthMm(edge.path);
    if (place.alongMm < 0 || place.alongMm > wholeMm) return std::nullopt;
    const bool isTop = edge.role == EdgeRole::top;
    return pointAtLength(edge.path, isTop ? wholeMm - place.alongMm : place.alongMm);
}

std::optional<PanelCut> cutOf(const Panel& panel, const EdgePlace& mouth, const EdgePlace& hinge) {
    const auto mouthEdge = edgeNamed(panel, mouth.edge);
    const auto hingeEdge = edgeNamed(panel, hinge.edge);
    const auto mouthAt = pointOf(panel, mouth);
    const auto hingeAt = pointOf(panel, hinge);
    if (!mouthAt || !hingeAt || *mouthEdge == *hingeEdge || !isLine(panel.edges[*mouthEdge]))
        return std::nullopt;
    const bool isTop = panel.edges[*mouthEdge].role == EdgeRole::top;
    return PanelCut{*mouthAt, *hingeAt, isTop ? EdgeLine::top : EdgeLine::bottom, *hingeEdge,
                    hinge.alongMm};
}

std::optional<OpenedPanel> openedAboutHinge(const Panel& panel, const PanelCut& cut, double rad) {
    const auto edges = longEdgesOf(panel);
    if (!edges || !waistMarkOf(panel.edges[edges->front]) || !waistMarkOf(panel.edges[edges->back]))
        return std::nullopt;
    OpenedPanel opened{panel, cut.hinge};
    const double turnRad = rad * signOf(panel, cut);
    const Turns turns = isLine(panel.edges[cut.hingeEdge])
                            ? turnBack(opened.panel, *edges, cut, turnRad)
                            : turnCorner(opened.panel, cut, turnRad);
    drawThrough(panel, opened.panel, EdgeRole::top, turns.topFront, turns.topBack);
    drawThrough(panel, opened.panel, EdgeRole::bottom, turns.bottomFront, turns.bottomBack);
    const auto laying =
        layingOnWaist(opened.panel.edges[edges->front], opened.panel.edges[edges->back]);
    place(opened.panel, *laying);
    opened.hinge = placed(cut.hinge, *laying);
    return opened;
}

}  // namespace coutil
