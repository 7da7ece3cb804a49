#pragma once

#include <QWidget>
#include <vector>

#include "core/measurements/body.h"
#include "core/units/length.h"

class QLabel;

namespace coutil {

// What was not measured and is worked out instead: value, likely error, from what, whose relation.
class EstimateList : public QWidget {
    Q_OBJECT

  public:
    explicit EstimateList(QWidget* parent = nullptr);
    void showEstimates(const std::vector<Estimate>& estimates, LengthUnit unit);
    [[nodiscard]] QString text() const;

  private:
    QLabel* words_;
};

}  // namespace coutil
