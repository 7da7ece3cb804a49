#pragma once

#include <QWidget>

#include "core/units/length.h"
#include "ui/projecting/projector_painter.h"

class QLabel;

namespace coutil {

class CalibrationTool;

// Tracings thrown on the table at true scale, over all of one screen, to be cut around. Everything
// by keys, told in a quiet line that can be hidden; the pointer drags the drawing. Esc leaves.
class ProjectorView : public QWidget {
    Q_OBJECT

  public:
    explicit ProjectorView(QWidget* parent = nullptr);

    void setTracings(const std::vector<Tracing>& tracings, LengthUnit unit);
    // Fills a screen and takes the calibration kept for it; a screen that was never calibrated
    // asks for it at once. The window should be told the screen before it is shown.
    void showOn(QScreen& screen);

    [[nodiscard]] const ProjectedView& view() const { return view_; }
    [[nodiscard]] const ProjectorLook& look() const { return look_; }
    [[nodiscard]] const ProjectorCalibration& calibration() const { return calibration_; }
    [[nodiscard]] const std::vector<ProjectedPiece>& pieces() const { return pieces_; }
    [[nodiscard]] int piece() const { return piece_; }  // the one gone to; -1: none
    [[nodiscard]] bool showsOnlyPiece() const { return onlyPiece_; }
    [[nodiscard]] CalibrationTool& calibrating() { return *calibrating_; }
    [[nodiscard]] QLabel& keyLine() { return *keyLine_; }
    [[nodiscard]] QTransform toScreen() const;  // mm to px

  signals:
    void left();

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    void goTo(int piece);
    void step(int by);
    bool changeLook(QKeyEvent& event);
    bool moveDrawing(const QKeyEvent& event);
    void turnDrawing(const QKeyEvent& event);
    void calibrate();
    void endCalibrating();
    void takeCalibration(const ProjectorCalibration& calibration);
    void toNextScreen();
    void setLook(const ProjectorLook& look);
    void setView(const ProjectedView& view);
    void tellKeys();
    void placeKeyLine();

    std::vector<ProjectedPiece> pieces_;
    LengthUnit unit_ = LengthUnit::centimetre;
    ProjectedView view_;
    ProjectorCalibration calibration_;
    ProjectorLook look_;
    bool isCalibrated_ = false;
    bool onlyPiece_ = false;
    int piece_ = -1;
    QPointF lastPx_;
    CalibrationTool* calibrating_;
    QLabel* keyLine_;
};

}  // namespace coutil
