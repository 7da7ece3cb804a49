#pragma once

#include <QWidget>
#include <vector>

#include "core/tracing/tracing.h"

class QLabel;

namespace coutil {

// What to cut: a line per tracing with its count and whether mirrored or on the fold.
class CutList : public QWidget {
    Q_OBJECT

  public:
    explicit CutList(QWidget* parent = nullptr);
    void showTracings(const std::vector<Tracing>& tracings);
    [[nodiscard]] QString text() const;

  private:
    QLabel* lines_;
};

}  // namespace coutil
