#include "ui/benches/compare_bench.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMouseEvent>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>
#include <algorithm>

#include <gtest/gtest.h>

#include "tests/ui/benches/invented_folio.h"
#include "tests/ui/timeline/grown_garment.h"
#include "ui/benches/compare_chart.h"
#include "ui/benches/compare_table.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"

namespace coutil {
namespace {

const QString kMinus(QChar(0x2212));

// The bench beside its two tables, as the window lays them out.
class CompareBenchTest : public testing::Test {
  protected:
    CompareBenchTest() : table(new Table), bench(document, *table) {
        auto* tables = new QVBoxLayout(&window);
        tables->addWidget(table, 1);
        tables->addWidget(bench.underTable(), 1);
        window.resize(900, 700);
        bench.resize(400, 1400);
        window.show();
        bench.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bench));
    }

    void open(const Folio& folio) {
        document.open(folio, {});
        bench.enter();
    }
    StateRef inked(int number) { return {digestOf(document.folio(), number), {}}; }
    ChoiceField* field(const char* name) { return bench.findChild<ChoiceField*>(name); }
    CompareTable* figures(int index) {
        return bench.findChild<CompareTable*>(QStringLiteral("figures%1").arg(index));
    }
    QTreeWidgetItem* row(int table_, const QString& name) {
        const auto found = figures(table_)->findItems(name, Qt::MatchExactly);
        return found.isEmpty() ? nullptr : found.front();
    }

    FolioDocument document;
    QWidget window;
    Table* table;
    CompareBench bench;
};

TEST_F(CompareBenchTest, beginsWithWhatIsShownAndItsParent) {
    open(grownFolio());
    document.showRevision(digestOf(document.folio(), 4));
    ASSERT_NE(bench.states(), nullptr);
    EXPECT_EQ(bench.states()->b.revision, 4);
    EXPECT_EQ(bench.states()->a.revision, 1);  // 4 branched from 1
    document.showPencil("main pencil");
    EXPECT_EQ(bench.states()->b.revision, 0);
    EXPECT_EQ(bench.states()->a.revision, 3);
    EXPECT_EQ(table->scene().panels.size(), bench.states()->comparison.panels.size());
    EXPECT_EQ(table->scene().strokes.size(), table->scene().panels.size());
}

TEST_F(CompareBenchTest, oneRevisionHasNothingToCompareYet) {
    open(inventedFolio());
    EXPECT_EQ(bench.states(), nullptr);
    EXPECT_TRUE(table->scene().isEmpty());
    EXPECT_TRUE(table->scene().emptyText.startsWith("One revision: nothing to compare yet"));
    EXPECT_FALSE(bench.findChild<QPushButton*>("comparePdf")->isEnabled());
    QTest::keyClick(field("compareWhat"), Qt::Key_Down);  // its two sides can be
    ASSERT_NE(bench.states(), nullptr);
    EXPECT_TRUE(bench.states()->areSides);
}

TEST_F(CompareBenchTest, bothLinesHaveInkDashAndName) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    const TableScene& scene = table->scene();
    ASSERT_EQ(scene.legend.size(), 2U);
    EXPECT_EQ(scene.legend[0].pen, scene.panels[0].pen);
    EXPECT_EQ(scene.legend[1].pen, scene.strokes[0].pen);
    EXPECT_EQ(scene.legend[0].pen.revision, 1);
    EXPECT_EQ(scene.legend[1].pen.revision, 3);
    EXPECT_TRUE(scene.legend[0].words.startsWith("A: revision 1, "));
    EXPECT_TRUE(scene.legend[1].words.startsWith("B: revision 3, "));
}

TEST_F(CompareBenchTest, enlargedDifferencesAreLabelled) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    EXPECT_TRUE(table->scene().caption.isEmpty());
    const QPainterPath as = table->scene().strokes[1].path;
    QTest::keyClick(field("compareFactor"), Qt::Key_Down);
    EXPECT_EQ(table->scene().caption, "differences drawn 5 times as large");
    EXPECT_LT(table->scene().strokes[1].path.boundingRect().width(), as.boundingRect().width());
}

TEST_F(CompareBenchTest, sideBySideBothTablesHaveOneView) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    QTest::keyClick(field("compareView"), Qt::Key_Down);
    Table& second = bench.second();
    ASSERT_TRUE(second.isVisible());
    EXPECT_FALSE(field("compareFactor")->isEnabled());
    EXPECT_TRUE(table->scene().strokes.empty());
    EXPECT_EQ(second.scene().legend.front().pen.revision, 3);
    table->zoomBy(2);
    EXPECT_EQ(second.view(), table->view());
    QTest::keyClick(&second, Qt::Key_Plus);
    EXPECT_EQ(table->view(), second.view());
    // Untouched panels lie at the same place in both.
    EXPECT_EQ(table->scene().panels[0].sewing.boundingRect(),
              second.scene().panels[0].sewing.boundingRect());
    bench.leave();
    EXPECT_FALSE(second.isVisible());
}

TEST_F(CompareBenchTest, theTablesTurnWhenTheWindowBecomesWideOrHigh) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    QSignalSpy turned(&bench, &CompareBench::besideTableWanted);
    QTest::keyClick(field("compareView"), Qt::Key_Down);
    Table& second = bench.second();
    const auto resizeBoth = [&](const QSize& size) {
        second.resize(size);
        table->resize(size);
        QCoreApplication::processEvents();
    };
    resizeBoth({2400, 300});
    turned.clear();
    resizeBoth({300, 2400});
    resizeBoth({2400, 300});
    ASSERT_EQ(turned.count(), 2);
    EXPECT_NE(turned[0].front().toBool(), turned[1].front().toBool());
}

TEST_F(CompareBenchTest, aClickOnAFigureGoesToItsPlace) {
    open(grownFolio());
    bench.compare(inked(1), inked(2));
    QTreeWidgetItem* seam = row(1, "2-3");
    ASSERT_NE(seam, nullptr);
    EXPECT_EQ(row(0, "waist")->text(4), kMinus + "0.80");
    table->zoomBy(4);
    figures(1)->setCurrentItem(seam);
    ASSERT_TRUE(table->litProblem());
    QTest::keyClick(figures(1), Qt::Key_Return);
    const QPointF middle = table->view().toPx(*table->litProblem());
    EXPECT_NEAR(middle.x(), table->openArea().center().x(), 1);
    EXPECT_NEAR(middle.y(), table->openArea().center().y(), 1);
}

TEST_F(CompareBenchTest, choosingOneForBothSwapsThem) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    field("compareA")->setCurrentIndex(field("compareB")->currentIndex());
    EXPECT_EQ(bench.states()->a.revision, 3);
    EXPECT_EQ(bench.states()->b.revision, 1);
    QTest::mouseClick(bench.findChild<QPushButton*>("compareSwap"), Qt::LeftButton);
    EXPECT_EQ(bench.states()->a.revision, 1);
}

TEST_F(CompareBenchTest, theChartReadsAHeightByKeysAndPointer) {
    open(grownFolio());
    bench.compare(inked(1), inked(2));
    auto* chart = bench.findChild<CompareChart*>();
    chart->setFocus();
    QTest::keyClick(chart, Qt::Key_Up);
    EXPECT_TRUE(chart->reading().startsWith("+0.5 cm: body ")) << chart->reading().toStdString();
    EXPECT_EQ(chart->accessibleDescription(), chart->reading());
    EXPECT_TRUE(table->litProblem());
    // The pointer of the offscreen platform stays on its small screen: the event itself is sent.
    const QPointF place(chart->width() / 2.0, chart->height() / 3.0);
    QMouseEvent move(QEvent::MouseMove, place, chart->mapToGlobal(place), Qt::NoButton,
                     Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(chart, &move);
    EXPECT_FALSE(chart->reading().isEmpty());
    EXPECT_FALSE(chart->reading().startsWith("+0.5 cm")) << chart->reading().toStdString();
}

TEST_F(CompareBenchTest, tellsTheAlterationsBetween) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    const QString told = bench.findChild<QLabel*>("alterationsBetween")->text();
    EXPECT_EQ(told.count('\n'), 1);
    EXPECT_TRUE(told.contains("loose"));
}

TEST_F(CompareBenchTest, isSavedAsSvgWithBothLinesAndTheirNames) {
    open(grownFolio());
    bench.compare(inked(1), inked(2));
    QTemporaryDir folder;
    bench.setAskPath([&](QWidget*, const QString& suggestion) {
        EXPECT_TRUE(suggestion.endsWith(".svg"));
        return folder.filePath("comparison");  // the ending is added
    });
    QSignalSpy exported(&bench, &CompareBench::exported);
    QTest::mouseClick(bench.findChild<QPushButton*>("compareSvg"), Qt::LeftButton);
    ASSERT_EQ(exported.count(), 1);
    QFile file(folder.filePath("comparison.svg"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString svg = QString::fromUtf8(file.readAll());
    EXPECT_TRUE(svg.contains("<svg"));
    EXPECT_TRUE(svg.contains("A: revision 1, "));
    EXPECT_TRUE(svg.contains("B: revision 2, "));
}

TEST_F(CompareBenchTest, aChangeSheetShowsBAndAsksForWhatChangedSinceA) {
    open(grownFolio());
    bench.compare(inked(1), inked(3));
    QSignalSpy wanted(&bench, &CompareBench::changeSheetWanted);
    auto* button = bench.findChild<QPushButton*>("compareChangeSheet");
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted[0][0].value<StateRef>().digest, inked(1).digest);
    ASSERT_NE(document.revision(), nullptr);
    EXPECT_EQ(document.revision()->number(), 3);
    EXPECT_EQ(bench.states()->a.revision, 1);  // what is compared stays
    EXPECT_EQ(bench.states()->b.revision, 3);
    QTest::keyClick(field("compareWhat"), Qt::Key_Down);  // two sides are one state
    EXPECT_FALSE(button->isEnabled());
}

TEST_F(CompareBenchTest, isSavedAsPdfWithNamesAndFigures) {
    open(grownFolio());
    bench.compare(inked(1), inked(2));
    bench.setToday(QDate(2026, 5, 2));
    const auto pages = bench.pages();
    ASSERT_GE(pages.size(), 2U);
    const auto says = [&](std::size_t page, const std::string& words) {
        return std::ranges::any_of(pages[page].letterings, [&](const SheetLettering& each) {
            return each.text.find(words) != std::string::npos;
        });
    };
    EXPECT_TRUE(says(0, "A: revision 1, "));
    EXPECT_TRUE(says(0, "B: revision 2, "));
    EXPECT_TRUE(says(0, "not for cutting"));
    EXPECT_TRUE(says(1, (kMinus + "0.80").toStdString()));
    EXPECT_TRUE(says(1, "Alterations between") || says(pages.size() - 1, "Alterations between"));
    for (const SheetDrawing& page : pages) {
        for (const SheetLettering& each : page.letterings) {
            EXPECT_GE(each.at.x(), page.marginMm - 1e-9) << each.text;
            EXPECT_GE(each.at.y(), page.marginMm - 1e-9) << each.text;
            EXPECT_LE(each.at.x(), page.widthMm - page.marginMm + 1e-9) << each.text;
        }
    }
    QTemporaryDir folder;
    const QString path = folder.filePath("comparison.pdf");
    bench.setAskPath([&](QWidget*, const QString&) { return path; });
    QSignalSpy exported(&bench, &CompareBench::exported);
    QTest::mouseClick(bench.findChild<QPushButton*>("comparePdf"), Qt::LeftButton);
    ASSERT_EQ(exported.count(), 1);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-1."));
}

}  // namespace
}  // namespace coutil
