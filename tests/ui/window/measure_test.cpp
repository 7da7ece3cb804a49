// The Measure bench in the real window: readings typed in, panels on the table.
#include <QImage>
#include <QTest>

#include "tests/ui/window/singer.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/benches/measure_bench.h"
#include "ui/benches/measurement_groups.h"
#include "ui/benches/measurement_row.h"
#include "ui/benches/tape_figure.h"
#include "ui/benches/written_reading.h"
#include "ui/canvas/table.h"
#include "ui/window/folio_files.h"

namespace coutil {
namespace {

using enum Measurement;

class MeasureTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->files().startClient();
    }
};

TEST_F(MeasureTest, readingsTypedOneByOneDraftThePanels) {
    EXPECT_TRUE(window_->table().scene().panels.empty());
    EXPECT_EQ(window_->table().scene().drawings.size(), 1U) << "the body shows where to measure";
    typeSinger();
    const auto& pattern = window_->document().drafted().pattern;
    ASSERT_TRUE(pattern.has_value());
    EXPECT_EQ(pattern->panels.size(), 5U);  // the default style's
    EXPECT_EQ(window_->table().scene().panels.size(), 5U);
    EXPECT_TRUE(window_->table().scene().drawings.empty());
    const Folio singer = singersFolio();
    const auto& typed = window_->document().measurementSet()->valuesMm;
    for (const auto& [id, mm] : singer.measurementSets.front().valuesMm) {
        EXPECT_NEAR(typed.at(id), mm, 0.05) << keyOf(id);
    }
}

TEST_F(MeasureTest, neededReadingsAreMarkedInWordsUntilTheyAreThere) {
    EXPECT_EQ(row(bustGirth).mark(), "needed");
    EXPECT_EQ(row(hipGirth).mark(), "one of two");
    EXPECT_EQ(row(topHipGirth).mark(), "one of two");
    EXPECT_EQ(row(stature).mark(), "");
    typeSinger();
    type(topHipGirth, "");
    EXPECT_EQ(row(topHipGirth).mark(), "");
    EXPECT_TRUE(row(topHipGirth).sentence().contains("estimated"))
        << row(topHipGirth).sentence().toStdString();
}

TEST_F(MeasureTest, anEstimateIsAGreyFigureWithItsErrorAndSource) {
    typeSinger();
    type(bustPointWidth, "");
    LengthField& field = row(bustPointWidth).field();
    EXPECT_TRUE(field.text().isEmpty());
    // A fifth of the bust girth (body_relations.cpp: common practice, no source): 97 / 5.
    EXPECT_EQ(field.placeholderText(), "19.4");
    const QString sentence = row(bustPointWidth).sentence();
    EXPECT_TRUE(sentence.startsWith("estimated ± 1.5")) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains("bust girth", Qt::CaseInsensitive)) << sentence.toStdString();
    type(bustPointWidth, "19.5");
    EXPECT_TRUE(row(bustPointWidth).sentence().isEmpty());
}

TEST_F(MeasureTest, keysMakeNoReadingOfAnEstimate) {
    typeSinger();
    type(bustPointWidth, "");
    const Folio before = window_->document().folio();
    LengthField& field = row(bustPointWidth).field();
    field.setFocus(Qt::MouseFocusReason);
    QTest::keyClick(&field, Qt::Key_Up);
    QTest::keyClick(&field, Qt::Key_Down);
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_EQ(window_->document().folio(), before);
    EXPECT_TRUE(row(bustPointWidth).sentence().startsWith("estimated"));
}

TEST_F(MeasureTest, badInputLeavesTheLastGoodDraftAndSaysWhy) {
    typeSinger();
    const auto good = *window_->document().drafted().pattern;
    for (const char* bad : {"ninety", "-76", "7", "9999", "76 ells"}) {
        type(waistGirth, bad);
        EXPECT_FALSE(row(waistGirth).sentence().isEmpty()) << bad;
        EXPECT_EQ(row(waistGirth).field().text(), bad) << "stays to be mended";
        ASSERT_TRUE(window_->document().drafted().pattern.has_value()) << bad;
        EXPECT_EQ(*window_->document().drafted().pattern, good) << bad;
        EXPECT_EQ(window_->table().scene().panels.size(), 5U) << bad;
    }
    type(waistGirth, "76");
    EXPECT_TRUE(row(waistGirth).sentence().isEmpty()) << row(waistGirth).sentence().toStdString();
}

TEST_F(MeasureTest, aFigureOnItsWayIsNotYetWrong) {
    LengthField& field = row(bustGirth).field();
    field.setFocus();
    QTest::keyClicks(&field, "9");  // on the way to 96
    EXPECT_TRUE(row(bustGirth).sentence().isEmpty());
    QTest::keyClick(&field, Qt::Key_Tab);
    EXPECT_FALSE(row(bustGirth).sentence().isEmpty());
}

TEST_F(MeasureTest, takingANeededReadingOutKeepsTheOldPanelsInSight) {
    typeSinger();
    type(bustGirth, "");
    EXPECT_FALSE(window_->document().drafted().pattern.has_value());
    EXPECT_EQ(window_->table().scene().panels.size(), 5U);
    EXPECT_EQ(row(bustGirth).mark(), "needed");
}

TEST_F(MeasureTest, contradictionsAreToldAtTheirRow) {
    typeSinger();
    type(waistToUnderBust, "19");  // above the bust at 17
    EXPECT_FALSE(row(waistToUnderBust).sentence().isEmpty());
    EXPECT_TRUE(row(waistGirth).sentence().isEmpty());
}

TEST_F(MeasureTest, theTapeAndTheHelpFollowTheField) {
    row(waistGirth).field().setFocus();
    EXPECT_EQ(measure().figure().shownTape(), waistGirth);
    const QImage waist = measure().figure().grab().toImage();
    row(hipGirth).field().setFocus();
    EXPECT_EQ(measure().figure().shownTape(), hipGirth);
    EXPECT_NE(measure().figure().grab().toImage(), waist);
}

TEST_F(MeasureTest, theOldFigureStandsThereUntilTheNextAction) {
    typeSinger();
    type(waistGirth, "74");
    ASSERT_TRUE(row(waistGirth).field().oldFigureMm().has_value());
    EXPECT_DOUBLE_EQ(*row(waistGirth).field().oldFigureMm(), 760);
    type(bustGirth, "96");
    EXPECT_FALSE(row(waistGirth).field().oldFigureMm().has_value());
    EXPECT_TRUE(row(bustGirth).field().oldFigureMm().has_value());
}

TEST_F(MeasureTest, enterGoesOnToTheNextReading) {
    const auto ids = measurementGroups().front().ids;
    row(ids[0]).field().setFocus();
    QTest::keyClick(&row(ids[0]).field(), Qt::Key_Return);
    EXPECT_TRUE(row(ids[1]).field().hasFocus());
}

TEST_F(MeasureTest, theGroupsHoldEveryMeasurementOnceNeededOnesFirst) {
    std::vector<Measurement> listed;
    for (const MeasurementGroup& group : measurementGroups()) {
        bool wasOptional = false;
        for (const Measurement id : group.ids) {
            listed.push_back(id);
            const bool isNeeded = infoOf(id).isNeededForCorset;
            EXPECT_FALSE(isNeeded && wasOptional) << keyOf(id);
            wasOptional = !isNeeded;
        }
    }
    std::ranges::sort(listed);
    ASSERT_EQ(listed.size(), measurementCatalogue().size());
    EXPECT_EQ(std::ranges::adjacent_find(listed), listed.end());
}

TEST_F(MeasureTest, inchesAreShownAndTypedWhenTheUnitIsInch) {
    typeSinger();
    Folio folio = window_->document().folio();
    folio.unit = LengthUnit::inch;
    window_->document().change(folio, "Lengths in inch");
    EXPECT_EQ(row(waistGirth).field().text(), "~29 15/16");  // 76 cm = 29.92 in
    type(waistGirth, "30 1/4");
    EXPECT_NEAR(window_->document().measurementSet()->valuesMm.at(waistGirth), 768.35, 1e-9);
    EXPECT_EQ(window_->document().measurementSet()->asWritten.at(waistGirth), "30 1/4 in")
        << "means the same in a set of centimetres";
    window_->document().undoStack().undo();
    window_->document().undoStack().undo();
    EXPECT_EQ(row(waistGirth).field().text(), "76");
}

// 1 in = 25.4 mm exactly.
TEST(WrittenReading, keepsTheMakersTextWhereItMeansTheSame) {
    EXPECT_EQ(writtenReading("76", 760, LengthUnit::centimetre, LengthUnit::centimetre), "76");
    EXPECT_EQ(writtenReading("30 in", 762, LengthUnit::centimetre, LengthUnit::centimetre),
              "30 in");
    EXPECT_EQ(writtenReading(" 30 ", 762, LengthUnit::inch, LengthUnit::centimetre), "30 in");
    EXPECT_EQ(writtenReading("76", 760, LengthUnit::centimetre, LengthUnit::inch), "76 cm");
}

}  // namespace
}  // namespace coutil
