#include "ui/benches/print_bench.h"

#include <QAccessible>
#include <QAccessibleInterface>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <memory>
#include <stdexcept>

#include <gtest/gtest.h>

#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/job_bar.h"
#include "ui/benches/sheet_map.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/window/settings.h"

namespace coutil {
namespace {

constexpr int kSearchMs = 60000;

class PrintBenchTest : public testing::Test {
  protected:
    PrintBenchTest() {
        openSettings()->clear();
        bench = std::make_unique<PrintBench>(document, table);
        bench->setToday(QDate(2026, 3, 2));
        document.open(inventedFolio(), {});
        table.resize(900, 700);
        bench->resize(380, 900);
        table.show();
        bench->show();
        bench->enter();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(bench.get()));
    }
    template <class Widget>
    Widget* find(const char* name) {
        auto* widget = bench->findChild<Widget*>(QLatin1String(name));
        if (widget == nullptr) throw std::runtime_error(std::string("no widget ") + name);
        return widget;
    }
    void retype(QLineEdit* field, const QString& text) {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
    }

    FolioDocument document;
    Table table;
    std::unique_ptr<PrintBench> bench;
};

TEST_F(PrintBenchTest, aPlanIsThereAtOnce) {
    ASSERT_TRUE(bench->plan());
    EXPECT_EQ(table.scene().sheets.size(), bench->plan()->sheets.size());
    EXPECT_EQ(table.scene().panels.size(), document.drafted().tracings->size());
    EXPECT_TRUE(find<QLabel>("sheetCount")->text().contains("A4"));
    EXPECT_TRUE(bench->isSearching());
}

TEST_F(PrintBenchTest, theBetterPlanArrivesAndIsNeverWorse) {
    const std::size_t atOnce = bench->plan()->sheets.size();
    QSignalSpy ended(bench.get(), &PrintBench::searchEnded);
    ASSERT_TRUE(ended.wait(kSearchMs));
    EXPECT_LE(bench->plan()->sheets.size(), atOnce);
    EXPECT_FALSE(bench->isSearching());
    EXPECT_EQ(table.scene().sheets.size(), bench->plan()->sheets.size());
}

TEST_F(PrintBenchTest, aChangeStopsTheSearchAndPlansAnew) {
    QSignalSpy planned(bench.get(), &PrintBench::planChanged);
    Style style = document.garment()->pencils.back().style;
    style.panelsPerHalf = 6;
    document.changeStyle(style, "panels");
    ASSERT_TRUE(bench->plan());
    EXPECT_EQ(planned.size(), 1);
    EXPECT_EQ(table.scene().panels.size(), 6U);
    QSignalSpy ended(bench.get(), &PrintBench::searchEnded);
    ASSERT_TRUE(ended.wait(kSearchMs));
    EXPECT_EQ(ended.size(), 1);  // that of the search before never comes
}

TEST_F(PrintBenchTest, enoughTakesTheBestSoFar) {
    const std::size_t atOnce = bench->plan()->sheets.size();
    QSignalSpy ended(bench.get(), &PrintBench::searchEnded);
    QTest::mouseClick(&find<JobBar>("searchBar")->stopButton(), Qt::LeftButton);
    ASSERT_TRUE(ended.wait(kSearchMs));
    EXPECT_FALSE(bench->isSearching());
    EXPECT_LE(bench->plan()->sheets.size(), atOnce);
    EXPECT_FALSE(find<JobBar>("searchBar")->isVisibleTo(bench.get()));
}

TEST_F(PrintBenchTest, paperByKeyboardAndKeptForNextTime) {
    auto* paper = find<QComboBox>("paper");
    paper->setFocus();
    QTest::keyClicks(paper, "Let");
    EXPECT_EQ(bench->plan()->options.paper.name, "Letter");
    PrintBench next(document, table);
    next.enter();
    EXPECT_EQ(next.plan()->options.paper.name, "Letter");
}

TEST_F(PrintBenchTest, aMarginThatCannotBeIsToldAndChangesNothing) {
    retype(find<LengthField>("margin"), "9");
    EXPECT_EQ(bench->plan()->options.marginUm, 10000);
    EXPECT_TRUE(find<QLabel>("paperComplaint")->isVisibleTo(bench.get()));
    retype(find<LengthField>("margin"), "1,5");
    EXPECT_EQ(bench->plan()->options.marginUm, 15000);
    EXPECT_FALSE(find<QLabel>("paperComplaint")->isVisibleTo(bench.get()));
}

TEST_F(PrintBenchTest, measuredSquareGivesTheCorrection) {
    retype(find<LengthField>("measuredAcross"), "99,5");
    QTest::keyClick(find<LengthField>("measuredAcross"), Qt::Key_Return);
    EXPECT_DOUBLE_EQ(bench->plan()->options.scaleX, 100 / 99.5);
    EXPECT_DOUBLE_EQ(bench->plan()->options.scaleY, 1);
    EXPECT_TRUE(find<LengthField>("measuredAcross")->text().isEmpty());
    EXPECT_EQ(document.undoStack().count(), 0);  // the printer's, not the folio's
    retype(find<LengthField>("measuredUp"), "80");
    QTest::mouseClick(find<QPushButton>("useCorrection"), Qt::LeftButton);
    EXPECT_DOUBLE_EQ(bench->plan()->options.scaleY, 1);
    EXPECT_TRUE(find<QLabel>("correctionComplaint")->isVisibleTo(bench.get()));
}

TEST_F(PrintBenchTest, aSheetOpensLargeByClickAndEscGoesBack) {
    const QRectF frame = table.scene().sheets[1].frame;
    QTest::mouseClick(&table, Qt::LeftButton, {}, table.view().toPx(frame.center()).toPoint());
    ASSERT_EQ(table.scene().drawings.size(), 1U);
    EXPECT_DOUBLE_EQ(table.scene().drawings[0].place.width(), 210);  // A4 upright: ISO 216
    EXPECT_EQ(bench->findChild<SheetMap*>()->page(), 2);
    QTest::keyClick(&table, Qt::Key_Escape);
    EXPECT_TRUE(table.scene().drawings.empty());
    EXPECT_FALSE(table.scene().sheets.empty());
}

TEST_F(PrintBenchTest, aSheetOpensByKeyboard) {
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Tab);
    EXPECT_EQ(table.picked().sheet, 0);
    QTest::keyClick(&table, Qt::Key_Return);
    EXPECT_EQ(table.scene().drawings.size(), 1U);
}

TEST_F(PrintBenchTest, thePageOnTheTableIsPaintedOnWhitePaper) {
    bench->openPage(0);
    const QImage image = table.grab().toImage();
    const QPoint corner = table.view().toPx(QPointF(3, 3)).toPoint();
    EXPECT_EQ(QColor(image.pixel(corner)), QColor(Qt::white));
}

TEST_F(PrintBenchTest, exportWritesThePdfAndSaysSo) {
    QTemporaryDir folder;
    const QString path = folder.filePath("sheets.pdf");
    QString suggested;
    bench->setAskPath([&](QWidget*, const QString& suggestion) {
        suggested = suggestion;
        return path;
    });
    QSignalSpy exported(bench.get(), &PrintBench::exported);
    QSignalSpy messages(bench.get(), &Bench::message);
    QTest::mouseClick(find<QPushButton>("exportPdf"), Qt::LeftButton);
    ASSERT_TRUE(exported.wait(kSearchMs));
    EXPECT_TRUE(suggested.endsWith("Chorus-bodice-A4.pdf")) << suggested.toStdString();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    ASSERT_EQ(messages.size(), 1);
    EXPECT_FALSE(messages[0][1].toBool());
}

TEST_F(PrintBenchTest, anUnwritableTargetIsOneMessageAndNothingIsLeft) {
    QTemporaryDir folder;
    const QString path = folder.filePath("no such folder/sheets.pdf");
    bench->setAskPath([&](QWidget*, const QString&) { return path; });
    QSignalSpy messages(bench.get(), &Bench::message);
    QTest::mouseClick(find<QPushButton>("exportPdf"), Qt::LeftButton);
    ASSERT_TRUE(messages.wait(kSearchMs));
    EXPECT_TRUE(messages[0][1].toBool());
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_TRUE(find<QPushButton>("exportPdf")->isEnabled());
}

TEST_F(PrintBenchTest, withoutAPatternThereIsNothingToExport) {
    Folio folio = inventedFolio();
    folio.measurementSets[0].valuesMm.erase(Measurement::waistGirth);
    document.open(folio, {});
    EXPECT_FALSE(bench->plan());
    EXPECT_FALSE(find<QPushButton>("exportPdf")->isEnabled());
    EXPECT_TRUE(table.scene().isEmpty());
    EXPECT_FALSE(table.scene().emptyText.isEmpty());
}

TEST_F(PrintBenchTest, everyFieldHasAnAccessibleName) {
    int seen = 0;
    for (QWidget* widget : bench->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(bench.get())) continue;
        if (widget->focusProxy() != nullptr) continue;
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(told, nullptr);
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        ++seen;
    }
    EXPECT_GE(seen, 14);
}

}  // namespace
}  // namespace coutil
