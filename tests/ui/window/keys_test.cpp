// Keys of the window.
#include <QApplication>
#include <QTest>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/bench.h"
#include "ui/benches/measurement_row.h"
#include "ui/canvas/table.h"
#include "ui/window/folio_files.h"
#include "ui/window/key_sheet.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

class KeysTest : public WindowTest {};

TEST_F(KeysTest, figuresEnterTheBenchesInTheOrderOfTheJob) {
    window_->files().openDemo();
    const QStringList names{"Measure", "Draft", "Trace", "Print"};
    ASSERT_LE(window_->benches().size(), names.size());
    for (int i = static_cast<int>(window_->benches().size()) - 1; i >= 0; --i) {
        window_->table().setFocus();
        QTest::keyClick(&window_->table(), static_cast<Qt::Key>(Qt::Key_1 + i));
        EXPECT_EQ(window_->benchIndex(), i);
        EXPECT_EQ(window_->benches()[i]->benchName(), names[i]);
        EXPECT_TRUE(window_->benches()[i]->isVisible());
    }
}

TEST_F(KeysTest, figuresTypedIntoAFieldAreFiguresAndAltStillEntersBenches) {
    window_->files().startClient();
    LengthField& field = row(Measurement::bustGirth).field();
    field.setFocus();
    QTest::keyClick(&field, Qt::Key_2);
    EXPECT_EQ(window_->benchIndex(), 0);
    EXPECT_EQ(field.text(), "2");
    QTest::keyClick(&field, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(window_->benchIndex(), 1);
}

TEST_F(KeysTest, f1AndQuestionMarkShowTheSheetOfKeys) {
    EXPECT_EQ(window_->findChild<KeySheet*>(), nullptr);
    QTest::keyClick(window_.get(), Qt::Key_F1);
    auto* sheet = window_->findChild<KeySheet*>();
    ASSERT_NE(sheet, nullptr);
    EXPECT_TRUE(sheet->isVisible());
    EXPECT_FALSE(sheet->isModal());
    QTest::keyClick(sheet, Qt::Key_Escape);
    EXPECT_FALSE(sheet->isVisible());
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    QTest::keyClick(window_.get(), Qt::Key_Question, Qt::ShiftModifier);
    EXPECT_TRUE(sheet->isVisible());
}

TEST_F(KeysTest, noKeyIsTakenTwice) {
    QStringList keys;
    for (const QAction* action : window_->menus().findChildren<QAction*>()) {
        for (const QKeySequence& key : action->shortcuts()) keys << key.toString();
    }
    const qsizetype all = keys.size();
    EXPECT_GE(all, 9);
    keys.removeDuplicates();
    EXPECT_EQ(keys.size(), all);
}

}  // namespace
}  // namespace coutil
