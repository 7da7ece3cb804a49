// Wheel, mouse, trackpad.
#include <QInputDevice>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QWheelEvent>
#include <cmath>

#include "ui/canvas/table.h"

namespace coutil {

namespace {

constexpr double kZoomPerNotch = 1.2;
constexpr double kNotch = 120;
constexpr double kDragStartsPx = 4;

// Two fingers on a trackpad scroll in pixels; a wheel in notches.
bool comesFromTrackpad(const QWheelEvent& event) {
    return event.device()->type() == QInputDevice::DeviceType::TouchPad ||
           (!event.pixelDelta().isNull() && event.phase() != Qt::NoScrollPhase);
}

}  // namespace

bool Table::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture && pinch(static_cast<QNativeGestureEvent*>(event))) {
        return true;
    }
    return QWidget::event(event);
}

bool Table::pinch(QNativeGestureEvent* event) {
    if (event->gestureType() != Qt::ZoomNativeGesture) return false;
    changeView(view_.zoomedAbout(event->position(), 1 + event->value()), false);
    return true;
}

void Table::wheelEvent(QWheelEvent* event) {
    const bool isZoomForced = event->modifiers().testFlag(Qt::ControlModifier);
    const bool isSideways = event->modifiers().testFlag(Qt::ShiftModifier);
    const bool pans = !isZoomForced && (isSideways || comesFromTrackpad(*event) || wheelPans_);
    if (pans) {
        QPointF by = event->pixelDelta().isNull() ? QPointF(event->angleDelta()) / 2
                                                  : QPointF(event->pixelDelta());
        if (isSideways && by.x() == 0) by = QPointF(by.y(), 0);
        changeView(view_.pannedBy(by), false);
    } else {
        const double notches = event->angleDelta().y() / kNotch;
        if (notches != 0) {
            changeView(view_.zoomedAbout(event->position(), std::pow(kZoomPerNotch, notches)),
                       false);
        }
    }
    pointTo(event->position());
    emit pointerAt(view_.toMm(event->position()));
    event->accept();
}

void Table::mousePressEvent(QMouseEvent* event) {
    pressedPx_ = lastPx_ = event->position();
    wasDragged_ = false;
    if (event->button() == Qt::MiddleButton ||
        (event->button() == Qt::LeftButton && isSpaceHeld_)) {
        isPanning_ = true;
        setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::LeftButton) {
        takeHandle(pressedPx_);
    }
}

void Table::mouseMoveEvent(QMouseEvent* event) {
    const QPointF px = event->position();
    if (QPointF(px - pressedPx_).manhattanLength() > kDragStartsPx) wasDragged_ = true;
    if (!draggedHandle_.isEmpty()) {
        if (wasDragged_) dragHandle(px);
    } else if (isPanning_) {
        changeView(view_.pannedBy(px - lastPx_), false);
        lastPx_ = px;
    } else {
        pointTo(px);
    }
    emit pointerAt(view_.toMm(px));
}

void Table::mouseReleaseEvent(QMouseEvent* event) {
    if (isPanning_) {
        stopPanning();
        return;
    }
    if (event->button() != Qt::LeftButton) return;
    if (!draggedHandle_.isEmpty()) {
        dropHandle(false);
        return;
    }
    if (wasDragged_) return;
    const TablePlace place = placeAt(event->position());
    pick(place);
    emit clicked(place);
    emit clickedAt(place, view_.toMm(event->position()));
}

void Table::mouseDoubleClickEvent(QMouseEvent* event) {
    pressedPx_ = lastPx_ = event->position();
    wasDragged_ = false;
    const TablePlace place = placeAt(event->position());
    if (place.kind != TablePlace::Kind::nothing) emit activated(place);
}

void Table::stopPanning() {
    isPanning_ = false;
    if (isSpaceHeld_) {
        setCursor(Qt::OpenHandCursor);
    } else {
        unsetCursor();
    }
}

void Table::leaveEvent(QEvent*) {
    highlights_.pointed = {};
    highlights_.plate.clear();
    highlights_.handle.clear();
    update();
    emit pointedAt({});
    emit pointerAt(std::nullopt);
}

}  // namespace coutil
