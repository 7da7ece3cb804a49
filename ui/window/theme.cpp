#include "ui/window/theme.h"

#include <QApplication>
#include <QStyle>
#include <memory>

#include "ui/canvas/table_colours.h"
#include "ui/window/quiet_style.h"
#include "ui/window/settings.h"

namespace coutil {

namespace {

constexpr char kThemeKey[] = "window/theme";

struct Shades {
    QColor window, base, raised, text, quiet, highlight, highlightedText, line, shadow;
};

const Shades& lightShades() {
    static const Shades shades{
        QColor(0xf3, 0xf0, 0xea), QColor(0xff, 0xff, 0xff), QColor(0xe9, 0xe4, 0xdb),
        QColor(0x24, 0x21, 0x1d), QColor(0x6a, 0x64, 0x5b), QColor(0x2c, 0x5f, 0x78),
        QColor(0xff, 0xff, 0xff), QColor(0xb9, 0xb2, 0xa6), QColor(0x8c, 0x86, 0x7c)};
    return shades;
}

const Shades& darkShades() {
    static const Shades shades{
        QColor(0x2a, 0x2e, 0x33), QColor(0x1a, 0x1d, 0x21), QColor(0x33, 0x38, 0x3f),
        QColor(0xe8, 0xe4, 0xdc), QColor(0xa5, 0xa2, 0x9b), QColor(0x7c, 0xb8, 0xd2),
        QColor(0x12, 0x18, 0x1c), QColor(0x55, 0x5b, 0x64), QColor(0x10, 0x12, 0x15)};
    return shades;
}

QPalette paletteFrom(const Shades& shades) {
    QPalette palette(shades.raised, shades.window);
    const auto set = [&palette](QPalette::ColorRole role, const QColor& colour) {
        palette.setColor(QPalette::All, role, colour);
    };
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::BrightText, QPalette::ToolTipText}) {
        set(role, shades.text);
        palette.setColor(QPalette::Disabled, role, shades.quiet);
    }
    set(QPalette::Window, shades.window);
    set(QPalette::Base, shades.base);
    set(QPalette::AlternateBase, shades.window);
    set(QPalette::ToolTipBase, shades.raised);
    set(QPalette::Button, shades.raised);
    set(QPalette::PlaceholderText, shades.quiet);
    set(QPalette::Highlight, shades.highlight);
    set(QPalette::HighlightedText, shades.highlightedText);
    set(QPalette::Link, shades.highlight);
    set(QPalette::LinkVisited, shades.highlight);
    set(QPalette::Light, shades.base);
    set(QPalette::Midlight, shades.raised);
    set(QPalette::Mid, shades.line);
    set(QPalette::Dark, shades.line);
    set(QPalette::Shadow, shades.shadow);
    return palette;
}

// Asked once, before any palette of ours hides it.
bool isDesktopDark() {
    static const bool dark = isDark(QPalette());
    return dark;
}

}  // namespace

Theme storedTheme() {
    const QString name = openSettings()->value(kThemeKey).toString();
    if (name == QLatin1String("light")) return Theme::light;
    return name == QLatin1String("dark") ? Theme::dark : Theme::system;
}

void storeTheme(Theme theme) {
    const char* names[] = {"system", "light", "dark"};
    openSettings()->setValue(kThemeKey, QString::fromLatin1(names[static_cast<int>(theme)]));
}

void applyTheme(Theme theme) {
    if (qobject_cast<QuietStyle*>(QApplication::style()) == nullptr) {
        QApplication::setStyle(new QuietStyle);  // the application owns it from now on
    }
    // NOLINTNEXTLINE(clang-analyzer-cplusplus.NewDeleteLeaks): see above
    QApplication::setPalette(paletteOf(theme));
}

QPalette paletteOf(Theme theme) {
    const bool dark = theme == Theme::dark || (theme == Theme::system && isDesktopDark());
    return paletteFrom(dark ? darkShades() : lightShades());
}

}  // namespace coutil
