#pragma once

#include <QWidget>
#include <optional>

#include "core/measurements/measurement.h"

class QPainter;

namespace coutil {

// Paints the drawn body with the tape of one measurement (or none) into `place`, as large as it
// goes; for the figure in the card and the large one on the empty table.
struct FigureColours {
    QColor body;
    QColor details;
    QColor tape;
};
void paintTapeFigure(QPainter& painter, const QRectF& place, std::optional<Measurement> shown,
                     const FigureColours& colours);

// The figure in the card of the Measure bench.
class TapeFigure : public QWidget {
    Q_OBJECT

  public:
    explicit TapeFigure(QWidget* parent = nullptr);

    void showTape(std::optional<Measurement> id);
    [[nodiscard]] std::optional<Measurement> shownTape() const { return shown_; }
    [[nodiscard]] QSize sizeHint() const override { return {144, 208}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::optional<Measurement> shown_;
};

}  // namespace coutil
