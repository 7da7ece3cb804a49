#pragma once

#include <QWidget>

#include "core/units/length.h"
#include "ui/projecting/projector_painter.h"

class QLabel;
class QPushButton;

namespace coutil {

class CalibrationSquare;
class LengthField;

// Calibrating on the spot: a square of a known side over all of the screen, and below it three
// figures: its side, and what the maker measures of it on the table, across and up. She types the
// two measures (Enter takes them), or drags the square's edges until it fits the side.
class CalibrationTool : public QWidget {
    Q_OBJECT

  public:
    explicit CalibrationTool(QWidget* parent = nullptr);

    // Begins from a calibration, with the largest round side that the screen has room for.
    void begin(const ProjectorCalibration& calibration, const ProjectorLook& look, LengthUnit unit);
    [[nodiscard]] const ProjectorCalibration& calibration() const { return calibration_; }
    [[nodiscard]] double sideMm() const { return sideMm_; }
    [[nodiscard]] CalibrationSquare& square() { return *square_; }
    [[nodiscard]] LengthField& acrossField() { return *across_; }
    [[nodiscard]] LengthField& upField() { return *up_; }
    [[nodiscard]] LengthField& sideField() { return *side_; }
    [[nodiscard]] QString said() const;

  signals:
    void calibrated(const coutil::ProjectorCalibration& calibration);  // to be kept at once
    void left();                                                       // Esc, or the maker is done

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* makePlate();
    LengthField* addFigure(QLayout& row, const QString& words, const QString& name);
    void takeSide(std::optional<double> mm);
    void takeMeasures();
    void takeDragged(const QSizeF& px);
    void showSquare();
    void say(const QString& text);

    CalibrationSquare* square_;
    QWidget* plate_ = nullptr;
    LengthField* side_ = nullptr;
    LengthField* across_ = nullptr;
    LengthField* up_ = nullptr;
    QLabel* words_ = nullptr;
    ProjectorCalibration calibration_;
    LengthUnit unit_ = LengthUnit::centimetre;
    double sideMm_ = 200;
};

}  // namespace coutil
