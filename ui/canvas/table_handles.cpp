// Places of the scene that can be dragged.
#include <QLineF>

#include "ui/canvas/table.h"

namespace coutil {

namespace {

constexpr double kReachPx = 9;

const SceneHandle* handleNamed(const TableScene& scene, const QString& id) {
    for (const SceneHandle& handle : scene.handles)
        if (handle.id == id) return &handle;
    return nullptr;
}

}  // namespace

QString Table::handleAt(const QPointF& px) const {
    QString nearest;
    double bestPx = kReachPx;
    if (!openArea().contains(px)) return nearest;
    for (const SceneHandle& handle : scene_.handles) {
        const double distancePx = QLineF(view_.toPx(handle.atMm), px).length();
        if (distancePx > bestPx) continue;
        bestPx = distancePx;
        nearest = handle.id;
    }
    return nearest;
}

bool Table::takeHandle(const QPointF& px) {
    draggedHandle_ = handleAt(px);
    if (draggedHandle_.isEmpty()) return false;
    heldOffPx_ = view_.toPx(handleNamed(scene_, draggedHandle_)->atMm) - px;
    highlights_.handle = draggedHandle_;
    highlights_.plate.clear();
    setCursor(Qt::ClosedHandCursor);
    update();
    return true;
}

void Table::dragHandle(const QPointF& px) {
    emit handleDragged(draggedHandle_, view_.toMm(px + heldOffPx_));
}

void Table::dropHandle(bool isGivenUp) {
    const QString id = draggedHandle_;
    draggedHandle_.clear();
    unsetCursor();
    highlights_.handle.clear();
    update();
    if (isGivenUp) {
        emit handleGivenUp(id);
    } else {
        emit handleReleased(id);
    }
}

void Table::pointToHandle(const QPointF& px) {
    const QString id = handleAt(px);
    if (id == highlights_.handle) return;
    highlights_.handle = id;
    if (id.isEmpty()) {
        unsetCursor();
    } else {
        setCursor(Qt::OpenHandCursor);
        emit hint(handleNamed(scene_, id)->words);
    }
    update();
}

}  // namespace coutil
