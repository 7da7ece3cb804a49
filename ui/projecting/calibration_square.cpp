#include "ui/projecting/calibration_square.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace coutil {

namespace {
constexpr double kReachPx = 14;
constexpr double kSmallestPx = 20;
constexpr double kLinePx = 2;
}  // namespace

CalibrationSquare::CalibrationSquare(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Square to be measured"));
    setAccessibleDescription(tr("Arrow keys move its right and its upper edge."));
}

void CalibrationSquare::begin(const ProjectorCalibration& calibration, double sideMm) {
    square_.setSize(squarePx(calibration, sideMm));
    centre();
    update();
}

void CalibrationSquare::setLook(const ProjectorLook& look) {
    look_ = look;
    update();
}

void CalibrationSquare::centre() { square_.moveCenter(QPointF(width() / 2.0, height() / 2.0)); }

void CalibrationSquare::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    centre();
}

// The outline's middle is the figure's edge: what is measured is from middle to middle of the line.
void CalibrationSquare::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(projectedQuiet(look_), 1));
    for (int quarter = 1; quarter < 4; ++quarter) {
        const double x = square_.left() + square_.width() * quarter / 4;
        const double y = square_.top() + square_.height() * quarter / 4;
        painter.drawLine(QPointF(x, square_.top()), QPointF(x, square_.bottom()));
        painter.drawLine(QPointF(square_.left(), y), QPointF(square_.right(), y));
    }
    painter.setPen(QPen(projectedLine(look_), hasFocus() ? 2 * kLinePx : kLinePx, Qt::SolidLine,
                        Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(square_);
}

CalibrationSquare::Side CalibrationSquare::sideAt(const QPointF& px) const {
    const QRectF reach = square_.adjusted(-kReachPx, -kReachPx, kReachPx, kReachPx);
    if (!reach.contains(px)) return Side::none;
    const auto near = [](double a, double b) { return std::abs(a - b) <= kReachPx; };
    if (near(px.x(), square_.right())) return Side::right;
    if (near(px.x(), square_.left())) return Side::left;
    if (near(px.y(), square_.top())) return Side::top;
    return near(px.y(), square_.bottom()) ? Side::bottom : Side::none;
}

void CalibrationSquare::moveSide(Side side, const QPointF& toPx) {
    switch (side) {
        case Side::none:
            return;
        case Side::left:
            square_.setLeft(std::min(toPx.x(), square_.right() - kSmallestPx));
            break;
        case Side::right:
            square_.setRight(std::max(toPx.x(), square_.left() + kSmallestPx));
            break;
        case Side::top:
            square_.setTop(std::min(toPx.y(), square_.bottom() - kSmallestPx));
            break;
        case Side::bottom:
            square_.setBottom(std::max(toPx.y(), square_.top() + kSmallestPx));
            break;
    }
    update();
    emit dragged(square_.size());
}

void CalibrationSquare::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    held_ = sideAt(event->position());
    if (held_ != Side::none) before_ = square_;
}

void CalibrationSquare::mouseMoveEvent(QMouseEvent* event) {
    if (held_ != Side::none) {
        moveSide(held_, event->position());
        return;
    }
    const Side under = sideAt(event->position());
    const bool isAcross = under == Side::left || under == Side::right;
    setCursor(under == Side::none ? Qt::ArrowCursor
              : isAcross          ? Qt::SizeHorCursor
                                  : Qt::SizeVerCursor);
}

void CalibrationSquare::mouseReleaseEvent(QMouseEvent*) {
    held_ = Side::none;
    before_.reset();
}

void CalibrationSquare::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && before_) {
        square_ = *before_;
        held_ = Side::none;
        before_.reset();
        update();
        emit givenUp(square_.size());
        return;
    }
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1;
    switch (event->key()) {
        case Qt::Key_Right:
            return moveSide(Side::right, square_.topRight() + QPointF(step, 0));
        case Qt::Key_Left:
            return moveSide(Side::right, square_.topRight() - QPointF(step, 0));
        case Qt::Key_Up:
            return moveSide(Side::top, square_.topRight() - QPointF(0, step));
        case Qt::Key_Down:
            return moveSide(Side::top, square_.topRight() + QPointF(0, step));
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace coutil
