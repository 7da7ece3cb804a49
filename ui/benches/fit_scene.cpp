#include "ui/benches/fit_scene.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/alterations/find_places.h"
#include "core/alterations/upward_edge.h"
#include "core/alterations/whole_pattern.h"
#include "core/pattern/panel_key.h"
#include "ui/benches/fit_line_fades.h"
#include "ui/benches/fit_places.h"
#include "ui/benches/pattern_scene.h"
#include "ui/canvas/painter_path.h"
#include "ui/words/alteration_places.h"
#include "ui/words/mark_words.h"
#include "ui/words/trade_words.h"

namespace coutil {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FitScene)
};

// Old lines of the edges that are no longer what they were.
QPainterPath changedLines(const Panel& old, const Panel& now, const Placement& placement) {
    QPainterPath lines;
    for (const Edge& edge : old.edges) {
        const auto same = edgeNamed(now, edge.name);
        if (same && now.edges[*same].path == edge.path) continue;
        lines.addPath(painterPath(placed(edge.path, placement)));
    }
    return lines;
}

void addOldLines(TableScene& scene, const FitView& view, const std::vector<Placement>& placements) {
    if (view.before == nullptr) return;
    const bool mustDouble = isWhole(*view.pattern) && !isWhole(*view.before);
    const Pattern old = mustDouble ? wholeOf(*view.before) : *view.before;
    for (std::size_t p = 0; p < view.pattern->panels.size(); ++p) {
        const Panel& now = view.pattern->panels[p];
        const auto same = panelWithKey(old, panelKey(now));
        if (same) scene.panels[p].before = changedLines(old.panels[*same], now, placements[p]);
    }
}

SceneSign::Shape shapeOf(MarkKind kind) {
    switch (kind) {
        case MarkKind::pinned:
        case MarkKind::shorter:
            return SceneSign::Shape::towards;
        case MarkKind::opened:
        case MarkKind::longer:
            return SceneSign::Shape::apart;
        case MarkKind::gapes:
        case MarkKind::cutsIn:
        case MarkKind::bonePokes:
            return SceneSign::Shape::dot;
        default:
            return SceneSign::Shape::along;
    }
}

QString signWords(const Mark& mark, LengthUnit unit) {
    return isNote(mark.kind) ? markAmountText(mark, unit) : lengthText(mark.amountMm, unit);
}

void addSigns(TableScene& scene, const FitView& view, const std::vector<Placement>& placements) {
    for (const Mark& mark : view.marks) {
        for (const MarkSpot& spot : spotsOf(mark, *view.pattern)) {
            SceneSign& sign = scene.signs.emplace_back();
            sign.shape = shapeOf(mark.kind);
            sign.atMm = painterPoint(placed(spot.at, placements[spot.panel]));
            sign.direction = painterPoint(Point(spot.across));
            if (spot.isFirst) sign.words = signWords(mark, view.unit);
            sign.isPale = !mark.isOn;
            sign.isLit = mark.id == view.picked;
        }
    }
}

const Mark* pickedMark(const FitView& view) {
    const auto found = std::ranges::find(view.marks, view.picked, &Mark::id);
    return found == view.marks.end() ? nullptr : &*found;
}

// The edges the handles lie on: of the seam on the first side the mark concerns.
struct HandleEdges {
    EdgeRef front;
    std::optional<EdgeRef> back;
};
std::optional<HandleEdges> handleEdges(const FitView& view, const std::string& seam,
                                       BodySide side) {
    const auto seams = seamsNamed(*view.pattern, seam, side);
    if (!seams.empty() && !isCentreName(seam)) {
        const Seam& found = view.pattern->seams[seams.front()];
        return HandleEdges{found.front, found.back};
    }
    const auto edges = edgesNamed(*view.pattern, seam, side);
    if (edges.empty() || !edgeAt(*view.pattern, edges.front()).waistMarkAtMm) return std::nullopt;
    return HandleEdges{edges.front(), std::nullopt};
}

Point onEdge(const FitView& view, const EdgeRef& ref, double positionMm) {
    const UpwardEdge up = upwardOf(edgeAt(*view.pattern, ref));
    return pointAtLength(up.path, std::clamp(up.waistAtMm + positionMm, 0.0, lengthMm(up.path)));
}

class Handles {
  public:
    Handles(TableScene& scene, const FitView& view, const std::vector<Placement>& placements)
        : scene_(scene), view_(view), placements_(placements) {}

    void add() {
        if (view_.line != nullptr) {
            const auto fades =
                lineFadeHandles(*view_.pattern, *view_.line, view_.shapeSide, placements_);
            scene_.handles.insert(scene_.handles.end(), fades.begin(), fades.end());
        }
        const Mark* mark = pickedMark(view_);
        const auto* place = mark == nullptr ? nullptr : std::get_if<SeamPlace>(&mark->place);
        if (place == nullptr) return;
        if (const auto edges = handleEdges(view_, place->seam, mark->side)) {
            addAt(kMarkHandle, edges->front, place->positionMm,
                  Words::tr("Drag along the seam: where the mark was read"));
        }
        if (view_.shape != nullptr) addShape(place->positionMm);
    }

  private:
    void addAt(const char* id, const EdgeRef& ref, double positionMm, const QString& words) {
        scene_.handles.push_back({QLatin1String(id), onTable(ref, positionMm), words});
    }
    [[nodiscard]] QPointF onTable(const EdgeRef& ref, double positionMm) const {
        return painterPoint(placed(onEdge(view_, ref, positionMm), placements_[ref.panel]));
    }
    void addShape(double markAtMm) {
        const ShapeSeam& shape = *view_.shape;
        const auto edges = handleEdges(view_, shape.seam, view_.shapeSide);
        if (!edges || shape.amounts.empty()) return;
        const auto [low, high] =
            std::ranges::minmax_element(shape.amounts, {}, &AmountAt::positionMm);
        if (shape.up.overMm) {
            addAt(kFadeUpHandle, edges->front, high->positionMm + *shape.up.overMm,
                  Words::tr("Drag along the seam: where the change ends above"));
        }
        if (shape.down.overMm) {
            addAt(kFadeDownHandle, edges->front, low->positionMm - *shape.down.overMm,
                  Words::tr("Drag along the seam: where the change ends below"));
        }
        if (!edges->back) return;
        const QPointF front = onTable(edges->front, markAtMm);
        const QPointF back = onTable(*edges->back, markAtMm);
        scene_.handles.push_back({QLatin1String(kSplitHandle),
                                  front + (back - front) * (1 - shape.frontPart),
                                  Words::tr("Drag across: how much each panel gives")});
    }

    TableScene& scene_;
    const FitView& view_;
    const std::vector<Placement>& placements_;
};

// Seams tell the place under the pointer, so that a click is a reading.
void addPlaces(TableScene& scene, const FitView& view, const std::vector<Placement>& placements) {
    const Pattern& pattern = *view.pattern;
    for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
        for (std::size_t e = 0; e < pattern.panels[p].edges.size(); ++e) {
            const std::string seam = seamNameOf(pattern, {p, e});
            if (seam.empty() || !pattern.panels[p].edges[e].waistMarkAtMm) continue;
            const Edge edge = pattern.panels[p].edges[e];
            const Vector shift = placements[p].shift;
            scene.panels[p].edges[e].figuresAt = [edge, shift, seam,
                                                  unit = view.unit](const QPointF& mm) {
                const double at = seamPositionNear(edge, Point(mm.x(), mm.y()) - shift).value_or(0);
                return markPlaceText(SeamPlace{seam, at}, unit);
            };
        }
    }
}

}  // namespace

TableScene fitScene(const FitView& view) {
    TableScene scene = patternScene(*view.pattern, view.unit);
    const auto placements = masterPlacements(*view.pattern, kSpaceBetweenPanelsMm);
    addOldLines(scene, view, placements);
    addPlaces(scene, view, placements);
    addSigns(scene, view, placements);
    Handles(scene, view, placements).add();
    return scene;
}

std::optional<double> handleMeans(const FitView& view, const std::string& handle,
                                  const QPointF& mm) {
    const Mark* mark = pickedMark(view);
    const auto* place = mark == nullptr ? nullptr : std::get_if<SeamPlace>(&mark->place);
    if (place == nullptr) return std::nullopt;
    const BodySide side = handle == kMarkHandle ? mark->side : view.shapeSide;
    const auto edges = handleEdges(view, place->seam, side);
    if (!edges) return std::nullopt;
    const auto placements = masterPlacements(*view.pattern, kSpaceBetweenPanelsMm);
    const Point at(mm.x(), mm.y());
    if (handle != kSplitHandle) {
        return seamPositionNear(edgeAt(*view.pattern, edges->front),
                                at - placements[edges->front.panel].shift);
    }
    if (!edges->back) return std::nullopt;
    const auto onTable = [&](const EdgeRef& ref) {
        return placed(onEdge(view, ref, place->positionMm), placements[ref.panel]);
    };
    const Vector way = onTable(*edges->back) - onTable(edges->front);
    const double towardsBack = (at - onTable(edges->front)).dot(way) / way.squaredNorm();
    return std::clamp(std::round((1 - towardsBack) * 20) / 20, 0.0, 1.0);
}

}  // namespace coutil
