// Another program writes the folio while it is open here: nothing of either is lost unasked.
#include <QFile>
#include <QPushButton>

#include "core/revision/confirm.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/document/state_folder.h"
#include "ui/window/folio_files.h"
#include "ui/window/message_bar.h"
#include "ui/window/recovery.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

using enum Measurement;

class OtherWriterTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->files().openDemo();
        window_->enterBench(0);
        answers_->files.append(file_);
        ASSERT_TRUE(window_->files().saveAs());
        window_->messages().dismissAll();
    }

    void writeAsAnother() {
        Folio other = *readFolio(pathOf(file_));
        other.client = "Written elsewhere";
        ASSERT_FALSE(writeFolio(other, pathOf(file_)));
    }
    // Goes over the first pencil there in ink, as a script or a second window would.
    void confirmAsAnother() {
        const Folio other = *readFolio(pathOf(file_));
        const auto confirmed = pencilConfirmed(
            other, 0, other.garments[0].pencils[0].id, {window_->document().drafted().pattern, {}},
            {"2026-03-10", "wardrobe", "tried elsewhere"}, writeRecipeJson);
        ASSERT_TRUE(confirmed);
        ASSERT_FALSE(writeFolio(*confirmed, pathOf(file_)));
    }
    [[nodiscard]] std::string clientIn(const QString& file) {
        return readFolio(pathOf(file))->client;
    }
    QPushButton& button(int index) {
        return *window_->messages().findChildren<QPushButton*>().at(index);
    }

    QString file_ = path("singer.coutil");
};

TEST_F(OtherWriterTest, savingStopsAndSaysSo) {
    type(waistGirth, "73");
    writeAsAnother();
    window_->menus().save->trigger();
    EXPECT_EQ(clientIn(file_), "Written elsewhere");
    EXPECT_TRUE(window_->document().isModified());
    EXPECT_TRUE(window_->messages().isErrorShown());
    EXPECT_TRUE(window_->messages().shownText().contains("singer.coutil"));
    window_->menus().save->trigger();
    EXPECT_EQ(clientIn(file_), "Written elsewhere") << "however often it is tried";
}

TEST_F(OtherWriterTest, bothAreKeptUnderTwoNames) {
    type(waistGirth, "73");
    writeAsAnother();
    window_->menus().save->trigger();
    answers_->files.append(path("mine.coutil"));
    button(0).click();
    EXPECT_EQ(clientIn(file_), "Written elsewhere");
    const Folio mine = *readFolio(pathOf(path("mine.coutil")));
    EXPECT_EQ(mine, window_->document().folio());
    EXPECT_FALSE(window_->document().isModified());
    EXPECT_FALSE(window_->messages().isErrorShown());
}

TEST_F(OtherWriterTest, theMakerMaySaveAnyway) {
    type(waistGirth, "73");
    writeAsAnother();
    window_->menus().save->trigger();
    button(1).click();
    EXPECT_EQ(*readFolio(pathOf(file_)), window_->document().folio());
    EXPECT_FALSE(window_->document().isModified());
    type(waistGirth, "74");
    window_->menus().save->trigger();
    EXPECT_FALSE(window_->document().isModified()) << "from then on it is this window's again";
}

TEST_F(OtherWriterTest, aRevisionConfirmedElsewhereOutlivesSaveAnyway) {
    type(waistGirth, "73");
    confirmAsAnother();
    const Folio theirs = *readFolio(pathOf(file_));
    window_->menus().save->trigger();
    button(1).click();
    EXPECT_EQ(*readFolio(pathOf(file_)), theirs);
    EXPECT_TRUE(window_->document().isModified());
    EXPECT_TRUE(window_->messages().isErrorShown());
    const QString said = window_->messages().shownText();
    EXPECT_TRUE(said.contains("revision 1")) << said.toStdString();
    EXPECT_TRUE(said.contains(QString::fromStdString(theirs.garments[0].name)))
        << said.toStdString();
    answers_->files.append(path("mine.coutil"));
    button(0).click();
    EXPECT_EQ(*readFolio(pathOf(path("mine.coutil"))), window_->document().folio());
    EXPECT_FALSE(window_->document().isModified());
    EXPECT_FALSE(window_->messages().isErrorShown());
    EXPECT_EQ(*readFolio(pathOf(file_)), theirs);
}

TEST_F(OtherWriterTest, savingUnderAnotherNameByKeyTakesTheWarningBack) {
    type(waistGirth, "73");
    writeAsAnother();
    window_->menus().save->trigger();
    answers_->files.append(path("mine.coutil"));
    window_->menus().saveAs->trigger();
    EXPECT_FALSE(window_->messages().isErrorShown());
    EXPECT_TRUE(window_->messages().shownText().contains("mine.coutil"));
}

TEST_F(OtherWriterTest, closingWithSaveStaysOpenInstead) {
    type(waistGirth, "73");
    writeAsAnother();
    answers_->leaveChoices.append(LeaveChoice::save);
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->isVisible());
    EXPECT_EQ(clientIn(file_), "Written elsewhere");
}

TEST_F(OtherWriterTest, rubbishWrittenThereIsNoticedToo) {
    type(waistGirth, "73");
    QFile file(file_);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write("Dear wardrobe,");
    file.close();
    window_->menus().save->trigger();
    EXPECT_TRUE(window_->messages().isErrorShown());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), "Dear wardrobe,");
}

TEST_F(OtherWriterTest, aFileOnlyTouchedOrGoneIsNoReasonToAsk) {
    type(waistGirth, "73");
    const Folio same = *readFolio(pathOf(file_));
    ASSERT_FALSE(writeFolio(same, pathOf(file_)));
    window_->menus().save->trigger();
    EXPECT_FALSE(window_->document().isModified());
    type(waistGirth, "74");
    QFile::remove(file_);
    window_->menus().save->trigger();
    EXPECT_EQ(*readFolio(pathOf(file_)), window_->document().folio());
}

TEST_F(OtherWriterTest, recoveredWorkKnowsWhatStandsThere) {
    type(waistGirth, "73");
    die();
    openWindow();
    window_->files().recover(unsavedWork().front());
    window_->menus().save->trigger();
    EXPECT_FALSE(window_->document().isModified());
    type(waistGirth, "74");
    writeAsAnother();
    window_->menus().save->trigger();
    EXPECT_TRUE(window_->messages().isErrorShown());
}

}  // namespace
}  // namespace coutil
