// The dialogs of the papers in the real window, driven by menu and widgets.
#include "ui/window/paper_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "tests/ui/benches/invented_folio.h"
#include "tests/ui/timeline/grown_garment.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/benches/fit_bench.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

class PaperDialogTest : public WindowTest {
  protected:
    PaperDialog& opened(QAction* action, PaperKind kind) {
        EXPECT_TRUE(action->isEnabled());
        action->trigger();
        for (auto* dialog : window_->findChildren<PaperDialog*>()) {
            if (dialog->choices().kind == kind) return *dialog;
        }
        ADD_FAILURE() << "no dialog";
        return window_->showPaper(kind);
    }

    static std::string wordsOf(const PaperDialog& dialog) {
        std::string words;
        for (const auto& page : dialog.pages()) {
            for (const auto& lettering : page.letterings) words += lettering.text + " ";
        }
        return words;
    }
};

TEST_F(PaperDialogTest, withoutAFolioThereIsNothingToPrint) {
    for (const QAction* action : {window_->menus().measuringSheet, window_->menus().fittingSheet,
                                  window_->menus().changeSheet}) {
        EXPECT_FALSE(action->isEnabled());
    }
}

TEST_F(PaperDialogTest, theMeasuringSheetIsSavedWithOrWithoutTheName) {
    window_->document().open(inventedFolio(), {});
    PaperDialog& dialog = opened(window_->menus().measuringSheet, PaperKind::measuring);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.isModal());
    EXPECT_NE(wordsOf(dialog).find("Alto 3"), std::string::npos);
    dialog.findChild<QCheckBox*>()->click();
    EXPECT_EQ(wordsOf(dialog).find("Alto 3"), std::string::npos);
    const QString file = path("measuring.pdf");
    dialog.setAskPath([&](QWidget*, const QString& suggestion) {
        EXPECT_TRUE(suggestion.endsWith("Measuring-sheet.pdf")) << suggestion.toStdString();
        return file;
    });
    const QSignalSpy told(&dialog, &PaperDialog::told);
    dialog.savePdf();
    EXPECT_EQ(told.count(), 1);
    EXPECT_TRUE(QFile::exists(file));
}

TEST_F(PaperDialogTest, theFittingSheetFollowsWhatIsOnTheTable) {
    window_->document().open(inventedFolio(), {});
    PaperDialog& dialog = opened(window_->menus().fittingSheet, PaperKind::fitting);
    EXPECT_EQ(wordsOf(dialog).find("5-6"), std::string::npos);
    Style style = window_->document().style();
    style.panelsPerHalf = 6;
    window_->document().changeStyle(style, "six panels");
    EXPECT_NE(wordsOf(dialog).find("5-6"), std::string::npos);
    EXPECT_EQ(dialog.pages().front().widthMm, 210);
    dialog.findChild<QComboBox*>()->setCurrentText("Letter");
    EXPECT_EQ(dialog.pages().front().widthMm, 215.9);
    const auto forth = dialog.findChildren<QPushButton*>();
    EXPECT_EQ(dialog.said(), "page 1 of 2");
    for (QPushButton* button : forth) {
        if (button->text().contains("forth")) button->click();
    }
    EXPECT_EQ(dialog.said(), "page 2 of 2");
}

TEST_F(PaperDialogTest, aChangeSheetNeedsSomethingToCompareWith) {
    window_->document().open(inventedFolio(), {});
    PaperDialog& dialog = opened(window_->menus().changeSheet, PaperKind::change);
    EXPECT_TRUE(dialog.pages().empty());
    EXPECT_TRUE(dialog.said().contains("only one revision")) << dialog.said().toStdString();
}

TEST_F(PaperDialogTest, aChangeSheetAgainstAnotherPencil) {
    Folio folio = inventedFolio();
    Pencil second = folio.garments[0].pencils[0];
    second.id = "00000000-0000-4000-8000-000000000009";
    second.name = "tighter";
    second.style.easeMm[LevelId::waist] -= 20;
    folio.garments[0].pencils.push_back(second);
    window_->document().open(folio, {});
    window_->document().showPencil(second.id);
    PaperDialog& dialog = window_->showPaper(
        PaperKind::change, StateRef{.digest = {}, .pencil = folio.garments[0].pencils[0].id});
    ASSERT_GT(dialog.pages().size(), 1U);
    EXPECT_NE(wordsOf(dialog).find("tighter"), std::string::npos);
    // The same lines again: one clear sentence, nothing to save.
    window_->document().changeStyle(folio.garments[0].pencils[0].style, "as before");
    EXPECT_TRUE(dialog.pages().empty());
    EXPECT_TRUE(dialog.said().startsWith("Nothing changed")) << dialog.said().toStdString();
}

TEST_F(PaperDialogTest, theFitBenchOpensTheFittingSheet) {
    window_->document().open(inventedFolio(), {});
    window_->enterBench(2);
    auto* bench = window_->findChild<FitBench*>();
    ASSERT_NE(bench, nullptr);
    for (auto* button : bench->findChildren<QPushButton*>()) {
        if (button->text().contains("fitting sheet") && button->isVisible()) button->click();
    }
    auto* dialog = window_->findChild<PaperDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->choices().kind, PaperKind::fitting);
    EXPECT_TRUE(dialog->isVisible());
}

// From 1 to 3, though 3 began from 2 and another state is on the table.
TEST_F(PaperDialogTest, theCompareBenchOpensTheChangeSheetOfItsTwo) {
    const Folio folio = grownFolio();
    window_->document().open(folio, {});
    window_->compare({digestOf(folio, 1), {}}, {digestOf(folio, 3), {}});
    window_->findChild<QPushButton*>("compareChangeSheet")->click();
    auto* dialog = window_->findChild<PaperDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->choices().kind, PaperKind::change);
    EXPECT_EQ(dialog->choices().older.digest, digestOf(folio, 1));
    EXPECT_FALSE(dialog->pages().empty());
    EXPECT_EQ(window_->document().revision()->number(), 3);
}

}  // namespace
}  // namespace coutil
