// Confirming through the real window: asked, inked, saved at once, never undone.
#include <QAction>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include "core/store/folio_file.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measurement_row.h"
#include "ui/document/state_folder.h"
#include "ui/timeline/history_actions.h"
#include "ui/window/confirm_dialog.h"
#include "ui/window/folio_files.h"
#include "ui/window/message_bar.h"

namespace coutil {
namespace {

using enum Measurement;

class ConfirmTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->files().openDemo();
        window_->enterBench(0);
    }

    FolioDocument& document() { return window_->document(); }
    void answer(const Confirmation& confirmation) { answers_->confirmations.append(confirmation); }
    void confirm() { window_->history().confirm->trigger(); }
    void confirmTo(const QString& file) {
        answer({.on = "2026-03-02", .by = "Mira", .note = "block"});
        answers_->files.append(file);
        confirm();
    }
};

TEST_F(ConfirmTest, confirmsShowsAndSavesAtOnceUnderANameAskedFor) {
    const Pattern before = *document().drafted().pattern;
    confirmTo(path("singer.coutil"));
    ASSERT_NE(document().revision(), nullptr);
    const RevisionContent& content = document().revision()->content();
    EXPECT_EQ(content.number, 1);
    EXPECT_EQ(content.confirmedOn, "2026-03-02");
    EXPECT_EQ(content.confirmedBy, "Mira");
    EXPECT_EQ(content.note, "block");
    EXPECT_EQ(document().drafted().pattern->panels.size(), before.panels.size());
    EXPECT_TRUE(document().garment()->pencils.empty());
    EXPECT_FALSE(document().isModified());
    const auto read = readFolio(pathOf(path("singer.coutil")));
    ASSERT_TRUE(read.hasValue());
    EXPECT_EQ(*read, document().folio());
    EXPECT_EQ(answers_->unanswered, 0);
}

TEST_F(ConfirmTest, ctrlReturnConfirms) {
    answer({.on = "2026-03-02", .by = {}, .note = {}});
    answers_->files.append(path("singer.coutil"));
    QTest::keyClick(window_.get(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(document().revision(), nullptr);
}

TEST_F(ConfirmTest, undoNeverCrossesAConfirmation) {
    type(waistGirth, "74");
    ASSERT_TRUE(document().undoStack().canUndo());
    confirmTo(path("singer.coutil"));
    const Folio confirmed = document().folio();
    EXPECT_FALSE(document().undoStack().canUndo());
    EXPECT_FALSE(document().undoStack().canRedo());
    QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(document().folio(), confirmed);
    type(waistGirth, "75");  // a pencil over the ink
    document().undoStack().undo();
    EXPECT_FALSE(document().undoStack().canUndo()) << "back to the ink and no further";
    EXPECT_EQ(document().folio(), confirmed);
}

TEST_F(ConfirmTest, thinkingBetterOfItChangesNothing) {
    const Folio before = document().folio();
    confirm();  // no answer queued
    EXPECT_EQ(document().folio(), before);
    EXPECT_NE(document().pencil(), nullptr);
    EXPECT_FALSE(document().isModified());
}

TEST_F(ConfirmTest, whatCantBeSavedIsSaidAndNothingIsLost) {
    confirmTo(path("no such folder/singer.coutil"));
    ASSERT_NE(document().revision(), nullptr);
    EXPECT_TRUE(document().isModified());
    EXPECT_FALSE(window_->messages().shownText().isEmpty());
    EXPECT_TRUE(window_->messages().isErrorShown());
    window_->messages().dismiss();
    EXPECT_TRUE(window_->messages().shownText().contains("not in a file yet"));
    EXPECT_EQ(recoverableIn(stateFolder()).size(), 0U) << "the open window holds it";
    die();
    EXPECT_EQ(recoverableIn(stateFolder()).size(), 1U);
}

TEST_F(ConfirmTest, fieldsShowTheRevisionAndAChangeThereBeginsAPencil) {
    type(waistGirth, "74");
    confirmTo(path("singer.coutil"));
    window_->messages().dismissAll();
    EXPECT_EQ(row(waistGirth).field().text(), "74");
    const std::string digest = document().revision()->digest();
    type(waistGirth, "75.5");
    ASSERT_NE(document().pencil(), nullptr);
    EXPECT_EQ(document().pencil()->parent, digest);
    EXPECT_EQ(document().undoStack().count(), 1) << "typing goes on in one step";
    EXPECT_EQ(row(waistGirth).field().text(), "75.5");
    EXPECT_DOUBLE_EQ(
        findRevision(document().folio(), digest)->recipe().measurements.valuesMm.at(waistGirth),
        740);
    EXPECT_TRUE(window_->messages().shownText().contains("pencil begins from revision 1"))
        << window_->messages().shownText().toStdString();
    for (QPushButton* button : window_->messages().findChildren<QPushButton*>()) {
        if (button->text() == "Show revision") button->click();
    }
    ASSERT_NE(document().revision(), nullptr);
    EXPECT_EQ(row(waistGirth).field().text(), "74");
    document().undoStack().undo();
    EXPECT_TRUE(document().garment()->pencils.empty());
    document().undoStack().redo();
    ASSERT_NE(document().pencil(), nullptr) << "what comes back is shown";
    document().undoStack().undo();
    ASSERT_NE(document().revision(), nullptr);
    EXPECT_EQ(document().revision()->digest(), digest) << "where the pencil came from";
}

TEST_F(ConfirmTest, aStyleChangedOverARevisionBeginsAPencilToo) {
    confirmTo(path("singer.coutil"));
    Style style = document().style();
    style.lacingGapMm += 10;
    document().changeStyle(style, "Lacing gap", "draft/gap");
    style.lacingGapMm += 10;
    document().changeStyle(style, "Lacing gap", "draft/gap");
    EXPECT_EQ(document().undoStack().count(), 1);
    ASSERT_NE(document().pencil(), nullptr);
    EXPECT_DOUBLE_EQ(document().style().lacingGapMm, style.lacingGapMm);
    EXPECT_EQ(document().garment()->pencils.size(), 1U);
}

ConfirmOffer offerWith(std::vector<Problem> problems) {
    ConfirmOffer offer;
    offer.garment = "Corset";
    offer.number = 3;
    offer.date = "2026-04-11";
    offer.by = "Mira";
    offer.note = "seam 2-3: 4 mm in";
    offer.problems = std::move(problems);
    return offer;
}

TEST(ConfirmDialog, isFilledInAndGivesWhatIsTyped) {
    const ConfirmDialog dialog(offerWith({}));
    EXPECT_TRUE(dialog.confirmButton().isEnabled());
    dialog.findChild<QPlainTextEdit*>()->setPlainText("tighter at the waist ");
    const Confirmation typed = dialog.confirmation();
    EXPECT_EQ(typed.on, "2026-04-11");
    EXPECT_EQ(typed.by, "Mira");
    EXPECT_EQ(typed.note, "tighter at the waist");
    EXPECT_EQ(typed.reason, "");
}

TEST(ConfirmDialog, refusesWhileErrorsStandUnlessTheMakerSaysWhy) {
    Problem error;
    error.code = ProblemCode::panelTooNarrow;
    error.severity = Severity::error;
    error.panel = "3";
    ConfirmDialog dialog(offerWith({error}));
    dialog.show();
    EXPECT_FALSE(dialog.confirmButton().isEnabled());
    QLineEdit* reason = nullptr;
    for (auto* line : dialog.findChildren<QLineEdit*>()) {
        if (line->accessibleName().startsWith("Why")) reason = line;
    }
    ASSERT_NE(reason, nullptr);
    EXPECT_TRUE(reason->isVisible());
    QTest::keyClicks(reason, "   ");
    EXPECT_FALSE(dialog.confirmButton().isEnabled());
    QTest::keyClicks(reason, "only for a dummy");
    EXPECT_TRUE(dialog.confirmButton().isEnabled());
    EXPECT_EQ(dialog.confirmation().reason, "only for a dummy");
}

TEST(ConfirmDialog, warningsDoNotHoldItUp) {
    Problem warning;
    warning.code = ProblemCode::panelTooNarrow;
    warning.severity = Severity::warning;
    const ConfirmDialog dialog(offerWith({warning}));
    EXPECT_TRUE(dialog.confirmButton().isEnabled());
}

}  // namespace
}  // namespace coutil
