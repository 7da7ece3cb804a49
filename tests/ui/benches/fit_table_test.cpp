// What the Fit bench lays on the table, and what is pointed at and dragged there.
#include "tests/ui/benches/fit_bench_fixture.h"

namespace coutil {
namespace {

TEST_F(FitBenchTest, pointingAtASeamTellsTheSeamPosition) {
    recordFitting();
    QTest::mouseMove(&table, QPoint(1, 1));  // wherever the test before left the pointer
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

}  // namespace
}  // namespace coutil
