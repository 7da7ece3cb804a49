#include <QLineEdit>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include "tests/ui/canvas/invented_scene.h"
#include "ui/canvas/table.h"

namespace coutil {
namespace {

class TableKeys : public testing::Test {
  protected:
    TableKeys() : before(new QLineEdit), table(new Table), after(new QLineEdit) {
        auto* column = new QVBoxLayout(&window);
        column->addWidget(before);
        column->addWidget(table);
        column->addWidget(after);
        window.resize(900, 700);
        table->setScene(inventedScene(3));
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        before->setFocus();
    }

    QWidget window;
    QLineEdit* before;
    Table* table;
    QLineEdit* after;
};

TEST_F(TableKeys, tabGoesThroughThePanelsAndOn) {
    QTest::keyClick(before, Qt::Key_Tab);
    ASSERT_TRUE(table->hasFocus());
    for (int panel = 0; panel < 3; ++panel) {
        QTest::keyClick(table, Qt::Key_Tab);
        EXPECT_EQ(table->picked().panel, panel);
        EXPECT_EQ(table->accessibleName(), QString("Table, panel %1").arg(panel + 1));
    }
    QTest::keyClick(table, Qt::Key_Tab);
    EXPECT_TRUE(after->hasFocus());
    EXPECT_EQ(table->picked().kind, TablePlace::Kind::nothing);
}

TEST_F(TableKeys, shiftTabGoesBack) {
    table->setFocus();
    table->pickPanel(1);
    QTest::keyClick(table, Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(table->picked().panel, 0);
    QTest::keyClick(table, Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_TRUE(before->hasFocus());
}

TEST_F(TableKeys, upAndDownGoThroughEdgesLeftAndRightToNeighbours) {
    table->setFocus();
    table->pickPanel(1);
    QTest::keyClick(table, Qt::Key_Down);
    EXPECT_EQ(table->picked().edge, 0);
    EXPECT_EQ(table->accessibleDescription(), "bottom\nfigures of bottom");
    QTest::keyClick(table, Qt::Key_Down);
    EXPECT_EQ(table->picked().edge, 1);
    QTest::keyClick(table, Qt::Key_Escape);
    EXPECT_EQ(table->picked().kind, TablePlace::Kind::panel);
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(table->picked().panel, 2);
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(table->picked().panel, 2);
    QTest::keyClick(table, Qt::Key_Escape);
    EXPECT_EQ(table->picked().kind, TablePlace::Kind::nothing);
}

TEST_F(TableKeys, arrowsPanWhileNothingIsPicked) {
    table->setFocus();
    const TableView was = table->view();
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(table->view(), was.pannedBy({-40, 0}));
    QTest::keyClick(table, Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(table->view(), was.pannedBy({-40, 200}));
}

TEST_F(TableKeys, plusMinusAndFit) {
    table->setFocus();
    const TableView fitted = table->view();
    QTest::keyClick(table, Qt::Key_Plus);
    EXPECT_GT(table->view().pxPerMm(), fitted.pxPerMm());
    QTest::keyClick(table, Qt::Key_Minus);
    EXPECT_NEAR(table->view().pxPerMm(), fitted.pxPerMm(), 1e-9);
    QTest::keyClick(table, Qt::Key_Left);
    QTest::keyClick(table, Qt::Key_F);
    EXPECT_EQ(table->view(), fitted);
}

}  // namespace
}  // namespace coutil
