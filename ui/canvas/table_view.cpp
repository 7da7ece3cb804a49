#include "ui/canvas/table_view.h"

#include <algorithm>

namespace coutil {

namespace {
constexpr double kSmallestPxPerMm = 0.02;
constexpr double kLargestPxPerMm = 60;

double withinLimits(double pxPerMm) {
    return std::clamp(pxPerMm, kSmallestPxPerMm, kLargestPxPerMm);
}
}  // namespace

TableView TableView::fitting(const QRectF& boxMm, const QRectF& areaPx) {
    const double width = std::max(boxMm.width(), 1.0);
    const double height = std::max(boxMm.height(), 1.0);
    const double scale = withinLimits(std::min(areaPx.width() / width, areaPx.height() / height));
    return TableView(scale, {}).centredOn(boxMm.center(), areaPx);
}

QPointF TableView::toPx(const QPointF& mm) const {
    return {zeroPx_.x() + mm.x() * pxPerMm_, zeroPx_.y() - mm.y() * pxPerMm_};
}

QPointF TableView::toMm(const QPointF& px) const {
    return {(px.x() - zeroPx_.x()) / pxPerMm_, (zeroPx_.y() - px.y()) / pxPerMm_};
}

QRectF TableView::toPx(const QRectF& boxMm) const {
    return QRectF(toPx(boxMm.topLeft()), toPx(boxMm.bottomRight())).normalized();
}

QTransform TableView::transform() const {
    return {pxPerMm_, 0, 0, -pxPerMm_, zeroPx_.x(), zeroPx_.y()};
}

TableView TableView::zoomedAbout(const QPointF& px, double factor) const {
    const double scale = withinLimits(pxPerMm_ * factor);
    return {scale, px + (zeroPx_ - px) * (scale / pxPerMm_)};
}

TableView TableView::pannedBy(const QPointF& px) const { return {pxPerMm_, zeroPx_ + px}; }

TableView TableView::centredOn(const QPointF& mm, const QRectF& areaPx) const {
    return pannedBy(areaPx.center() - toPx(mm));
}

}  // namespace coutil
