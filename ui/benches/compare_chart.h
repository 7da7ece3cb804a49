#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "ui/comparing/chart_scale.h"
#include "ui/comparing/compared_states.h"

namespace coutil {

// Girth against height: body, A and B. The pointer, or up and down (5 mm, with Shift 20 mm), reads
// a height; what it reads stands in the chart and is told to screen readers.
class CompareChart : public QWidget {
    Q_OBJECT

  public:
    explicit CompareChart(QWidget* parent = nullptr);

    void showStates(std::shared_ptr<const ComparedStates> states, LengthUnit unit);
    void read(std::optional<double> heightMm);
    [[nodiscard]] QString reading() const;  // "+35 mm: body 82, A 78, B 77.5"

    [[nodiscard]] QSize sizeHint() const override { return {340, 260}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 220}; }

  signals:
    void heightRead(std::optional<double> heightMm);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] ChartScale scale() const;
    void paintAxes(QPainter& painter, const ChartScale& scale) const;
    void paintLines(QPainter& painter, const ChartScale& scale) const;
    void paintReading(QPainter& painter, const ChartScale& scale) const;

    std::shared_ptr<const ComparedStates> states_;
    LengthUnit unit_ = LengthUnit::centimetre;
    std::optional<double> heightMm_;
};

}  // namespace coutil
