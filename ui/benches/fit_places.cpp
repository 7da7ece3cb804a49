#include "ui/benches/fit_places.h"

#include <algorithm>
#include <cmath>

#include "core/alterations/find_places.h"
#include "core/alterations/upward_edge.h"
#include "core/block/style.h"

namespace coutil {

namespace {

struct Spots {
    const Mark& mark;
    const Pattern& pattern;
    std::vector<MarkSpot> found{};

    void onEdge(const EdgeRef& ref, double positionMm, bool isFirst) {
        const UpwardEdge up = upwardOf(edgeAt(pattern, ref));
        const double alongMm = up.waistAtMm + positionMm;
        if (alongMm < 0 || alongMm > lengthMm(up.path)) return;
        const PathPosition at = positionAtLength(up.path, alongMm);
        found.push_back({ref.panel, pointAt(up.path, at),
                         inwardOf(tangentAt(up.path, at), up.hasPanelOnLeft), isFirst});
    }
    void onSeam(const std::string& seam, double positionMm) {
        for (const std::size_t s : seamsNamed(pattern, seam, mark.side)) {
            onEdge(pattern.seams[s].front, positionMm, true);
            onEdge(pattern.seams[s].back, positionMm, false);
        }
        if (!isCentreName(seam)) return;
        for (const EdgeRef& ref : edgesNamed(pattern, seam, mark.side))
            if (edgeAt(pattern, ref).waistMarkAtMm) onEdge(ref, positionMm, true);
    }
    void inPanels(const std::string& name, double heightMm, const Vector& across) {
        for (const std::size_t p : panelsNamed(pattern, name, mark.side)) {
            if (const auto crossing = crossingAtHeight(pattern.panels[p], heightMm))
                found.push_back({p, (crossing->front + crossing->back) / 2, across});
        }
    }
    void onLine(const std::string& panel, EdgeLine line, double alongMm, const Vector& across) {
        const EdgeRole role = line == EdgeLine::top ? EdgeRole::top : EdgeRole::bottom;
        for (const std::size_t p : panelsNamed(pattern, panel, mark.side)) {
            const auto e = edgeWithRole(pattern.panels[p], role);
            if (!e) continue;
            const Path& path = pattern.panels[p].edges[*e].path;
            const double fromStart = line == EdgeLine::top ? lengthMm(path) - alongMm : alongMm;
            found.push_back({p, pointAtLength(path, fromStart), across});
        }
    }
    void atSeamEnd(const std::string& seam, EdgeLine line, const Vector& across) {
        const auto add = [&](const EdgeRef& ref, bool isFirst) {
            const Path path = upwardOf(edgeAt(pattern, ref)).path;
            const Point at = line == EdgeLine::top ? path.end() : path.start();
            found.push_back({ref.panel, at, across, isFirst});
        };
        for (const std::size_t s : seamsNamed(pattern, seam, mark.side)) {
            add(pattern.seams[s].front, true);
            add(pattern.seams[s].back, false);
        }
        if (!isCentreName(seam)) return;
        for (const EdgeRef& ref : edgesNamed(pattern, seam, mark.side)) add(ref, true);
    }
    // At the front edge of the first panel of each side.
    void atHeight(double heightMm) {
        for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
            const bool isFront = p == 0 || pattern.panels[p].side != pattern.panels[p - 1].side;
            if (!isFront || !concerns(mark.side, pattern.panels[p].side)) continue;
            if (const auto crossing = crossingAtHeight(pattern.panels[p], heightMm))
                found.push_back({p, crossing->front, Vector::UnitY()});
        }
    }
    [[nodiscard]] std::optional<double> heightOf(const std::string& level) const {
        const auto row = std::ranges::find(pattern.levels, level, &Level::name);
        if (row == pattern.levels.end()) return std::nullopt;
        return row->heightMm;
    }
    // The bust point lies on the seam behind the first panel, at the bust.
    void atBustPoint() {
        const auto bust = heightOf(std::string(keyOf(LevelId::bust)));
        if (!bust || pattern.seams.empty()) return;
        const Vector across = mark.kind == MarkKind::bustPointWider    ? Vector(Vector::UnitX())
                              : mark.kind == MarkKind::bustPointHigher ? Vector(Vector::UnitY())
                                                                       : Vector(-Vector::UnitY());
        for (const std::size_t s : seamsNamed(pattern, pattern.seams.front().name, mark.side)) {
            const std::size_t p = pattern.seams[s].front.panel;
            if (const auto crossing = crossingAtHeight(pattern.panels[p], *bust))
                found.push_back({p, crossing->back, across});
        }
    }

    void operator()(std::monostate) { atBustPoint(); }
    void operator()(const SeamPlace& place) { onSeam(place.seam, place.positionMm); }
    void operator()(const TuckPlace& place) {
        inPanels(place.panel, place.heightMm, Vector::UnitX());
    }
    void operator()(const SlitPlace& place) {
        onLine(place.panel, place.from, place.alongMm, Vector::UnitX());
    }
    void operator()(const OnLinePlace& place) {
        const bool isUp = mark.kind == MarkKind::raise;
        const Vector across = isUp ? Vector(Vector::UnitY()) : Vector(-Vector::UnitY());
        if (!place.at.seam.empty()) {
            atSeamEnd(place.at.seam, place.line, across);
        } else {
            onLine(place.at.panel, place.line, place.at.alongMm, across);
        }
    }
    void operator()(const HeightPlace& place) {
        const auto height = place.level.empty() ? place.heightMm : heightOf(place.level);
        if (height) atHeight(*height);
    }
};

BodySide sideOf(const Panel& panel) {
    if (panel.side == PanelSide::both) return BodySide::both;
    return panel.side == PanelSide::left ? BodySide::left : BodySide::right;
}

Point inFrame(const QPointF& mm, const Placement& placement) {
    return Point(mm.x(), mm.y()) - placement.shift;
}

PointedMark onLongEdge(const Pattern& pattern, const EdgeRef& ref, const Point& at,
                       const Mark& draft) {
    PointedMark made{draft.kind, draft.place, BodySide::both};
    const double position = seamPositionNear(edgeAt(pattern, ref), at).value_or(0);
    const bool isOfSeam = draft.kind == MarkKind::pinned || draft.kind == MarkKind::opened ||
                          draft.kind == MarkKind::gapes || draft.kind == MarkKind::cutsIn ||
                          draft.kind == MarkKind::bonePokes;
    if (!isOfSeam) made.kind = MarkKind::pinned;
    made.place = SeamPlace{seamNameOf(pattern, ref), position};
    return made;
}

PointedMark onLine(const Pattern& pattern, const EdgeRef& ref, const Point& at, const Mark& draft) {
    const Edge& edge = edgeAt(pattern, ref);
    const EdgeLine line = edge.role == EdgeRole::top ? EdgeLine::top : EdgeLine::bottom;
    const double fromStart = lengthToMm(edge.path, closestOn(edge.path, at).position);
    const double along =
        std::round(line == EdgeLine::top ? lengthMm(edge.path) - fromStart : fromStart);
    const std::string& panel = pattern.panels[ref.panel].name;
    PointedMark made{draft.kind, {}, BodySide::both};
    if (const auto* slit = std::get_if<SlitPlace>(&draft.place)) {
        made.place = SlitPlace{panel, line, along, slit->lengthMm};
        return made;
    }
    if (made.kind != MarkKind::lower) made.kind = MarkKind::raise;
    made.place = OnLinePlace{line, {.panel = panel, .alongMm = along}};
    return made;
}

}  // namespace

std::vector<MarkSpot> spotsOf(const Mark& mark, const Pattern& pattern) {
    Spots spots{mark, pattern};
    std::visit(spots, mark.place);
    return spots.found;
}

std::optional<double> seamPositionNear(const Edge& edge, const Point& point) {
    if (!edge.waistMarkAtMm) return std::nullopt;
    const UpwardEdge up = upwardOf(edge);
    const double alongMm = lengthToMm(up.path, closestOn(up.path, point).position);
    const double rounded = std::round(alongMm - up.waistAtMm);
    // Rounding must not lead off the edge.
    return std::clamp(rounded, std::ceil(-up.waistAtMm),
                      std::floor(lengthMm(up.path) - up.waistAtMm));
}

std::string seamNameOf(const Pattern& pattern, const EdgeRef& edge) {
    if (const Seam* seam = seamOf(pattern, edge)) {
        if (!isCentreName(edgeAt(pattern, edge).name)) return seam->name;
    }
    const std::string& name = edgeAt(pattern, edge).name;
    return isCentreName(name) ? name : std::string();
}

std::optional<PointedMark> markPointedAt(const Pattern& pattern,
                                         const std::vector<Placement>& placements,
                                         const TablePlace& place, const QPointF& mm,
                                         const Mark& draft) {
    if (place.kind == TablePlace::Kind::level) {
        const auto level = static_cast<std::size_t>(place.level) % pattern.levels.size();
        const bool isLength = draft.kind == MarkKind::longer || draft.kind == MarkKind::shorter;
        if (!isLength) return std::nullopt;
        return PointedMark{draft.kind, HeightPlace{.level = pattern.levels[level].name},
                           BodySide::both};
    }
    const auto p = static_cast<std::size_t>(place.panel);
    if (p >= pattern.panels.size()) return std::nullopt;
    const Point at = inFrame(mm, placements[p]);
    PointedMark made{draft.kind, draft.place, BodySide::both};
    if (place.kind == TablePlace::Kind::edge) {
        const EdgeRef ref{p, static_cast<std::size_t>(place.edge)};
        const EdgeRole role = edgeAt(pattern, ref).role;
        const bool isLine = role == EdgeRole::top || role == EdgeRole::bottom;
        if (!isLine && seamNameOf(pattern, ref).empty()) return std::nullopt;
        made = isLine ? onLine(pattern, ref, at, draft) : onLongEdge(pattern, ref, at, draft);
    } else if (std::holds_alternative<TuckPlace>(draft.place)) {
        made.place = TuckPlace{pattern.panels[p].name, std::round(at.y())};
    } else if (std::holds_alternative<HeightPlace>(draft.place)) {
        made.place = HeightPlace{.heightMm = std::round(at.y())};
    } else {
        return std::nullopt;
    }
    made.side = sideOf(pattern.panels[p]);
    return made;
}

}  // namespace coutil
