#include <QPainter>
#include <QTest>

#include <gtest/gtest.h>

#include "tests/ui/canvas/invented_scene.h"
#include "ui/canvas/ruler.h"
#include "ui/canvas/table.h"
#include "ui/canvas/table_colours.h"

namespace coutil {
namespace {

// Source of the limits: WCAG 2.1, success criteria 1.4.3 (text 4.5 : 1) and 1.4.11 (3 : 1), from
// memory; also the project's own rule for the window.
TEST(TableColours, textAndLinesStandOutOnPaperAndTints) {
    for (const bool dark : {false, true}) {
        const TableColours& c = tableColours(dark);
        std::vector<QColor> grounds(c.tints.begin(), c.tints.end());
        grounds.push_back(c.paper);
        for (const QColor& ground : grounds) {
            EXPECT_GE(contrast(c.text, ground), 4.5) << dark << ground.name().toStdString();
            EXPECT_GE(contrast(c.waist, ground), 4.5) << dark << ground.name().toStdString();
            for (const QColor& line :
                 {c.ink, c.graphite, c.cutting, c.before, c.level, c.sheet, c.halo, c.problem}) {
                EXPECT_GE(contrast(line, ground), 3)
                    << dark << line.name().toStdString() << " on " << ground.name().toStdString();
            }
        }
        EXPECT_GE(contrast(c.text, c.ruler), 4.5);
        for (std::size_t i = 0; i < c.tints.size(); ++i) {
            EXPECT_NE(c.tints[i], c.tints[(i + 1) % c.tints.size()]);
        }
    }
}

TEST(TableColours, contrastOfBlackAndWhiteIs21) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);  // WCAG 2.1: the largest possible
}

TEST(TablePaint, showsTheEmptyTextWhenNothingLiesThere) {
    Table table;
    table.resize(600, 400);
    const QImage bare = table.grab().toImage();
    TableScene scene;
    scene.emptyText = "Nothing to draft yet.";
    table.setScene(scene);
    EXPECT_NE(bare, table.grab().toImage());
    EXPECT_EQ(table.accessibleDescription(), "Nothing to draft yet.");
}

TEST(TablePaint, panelsAreTintedAndPaperIsPaper) {
    Table table;
    table.resize(1000, 700);
    table.setScene(inventedScene(3));
    const QImage image = table.grab().toImage();
    const TableColours& c = tableColours(isDark(table.palette()));
    const auto at = [&](const QPointF& mm) {
        return QColor(image.pixel(table.view().toPx(mm).toPoint()));
    };
    EXPECT_EQ(at({20, 170}), c.tints[0]);
    EXPECT_EQ(at({124, 170}), c.tints[1]);
    EXPECT_EQ(at({92, 60}), c.paper);
}

TEST(TablePaint, darkPaletteGivesTheDarkTable) {
    Table table;
    table.resize(400, 300);
    QPalette dark(QColor(40, 44, 48));
    dark.setColor(QPalette::WindowText, Qt::white);
    table.setPalette(dark);
    const QImage image = table.grab().toImage();
    EXPECT_EQ(QColor(image.pixel(300, 200)), tableColours(true).paper);
}

TEST(TablePaint, seamNamesAreLeftOutWhereALineRunsThroughThem) {
    Table table;
    table.resize(1000, 700);
    TableScene scene = inventedScene(2);
    scene.letterings.clear();
    table.setScene(scene);
    const QImage bare = table.grab().toImage();
    scene.letterings = {{"1-2", {{92, 0}}}};  // on the waist line
    table.setScene(scene);
    EXPECT_EQ(bare, table.grab().toImage());
    scene.letterings = {{"1-2", {{92, 0}, {92, 60}}}};  // the second place is free
    table.setScene(scene);
    EXPECT_NE(bare, table.grab().toImage());
}

TEST(TablePaint, drawingsPaintInMillimetresFromTheirUpperLeftCorner) {
    Table table;
    table.resize(800, 600);
    TableScene scene;
    scene.drawings = {{QRectF(0, 0, 210, 297), [](QPainter& painter) {
                           painter.fillRect(QRectF(0, 0, 210, 297), Qt::white);
                           painter.fillRect(QRectF(20, 30, 10, 10), Qt::red);
                       }}};
    table.setScene(scene);
    const QImage image = table.grab().toImage();
    const QPoint red = table.view().toPx(QPointF(25, 297 - 35)).toPoint();
    EXPECT_EQ(QColor(image.pixel(red)), QColor(Qt::red));
}

}  // namespace
}  // namespace coutil
