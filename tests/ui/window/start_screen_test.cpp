// The start screen: what a maker sees first.
#include "ui/window/start_screen.h"

#include <QAbstractButton>
#include <QLineEdit>

#include "tests/ui/window/window_fixture.h"
#include "ui/canvas/table.h"
#include "ui/window/start_drawing.h"

namespace coutil {
namespace {

class StartScreenTest : public WindowTest {
  protected:
    QAbstractButton* button(const QString& words) {
        for (auto* found : window_->startScreen().findChildren<QAbstractButton*>()) {
            if (found->text() == words) return found;
        }
        return nullptr;
    }
};

TEST_F(StartScreenTest, showsWhileNoFolioIsOpen) {
    EXPECT_TRUE(window_->startScreen().isVisible());
    EXPECT_FALSE(window_->table().isVisible());
    EXPECT_EQ(window_->benchIndex(), -1);
    EXPECT_FALSE(window_->startScreen().findChild<StartDrawing*>()->isEmpty());
}

TEST_F(StartScreenTest, theDemoSingerOpensDraftedAndUnmodified) {
    button("Open the demo singer")->click();
    EXPECT_FALSE(window_->startScreen().isVisible());
    EXPECT_TRUE(window_->table().isVisible());
    EXPECT_EQ(window_->table().scene().panels.size(), 6U);
    EXPECT_FALSE(window_->document().isModified());
}

TEST_F(StartScreenTest, aNewClientStartsWithHerName) {
    button("Start a new client")->click();
    EXPECT_EQ(window_->benchIndex(), 0);
    EXPECT_FALSE(window_->document().isModified());
    const auto* focused = qobject_cast<QLineEdit*>(window_->focusWidget());
    ASSERT_NE(focused, nullptr);
    EXPECT_EQ(focused->placeholderText(), "a name or a label of your own");
}

TEST_F(StartScreenTest, openAsksForAFile) {
    button("Open a folio")->click();
    EXPECT_EQ(answers_->asked, 1);
    EXPECT_TRUE(window_->startScreen().isVisible()) << "no file was named";
}

}  // namespace
}  // namespace coutil
