// One commission from end to end through the real window: the demo singer's block, three fittings
// pointed at and typed, confirmed after each, a branch from revision 1, revision 1 against 3, new
// measurements. What was asked for is measured on the patterns with the tests' own arithmetic
// (tests/app/taped_pattern.h), which shares nothing with the program's.
#include <QAction>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include <gtest/gtest.h>

#include "core/revision/pencil_outcome.h"
#include "core/store/folio_file.h"
#include "core/store/text_formats.h"
#include "tests/app/taped_pattern.h"
#include "tests/ui/window/fitting_hand.h"
#include "tests/ui/window/window_fixture.h"
#include "ui/benches/compare_bench.h"
#include "ui/benches/measurement_row.h"
#include "ui/document/state_folder.h"
#include "ui/fields/choice_field.h"
#include "ui/timeline/entry_button.h"
#include "ui/timeline/history_actions.h"
#include "ui/timeline/timeline_drawing.h"
#include "ui/timeline/timeline_strip.h"
#include "ui/window/folio_files.h"

namespace coutil {
namespace {

using nlohmann::json;
using test::takenInMm;
using test::TapedEdge;

constexpr double kTapeMm = 0.1;  // the promise for readings
constexpr int kFitBench = 2;
constexpr int kCompareBench = 3;

json jsonOf(const Pattern& pattern) {
    return json::parse(
        writePatternJson(pattern, {}, {}, [](const Problem&) { return std::string(); }));
}

double heightOf(const json& pattern, const std::string& level) {
    return test::named(pattern["levels"], level)["height"].get<double>();
}

class WindowStory : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        window_->resize(1600, 1000);
        window_->files().openDemo();
        answers_->files.append(path("leonore.coutil"));
        confirm("2026-03-05");
        window_->enterBench(kFitBench);
    }

    FolioDocument& document() { return window_->document(); }
    void confirm(const char* date) {
        answers_->confirmations.append({.on = date, .by = "wardrobe", .note = "what was seen"});
        window_->history().confirm->trigger();
        ASSERT_NE(document().revision(), nullptr);
        ASSERT_EQ(answers_->unanswered, 0);
    }
    json inked(int number) {
        return jsonOf(findRevision(*document().garment(), number)->pattern());
    }
    json shown() { return jsonOf(*document().drafted().pattern); }
    // Where the last mark was read; the pointer is not finer than a dot of the screen.
    double markedAt() { return std::get<SeamPlace>(hand().lastMark().place).positionMm; }
    FittingHand hand() { return FittingHand(*window_); }

    EntryButton& entry(TimelineKind kind, std::size_t index) {
        const auto& entries = window_->timeline().drawing().entries();
        const auto found = std::ranges::find_if(entries, [&](const TimelineEntry& each) {
            return each.kind == kind && each.index == index;
        });
        if (found == entries.end()) throw std::runtime_error("no such entry");
        return window_->timeline().drawing().button(static_cast<int>(found - entries.begin()));
    }
    void showRevision(int number) {
        QTest::mouseClick(&entry(TimelineKind::revision, static_cast<std::size_t>(number - 1)),
                          Qt::LeftButton);
    }

    void takeNewSet() {
        for (QPushButton* button : window_->findChildren<QPushButton*>())
            if (button->accessibleName() == "New measurement set") button->click();
    }

    // Posted, read by the client: a pin and a slit in a seam on both sides, a slit on the left.
    void fitFirst() {
        FittingHand maker = hand();
        maker.recordFitting();
        maker.head(FittingKind::posted, {2026, 3, 14}, "client");
        maker.pinAt("2-3", 35, "0.8");
        pinnedAt_ = markedAt();
        maker.next();
        maker.pinAt("3-4", -50, "-0.6");
        openedAt_ = markedAt();
        maker.typeInto("markNote", "tight when seated");
        maker.pinAt("5-6", -60, "-0.4");
        maker.side(BodySide::left);
        openedLeftAt_ = markedAt();
        confirm("2026-03-18");
    }
    // In person, left and right on the table: a slit typed, a pin pointed at on the right, a
    // lengthening.
    void fitSecond() {
        FittingHand maker = hand();
        maker.recordFitting();
        maker.head(FittingKind::inPerson, {2026, 4, 2}, "wardrobe");
        maker.kind("slit");
        maker.choose("markWhere", "panel 4");
        maker.choose("markEdge", "bottom");
        maker.typeInto("markPosition", "3");
        maker.typeInto("markLength", "6");
        maker.side(BodySide::right);
        maker.typeInto("markAmount", "0.8");
        maker.next();
        maker.kind("pinned, at a seam");
        maker.pinAt("4-5", 20, "0.5", PanelSide::right);
        pinnedRightAt_ = markedAt();
        maker.next();
        maker.kind("longer");
        maker.choose("markWhere", "under");
        maker.side(BodySide::both);
        maker.typeInto("markAmount", "1");
        confirm("2026-04-05");
    }
    // The bust point, and a pin on the left.
    void fitThird() {
        FittingHand maker = hand();
        maker.recordFitting();
        maker.head(FittingKind::inPerson, {2026, 4, 20}, "wardrobe");
        maker.kind("bust point lower");
        maker.typeInto("markAmount", "0.6");
        maker.next();
        maker.kind("pinned, at a seam");
        maker.pinAt("2-3", -30, "0.3", PanelSide::left);
        pinnedLeftAt_ = markedAt();
        confirm("2026-04-22");
    }
    void fitThrice() {
        fitFirst();
        fitSecond();
        fitThird();
        ASSERT_EQ(document().garment()->revisions.size(), 4U);
    }

    double pinnedAt_ = 0;
    double openedAt_ = 0;
    double openedLeftAt_ = 0;
    double pinnedRightAt_ = 0;
    double pinnedLeftAt_ = 0;
};

TEST_F(WindowStory, whatWasPointedAtAndTypedIsRecorded) {
    fitThrice();
    const auto& fittings = document().garment()->fittings;
    ASSERT_EQ(fittings.size(), 3U);
    for (std::size_t f = 0; f < 3; ++f)
        EXPECT_EQ(fittings[f].revision, document().garment()->revisions[f]->digest());
    EXPECT_EQ(fittings[0].how, FittingKind::posted);
    EXPECT_EQ(fittings[0].heldOn, "2026-03-14");
    EXPECT_EQ(fittings[0].readBy, "client");
    ASSERT_EQ(fittings[0].marks.size(), 3U);
    EXPECT_EQ(fittings[0].marks[1].note, "tight when seated");
    EXPECT_EQ(fittings[0].marks[2].kind, MarkKind::opened);
    EXPECT_EQ(fittings[0].marks[2].side, BodySide::left);
    ASSERT_EQ(fittings[1].marks.size(), 3U);
    EXPECT_EQ(fittings[1].marks[0].place, MarkPlace(SlitPlace{"4", EdgeLine::bottom, 30, 60}));
    EXPECT_EQ(fittings[1].marks[1].side, BodySide::right) << "of the panel pointed at";
    EXPECT_EQ(std::get<HeightPlace>(fittings[1].marks[2].place).level, "under_bust");
    ASSERT_EQ(fittings[2].marks.size(), 2U);
    EXPECT_EQ(fittings[2].marks[1].side, BodySide::left);
    // A dot of the screen is less than 2 mm of the pattern here.
    EXPECT_NEAR(pinnedAt_, 35, 2);
    EXPECT_NEAR(openedAt_, -50, 2);
    EXPECT_NEAR(openedLeftAt_, -60, 2);
    EXPECT_NEAR(pinnedRightAt_, 20, 2);
    EXPECT_NEAR(pinnedLeftAt_, -30, 2);
}

TEST_F(WindowStory, theTapeOnEveryRevisionSaysWhatWasAskedFor) {
    fitThrice();
    const json block = inked(1);
    const json second = inked(2);
    const json third = inked(3);
    const json fourth = inked(4);
    for (const std::string side : {"left", "right"}) {
        EXPECT_NEAR(takenInMm(block, second, "2-3", pinnedAt_, "both", side), 8, kTapeMm) << side;
        EXPECT_NEAR(takenInMm(block, second, "3-4", openedAt_, "both", side), -6, kTapeMm) << side;
    }
    EXPECT_NEAR(takenInMm(block, second, "5-6", openedLeftAt_, "both", "left"), -4, kTapeMm);
    EXPECT_NEAR(takenInMm(block, second, "5-6", openedLeftAt_, "both", "right"), 0, 1e-3);
    EXPECT_NEAR(takenInMm(second, third, "4-5", pinnedRightAt_, "right", "right"), 5, kTapeMm);
    EXPECT_NEAR(takenInMm(second, third, "4-5", pinnedRightAt_, "left", "left"), 0, 0.01);
    EXPECT_NEAR(takenInMm(third, fourth, "2-3", pinnedLeftAt_, "left", "left"), 3, kTapeMm);
    EXPECT_NEAR(takenInMm(third, fourth, "2-3", pinnedLeftAt_, "right", "right"), 0, 0.01);
    for (const std::string seam : {"1-2", "2-3", "3-4", "4-5", "5-6"}) {
        const TapedEdge before(second, seam.substr(0, 1), "left", "seam " + seam);
        const TapedEdge after(third, seam.substr(0, 1), "left", "seam " + seam);
        EXPECT_NEAR(after.aboveWaistMm() - before.aboveWaistMm(), 10, kTapeMm) << seam;
        EXPECT_NEAR(after.belowWaistMm() - before.belowWaistMm(), 0, kTapeMm) << seam;
    }
    EXPECT_NEAR(heightOf(third, "bust") - heightOf(second, "bust"), 10, kTapeMm);
    EXPECT_NEAR(heightOf(fourth, "bust") - heightOf(third, "bust"), -6, kTapeMm);
}

// All fittings together against the block, where no other mark of the same side reaches.
TEST_F(WindowStory, theTapeOnTheLastPatternSaysWhatWasAskedFor) {
    fitThrice();
    const json block = inked(1);
    const json last = inked(4);
    EXPECT_NEAR(takenInMm(block, last, "2-3", pinnedAt_, "both", "right"), 8, kTapeMm);
    EXPECT_NEAR(takenInMm(block, last, "2-3", pinnedAt_, "both", "left"), 8, kTapeMm);
    EXPECT_NEAR(takenInMm(block, last, "2-3", pinnedLeftAt_, "both", "left") -
                    takenInMm(block, last, "2-3", pinnedLeftAt_, "both", "right"),
                3, kTapeMm);
    EXPECT_NEAR(takenInMm(block, last, "3-4", openedAt_, "both", "left"), -6, kTapeMm);
    EXPECT_NEAR(takenInMm(block, last, "5-6", openedLeftAt_, "both", "left"), -4, kTapeMm);
    EXPECT_NEAR(takenInMm(block, last, "5-6", openedLeftAt_, "both", "right"), 0, 0.01);
    EXPECT_NEAR(takenInMm(block, last, "4-5", pinnedRightAt_, "both", "left"), 0, 0.01);
    EXPECT_NEAR(heightOf(last, "bust") - heightOf(block, "bust"), 4, kTapeMm);
    for (const json& seam : last["seams"]) {
        const auto above = seam["above_waist"].get<std::vector<double>>();
        const auto below = seam["below_waist"].get<std::vector<double>>();
        EXPECT_NEAR(above[0], above[1], 0.01) << seam["name"];
        EXPECT_NEAR(below[0], below[1], 0.01) << seam["name"];
    }
}

TEST_F(WindowStory, undoGoesBackToTheLastInkAndNoFurther) {
    fitFirst();
    const Folio confirmed = document().folio();
    EXPECT_FALSE(document().undoStack().canUndo());
    FittingHand maker = hand();
    maker.recordFitting();
    maker.pinAt("4-5", 20, "0.5", PanelSide::right);
    EXPECT_NE(document().pencil(), nullptr) << "the first mark begins a pencil over the ink";
    for (int i = 0; i < 20; ++i) QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(document().folio(), confirmed);
    ASSERT_NE(document().revision(), nullptr);
    EXPECT_EQ(document().revision()->number(), 2);
}

TEST_F(WindowStory, aBranchFromRevisionOneThroughTheTimeline) {
    fitThrice();
    const json before = inked(1);
    showRevision(1);
    ASSERT_EQ(document().revision()->number(), 1);
    window_->history().beginPencil->trigger();
    ASSERT_NE(document().pencil(), nullptr);
    FittingHand maker = hand();
    maker.recordFitting();
    maker.pinAt("1-2", 100, "-0.5");
    const double at = markedAt();
    EXPECT_NEAR(takenInMm(before, shown(), "1-2", at, "both", "both"), -5, kTapeMm);
    EXPECT_GT(entry(TimelineKind::pencil, 0).y(), entry(TimelineKind::revision, 3).y())
        << "a branch has a row of its own";
    confirm("2026-05-02");
    EXPECT_EQ(document().revision()->number(), 5);
    EXPECT_EQ(document().revision()->content().parent,
              findRevision(*document().garment(), 1)->digest());
    EXPECT_EQ(inked(1), before);
}

TEST_F(WindowStory, aFittingOfTheTimelineIsShownAtTheFitBench) {
    fitThrice();
    QTest::mouseClick(&entry(TimelineKind::fitting, 1), Qt::LeftButton);
    ASSERT_NE(document().revision(), nullptr);
    EXPECT_EQ(document().revision()->number(), 2) << "what was tried on";
    EXPECT_EQ(window_->findChild<ChoiceField*>("fittings")->currentIndex(), 1);
}

TEST_F(WindowStory, revisionOneAgainstThreeThroughTheTimeline) {
    fitThrice();
    showRevision(1);
    QTest::mouseClick(&entry(TimelineKind::revision, 2), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(window_->benchIndex(), kCompareBench);
    auto* bench = qobject_cast<CompareBench*>(window_->benches().at(kCompareBench));
    ASSERT_NE(bench, nullptr);
    ASSERT_NE(bench->states(), nullptr);
    EXPECT_EQ(bench->states()->a.revision, 1);
    EXPECT_EQ(bench->states()->b.revision, 3);
    const TableScene& scene = window_->table().scene();
    ASSERT_EQ(scene.legend.size(), 2U);
    EXPECT_TRUE(scene.legend[0].words.contains("revision 1"))
        << scene.legend[0].words.toStdString();
    EXPECT_TRUE(scene.legend[1].words.contains("revision 3"))
        << scene.legend[1].words.toStdString();
    EXPECT_FALSE(scene.strokes.empty());
}

TEST_F(WindowStory, newMeasurementsAreTakenAndEveryAlterationIsAppliedAgain) {
    fitThrice();
    showRevision(4);
    window_->enterBench(0);
    takeNewSet();
    type(Measurement::waistGirth, "78");
    const Pencil* pencil = document().pencil();
    ASSERT_NE(pencil, nullptr);
    for (const Problem& problem : document().drafted().problems)
        EXPECT_FALSE(std::string(keyOf(problem.code)).starts_with("alteration_"))
            << problem.subject;
    const json again = shown();
    const auto block = baseOf(document().folio(), *pencil).pattern;
    ASSERT_TRUE(block);
    const json under = jsonOf(*block);
    EXPECT_NEAR(takenInMm(under, again, "2-3", pinnedAt_, "both", "right"), 8, kTapeMm);
    EXPECT_NEAR(takenInMm(under, again, "2-3", pinnedAt_, "both", "left"), 8, kTapeMm);
    EXPECT_NEAR(takenInMm(under, again, "3-4", openedAt_, "both", "left"), -6, kTapeMm);
    EXPECT_NEAR(takenInMm(under, again, "5-6", openedLeftAt_, "both", "left"), -4, kTapeMm);
    EXPECT_NEAR(takenInMm(under, again, "5-6", openedLeftAt_, "both", "right"), 0, 0.01);
    EXPECT_NEAR(heightOf(again, "bust") - heightOf(under, "bust"), 4, kTapeMm);
    // And drafted from other readings it is: 2 cm more at the waist.
    const auto target = [](const json& pattern) {
        return test::named(pattern["levels"], "waist")["target"].get<double>();
    };
    EXPECT_NEAR(target(again) - target(inked(4)), 20, 0.01);
}

TEST_F(WindowStory, savedAndOpenedAgainItIsTheSame) {
    fitThrice();
    showRevision(1);
    window_->history().beginPencil->trigger();
    hand().recordFitting();
    hand().pinAt("1-2", 100, "-0.5");
    ASSERT_TRUE(window_->files().save());
    const Folio saved = document().folio();
    const auto read = readFolio(pathOf(path("leonore.coutil")));
    ASSERT_TRUE(read.hasValue());
    EXPECT_EQ(*read, saved);
    die();
    openWindow();
    window_->files().openFile(path("leonore.coutil"));
    EXPECT_EQ(document().folio(), saved);
    // Four inks, four fittings, a pencil.
    EXPECT_EQ(window_->timeline().drawing().entries().size(), 9U);
}

}  // namespace
}  // namespace coutil
