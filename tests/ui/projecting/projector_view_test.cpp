#include "ui/projecting/projector_view.h"

#include <QLabel>
#include <QScreen>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

#include <gtest/gtest.h>

#include "ui/fields/length_field.h"
#include "ui/projecting/calibration_square.h"
#include "ui/projecting/calibration_tool.h"
#include "ui/projecting/projector_screens.h"

namespace coutil {
namespace {

Path squarePath(double fromMm, double toMm) {
    return polylinePath(
        {{fromMm, fromMm}, {toMm, fromMm}, {toMm, toMm}, {fromMm, toMm}, {fromMm, fromMm}});
}

// Cut as a square of 100 mm.
Tracing squareTracing(const std::string& name) {
    Tracing tracing;
    tracing.panel = name;
    tracing.cutting = squarePath(0, 100);
    tracing.sewing = {{.name = "top", .role = EdgeRole::top, .path = squarePath(10, 90)}};
    tracing.grain = {Point(50, 20), Point(50, 80)};
    return tracing;
}

class ProjectorTest : public testing::Test {
  protected:
    void SetUp() override {
        qputenv("HOME", home.path().toUtf8());  // settings of its own
        view.setTracings({squareTracing("1"), squareTracing("2"), squareTracing("3")},
                         LengthUnit::millimetre);
        view.showOn(*QGuiApplication::primaryScreen());
        ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
    }
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(&view, static_cast<Qt::Key>(key), modifiers);
    }
    CalibrationTool& tool() { return view.calibrating(); }
    static void type(LengthField& field, const QString& text) {
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
    }
    // The maker's tape under a projector with these true pixels to the millimetre.
    void measureAndType(const ProjectorCalibration& truth) {
        const QSizeF px = tool().square().square().size();
        type(tool().acrossField(), QString::number(px.width() / truth.acrossPxPerMm, 'f', 1));
        type(tool().upField(), QString::number(px.height() / truth.upPxPerMm, 'f', 1));
        QTest::keyClick(&tool().upField(), Qt::Key_Return);
    }
    // Middle of the bright line that a row or column of the picture crosses near a place, px.
    static double lineAt(const QImage& picture, bool isColumn, int fixed, double near) {
        double sum = 0;
        double weighed = 0;
        const int from = static_cast<int>(near) - 8;
        for (int at = from; at <= from + 16; ++at) {
            const QRgb colour = isColumn ? picture.pixel(fixed, at) : picture.pixel(at, fixed);
            sum += qGray(colour);
            weighed += qGray(colour) * (at + 0.5);
        }
        return sum > 0 ? weighed / sum : std::nan("");
    }
    // Size of the first square as painted, px.
    QSizeF paintedSquare() {
        const QImage picture = view.grab().toImage();
        const QRectF box = view.toScreen().mapRect(QRectF(0, 0, 100, 100));
        const int row = static_cast<int>(box.top() + box.height() * 0.9);
        const int column = static_cast<int>(box.left() + box.width() * 0.25);
        return {
            lineAt(picture, false, row, box.right()) - lineAt(picture, false, row, box.left()),
            lineAt(picture, true, column, box.bottom()) - lineAt(picture, true, column, box.top())};
    }

    QTemporaryDir home;
    ProjectorView view;
};

TEST_F(ProjectorTest, fillsItsScreenAndAsksForCalibrationTheFirstTime) {
    EXPECT_TRUE(view.isFullScreen());
    EXPECT_EQ(view.size(), view.screen()->size());
    EXPECT_TRUE(tool().isVisible());
    EXPECT_TRUE(tool().acrossField().hasFocus());
}

// The truth is the projector's own, known here and not to the program, which sees only what was
// typed; a tape reads to half a millimetre at best, here to 0.1 mm in some 200.
TEST_F(ProjectorTest, aSquareOf100MmIs100MmAfterTypingWhatWasMeasured) {
    for (const ProjectorCalibration truth :
         {ProjectorCalibration{1.731, 1.604}, ProjectorCalibration{3.2, 3.9}}) {
        if (tool().isHidden()) key(Qt::Key_C);
        measureAndType(truth);
        EXPECT_NE(tool().said(), QString());
        measureAndType(truth);  // both are the side now: done
        EXPECT_TRUE(tool().isHidden());
        key(Qt::Key_H);
        const QSizeF painted = paintedSquare();
        EXPECT_NEAR(painted.width(), 100 * truth.acrossPxPerMm, 0.5);
        EXPECT_NEAR(painted.height(), 100 * truth.upPxPerMm, 0.5);
    }
}

TEST_F(ProjectorTest, draggingTheSquareUntilItFitsCalibratesToo) {
    const ProjectorCalibration truth{2.5, 3};
    CalibrationSquare& square = tool().square();
    const double side = tool().sideMm();
    const QRectF before = square.square();
    const auto drag = [&](const QPointF& from, const QPointF& to) {
        QTest::mousePress(&square, Qt::LeftButton, Qt::NoModifier, from.toPoint());
        QTest::mouseMove(&square, to.toPoint());
        QTest::mouseRelease(&square, Qt::LeftButton, Qt::NoModifier, to.toPoint());
    };
    drag(QPointF(before.right(), before.center().y()),
         QPointF(before.left() + side * truth.acrossPxPerMm, before.center().y()));
    drag(QPointF(square.square().center().x(), before.top()),
         QPointF(square.square().center().x(), before.bottom() - side * truth.upPxPerMm));
    // The rest by keys, a pixel at a time; the pointer is only good to whole pixels.
    EXPECT_NEAR(view.calibration().acrossPxPerMm, truth.acrossPxPerMm, 1.5 / side);
    EXPECT_NEAR(view.calibration().upPxPerMm, truth.upPxPerMm, 1.5 / side);
    const double wide = square.square().width();
    square.setFocus();
    QTest::keyClick(&square, Qt::Key_Right);
    EXPECT_DOUBLE_EQ(square.square().width(), wide + 1);
    QTest::keyClick(&square, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(square.square().width(), wide - 9);
    const double high = square.square().height();
    QTest::keyClick(&square, Qt::Key_Up);
    EXPECT_DOUBLE_EQ(square.square().height(), high + 1);
    EXPECT_DOUBLE_EQ(view.calibration().upPxPerMm, (high + 1) / side);
}

TEST_F(ProjectorTest, theCalibrationIsKeptForTheScreen) {
    measureAndType({1.7, 1.6});
    const ProjectorCalibration found = view.calibration();
    EXPECT_EQ(keptCalibration(*view.screen()), found);
    ProjectorView next;
    next.showOn(*QGuiApplication::primaryScreen());
    EXPECT_EQ(next.calibration(), found);
    EXPECT_TRUE(next.calibrating().isHidden());
}

TEST_F(ProjectorTest, impossibleMeasuresAreRefusedInWords) {
    const ProjectorCalibration before = view.calibration();
    type(tool().acrossField(), "0.1");
    type(tool().upField(), "200");
    QTest::keyClick(&tool().upField(), Qt::Key_Return);
    EXPECT_EQ(view.calibration(), before);
    EXPECT_TRUE(tool().said().contains("Measure again")) << tool().said().toStdString();
    EXPECT_FALSE(keptCalibration(*view.screen()));
    tool().acrossField().setFocus();
    tool().acrossField().selectAll();
    QTest::keyClick(&tool().acrossField(), Qt::Key_Delete);
    QTest::keyClick(&tool().upField(), Qt::Key_Return);
    EXPECT_TRUE(tool().said().contains("Two measures")) << tool().said().toStdString();
    EXPECT_TRUE(tool().acrossField().hasFocus());
}

class CalibratedProjectorTest : public ProjectorTest {
  protected:
    void SetUp() override {
        ProjectorTest::SetUp();
        measureAndType({2, 2.2});
        QTest::keyClick(&tool().acrossField(), Qt::Key_Escape);
        ASSERT_TRUE(tool().isHidden());
    }
};

TEST_F(CalibratedProjectorTest, colourIsInvertedByAKeyAndBack) {
    const QPoint corner(2, 2);
    EXPECT_EQ(view.grab().toImage().pixelColor(corner), QColor(Qt::black));
    key(Qt::Key_I);
    EXPECT_EQ(view.grab().toImage().pixelColor(corner), QColor(Qt::white));
    key(Qt::Key_I);
    EXPECT_EQ(view.grab().toImage().pixelColor(corner), QColor(Qt::black));
}

TEST_F(CalibratedProjectorTest, linesGrowThickerAndThinnerWithoutMoving) {
    const auto brightness = [&] {
        const QImage picture = view.grab().toImage();
        const QRectF box = view.toScreen().mapRect(QRectF(0, 0, 100, 100));
        int sum = 0;
        for (int i = -15; i <= 15; ++i) {
            sum += qGray(picture.pixel(static_cast<int>(box.left()) + i,
                                       static_cast<int>(box.top() + box.height() * 0.9)));
        }
        return sum / 255.0;
    };
    const double thin = brightness();
    const QSizeF before = paintedSquare();
    for (int i = 0; i < 4; ++i) key(Qt::Key_Plus);
    EXPECT_NEAR(brightness(), thin + 4, 0.6);
    EXPECT_NEAR(paintedSquare().width(), before.width(), 0.1);
    for (int i = 0; i < 30; ++i) key(Qt::Key_Minus);
    EXPECT_DOUBLE_EQ(view.look().lineWidthPx, 1);
}

TEST_F(CalibratedProjectorTest, keysMoveAndTurnTheDrawingOnTheTable) {
    const auto corner = [&] { return view.toScreen().map(QPointF(0, 0)); };
    const QPointF before = corner();
    key(Qt::Key_Right);
    EXPECT_NEAR(corner().x() - before.x(), 10 * view.calibration().acrossPxPerMm, 1e-6);
    key(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_NEAR(before.y() - corner().y(), 100 * view.calibration().upPxPerMm, 1e-6);
    key(Qt::Key_Left, Qt::AltModifier);
    EXPECT_NEAR(corner().x() - before.x(), 9 * view.calibration().acrossPxPerMm, 1e-6);
    key(Qt::Key_R);
    EXPECT_DOUBLE_EQ(view.view().turnDeg, 15);
    key(Qt::Key_R, Qt::ShiftModifier | Qt::AltModifier);
    EXPECT_DOUBLE_EQ(view.view().turnDeg, 14);
    key(Qt::Key_M);
    EXPECT_TRUE(view.view().isTurnedOver);
    key(Qt::Key_0);
    EXPECT_DOUBLE_EQ(view.view().turnDeg, 0);
    EXPECT_EQ(view.view().middleMm, view.pieces()[0].middle());
}

TEST_F(CalibratedProjectorTest, aDragMovesTheDrawingWithThePointer) {
    const QPointF before = view.toScreen().map(QPointF(0, 0));
    QTest::mousePress(&view, Qt::LeftButton, Qt::NoModifier, QPoint(100, 100));
    QTest::mouseMove(&view, QPoint(137, 82));
    QTest::mouseRelease(&view, Qt::LeftButton, Qt::NoModifier, QPoint(137, 82));
    const QPointF moved = view.toScreen().map(QPointF(0, 0)) - before;
    EXPECT_NEAR(moved.x(), 37, 1e-6);
    EXPECT_NEAR(moved.y(), -18, 1e-6);
}

TEST_F(CalibratedProjectorTest, goesFromPanelToPanelAndRound) {
    EXPECT_EQ(view.piece(), 0);
    key(Qt::Key_Tab);
    EXPECT_EQ(view.piece(), 1);
    EXPECT_EQ(view.view().middleMm, view.pieces()[1].middle());
    key(Qt::Key_PageDown);
    key(Qt::Key_Tab);
    EXPECT_EQ(view.piece(), 0);
    key(Qt::Key_Backtab);
    EXPECT_EQ(view.piece(), 2);
    EXPECT_TRUE(view.keyLine().text().contains("Panel 3"));
    key(Qt::Key_O);
    EXPECT_TRUE(view.showsOnlyPiece());
}

TEST_F(CalibratedProjectorTest, theLineOfKeysIsHiddenByAKeyAndEscLeaves) {
    EXPECT_TRUE(view.keyLine().isVisible());
    key(Qt::Key_H);
    EXPECT_FALSE(view.keyLine().isVisible());
    key(Qt::Key_H);
    EXPECT_TRUE(view.keyLine().isVisible());
    QSignalSpy left(&view, &ProjectorView::left);
    key(Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
    EXPECT_FALSE(view.isVisible());
}

TEST_F(CalibratedProjectorTest, everyKeyToldIsAKey) {
    for (const int told : {Qt::Key_L, Qt::Key_G, Qt::Key_I, Qt::Key_M, Qt::Key_O}) {
        const QImage before = view.grab().toImage();
        key(told);
        EXPECT_NE(view.grab().toImage(), before) << told;
    }
}

}  // namespace
}  // namespace coutil
