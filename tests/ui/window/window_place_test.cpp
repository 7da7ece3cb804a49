// Where the window lies when it first shows, and when its old place is no longer on a screen.
#include "ui/window/window_place.h"

#include <QScreen>

#include "tests/ui/window/window_fixture.h"

namespace coutil {
namespace {

// A panel of 32 px at the top, as desktops have it.
constexpr QRect kLaptop{0, 32, 1280, 768};
constexpr QRect kDesk{0, 32, 1920, 1048};
constexpr QRect kSecond{1920, 0, 1920, 1080};

// Room for a title bar and borders is left on all sides (figures of window_place.cpp, above what
// common window managers draw; from memory).
void expectFramed(const QRect& placed, const QRect& screen) {
    EXPECT_GE(placed.top(), screen.top() + 30);
    EXPECT_GE(placed.left(), screen.left() + 4);
    EXPECT_LE(placed.right(), screen.right() - 4);
    EXPECT_LE(placed.bottom(), screen.bottom() - 4);
}

TEST(WindowPlace, tooLargeIsMadeSmaller) {
    expectFramed(withinScreen({0, 0, 1280, 800}, kLaptop), kLaptop);
    expectFramed(withinScreen({-200, -300, 4000, 3000}, kDesk), kDesk);
}

TEST(WindowPlace, outsideIsMovedIn) {
    const QRect lost = withinScreen({5000, 4000, 1000, 700}, kDesk);
    expectFramed(lost, kDesk);
    EXPECT_EQ(lost.size(), QSize(1000, 700));
    expectFramed(withinScreen({100, 100, 1000, 700}, kSecond), kSecond);
}

TEST(WindowPlace, whatFitsStays) {
    const QRect fits(300, 200, 1000, 700);
    EXPECT_EQ(withinScreen(fits, kDesk), fits);
}

TEST(WindowPlace, aLaptopsScreenIsSmallADesksIsNot) {
    EXPECT_TRUE(isSmallScreen(kLaptop.size()));
    EXPECT_TRUE(isSmallScreen({1366, 768}));
    EXPECT_FALSE(isSmallScreen(kDesk.size()));
}

class WindowPlaceTest : public WindowTest {};

// The screen of the offscreen platform is 800 x 800: no window of 1280 fits.
TEST_F(WindowPlaceTest, theWindowIsPlacedWithinItsScreen) {
    window_->hide();
    window_->placeOnScreen();
    window_->show();
    const QRect screen = window_->screen()->availableGeometry();
    EXPECT_TRUE(window_->isMaximized()) << "a small screen, and never placed before";
    const QRect frame = window_->frameGeometry();
    EXPECT_TRUE(screen.contains(frame)) << frame.width() << " x " << frame.height();
}

TEST_F(WindowPlaceTest, aPlaceRememberedFromALargerScreenIsMadeToFit) {
    window_->setGeometry(1500, 900, 1280, 800);
    EXPECT_TRUE(window_->close());
    openWindow();
    window_->hide();
    window_->placeOnScreen();
    window_->show();
    EXPECT_FALSE(window_->isMaximized());
    const QRect screen = window_->screen()->availableGeometry();
    EXPECT_GE(window_->geometry().top(), screen.top());
    EXPECT_LE(window_->geometry().bottom(), screen.bottom());
    EXPECT_LE(window_->height(), screen.height());
}

}  // namespace
}  // namespace coutil
