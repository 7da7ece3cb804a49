#include "ui/canvas/table_view.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

constexpr double kPxError = 1e-9;

void expectNear(const QPointF& a, const QPointF& b, double error) {
    EXPECT_NEAR(a.x(), b.x(), error);
    EXPECT_NEAR(a.y(), b.y(), error);
}

TEST(TableView, mapsBothWays) {
    const TableView view(1.7, {320, 410});
    expectNear(view.toMm(view.toPx(QPointF(12.5, -80))), {12.5, -80}, kPxError);
    expectNear(view.transform().map(QPointF(12.5, -80)), view.toPx(QPointF(12.5, -80)), kPxError);
}

TEST(TableView, yRunsUp) {
    const TableView view(2, {100, 100});
    expectNear(view.toPx(QPointF(10, 10)), {120, 80}, kPxError);
}

TEST(TableView, zoomKeepsThePlaceUnderThePointer) {
    TableView view(1.3, {200, 500});
    const QPointF pointer(431, 97);
    const QPointF mm = view.toMm(pointer);
    for (const double factor : {1.2, 1.2, 0.4, 7.0, 1 / 1.2}) {
        view = view.zoomedAbout(pointer, factor);
        expectNear(view.toMm(pointer), mm, 1e-7);
    }
}

TEST(TableView, zoomStopsAtItsLimitsAndStillKeepsThePlace) {
    TableView view(1, {0, 0});
    const QPointF pointer(50, 60);
    const QPointF mm = view.toMm(pointer);
    view = view.zoomedAbout(pointer, 1e9);
    EXPECT_DOUBLE_EQ(view.pxPerMm(), 60);
    expectNear(view.toMm(pointer), mm, 1e-7);
    view = view.zoomedAbout(pointer, 1e-12);
    EXPECT_DOUBLE_EQ(view.pxPerMm(), 0.02);
}

TEST(TableView, fittingShowsTheWholeBoxInTheMiddle) {
    const QRectF box(-20, -120, 700, 320);
    const QRectF area(40, 20, 900, 500);
    const TableView view = TableView::fitting(box, area);
    const QRectF shown = view.toPx(box);
    EXPECT_TRUE(area.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(shown));
    expectNear(shown.center(), area.center(), 1e-6);
    EXPECT_NEAR(shown.width(), area.width(), 1e-6);  // the width is what binds here
}

TEST(TableView, panMovesByPixels) {
    const TableView view(3, {10, 20});
    expectNear(view.pannedBy({5, -7}).toPx(QPointF(1, 1)),
               view.toPx(QPointF(1, 1)) + QPointF(5, -7), kPxError);
}

}  // namespace
}  // namespace coutil
