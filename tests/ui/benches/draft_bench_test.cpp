#include "ui/benches/draft_bench.h"

#include <QAccessible>
#include <QAccessibleInterface>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <QToolButton>
#include <algorithm>
#include <stdexcept>
#include <string>

#include <gtest/gtest.h>

#include "core/block/draft_corset.h"
#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/problem_list.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/length_field.h"
#include "ui/fields/slider_length_field.h"
#include "ui/words/trade_words.h"

namespace coutil {
namespace {

class DraftBenchTest : public testing::Test {
  protected:
    DraftBenchTest() : bench(document, table) {
        document.open(inventedFolio(), {});
        table.resize(900, 700);
        bench.resize(380, 900);
        table.show();
        bench.show();
        bench.enter();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bench));
    }

    const Style& style() { return document.garment()->pencils.back().style; }
    const Pattern& pattern() { return *document.drafted().pattern; }
    const Level& level(const std::string& name) {
        for (const Level& l : pattern().levels) {
            if (l.name == name) return l;
        }
        throw std::runtime_error("no level " + name);
    }
    template <class Widget>
    Widget* find(const char* name) {
        auto* widget = bench.findChild<Widget*>(QLatin1String(name));
        if (widget == nullptr) throw std::runtime_error(std::string("no widget ") + name);
        return widget;
    }
    void retype(QLineEdit* field, const QString& text) {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
    }
    bool tableTells(const QString& text) {
        const auto& levels = table.scene().levels;
        return std::any_of(levels.begin(), levels.end(),
                           [&](const SceneLevel& l) { return l.figures.contains(text); });
    }
    bool cardShows(const QString& text) {
        const auto labels = bench.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->isVisibleTo(&bench) && label->text() == text;
        });
    }

    FolioDocument document;
    Table table;
    DraftBench bench;
};

TEST_F(DraftBenchTest, showsThePatternOnTheTable) {
    ASSERT_TRUE(document.drafted().pattern);
    EXPECT_EQ(table.scene().panels.size(), 5U);
    EXPECT_EQ(table.scene().levels.size(), pattern().levels.size());
    EXPECT_EQ(table.scene().panels[1].edges.size(), pattern().panels[1].edges.size());
    EXPECT_TRUE(table.openArea().contains(table.view().toPx(boundsOf(table.scene()))));
}

TEST_F(DraftBenchTest, seamEdgesKnowTheirPartners) {
    ASSERT_EQ(pattern().seams.size(), 4U);
    for (const Seam& seam : pattern().seams) {
        const auto& front = table.scene().panels[seam.front.panel].edges[seam.front.edge];
        ASSERT_TRUE(front.partner);
        EXPECT_EQ(front.partner->panel, int(seam.back.panel));
        EXPECT_EQ(front.partner->edge, int(seam.back.edge));
    }
}

TEST_F(DraftBenchTest, hoveringASeamTellsItsLengthsOnBothPanels) {
    const Seam& seam = pattern().seams[1];
    const auto& edge = table.scene().panels[seam.front.panel].edges[seam.front.edge];
    const QPointF px = table.view().toPx(edge.path.pointAtPercent(0.3));
    QTest::mouseMove(&table, px.toPoint());
    const SeamLengths lengths = seamLengthsOf(edgeAt(pattern(), seam.front));
    const QString above = lengthText(lengths.aboveWaistMm, LengthUnit::centimetre);
    EXPECT_TRUE(table.plate().contains("Seam 2-3")) << table.plate().toStdString();
    EXPECT_EQ(table.plate().count(above), 2) << table.plate().toStdString();
}

TEST_F(DraftBenchTest, panelsChangeByKeyboardAsOneUndoStep) {
    auto* panels = find<QComboBox>("panelsPerHalf");
    panels->setFocus();
    QTest::keyClick(panels, Qt::Key_Down);
    EXPECT_EQ(style().panelsPerHalf, 6);
    EXPECT_EQ(table.scene().panels.size(), 6U);
    EXPECT_EQ(document.undoStack().count(), 1);
    document.undoStack().undo();
    EXPECT_EQ(table.scene().panels.size(), 5U);
    EXPECT_EQ(panels->currentData().toInt(), 5);
}

TEST_F(DraftBenchTest, typingEaseRedraftsAtOnceAndIsOneUndoStep) {
    auto* ease = find<LengthField>("ease_waist");
    retype(ease, "-4,5");
    EXPECT_DOUBLE_EQ(style().easeMm.at(LevelId::waist), -45);
    ASSERT_TRUE(document.drafted().pattern);
    EXPECT_NEAR(*level("waist").targetMm, 760 - 45, 1e-9);
    EXPECT_NEAR(*level("waist").patternMm, 760 - 45, 0.01);  // the promise of the drafting rules
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_TRUE(tableTells(lengthText(715, LengthUnit::centimetre)));
    EXPECT_TRUE(cardShows("71.5"));
    document.undoStack().undo();
    EXPECT_DOUBLE_EQ(style().easeMm.at(LevelId::waist), -60);
    EXPECT_EQ(ease->text(), "-6");
}

TEST_F(DraftBenchTest, arrowKeysStepTheEase) {
    auto* ease = find<LengthField>("ease_waist");
    ease->setFocus();
    QTest::keyClick(ease, Qt::Key_Down);
    QTest::keyClick(ease, Qt::Key_Down);
    EXPECT_DOUBLE_EQ(style().easeMm.at(LevelId::waist), -62);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(DraftBenchTest, shapeChangesByKeyboard) {
    auto* shape = find<QComboBox>("topShape");
    shape->setFocus();
    const Path before = outlineOf(pattern().panels[0]);
    QTest::keyClick(shape, Qt::Key_Home);
    EXPECT_EQ(style().topEdge.shape, TopShape::straight);
    EXPECT_FALSE(outlineOf(pattern().panels[0]) == before);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(DraftBenchTest, openHeightsShowTheGreyFigureAndTakeATypedOne) {
    auto* front = find<SliderLengthField>("top_front");
    EXPECT_TRUE(front->field().text().isEmpty());
    EXPECT_FALSE(front->field().placeholderText().isEmpty());
    retype(&front->field(), "18");
    ASSERT_TRUE(style().topEdge.frontMm);
    EXPECT_DOUBLE_EQ(*style().topEdge.frontMm, 180);
    front->field().selectAll();
    QTest::keyClick(&front->field(), Qt::Key_Backspace);
    EXPECT_FALSE(style().topEdge.frontMm);
}

TEST_F(DraftBenchTest, theGreyFigureAtTheSideIsThatOfTheSideSeam) {
    const ResolvedHeights heights = resolvedHeights(*document.drafted().body, style());
    ASSERT_GT(heights.sideSeam, 0U);  // never the seam over the bust
    Style fixed = style();
    fixed.topEdge.sideMm = 150;
    const ResolvedHeights moved = resolvedHeights(*document.drafted().body, fixed);
    EXPECT_DOUBLE_EQ(moved.topMm[moved.sideSeam + 1], 150);
    EXPECT_EQ(find<SliderLengthField>("top_side")->field().placeholderText().toStdString(),
              writtenLength(heights.topMm[heights.sideSeam + 1], LengthUnit::centimetre));
}

TEST_F(DraftBenchTest, aSliderDragIsOneUndoStep) {
    auto* gap = find<SliderLengthField>("lacingGap");
    gap->slider().setSliderDown(true);
    for (const int mm : {52, 55, 60}) gap->slider().setValue(mm);
    gap->slider().setSliderDown(false);
    EXPECT_DOUBLE_EQ(style().lacingGapMm, 60);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(DraftBenchTest, whatCannotBeReadChangesNothingAndSaysWhy) {
    auto* gap = find<SliderLengthField>("lacingGap");
    retype(&gap->field(), "abc");
    EXPECT_DOUBLE_EQ(style().lacingGapMm, 50);
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_FALSE(gap->field().accessibleDescription().isEmpty());
}

TEST_F(DraftBenchTest, anImpossibleStyleLeavesTheLastPatternPaleAndSaysWhy) {
    const std::size_t panels = table.scene().panels.size();
    retype(find<LengthField>("ease_waist"), "-75");
    EXPECT_FALSE(document.drafted().pattern);
    EXPECT_EQ(table.scene().panels.size(), panels);
    auto* list = bench.findChild<ProblemList*>();
    ASSERT_FALSE(list->problems().empty());
    EXPECT_EQ(list->problems().front().severity, Severity::error);
}

TEST_F(DraftBenchTest, aProblemPointsAtItsPanelAndGoesThere) {
    Style narrow = style();
    narrow.easeMm[LevelId::waist] = -400;
    narrow.lacingGapMm = 280;
    document.changeStyle(narrow, "narrow");
    auto* list = bench.findChild<ProblemList*>();
    ASSERT_FALSE(list->problems().empty());
    const Problem problem = list->problems().front();
    ASSERT_FALSE(problem.panel.empty());
    QCoreApplication::processEvents();
    const QImage before = table.grab().toImage();
    auto* line = list->findChild<ProblemLine*>();
    line->setFocus();
    EXPECT_NE(table.grab().toImage(), before);
    table.zoomBy(4);
    QTest::keyClick(line, Qt::Key_Return);
    const auto index = static_cast<std::size_t>(std::stoi(problem.panel)) - 1;
    const QRectF panel = table.view().toPx(table.scene().panels[index].sewing.boundingRect());
    EXPECT_TRUE(panel.contains(table.openArea().center()));
}

TEST_F(DraftBenchTest, aLargeReductionShowsTheCaution) {
    auto* caution = find<QLabel>("caution");
    EXPECT_FALSE(caution->isVisibleTo(&bench));
    retype(find<LengthField>("ease_waist"), "-10");
    EXPECT_TRUE(caution->isVisibleTo(&bench));
    EXPECT_TRUE(caution->text().contains("doctor"));
}

TEST_F(DraftBenchTest, moreHoldsTheSharesAndTheyStaySound) {
    find<QToolButton>("more")->click();
    const auto shares = seamSharesInForce(style(), LevelId::waist);
    QWidget* field = nullptr;
    for (QWidget* widget : bench.findChildren<QWidget*>()) {
        if (widget->accessibleName().startsWith("Share of seam 1-2") &&
            widget->accessibleName().endsWith("waist")) {
            field = widget;
        }
    }
    ASSERT_NE(field, nullptr);
    field->setFocus();
    QTest::keyClick(field, Qt::Key_Up);
    const auto changed = seamSharesInForce(style(), LevelId::waist);
    EXPECT_NEAR(changed[0], shares[0] + 0.01, 1e-9);
    double sum = 0;
    for (const double share : changed) sum += share;
    EXPECT_NEAR(sum, 1, 1e-9);
    EXPECT_TRUE(document.drafted().pattern);
}

TEST_F(DraftBenchTest, ownLevelsComeAndGo) {
    find<QToolButton>("more")->click();
    QTest::mouseClick(find<QPushButton>("addLevel"), Qt::LeftButton);
    ASSERT_EQ(style().ownLevels.size(), 1U);
    EXPECT_EQ(level(style().ownLevels[0].name).heightMm, style().ownLevels[0].heightMm);
    EXPECT_EQ(table.scene().levels.size(), pattern().levels.size());
    document.undoStack().undo();
    EXPECT_TRUE(style().ownLevels.empty());
}

TEST_F(DraftBenchTest, pickedPanelShowsItsFigures) {
    table.pickPanel(2);
    EXPECT_TRUE(cardShows("Panel 3"));
    const auto width = widthAtHeightMm(pattern().panels[2], 0);
    ASSERT_TRUE(width);
    EXPECT_TRUE(cardShows(QString::fromStdString(writtenLength(*width, LengthUnit::centimetre))));
    EXPECT_TRUE(table.accessibleDescription().contains("area"));
}

TEST_F(DraftBenchTest, everyFieldHasAnAccessibleName) {
    find<QToolButton>("more")->click();
    QCoreApplication::processEvents();  // layouts show what was added to them
    int seen = 0;
    for (QWidget* widget : bench.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisibleTo(&bench)) continue;
        if (widget->focusProxy() != nullptr || widget->parentWidget()->inherits("QAbstractSpinBox"))
            continue;
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(told, nullptr);
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        ++seen;
    }
    EXPECT_GT(seen, 60);
}

// The card of the window is 372 px wide and widens where figures ask for it; on a laptop the table
// has no more than a few pixels to give.
TEST_F(DraftBenchTest, fitsItsCardWithSevenPanelsAndFractions) {
    Folio folio = inventedFolio();
    folio.unit = LengthUnit::inch;
    folio.garments[0].pencils.front().style.panelsPerHalf = 7;
    folio.garments[0].pencils.front().style.easeMm[LevelId::waist] = -101;  // with the caution
    folio.garments[0].pencils.front().style.ownLevels = {
        {"where the ribs of the corset begin", 63}};
    document.open(folio, {});
    ASSERT_TRUE(document.drafted().pattern);
    table.pickPanel(1);
    find<QToolButton>("more")->click();
    QCoreApplication::processEvents();
    EXPECT_LE(bench.minimumSizeHint().width(), 365);
}

TEST(DraftBenchEmpty, saysWhatToDoWithoutAGarment) {
    FolioDocument document;
    Table table;
    DraftBench bench(document, table);
    bench.enter();
    EXPECT_TRUE(table.scene().isEmpty());
    EXPECT_TRUE(table.scene().emptyText.contains("demo singer"));
}

}  // namespace
}  // namespace coutil
