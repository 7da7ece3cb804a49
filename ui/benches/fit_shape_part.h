#pragma once

#include <QWidget>
#include <optional>

#include "core/alterations/alteration.h"
#include "core/units/length.h"

class QCheckBox;
class QFormLayout;
class QLabel;

namespace coutil {

class LengthField;
class ShareField;

// How a seam is shaped by the marks on it: how much each panel gives, and where the change ends.
class FitShapePart : public QWidget {
    Q_OBJECT

  public:
    explicit FitShapePart(QWidget* parent = nullptr);
    void showShape(const ShapeSeam& shape, LengthUnit unit);

  signals:
    void edited(const coutil::ShapeSeam& after, const QString& words, const QString& field);
    void left();

  private:
    struct End {
        LengthField* over = nullptr;
        QCheckBox* toTheEdge = nullptr;
    };
    End addEnd(const QString& words, const char* name, Fade ShapeSeam::*fade);

    ShapeSeam shape_;
    QLabel* heading_;
    QFormLayout* form_;
    ShareField* front_;
    End up_;
    End down_;
};

}  // namespace coutil
