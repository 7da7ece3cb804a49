// The strip: clicks, keys, names for a screen reader, words on hovering, many revisions.
#include "ui/timeline/timeline_strip.h"

#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "tests/ui/timeline/grown_garment.h"
#include "tests/ui/window/singer.h"
#include "ui/document/folio_document.h"
#include "ui/timeline/entry_button.h"
#include "ui/timeline/history_actions.h"
#include "ui/timeline/timeline_drawing.h"

namespace coutil {
namespace {

class TimelineStripTest : public testing::Test {
  protected:
    void SetUp() override {
        qputenv("HOME", home_.path().toUtf8());
        document_.open(grownFolio(), {});
        strip_.resize(1280, strip_.height());
        strip_.show();
        strip_.activateWindow();
        QApplication::processEvents();
    }

    // Entries of the grown garment in their order.
    enum Place { block, fitting1, rev2, fitting2, rev3, rev4, mainPencil, sidePencil };
    EntryButton& entry(int place) { return strip_.drawing().button(place); }
    QString digest(int number) const {
        return QString::fromStdString(digestOf(document_.folio(), number));
    }
    void key(Qt::Key pressed) { QTest::keyClick(QApplication::focusWidget(), pressed); }

    QTemporaryDir home_;
    FolioDocument document_;
    HistoryActions actions_{document_};
    TimelineStrip strip_{document_, actions_};
};

TEST_F(TimelineStripTest, entriesStandInOrderWithTheirWords) {
    ASSERT_EQ(strip_.drawing().entries().size(), 8U);
    EXPECT_EQ(entry(block).text(), "block 2 Mar 2026");
    EXPECT_EQ(entry(fitting1).text(), "fitting 14 Mar");
    EXPECT_EQ(entry(rev2).text(), "rev 2 18 Mar");
    EXPECT_EQ(entry(rev4).text(), "rev 4 20 Apr");
    EXPECT_EQ(entry(mainPencil).text(), "pencil");
    EXPECT_EQ(entry(sidePencil).text(), "wider hip");
    EXPECT_GT(entry(rev4).y(), entry(rev3).y()) << "a branch has a row of its own";
    EXPECT_EQ(entry(sidePencil).y(), entry(rev4).y());
}

TEST_F(TimelineStripTest, aClickShowsARevisionAPencilAndWhatWasTriedOn) {
    QTest::mouseClick(&entry(rev2), Qt::LeftButton);
    ASSERT_NE(document_.revision(), nullptr);
    EXPECT_EQ(document_.revision()->number(), 2);
    EXPECT_TRUE(entry(rev2).isShown());
    QTest::mouseClick(&entry(mainPencil), Qt::LeftButton);
    ASSERT_NE(document_.pencil(), nullptr);
    EXPECT_EQ(document_.pencil()->id, "main pencil");
    EXPECT_FALSE(entry(rev2).isShown());
    QSignalSpy fitting(&actions_, &HistoryActions::fittingChosen);
    QTest::mouseClick(&entry(fitting1), Qt::LeftButton);
    ASSERT_NE(document_.revision(), nullptr);
    EXPECT_EQ(document_.revision()->number(), 1);
    ASSERT_EQ(fitting.count(), 1);
    EXPECT_EQ(fitting.front().front().toString(), "fitting of 2026-03-14");
    EXPECT_EQ(document_.undoStack().count(), 0) << "looking is no change";
}

TEST_F(TimelineStripTest, aSecondClickBesideItStartsAComparison) {
    QTest::mouseClick(&entry(rev3), Qt::LeftButton);
    QSignalSpy compare(&actions_, &HistoryActions::compareWanted);
    QTest::mouseClick(&entry(block), Qt::LeftButton, Qt::ControlModifier);
    QTest::mouseClick(&entry(sidePencil), Qt::LeftButton, Qt::ShiftModifier);
    ASSERT_EQ(compare.count(), 2);
    EXPECT_EQ(document_.revision()->number(), 3) << "what is shown stays";
    const auto first = compare[0][0].value<StateRef>();
    EXPECT_EQ(first.digest, digest(1).toStdString()) << "the earlier one is A";
    EXPECT_EQ(compare[0][1].value<StateRef>().digest, digest(3).toStdString());
    EXPECT_EQ(compare[1][0].value<StateRef>().digest, digest(3).toStdString());
    EXPECT_EQ(compare[1][1].value<StateRef>().pencil, "side pencil");
}

TEST_F(TimelineStripTest, comparingWithItselfIsAnsweredInWords) {
    QSignalSpy compare(&actions_, &HistoryActions::compareWanted);
    QSignalSpy told(&actions_, &HistoryActions::told);
    QTest::mouseClick(&entry(rev3), Qt::LeftButton);
    QTest::mouseClick(&entry(rev3), Qt::LeftButton, Qt::ControlModifier);
    QTest::mouseClick(&entry(fitting2), Qt::LeftButton, Qt::ControlModifier);
    EXPECT_EQ(compare.count(), 0);
    EXPECT_EQ(told.count(), 2);
}

TEST_F(TimelineStripTest, keysWalkShowAndCompare) {
    entry(sidePencil).setFocus();
    key(Qt::Key_Home);
    EXPECT_TRUE(entry(block).hasFocus());
    key(Qt::Key_Left);
    EXPECT_TRUE(entry(block).hasFocus());
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    EXPECT_TRUE(entry(rev2).hasFocus());
    key(Qt::Key_Return);
    ASSERT_NE(document_.revision(), nullptr);
    EXPECT_EQ(document_.revision()->number(), 2);
    key(Qt::Key_End);
    EXPECT_TRUE(entry(sidePencil).hasFocus());
    QSignalSpy compare(&actions_, &HistoryActions::compareWanted);
    key(Qt::Key_C);
    ASSERT_EQ(compare.count(), 1);
    EXPECT_EQ(compare[0][1].value<StateRef>().pencil, "side pencil");
}

TEST_F(TimelineStripTest, tabStopsAtOneEntryOnly) {
    entry(rev2).setFocus();
    int stops = 0;
    for (int i = block; i <= sidePencil; ++i) stops += entry(i).focusPolicy() == Qt::StrongFocus;
    EXPECT_EQ(stops, 1);
    EXPECT_EQ(entry(rev2).focusPolicy(), Qt::StrongFocus);
}

TEST_F(TimelineStripTest, screenReadersHearWhatItIsWhereFromAndWhetherShown) {
    QTest::mouseClick(&entry(rev4), Qt::LeftButton);
    const QString name = entry(rev4).accessibleName();
    EXPECT_TRUE(name.startsWith("revision 4")) << name.toStdString();
    EXPECT_TRUE(name.contains("from block, revision 1")) << name.toStdString();
    EXPECT_TRUE(name.endsWith("shown on the table")) << name.toStdString();
    EXPECT_FALSE(entry(rev3).accessibleName().contains("shown"));
    EXPECT_TRUE(entry(fitting1).accessibleName().startsWith("posted fitting"));
    EXPECT_TRUE(entry(sidePencil).accessibleName().contains("wider hip"));
}

TEST_F(TimelineStripTest, hoveringTellsWhatChangedByWhomAndTheNote) {
    const QString told = entry(rev2).toolTipText().replace(QChar(QChar::Nbsp), ' ');
    EXPECT_TRUE(told.contains("seam 2-3: 0.4 cm in at the waist")) << told.toStdString();
    EXPECT_TRUE(told.contains("confirmed by Mira"));
    EXPECT_TRUE(told.contains("what was seen"));
    EXPECT_FALSE(entry(rev3).toolTipText().contains("0.4")) << "only what is new";
    EXPECT_TRUE(entry(fitting1).toolTipText().contains("2 mark"));
    EXPECT_TRUE(entry(mainPencil).toolTipText().contains("nothing changed yet"));
}

TEST_F(TimelineStripTest, theMenuOfAnEntryDoesWhatItSays) {
    const auto wish = [this](int place, const QString& words) {
        QMenu menu;
        actions_.fillEntryMenu(&menu, strip_.drawing().entries()[static_cast<std::size_t>(place)]);
        for (QAction* action : menu.actions()) {
            if (action->text().remove('&') == words && action->isEnabled()) {
                action->trigger();
                return true;
            }
        }
        return false;
    };
    ASSERT_TRUE(wish(rev2, "New pencil from this revision"));
    ASSERT_NE(document_.pencil(), nullptr);
    EXPECT_EQ(document_.pencil()->parent, digest(2).toStdString());
    EXPECT_EQ(document_.garment()->pencils.size(), 3U);
    ASSERT_TRUE(wish(mainPencil, "Second pencil beside this one"));
    EXPECT_EQ(document_.garment()->pencils.size(), 4U);
    EXPECT_EQ(document_.pencil(), &document_.garment()->pencils.back());
    ASSERT_TRUE(wish(mainPencil, "Rub out the pencil"));
    EXPECT_EQ(document_.garment()->pencils.size(), 3U);
    document_.undoStack().undo();
    EXPECT_EQ(document_.garment()->pencils.size(), 4U);
    ASSERT_TRUE(wish(rev3, "Start a garment from this revision"));
    ASSERT_EQ(document_.folio().garments.size(), 2U);
    EXPECT_EQ(document_.garmentIndex(), 1);
    ASSERT_NE(document_.pencil(), nullptr);
    EXPECT_EQ(document_.pencil()->parent, digest(3).toStdString());
    EXPECT_TRUE(document_.drafted().pattern.has_value());
}

TEST_F(TimelineStripTest, aPencilIsNamedInPlace) {
    strip_.startNaming("main pencil");
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, "closer fit");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(findPencil(*document_.garment(), "main pencil")->name, "closer fit");
    EXPECT_EQ(entry(mainPencil).text(), "closer fit");
    EXPECT_FALSE(field->isVisible());
    document_.undoStack().undo();
    EXPECT_EQ(entry(mainPencil).text(), "pencil");
    strip_.startNaming("main pencil");
    QTest::keyClicks(field, "never");
    QTest::keyClick(field, Qt::Key_Escape);
    EXPECT_EQ(entry(mainPencil).text(), "pencil");
}

TEST_F(TimelineStripTest, theOnlyStateOfAGarmentStays) {
    document_.open(singersFolio(), {});
    EXPECT_FALSE(actions_.rubOut->isEnabled());
    EXPECT_TRUE(actions_.confirm->isEnabled());
    EXPECT_FALSE(actions_.beginPencil->isEnabled());
}

TEST_F(TimelineStripTest, withoutAFolioThereIsNoStrip) {
    EXPECT_TRUE(strip_.isVisible());
    document_.close();
    EXPECT_TRUE(strip_.isHidden());
    EXPECT_FALSE(actions_.confirm->isEnabled());
}

TEST_F(TimelineStripTest, aLongTimelineScrollsToWhatIsShown) {
    Folio folio = document_.folio();
    for (int i = 0; i < 40; ++i) folio = withFitting(folio, digestOf(folio, 3), "2026-04-12");
    for (std::size_t i = 0; i < 42; ++i) {
        folio.garments[0].fittings[i].id = QString::number(i).toStdString();
    }
    document_.open(folio, {});
    QApplication::processEvents();
    auto* area = strip_.findChild<QScrollArea*>();
    const auto isSeen = [&](EntryButton& button) {
        const QRect room = area->viewport()->rect();
        return room.contains(button.mapTo(area->viewport(), button.rect().center()));
    };
    const int last = static_cast<int>(strip_.drawing().entries().size()) - 1;
    EXPECT_GT(area->horizontalScrollBar()->maximum(), 1000);
    entry(last).setFocus();
    EXPECT_TRUE(isSeen(entry(last)));
    EXPECT_FALSE(isSeen(entry(0)));
    key(Qt::Key_Home);
    EXPECT_TRUE(isSeen(entry(0)));
}

}  // namespace
}  // namespace coutil
