#pragma once

#include <QWidget>

namespace coutil {

// What the Fit bench says before there is a fitting: what one is, and how to begin.
class FitWelcome : public QWidget {
    Q_OBJECT

  public:
    explicit FitWelcome(QWidget* parent = nullptr);

  signals:
    void sheetWanted();
    void fittingWanted();
};

}  // namespace coutil
