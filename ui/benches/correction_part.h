#pragma once

#include <QWidget>

#include "core/sheets/sheet_plan.h"
#include "core/units/length.h"

class QFormLayout;
class QLabel;
class QPushButton;

namespace coutil {

class LengthField;

// What the printed 100 mm square measures across and up, and the correction that follows from it.
class CorrectionPart : public QWidget {
    Q_OBJECT

  public:
    explicit CorrectionPart(QWidget* parent = nullptr);

    void showCorrection(const Paper& paper, const Correction& inForce, LengthUnit unit);

  signals:
    void corrected(const coutil::Correction& correction);

  private:
    LengthField* addMeasured(QFormLayout& form, const QString& words);
    void use();

    Correction inForce_;
    LengthUnit unit_ = LengthUnit::millimetre;
    LengthField* across_;
    LengthField* up_;
    QPushButton* use_;
    QPushButton* none_;
    QLabel* words_;
    QLabel* complaint_;
};

}  // namespace coutil
