// The open folio: undo with words, merging, working copy, what follows from it.
#include "ui/document/folio_document.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "core/revision/confirm.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "tests/ui/window/singer.h"
#include "ui/document/new_folio.h"
#include "ui/document/state_folder.h"

namespace coutil {
namespace {

class FolioDocumentTest : public testing::Test {
  protected:
    void SetUp() override {
        qputenv("HOME", home_.path().toUtf8());  // state folder of this test alone
        document_.open(singersFolio(), {});
    }

    // One key typed into the field of the waist.
    void typeWaist(double mm, const QString& words = "Waist") {
        MeasurementSet set = *document_.measurementSet();
        set.valuesMm[Measurement::waistGirth] = mm;
        document_.changeMeasurements(set, words, "measure/waist_girth");
    }

    double waistMm() const {
        return document_.measurementSet()->valuesMm.at(Measurement::waistGirth);
    }

    QTemporaryDir home_;
    FolioDocument document_;
};

TEST_F(FolioDocumentTest, opensUnmodifiedAndDrafted) {
    EXPECT_TRUE(document_.isOpen());
    EXPECT_FALSE(document_.isModified());
    ASSERT_TRUE(document_.drafted().pattern.has_value());
    EXPECT_EQ(document_.drafted().pattern->panels.size(), 6U);
    EXPECT_TRUE(recoverableIn(stateFolder()).empty());
}

TEST_F(FolioDocumentTest, aChangeIsOneStepWithWordsAndRedraftsAtOnce) {
    QSignalSpy drafted(&document_, &FolioDocument::draftedChanged);
    const auto before = *document_.drafted().pattern;
    typeWaist(740, "Waist girth 74 cm");
    EXPECT_EQ(drafted.count(), 1);
    EXPECT_EQ(document_.undoStack().undoText(), "Waist girth 74 cm");
    EXPECT_FALSE(*document_.drafted().pattern == before);
    document_.undoStack().undo();
    EXPECT_EQ(*document_.drafted().pattern, before);
    document_.undoStack().redo();
    EXPECT_DOUBLE_EQ(waistMm(), 740);
}

TEST_F(FolioDocumentTest, typingInOneFieldMergesUntilItIsLeft) {
    typeWaist(700);
    typeWaist(730);
    EXPECT_EQ(document_.undoStack().count(), 1);
    document_.endMerging();
    typeWaist(735);
    EXPECT_EQ(document_.undoStack().count(), 2);
    document_.undoStack().undo();
    EXPECT_DOUBLE_EQ(waistMm(), 730);
}

TEST_F(FolioDocumentTest, stepsWithoutAKeyNeverMerge) {
    Folio after = document_.folio();
    after.client = "A";
    document_.change(after, "first");
    after.client = "AB";
    document_.change(after, "second");
    EXPECT_EQ(document_.undoStack().count(), 2);
}

TEST_F(FolioDocumentTest, aRunThatEndsWhereItBeganVanishes) {
    const double before = waistMm();
    typeWaist(before + 1);
    typeWaist(before);
    EXPECT_EQ(document_.undoStack().count(), 0);
    EXPECT_FALSE(document_.isModified());
    document_.change(document_.folio(), "nothing");
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(FolioDocumentTest, savesAsAWholeAndIsCleanThen) {
    typeWaist(740);
    EXPECT_TRUE(document_.isModified());
    const auto file = pathOf(home_.filePath("singer.coutil"));
    ASSERT_FALSE(document_.save(file).has_value());
    EXPECT_FALSE(document_.isModified());
    const auto read = readFolio(file);
    ASSERT_TRUE(read.hasValue());
    EXPECT_EQ(*read, document_.folio());
    typeWaist(730);  // a key typed after saving is a step of its own
    EXPECT_TRUE(document_.isModified());
    document_.undoStack().undo();
    EXPECT_FALSE(document_.isModified());
    EXPECT_DOUBLE_EQ(waistMm(), 740);
}

TEST_F(FolioDocumentTest, whatCantBeSavedIsToldAndStaysModified) {
    typeWaist(740);
    const auto problem = document_.save(pathOf(home_.filePath("no such folder/singer.coutil")));
    ASSERT_TRUE(problem.has_value());
    EXPECT_EQ(problem->code, ProblemCode::fileUnwritable);
    EXPECT_TRUE(document_.isModified());
}

// A document that goes without being saved or closed is a program that died: its lock is free and
// its work is there.
TEST_F(FolioDocumentTest, unsavedWorkOutlivesTheDocument) {
    Folio wanted;
    {
        FolioDocument doomed;
        doomed.open(singersFolio(), {});
        MeasurementSet set = *doomed.measurementSet();
        set.valuesMm[Measurement::waistGirth] = 751;
        doomed.changeMeasurements(set, "Waist");
        wanted = doomed.folio();
    }
    const auto found = recoverableIn(stateFolder());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().client, wanted.client);
    const auto folio = recoveredFolio(found.front());
    ASSERT_TRUE(folio.hasValue());
    EXPECT_EQ(*folio, wanted);
    document_.openRecovered(*folio, found.front().original);
    EXPECT_TRUE(document_.isModified()) << "nothing of it is in a folio yet";
}

TEST_F(FolioDocumentTest, theWorkingCopyLivesExactlyWhileThereIsUnsavedWork) {
    const auto workingFiles = [] {
        std::size_t count = 0;
        if (!std::filesystem::exists(stateFolder())) return count;
        for (const auto& entry : std::filesystem::directory_iterator(stateFolder())) {
            count += entry.path().extension() == ".lock" ? 0 : 1;
        }
        return count;
    };
    EXPECT_EQ(workingFiles(), 0U);
    typeWaist(740);
    document_.recordNow();
    EXPECT_GE(workingFiles(), 1U);
    document_.undoStack().undo();
    document_.recordNow();
    EXPECT_EQ(workingFiles(), 0U) << "undone back to what the file holds";
    document_.undoStack().redo();
    document_.endMerging();
    EXPECT_GE(workingFiles(), 1U) << "leaving the field records";
    document_.close();
    EXPECT_EQ(workingFiles(), 0U) << "dropped on purpose";
    EXPECT_FALSE(document_.isOpen());
    EXPECT_EQ(document_.garment(), nullptr);
}

TEST_F(FolioDocumentTest, theLastGoodDraftStaysWhileThereAreOnlyProblems) {
    const auto good = *document_.drafted().pattern;
    MeasurementSet set = *document_.measurementSet();
    set.valuesMm.erase(Measurement::bustGirth);
    document_.changeMeasurements(set, "Bust girth taken out");
    EXPECT_FALSE(document_.drafted().pattern.has_value());
    ASSERT_TRUE(document_.lastGoodDraft().pattern.has_value());
    EXPECT_EQ(*document_.lastGoodDraft().pattern, good);
    ASSERT_FALSE(document_.drafted().problems.empty());
    EXPECT_EQ(document_.drafted().problems.front().code, ProblemCode::measurementMissing);
}

TEST_F(FolioDocumentTest, garmentsAreChosenAddedAndUndone) {
    Style style;
    style.panelsPerHalf = 4;
    const std::string set = document_.measurementSet()->id;
    document_.change(withNewGarment(document_.folio(), "Bodice lining", style, set), "New garment");
    document_.selectGarment(1);
    EXPECT_EQ(document_.garment()->name, "Bodice lining");
    EXPECT_EQ(document_.drafted().pattern->panels.size(), 4U);
    document_.undoStack().undo();
    ASSERT_NE(document_.garment(), nullptr);
    EXPECT_EQ(document_.garmentIndex(), 0);
    EXPECT_EQ(document_.drafted().pattern->panels.size(), 6U);
}

TEST_F(FolioDocumentTest, aNewSetIsACopyOfTodayAndTheGarmentIsDraftedFromIt) {
    const MeasurementSet old = *document_.measurementSet();
    document_.takeNewMeasurements("New set");
    const MeasurementSet& fresh = *document_.measurementSet();
    EXPECT_NE(fresh.id, old.id);
    EXPECT_EQ(fresh.takenOn, today());
    EXPECT_EQ(fresh.valuesMm, old.valuesMm);
    EXPECT_EQ(document_.folio().measurementSets.size(), 2U);
}

// The pencil on the table gone over in ink.
Folio confirmed(const FolioDocument& document) {
    const GarmentOutcome& drafted = document.drafted();
    const auto after =
        pencilConfirmed(document.folio(), static_cast<std::size_t>(document.garmentIndex()),
                        document.pencil()->id, {drafted.pattern, drafted.problems},
                        {.on = "2026-03-18", .by = "wardrobe", .note = "block"},
                        [](const Recipe& recipe) { return writeStyleJson(recipe.style); });
    EXPECT_TRUE(after.hasValue());
    return *after;
}

class ConfirmedDocumentTest : public FolioDocumentTest {
  protected:
    void SetUp() override {
        FolioDocumentTest::SetUp();
        typeWaist(740);
        const Folio after = confirmed(document_);
        document_.takeConfirmed(after, after.garments.front().revisions.front()->digest());
    }
};

TEST_F(ConfirmedDocumentTest, undoNeverCrossesInkAndTheRevisionIsShown) {
    EXPECT_FALSE(document_.undoStack().canUndo());
    EXPECT_TRUE(document_.isModified());
    EXPECT_EQ(document_.pencil(), nullptr);
    ASSERT_NE(document_.revision(), nullptr);
    EXPECT_EQ(*document_.drafted().pattern, document_.revision()->pattern());
    EXPECT_DOUBLE_EQ(waistMm(), 740);
}

TEST_F(ConfirmedDocumentTest, aStyleChangedOverInkBeginsAPencilFromIt) {
    const std::string ink = document_.revision()->digest();
    Style style = document_.style();
    style.easeMm[LevelId::waist] = -40;
    document_.changeStyle(style, "Waist -4 cm");
    ASSERT_NE(document_.pencil(), nullptr);
    EXPECT_EQ(document_.pencil()->parent, ink);
    EXPECT_EQ(document_.style(), style);
    EXPECT_EQ(document_.garment()->revisions.size(), 1U);
    EXPECT_NE(*document_.drafted().pattern, document_.garment()->revisions[0]->pattern());
    document_.undoStack().undo();
    EXPECT_EQ(document_.pencil(), nullptr);
    EXPECT_EQ(document_.revision()->digest(), ink);
}

TEST_F(ConfirmedDocumentTest, readingsTypedOverInkBecomeANewSetOfToday) {
    typeWaist(760);
    EXPECT_EQ(document_.folio().measurementSets.size(), 2U);
    EXPECT_DOUBLE_EQ(waistMm(), 760);
    EXPECT_DOUBLE_EQ(document_.garment()->revisions[0]->recipe().measurements.valuesMm.at(
                         Measurement::waistGirth),
                     740);
    typeWaist(770);  // the pencil's own set now: no third one
    EXPECT_EQ(document_.folio().measurementSets.size(), 2U);
    EXPECT_DOUBLE_EQ(waistMm(), 770);
}

TEST_F(ConfirmedDocumentTest, allowancesAloneKeepTheInkOfThePanels) {
    Style style = document_.style();
    style.allowance.seamMm = 20;
    document_.changeStyle(style, "Seams 2 cm");
    EXPECT_EQ(*document_.drafted().pattern, document_.garment()->revisions[0]->pattern());
}

TEST_F(ConfirmedDocumentTest, aSeamTakenInOverInkMovesItsEdges) {
    document_.changePencil(
        [](Pencil& pencil) {
            pencil.alterations.push_back(
                {.id = "a", .change = ShapeSeam{.seam = "2-3", .amounts = {{35, 8}}}});
        },
        "Seam 2-3");
    ASSERT_NE(document_.pencil(), nullptr);
    EXPECT_NE(*document_.drafted().pattern, document_.garment()->revisions[0]->pattern());
    document_.showRevision(document_.garment()->revisions[0]->digest());
    EXPECT_EQ(*document_.drafted().pattern, document_.garment()->revisions[0]->pattern());
}

}  // namespace
}  // namespace coutil
