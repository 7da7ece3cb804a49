#pragma once

#include <QWidget>

#include "core/pattern/pattern.h"
#include "core/units/length.h"

class QGridLayout;
class QLabel;

namespace coutil {

// The figures of the picked panel: every edge with its lengths above and below the waist, the width
// at every level, the area. Says how to pick one where none is.
class PickedFigures : public QWidget {
    Q_OBJECT

  public:
    explicit PickedFigures(QWidget* parent = nullptr);
    void showPanel(const Panel& panel, LengthUnit unit);
    void showNothing();
    [[nodiscard]] QString heading() const;

  private:
    void addLine(const QString& name, const QStringList& figures);

    QGridLayout* grid_;
    QLabel* heading_;
    QLabel* hint_;
    int lines_ = 0;
    std::vector<QLabel*> cells_;
    std::size_t used_ = 0;
};

}  // namespace coutil
