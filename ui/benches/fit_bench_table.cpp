#include <algorithm>

#include "ui/benches/fit_bench.h"
#include "ui/benches/fit_line_fades.h"
#include "ui/benches/fit_mark_editor.h"
#include "ui/benches/fit_mark_forms.h"
#include "ui/benches/fit_places.h"
#include "ui/benches/fit_shape_part.h"
#include "ui/benches/pattern_scene.h"
#include "ui/benches/shown_title.h"
#include "ui/canvas/table.h"
#include "ui/document/fitting_change.h"
#include "ui/document/folio_document.h"
#include "ui/words/alteration_places.h"
#include "ui/words/mark_words.h"

// What the Fit bench lays on the table, and what is done there.
namespace coutil {

namespace {

constexpr double kSignReachPx = 12;
constexpr double kShortestFadeMm = 5;

}  // namespace

void FitBench::connectTable() {
    connect(&table(), &Table::clickedAt, this, &FitBench::takeClick);
    connect(&table(), &Table::activated, this, [this](const TablePlace& place) {
        const auto p = static_cast<std::size_t>(place.panel);
        if (!isEntered() || p >= table().scene().panels.size()) return;
        const auto& edges = table().scene().panels[p].edges;
        if (place.kind != TablePlace::Kind::edge) return;
        const auto& path = edges[static_cast<std::size_t>(place.edge)].path;
        takePlace(place, path.pointAtPercent(0.5));
        editor_->startPlace();
    });
    connect(&table(), &Table::pointerAt, this, [this](std::optional<QPointF> mm) {
        if (isEntered() && mm) tellPlace(*mm);
    });
    connect(&table(), &Table::handleDragged, this, [this](const QString& id, const QPointF& mm) {
        if (isEntered()) dragHandle(id.toStdString(), mm);
    });
    connect(&table(), &Table::handleReleased, this, [this] { endDrag(false); });
    connect(&table(), &Table::handleGivenUp, this, [this] { endDrag(true); });
}

FitView FitBench::viewNow() const {
    FitView view;
    const auto& pattern = document().lastGoodDraft().pattern;
    view.pattern = pattern ? &*pattern : nullptr;
    view.before = before_;
    view.unit = document().folio().unit;
    view.picked = picked_;
    if (const Fitting* shown = fitting()) {
        view.marks = shown->marks;
        // Marks of another mock-up are shown where they were read, but count for nothing here.
        if (!isDrawn(*shown))
            for (Mark& mark : view.marks) mark.isOn = false;
    }
    if (const Alteration* shape = shapeOfPicked()) {
        view.shape = std::get_if<ShapeSeam>(&shape->change);
        view.line = std::get_if<ReshapeEdge>(&shape->change);
        view.shapeSide = shape->side;
    }
    return view;
}

TableScene FitBench::sceneNow() {
    chooseFitting();
    before_ = ground_.of(document());
    const FitView view = viewNow();
    TableScene scene;
    if (view.pattern != nullptr) scene = fitScene(view);
    scene.unit = view.unit;
    captionScene(scene, document());
    scene.emptyText = nothingYet();
    return scene;
}

ProblemSpot FitBench::spotNow(const Problem& problem) const {
    const auto& pattern = document().lastGoodDraft().pattern;
    return pattern ? spotOf(problem, *pattern) : ProblemSpot{};
}

// What the picked mark's seam, or its top or bottom edge, became, where it became anything.
const Alteration* FitBench::shapeOfPicked() const {
    const Pencil* pencil = document().pencil();
    if (pencil == nullptr || picked_.empty()) return nullptr;
    const auto found = std::ranges::find_if(pencil->alterations, [&](const Alteration& each) {
        return (std::holds_alternative<ShapeSeam>(each.change) ||
                std::holds_alternative<ReshapeEdge>(each.change)) &&
               std::ranges::find(each.marks, picked_) != each.marks.end();
    });
    return found == pencil->alterations.end() ? nullptr : &*found;
}

void FitBench::tellPlace(const QPointF& mm) {
    const TablePlace& place = table().pointed();
    const auto& pattern = document().lastGoodDraft().pattern;
    if (!pattern || fitting() == nullptr || place.kind == TablePlace::Kind::nothing) return;
    if (!table().handleAt(table().view().toPx(mm)).isEmpty()) return;
    const auto pointed = markPointedAt(*pattern, masterPlacements(*pattern, kSpaceBetweenPanelsMm),
                                       place, mm, editor_->mark());
    if (!pointed) return;
    emit hint(tr("%1 · a click marks it here")
                  .arg(markPlaceText(pointed->place, document().folio().unit)));
}

std::optional<std::string> FitBench::markSignAt(const QPointF& mm) const {
    const auto& pattern = document().lastGoodDraft().pattern;
    const Fitting* shown = fitting();
    if (!pattern || shown == nullptr) return std::nullopt;
    const auto placements = masterPlacements(*pattern, kSpaceBetweenPanelsMm);
    const double reachMm = kSignReachPx / table().view().pxPerMm();
    for (const Mark& mark : shown->marks) {
        for (const MarkSpot& spot : spotsOf(mark, *pattern)) {
            const Point at = placed(spot.at, placements[spot.panel]);
            if ((at - Point(mm.x(), mm.y())).norm() < reachMm) return mark.id;
        }
    }
    return std::nullopt;
}

void FitBench::takeClick(const TablePlace& place, const QPointF& mm) {
    if (!isEntered() || fitting() == nullptr) return;
    if (const auto mark = markSignAt(mm)) {
        pickMark(*mark);
        editor_->startTyping();
        return;
    }
    takePlace(place, mm);
    table().pickPanel(-1);  // its light would hide how far the new line is from the old one
}

// A new mark at the place, its amount to be typed at once.
void FitBench::takePlace(const TablePlace& place, const QPointF& mm) {
    const auto& pattern = document().lastGoodDraft().pattern;
    if (!pattern || fitting() == nullptr) return;
    const auto pointed = markPointedAt(*pattern, masterPlacements(*pattern, kSpaceBetweenPanelsMm),
                                       place, mm, editor_->mark());
    if (!pointed) return;
    document().endMerging();
    picked_.clear();
    draft_ = {.id = {}, .kind = pointed->kind, .place = pointed->place, .side = pointed->side};
    followNow();
    editor_->startTyping();
}

void FitBench::beginDrag() {
    if (beforeDrag_) return;
    document().endMerging();
    beforeDrag_ = document().folio();
}

void FitBench::dragLineFade(const FitView& view, const std::string& handle, const QPointF& mm) {
    const Alteration* shape = shapeOfPicked();
    if (shape == nullptr || view.pattern == nullptr) return;
    const auto after =
        lineFadeDragged(*view.pattern, *view.line, view.shapeSide,
                        masterPlacements(*view.pattern, kSpaceBetweenPanelsMm), handle, mm);
    if (!after) return;
    beginDrag();
    changeShape(shape->id, *after, tr("drag on %1").arg(seamName(std::string(keyOf(after->line)))),
                QString::fromStdString(handle));
}

void FitBench::dragHandle(const std::string& handle, const QPointF& mm) {
    const FitView view = viewNow();
    if (view.line != nullptr) {
        dragLineFade(view, handle, mm);
        return;
    }
    const auto means = handleMeans(view, handle, mm);
    const Fitting* shown = fitting();
    if (!means || shown == nullptr) return;
    beginDrag();
    if (handle == kMarkHandle) {
        Mark moved = *std::ranges::find(shown->marks, picked_, &Mark::id);
        std::get<SeamPlace>(moved.place).positionMm = *means;
        changeMark(moved, QStringLiteral("along"));
        return;
    }
    const Alteration* shape = shapeOfPicked();
    if (shape == nullptr || view.shape == nullptr) return;
    ShapeSeam after = std::get<ShapeSeam>(shape->change);
    const auto [low, high] = std::ranges::minmax_element(after.amounts, {}, &AmountAt::positionMm);
    if (handle == kSplitHandle) {
        after.frontPart = *means;
    } else if (handle == kFadeUpHandle) {
        after.up.overMm = std::max(kShortestFadeMm, *means - high->positionMm);
    } else {
        after.down.overMm = std::max(kShortestFadeMm, low->positionMm - *means);
    }
    changeShape(shape->id, after, tr("drag on %1").arg(QString::fromStdString(after.seam)),
                QString::fromStdString(handle));
}

void FitBench::endDrag(bool isGivenUp) {
    if (!beforeDrag_) return;
    const Folio before = *beforeDrag_;
    beforeDrag_.reset();
    document().endMerging();
    if (isGivenUp && document().folio() != before) document().undoStack().undo();
}

void FitBench::changeShape(const std::string& alteration, const Change& after, const QString& words,
                           const QString& field) {
    document().changePencil(
        [&](Pencil& pencil) {
            for (Alteration& each : pencil.alterations)
                if (each.id == alteration) each.change = after;
        },
        words, QStringLiteral("shape %1 %2").arg(QString::fromStdString(alteration), field));
}

}  // namespace coutil
