#pragma once

#include <QPointF>
#include <QRectF>
#include <QTransform>

namespace coutil {

// Which part of the table is seen: millimetres (y up) to pixels (y down) and back. A value.
class TableView {
  public:
    TableView() = default;
    TableView(double pxPerMm, QPointF zeroPx) : pxPerMm_(pxPerMm), zeroPx_(zeroPx) {}

    // The whole box in the middle of the area, as large as it goes.
    [[nodiscard]] static TableView fitting(const QRectF& boxMm, const QRectF& areaPx);

    [[nodiscard]] double pxPerMm() const { return pxPerMm_; }
    [[nodiscard]] QPointF toPx(const QPointF& mm) const;
    [[nodiscard]] QPointF toMm(const QPointF& px) const;
    [[nodiscard]] QRectF toPx(const QRectF& boxMm) const;
    [[nodiscard]] QTransform transform() const;

    // The millimetre under `px` stays under it. The scale stays within 0.02 and 60 px a mm.
    [[nodiscard]] TableView zoomedAbout(const QPointF& px, double factor) const;
    [[nodiscard]] TableView pannedBy(const QPointF& px) const;
    [[nodiscard]] TableView centredOn(const QPointF& mm, const QRectF& areaPx) const;

    bool operator==(const TableView&) const = default;

  private:
    double pxPerMm_ = 1;
    QPointF zeroPx_;  // where 0, 0 lies
};

}  // namespace coutil
