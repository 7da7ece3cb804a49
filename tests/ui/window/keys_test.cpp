// Keys of the window.
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPrintDialog>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "tests/ui/window/window_fixture.h"
#include "ui/benches/bench.h"
#include "ui/benches/measurement_row.h"
#include "ui/benches/print_bench.h"
#include "ui/canvas/table.h"
#include "ui/projecting/calibration_tool.h"
#include "ui/projecting/projector_view.h"
#include "ui/window/folio_files.h"
#include "ui/window/key_sheet.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

class KeysTest : public WindowTest {};

TEST_F(KeysTest, figuresEnterTheBenchesInTheOrderOfTheJob) {
    window_->files().openDemo();
    const QStringList names{"Measure", "Draft", "Fit", "Compare", "Trace", "Print"};
    ASSERT_EQ(window_->benches().size(), names.size());
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

TEST_F(KeysTest, sheetsAreExportedFromEveryBench) {
    window_->files().openDemo();
    auto& print = *qobject_cast<PrintBench*>(window_->benches().last());
    for (int bench = 0; bench < static_cast<int>(window_->benches().size()); ++bench) {
        const QString pdf = path(QString("sheets %1.pdf").arg(bench));
        print.setAskPath([&pdf](QWidget*, const QString&) { return pdf; });
        window_->enterBench(bench);
        QWidget* where = bench == 0 ? static_cast<QWidget*>(&row(Measurement::bustGirth).field())
                                    : &window_->table();
        where->setFocus();
        QSignalSpy exported(&print, &PrintBench::exported);
        QTest::keyClick(where, Qt::Key_E, Qt::ControlModifier);
        EXPECT_EQ(window_->benchIndex(), static_cast<int>(window_->benches().size()) - 1);
        ASSERT_TRUE(exported.wait(60'000)) << bench;
        EXPECT_TRUE(QFile::exists(pdf)) << bench;
    }
}

TEST_F(KeysTest, thePrintKeyAsksForAPrinterFromEveryBench) {
    window_->files().openDemo();
    for (int bench = 0; bench < static_cast<int>(window_->benches().size()); ++bench) {
        window_->enterBench(bench);
        window_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        bool wasAsked = false;
        QTimer::singleShot(0, window_.get(), [&wasAsked] {
            auto* dialog = qobject_cast<QPrintDialog*>(QApplication::activeModalWidget());
            wasAsked = dialog != nullptr;
            if (dialog != nullptr) dialog->reject();
        });
        QTest::keyClick(window_.get(), Qt::Key_P, Qt::ControlModifier);
        EXPECT_TRUE(wasAsked) << bench;
        EXPECT_EQ(window_->benchIndex(), static_cast<int>(window_->benches().size()) - 1);
    }
}

TEST_F(KeysTest, theProjectorOpensByKeyMenuAndBenchAndEscComesBack) {
    EXPECT_FALSE(window_->menus().project->isEnabled());
    window_->files().openDemo();
    window_->enterBench(4);
    QTest::keyClick(&window_->table(), Qt::Key_F9);
    auto* projector = window_->findChild<ProjectorView*>();
    ASSERT_NE(projector, nullptr);
    for (const bool byMenu : {true, false}) {
        ASSERT_TRUE(QTest::qWaitForWindowActive(projector));
        EXPECT_TRUE(projector->isFullScreen());
        EXPECT_EQ(projector->pieces().size(), window_->document().drafted().tracings->size());
        QTest::keyClick(&projector->calibrating().acrossField(), Qt::Key_Escape);
        EXPECT_TRUE(projector->isVisible());
        QTest::keyClick(projector, Qt::Key_Escape);
        EXPECT_FALSE(projector->isVisible());
        if (byMenu) {
            window_->menus().project->trigger();
        } else {
            QTest::mouseClick(window_->findChild<QPushButton*>("project"), Qt::LeftButton);
            EXPECT_TRUE(projector->isVisible());
        }
    }
}

TEST_F(KeysTest, withoutAPatternThereIsNothingToPrint) {
    const WindowMenus& menus = window_->menus();
    EXPECT_FALSE(menus.exportSheets->isEnabled());
    EXPECT_FALSE(menus.print->isEnabled());
    window_->files().startClient();
    EXPECT_FALSE(menus.exportSheets->isEnabled());
    window_->files().openDemo();
    EXPECT_TRUE(menus.exportSheets->isEnabled());
    EXPECT_TRUE(menus.print->isEnabled());
    window_->files().close();
    EXPECT_FALSE(menus.print->isEnabled());
}

TEST_F(KeysTest, theSheetOfKeysTellsExportAndPrint) {
    QTest::keyClick(window_.get(), Qt::Key_F1);
    QStringList words;
    for (const auto* label : window_->findChild<KeySheet*>()->findChildren<QLabel*>()) {
        words << label->text();
    }
    EXPECT_TRUE(words.contains("export the sheets as PDF"));
    EXPECT_TRUE(words.contains("print the sheets"));
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
