#include "ui/canvas/table.h"

#include <QApplication>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

#include "tests/ui/canvas/invented_scene.h"

namespace coutil {
namespace {

class TableTest : public testing::Test {
  protected:
    TableTest() {
        table.resize(1000, 700);
        table.setScene(inventedScene(5));
        table.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&table));
    }

    void wheel(const QPointF& px, QPoint angle, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QWheelEvent event(px, table.mapToGlobal(px), {}, angle, Qt::NoButton, keys,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&table, &event);
    }
    void trackpad(const QPointF& px, QPoint pixels) {
        QWheelEvent event(px, table.mapToGlobal(px), pixels, pixels * 2, Qt::NoButton,
                          Qt::NoModifier, Qt::ScrollUpdate, false);
        QApplication::sendEvent(&table, &event);
    }
    QPoint pixel(const QPointF& mm) const { return table.view().toPx(mm).toPoint(); }

    Table table;
};

TEST_F(TableTest, fitsTheSceneWhenFirstShown) {
    const QRectF shown = table.view().toPx(boundsOf(table.scene()));
    EXPECT_TRUE(table.openArea().contains(shown));
    EXPECT_GT(shown.width(), table.openArea().width() * 0.7);
}

TEST_F(TableTest, wheelZoomsAboutThePointer) {
    const QPointF px(612, 233);
    const QPointF mm = table.view().toMm(px);
    const double before = table.view().pxPerMm();
    wheel(px, {0, 240});
    EXPECT_NEAR(table.view().pxPerMm(), before * 1.44, 1e-9);
    EXPECT_NEAR(table.view().toMm(px).x(), mm.x(), 1e-6);
    EXPECT_NEAR(table.view().toMm(px).y(), mm.y(), 1e-6);
}

TEST_F(TableTest, twoFingersPanAndShiftWheelGoesSideways) {
    const TableView before = table.view();
    trackpad({500, 300}, {12, -30});
    EXPECT_EQ(table.view(), before.pannedBy({12, -30}));
    wheel({500, 300}, {0, 120}, Qt::ShiftModifier);
    EXPECT_EQ(table.view(), before.pannedBy({72, -30}));
}

TEST_F(TableTest, wheelPansWhereTheSettingSaysSoAndCtrlZooms) {
    table.setWheelPans(true);
    const double scale = table.view().pxPerMm();
    wheel({500, 300}, {0, 120});
    EXPECT_DOUBLE_EQ(table.view().pxPerMm(), scale);
    wheel({500, 300}, {0, 120}, Qt::ControlModifier);
    EXPECT_GT(table.view().pxPerMm(), scale);
}

TEST_F(TableTest, middleDragPansAndPicksNothing) {
    const TableView before = table.view();
    QTest::mousePress(&table, Qt::MiddleButton, {}, {400, 300});
    QTest::mouseMove(&table, {460, 340});
    QTest::mouseRelease(&table, Qt::MiddleButton, {}, {460, 340});
    EXPECT_EQ(table.view(), before.pannedBy({60, 40}));
    EXPECT_EQ(table.picked().kind, TablePlace::Kind::nothing);
}

TEST_F(TableTest, spaceDragPans) {
    const TableView before = table.view();
    QTest::keyPress(&table, Qt::Key_Space);
    QTest::mousePress(&table, Qt::LeftButton, {}, {400, 300});
    QTest::mouseMove(&table, {390, 320});
    QTest::mouseRelease(&table, Qt::LeftButton, {}, {390, 320});
    QTest::keyRelease(&table, Qt::Key_Space);
    EXPECT_EQ(table.view(), before.pannedBy({-10, 20}));
}

TEST_F(TableTest, findsEdgeWithinAFewPixels) {
    // Panel 2 (index 1) runs from x = 104 to 184; its right edge is hollowed to 174 at the waist.
    const QPointF onEdge = table.view().toPx(QPointF(174, 30));
    for (const double off : {-5.0, 0.0, 5.0}) {
        const TablePlace place = table.placeAt(onEdge + QPointF(off, 0));
        EXPECT_EQ(place.kind, TablePlace::Kind::edge) << off;
        EXPECT_EQ(place.panel, 1);
        EXPECT_EQ(place.edge, 1);
    }
    EXPECT_NE(table.placeAt(onEdge + QPointF(-14, 0)).kind, TablePlace::Kind::edge);
}

TEST_F(TableTest, findsPanelLevelAndNothing) {
    const TablePlace inside = table.placeAt(table.view().toPx(QPointF(144, 60)));
    EXPECT_EQ(inside.kind, TablePlace::Kind::panel);
    EXPECT_EQ(inside.panel, 1);
    const TablePlace level = table.placeAt(table.view().toPx(QPointF(144, 0)) + QPointF(0, 2));
    EXPECT_EQ(level.kind, TablePlace::Kind::level);
    EXPECT_EQ(level.level, 1);
    EXPECT_EQ(table.placeAt(table.view().toPx(QPointF(92, 60))).kind, TablePlace::Kind::nothing);
}

TEST_F(TableTest, hoverShowsFiguresAndTellsThem) {
    QSignalSpy hints(&table, &Table::hint);
    QTest::mouseMove(&table, pixel({174, 30}));
    EXPECT_EQ(table.plate(), "seam 2-3\nfigures of seam 2-3");
    ASSERT_FALSE(hints.isEmpty());
    EXPECT_TRUE(hints.last().first().toString().contains("figures of seam 2-3"));
    QTest::mouseMove(&table, pixel({144, 150}));
    EXPECT_EQ(table.plate(), "bust\nfigures of bust");
    QTest::mouseMove(&table, pixel({144, 60}));
    EXPECT_TRUE(table.plate().isEmpty());
}

TEST_F(TableTest, hoverLightsBothEdgesOfASeam) {
    QTest::mouseMove(&table, pixel({144, 60}));
    const QImage before = table.grab().toImage();
    QTest::mouseMove(&table, pixel({174, 60}));
    const QImage after = table.grab().toImage();
    // The partner's edge: panel 3 (x from 208), at a height away from the plate.
    const QPoint partner = pixel({208, 190});
    bool isLit = false;
    for (int dx = -4; dx <= 4; ++dx) {
        isLit =
            isLit || before.pixel(partner + QPoint(dx, 0)) != after.pixel(partner + QPoint(dx, 0));
    }
    EXPECT_TRUE(isLit);
}

TEST_F(TableTest, clickPicksAndAClickOnNothingLetsGo) {
    QSignalSpy picks(&table, &Table::pickedChanged);
    QTest::mouseClick(&table, Qt::LeftButton, {}, pixel({144, 60}));
    EXPECT_EQ(table.picked().panel, 1);
    EXPECT_EQ(table.accessibleName(), "Table, panel 2");
    EXPECT_EQ(table.accessibleDescription(), "figures of panel 2");
    QTest::mouseClick(&table, Qt::LeftButton, {}, pixel({92, 60}));
    EXPECT_EQ(table.picked().kind, TablePlace::Kind::nothing);
    EXPECT_EQ(picks.size(), 2);
}

TEST_F(TableTest, aSceneWithoutThePickedPanelLetsGoOfIt) {
    table.pickPanel(4);
    table.setScene(inventedScene(6));
    EXPECT_EQ(table.picked().panel, 4);
    table.setScene(inventedScene(4));
    EXPECT_EQ(table.picked().kind, TablePlace::Kind::nothing);
}

TEST_F(TableTest, viewStaysWhenTheSceneChangesALittle) {
    table.zoomBy(2);
    const TableView before = table.view();
    TableScene changed = inventedScene(5);
    changed.levels[0].yMm = 140;
    table.setScene(changed);
    EXPECT_EQ(table.view(), before);
}

TEST_F(TableTest, problemIsLitWhereItIsAndGoesToTheMiddleOnCentreOn) {
    const QImage before = table.grab().toImage();
    table.lightProblem(1, QPointF(174, 0));
    EXPECT_NE(before, table.grab().toImage());
    table.centreOn({174, 0});
    EXPECT_NEAR(table.view().toPx(QPointF(174, 0)).x(), table.openArea().center().x(), 1e-6);
    table.lightProblem(-1, std::nullopt);
    EXPECT_FALSE(table.litProblem());
}

}  // namespace
}  // namespace coutil
