// Themes: switched at once, remembered, and readable.
#include "ui/window/theme.h"

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>

#include "tests/ui/window/window_fixture.h"
#include "ui/canvas/table_colours.h"
#include "ui/fields/text_colours.h"
#include "ui/window/folio_files.h"
#include "ui/window/line_icon.h"
#include "ui/window/quiet_style.h"
#include "ui/window/window_menus.h"

namespace coutil {
namespace {

class ThemeTest : public WindowTest {
  protected:
    void TearDown() override { applyTheme(Theme::light); }

    void choose(const QString& words) {
        for (QAction* action : window_->menus().findChildren<QAction*>()) {
            if (action->text() == words) action->trigger();
        }
        QApplication::processEvents();
    }
};

TEST_F(ThemeTest, switchesTheWholeWindowAtOnceAndIsRemembered) {
    window_->files().openDemo();
    choose("&Light");
    EXPECT_FALSE(isDark(window_->palette()));
    const QImage light = window_->grab().toImage();
    choose("&Dark");
    EXPECT_TRUE(isDark(window_->palette()));
    EXPECT_EQ(storedTheme(), Theme::dark);
    const QImage dark = window_->grab().toImage();
    // Every corner of the window turned over: top line, table, card, foot.
    for (const QPoint& place :
         {QPoint(640, 4), QPoint(300, 500), QPoint(916, 700), QPoint(400, light.height() - 3)}) {
        EXPECT_GT(light.pixelColor(place).lightness(), 180) << place.x() << " " << place.y();
        EXPECT_LT(dark.pixelColor(place).lightness(), 90) << place.x() << " " << place.y();
    }
    choose("&System");
    EXPECT_EQ(storedTheme(), Theme::system);
}

// 4.5 : 1 for text (WCAG 2.1, 1.4.3), 3 : 1 for the frames of fields (1.4.11).
TEST_F(ThemeTest, everyTextAndFrameCanBeRead) {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        const QPalette palette = paletteOf(theme);
        for (const auto ground : {QPalette::Window, QPalette::Base, QPalette::Button}) {
            const QColor paper = palette.color(ground);
            EXPECT_GE(contrast(palette.color(QPalette::WindowText), paper), 4.5);
            EXPECT_GE(contrast(palette.color(QPalette::Text), paper), 4.5);
            EXPECT_GE(contrast(palette.color(QPalette::ButtonText), paper), 4.5);
        }
        for (const auto ground : {QPalette::Window, QPalette::Base}) {
            const QColor paper = palette.color(ground);
            EXPECT_GE(contrast(errorColour(palette), paper), 4.5);
            EXPECT_GE(contrast(warningColour(palette), paper), 4.5);
            EXPECT_GE(contrast(tapeColour(palette), paper), 4.5);
            EXPECT_GE(contrast(quietColour(palette), paper), 4.5);
            EXPECT_GE(contrast(palette.color(QPalette::Highlight), paper), 3);
            EXPECT_GE(contrast(fieldFrameColour(palette), paper), 3);
        }
        EXPECT_GE(
            contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)),
            4.5);
    }
}

TEST_F(ThemeTest, fieldsAndBoxesHaveAFrameThatCanBeSeenInTheDark) {
    applyTheme(Theme::dark);
    const auto isFramed = [](QWidget& widget) {
        const QImage image = widget.grab().toImage();
        const QColor ground = widget.palette().color(QPalette::Window);
        int seen = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < 4; ++x) seen += contrast(image.pixelColor(x, y), ground) > 2.5;
        }
        return seen >= 8;  // an upright line
    };
    QLineEdit line;
    QCheckBox box;
    line.resize(120, 26);
    EXPECT_TRUE(isFramed(line));
    EXPECT_TRUE(isFramed(box));
}

TEST_F(ThemeTest, drawingsTakeTheColourOfTheText) {
    const QIcon icon = lineIcon("corset");
    const auto range = [&icon] {
        const QImage image = icon.pixmap(48, 48).toImage();
        int darkest = 255;
        int lightest = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                const QColor colour = image.pixelColor(x, y);
                if (colour.alpha() < 250) continue;
                darkest = std::min(darkest, colour.lightness());
                lightest = std::max(lightest, colour.lightness());
            }
        }
        return std::pair(darkest, lightest);
    };
    applyTheme(Theme::light);
    EXPECT_LT(range().first, 80);
    applyTheme(Theme::dark);
    EXPECT_GT(range().second, 180);
}

}  // namespace
}  // namespace coutil
