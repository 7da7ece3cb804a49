#pragma once

#include <QPolygonF>
#include <QRectF>
#include <vector>

#include "core/comparison/girth_chart.h"
#include "core/units/length.h"

namespace coutil {

// Girth against height in a rectangle with y down: girths across, heights up. A value for screen
// and paper.
class ChartScale {
  public:
    ChartScale(const GirthChart& chart, const QRectF& area);

    [[nodiscard]] double x(double girthMm) const;
    [[nodiscard]] double y(double heightMm) const;
    [[nodiscard]] double heightMmAt(double y) const;
    [[nodiscard]] const QRectF& area() const { return area_; }

    // Round girths in the unit for the foot of the chart, no closer than this on the drawing.
    [[nodiscard]] std::vector<double> girthTicksMm(LengthUnit unit, double closest) const;

    // Lines of the chart; broken where a pattern has no girth.
    [[nodiscard]] std::vector<QPolygonF> lineOfA(const GirthChart& chart) const;
    [[nodiscard]] std::vector<QPolygonF> lineOfB(const GirthChart& chart) const;
    [[nodiscard]] QPolygonF lineOfBody(const GirthChart& chart) const;  // from level to level

  private:
    QRectF area_;
    double lowestGirthMm_ = 0;
    double highestGirthMm_ = 1;
    double lowestMm_ = 0;
    double highestMm_ = 1;
};

// What the chart says at a height: body between the levels, a and b between the stations. Absent
// outside of each.
struct ChartReading {
    double heightMm = 0;
    std::optional<double> bodyMm;
    std::optional<double> aMm;
    std::optional<double> bMm;
};
[[nodiscard]] ChartReading readingAt(const GirthChart& chart, double heightMm);

}  // namespace coutil
