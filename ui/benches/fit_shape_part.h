#pragma once

#include <QWidget>

#include "core/alterations/alteration.h"
#include "core/units/length.h"

class QFormLayout;
class QLabel;

namespace coutil {

class FitFadeField;
class ShareField;

// How a seam, or the top or bottom edge, is shaped by the marks on it: how much each panel gives,
// and where the change ends.
class FitShapePart : public QWidget {
    Q_OBJECT

  public:
    explicit FitShapePart(QWidget* parent = nullptr);
    // A ShapeSeam or a ReshapeEdge.
    void showChange(const Change& change, LengthUnit unit);

  signals:
    void edited(const coutil::Change& after, const QString& words, const QString& field);
    void left();

  private:
    void addRows();
    template <class Kind>
    FitFadeField* addFade(const QString& words, const QString& toTheEnd, const char* name,
                          Fade Kind::*fade);

    Change change_;
    QLabel* heading_;
    QFormLayout* form_;
    ShareField* front_;
    FitFadeField* up_ = nullptr;
    FitFadeField* down_ = nullptr;
    FitFadeField* towardsFront_ = nullptr;
    FitFadeField* towardsBack_ = nullptr;
};

}  // namespace coutil
