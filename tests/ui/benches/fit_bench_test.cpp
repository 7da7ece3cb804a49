// Fittings and their marks as they are typed, changed and taken back.
#include "tests/ui/benches/fit_bench_fixture.h"

namespace coutil {
namespace {

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
