#pragma once

#include <QWidget>
#include <optional>

#include "ui/projecting/projector_painter.h"

namespace coutil {

// The square that is measured on the table: it stands for one of a known side, with a mark at each
// quarter. Its edges are dragged, or moved by the arrow keys (right and left the right edge, up and
// down the upper one; Shift 10 px), until it fits a ruler or the grid of a cutting mat. Paints only
// itself; what calls it gives it all of the screen.
class CalibrationSquare : public QWidget {
    Q_OBJECT

  public:
    explicit CalibrationSquare(QWidget* parent = nullptr);

    // Shows a square of that side by a calibration, in the middle of the screen.
    void begin(const ProjectorCalibration& calibration, double sideMm);
    void setLook(const ProjectorLook& look);
    [[nodiscard]] const QRectF& square() const { return square_; }  // px

  signals:
    void dragged(const QSizeF& px);  // the square's size at every move
    void givenUp(const QSizeF& px);  // Esc during a drag: its size before

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    enum class Side { none, left, right, top, bottom };
    [[nodiscard]] Side sideAt(const QPointF& px) const;
    void moveSide(Side side, const QPointF& toPx);
    void centre();

    QRectF square_;
    ProjectorLook look_;
    Side held_ = Side::none;
    std::optional<QRectF> before_;  // while dragged
};

}  // namespace coutil
