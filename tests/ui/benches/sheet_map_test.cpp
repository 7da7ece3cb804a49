#include "ui/benches/sheet_map.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace coutil {
namespace {

// Sheets A1 A2, B2 B3 of a grid of 2 rows and 3 columns: A3 and B1 are empty and left out.
SheetPlan inventedPlan() {
    SheetPlan plan;
    plan.rows = 2;
    plan.columns = 3;
    plan.stepXUm = 180000;
    plan.stepYUm = 267000;
    plan.sheets = {{0, 0}, {0, 1}, {1, 1}, {1, 2}};
    return plan;
}

class SheetMapTest : public testing::Test {
  protected:
    SheetMapTest() {
        map.setPlan(inventedPlan());
        map.resize(map.sizeHint());
        map.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&map));
    }
    SheetMap map;
};

TEST_F(SheetMapTest, cellsLieAsTheSheetsDo) {
    ASSERT_EQ(map.pageCount(), 5);
    const QRectF a1 = map.cellOf(1);
    const QRectF a2 = map.cellOf(2);
    const QRectF b2 = map.cellOf(3);
    EXPECT_GT(a2.left(), a1.right());
    EXPECT_DOUBLE_EQ(a2.left(), b2.left());
    EXPECT_GT(b2.top(), a2.bottom());
    EXPECT_NEAR((a1.height() + 2) / (a1.width() + 2), 267.0 / 180, 1e-9);
    for (int page = 0; page < 5; ++page) {
        EXPECT_TRUE(QRectF(map.rect()).contains(map.cellOf(page))) << page;
    }
}

TEST_F(SheetMapTest, clickOpensASheetAndAgainTheWhole) {
    QSignalSpy chosen(&map, &SheetMap::pageChosen);
    QTest::mouseClick(&map, Qt::LeftButton, {}, map.cellOf(3).center().toPoint());
    EXPECT_EQ(map.page(), 3);
    QTest::mouseClick(&map, Qt::LeftButton, {}, map.cellOf(3).center().toPoint());
    EXPECT_EQ(map.page(), -1);
    EXPECT_EQ(chosen.size(), 2);
}

TEST_F(SheetMapTest, arrowsGoToTheNeighbourOnPaper) {
    QTest::keyClick(&map, Qt::Key_Home);
    EXPECT_EQ(map.page(), 0);
    QTest::keyClick(&map, Qt::Key_Down);
    EXPECT_EQ(map.page(), 1);  // A1
    QTest::keyClick(&map, Qt::Key_Right);
    EXPECT_EQ(map.page(), 2);  // A2
    QTest::keyClick(&map, Qt::Key_Down);
    EXPECT_EQ(map.page(), 3);  // B2
    QTest::keyClick(&map, Qt::Key_Up);
    EXPECT_EQ(map.page(), 2);
    EXPECT_TRUE(map.accessibleDescription().contains("A2"));
    QTest::keyClick(&map, Qt::Key_Escape);
    EXPECT_EQ(map.page(), -1);
}

}  // namespace
}  // namespace coutil
