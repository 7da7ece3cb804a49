#include <QGuiApplication>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>
#include <optional>

#include "ui/projecting/calibration_tool.h"
#include "ui/projecting/projector_view.h"
#include "ui/words/trade_words.h"

// The keys of the projector, and the line that tells them.
namespace coutil {

namespace {

constexpr double kStepMm = 10;
constexpr double kTurnDeg = 15;
constexpr double kThinnestPx = 1;
constexpr double kThickestPx = 20;

// Shift ten times, Alt a tenth, as everywhere.
double stepFactor(Qt::KeyboardModifiers modifiers) {
    if (modifiers.testFlag(Qt::AltModifier)) return 0.1;
    return modifiers.testFlag(Qt::ShiftModifier) ? 10 : 1;
}

ProjectedLines after(ProjectedLines lines) {
    switch (lines) {
        case ProjectedLines::both:
            return ProjectedLines::cuttingOnly;
        case ProjectedLines::cuttingOnly:
            return ProjectedLines::sewingOnly;
        case ProjectedLines::sewingOnly:
            break;
    }
    return ProjectedLines::both;
}

}  // namespace

// Tab goes from panel to panel, not from widget to widget.
bool ProjectorView::event(QEvent* event) {
    if (event->type() == QEvent::KeyPress && calibrating_->isHidden()) {
        const auto& key = static_cast<QKeyEvent&>(*event);
        if (key.key() == Qt::Key_Tab || key.key() == Qt::Key_Backtab) {
            step(key.key() == Qt::Key_Tab ? 1 : -1);
            return true;
        }
    }
    return QWidget::event(event);
}

void ProjectorView::keyPressEvent(QKeyEvent* event) {
    if (!calibrating_->isHidden()) return QWidget::keyPressEvent(event);
    if (changeLook(*event) || moveDrawing(*event)) return;
    switch (event->key()) {
        case Qt::Key_Escape:
            close();
            return;
        case Qt::Key_PageDown:
            return step(1);
        case Qt::Key_PageUp:
            return step(-1);
        case Qt::Key_R:
            return turnDrawing(*event);
        case Qt::Key_Home:
        case Qt::Key_0:
            view_.turnDeg = 0;
            return goTo(std::max(piece_, pieces_.empty() ? -1 : 0));
        case Qt::Key_M:
            view_.isTurnedOver = !view_.isTurnedOver;
            return setView(view_);
        case Qt::Key_O:
            onlyPiece_ = !onlyPiece_;
            return setView(view_);
        case Qt::Key_C:
            return calibrate();
        case Qt::Key_S:
            return toNextScreen();
        case Qt::Key_H:
            keyLine_->setVisible(keyLine_->isHidden());
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

bool ProjectorView::changeLook(QKeyEvent& event) {
    ProjectorLook look = look_;
    switch (event.key()) {
        case Qt::Key_I:
            look.isLightOnBlack = !look.isLightOnBlack;
            break;
        case Qt::Key_Plus:
        case Qt::Key_Equal:  // the same key without Shift on many keyboards
            look.lineWidthPx = std::min(kThickestPx, look.lineWidthPx + 1);
            break;
        case Qt::Key_Minus:
            look.lineWidthPx = std::max(kThinnestPx, look.lineWidthPx - 1);
            break;
        case Qt::Key_L:
            look.lines = after(look.lines);
            break;
        case Qt::Key_G:
            look.hasGrid = !look.hasGrid;
            break;
        default:
            return false;
    }
    setLook(look);
    return true;
}

bool ProjectorView::moveDrawing(const QKeyEvent& event) {
    const double mm = kStepMm * stepFactor(event.modifiers());
    std::optional<QPointF> by;
    if (event.key() == Qt::Key_Left) by = QPointF(-mm, 0);
    if (event.key() == Qt::Key_Right) by = QPointF(mm, 0);
    if (event.key() == Qt::Key_Up) by = QPointF(0, mm);
    if (event.key() == Qt::Key_Down) by = QPointF(0, -mm);
    if (by) setView(movedOnTable(view_, *by));
    return by.has_value();
}

void ProjectorView::turnDrawing(const QKeyEvent& event) {
    const bool isFine = event.modifiers().testFlag(Qt::AltModifier);
    const double deg = isFine ? 1 : kTurnDeg;
    const bool isClockwise = event.modifiers().testFlag(Qt::ShiftModifier);
    setView(turnedOnTable(view_, isClockwise ? -deg : deg));
}

void ProjectorView::tellKeys() {
    QStringList told;
    if (!isCalibrated_) told << tr("NOT CALIBRATED: press C before anything is cut.");
    if (piece_ >= 0) {
        const ProjectedPiece& piece = pieces_[static_cast<std::size_t>(piece_)];
        told << tr("Panel %1, %2.")
                    .arg(piece.name,
                         QString(piece.words).replace(QLatin1Char('\n'), QStringLiteral(", ")));
    }
    if (view_.isTurnedOver) told << tr("Turned over.");
    if (view_.turnDeg != 0) told << tr("Turned by %1°.").arg(view_.turnDeg, 0, 'f', 0);
    QStringList keys{
        tr("Tab: next panel"),
        tr("O: this panel only"),
        tr("arrows: move %1 (Shift 10 times, Alt a tenth)").arg(lengthText(kStepMm, unit_)),
        tr("R: turn 15° (Shift clockwise, Alt 1°)"),
        tr("M: turn over"),
        tr("0: straight"),
        tr("I: invert"),
        tr("+ −: line %1 px").arg(look_.lineWidthPx),
        tr("L: which lines"),
        tr("G: grid"),
        tr("C: calibrate"),
        tr("H: hide this line"),
        tr("Esc: leave")};
    if (QGuiApplication::screens().size() > 1) keys.insert(10, tr("S: next screen"));
    keyLine_->setText(told.join(QLatin1Char(' ')) + QLatin1Char('\n') +
                      keys.join(QStringLiteral("  ·  ")));
    placeKeyLine();
}

}  // namespace coutil
