#include "ui/benches/fit_bench.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <cmath>
#include <stdexcept>
#include <utility>

#include <gtest/gtest.h>

#include "core/alterations/find_places.h"
#include "core/alterations/whole_pattern.h"
#include "core/revision/confirm.h"
#include "core/store/text_formats.h"
#include "tests/ui/benches/invented_folio.h"
#include "ui/benches/fit_line_fades.h"
#include "ui/benches/fit_mark_list.h"
#include "ui/benches/fit_photo_view.h"
#include "ui/benches/fit_places.h"
#include "ui/benches/pattern_scene.h"
#include "ui/canvas/painter_path.h"
#include "ui/canvas/table.h"
#include "ui/document/folio_document.h"
#include "ui/fields/choice_field.h"
#include "ui/fields/length_field.h"

namespace coutil {
namespace {

class FitBenchTest : public testing::Test {
  protected:
    FitBenchTest() : bench(document, table) {
        document.open(inventedFolio(), {});
        table.resize(1000, 700);
        bench.resize(400, 1200);
        table.show();
        bench.show();
        bench.enter();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bench));
    }

    template <class Widget>
    Widget* find(const char* name) {
        auto* widget = bench.findChild<Widget*>(QLatin1String(name));
        if (widget == nullptr) throw std::runtime_error(std::string("no widget ") + name);
        return widget;
    }
    void recordFitting() { find<QPushButton>("recordFitting")->click(); }
    const Fitting& fitting() { return document.garment()->fittings.front(); }
    const Pencil& pencil() { return *document.pencil(); }
    const Pattern& pattern() { return *document.drafted().pattern; }

    // Where a seam position lies on the table, on the edge of the panel in front.
    QPoint onSeam(const std::string& seam, double positionMm) {
        const auto seams = seamsNamed(pattern(), seam, BodySide::both);
        const EdgeRef& ref = pattern().seams.at(seams.front()).front;
        const Point at = *pointAtSeamPosition(edgeAt(pattern(), ref), positionMm);
        const auto placements = masterPlacements(pattern(), kSpaceBetweenPanelsMm);
        return table.view().toPx(painterPoint(placed(at, placements[ref.panel]))).toPoint();
    }
    void click(const QPoint& px) {
        QTest::mouseMove(&table, px);
        QTest::mouseClick(&table, Qt::LeftButton, Qt::NoModifier, px);
    }
    void typeAmount(const QString& text) {
        QTest::keyClicks(find<LengthField>("markAmount"), text);
    }
    const SceneHandle& handle(const QString& id) {
        for (const SceneHandle& each : table.scene().handles)
            if (each.id == id) return each;
        throw std::runtime_error("no handle " + id.toStdString());
    }
    void drag(const QString& id, const QPointF& byMm, bool isReleased) {
        const QPointF from = handle(id).atMm;
        const QPoint start = table.view().toPx(from).toPoint();
        const QPoint end = table.view().toPx(from + byMm).toPoint();
        QTest::mousePress(&table, Qt::LeftButton, Qt::NoModifier, start);
        QTest::mouseMove(&table, (start + end) / 2);
        QTest::mouseMove(&table, end);
        if (isReleased) QTest::mouseRelease(&table, Qt::LeftButton, Qt::NoModifier, end);
    }

    // The pencil on the table gone over in ink: the folio after, and the revision's digest.
    std::pair<Folio, std::string> confirmPencil() {
        const auto after =
            pencilConfirmed(document.folio(), 0, pencil().id, {document.drafted().pattern, {}},
                            {.on = "2026-03-18", .by = "Wardrobe", .note = "block"},
                            [](const Recipe& recipe) { return writeRecipeJson(recipe); });
        if (!after) throw std::runtime_error("not confirmed");
        return {*after, after->garments[0].revisions.back()->digest()};
    }

    FolioDocument document;
    Table table;
    FitBench bench;
};

TEST_F(FitBenchTest, teachesWhereThereIsNoFittingYet) {
    EXPECT_TRUE(find<QPushButton>("recordFitting")->isVisible());
    QSignalSpy sheet(&bench, &FitBench::fittingSheetWanted);
    find<QPushButton>("fittingSheet")->click();
    EXPECT_EQ(sheet.count(), 1);
}

TEST_F(FitBenchTest, recordsAFittingOfWhatIsShownAsOneUndoStep) {
    recordFitting();
    ASSERT_EQ(document.garment()->fittings.size(), 1U);
    EXPECT_EQ(fitting().pencil, pencil().id);
    EXPECT_FALSE(find<QPushButton>("recordFitting")->isVisible());
    document.undoStack().undo();
    EXPECT_TRUE(document.garment()->fittings.empty());
    EXPECT_TRUE(find<QPushButton>("recordFitting")->isVisible());
}

TEST_F(FitBenchTest, pointingAtASeamTellsTheSeamPosition) {
    recordFitting();
    QSignalSpy hints(&bench, &FitBench::hint);
    QTest::mouseMove(&table, onSeam("2-3", 35));
    ASSERT_FALSE(hints.isEmpty());
    // A no-break blank stands between figure and unit.
    const QString last = hints.last().front().toString().replace(QChar::Nbsp, ' ');
    EXPECT_TRUE(last.contains("seam 2-3")) << last.toStdString();
    EXPECT_TRUE(last.contains("3.5 cm") || last.contains("3.4 cm") || last.contains("3.6 cm"))
        << last.toStdString();
    EXPECT_TRUE(table.plate().contains("seam 2-3")) << table.plate().toStdString();
}

TEST_F(FitBenchTest, clickThenTypeDrawsThePencilLineAsOneStep) {
    recordFitting();
    const Pattern before = pattern();
    click(onSeam("2-3", 35));
    ASSERT_TRUE(find<LengthField>("markAmount")->hasFocus());
    typeAmount("1.2");  // cm
    ASSERT_EQ(fitting().marks.size(), 1U);
    const Mark& mark = fitting().marks.front();
    EXPECT_EQ(mark.kind, MarkKind::pinned);
    EXPECT_DOUBLE_EQ(mark.amountMm, 12);
    EXPECT_NEAR(std::get<SeamPlace>(mark.place).positionMm, 35, 2);
    ASSERT_EQ(pencil().alterations.size(), 1U);
    EXPECT_EQ(pencil().alterations.front().marks, std::vector<std::string>{mark.id});
    // n/2 off each panel (fitting.md): the edges have moved by 6 mm there.
    const Seam& seam = pattern().seams[1];
    const Path& old = edgeAt(before, seam.front).path;
    const double at = std::get<SeamPlace>(mark.place).positionMm;
    const Point wasAt = *pointAtSeamPosition(edgeAt(before, seam.front), at);
    const auto now = closestOn(edgeAt(pattern(), seam.front).path, wasAt);
    EXPECT_NEAR(now.distanceMm, 6, 0.3);
    EXPECT_NE(old, edgeAt(pattern(), seam.front).path);
    // Recording, and the mark with all its keystrokes.
    EXPECT_EQ(document.undoStack().count(), 2);
    document.undoStack().undo();
    EXPECT_TRUE(fitting().marks.empty());
    EXPECT_EQ(pattern(), before);
}

TEST_F(FitBenchTest, theOldLineStaysVisibleAndTheMarkIsDrawn) {
    recordFitting();
    click(onSeam("2-3", 35));
    EXPECT_TRUE(table.scene().panels[1].before.isEmpty());
    typeAmount("0.8");
    EXPECT_FALSE(table.scene().panels[1].before.isEmpty());
    EXPECT_FALSE(table.scene().panels[2].before.isEmpty());
    EXPECT_TRUE(table.scene().panels[4].before.isEmpty());
    ASSERT_EQ(table.scene().signs.size(), 2U);
    EXPECT_EQ(table.scene().signs.front().shape, SceneSign::Shape::towards);
    EXPECT_TRUE(table.scene().signs.front().isLit);
}

TEST_F(FitBenchTest, aNegativeAmountIsOpened) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("-0.8");
    ASSERT_EQ(fitting().marks.size(), 1U);
    EXPECT_EQ(fitting().marks.front().kind, MarkKind::opened);
    EXPECT_DOUBLE_EQ(fitting().marks.front().amountMm, 8);
    QTest::keyClick(find<LengthField>("markAmount"), Qt::Key_Tab);
    EXPECT_EQ(fitting().marks.front().kind, MarkKind::opened);
    EXPECT_EQ(find<LengthField>("markAmount")->valueMm(), 8);
    EXPECT_TRUE(find<QComboBox>("markKind")->currentText().startsWith("opened"));
}

TEST_F(FitBenchTest, aMinusIsOpenedAlsoAfterAMarkThatWasOpened) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("-0.8");
    click(onSeam("3-4", 35));
    typeAmount("-0.4");
    ASSERT_EQ(fitting().marks.size(), 2U);
    EXPECT_EQ(fitting().marks[1].kind, MarkKind::opened);
    EXPECT_DOUBLE_EQ(fitting().marks[1].amountMm, 4);
}

TEST_F(FitBenchTest, enterGoesOnToTheNextMarkOnTheSameSeam) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    QTest::keyClick(find<LengthField>("markAmount"), Qt::Key_Return);
    auto* position = find<LengthField>("markPosition");
    ASSERT_TRUE(position->hasFocus());
    QTest::keyClicks(position, "-9");
    EXPECT_EQ(fitting().marks.size(), 1U);
    QTest::keyClick(position, Qt::Key_Tab);
    ASSERT_TRUE(find<LengthField>("markAmount")->hasFocus());
    typeAmount("0.5");
    ASSERT_EQ(fitting().marks.size(), 2U);
    EXPECT_EQ(fitting().marks[1].place, MarkPlace(SeamPlace{"2-3", -90}));
    ASSERT_EQ(pencil().alterations.size(), 1U);
    EXPECT_EQ(std::get<ShapeSeam>(pencil().alterations[0].change).amounts.size(), 2U);
}

TEST_F(FitBenchTest, aMarkIsSwitchedOffChangedAndRemovedInTheList) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    find<QCheckBox>("markOn")->click();
    EXPECT_FALSE(fitting().marks.front().isOn);
    EXPECT_TRUE(pencil().alterations.empty());
    find<QCheckBox>("markOn")->click();
    EXPECT_EQ(pencil().alterations.size(), 1U);
    auto* amount = find<LengthField>("markLineAmount");
    amount->setFocus();
    QTest::keyClick(amount, Qt::Key_Up);
    EXPECT_DOUBLE_EQ(fitting().marks.front().amountMm, 9);
    find<QToolButton>("removeMark")->click();
    EXPECT_TRUE(fitting().marks.empty());
    EXPECT_TRUE(pencil().alterations.empty());
}

TEST_F(FitBenchTest, aOneSidedMarkLaysTheWholePatternInTwoRows) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    auto* side = find<ChoiceField>("markSide");
    side->setCurrentIndex(side->findData(int(BodySide::left)));
    ASSERT_TRUE(isWhole(pattern()));
    ASSERT_EQ(table.scene().panels.size(), 10U);
    EXPECT_GT(table.scene().panels[0].sewing.boundingRect().center().y(),
              table.scene().panels[5].sewing.boundingRect().center().y());
    int rows = 0;
    for (const SceneLettering& each : table.scene().letterings)
        rows += each.text == "left" || each.text == "right";
    EXPECT_EQ(rows, 2);
    // Each row has the levels that meet its panels: the hip and high hip lie below them all.
    EXPECT_EQ(table.scene().levels.size(), 8U);
    EXPECT_EQ(table.scene().signs.size(), 2U);  // both edges of the left seam
    find<QPushButton>("equalMean")->click();
    EXPECT_FALSE(isWhole(pattern()));
}

TEST_F(FitBenchTest, draggingTheMarkMovesItAlongItsSeamAsOneStep) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    const int steps = document.undoStack().count();
    const double from = std::get<SeamPlace>(fitting().marks.front().place).positionMm;
    drag(kMarkHandle, {0, 30}, true);
    EXPECT_NEAR(std::get<SeamPlace>(fitting().marks.front().place).positionMm, from + 30, 3);
    EXPECT_EQ(document.undoStack().count(), steps + 1);
    document.undoStack().undo();
    EXPECT_EQ(std::get<SeamPlace>(fitting().marks.front().place).positionMm, from);
}

TEST_F(FitBenchTest, escapeGivesADragUp) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    const Folio before = document.folio();
    table.setFocus();
    drag(kMarkHandle, {0, 30}, false);
    EXPECT_NE(document.folio(), before);
    QTest::keyClick(&table, Qt::Key_Escape);
    EXPECT_EQ(document.folio(), before);
}

TEST_F(FitBenchTest, fadeAndSplitAreDraggedAndTyped) {
    recordFitting();
    click(onSeam("2-3", 0));
    typeAmount("0.8");
    const auto shape = [&] { return std::get<ShapeSeam>(pencil().alterations[0].change); };
    EXPECT_EQ(shape().up.overMm, 60);
    drag(kFadeUpHandle, {0, -25}, true);
    EXPECT_NEAR(*shape().up.overMm, 35, 3);
    EXPECT_EQ(find<LengthField>("fadeUp")->valueMm(), shape().up.overMm);
    const QPointF half = handle(kSplitHandle).atMm;
    drag(kSplitHandle, {-8, 0}, true);
    EXPECT_GT(shape().frontPart, 0.5);
    EXPECT_LT(handle(kSplitHandle).atMm.x(), half.x());
    auto* down = find<LengthField>("fadeDown");
    down->setFocus();
    down->selectAll();
    QTest::keyClicks(down, "4");
    EXPECT_EQ(shape().down.overMm, 40);
    // The next reading keeps what was dragged.
    auto* amount = find<LengthField>("markLineAmount");
    amount->setFocus();
    QTest::keyClick(amount, Qt::Key_Up);
    EXPECT_EQ(shape().down.overMm, 40);
    EXPECT_GT(shape().frontPart, 0.5);
}

TEST_F(FitBenchTest, overARevisionTheFirstMarkBeginsAPencil) {
    const auto confirmed = confirmPencil();
    document.takeConfirmed(confirmed.first, confirmed.second);
    ASSERT_EQ(document.pencil(), nullptr);
    recordFitting();
    EXPECT_EQ(fitting().revision, confirmed.second);
    EXPECT_EQ(document.pencil(), nullptr);
    click(onSeam("2-3", 35));
    typeAmount("1.2");
    ASSERT_NE(document.pencil(), nullptr);
    EXPECT_EQ(pencil().parent, confirmed.second);
    EXPECT_EQ(pencil().alterations.size(), 1U);
    EXPECT_EQ(document.garment()->pencils.size(), 1U);
    EXPECT_DOUBLE_EQ(fitting().marks.front().amountMm, 12);
    document.undoStack().undo();  // one step, though a pencil began in the middle of typing
    EXPECT_TRUE(fitting().marks.empty());
    EXPECT_TRUE(document.garment()->pencils.empty());
}

TEST_F(FitBenchTest, marksOfAnotherMockUpAreKeptButNotDrawn) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    const auto confirmed = confirmPencil();
    document.takeConfirmed(confirmed.first, confirmed.second);
    const Pattern ink = pattern();
    auto* amount = find<LengthField>("markLineAmount");
    amount->setFocus();
    QTest::keyClick(amount, Qt::Key_Up);  // the reading is put right; its ink is dry
    EXPECT_DOUBLE_EQ(fitting().marks.front().amountMm, 9);
    EXPECT_EQ(document.pencil(), nullptr);
    EXPECT_EQ(pattern(), ink);
    EXPECT_TRUE(table.scene().signs.front().isPale);
}

TEST_F(FitBenchTest, aRemovedFittingTakesItsAlterationsAlong) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    find<QPushButton>("removeFitting")->click();
    EXPECT_TRUE(document.garment()->fittings.empty());
    EXPECT_TRUE(pencil().alterations.empty());
    document.undoStack().undo();
    EXPECT_EQ(fitting().marks.size(), 1U);
    EXPECT_EQ(pencil().alterations.size(), 1U);
}

TEST_F(FitBenchTest, aTopEdgeIsRaisedWhereItIsClicked) {
    recordFitting();
    const Panel panel = pattern().panels[2];  // the mark makes another pattern
    const auto top = *edgeWithRole(panel, EdgeRole::top);
    const QPointF at = table.scene().panels[2].edges[top].path.pointAtPercent(0.5);
    click(table.view().toPx(at).toPoint());
    typeAmount("0.6");
    ASSERT_EQ(fitting().marks.size(), 1U);
    EXPECT_EQ(fitting().marks[0].kind, MarkKind::raise);
    const auto& place = std::get<OnLinePlace>(fitting().marks[0].place);
    EXPECT_EQ(place.line, EdgeLine::top);
    EXPECT_EQ(place.at.panel, panel.name);
    EXPECT_NEAR(place.at.alongMm, lengthMm(panel.edges[top].path) / 2, 3);
}

TEST_F(FitBenchTest, fadesOfARaisedTopEdgeAreDraggedAndTyped) {
    recordFitting();
    const auto top = *edgeWithRole(pattern().panels[2], EdgeRole::top);
    const QPointF at = table.scene().panels[2].edges[top].path.pointAtPercent(0.5);
    click(table.view().toPx(at).toPoint());
    typeAmount("0.6");
    const auto change = [&] { return std::get<ReshapeEdge>(pencil().alterations[0].change); };
    ASSERT_EQ(change().towardsFront.overMm, 60);
    EXPECT_FALSE(find<LengthField>("fadeUp")->isVisible());
    ASSERT_TRUE(find<LengthField>("fadeFront")->isVisible());
    // The front panels lie to the left of the panel.
    const int steps = document.undoStack().count();
    const double wasMm = *change().towardsBack.overMm;
    const Pattern before = pattern();
    drag(kFadeBackHandle, {12, 0}, true);
    EXPECT_NEAR(*change().towardsBack.overMm, wasMm + 12, 4);
    EXPECT_EQ(change().towardsFront.overMm, 60);
    EXPECT_EQ(document.undoStack().count(), steps + 1);
    EXPECT_NE(pattern(), before);
    EXPECT_EQ(find<LengthField>("fadeBack")->valueMm(), change().towardsBack.overMm);
    auto* front = find<LengthField>("fadeFront");
    front->setFocus();
    front->selectAll();
    QTest::keyClicks(front, "4");
    EXPECT_EQ(change().towardsFront.overMm, 40);
    find<QCheckBox>("fadeFrontCarried")->click();
    EXPECT_EQ(change().towardsFront.overMm, std::nullopt);
    EXPECT_FALSE(front->isEnabled());
}

TEST_F(FitBenchTest, theKindFollowsAMinusWhileItIsTyped) {
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("-0.8");
    ASSERT_TRUE(find<LengthField>("markAmount")->hasFocus());
    EXPECT_TRUE(find<QComboBox>("markKind")->currentText().startsWith("opened"));
    find<LengthField>("markAmount")->selectAll();
    typeAmount("0.8");
    EXPECT_TRUE(find<QComboBox>("markKind")->currentText().startsWith("pinned"));
    EXPECT_EQ(fitting().marks.front().kind, MarkKind::pinned);
}

TEST_F(FitBenchTest, backToAHalfTheViewFitsAgain) {
    recordFitting();
    const double halfPxPerMm = table.view().pxPerMm();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    auto* side = find<ChoiceField>("markSide");
    side->setCurrentIndex(side->findData(int(BodySide::left)));
    ASSERT_TRUE(isWhole(pattern()));
    EXPECT_LT(table.view().pxPerMm(), 0.8 * halfPxPerMm);
    find<QPushButton>("equalMean")->click();
    ASSERT_FALSE(isWhole(pattern()));
    EXPECT_NEAR(table.view().pxPerMm(), halfPxPerMm, 0.05 * halfPxPerMm);
    table.zoomBy(1.5);  // by hand, on the layout that stays
    const double zoomed = table.view().pxPerMm();
    find<QCheckBox>("markOn")->click();
    EXPECT_EQ(table.view().pxPerMm(), zoomed);
}

TEST_F(FitBenchTest, notesHaveNoAmountAndAreAddedByTheButton) {
    recordFitting();
    auto* kind = find<QComboBox>("markKind");
    kind->setCurrentIndex(kind->findText("bone pokes"));
    auto* where = find<ChoiceField>("markWhere");
    where->setCurrentIndex(1);
    EXPECT_FALSE(find<LengthField>("markAmount")->isVisible());
    find<QPushButton>("nextMark")->click();
    ASSERT_EQ(fitting().marks.size(), 1U);
    EXPECT_EQ(fitting().marks[0].kind, MarkKind::bonePokes);
    EXPECT_TRUE(pencil().alterations.empty());
    EXPECT_FALSE(table.scene().signs.empty());
}

TEST_F(FitBenchTest, aPhotoIsShownLargeAndASpotTiedToAMark) {
    QTemporaryDir folder;
    QImage picture(400, 300, QImage::Format_RGB32);
    picture.fill(Qt::darkCyan);
    ASSERT_TRUE(picture.save(folder.filePath("front.png")));
    recordFitting();
    click(onSeam("2-3", 35));
    typeAmount("0.8");
    bench.attachPhotos({folder.filePath("front.png")});
    ASSERT_EQ(fitting().photos.size(), 1U);
    ASSERT_EQ(document.folio().photos.size(), 1U);
    find<QToolButton>("photo1")->click();
    auto* view = table.findChild<FitPhotoView*>("photoView");
    ASSERT_NE(view, nullptr);
    ASSERT_TRUE(view->isVisible());
    QTest::mouseClick(view, Qt::LeftButton, Qt::NoModifier, view->pictureArea().center().toPoint());
    ASSERT_TRUE(fitting().marks[0].spot);
    EXPECT_NEAR(fitting().marks[0].spot->x, 0.5, 0.01);
    EXPECT_EQ(fitting().marks[0].spot->photo, fitting().photos[0]);
    QTest::keyClick(view, Qt::Key_Escape);
    EXPECT_FALSE(view->isVisible());
}

TEST_F(FitBenchTest, unreadablePhotosAreRefusedWithOneMessage) {
    QTemporaryDir folder;
    QFile file(folder.filePath("notes.jpg"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("not a picture");
    file.close();
    recordFitting();
    QSignalSpy messages(&bench, &FitBench::message);
    bench.attachPhotos({file.fileName()});
    ASSERT_EQ(messages.count(), 1);
    EXPECT_TRUE(messages.front().front().toString().contains("notes.jpg"));
    EXPECT_TRUE(fitting().photos.empty());
}

}  // namespace
}  // namespace coutil
