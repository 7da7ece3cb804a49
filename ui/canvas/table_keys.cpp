// Everything the pointer can do, by keyboard.
#include <QKeyEvent>

#include "ui/canvas/table.h"

namespace coutil {

namespace {

constexpr double kPanPx = 40;
constexpr double kZoomPerKey = 1.25;

}  // namespace

void Table::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_F:
            if (event->modifiers() != Qt::NoModifier) break;
            fit();
            return;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            zoomBy(kZoomPerKey);
            return;
        case Qt::Key_Minus:
            zoomBy(1 / kZoomPerKey);
            return;
        case Qt::Key_Space:
            if (!event->isAutoRepeat()) {
                isSpaceHeld_ = true;
                setCursor(Qt::OpenHandCursor);
            }
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (picked().kind == TablePlace::Kind::nothing) break;
            emit activated(picked());
            return;
        case Qt::Key_Escape:
            if (!draggedHandle_.isEmpty()) {
                dropHandle(true);
                return;
            }
            if (picked().kind == TablePlace::Kind::nothing) {
                emit letGo();
                break;
            }
            pickPanel(picked().kind == TablePlace::Kind::edge ? picked().panel : -1);
            return;
        default:
            if (stepPicked(event->key()) || panByKey(event->key(), event->modifiers())) return;
    }
    QWidget::keyPressEvent(event);
}

void Table::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        isSpaceHeld_ = false;
        if (!isPanning_) unsetCursor();
        return;
    }
    QWidget::keyReleaseEvent(event);
}

// A key released elsewhere must not leave the table in its moving state.
void Table::focusOutEvent(QFocusEvent* event) {
    isSpaceHeld_ = false;
    if (!isPanning_) unsetCursor();
    QWidget::focusOutEvent(event);
}

bool Table::panByKey(int key, Qt::KeyboardModifiers modifiers) {
    if (picked().kind != TablePlace::Kind::nothing) return false;
    const double step = modifiers.testFlag(Qt::ShiftModifier) ? kPanPx * 5 : kPanPx;
    QPointF by;
    if (key == Qt::Key_Left) by = {step, 0};
    if (key == Qt::Key_Right) by = {-step, 0};
    if (key == Qt::Key_Up) by = {0, step};
    if (key == Qt::Key_Down) by = {0, -step};
    if (by.isNull()) return false;
    changeView(view_.pannedBy(by), false);
    return true;
}

// Left and right go to the neighbouring panel or sheet, up and down through a panel's edges.
bool Table::stepPicked(int key) {
    const TablePlace& now = picked();
    const int step = key == Qt::Key_Left || key == Qt::Key_Up      ? -1
                     : key == Qt::Key_Right || key == Qt::Key_Down ? 1
                                                                   : 0;
    if (step == 0 || now.kind == TablePlace::Kind::nothing) return false;
    if (now.kind == TablePlace::Kind::sheet) {
        TablePlace next = now;
        next.sheet = now.sheet + step;
        if (stillThere(next)) pick(next);
        return true;
    }
    if (key == Qt::Key_Left || key == Qt::Key_Right) {
        const TablePlace next{TablePlace::Kind::panel, now.panel + step, -1, -1, -1};
        if (stillThere(next)) pick(next);
        return true;
    }
    const auto count =
        static_cast<int>(scene_.panels[static_cast<std::size_t>(now.panel)].edges.size());
    if (count == 0) return true;
    const int edge = now.edge < 0 ? (step > 0 ? 0 : count - 1) : (now.edge + step + count) % count;
    pick({TablePlace::Kind::edge, now.panel, edge, -1, -1});
    return true;
}

// Tab goes through the panels (or sheets) and then on to the next widget, so that the keyboard is
// never caught.
bool Table::focusNextPrevChild(bool next) {
    const bool hasSheets = !scene_.sheets.empty();
    const auto count = static_cast<int>(hasSheets ? scene_.sheets.size() : scene_.panels.size());
    const int now = hasSheets ? picked().sheet : picked().panel;
    const int wanted = next ? now + 1 : (now < 0 ? -1 : now - 1);
    if (wanted < 0 || wanted >= count) {
        if (now >= 0) pick({});
        return QWidget::focusNextPrevChild(next);
    }
    if (hasSheets) {
        pick({TablePlace::Kind::sheet, -1, -1, -1, wanted});
    } else {
        pickPanel(wanted);
    }
    return true;
}

}  // namespace coutil
