#pragma once

#include <QWidget>
#include <optional>

#include "core/alterations/alteration.h"
#include "core/units/length.h"

class QCheckBox;

namespace coutil {

class LengthField;

// Where a change ends beyond its last reading: a length to be typed, or carried to the end.
class FitFadeField : public QWidget {
    Q_OBJECT

  public:
    FitFadeField(const QString& spoken, const QString& toTheEnd, const char* name,
                 QWidget* parent = nullptr);
    void showFade(const Fade& fade, LengthUnit unit);

  signals:
    void edited(const coutil::Fade& fade);
    void left();

  private:
    LengthField* over_;
    QCheckBox* toTheEnd_;
};

}  // namespace coutil
