// Folios in and out of the window: save, reopen, recover, recent, close.
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QUrl>

#include "tests/ui/window/singer.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measurement_row.h"
#include "ui/canvas/table.h"
#include "ui/document/state_folder.h"
#include "ui/window/folio_files.h"
#include "ui/window/message_bar.h"
#include "ui/window/recent_files.h"
#include "ui/window/recovery.h"
#include "ui/window/start_screen.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

using enum Measurement;

class FilesTest : public WindowTest {
  protected:
    void openSinger() {
        window_->files().openDemo();
        window_->enterBench(0);
    }

    bool saveAs(const QString& name) {
        answers_->files.append(path(name));
        return window_->files().saveAs();
    }
};

TEST_F(FilesTest, whatIsSavedCanBeReopenedAndLooksTheSame) {
    openSinger();
    type(waistGirth, "75 1/2 cm");
    ASSERT_TRUE(saveAs("singer.coutil"));
    EXPECT_FALSE(window_->isWindowModified());
    const Folio saved = window_->document().folio();
    const auto panels = window_->document().drafted().pattern;
    window_->close();
    openWindow();
    window_->files().openFile(path("singer.coutil"));
    window_->enterBench(0);
    EXPECT_EQ(window_->document().folio(), saved);
    EXPECT_EQ(window_->document().drafted().pattern, panels);
    EXPECT_EQ(row(waistGirth).field().text(), "75 1/2 cm") << "as she wrote it";
    EXPECT_FALSE(window_->document().isModified());
}

TEST_F(FilesTest, theTitleNamesTheClientAndStarsChanges) {
    openSinger();
    EXPECT_TRUE(window_->windowTitle().startsWith("Leonore, soprano[*]"));
    EXPECT_FALSE(window_->isWindowModified());
    type(waistGirth, "75");
    EXPECT_TRUE(window_->isWindowModified());
    saveAs("singer.coutil");
    EXPECT_FALSE(window_->isWindowModified());
}

TEST_F(FilesTest, savingAgainAsksForNoName) {
    openSinger();
    ASSERT_TRUE(saveAs("singer.coutil"));
    type(waistGirth, "75");
    window_->menus().save->trigger();
    EXPECT_FALSE(window_->document().isModified());
    EXPECT_EQ(answers_->asked, 1);
    EXPECT_EQ(answers_->unanswered, 0);
}

TEST_F(FilesTest, aFolioThatCantBeWrittenIsToldOnceAndNothingIsLost) {
    openSinger();
    type(waistGirth, "75");
    EXPECT_FALSE(saveAs("no such folder/singer.coutil"));
    EXPECT_TRUE(window_->messages().isErrorShown());
    EXPECT_TRUE(window_->document().isModified());
    EXPECT_FALSE(QFile::exists(path("no such folder")));
}

TEST_F(FilesTest, aFileThatIsNoFolioIsToldAndTheOpenOneStays) {
    openSinger();
    QFile letter(path("letter.coutil"));
    ASSERT_TRUE(letter.open(QIODevice::WriteOnly));
    letter.write("Dear wardrobe,");
    letter.close();
    window_->files().openFile(path("letter.coutil"));
    EXPECT_TRUE(window_->messages().isErrorShown());
    EXPECT_TRUE(window_->messages().shownText().contains("letter.coutil"))
        << window_->messages().shownText().toStdString();
    EXPECT_EQ(window_->document().folio().client, "Leonore, soprano");
}

TEST_F(FilesTest, recentFoliosAreListedGreyedWhenGoneAndCleared) {
    openSinger();
    ASSERT_TRUE(saveAs("first.coutil"));
    ASSERT_TRUE(saveAs("second.coutil"));
    ASSERT_EQ(recentFiles().size(), 2);
    EXPECT_TRUE(recentFiles().first().endsWith("second.coutil"));
    QFile::remove(path("first.coutil"));
    window_->menus().close->trigger();
    const auto button = [this](const QString& name) -> QAbstractButton* {
        QApplication::processEvents();  // the lists are laid out anew
        for (auto* found : window_->startScreen().findChildren<QAbstractButton*>()) {
            if (found->text() == name && found->isVisible()) return found;
        }
        return nullptr;
    };
    ASSERT_NE(button("first"), nullptr);
    EXPECT_FALSE(button("first")->isEnabled());
    ASSERT_NE(button("second"), nullptr);
    button("second")->click();
    EXPECT_EQ(window_->document().folio().client, "Leonore, soprano");
    window_->menus().close->trigger();
    button("Clear")->click();
    EXPECT_TRUE(recentFiles().isEmpty());
    EXPECT_EQ(button("second"), nullptr);
}

TEST_F(FilesTest, noMoreThanTenRecentFolios) {
    for (int i = 0; i < 14; ++i) addRecentFile(path(QString("client %1.coutil").arg(i)));
    EXPECT_EQ(recentFiles().size(), 10);
    EXPECT_TRUE(recentFiles().first().endsWith("client 13.coutil"));
    addRecentFile(path("client 9.coutil"));
    EXPECT_EQ(recentFiles().size(), 10);
    EXPECT_TRUE(recentFiles().first().endsWith("client 9.coutil"));
}

TEST_F(FilesTest, workLeftByADeadWindowIsOfferedAndRecovered) {
    openSinger();
    type(waistGirth, "73");
    const Folio lost = window_->document().folio();
    die();
    openWindow();
    window_->offerUnsavedWork();
    auto buttons = window_->startScreen().findChildren<QPushButton*>();
    const auto recover = std::ranges::find(buttons, QString("Recover"), &QPushButton::text);
    ASSERT_NE(recover, buttons.end());
    (*recover)->click();
    EXPECT_EQ(window_->document().folio(), lost);
    EXPECT_TRUE(window_->document().isModified());
    EXPECT_TRUE(unsavedWork().empty()) << "it is held by this window now";
    die();
    openWindow();
    EXPECT_EQ(unsavedWork().size(), 1U) << "recovered and not saved: still not lost";
}

TEST_F(FilesTest, workOfAnOpenFolioIsOfferedInTheMessageBar) {
    openSinger();
    ASSERT_TRUE(saveAs("singer.coutil"));
    type(waistGirth, "73");
    die();
    openWindow();
    window_->files().openFile(path("singer.coutil"));
    window_->offerUnsavedWork();
    EXPECT_TRUE(window_->messages().shownText().contains("singer.coutil"));
    EXPECT_DOUBLE_EQ(window_->document().measurementSet()->valuesMm.at(waistGirth), 760);
    auto* action = window_->messages().findChild<QPushButton*>();
    ASSERT_NE(action, nullptr);
    action->click();
    EXPECT_DOUBLE_EQ(window_->document().measurementSet()->valuesMm.at(waistGirth), 730);
    EXPECT_EQ(window_->document().file(), pathOf(path("singer.coutil")));
}

TEST_F(FilesTest, workThatIsLeftIsNotOfferedAgainButStaysInTheMenu) {
    openSinger();
    type(waistGirth, "73");
    die();
    openWindow();
    ASSERT_EQ(offeredWork().size(), 1U);
    auto buttons = window_->startScreen().findChildren<QPushButton*>();
    const auto leave = std::ranges::find(buttons, QString("Leave"), &QPushButton::text);
    ASSERT_NE(leave, buttons.end());
    (*leave)->click();
    EXPECT_TRUE(offeredWork().empty());
    EXPECT_EQ(unsavedWork().size(), 1U);
    expireLeftWork();
    EXPECT_EQ(unsavedWork().size(), 1U) << "kept for a month";
}

TEST_F(FilesTest, closingAsksOnlyWhenSomethingIsUnsaved) {
    openSinger();
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(answers_->asked, 0);
}

TEST_F(FilesTest, closingMayBeThoughtBetterOf) {
    openSinger();
    type(waistGirth, "73");
    answers_->leaveChoices.append(LeaveChoice::stay);
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->isVisible());
    EXPECT_TRUE(window_->document().isModified());
}

TEST_F(FilesTest, closingWithoutSavingDropsTheWork) {
    openSinger();
    type(waistGirth, "73");
    answers_->leaveChoices.append(LeaveChoice::drop);
    EXPECT_TRUE(window_->close());
    die();
    EXPECT_TRUE(unsavedWork().empty());
}

TEST_F(FilesTest, closingCanSaveFirst) {
    openSinger();
    type(waistGirth, "73");
    answers_->leaveChoices.append(LeaveChoice::save);
    answers_->files.append(path("singer.coutil"));
    EXPECT_TRUE(window_->close());
    openWindow();
    window_->files().openFile(path("singer.coutil"));
    EXPECT_DOUBLE_EQ(window_->document().measurementSet()->valuesMm.at(waistGirth), 730);
}

TEST_F(FilesTest, aNewFolioAsksForTheUnsavedOneFirst) {
    openSinger();
    type(waistGirth, "73");
    answers_->leaveChoices.append(LeaveChoice::stay);
    window_->menus().newClient->trigger();
    EXPECT_EQ(window_->document().folio().client, "Leonore, soprano");
    answers_->leaveChoices.append(LeaveChoice::drop);
    window_->menus().newClient->trigger();
    EXPECT_TRUE(window_->document().folio().client.empty());
}

TEST_F(FilesTest, aFolioDroppedOnTheWindowOpens) {
    openSinger();
    ASSERT_TRUE(saveAs("singer.coutil"));
    window_->menus().close->trigger();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path("singer.coutil"))});
    QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window_.get(), &drop);
    EXPECT_EQ(window_->document().folio().client, "Leonore, soprano");
    QMimeData words;
    words.setText("no file");
    QDragEnterEvent other(QPoint(50, 50), Qt::CopyAction, &words, Qt::LeftButton, Qt::NoModifier);
    other.ignore();
    QApplication::sendEvent(window_.get(), &other);
    EXPECT_FALSE(other.isAccepted());
}

}  // namespace
}  // namespace coutil
