// What the program says above the table.
#include "ui/window/message_bar.h"

#include <QPushButton>
#include <QToolButton>

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(MessageBar, errorsStayAndOthersWaitTheirTurn) {
    MessageBar bar;
    bar.say({"The folio can't be written.", true, {}, {}});
    bar.say({"Saved.", false, {}, {}});
    EXPECT_EQ(bar.shownText(), "The folio can't be written.");
    EXPECT_TRUE(bar.isErrorShown());
    bar.findChild<QToolButton*>()->click();
    EXPECT_EQ(bar.shownText(), "Saved.");
    EXPECT_FALSE(bar.isErrorShown());
    bar.dismiss();
    EXPECT_TRUE(bar.isHidden());
}

TEST(MessageBar, aFleetingNoteMakesRoomForTheNext) {
    MessageBar bar;
    bar.say({"Saved as a.coutil.", false, {}, {}});
    bar.say({"Can't be read.", true, {}, {}});
    EXPECT_EQ(bar.shownText(), "Can't be read.");
}

TEST(MessageBar, notesGoAwayByThemselvesErrorsAndOffersDont) {
    MessageBar bar;
    bar.say({"Saved.", false, {}, {}});
    EXPECT_TRUE(bar.isFleeting());
    bar.dismissAll();
    bar.say({"Unsaved work was found.", false, "Recover", [] {}});
    EXPECT_FALSE(bar.isFleeting());
    bar.dismissAll();
    bar.say({"Can't be read.", true, {}, {}});
    EXPECT_FALSE(bar.isFleeting());
}

TEST(MessageBar, theActionIsDoneOnceAndTheMessageGoes) {
    MessageBar bar;
    int done = 0;
    bar.say({"Unsaved work was found.", false, "Recover", [&done] { ++done; }});
    bar.say({"Unsaved work was found.", false, "Recover", [&done] { ++done; }});  // said already
    bar.findChild<QPushButton*>()->click();
    EXPECT_EQ(done, 1);
    EXPECT_TRUE(bar.isHidden());
}

TEST(MessageBar, twoWaysOutAreOffered) {
    MessageBar bar;
    QStringList taken;
    const MessageBar::Message message{
        "Another program wrote it.", true,          "Save as",
        [&taken] { taken << "as"; }, "Save anyway", [&taken] { taken << "anyway"; }};
    const auto buttons = bar.findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 2);
    for (QPushButton* button : buttons) {
        bar.say(message);
        button->click();
        EXPECT_TRUE(bar.isHidden());
    }
    EXPECT_EQ(taken, (QStringList{"as", "anyway"}));
    bar.say({"Saved.", false, {}, {}});
    EXPECT_TRUE(buttons[1]->isHidden());
}

TEST(MessageBar, whatIsNoLongerSoIsTakenBack) {
    MessageBar bar;
    bar.say({"Another program wrote it.", true, {}, {}});
    bar.say({"Can't be read.", true, {}, {}});
    bar.takeBack("Another program wrote it.");
    EXPECT_EQ(bar.shownText(), "Can't be read.");
    bar.takeBack("Can't be read.");
    EXPECT_TRUE(bar.isHidden());
}

}  // namespace
}  // namespace coutil
