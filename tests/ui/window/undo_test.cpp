// Undo and redo of every change, with words, from the keyboard.
#include <QAction>
#include <QComboBox>
#include <QTest>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measurement_row.h"
#include "ui/canvas/table.h"
#include "ui/window/folio_files.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

using enum Measurement;

class UndoTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->files().openDemo();
        window_->enterBench(0);
    }

    double waistMm() const { return window_->document().measurementSet()->valuesMm.at(waistGirth); }
};

TEST_F(UndoTest, aTypedFigureIsOneStepWithItsNameAndFigure) {
    const auto before = *window_->document().drafted().pattern;
    type(waistGirth, "74.5");
    EXPECT_EQ(window_->document().undoStack().count(), 1);
    const QString words = window_->document().undoStack().undoText();
    EXPECT_TRUE(words.contains("74.5")) << words.toStdString();
    const auto actions = window_->menus().findChildren<QAction*>();
    EXPECT_TRUE(std::ranges::any_of(actions, [&words](const QAction* action) {
        return action->isEnabled() && action->text() == "&Undo: " + words;
    })) << "the menu says what would be undone";
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(waistMm(), 760);
    EXPECT_EQ(row(waistGirth).field().text(), "76");
    EXPECT_EQ(*window_->document().drafted().pattern, before);
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(waistMm(), 745);
    EXPECT_EQ(row(waistGirth).field().text(), "74.5");
}

TEST_F(UndoTest, undoWorksWhileAFieldHasTheKeyboard) {
    LengthField& field = row(waistGirth).field();
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, "74");
    QTest::keyClick(&field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(waistMm(), 760) << "the window's undo, not the line's";
    EXPECT_EQ(window_->document().undoStack().index(), 0);
}

TEST_F(UndoTest, everyKindOfChangeCanBeUndone) {
    const Folio before = window_->document().folio();
    FolioDocument& document = window_->document();
    type(hipGirth, "104");
    Style style = document.garment()->pencils.back().style;
    style.panelsPerHalf = 4;
    document.changeStyle(style, "Four panels");
    auto* unit = window_->findChild<QComboBox*>("unit");
    ASSERT_NE(unit, nullptr);
    unit->setCurrentIndex(2);
    EXPECT_EQ(document.folio().unit, LengthUnit::inch);
    window_->menus().newGarment->trigger();
    EXPECT_EQ(document.folio().garments.size(), 2U);
    EXPECT_EQ(document.undoStack().count(), 4);
    while (document.undoStack().canUndo()) document.undoStack().undo();
    EXPECT_EQ(document.folio(), before);
    EXPECT_FALSE(document.isModified());
    EXPECT_FALSE(window_->isWindowModified());
}

}  // namespace
}  // namespace coutil
